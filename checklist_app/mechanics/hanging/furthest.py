"""Where the hook comes to when it is drawn one way as far as the legs let it: the corner of what they reach."""

from itertools import combinations

from checklist_app.mechanics import exact
from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.hanging.body import SOURCE, Rigging
from checklist_app.mechanics.vectors import Vec, cross, dot, length, less, made_of, stepped

AT_FULL_LENGTH = 1e-11
PUSHING = -1e-11
IN_ONE_LINE = 1e-9


def hook_furthest(what: Rigging, way: Vec) -> Vec:
    """The hook drawn one way until the legs hold it.

        greatest H · n with |H − P| ≤ L for every leg

    What all legs reach bulges outwards, so there is just one such point; it is held by one leg, by two or by three.
    Drawn straight up it is where the hook stands when a standing load is about to be taken up; drawn along a measured
    plumb line it is where the hook of a hanging load is.

    Source:
        STATICS_HANGING_BODY.

    Args:
        what: what hangs.
        way: n, unit vector in the load's axes.

    Returns:
        The hook in the load's axes [m].

    Raises:
        OutOfRangeError: If the legs do not reach each other.

    Example:
        >>> from checklist_app.mechanics.hanging.body import rigging
        >>> picks = [Vec(-3.0, 0.0, 0.0), Vec(3.0, 0.0, 0.0)]
        >>> hook_furthest(rigging(picks, [5.0, 5.0], Vec(0.0, 0.0, -1.0)), Vec(0.0, 0.0, 1.0))
        Vec(x=0.0, y=0.0, z=4.0)
    """
    legs = range(len(what.picks))
    for held_by in (3, 2, 1):
        for some in combinations(legs, held_by):
            top = _top(what, some, way)
            if top is not None and within_reach(what, top):
                return top

    raise OutOfRangeError("what the legs span", "open", "legs that reach each other over the load", SOURCE)


def within_reach(what: Rigging, hook: Vec, short: float = AT_FULL_LENGTH) -> bool:
    """Whether every leg reaches a place of the hook.

    Source:
        STATICS_HANGING_BODY.

    Args:
        what: what hangs.
        hook: a place of the hook, in the load's axes [m].
        short: what does not count, as a share of the longest leg [-].

    Returns:
        True if no leg is too short.

    Example:
        >>> from checklist_app.mechanics.hanging.body import rigging
        >>> within_reach(rigging([Vec(0.0, 0.0, 0.0)], [1.0], Vec(0.0, 0.0, -1.0)), Vec(0.0, 0.0, 1.1))
        False
    """
    small_m = short * what.size_m

    return all(
        length(less(hook, pick)) <= leg_m + small_m for pick, leg_m in zip(what.picks, what.legs_m, strict=True)
    )


def _top(what: Rigging, some: tuple[int, ...], way: Vec) -> Vec | None:
    """The furthest point of what these legs alone reach, if all of them hold it there."""
    if len(some) == 1:
        return stepped(what.picks[some[0]], what.legs_m[some[0]], way)
    if len(some) == 2:
        return _top_of_two(what, some[0], some[1], way)

    return _top_of_three(what, (some[0], some[1], some[2]), way)


def _top_of_two(what: Rigging, i: int, j: int, way: Vec) -> Vec | None:
    base, leg_m = what.picks[i], what.legs_m[i]
    across = less(what.picks[j], base)
    span2 = dot(across, across)
    if not span2 > IN_ONE_LINE * leg_m * leg_m:
        return None
    along = (leg_m * leg_m - what.legs_m[j] * what.legs_m[j] + span2) / (2.0 * span2)
    off2 = leg_m * leg_m - along * along * span2
    off = stepped(way, -dot(way, across) / span2, across)
    away = length(off)
    if not (off2 > 0.0 and away > IN_ONE_LINE):
        return None
    both = away / exact.sqrt(off2)
    second = along * both - dot(way, across) / span2
    first = both - second
    if not (first >= PUSHING * both and second >= PUSHING * both):
        return None

    return stepped(stepped(base, along, across), 1.0 / both, off)


def _top_of_three(what: Rigging, some: tuple[int, int, int], way: Vec) -> Vec | None:
    top = _corner(what, *some, way)
    if top is None:
        return None
    i, j, k = some
    held = made_of(less(top, what.picks[i]), less(top, what.picks[j]), less(top, what.picks[k]), way)
    if held is None or not min(held) >= PUSHING * max(held):
        return None

    return top


def _corner(what: Rigging, i: int, j: int, k: int, way: Vec) -> Vec | None:
    """Where three legs meet, on the side of their picks that the way points to."""
    base, leg_m = what.picks[i], what.legs_m[i]
    a, b = less(what.picks[j], base), less(what.picks[k], base)
    aa, ab, bb = dot(a, a), dot(a, b), dot(b, b)
    spread = aa * bb - ab * ab
    if not spread > IN_ONE_LINE * aa * bb:
        return None
    square = leg_m * leg_m
    to_a = (square - what.legs_m[j] * what.legs_m[j] + aa) / 2.0
    to_b = (square - what.legs_m[k] * what.legs_m[k] + bb) / 2.0
    first, second = (to_a * bb - to_b * ab) / spread, (to_b * aa - to_a * ab) / spread
    off2 = square - (first * to_a + second * to_b)
    if not off2 > 0.0:
        return None
    square_on = cross(a, b)
    off = exact.sqrt(off2 / spread)
    side = off if dot(square_on, way) > 0.0 else -off

    return stepped(stepped(stepped(base, first, a), second, b), side, square_on)
