"""The chain of four bars: two hooks, two legs and a load, and how it moves as the left leg swings.

All in the upright plane through the two hooks: x level from the left hook towards the right, z up, the left hook at 0.
The load rolls about the line through its picks until its centre of gravity hangs in that plane.
"""

from dataclasses import dataclass
from math import isfinite
from typing import NamedTuple

from checklist_app.mechanics import exact
from checklist_app.mechanics.errors import OutOfRangeError, required_not_negative, required_positive

SOURCE = "STATICS_TWO_HOOKS"
ALONG = 1e-9


class Flat(NamedTuple):
    """A point or a way in the plane of the hooks."""

    x: float
    z: float


@dataclass(frozen=True)
class Bars:
    """The four bars: what the load is, how long the legs are, and where the right hook is, seen from the left."""

    span_m: float
    cg_along_m: float
    cg_below_m: float
    legs_m: tuple[float, float]
    right_hook: Flat
    stands: Flat


class Place(NamedTuple):
    """The chain in one position: picks, centre of gravity, and how it rises as the left leg swings."""

    left: Flat
    right: Flat
    cg: Flat
    slope_m: float
    curve_m: float
    turned: float


def bars(
    span_m: float, cg_along_m: float, cg_below_m: float, legs_m: tuple[float, float],
    right_hook: tuple[float, float], stands: tuple[float, float],
) -> Bars:
    """The chain of hooks, legs and load in bare numbers, each looked at once.

    Source:
        STATICS_TWO_HOOKS.

    Args:
        span_m: straight distance between the picks [m], above 0.
        cg_along_m: centre of gravity along the line through the picks, from the left one [m].
        cg_below_m: its distance from that line, below [m]; below 0 it is above.
        legs_m: left and right leg, bearing to bearing [m], above 0.
        right_hook: level and upwards from the left hook to the right [m].
        stands: level and upwards from the left pick to the right, as the load stands [m].

    Returns:
        What hangs.

    Raises:
        OutOfRangeError: If a number is none or a length is not above 0.

    Example:
        >>> bars(1.0, 0.5, 0.4, (1.5, 1.5), (0.4, 0.0), (1.0, 0.0)).right_hook
        Flat(x=0.4, z=0.0)
    """
    required_positive("distance between the picks", span_m, SOURCE)
    for leg_m in legs_m:
        required_positive("length of a leg", leg_m, SOURCE)
    for number in (cg_along_m, cg_below_m, *right_hook, *stands):
        if not isfinite(number):
            raise OutOfRangeError("place of a hook or of the centre of gravity", number, "a number", SOURCE)
    required_not_negative("right hook to the right of the left", right_hook[0], SOURCE)
    required_positive("right pick to the right of the left", stands[0], SOURCE)
    left_m, right_m = legs_m

    return Bars(
        float(span_m), float(cg_along_m), float(cg_below_m), (float(left_m), float(right_m)),
        Flat(float(right_hook[0]), float(right_hook[1])), Flat(float(stands[0]), float(stands[1])),
    )


def slope_m(what: Bars, half: float) -> float | None:
    """How fast the centre of gravity rises as the left leg swings to the right.

        dz / dψ = L_A sin ψ + ω (x_G − x_A)

    Source:
        STATICS_TWO_HOOKS.

    Args:
        what: the chain.
        half: tangent of half the angle of the left leg from vertical [-].

    Returns:
        Rise for each radian [m]; None where the chain does not close, or the right leg lies along the picks.

    Example:
        >>> slope_m(bars(1.0, 0.5, 0.4, (1.5, 1.5), (1.0, 0.0), (1.0, 0.0)), 0.0)
        0.0
    """
    (left_m, right_m), span_m, (hook_x, hook_z) = what.legs_m, what.span_m, what.right_hook
    part = 1.0 / (1.0 + half * half)
    across, down = 2.0 * half * part, (1.0 - half * half) * part
    ax, az = left_m * across, -left_m * down
    x, z = hook_x - ax, hook_z - az
    square = x * x + z * z
    if not square > 0.0:
        return None
    share = (square + span_m * span_m - right_m * right_m) / (2.0 * square)
    off2 = span_m * span_m / square - share * share
    if not off2 > 0.0:
        return None
    off = exact.sqrt(off2)
    bx, bz = share * x + off * z, share * z - off * x
    ux, uz = x - bx, z - bz
    lever = bx * uz - bz * ux
    if not abs(lever) > ALONG * span_m * right_m:
        return None
    turned = -left_m * (down * ux + across * uz) / lever

    return left_m * across + turned * (what.cg_along_m * bx + what.cg_below_m * bz) / span_m


def placed(what: Bars, half: float) -> Place | None:
    """The chain with the left leg swung out so far, and how it moves on from there.

    Source:
        STATICS_TWO_HOOKS.

    Args:
        what: the chain.
        half: tangent of half the angle of the left leg from vertical, outwards above 0 [-].

    Returns:
        Its position; None where the chain does not close, or the right leg lies along the picks.

    Example:
        >>> placed(bars(1.0, 0.5, 0.4, (1.5, 1.5), (1.0, 0.0), (1.0, 0.0)), 0.0).cg
        Flat(x=0.5, z=-1.9)
    """
    left_m = what.legs_m[0]
    across, down = 2.0 * half / (1.0 + half * half), (1.0 - half * half) / (1.0 + half * half)
    left = Flat(left_m * across, -left_m * down)
    right = _right_pick(what, left)
    if right is None:
        return None
    along = Flat((right.x - left.x) / what.span_m, (right.z - left.z) / what.span_m)
    cg = Flat(
        left.x + what.cg_along_m * along.x + what.cg_below_m * along.z,
        left.z + what.cg_along_m * along.z - what.cg_below_m * along.x,
    )
    return _moving(what, (left, right, cg), Flat(across, down))


def _right_pick(what: Bars, left: Flat) -> Flat | None:
    x, z = what.right_hook.x - left.x, what.right_hook.z - left.z
    square = x * x + z * z
    if not square > 0.0:
        return None
    part = (square + what.span_m * what.span_m - what.legs_m[1] * what.legs_m[1]) / (2.0 * square)
    off2 = what.span_m * what.span_m / square - part * part
    if not off2 > 0.0:
        return None
    off = exact.sqrt(off2)

    return Flat(left.x + part * x + off * z, left.z + part * z - off * x)


def _moving(what: Bars, points: tuple[Flat, Flat, Flat], leg: Flat) -> Place | None:
    """Speeds and accelerations of the chain while the left leg swings one radian a second."""
    left, right, cg = points
    left_m, right_m = what.legs_m
    up = Flat((what.right_hook.x - right.x) / right_m, (what.right_hook.z - right.z) / right_m)
    bx, bz, gx, gz = right.x - left.x, right.z - left.z, cg.x - left.x, cg.z - left.z
    lever = bx * up.z - bz * up.x
    if not abs(lever) > ALONG * what.span_m:
        return None
    turned = -left_m * (leg.z * up.x + leg.x * up.z) / lever
    vx, vz = left_m * leg.z - turned * bz, left_m * leg.x + turned * bx
    faster = (
        (vx * vx + vz * vz) / right_m - left_m * (leg.z * up.z - leg.x * up.x)
        + turned * turned * (up.x * bx + up.z * bz)
    ) / lever
    return Place(
        left, right, cg, left_m * leg.x + turned * gx, left_m * leg.z + faster * gx - turned * turned * gz, turned
    )
