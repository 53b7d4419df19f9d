"""Two phones bring something at the same moment: each batch is judged as if one had come after the other."""

import hashlib
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path
from threading import Barrier

import pytest

from checklist_app.checklists import values
from checklist_app.checklists.entry import Entry, make
from checklist_app.records.database import Receipt
from checklist_app.records.store import Store
from tests.records.brought import AT, TASK, batch

ROUNDS = 40
TWICE = "counted twice: a phone set back or copied"
DEVICES = ("d-1", "d-2")
BEGUN = {"type": "begin", "operation": "straight_lift", "procedure": "straight_lift/1"}


@pytest.fixture
def yard(store: Store) -> Store:
    store.devices.enrol("d-2")
    store.devices.sign_in("d-2", "p-1")
    return store


def at_once(yard: Store, *brought: tuple[str, Entry]) -> None:
    """Each entry by its device, in a thread and with a connection of its own, none before all are ready."""
    ready = Barrier(len(brought))

    def bring(device: str, entry: Entry) -> list[str]:
        store = Store(Path(yard.folder))
        try:
            ready.wait(timeout=30)
            return [answer["state"] for answer in store.put(device, batch(entry), AT)]
        finally:
            store.close()

    with ThreadPoolExecutor(len(brought)) as threads:
        assert list(threads.map(bring, *zip(*brought, strict=True))) == [["confirmed"]] * len(brought)


def test_of_two_entries_with_one_counter_that_come_at_once_the_later_one_is_doubted(yard: Store) -> None:
    """A phone and its copy; its credential is the same."""
    for counter in range(1, ROUNDS + 1):
        at_once(yard, *(("d-1", make(TASK, ("mass_kg",), values.number(f"{counter}.{copy}", "kg"), (), "p-1", "d-1",
                                     counter, AT)) for copy in (1, 2)))
        first, second = yard.arrivals(TASK)[-2:]
        assert (first.doubt, second.doubt) == ("", TWICE), counter
        assert first.counts and second.counts, "both are shown, and a person settles"


def test_of_two_beginnings_of_one_task_that_come_at_once_one_counts(yard: Store) -> None:
    for number in range(1, ROUNDS + 1):
        task = ("task", f"t-d-1-{number}")
        at_once(yard, *((device, make(task, ("begin",), BEGUN, (), "p-1", device, number, AT)) for device in DEVICES))
        first, second = yard.arrivals(task)
        assert (first.counts, second.counts, second.doubt) == (True, False, "it was begun already"), number


def test_the_running_digest_goes_through_all_that_came_at_once(yard: Store) -> None:
    head = yard.cursor()["head"]
    for number in range(1, ROUNDS + 1):
        at_once(yard, *((device, make(TASK, (f"mark_{device}",), values.number(str(number), "kg"), (), "p-1", device,
                                      number, AT)) for device in DEVICES))
    receipts = list(Receipt.select(Receipt.number, Receipt.entry, Receipt.head).order_by(Receipt.number).tuples()
                    .execute(yard.database))
    assert [number for number, _, _ in receipts] == list(range(1, 2 * ROUNDS + 1))
    for _, entry, found in receipts:
        head = hashlib.sha256((head + entry).encode()).hexdigest()
        assert found == head
