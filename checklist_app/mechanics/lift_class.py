"""How a lift is planned and who must sign: routine, non-routine, complex."""

from enum import Enum

from checklist_app.mechanics.errors import OutOfRangeError


class LiftClass(Enum):
    """In order of what it asks for."""

    ROUTINE = "routine"
    NON_ROUTINE = "non-routine"
    COMPLEX = "complex"


NON_ROUTINE_ABOVE = 0.75  # EM 385-1-1: a critical lift goes above 75 % of the rating
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


def class_by_knowledge(mass_is_estimated: bool, cg_is_known: bool) -> LiftClass:
    """Class by what is known of the load.

        mass estimated, or centre of gravity not known: non-routine

    Source:
        HSE_PLANNING for the three classes, HOUSE_SETTING for what puts a lift into which.

    Args:
        mass_is_estimated: the mass is an estimate.
        cg_is_known: the centre of gravity is known.

    Returns:
        Class of the lift.

    Example:
        >>> class_by_knowledge(mass_is_estimated=True, cg_is_known=True).value
        'non-routine'
    """
    return LiftClass.ROUTINE if cg_is_known and not mass_is_estimated else LiftClass.NON_ROUTINE
