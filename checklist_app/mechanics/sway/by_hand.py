"""A tag line in somebody's hands: how hard he may have to pull, how far away he stands, what a side wind adds."""

from checklist_app.mechanics import exact
from checklist_app.mechanics.errors import OutOfRangeError, required_not_negative, required_positive

SOURCE = "STATICS_TAG_LINE"
HANDLING = "HSE_L23"
STEEPEST_DEG = 60.0
STARTING_N, KEEPING_N = 150.0, 70.0


def pulled_by_hand_limit_n() -> float:
    """Pull that anybody may have to start or stop a load with.

        150 N, the lower of two guideline figures (200 N for men)

    Source:
        HSE_L23, guideline figures for pushing and pulling.

    Returns:
        Pull [N].

    Example:
        >>> pulled_by_hand_limit_n()
        150.0
    """
    return STARTING_N


def kept_up_by_hand_n() -> float:
    """Pull that anybody may keep up while a load moves.

        70 N, the lower of two guideline figures (100 N for men)

    Source:
        HSE_L23, guideline figures for pushing and pulling.

    Returns:
        Pull [N].

    Example:
        >>> kept_up_by_hand_n()
        70.0
    """
    return KEEPING_N


def pull_against_side_force_kn(
    side_force_kn: float, line_m: float, off_plumb_m: float, below_level_deg: float
) -> float:
    """What a level side force on the load, such as wind, adds to the pull in a tag line that holds against it.

        Q = F cos φ / cos(φ + ε), sin φ = x / L

    Source:
        STATICS_TAG_LINE.

    Args:
        side_force_kn: F, away from who holds the line [kN], 0 or more.
        line_m: L, hoist line from where it hangs to the load [m], above 0.
        off_plumb_m: x, how far the load is held off plumb [m], 0 or more.
        below_level_deg: ε, tag line below level at the load [°], 0 to 60.

    Returns:
        Q [kN].

    Raises:
        OutOfRangeError: If an argument leaves its range, or no pull could hold it so.

    Example:
        >>> round(pull_against_side_force_kn(0.1, 3.0, 0.0, 60.0), 6)
        0.2
    """
    required_not_negative("side force", side_force_kn, SOURCE)
    required_positive("length of the hoist line", line_m, SOURCE)
    required_not_negative("load held off plumb", off_plumb_m, SOURCE)
    angle_rad = _below_level_rad(below_level_deg)
    if not off_plumb_m < line_m:
        raise OutOfRangeError("load held off plumb", off_plumb_m, "less than the hoist line is long", SOURCE)
    swing = off_plumb_m / line_m
    upright = exact.sqrt(1.0 - swing * swing)
    across = upright * exact.cos(angle_rad) - swing * exact.sin(angle_rad)
    if not across > 0.0:
        raise OutOfRangeError("load held off plumb", off_plumb_m, "less: so low a tag line cannot hold it", SOURCE)

    return side_force_kn * upright / across


def stands_off_m(tag_length_m: float, below_level_deg: float) -> float:
    """How far from the load who holds its tag line stands.

        s = l cos ε

    Source:
        STATICS_TAG_LINE; a straight line.

    Args:
        tag_length_m: l, from the load to the hand [m], above 0.
        below_level_deg: ε, tag line below level at the load [°], 0 to 60.

    Returns:
        s [m].

    Raises:
        OutOfRangeError: If an argument leaves its range.

    Example:
        >>> round(stands_off_m(5.0, 60.0), 9)
        2.5
    """
    required_positive("length of the tag line", tag_length_m, SOURCE)

    return tag_length_m * exact.cos(_below_level_rad(below_level_deg))


def _below_level_rad(below_level_deg: float) -> float:
    if not 0.0 <= below_level_deg <= STEEPEST_DEG:
        raise OutOfRangeError("tag line below level", below_level_deg, f"0 to {STEEPEST_DEG:.0f}°", SOURCE)

    return below_level_deg / exact.RAD_IN_DEG
