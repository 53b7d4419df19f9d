"""Lashings as they pull: tie-downs as strands; slope, diagonal, loop and spring, which hold by their own pull.

The formulas are for equal legs that lie symmetrically; any other arrangement is a matter of `holding`.
"""

from collections.abc import Sequence
from enum import Enum

from checklist_app.mechanics import exact
from checklist_app.mechanics.errors import OutOfRangeError, required_not_negative, required_positive
from checklist_app.mechanics.lashing.balance import Balance
from checklist_app.mechanics.lashing.lashed_body import Pull, Strand, Stretch
from checklist_app.mechanics.vectors import Vec

SOURCE = "EN_12195_1"
STEEPEST_DEG, BEHIND_DEG = 90.0, 180.0
LEAST_K, BOTH_ALIKE, HALF = 1.0, 2.0, 0.5


class Kind(Enum):
    """How a lashing is put on."""

    TIE_DOWN = "tie-down over the top"
    SLOPE = "slope lashing"
    DIAGONAL = "diagonal lashing"
    LOOP = "loop lashing"
    SPRING = "spring lashing"

    @property
    def legs(self) -> int:
        """Ends that pull on the load."""
        return 1 if self in (Kind.SLOPE, Kind.DIAGONAL) else 2


def direct_legs(kind: Kind, ends: Sequence[tuple[Vec, Vec]], most_dan: float, stretch: Stretch) -> tuple[Pull, ...]:
    """The legs of one direct lashing, each up to the weakest of what is in it.

    Source:
        EN_12195_1 5.5.2 to 5.5.5: one leg of a slope or diagonal lashing, both legs of a loop and of a spring.

    Args:
        kind: how it is put on.
        ends: for each leg where it leaves the load, and its anchor.
        most_dan: least of LC, hooks, eyes and anchors [daN], above 0.
        stretch: what it is made of.

    Returns:
        The legs.

    Raises:
        OutOfRangeError: For a tie-down, or a number of ends that the kind does not have.

    Example:
        >>> ends = [(Vec(0.5, 0.3, 1.0), Vec(1.5, 1.0, 0.0))]
        >>> len(direct_legs(Kind.DIAGONAL, ends, 2000.0, Stretch.WEB))
        1
    """
    if kind is Kind.TIE_DOWN:
        raise OutOfRangeError("kind of direct lashing", kind.value, "slope, diagonal, loop or spring", SOURCE)
    if len(ends) != kind.legs:
        raise OutOfRangeError(f"ends of a {kind.value}", len(ends), str(kind.legs), SOURCE)
    required_positive("what the lashing carries", most_dan, SOURCE)

    return tuple(Pull(at, anchor, most_dan, stretch) for at, anchor in ends)


def tie_down_strands(
    ends: Sequence[tuple[Vec, Vec]], tension_dan: float, lc_dan: float, k: float
) -> tuple[Strand, ...]:
    """The two end strands of a tie-down, the one with the tensioner first.

    Between the points where it lies on the load its pulls cancel; over an edge that brakes it the far strand gets less.

    Source:
        EN_12195_1 (k is 2: both alike), VDI_2700_2 (k 1.5: the far strand gets half).

    Args:
        ends: for each strand where it last touches the load, and its anchor.
        tension_dan: FT of label or instrument [daN], above 0.
        lc_dan: LC of the weakest part [daN], above 0.
        k: 1 to 2 [-]; the far strand carries k − 1 of the tension.

    Returns:
        Two strands.

    Raises:
        OutOfRangeError: If there are not two, or a number is outside.

    Example:
        >>> ends = [(Vec(0.0, s * 0.3, 1.3), Vec(0.0, s * 1.2, 0.0)) for s in (1.0, -1.0)]
        >>> [strand.tension_dan for strand in tie_down_strands(ends, 350.0, 2500.0, 1.5)]
        [350.0, 175.0]
    """
    if len(ends) != Kind.TIE_DOWN.legs:
        raise OutOfRangeError("ends of a tie-down", len(ends), "2", SOURCE)
    required_positive("tension of a tie-down", tension_dan, SOURCE)
    required_positive("LC of the weakest part", lc_dan, SOURCE)
    if not LEAST_K < k <= BOTH_ALIKE:
        raise OutOfRangeError("k of the far side", k, "above 1, 2 at most", "VDI_2700_2")

    return tuple(
        Strand(at, anchor, share * tension_dan, share * HALF * lc_dan)
        for (at, anchor), share in zip(ends, (1.0, k - 1.0), strict=True)
    )


def direct_against_sliding_dan(
    weight_dan: float, push: float, downward: float, friction: float, friction_share: float,
    legs_deg: Sequence[tuple[float, float]],
) -> float:
    """Force that each leg must take to keep a load from sliding.

        FR = G (c − f μ cz) / Σ (cos α cos β + f μ sin α)

    over the legs that pull against the motion: two of four diagonals, one of two slope lashings, both legs of a loop,
    two of each spring. A leg that pulls with the motion is slack and left out.

    Source:
        EN_12195_1 5.5.2, 5.5.3.1, 5.5.4.2, 5.5.5.2; f = 0.75 there and in CTU_ANNEX_7.

    Args:
        weight_dan: G [daN], above 0.
        push: c [-], 0 or more.
        downward: cz [-], above 0 up to 1.
        friction: μ [-], 0 to 1.
        friction_share: f [-], above 0 up to 1.
        legs_deg: α to the deck and β from the line against the motion, of each leg [°].

    Returns:
        FR of each leg [daN]; 0 where friction holds it.

    Raises:
        OutOfRangeError: If a number is outside, or no leg pulls against the motion.

    Example:
        >>> round(direct_against_sliding_dan(1177.2, 0.8, 1.0, 0.3, 0.75, [(35.0, 40.0)] * 2), 1)
        447.3
    """
    _required(weight_dan, push, downward, friction, friction_share)
    counted = 0.0
    for to_deck_deg, from_way_deg in legs_deg:
        along, down = _shares(to_deck_deg, from_way_deg)
        if along > 0.0:
            counted += along + friction_share * friction * down
    left_dan = weight_dan * (push - friction_share * friction * downward)
    if left_dan <= 0.0:
        return 0.0
    if not counted > 0.0:
        raise OutOfRangeError("legs against the motion", "none", "one or more that pull against it", SOURCE)

    return left_dan / counted


def direct_against_tipping(
    weight_dan: float, push: float, downward: float, height_m: float, to_edge_m: float,
    legs: Sequence[tuple[float, float, float, float, float]],
) -> Balance:
    """Need and have of direct lashings about one tipping edge.

        need G (c d − cz b),  have Σ FR (cos α cos β s + sin α t), a leg below 0 goes slack and counts 0

    Source:
        STATICS_LASHING, clause EN_12195_1 5.5.3.2; sideways on the road c is 0.6.

    Args:
        weight_dan: G [daN], above 0.
        push: c [-], 0 or more.
        downward: cz [-], above 0 up to 1.
        height_m: d, centre of gravity above the edge [m], above 0.
        to_edge_m: b, level from centre of gravity to the edge [m], above 0.
        legs: of each FR, α, β, s height of its attachment above the edge, t its level distance inside the edge
            [daN, °, °, m, m].

    Returns:
        Both sides [daN m]; just enough counts as liable to tip.

    Raises:
        OutOfRangeError: If a number is outside.

    Example:
        >>> round(direct_against_tipping(981.0, 0.8, 1.0, 0.8, 0.5, [(57.0, 45.08, 46.84, 1.1, 0.95)] * 2).have, 0)
        137.0
    """
    _required(weight_dan, push, downward, 0.0, 1.0)
    required_positive("height of the centre of gravity", height_m, SOURCE)
    required_positive("centre of gravity to edge", to_edge_m, SOURCE)
    have_danm = 0.0
    for force_dan, to_deck_deg, from_way_deg, height, inside_m in legs:
        required_not_negative("force of a leg", force_dan, SOURCE)
        along, down = _shares(to_deck_deg, from_way_deg)
        have_danm += force_dan * max(0.0, along * height + down * inside_m)

    return Balance(weight_dan * (push * height_m - downward * to_edge_m), have_danm, equality_holds=False)


def foot_stays(
    weight_dan: float, push: float, downward: float, height_m: float, to_heel_m: float,
    legs: Sequence[tuple[float, float, float, float, float]],
) -> Balance:
    """Whether lashings high up leave the foot of a load standing, or let it slide out from under its top.

        need Σ FR (cos α cos β s − sin α t),  have G (c d + cz b), about the heel: the edge behind

    Where it fails the formula against sliding promises too much: lash low as well, or chock the foot.

    Source:
        STATICS_LASHING; no standard has it.

    Args:
        weight_dan: G [daN], above 0.
        push: c at which it slides [-], 0 or more.
        downward: cz [-], above 0 up to 1.
        height_m: d [m], above 0.
        to_heel_m: b, level from centre of gravity to the heel [m], above 0.
        legs: of each FR, α, β, s above the heel, t level distance from it [daN, °, °, m, m].

    Returns:
        Both sides [daN m].

    Raises:
        OutOfRangeError: If a number is outside.

    Example:
        >>> foot_stays(981.0, 0.4, 0.2, 0.8, 0.5, [(1000.0, 45.0, 45.0, 1.8, 0.05)] * 2).holds
        False
    """
    _required(weight_dan, push, downward, 0.0, 1.0)
    required_positive("height of the centre of gravity", height_m, SOURCE)
    required_positive("centre of gravity to heel", to_heel_m, SOURCE)
    turning_danm = 0.0
    for force_dan, to_deck_deg, from_way_deg, height, from_heel_m in legs:
        required_not_negative("force of a leg", force_dan, SOURCE)
        along, down = _shares(to_deck_deg, from_way_deg)
        turning_danm += force_dan * (along * height - down * from_heel_m)

    return Balance(turning_danm, weight_dan * (push * height_m + downward * to_heel_m))


def _shares(to_deck_deg: float, from_way_deg: float) -> tuple[float, float]:
    if not 0.0 <= to_deck_deg <= STEEPEST_DEG:
        raise OutOfRangeError("angle of a leg to the deck", to_deck_deg, "0 to 90°", SOURCE)
    if not 0.0 <= from_way_deg <= BEHIND_DEG:
        raise OutOfRangeError("angle of a leg from the line against the motion", from_way_deg, "0 to 180°", SOURCE)
    steep = to_deck_deg / exact.RAD_IN_DEG

    return exact.cos(steep) * exact.cos(from_way_deg / exact.RAD_IN_DEG), exact.sin(steep)


def _required(weight_dan: float, push: float, downward: float, friction: float, friction_share: float) -> None:
    required_positive("weight of the load", weight_dan, SOURCE)
    required_not_negative("coefficient of acceleration", push, SOURCE)
    if not 0.0 < downward <= 1.0:
        raise OutOfRangeError("share of the weight that remains", downward, "above 0, 1 at most", SOURCE)
    if not 0.0 <= friction <= 1.0:
        raise OutOfRangeError("friction", friction, "0 to 1", SOURCE)
    if not 0.0 < friction_share <= 1.0:
        raise OutOfRangeError("share of the friction that counts", friction_share, "above 0, 1 at most", SOURCE)
