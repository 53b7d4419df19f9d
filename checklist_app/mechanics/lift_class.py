"""How a lift is planned and who must sign: routine, non-routine, complex."""

from enum import Enum

from checklist_app.mechanics.errors import OutOfRangeError


class LiftClass(Enum):
    """In order of what it asks for."""

    ROUTINE = "routine"
    NON_ROUTINE = "non-routine"
    COMPLEX = "complex"


NON_ROUTINE_ABOVE = 0.75  # EM 385-1-1: a critical lift goes above 75 % of the rating
ESTIMATE_ABOVE = 1.16  # house setting: a mass from a sister or from its parts has 1.15
COMPLEX_ABOVE = 0.90  # house setting, after contractors' manuals (90 %)


def class_by_utilisation(worst_utilisation: float) -> LiftClass:
    """Class by the highest utilisation of any strength check at its worst.

        up to 75 % routine, above non-routine, above 90 % complex

    Source:
        HSE_PLANNING for the three classes, USACE_16_3 for 75 %, HOUSE_SETTING for 90 %.

    Args:
        worst_utilisation: demand / capacity [-], 0 or more.

    Returns:
        Class of the lift.

    Raises:
        OutOfRangeError: If it is no number of 0 or more.

    Example:
        >>> class_by_utilisation(0.76).value
        'non-routine'
    """
    if not worst_utilisation >= 0.0:
        raise OutOfRangeError("utilisation", worst_utilisation, "a number of 0 or more", "HSE_PLANNING")
    if worst_utilisation <= NON_ROUTINE_ABOVE:
        return LiftClass.ROUTINE

    return LiftClass.NON_ROUTINE if worst_utilisation <= COMPLEX_ABOVE else LiftClass.COMPLEX


def class_by_knowledge(mass_may_be_higher: float, cg_is_known: bool) -> LiftClass:
    """Class by how well the load is known.

        centre of gravity not known, or a mass that may be over 1.16 times as high: non-routine

    Source:
        HSE_PLANNING for the three classes, HOUSE_SETTING for what puts a lift into which.

    Args:
        mass_may_be_higher: highest mass / stated mass [-], 1 or more; an estimate has 1.25.
        cg_is_known: the centre of gravity is known.

    Returns:
        Class of the lift.

    Raises:
        OutOfRangeError: If the ratio is no number of 1 or more.

    Example:
        >>> class_by_knowledge(1.25, cg_is_known=True).value
        'non-routine'
    """
    if not mass_may_be_higher >= 1.0:
        raise OutOfRangeError("highest mass / stated mass", mass_may_be_higher, "a number of 1 or more", "HSE_PLANNING")

    surely = cg_is_known and mass_may_be_higher <= ESTIMATE_ABOVE
    return LiftClass.ROUTINE if surely else LiftClass.NON_ROUTINE
