"""Tie-downs over the top: they press the load down, and friction holds it. STF counts, never LC."""

from math import ceil, isfinite

from checklist_app.mechanics import exact
from checklist_app.mechanics.errors import OutOfRangeError, required_not_negative, required_positive
from checklist_app.mechanics.lashing.balance import Balance

SOURCE = "EN_12195_1"
BOTH_SIDES = 2.0  # EN 12195-1:2010 has no k; VDI 2700 has
VDI_K = 1.5
DOUBLE_BELOW_DEG, OTHER_BELOW_DEG, STEEPEST_DEG = 75.0, 30.0, 90.0
LEAST_AGAINST_WANDERING = 1


def tie_downs_against_sliding(
    weight_dan: float, push: float, downward: float, friction: float, angle_deg: float, tension_dan: float, fs: float,
    blocked_dan: float = 0.0, k: float = BOTH_SIDES,
) -> float:
    """How many tie-downs keep a load from sliding, blocks beside them.

        n = ((c − μ cz) G − FB) fs / (k μ sin α FT);  0 where nothing is left to hold

    Source:
        EN_12195_1 5.4.2: k is 2 there, fs 1.25 forwards on the road, else 1.1; VDI_2700_2: k 1.5 without fs.

    Args:
        weight_dan: G [daN], above 0.
        push: c [-], 0 or more.
        downward: cz, share of the weight that remains [-], above 0 up to 1.
        friction: μ [-], 0 to 1.
        angle_deg: α, to the deck [°], 0 to 90.
        tension_dan: FT, STF of the label or as measured [daN], above 0.
        fs: safety factor of tie-downs [-], 1 or more.
        blocked_dan: FB, what blocks hold [daN], 0 or more.
        k: both sides as much as the ratchet side: 2; less where the far side gets less [-], 1 to 2.

    Returns:
        n, not rounded [-].

    Raises:
        OutOfRangeError: If a number is outside, or no number of tie-downs would hold: no friction, or straps level.

    Example:
        >>> round(tie_downs_against_sliding(637.65, 0.8, 1.0, 0.3, 90.0, 350.0, 1.25), 3)
        1.898
    """
    _required(weight_dan, push, downward, friction, angle_deg, fs, blocked_dan)
    required_positive("tension of a tie-down", tension_dan, SOURCE)
    if not 1.0 <= k <= BOTH_SIDES:
        raise OutOfRangeError("k of the far side", k, "1 to 2", "VDI_2700_2")

    left_dan = (push - friction * downward) * weight_dan - blocked_dan
    if left_dan <= 0.0:
        return 0.0
    each_dan = k * friction * exact.sin(angle_deg / exact.RAD_IN_DEG) * tension_dan
    if not each_dan > 0.0:
        raise OutOfRangeError("friction and slope of tie-downs", "nothing holds",
                              "friction, straps steeper than level; or block it, or lash it directly", SOURCE)

    return left_dan * fs / each_dan


def sliding_with_tie_downs(
    weight_dan: float, push: float, downward: float, friction: float, angle_deg: float, tensions_dan: float,
    fs: float, blocked_dan: float = 0.0, k: float = BOTH_SIDES,
) -> Balance:
    """Need and have of a load under tie-downs and behind blocks.

        need c G,  have μ (cz G + k sin α Σ FT / fs) + FB

    Source:
        EN_12195_1 5.4.2, as a balance.

    Args:
        weight_dan: G [daN], above 0.
        push: c [-], 0 or more.
        downward: cz [-], above 0 up to 1.
        friction: μ [-], 0 to 1.
        angle_deg: α, to the deck [°], 0 to 90.
        tensions_dan: Σ FT of all tie-downs [daN], 0 or more.
        fs: safety factor of tie-downs [-], 1 or more.
        blocked_dan: FB [daN], 0 or more.
        k: 2, or less where the far side gets less [-], 1 to 2.

    Returns:
        Both sides [daN]; just enough is enough.

    Raises:
        OutOfRangeError: If a number is outside.

    Example:
        >>> sliding_with_tie_downs(9810.0, 0.8, 1.0, 0.45, 90.0, 3850.0, 1.25, 5000.0).have
        12186.5
    """
    _required(weight_dan, push, downward, friction, angle_deg, fs, blocked_dan)
    required_not_negative("tension of all tie-downs", tensions_dan, SOURCE)
    if not 1.0 <= k <= BOTH_SIDES:
        raise OutOfRangeError("k of the far side", k, "1 to 2", "VDI_2700_2")
    pressed_dan = k * exact.sin(angle_deg / exact.RAD_IN_DEG) * tensions_dan / fs

    return Balance(push * weight_dan, friction * (downward * weight_dan + pressed_dan) + blocked_dan)


def tie_downs_against_tipping(
    weight_dan: float, push: float, downward: float, height_m: float, to_edge_m: float, strands_m: float,
    angle_deg: float, tension_dan: float, fs: float,
) -> float:
    """How many tie-downs keep a load from tipping over one edge.

        n = G (c d − cz b) fs / (w sin α FT);  0 where it stands by itself

    w is the distances of both strands from the edge where they come down, added up: twice b for a strap about the
    centre of gravity, however wide the top is. Rows side by side tip one by one: G of all, b and w of one row.

    Source:
        STATICS_LASHING; EN_12195_1 5.4.3 counts the upright components alone.

    Args:
        weight_dan: G [daN], above 0.
        push: c [-], 0 or more.
        downward: cz [-], above 0 up to 1.
        height_m: d, centre of gravity above the edge [m], above 0.
        to_edge_m: b, level from centre of gravity to the edge [m], above 0.
        strands_m: w, distances of the two strands from the edge added up [m], above 0.
        angle_deg: α, to the deck [°], 0 to 90.
        tension_dan: FT [daN], above 0.
        fs: safety factor of tie-downs [-], 1 or more.

    Returns:
        n, not rounded [-].

    Raises:
        OutOfRangeError: If a number is outside, or straps lie level.

    Example:
        >>> round(tie_downs_against_tipping(392.4, 0.6, 1.0, 0.9, 0.4, 0.8, 80.0, 350.0, 1.1), 3)
        0.219
    """
    _required(weight_dan, push, downward, 0.0, angle_deg, fs, 0.0)
    for name, value in (("height of the centre of gravity", height_m), ("centre of gravity to edge", to_edge_m),
                        ("distances of the strands from the edge", strands_m), ("tension of a tie-down", tension_dan)):
        required_positive(name, value, SOURCE)

    left_danm = weight_dan * (push * height_m - downward * to_edge_m)
    if left_danm <= 0.0:
        return 0.0
    each_danm = strands_m * exact.sin(angle_deg / exact.RAD_IN_DEG) * tension_dan
    if not each_danm > 0.0:
        raise OutOfRangeError("slope of tie-downs", angle_deg, "steeper than level", SOURCE)

    return left_danm * fs / each_danm


def count(*quotients: float) -> int:
    """A whole number of tie-downs for the largest quotient; one at least, against wandering.

    Source:
        EN_12195_1: what friction alone holds still wanders and bounces.

    Args:
        quotients: n of each direction, not rounded [-], 0 or more.

    Returns:
        How many.

    Raises:
        OutOfRangeError: If one of them is no number of 0 or more.

    Example:
        >>> count(1.898, 0.668), count(0.0)
        (2, 1)
    """
    for quotient in quotients:
        if not (isfinite(quotient) and quotient >= 0.0):
            raise OutOfRangeError("number of tie-downs", quotient, "a number of 0 or more", SOURCE)

    return max([LEAST_AGAINST_WANDERING, *(ceil(quotient) for quotient in quotients)])


def flat_angle_factor(angle_deg: float) -> float:
    """By how much a count read from a table for steep straps grows with flatter ones.

        1 from 75°, 2 from 30 to 75°

    Source:
        MSC_1498, Informative material 5.

    Args:
        angle_deg: α, to the deck [°], 30 to 90.

    Returns:
        Factor on the number of tie-downs [-].

    Raises:
        OutOfRangeError: Below 30°: another way of lashing.

    Example:
        >>> flat_angle_factor(60.0)
        2.0
    """
    if not OTHER_BELOW_DEG <= angle_deg <= STEEPEST_DEG:
        raise OutOfRangeError("angle of the tie-down to the deck", angle_deg, "30 to 90°; flatter: lash otherwise",
                              "MSC_1498")

    return 1.0 if angle_deg >= DOUBLE_BELOW_DEG else 2.0


def _required(
    weight_dan: float, push: float, downward: float, friction: float, angle_deg: float, fs: float, blocked_dan: float
) -> None:
    required_positive("weight of the load", weight_dan, SOURCE)
    required_not_negative("coefficient of acceleration", push, SOURCE)
    required_not_negative("what blocks hold", blocked_dan, SOURCE)
    if not 0.0 < downward <= 1.0:
        raise OutOfRangeError("share of the weight that remains", downward, "above 0, 1 at most", SOURCE)
    if not 0.0 <= friction <= 1.0:
        raise OutOfRangeError("friction", friction, "0 to 1", SOURCE)
    if not 0.0 <= angle_deg <= STEEPEST_DEG:
        raise OutOfRangeError("angle of the tie-down to the deck", angle_deg, "0 to 90°", SOURCE)
    if not 1.0 <= fs < float("inf"):
        raise OutOfRangeError("safety factor of tie-downs", fs, "1 or more", SOURCE)
