"""A database of today's schema as text, to be kept beside the tests: python -m tests.records.kept_schema > FILE.

Done once for each schema, when it is published; the files are never made again.
"""

import sqlite3
import sys
import tempfile
from contextlib import closing
from pathlib import Path

from checklist_app.checklists import values
from checklist_app.checklists.canonical import digest
from checklist_app.checklists.entry import make
from checklist_app.records.accounts import Accounts
from checklist_app.records.store import DATABASE, Store

AT = "2026-11-25T09:00:00Z"
TASK, SLING = ("task", "t-d-1-1"), ("gear", "L-07")
PHOTO = b"\xff\xd8\xff" + b"label of L-07"
FACTS = {"wll_t": "2", "length_m": "2", "marked": "yes", "origin": "bought"}
DOCUMENT = values.document_part("flat_sling/1", FACTS, "1")
REASON = values.words_part("cover cut", "2")


def story():
    """A sling with its examination, quarantine and label, and a task that picks it."""
    version = make(SLING, ("version",), values.version("flat_sling/1", DOCUMENT[0]), (), "p-1", "d-1", 1, AT)
    said = [
        (SLING, ("examination",), values.examination("fit for use", "2026-01-10", "2027-01-10")),
        (SLING, ("custody",), values.custody("in service", "2026-01-10")),
        (SLING, ("quarantine",), values.quarantine("2026-11-24", REASON[0])),
        (TASK, ("begin",), {"type": "begin", "operation": "straight_lift", "procedure": "straight_lift/1"}),
        (TASK, ("leg", "1-left", "sling"), values.pick("gear/L-07", version.digest)),
        (TASK, ("mass_kg",), values.number("2,400", "kg", "plate")),
        (TASK, ("label",), values.photo(digest(PHOTO))),
    ]
    return [version, *(make(about, path, value, (), "p-1", "d-1", number, AT)
                       for number, (about, path, value) in enumerate(said, 2))]


def fill(folder: Path) -> None:
    store = Store(folder)
    Accounts(store.database).add("p-1", "Ada", "supervisor")
    store.devices.enrol("d-1")
    store.devices.sign_in("d-1", "p-1")
    store.keep(story(), dict([DOCUMENT, REASON, (digest(PHOTO), PHOTO)]), "d-1", AT)
    store.close()


def text(folder: Path) -> str:
    with closing(sqlite3.connect(folder / DATABASE)) as database:
        return "\n".join(database.iterdump()) + "\n"


if __name__ == "__main__":
    with tempfile.TemporaryDirectory() as made:
        fill(Path(made))
        sys.stdout.write(text(Path(made)))
