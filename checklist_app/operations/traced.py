"""Numbers that remember how they were made: the same function, run with these, tells its working.

Each carries its words (`leg length [left]`), its figures (`1.25`), and what the printed figures give: a line is printed
only with as many digits as both agree on.
"""

from collections.abc import Callable
from math import isfinite
from typing import Self

from checklist_app.mechanics import exact
from checklist_app.mechanics.errors import OutOfRangeError

ATOM, PRODUCT, SUM = 3, 2, 1
FIGURES, RESULT = 6, 5
SMALL, LARGE = 1e-4, 1e6
FUNCTIONS: dict[str, Callable[..., float]] = {
    "√": exact.sqrt, "sin": exact.sin, "cos": exact.cos, "atan2": exact.atan2_deg, "atan2_rad": exact.atan2,
    "exp": exact.exp, "abs": abs,
}
Told = Callable[[str, "Traced"], None]


class Traced(float):
    """A float with its words, its figures and the value of its figures; `tell` is where `let` writes a line."""

    words: str
    figures: str
    printed: float
    binds: int
    tell: Told | None

    def __new__(
        cls, value: float, words: str, figures: str, printed: float, binds: int = ATOM, tell: Told | None = None
    ) -> Self:
        self = super().__new__(cls, value)
        self.words, self.figures, self.printed, self.binds, self.tell = words, figures, printed, binds, tell
        return self

    @classmethod
    def atom(cls, value: float, words: str, tell: Told | None = None) -> "Traced":
        """A number that is known by its name."""
        figures = figure(float(value))
        return cls(float(value), words, figures, value_of(figures), ATOM, tell)

    @property
    def is_atom(self) -> bool:
        """Whether nothing was done with it yet."""
        return self.binds == ATOM and not self.words.endswith(")")

    def let(self, name: str) -> "Traced":
        """A line of its own for an intermediate result; from there on it goes by its name."""
        if self.tell is not None:
            self.tell(name, self)
        return Traced.atom(float(self), name.replace("_", " "), self.tell)

    def told(self, name: str, value: float, *arguments: float) -> "Traced":
        """The result of a function of the exact floor."""
        parts = [traced(each) for each in arguments]
        words = f"{name}({', '.join(part.words for part in parts)})"
        figures = f"{name}({', '.join(part.figures for part in parts)})"
        return Traced(float(value), words, figures, _applied(name, float(value), parts), ATOM, self.tell)

    def __add__(self, other: float) -> "Traced":
        return _joined(self, "+", other)

    def __radd__(self, other: float) -> "Traced":
        return _joined(other, "+", self)

    def __sub__(self, other: float) -> "Traced":
        return _joined(self, "−", other)

    def __rsub__(self, other: float) -> "Traced":
        return _joined(other, "−", self)

    def __mul__(self, other: float) -> "Traced":
        return _joined(self, "×", other)

    def __rmul__(self, other: float) -> "Traced":
        return _joined(other, "×", self)

    def __truediv__(self, other: float) -> "Traced":
        return _joined(self, "/", other)

    def __rtruediv__(self, other: float) -> "Traced":
        return _joined(other, "/", self)

    def __neg__(self) -> "Traced":
        words, figures = (f"−{_wrapped(text, self.binds, ATOM)}" for text in (self.words, self.figures))
        return Traced(-float(self), words, figures, -self.printed, SUM, self.tell)

    def __pos__(self) -> "Traced":
        return self

    def __abs__(self) -> "Traced":
        return self.told("abs", abs(float(self)), self)


APPLY: dict[str, tuple[int, Callable[[float, float], float]]] = {
    "+": (SUM, float.__add__),
    "−": (SUM, float.__sub__),
    "×": (PRODUCT, float.__mul__),
    "/": (PRODUCT, float.__truediv__),
}


def traced(number: float) -> Traced:
    """A number as one that remembers; a plain one is its own name."""
    return number if isinstance(number, Traced) else Traced.atom(float(number), figure(float(number)))


def figure(value: float) -> str:
    """A number as it stands in a line of arithmetic; below zero in brackets.

    Example:
        >>> figure(9.80665), figure(-0.25), figure(1180.0)
        ('9.80665', '(−0.25)', '1180')
    """
    text = digits(value, FIGURES)
    return f"({text})" if text.startswith("−") else text


def digits(value: float, count: int) -> str:
    """A number to so many digits, without an exponent.

    Example:
        >>> digits(1234567.0, 4), digits(0.000123456, 3), digits(-2.0, 4)
        ('1235000', '0.000123', '−2')
    """
    if not isfinite(value):
        return str(value)
    short = float(f"{value:.{count}g}")
    places = max(0, count - 1 - _magnitude(short)) if short else 0
    text = f"{short:.{min(places, 12)}f}"
    text = text.rstrip("0").rstrip(".") if "." in text else text
    return ("0" if text in ("-0", "") else text).replace("-", "−")


def result(value: float, printed: float) -> str:
    """The result of a line with as many digits as the printed figures give back too.

    Example:
        >>> result(4.09449, 4.09443), result(1e-17, 0.0)
        ('4.094', '0')
    """
    for count in range(RESULT, 0, -1):
        if digits(value, count) == digits(printed, count):
            return digits(value, count)
    for places in range(6, -1, -1):
        if f"{value:.{places}f}" == f"{printed:.{places}f}":
            return digits(float(f"{value:.{places}f}"), RESULT)
    return digits(printed, RESULT)


def value_of(figures: str) -> float:
    """What a printed figure says."""
    return float(figures.strip("()").replace("−", "-"))


def _magnitude(value: float) -> int:
    return int(f"{value:e}".partition("e")[2])


def _joined(left: float, sign: str, right: float) -> Traced:
    a, b = traced(left), traced(right)
    if sign == "+" and not isinstance(left, Traced) and left == 0.0:
        return b
    binds, apply = APPLY[sign]
    value, tell = apply(float(a), float(b)), a.tell or b.tell
    printed = _calculated(apply, a.printed, b.printed, value)
    if sign == "×" and a is b:
        words, figures = (f"{_wrapped(text, a.binds, ATOM)}²" for text in (a.words, a.figures))
        return Traced(value, words, figures, printed, PRODUCT, tell)
    needs = binds + (sign in "−/")
    words = f"{_wrapped(a.words, a.binds, binds)} {sign} {_wrapped(b.words, b.binds, needs)}"
    figures = f"{_wrapped(a.figures, a.binds, binds)} {sign} {_wrapped(b.figures, b.binds, needs)}"
    return Traced(value, words, figures, printed, binds, tell)


def _calculated(apply: Callable[[float, float], float], a: float, b: float, otherwise: float) -> float:
    """What a pencil gets from the printed figures; the true value where they cannot be calculated with."""
    try:
        return apply(a, b)
    except ArithmeticError:
        return otherwise


def _applied(name: str, value: float, parts: list[Traced]) -> float:
    try:
        return FUNCTIONS[name](*(part.printed for part in parts))
    except (OutOfRangeError, ValueError):
        return value


def _wrapped(text: str, binds: int, needed: int) -> str:
    return f"({text})" if binds < needed else text
