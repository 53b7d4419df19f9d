"""One sling running free over the hook: both its parts pull alike, and the hook slides along it until they lie alike.

In the plane through the picks and the centre of gravity the hook moves on an ellipse with the picks as foci. Counted
*along* the line through the picks from its middle, towards the right pick, and *off* it, upwards.
"""

from dataclasses import dataclass
from math import isfinite

from checklist_app.mechanics import exact
from checklist_app.mechanics.errors import OutOfRangeError, required_positive

SOURCE = "STATICS_RUNNING_SLING"
MARKS = 48
WIDEST = 0.9999
HALVINGS = 80
STILL = 1e-15


@dataclass(frozen=True)
class RunningHang:
    """The load in balance on a sling that runs over the hook, and how far below its picks it must hang to stay so."""

    hook_along_m: float
    hook_off_m: float
    plumb_m: float
    parts_m: tuple[float, float]
    share: float
    tilt_deg: float
    cg_below_m: float
    depth_needed_m: float

    @property
    def upright(self) -> bool:
        """Whether it stays so: the centre of gravity rises either way."""
        return self.cg_below_m > self.depth_needed_m


def depth_needed_m(half_span_m: float, hook_off_m: float) -> float:
    """How far below the line through the picks the centre of gravity must be for a level load to stay level.

        d = c² / b, at a hook that stands aside (c² (cos² φ − sin² φ) + e a sin φ) / (b cos φ)

    Source:
        STATICS_RUNNING_SLING; ACTA_MECHANICA_2023 tells of the sudden turn and of its being no way to lift.

    Args:
        half_span_m: c, half the distance between the picks [m], above 0.
        hook_off_m: b, hook over the line through the picks [m], above 0.

    Returns:
        d [m]; with the centre of gravity at the picks or above them it never stays.

    Raises:
        OutOfRangeError: If a length is no number above 0.

    Example:
        >>> round(depth_needed_m(0.5, 1.090871), 6)
        0.229175
    """
    required_positive("half the distance between the picks", half_span_m, SOURCE)
    required_positive("hook over the line through the picks", hook_off_m, SOURCE)

    return half_span_m * half_span_m / hook_off_m


def hung_on_running_sling(span_m: float, sling_m: float, cg_along_m: float, cg_below_m: float) -> RunningHang:
    """The load as it hangs on a sling that runs free over the hook, in the balance nearest to level.

        c² sin φ cos φ = e a cos φ + d b sin φ,  hook at (a sin φ, b cos φ),  a = s / 2,  b = √(a² − c²)

    Source:
        STATICS_RUNNING_SLING.

    Args:
        span_m: 2 c, straight distance between the picks [m], above 0.
        sling_m: s, the sling from pick to pick over the hook [m], longer than the span.
        cg_along_m: e, centre of gravity from the middle of the picks, towards the right one [m].
        cg_below_m: d, centre of gravity below the line through the picks [m]; below 0 it is above.

    Returns:
        Attitude, pull in the sling as a share of the load, and whether it stays.

    Raises:
        OutOfRangeError: If the sling is too short, a number is none, or there is no balance.

    Example:
        >>> hang = hung_on_running_sling(1.0, 2.4, 0.0, 0.4)
        >>> round(hang.hook_off_m, 6), round(hang.share, 6), hang.upright
        (1.090871, 0.550019, True)
    """
    required_positive("distance between the picks", span_m, SOURCE)
    required_positive("sling longer than the distance between the picks", sling_m - span_m, SOURCE)
    for number in (cg_along_m, cg_below_m):
        if not isfinite(number):
            raise OutOfRangeError("place of the centre of gravity", number, "a number", SOURCE)
    ellipse = _Ellipse(float(span_m) / 2.0, float(sling_m) / 2.0, float(cg_along_m), float(cg_below_m))
    found = [ellipse.hang(half) for half in ellipse.balances()]
    if not found:
        raise OutOfRangeError("the load on its running sling", "no balance", "two slings, or a choke", SOURCE)

    return min(found, key=lambda hang: abs(hang.tilt_deg))


class _Ellipse:
    """Where the hook can be, by the tangent of half the angle φ from the middle."""

    def __init__(self, c: float, a: float, e: float, d: float) -> None:
        self.c, self.a, self.e, self.d = c, a, e, d
        self.b = exact.sqrt(a * a - c * c)

    def slope(self, half: float) -> float:
        """Half the rate at which the square of the depth below the hook changes with φ; nothing in balance."""
        sin, cos = _turn(half)
        return self.c * self.c * sin * cos - self.e * self.a * cos - self.d * self.b * sin

    def balances(self) -> list[float]:
        """Every balance with the hook above the picks."""
        found: list[float] = []
        marks = [WIDEST * (2.0 * mark / MARKS - 1.0) for mark in range(MARKS + 1)]
        slopes = [self.slope(half) for half in marks]
        for low, high, before, after in zip(marks, marks[1:], slopes, slopes[1:], strict=False):
            if before == 0.0:
                found.append(low)
            elif before * after < 0.0:
                found.append(self._between(low, high, before < 0.0))
        return found

    def _between(self, low: float, high: float, below_first: bool) -> float:
        half, small = 0.5 * (low + high), STILL * self.a * self.a
        for _ in range(HALVINGS):
            slope = self.slope(half)
            if abs(slope) <= small or not low < half < high:
                break
            if (slope < 0.0) == below_first:
                low = half
            else:
                high = half
            half = 0.5 * (low + high)
        return half

    def hang(self, half: float) -> RunningHang:
        sin, cos = _turn(half)
        along, off = self.a * sin, self.b * cos
        plumb_along, plumb_off = along - self.e, off + self.d
        plumb_m = exact.sqrt(plumb_along * plumb_along + plumb_off * plumb_off)
        required_positive("centre of gravity below the hook", plumb_m, SOURCE)
        left = exact.sqrt((along + self.c) * (along + self.c) + off * off)
        right = exact.sqrt((along - self.c) * (along - self.c) + off * off)
        square = (along + self.c) / left + (along - self.c) / right, off / left + off / right
        needed = (self.c * self.c * (cos * cos - sin * sin) + self.e * self.a * sin) / (self.b * cos)
        return RunningHang(
            along, off, plumb_m, (left, right), plumb_m / (square[0] * plumb_along + square[1] * plumb_off),
            exact.atan2_deg(plumb_along, plumb_off), self.d, needed,
        )


def _turn(half: float) -> tuple[float, float]:
    part = 1.0 / (1.0 + half * half)
    return 2.0 * half * part, (1.0 - half * half) * part
