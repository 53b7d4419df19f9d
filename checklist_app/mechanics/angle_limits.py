"""How flat a leg may lie, and when two legs count as symmetric."""

from checklist_app.mechanics.errors import required_not_negative

LEG_FROM_VERTICAL_UP_TO_DEG = 60.0  # EN 818-4 and EN 1492-1/-2: no rating beyond
LEGS_ALIKE_WITHIN_DEG = 15.0  # EN 818-6, symmetric load


def leg_from_vertical_limit_deg() -> float:
    """Flattest leg that has a rating.

        β ≤ 60°

    Source:
        EN_818_4; EN_1492_1 ends its table at the same angle.

    Returns:
        Limit of β [°].

    Example:
        >>> leg_from_vertical_limit_deg()
        60.0
    """
    return LEG_FROM_VERTICAL_UP_TO_DEG


def legs_alike(left_deg: float, right_deg: float) -> bool:
    """Whether the tabulated factor of a symmetric load applies.

        |β_A − β_B| ≤ 15°

    Source:
        EN_818_6, symmetric load. Its two other conditions (80 % of the WLL, 15° from vertical) allow asymmetry that
        was not calculated; here each leg is calculated, and they never take the tabulated factor away.

    Args:
        left_deg: left leg from vertical [°], 0 or more.
        right_deg: right leg from vertical [°], 0 or more.

    Returns:
        True within 15° of each other.

    Raises:
        OutOfRangeError: If an angle is no number of 0 or more.

    Example:
        >>> legs_alike(20.0, 35.0), legs_alike(20.0, 38.0)
        (True, False)
    """
    required_not_negative("angle of the left leg from vertical", left_deg, "EN_818_6")
    required_not_negative("angle of the right leg from vertical", right_deg, "EN_818_6")

    return abs(left_deg - right_deg) <= LEGS_ALIKE_WITHIN_DEG
