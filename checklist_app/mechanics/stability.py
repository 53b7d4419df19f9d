"""Whether a load on two picks stays upright: only a centre of gravity below the line through them holds it."""

from checklist_app.mechanics.errors import required_positive


def cg_below_pick_line_m(cg_level_m: float, cg_up_m: float, level_m: float, rise_m: float, span_m: float) -> float:
    """Depth of the centre of gravity below the line through the two eyes, as the load stands.

        t = (l r − u a) / d, and the load resists rolling about that line with W t

    Source:
        STATICS_TWO_PICKS; PURDUE_RIGGING says the same of the angle formed by the slings, for three picks or more.

    Args:
        cg_level_m: l, centre of gravity from the left eye, level, towards the right eye [m].
        cg_up_m: u, centre of gravity over the left eye [m].
        level_m: a, level distance between the eyes [m].
        rise_m: r, right eye over the left [m].
        span_m: d, straight distance between the eyes [m], above 0.

    Returns:
        t [m]; at 0 and below the load turns over.

    Raises:
        OutOfRangeError: If the eyes are in one place.

    Example:
        >>> cg_below_pick_line_m(0.5, -0.4, 1.0, 0.0, 1.0)
        0.4
    """
    required_positive("distance between the eyes", span_m, "STATICS_TWO_PICKS")

    return (cg_level_m * rise_m - cg_up_m * level_m) / span_m
