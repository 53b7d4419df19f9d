"""Each way of tampering is found, and told by record and field in the auditor's words."""

import json
import shutil
import zlib
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from checklist_app import cli
from checklist_app.checklists.canonical import canonical, digest
from checklist_app.records import chain, files
from checklist_app.records.card_table import Card
from checklist_app.records.database import Kept, Part, Receipt, Seal
from checklist_app.records.seal import seal
from checklist_app.records.store import Store
from checklist_app.records.verify import verify
from tests.records.yard import Lift, jpeg, whole_lift, yard


@pytest.fixture(scope="module")
def sealed_folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A whole lift, then one that was given up."""
    made = yard(tmp_path_factory.mktemp("sealed") / "data")
    first = whole_lift(made)
    seal(made, first.id, "2026-11-25T12:00:00Z")
    second = Lift(made, "t-d2-1", "d2")
    second.say("begin", {"type": "begin", "operation": "straight_lift", "procedure": "straight_lift/1"})
    second.close("abandoned", "The wind rose.")
    seal(made, second.id, "2026-11-25T13:00:00Z")
    made.close()
    return made.folder


@pytest.fixture
def store(sealed_folder: Path, tmp_path: Path) -> Iterator[Store]:
    """A copy to tamper with."""
    shutil.copytree(sealed_folder, tmp_path / "data")
    made = Store(tmp_path / "data")
    yield made
    made.close()


def first(store: Store) -> chain.Sealed:
    return chain.everything(store)[0]


def lighter_load_in_file(store: Store) -> None:
    one = first(store)
    record = one.record
    next(row for row in record["answers"] if row["question"] == "Mass of the load")["answer"] = "900 kg"
    files.text_path(store.records, 1, one.digest).write_bytes(canonical(record))


def verdict_in_row(store: Store) -> None:
    record = first(store).record | {"verdict": "within limit, by far"}
    Seal.update(data=zlib.compress(canonical(record))).where(Seal.number == 1).execute(store.database)


def lift_height_in_entry(store: Store) -> None:
    entry = next(one for one in store.entries(("task", "t-d1-1")) if one.path == ("lift_height_m",))
    body = json.loads(entry.data)
    body["value"]["text"] = "0.05"
    Kept.update(data=canonical(body)).where(Kept.digest == entry.digest).execute(store.database)


def entry_gone(store: Store) -> None:
    entry = next(one for one in store.entries(("task", "t-d1-1")) if one.path == ("way_clear",))
    Receipt.delete().where(Receipt.entry == entry.digest).execute(store.database)
    Kept.delete().where(Kept.digest == entry.digest).execute(store.database)


def photograph_exchanged(store: Store) -> None:
    store.parts.path(digest(jpeg())).write_bytes(jpeg("#ff0000"))


def photograph_gone(store: Store) -> None:
    store.parts.path(digest(jpeg())).unlink()


def statement_altered(store: Store) -> None:
    signed = first(store).record["signoffs"][0]
    Part.update(data=b"{}").where(Part.digest == signed["statement"]).execute(store.database)


def text_in_place_of_bytes(store: Store) -> None:
    store.database.execute_sql("UPDATE kept SET data = 'nothing' WHERE subject = 'task/t-d2-1' AND type = 'begin'")


def pdf_altered(store: Store) -> None:
    path = files.pdf_path(store.records, 1, first(store).digest)
    path.write_bytes(path.read_bytes() + b"\n% one line more")


def pdf_exchanged_with_its_digest(store: Store) -> None:
    one = first(store)
    pdf_altered(store)
    other = files.pdf_path(store.records, 1, one.digest).read_bytes()
    Seal.update(pdf=digest(other)).where(Seal.number == 1).execute(store.database)


def pdf_gone(store: Store) -> None:
    files.pdf_path(store.records, 1, first(store).digest).unlink()


def record_gone(store: Store) -> None:
    one = first(store)
    Seal.delete().where(Seal.number == 1).execute(store.database)
    Card.delete().where(Card.digest == one.digest).execute(store.database)


def hidden_from_search(store: Store) -> None:
    Card.update(said="", verdict="over limit").where(Card.number == 1).execute(store.database)


def receipts_reordered(store: Store) -> None:
    Receipt.update(head="0" * 64).where(Receipt.number == 20).execute(store.database)


TAMPERINGS: list[tuple[Callable[[Store], None], str]] = [
    (lighter_load_in_file, "record 0001: answers, Mass of the load, answer: sealed as 2350 kg, it now reads 900 kg"),
    (verdict_in_row, "record 0001: its text in the database was altered"),
    (lift_height_in_entry, "text: sealed as 0.30, it now reads 0.05"),
    (entry_gone, "record 0001: The way is clear up to the landing place (yes): the entry is gone"),
    (photograph_exchanged, 'record 0001: photograph "Photo of each eye with its sling" was altered'),
    (photograph_gone, 'record 0001: photograph "Photo of each eye with its sling" is gone'),
    (statement_altered, "record 0001: the statement that Agata Rusk signed was altered"),
    (text_in_place_of_bytes, "record 0002: Begun: the entry was altered: it can no longer be read"),
    (pdf_altered, "record 0001: its PDF was altered"),
    (pdf_exchanged_with_its_digest, "record 0001: its PDF is not the one that record 0002 names"),
    (pdf_gone, "record 0001: its PDF is gone"),
    (record_gone, "record 0001 is gone"),
    (hidden_from_search, "the catalogue was altered: verdict: sealed as within limit, it now reads over limit"),
    (receipts_reordered, "receipts: from number 20 on they do not follow from each other"),
]


def test_records_that_nobody_touched_are_whole(store: Store) -> None:
    found = verify(store)
    assert (found.records, found.faults) == (2, ())
    assert found.last == chain.everything(store)[-1].digest


@pytest.mark.parametrize(("tamper", "told"), TAMPERINGS, ids=[tamper.__name__ for tamper, _ in TAMPERINGS])
def test_tampering_is_told_by_record_and_field(store: Store, tamper: Callable[[Store], None], told: str) -> None:
    tamper(store)
    faults = verify(store).faults
    assert any(told in fault for fault in faults), faults


def test_a_record_rewritten_whole_with_its_row_and_files_does_not_follow_from_its_answers(store: Store) -> None:
    one = first(store)
    record = one.record
    next(each for each in record["evaluation"]["checks"] if each["kind"] == "strength")["verdict"] = "over limit"
    data, pdf = canonical(record), files.pdf_path(store.records, 1, one.digest).read_bytes()
    files.write(store.records, 1, data, pdf)
    Seal.update(digest=digest(data), data=zlib.compress(data)).where(Seal.number == 1).execute(store.database)
    faults = verify(store).faults
    assert any("does not follow from its own answers: checks" in fault and "over limit" in fault for fault in faults)
    assert "record 0002: it does not follow from the record before it" in faults


def test_a_cut_off_end_shows_only_to_somebody_who_kept_a_digest(store: Store) -> None:
    last = chain.everything(store)[-1]
    Seal.delete().where(Seal.number == last.number).execute(store.database)
    Card.delete().where(Card.digest == last.digest).execute(store.database)
    assert verify(store).faults == ()
    spaced = " ".join(last.digest[at:at + 4] for at in range(0, 32, 4))
    assert any("the end was cut off" in fault for fault in verify(store, [spaced]).faults)
    assert any("at least 12 signs" in fault for fault in verify(store, ["7c41"]).faults)


def test_a_record_that_is_sealed_meanwhile_is_no_fault(store: Store) -> None:
    """A server at work: what it changes between the record and its place in the catalogue is not seen."""
    meanwhile, done = Store(store.folder), []

    def at_the_catalogue(statement: str) -> None:
        if 'FROM "card"' in statement and not done:
            done.append(Card.delete().execute(meanwhile.database))

    store.database.connection().set_trace_callback(at_the_catalogue)
    assert verify(store).faults == ()
    meanwhile.close()
    assert done == [2]
    assert any("missing in the catalogue" in fault for fault in verify(store).faults)


def test_the_command_says_what_it_found_and_ends_accordingly(store: Store, capsys: pytest.CaptureFixture[str]) -> None:
    last = chain.everything(store)[-1].digest
    assert cli.main(["verify", str(store.folder), last]) == 0
    assert f"2 records looked at. Nothing was changed since they were sealed. The last one is {last}." in (
        capsys.readouterr().out)
    pdf_altered(store)
    assert cli.main(["verify", str(store.folder)]) == 1
    assert "record 0001: its PDF was altered" in capsys.readouterr().out
    assert cli.main(["verify", str(store.folder / "nowhere")]) == 2
    assert "no data" in capsys.readouterr().err
