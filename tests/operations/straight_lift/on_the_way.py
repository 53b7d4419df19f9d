"""What is answered about the way of a load, to add to any lift: plain numbers are exact."""

from typing import Any

from checklist_app.mechanics.sway.wind import Shape
from checklist_app.operations.straight_lift.ways import TagLine, Way

SIZE: dict[str, Any] = {"load_length_m": 1.4, "load_width_m": 0.8}
STILL: dict[str, Any] = {"way": Way.STILL, **SIZE}
HANGS: dict[str, Any] = {"side_room_m": 2.0, "hook_below_m": 2.0, "tag_line": TagLine.NONE}
TRAVELS: dict[str, Any] = {"way": Way.TRAVELS, **SIZE, **HANGS, "travel_speed_m_s": 0.3, "stopping_m": 0.3}
WIND: dict[str, Any] = {"way": Way.WIND, **SIZE, **HANGS, "gust_m_s": 5.0, "wind_shape": Shape.BOX}
BOTH: dict[str, Any] = {**TRAVELS, **WIND, "way": Way.BOTH}
HELD: dict[str, Any] = {
    "tag_line": TagLine.HELD, "tag_length_m": 6.0, "tag_below_deg": 20.0, "tag_off_plumb_m": 0.02,
}
