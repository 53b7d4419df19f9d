"""Gear kept under one tag: picked at once, each item checked by itself, stopped by one that is out of use."""
from typing import Any

import pytest

from checklist_app.checklists.begun import add_item
from checklist_app.checklists.made import Made
from checklist_app.checklists.running import running
from checklist_app.operations.fields import check
from checklist_app.operations.kinds import KINDS
from checklist_app.operations.task import Key
from tests.checklists.pages_checked import faults
from tests.checklists.shop import Shop

PAIR = (("R-21", "sling"), ("B-31", "fitting at the bottom"), ("R-22", "sling"), ("B-32", "fitting at the bottom"))
LEFT_SLING = "/tasks/{}/kit/leg.1-left.sling"


def with_set(items: tuple[tuple[str, str], ...] = PAIR, rig: str = "two legs on one hook") -> tuple[Shop, str]:
    shop = Shop()
    made = Made(shop.request("POST", "/", counter=500))
    facts: dict[str, Any] = {"items": [{"item": item, "slot": slot} for item, slot in items], "name": "pair of 3 t"}
    add_item(made, "gear", "SET-1", KINDS["gear_set"].schema, facts, "2026-01-01")
    shop.entries.extend(made.keep)
    shop.parts.update(made.parts)
    return shop, shop.begin(rig=rig)


def hung(shop: Shop, task: str) -> dict[str, str]:
    return {"/".join(path[1:]): item.id for path, item in running(shop.world, task).items.items() if path[0] == "leg"}


@pytest.mark.parametrize("form", [{"tag": "set1"}, {"pick": "gear/SET-1"}])
def test_a_set_hangs_all_its_items_at_once_and_each_is_still_to_be_felt(form: dict[str, str]) -> None:
    shop, task = with_set()
    given = shop.post(LEFT_SLING.format(task), form)
    now = running(shop.world, task)

    assert given.location == f"/tasks/{task}/kit"
    assert hung(shop, task) == {"1-left/sling": "R-21", "1-left/bottom_fitting": "B-31", "2-right/sling": "R-22",
                                "2-right/bottom_fitting": "B-32"}
    assert not [path for path in now.folded.values if path[-1].endswith("_felt")]
    assert now.evaluation.check("sling_usable[left]").verdict.words == "within limit"
    assert now.evaluation.check("sling_usable[right]").verdict.words == "within limit"


def test_each_item_of_a_set_is_checked_by_itself() -> None:
    shop, task = with_set()
    shop.post(LEFT_SLING.format(task), {"pick": "gear/SET-1"})
    shop.post("/gear/R-22/quarantine", {"reason": "cover cut"})
    evaluation = running(shop.world, task).evaluation

    assert evaluation.check("sling_usable[left]").verdict.words == "within limit"
    assert evaluation.check("sling_usable[right]").verdict.words == "over limit"


def test_the_set_stands_in_the_slots_of_its_items_and_nowhere_else() -> None:
    shop, task = with_set()
    page = shop.get(LEFT_SLING.format(task)).html

    assert "Gear set: R-21, B-31, R-22, B-32" in page and 'value="gear/SET-1"' in page and faults(page) == []
    assert "SET-1" not in shop.get(f"/tasks/{task}/kit/hoist").html


def test_a_member_in_quarantine_stops_the_set_with_its_reason() -> None:
    shop, task = with_set()
    shop.post("/gear/B-32/quarantine", {"reason": "pin bent"})
    page = shop.get(LEFT_SLING.format(task)).html
    given = shop.post(LEFT_SLING.format(task), {"tag": "SET-1"})

    assert 'value="gear/SET-1"' not in page and "B-32: in quarantine, pin bent" in page
    assert (given.status, given.keep) == (422, ()) and hung(shop, task) == {}
    assert "SET-1 stops here. B-32: in quarantine, pin bent." in given.html


@pytest.mark.parametrize(("items", "words"), [
    ((("R-99", "sling"),), "R-99 is not in the register."),
    ((("B-31", "sling"),), "B-31 is no sling."),
    ((("F-15", "sling"),), "F-15: examination overdue."),
    ((("R-21", "sling"), ("R-22", "sling"), ("F-11", "sling")), "F-11 is one too many: this lift has 2 × sling."),
])
def test_what_does_not_fit_stops_the_set_and_says_why(items: tuple[tuple[str, str], ...], words: str) -> None:
    shop, task = with_set(items)
    given = shop.post(LEFT_SLING.format(task), {"tag": "SET-1"})

    assert (given.status, given.keep) == (422, ()) and words in given.html


def test_an_item_that_hangs_in_another_slot_stops_the_set() -> None:
    shop, task = with_set((("R-21", "sling"),))
    shop.post(f"/tasks/{task}/kit/leg.2-right.sling", {"pick": "gear/R-21"})

    assert "R-21 hangs in this lift already." in shop.post(LEFT_SLING.format(task), {"tag": "SET-1"}).html


def test_without_one_hook_there_is_no_slot_for_what_gathers_the_legs() -> None:
    shop, task = with_set((("B-31", "fitting on the hook"),), rig="two hooks, a leg on each")

    assert "There is no fitting on the hook in this lift for B-31." in shop.post(
        LEFT_SLING.format(task), {"tag": "SET-1"}).html


def test_a_sling_of_two_legs_is_picked_into_both_and_no_further() -> None:
    shop = Shop()
    made = Made(shop.request("POST", "/", counter=500))
    facts = {"wll_t": "2", "length_m": "1.5", "legs": "2", "grade": "grade 8", "size_mm": "8", "mass_kg": "9",
             "marked": "yes", "origin": "bought"}
    add_item(made, "gear", "CH-2", KINDS["chain_sling"].schema, facts, "2026-01-01")
    shop.entries.extend(made.keep)
    shop.parts.update(made.parts)
    task = shop.begin(rig="three legs on one hook")
    assert "Chain sling of 2 legs, 1.50 m" in shop.get(LEFT_SLING.format(task)).html
    shop.post(LEFT_SLING.format(task), {"pick": "gear/CH-2"})

    assert hung(shop, task) == {"1-left/sling": "CH-2", "2-right/sling": "CH-2"}
    assert not running(shop.world, task).faults
    third = f"/tasks/{task}/kit/leg.3-middle.sling"
    assert shop.post(third, {"pick": "gear/CH-2"}).status == 422
    item = running(shop.world, task).items[("leg", "1-left", "sling")]
    from checklist_app.checklists import values

    forced = Made(shop.request("POST", "/", counter=9_000))
    forced.say(("task", task), ("leg", "3-middle", "sling"), values.pick(item.subject, item.version or ""))
    shop.entries.extend(forced.keep)
    now = running(shop.world, task)
    assert now.faults[("leg", "3-middle", "sling")] == "CH-2 stands in 3 places of the kit. It has 2 legs."
    assert Key("sling", "middle") in now.task.answers


@pytest.mark.parametrize(("rows", "name"), [
    ([], "items"), ([{"item": "R-21", "slot": "pocket"}], "items/0/slot"), ([{"slot": "sling"}], "items/0/item"),
    ([{"item": "R-21", "slot": "sling"}, {"item": "r-21", "slot": "sling"}], "items/1/item"),
])
def test_a_set_that_is_none_is_refused_at_its_field(rows: list[dict[str, str]], name: str) -> None:
    assert name in check(KINDS["gear_set"], {"items": rows})
