"""What a clause does outside the bounds it was written for: it refuses, and says what would be allowed."""

from math import isfinite


class OutOfRangeError(ValueError):
    """A value lies outside what a clause covers; the facts are attributes, the message is for the workshop.

    Example:
        >>> str(OutOfRangeError("angle from vertical", 62.0, "0 to 60°", "EN_1492_1"))
        'angle from vertical is 62; allowed: 0 to 60°'
    """

    def __init__(self, name: str, value: object, allowed: str, source: str) -> None:
        self.name, self.value, self.allowed, self.source = name, value, allowed, source
        super().__init__(f"{name} is {_shown(value)}; allowed: {allowed}")


def required_positive(name: str, value: float, source: str) -> None:
    """Refuse what is not a number above zero; NaN does not pass."""
    if not (isfinite(value) and value > 0.0):
        raise OutOfRangeError(name, value, "a number above 0", source)


def required_not_negative(name: str, value: float, source: str) -> None:
    """Refuse what is not a number of zero or more; NaN does not pass."""
    if not (isfinite(value) and value >= 0.0):
        raise OutOfRangeError(name, value, "a number of 0 or more", source)


def _shown(value: object) -> str:
    if not isinstance(value, float | int):
        return str(value)
    if not 1.0 <= abs(value) < 1e6:
        return f"{float(value):.4g}"

    return f"{float(value):.2f}".rstrip("0").rstrip(".")
