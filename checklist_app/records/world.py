"""The world as the database holds it: one view for one request, on one day."""

from collections.abc import Iterable, Mapping
from functools import cached_property
from typing import Any

from checklist_app.checklists.entry import Entry, Path
from checklist_app.checklists.register import Item
from checklist_app.checklists.world import After
from checklist_app.records.database import Kept, Receipt, Seal
from checklist_app.records.store import Store

TASK = "task/"


class DatabaseWorld:
    """All that is kept, up to the last receipt at the moment it was made."""

    def __init__(self, store: Store, today: str) -> None:
        self.today = today
        self._store = store
        self._cursor = store.cursor()

    def entries(self, about: Path) -> list[Entry]:
        """Everything said about a task or an item that counts."""
        return list(self._store.memory.entries(tuple(about), self._cursor["number"]))

    def tasks(self) -> list[str]:
        """Ids of the tasks that were begun and are not sealed, the oldest first."""
        query = (Kept.select(Kept.subject).join(Receipt)
                 .where(Kept.type == "begin", Kept.subject.startswith(TASK), Receipt.counts)
                 .order_by(Receipt.number))
        begun = dict.fromkeys(subject.removeprefix(TASK) for (subject,) in query.tuples().execute(self._store.database))
        done = {task for (task,) in Seal.select(Seal.task).tuples().execute(self._store.database)}
        return [task for task in begun if task not in done]

    def items(self, register: str) -> Mapping[str, Item]:
        """The items of a register by their ids."""
        return self._items[register]

    def item(self, register: str, name: str) -> Item | None:
        """One item, or none of that id."""
        return self._items.get(register, {}).get(name)

    def part(self, digest: str) -> bytes | None:
        """The bytes of a part, or none while they have not arrived or when they were removed."""
        return self._store.parts.get(digest)

    def has_part(self, digest: str) -> bool:
        """Whether the bytes of a part are here."""
        return bool(self._store.parts.here([digest]))

    def cursor(self) -> Mapping[str, Any]:
        """How far receipts go: `number` and running `head`."""
        return self._cursor

    def sealed(self, task: str) -> str | None:
        """Digest of the record of a task, or none while it runs."""
        query = Seal.select(Seal.digest).where(Seal.task == task, Seal.of.is_null())
        row = query.tuples().first(self._store.database)
        return str(row[0]) if row else None

    def with_entries(self, kept: Iterable[Entry], parts: Mapping[str, bytes]) -> After:
        """The same world after these entries and parts."""
        return After(self, kept, parts)

    @cached_property
    def _items(self) -> Mapping[str, Mapping[str, Item]]:
        return self._store.memory.items_on(self.today, self._cursor["number"])
