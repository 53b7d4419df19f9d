"""All that a page may know: entries, registers, parts and how far receipts go, seen on a given day."""

from collections.abc import Iterable, Mapping
from functools import cached_property
from typing import Any, Protocol

from checklist_app.checklists.entry import Entry, Path
from checklist_app.checklists.register import REGISTERS, Item, item_of
from checklist_app.checklists.values import parts_named


class World(Protocol):
    """What the pages of a task ask for; on the server the database answers, on a phone what it holds."""

    @property
    def today(self) -> str:
        """The day, as YYYY-MM-DD, of the request that is answered."""

    def entries(self, about: Path) -> list[Entry]:
        """Everything said about a task or an item."""

    def tasks(self) -> list[str]:
        """Ids of the tasks that were begun and are not sealed, the oldest first."""

    def items(self, register: str) -> Mapping[str, Item]:
        """The items of a register by their ids."""

    def item(self, register: str, name: str) -> Item | None:
        """One item, or none of that id."""

    def part(self, digest: str) -> bytes | None:
        """The bytes of a part, or none while they have not arrived or when they were removed."""

    def has_part(self, digest: str) -> bool:
        """Whether the bytes of a part are here."""

    def cursor(self) -> Mapping[str, Any]:
        """How far receipts go: `number` and running `head`."""

    def sealed(self, task: str) -> str | None:
        """Digest of the record of a task, or none while it runs."""

    def with_entries(self, kept: Iterable[Entry], parts: Mapping[str, bytes]) -> "World":
        """The same world after these entries and parts."""


class MemoryWorld:
    """A world held in memory: what a phone knows, what a test sets up."""

    def __init__(self, entries: Iterable[Entry] = (), parts: Mapping[str, bytes] | None = None, *, today: str,
                 cursor: Mapping[str, Any] | None = None, sealed: Mapping[str, str] | None = None) -> None:
        self.today = today
        self._entries = {entry.digest: entry for entry in entries}
        self._parts = dict(parts or {})
        self._cursor = dict(cursor or {"number": 0, "head": ""})
        self._sealed = dict(sealed or {})

    def entries(self, about: Path) -> list[Entry]:
        """Everything said about a task or an item."""
        return list(self._by_subject.get(tuple(about), ()))

    def tasks(self) -> list[str]:
        """Ids of the tasks that were begun and are not sealed, the oldest first."""
        return [task for task in begun(self._entries.values()) if task not in self._sealed]

    def items(self, register: str) -> Mapping[str, Item]:
        """The items of a register by their ids."""
        return self._items[register]

    def item(self, register: str, name: str) -> Item | None:
        """One item, or none of that id."""
        return self._items.get(register, {}).get(name)

    def part(self, digest: str) -> bytes | None:
        """The bytes of a part, or none while they have not arrived or when they were removed."""
        return self._parts.get(digest)

    def has_part(self, digest: str) -> bool:
        """Whether the bytes of a part are here."""
        return digest in self._parts

    def cursor(self) -> Mapping[str, Any]:
        """How far receipts go: `number` and running `head`."""
        return self._cursor

    def sealed(self, task: str) -> str | None:
        """Digest of the record of a task, or none while it runs."""
        return self._sealed.get(task)

    def with_entries(self, kept: Iterable[Entry], parts: Mapping[str, bytes]) -> "After":
        """The same world after these entries and parts."""
        return After(self, kept, parts)

    @cached_property
    def _by_subject(self) -> dict[Path, list[Entry]]:
        grouped: dict[Path, list[Entry]] = {}
        for entry in self._entries.values():
            grouped.setdefault(entry.about, []).append(entry)
        return grouped

    @cached_property
    def _items(self) -> dict[str, dict[str, Item]]:
        found: dict[str, dict[str, Item]] = {register: {} for register in REGISTERS}
        for (register, name), said in sorted(self._by_subject.items()):
            if register in found:
                found[register][name] = item_of(said, documents(said, self), self.today)
        return found


class After:
    """A world after entries that are not kept yet: what the page shows that answers them."""

    def __init__(self, before: World, kept: Iterable[Entry], parts: Mapping[str, bytes]) -> None:
        self._before = before
        self._kept = tuple(kept)
        self._parts = dict(parts)

    @property
    def today(self) -> str:
        """The day of the request that is answered."""
        return self._before.today

    def entries(self, about: Path) -> list[Entry]:
        """Everything said about a task or an item."""
        before = self._before.entries(about)
        return list(dict.fromkeys([*before, *(entry for entry in self._kept if entry.about == tuple(about))]))

    def tasks(self) -> list[str]:
        """Ids of the tasks that were begun and are not sealed, the oldest first."""
        new = [task for task in begun(self._kept) if self.sealed(task) is None]
        return list(dict.fromkeys([*self._before.tasks(), *new]))

    def items(self, register: str) -> Mapping[str, Item]:
        """The items of a register by their ids."""
        return self._items[register] if register in self._items else self._before.items(register)

    def item(self, register: str, name: str) -> Item | None:
        """One item, or none of that id."""
        return self._items.get(register, {}).get(name) or self._before.item(register, name)

    def part(self, digest: str) -> bytes | None:
        """The bytes of a part, or none while they have not arrived or when they were removed."""
        return self._parts[digest] if digest in self._parts else self._before.part(digest)

    def has_part(self, digest: str) -> bool:
        """Whether the bytes of a part are here."""
        return digest in self._parts or self._before.has_part(digest)

    def cursor(self) -> Mapping[str, Any]:
        """How far receipts go: `number` and running `head`; what is not kept has none."""
        return self._before.cursor()

    def sealed(self, task: str) -> str | None:
        """Digest of the record of a task, or none while it runs."""
        return self._before.sealed(task)

    def with_entries(self, kept: Iterable[Entry], parts: Mapping[str, bytes]) -> "After":
        """The same world after these entries and parts too."""
        return After(self, kept, parts)

    @cached_property
    def _items(self) -> dict[str, dict[str, Item]]:
        """The registers that these entries touch."""
        touched = sorted({entry.about for entry in self._kept if entry.about[0] in REGISTERS})
        found = {register: dict(self._before.items(register)) for register, _ in touched}
        for register, name in touched:
            said = self.entries((register, name))
            found[register][name] = item_of(said, documents(said, self), self.today)
        return {register: dict(sorted(items.items())) for register, items in found.items()}


def begun(entries: Iterable[Entry]) -> list[str]:
    """Ids of the tasks that these entries begin, in their order."""
    tasks = (entry.about[1] for entry in entries if entry.type == "begin" and entry.about[0] == "task")
    return list(dict.fromkeys(tasks))


def documents(entries: Iterable[Entry], world: World) -> dict[str, bytes]:
    """The parts that these entries name, as far as they are here."""
    named = {digest: world.part(digest) for entry in entries for digest in parts_named(entry.value)}
    return {digest: data for digest, data in named.items() if data is not None}
