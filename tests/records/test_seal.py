"""Sealing: what a record covers, what has to come first, what comes after, and that the chain never forks."""

import multiprocessing
import os
import signal
import subprocess
import sys
import time
from collections.abc import Iterator
from pathlib import Path

import pytest

from checklist_app.checklists import values
from checklist_app.checklists.canonical import canonical, digest, parse
from checklist_app.records import chain, files
from checklist_app.records import seal as sealing
from checklist_app.records.seal import NotYet, seal
from checklist_app.records.store import Store
from checklist_app.records.verify import verify
from tests.records.yard import Lift, jpeg, whole_lift, yard

AT = "2026-11-25T12:00:00Z"
LATER = "2026-11-25T13:00:00Z"


@pytest.fixture
def store(tmp_path: Path) -> Iterator[Store]:
    made = yard(tmp_path / "data")
    yield made
    made.close()


def given_up(store: Store, number: int) -> Lift:
    lift = Lift(store, f"t-d{number}-1", f"d{number}")
    lift.say("begin", {"type": "begin", "operation": "straight_lift", "procedure": "straight_lift/1"})
    lift.pick("load", "load/vertical-pump-400")
    lift.close("abandoned", "The crane was needed elsewhere.")
    return lift


def test_a_lift_from_end_to_end_becomes_a_record_whose_digest_is_that_of_its_text(store: Store) -> None:
    lift = whole_lift(store)
    name = seal(store, lift.id, AT)
    one = chain.find(store, name)
    assert one is not None
    record = one.record
    assert digest(canonical(record)) == name
    assert files.text_path(store.records, 1, name).read_bytes() == canonical(record)
    assert digest(files.pdf_path(store.records, 1, name).read_bytes()) == one.pdf
    assert record["verdict"] == "close to limit" or record["verdict"] == "within limit"
    assert record["governs"] in {check["name"] for check in record["evaluation"]["checks"]}
    assert [one["standing"] for one in record["signoffs"]] == ["stands", "stands"]
    assert record["entries"] == sorted(entry.digest for entry in store.entries(("task", lift.id)))
    assert lift.world.sealed(lift.id) == name
    assert lift.id not in lift.world.tasks()
    assert verify(store).faults == ()


def test_what_arrives_while_the_record_is_made_is_in_it(store: Store, monkeypatch: pytest.MonkeyPatch) -> None:
    lift, papers = given_up(store, 1), []
    true_paper = sealing.paper

    def slowly(body, parts):
        if not papers:
            lift.say("odd", values.dont_know())
        papers.append(body)
        return true_paper(body, parts)
    monkeypatch.setattr(sealing, "paper", slowly)
    record = chain.find(store, seal(store, lift.id, AT)).record  # type: ignore[union-attr]
    assert len(papers) == 2
    assert record["entries"] == sorted(entry.digest for entry in store.entries(("task", lift.id)))
    assert verify(store).faults == ()


def test_each_record_names_the_one_before_and_its_pdf(store: Store) -> None:
    first, second = (seal(store, given_up(store, number).id, AT) for number in (1, 2))
    one, two = chain.find(store, first), chain.find(store, second)
    assert one is not None and two is not None
    assert (two.number, two.record["previous"], two.record["previous_pdf"]) == (2, first, one.pdf)


def test_a_task_that_nobody_closed_is_not_sealed(store: Store) -> None:
    lift = Lift(store).plan()
    with pytest.raises(NotYet, match="not closed"):
        seal(store, lift.id, AT)


def test_a_photograph_on_its_way_holds_the_seal_up_until_it_comes(store: Store) -> None:
    lift, picture = given_up(store, 1), jpeg("#203040")
    lift.photo("rigged_photo", picture, arrives=False)
    with pytest.raises(NotYet, match="1 photograph has not arrived yet"):
        seal(store, lift.id, AT)
    store.parts.put(digest(picture), picture)
    assert seal(store, lift.id, AT)


def test_a_photograph_declared_lost_is_named_in_the_record(store: Store) -> None:
    lift, picture = given_up(store, 1), jpeg("#203040")
    lift.photo("rigged_photo", picture, arrives=False)
    lift.say("lost_1", values.lost(digest(picture)))
    one = chain.find(store, seal(store, lift.id, AT))
    assert one is not None and one.record["lost"] == [digest(picture)]
    assert verify(store).faults == ()


def test_after_a_backup_was_put_back_sealing_waits_for_a_supervisor(store: Store) -> None:
    from checklist_app.records.database import Server

    lift = given_up(store, 1)
    Server.update(sealing_waits=True).execute(store.database)
    with pytest.raises(NotYet, match="supervisor"):
        seal(store, lift.id, AT)
    store.let_sealing_go_on()
    assert seal(store, lift.id, AT)


def test_a_task_has_one_record_and_what_comes_later_is_a_supplement_to_it(store: Store) -> None:
    lift = given_up(store, 1)
    first = seal(store, lift.id, AT)
    with pytest.raises(NotYet, match="nothing came since"):
        seal(store, lift.id, LATER)
    late = lift.words("odd", "text", "Found afterwards: the latch was bent.")
    one = chain.find(store, seal(store, lift.id, LATER))
    assert one is not None
    assert (one.of, one.record["kind"], one.record["late"]) == (first, "supplement", [late.digest])
    assert lift.world.sealed(lift.id) == first
    assert verify(store).faults == ()


def test_a_sign_off_that_was_void_for_a_while_says_from_when_to_when_and_why(store: Store) -> None:
    lift = Lift(store).plan().stop_points()
    lift.sign("release", "agata-rusk")
    changed = lift.pick("leg/1-left/sling", "gear/F-11")
    healed = lift.pick("leg/1-left/sling", "gear/R-21")
    lift.close("abandoned", "Another load comes first.")
    one = chain.find(store, seal(store, lift.id, AT))
    assert one is not None
    (signed,) = one.record["signoffs"]
    (gap,) = signed["intervals"]
    assert signed["standing"] == "stands"
    assert (gap["from"], gap["to"]) == (changed.at, healed.at)
    assert any("R-21 to F-11" in why for why in gap["why"])
    assert any("R-21 to F-11" in event["words"] for event in one.record["events"])


def seal_all(folder: str, tasks: list[str]) -> None:
    store = Store(folder)
    for task in tasks:
        seal(store, task, AT)
    store.close()


def test_two_processes_that_seal_at_once_never_fork_the_chain(store: Store) -> None:
    lifts = [given_up(store, number).id for number in range(1, 7)]
    store.close()
    context = multiprocessing.get_context("spawn")
    workers = [context.Process(target=seal_all, args=(str(store.folder), part)) for part in (lifts[::2], lifts[1::2])]
    for worker in workers:
        worker.start()
    for worker in workers:
        worker.join(120)
    assert [worker.exitcode for worker in workers] == [0, 0]
    sealed = chain.everything(store)
    assert [one.number for one in sealed] == [1, 2, 3, 4, 5, 6]
    assert [one.previous for one in sealed[1:]] == [one.digest for one in sealed[:-1]]
    assert len(list(store.records.glob("*.pdf"))) == 6
    assert verify(store).faults == ()


KILLED = """
import sys, time
from checklist_app.records import chain, seal
from checklist_app.records.store import Store
def stop(*_):
    print("files stand", flush=True)
    time.sleep(60)
chain.hang = stop
seal.seal(Store(sys.argv[1]), sys.argv[2], "2026-11-25T12:00:00Z")
"""


@pytest.mark.skipif(os.name == "nt", reason="kill -9 is not there on Windows")
def test_killed_between_its_files_and_its_row_a_record_is_not_there_and_is_sealed_again(store: Store) -> None:
    lift = given_up(store, 1)
    store.close()
    doing = subprocess.Popen([sys.executable, "-c", KILLED, str(store.folder), lift.id], stdout=subprocess.PIPE,
                             text=True)
    assert doing.stdout is not None and doing.stdout.readline() == "files stand\n"
    doing.send_signal(signal.SIGKILL)
    doing.wait(10)
    doing.stdout.close()
    time.sleep(0.1)
    assert chain.everything(store) == []
    assert lift.world.sealed(lift.id) is None
    name = seal(store, lift.id, LATER)
    assert [one.digest for one in chain.everything(store)] == [name]
    assert verify(store).faults == ()
    assert parse(files.text_path(store.records, 1, name).read_bytes())["sealed_at"] == LATER
