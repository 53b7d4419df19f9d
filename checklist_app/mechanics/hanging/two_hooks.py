"""A load on two legs, each from a hook of its own: how it comes to hang, what it pulls, and whether it stays."""

from dataclasses import dataclass

from checklist_app.mechanics import exact
from checklist_app.mechanics.errors import OutOfRangeError, required_positive
from checklist_app.mechanics.hanging.four_bars import SOURCE, Bars, Flat, Place, placed, slope_m

MARKS = 32
WIDEST = 0.999
HALVINGS = 80
BALANCED = 1e-9
STILL = 1e-14
LOCKED = 1e-9


@dataclass(frozen=True)
class TwoHookHang:
    """The load in balance under two hooks.

    With each pick seen from its own hook the sums anybody can check are, pull per metre = share / leg,

        Σ pull_per_m × x = 0,   Σ pull_per_m × (−z) = 1,   and the moments about the left hook are 0
    """

    left: Flat
    right: Flat
    cg: Flat
    legs_m: tuple[float, float]
    right_hook: Flat
    shares: tuple[float, float]
    tilt_deg: float
    swing_curve_m: float
    turn_curve_m: float | None

    @property
    def upright(self) -> bool:
        """Whether it stays so in the plane of the hooks: its centre of gravity rises either way."""
        return self.swing_curve_m > 0.0

    @property
    def angles_deg(self) -> tuple[float, float]:
        """Each leg from vertical, outwards."""
        right = Flat(self.right.x - self.right_hook.x, self.right.z - self.right_hook.z)
        return exact.atan2_deg(-self.left.x, -self.left.z), exact.atan2_deg(right.x, -right.z)

    @property
    def off_balance(self) -> float:
        """How far the sums of forces and of moments are from nothing, as shares of the load and of a leg."""
        per_m = [share / leg_m for share, leg_m in zip(self.shares, self.legs_m, strict=True)]
        x, z = self.right.x - self.right_hook.x, self.right.z - self.right_hook.z
        level = per_m[0] * self.left.x + per_m[1] * x
        upright = -per_m[0] * self.left.z - per_m[1] * z - 1.0
        turning = self.right_hook.x * -z * per_m[1] + self.right_hook.z * x * per_m[1] - self.cg.x
        return max(abs(level), abs(upright), abs(turning) / max(self.legs_m))


def hung_from_two_hooks(what: Bars) -> TwoHookHang:
    """The load as it hangs from two hooks, in the balance nearest to how it stands.

        the height of the centre of gravity does not change with the swing of the legs; a leg that would have to push
        is slack, and the load hangs from the other alone

    Source:
        STATICS_TWO_HOOKS.

    Args:
        what: the chain.

    Returns:
        Attitude, pulls, and whether it stays.

    Raises:
        OutOfRangeError: If the chain does not close, or there is no balance in which the legs pull.

    Example:
        >>> from checklist_app.mechanics.hanging.four_bars import bars
        >>> hang = hung_from_two_hooks(bars(1.0, 0.65, 0.4, (1.5, 1.5), (0.4, 0.0), (1.0, 0.0)))
        >>> round(hang.tilt_deg, 4), [round(9806.65 * share, 1) for share in hang.shares]
        (-1.8905, [3650.6, 6343.4])
    """
    found = [hang for place in _balances(what) if (hang := _pulled(what, place)) is not None]
    if not found:
        found = [hang for leg in (0, 1) if (hang := _on_one_leg(what, leg)) is not None]
    if not found:
        raise OutOfRangeError("the load on two hooks", "no balance", "hooks, legs and picks that close", SOURCE)

    return min(found, key=lambda hang: abs(hang.tilt_deg))


def couple_that_slackens_one_knm(hang: TwoHookHang, load_kn: float) -> float:
    """Couple on the load that slackens one of two legs that hang nearly plumb: the other then carries all.

        M = W × distance of the centre of gravity from the line of the other leg

    Source:
        STATICS_TWO_HOOKS.

    Args:
        hang: the load as it hangs.
        load_kn: W, weight of the load [kN], above 0.

    Returns:
        M, the lesser of the two ways [kN·m].

    Raises:
        OutOfRangeError: If the load is no number above 0.

    Example:
        >>> from checklist_app.mechanics.hanging.four_bars import bars
        >>> hang = hung_from_two_hooks(bars(1.2, 0.4, 0.4, (1.5, 1.5), (1.2, 0.0), (1.0, 0.0)))
        >>> round(couple_that_slackens_one_knm(hang, 10.0), 6)
        4.0
    """
    required_positive("load on the hooks", load_kn, SOURCE)
    away = [
        abs((hang.cg.x - hook.x) * (pick.z - hook.z) - (hang.cg.z - hook.z) * (pick.x - hook.x)) / leg_m
        for hook, pick, leg_m in zip(
            (Flat(0.0, 0.0), hang.right_hook), (hang.left, hang.right), hang.legs_m, strict=True)
    ]

    return load_kn * min(away)


def _balances(what: Bars) -> list[Place]:
    found: list[Place] = []
    low, before = 0.0, None
    for mark in range(MARKS + 1):
        half = WIDEST * (2.0 * mark / MARKS - 1.0)
        slope = slope_m(what, half)
        if slope is not None and before is not None and (before < 0.0) != (slope < 0.0):
            rest = _narrowed(what, low, half, falls_first=before < 0.0)
            if rest is not None:
                found.append(rest)
        low, before = half, slope

    return found


def _narrowed(what: Bars, low: float, high: float, falls_first: bool) -> Place | None:
    """Where between two marks the slope is nothing: Newton's step where it stays between, else the middle."""
    half, small = 0.5 * (low + high), STILL * (what.span_m + what.legs_m[0])
    for _ in range(HALVINGS):
        place = placed(what, half)
        if place is None:
            return None
        if abs(place.slope_m) <= small or not low < half < high:
            return place
        if (place.slope_m < 0.0) == falls_first:
            low = half
        else:
            high = half
        rate = place.curve_m * 2.0 / (1.0 + half * half)
        step = half - place.slope_m / rate if rate != 0.0 else low
        half = step if low < step < high else 0.5 * (low + high)

    return place


def _pulled(what: Bars, place: Place) -> TwoHookHang | None:
    """Pulls by moments about either pick; None where a leg would push, or nothing balances."""
    left, right, cg = place.left, place.right, place.cg
    bx, bz = right.x - left.x, right.z - left.z
    up = Flat(what.right_hook.x - right.x, what.right_hook.z - right.z)
    lever_right, lever_left = bx * up.z - bz * up.x, bx * left.z - bz * left.x
    if not (lever_right != 0.0 and lever_left != 0.0):
        return None
    shares = (what.legs_m[0] * (cg.x - right.x) / lever_left, what.legs_m[1] * (cg.x - left.x) / lever_right)
    if not min(shares) >= 0.0:
        return None
    turn = place.curve_m / (place.turned * place.turned) if abs(place.turned) > LOCKED else None
    hang = _told(what, (left, right, cg), shares, (place.curve_m, turn))

    return hang if hang.off_balance <= BALANCED else None


def _on_one_leg(what: Bars, leg: int) -> TwoHookHang | None:
    """All on one leg, the centre of gravity straight under its pick, if the other leg reaches."""
    along = what.cg_along_m - (what.span_m if leg else 0.0)
    depth = exact.sqrt(along * along + what.cg_below_m * what.cg_below_m)
    if not depth > 0.0:
        return None
    way = Flat(what.cg_below_m / depth, -along / depth)
    hook = what.right_hook if leg else Flat(0.0, 0.0)
    held = Flat(hook.x, hook.z - what.legs_m[leg])
    sign = -what.span_m if leg else what.span_m
    loose = Flat(held.x + sign * way.x, held.z + sign * way.z)
    to = Flat(0.0, 0.0) if leg else what.right_hook
    x, z = loose.x - to.x, loose.z - to.z
    if exact.sqrt(x * x + z * z) > what.legs_m[1 - leg]:
        return None
    cg = Flat(held.x, held.z - depth)
    points = (loose, held, cg) if leg else (held, loose, cg)
    return _told(what, points, (0.0, 1.0) if leg else (1.0, 0.0), (what.legs_m[leg], depth))


def _told(
    what: Bars, points: tuple[Flat, Flat, Flat], shares: tuple[float, float], curves: tuple[float, float | None]
) -> TwoHookHang:
    left, right, cg = points
    x, z = right.x - left.x, right.z - left.z
    turned = exact.atan2_deg(z * what.stands.x - x * what.stands.z, x * what.stands.x + z * what.stands.z)
    return TwoHookHang(left, right, cg, what.legs_m, what.right_hook, shares, turned, *curves)
