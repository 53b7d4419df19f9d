"""How a load taken up from where it stands comes to hang, on legs that do not stretch.

The weight draws the hook away from the centre of gravity as far as the legs let it. From the place the hook has over
the standing load it goes there by the steepest way: straight while no leg is tight, on a sphere about the one pick
that holds it, on a circle about the line of two, until three hold it or it can get no further away.
"""

from itertools import combinations
from typing import NamedTuple

from checklist_app.mechanics import exact
from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.hanging.body import SOURCE, Hang, Rigging, hung
from checklist_app.mechanics.hanging.furthest import hook_furthest, within_reach
from checklist_app.mechanics.vectors import Vec, cross, dot, length, less, made_of, stepped, times

STRAIGHT_UP = Vec(0.0, 0.0, 1.0)
MOVES = 40
TIGHT = 1e-10
NEGLIGIBLE = 1e-10
PUSHING = -1e-10
TOO_SHORT = 1e-9
ALONG_Y = 0.9


class Held(NamedTuple):
    """Which legs hold the hook against the weight, by how much per metre, and what nobody holds."""

    legs: tuple[int, ...]
    pulls_per_m: tuple[float, ...]
    rest: Vec


class Turn(NamedTuple):
    """A circle that the hook runs along: centre, radius to the hook, and as long, the way it runs."""

    centre: Vec
    arm: Vec
    ahead: Vec


def settled(what: Rigging) -> Hang:
    """The load as it hangs on legs that do not stretch, taken up from where it stands.

        greatest |H − G| with |H − P| ≤ L for every leg

    With three legs or fewer tight the pulls are the only ones; with four tight they are one set that balances, and
    the legs' stiffness decides (`shared_by_stiffness`).

    Source:
        STATICS_HANGING_BODY.

    Args:
        what: what hangs.

    Returns:
        Attitude and pulls; legs that pull nothing are slack or just tight.

    Raises:
        OutOfRangeError: If the legs do not reach each other, or it does not settle.

    Example:
        >>> from checklist_app.mechanics.hanging.body import rigging
        >>> picks = [Vec(-3.0, 0.0, 0.0), Vec(3.0, 0.0, 0.0)]
        >>> settled(rigging(picks, [5.0, 5.0], Vec(0.0, 0.0, -1.0))).shares
        (0.625, 0.625)
    """
    hook = hook_furthest(what, STRAIGHT_UP)
    for _ in range(MOVES):
        pull = less(hook, what.cg)
        if not length(pull) > TIGHT * what.size_m:
            raise OutOfRangeError("hook over the centre of gravity", 0.0, "longer legs", SOURCE)
        near = _tight(what, hook)
        held = _held(what, hook, pull, near)
        turn = _turn(what, hook, pull, held)
        if turn is None and held.legs:
            return _told(what, hook, near, held)
        hook = _along(what, hook, turn, held) if turn is not None else _straight(what, hook, pull)
        if not within_reach(what, hook, TOO_SHORT):
            break

    raise OutOfRangeError("how the load comes to hang", "does not settle", "a steadier arrangement of legs", SOURCE)


def _told(what: Rigging, hook: Vec, near: tuple[int, ...], held: Held) -> Hang:
    per_m = dict(zip(held.legs, held.pulls_per_m, strict=True))
    plumb_m = length(less(hook, what.cg))
    legs = range(len(what.picks))
    return hung(what, hook, [max(0.0, per_m.get(leg, 0.0)) / plumb_m for leg in legs], [leg in near for leg in legs])


def _tight(what: Rigging, hook: Vec) -> tuple[int, ...]:
    small_m = TIGHT * what.size_m
    return tuple(
        leg for leg, (pick, leg_m) in enumerate(zip(what.picks, what.legs_m, strict=True))
        if length(less(hook, pick)) >= leg_m - small_m
    )


def _held(what: Rigging, hook: Vec, pull: Vec, near: tuple[int, ...]) -> Held:
    """What the tight legs can hold by pulling alone, and what is left over."""
    ways = {leg: less(hook, what.picks[leg]) for leg in near}
    for three in combinations(near, 3):
        by = made_of(ways[three[0]], ways[three[1]], ways[three[2]], pull)
        if by is not None and min(by) >= PUSHING * max(by):
            return Held(three, tuple(by), Vec(0.0, 0.0, 0.0))
    for some in (*combinations(near, 2), *combinations(near, 1), ()):
        held = _held_by(some, ways, pull)
        if held is not None and all(dot(held.rest, ways[leg]) <= _small(held, ways[leg], pull) for leg in near):
            return held

    raise OutOfRangeError("how the load comes to hang", "does not settle", "a steadier arrangement of legs", SOURCE)


def _small(held: Held, way: Vec, pull: Vec) -> float:
    return NEGLIGIBLE * length(way) * length(pull)


def _held_by(some: tuple[int, ...], ways: dict[int, Vec], pull: Vec) -> Held | None:
    if not some:
        return Held((), (), pull)
    a = ways[some[0]]
    if len(some) == 1:
        first = dot(a, pull) / dot(a, a)
        return Held(some, (first,), stepped(pull, -first, a)) if first > 0.0 else None
    b = ways[some[1]]
    aa, ab, bb, to_a, to_b = dot(a, a), dot(a, b), dot(b, b), dot(a, pull), dot(b, pull)
    spread = aa * bb - ab * ab
    if not spread > NEGLIGIBLE * aa * bb:
        return None
    first, second = (to_a * bb - to_b * ab) / spread, (to_b * aa - to_a * ab) / spread
    if not (first > 0.0 and second > 0.0):
        return None

    return Held(some, (first, second), stepped(stepped(pull, -first, a), -second, b))


def _turn(what: Rigging, hook: Vec, pull: Vec, held: Held) -> Turn | None:
    """The circle the hook runs along next; None where it stays, or where nothing holds it yet."""
    if len(held.legs) in (0, 3):
        return None
    base = what.picks[held.legs[0]]
    if len(held.legs) == 1:
        centre, axis = base, None
    else:
        axis = less(what.picks[held.legs[1]], base)
        centre = stepped(base, dot(less(hook, base), axis) / dot(axis, axis), axis)
    arm = less(hook, centre)
    if length(held.rest) <= NEGLIGIBLE * length(pull) and dot(arm, less(what.cg, centre)) <= 0.0:
        return None
    return Turn(centre, arm, _ahead(arm, axis, held.rest))


def _ahead(arm: Vec, axis: Vec | None, rest: Vec) -> Vec:
    """Square to the arm, as long, and the way the rest points; balanced on its head it falls one way, always."""
    if axis is not None:
        way = cross(axis, arm)
        way = way if dot(way, rest) >= 0.0 else times(way, -1.0)
    else:
        way = stepped(rest, -dot(rest, arm) / dot(arm, arm), arm)
        if not length(way) > 0.0:
            way = cross(arm, Vec(0.0, 1.0, 0.0) if abs(arm.y) < length(arm) * ALONG_Y else Vec(1.0, 0.0, 0.0))
    size = length(way)

    return times(way, length(arm) / size)


def _along(what: Rigging, hook: Vec, turn: Turn, held: Held) -> Vec:
    """As far round as gets the hook away from the centre of gravity, or until another leg is tight."""
    square = dot(turn.arm, turn.arm)
    weight = less(what.cg, turn.centre)
    cos, sin = -dot(weight, turn.arm), -dot(weight, turn.ahead)
    size = exact.sqrt(cos * cos + sin * sin)
    best = (cos / size, max(0.0, sin / size)) if size > 0.0 else (-1.0, 0.0)
    for leg in range(len(what.picks)):
        if leg not in held.legs:
            hit = _stopped_by(what, turn, square, leg)
            if hit is not None and _turned(*hit) < _turned(*best):
                best = hit

    return stepped(stepped(turn.centre, best[0], turn.arm), best[1], turn.ahead)


def _turned(cos: float, sin: float) -> float:
    """Grows with the angle from 0 to half a turn, and tells small angles apart, which the cosine does not."""
    return sin if cos >= 0.0 else 2.0 - sin


def _stopped_by(what: Rigging, turn: Turn, square: float, leg: int) -> tuple[float, float] | None:
    """Where on the half circle ahead a slack leg comes tight: cosine and sine of the turn."""
    away, leg_m = less(turn.centre, what.picks[leg]), what.legs_m[leg]
    still = dot(away, away) + square - leg_m * leg_m
    along, ahead = 2.0 * dot(away, turn.arm), 2.0 * dot(away, turn.ahead)
    most = along * along + ahead * ahead
    room = most - still * still
    if not (room > 0.0 and most > 0.0):
        return None
    root = exact.sqrt(room)
    cos, sin = (ahead * root - still * along) / most, (-along * root - still * ahead) / most

    return (cos, sin) if sin > NEGLIGIBLE else None


def _straight(what: Rigging, hook: Vec, pull: Vec) -> Vec:
    """Straight away from the centre of gravity until the first leg is tight."""
    square = dot(pull, pull)
    first = None
    for pick, leg_m in zip(what.picks, what.legs_m, strict=True):
        way = less(hook, pick)
        half = dot(way, pull)
        far = (exact.sqrt(max(0.0, half * half - square * (dot(way, way) - leg_m * leg_m))) - half) / square
        first = far if first is None or far < first else first

    return stepped(hook, first or 0.0, pull)
