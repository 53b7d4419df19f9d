"""What came after a record was sealed: told with the record for good, and to everybody for two weeks."""

from collections.abc import Iterator, Mapping
from datetime import date, timedelta
from typing import Any

from checklist_app.records import chain
from checklist_app.records.chain import Sealed
from checklist_app.records.contents import question
from checklist_app.records.database import Seal
from checklist_app.records.store import Store

TOLD_DAYS = 14


def lately_supplemented(store: Store, today: str) -> Iterator[dict[str, str]]:
    """Supplements of the last two weeks, the newest first: where they are read, and in a sentence what they are."""
    since = (date.fromisoformat(today) - timedelta(days=TOLD_DAYS)).isoformat() if today else ""
    for one in reversed(chain.read(store, (Seal.of.is_null(False)) & (Seal.sealed_at >= since))):
        first = chain.of_task(store, one.task)[0]
        yield {"href": f"/records/{first.digest}",
               "words": f"{counted(len(one.record['late']))} after record {first.number:04d} was sealed"}


def came_after(store: Store, task: str) -> list[dict[str, Any]]:
    """The supplements of a task, each with what it adds, as far as that can be named."""
    return [{"href": f"/records/{one.digest}", "name": f"{one.number:04d}", "at": one.sealed_at,
             "words": counted(len(one.record["late"])), "said": said(one)}
            for one in chain.of_task(store, task) if one.of]


def said(one: Sealed) -> list[str]:
    """Each late entry as the question that it answers, with the answer that stands now."""
    record: Mapping[str, Any] = one.record
    return list(dict.fromkeys(question(record, name) for name in record["late"]))


def counted(late: int) -> str:
    """How many entries came."""
    return "1 entry came" if late == 1 else f"{late} entries came"
