"""One sling running free over the hook: both its parts pull alike, and the hook slides along it until they lie alike.

In the plane through the picks and the centre of gravity the hook moves on an ellipse with the picks as foci. Counted
*along* the line through the picks from its middle, towards the right pick, and *off* it, upwards.
"""

from dataclasses import dataclass
from math import isfinite

from checklist_app.mechanics import exact
from checklist_app.mechanics.errors import OutOfRangeError, required_positive
from checklist_app.mechanics.hanging.running_ellipse import Ellipse

SOURCE = "STATICS_RUNNING_SLING"


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
    ellipse = Ellipse(float(span_m) / 2.0, float(sling_m) / 2.0, float(cg_along_m), float(cg_below_m))
    found = [_hung(ellipse, half) for half in ellipse.balances()]
    if not found:
        raise OutOfRangeError("the load on its running sling", "no balance", "two slings, or a choke", SOURCE)

    return min(found, key=lambda hang: abs(hang.tilt_deg))


def _hung(ellipse: Ellipse, half: float) -> RunningHang:
    sin, cos = ellipse.turn(half)
    a, b, c, e, d = ellipse.a, ellipse.b, ellipse.c, ellipse.e, ellipse.d
    along, off = a * sin, b * cos
    plumb_along, plumb_off = along - e, off + d
    plumb_m = exact.sqrt(plumb_along * plumb_along + plumb_off * plumb_off)
    required_positive("centre of gravity below the hook", plumb_m, SOURCE)
    left = exact.sqrt((along + c) * (along + c) + off * off)
    right = exact.sqrt((along - c) * (along - c) + off * off)
    square = (along + c) / left + (along - c) / right, off / left + off / right
    needed = (c * c * (cos * cos - sin * sin) + e * a * sin) / (b * cos)

    return RunningHang(
        along, off, plumb_m, (left, right), plumb_m / (square[0] * plumb_along + square[1] * plumb_off),
        exact.atan2_deg(plumb_along, plumb_off), d, needed,
    )
