"""What a textile sling carries in the way it is used: mode factors."""

from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.slings.kinds import Hitch

SOURCE = "EN_1492_1"
STRAIGHT = 1.0  # EN 1492-1/-2, mode factor M, straight lift
TWO_LEGS_STEEP, TWO_LEGS_FLAT = 1.4, 1.0  # EN 1492-1/-2, two straight legs, up to 45° and over 45° up to 60°
STEEP_UP_TO_DEG, FLAT_UP_TO_DEG = 45.0, 60.0


def hitch_factor(hitch: Hitch) -> float:
    """Mode factor of one leg on its own pull.

        M = 1.0, straight

    Source:
        EN_1492_1 and EN_1492_2, mode factors.

    Args:
        hitch: how the sling is put on.

    Returns:
        M [-].

    Raises:
        OutOfRangeError: For a hitch that cannot be assessed yet.

    Example:
        >>> hitch_factor(Hitch.STRAIGHT)
        1.0
    """
    if hitch is not Hitch.STRAIGHT:
        raise OutOfRangeError(
            "hitch", hitch.value, "straight only; choked and basket slings cannot be assessed yet", SOURCE
        )

    return STRAIGHT


def two_leg_factor(flatter_leg_deg: float) -> float:
    """Tabulated mode factor of two straight legs that share a symmetric load.

        M = 1.4 up to 45° from vertical, 1.0 over 45° up to 60°

    Source:
        EN_1492_1 and EN_1492_2, mode factors, two-leg sling.

    Args:
        flatter_leg_deg: angle from vertical of the leg that lies flatter [°].

    Returns:
        M [-].

    Raises:
        OutOfRangeError: Beyond 60° from vertical.

    Example:
        >>> two_leg_factor(45.0), two_leg_factor(45.1)
        (1.4, 1.0)
    """
    if 0.0 <= flatter_leg_deg <= STEEP_UP_TO_DEG:
        return TWO_LEGS_STEEP
    if STEEP_UP_TO_DEG < flatter_leg_deg <= FLAT_UP_TO_DEG:
        return TWO_LEGS_FLAT

    raise OutOfRangeError("angle of the flatter leg from vertical", flatter_leg_deg, "0 to 60°", SOURCE)


def pair_wll_t(left_wll_t: float, right_wll_t: float, factor: float) -> float:
    """What two legs carry together by the table: the weaker leg rates the pair.

        WLL = M · min(WLL_A, WLL_B)

    Source:
        MACHINERY_DIRECTIVE, Annex I 4.1.2.5: weakest leg × reduction factor.

    Args:
        left_wll_t: single-leg WLL of the left sling [t].
        right_wll_t: single-leg WLL of the right sling [t].
        factor: M for two legs [-].

    Returns:
        WLL of the pair [t].

    Example:
        >>> round(pair_wll_t(3.0, 4.0, 1.4), 1)
        4.2
    """
    return factor * left_wll_t if left_wll_t <= right_wll_t else factor * right_wll_t
