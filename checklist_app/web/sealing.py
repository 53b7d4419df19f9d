"""A task that was closed is sealed at once, and what comes later becomes a supplement to its record."""

import logging
from collections.abc import Iterable

from checklist_app.checklists.entry import Entry
from checklist_app.records.moments import moment
from checklist_app.records.seal import NotYet, seal
from checklist_app.web import current

CLOSING = "closing"
log = logging.getLogger(__name__)


def seal_what_closed(entries: Iterable[Entry]) -> str | None:
    """Seal the tasks that these entries are about, if they are closed; the digest of the last record there is."""
    record = None
    for task in sorted({entry.about[1] for entry in entries if entry.about[0] == "task"}):
        record = sealed(task) or record

    return record


def seal_what_was_left() -> None:
    """Tasks that are closed and have no record: something had to come first, or the server went down in between."""
    for task in current.world().tasks():
        sealed(task)


def sealed(task: str) -> str | None:
    """The record of a closed task. A closing that does not count seals nothing, and some things must come first.

    Whatever goes wrong (a full disk, a fault of ours), the closing is kept and was not yet answered: a phone that is
    told of a failure would bring it for ever, and a server that falls over one record would not start.
    """
    store = current.store()
    if not any(entry.type == CLOSING for entry in current.world().entries(("task", task))):
        return None
    try:
        digest = seal(store, task, moment(current.now()))
    except NotYet as reason:
        log.warning("%s is closed and not sealed yet: %s", task, reason)
        return None
    except Exception:
        log.exception("%s is closed and could not be sealed; it is tried again at the next start", task)
        return None
    current.changed()

    return digest
