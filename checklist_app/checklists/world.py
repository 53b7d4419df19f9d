"""All that a page may know: entries, registers, parts and how far receipts go, seen on a given day."""

from collections.abc import Callable, Iterable, Mapping
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
        return [name for (kind, name), said in self._by_subject.items()
                if kind == "task" and name not in self._sealed and any(entry.type == "begin" for entry in said)]

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

    def with_entries(self, kept: Iterable[Entry], parts: Mapping[str, bytes]) -> "MemoryWorld":
        """The same world after these entries and parts."""
        return MemoryWorld([*self._entries.values(), *kept], self._parts | dict(parts), today=self.today,
                           cursor=self._cursor, sealed=self._sealed)

    @cached_property
    def _by_subject(self) -> dict[Path, list[Entry]]:
        grouped: dict[Path, list[Entry]] = {}
        for entry in self._entries.values():
            grouped.setdefault(entry.about, []).append(entry)
        return grouped

    @cached_property
    def _items(self) -> dict[str, dict[str, Item]]:
        return {register: items_of(register, self._by_subject, self._parts.get, self.today) for register in REGISTERS}


def items_of(register: str, by_subject: Mapping[Path, list[Entry]], part: Callable[[str], bytes | None],
             day: str) -> dict[str, Item]:
    """The items of one register, by id and in the order of their ids."""
    found = {name: said for (kind, name), said in by_subject.items() if kind == register}
    return {name: item_of(found[name], documents(found[name], part), day) for name in sorted(found)}


def documents(entries: Iterable[Entry], part: Callable[[str], bytes | None]) -> dict[str, bytes]:
    """The parts that these entries name, as far as they are here."""
    named = {digest: part(digest) for entry in entries for digest in parts_named(entry.value)}
    return {digest: data for digest, data in named.items() if data is not None}
