"""Figures as they are written into the drawing."""

from math import ceil

from checklist_app.operations.check import Check, highest_utilisation

ANGLES = ("leg_angle", "angle_agrees")


def metres(length_m: float) -> str:
    """A length.

    Example:
        >>> metres(1.25)
        '1.25 m'
    """
    return f"{length_m:.2f} m"


def degrees(angle_deg: float) -> str:
    """An angle.

    Example:
        >>> degrees(29.96)
        '30.0°'
    """
    return f"{angle_deg:.1f}°"


def tonnes(load_t: float) -> str:
    """A pull as the tags count it, so that it can be held against a WLL by eye.

    Example:
        >>> tonnes(1.0481)
        '1.05 t'
    """
    return f"{load_t:.2f} t"


def percent(share: float) -> str:
    """A utilisation; what is over the limit is rounded up, so that 100.2 % never reads 100 %.

    Example:
        >>> percent(0.714), percent(1.125)
        ('71 %', '113 %')
    """
    whole = round(100.0 * share) if share <= 1.0 else ceil(100.0 * share)

    return f"{whole} %"


def leg_percent(checks: tuple[Check, ...], label: str) -> str:
    """The highest utilisation of anything in one leg, at its worst; empty while nothing is computed."""
    highest = leg_highest(checks, label)

    return f"up to {percent(highest)}" if highest > 0.0 else ""


def leg_highest(checks: tuple[Check, ...], label: str) -> float:
    """The highest utilisation of anything in one leg, at its worst; 0 while nothing is computed."""
    of_leg = (check for check in checks if check.row == label and not of_a_hook(check))

    return max((highest_utilisation(check) for check in of_leg), default=0.0)


def of_a_hook(check: Check) -> bool:
    """Whether it is a check of one of two hooks: its rows are called as the legs are."""
    return check.quantity.startswith("hook_") and check.row is not None


def governing_words(deciding: Check | None, label: str | None) -> str:
    """What decides, in few words, if it is in this leg or in its own hook; for no leg, if it is in none.

    Example:
        >>> governing_words(None, "left")
        ''
    """
    if deciding is None or deciding.row != label:
        return ""
    if deciding.quantity in ANGLES:
        return "angle governs"

    return f"{deciding.clause.title.partition(',')[0]} governs"
