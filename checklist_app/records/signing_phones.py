"""Sign-offs that arrive from phones with a key: what the server knows around each is gathered, then it is judged."""

from collections.abc import Iterable, Mapping
from datetime import datetime
from typing import Any

import peewee as p

from checklist_app.checklists.authority import SUPERVISOR, valid_on
from checklist_app.checklists.entry import Entry, trusted
from checklist_app.checklists.signing import BY_KEY, LOCKS
from checklist_app.records.database import Kept, Receipt
from checklist_app.records.devices import Devices
from checklist_app.records.door import CONFIRMED, LATER, Brought
from checklist_app.records.key_tables import SignKey
from checklist_app.records.keys import Keys
from checklist_app.records.memory import Memory
from checklist_app.records.moments import believed
from checklist_app.records.parts import Parts
from checklist_app.records.proof import UNREADABLE, WENT_BACK, Known, statement_in, unproved
from checklist_app.records.screen_lock import count

DECIDES = frozenset({"go_on", "acknowledge"})
NEVER = "1970-01-01T00:00:00Z"
NOT_HERE = "its statement has not arrived yet"


def is_by_key(entry: Entry) -> bool:
    """Whether a sign-off was made with a phone's key."""
    return entry.type == "signature" and entry.value["how"] in BY_KEY


def let_in_by_key(brought: Iterable[Brought], keys: Keys) -> None:
    """A sign-off with a registered key says itself who made it and where: whoever brings it, it is taken and judged."""
    for item in brought:
        if item.state == CONFIRMED or item.entry is None or not is_by_key(item.entry):
            continue
        key = keys.find(item.entry.value.get("key", ""))
        if key is not None and (key.device, key.person) == (item.entry.device, item.entry.author):
            item.state, item.words = CONFIRMED, ""


def wait_for_statements(brought: Iterable[Brought], parts: Parts) -> None:
    """A signature without what was signed cannot be judged: it stays on the phone, and comes again."""
    for item in brought:
        if item.state != CONFIRMED or item.entry is None or not is_by_key(item.entry):
            continue
        statement = item.entry.value["statement"]
        if statement not in item.parts and parts.get(statement) is None:
            item.state, item.words = LATER, NOT_HERE


class SigningPhones:
    """The judge of one store."""

    def __init__(self, keys: Keys, devices: Devices, memory: Memory, parts: Parts) -> None:
        self.keys, self.devices, self.memory, self.parts = keys, devices, memory, parts
        self.db: p.Database = keys.db

    def unproved(self, entry: Entry, role: str, parts: Mapping[str, bytes], received_at: str,
                 beside: Iterable[Entry] = ()) -> str:
        """Why a sign-off counts for nothing; empty when it counts. `parts` came along with it, and so did what counts
        `beside` it. A key of which there may be a copy ends."""
        data = parts.get(entry.value["statement"]) or self.parts.get(entry.value["statement"])
        signed = statement_in(data)
        if data is None or signed is None:
            return UNREADABLE
        key = self.keys.find(entry.value.get("key", ""))

        words = unproved(entry, data, Known(
            key, self.devices.is_revoked(entry.device), role, self._capacities(entry.author, received_at),
            self._authors(signed), self._contact(entry.device, signed, key), received_at, self._counts(entry, beside)))
        if words == WENT_BACK and key is not None:
            self.keys.end_copied(key.id, datetime.fromisoformat(received_at))

        return words

    def lapsed(self, entry: Entry, device: str, received_at: str) -> str:
        """Why somebody who decides as a supervisor is none any more, whatever day his phone says; empty if he is, or
        was never one, which is the checklist's to see.

        Args:
            device: Which one brought it, by its credential: what an entry says of its device is its own word. Its time
                is believed no further back than it was last told anything here.
        """
        if entry.type not in DECIDES:
            return ""
        contact = self.keys.last_contacts([device]).get(device, received_at)
        day = believed(entry.at, contact, received_at).date().isoformat()
        held = self._capacities(entry.author, received_at)
        gone = SUPERVISOR in held and not valid_on(held, SUPERVISOR, day)
        return "its author is a supervisor no more" if gone else ""

    def _capacities(self, person: str, received_at: str) -> dict[str, str]:
        day = self.memory.day or received_at[:10]
        found = self.memory.items_on(day, self._number())["person"].get(person)
        rows = found.facts.get("capacities", ()) if found is not None else ()
        held: dict[str, str] = {}
        for row in rows:
            held[str(row["capacity"])] = max(str(row.get("until", "")), held.get(str(row["capacity"]), ""))
        return held

    def _authors(self, signed: Mapping[str, Any]) -> dict[str, str]:
        rows = signed.get("inputs")
        named = [row["entry"] for row in rows if isinstance(row, dict) and isinstance(row.get("entry"), str)] \
            if isinstance(rows, list) else []
        found: dict[str, str] = {}
        for some in p.chunked(named, 500):
            query = Kept.select(Kept.digest, Kept.data).where(Kept.digest.in_(some)).tuples()
            found |= {name: trusted(bytes(data)).author for name, data in query.execute(self.db)}
        return found

    def _counts(self, entry: Entry, beside: Iterable[Entry]) -> tuple[tuple[int, int], ...]:
        """How the device and its authenticator had counted at the other sign-offs by this key that count.

        The same assertion in another entry is no second use of the key: whoever read it could bring it again, under
        whatever count of the device. So each counts as it came first.
        """
        if entry.value["how"] not in LOCKS:
            return ()
        query = (Kept.select(Kept.data).join(Receipt).order_by(Receipt.number)
                 .where(Kept.device == entry.device, Kept.type == "signature", Receipt.counts).tuples())
        found: dict[tuple[Any, Any], tuple[int, int]] = {}
        for one in (*(trusted(bytes(data)) for data, in query.execute(self.db)), *beside):
            if one.type == "signature" and one.value.get("key") == entry.value.get("key"):
                found.setdefault(_assertion(one), (one.counter, count(one.value)))
        return () if _assertion(entry) in found else tuple(found.values())

    def _contact(self, device: str, signed: Mapping[str, Any], key: SignKey | None) -> str:
        """When the phone was last in touch before it signed: it was told the number in the statement then, or some
        time after that receipt was given, or when its key was registered."""
        cursor = signed.get("cursor")
        number = cursor.get("number") if isinstance(cursor, dict) else None
        number = number if isinstance(number, int) and 0 <= number < 2**53 else 0
        row = Receipt.select(Receipt.received_at).where(Receipt.number == number).tuples().first(self.db)
        times = (self.keys.contact(device, number), row[0] if row else "", key.made_at if key else "")

        return max(*times) or NEVER

    def _number(self) -> int:
        query = Receipt.select(p.fn.MAX(Receipt.number)).tuples().first(self.db)
        return int(query[0] or 0)


def _assertion(entry: Entry) -> tuple[Any, Any]:
    """What a screen lock signed. Its signature is left out: anybody can make a second valid one from the first."""
    return entry.value.get("authenticator"), entry.value.get("client")
