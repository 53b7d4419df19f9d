"""A tag line that holds a load off plumb: what it pulls, and what it adds to the hook."""

from checklist_app.mechanics import exact
from checklist_app.mechanics.errors import OutOfRangeError, required_not_negative, required_positive

SOURCE = "STATICS_TAG_LINE"
STEEPEST_DEG = 60.0


def tag_line_pull_kn(load_kn: float, line_m: float, off_plumb_m: float, below_level_deg: float) -> float:
    """Pull in the tag line.

        Q = W sin φ / cos(φ + ε), sin φ = x / L

    Source:
        STATICS_TAG_LINE.

    Args:
        load_kn: W [kN], above 0.
        line_m: L, hoist line from where it hangs to the load [m], above 0.
        off_plumb_m: x, how far the load is held off plumb [m], 0 or more.
        below_level_deg: ε, tag line below level at the load [°], 0 to 60.

    Returns:
        Q [kN].

    Raises:
        OutOfRangeError: If an argument leaves its range, or no pull could hold it so.

    Example:
        >>> round(tag_line_pull_kn(20.0, 3.0, 0.5, 30.0), 5)
        4.32575
    """
    swing, upright, sine, cosine = _angles(load_kn, line_m, off_plumb_m, below_level_deg)
    across = upright * cosine - swing * sine
    if not across > 0.0:
        raise OutOfRangeError("load held off plumb", off_plumb_m, "less: so low a tag line cannot hold it", SOURCE)

    return load_kn * swing / across


def hoist_pull_kn(load_kn: float, line_m: float, off_plumb_m: float, below_level_deg: float) -> float:
    """Pull in the hoist line while the tag line holds: the tag line pulls down as well.

        T = (W + Q sin ε) / cos φ

    Source:
        STATICS_TAG_LINE.

    Args:
        load_kn: W [kN], above 0.
        line_m: L, hoist line from where it hangs to the load [m], above 0.
        off_plumb_m: x, how far the load is held off plumb [m], 0 or more.
        below_level_deg: ε, tag line below level at the load [°], 0 to 60.

    Returns:
        T [kN].

    Raises:
        OutOfRangeError: If an argument leaves its range, or no pull could hold it so.

    Example:
        >>> round(hoist_pull_kn(20.0, 3.0, 0.5, 30.0), 5)
        22.47726
    """
    pull_kn = tag_line_pull_kn(load_kn, line_m, off_plumb_m, below_level_deg)
    _, upright, sine, _ = _angles(load_kn, line_m, off_plumb_m, below_level_deg)

    return (load_kn + pull_kn * sine) / upright


def _angles(load_kn: float, line_m: float, off_plumb_m: float, below_level_deg: float) -> tuple[float, ...]:
    """Sine and cosine of the hoist line off plumb, and of the tag line below level."""
    required_positive("load on the hook", load_kn, SOURCE)
    required_positive("length of the hoist line", line_m, SOURCE)
    required_not_negative("load held off plumb", off_plumb_m, SOURCE)
    if not off_plumb_m < line_m:
        raise OutOfRangeError("load held off plumb", off_plumb_m, "less than the hoist line is long", SOURCE)
    if not 0.0 <= below_level_deg <= STEEPEST_DEG:
        raise OutOfRangeError("tag line below level", below_level_deg, f"0 to {STEEPEST_DEG:.0f}°", SOURCE)
    swing, angle_rad = off_plumb_m / line_m, below_level_deg / exact.RAD_IN_DEG

    return swing, exact.sqrt(1.0 - swing * swing), exact.sin(angle_rad), exact.cos(angle_rad)
