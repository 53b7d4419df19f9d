"""What one store has read already: entries grouped by what they are about, folded registers, kept up by receipt number.

Receipts only grow, so whatever came after the last number seen is all there is to read again.
"""

from collections import OrderedDict
from collections.abc import Iterable, Mapping
from threading import Lock

import peewee as p

from checklist_app.checklists.entry import Entry, Path, trusted
from checklist_app.checklists.register import REGISTERS, Item, item_of
from checklist_app.checklists.values import parts_named
from checklist_app.records.database import Kept, Receipt
from checklist_app.records.parts import Parts

MOST_TASKS = 200


class Memory:
    """Shared by all requests of one process; everything it gives out is never changed afterwards."""

    def __init__(self, database: p.Database, parts: Parts) -> None:
        self.db = database
        self.parts = parts
        self.lock = Lock()
        self.number = 0
        self.day = ""
        self.registers: dict[Path, tuple[Entry, ...]] = {}
        self.tasks: OrderedDict[Path, tuple[Entry, ...]] = OrderedDict()
        self.items: dict[str, dict[str, Item]] = {register: {} for register in REGISTERS}
        self.stale: set[Path] = set()

    def items_on(self, day: str, number: int) -> Mapping[str, Mapping[str, Item]]:
        """The registers as they stand on a day after that receipt."""
        with self.lock:
            self._catch_up(number)
            if day != self.day:
                self.day, self.stale = day, set(self.registers)
            self._fold_stale()
            return self.items

    def entries(self, about: Path, number: int) -> tuple[Entry, ...]:
        """What counts of all that was said about a task or an item, up to the last receipt."""
        with self.lock:
            self._catch_up(number)
            if about[0] in REGISTERS:
                return self.registers.get(about, ())
            if about not in self.tasks:
                self.tasks[about] = self._load(about)
            self.tasks.move_to_end(about)
            while len(self.tasks) > MOST_TASKS:
                self.tasks.popitem(last=False)
            return self.tasks[about]

    def _catch_up(self, number: int) -> None:
        if number <= self.number:
            return
        query = (Receipt.select(Receipt.number, Kept.subject, Kept.data).join(Kept)
                 .where(Receipt.number > self.number, Receipt.counts).order_by(Receipt.number))
        if self.number == 0:
            query = query.where(~Kept.subject.startswith("task/"))
        for arrived, subject, data in query.tuples().execute(self.db):
            register, _, name = subject.partition("/")
            self._add((register, name), trusted(bytes(data)))
            number = max(number, arrived)
        self.number = number

    def _add(self, about: Path, entry: Entry) -> None:
        if about[0] in REGISTERS:
            self.registers[about] = (*self.registers.get(about, ()), entry)
            self.stale.add(about)
        elif about in self.tasks and entry not in self.tasks[about]:
            self.tasks[about] = (*self.tasks[about], entry)

    def _load(self, about: Path) -> tuple[Entry, ...]:
        query = (Receipt.select(Kept.data).join(Kept).where(Kept.subject == "/".join(about), Receipt.counts)
                 .order_by(Receipt.number))
        return tuple(trusted(bytes(data)) for (data,) in query.tuples().execute(self.db))

    def _fold_stale(self) -> None:
        """Fold what changed. An item whose document has not arrived is folded again each time until it has."""
        if not self.stale:
            return
        named = {about: _texts(self.registers[about]) for about in self.stale}
        here = self.parts.small(set().union(*named.values()))
        items = {register: dict(found) for register, found in self.items.items()}
        waiting = set()
        for about in self.stale:
            entries = self.registers[about]
            items[about[0]][about[1]] = item_of(entries, here, self.day)
            if not named[about] <= here.keys():
                waiting.add(about)
        self.items = {register: dict(sorted(found.items())) for register, found in items.items()}
        self.stale = waiting


def _texts(entries: Iterable[Entry]) -> set[str]:
    """Documents and reasons that these entries name; an item is folded without its photographs."""
    return {part for entry in entries if entry.type != "photo" for part in parts_named(entry.value)}
