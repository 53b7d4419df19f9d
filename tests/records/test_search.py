"""Finding records by day, load, gear, person, verdict and closing. The catalogue can be made again at any time."""

import time
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from checklist_app.records import cards, chain, figures
from checklist_app.records.card_table import Card
from checklist_app.records.seal import seal
from checklist_app.records.search import Wanted, search
from checklist_app.records.store import Store
from tests.records.yard import DAY, Lift, whole_lift, yard

MANY, LONGEST_S = 5000, 0.5


@pytest.fixture(scope="module")
def store(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Store]:
    made = yard(tmp_path_factory.mktemp("search") / "data")
    seal(made, whole_lift(made).id, f"{DAY}T12:00:00Z")
    lift = Lift(made, "t-d2-1", "d2").plan(sling="R-21 F-11")
    lift.words("stop", "stop", "Somebody was in the zone.")
    lift.close("abandoned", "The wind rose at the quay.")
    seal(made, lift.id, f"{DAY}T13:00:00Z")
    yield made
    made.close()


def numbers(store: Store, **asked: Any) -> list[int]:
    return [card["number"] for card in search(store, Wanted(**asked)).cards]


@pytest.mark.parametrize(("asked", "found"), [
    ({}, [2, 1]),
    ({"text": "PUMP 400"}, [2, 1]), ({"text": "pump quay"}, [2]), ({"text": "0001"}, [1]), ({"text": "generator"}, []),
    ({"gear": "R-21"}, [2, 1]), ({"gear": "r-22"}, [1]), ({"gear": "R-2"}, []), ({"gear": "F-11"}, [2]),
    ({"person": "Agata Rusk"}, [1]), ({"person": "Milo Harke"}, [2, 1]), ({"person": "Milo"}, []),
    ({"since": DAY, "until": DAY}, [2, 1]), ({"since": "2026-11-26"}, []), ({"until": "2026-11-24"}, []),
    ({"closing": "abandoned"}, [2]), ({"closing": "completed"}, [1]),
    ({"verdict": "over limit"}, []), ({"stops": True}, [2]), ({"voids": True}, []),
    ({"above": 40}, [2, 1]), ({"above": 101}, []),
    ({"text": "100 %"}, []), ({"text": "_____"}, []), ({"gear": "' OR 1=1 --"}, []),
])
def test_each_question_finds_just_the_records_that_fit(store: Store, asked: dict[str, Any], found: list[int]) -> None:
    assert numbers(store, **asked) == found


def test_a_record_is_found_by_its_verdict_and_shows_its_governing_check(store: Store) -> None:
    (card,) = search(store, Wanted(closing="completed")).cards
    record = chain.everything(store)[0].record
    assert card["number"] in numbers(store, verdict=record["verdict"])
    assert (card["verdict"], card["signed_by"]) == (record["verdict"], "Agata Rusk")
    check = figures.governing(record)
    assert check is not None and card["governs"] == figures.title(check) and card["used"] == figures.used(check)[:60]


def test_the_catalogue_made_again_says_the_same(store: Store) -> None:
    before = list(Card.select().order_by(Card.number).dicts().execute(store.database))
    cards.make_again(store)
    assert list(Card.select().order_by(Card.number).dicts().execute(store.database)) == before


def test_five_thousand_records_are_searched_while_somebody_waits(tmp_path: Path, store: Store) -> None:
    card = next(iter(Card.select().where(Card.number == 1).dicts().execute(store.database)))
    other = Store(tmp_path / "many")
    many = [{**card, "number": number, "digest": f"{number:064x}",
             "said": card["said"].replace("r-21|", f"r-{number}|")} for number in range(1, MANY + 1)]
    for start in range(0, MANY, 200):
        Card.insert_many(many[start:start + 200]).execute(other.database)
    began = time.process_time()
    found = search(other, Wanted(text="pump agata", gear="R-4711", since="2026-01-01"))
    everything = search(other, Wanted())
    took_s = time.process_time() - began
    other.close()
    assert [one["number"] for one in found.cards] == [4711]
    assert (everything.count, len(everything.cards)) == (MANY, 50)
    assert took_s < LONGEST_S
