"""The last lashing of a load, in this build state on this pallet and vehicle: offered again, item by item."""
import pytest

from checklist_app.checklists.last_rig import LASHED_ANEW, remember
from checklist_app.checklists.made import Made
from checklist_app.checklists.running import running
from checklist_app.operations.task import Key
from tests.checklists.lashed import GEAR, VEHICLE, begin, lash, pick, rows
from tests.checklists.pages_checked import faults
from tests.checklists.shop import Shop

AGAIN = "/tasks/{}/lashings?step=again"


def lashed_before(shop: Shop, closing: str = "completed") -> str:
    """A lashing that ended: what its closing says."""
    task = lash(shop)
    made = Made(shop.request("POST", "/", counter=40_000))
    remember(made, running(shop.world, task), shop.world, closing)
    shop.entries.extend(made.keep)
    shop.parts.update(made.parts)
    shop.sealed[task] = "0" * 64
    shop._counter += 50_000
    return task


def begun_on(shop: Shop, vehicle: str = GEAR["vehicle"], pallet: str = GEAR["pallet"]) -> str:
    task = begin(shop, VEHICLE)
    pick(shop, task, "vehicle", vehicle)
    pick(shop, task, "pallet", pallet)
    return task


@pytest.fixture(scope="module")
def before() -> tuple[Shop, str]:
    shop = Shop()
    return shop, lashed_before(shop)


@pytest.fixture
def again(before: tuple[Shop, str]) -> tuple[Shop, str, str]:
    """A second one on the same pallet and vehicle, whose rigger said: as last time."""
    shop, last = before
    task = begun_on(shop)
    shop.post(AGAIN.format(task), {"again": last, "different": "It rained."})
    return shop, task, last


def test_a_load_lashed_for_the_first_time_has_no_last_time() -> None:
    shop = Shop()
    page = shop.get(f"/tasks/{begun_on(shop)}/lashings").html

    assert "As last time" not in page and "Put them down again" not in page and not faults(page)


def test_the_last_one_on_this_pallet_and_vehicle_is_offered_with_its_day(before: tuple[Shop, str]) -> None:
    shop, last = before
    task = begun_on(shop)
    page = shop.get(AGAIN.format(task)).html

    assert "As last time: <b>still open</b>" in shop.get(f"/tasks/{task}/lashings").html
    assert "Yes, as on 25 November 2026" in page and "4 lashings" in page and f'value="{last}"' in page
    assert not faults(page)


@pytest.mark.parametrize("other", [{"vehicle": "machine/V-1"}, {"pallet": "gear/P-1"}])
def test_on_another_pallet_or_vehicle_there_is_no_last_time(before: tuple[Shop, str], other: dict[str, str]) -> None:
    shop, _ = before
    assert "Yes, as on" not in shop.get(f"/tasks/{begun_on(shop, **other)}/lashings?step=again").html


def test_a_lift_of_the_load_is_not_offered_its_lashing(before: tuple[Shop, str]) -> None:
    shop, _ = before
    task = shop.begin("GS-60", "drained")
    assert "Rig it as last time?" not in shop.get(f"/tasks/{task}/what?step=lift").html


def test_one_that_did_not_leave_lashed_as_signed_is_not_offered() -> None:
    shop = Shop()
    lashed_before(shop, "abandoned")
    assert "Yes, as on" not in shop.get(AGAIN.format(begun_on(shop))).html


def test_one_tap_puts_the_rows_down_and_each_is_still_picked_felt_and_rated(again: tuple[Shop, str, str]) -> None:
    shop, task, last = again
    page = shop.get(f"/tasks/{task}/lashings").html
    assert "As on 25 November 2026: 4 lashings" in page and not faults(page)
    shop.post(f"/tasks/{task}/lashings", {"act": "again"})
    now, then = running(shop.world, task), running(shop.world, last)

    assert rows(shop, task) == rows(shop, last)
    assert now.task.answers[Key("at_x_m", "3")] == then.task.answers[Key("at_x_m", "3")]
    assert not [key for key in now.task.answers if key.name in ("lashing_item", "anchor_dan", "held_dan")]
    assert "Put them down again" not in shop.get(f"/tasks/{task}/lashings").html
    assert shop.post(f"/tasks/{task}/lashings", {"act": "again"}).status == 409


def test_item_ring_and_eye_of_last_time_are_offered_one_tap_each(again: tuple[Shop, str, str]) -> None:
    shop, task, _ = again
    shop.post(f"/tasks/{task}/lashings", {"act": "again"})
    row = rows(shop, task)[1]
    slot = shop.get(f"/tasks/{task}/kit/lashing.{row}.lashing_item").html
    pull = shop.get(f"/tasks/{task}/lashings?step=pull.{row}").html

    assert "take L-02 again" in slot and not faults(slot)
    assert "Last time, 25 November 2026" in pull and "2000" in pull and "As on lashing" not in pull and not faults(pull)
    shop.post("/gear/L-02/quarantine", {"reason": "edge cut"})
    assert "It cannot be taken again." in shop.get(f"/tasks/{task}/kit/lashing.{row}.lashing_item").html


def test_what_is_different_today_is_asked_and_anew_offers_nothing(before: tuple[Shop, str]) -> None:
    shop, last = before
    task = begun_on(shop)
    shop.post(AGAIN.format(task), {"again": last})
    now = running(shop.world, task)
    assert any(place.path == ("different",) and now.is_open(place) for place in now.places("lashings"))

    shop.post(AGAIN.format(task), {"again": LASHED_ANEW})
    page = shop.get(f"/tasks/{task}/lashings").html
    assert "Put them down again" not in page and "What is different today?" not in shop.get(AGAIN.format(task)).html
