"""A load as it hangs from one hook, in bare numbers from which sums of forces and moments can be written out."""

from collections.abc import Sequence
from dataclasses import dataclass
from math import isfinite

from checklist_app.mechanics import exact
from checklist_app.mechanics.errors import OutOfRangeError, required_positive
from checklist_app.mechanics.vectors import Vec, cross, dot, length, less, plain, times

SOURCE = "STATICS_HANGING_BODY"
UPSIDE_DOWN = -0.999


@dataclass(frozen=True)
class Rigging:
    """Where the legs are fastened and how long they are, and where the centre of gravity is, in the load's axes."""

    picks: tuple[Vec, ...]
    legs_m: tuple[float, ...]
    cg: Vec

    @property
    def size_m(self) -> float:
        """The longest leg: the measure of what is small."""
        return max(self.legs_m)


@dataclass(frozen=True)
class Hang:
    """The load in balance under its hook.

    `eyes` are the picks seen from the hook as it hangs: two level directions (turned over from the load's x and y by
    the shortest way) and upwards along the plumb line, so an eye below the hook has z < 0. With the pull of each leg
    as a share of the load, `pull_per_m` = share / distance, the three sums anybody can check are

        Σ pull_per_m × eye.x = 0,   Σ pull_per_m × eye.y = 0,   Σ pull_per_m × (−eye.z) = 1

    `slacks_m` is by how much each leg is longer than it need be; below 0 it is stretched.
    """

    hook: Vec
    upright: Vec
    plumb_m: float
    eyes: tuple[Vec, ...]
    distances_m: tuple[float, ...]
    shares: tuple[float, ...]
    tight: tuple[bool, ...]
    slacks_m: tuple[float, ...]

    @property
    def tilt_along_deg(self) -> float:
        """Tilt seen square to the load's length, as `attitude.tilt_deg` counts it."""
        return exact.atan2_deg(self.upright.x, self.upright.z)

    @property
    def tilt_across_deg(self) -> float:
        """Tilt seen along the load's length."""
        return exact.atan2_deg(self.upright.y, self.upright.z)

    @property
    def tilt_deg(self) -> float:
        """Angle between the load's own upright and the plumb line."""
        return exact.atan2_deg(level(self.upright.x, self.upright.y), self.upright.z)

    @property
    def drops_m(self) -> tuple[float, ...]:
        """Each eye below the hook."""
        return tuple(-eye.z for eye in self.eyes)

    @property
    def reaches_m(self) -> tuple[float, ...]:
        """Each eye from the plumb line through the hook."""
        return tuple(level(eye.x, eye.y) for eye in self.eyes)

    @property
    def angles_deg(self) -> tuple[float, ...]:
        """Each leg from vertical."""
        return tuple(exact.atan2_deg(level(eye.x, eye.y), -eye.z) for eye in self.eyes)

    @property
    def pulls_per_m(self) -> tuple[float, ...]:
        """Share of each leg over its distance from the hook [1/m]."""
        return tuple(share / far for share, far in zip(self.shares, self.distances_m, strict=True))

    @property
    def off_balance(self) -> float:
        """How far the three sums of forces are from what they should be, as a share of the load."""
        x, y, up = 0.0, 0.0, -1.0
        for pull, eye in zip(self.pulls_per_m, self.eyes, strict=True):
            x, y, up = x + pull * eye.x, y + pull * eye.y, up - pull * eye.z
        return max(abs(x), abs(y), abs(up))

    @property
    def eye_angles_deg(self) -> tuple[float, ...]:
        """Pull on each pick from the load's own upright."""
        return tuple(exact.atan2_deg(level(way.x, way.y), way.z) for way in self.ways)

    @property
    def ways(self) -> tuple[Vec, ...]:
        """From each pick to the hook, in the load's axes."""
        across, beside, up = frame(self.upright)
        return tuple(
            Vec(
                -(eye.x * across.x + eye.y * beside.x + eye.z * up.x),
                -(eye.x * across.y + eye.y * beside.y + eye.z * up.y),
                -(eye.x * across.z + eye.y * beside.z + eye.z * up.z),
            )
            for eye in self.eyes
        )

    def included_angle_deg(self, one: int, other: int) -> float:
        """Angle between two legs."""
        a, b = self.eyes[one], self.eyes[other]
        return exact.atan2_deg(length(cross(a, b)), dot(a, b))


def rigging(picks: Sequence[Vec], legs_m: Sequence[float], cg: Vec) -> Rigging:
    """Pick points, legs and centre of gravity in bare numbers, each looked at once.

    Source:
        STATICS_HANGING_BODY.

    Args:
        picks: where each leg is fastened, in the load's axes [m].
        legs_m: each leg, bearing to bearing [m], above 0.
        cg: centre of gravity, in the load's axes [m].

    Returns:
        What hangs.

    Raises:
        OutOfRangeError: If a number is missing or no number, or there are no legs or more than four.

    Example:
        >>> rigging([Vec(0.0, 0.0, 0.0)], [2.0], Vec(0.0, 0.0, -1.0)).legs_m
        (2.0,)
    """
    if not (1 <= len(picks) <= 4 and len(picks) == len(legs_m)):
        raise OutOfRangeError("number of legs", len(legs_m), "one to four, each with its pick point", SOURCE)
    for leg_m in legs_m:
        required_positive("length of a leg", leg_m, SOURCE)
    for point in (*picks, cg):
        if not (isfinite(point[0]) and isfinite(point[1]) and isfinite(point[2])):
            raise OutOfRangeError("a pick point or the centre of gravity", tuple(point), "three numbers", SOURCE)

    return Rigging(tuple(plain(pick) for pick in picks), tuple(float(leg_m) for leg_m in legs_m), plain(cg))


def frame(upright: Vec) -> tuple[Vec, Vec, Vec]:
    """Level directions and upright of the hung load, in the load's axes; its x and y turned over by the shortest way.

    Source:
        STATICS_HANGING_BODY.

    Args:
        upright: unit vector up the plumb line, in the load's axes.

    Returns:
        Level one, level two, upright.

    Example:
        >>> frame(Vec(0.0, 0.0, 1.0))[0]
        Vec(x=1.0, y=-0.0, z=-0.0)
    """
    x, y, z = upright
    if z > UPSIDE_DOWN:
        part = 1.0 / (1.0 + z)
        return Vec(1.0 - x * x * part, -x * y * part, -x), Vec(-x * y * part, 1.0 - y * y * part, -y), upright
    beside = cross(upright, Vec(1.0, 0.0, 0.0))
    beside = times(beside, 1.0 / length(beside))

    return cross(beside, upright), beside, upright


def hung(what: Rigging, hook: Vec, shares_per_m: Sequence[float], tight: Sequence[bool]) -> Hang:
    """The load as it hangs, from where its hook is.

    Source:
        STATICS_HANGING_BODY.

    Args:
        what: what hangs.
        hook: the hook in the load's axes [m].
        shares_per_m: pull of each leg as a share of the load, over its distance [1/m].
        tight: which legs are at their full length.

    Returns:
        Attitude, pulls and where each eye hangs.

    Raises:
        OutOfRangeError: If the hook is in the centre of gravity.

    Example:
        >>> one = rigging([Vec(0.0, 0.0, 0.0)], [2.0], Vec(0.0, 0.0, -1.0))
        >>> hung(one, Vec(0.0, 0.0, 2.0), [0.5], [True]).shares
        (1.0,)
    """
    way = less(hook, what.cg)
    plumb_m = length(way)
    required_positive("centre of gravity below the hook", plumb_m, SOURCE)
    upright = times(way, 1.0 / plumb_m)
    rows = frame(upright)
    from_hook = [less(pick, hook) for pick in what.picks]
    far = tuple(length(each) for each in from_hook)

    return Hang(
        hook, upright, plumb_m, tuple(Vec(*(dot(row, each) for row in rows)) for each in from_hook), far,
        tuple(share * away for share, away in zip(shares_per_m, far, strict=True)), tuple(tight),
        tuple(leg_m - away for leg_m, away in zip(what.legs_m, far, strict=True)),
    )


def level(x: float, y: float) -> float:
    """Length of a level step.

        √(x² + y²)

    Source:
        STATICS_HANGING_BODY.

    Args:
        x: one way [m].
        y: square to it [m].

    Returns:
        Length [m].

    Example:
        >>> level(3.0, 4.0)
        5.0
    """
    return exact.sqrt(x * x + y * y)
