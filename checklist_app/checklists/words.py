"""How figures, dates and verdicts are said on a page."""
from collections.abc import Callable
from datetime import date
from math import ceil, floor
from typing import Any

MONTHS = ("January", "February", "March", "April", "May", "June", "July", "August", "September", "October",
          "November", "December")
WEEKDAYS = ("Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday")
MARKS = {"within limit": "within", "close to limit": "close", "over limit": "over", "waiting": "waiting",
         "cannot be assessed": "cannot", "not applicable": "waiting"}
FEW = 9999


def day(text: str) -> str:
    """A date as it is spoken.

    Example:
        >>> day("2026-11-25")
        '25 November 2026'
    """
    year, month, number = text[:10].split("-")
    return f"{int(number)} {MONTHS[int(month) - 1]} {year}"


def weekday(text: str) -> str:
    """A date with its day of the week.

    Example:
        >>> weekday("2026-11-25")
        'Wednesday 25 November'
    """
    return f"{WEEKDAYS[date.fromisoformat(text[:10]).weekday()]} {day(text).rsplit(' ', 1)[0]}"


def clock(at: str) -> str:
    """Day and time of an instant.

    Example:
        >>> clock("2026-11-25T10:31:07Z")
        '25 November 2026, 10:31 UTC'
    """
    return f"{day(at)}, {at[11:16]} UTC"


def percent(utilisation: float, over: bool = False) -> str:
    """A utilisation in whole per cent; over the limit it is rounded up.

    Example:
        >>> percent(0.714), percent(1.001, over=True)
        ('71', '101')
    """
    exact = utilisation * 100
    whole = ceil(exact - 1e-9) if over else floor(exact + 0.5)
    return str(whole if over else min(whole, 100) if utilisation <= 1 else whole)


def figure(value: float, unit: str = "") -> str:
    """A number with as many digits as its unit deserves, thin space from five digits on.

    Example:
        >>> figure(2.3499, "t"), figure(1728.4, "kg"), figure(21.04, "°")
        ('2.35', '1728', '21.0')
    """
    digits = {"kg": 0, "mm": 0, "%": 0, "°": 1, "deg": 1, "t": 2, "m": 2, "kN": 1}.get(unit, 2)
    text = f"{value:.{digits}f}"
    text = text[1:] if float(text) == 0 and text.startswith("-") else text
    whole, dot, rest = text.partition(".")
    return _grouped(whole) + dot + rest if abs(float(text)) > FEW else text


def mark(verdict: str) -> str:
    """The name of the mark that stands for a verdict."""
    return MARKS[verdict]


def sentence(text: str) -> str:
    """The same words with a capital in front and a full stop behind.

    Example:
        >>> sentence("what carries the eye has no rating")
        'What carries the eye has no rating.'
    """
    closed = text if text.endswith((".", "?", "!")) else text + "."
    return closed[:1].upper() + closed[1:]


def listed(names: Any) -> str:
    """Names in a row.

    Example:
        >>> listed(["mass", "left sling", "hoist"])
        'mass, left sling and hoist'
    """
    *first, last = list(names) or [""]
    return f"{', '.join(first)} and {last}" if first else str(last)


def _grouped(whole: str) -> str:
    sign, digits = ("-", whole[1:]) if whole.startswith("-") else ("", whole)
    return sign + f"{int(digits):,}".replace(",", "\u2009")


FILTERS: dict[str, Callable[..., Any]] = {
    "day": day, "clock": clock, "percent": percent, "figure": figure, "mark": mark, "sentence": sentence,
    "listed": listed, "weekday": weekday,
}
