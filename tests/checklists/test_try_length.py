"""A length of the slings is tried: its drawing, its verdict, and not one answer."""
import re

import pytest

from checklist_app.checklists.running import running
from checklist_app.checklists.tried import EVERY_LEG, advice, rows, with_length
from checklist_app.operations.evaluate import assess
from checklist_app.operations.task import Key
from tests.checklists.pages_checked import faults
from tests.checklists.shop import Shop


@pytest.fixture(scope="module")
def rigged() -> tuple[Shop, str]:
    shop = Shop()
    task = shop.begin()
    shop.rig(task)
    return shop, task


def test_the_numbers_offer_it_beside_the_drawing(rigged: tuple[Shop, str]) -> None:
    shop, task = rigged
    page = shop.get(f"/tasks/{task}/numbers").html

    assert f'<form class="prompt" method="get" action="/tasks/{task}/try">' in page and faults(page) == []


def test_a_tried_length_is_drawn_marked_and_not_answered(rigged: tuple[Shop, str]) -> None:
    shop, task = rigged
    before = running(shop.world, task)
    given = shop.get(f"/tasks/{task}/try?length=2.5")

    assert given.status == 200 and given.keep == () and not given.parts
    assert "Tried, not answered: 2.50 m" in given.html and "<svg viewBox" in given.html and faults(given.html) == []
    assert running(shop.world, task).task == before.task


def test_longer_slings_stand_steeper_and_take_room(rigged: tuple[Shop, str]) -> None:
    shop, task = rigged
    now = running(shop.world, task)
    short, long = (assess(now.table, with_length(now, length), with_spread=False) for length in (1.5, 2.5))

    assert long["leg_angle_deg[left]"] < short["leg_angle_deg[left]"]
    assert long["hook_height_m"] > short["hook_height_m"]
    assert long["leg_m[left]"] - short["leg_m[left]"] == pytest.approx(1.0)


def test_one_leg_alone_can_be_tried(rigged: tuple[Shop, str]) -> None:
    now = running(rigged[0].world, rigged[1])
    tried = assess(now.table, with_length(now, 2.0, "left"), with_spread=False)

    assert tried["leg_m[left]"] - now.evaluation["leg_m[left]"] == pytest.approx(0.5)
    assert tried["leg_m[right]"] == now.evaluation["leg_m[right]"]


def test_what_was_measured_on_the_old_slings_does_not_stand_for_the_tried_ones() -> None:
    shop = Shop()
    task = shop.begin()
    shop.rig(task)
    legs = [f"leg/{row}/leg_length_m" for row in ("1-left", "2-right")]
    shop.post(f"/tasks/{task}/numbers?step=legs", dict.fromkeys(legs, "1.55") | {f"{leg}.how": "tape" for leg in legs})
    now = running(shop.world, task)

    assert now.task.answers[Key("leg_length_m", "left")].value == 1.55
    assert assess(now.table, with_length(now, 3.0), with_spread=False)["leg_m[left]"] > 3.0


def test_every_usual_length_is_told_and_which_of_them_do(rigged: tuple[Shop, str]) -> None:
    shop, task = rigged
    now = running(shop.world, task)
    told = rows(shop.world, now, EVERY_LEG)

    verdicts = {row.length: row.verdict for row in told}
    assert told[0].verdict not in ("within limit", "close to limit"), "both eyes lie 0.9 m apart"
    assert verdicts["1.50"] in ("close to limit", "within limit")
    assert told[-1].verdict == "over limit", "there is no such room"
    assert re.search(r"stay within their limits (from|only)", advice(told))
    assert advice(told) in shop.get(f"/tasks/{task}/try").html


def test_where_no_length_does_it_is_said_so() -> None:
    low = Shop()
    other = low.begin()
    low.rig(other)
    low.post(f"/tasks/{other}/numbers?step=heights", {"highest_hook_m": "2.0", "highest_hook_m.how": "tape"})

    page = low.get(f"/tasks/{other}/try").html
    assert "No usual length brings angle, room and utilisation within their limits." in page


@pytest.mark.parametrize("typed", ["two", "1e9", "NaN", "-2", "0", "2,500", "99999", "inf", " 2 m m"])
def test_what_is_no_length_is_said_at_the_field_and_nothing_is_drawn(rigged: tuple[Shop, str], typed: str) -> None:
    shop, task = rigged
    given = shop.get(f"/tasks/{task}/try?length={typed}")

    assert given.status == 422 and 'class="fault"' in given.html and "Tried, not answered" not in given.html
    assert faults(given.html) == []


def test_a_leg_that_is_not_there_is_every_leg(rigged: tuple[Shop, str]) -> None:
    shop, task = rigged

    assert shop.get(f"/tasks/{task}/try?length=2&leg=fifth").status == 200


def test_without_slings_there_is_nothing_to_try() -> None:
    shop = Shop()
    task = shop.begin()
    given = shop.get(f"/tasks/{task}/try?length=2")

    assert "Pick the slings first" in given.html and "Tried, not answered" not in given.html
