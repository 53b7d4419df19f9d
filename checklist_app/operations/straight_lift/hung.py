"""The lift as it hangs, as plain points, and which side of it is looked at.

Hanging axes begin at the first hook: x level and lengthwise, y level and crosswise from front to rear, z upwards.
"""

from collections.abc import Iterable
from typing import NamedTuple

from checklist_app.mechanics.hanging.body import frame
from checklist_app.mechanics.vectors import Vec, dot, length, less, times
from checklist_app.operations.looks import FROM_THE_FRONT, UPRIGHT, Look

BEYOND_EYES, LEAST_BEYOND_M = 0.2, 0.03
HOOK = Vec(0.0, 0.0, 0.0)


class Leg(NamedTuple):
    """One leg: where it hangs from and where it ends, and what is said about it."""

    label: str
    hook: Vec
    eye: Vec
    length_m: float | None = None
    angle_deg: float | None = None
    pull_t: float | None = None
    used: str = ""
    highest: float = 0.0
    governs: str = ""

    @property
    def words(self) -> str:
        """As it is called: left front."""
        return self.label.replace("_", " ")


class Hung(NamedTuple):
    """Everything a view draws. A body without corners is one whose heights nobody gave.

    `governs` is the check that decides and `governs_words` what is said of it, where it is none of a single leg;
    `heavy_hooks` are the hooks that it is about. `wind_at` is where a gust pushes, steadily with `wind_kn`.
    `runs`: its legs are the two parts of one sling that runs over the hook.
    """

    legs: tuple[Leg, ...]
    hooks: tuple[Vec, ...]
    cg: Vec
    corners: tuple[Vec, ...] = ()
    underside_m: float | None = None
    lift_height_m: float | None = None
    free_m: float | None = None
    saddle_m: float = 0.0
    tilt_along_deg: float | None = None
    tilt_across_deg: float | None = None
    governs: str = ""
    governs_words: str = ""
    heavy_hooks: tuple[int, ...] = ()
    wind_at: Vec | None = None
    wind_kn: float | None = None
    swing_out_m: float | None = None
    runs: bool = False


def square_to(legs: tuple[Leg, ...]) -> Look:
    """Two legs are looked at square to their plane, so that lengths and angles are true; all others from the front."""
    if len(legs) != 2:
        return FROM_THE_FRONT
    run = less(legs[1].eye, legs[0].eye)._replace(z=0.0)
    long = length(run)
    if long < LEAST_BEYOND_M:
        return FROM_THE_FRONT
    turn = -1.0 if run.x < 0.0 else 1.0

    return Look(Vec(turn * run.x / long, turn * run.y / long, 0.0), UPRIGHT)


def beside(look: Look) -> Look:
    """The view at a right angle to another one."""
    return Look(Vec(-look.right.y, look.right.x, 0.0), UPRIGHT)


def corners(eyes: Iterable[Vec], cg: Vec, bottom_z_m: float, top_z_m: float) -> tuple[Vec, ...]:
    """A box in the load's axes between underside and highest part.

    Its ends are not known: they stand a little beyond the eyes and the centre of gravity.
    """
    points = [*eyes, cg]
    low_x, high_x = min(point.x for point in points), max(point.x for point in points)
    low_y, high_y = min(point.y for point in points), max(point.y for point in points)
    widest = max(high_x - low_x, high_y - low_y) if len(points) > 2 else top_z_m - bottom_z_m
    beyond = BEYOND_EYES * widest + LEAST_BEYOND_M

    return tuple(
        Vec(x, y, z)
        for z in (bottom_z_m, top_z_m)
        for x, y in ((low_x - beyond, low_y - beyond), (high_x + beyond, low_y - beyond),
                     (high_x + beyond, high_y + beyond), (low_x - beyond, high_y + beyond))
    )


def as_it_hangs(point: Vec, cg: Vec, hung_cg: Vec, down: Vec) -> Vec:
    """A point of the load, given in its own axes, in hanging axes."""
    along, across, up = frame(times(down, -1.0))
    away = less(point, cg)

    return Vec(hung_cg.x + dot(along, away), hung_cg.y + dot(across, away), hung_cg.z + dot(up, away))
