"""Entries as a phone brings them, for the tests of the store."""

from checklist_app.checklists import values
from checklist_app.checklists.entry import Entry, make

AT = "2026-11-25T09:00:00Z"
TASK = ("task", "t-d-1-1")


def some(count: int, device: str = "d-1", author: str = "p-1", about=TASK, first: int = 1) -> list[Entry]:
    """Entries of one device that each replace the one before."""
    made: list[Entry] = []
    for number in range(first, first + count):
        before = [made[-1].digest] if made else []
        made.append(make(about, ("mass_kg",), values.number(str(number), "kg"), before, author, device, number, AT))
    return made


def batch(*entries: Entry, parts=None) -> list[dict]:
    return [{"body": entry.data.decode()} | ({"parts": parts} if parts else {}) for entry in entries]
