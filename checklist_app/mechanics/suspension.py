"""How a load hangs from one hook on two legs.

Two tight legs and the line between the eyes make a triangle of fixed sides. The load rolls about the line through the
eyes until its centre of gravity lies in the plane of that triangle, and turns in that plane until it is under the hook.
So the hook is a fixed point of the load, and the plumb line is the line from the centre of gravity to it.
"""

from checklist_app.mechanics import exact, vectors
from checklist_app.mechanics.errors import OutOfRangeError, required_positive
from checklist_app.mechanics.vectors import UPWARDS, Vec

SOURCE = "STATICS_TWO_LEGS"


def pick_line(left_eye: Vec, right_eye: Vec) -> Vec:
    """Direction of the line through the two eyes.

        e = (B − A) / |B − A|

    Source:
        STATICS_TWO_LEGS.

    Args:
        left_eye: A, in the load's axes [m].
        right_eye: B, in the load's axes [m].

    Returns:
        e, of length 1 [-].

    Raises:
        OutOfRangeError: If both eyes are in one place.

    Example:
        >>> pick_line(Vec(0.0, 0.0, 0.0), Vec(2.0, 0.0, 0.0))
        Vec(x=1.0, y=0.0, z=0.0)
    """
    step = vectors.between(left_eye, right_eye)
    span_m = vectors.length(step)
    required_positive("distance between the eyes", span_m, SOURCE)

    return Vec(step.x / span_m, step.y / span_m, step.z / span_m)


def up_from_pick_line(pick_line: Vec) -> Vec:
    """Direction at right angles to the line through the eyes that points most upwards while the load stands.

        k = (z − (z·e) e) / |z − (z·e) e|

    Source:
        STATICS_TWO_LEGS.

    Args:
        pick_line: e, of length 1 [-].

    Returns:
        k, of length 1 [-].

    Raises:
        OutOfRangeError: If one eye stands straight above the other.

    Example:
        >>> up_from_pick_line(Vec(1.0, 0.0, 0.0))
        Vec(x=0.0, y=0.0, z=1.0)
    """
    upright = vectors.moved(UPWARDS, pick_line, -pick_line.z)
    size = vectors.length(upright)
    if not size > 1e-6:
        raise OutOfRangeError("one eye", "straight above the other", "eyes side by side", SOURCE)

    return Vec(upright.x / size, upright.y / size, upright.z / size)


def cg_beside_pick_line_m(cg: Vec, left_eye: Vec, pick_line: Vec, up: Vec) -> float:
    """Offset of the centre of gravity from the upright plane through the two eyes.

        b = (G − A) · (e × k)

    Source:
        STATICS_TWO_LEGS.

    Args:
        cg: G, in the load's axes [m].
        left_eye: A, in the load's axes [m].
        pick_line: e, of length 1 [-].
        up: k, of length 1 [-].

    Returns:
        b, signed [m].

    Example:
        >>> cg_beside_pick_line_m(Vec(0.5, 0.1, -0.4), Vec(0.0, 0.0, 0.0), Vec(1.0, 0.0, 0.0), UPWARDS)
        -0.1
    """
    return vectors.dot(vectors.between(left_eye, cg), vectors.cross(pick_line, up))


def hook_along_pick_line_m(eyes_apart_m: float, left_leg_m: float, right_leg_m: float) -> float:
    """How far from the left eye, along the line through the eyes, the hook stands.

        s = (L_A² − L_B² + d²) / 2 d

    Source:
        STATICS_TWO_LEGS.

    Args:
        eyes_apart_m: d, straight from eye to eye [m], above 0.
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
    required_positive("distance between the eyes", eyes_apart_m, SOURCE)
    required_positive("length of the left leg", left_leg_m, SOURCE)
    required_positive("length of the right leg", right_leg_m, SOURCE)

    return (left_leg_m * left_leg_m - right_leg_m * right_leg_m + eyes_apart_m * eyes_apart_m) / (2.0 * eyes_apart_m)


def hook_off_pick_line_m(left_leg_m: float, hook_along_m: float) -> float:
    """Height of the hook over the line through the eyes, in the plane of the legs.

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


def towards_hook(cg_below_m: float, cg_beside_m: float, cg_off_m: float, pick_line: Vec, up: Vec) -> Vec:
    """Direction from the line through the eyes to the hook: straight away from the centre of gravity.

        n = (t k − b (e × k)) / √(t² + b²)

    Source:
        STATICS_TWO_LEGS; the load rolls about the line through the eyes until it hangs so.

    Args:
        cg_below_m: t, centre of gravity below the line through the eyes [m].
        cg_beside_m: b, centre of gravity beside the upright plane through the eyes [m].
        cg_off_m: √(t² + b²) [m], above 0.
        pick_line: e, of length 1 [-].
        up: k, of length 1 [-].

    Returns:
        n, of length 1 [-].

    Raises:
        OutOfRangeError: If the centre of gravity lies on the line through the eyes.

    Example:
        >>> towards_hook(0.4, 0.0, 0.4, Vec(1.0, 0.0, 0.0), UPWARDS)
        Vec(x=0.0, y=0.0, z=1.0)
    """
    required_positive("distance of the centre of gravity from the line through the eyes", cg_off_m, SOURCE)
    sideways = vectors.cross(pick_line, up)
    upright, aside = cg_below_m / cg_off_m, cg_beside_m / cg_off_m

    return Vec(
        upright * up.x - aside * sideways.x, upright * up.y - aside * sideways.y, upright * up.z - aside * sideways.z
    )


def tilt_deg(plumb_across_m: float, plumb_up_m: float) -> float:
    """Tilt seen from one side: from the load's own upright to the plumb line.

        τ = atan2(v_x, v_z)

    Source:
        STATICS_TWO_LEGS; with a level hang as reference, the same as tan τ = e / (h + t).

    Args:
        plumb_across_m: v_x or v_y, from the centre of gravity to the hook in the load's axes [m].
        plumb_up_m: v_z [m].

    Returns:
        τ [°], signed; beyond 90 it hangs upside down.

    Example:
        >>> round(tilt_deg(-0.15, 1.266025), 3)
        -6.757
    """
    return exact.atan2_deg(plumb_across_m, plumb_up_m)
