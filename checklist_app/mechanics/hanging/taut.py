"""Three legs that are tight hold the hook in one place of the load; what each then pulls, with a pencil.

The hook is where three spheres about the picks meet. Seen from above as it hangs, each of three legs pulls in the
measure of the triangle that the hook makes with the picks of the other two.
"""

from itertools import combinations
from math import sqrt

from checklist_app.mechanics.errors import OutOfRangeError, required_positive
from checklist_app.mechanics.hanging import settling
from checklist_app.mechanics.hanging.body import SOURCE, Rigging
from checklist_app.mechanics.vectors import Vec

REACHED, PUSHING, FLAT, SAME = 1e-10, -1e-10, 1e-9, 1e-7
TWO, THREE = 2, 3
ONE_WAY = "just one: hang it lower below the hook, or by eyes further apart"
Point = tuple[float, float, float]


def hook_of_tight_legs(what: Rigging) -> Vec:
    """Where the hook is in the load: three legs tight and pulling, else two; as `settled` where neither holds it.

        |H − P| = L for three legs or for two, |H − P| ≤ L for the others, those that are tight pull

    Source:
        STATICS_HANGING_BODY.

    Args:
        what: what hangs, on three or four legs.

    Returns:
        The hook in the load's axes [m].

    Raises:
        OutOfRangeError: If the legs do not reach each other, or a top-heavy load can rest on other legs just as well.

    Example:
        >>> from checklist_app.mechanics.hanging.body import rigging
        >>> picks = [Vec(0.0, 0.0, 0.0), Vec(6.0, 0.0, 0.0), Vec(3.0, 3.0, 0.0)]
        >>> hook_of_tight_legs(rigging(picks, [5.0, 5.0, 5.0], Vec(3.0, 1.0, -1.0)))
        Vec(x=3.0, y=0.0, z=4.0)
    """
    legs = range(len(what.picks))
    for held, some in ((_held, combinations(legs, THREE)), (_held_by_two, combinations(legs, TWO))):
        found = [hook for tight in some if (hook := held(what, tight)) is not None]
        if found:
            first = found[0]
            if not all(_near(first, other, what.size_m) for other in found[1:]):
                raise OutOfRangeError("ways in which the load can hang", "more than one", ONE_WAY, SOURCE)
            return first

    return settling.settled(what).hook


def area_m2(x1: float, y1: float, x2: float, y2: float) -> float:
    """Twice the triangle that the hook makes with two picks, seen from above; its sign is the sense round it.

        a = x₁ y₂ − y₁ x₂

    Source:
        STATICS_HANGING_BODY.

    Args:
        x1: first pick from the hook, one level way [m].
        y1: the other level way [m].
        x2: second pick from the hook, one level way [m].
        y2: the other level way [m].

    Returns:
        a [m²].

    Example:
        >>> area_m2(1.0, 0.0, 0.0, 2.0)
        2.0
    """
    return x1 * y2 - y1 * x2


def share_of_three(area: float, leg_m: float, lever_m3: float) -> float:
    """Pull in one of three legs as a share of the load.

        T₁ / W = a₁ L₁ / (a₁ H₁ + a₂ H₂ + a₃ H₃)

    Source:
        STATICS_HANGING_BODY: the three sums of forces, solved.

    Args:
        area: a₁, twice the triangle of the hook and the other two picks, seen from above [m²].
        leg_m: L₁, this leg [m], above 0.
        lever_m3: a₁ H₁ + a₂ H₂ + a₃ H₃, H each pick below the hook [m³].

    Returns:
        T₁ / W [-].

    Raises:
        OutOfRangeError: If a leg is slack, or the three lie in one plane through the hook.

    Example:
        >>> round(share_of_three(2.0, 1.5, 6.0), 6)
        0.5
    """
    required_positive("length of a leg", leg_m, SOURCE)
    if not abs(lever_m3) > 0.0:
        raise OutOfRangeError("three legs", "in one plane", "eyes that make a triangle under the hook", SOURCE)
    share = area * leg_m / lever_m3
    if not share >= PUSHING:
        raise OutOfRangeError("a leg", "slack", "a plumb line through the hook that passes between the eyes", SOURCE)

    return share


def share_by_moments(leg_m: float, arm_m: float, lever_m2: float) -> float:
    """Pull in one of two legs, each from a hook of its own, by the moments about the other pick.

        T₁ / W = L₁ e / l

    Source:
        STATICS_TWO_HOOKS.

    Args:
        leg_m: L₁, this leg [m], above 0.
        arm_m: e, centre of gravity from the other pick, level [m].
        lever_m2: l, L₁ times the distance of its line from the other pick, with the sign of e [m²].

    Returns:
        T₁ / W [-].

    Raises:
        OutOfRangeError: If the leg is slack, or lies along the picks.

    Example:
        >>> share_by_moments(1.5, 0.25, 0.75)
        0.5
    """
    required_positive("length of a leg", leg_m, SOURCE)
    if not abs(lever_m2) > 0.0:
        raise OutOfRangeError("a leg", "along the eyes", "legs that stand up from the load", SOURCE)
    share = leg_m * arm_m / lever_m2
    if not share >= 0.0:
        raise OutOfRangeError("a leg", "slack", "a centre of gravity between the legs", SOURCE)

    return share


def even_share(plane: tuple[float, float, float], along_m: float, aside_m: float) -> float:
    """Upright part of one leg's pull, as a share of the load, where all legs give alike.

        V₁ / W = a + b x₁ + c y₁

    Source:
        STATICS_HANGING_BODY: with equal stiffness the upright parts lie in one plane over the picks.

    Args:
        plane: a [-], b and c [1/m], from the sums of forces and moments over all legs.
        along_m: x₁, this pick from the plumb line, one level way [m].
        aside_m: y₁, the other level way [m].

    Returns:
        V₁ / W [-], 0 where the leg would push.

    Example:
        >>> even_share((0.25, 0.1, 0.0), 0.5, 0.3)
        0.3
    """
    middle, along, aside = plane
    share = middle + along * along_m + aside * aside_m

    return share if share > 0.0 else 0.0


def _held(what: Rigging, three: tuple[int, ...]) -> Vec | None:
    """Where the hook then is; None if a leg is too short or pushes."""
    i, j, k = three
    hook = _met(what.picks[i], what.picks[j], what.picks[k], what.legs_m[i], what.legs_m[j], what.legs_m[k])
    if hook is None:
        return None
    hx, hy, hz = hook
    if len(what.picks) > THREE:
        (px, py, pz), leg_m = what.picks[6 - i - j - k], what.legs_m[6 - i - j - k] + REACHED * what.size_m
        x, y, z = hx - px, hy - py, hz - pz
        if x * x + y * y + z * z > leg_m * leg_m:
            return None
    gx, gy, gz = what.cg
    x, y, z = hx - gx, hy - gy, hz - gz
    if not _pull(hook, (what.picks[i], what.picks[j], what.picks[k]), x, y, z):
        return None

    return Vec(hx, hy, hz)


def _held_by_two(what: Rigging, two: tuple[int, ...]) -> Vec | None:
    """The same with two legs: the hook then stands over their picks' line in the plane of the centre of gravity."""
    i, j = two
    (px, py, pz), (qx, qy, qz), (gx, gy, gz) = what.picks[i], what.picks[j], what.cg
    ax, ay, az, wx, wy, wz = qx - px, qy - py, qz - pz, gx - px, gy - py, gz - pz
    aa, one, other = ax * ax + ay * ay + az * az, what.legs_m[i] * what.legs_m[i], what.legs_m[j] * what.legs_m[j]
    if not aa > FLAT:
        return None
    along, cg_along = (one - other + aa) / (2.0 * aa), (wx * ax + wy * ay + wz * az) / aa
    nx, ny, nz = cg_along * ax - wx, cg_along * ay - wy, cg_along * az - wz
    off2, deep2 = one - along * along * aa, nx * nx + ny * ny + nz * nz
    if not (off2 > 0.0 and deep2 > FLAT and nz > 0.0):
        return None
    up, deep = sqrt(off2 / deep2), sqrt(deep2)
    hx, hy, hz = px + along * ax + up * nx, py + along * ay + up * ny, pz + along * az + up * nz
    # where the plumb line crosses the line of the picks: between them both legs pull
    cross = cg_along + (along - cg_along) * deep / (deep + up * deep)
    if not 0.0 <= cross <= 1.0 or not _reached(what, two, hx, hy, hz):
        return None

    return Vec(hx, hy, hz)


def _near(one: Vec, other: Vec, size_m: float) -> bool:
    x, y, z = one.x - other.x, one.y - other.y, one.z - other.z
    return x * x + y * y + z * z <= SAME * SAME * size_m * size_m


def _reached(what: Rigging, two: tuple[int, ...], hx: float, hy: float, hz: float) -> bool:
    """Whether the other legs are long enough."""
    for leg, ((px, py, pz), leg_m) in enumerate(zip(what.picks, what.legs_m, strict=True)):
        x, y, z = hx - px, hy - py, hz - pz
        if leg not in two and x * x + y * y + z * z > leg_m * leg_m:
            return False
    return True


def _pull(hook: Point, picks: tuple[Vec, Vec, Vec], x: float, y: float, z: float) -> bool:
    """Whether the three hold the weight by pulling alone."""
    hx, hy, hz = hook
    (ax, ay, az), (bx, by, bz), (cx, cy, cz) = picks
    ax, ay, az, bx, by, bz, cx, cy, cz = hx - ax, hy - ay, hz - az, hx - bx, hy - by, hz - bz, hx - cx, hy - cy, hz - cz
    px, py, pz = by * cz - bz * cy, bz * cx - bx * cz, bx * cy - by * cx
    volume, first = ax * px + ay * py + az * pz, x * px + y * py + z * pz
    second = x * (cy * az - cz * ay) + y * (cz * ax - cx * az) + z * (cx * ay - cy * ax)
    third = x * (ay * bz - az * by) + y * (az * bx - ax * bz) + z * (ax * by - ay * bx)
    if volume < 0.0:
        volume, first, second, third = -volume, -first, -second, -third
    small = PUSHING * volume

    return volume > 0.0 and first >= small and second >= small and third >= small


def _met(p: Vec, q: Vec, r: Vec, lp: float, lq: float, lr: float) -> Point | None:
    """Where the spheres about three picks meet over the standing load; None where they do not."""
    px, py, pz = p
    ax, ay, az = q
    bx, by, bz = r
    ax, ay, az, bx, by, bz = ax - px, ay - py, az - pz, bx - px, by - py, bz - pz
    aa, ab, bb = ax * ax + ay * ay + az * az, ax * bx + ay * by + az * bz, bx * bx + by * by + bz * bz
    square = aa * bb - ab * ab
    nx, ny, nz = ay * bz - az * by, az * bx - ax * bz, ax * by - ay * bx
    if not (square > FLAT * aa * bb and nz * nz > FLAT * square):
        return None
    to_a, to_b = (lp * lp - lq * lq + aa) / 2.0, (lp * lp - lr * lr + bb) / 2.0
    s, t = (to_a * bb - to_b * ab) / square, (to_b * aa - to_a * ab) / square
    fx, fy, fz = s * ax + t * bx, s * ay + t * by, s * az + t * bz
    high2 = lp * lp - (fx * fx + fy * fy + fz * fz)
    if not high2 > 0.0:
        return None
    up = sqrt(high2 / square) if nz > 0.0 else -sqrt(high2 / square)

    return px + fx + up * nx, py + fy + up * ny, pz + fz + up * nz
