"""A load on two picks in a side wind: it rolls about the line through them."""

from checklist_app.mechanics import exact
from checklist_app.mechanics.errors import required_not_negative, required_positive

SOURCE = "STATICS_TWO_PICKS"


def rolled_by_side_force_deg(side_force_kn: float, off_picks_m: float, load_kn: float, cg_below_m: float) -> float:
    """Tilt about the line through two picks under a steady level side force.

        tan ρ = F e / (W d)

    Source:
        STATICS_TWO_PICKS; moments about the line through the picks: W d sin ρ = F e cos ρ.

    Args:
        side_force_kn: F [kN], 0 or more.
        off_picks_m: e, its height above or below the picks [m], 0 or more.
        load_kn: W [kN], above 0.
        cg_below_m: d, centre of gravity below the picks [m], above 0.

    Returns:
        ρ [°].

    Raises:
        OutOfRangeError: If an argument leaves its range.

    Example:
        >>> round(rolled_by_side_force_deg(1.0, 0.5, 10.0, 0.05), 6)
        45.0
    """
    required_not_negative("side force", side_force_kn, SOURCE)
    required_not_negative("height of the side force off the picks", off_picks_m, SOURCE)
    required_positive("load on the hook", load_kn, SOURCE)
    required_positive("centre of gravity below the picks", cg_below_m, SOURCE)

    return exact.atan2_deg(side_force_kn * off_picks_m, load_kn * cg_below_m)
