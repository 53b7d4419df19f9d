"""Whether the order of arrival is still the one that was written: each receipt binds all before it."""

import hashlib
from collections.abc import Iterator

from checklist_app.records.database import Receipt, Server
from checklist_app.records.store import Store


def wrong(store: Store) -> Iterator[str]:
    """The first place at which receipts no longer follow from each other, and an end that is missing."""
    origin, last, last_head = Server.select(Server.origin, Server.number, Server.head).tuples().first(store.database)
    number, head = 0, origin
    query = Receipt.select(Receipt.number, Receipt.entry_id, Receipt.head).order_by(Receipt.number).tuples()
    for found, entry, kept in query.execute(store.database):
        number, head = number + 1, hashlib.sha256((head + entry).encode()).hexdigest()
        if found != number:
            yield f"receipts: number {number} is gone"
            return
        if kept != head:
            yield f"receipts: from number {number} on they do not follow from each other"
            return
    if (number, head) != (last, last_head):
        yield f"receipts: {last} were given, {number} are here"
