"""Wind that meets a hanging load above or below its centre of gravity: the pull leans in it, and a leg takes more."""

from checklist_app.mechanics import exact
from checklist_app.mechanics.errors import OutOfRangeError, required_not_negative, required_positive
from checklist_app.mechanics.vectors import Vec, cross

SOURCE = "STATICS_LEANING"
WIDEST_DEG = 90.0


def leaning_slope(off_cg_m: float, swing_deg: float, plumb_m: float) -> float:
    """How far the pull of the hook leans off the line from the centre of gravity to the hook, as a slope.

        tan δ, sin δ = e sin A / d

    Source:
        STATICS_LEANING: weight and wind together act in a point over, or under, the centre of gravity, and pass through
        the hook.

    Args:
        off_cg_m: e, the wind over or under the centre of gravity [m], 0 or more.
        swing_deg: A, how far the wind holds the load out of plumb [°], 0 to 90.
        plumb_m: d, centre of gravity from the hook [m], above 0.

    Returns:
        Slope [-].

    Raises:
        OutOfRangeError: If an argument leaves its range, or the wind pushes the load round its hook.

    Example:
        >>> round(leaning_slope(0.5, 30.0, 2.5), 6)
        0.100504
    """
    required_not_negative("wind off the centre of gravity", off_cg_m, SOURCE)
    required_positive("centre of gravity below the hook", plumb_m, SOURCE)
    if not 0.0 <= swing_deg <= WIDEST_DEG:
        raise OutOfRangeError("swing out of plumb", swing_deg, f"0 to {WIDEST_DEG:.0f}°", SOURCE)
    sine = off_cg_m * exact.sin(swing_deg / exact.RAD_IN_DEG) / plumb_m
    if not sine < 1.0:
        words = "wind nearer its centre of gravity"
        raise OutOfRangeError("lean of the pull in the load", "upside down", words, SOURCE)

    return sine / exact.sqrt(1.0 - sine * sine)


def more_in_one_of_two(
    slope: float, leg_m: float, drop_m: float, reach_m: float, other_drop_m: float, other_reach_m: float
) -> float:
    """What one of two legs on a hook takes more where the pull leans towards it, as a share of the load.

        ΔT / W = tan δ H₂ L₁ / (D₂ H₁ + D₁ H₂)

    Source:
        STATICS_LEANING.

    Args:
        slope: tan δ, of the pull in the plane of the legs [-], 0 or more.
        leg_m: L₁, this leg [m], above 0.
        drop_m: H₁, its eye below the hook [m].
        reach_m: D₁, its eye from the plumb line, outwards [m].
        other_drop_m: H₂ [m].
        other_reach_m: D₂ [m].

    Returns:
        ΔT / W [-].

    Raises:
        OutOfRangeError: If an argument leaves its range, or the legs lie in one line.

    Example:
        >>> round(more_in_one_of_two(0.1, 5.0, 4.0, 3.0, 4.0, 3.0), 6)
        0.083333
    """
    required_not_negative("slope of the pull", slope, SOURCE)
    required_positive("length of a leg", leg_m, SOURCE)
    lever_m2 = other_reach_m * drop_m + reach_m * other_drop_m
    if not lever_m2 > 0.0:
        raise OutOfRangeError("two legs", "in one line", "eyes on either side of the hook", SOURCE)

    return slope * abs(other_drop_m) * leg_m / lever_m2


def more_in_one_of_three(slope: float, leg_m: float, other: Vec, third: Vec, lever_m3: float) -> float:
    """What one of three legs on a hook takes more where the pull leans towards it, as a share of the load.

        ΔT / W = tan δ |(r₂ × r₃) level| L₁ / l

    Source:
        STATICS_LEANING.

    Args:
        slope: tan δ, of the pull to whichever side is worst [-], 0 or more.
        leg_m: L₁, this leg [m], above 0.
        other: r₂, second eye from the hook, z up along the plumb line [m].
        third: r₃, third eye from the hook [m].
        lever_m3: l, six times what the hook and the three eyes span [m³].

    Returns:
        ΔT / W [-].

    Raises:
        OutOfRangeError: If an argument leaves its range, or the three lie in one plane through the hook.

    Example:
        >>> round(more_in_one_of_three(0.1, 1.5, Vec(-0.5, 0.8, -1.0), Vec(-0.5, -0.8, -1.0), 2.4), 6)
        0.1
    """
    required_not_negative("slope of the pull", slope, SOURCE)
    required_positive("length of a leg", leg_m, SOURCE)
    if not abs(lever_m3) > 0.0:
        raise OutOfRangeError("three legs", "in one plane", "eyes that make a triangle under the hook", SOURCE)
    square = cross(other, third)

    return slope * exact.sqrt(square.x * square.x + square.y * square.y) * leg_m / abs(lever_m3)
