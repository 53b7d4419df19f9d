"""Where a load goes: asked only as far as it applies, told at the stop points, carried over from an assessment."""

import pytest

from checklist_app.checklists.assess_way import WORDS
from checklist_app.checklists.example import example
from checklist_app.checklists.running import running
from checklist_app.operations.check import Verdict
from checklist_app.operations.straight_lift.ways import TagLine, Way
from checklist_app.operations.task import Key
from tests.checklists.pages_checked import faults
from tests.checklists.shop import LOAD, TODAY, WAY, Shop

SIZE = {"load_length_m", "load_width_m"}
HANGS = {"side_room_m", "hook_below_m"}
TRAVEL = {"travel_speed_m_s", "stopping_m"}
WIND = {"gust_m_s", "wind_shape", "side_area_m2", "side_area_z_m"}
HELD = {"tag_length_m", "tag_below_deg", "tag_off_plumb_m"}
ASKED = {
    Way.STILL: SIZE, Way.TRAVELS: SIZE | HANGS | TRAVEL | {"tag_line"}, Way.WIND: SIZE | HANGS | WIND | {"tag_line"},
    Way.BOTH: SIZE | HANGS | TRAVEL | WIND | {"tag_line"},
}
OUTDOORS = {
    "way": Way.WIND.value, "load_length_m": "1.6", "load_width_m": "0.9", "side_room_m": "1.5", "hook_below_m": "2",
    "gust_m_s": "4", "gust_m_s.how": "measured", "wind_shape": "box or plate", "tag_line": TagLine.NONE.value,
}


@pytest.fixture(scope="module")
def shop() -> Shop:
    return Shop()


def asked(shop: Shop, task: str) -> set[str]:
    now = running(shop.world, task)
    steps = [place for place in now.places("numbers") if place.step.name in ("way", "wind")]
    return {place.name for place in steps if now.is_asked(place)}


@pytest.mark.parametrize("way", Way)
def test_a_way_is_asked_what_belongs_to_it_and_no_more(shop: Shop, way: Way) -> None:
    task = shop.begin()
    assert asked(shop, task) == {"way", *SIZE}
    shop.post(f"/tasks/{task}/numbers?step=way", {"way": way.value})
    assert asked(shop, task) == {"way", *ASKED[way]}
    if way is not Way.STILL:
        shop.post(f"/tasks/{task}/numbers?step=wind", {"tag_line": TagLine.HELD.value})
        assert asked(shop, task) == {"way", *ASKED[way], *HELD}
        assert faults(shop.get(f"/tasks/{task}/numbers?step=wind").html) == []


def test_a_tag_line_that_was_held_is_no_longer_asked_about_indoors_on_the_spot(shop: Shop) -> None:
    task = shop.begin()
    shop.post(f"/tasks/{task}/numbers?step=way", {"way": Way.TRAVELS.value})
    shop.post(f"/tasks/{task}/numbers?step=wind", {"tag_line": TagLine.HELD.value})
    shop.post(f"/tasks/{task}/numbers?step=way", {"way": Way.STILL.value})
    assert asked(shop, task) == {"way", *SIZE}


def test_nobody_signs_before_it_is_said_where_it_goes() -> None:
    shop = Shop()
    task = shop.begin()
    shop.rig(task)
    path = {place.name: place for place in running(shop.world, task).places("numbers")}
    assert not running(shop.world, task).is_open(path["way"])
    hold = f"/tasks/{task}/holds/release"
    unanswered = "Where is it lifted, and how does it move: not answered"
    assert unanswered not in shop.get(hold).html
    shop.post(f"/tasks/{task}/numbers?step=way", {"way": ""})
    assert running(shop.world, task).is_open(path["way"]) and path["way"].prompt.killer
    assert unanswered in shop.get(hold).html


def test_a_step_of_wind_stands_only_where_there_is_any(shop: Shop) -> None:
    task = shop.begin()
    shop.post(f"/tasks/{task}/numbers?step=way", WAY)
    assert "Wind and tag lines" not in shop.get(f"/tasks/{task}/numbers?step=way").html
    shop.post(f"/tasks/{task}/numbers?step=way", {"way": Way.WIND.value})
    assert "Wind and tag lines" in shop.get(f"/tasks/{task}/numbers?step=way").html


def test_the_stop_points_tell_how_far_people_keep_away() -> None:
    shop = Shop()
    task = shop.begin()
    aloud = f"/tasks/{task}/stop-points?step=aloud"
    assert "of the plumb line" not in shop.get(aloud).html
    shop.rig(task)
    page = shop.get(aloud).html
    told = running(shop.world, task).evaluation.check("zone").outcome.reason
    assert told.startswith("nobody within ") and f"{told[:1].upper()}{told[1:]}." in page
    assert faults(page) == []


def test_a_stop_that_nobody_knows_is_an_answer(shop: Shop) -> None:
    task = shop.begin()
    way = f"/tasks/{task}/numbers?step=way"
    shop.post(way, {"way": Way.TRAVELS.value})
    assert 'name="stopping_m.dont_know"' in shop.get(way).html


def address(**typed: str) -> str:
    return "/assess?" + "&".join(f"{name}={text}" for name, text in {**example(), **typed}.items())


def test_an_assessment_leaves_it_folded_and_looks_at_none_of_it(shop: Shop) -> None:
    page = shop.get("/assess?example=yes", person=None).html
    assert f'<details class="ways"><summary class="stage-name">{WORDS}' in page
    assert "gust_m_s" not in page and 'id="check-wind_limit"' not in page


def test_an_assessment_outdoors_is_judged(shop: Shop) -> None:
    page = shop.get(address(**OUTDOORS), person=None)
    assert page.status == 200 and faults(page.html) == []
    assert 'id="check-wind_limit"' in page.html and 'id="check-zone"' in page.html and "gust pushes" in page.html
    blown = shop.get(address(**OUTDOORS | {"gust_m_s": "12"}), person=None).html
    assert "The lift is over limit" in blown


@pytest.mark.parametrize("field", ["gust_m_s", "load_length_m", "hook_below_m"])
def test_what_is_left_open_outdoors_waits(shop: Shop, field: str) -> None:
    page = shop.get(address(**OUTDOORS | {field: ""}), person=None).html
    assert "The lift is waiting" in page


@pytest.mark.parametrize("typed", ["0", "-3", "nan", "99", "two"])
def test_a_wind_that_cannot_be_is_said_at_its_field(shop: Shop, typed: str) -> None:
    page = shop.get(address(**OUTDOORS | {"gust_m_s": typed}), person=None).html
    assert f'value="{typed}"' in page and 'class="fault"' in page and "The lift is waiting" in page


def test_wind_that_was_typed_comes_along_into_the_task() -> None:
    shop = Shop()
    begin = {"operation": "straight_lift", "lift": f"{LOAD}|complete", "place": "", "day": TODAY}
    typed = {**example(), **OUTDOORS}
    given = shop.post("/begin", {**begin, **{f"carry.{name}": text for name, text in typed.items()}})
    assert given.location is not None
    answers = running(shop.world, given.location.split("/")[2]).task.answers
    assert answers[Key("way")] is Way.WIND
    assert (answers[Key("gust_m_s")].value, answers[Key("gust_m_s")].how) == (4.0, "measured")
    assert answers[Key("tag_line")] is TagLine.NONE


def test_a_lift_outdoors_is_within_its_limits_on_the_page_of_checks() -> None:
    shop = Shop()
    task = shop.begin()
    shop.rig(task)
    for step in ("way", "wind"):
        shop.post(f"/tasks/{task}/numbers?step={step}", {
            **OUTDOORS, **{f"{name}.how": "tape" for name in (*SIZE, *HANGS)}, "gust_m_s": "3"})
    ev = running(shop.world, task).evaluation
    assert ev.check("wind_limit").verdict is Verdict.WITHIN
    assert ev.check("swing_limit").verdict is Verdict.WITHIN
