"""Where trial lifts put the centre of gravity, and what would hang the load level."""

from collections.abc import Sequence
from dataclasses import dataclass

from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.finding.plumb_line import Hitch
from checklist_app.mechanics.finding.trials import Found, Met, Readings, found_by_one, found_by_two
from checklist_app.mechanics.hanging.body import Rigging
from checklist_app.mechanics.hanging.levelling import (
    LegChange,
    PickChange,
    lengths_that_level_m,
    levelled_by_another_pick,
    levelled_by_one_leg,
)
from checklist_app.mechanics.hanging.settling import settled
from checklist_app.mechanics.vectors import Vec
from checklist_app.operations.evaluate import Evaluation
from checklist_app.operations.straight_lift.as_hung import AsHung

LEVEL_WITHIN_DEG = 0.05
HALF = 0.5
SMALL_M = 0.003


@dataclass(frozen=True)
class Hung:
    """One trial: its rig, the tilts with their side [°], how far a tilt may be off [°]."""

    rig: AsHung
    tilt_along_deg: float
    tilt_across_deg: float
    tilt_off_deg: float

    @property
    def hitch(self) -> Hitch:
        """As the mechanics takes it."""
        return Hitch(self.rig.eyes, self.rig.legs_m, self.tilt_along_deg, self.tilt_across_deg)


@dataclass(frozen=True)
class Height:
    """How high the centre of gravity lies as known before, and how far off that may be [m]."""

    at_m: float
    off_m: float


def height_before(evaluation: Evaluation) -> Height | None:
    """Height of the centre of gravity in the plan; where nobody knows it, half way up, off by all that is possible."""
    known = next((each for each in evaluation.plan.variables if each.key.name == "cg_z_m"), None)
    if known is not None and not known.unknown:
        low, at, high = known.levels
        return Height(at, max(at - low, high - at))
    bottom, top, at_z = (evaluation[name] for name in ("bottom_z_m", "top_z_m", "cg_z_m"))
    if known is None:
        return Height(at_z, 0.0) if isinstance(at_z, float) else None
    if not (isinstance(bottom, float) and isinstance(top, float) and top > bottom):
        return None

    return Height(HALF * (bottom + top), HALF * (top - bottom))


def found_at(trial: Hung, height: Height) -> Found:
    """Centre of gravity by one trial, at the height that was known before.

    Raises:
        OutOfRangeError: If the rig could not hang so.
    """
    return found_by_one(trial.hitch, _readings([trial]), height.at_m, height.off_m)


def found_between(earlier: Hung, last: Hung) -> Met:
    """Centre of gravity where the plumb lines of two trials meet, its height too.

    Raises:
        OutOfRangeError: If the two hung too much alike.
    """
    return found_by_two([earlier.hitch, last.hitch], _readings([earlier, last]))


def leg_changes(rig: AsHung, cg: Vec) -> tuple[LegChange, ...]:
    """One leg longer or shorter: the change that hangs it most level first, legs that cannot do it left out."""
    what, found = Rigging(rig.eyes, rig.legs_m, cg), []
    for leg in range(len(rig.legs_m)):
        try:
            found.append(levelled_by_one_leg(what, leg))
        except OutOfRangeError:
            continue

    return tuple(sorted(found, key=lambda change: (change.tilt_deg > LEVEL_WITHIN_DEG, abs(change.by_m))))


def changes_together(rig: AsHung, cg: Vec) -> tuple[float, ...]:
    """How much longer each leg must be to hang it level, one of them as it is [m]: where the fewest legs change.

    Of more than two legs one alone lifts a corner or goes slack. Empty where no lengths level it.
    """
    what, found = Rigging(rig.eyes, rig.legs_m, cg), []
    for kept in range(len(rig.legs_m)):
        try:
            legs_m = lengths_that_level_m(what, kept)
            tilt_deg = settled(Rigging(rig.eyes, legs_m, cg)).tilt_deg
        except OutOfRangeError:
            continue
        if tilt_deg <= LEVEL_WITHIN_DEG and min(legs_m) > 0.0:
            found.append(tuple(leg_m - now_m for leg_m, now_m in zip(legs_m, rig.legs_m, strict=True)))

    return min(found, key=_effort, default=())


def _effort(by_m: tuple[float, ...]) -> tuple[int, float]:
    """How many legs are changed, and the furthest of them."""
    away = [abs(each) for each in by_m]
    return len([each for each in away if each >= SMALL_M]), max(away)


def pick_changes(rig: AsHung, cg: Vec, others: Sequence[Vec]) -> tuple[PickChange, ...]:
    """One leg moved to another pick point of the load, the most level first."""
    what = Rigging(rig.eyes, rig.legs_m, cg)
    found = [each for leg in range(len(rig.legs_m)) for each in levelled_by_another_pick(what, leg, others)]

    return tuple(sorted(found, key=lambda change: change.tilt_deg))


def _readings(trials: Sequence[Hung]) -> Readings:
    return Readings(
        max(each.tilt_off_deg for each in trials), max(each.rig.leg_off_m for each in trials),
        max(each.rig.eye_off_m for each in trials),
    )
