"""A load on two picks seen in the plane in which it hangs: it rolls about the line through them until it lies there."""

from collections.abc import Sequence
from typing import NamedTuple

from checklist_app.mechanics import exact
from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.hanging.body import SOURCE
from checklist_app.mechanics.stability import cg_below_pick_line_m
from checklist_app.mechanics.suspension import (
    cg_along_pick_line_m,
    cg_beside_pick_line_m,
    level_between_eyes_m,
)
from checklist_app.mechanics.vectors import Vec, length, less


class TwoPicks(NamedTuple):
    """What a load on two picks is in its plane, and how deep it lies below them as it stands."""

    span_m: float
    cg_along_m: float
    cg_off_m: float
    below_m: float
    stands: tuple[float, float]


def two_picks(picks: Sequence[Vec], cg: Vec) -> TwoPicks:
    """Span, and the centre of gravity along the line through two picks and off it.

        off = √(t² + b²)

    Source:
        STATICS_TWO_LEGS, STATICS_TWO_PICKS: t is the depth that keeps it from rolling over.

    Args:
        picks: left and right, in the load's axes [m].
        cg: centre of gravity, in the load's axes [m].

    Returns:
        What `bars` and `hung_on_running_sling` take; `below_m` at 0 or less lets it roll over.

    Raises:
        OutOfRangeError: If there are not two picks, or one stands straight above the other.

    Example:
        >>> two_picks([Vec(0.0, 0.0, 0.0), Vec(1.0, 0.0, 0.0)], Vec(0.5, 0.3, -0.4))
        TwoPicks(span_m=1.0, cg_along_m=0.5, cg_off_m=0.5, below_m=0.4, stands=(1.0, 0.0))
    """
    if len(picks) != 2:
        raise OutOfRangeError("number of picks", len(picks), "two", SOURCE)
    run, to_cg = less(picks[1], picks[0]), less(cg, picks[0])
    level_m, span_m = level_between_eyes_m(run.x, run.y), length(run)
    cg_level_m = (to_cg.x * run.x + to_cg.y * run.y) / level_m
    beside_m = cg_beside_pick_line_m(to_cg.x, to_cg.y, run.x, run.y, level_m)
    below_m = cg_below_pick_line_m(cg_level_m, to_cg.z, level_m, run.z, span_m)

    return TwoPicks(
        span_m, cg_along_pick_line_m(cg_level_m, to_cg.z, level_m, run.z, span_m),
        exact.sqrt(below_m * below_m + beside_m * beside_m), below_m, (level_m, run.z),
    )
