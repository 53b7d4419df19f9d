"""What the pages of a lashing say beside its numbers: what is open, what is offered, what was typed by mistake."""
import re

import pytest

from checklist_app.checklists.running import running
from tests.checklists import lashed
from tests.checklists.lashed import add, begin, first_lashing, lash, pick, rows
from tests.checklists.pages_checked import faults
from tests.checklists.shop import Shop


@pytest.fixture
def shop() -> Shop:
    return Shop()


@pytest.fixture
def task(shop: Shop) -> str:
    return begin(shop)


def card(shop: Shop, task: str, number: int) -> str:
    html = shop.get(f"/tasks/{task}/lashings").html
    return html.partition(f'aria-label="Lashing {number}"')[2].partition("</section>")[0]


def tap(shop: Shop, task: str, **form: str) -> str:
    return str(shop.post(f"/tasks/{task}/lashings", form).location)


def test_a_copy_names_its_missing_item_first_and_answer_leads_to_it(shop: Shop, task: str) -> None:
    first = first_lashing(shop, task)
    tap(shop, task, act="copy", row=f"lashing/{first}")
    second = rows(shop, task)[-1]

    assert "Still open: which lashing, anchor and tension." in card(shop, task, 2)
    assert f'href="/tasks/{task}/kit/lashing.{second}.lashing_item"' in card(shop, task, 2)
    shop.post(f"/tasks/{task}/kit/lashing.{second}.lashing_item", {"pick": "gear/L-02"})
    assert "Still open: lashing looked at and felt, anchor and tension." in card(shop, task, 2)
    pick(shop, task, f"lashing.{second}.lashing_item", "gear/L-02")
    lashed.confirm(shop, task, second)
    assert "Still open" not in card(shop, task, 2)


def test_a_new_lashing_has_its_item_and_its_questions_open(shop: Shop, task: str) -> None:
    add(shop, task)
    assert "Still open: which lashing, how it is put on, its ends, anchor and tension." in card(shop, task, 1)


def test_what_another_task_holds_is_not_offered_as_the_next_one_like_it(shop: Shop, task: str) -> None:
    other = begin(shop)
    row = add(shop, other)
    pick(shop, other, f"lashing.{row}.lashing_item", "gear/L-02")
    first = first_lashing(shop, task)
    shown = shop.get(tap(shop, task, act="copy", row=f"lashing/{first}")).html

    assert "Take L-03: looked at and felt" in shown and "Take L-02" not in shown


def test_a_quarantined_sling_typed_for_a_lashing_is_called_what_it_is(shop: Shop, task: str) -> None:
    shop.post(f"/gear/{QUARANTINED}/quarantine", {"reason": "cover cut"})
    row = add(shop, task)
    given = shop.post(f"/tasks/{task}/kit/lashing.{row}.lashing_item", {"tag": QUARANTINED})
    text = re.sub(r"\s+", " ", given.html)

    assert given.status == 422 and f'value="{QUARANTINED}"' in given.html
    assert f"{QUARANTINED}: round sling. Here goes: lashing strap" in text
    assert f"And {QUARANTINED} may not be used at all: in quarantine." in text


def test_sound_gear_of_another_kind_is_only_told_to_be_another_kind(shop: Shop, task: str) -> None:
    row = add(shop, task)
    given = shop.post(f"/tasks/{task}/kit/lashing.{row}.lashing_item", {"tag": SOUND})

    assert f"{SOUND}: round sling. Here goes" in given.html and "may not be used" not in given.html


QUARANTINED, SOUND = "R-25", "R-24"


def test_the_other_end_is_not_done_before_anybody_has_said_anything_of_it(shop: Shop) -> None:
    task = lash(shop)
    html = re.sub(r"<[^>]+>", " ", shop.get(f"/tasks/{task}").html)

    assert re.search(r"At the other end\s+Nobody has answered here yet\.", html)
    assert not re.search(r"At the other end\s+Done\.", html)
    shop.post(f"/tasks/{task}/other-end?step=unloaded", {"arrived": "as it left"})
    assert re.search(r"At the other end\s+Done\.", re.sub(r"<[^>]+>", " ", shop.get(f"/tasks/{task}").html))


def test_what_would_make_it_hold_says_what_no_lashing_mends(shop: Shop) -> None:
    """A load on its feet with 1.18 t on 1.0 t of payload that is left: it holds, and does not leave."""
    task = lash(shop)
    assert "No lashing mends that." not in shop.get(f"/tasks/{task}/change").html
    shop.post(f"/tasks/{task}/numbers?step=deck", {"other_kg": "4500", "other_kg.how": "weighed",
                                                   "other_behind_headboard_m": "3",
                                                   "other_behind_headboard_m.how": "tape"})
    now, html = running(shop.world, task), shop.get(f"/tasks/{task}/change").html

    assert now.evaluation.governs is not None and now.evaluation.governs.quantity == "payload"
    assert not faults(html)
    assert "Besides: <b>payload: 112 %, over limit</b>. No lashing mends that." in re.sub(r"\s+", " ", html)
    assert "Nothing has to be changed" not in html
