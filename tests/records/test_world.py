"""The database's world is the one that a fold of all that is kept would give, and it is quick to ask."""

import time

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from checklist_app.checklists import values
from checklist_app.checklists.canonical import digest
from checklist_app.checklists.entry import make
from checklist_app.checklists.world import MemoryWorld
from checklist_app.records.store import Store
from checklist_app.records.world import DatabaseWorld
from tests.checklists.test_world import DAY, PARTS, STORY, all_seen, parts_of
from tests.records.brought import AT, batch, some

ALL = tuple(STORY)


@settings(max_examples=15)
@given(st.lists(st.integers(1, 3), min_size=3, max_size=6), st.permutations(range(len(ALL))))
def test_after_every_batch_the_kept_world_is_the_one_in_memory(tmp_path_factory, sizes, order):
    store, kept, left = Store(tmp_path_factory.mktemp("world")), [], [ALL[number] for number in order]
    for size in [*sizes, len(left)]:
        now, left = left[:size], left[size:]
        store.keep(now, parts_of(now), "d-1", AT)
        kept += now
        memory = MemoryWorld(kept, parts_of(kept), today=DAY, cursor=store.cursor())
        assert all_seen(DatabaseWorld(store, DAY)) == all_seen(memory)
    store.close()


def test_two_stores_over_one_folder_see_what_the_other_keeps(store):
    other = Store(store.folder)
    assert DatabaseWorld(other, DAY).items("gear") == {}
    store.keep(ALL[:4], PARTS, "d-1", AT)
    assert DatabaseWorld(other, DAY).item("gear", "L-07").state.custody == "in service"
    assert len(DatabaseWorld(other, DAY).entries(("task", "t-1"))) == 2
    other.keep(ALL[4:], {}, "d-1", AT)
    assert all_seen(DatabaseWorld(store, DAY)) == all_seen(DatabaseWorld(other, DAY))
    other.close()


def test_a_document_that_arrives_after_its_entry_is_seen_at_once(store):
    store.keep(ALL[:1], {}, "d-1", AT)
    assert "not arrived" in DatabaseWorld(store, DAY).item("gear", "L-07").fault
    for name, data in PARTS.items():
        store.parts.put(name, data)
    assert DatabaseWorld(store, DAY).item("gear", "L-07").facts == {"wll_t": "2"}


def test_an_item_with_a_photograph_is_folded_once(store):
    photo = b"\xff\xd8\xff a label"
    store.keep(ALL[:1], PARTS, "d-1", AT)
    store.keep([make(("gear", "L-07"), ("photo",), values.photo(digest(photo)), (), "p-1", "d-1", 50, AT)],
               {digest(photo): photo}, "d-1", AT)
    first = DatabaseWorld(store, DAY).item("gear", "L-07")
    assert DatabaseWorld(store, DAY).item("gear", "L-07") is first


def test_a_register_of_a_thousand_items_is_read_at_once(store):
    entries, parts = [], {}
    for number in range(1000):
        name, data = values.document_part("flat_sling/1", {"wll_t": "2", "serial": str(number)}, "1")
        parts[name] = data
        entries.append(make(("gear", f"L-{number}"), ("version",), values.version("flat_sling/1", name), (), "p-1",
                            "s-1", number + 1, AT))
    for first in range(0, 1000, 100):
        store.keep(entries[first:first + 100], parts, "s-1", AT)
    items = DatabaseWorld(store, DAY).items("gear")
    assert len(items) == 1000 and all(item.facts["wll_t"] == "2" for item in items.values())


def test_on_another_day_the_same_item_may_be_overdue(store):
    store.keep([make(("gear", "L-07"), ("examination",), values.examination("fit", "2026-01-01", "2026-11-30"), (),
                     "p-1", "d-1", 1, AT)], {}, "d-1", AT)
    days = ("2026-11-25", "2026-12-01", "2026-11-25")
    assert [DatabaseWorld(store, day).item("gear", "L-07").state.overdue for day in days] == [False, True, False]


def test_what_its_author_had_no_right_to_say_is_not_in_the_world(store):
    held = ALL[4]
    store.keep([held], PARTS, "d-1", AT)
    store.devices.sign_in("d-1", "p-2")
    release = make(("gear", "L-07"), ("quarantine",), values.release(), [held.digest], "p-2", "d-1", 1, AT)
    (answer,) = store.put("d-1", batch(release), AT)
    assert answer["state"] == "confirmed"
    assert DatabaseWorld(store, DAY).item("gear", "L-07").state.quarantined == ("cover cut",)


def test_a_view_that_was_taken_stays_as_it_was_while_others_write(store):
    store.keep(ALL[:4], PARTS, "d-1", AT)
    view = DatabaseWorld(store, DAY)
    before = dict(view.items("gear"))
    store.keep(ALL[4:], PARTS, "d-1", AT)
    DatabaseWorld(store, DAY).items("gear")
    assert view.items("gear") == before


@pytest.fixture
def busy(store):
    """Forty pieces of gear and twenty running tasks of a hundred entries."""
    for number in range(40):
        about = ("gear", f"L-{number:02d}")
        part, data = values.document_part("flat_sling/1", {"wll_t": "2", "length_m": str(number)}, "1")
        store.keep([
            make(about, (value["type"],), value, (), "p-1", "s-1", 3 * number + more, AT) for more, value in enumerate((
                values.version("flat_sling/1", part), values.custody("in service", DAY),
                values.examination("fit", DAY, "2027-01-01")), 1)
        ], {part: data}, "s-1", AT)
    for number in range(20):
        about = ("task", f"t-{number}")
        begin = {"type": "begin", "operation": "straight_lift", "procedure": "straight_lift/1"}
        store.keep([make(about, ("begin",), begin, (), "p-1", f"d-{number}", 1, AT)], {}, "s-1", AT)
        store.keep(some(99, f"d-{number}", about=about, first=2), {}, "s-1", AT)
    return store


def test_a_request_asks_all_of_a_busy_workshop_in_a_blink(busy):
    def asked():
        world = DatabaseWorld(busy, DAY)
        assert len(world.items("gear")) == 40 and not world.items("load")
        counts = [len(world.entries(("task", task))) for task in world.tasks()]
        assert counts == [100] * 20

    def once():
        start = time.process_time()
        asked()
        return time.process_time() - start

    asked()
    assert min(once() for _ in range(10)) < 0.03, "seconds for the registers and every running task"
