"""How far a load on three or four legs is from going over: its centre of gravity inside the pyramid of the legs.

A couple about the hook turns the load until the plumb line through the hook lies in a face of the pyramid that the
legs make. Then the legs beyond that face are slack, and a load whose centre of gravity is not below the two picks of
the face goes right over.
"""

from collections.abc import Sequence
from itertools import combinations
from typing import NamedTuple

from checklist_app.mechanics import exact
from checklist_app.mechanics.errors import OutOfRangeError, required_not_negative, required_positive
from checklist_app.mechanics.hanging.body import Hang
from checklist_app.mechanics.vectors import Vec, cross, dot, length, less, stepped

SOURCE = "STATICS_SLACKENING"
ON_THE_FACE = 1e-9
TWO_LEGS = 2


class Face(NamedTuple):
    """Two neighbouring legs, and how far the centre of gravity hangs inside of their plane and below their picks."""

    legs: tuple[int, ...]
    inside_m: float
    below_m: float

    @property
    def goes_over(self) -> bool:
        """Whether the load would not hang from these picks alone as it hangs now."""
        return not self.below_m > 0.0


def faces(hang: Hang, legs: Sequence[int]) -> tuple[Face, ...]:
    """The outer faces of the pyramid of some legs, nearest to the centre of gravity first.

    Source:
        STATICS_SLACKENING; PURDUE_RIGGING: the centre of gravity inside the angle formed by the slings.

    Args:
        hang: the load as it hangs.
        legs: the legs to count on, by number: those that are tight, or all but the ones that hang loose.

    Returns:
        Faces; with two legs the two legs themselves, as seen square to them.

    Raises:
        OutOfRangeError: If there are fewer than two legs, or they lie in one plane through the hook.

    Example:
        >>> from checklist_app.mechanics.hanging.body import rigging
        >>> from checklist_app.mechanics.hanging.settling import settled
        >>> picks = [Vec(0.6, 0.4, 0.0), Vec(0.6, -0.4, 0.0), Vec(-0.6, -0.4, 0.0), Vec(-0.6, 0.4, 0.0)]
        >>> hang = settled(rigging(picks, [1.5] * 4, Vec(0.0, 0.0, 0.3)))
        >>> nearest = faces(hang, range(4))[0]
        >>> nearest.legs, round(nearest.inside_m, 4), nearest.goes_over
        ((0, 3), 0.2954, True)
    """
    centre = Vec(0.0, 0.0, -hang.plumb_m)
    if len(legs) == TWO_LEGS:
        found = [_beside(hang, leg, centre) for leg in legs]
    else:
        found = [face for pair in combinations(legs, 2) if (face := _face(hang, pair, legs, centre)) is not None]
    if len(found) < min(len(legs), 3) or len(legs) < TWO_LEGS:
        raise OutOfRangeError("the legs that hold the load", "no pyramid", "two legs, or three in space", SOURCE)

    return tuple(sorted(found, key=lambda face: face.inside_m))


def couple_that_slackens_knm(load_kn: float, inside_m: float) -> float:
    """Couple about the hook that slackens a leg.

        M = W h sin α = W a

    Source:
        STATICS_SLACKENING; a physics engine held at 0.9 M and went over at 1.07 M in the cases tried.

    Args:
        load_kn: W [kN], above 0.
        inside_m: a, the centre of gravity inside of the nearest face of the legs [m], 0 or more.

    Returns:
        M [kN·m].

    Raises:
        OutOfRangeError: If the centre of gravity is outside of the legs.

    Example:
        >>> round(couple_that_slackens_knm(20.0, 0.2954), 3)
        5.908
    """
    required_positive("load on the hook", load_kn, SOURCE)
    required_not_negative("centre of gravity inside of the legs", inside_m, SOURCE)

    return load_kn * inside_m


def push_that_slackens_kn(load_kn: float, inside_m: float, off_cg_m: float) -> float:
    """Level push that slackens a leg, where its line passes the centre of gravity at some height.

        Q y = √(W² + Q²) a, so Q = W a / √(y² − a²)

    Source:
        STATICS_SLACKENING; a push through the centre of gravity slackens nothing, all swings together.

    Args:
        load_kn: W [kN], above 0.
        inside_m: a, the centre of gravity inside of the nearest face of the legs [m], 0 or more.
        off_cg_m: y, height of the push above or below the centre of gravity [m], more than a.

    Returns:
        Q [kN].

    Raises:
        OutOfRangeError: If no push at that height can slacken a leg, or a number is none.

    Example:
        >>> round(push_that_slackens_kn(20.0, 0.3, 0.5), 6)
        15.0
    """
    required_positive("load on the hook", load_kn, SOURCE)
    required_not_negative("centre of gravity inside of the legs", inside_m, SOURCE)
    square_m2 = off_cg_m * off_cg_m - inside_m * inside_m
    if not square_m2 > 0.0:
        allowed = f"a push more than {inside_m:.2f} m off the centre of gravity; nearer to it no push slackens a leg"
        raise OutOfRangeError("push off the centre of gravity [m]", off_cg_m, allowed, SOURCE)

    return load_kn * inside_m / exact.sqrt(square_m2)


def rise_before_it_goes_over_m(plumb_m: float, inside_m: float) -> float:
    """How far the centre of gravity must at least be lifted before a load can go over: until it is over a face.

        r = h − √(h² − a²)

    Slack taken up unevenly lets a corner fall: a fall that frees less than W r never turns over a load that hangs
    steadily once it hangs. Where it really goes over tells `watershed.rise_to_the_watershed_m`, and that is more.

    Source:
        STATICS_SLACKENING.

    Args:
        plumb_m: h, centre of gravity below the hook [m], above 0.
        inside_m: a, the centre of gravity inside of the nearest face of the legs [m], 0 to h.

    Returns:
        r [m].

    Raises:
        OutOfRangeError: If a leaves its range.

    Example:
        >>> round(rise_before_it_goes_over_m(1.0149, 0.2954), 4)
        0.0439
    """
    required_positive("centre of gravity below the hook", plumb_m, SOURCE)
    required_not_negative("centre of gravity inside of the legs", inside_m, SOURCE)
    required_not_negative("what is left of the depth", plumb_m - inside_m, SOURCE)

    return plumb_m - exact.sqrt(plumb_m * plumb_m - inside_m * inside_m)


def _beside(hang: Hang, leg: int, centre: Vec) -> Face:
    eye = hang.eyes[leg]
    return Face((leg,), length(cross(eye, centre)) / length(eye), hang.plumb_m + eye.z)


def _face(hang: Hang, pair: tuple[int, int], legs: Sequence[int], centre: Vec) -> Face | None:
    """The plane of two legs, if all other legs lie on one side of it."""
    a, b = hang.eyes[pair[0]], hang.eyes[pair[1]]
    square = cross(a, b)
    size = length(square)
    if not size > ON_THE_FACE * length(a) * length(b):
        return None
    sides = [dot(square, hang.eyes[leg]) for leg in legs if leg not in pair]
    small = ON_THE_FACE * size * max(hang.distances_m)
    if min(sides) < -small and max(sides) > small:
        return None
    inwards = 1.0 if max(sides) > small else -1.0

    return Face(pair, inwards * dot(square, centre) / size, _below(a, b, centre))


def _below(a: Vec, b: Vec, centre: Vec) -> float:
    """How far below the line through two picks the centre of gravity hangs."""
    line = less(b, a)
    foot = stepped(a, dot(less(centre, a), line) / dot(line, line), line)
    return dot(less(foot, centre), Vec(0.0, 0.0, 1.0))
