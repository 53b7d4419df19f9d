"""US practice: the angle counts from the horizontal, the factor is its sine, a choker has a rating of its own.

Not to be mixed with the EN factors: a lift names one rule set and prints it.
"""

from checklist_app.mechanics import exact
from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.slings.kinds import Hitch

SOURCE = "US_SLING_CARDS"
FLATTEST_DEG, UPRIGHT_DEG = 30.0, 90.0
CHOKER = 0.75  # US training tables, wire rope and chain; the stricter is taken for textile too
CARRYING = {1: 1.0, 2: 2.0, 3: 3.0, 4: 3.0}  # US grade 80 chain tables: three and four legs share a column


def from_horizontal_deg(from_vertical_deg: float) -> float:
    """The angle of a leg as US cards count it.

        α = 90° − β

    Source:
        US_SLING_CARDS.

    Args:
        from_vertical_deg: β [°], 0 to 90.

    Returns:
        α [°].

    Raises:
        OutOfRangeError: If the angle is no number of 0 to 90.

    Example:
        >>> from_horizontal_deg(30.0)
        60.0
    """
    if not 0.0 <= from_vertical_deg <= UPRIGHT_DEG:
        raise OutOfRangeError("angle from vertical", from_vertical_deg, "0 to 90°", SOURCE)

    return UPRIGHT_DEG - from_vertical_deg


def sling_angle_factor(angle_from_horizontal_deg: float) -> float:
    """What is left of a leg's rating for the load, by its angle from the horizontal.

        sin α

    Source:
        US_SLING_CARDS, reduction factors; US_FLATTEST for the end at 30°.

    Args:
        angle_from_horizontal_deg: α [°], 30 to 90.

    Returns:
        Factor [-].

    Raises:
        OutOfRangeError: Flatter than 30° from the horizontal, or no angle.

    Example:
        >>> round(sling_angle_factor(60.0), 3)
        0.866
    """
    if not FLATTEST_DEG <= angle_from_horizontal_deg <= UPRIGHT_DEG:
        raise OutOfRangeError("angle from the horizontal", angle_from_horizontal_deg, "30 to 90°", "US_FLATTEST")

    return exact.sin(angle_from_horizontal_deg / exact.RAD_IN_DEG)


def load_angle_factor(angle_from_horizontal_deg: float) -> float:
    """Pull in a leg for each unit of the load it holds up.

        1 / sin α

    Source:
        US_SLING_CARDS, load angle factors; US_FLATTEST for the end at 30°.

    Args:
        angle_from_horizontal_deg: α [°], 30 to 90.

    Returns:
        Factor [-].

    Raises:
        OutOfRangeError: Flatter than 30° from the horizontal, or no angle.

    Example:
        >>> round(load_angle_factor(45.0), 4)
        1.4142
    """
    return 1.0 / sling_angle_factor(angle_from_horizontal_deg)


def single_leg_factor(hitch: Hitch) -> float:
    """What one part carries by its own pull, as a share of the vertical rating, where the tag prints no choker rating.

        1.0 straight, 0.75 choked, 1.0 each part of a basket

    Source:
        US_HITCH_TABLES, CCOHS_HITCHES (choker 75 % or less); DOUBLE_WRAP for a second wrap, which adds nothing.

    Args:
        hitch: how the sling is put on.

    Returns:
        Factor [-].

    Example:
        >>> single_leg_factor(Hitch.CHOKED)
        0.75
    """
    return CHOKER if hitch.is_choked else 1.0


def basket_factor(flatter_part_deg: float) -> float:
    """What one sling carries as a basket, both parts to one hook.

        2 sin α

    Source:
        US_HITCH_TABLES: 200 % upright, 170 at 60°, 140 at 45°, 100 at 30° (digits cut off).

    Args:
        flatter_part_deg: α of the part that lies flatter, from the horizontal [°], 30 to 90.

    Returns:
        Factor on the vertical rating [-].

    Raises:
        OutOfRangeError: Flatter than 30° from the horizontal, or no angle.

    Example:
        >>> round(basket_factor(90.0), 2), round(basket_factor(30.0), 2)
        (2.0, 1.0)
    """
    return 2.0 * sling_angle_factor(flatter_part_deg)


def multi_leg_factor(legs: int, hitch: Hitch, flatter_leg_deg: float) -> float:
    """Factor of the legs of a bridle that share a symmetric load.

        n sin α, n = 2 for two legs, 3 for three and for four; choked × 0.75

    Source:
        US_GRADE_80, columns of two and of three and four legs; US_HITCH_TABLES for the choker.

    Args:
        legs: legs that count, 1 to 4.
        hitch: how each leg is put on; a basket has no column.
        flatter_leg_deg: α of the flattest leg, from the horizontal [°], 30 to 90.

    Returns:
        Factor on the vertical rating of the weakest leg [-].

    Raises:
        OutOfRangeError: Flatter than 30°, for baskets, or for another number of legs.

    Example:
        >>> round(multi_leg_factor(2, Hitch.STRAIGHT, 60.0), 3), round(multi_leg_factor(4, Hitch.STRAIGHT, 30.0), 3)
        (1.732, 1.5)
    """
    if hitch.is_basket:
        raise OutOfRangeError("hitch", hitch.value, "straight or choked legs: the table has no baskets", SOURCE)
    if legs not in CARRYING:
        raise OutOfRangeError("number of legs", legs, "1 to 4", "US_GRADE_80")
    if legs == 1:
        return single_leg_factor(hitch)

    return single_leg_factor(hitch) * CARRYING[legs] * sling_angle_factor(flatter_leg_deg)
