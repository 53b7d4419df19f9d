"""Whether the records are what was sealed: every record, file, entry, photograph and link, in an auditor's words."""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from typing import Any

from checklist_app.checklists.canonical import NotCanonical, digest, parse
from checklist_app.records import cards, chain, files, receipts
from checklist_app.records.card_table import Card
from checklist_app.records.chain import Sealed
from checklist_app.records.code import code
from checklist_app.records.compared import differences
from checklist_app.records.contents import wrong_contents
from checklist_app.records.database import Server
from checklist_app.records.sqlite import reading
from checklist_app.records.store import Store

SHORTEST_WITNESS = 12
WORDED = frozenset({"governs", "used"})
"""What the catalogue says in words of the app; they may change with its version."""


@dataclass(frozen=True)
class Checked:
    """What was looked at, and everything that is wrong; nothing wrong is an empty list."""

    records: int
    last: str
    faults: tuple[str, ...]


def verify(store: Store, witnessed: Iterable[str] = (), only: str = "") -> Checked:
    """Look at every record, or at one.

    Args:
        store: Where the records are kept.
        witnessed: Digests, or their beginnings, that somebody kept elsewhere: from a print, a letter, a phone.
        only: Digest of the one record to look at.
    """
    with reading(store.database):  # a record sealed meanwhile is in all tables or in none
        return checked(store, witnessed, only)


def checked(store: Store, witnessed: Iterable[str], only: str) -> Checked:
    """The same, in a database that stands still."""
    sealed = chain.everything(store)
    looked_at = [one for one in sealed if only in ("", one.digest)]
    faults = [f"{name(one)}: {what}" for one in looked_at for what in wrong(store, one)]
    if not only:
        faults += [*wrong_links(store, sealed), *receipts.wrong(store), *wrong_cards(store, sealed)]
    faults += absent(sealed, witnessed)

    return Checked(len(looked_at), sealed[-1].digest if sealed else "", tuple(dict.fromkeys(faults)))


def name(one: Sealed) -> str:
    return f"record {one.number:04d}"


def wrong(store: Store, one: Sealed) -> Iterator[str]:
    """What is wrong with one record: its row, its two files, and what it covers."""
    path = files.text_path(store.records, one.number, one.digest)
    file = path.read_bytes() if path.exists() else None
    whole_row, whole_file = digest(one.data) == one.digest, file is not None and digest(file) == one.digest
    if not whole_row:
        yield "its text in the database was altered"
    if file is None:
        yield "its text file is gone"
    elif not whole_file:
        yield "its text file was altered"
    if whole_row != whole_file and file is not None:
        yield from altered(*((one.data, file) if whole_row else (file, one.data)))
    yield from wrong_pdf(store, one)
    if whole_row or whole_file:
        yield from wrong_contents(store, parse(one.data if whole_row else file or b""), one)


def altered(sealed: bytes, now: bytes) -> Iterator[str]:
    """The fields in which a changed text differs from the sealed one."""
    try:
        yield from differences(parse(sealed), parse(now))
    except NotCanonical:
        yield "it can no longer be read"


def wrong_pdf(store: Store, one: Sealed) -> Iterator[str]:
    path = files.pdf_path(store.records, one.number, one.digest)
    if not path.exists():
        yield "its PDF is gone"
    elif digest(path.read_bytes()) != one.pdf:
        yield "its PDF was altered"


def wrong_links(store: Store, sealed: list[Sealed]) -> Iterator[str]:
    """Whether each record hangs on the one before it, its PDF included, and none is missing between them."""
    origin = Server.select(Server.origin).tuples().first(store.database)[0]
    number, previous, pdf = 0, origin, ""
    for one in sealed:
        for lost in range(number + 1, one.number):
            yield f"record {lost:04d} is gone: record {one.number:04d} is here and has a higher number"
        if one.previous != previous and one.number == number + 1:
            yield f"{name(one)}: it does not follow from {'the record before it' if number else 'this server'}"
        yield from wrong_place(one, pdf if one.number == number + 1 else None)
        number, previous, pdf = one.number, one.digest, one.pdf


def wrong_place(one: Sealed, pdf_before: str | None) -> Iterator[str]:
    """Whether the row says the same as the text it holds."""
    try:
        record = one.record
    except NotCanonical:
        return
    rows = {"number": one.number, "previous": one.previous, "of": one.of, "sealed_at": one.sealed_at}
    for field, row in rows.items():
        if record.get(field) != row:
            yield f"{name(one)}: its row says {field.replace('_', ' ')} {row}, its text {record.get(field)}"
    if pdf_before is not None and record.get("previous_pdf") != pdf_before:
        yield f"record {one.number - 1:04d}: its PDF is not the one that {name(one)} names"


def wrong_cards(store: Store, sealed: list[Sealed]) -> Iterator[str]:
    """Whether the catalogue still says what the records say: a record that cannot be found is as good as gone.

    How another version of the app called a check is no alteration.
    """
    found: dict[str, Mapping[str, Any]] = {row["digest"]: row for row in Card.select().dicts().execute(store.database)}
    for one in sealed:
        row = found.pop(one.digest, None)
        if digest(one.data) != one.digest:
            continue
        if row is None:
            yield f"{name(one)}: it is missing in the catalogue: search does not find it"
        else:
            told = {field: said for field, said in cards.facts(one.record).items()
                    if field not in WORDED or one.record.get("code") == code()}
            yield from (f"{name(one)}: the catalogue was altered: {what}"
                        for what in differences(told, {field: row[field] for field in told}))
    yield from (f"the catalogue lists record {row['number']:04d}, which was never sealed" for row in found.values())


def absent(sealed: list[Sealed], witnessed: Iterable[str]) -> Iterator[str]:
    """A cut-off end and a rewritten whole show only to somebody who kept a digest."""
    for one in witnessed:
        wanted = "".join(one.split()).lower()
        if len(wanted) < SHORTEST_WITNESS:
            yield f"{one}: give at least {SHORTEST_WITNESS} signs of a digest"
        elif not any(each.digest.startswith(wanted) for each in sealed):
            yield f"the record witnessed as {wanted[:16]} … is not here: the end was cut off, or all was written anew"
