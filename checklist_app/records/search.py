"""Finding records: by day, load, gear, person, verdict and closing. Nothing here changes anything."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from functools import reduce
from operator import and_
from typing import Any

from checklist_app.records.card_table import Card
from checklist_app.records.store import Store

PAGE = 50


@dataclass(frozen=True)
class Wanted:
    """What is looked for; what is empty does not matter. Days are YYYY-MM-DD."""

    text: str = ""
    gear: str = ""
    person: str = ""
    since: str = ""
    until: str = ""
    verdict: str = ""
    closing: str = ""
    above: int | None = None
    voids: bool = False
    stops: bool = False


@dataclass(frozen=True)
class Found:
    """One page of what was found, and how much there is in all."""

    cards: tuple[Mapping[str, Any], ...]
    count: int
    highest: int | None


def search(store: Store, wanted: Wanted, page: int = 1) -> Found:
    """The records that fit, the newest first."""
    query = Card.select().where(reduce(and_, conditions(wanted), Card.number > 0))
    rows = query.order_by(Card.number.desc()).paginate(page, PAGE).dicts().execute(store.database)
    highest = max((one for (one,) in query.select(Card.highest).tuples().execute(store.database) if one is not None),
                  default=None)

    return Found(tuple(rows), query.count(store.database), highest)


def conditions(wanted: Wanted) -> Iterable[Any]:
    """One condition for each thing asked for. Every word of the search field must be found."""
    yield from (Card.said.contains(word) for word in wanted.text.lower().split())
    if wanted.gear:
        yield Card.said.contains(f"gear:{wanted.gear.lower()}|")
    if wanted.person:
        yield Card.said.contains(f"person:{wanted.person.lower()}|")
    if wanted.since:
        yield Card.day >= wanted.since
    if wanted.until:
        yield Card.day <= wanted.until
    if wanted.verdict:
        yield Card.verdict == wanted.verdict
    if wanted.closing:
        yield Card.closing == wanted.closing
    if wanted.above is not None:
        yield Card.highest >= wanted.above
    if wanted.voids:
        yield Card.voids > 0
    if wanted.stops:
        yield Card.stops > 0
