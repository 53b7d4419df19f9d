"""A task is begun: from the registers, or with a load added on the spot."""
import pytest

from checklist_app.checklists.running import running
from checklist_app.operations.task import Key
from tests.checklists.pages_checked import faults
from tests.checklists.shop import LOAD, TODAY, TWO_LEGS, Shop

BEGIN = {"operation": "straight_lift", "lift": f"{LOAD}|complete", "place": "pump-bay", "day": TODAY}
NEW = {
    "operation": "straight_lift", "lift": "new", "place": "", "day": TODAY, "name": "Gearbox", "bottom_z_m": "0",
    "top_z_m": "0.9", "build_states/0/mass_kg": "640", "build_states/0/mass_how": "weighed",
    "build_states/0/cg_x_m": "0.4", "build_states/0/cg_y_m": "0", "build_states/0/cg_z_m": "0.4",
    "build_states/0/cg_how": "drawing", "pick_points/0/x_m": "0", "pick_points/0/y_m": "0", "pick_points/0/z_m": "0.8",
    "pick_points/0/evidence": "plate", "pick_ratings/0/up_to_deg": "45", "pick_ratings/0/wll_t": "1",
}


@pytest.fixture
def shop() -> Shop:
    return Shop()


def test_a_task_knows_load_build_state_place_day_and_its_two_legs(shop: Shop) -> None:
    task = shop.begin()
    now = running(shop.world, task)

    assert now.title == LOAD and now.day == TODAY
    assert now.folded.values[("build_state",)]["text"] == "complete"
    assert now.task.rows["leg"] == ("left", "right")
    assert now.task.answers[Key("room_height_m")].value == 5.4
    assert now.procedure.key == "straight_lift/4"


@pytest.mark.parametrize(("field", "typed"), [
    ("lift", ""), ("lift", "nothing|complete"), ("operation", "beam_lift"), ("day", "tomorrow"), ("day", ""),
    ("place", "moon")])
def test_a_form_with_a_fault_begins_nothing_and_keeps_what_was_chosen(shop: Shop, field: str, typed: str) -> None:
    given = shop.post("/begin", {**BEGIN, field: typed})

    assert (given.status, given.keep) == (422, ())
    assert 'class="fault"' in given.html and faults(given.html) == []


def test_a_task_just_begun_waits(shop: Shop) -> None:
    task = shop.begin()

    assert running(shop.world, task).evaluation.verdict.words == "waiting"


def test_a_load_added_on_the_spot_is_in_the_register_and_in_the_task(shop: Shop) -> None:
    given = shop.post("/begin", NEW)
    assert given.location is not None, given.html
    now = running(shop.world, given.location.split("/")[2])

    assert now.load is not None and now.load.title == "Gearbox"
    assert now.task.answers[Key("mass_kg")].value == 640.0
    assert [item.title for item in shop.world.items("load").values()].count("Gearbox") == 1


@pytest.mark.parametrize(("field", "typed", "words"), [
    ("name", "", "nobody answered"), ("build_states/0/mass_kg", "two tonnes", "is no number"),
    ("build_states/0/mass_kg", "1,250", "two ways"), ("build_states/0/mass_how", "", "nobody answered"),
    ("top_z_m", "-1", "does not lie over")])
def test_a_fault_in_a_new_load_stands_at_its_field_with_what_was_typed(
        shop: Shop, field: str, typed: str, words: str) -> None:
    given = shop.post("/begin", {**NEW, field: typed})

    assert (given.status, given.keep) == (422, ())
    assert (words in given.html and 'value="Gearbox"' in given.html) or field == "name"
    assert faults(given.html) == []


def test_a_load_without_rated_points_can_be_lifted_by_nobody(shop: Shop) -> None:
    bare = {name: text for name, text in NEW.items() if not name.startswith("pick_")}
    given = shop.post("/begin", bare)
    assert given.location is not None
    task = given.location.split("/")[2]
    shop.post(f"/tasks/{task}/kit/rig", {"rig": TWO_LEGS})

    assert "cannot be assessed" in shop.get(f"/tasks/{task}/kit/leg.1-left.carrier").html


def test_a_task_of_yesterday_asks_for_its_day_again(shop: Shop) -> None:
    given = shop.post("/begin", {**BEGIN, "day": "2026-11-24"})
    assert given.location is not None
    task = given.location.split("/")[2]
    before = running(shop.world, task).resume
    assert before is not None and before.path == ("day",)
    assert "Today is 25 November 2026. Confirm the day" in shop.get(f"/tasks/{task}/what").html

    shop.post(f"/tasks/{task}/what", {"day": TODAY})
    after = running(shop.world, task).resume
    assert after is not None and after.path != ("day",)
