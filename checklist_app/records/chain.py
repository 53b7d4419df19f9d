"""The chain of records: each names the one before, so that none can be changed, taken out or put in unseen."""

import zlib
from dataclasses import dataclass
from typing import Any

import peewee as p

from checklist_app.checklists.canonical import digest, parse
from checklist_app.records.database import Seal, Server
from checklist_app.records.store import Store


@dataclass(frozen=True)
class Link:
    """Where the next record hangs: its number, the record before it and that one's PDF."""

    number: int
    previous: str
    previous_pdf: str


@dataclass(frozen=True)
class Sealed:
    """One record or supplement as the database has it."""

    digest: str
    number: int
    task: str
    of: str | None
    previous: str
    sealed_at: str
    pdf: str
    data: bytes

    @property
    def record(self) -> dict[str, Any]:
        """The sealed text, read."""
        found: dict[str, Any] = parse(self.data)
        return found


def packed(data: bytes) -> bytes:
    """A sealed text as its row holds it."""
    return zlib.compress(data, 9)


def unpacked(data: object) -> bytes:
    """What a row holds; a row that somebody changed gives bytes that no digest fits, and never an error."""
    try:
        return zlib.decompress(data.encode("utf-8", "replace") if isinstance(data, str) else bytes(data))  # type: ignore
    except (zlib.error, TypeError):
        return b""


def next_link(store: Store) -> Link:
    """The free end of the chain; before the first record it is this server's random origin."""
    row = Seal.select(Seal.number, Seal.digest, Seal.pdf).order_by(Seal.number.desc()).tuples().first(store.database)
    if row is not None:
        return Link(row[0] + 1, row[1], row[2])

    return Link(1, Server.select(Server.origin).tuples().first(store.database)[0], "")


def of_task(store: Store, task: str) -> list[Sealed]:
    """The record of a task and its supplements, in the order in which they were sealed."""
    return read(store, Seal.task == task)


def find(store: Store, name: str) -> Sealed | None:
    """One record by its digest."""
    return next(iter(read(store, Seal.digest == name)), None)


def everything(store: Store) -> list[Sealed]:
    """All records and supplements by their numbers."""
    return read(store, Seal.number > 0)


def read(store: Store, which: Any) -> list[Sealed]:
    query = Seal.select().where(which).order_by(Seal.number).dicts()
    return [Sealed(row["digest"], row["number"], row["task"], row["of"], row["previous"], row["sealed_at"], row["pdf"],
                   unpacked(row["data"])) for row in query.execute(store.database)]


def hang(store: Store, task: str, link: Link, of: str | None, sealed_at: str, data: bytes, pdf: bytes) -> str:
    """Write a record's row inside the caller's transaction; gives its digest.

    Raises:
        peewee.IntegrityError: If another process hung its record here first.
    """
    name = digest(data)
    Seal.insert(digest=name, number=link.number, task=task, previous=link.previous, of=of, sealed_at=sealed_at,
                pdf=digest(pdf), data=packed(data)).execute(store.database)

    return name


Taken = p.IntegrityError
