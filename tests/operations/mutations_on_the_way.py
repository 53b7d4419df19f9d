"""For each clause and check about wind, swing, tag lines and zone a lift in which it alone decides."""

from collections.abc import Callable, Mapping
from typing import Any

from checklist_app.operations.task import Task
from tests.operations.straight_lift.lifts import eye, hoist, lift
from tests.operations.straight_lift.on_the_way import HELD, TRAVELS, WIND
from tests.operations.straight_lift.rigged import four, three

# Nothing else is near its limit on these legs: what is asked about the way decides.
STEADY: dict[str, Any] = {"cg_z_m": -0.4}
TOPPLES = {"cg_z_m": 0.85, "bottom_z_m": -0.5, "top_z_m": 1.6}
SAIL = {"side_area_m2": 12.0, "side_area_z_m": 1.6}
BLOWN_OVER = four(**TOPPLES, **WIND | {"gust_m_s": 6.9, **SAIL})
ROLLED = lift(**STEADY, **WIND | {"gust_m_s": 6.5, "side_area_m2": 16.0, "side_area_z_m": 0.15})
BLOWN = lift(**STEADY, **WIND | {"gust_m_s": 9.5, "side_area_m2": 0.2})
TIGHT = {"side_room_m": 0.3}
NEAR = lift(**STEADY, **TRAVELS | TIGHT | {"travel_speed_m_s": 0.32})
NEAR_IN_WIND = lift(**STEADY, **WIND | TIGHT | {"gust_m_s": 6.5, "side_area_m2": 6.5, "side_area_z_m": 0.0})
SOFT_STOP = lift(**STEADY, **TRAVELS | {"side_room_m": 0.25, "travel_speed_m_s": 0.7, "stopping_m": 3.0})
FAST = lift(**STEADY, **TRAVELS | {"travel_speed_m_s": 0.6, "stopping_m": 0.1})
CATCHES = four(**TOPPLES, **TRAVELS | {"travel_speed_m_s": 0.35, "stopping_m": 0.05, "hook_below_m": 3.0})
PULLS = lift(**STEADY, **TRAVELS | HELD | {"tag_off_plumb_m": 0.06})
LEANS_ON_WIND = lift(**STEADY, **WIND | HELD | {
    "gust_m_s": 6.5, "side_area_m2": 3.5, "side_area_z_m": 0.0, "tag_off_plumb_m": 0.0, "tag_below_deg": 30.0,
})
SHORT = lift(**STEADY, **TRAVELS | HELD | {"tag_length_m": 3.0, "tag_off_plumb_m": 0.0, "travel_speed_m_s": 0.1})
SHORT_IF_THROWN = lift(**STEADY, highest_hook_m=9.0, room_height_m=9.0, lift_height_m=2.5, **TRAVELS | HELD | {
    "tag_length_m": 3.6, "tag_off_plumb_m": 0.0, "travel_speed_m_s": 0.3, "tag_below_deg": 10.0,
})
SWINGS = lift(**STEADY, **TRAVELS, hoist=hoist(1.002))
GUSTY = WIND | {"side_area_m2": 6.0, "side_area_z_m": 0.7}
LEANS = lift(both={"eye": eye((60.0, 0.59))}, **STEADY, **GUSTY | {"side_area_z_m": 0.2})
LEANS_ON_THREE = three(every={"eye": eye((60.0, 0.39))}, **GUSTY)
HUGE = 1e6

WAY_CLAUSES: Mapping[str, tuple[Callable[..., Any], Task]] = {
    "sway.wind.wind_pressure_n_m2": (lambda *_: 0.0, BLOWN_OVER),
    "sway.wind.drag_coefficient": (lambda *_: 0.01, BLOWN_OVER),
    "sway.wind.wind_force_kn": (lambda *_: 0.0, BLOWN_OVER),
    "sway.rolling.rolled_by_side_force_deg": (lambda *_: 0.0, ROLLED),
    "sway.wind.held_off_plumb_deg": (lambda *_: 0.0, NEAR_IN_WIND),
    "sway.swing.swing_after_stop_deg": (lambda *_: 0.0, NEAR),
    "sway.swing.swing_after_sudden_start_deg": (lambda *_: 0.0, SOFT_STOP),
    "sway.stopping.braking_m_s2": (lambda *_: 0.0, SOFT_STOP),
    "sway.swing.swing_out_m": (lambda *_: 0.0, NEAR),
    "sway.stopping.leaning_push_kn": (lambda *_: 0.0, CATCHES),
    "sway.stopping.highest_pull_kn": (lambda load_kn, *_: load_kn, SWINGS),
    "sway.leaning.leaning_slope": (lambda *_: 0.0, LEANS),
    "sway.leaning.more_in_one_of_two": (lambda *_: 0.0, LEANS),
    "sway.leaning.more_in_one_of_three": (lambda *_: 0.0, LEANS_ON_THREE),
    "sway.stopping.speed_at_plumb_m_s": (lambda *_: 0.0, SHORT_IF_THROWN),
    "sway.zone.thrown_m": (lambda *_: 0.0, SHORT_IF_THROWN),
    "sway.zone.half_diagonal_m": (lambda *_: 0.01, SHORT),
    "sway.zone.zone_radius_m": (lambda *_: 0.01, SHORT),
    "sway.by_hand.stands_off_m": (lambda *_: HUGE, SHORT),
    "sway.tag_line.tag_line_pull_kn": (lambda *_: 0.0, PULLS),
    "sway.by_hand.pull_against_side_force_kn": (lambda *_: 0.0, LEANS_ON_WIND),
    "sway.by_hand.pulled_by_hand_limit_n": (lambda: HUGE, PULLS),
}
WAY_SHOWN = {
    "sway.zone.corridor_width_m": (lift(**TRAVELS), "kept_clear_m", 0.1),
}
# The margin between what a person starts and what he keeps up is read at import.
WAY_NEVER_ALONE = {"sway.by_hand.kept_up_by_hand_n"}

WAY_CHECKS: Mapping[str, Task] = {
    "wind_limit": BLOWN,
    "wind_stability": BLOWN_OVER,
    "wind_tilt": ROLLED,
    "swing_limit": FAST,
    "swing_stability": CATCHES,
    "side_room": NEAR,
    "tag_line_pull": PULLS,
    "tag_line_reach": SHORT,
}
# How far people keep away is told; who holds a tag line is held against it.
WAY_TELLS = {"zone"}
