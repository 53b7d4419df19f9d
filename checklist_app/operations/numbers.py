"""A number as somebody types it, comma or point; what can be read in two ways is asked back, never guessed."""

import re
from dataclasses import dataclass
from math import isfinite

PLAIN = re.compile(r"([+-]?)([0-9]*)(?:([.,])([0-9]*))?")
SPACED = re.compile(r"[+-]?[0-9]{1,3}(?:[ \u00a0\u2009\u202f][0-9]{3})+(?:[.,][0-9]+)?")
SPACES = re.compile(r"[ \u00a0\u2009\u202f]")
LONGEST = 24
SLIPS = (0.1, 0.01, 0.001, 10.0, 100.0, 1000.0)


@dataclass(frozen=True)
class Fault:
    """What is wrong with an answer, what is allowed, and what was perhaps meant."""

    words: str


def read_text(text: str, unit: str = "") -> float | Fault:
    """The number in a text, in any range.

    Example:
        >>> read_text("12 500 kg", "kg"), read_text("0,250"), read_text("-3")
        (12500.0, 0.25, -3.0)
    """
    shown = text.strip()
    bare = shown.replace("−", "-")
    if unit and bare.endswith(unit):
        bare = bare[: -len(unit)].rstrip()
    if len(bare) > LONGEST:
        return Fault(f"A number of {len(bare)} characters is too long. Write it in fewer digits.")
    if SPACED.fullmatch(bare):
        bare = SPACES.sub("", bare)
    found = PLAIN.fullmatch(bare)
    if found is None or not (found[2] or found[4]):
        return _no_number(shown, unit)
    sign, whole, separator, rest = found[1], found[2], found[3], found[4] or ""
    if separator and len(rest) == 3 and whole.strip("0") and len(whole) <= 3:
        return Fault(f"{shown} can be read in two ways. Write {sign}{whole}{rest}, or {sign}{_decimal(whole, rest)}.")

    return float(f"{sign}{whole or '0'}.{rest or '0'}")


def in_range(
    number: float, unit: str, low: float | None, high: float | None, usual: tuple[float, float] | None = None
) -> float | Fault:
    """The number if it is one that can be, else what is allowed and what was perhaps meant."""
    said = f"{shown_number(number)} {unit}".strip()
    if isinstance(number, int) and abs(number) > 10_000_000_000:
        return Fault(f"A number of {len(str(number))} digits is not one that can be used. {allowed(unit, low, high)}")
    if not isfinite(number):
        return Fault(f"{said} is not a number that can be used. {allowed(unit, low, high)}")
    if low is not None and number < low:
        return Fault(f"{said} is too little. {allowed(unit, low, high)}{_meant(number, low, high, usual)}")
    if high is not None and number > high:
        return Fault(f"{said} is too much. {allowed(unit, low, high)}{_meant(number, low, high, usual)}")

    return float(number)


def allowed(unit: str, low: float | None, high: float | None) -> str:
    """The range in words.

    Example:
        >>> allowed("m", 0.5, 9.0)
        'Allowed: 0.5 to 9 m.'
    """
    if low is None and high is None:
        return f"Write a number, in {unit}." if unit else "Write a number."
    if high is None or low is None:
        bound = f"from {shown_number(low)}" if low is not None else f"up to {shown_number(high or 0.0)}"
    else:
        bound = f"{shown_number(low)} to {shown_number(high)}"

    return f"Allowed: {bound} {unit}".rstrip() + "."


def shown_number(number: float) -> str:
    """A number without more digits than it has.

    Example:
        >>> shown_number(85.0), shown_number(0.05), shown_number(100000.0)
        ('85', '0.05', '100000')
    """
    if isinstance(number, int) and abs(number) > 10_000_000_000:
        return "a number this long"
    if not isfinite(number) or not 1e-4 <= abs(number) < 1e10:
        return f"{number:g}"

    return f"{number:.6f}".rstrip("0").rstrip(".")


def _meant(number: float, low: float | None, high: float | None, usual: tuple[float, float] | None) -> str:
    """A slip of the decimal point, or millimetres for metres: the nearest that would be allowed."""
    likely = usual or (low, high)
    for slip in SLIPS:
        meant = number * slip
        if _inside(meant, low, high) and _inside(meant, *likely) and meant != 0.0:
            return f" Did you mean {shown_number(float(f'{meant:.6g}'))}?"
    return ""


def _inside(number: float, low: float | None, high: float | None) -> bool:
    return (low is None or number >= low) and (high is None or number <= high)


def _decimal(whole: str, rest: str) -> str:
    short = rest.rstrip("0")
    return f"{whole}.{short}" if len(short) in (1, 2) else f"{whole}.{rest}0" if short else whole


def _no_number(shown: str, unit: str) -> Fault:
    said = f"“{shown[:LONGEST]}” is no number." if shown else "There is no number."
    example = f"Write it in {unit}, such as 1.5." if unit else "Write it in digits, such as 1.5."
    return Fault(f"{said} {example}")
