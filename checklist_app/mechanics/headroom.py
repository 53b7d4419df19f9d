"""How high the hook must come, and what is left above."""

from checklist_app.mechanics.errors import required_not_negative

SOURCE = "GEOMETRY_OF_THE_LIFT"


def hook_height_m(lift_height_m: float, underside_below_hook_m: float, fittings_m: float) -> float:
    """Height of the hoist's hook saddle over the floor at the highest moment.

        H = lift + underside below the meeting point of the legs + fittings up to the saddle

    Source:
        GEOMETRY_OF_THE_LIFT.

    Args:
        lift_height_m: lowest point of the load over the floor [m], 0 or more.
        underside_below_hook_m: lowest point of the load below where the legs meet, as it hangs [m].
        fittings_m: load cell and hook fitting between the legs and the saddle [m], 0 or more.

    Returns:
        H [m].

    Raises:
        OutOfRangeError: If a height is no number of 0 or more.

    Example:
        >>> round(hook_height_m(0.3, 1.75, 0.25), 2)
        2.3
    """
    required_not_negative("height of the underside over the floor", lift_height_m, SOURCE)
    required_not_negative("reach of the fittings", fittings_m, SOURCE)

    return lift_height_m + underside_below_hook_m + fittings_m


def left_above_m(highest_m: float, needed_m: float) -> float:
    """Height that is left.

        left = highest − needed

    Source:
        GEOMETRY_OF_THE_LIFT.

    Args:
        highest_m: highest position of the hook, or height of the room [m], 0 or more.
        needed_m: what the lift needs [m].

    Returns:
        Height left [m]; below 0 it does not fit.

    Raises:
        OutOfRangeError: If the height is no number of 0 or more.

    Example:
        >>> round(left_above_m(2.8, 2.3), 2)
        0.5
    """
    required_not_negative("height there is", highest_m, SOURCE)

    return highest_m - needed_m
