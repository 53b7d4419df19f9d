"""What a leg of four can come to carry, whatever the legs' true lengths: a stiff load finds the shortest ones."""

from itertools import combinations
from typing import NamedTuple

from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.hanging.body import SOURCE, Hang
from checklist_app.mechanics.leg_tension import share_of_leg
from checklist_app.mechanics.vectors import Vec, dot, length, made_of, times

PUSHING = -1e-9
SAME_PLACE = 1e-9
DOWN = Vec(0.0, 0.0, -1.0)


class Pair(NamedTuple):
    """Two opposite legs that carry everything between them, and their pulls as shares of the load."""

    legs: tuple[int, int]
    shares: tuple[float, float]


def most_of_any_length(hang: Hang) -> tuple[float, ...]:
    """The most each leg can pull, however much the lengths differ from what was said, as shares of the load.

        greatest T with Σ T u = W, T ≥ 0

    Of four legs three are enough to balance the load; what four can share lies between those sets of three, so the
    most of a leg is found in one of them. For a rectangle of picks at one height it is W/2 (1 + min(±ξ, ±η)) of
    vertical part, half the load when centred.

    Source:
        STATICS_HANGING_BODY; NAVEDTRA_RIGGING says that two legs of four may carry practically the whole rigid load.

    Assumes:
        The attitude is that of the hang: length errors are small beside the legs.

    Args:
        hang: the load as it hangs.

    Returns:
        Greatest share of each leg [-].

    Raises:
        OutOfRangeError: If no legs can balance it there by pulling.

    Example:
        >>> from checklist_app.mechanics.hanging.body import rigging
        >>> from checklist_app.mechanics.hanging.settling import settled
        >>> picks = [Vec(0.6, 0.4, 0.0), Vec(0.6, -0.4, 0.0), Vec(-0.6, -0.4, 0.0), Vec(-0.6, 0.4, 0.0)]
        >>> hang = settled(rigging(picks, [1.5] * 4, Vec(0.0, 0.0, -0.3)))
        >>> [round(share, 6) for share in most_of_any_length(hang)]
        [0.570214, 0.570214, 0.570214, 0.570214]
    """
    count = len(hang.eyes)
    if count < 4:
        return hang.shares
    most = [-1.0] * count
    for three in combinations(range(count), 3):
        by = made_of(hang.eyes[three[0]], hang.eyes[three[1]], hang.eyes[three[2]], DOWN)
        if by is None or not min(by) >= PUSHING * max(by):
            continue
        for leg in range(count):
            pull = max(0.0, by[three.index(leg)]) * hang.distances_m[leg] if leg in three else 0.0
            most[leg] = max(most[leg], pull)
    if not min(most) >= 0.0:
        raise OutOfRangeError("four legs", "no three of them in balance", "legs that stand around the load", SOURCE)

    return tuple(max(pair) for pair in zip(most, hang.shares, strict=True))


def opposite_pairs(hang: Hang) -> tuple[tuple[int, int], tuple[int, int]]:
    """Which two legs of four are opposite each other: those whose picks lie across the others' line, seen from above.

    Source:
        STATICS_HANGING_BODY.

    Args:
        hang: the load as it hangs, on four legs.

    Returns:
        The two pairs of legs, counted from 0.

    Raises:
        OutOfRangeError: If there are not four legs, or one pick lies within the triangle of the others.

    Example:
        >>> from checklist_app.mechanics.hanging.body import rigging
        >>> from checklist_app.mechanics.hanging.settling import settled
        >>> picks = [Vec(0.6, 0.4, 0.0), Vec(0.6, -0.4, 0.0), Vec(-0.6, -0.4, 0.0), Vec(-0.6, 0.4, 0.0)]
        >>> opposite_pairs(settled(rigging(picks, [1.5] * 4, Vec(0.0, 0.0, -0.3))))
        ((0, 2), (1, 3))
    """
    if len(hang.eyes) != 4:
        raise OutOfRangeError("number of legs", len(hang.eyes), "four, for opposite pairs", SOURCE)
    for one, other in (((0, 2), (1, 3)), ((0, 1), (2, 3)), ((0, 3), (1, 2))):
        if _parts(hang, one, other) and _parts(hang, other, one):
            return one, other

    raise OutOfRangeError("four picks", "one within the others", "four corners, for opposite pairs", SOURCE)


def carried_by_opposite_pairs(hang: Hang) -> tuple[Pair, Pair]:
    """Each pair of opposite legs in turn carrying everything, as two legs of the same attitude would.

        T / W = D₂ L₁ / (D₂ H₁ + D₁ H₂), D along the line between the two picks, seen from above

    Source:
        NAVEDTRA_RIGGING: two legs of a four-leg sling may carry practically the whole rigid load; STATICS_TWO_LEGS.

    Args:
        hang: the load as it hangs, on four legs.

    Returns:
        Both pairs with their shares; where the plumb line does not pass between a pair, its nearer leg carries all.

    Raises:
        OutOfRangeError: If there are no opposite pairs, or an eye hangs level with the hook or above it.

    Example:
        >>> from checklist_app.mechanics.hanging.body import rigging
        >>> from checklist_app.mechanics.hanging.settling import settled
        >>> picks = [Vec(0.6, 0.4, 0.0), Vec(0.6, -0.4, 0.0), Vec(-0.6, -0.4, 0.0), Vec(-0.6, 0.4, 0.0)]
        >>> first, _ = carried_by_opposite_pairs(settled(rigging(picks, [1.5] * 4, Vec(0.0, 0.0, -0.3))))
        >>> first.legs, [round(share, 6) for share in first.shares]
        ((0, 2), [0.570214, 0.570214])
    """
    one, other = opposite_pairs(hang)
    return _alone(hang, one), _alone(hang, other)


def _parts(hang: Hang, line: tuple[int, int], pair: tuple[int, int]) -> bool:
    start, end = hang.eyes[line[0]], hang.eyes[line[1]]
    sides = [
        (end.x - start.x) * (hang.eyes[leg].y - start.y) - (end.y - start.y) * (hang.eyes[leg].x - start.x)
        for leg in pair
    ]
    return sides[0] * sides[1] < 0.0


def _alone(hang: Hang, pair: tuple[int, int]) -> Pair:
    a, b = (hang.eyes[leg] for leg in pair)
    apart = Vec(b.x - a.x, b.y - a.y, 0.0)
    if not length(apart) > SAME_PLACE or not (a.z < 0.0 and b.z < 0.0):
        raise OutOfRangeError("two opposite legs", "no triangle", "eyes apart and below the hook", SOURCE)
    way = times(apart, 1.0 / length(apart))
    near, far = -dot(a, way), dot(b, way)
    first, second = hang.distances_m[pair[0]], hang.distances_m[pair[1]]
    if near < 0.0 or far < 0.0:
        return Pair(pair, (first / -a.z, 0.0) if near < 0.0 else (0.0, second / -b.z))

    return Pair(pair, (share_of_leg(first, -a.z, near, -b.z, far), share_of_leg(second, -b.z, far, -a.z, near)))
