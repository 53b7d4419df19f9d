"""Where a load goes: wind, swing, tag lines and the zone, by hand and against statics written another way."""

import math
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from checklist_app.mechanics.sway.wind import Shape
from checklist_app.operations.check import Limit, State, Verdict
from checklist_app.operations.drawing import Arc, Arrow, Dimension, Drawing, Text
from checklist_app.operations.evaluate import Evaluation, assess
from checklist_app.operations.graph import DontKnow
from checklist_app.operations.straight_lift.ways import TagLine, Way
from checklist_app.operations.task import Measured, Task
from tests.operations.straight_lift.lifts import TABLE, lift
from tests.operations.straight_lift.on_the_way import BOTH, HELD, STILL, TRAVELS, WIND
from tests.operations.straight_lift.rigged import four, two_hooks

G = 9.80665
OF_THE_WAY = (
    "wind_limit", "wind_stability", "wind_tilt", "swing_limit", "swing_stability", "side_room", "zone", "tag_line_pull",
    "tag_line_reach",
)
TOP_HEAVY = {"cg_z_m": 0.85, "bottom_z_m": -0.5, "top_z_m": 1.6}


def limit(task: Task, name: str) -> tuple[float, float]:
    outcome = assess(TABLE, task).check(name).outcome
    assert isinstance(outcome, Limit), outcome
    return outcome.demand, outcome.capacity


def verdicts(ev: Evaluation) -> dict[str, Verdict]:
    return {name: ev.check(name).verdict for name in OF_THE_WAY}


def reason(task: Task, name: str) -> str:
    return str(assess(TABLE, task).check(name).stopped)


@pytest.mark.parametrize("task", [lift(), four(), two_hooks()], ids=["two legs", "four legs", "two hooks"])
def test_a_task_that_was_never_asked_where_it_goes_is_judged_as_ever(task: Task) -> None:
    ev = assess(TABLE, task)
    assert set(verdicts(ev).values()) == {Verdict.NOT_APPLICABLE}
    assert all("not asked" in str(ev.check(name).stopped) for name in ("wind_limit", "swing_limit", "zone"))
    assert ev.verdict in (Verdict.WITHIN, Verdict.CLOSE)


def test_straight_up_and_down_indoors_asks_for_the_size_alone() -> None:
    ev = assess(TABLE, lift(**STILL))
    told = verdicts(ev)
    assert told.pop("zone") is Verdict.WITHIN
    assert set(told.values()) == {Verdict.NOT_APPLICABLE}


@pytest.mark.parametrize("way", [Way.TRAVELS, Way.WIND, Way.BOTH])
def test_a_way_that_was_said_leaves_no_check_of_it_unanswered(way: Way) -> None:
    ev = assess(TABLE, lift(way=way))
    assert ev.verdict is Verdict.WAITING
    waiting = {name for name, told in verdicts(ev).items() if told is Verdict.WAITING}
    assert {"swing_limit", "side_room", "zone", "tag_line_pull", "tag_line_reach"} <= waiting
    assert ("wind_limit" in waiting) is (way is not Way.TRAVELS)


def test_by_hand_gust_on_a_box() -> None:
    """5 m/s: 15.625 N/m²; 2 × 15.625 × 1.4 × 1.1 = 48.125 N; of 9806.65 N a steady 0.28117°, at once twice that."""
    ev = assess(TABLE, lift(**WIND))
    assert ev["wind_pressure_pa"] == pytest.approx(15.625)
    assert 1000.0 * ev["wind_force_kn"] == pytest.approx(48.125)
    assert ev["swing_deg"] == pytest.approx(2.0 * math.degrees(math.atan(48.125 / 9806.65)), rel=1e-9)


def test_by_hand_stop_from_a_walk_over_thirty_centimetres() -> None:
    """0.3 m/s in 0.3 m: 0.15 m/s², 1.7526° once, 3.5052° if the stop meets the swing from the start; the line is
    2 m, a shackle of 0.1 m, and 0.8660 + 0.4 m to the centre of gravity: 0.2058 m to the side."""
    ev = assess(TABLE, lift(**TRAVELS))
    line = 2.1 + math.sqrt(0.75) + 0.4
    assert ev["hang_line_m"] == pytest.approx(line)
    assert ev["swing_deg"] == pytest.approx(4.0 * math.degrees(math.atan(0.15 / G)), rel=1e-9)
    assert ev["swing_out_m"] == pytest.approx(line * math.sin(math.radians(3.5052)), rel=1e-4)
    demand, left = limit(lift(**TRAVELS), "side_room")
    assert (demand, left) == (0.1, pytest.approx(2.0 - 0.2058, abs=5e-5))


def test_by_hand_zone_of_a_load_that_stays_plumb() -> None:
    """Half of √(1.4² + 0.8²) = 0.806 m, 1.1 m high, 1 m of the house: 2.906 m, told as 3.0 m."""
    told = assess(TABLE, lift(**STILL)).check("zone").outcome
    assert isinstance(told, State) and told[:2] == (True, "nobody within 3.0 m of the plumb line")


def test_the_strip_is_told_where_it_travels_and_is_never_rounded_down() -> None:
    ev = assess(TABLE, lift(**TRAVELS))
    radius, strip = ev["zone_radius_m"], ev["kept_clear_m"]
    told = ev.check("zone").outcome
    assert isinstance(told, State)
    words = f"within {math.ceil(10 * radius) / 10:.1f} m of the plumb line; on its way a strip of "
    assert words + f"{math.ceil(10 * strip) / 10:.1f} m is kept clear" in told.reason
    assert strip == pytest.approx(2.0 * (math.hypot(0.7, 0.4) + ev["swing_out_m"] + 1.0))


def test_by_hand_hands_on_a_tag_line() -> None:
    """0.02 m out of plumb on 3.366 m: 9806.65 × 0.0059417 / cos(0.3404° + 20°) = 62.14 N."""
    demand, capacity = limit(lift(**TRAVELS | HELD), "tag_line_pull")
    assert capacity == 150.0
    assert demand == pytest.approx(9806.65 * 0.0059417 / math.cos(math.radians(20.3404)), rel=1e-3)


def test_a_gust_adds_to_the_hands() -> None:
    still, _ = limit(lift(**TRAVELS | HELD), "tag_line_pull")
    windy, _ = limit(lift(**BOTH | HELD), "tag_line_pull")
    assert windy - still == pytest.approx(48.125 / math.cos(math.radians(20.0)), rel=0.01)


def test_who_holds_a_short_line_stands_inside_the_zone() -> None:
    ev = assess(TABLE, lift(**TRAVELS | HELD | {"tag_length_m": 2.5}))
    assert ev.check("tag_line_reach").verdict is Verdict.OVER


def test_no_tag_line_is_an_answer() -> None:
    assert reason(lift(**TRAVELS), "tag_line_pull") == "no tag line"


def test_a_stop_that_nobody_knows_is_a_dead_one_and_swings_it_no_less() -> None:
    dead = assess(TABLE, lift(**TRAVELS | {"stopping_m": DontKnow()}))
    line = dead["hang_line_m"]
    once = math.degrees(math.acos(1.0 - 0.3 * 0.3 / (2.0 * G * line)))
    assert dead["swing_deg"] == pytest.approx(2.0 * once, rel=1e-9)
    assert assess(TABLE, lift(**TRAVELS))["swing_deg"] <= dead["swing_deg"]
    assert assess(TABLE, lift(**TRAVELS | {"stopping_m": 0.001}))["swing_deg"] == dead["swing_deg"]


def test_two_hooks_that_stay_swing_in_the_wind() -> None:
    assert assess(TABLE, two_hooks(**WIND)).check("swing_limit").verdict is Verdict.WITHIN


def test_a_load_that_hangs_below_its_eyes_is_not_blown_over_and_two_picks_roll() -> None:
    assert "comes back" in reason(four(**WIND), "wind_stability")
    assert assess(TABLE, lift(**WIND)).check("wind_tilt").verdict is Verdict.WITHIN
    shallow = assess(TABLE, lift(cg_z_m=-0.08, **WIND | {"side_area_z_m": -0.6}))
    assert shallow.check("wind_tilt").verdict in (Verdict.CLOSE, Verdict.OVER)


def test_a_top_heavy_load_is_held_against_gust_and_stop_by_the_push_that_slackens_a_leg() -> None:
    """Independent: over the lower edge of the legs, W a = Q √(y² − a²)."""
    task = four(**TOP_HEAVY, **BOTH | {"side_area_z_m": 1.5})
    ev = assess(TABLE, task)
    inside, load = ev["cg_inside_of_edge_m"], ev["gross_load_kn"]
    gust, slack = limit(task, "wind_stability")
    assert slack == pytest.approx(inside / math.sqrt(0.65 * 0.65 - inside * inside), rel=1e-9)
    assert gust == pytest.approx(2.0 * 2.0 * 15.625 * 1.4 * 2.1 / 1000.0 / load, rel=1e-9)
    lean, push = limit(task, "swing_stability")
    assert lean == pytest.approx(math.tan(math.radians(ev["swing_deg"])), rel=1e-9)
    assert push == pytest.approx(limit(task, "push_stability")[1], rel=1e-12)


def end_view(task: Task) -> Drawing:
    picture = assess(TABLE, task, with_spread=False).picture
    assert isinstance(picture, Drawing)
    return next(view for view in picture.others if view.name == "End view")


def test_the_end_view_shows_the_gust_at_its_height_and_the_swing_to_scale() -> None:
    task = lift(**BOTH | {"side_area_z_m": -0.1})
    ev, view = assess(TABLE, task, with_spread=False), end_view(task)
    (gust,) = [part for part in view.parts if isinstance(part, Arrow)]
    centre = next(part for part in view.parts if isinstance(part, Arc) and "cg_x_m" in part.about)
    assert gust.end[1] == gust.start[1] == pytest.approx(centre.centre[1] + 0.3)
    (swing,) = [part for part in view.parts if isinstance(part, Dimension) and "swing_limit" in part.about]
    assert math.dist(swing.start, swing.end) == pytest.approx(ev["swing_out_m"])
    assert any(isinstance(part, Text) and part.words == "gust pushes 48 N" for part in view.parts)
    assert f"a gust pushes with 48 N, it swings out {ev['swing_out_m']:.2f} m" in view.label


def test_nothing_is_drawn_of_what_does_not_move_it() -> None:
    for task in (lift(), lift(**STILL)):
        view = end_view(task)
        assert not [part for part in view.parts if isinstance(part, Arrow)]
        assert "swings" not in view.label and "gust" not in view.label


def test_a_shape_that_nobody_names_meets_most_wind() -> None:
    forces = [assess(TABLE, lift(**WIND | {"wind_shape": shape}))["wind_force_kn"] for shape in Shape]
    assert max(forces) == assess(TABLE, lift(**WIND | {"wind_shape": Shape.NOT_KNOWN}))["wind_force_kn"]


def test_a_forecast_reaches_further_than_a_reading() -> None:
    read, cast = (
        assess(TABLE, lift(**WIND | {"gust_m_s": Measured(8.0, how)})).check("wind_limit").verdict
        for how in ("measured", "forecast")
    )
    assert (read, cast) == (Verdict.CLOSE, Verdict.OVER)


def test_a_gust_of_which_nobody_says_how_it_is_known_waits() -> None:
    assert "obtained" in reason(lift(**WIND | {"gust_m_s": Measured(4.0)}), "wind_limit")


MORE: dict[str, tuple[dict[str, Any], str, float, float]] = {
    "gust": (BOTH, "gust_m_s", 1.0, 12.0), "speed": (BOTH, "travel_speed_m_s", 0.05, 0.8),
    "area": (BOTH, "side_area_m2", 0.1, 20.0), "line": (BOTH | {"stopping_m": 5.0}, "hook_below_m", 0.3, 20.0),
}


@pytest.mark.parametrize("name", MORE)
@given(parts=st.tuples(st.floats(0.0, 1.0), st.floats(0.0, 1.0)))
@settings(max_examples=25, deadline=None)
def test_more_of_it_never_brings_the_load_less_far(name: str, parts: tuple[float, float]) -> None:
    base, entry, low, high = MORE[name]
    less, more = (low + (high - low) * part for part in sorted(parts))
    ways = [assess(TABLE, lift(**base | {entry: value})) for value in (less, more)]
    for quantity in ("swing_out_m", "zone_radius_m"):
        assert ways[0][quantity] <= ways[1][quantity] * (1.0 + 1e-12)


def test_a_tag_line_is_asked_only_where_something_moves_the_load() -> None:
    assert reason(lift(**STILL, tag_line=TagLine.HELD), "tag_line_pull") == "straight up and down, out of the wind"
