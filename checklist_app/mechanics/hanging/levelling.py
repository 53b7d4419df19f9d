"""What would hang the load level: new lengths for the legs, one leg alone, or another pick."""

from collections.abc import Sequence
from dataclasses import replace
from typing import NamedTuple

from checklist_app.mechanics import exact
from checklist_app.mechanics.errors import OutOfRangeError, required_positive
from checklist_app.mechanics.hanging.body import SOURCE, Rigging
from checklist_app.mechanics.hanging.settling import settled
from checklist_app.mechanics.vectors import Vec, length, less

SHORTEST, LONGEST = 0.7, 1.3
MARKS, NARROWINGS = 24, 40
GOLDEN = 0.6180339887498949
HOPELESS_DEG = 180.0


class LegChange(NamedTuple):
    """One leg made longer or shorter, and how the load would hang then."""

    leg: int
    by_m: float
    tilt_deg: float


class PickChange(NamedTuple):
    """One leg fastened to another pick, and how the load would hang then."""

    leg: int
    pick: int
    tilt_deg: float


def lengths_that_level_m(what: Rigging, kept: int) -> tuple[float, ...]:
    """The leg lengths that hang the load level, one leg kept as it is.

        H over G; H_z = P_z + √(L² − (G_x − P_x)² − (G_y − P_y)²) of the leg kept; L = |H − P|

    Source:
        STATICS_HANGING_BODY; for two legs the same as the published sling formula.

    Args:
        what: what hangs.
        kept: the leg that keeps its length, by number.

    Returns:
        Length of each leg [m].

    Raises:
        OutOfRangeError: If that leg is too short to reach over the centre of gravity.

    Example:
        >>> from checklist_app.mechanics.hanging.body import rigging
        >>> what = rigging([Vec(-3.0, 0.0, 0.0), Vec(6.0, 0.0, 0.0)], [5.0, 5.0], Vec(0.0, 0.0, -1.0))
        >>> [round(leg_m, 4) for leg_m in lengths_that_level_m(what, 0)]
        [5.0, 7.2111]
    """
    pick, leg_m = what.picks[kept], what.legs_m[kept]
    x, y = what.cg.x - pick.x, what.cg.y - pick.y
    square = leg_m * leg_m - x * x - y * y
    required_positive("what is left of the leg over the centre of gravity", square, SOURCE)
    hook = Vec(what.cg.x, what.cg.y, pick.z + exact.sqrt(square))

    return tuple(length(less(hook, each)) for each in what.picks)


def levelled_by_one_leg(what: Rigging, leg: int) -> LegChange:
    """By how much one leg alone would have to be longer or shorter for the load to hang as level as it can be made.

    Source:
        STATICS_HANGING_BODY: least tilt over the length, from 0.7 to 1.3 times what it is.

    Args:
        what: what hangs.
        leg: the leg to change, by number.

    Returns:
        The change, and the tilt that is left.

    Raises:
        OutOfRangeError: If the load hangs at none of these lengths.

    Example:
        >>> from checklist_app.mechanics.hanging.body import rigging
        >>> what = rigging([Vec(-0.5, 0.0, 0.0), Vec(0.5, 0.0, 0.0)], [1.0, 1.0], Vec(0.1, 0.0, -0.4))
        >>> change = levelled_by_one_leg(what, 0)
        >>> round(change.by_m, 3), round(abs(change.tilt_deg), 3)
        (0.095, 0.0)
    """
    now_m = what.legs_m[leg]
    marks = [now_m * (SHORTEST + (LONGEST - SHORTEST) * mark / MARKS) for mark in range(MARKS + 1)]
    tilts = [_tilt_deg(what, leg, leg_m) for leg_m in marks]
    best = min(range(len(marks)), key=lambda mark: tilts[mark])
    if tilts[best] >= HOPELESS_DEG:
        raise OutOfRangeError("length of a leg", now_m, "a length at which the load hangs", SOURCE)
    low, high = marks[max(0, best - 1)], marks[min(MARKS, best + 1)]
    for _ in range(NARROWINGS):
        nearer, further = high - GOLDEN * (high - low), low + GOLDEN * (high - low)
        if _tilt_deg(what, leg, nearer) <= _tilt_deg(what, leg, further):
            high = further
        else:
            low = nearer
    leg_m = 0.5 * (low + high)

    return LegChange(leg, leg_m - now_m, _tilt_deg(what, leg, leg_m))


def levelled_by_another_pick(what: Rigging, leg: int, picks: Sequence[Vec]) -> tuple[PickChange, ...]:
    """One leg fastened to each of the load's other picks in turn, the most level first.

    Source:
        STATICS_HANGING_BODY.

    Args:
        what: what hangs.
        leg: the leg that moves, by number.
        picks: where it could go, in the load's axes [m].

    Returns:
        The changes at which the load hangs at all.

    Example:
        >>> from checklist_app.mechanics.hanging.body import rigging
        >>> what = rigging([Vec(-0.5, 0.0, 0.0), Vec(0.5, 0.0, 0.0)], [1.0, 1.0], Vec(0.1, 0.0, -0.4))
        >>> [change.pick for change in levelled_by_another_pick(what, 1, [Vec(0.6, 0.0, 0.0), Vec(0.7, 0.0, 0.0)])]
        [1, 0]
    """
    found = []
    for place, pick in enumerate(picks):
        moved = replace(what, picks=(*what.picks[:leg], pick, *what.picks[leg + 1:]))
        tilt_deg = _tilt_deg(moved, leg, what.legs_m[leg])
        if tilt_deg < HOPELESS_DEG:
            found.append(PickChange(leg, place, tilt_deg))

    return tuple(sorted(found, key=lambda change: change.tilt_deg))


def _tilt_deg(what: Rigging, leg: int, leg_m: float) -> float:
    try:
        return settled(replace(what, legs_m=(*what.legs_m[:leg], leg_m, *what.legs_m[leg + 1:]))).tilt_deg
    except OutOfRangeError:
        return HOPELESS_DEG
