"""Records on screen: everybody signed in reads, nobody changes; what was altered is said before anything else."""

import csv
import io
import shutil
from collections.abc import Iterator
from datetime import UTC
from pathlib import Path

import pytest
from flask import Flask

from checklist_app.checklists.canonical import digest
from checklist_app.records import chain, files, slung
from checklist_app.records.account_tables import ROLES
from checklist_app.records.database import Seal
from checklist_app.records.seal import seal
from checklist_app.records.store import Store
from checklist_app.web.app import create_app
from tests.records.yard import Lift, jpeg, whole_lift, yard
from tests.web.conftest import Clock
from tests.web.signed_in import People, Visitor

AT = "2026-11-25T11:40:00Z"


@pytest.fixture(scope="module")
def yard_folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    made = yard(tmp_path_factory.mktemp("web") / "data")
    seal(made, whole_lift(made).id, AT)
    lift = Lift(made, "t-d2-1", "d2").plan()
    lift.words("stop", "stop", "Somebody was in the zone.")
    lift.close("abandoned", "=HYPERLINK(1) & <b>the wind</b> rose.")
    seal(made, lift.id, AT)
    made.close()
    return made.folder


@pytest.fixture
def app(yard_folder: Path, tmp_path: Path, clock: Clock) -> Iterator[Flask]:
    shutil.copytree(yard_folder, tmp_path / "data")
    made = create_app(tmp_path / "data", CLOCK=clock, ZONE=UTC)
    yield made
    made.extensions["store"].close()


@pytest.fixture
def store(app: Flask) -> Store:
    found: Store = app.extensions["store"]
    return found


@pytest.fixture
def auditor(people: People) -> Visitor:
    return people.visitor("auditor")


def first(store: Store) -> chain.Sealed:
    return chain.everything(store)[0]


@pytest.mark.parametrize("role", ROLES)
def test_everybody_who_is_signed_in_reads_records(people: People, store: Store, role: str) -> None:
    visitor, name = people.visitor(role), first(store).digest
    for address in ("/records", f"/records/{name}", f"/records/{name}.pdf", f"/records/{name}.json", "/records.csv"):
        assert visitor.get(address).status_code == 200, address


def test_a_stranger_is_sent_to_sign_in(nobody: Visitor, store: Store) -> None:
    for address in ("/records", f"/records/{first(store).digest}", f"/records/{first(store).digest}.pdf"):
        assert nobody.get(address).status_code == 303


def test_the_auditor_searches_by_gear_and_opens_the_record(auditor: Visitor) -> None:
    found = auditor.get("/records?gear=R-21&closing=completed")
    assert "Every record with R-21" in found.text and "1 record, highest" in found.text
    assert "abandoned</td>" not in found.text


def test_what_cannot_be_read_in_a_search_counts_as_not_asked(auditor: Visitor) -> None:
    page = auditor.get("/records?since=yesterday&above=much&page=-3&text=%00%3Cb%3E")
    assert page.status_code == 200
    assert auditor.get("/records?since=yesterday&above=99999&page=0").text.count('scope="row"') == 2


def test_the_page_of_a_record_shows_verdict_figures_signatures_course_and_digests(
        auditor: Visitor, store: Store) -> None:
    one = first(store)
    page = auditor.get(f"/records/{one.digest}").text
    record = one.record
    for words in ("Vertical pump 400", record["verdict"], "63", "Agata Rusk, supervisor", "Nothing changed since",
                  "Release signed as supervisor", "R-21", one.digest[:4], "Checked 25 November 2026, 12:00 UTC"):
        assert words in page, words
    assert page.count("signature-small") == 2
    assert page.count("<svg viewBox=") >= 2


def test_the_page_of_a_record_tells_every_leg_and_shows_every_view(auditor: Visitor, store: Store) -> None:
    text, record = auditor.get(f"/records/{first(store).digest}").text, first(store).record
    legs = slung.legs(record)
    assert [leg.leg for leg in legs] == ["left", "right"] and "How it is slung" in text
    assert all(f"{leg.pull}</td>" in text and f"{leg.angle}</td>" in text for leg in legs)
    assert text.count("<svg") >= 2 + len(record["drawing"]["views"])
    assert all(f"<b>{view['name']}</b>" in text for view in record["drawing"]["views"])


def test_reading_changes_no_file_and_no_row(auditor: Visitor, store: Store) -> None:
    def state() -> tuple[object, ...]:
        kept = {path.name: digest(path.read_bytes()) for path in store.records.iterdir()}
        return kept, store.cursor(), list(Seal.select().tuples().execute(store.database))

    before, name = state(), first(store).digest
    for address in ("/records?text=pump", "/records.csv", *(f"/records/{name}{end}" for end in ("", ".pdf", ".json"))):
        auditor.get(address)
    assert state() == before
    assert auditor.post(f"/records/{name}").status_code in (403, 405)


def test_pdf_and_text_come_byte_for_byte(auditor: Visitor, store: Store) -> None:
    one = first(store)
    assert digest(auditor.get(f"/records/{one.digest}.pdf").data) == one.pdf
    assert digest(auditor.get(f"/records/{one.digest}.json").data) == one.digest


def test_a_record_shows_its_own_photographs_and_no_other_part(auditor: Visitor, store: Store) -> None:
    one = first(store)
    shown = auditor.get(f"/records/{one.digest}/parts/{digest(jpeg())}")
    assert (shown.data, shown.mimetype) == (jpeg(), "image/jpeg")
    other = one.record["signoffs"][0]["statement"]
    assert auditor.get(f"/records/{one.digest}/parts/{other}").status_code == 404


def test_the_table_for_office_programs_holds_every_record_and_no_formula(auditor: Visitor) -> None:
    rows = list(csv.reader(io.StringIO(auditor.get("/records.csv").data.decode("utf-8-sig"))))
    assert [row[0] for row in rows] == ["number", "2", "1"]
    assert not [cell for row in rows for cell in row if cell.startswith(("=", "+", "-", "@"))]


def test_a_record_that_was_altered_says_so_before_anything_else(auditor: Visitor, store: Store) -> None:
    one = first(store)
    path = files.text_path(store.records, one.number, one.digest)
    path.write_bytes(path.read_bytes().replace(b"2350 kg", b"900 kg", 1))
    page = auditor.get(f"/records/{one.digest}").text
    assert "Changed since it was sealed" in page and "sealed as 2350 kg, it now reads 900 kg" in page
    assert "Nothing changed since" not in page


def test_a_record_of_which_nothing_whole_is_left_is_not_shown(auditor: Visitor, store: Store) -> None:
    one = first(store)
    files.text_path(store.records, one.number, one.digest).unlink()
    Seal.update(data=b"").where(Seal.number == one.number).execute(store.database)
    answer = auditor.get(f"/records/{one.digest}")
    assert answer.status_code == 500 and "was altered" in answer.text


def test_a_closed_task_whose_photograph_is_gone_waits_until_a_supervisor_declares_it_lost(
        auditor: Visitor, people: People, store: Store) -> None:
    lift = Lift(store, "t-d7-1", "d7").plan()
    lift.photo("rigged_photo", jpeg("#123456"), arrives=False)
    lift.close("abandoned", "Rain.")
    supervisor, rigger = people.visitor("supervisor"), people.visitor("rigger")
    assert "1 photograph has not arrived yet" in auditor.get("/records/waiting").text
    assert "Declare" not in auditor.get("/records/waiting").text
    assert auditor.post(f"/records/waiting/{lift.id}/lost").status_code == 403
    assert rigger.post(f"/records/waiting/{lift.id}/lost").status_code == 403
    assert "Declare 1 lost" in supervisor.get("/records/waiting").text
    answer = supervisor.post(f"/records/waiting/{lift.id}/lost")
    record = chain.everything(store)[-1]
    assert (answer.status_code, answer.location) == (303, f"/records/{record.digest}")
    assert record.record["lost"] == [digest(jpeg("#123456"))]
    assert "Every closed task has its record" in auditor.get("/records/waiting").text


def test_an_address_of_no_record_is_not_found(auditor: Visitor) -> None:
    assert auditor.get(f"/records/{'0' * 64}").status_code == 404
    assert auditor.get(f"/records/{'0' * 64}.pdf").status_code == 404


def test_what_somebody_wrote_is_shown_as_text(auditor: Visitor, store: Store) -> None:
    page = auditor.get(f"/records/{chain.everything(store)[1].digest}").text
    assert "&lt;b&gt;the wind&lt;/b&gt;" in page and "<b>the wind</b>" not in page
