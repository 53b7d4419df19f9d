"""How four legs share a load: by their stiffness, which nobody knows well.

In the load's axes the place of the hook is all there is to find. A leg that is stretched pulls with its stiffness, one
that is not is slack, and the load hangs so that

    E(H) = Σ ½ k max(0, |H − P| − L)² − W |H − G|   is least.

Newton's method on that, begun where legs that do not stretch would hold the hook; if it does not come to rest there,
softer legs first and then step by step up to the real stiffness.
"""

from collections.abc import Sequence
from typing import NamedTuple

from checklist_app.mechanics import exact
from checklist_app.mechanics.errors import OutOfRangeError, required_positive
from checklist_app.mechanics.hanging.body import SOURCE, Hang, Rigging, hung
from checklist_app.mechanics.hanging.settling import settled
from checklist_app.mechanics.vectors import Vec, length, less

STEPS, HALVINGS, SHIFTS = 60, 40, 40
AT_REST, ROUNDING, BALANCED = 1e-12, 2e-16, 1e-9
ENOUGH, UNSEEN = 1e-4, 1e-15
JUST_SLACK, FLAT = 1e-9, 1e-13
LEAST_STRETCH = 1e-8
SOFTER = (1e-3, 1e-2, 1e-1, 1.0)

Legs = list[tuple[float, float, float, float, float]]


class Look(NamedTuple):
    """What Newton's method sees from one place of the hook: energy, slope, its square, curvature."""

    energy: float
    x: float
    y: float
    z: float
    steepness: float
    curvature: tuple[float, float, float, float, float, float]


def shared_by_stiffness(what: Rigging, load_kn: float, stiffnesses_kn_per_m: Sequence[float]) -> Hang:
    """The load as it hangs on legs that stretch.

        Σ k (|H − P| − L) u = W (H − G) / |H − G| over the stretched legs

    Source:
        STATICS_HANGING_BODY; the same by energy minimisation in the tests.

    Args:
        what: what hangs.
        load_kn: W, load on the hook [kN], above 0.
        stiffnesses_kn_per_m: k, pull per stretch of each leg [kN/m], above 0.

    Returns:
        Attitude and pulls; a slack leg pulls nothing.

    Raises:
        OutOfRangeError: If a number is none, the legs do not reach each other, or it does not settle.

    Example:
        >>> from checklist_app.mechanics.hanging.body import rigging
        >>> picks = [Vec(0.6, 0.4, 0.0), Vec(0.6, -0.4, 0.0), Vec(-0.6, -0.4, 0.0), Vec(-0.6, 0.4, 0.0)]
        >>> hang = shared_by_stiffness(rigging(picks, [1.5] * 4, Vec(0.1, -0.05, -0.3)), 20.0, [2000.0] * 4)
        >>> [round(20.0 * share, 3) for share in hang.shares]
        [5.88, 7.034, 5.491, 4.336]
    """
    required_positive("load on the hook", load_kn, SOURCE)
    if len(stiffnesses_kn_per_m) != len(what.legs_m):
        raise OutOfRangeError("number of stiffnesses", len(stiffnesses_kn_per_m), "one for each leg", SOURCE)
    for stiffness in stiffnesses_kn_per_m:
        required_positive("stiffness of a leg", stiffness, SOURCE)
    stiff = [float(stiffness) / float(load_kn) for stiffness in stiffnesses_kn_per_m]
    if not max(stiff) * what.size_m * LEAST_STRETCH < 1.0:
        raise OutOfRangeError("stiffness of a leg", max(stiffnesses_kn_per_m), "what a real leg has", SOURCE)

    start = settled(what).hook
    hook = _at_rest(what, start, stiff)
    if hook is None:
        hook = start
        for softer in SOFTER:
            found = _at_rest(what, hook, [softer * each for each in stiff])
            hook = found if found is not None else hook
    return _told(what, hook, stiff)


def _told(what: Rigging, hook: Vec, stiff: list[float]) -> Hang:
    away = [length(less(hook, pick)) for pick in what.picks]
    pulls = [k * max(0.0, far - leg_m) / far for k, far, leg_m in zip(stiff, away, what.legs_m, strict=True)]
    hang = hung(what, hook, pulls, [pull > 0.0 for pull in pulls])
    if not hang.off_balance <= BALANCED:
        raise OutOfRangeError("how the load comes to hang", "does not settle", "a steadier arrangement of legs", SOURCE)

    return hang


def _at_rest(what: Rigging, hook: Vec, stiff: list[float]) -> Vec | None:
    """Newton's method downhill from a place of the hook; None where it does not come to rest."""
    legs = [(*pick, leg_m, k) for pick, leg_m, k in zip(what.picks, what.legs_m, stiff, strict=True)]
    still = max(AT_REST, ROUNDING * what.size_m * max(stiff) * len(stiff))
    here = _looked_at(legs, what.cg, hook)
    for _ in range(STEPS):
        if here.steepness <= still * still:
            return hook
        step = _downhill(here)
        moved = _moved(legs, what.cg, hook, here, step) if step is not None else None
        if moved is None:
            return None
        hook, here = moved

    return None


def _moved(legs: Legs, cg: Vec, hook: Vec, here: Look, step: Vec) -> tuple[Vec, Look] | None:
    """A step, halved until it leads down; near the bottom, where rounding hides that, until it is flatter."""
    slope = step.x * here.x + step.y * here.y + step.z * here.z
    for _ in range(HALVINGS):
        to = Vec(hook.x + step.x, hook.y + step.y, hook.z + step.z)
        there = _looked_at(legs, cg, to)
        gained = there.energy - here.energy
        if gained <= ENOUGH * slope or (gained <= UNSEEN * abs(here.energy) and there.steepness < here.steepness):
            return to, there
        step, slope = Vec(0.5 * step.x, 0.5 * step.y, 0.5 * step.z), 0.5 * slope

    return None


def _looked_at(legs: Legs, cg: Vec, hook: Vec) -> Look:
    """Energy, its slope and its curvature with the hook in one place, for a load of 1."""
    hx, hy, hz = hook
    x, y, z = hx - cg.x, hy - cg.y, hz - cg.z
    far = exact.sqrt(x * x + y * y + z * z)
    x, y, z, bend = x / far, y / far, z / far, -1.0 / far
    energy, gx, gy, gz = -far, -x, -y, -z
    xx, yy, zz = bend * (1.0 - x * x), bend * (1.0 - y * y), bend * (1.0 - z * z)
    xy, xz, yz = -bend * x * y, -bend * x * z, -bend * y * z
    for px, py, pz, leg_m, k in legs:
        x, y, z = hx - px, hy - py, hz - pz
        far = exact.sqrt(x * x + y * y + z * z)
        stretch = far - leg_m
        if stretch < -JUST_SLACK * leg_m:
            continue
        x, y, z = x / far, y / far, z / far
        pull = k * stretch if stretch > 0.0 else 0.0
        bend = pull / far
        keen = k - bend
        energy += 0.5 * pull * stretch
        gx, gy, gz = gx + pull * x, gy + pull * y, gz + pull * z
        xx, yy, zz = xx + bend + keen * x * x, yy + bend + keen * y * y, zz + bend + keen * z * z
        xy, xz, yz = xy + keen * x * y, xz + keen * x * z, yz + keen * y * z

    return Look(energy, gx, gy, gz, gx * gx + gy * gy + gz * gz, (xx, yy, zz, xy, xz, yz))


def _downhill(here: Look) -> Vec | None:
    """Newton's step, with the curvature raised until it leads downhill."""
    xx, yy, zz, xy, xz, yz = here.curvature
    raised = 0.0
    for _ in range(SHIFTS):
        a, b, c = xx + raised, yy + raised, zz + raised
        minor = a * b - xy * xy
        det = c * minor + 2.0 * xy * xz * yz - a * yz * yz - b * xz * xz
        if a > 0.0 and minor > 0.0 and det > FLAT * a * b * abs(c):
            x, y, z = -here.x, -here.y, -here.z
            return Vec(
                ((b * c - yz * yz) * x + (xz * yz - xy * c) * y + (xy * yz - xz * b) * z) / det,
                ((xz * yz - xy * c) * x + (a * c - xz * xz) * y + (xy * xz - a * yz) * z) / det,
                ((xy * yz - xz * b) * x + (xy * xz - a * yz) * y + minor * z) / det,
            )
        raised = 4.0 * raised if raised else 1e-3 * (abs(xx) + abs(yy) + abs(zz))

    return None
