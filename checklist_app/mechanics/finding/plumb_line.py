"""What a trial lift tells: the centre of gravity lies on the plumb line through the hook, seen in the load.

Tilts are read on the load, the legs and picks are known, so the hook's place in the load is known too. One trial gives
a line and says nothing about height; a second one from another hitch gives another line, and they meet in the centre of
gravity.
"""

from collections.abc import Sequence
from dataclasses import dataclass

from checklist_app.mechanics import exact
from checklist_app.mechanics.errors import OutOfRangeError, required_positive
from checklist_app.mechanics.hanging.body import Hang, rigging
from checklist_app.mechanics.hanging.furthest import hook_furthest
from checklist_app.mechanics.vectors import Vec, cross, dot, length, less, made_of, stepped, times

SOURCE = "STATICS_TRIAL"
STEEPEST_DEG = 60.0
ORIGIN = Vec(0.0, 0.0, 0.0)


@dataclass(frozen=True)
class Hitch:
    """One trial: where the legs were fastened, how long they hung, and the tilts that were read.

    Legs that stretch are entered as long as they hang (`Hang.distances_m` of the plan), not as long as they lie.
    """

    picks: tuple[Vec, ...]
    legs_m: tuple[float, ...]
    tilt_along_deg: float
    tilt_across_deg: float


@dataclass(frozen=True)
class PlumbLine:
    """Through the hook and up, in the load's axes."""

    hook: Vec
    upright: Vec

    def at_height(self, height_m: float) -> Vec:
        """The point of the line at a height in the load."""
        far = (self.hook.z - height_m) / self.upright.z
        return stepped(self.hook, -far, self.upright)


def upright_by_tilts(tilt_along_deg: float, tilt_across_deg: float) -> Vec:
    """The plumb line in the load's axes, from the tilts seen square to its length and along it.

        v ∝ (tan τ_along, tan τ_across, 1)

    Source:
        STATICS_TRIAL; the reverse of `attitude.tilt_deg`.

    Args:
        tilt_along_deg: below 0 the right end hangs low [°], −60 to 60.
        tilt_across_deg: tilt seen along the load [°], −60 to 60.

    Returns:
        Unit vector.

    Raises:
        OutOfRangeError: If a tilt leaves its range: a load that hangs so is lowered, not measured.

    Example:
        >>> upright_by_tilts(0.0, 0.0)
        Vec(x=0.0, y=0.0, z=1.0)
    """
    slopes = []
    for tilt_deg in (tilt_along_deg, tilt_across_deg):
        if not abs(tilt_deg) <= STEEPEST_DEG:
            raise OutOfRangeError("tilt", tilt_deg, f"−{STEEPEST_DEG:.0f} to {STEEPEST_DEG:.0f}°", SOURCE)
        angle_rad = tilt_deg / exact.RAD_IN_DEG
        slopes.append(exact.sin(angle_rad) / exact.cos(angle_rad))
    way = Vec(slopes[0], slopes[1], 1.0)

    return times(way, 1.0 / length(way))


def line_of(trial: Hitch) -> PlumbLine:
    """The line on which the centre of gravity lies.

        G = H − s v, H the furthest along v that the legs reach

    Source:
        STATICS_TRIAL.

    Args:
        trial: what was hung and read.

    Returns:
        The plumb line through the hook, in the load.

    Raises:
        OutOfRangeError: If a number is none, or the legs do not reach each other.

    Example:
        >>> legs = (5.0, 5.0)
        >>> line_of(Hitch((Vec(-3.0, 0.0, 0.0), Vec(3.0, 0.0, 0.0)), legs, 0.0, 0.0)).hook
        Vec(x=0.0, y=0.0, z=4.0)
    """
    upright = upright_by_tilts(float(trial.tilt_along_deg), float(trial.tilt_across_deg))
    return PlumbLine(hook_furthest(rigging(trial.picks, trial.legs_m, ORIGIN), upright), upright)


def hitch_as_it_hung(picks: Sequence[Vec], hang: Hang) -> Hitch:
    """A trial that reads what was planned: the plan's own picks, stretched legs and tilts.

    Source:
        STATICS_TRIAL.

    Args:
        picks: where each leg is fastened, in the load's axes [m].
        hang: the load as planned.

    Returns:
        The trial.

    Example:
        >>> from checklist_app.mechanics.hanging.settling import settled
        >>> picks = (Vec(-3.0, 0.0, 0.0), Vec(3.0, 0.0, 0.0))
        >>> hitch_as_it_hung(picks, settled(rigging(picks, (5.0, 5.0), Vec(0.0, 0.0, -1.0)))).tilt_along_deg
        0.0
    """
    return Hitch(tuple(picks), hang.distances_m, hang.tilt_along_deg, hang.tilt_across_deg)


def nearest_point(lines: Sequence[PlumbLine]) -> Vec:
    """The point that lies nearest to several plumb lines.

        Σ (1 − v vᵀ) (G − H) = 0

    Source:
        STATICS_TRIAL, least squares; FAA_WEIGHT_BALANCE says that lines of two suspensions meet in it.

    Args:
        lines: two or more.

    Returns:
        G [m].

    Raises:
        OutOfRangeError: If there are fewer than two lines, or they run side by side.

    Example:
        >>> down = PlumbLine(Vec(0.0, 0.0, 2.0), Vec(0.0, 0.0, 1.0))
        >>> nearest_point([down, PlumbLine(Vec(1.0, 0.0, 0.5), Vec(1.0, 0.0, 0.0))])
        Vec(x=0.0, y=0.0, z=0.5)
    """
    if len(lines) < 2:
        raise OutOfRangeError("number of trials", len(lines), "two, from different hitches", SOURCE)
    columns = [[0.0, 0.0, 0.0] for _ in range(3)]
    whole = [0.0, 0.0, 0.0]
    for line in lines:
        for i in range(3):
            for j in range(3):
                part = (1.0 if i == j else 0.0) - line.upright[i] * line.upright[j]
                columns[j][i] += part
                whole[i] += part * line.hook[j]
    point = made_of(Vec(*columns[0]), Vec(*columns[1]), Vec(*columns[2]), Vec(*whole))
    if point is None:
        raise OutOfRangeError("plumb lines of the trials", "side by side", "hitches that tilt it differently", SOURCE)

    return point


def angle_between_deg(one: PlumbLine, other: PlumbLine) -> float:
    """Angle at which two plumb lines meet.

        atan2(|v₁ × v₂|, v₁ · v₂)

    Source:
        STATICS_TRIAL.

    Args:
        one: a line.
        other: another.

    Returns:
        Angle [°], 0 to 180.

    Example:
        >>> down = PlumbLine(Vec(0.0, 0.0, 2.0), Vec(0.0, 0.0, 1.0))
        >>> angle_between_deg(down, PlumbLine(Vec(1.0, 0.0, 0.0), Vec(1.0, 0.0, 0.0)))
        90.0
    """
    return exact.atan2_deg(length(cross(one.upright, other.upright)), dot(one.upright, other.upright))


def passing_by_m(one: PlumbLine, other: PlumbLine) -> float:
    """How far two plumb lines pass each other by; the sign says on which side.

        (H₂ − H₁) · (v₁ × v₂) / |v₁ × v₂|

    Source:
        STATICS_TRIAL.

    Args:
        one: a line.
        other: another, not side by side with it.

    Returns:
        Distance, signed [m].

    Raises:
        OutOfRangeError: If they run side by side.

    Example:
        >>> down = PlumbLine(Vec(0.0, 0.0, 2.0), Vec(0.0, 0.0, 1.0))
        >>> passing_by_m(down, PlumbLine(Vec(0.0, 0.25, 0.0), Vec(1.0, 0.0, 0.0)))
        0.25
    """
    square = cross(one.upright, other.upright)
    size = length(square)
    required_positive("angle between the plumb lines", size, SOURCE)

    return dot(less(other.hook, one.hook), square) / size
