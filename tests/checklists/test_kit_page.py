"""Picking gear: by a tap or by its number, felt, refused with its reason, added on the spot."""
import pytest

from checklist_app.checklists.running import running
from checklist_app.operations.task import Key, NotUsed
from tests.checklists.shop import Shop

SLING = "/tasks/{}/kit/leg.1-left.sling"


@pytest.fixture
def begun() -> tuple[Shop, str]:
    shop = Shop()
    return shop, shop.begin()


def test_a_tap_on_a_tag_picks_it_in_the_version_that_was_shown(begun: tuple[Shop, str]) -> None:
    shop, task = begun
    given = shop.post(SLING.format(task), {"pick": "gear/R-21"})
    now = running(shop.world, task)

    assert given.location == SLING.format(task)
    assert now.value(("leg", "1-left", "sling")) == {
        "type": "pick", "subject": "gear/R-21", "version": shop.world.items("gear")["R-21"].version}
    assert now.task.answers[Key("sling", "left")].wll_t == 3.0


def test_a_number_typed_or_scanned_picks_whatever_the_size_of_its_letters(begun: tuple[Shop, str]) -> None:
    shop, task = begun
    shop.post(SLING.format(task), {"tag": " r-21 "})

    assert running(shop.world, task).items[("leg", "1-left", "sling")].id == "R-21"


@pytest.mark.parametrize("typed", ["r21", "R 21", "r–21"])
def test_a_number_is_found_without_its_stroke(begun: tuple[Shop, str], typed: str) -> None:
    shop, task = begun
    shop.post(SLING.format(task), {"tag": typed})

    assert running(shop.world, task).items[("leg", "1-left", "sling")].id == "R-21"


def test_what_hangs_in_the_other_leg_is_said_to_hang_there(begun: tuple[Shop, str]) -> None:
    shop, task = begun
    shop.post(SLING.format(task), {"pick": "gear/R-21"})
    given = shop.post(f"/tasks/{task}/kit/leg.2-right.sling", {"tag": "R-21"})

    assert (given.status, given.keep) == (422, ())
    assert "R-21 is picked already: left sling. Pick another one." in given.html


def test_a_length_with_a_comma_stands_on_the_tag(begun: tuple[Shop, str]) -> None:
    shop, task = begun
    added = {"kind": "flat_sling", "id": "F-77", "wll_t": "2", "length_m": "1,5", "marked": "yes", "origin": "bought"}
    shop.post(f"/gear/add?kinds=flat_sling&task={task}&slot=leg.1-left.sling", added)

    assert "Flat sling, 1.50 m" in shop.get(SLING.format(task)).html.partition("F-77")[2]


def test_a_number_that_is_not_there_is_said_at_the_field(begun: tuple[Shop, str]) -> None:
    shop, task = begun
    given = shop.post(SLING.format(task), {"tag": "R-99"})

    assert (given.status, given.keep) == (422, ())
    assert "Nothing for this place is called R-99 in the register." in given.html and 'value="R-99"' in given.html


def test_overdue_gear_is_shown_with_its_reason_and_cannot_be_picked(begun: tuple[Shop, str]) -> None:
    shop, task = begun
    shown = shop.get(SLING.format(task)).html
    given = shop.post(SLING.format(task), {"pick": "gear/F-15"})

    assert "Examination overdue" in shown and 'value="gear/F-15"' not in shown
    assert (given.status, given.keep) == (422, ())
    assert "F-15: examination overdue. Pick another one." in given.html


def test_gear_taken_out_of_use_meanwhile_cannot_be_picked_any_more(begun: tuple[Shop, str]) -> None:
    shop, task = begun
    given = shop.post("/gear/R-21/quarantine", {"reason": "cover cut", "back": SLING.format(task)})

    assert given.location == SLING.format(task)
    assert shop.post(SLING.format(task), {"pick": "gear/R-21"}).status == 422
    assert "cover cut" in shop.get(SLING.format(task)).html


def test_gear_in_quarantine_needs_a_reason(begun: tuple[Shop, str]) -> None:
    given = begun[0].post("/gear/R-21/quarantine", {"reason": " "})

    assert (given.status, given.keep) == (422, ())


def test_a_slot_is_done_once_its_gear_was_felt(begun: tuple[Shop, str]) -> None:
    shop, task = begun
    shop.post(f"/tasks/{task}/kit/hoist", {"pick": "machine/H-1"})
    before = running(shop.world, task)
    shop.post(f"/tasks/{task}/kit/hoist", {"hoist_felt": "yes", "hoist_felt.seen": "{}"})
    after = running(shop.world, task)

    assert [place.path for place in (before.resume, after.resume) if place] == [("signaller",), ("signaller",)]
    assert after.value(("hoist_felt",)) == {"type": "tick", "text": "yes"}
    assert "hoist" in shop.get(f"/tasks/{task}/kit").html.lower()


def test_other_gear_in_the_slot_was_not_felt_yet(begun: tuple[Shop, str]) -> None:
    shop, task = begun
    for form in ({"pick": "machine/H-1"}, {"hoist_felt": "yes", "hoist_felt.seen": "{}"}, {"pick": "machine/H-2"}):
        shop.post(f"/tasks/{task}/kit/hoist", form)

    assert ("hoist_felt",) not in running(shop.world, task).folded.values


def test_no_load_cell_is_an_answer_and_a_sling_cannot_be_left_out(begun: tuple[Shop, str]) -> None:
    shop, task = begun
    shop.post(f"/tasks/{task}/kit/load_cell", {"not_used": "yes"})
    shop.post(SLING.format(task), {"not_used": "yes"})
    now = running(shop.world, task)

    assert isinstance(now.task.answers[Key("load_cell")], NotUsed)
    assert now.faults[("leg", "1-left", "sling")] == "It cannot be left out: sling."


def test_one_item_does_not_stand_in_two_slots(begun: tuple[Shop, str]) -> None:
    shop, task = begun
    shop.post(SLING.format(task), {"pick": "gear/R-21"})

    assert shop.post(f"/tasks/{task}/kit/leg.2-right.sling", {"pick": "gear/R-21"}).status == 422


def test_gear_added_on_the_spot_is_incoming_and_stands_in_its_slot(begun: tuple[Shop, str]) -> None:
    shop, task = begun
    add = f"/gear/add?kinds=round_sling.flat_sling&task={task}&slot=leg.1-left.sling"
    label = {"kind": "round_sling", "id": "RS-9", "wll_t": "2", "length_m": "1,25", "marked": "yes", "origin": "bought"}
    assert shop.post(add, {**label, "length_m": "1,250"}).status == 422
    assert shop.post(add, {**label, "id": "R-21"}).status == 422
    given = shop.post(add, {**label, "due": "2027-02-14"})

    assert given.location == f"/tasks/{task}/kit/leg.1-left.sling"
    assert shop.world.items("gear")["RS-9"].state.custody == "incoming"
    assert shop.world.items("gear")["RS-9"].state.due == "", "what a tag says is no examination"
    assert [entry.value["text"] for entry in given.keep if entry.path == ("due_on_tag",)] == ["2027-02-14"]
    assert running(shop.world, task).task.answers[Key("sling", "left")].length_m == 1.25
    assert running(shop.world, task).evaluation.check("sling_usable[left]").verdict.words in ("over limit", "waiting")


def test_a_pick_keeps_the_figures_of_its_version(begun: tuple[Shop, str]) -> None:
    shop, task = begun
    shop.post(SLING.format(task), {"pick": "gear/R-21"})
    from checklist_app.checklists.begun import add_item
    from checklist_app.checklists.made import Made

    made = Made(shop.request("POST", "/", counter=80_000))
    old = shop.world.items("gear")["R-21"]
    add_item(made, "gear", "R-21", "round_sling/1", {**old.facts, "wll_t": "1"}, "2026-11-25")
    version = made.keep[0]
    from dataclasses import replace

    replaced = replace(shop.request("POST", "/", counter=80_010))
    again = Made(replaced)
    again.say(("gear", "R-21"), ("version",), version.value, [old.version or ""])
    world = shop.world.with_entries(again.keep, made.parts)

    assert world.items("gear")["R-21"].facts["wll_t"] == "1"
    assert running(world, task).task.answers[Key("sling", "left")].wll_t == 3.0


def test_after_a_pick_the_rest_of_the_store_is_folded_and_the_tick_is_next(begun: tuple[Shop, str]) -> None:
    shop, task = begun
    before = shop.get(SLING.format(task)).html
    shop.post(SLING.format(task), {"pick": "gear/R-21"})
    after = shop.get(SLING.format(task)).html
    folded = after.partition("<summary class=\"way\">Take another one, or none</summary>")[2]

    assert "Take another one" not in before and "autofocus" not in before
    assert 'name="tag"' in folded and "autofocus>" in after
    shop.post(SLING.format(task), {"leg/1-left/sling_felt": "yes"})
    assert "autofocus" not in shop.get(SLING.format(task)).html


def test_a_number_refused_after_a_pick_is_said_where_it_can_be_seen(begun: tuple[Shop, str]) -> None:
    shop, task = begun
    shop.post(SLING.format(task), {"pick": "gear/R-21"})

    assert '<details class="ways" open>' in shop.post(SLING.format(task), {"tag": "nothing-1"}).html
