"""What moves the load, drawn into the view along it: the gust at its height, and how far the load swings out."""

from collections.abc import Iterator

from checklist_app.operations.drawing import Anchor, Arrow, Dimension, Primitive, Role, Text
from checklist_app.operations.looks import Look
from checklist_app.operations.straight_lift.hung import Hung
from checklist_app.operations.straight_lift.labels import metres

N_IN_KN = 1000.0
ARROW_M, ALOFT_M, BELOW_M = 0.35, 0.03, 0.1
GUST = ("gust_m_s", "wind_shape", "side_area_m2", "side_area_z_m", "wind_stability", "wind_tilt")
SWING = ("travel_speed_m_s", "stopping_m", "hook_below_m", "swing_limit", "side_room")


def moved_aside(hung: Hung, look: Look) -> Iterator[Primitive]:
    """The gust comes from the left, the load swings to the right; a load that is not moved is drawn without."""
    across = [look.at(corner)[0] for corner in hung.corners]
    if hung.wind_at is not None and hung.wind_kn is not None and across:
        up, edge = look.at(hung.wind_at)[1], min(across)
        yield Arrow((edge - ARROW_M, up), (edge, up), Role.ANGLE, about=GUST)
        words = f"gust pushes {N_IN_KN * hung.wind_kn:.0f} N"
        yield Text((edge - ARROW_M / 2.0, up + ALOFT_M), words, Role.TEXT_SOFT, Anchor.END, about=GUST)
    if hung.swing_out_m is not None and hung.swing_out_m > 0.0 and across:
        under, edge = min(look.at(corner)[1] for corner in hung.corners), max(across)
        yield Dimension(
            (edge, under - BELOW_M), (edge + hung.swing_out_m, under - BELOW_M),
            f"swings {metres(hung.swing_out_m)}", about=SWING,
        )
