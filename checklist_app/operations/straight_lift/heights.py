"""Floor and free height in a view. What is much higher than the lift itself is drawn broken off, and says how much."""

from collections.abc import Iterator

from checklist_app.operations.drawing import Dimension, Line, Primitive, Role
from checklist_app.operations.looks import Look
from checklist_app.operations.straight_lift.hung import Hung
from checklist_app.operations.straight_lift.labels import metres

LEAST_WIDE_M = 0.2
MOST_FREE, MOST_LIFTED, BREAK_M, ASIDE_M = 0.5, 0.5, 0.06, 0.35


def floor(hung: Hung, look: Look, measured: bool = True) -> Iterator[Primitive]:
    """The floor under the load at the highest moment, and how far it is below."""
    if hung.underside_m is None or hung.lift_height_m is None:
        return
    across = [look.at(point)[0] for point in (*hung.corners, *(leg.eye for leg in hung.legs))]
    wide = 0.25 * (max(across) - min(across)) + LEAST_WIDE_M
    left, right, under = min(across) - wide, max(across) + wide, -hung.underside_m
    most = MOST_LIFTED * hung.underside_m
    drawn = min(hung.lift_height_m, most)
    yield Line((left, under - drawn), (right, under - drawn), Role.GROUND)
    if measured and hung.lift_height_m > 0.0:
        yield Dimension((left, under - drawn), (left, under), metres(hung.lift_height_m), about=("lift_height_m",))
        if drawn < hung.lift_height_m:
            yield from _broken(left, under - drawn / 2.0)


def free_above(hung: Hung, look: Look) -> Iterator[Primitive]:
    """What is left over the saddle up to the end stop."""
    if hung.free_m is None or not hung.free_m > 0.0:
        return
    across, up = look.at(hung.hooks[0])
    saddle = up + hung.saddle_m
    drawn = min(hung.free_m, max(MOST_FREE * (hung.underside_m or 1.0), 0.3))
    start, end = (across, saddle), (across, saddle + drawn)
    aside = ASIDE_M if len(hung.hooks) == 1 else -ASIDE_M
    governs = ", governs" if hung.governs == "headroom" else ""
    yield Dimension(start, end, f"{metres(hung.free_m)} free{governs}", aside=aside, about=("headroom",))
    if drawn < hung.free_m:
        yield from _broken(across - aside, saddle + drawn * 0.7)


def _broken(across: float, up: float) -> Iterator[Primitive]:
    """Two strokes through a dimension that is longer than it is drawn."""
    for each in (up, up + BREAK_M / 2.0):
        yield Line((across - BREAK_M, each - BREAK_M / 3.0), (across + BREAK_M, each + BREAK_M / 3.0), Role.FINE)


