"""Pull in each of two legs, in the attitude the load really hangs in."""

from checklist_app.mechanics import exact
from checklist_app.mechanics.errors import OutOfRangeError, required_not_negative, required_positive

SOURCE = "STATICS_TWO_LEGS"


def eye_drop_m(along_m: float, off_m: float, plumb_along_m: float, plumb_off_m: float, plumb_m: float) -> float:
    """An eye below the hook, as it hangs.

        H = (along v_along + off v_off) / v

    Source:
        STATICS_TWO_LEGS.

    Args:
        along_m: from the eye to the hook, along the line through the eyes [m].
        off_m: from the eye to the hook, off that line [m].
        plumb_along_m: v_along, from the centre of gravity to the hook, along that line [m].
        plumb_off_m: v_off, from the centre of gravity to the hook, off that line [m].
        plumb_m: v, centre of gravity below the hook [m], above 0.

    Returns:
        H [m].

    Raises:
        OutOfRangeError: If the centre of gravity is in the hook.

    Example:
        >>> eye_drop_m(0.5, 0.75, 0.0, 1.5, 1.5)
        0.75
    """
    required_positive("centre of gravity below the hook", plumb_m, SOURCE)

    return (along_m * plumb_along_m + off_m * plumb_off_m) / plumb_m


def eye_reach_m(along_m: float, off_m: float, plumb_along_m: float, plumb_off_m: float, plumb_m: float) -> float:
    """The left eye from the plumb line, outwards, as it hangs; with its sign turned, the right eye.

        D = (along v_off − off v_along) / v

    Source:
        STATICS_TWO_LEGS.

    Args:
        along_m: from the eye to the hook, along the line through the eyes [m].
        off_m: from the eye to the hook, off that line [m].
        plumb_along_m: v_along, from the centre of gravity to the hook, along that line [m].
        plumb_off_m: v_off, from the centre of gravity to the hook, off that line [m].
        plumb_m: v, centre of gravity below the hook [m], above 0.

    Returns:
        D [m]; below 0 the plumb line does not pass between the eyes.

    Raises:
        OutOfRangeError: If the centre of gravity is in the hook.

    Example:
        >>> eye_reach_m(0.5, 0.9, 0.0, 1.3, 1.3)
        0.5
    """
    required_positive("centre of gravity below the hook", plumb_m, SOURCE)

    return (along_m * plumb_off_m - off_m * plumb_along_m) / plumb_m


def share_of_leg(
    leg_m: float, drop_m: float, reach_m: float, other_drop_m: float, other_reach_m: float
) -> float:
    """Pull in one leg as a share of the weight.

        T / W = D₂ L₁ / (D₂ H₁ + D₁ H₂)

    Source:
        STATICS_TWO_LEGS; for eyes at one height the form printed by university rigging courses.

    Args:
        leg_m: L₁, this leg [m], above 0.
        drop_m: H₁, this eye below the hook [m].
        reach_m: D₁, this eye from the plumb line through the hook [m], 0 or more; below 0 the leg is slack.
        other_drop_m: H₂, the other eye below the hook [m].
        other_reach_m: D₂, the other eye from the plumb line, to the other side [m], 0 or more.

    Returns:
        T / W [-].

    Raises:
        OutOfRangeError: If a leg is slack, or both eyes hang level with the hook.

    Example:
        >>> round(3000.0 * share_of_leg(1.6155, 1.5, 0.6, 1.1, 0.9), 1)
        2170.1
    """
    required_positive("length of a leg", leg_m, SOURCE)
    slack = not (reach_m >= 0.0 and other_reach_m >= 0.0)
    if slack:
        raise OutOfRangeError("a leg", "slack", "a plumb line through the hook that passes between the eyes", SOURCE)
    lever_m2 = other_reach_m * drop_m + reach_m * other_drop_m
    required_positive("height of the hook over the eyes", lever_m2, SOURCE)

    return other_reach_m * leg_m / lever_m2


def one_leg_carries_all() -> float:
    """Share of a leg when nobody knows where the centre of gravity lies along the picks.

        T / W = 1

    Source:
        EN_818_6, asymmetric load not assessed: one leg carries all.

    Returns:
        T / W [-].

    Example:
        >>> one_leg_carries_all()
        1.0
    """
    return 1.0


def angle_from_vertical_deg(reach_m: float, drop_m: float) -> float:
    """Angle of a leg from the plumb line.

        β = atan2(D, H)

    Source:
        STATICS_TWO_LEGS.

    Args:
        reach_m: D, the eye from the plumb line through the hook [m].
        drop_m: H, the eye below the hook [m].

    Returns:
        β [°], 0 to 180.

    Raises:
        OutOfRangeError: If the eye is in the hook.

    Example:
        >>> round(angle_from_vertical_deg(0.5, 0.8660254), 4)
        30.0
    """
    required_not_negative("length of a leg", reach_m * reach_m + drop_m * drop_m, SOURCE)

    return exact.atan2_deg(abs(reach_m), drop_m)
