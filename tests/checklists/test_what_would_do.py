"""Pages beside the numbers of a lashing task: every rule set, and what would make it hold."""
import re

import pytest

from checklist_app.checklists.changing import in_store, take
from checklist_app.checklists.made import Made
from checklist_app.checklists.running import running
from checklist_app.mechanics.lashing.rule_sets import RULES, RuleSet
from checklist_app.operations.check import Verdict
from checklist_app.operations.lashing.change import Change, Effort
from checklist_app.operations.task import Key
from tests.checklists import lashed
from tests.checklists.pages_checked import faults
from tests.checklists.shop import Shop


def lashed_with(*off: int, surface: str = "swept clean, dry") -> tuple[Shop, str]:
    """On its skid, some of the four lashings taken off again."""
    shop = Shop()
    task = lashed.lash(shop, lashed.PALLET)
    shop.post(f"/tasks/{task}/friction?step=under-load", {"load_surface": surface})
    for number, row in enumerate(lashed.rows(shop, task), 1):
        if number in off:
            shop.post(f"/tasks/{task}/lashings", {"act": "remove", "row": f"lashing/{row}"})
    return shop, task


def test_every_rule_set_stands_on_one_screen_with_what_was_read_of_it() -> None:
    shop, task = lashed_with()
    page = shop.get(f"/tasks/{task}/rules").html

    assert faults(page) == [] and page.count("(binds)") == 1
    for rule_set in RuleSet:
        assert rule_set.value in page and RULES[rule_set].edition_read[1:40] in page
    assert f'href="/tasks/{task}/rules"' in shop.get(f"/tasks/{task}/numbers").html


def test_where_nothing_is_lashed_there_is_nothing_beside() -> None:
    shop = Shop()
    lift = shop.begin()

    assert shop.get(f"/tasks/{lift}/rules").status == shop.get(f"/tasks/{lift}/change").status == 404
    assert f"/tasks/{lift}/change" not in shop.get(f"/tasks/{lift}/numbers").html


def test_what_holds_needs_no_change() -> None:
    shop, task = lashed_with()
    page = shop.get(f"/tasks/{task}/change").html

    assert running(shop.world, task).evaluation.check("sliding[forwards]").verdict is not Verdict.OVER
    assert "Nothing has to be changed" in page and "Take it" not in page and faults(page) == []


def verdicts(shop: Shop, task: str) -> set[Verdict]:
    return {check.verdict for check in running(shop.world, task).evaluation.checks
            if check.quantity in ("sliding", "tipping")}


@pytest.fixture(scope="module")
def sliding() -> tuple[Shop, str]:
    return lashed_with(3, 4, surface="oil or grease")


def test_what_slides_is_told_what_would_do_with_its_numbers(sliding: tuple[Shop, str]) -> None:
    shop, task = sliding
    before = running(shop.world, task)
    given = shop.get(f"/tasks/{task}/change")

    assert given.status == 200 and given.keep == () and faults(given.html) == []
    assert "over limit" in given.html and re.search(r"Then: [a-z ,]+: \d+", given.html)
    assert running(shop.world, task).task == before.task


def test_taking_one_writes_rows_whose_items_are_still_to_be_picked() -> None:
    shop, task = lashed_with(3, 4, surface="oil or grease")
    page = shop.get(f"/tasks/{task}/change").html
    more = next(words for words in re.findall(r'name="take" value="([^"]+)"', page) if "mirror image" in words)
    given = shop.post(f"/tasks/{task}/change", {"take": more})
    now = running(shop.world, task)

    assert given.location == f"/tasks/{task}/lashings"
    assert len(lashed.rows(shop, task)) > 2
    added = now.evaluation.task.rows["lashing"][2:]
    for row in added:
        assert now.evaluation.check(f"lashing_usable[{row}]").verdict is Verdict.WAITING
        assert not {Key(name, row) for name in ("anchor_dan", "held_dan")} & now.task.answers.keys()
    again = shop.post(f"/tasks/{task}/change", {"take": more})
    assert again.status in (303, 409)


def test_a_chock_taken_waits_for_what_it_really_holds_and_then_holds() -> None:
    shop, task = lashed_with(3, 4, surface="oil or grease")
    page = shop.get(f"/tasks/{task}/change").html
    chock = next(words for words in re.findall(r'name="take" value="([^"]+)"', page) if "chock" in words)
    shop.post(f"/tasks/{task}/change", {"take": chock})

    blocks = lashed.rows(shop, task, "block")
    assert blocks and all(("block", row, "block_dan") not in running(shop.world, task).folded.values for row in blocks)
    assert verdicts(shop, task) == {Verdict.WAITING}, "what was needed is not what it holds"
    for row in blocks:
        shop.post(f"/tasks/{task}/lashings?step=block.{row}", {f"block/{row}/block_dan": "4000"})
    assert verdicts(shop, task) <= {Verdict.WITHIN, Verdict.CLOSE}


def test_a_lashing_moved_up_is_asked_anew_what_it_hangs_on() -> None:
    shop, task = lashed_with()
    first = lashed.rows(shop, task)[0]
    path = ("lashing", first, "held_dan")
    before = running(shop.world, task)
    label = before.read.labels[first]
    moved = Change(Effort.MOVE, "higher", {Key("at_z_m", label): 1.05})
    made = Made(shop.request("POST", f"/tasks/{task}/change"))
    take(made, shop.world, before, moved, "d-1")
    after = running(shop.world.with_entries(tuple(made.keep), made.parts), task)

    assert path in before.folded.values and path not in after.folded.values
    assert after.evaluation.check(f"lashing_strength[{label}]").verdict is Verdict.WAITING


def test_what_nobody_offered_is_not_taken(sliding: tuple[Shop, str]) -> None:
    shop, task = sliding
    given = shop.post(f"/tasks/{task}/change", {"take": "A magnet"})

    assert given.status == 409 and given.keep == () and "answered in between" in given.html


def test_what_holds_another_load_under_way_is_not_in_the_store() -> None:
    shop, task = lashed_with(3, 4, surface="oil or grease")
    before = {gear.id for gear in in_store(shop.world, running(shop.world, task)).lashings}
    other = lashed.begin(shop, lashed.PALLET)
    row = lashed.add(shop, other)
    free = sorted(before - {"L-01", "L-02", "L-03", "L-04"})[0]
    lashed.pick(shop, other, f"lashing.{row}.lashing_item", f"gear/{free}")

    after = {gear.id for gear in in_store(shop.world, running(shop.world, task)).lashings}
    assert before - after == {free}
    assert free in {gear.id for gear in in_store(shop.world, running(shop.world, other)).lashings}
