"""The last good rig of a load: offered again, taken item by item, and never answered by itself."""
import pytest

from checklist_app.checklists import values
from checklist_app.checklists.last_rig import ANEW
from checklist_app.checklists.made import Made
from checklist_app.checklists.running import running
from checklist_app.operations.task import Key
from tests.checklists.pages_checked import faults
from tests.checklists.shop import LOAD, Shop

WHAT = "/tasks/{}/what?step=lift"
SLING = "/tasks/{}/kit/leg.1-left.sling"


def rigged_before(shop: Shop, closing: str = "completed", stopped: bool = False, measured: bool = False) -> str:
    """A lift of the pump that ended: what its closing says of the rig."""
    from checklist_app.checklists.last_rig import remember

    task = shop.begin()
    shop.rig(task)
    if measured:
        shop.post(LEGS.format(task), MEASURED | {"leg/1-left/leg_angle_read_deg": "12"})
        shop.post(EYES.format(task), PLACED)
        shop.post(EYES.format(task), PLACED)
    if stopped:
        shop.post(f"/tasks/{task}/stop", {"stop": "yes"})
    made = Made(shop.request("POST", "/", counter=40_000))
    remember(made, running(shop.world, task), shop.world, closing)
    shop.entries.extend(made.keep)
    shop.parts.update(made.parts)
    shop.sealed[task] = "0" * 64
    shop._counter += 50_000
    return task


@pytest.fixture
def again() -> tuple[Shop, str, str]:
    """A second lift, whose rigger said: as last time."""
    shop = Shop()
    before = rigged_before(shop)
    task = shop.begin()
    shop.post(WHAT.format(task), {"again": before})
    return shop, task, before


def test_a_load_lifted_for_the_first_time_has_no_last_time() -> None:
    shop = Shop()

    assert "Rig it as last time?" not in shop.get(WHAT.format(shop.begin())).html


def test_the_last_good_rig_of_the_build_state_is_offered_with_its_day() -> None:
    shop = Shop()
    before = rigged_before(shop)
    page = shop.get(WHAT.format(shop.begin())).html

    assert "Yes, as on 25 November 2026" in page and "Slings R-21 and R-22" in page and f'value="{before}"' in page
    assert faults(page) == []
    assert "Rig it as last time?" not in shop.get(WHAT.format(shop.begin(state="bare"))).html


@pytest.mark.parametrize(("closing", "stopped"), [("abandoned", False), ("stopped", True), ("completed", True),
                                                  ("carried out without sign-off", False)])
def test_a_lift_that_did_not_go_well_is_not_offered(closing: str, stopped: bool) -> None:
    shop = Shop()
    rigged_before(shop, closing, stopped)

    assert "Rig it as last time?" not in shop.get(WHAT.format(shop.begin())).html


def test_as_last_time_asks_what_is_different_today(again: tuple[Shop, str, str]) -> None:
    shop, task, _ = again
    assert "What is different today?" in shop.get(WHAT.format(task)).html
    assert any(place.path == ("different",) and running(shop.world, task).is_open(place)
               for place in running(shop.world, task).places("what"))
    shop.post(WHAT.format(task), {"again": ANEW})
    assert "What is different today?" not in shop.get(WHAT.format(task)).html


def test_nothing_is_answered_by_the_offer(again: tuple[Shop, str, str]) -> None:
    shop, task, _ = again
    now = running(shop.world, task)

    assert Key("sling", "left") not in now.task.answers and not [path for path in now.items if path[0] == "leg"]


def test_one_tap_takes_an_item_again_in_the_version_of_today(again: tuple[Shop, str, str]) -> None:
    shop, task, _ = again
    page = shop.get(SLING.format(task)).html
    assert "Looked at and felt: take R-21 again" in page and "Last time, 25 November 2026" in page
    assert faults(page) == []
    given = shop.post(SLING.format(task), {"pick": "gear/R-21", "felt": "yes"})
    now = running(shop.world, task)

    assert given.location != SLING.format(task), "it goes on to the next slot"
    assert now.value(("leg", "1-left", "sling"))["version"] == shop.world.items("gear")["R-21"].version  # type: ignore[index]
    assert now.value(("leg", "1-left", "sling_felt")) == {"type": "tick", "text": "yes"}
    assert "Last time" not in shop.get(SLING.format(task)).html


def test_what_is_out_of_use_today_is_shown_and_cannot_be_taken_again(again: tuple[Shop, str, str]) -> None:
    shop, task, _ = again
    shop.post("/gear/R-21/quarantine", {"reason": "cover cut"})
    page = shop.get(SLING.format(task)).html

    assert "take R-21 again" not in page and "It cannot be taken again. Pick another one." in page
    assert shop.post(SLING.format(task), {"pick": "gear/R-21", "felt": "yes"}).status == 422


def test_none_a_hitch_and_a_point_of_the_load_are_offered_too(again: tuple[Shop, str, str]) -> None:
    shop, task, _ = again

    assert "The same again: No load cell" in shop.get(f"/tasks/{task}/kit/load_cell").html
    assert "The same again: straight" in shop.get(f"/tasks/{task}/kit/leg.1-left.hitch").html
    assert f"The same again: {LOAD}, left" in shop.get(f"/tasks/{task}/kit/leg.1-left.carrier").html


@pytest.mark.parametrize("facts", [{}, {"task": 1, "day": "x", "state": "complete", "answers": []},
                                   {"task": "t", "day": "d", "state": "complete", "answers": [{"path": "x"}]},
                                   {"task": "t", "day": "d", "state": "complete",
                                    "answers": [{"path": ["rig"], "value": {"type": "pick"}}]}])
def test_what_a_device_brought_as_a_rig_and_is_none_is_passed_over(facts: dict[str, object]) -> None:
    shop = Shop()
    made = Made(shop.request("POST", "/", counter=40_000))
    part = made.document("last_rig/1", facts)
    made.say(("load", LOAD), ("last_rig",), {"type": "rig", "task": "t", "part": part})
    shop.entries.extend(made.keep)
    shop.parts.update(made.parts)

    assert shop.get(WHAT.format(shop.begin())).status == 200
    assert "Rig it as last time?" not in shop.get(WHAT.format(shop.begin())).html


def test_a_rig_said_in_a_task_counts_for_nothing(again: tuple[Shop, str, str]) -> None:
    shop, task, _ = again
    made = Made(shop.request("POST", "/", counter=95_000))
    made.say(("task", task), ("rig",), {"type": "rig", "task": "t", "part": "0" * 64})

    now = running(shop.world.with_entries(made.keep, {}), task)

    assert now.value(("rig",)) == values.choice("two legs on one hook")


def test_the_newest_good_rig_takes_the_place_of_the_one_before() -> None:
    shop = Shop()
    first = rigged_before(shop)
    second = rigged_before(shop)
    page = shop.get(WHAT.format(shop.begin())).html

    assert f'value="{second}"' in page and f'value="{first}"' not in page


def test_a_rig_that_is_no_longer_the_last_one_is_not_offered_under_the_other_ones_name(
        again: tuple[Shop, str, str]) -> None:
    shop, task, _ = again
    rigged_before(shop)

    assert "Last time" not in shop.get(SLING.format(task)).html


LEGS, EYES = "/tasks/{}/numbers?step=legs", "/tasks/{}/numbers?step=eyes"
LENGTH = "leg/1-left/leg_length_m"
MEASURED = {LENGTH: "1.53", f"{LENGTH}.how": "tape", "leg/2-right/leg_length_m": "1.54",
            "leg/2-right/leg_length_m.how": "tape", "leg/2-right/leg_length_m.plus_minus": "0.02"}
PLACED = {"eyes_given": "distance", "eyes_apart_m": "0.9", "eyes_apart_m.how": "tape"}


def measured_before(shop: Shop) -> str:
    """The second lift of a pump whose legs were measured and whose eyes were given by their distance last time."""
    before = rigged_before(shop, measured=True)
    task = shop.begin()
    shop.post(WHAT.format(task), {"again": before})
    return task


def test_lengths_of_last_time_are_shown_and_taken_one_by_one() -> None:
    shop = Shop()
    task = measured_before(shop)
    for leg, sling, fitting in (("1-left", "R-21", "B-31"), ("2-right", "R-22", "B-32")):
        shop.post(f"/tasks/{task}/kit/leg.{leg}.sling", {"pick": f"gear/{sling}"})
        shop.post(f"/tasks/{task}/kit/leg.{leg}.top_fitting", {"not_used": "yes"})
        shop.post(f"/tasks/{task}/kit/leg.{leg}.bottom_fitting", {"pick": f"gear/{fitting}"})
    shop.post(LEGS.format(task), {"legs_given": "lengths"})
    page = shop.get(LEGS.format(task)).html
    assert "1.53 m, tape" in page and "1.54 m ± 0.02 m, tape" in page and faults(page) == []
    assert running(shop.world, task).value(("leg", "1-left", "leg_length_m")) is None

    shop.post(LEGS.format(task), {LENGTH: "1.53", f"{LENGTH}.how": "tape"})
    now, page = running(shop.world, task), shop.get(LEGS.format(task)).html
    assert now.value(("leg", "1-left", "leg_length_m")) == values.number("1.53", "m", "tape")
    assert now.value(("leg", "2-right", "leg_length_m")) is None
    assert "<b>1.53 m, tape</b></p>" not in page and "<b>1.54 m ± 0.02 m, tape</b></p>" in page


def test_a_length_is_not_offered_where_the_leg_hangs_on_other_gear_today() -> None:
    shop = Shop()
    task = measured_before(shop)
    shop.post(LEGS.format(task), {"legs_given": "lengths"})
    assert "1.53 m, tape" not in shop.get(LEGS.format(task)).html, "nothing is picked yet"
    shop.post(f"/tasks/{task}/kit/leg.1-left.sling", {"pick": "gear/R-22"})
    shop.post(f"/tasks/{task}/kit/leg.1-left.top_fitting", {"not_used": "yes"})
    shop.post(f"/tasks/{task}/kit/leg.1-left.bottom_fitting", {"pick": "gear/B-31"})
    assert "1.53 m, tape" not in shop.get(LEGS.format(task)).html


def test_how_the_eyes_were_given_is_offered_only_where_it_fits_today_and_what_follows_from_it_then() -> None:
    shop = Shop()
    task = measured_before(shop)
    page = shop.get(EYES.format(task)).html
    assert "Last time, 25 November 2026" in page and "<b>distance</b>" in page and "0.9 m, tape" not in page
    shop.post(EYES.format(task), {"eyes_given": "distance"})
    assert "<b>0.9 m, tape</b>" in shop.get(EYES.format(task)).html

    shop.post(EYES.format(task), {"eyes_given": ""})
    shop.post(f"/tasks/{task}/kit/rig", {"rig": "three legs on one hook"})
    assert "<b>distance</b>" not in shop.get(EYES.format(task)).html


def test_an_angle_read_last_time_is_never_offered() -> None:
    shop = Shop()
    task = measured_before(shop)
    shop.post(LEGS.format(task), {"legs_given": "measured angles"})
    assert "Last time" not in shop.get(LEGS.format(task)).html


def test_anew_offers_no_figures() -> None:
    shop = Shop()
    task = measured_before(shop)
    shop.post(WHAT.format(task), {"again": ANEW})
    assert "Last time" not in shop.get(EYES.format(task)).html
