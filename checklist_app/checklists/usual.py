"""Usual values beside a number: what to tap, how far a step goes, and the range in words."""
from math import floor

STEPS = {"kg": "10", "m": "0.05", "mm": "5", "°": "0.5", "s": "10", "t": "0.5", "m/s": "0.1", "m²": "0.1",
         "daN": "50", "kg/m": "100", "": "0.05"}
DIGITS = {"kg": 0, "m": 2, "mm": 0, "°": 1, "s": 0, "t": 1, "m/s": 1, "m²": 1, "daN": 0, "kg/m": 0, "kn": 0}
BUTTONS = 4
ROUND = {"kg": (5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000),
         "daN": (50, 100, 200, 300, 400, 500, 800, 1000, 2000)}


def step_of(unit: str) -> str:
    """How far one press of minus or plus goes.

    Example:
        >>> step_of("m")
        '0.05'
    """
    return STEPS.get(unit, "1")


def usual_values(usual: tuple[float, float], unit: str) -> tuple[str, ...]:
    """Values to tap: round masses and ratings, else the usual range in equal parts; on both sides of 0, just 0.

    Example:
        >>> usual_values((0.4, 2.5), "m"), usual_values((-2.0, 2.0), "m")
        (('0.40', '1.10', '1.80', '2.50'), ('0',))
        >>> usual_values((200.0, 5000.0), "kg"), usual_values((0.0, 3.0), "°")
        (('500', '1000', '2000', '5000'), ('0.0', '1.0', '2.0', '3.0'))
        >>> usual_values((0.05, 0.7), "")
        ('0.05', '0.25', '0.50', '0.70')
    """
    low, high = usual
    if low < 0.0 < high:
        return ("0",)
    if unit in ROUND:
        return tuple(str(each) for each in ROUND[unit] if low <= each <= high)[-BUTTONS:]
    step, digits = float(step_of(unit)), DIGITS.get(unit, 2)
    least = 0.0 if low == 0.0 else 1.0
    values = [low + (high - low) * number / (BUTTONS - 1) for number in range(BUTTONS)]
    return tuple(dict.fromkeys(f"{max(least, floor(value / step + 0.5)) * step:.{digits}f}" for value in values))


def allowed_words(usual: tuple[float, float] | None, low: float | None, high: float | None, unit: str) -> str:
    """The usual range in words, or the allowed one.

    Example:
        >>> allowed_words((0.4, 2.5), 0.05, 20.0, "m")
        'Usual 0.4 to 2.5 m.'
        >>> allowed_words(None, 0.0, 90.0, "°")
        'Allowed 0 to 90 °.'
    """
    if usual is not None:
        return f"Usual {usual[0]:g} to {usual[1]:g} {unit}".strip() + "."
    if low is not None and high is not None:
        return f"Allowed {low:g} to {high:g} {unit}".strip() + "."
    return ""
