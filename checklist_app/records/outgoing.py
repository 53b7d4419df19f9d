"""What a phone is given, so that it can go on alone: running tasks and registers, never PINs and never contacts."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Any

import peewee as p

from checklist_app.checklists.entry import trusted
from checklist_app.checklists.values import parts_named
from checklist_app.records.account_tables import Account
from checklist_app.records.database import Kept, Receipt, Seal
from checklist_app.records.moments import moment
from checklist_app.records.parts import PICTURES
from checklist_app.records.store import PAGE, Store

TASK = "task/"
HEARD_DAYS = 35
"""A phone keeps what was confirmed for 30 days; for as long, and a little more, it hears what was sealed."""


@dataclass(frozen=True)
class Outgoing:
    """One page of what a phone has not seen. `powerless` are digests of what is kept and counts for nothing.

    A part has no text where it is a photograph: the phone only learns that it is here.
    """

    entries: tuple[tuple[int, str], ...]
    powerless: tuple[str, ...]
    parts: Mapping[str, str | None]
    cursor: Mapping[str, Any]
    more: bool


def outgoing(store: Store, cursor: Mapping[str, Any], wanted: Iterable[str] = (), limit: int = PAGE) -> Outgoing:
    """What came after a phone's cursor. The entries of sealed tasks stay here, where their records can be read.

    Args:
        store: What is kept.
        cursor: How far the phone is.
        wanted: Digests of parts that the phone heard of and does not have.
        limit: How many entries at most.

    Raises:
        SetBack: If this server never gave that cursor.
    """
    store.since(cursor, limit=1)
    end = store.cursor()
    found = _after(store, int(cursor["number"]), int(end["number"]), limit)
    more = len(found) == limit
    if more:
        head = Receipt.select(Receipt.head).where(Receipt.number == found[-1][0]).tuples().first(store.database)
        end = {"number": found[-1][0], "head": head[0]}
    bodies = tuple((number, bytes(data)) for number, _, data, counts in found if counts)
    named = {name for _, data in bodies for name in parts_named(trusted(data).value)}

    return Outgoing(tuple((number, data.decode()) for number, data in bodies),
                    tuple(digest for _, digest, _, counts in found if not counts),
                    _texts(store, named | set(wanted)), end, more)


def sealed_lately(store: Store, now: datetime) -> dict[str, str]:
    """Record by task, of those sealed so lately that a phone may still hold the task."""
    since = moment(now - timedelta(days=HEARD_DAYS))
    query = Seal.select(Seal.task, Seal.digest).where(Seal.of.is_null(), Seal.sealed_at >= since)

    return dict(query.tuples().execute(store.database))


def people(store: Store) -> list[dict[str, str]]:
    """Who has an account: id, name and role, and nothing by which he signs in or can be reached."""
    query = Account.select(Account.person, Account.name, Account.role).where(Account.active).order_by(Account.name)

    return [{"id": person, "name": name, "role": role} for person, name, role in query.tuples().execute(store.database)]


def _after(store: Store, number: int, until: int, limit: int) -> list[tuple[int, str, bytes, bool]]:
    sealed = Seal.select(p.Value(TASK).concat(Seal.task)).where(Seal.of.is_null())
    query = (Receipt.select(Receipt.number, Kept.digest, Kept.data, Receipt.counts).join(Kept)
             .where(Receipt.number > number, Receipt.number <= until, Kept.subject.not_in(sealed))
             .order_by(Receipt.number).limit(limit))

    return list(query.tuples().execute(store.database))


def _texts(store: Store, named: set[str]) -> dict[str, str | None]:
    """The parts that are here. What is no text, such as a photograph, is not sent."""
    small = store.parts.small(named)
    found: dict[str, str | None] = {}
    for name in named:
        data = small.get(name) or store.parts.get(name)
        if data is not None:
            found[name] = None if data.startswith(PICTURES) else _text(data)

    return found


def _text(data: bytes) -> str | None:
    try:
        return data.decode()
    except UnicodeDecodeError:
        return None
