"""Does a load stand by itself, and what it would take that it does. Equality counts as liable to tip.

b counts from the feet or bearers that really bear, never from the outline of a pallet; where the centre of gravity is
off the middle the smaller b counts; a soft edge moves inwards.
"""

from checklist_app.mechanics.errors import OutOfRangeError, required_not_negative, required_positive
from checklist_app.mechanics.lashing.balance import Balance

SOURCE = "EN_12195_1"


def stands_unlashed(push: float, downward: float, height_m: float, to_edge_m: float) -> Balance:
    """Whether a load tips over one edge without lashings.

        need c d,  have cz b

    Source:
        EN_12195_1; equality counts as liable to tip.

    Args:
        push: c [-], 0 or more.
        downward: cz [-], above 0 up to 1.
        height_m: d, centre of gravity above the edge [m], above 0.
        to_edge_m: b, level from the centre of gravity to where it bears [m], above 0.

    Returns:
        Both sides [m]; just enough is refused.

    Raises:
        OutOfRangeError: If a number is outside.

    Example:
        >>> stands_unlashed(0.8, 1.0, 1.0, 0.80).holds, stands_unlashed(0.8, 1.0, 1.0, 0.85).holds
        (False, True)
    """
    required_not_negative("coefficient of acceleration", push, SOURCE)
    if not 0.0 < downward <= 1.0:
        raise OutOfRangeError("share of the weight that remains", downward, "above 0, 1 at most", SOURCE)
    required_positive("height of the centre of gravity", height_m, SOURCE)
    required_positive("centre of gravity to edge", to_edge_m, SOURCE)

    return Balance(push * height_m, downward * to_edge_m, equality_holds=False)


def base_over_height_needed(push: float, downward: float) -> float:
    """What b / d must exceed for a load to stand by itself.

        b / d > c / cz

    Source:
        EN_12195_1.

    Args:
        push: c [-], 0 or more.
        downward: cz [-], above 0 up to 1.

    Returns:
        c / cz [-].

    Raises:
        OutOfRangeError: If a number is outside.

    Example:
        >>> base_over_height_needed(0.4, 0.2)
        2.0
    """
    required_not_negative("coefficient of acceleration", push, SOURCE)
    if not 0.0 < downward <= 1.0:
        raise OutOfRangeError("share of the weight that remains", downward, "above 0, 1 at most", SOURCE)

    return push / downward


def nearest_edge_m(edges_m: tuple[float, float], yields_m: float) -> float:
    """Level distance from the centre of gravity to the nearer of two edges, less what a soft edge gives way.

        b = least of both − what yields

    Source:
        STATICS_LASHING: a soft board carries only farther in.

    Args:
        edges_m: from the centre of gravity to the one and to the other edge [m], above 0.
        yields_m: how far in from the edge it really bears [m], 0 or more.

    Returns:
        b [m].

    Raises:
        OutOfRangeError: If nothing is left, or a number is none.

    Example:
        >>> nearest_edge_m((0.45, 0.35), 0.05)
        0.3
    """
    for edge_m in edges_m:
        required_positive("centre of gravity to edge", edge_m, "STATICS_LASHING")
    required_not_negative("what a soft edge gives way", yields_m, "STATICS_LASHING")
    left_m = min(edges_m) - yields_m
    required_positive("centre of gravity to where it bears", left_m, "STATICS_LASHING")

    return left_m


def block_against_tipping_m(block_dan: float, block_height_m: float, weight_dan: float) -> float:
    """How much a block at one height adds to cz b.

        FB s / G

    Source:
        STATICS_LASHING: a block holds up to its height and no more; a low one adds almost nothing.

    Args:
        block_dan: FB [daN], 0 or more.
        block_height_m: s, above the edge [m], 0 or more.
        weight_dan: G [daN], above 0.

    Returns:
        Share of the arm of the weight [m].

    Raises:
        OutOfRangeError: If a number is outside.

    Example:
        >>> block_against_tipping_m(400.0, 0.15, 1471.5) < 0.041
        True
    """
    required_not_negative("what a block holds", block_dan, "STATICS_LASHING")
    required_not_negative("height of a block", block_height_m, "STATICS_LASHING")
    required_positive("weight of the load", weight_dan, "STATICS_LASHING")

    return block_dan * block_height_m / weight_dan
