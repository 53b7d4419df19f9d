"""What is kept, and the one way in: a batch is one transaction, and is answered after it is on the disk."""

import hashlib
from collections.abc import Container, Iterable, Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from checklist_app.checklists.entry import Entry, trusted
from checklist_app.records import sqlite
from checklist_app.records.account_tables import Account
from checklist_app.records.clocks import ahead_doubt
from checklist_app.records.database import Kept, Receipt, Server
from checklist_app.records.devices import Devices
from checklist_app.records.door import (
    ONCE,
    Brought,
    brought_as,
    comes_second,
    look_at,
    powerless,
    refuse_strangers,
    unsound,
    wait_for_power,
)
from checklist_app.records.keys import Keys
from checklist_app.records.memory import Memory
from checklist_app.records.parts import LARGEST_BYTES, Parts, refuse_other
from checklist_app.records.signing_phones import SigningPhones, is_by_key, let_in_by_key, wait_for_statements
from checklist_app.records.upgrade import prepare

DATABASE = "checklist.db"
PAGE = 500
AUDITOR = "auditor"
SERVERS_OWN = "s-"
"""Names of devices that are this server begin so: they count in many threads at once."""


class SetBack(LookupError):
    """This server does not know what a device last had from it (a backup was put back): offer everything again."""


@dataclass(frozen=True)
class Arrival:
    """An entry with its receipt."""

    entry: Entry
    number: int
    received_at: str
    device: str
    doubt: str
    counts: bool


class Store:
    """All that one server keeps, in one folder."""

    def __init__(self, folder: Path | str) -> None:
        self.folder = Path(folder)
        self.records, self.backups = self.folder / "records", self.folder / "backups"
        for inside in (self.folder, self.records, self.backups):
            inside.mkdir(parents=True, exist_ok=True)
        self.database = sqlite.opened(self.folder / DATABASE)
        prepare(self.database, self.folder / DATABASE, self.backups)
        self.parts = Parts(self.database, self.folder / "parts")
        self.devices = Devices(self.database)
        self.memory = Memory(self.database, self.parts)
        self.keys = Keys(self.database)
        self.signing_phones = SigningPhones(self.keys, self.devices, self.memory, self.parts)

    def close(self) -> None:
        """Give back this thread's connection."""
        self.database.close()

    def put(self, device: str, batch: Sequence[Any], received_at: str, vouched: bool = False,
            present: Container[str] | None = None, clock: str = "") -> list[dict[str, Any]]:
        """Take what a device brings; one answer an item, in order: confirmed, refused in words, or later.

        Args:
            device: Name of the device, found by its secret.
            batch: Items `{"body": text of an entry, "parts": {digest: text}}`.
            received_at: The server's time.
            vouched: A supervisor answers for entries of people who never signed in on this device.
            present: Who is signed in there at this moment; without it, everybody who did not sign out.
            clock: The doubt about the device's clock, if it is far off.

        Raises:
            TooMany: If the batch is larger than one is taken.
        """
        brought = look_at(batch)
        here, named = self.devices.signed_in(device), set(self.keys.good(device))
        if vouched:
            named |= {item.entry.author for item in brought if item.entry is not None}
        absent = {person: role for person, role in self._roles(named).items() if not here.get(person, False)}
        here |= dict.fromkeys((*self.keys.good(device), *absent), True)
        refuse_strangers(brought, here, self._numbers(item.digest for item in brought))
        let_in_by_key(brought, self.keys)
        wait_for_statements(brought, self.parts)
        if present is not None:
            authors = {item.entry.author for item in brought if item.entry is not None} - absent.keys()
            wait_for_power(self._fresh(brought), self._roles(authors), present)
        taken = {item.digest: item.entry for item in brought if item.entry is not None and item.state == "confirmed"}
        parts = {name: data for item in brought if item.digest in taken for name, data in item.parts.items()}
        roles = self._roles({entry.author for entry in taken.values()})
        roles |= {person: brought_as(role) for person, role in absent.items()}
        self.parts.write_files(parts)
        with sqlite.writing(self.database):  # what is said once must not be new to two batches at the same moment
            marks = self._marks(taken, parts, roles, device, received_at)
            numbers = self._write(list(taken.values()), parts, device, received_at, marks, clock)

        return [item.answered(numbers.get(item.digest)) for item in brought]

    def keep(self, made: Iterable[Entry], parts: Mapping[str, bytes], device: str, received_at: str,
             clock: str = "") -> dict[str, int]:
        """Keep entries that a page of this server answered with; gives each one's receipt number.

        Args:
            clock: As in `put`.

        Raises:
            NotThatPart: If a part is not what its digest says; nothing is kept then.
        """
        for name, data in parts.items():
            refuse_other(name, data, LARGEST_BYTES)

        self.parts.write_files(parts)
        with sqlite.writing(self.database):
            return self._write(list(made), parts, device, received_at, {}, clock)

    def entries(self, about: tuple[str, str]) -> list[Entry]:
        """What counts of all that was said about a task or an item, in the order of arrival."""
        return [arrival.entry for arrival in self.arrivals(about) if arrival.counts]

    def arrivals(self, about: tuple[str, str]) -> list[Arrival]:
        """Everything said about a task or an item, with receipts, in the order of arrival."""
        return _arrivals(self.database, Kept.subject == "/".join(about))

    def since(self, cursor: Mapping[str, Any], limit: int = PAGE) -> tuple[list[Arrival], dict[str, Any]]:
        """What came after a device's cursor, and its next cursor; number 0 is always known.

        Raises:
            SetBack: If this server never gave that cursor.
        """
        number, head = int(cursor["number"]), str(cursor["head"])
        known = Receipt.select().where(Receipt.number == number, Receipt.head == head)
        if number and not known.exists(self.database):
            raise SetBack("this server does not know what you last had from it: offer all you hold again")
        found = _arrivals(self.database, Receipt.number > number, limit)
        if not found:
            return [], {"number": number, "head": head}
        last = Receipt.select(Receipt.head).where(Receipt.number == found[-1].number).tuples().first(self.database)

        return found, {"number": found[-1].number, "head": last[0]}

    def cursor(self) -> dict[str, Any]:
        """How far receipts go: number and running digest."""
        return dict(Server.select(Server.number, Server.head).dicts().first(self.database))

    def next_counter(self, device: str) -> int:
        """One more than the highest counter that a device has used here."""
        query = Kept.select(Kept.counter).where(Kept.device == device).order_by(Kept.counter.desc())
        row = query.tuples().first(self.database)
        return int(row[0]) + 1 if row else 1

    def has_counted(self, device: str, counter: int) -> bool:
        """Whether an entry of this device with this counter is kept."""
        return bool(Kept.select().where(Kept.device == device, Kept.counter == counter).exists(self.database))

    @property
    def sealing_waits(self) -> bool:
        """Whether a supervisor must look at the records first, because a backup was put back."""
        return bool(Server.select(Server.sealing_waits).tuples().first(self.database)[0])

    def let_sealing_go_on(self) -> None:
        """A supervisor has looked at the records after a backup was put back."""
        Server.update(sealing_waits=False).execute(self.database)

    def _fresh(self, brought: Sequence[Brought]) -> list[Brought]:
        kept = self._numbers(item.digest for item in brought)
        return [item for item in brought if item.digest not in kept]

    def _marks(self, taken: Mapping[str, Entry], parts: Mapping[str, bytes], roles: Mapping[str, str], device: str,
               received_at: str) -> dict[str, str]:
        """Why an entry counts for nothing, by its digest; empty for one that counts."""
        said, marks = self._said_once({entry.subject for entry in taken.values() if entry.type in ONCE}), {}
        for name, entry in taken.items():
            role = roles.get(entry.author, "")
            if is_by_key(entry) and role != AUDITOR:
                beside = [taken[other] for other, mark in marks.items() if not mark]
                marks[name] = self.signing_phones.unproved(entry, role, parts, received_at, beside)
                continue
            marks[name] = (powerless(entry, role) or comes_second(entry, role, said) or unsound(entry, parts)
                           or self.signing_phones.lapsed(entry, device, received_at))
            if not marks[name]:
                said.add((entry.subject, entry.type))

        return marks

    def _said_once(self, subjects: set[str]) -> set[tuple[str, str]]:
        """Subject and type of what counts already of what is said once."""
        query = (Kept.select(Kept.subject, Kept.type).join(Receipt)
                 .where(Kept.subject.in_(list(subjects)), Kept.type.in_(ONCE), Receipt.counts).distinct())
        return set(query.tuples().execute(self.database)) if subjects else set()

    def _numbers(self, digests: Iterable[str]) -> dict[str, int]:
        query = Receipt.select(Receipt.entry, Receipt.number).where(Receipt.entry.in_(list(digests)))
        return dict(query.tuples().execute(self.database))

    def _roles(self, people: set[str]) -> dict[str, str]:
        query = Account.select(Account.person, Account.role).where(Account.person.in_(list(people)), Account.active)
        return dict(query.tuples().execute(self.database))

    def _write(self, entries: list[Entry], parts: Mapping[str, bytes], device: str, received_at: str,
               marks: Mapping[str, str], clock: str = "") -> dict[str, int]:
        self.parts.insert_rows(parts)
        numbers = self._numbers(entry.digest for entry in entries)
        fresh = list({entry.digest: entry for entry in entries if entry.digest not in numbers}.values())
        doubts = self._doubts(fresh, device, received_at, clock)
        return numbers | self._receive(fresh, device, received_at, doubts, marks)

    def _receive(self, fresh: list[Entry], device: str, received_at: str, doubts: Mapping[str, str],
                 marks: Mapping[str, str]) -> dict[str, int]:
        if not fresh:
            return {}
        cursor = self.cursor()
        number, head = cursor["number"], cursor["head"]
        kept, receipts = [], []
        for entry in fresh:
            number, head = number + 1, hashlib.sha256((head + entry.digest).encode()).hexdigest()
            mark = marks.get(entry.digest, "")
            doubt = "; ".join(words for words in (mark, doubts.get(entry.digest, "")) if words)
            kept.append((entry.digest, entry.subject, entry.type, entry.device, entry.counter, entry.data))
            receipts.append((number, entry.digest, received_at, device, doubt, not mark, head))
        Kept.insert_many(kept, fields=Kept._meta.sorted_fields).execute(self.database)
        Receipt.insert_many(receipts, fields=Receipt._meta.sorted_fields).execute(self.database)
        Server.update(number=number, head=head).execute(self.database)

        return {row[1]: row[0] for row in receipts}

    def _doubts(self, fresh: list[Entry], device: str, received_at: str, clock: str) -> dict[str, str]:
        revoked = self.devices.is_revoked(device)
        used = self._used(fresh)
        doubts = {}
        for entry in fresh:
            said = ["this phone was revoked"] if revoked else []
            said += [f"brought by {device}"] if device != entry.device else []
            said += ["counted twice: a phone set back or copied"] if (entry.device, entry.counter) in used else []
            said += [doubt] if (doubt := clock or ahead_doubt(entry.at, received_at)) else []
            doubts[entry.digest] = "; ".join(said)
        return doubts

    def _used(self, fresh: list[Entry]) -> set[tuple[str, int]]:
        """Counters used before. The device stands first: counter alone has no index and would read everything."""
        devices = {entry.device for entry in fresh if not entry.device.startswith(SERVERS_OWN)}
        counters = [entry.counter for entry in fresh]
        query = Kept.select(Kept.device, Kept.counter).where(Kept.device.in_(list(devices)), Kept.counter.in_(counters))
        return set(query.distinct().tuples().execute(self.database)) if devices else set()


def _arrivals(database: Any, which: Any, limit: int | None = None) -> list[Arrival]:
    query = (Receipt.select(Kept.data, Receipt.number, Receipt.received_at, Receipt.device, Receipt.doubt,
                            Receipt.counts).join(Kept).where(which).order_by(Receipt.number).limit(limit))
    return [Arrival(trusted(bytes(data)), number, received_at, device, doubt, bool(counts))
            for data, number, received_at, device, doubt, counts in query.tuples().execute(database)]
