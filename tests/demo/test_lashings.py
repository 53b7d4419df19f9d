"""The lashings of the yard: one on its skid, one that left with its driver's hand, one under way that slides."""

import json
from typing import Any

import pytest
from pypdf import PdfReader

from checklist_app.checklists.running import running
from checklist_app.demo.data import table
from checklist_app.operations.check import Verdict, governs
from checklist_app.operations.lashing.advice import advice
from checklist_app.operations.lashing.change import Store as InStore
from checklist_app.operations.lashing.side_by_side import side_by_side
from checklist_app.records.search import Wanted, search
from checklist_app.records.store import Store
from checklist_app.records.world import DatabaseWorld
from tests.demo.test_lifts import today

PALLET, VEHICLE = "pallet_lashing", "vehicle_lashing"


def records(yard: Store) -> dict[str, dict[str, Any]]:
    """The sealed lashings by their operation."""
    told = (json.loads(path.read_text("utf-8")) for path in yard.records.glob("*.json"))
    return {one["operation"]: one for one in told if one["operation"] != "straight_lift"}


def paper(yard: Store, record: dict[str, Any]) -> str:
    (path,) = yard.records.glob(f"{record['number']:04d}-*.pdf")
    return " ".join("\n".join(page.extract_text() for page in PdfReader(path).pages).split())


@pytest.fixture
def sealed(yard: Store) -> dict[str, dict[str, Any]]:
    return records(yard)


def test_one_on_its_skid_and_one_on_the_lorry_are_sealed_within_limit(sealed: dict[str, dict[str, Any]]) -> None:
    assert {name: (one["verdict"], one["closing"]["text"]) for name, one in sealed.items()} == {
        PALLET: ("within limit", "completed"), VEHICLE: ("within limit", "completed")}


def test_the_driver_took_over_with_his_own_hand_and_stopped_on_the_road(sealed: dict[str, dict[str, Any]]) -> None:
    (driver,) = sealed[VEHICLE]["guests"]
    assert driver["capacity"] == "driver" and driver["stands"] and driver["hold"] == "hand_over"
    said = {one["path"][-1]: one["answer"] for one in sealed[VEHICLE]["answers"] if one["path"][0] == "retension"}
    assert said["retensioned"] == "after 10 to 50 km" and said["retension_km"] == "32 km"


def test_records_of_lashings_are_found_by_operation_by_load_and_by_driver(yard: Store) -> None:
    """Two of one load, each by its own words; both straps of the first pair did both jobs."""
    for text, count in (("lashing on a vehicle", 1), ("lashing to a pallet", 1), ("lashing gs-60", 2)):
        assert search(yard, Wanted(text=text)).count == count, text
    assert search(yard, Wanted(person="Jory Tamsin")).count == 1
    assert search(yard, Wanted(gear="L-03")).count == 2


def test_the_paper_of_the_lorry_tells_what_comes_off_last_and_what_was_drawn_again(
        yard: Store, sealed: dict[str, dict[str, Any]]) -> None:
    words = paper(yard, sealed[VEHICLE])
    assert "Record of a lashing" in words and "Comes off last at the other end: 1 and 4." in words
    assert "Tension looked at after 10 to 50 km: some had gone slack, drawn again" in words


def test_the_one_under_way_slides_and_one_change_holds_it(yard: Store) -> None:
    world = DatabaseWorld(yard, today())
    (now,) = [found for task in world.tasks() if (found := running(world, task)).procedure.operation == VEHICLE]
    decides = governs(now.evaluation.checks)
    assert now.evaluation.verdict is Verdict.OVER and decides is not None and decides.quantity == "sliding"
    assert [each.holds for each in advice(now.evaluation, InStore()).tried] == [True]
    assert sum(each.verdict is Verdict.OVER for each in side_by_side(now.table, now.task)) == 4


def test_every_answer_of_the_scripts_is_asked_for(sealed: dict[str, dict[str, Any]]) -> None:
    for script in table("lashings")["lashing"]:
        if script["operation"] in sealed and "closing" in script:
            asked = {one["path"][-1] for one in sealed[script["operation"]]["answers"] if one["answer"]}
            assert set(script["answers"]) <= asked, set(script["answers"]) - asked


def test_nobody_and_nothing_of_the_scripts_is_missing_from_the_yard() -> None:
    people = {one["id"] for one in table("people")["person"]}
    items = {one["id"] for name in ("gear", "machines", "loads", "places") for one in table(name)["item"]}
    for script in table("lashings")["lashing"]:
        assert {script["rigger"], *script.get("sign", ())} <= people
        picked = {one.partition("/")[2] for one in script["gear"].values()}
        assert {script["load"], script["place"], *script["lashings"], *picked} <= items
