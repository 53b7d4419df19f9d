"""Entries of the first version, kept as they were made on 2026-11-25, are taken and read by every later server."""

import json
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from checklist_app.checklists.entry import Entry, read
from checklist_app.checklists.running import running
from checklist_app.records.store import Store
from checklist_app.records.world import DatabaseWorld

KEPT: dict[str, Any] = json.loads((Path(__file__).parent / "first_entries.json").read_text("utf-8"))
ENTRIES = [read(item["body"].encode()) for item in KEPT["entries"]]
PARTS = {digest: text.encode() for digest, text in KEPT["parts"].items()}
AT = "2026-11-25T16:00:00Z"


@pytest.fixture
def store(tmp_path: Path) -> Iterator[Store]:
    made = Store(tmp_path)
    yield made
    made.close()


def as_the_server_had_them(store: Store) -> None:
    for item, entry in zip(KEPT["entries"], ENTRIES, strict=True):
        store.keep([entry], PARTS, item["device"], AT)


def batch(entries: list[Entry]) -> list[dict[str, Any]]:
    return [{"body": entry.data.decode(), "parts": {}} for entry in entries]


def test_the_running_task_is_judged_as_on_the_day_it_was_kept(store: Store) -> None:
    as_the_server_had_them(store)
    now = running(DatabaseWorld(store, KEPT["today"]), KEPT["task"])
    told = {check.name: check.verdict.words for check in now.evaluation.checks}
    assert now.evaluation.verdict.words == KEPT["verdict"]
    assert now.evaluation.governs is not None and now.evaluation.governs.name == KEPT["governs"]
    assert {name: told.get(name) for name in KEPT["checks"]} == KEPT["checks"]
    assert now.faults == {}


def test_a_phone_of_that_day_is_answered_confirmed_for_every_entry(store: Store) -> None:
    device, _ = store.devices.enrol("d-of-that-day")
    for author in {entry.author for entry in ENTRIES}:
        store.devices.sign_in(device, author)
    answers = [answer for first in range(0, len(ENTRIES), 50)
               for answer in store.put(device, batch(ENTRIES[first:first + 50]), AT)]
    assert {answer["state"] for answer in answers} == {"confirmed"}
    assert [answer["digest"] for answer in answers] == [entry.digest for entry in ENTRIES]
    assert store.cursor()["number"] == len(ENTRIES)


def test_what_was_kept_is_more_than_a_handful_and_of_every_register() -> None:
    kinds = {entry.about[0] for entry in ENTRIES}
    types = {entry.type for entry in ENTRIES}
    assert len(ENTRIES) > 150 and {"task", "gear", "machine", "load", "person", "place"} <= kinds
    assert {"begin", "number", "pick", "tick", "signature", "closing", "version", "examination"} <= types
