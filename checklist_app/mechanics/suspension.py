"""How a load hangs from one hook on two legs.

Two tight legs and the line between the eyes make a triangle of fixed sides. The load rolls about the line through the
eyes until its centre of gravity lies in the plane of that triangle, and turns in that plane until it is under the hook.
So the hook is a fixed point of the load, and the plumb line is the line from the centre of gravity to it.

In the plane of the legs lengths count *along* the line through the eyes, from the left eye, and *off* it.
"""

from checklist_app.mechanics import exact
from checklist_app.mechanics.errors import OutOfRangeError, required_positive

SOURCE = "STATICS_TWO_LEGS"
SIDE_BY_SIDE_M = 1e-3


def level_between_eyes_m(run_x_m: float, run_y_m: float) -> float:
    """Level distance between the eyes.

        a = √(Δx² + Δy²)

    Source:
        STATICS_TWO_LEGS.

    Args:
        run_x_m: Δx, from the left eye to the right, lengthwise [m].
        run_y_m: Δy, from the left eye to the right, crosswise [m].

    Returns:
        a [m].

    Raises:
        OutOfRangeError: If both eyes are in one place, or one straight above the other.

    Example:
        >>> level_between_eyes_m(0.8, 0.6)
        1.0
    """
    level_m = exact.sqrt(run_x_m * run_x_m + run_y_m * run_y_m)
    if not level_m > SIDE_BY_SIDE_M:
        allowed = "eyes side by side, none above the other"
        raise OutOfRangeError("level distance between the eyes", level_m, allowed, SOURCE)

    return level_m


def cg_along_pick_line_m(cg_level_m: float, cg_up_m: float, level_m: float, rise_m: float, span_m: float) -> float:
    """How far along the line through the eyes the centre of gravity lies.

        g = (l a + u r) / d

    Source:
        STATICS_TWO_LEGS.

    Args:
        cg_level_m: l, centre of gravity from the left eye, level, towards the right eye [m].
        cg_up_m: u, centre of gravity over the left eye [m].
        level_m: a, level distance between the eyes [m].
        rise_m: r, right eye over the left [m].
        span_m: d, straight distance between the eyes [m], above 0.

    Returns:
        g [m].

    Raises:
        OutOfRangeError: If the eyes are in one place.

    Example:
        >>> cg_along_pick_line_m(0.5, -0.4, 0.8, 0.6, 1.0)
        0.16000000000000003
    """
    required_positive("distance between the eyes", span_m, SOURCE)

    return (cg_level_m * level_m + cg_up_m * rise_m) / span_m


def cg_beside_pick_line_m(cg_x_m: float, cg_y_m: float, run_x_m: float, run_y_m: float, level_m: float) -> float:
    """Offset of the centre of gravity from the upright plane through the two eyes.

        b = (x Δy − y Δx) / a

    Source:
        STATICS_TWO_LEGS.

    Args:
        cg_x_m: x, centre of gravity from the left eye, lengthwise [m].
        cg_y_m: y, centre of gravity from the left eye, crosswise [m].
        run_x_m: Δx, from the left eye to the right, lengthwise [m].
        run_y_m: Δy, from the left eye to the right, crosswise [m].
        level_m: a, level distance between the eyes [m], above 0.

    Returns:
        b, signed [m].

    Raises:
        OutOfRangeError: If the eyes are in one place.

    Example:
        >>> cg_beside_pick_line_m(0.5, 0.1, 1.0, 0.0, 1.0)
        -0.1
    """
    required_positive("level distance between the eyes", level_m, SOURCE)

    return (cg_x_m * run_y_m - cg_y_m * run_x_m) / level_m


def hook_along_pick_line_m(span_m: float, left_leg_m: float, right_leg_m: float) -> float:
    """How far along the line through the eyes the hook stands.

        s = (L_A² − L_B² + d²) / 2 d

    Source:
        STATICS_TWO_LEGS.

    Args:
        span_m: d, straight distance between the eyes [m], above 0.
        left_leg_m: L_A, bearing to bearing [m], above 0.
        right_leg_m: L_B, bearing to bearing [m], above 0.

    Returns:
        s [m].

    Raises:
        OutOfRangeError: If a length is no number above 0.

    Example:
        >>> hook_along_pick_line_m(1.0, 1.0, 1.0)
        0.5
    """
    required_positive("distance between the eyes", span_m, SOURCE)
    required_positive("length of the left leg", left_leg_m, SOURCE)
    required_positive("length of the right leg", right_leg_m, SOURCE)

    return (left_leg_m * left_leg_m - right_leg_m * right_leg_m + span_m * span_m) / (2.0 * span_m)


def hook_off_pick_line_m(left_leg_m: float, hook_along_m: float) -> float:
    """Distance of the hook from the line through the eyes, in the plane of the legs.

        h = √(L_A² − s²)

    Source:
        STATICS_TWO_LEGS.

    Args:
        left_leg_m: L_A [m], above 0.
        hook_along_m: s [m].

    Returns:
        h [m].

    Raises:
        OutOfRangeError: If the legs cannot meet over the eyes.

    Example:
        >>> round(hook_off_pick_line_m(1.0, 0.5), 4)
        0.866
    """
    square = left_leg_m * left_leg_m - hook_along_m * hook_along_m
    if not square > 0.0:
        raise OutOfRangeError(
            "the triangle of the two legs and the eyes", "open", "legs that reach each other over the eyes", SOURCE
        )

    return exact.sqrt(square)
