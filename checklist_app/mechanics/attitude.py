"""How the load lies as it hangs: rolled over about the line through its eyes, and tilted in the plane of the legs."""

from checklist_app.mechanics import exact
from checklist_app.mechanics.errors import required_positive

SOURCE = "STATICS_TWO_LEGS"


def legs_upright(cg_below_m: float, cg_off_m: float) -> float:
    """How upright the plane of the legs stands in the load: 1 upright, 0 level, below 0 upside down.

        cos ρ = t / √(t² + b²)

    Source:
        STATICS_TWO_LEGS; the load rolls about the line through the eyes until it hangs so.

    Args:
        cg_below_m: t, centre of gravity below the line through the eyes [m].
        cg_off_m: √(t² + b²), centre of gravity from the line through the eyes [m], above 0.

    Returns:
        cos ρ [-].

    Raises:
        OutOfRangeError: If the centre of gravity lies on the line through the eyes.

    Example:
        >>> legs_upright(0.4, 0.5)
        0.8
    """
    required_positive("distance of the centre of gravity from the line through the eyes", cg_off_m, SOURCE)

    return cg_below_m / cg_off_m


def legs_aside(cg_beside_m: float, cg_off_m: float) -> float:
    """How far the plane of the legs leans over in the load: 0 upright, 1 or −1 level.

        sin ρ = b / √(t² + b²)

    Source:
        STATICS_TWO_LEGS; the load rolls about the line through the eyes until it hangs so.

    Args:
        cg_beside_m: b, centre of gravity beside the upright plane through the eyes [m].
        cg_off_m: √(t² + b²), centre of gravity from the line through the eyes [m], above 0.

    Returns:
        sin ρ [-].

    Raises:
        OutOfRangeError: If the centre of gravity lies on the line through the eyes.

    Example:
        >>> legs_aside(0.3, 0.5)
        0.6
    """
    required_positive("distance of the centre of gravity from the line through the eyes", cg_off_m, SOURCE)

    return cg_beside_m / cg_off_m


def level_share_m(along_m: float, off_m: float, legs_upright: float, slope: tuple[float, float, float]) -> float:
    """Of a step in the plane of the legs, the part that is level in the load, towards the right eye.

        (along a − off cos ρ r) / d

    Source:
        STATICS_TWO_LEGS.

    Args:
        along_m: the step along the line through the eyes [m].
        off_m: the step off it, towards the hook [m].
        legs_upright: cos ρ [-].
        slope: a, r and d: level distance, rise and span between the eyes [m].

    Returns:
        Level part [m].

    Raises:
        OutOfRangeError: If the eyes are in one place.

    Example:
        >>> level_share_m(0.1, 1.2, 1.0, (1.0, 0.0, 1.0))
        0.1
    """
    level_m, rise_m, span_m = slope
    required_positive("distance between the eyes", span_m, SOURCE)

    return (along_m * level_m - off_m * legs_upright * rise_m) / span_m


def upward_share_m(along_m: float, off_m: float, legs_upright: float, slope: tuple[float, float, float]) -> float:
    """Of a step in the plane of the legs, the part that is upright in the load.

        (along r + off cos ρ a) / d

    Source:
        STATICS_TWO_LEGS.

    Args:
        along_m: the step along the line through the eyes [m].
        off_m: the step off it, towards the hook [m].
        legs_upright: cos ρ [-].
        slope: a, r and d: level distance, rise and span between the eyes [m].

    Returns:
        Upright part [m].

    Raises:
        OutOfRangeError: If the eyes are in one place.

    Example:
        >>> upward_share_m(0.1, 1.2, 1.0, (1.0, 0.0, 1.0))
        1.2
    """
    level_m, rise_m, span_m = slope
    required_positive("distance between the eyes", span_m, SOURCE)

    return (along_m * rise_m + off_m * legs_upright * level_m) / span_m


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
