"""A load on two upright lines that tilts: how its share moves to the one side."""

from checklist_app.mechanics import exact
from checklist_app.mechanics.errors import OutOfRangeError, required_not_negative

SOURCE = "ND_0027"
STEEPEST_DEG = 60.0


def share_on_first_line(
    cg_to_picks_m: tuple[float, float], picks_above_cg_m: tuple[float, float], tilt_deg: float
) -> float:
    """Share of the first of two upright lines, with the load tilted towards it.

        F₁ / W = (b sin t + d cos t) / ((c + d) cos t + (b − a) sin t)

    Source:
        ND_0027, appendix B.1.2; for the spread of the centre of gravity put it at the worst corner of its box.

    Args:
        cg_to_picks_m: c and d, level from the centre of gravity to the first and to the second pick [m].
        picks_above_cg_m: a and b, first and second pick above the centre of gravity [m].
        tilt_deg: t, first pick down [°], −60 to 60.

    Returns:
        F₁ / W [-].

    Raises:
        OutOfRangeError: If the centre of gravity is not between the lines, or the tilt leaves its range.

    Example:
        >>> round(share_on_first_line((12.0, 13.9), (10.0, 14.8), 0.0), 6)
        0.53668
    """
    to_first_m, to_second_m = cg_to_picks_m
    first_up_m, second_up_m = picks_above_cg_m
    if not abs(tilt_deg) <= STEEPEST_DEG:
        raise OutOfRangeError("tilt", tilt_deg, f"−{STEEPEST_DEG:.0f} to {STEEPEST_DEG:.0f}°", SOURCE)
    required_not_negative("first pick from the centre of gravity", to_first_m, SOURCE)
    required_not_negative("second pick from the centre of gravity", to_second_m, SOURCE)
    slope_rad = tilt_deg / exact.RAD_IN_DEG
    sin, cos = exact.sin(slope_rad), exact.cos(slope_rad)
    apart_m = (to_first_m + to_second_m) * cos + (second_up_m - first_up_m) * sin
    share = (second_up_m * sin + to_second_m * cos) / apart_m if apart_m > 0.0 else -1.0
    if not 0.0 <= share <= 1.0:
        raise OutOfRangeError("share of the first line", share, "the centre of gravity between the lines", SOURCE)

    return share
