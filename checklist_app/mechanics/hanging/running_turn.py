"""How easily a load turns on one sling that runs free over the hook.

Near its balance the load rocks about a point below the hook, the centre of the circle that fits the ellipse there. Only
what its centre of gravity hangs below that point brings it back: of two slings it is the whole depth below the hook.
"""

from itertools import pairwise

from checklist_app.mechanics import exact
from checklist_app.mechanics.errors import OutOfRangeError, required_not_negative, required_positive
from checklist_app.mechanics.hanging.running_ellipse import MARKS, WIDEST, Ellipse, Turned
from checklist_app.mechanics.hanging.running_sling import SOURCE, RunningHang, hung_on_running_sling
from checklist_app.mechanics.slings.wrap import capstan_ratio

STRAIGHT_DEG = 180.0
STICKS_UP_TO = 0.3
NEAR = 1e-12
SIDES = (-1.0, 1.0)


def rocking_radius_m(left_m: float, right_m: float, angle_from_vertical_deg: float) -> float:
    """How far below the hook the point lies about which the load rocks.

        ρ = 2 l r / ((l + r) cos β)

    Source:
        STATICS_RUNNING_SLING; the circle that fits an ellipse, by its two focal distances.

    Args:
        left_m: l, from the hook to the left pick [m], above 0.
        right_m: r, from the hook to the right pick [m], above 0.
        angle_from_vertical_deg: β, the same for both parts [°], 0 to below 90.

    Returns:
        ρ [m].

    Raises:
        OutOfRangeError: If a length is no number above 0, or β leaves its range.

    Example:
        >>> round(rocking_radius_m(1.2, 1.2, 24.624318), 6)
        1.320046
    """
    required_positive("left part of the sling", left_m, SOURCE)
    required_positive("right part of the sling", right_m, SOURCE)
    if not 0.0 <= angle_from_vertical_deg < STRAIGHT_DEG / 2.0:
        raise OutOfRangeError("part of the sling from vertical", angle_from_vertical_deg, "0 to below 90°", SOURCE)
    upright = exact.cos(angle_from_vertical_deg / exact.RAD_IN_DEG)

    return 2.0 * left_m * right_m / ((left_m + right_m) * upright)


def share_where_it_sticks(included_angle_deg: float) -> float:
    """Most that one part carries of the load while the sling sticks on the hook instead of running.

        1 / √(1 + 1/k² + 2 cos γ / k),  k = e^(μ (180° − γ)),  μ = 0.3

    Source:
        STATICS_RUNNING_SLING, STATICS_WRAP; friction of a sling on a hook up to 0.3 from memory, so stricter only.

    Args:
        included_angle_deg: γ, between the two parts [°], 0 to below 180.

    Returns:
        Share of the load [-]; running free each part has 1 / (2 cos ½γ).

    Raises:
        OutOfRangeError: If γ leaves its range.

    Example:
        >>> round(share_where_it_sticks(60.0), 4)
        0.7416
    """
    if not 0.0 <= included_angle_deg < STRAIGHT_DEG:
        raise OutOfRangeError("angle between the parts", included_angle_deg, "0 to below 180°", SOURCE)
    less = 1.0 / capstan_ratio(STICKS_UP_TO, STRAIGHT_DEG - included_angle_deg)

    return 1.0 / exact.sqrt(1.0 + less * less + 2.0 * less * exact.cos(included_angle_deg / exact.RAD_IN_DEG))


def runs_out(span_m: float, sling_m: float, cg_along_m: float, cg_below_m: float) -> Turned:
    """How far the load turns, and by what lever of its weight, before it runs on to the end of its sling by itself.

        W × lever: beyond it no balance is left on that side; the weaker side counts

    Source:
        STATICS_RUNNING_SLING.

    Args:
        span_m: 2 c, straight distance between the picks [m], above 0.
        sling_m: s, the sling from pick to pick over the hook [m], longer than the span.
        cg_along_m: e, centre of gravity from the middle of the picks, towards the right one [m].
        cg_below_m: d, centre of gravity below the line through the picks [m].

    Returns:
        Lever, turn and rise at that point.

    Raises:
        OutOfRangeError: If the load does not stay in balance at all.

    Example:
        >>> end = runs_out(1.0, 2.4, 0.0, 0.4)
        >>> round(end.lever_m, 3), round(end.turned_deg)
        (0.4, 90)
    """
    ellipse, start = _at_rest(span_m, sling_m, cg_along_m, cg_below_m)

    return min((_end(ellipse, start, side) for side in SIDES), key=lambda end: end.lever_m)


def turned_by_lever_deg(
    span_m: float, sling_m: float, cg_along_m: float, cg_below_m: float, lever_m: float
) -> float:
    """How far a couple turns the load, to the side to which it turns further.

        W q(θ) = M, M = W × lever

    Source:
        STATICS_RUNNING_SLING.

    Args:
        span_m: 2 c, straight distance between the picks [m], above 0.
        sling_m: s, the sling from pick to pick over the hook [m], longer than the span.
        cg_along_m: e, centre of gravity from the middle of the picks, towards the right one [m].
        cg_below_m: d, centre of gravity below the line through the picks [m].
        lever_m: M / W, the couple as a lever of the weight [m], 0 or more.

    Returns:
        θ [°]; 180 where such a couple makes it run out.

    Raises:
        OutOfRangeError: If the load does not stay in balance at all, or the lever is no number of 0 or more.

    Example:
        >>> round(turned_by_lever_deg(1.0, 2.4, 0.0, 0.4, 0.01), 2)
        3.35
    """
    required_not_negative("lever of the weight", lever_m, SOURCE)
    ellipse, start = _at_rest(span_m, sling_m, cg_along_m, cg_below_m)

    return max(_reached(ellipse, start, side, float(lever_m), rises=False) for side in SIDES)


def turned_by_rise_deg(span_m: float, sling_m: float, cg_along_m: float, cg_below_m: float, rise_m: float) -> float:
    """How far the load turns if all its swing goes into turning.

        W r(θ) = W × rise: the height it swings to, as a height of its centre of gravity

    Source:
        STATICS_RUNNING_SLING; balance of energy.

    Args:
        span_m: 2 c, straight distance between the picks [m], above 0.
        sling_m: s, the sling from pick to pick over the hook [m], longer than the span.
        cg_along_m: e, centre of gravity from the middle of the picks, towards the right one [m].
        cg_below_m: d, centre of gravity below the line through the picks [m].
        rise_m: r, how high it swings [m], 0 or more.

    Returns:
        θ [°], to the side to which it turns further; 180 where so much makes it run out.

    Raises:
        OutOfRangeError: If the load does not stay in balance at all, or the rise is no number of 0 or more.

    Example:
        >>> round(turned_by_rise_deg(1.0, 2.4, 0.0, 0.4, 0.001), 2)
        6.19
    """
    required_not_negative("rise of the swing", rise_m, SOURCE)
    ellipse, start = _at_rest(span_m, sling_m, cg_along_m, cg_below_m)

    return max(_reached(ellipse, start, side, float(rise_m), rises=True) for side in SIDES)


def _at_rest(span_m: float, sling_m: float, cg_along_m: float, cg_below_m: float) -> tuple[Ellipse, float]:
    hang: RunningHang = hung_on_running_sling(span_m, sling_m, cg_along_m, cg_below_m)
    if not hang.upright:
        raise OutOfRangeError(
            "centre of gravity below the picks [m]", cg_below_m, f"more than {hang.depth_needed_m:.2f} m", SOURCE
        )
    ellipse = Ellipse(float(span_m) / 2.0, float(sling_m) / 2.0, float(cg_along_m), float(cg_below_m))
    sin, cos = hang.hook_along_m / ellipse.a, hang.hook_off_m / ellipse.b

    return ellipse, sin / (1.0 + cos)


def _places(start: float, side: float) -> list[float]:
    """From rest towards one end of the sling."""
    return [start + (side * WIDEST - start) * mark / MARKS for mark in range(MARKS + 1)]


def _end(ellipse: Ellipse, start: float, side: float) -> Turned:
    """Where a growing couple finds no balance any more, or the end of the sling."""
    rest, places = ellipse.rest(start), _places(start, side)
    for low, high in pairwise(places):
        if not ellipse.turned(rest, high).firm_m > 0.0:
            while abs(high - low) > NEAR:
                half = 0.5 * (low + high)
                low, high = (half, high) if ellipse.turned(rest, half).firm_m > 0.0 else (low, half)
            return ellipse.turned(rest, low)

    return ellipse.turned(rest, places[-1])


def _reached(ellipse: Ellipse, start: float, side: float, wanted_m: float, rises: bool) -> float:
    """Turn at which the lever, or the rise, is what is wanted; right round if it runs out before."""
    rest, low = ellipse.rest(start), start
    for high in _places(start, side)[1:]:
        place = ellipse.turned(rest, high)
        if (place.rise_m if rises else place.lever_m) >= wanted_m:
            return _narrowed(ellipse, rest, (low, high), wanted_m, rises)
        if not place.firm_m > 0.0:
            break
        low = high

    return STRAIGHT_DEG


def _narrowed(
    ellipse: Ellipse, rest: tuple[float, float, float], between: tuple[float, float], wanted_m: float, rises: bool
) -> float:
    """Newton's step where it stays between, else the middle: a little further than wanted, never less far."""
    low, high = between
    half, side = high, 1.0 if high > low else -1.0
    while abs(high - low) > NEAR:
        place = ellipse.turned(rest, half)
        left_m = wanted_m - (place.rise_m if rises else place.lever_m)
        low, high = (half, high) if left_m > 0.0 else (low, half)
        rate = ellipse.turning_rate(half) * (place.lever_m if rises else place.firm_m)
        beyond = side * NEAR / 4.0 if left_m > 0.0 else -side * NEAR / 4.0
        step = half + side * left_m / rate + beyond if rate > 0.0 else low
        half = step if min(low, high) < step < max(low, high) else 0.5 * (low + high)

    return ellipse.turned(rest, high).turned_deg
