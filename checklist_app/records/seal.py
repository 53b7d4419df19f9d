"""Sealing: the text is built, put on paper, both go to the disk, and one row makes them a record.

No lock is held while the PDF is made. Whoever's row comes second finds its place in the chain taken, and builds anew.
"""

from collections.abc import Mapping
from typing import Any

from checklist_app.checklists.canonical import canonical, digest
from checklist_app.records import chain, files, signed_away, sqlite
from checklist_app.records.cards import card
from checklist_app.records.database import Kept, Receipt
from checklist_app.records.pdf.record import paper
from checklist_app.records.record import NoClosing, Record, build
from checklist_app.records.store import Store
from checklist_app.records.world import DatabaseWorld

TRIES = 40
DEMONSTRATION = "demonstration"
"""A file of this name in the store's folder marks everything in it as a demonstration."""


class NotYet(ValueError):
    """Why a task cannot be sealed now, in words for the one who waits."""


class Overtaken(Exception):
    """Something was written while the record was built."""


def seal(store: Store, task: str, at: str) -> str:
    """Make the record of a closed task, or a supplement of what came after it. Gives its digest.

    Args:
        store: Where it is kept.
        task: Id of the task.
        at: The server's time, such as 2026-11-25T11:40:00Z.

    Raises:
        NotYet: If something has to come first.
    """
    for _ in range(TRIES):
        try:
            return once(store, task, at)
        except (chain.Taken, Overtaken):
            continue
    raise NotYet("too many records are being sealed at once: try again")


def why_not(store: Store, task: str, at: str) -> str:
    """Why a task is not sealed yet; empty when it can be."""
    try:
        text(store, task, at)
    except NotYet as reason:
        return str(reason)

    return ""


def once(store: Store, task: str, at: str) -> str:
    """One try."""
    body, link, number_of_receipts = text(store, task, at)
    data = canonical(body)
    pdf = paper(body, store.parts.get)
    written = files.write(store.records, link.number, data, pdf)
    try:
        with sqlite.writing(store.database):
            if receipts(store, task) != number_of_receipts:
                raise Overtaken
            name = chain.hang(store, task, link, body["of"], at, data, pdf)
            card(body, name).execute(store.database)
    except (chain.Taken, Overtaken):
        if chain.find(store, digest(data)) is None:
            files.take_back(written)
        raise

    return name


def text(store: Store, task: str, at: str) -> tuple[Record, chain.Link, int]:
    """The record's text with its place in the chain, and how many receipts it knows."""
    if store.sealing_waits:
        raise NotYet("a backup was put back: a supervisor looks at the records first")
    arrived, world = receipts(store, task), DatabaseWorld(store, at[:10])
    earlier = chain.of_task(store, task)
    try:
        body = build(world, task)
    except NoClosing as reason:
        raise NotYet(str(reason)) from reason
    if body["awaited"]:
        raise NotYet(awaited(body))
    if words := signed_away.add_proofs(store, task, body):
        raise NotYet(words)
    link = chain.next_link(store)
    body |= {"kind": "record", "of": None, "number": link.number, "previous": link.previous,
             "previous_pdf": link.previous_pdf, "sealed_at": at, "late": [], "doubts": doubts(store, task),
             "demonstration": (store.folder / DEMONSTRATION).exists()}

    return (supplement(body, earlier) if earlier else body), link, arrived


def awaited(body: Mapping[str, Any]) -> str:
    """What has not arrived, counted."""
    count, absent = len(body["awaited"]), sum(not photo["here"] for photo in body["photos"])
    one, many = ("photograph", "photographs") if absent == count else ("photograph or text", "photographs or texts")

    some = f"1 {one} has" if count == 1 else f"{count} {many} have"

    return f"{some} not arrived yet: bring the phone that holds it into the network, or a supervisor declares it lost"


def supplement(body: Record, earlier: list[chain.Sealed]) -> Record:
    """What came after the seal, naming the last text of this task."""
    known = {name for one in earlier for name in (*one.record["entries"], *one.record["late"])}
    late = [name for name in body["entries"] if name not in known]
    if not late:
        raise NotYet("it is sealed, and nothing came since")

    return body | {"kind": "supplement", "of": earlier[-1].digest, "late": late}


def receipts(store: Store, task: str) -> int:
    """How many entries of a task have arrived."""
    return Kept.select().where(Kept.subject == f"task/{task}").count(store.database)


def doubts(store: Store, task: str) -> list[dict[str, str]]:
    """Entries that came with a doubt: from a revoked phone, brought by another, counted twice, without power."""
    query = (Receipt.select(Receipt.entry, Receipt.doubt).join(Kept)
             .where(Kept.subject == f"task/{task}", Receipt.doubt != "").order_by(Receipt.number))
    return [{"entry": entry, "words": words} for entry, words in query.tuples().execute(store.database)]
