"""A guest's signature in a record: beside the sign-offs, with its witness, and guarded like everything else."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from pypdf import PdfReader

from checklist_app.checklists import values
from checklist_app.checklists.answer import Person, Request
from checklist_app.checklists.entry import Entry, make
from checklist_app.checklists.guests import MEANING, signed
from checklist_app.checklists.holds import hold_states
from checklist_app.checklists.running import running
from checklist_app.records import chain, files
from checklist_app.records.database import Part
from checklist_app.records.record import Record
from checklist_app.records.seal import seal
from checklist_app.records.search import Wanted, search
from checklist_app.records.store import Store
from checklist_app.records.verify import verify
from tests.records.yard import DAY, DRAWN, Lift, yard

WITNESS = Person("dunja-fell", "Dunja Fell", "rigger", {"rigger": "2027-12-31"})


def guest(lift: Lift, name: str = "Jan Berg") -> Entry:
    now = running(lift.world, lift.id)
    lift.counter, lift.minute = lift.counter + 1, lift.minute + 1
    form = {"guest": (name,), "firm": ("Quay cranes",), "as": ("operator",), "ink": (DRAWN,), "seen": ("yes",)}
    request = Request("POST", "/", form=form, person=WITNESS, device=lift.device, counter=lift.counter, at=lift.at,
                      salt=f"salt-{lift.counter}")
    made = signed(request, now, hold_states(lift.world, now)[0])
    lift.store.keep(made.keep, made.parts, lift.device, lift.at)
    return made.keep[0]


@pytest.fixture
def store(tmp_path: Path) -> Iterator[Store]:
    made = yard(tmp_path / "data")
    lift = Lift(made).plan().stop_points()
    lift.sign("release", "agata-rusk")
    guest(lift)
    lift.trial()
    lift.sign("trial_accepted", "agata-rusk")
    lift.say("lift_height_m", values.number("0.29", "m", "tape"))
    guest(lift, "Ute Lind")
    lift.landed().close()
    seal(made, lift.id, f"{DAY}T13:00:00Z")
    yield made
    made.close()


@pytest.fixture
def record(store: Store) -> Record:
    return chain.everything(store)[0].record


def test_guests_stand_beside_the_sign_offs_with_witness_and_whether_it_changed_since(
        store: Store, record: Record) -> None:
    first, second = record["guests"]
    assert (first["name"], first["firm"], first["capacity"], first["witness"]) == (
        "Jan Berg", "Quay cranes", "operator", "Dunja Fell")
    assert (first["meaning"], first["stands"], second["name"], second["stands"]) == (MEANING, False, "Ute Lind", True)
    assert [one["name"] for one in record["signoffs"]] == ["Agata Rusk", "Agata Rusk"]
    assert any(event["words"] == "Jan Berg signed as a guest: operator." for event in record["events"])
    assert any(words.startswith("Guests signed by hand") for words in record["limits"])
    assert {first["ink"], second["ink"]} <= set(record["parts"])
    assert verify(store).faults == () and search(store, Wanted(text="jan berg")).count == 1


def test_the_paper_shows_guest_and_witness(store: Store) -> None:
    one = chain.everything(store)[0]
    pages = PdfReader(files.pdf_path(store.records, 1, one.digest)).pages
    text = " ".join(" ".join(page.extract_text() for page in pages).split())
    assert "Release, a guest: Jan Berg, Quay cranes, operator" in text and "Witness: Dunja Fell" in text
    assert "What was shown has changed since." in text


def test_a_guests_hand_that_was_exchanged_is_found(store: Store, record: Record) -> None:
    Part.update(data=b"{}").where(Part.digest == record["guests"][0]["ink"]).execute(store.database)
    assert "record 0001: the drawn signature of the guest Jan Berg was altered" in verify(store).faults


def test_a_phone_brings_it_as_any_entry_and_an_auditor_witnesses_nothing(tmp_path: Path) -> None:
    made = yard(tmp_path / "other")
    lift = Lift(made).plan().stop_points()
    said = guest(lift)
    made.devices.enrol("d7")
    for author, counts in (("dunja-fell", True), ("lene-varga", False)):
        made.devices.sign_in("d7", author)
        entry = make(said.about, said.path, said.value, (), author, "d7", 7, f"{DAY}T11:00:00Z")
        assert made.put("d7", [{"body": entry.data.decode()}], f"{DAY}T12:00:00Z")[0]["state"] == "confirmed"
        assert next(one.counts for one in made.arrivals(entry.about) if one.entry == entry) is counts
    made.close()
