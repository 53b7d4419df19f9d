"""How far people keep away: as far as a load can swing, be thrown and topple, and a margin of the house on top."""

from checklist_app.mechanics import exact
from checklist_app.mechanics.errors import required_not_negative, required_positive
from checklist_app.mechanics.gravity import STANDARD_GRAVITY_M_S2

SOURCE = "GEOMETRY_OF_ZONES"


def half_diagonal_m(length_m: float, width_m: float) -> float:
    """The load's furthest corner from its middle, seen from above: it may turn on its hook.

        ½ √(l² + b²)

    Source:
        GEOMETRY_OF_ZONES.

    Args:
        length_m: l [m], above 0.
        width_m: b [m], above 0.

    Returns:
        Half the diagonal [m].

    Raises:
        OutOfRangeError: If a length is no number above 0.

    Example:
        >>> half_diagonal_m(3.0, 4.0)
        2.5
    """
    required_positive("length of the load", length_m, SOURCE)
    required_positive("width of the load", width_m, SOURCE)

    return 0.5 * exact.sqrt(length_m * length_m + width_m * width_m)


def thrown_m(sideways_m_s: float, fall_m: float) -> float:
    """How far sideways a load lands that is let go while it moves.

        x = v √(2 h / g)

    Source:
        GEOMETRY_OF_ZONES; free fall.

    Args:
        sideways_m_s: v, its speed sideways [m/s], 0 or more.
        fall_m: h, its underside over the floor [m], 0 or more.

    Returns:
        x [m].

    Raises:
        OutOfRangeError: If a number is below 0 or none.

    Example:
        >>> round(thrown_m(1.0, 2.0), 3)
        0.639
    """
    required_not_negative("speed sideways", sideways_m_s, SOURCE)
    required_not_negative("underside over the floor", fall_m, SOURCE)

    return sideways_m_s * exact.sqrt(2.0 * fall_m / STANDARD_GRAVITY_M_S2)


def zone_radius_m(half_diagonal_m: float, load_height_m: float, moved_m: float, margin_m: float) -> float:
    """Radius about the plumb line in which nobody stands while the load hangs.

        R = half diagonal + height of the load, which may topple over an edge + swing and throw + margin

    Source:
        GEOMETRY_OF_ZONES; OSHA_FALL_ZONE: not only straight below; the margin is a HOUSE_SETTING.

    Args:
        half_diagonal_m: the load's furthest corner, seen from above [m], above 0.
        load_height_m: how high the load itself is [m], above 0.
        moved_m: how far it can swing or be thrown [m], 0 or more.
        margin_m: what the house adds [m], 0 or more.

    Returns:
        R [m].

    Raises:
        OutOfRangeError: If a number leaves its range.

    Example:
        >>> zone_radius_m(0.75, 1.25, 0.5, 1.0)
        3.5
    """
    required_positive("half the diagonal of the load", half_diagonal_m, SOURCE)
    required_positive("height of the load", load_height_m, SOURCE)
    required_not_negative("swing and throw", moved_m, SOURCE)
    required_not_negative("margin of the zone", margin_m, SOURCE)

    return half_diagonal_m + load_height_m + moved_m + margin_m


def corridor_width_m(load_width_m: float, moved_m: float, margin_m: float) -> float:
    """Width of the way along which a load travels.

        B = b + 2 (swing + margin)

    Source:
        GEOMETRY_OF_ZONES; the margin is a HOUSE_SETTING.

    Args:
        load_width_m: b, the load across the way, or its diagonal if it may turn [m], above 0.
        moved_m: how far it can swing to one side [m], 0 or more.
        margin_m: what the house adds on each side [m], 0 or more.

    Returns:
        B [m].

    Raises:
        OutOfRangeError: If a number leaves its range.

    Example:
        >>> corridor_width_m(1.5, 0.25, 1.0)
        4.0
    """
    required_positive("width of the load", load_width_m, SOURCE)
    required_not_negative("swing", moved_m, SOURCE)
    required_not_negative("margin of the way", margin_m, SOURCE)

    return load_width_m + 2.0 * (moved_m + margin_m)
