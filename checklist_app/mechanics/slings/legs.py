"""Which legs count, what the weakest of them makes of the rating, and when a lift counts as symmetric."""

from collections.abc import Sequence
from math import isfinite

from checklist_app.mechanics import exact
from checklist_app.mechanics.errors import OutOfRangeError, required_positive
from checklist_app.mechanics.slings.kinds import LegRule

COUNTED = {
    LegRule.TWO_DIAGONAL_LEGS: {1: 1, 2: 2, 3: 3, 4: 2},  # Queensland guide: rate four legs on the two diagonal ones
    LegRule.THREE_LEGS: {1: 1, 2: 2, 3: 3, 4: 3},  # EN 818-4, EN 13414-1, EN 1492: three and four legs alike
    LegRule.TWO_LEGS: {1: 1, 2: 2, 3: 2, 4: 2},  # DGUV Information 209-021, NAVEDTRA 14080
}
NEARLY_VERTICAL_DEG = 15.0  # EN 818-6: steeper legs to a common hook are to be avoided
ALIKE_WITHIN_DEG = 15.0  # EN 818-6: leg angles, and plan angles, within 15° of each other
FULL_TURN_DEG = 360.0
FLAT_UP_TO_DEG = 60.0


def counted_legs(legs: int, rule: LegRule) -> int:
    """How many legs of a stiff load a tabulated rating may count.

    Source:
        QUEENSLAND_DOGGERS (two diagonal legs), EN_818_4 (three), DGUV_209_021 and NAVEDTRA_RIGGING (two of three or
        four). Counting three of four is a choice that somebody makes and the record names.

    Args:
        legs: legs there are, 1 to 4.
        rule: the choice.

    Returns:
        Legs that count.

    Raises:
        OutOfRangeError: For another number of legs.

    Example:
        >>> counted_legs(4, LegRule.TWO_DIAGONAL_LEGS), counted_legs(4, LegRule.THREE_LEGS)
        (2, 3)
    """
    if legs not in COUNTED[rule]:
        raise OutOfRangeError("number of legs", legs, "1 to 4", "EN_818_4")

    return COUNTED[rule][legs]


def weakest_leg_wll_t(wll_t: Sequence[float]) -> float:
    """The leg that rates them all.

        WLL = min(WLL_1 … WLL_n)

    Source:
        MACHINERY_DIRECTIVE, Annex I 4.1.2.5: the weakest leg × the reduction factor for so many legs.

    Args:
        wll_t: single-leg WLL of each leg [t].

    Returns:
        WLL of the weakest [t].

    Raises:
        OutOfRangeError: Without a leg, or if a WLL is no number above 0.

    Example:
        >>> weakest_leg_wll_t((4.0, 3.0, 4.0))
        3.0
    """
    if not wll_t:
        raise OutOfRangeError("number of legs", 0, "1 to 4", "MACHINERY_DIRECTIVE")
    weakest = wll_t[0]
    for each in wll_t:
        required_positive("WLL of a leg", each, "MACHINERY_DIRECTIVE")
        weakest = each if each < weakest else weakest

    return weakest


def pull_if_two_carry(factor: float, flatter_leg_deg: float) -> float:
    """Pull in each of two legs that alone come tight at the full tabulated rating of four, in single-leg WLLs.

        T / WLL = M / (2 cos β)

    Source:
        STATICS_TWO_DIAGONAL_LEGS: 2.1 / (2 cos 45°) = 1.48, 1.5 / (2 cos 60°) = 1.50. Shown wherever three of four
        legs are counted.

    Args:
        factor: tabulated factor that was credited [-], above 0.
        flatter_leg_deg: β of the flattest leg [°], 0 to 60.

    Returns:
        Pull / single-leg WLL [-].

    Raises:
        OutOfRangeError: If an argument leaves its range.

    Example:
        >>> round(pull_if_two_carry(2.1, 45.0), 2), round(pull_if_two_carry(1.5, 60.0), 2)
        (1.48, 1.5)
    """
    required_positive("factor of the legs", factor, "EN_818_4")
    if not 0.0 <= flatter_leg_deg <= FLAT_UP_TO_DEG:
        raise OutOfRangeError("angle of the flatter leg from vertical", flatter_leg_deg, "0 to 60°", "EN_818_4")

    return factor / (2.0 * exact.cos(flatter_leg_deg / exact.RAD_IN_DEG))


def nearly_vertical_below_deg() -> float:
    """Legs steeper than this, gathered on one hook, hold a load unsteadily: a caution, not a failure.

        β ≥ 15°

    Source:
        EN_818_6, legs nearer vertical are to be avoided. One straight pull on a stud is what the stud wants.

    Returns:
        Angle from vertical [°].

    Example:
        >>> nearly_vertical_below_deg()
        15.0
    """
    return NEARLY_VERTICAL_DEG


def leg_angles_alike(from_vertical_deg: Sequence[float]) -> bool:
    """Whether the legs, as many as there are, lie alike enough for a tabulated factor.

        max β − min β ≤ 15°

    Source:
        EN_818_6, symmetric load. Its other conditions (80 % of the WLL, 15° from vertical) allow asymmetry that was
        not calculated.

    Args:
        from_vertical_deg: β of each leg [°].

    Returns:
        True within 15° of each other.

    Raises:
        OutOfRangeError: If an angle is no number of 0 to 180, or there is none.

    Example:
        >>> leg_angles_alike((20.0, 30.0, 35.0)), leg_angles_alike((20.0, 38.0))
        (True, False)
    """
    for angle_deg in from_vertical_deg or (float("nan"),):
        if not 0.0 <= angle_deg <= FULL_TURN_DEG / 2.0:
            raise OutOfRangeError("angle of a leg from vertical", angle_deg, "0 to 180°", "EN_818_6")

    return max(from_vertical_deg) - min(from_vertical_deg) <= ALIKE_WITHIN_DEG


def plan_angles_alike(bearing_deg: Sequence[float]) -> bool:
    """Whether three or four legs lie evenly round the hook, seen from above.

        largest − smallest gap between neighbours ≤ 15°

    Source:
        EN_818_6, symmetric load: the plan angles within 15° of each other.

    Args:
        bearing_deg: direction of each leg seen from above, from any one line [°].

    Returns:
        True within 15° of each other; two legs: true opposite each other within 15°.

    Raises:
        OutOfRangeError: For fewer than two legs, or a direction that is no number.

    Example:
        >>> plan_angles_alike((45.0, 135.0, 225.0, 315.0)), plan_angles_alike((0.0, 90.0, 200.0))
        (True, False)
    """
    if len(bearing_deg) < 2 or not all(isfinite(each) for each in bearing_deg):
        raise OutOfRangeError("direction of the legs", tuple(bearing_deg), "two or more directions", "EN_818_6")

    around = sorted(each % FULL_TURN_DEG for each in bearing_deg)
    gaps = [after - before for before, after in zip(around, (*around[1:], around[0] + FULL_TURN_DEG), strict=True)]

    return max(gaps) - min(gaps) <= ALIKE_WITHIN_DEG
