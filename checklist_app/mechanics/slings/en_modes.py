"""EN rules: mode and leg factors by the way of slinging and the band of the angle from vertical.

Every pull along a leg is held against `single_leg_factor` with no factor for its angle; `multi_leg_factor` and
`basket_factor` stand beside it for symmetric loads, and the stricter governs.
"""

from checklist_app.mechanics import exact
from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.slings.kinds import Hitch

STRAIGHT, CHOKED = 1.0, 0.8  # EN 1492-1/-2 mode factors; 0.8 for chain in DGUV Information 209-021
PARALLEL, TO_45, TO_60 = 2.0, 1.4, 1.0  # EN 1492-1/-2, basket
PARALLEL_UP_TO_DEG, STEEP_UP_TO_DEG, FLAT_UP_TO_DEG = 6.0, 45.0, 60.0
# EN 1492-1/-2 M, EN 818-4 and EN 13414-1 K_L: up to 45° from vertical, over 45° up to 60°
LEG_FACTORS = {2: (1.4, 1.0), 3: (2.1, 1.5), 4: (2.1, 1.5)}


def single_leg_factor(hitch: Hitch) -> float:
    """What one part of a sling carries by its own pull, as a share of the straight WLL.

        M = 1.0 straight, 0.8 choked, 1.0 each part of a basket

    Source:
        EN_1492_1 and EN_1492_2, mode factors, straight and choked; choked chain DGUV_209_021, wire rope
        ROPE_FIBRE_CORE, both 0.8; DOUBLE_WRAP for a second wrap, which adds nothing. Laid double and choked counts as
        one choked part.

    Args:
        hitch: how the sling is put on.

    Returns:
        M [-].

    Example:
        >>> single_leg_factor(Hitch.STRAIGHT), single_leg_factor(Hitch.CHOKED), single_leg_factor(Hitch.BASKET)
        (1.0, 0.8, 1.0)
    """
    return CHOKED if hitch.is_choked else STRAIGHT


def basket_factor(flatter_part_deg: float) -> float:
    """What one sling carries as a basket, or laid double, both parts to one hook.

        M = 2 cos β up to 6° from vertical (2.0 upright), 1.4 up to 45°, 1.0 up to 60°

    Source:
        EN_1492_1 and EN_1492_2, mode factors, basket; PARALLEL_6_DEG for where parallel ends. Within it the statics of
        two alike parts keep the factor below the printed 2.0.

    Args:
        flatter_part_deg: angle from vertical of the part that lies flatter [°].

    Returns:
        M [-], on the WLL of the sling used straight.

    Raises:
        OutOfRangeError: Beyond 60° from vertical, or no number.

    Example:
        >>> basket_factor(0.0), basket_factor(20.0), basket_factor(45.1)
        (2.0, 1.4, 1.0)
    """
    if 0.0 <= flatter_part_deg <= PARALLEL_UP_TO_DEG:
        return PARALLEL * exact.cos(flatter_part_deg / exact.RAD_IN_DEG)

    return _banded((TO_45, TO_60), flatter_part_deg)


def multi_leg_factor(legs: int, hitch: Hitch, flatter_leg_deg: float) -> float:
    """Tabulated factor of two, three or four alike legs that share a symmetric load from one hook.

        two legs 1.4 up to 45° from vertical, 1.0 over 45° up to 60°; three or four 2.1 and 1.5; choked × 0.8

    Source:
        EN_1492_1 and EN_1492_2 (factors M), EN_818_4 and EN_13414_1 (leg factors); the choked cells are the products,
        1.4 × 0.8 and so on. How many legs may count on a stiff load: `legs.counted_legs`.

    Args:
        legs: legs that count, 1 to 4.
        hitch: how each leg is put on; a basket has no tabulated factor here.
        flatter_leg_deg: angle from vertical of the flattest leg [°].

    Returns:
        Factor on the WLL of the weakest leg used straight [-].

    Raises:
        OutOfRangeError: Beyond 60°, for baskets, or for another number of legs.

    Example:
        >>> multi_leg_factor(2, Hitch.STRAIGHT, 45.0), round(multi_leg_factor(2, Hitch.CHOKED, 30.0), 3)
        (1.4, 1.12)
    """
    if hitch.is_basket:
        raise OutOfRangeError("hitch", hitch.value, "straight or choked legs: the table has no baskets", "EN_1492_1")
    if legs == 1:
        return single_leg_factor(hitch)
    if legs not in LEG_FACTORS:
        raise OutOfRangeError("number of legs", legs, "1 to 4", "EN_1492_1")

    return single_leg_factor(hitch) * _banded(LEG_FACTORS[legs], flatter_leg_deg)


def _banded(factors: tuple[float, float], from_vertical_deg: float) -> float:
    if 0.0 <= from_vertical_deg <= STEEP_UP_TO_DEG:
        return factors[0]
    if STEEP_UP_TO_DEG < from_vertical_deg <= FLAT_UP_TO_DEG:
        return factors[1]

    raise OutOfRangeError("angle of the flatter leg from vertical", from_vertical_deg, "0 to 60°", "EN_1492_1")
