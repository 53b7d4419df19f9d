"""How stiffly a load comes back when it is turned about its hook: the sign of it is whether it stays upright."""

from collections.abc import Sequence

from checklist_app.mechanics import exact
from checklist_app.mechanics.errors import OutOfRangeError, required_positive
from checklist_app.mechanics.hanging.body import Hang
from checklist_app.mechanics.vectors import Vec, made_of

SOURCE = "STATICS_SLACKENING"
N_IN_KN = 1000.0


def turning_stiffness_knm_per_rad(
    hang: Hang, load_kn: float, stiffnesses_kn_per_m: Sequence[float]
) -> tuple[float, float]:
    """Couple about the hook for each radian of tilt, the two ways in which it is least and greatest.

        S = W h 1 − W² (K⁻¹ across the plumb line),  K = Σ k u uᵀ + T/L (1 − u uᵀ)

    Legs that do not stretch, three or more: W h both ways. Two legs: W times the depth of the centre of gravity below
    the line through the picks, across it. Stretching takes away from it. Below 0 the load goes over.

    Source:
        STATICS_SLACKENING; the same as the curvature of the energy.

    Args:
        hang: the load as it hangs; only legs that pull count.
        load_kn: W [kN], above 0.
        stiffnesses_kn_per_m: k, pull per stretch of each leg [kN/m], above 0.

    Returns:
        Least and greatest S [kN·m/rad].

    Raises:
        OutOfRangeError: If a number is none, or no leg pulls.

    Example:
        >>> from checklist_app.mechanics.hanging.body import rigging
        >>> from checklist_app.mechanics.hanging.settling import settled
        >>> hang = settled(rigging([Vec(-0.5, 0.0, 0.0), Vec(0.5, 0.0, 0.0)], [1.0, 1.0], Vec(0.0, 0.0, -0.4)))
        >>> [round(each, 4) for each in turning_stiffness_knm_per_rad(hang, 10.0, [1e9, 1e9])]
        [4.0, 12.6603]
    """
    required_positive("load on the hook", load_kn, SOURCE)
    columns = _held(hang, load_kn, stiffnesses_kn_per_m)
    give = [made_of(*columns, way) for way in (Vec(1.0, 0.0, 0.0), Vec(0.0, 1.0, 0.0))]
    if give[0] is None or give[1] is None:
        raise OutOfRangeError("the legs that pull", "none", "one leg at least", SOURCE)
    firm = load_kn * hang.plumb_m
    xx, yy = firm - load_kn * load_kn * give[0].x, firm - load_kn * load_kn * give[1].y
    xy = -load_kn * load_kn * give[0].y
    middle, half = 0.5 * (xx + yy), 0.5 * (xx - yy)
    spread = exact.sqrt(half * half + xy * xy)

    return middle - spread, middle + spread


def couple_for_one_degree_nm(load_kn: float, arm_m: float) -> float:
    """Couple about the hook that turns the load by one degree, with legs that do not stretch.

        M = W a π / 180

    Source:
        STATICS_SLACKENING; a pendulum's restoring couple W a sin θ, for small turns.

    Args:
        load_kn: W [kN], above 0.
        arm_m: a, how deep its centre of gravity hangs below what it turns about: the hook in the plane of two legs and
            any way on three or four, the line through two picks across it, the one pick of one leg [m].

    Returns:
        M [N·m]; below 0 it turns on by itself.

    Raises:
        OutOfRangeError: If the load is no number above 0.

    Example:
        >>> round(couple_for_one_degree_nm(10.0, 1.5), 2)
        261.8
    """
    required_positive("load on the hook", load_kn, SOURCE)

    return N_IN_KN * load_kn * arm_m / exact.RAD_IN_DEG


def _held(hang: Hang, load_kn: float, stiffnesses: Sequence[float]) -> tuple[Vec, Vec, Vec]:
    """How the legs hold the hook in the load: the three columns of K, as it hangs."""
    xx = yy = zz = xy = xz = yz = 0.0
    for eye, far, share, k in zip(hang.eyes, hang.distances_m, hang.shares, stiffnesses, strict=True):
        required_positive("stiffness of a leg", k, SOURCE)
        if not share > 0.0:
            continue
        x, y, z = eye.x / far, eye.y / far, eye.z / far
        bend = share * load_kn / far
        keen = k - bend
        xx, yy, zz = xx + bend + keen * x * x, yy + bend + keen * y * y, zz + bend + keen * z * z
        xy, xz, yz = xy + keen * x * y, xz + keen * x * z, yz + keen * y * z

    return Vec(xx, xy, xz), Vec(xy, yy, yz), Vec(xz, yz, zz)
