"""A page sees the same world over what is kept and over what it is just about to keep."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from checklist_app.checklists import values
from checklist_app.checklists.entry import make
from checklist_app.checklists.world import MemoryWorld

AT = "2026-11-25T08:00:00Z"
DAY = "2026-11-25"
PART, DOCUMENT = values.document_part("flat_sling/1", {"wll_t": "2"}, "1")
LATER, LATER_DOCUMENT = values.document_part("flat_sling/1", {"wll_t": "3"}, "1")
REASON, WORDS = values.words_part("cover cut", "1")


def said(about, path, value, counter, replaces=(), author="p-1"):
    return make(about, path, value, replaces, author, "d-1", counter, AT)


def begun(task, counter):
    return said(("task", task), ("begin",), {"type": "begin", "operation": "straight_lift",
                                             "procedure": "straight_lift/1"}, counter)


FIRST = said(("gear", "L-07"), ("version",), values.version("flat_sling/1", PART), 1)
STORY = (
    FIRST, begun("t-1", 2),
    said(("task", "t-1"), ("mass_kg",), values.number("2400", "kg"), 3),
    said(("gear", "L-07"), ("custody",), values.custody("in service", DAY), 4),
    said(("gear", "L-07"), ("quarantine",), values.quarantine(DAY, REASON), 5),
    begun("t-2", 6),
    said(("gear", "L-07"), ("version",), values.version("flat_sling/1", LATER), 7, [FIRST.digest]),
    said(("gear", "L-08"), ("version",), values.version("flat_sling/1", PART), 8),
    said(("task", "t-1"), ("mass_kg",), values.number("2500", "kg"), 9, author="p-2"),
)
PARTS = {PART: DOCUMENT, LATER: LATER_DOCUMENT, REASON: WORDS}


def parts_of(entries):
    """The parts that come along with these entries."""
    return {name: PARTS[name] for entry in entries for name in values.parts_named(entry.value)}


def all_seen(world):
    """Everything a page can ask."""
    return (world.today, world.tasks(), {task: set(world.entries(("task", task))) for task in ("t-1", "t-2")},
            {register: dict(world.items(register)) for register in ("gear", "load")},
            [world.item("gear", name) for name in ("L-07", "L-08", "L-09")],
            [(world.part(name), world.has_part(name)) for name in sorted(PARTS)],
            world.cursor(), [world.sealed(task) for task in ("t-1", "t-2")])


@settings(max_examples=60)
@given(st.integers(0, len(STORY)), st.integers(0, len(STORY)))
def test_what_was_kept_before_and_what_the_page_adds_are_one_world(first, second):
    first, second = sorted((first, second))
    whole = MemoryWorld(STORY, PARTS, today=DAY)
    after = MemoryWorld(STORY[:first], parts_of(STORY[:first]), today=DAY)
    for added in (STORY[first:second], STORY[second:]):
        after = after.with_entries(added, parts_of(added))
    assert all_seen(after) == all_seen(whole)


def test_a_world_is_not_changed_by_what_comes_after_it():
    before = MemoryWorld(STORY[:1], PARTS, today=DAY)
    before.with_entries(STORY[1:], {})
    assert before.tasks() == [] and before.item("gear", "L-07").facts == {"wll_t": "2"}


def test_entries_that_were_kept_meanwhile_are_not_there_twice():
    world = MemoryWorld(STORY, PARTS, today=DAY).with_entries(STORY, {})
    assert len(world.entries(("task", "t-1"))) == 3 and world.tasks() == ["t-1", "t-2"]


def test_a_sealed_task_is_not_among_the_running_ones():
    world = MemoryWorld(STORY, PARTS, today=DAY, sealed={"t-1": "0" * 64})
    assert world.tasks() == ["t-2"] and world.sealed("t-1") == "0" * 64
    assert world.with_entries([begun("t-1", 10)], {}).tasks() == ["t-2"]


def test_a_task_that_nobody_began_is_no_task():
    assert MemoryWorld([said(("task", "t-9"), ("mass_kg",), values.number("1", "kg"), 1)], today=DAY).tasks() == []


def test_a_register_that_does_not_exist_is_a_fault_of_the_program_and_an_item_that_does_not_is_none():
    world = MemoryWorld(today=DAY)
    with pytest.raises(KeyError):
        world.items("crown jewels")
    assert world.item("crown jewels", "x") is None and world.item("gear", "x") is None
