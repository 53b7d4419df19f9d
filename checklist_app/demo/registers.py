"""People, places, hoists, gear and loads of the invented yard, as entries in its registers."""

import secrets
from collections.abc import Iterator
from datetime import date, timedelta
from typing import Any

from checklist_app.checklists import values
from checklist_app.checklists.answer import Person, Request
from checklist_app.checklists.made import Made
from checklist_app.demo.data import dated, day, table
from checklist_app.operations import fields
from checklist_app.operations.kinds import KINDS
from checklist_app.records.accounts import Accounts
from checklist_app.records.store import Store

BEGAN_DAYS = -400
BOUGHT_DAYS = -370
EXAMINED_EVERY_DAYS = {"gear": 182, "machine": 365}
DEVICE = "s-demonstration"
FILES = ("places", "machines", "gear", "loads")


def fill_people(store: Store, accounts: Accounts, today: date) -> None:
    """Accounts and their entries; the administrator has entered everybody, himself too."""
    people = table("people")["person"]
    made = _made(store, people, "administrator", day(today, BEGAN_DAYS))
    for person in people:
        accounts.add(person["id"], person["name"], person["role"])
        held = [{"capacity": row["capacity"], "until": day(today, row["days"])} for row in person["capacities"]]
        facts = {"name": person["name"]} | ({"capacities": held} if held else {})
        _say_version(made, "person", person["id"], facts)
    _keep(store, made)


def fill_items(store: Store, today: date) -> None:
    """Versions first, then what was examined, each on its own day."""
    people = table("people")["person"]
    bought = _made(store, people, "supervisor", day(today, BOUGHT_DAYS))
    for item in _items():
        _say_version(bought, item["kind"], item["id"], dated(item["facts"], today))
        if _about(item)[0] in EXAMINED_EVERY_DAYS and "due" not in item:
            bought.say(_about(item), ("custody",), values.custody("incoming", day(today, BOUGHT_DAYS)))
    _keep(store, bought)
    for due in sorted({_examined_on(item, today) for item in _items() if "due" in item}):
        _examine(store, people, today, due)


def fill_quarantine(store: Store, today: date) -> None:
    """What somebody has taken out of use since."""
    people = table("people")["person"]
    for item in _items():
        if (held := item.get("quarantine")) is not None:
            on = day(today, held["days"])
            made = _made(store, people, held["by"], on)
            made.say(_about(item), ("quarantine",), values.quarantine(on, made.words(held["why"])))
            _keep(store, made)


def _examine(store: Store, people: list[dict[str, Any]], today: date, on: str) -> None:
    made = _made(store, people, "rhona-pike", on)
    for item in _items():
        if "due" in item and _examined_on(item, today) == on:
            due, said = day(today, item["due"]), made.words("By Rhona Pike, examiner.")
            made.say(_about(item), ("examination",), values.examination("fit for use", on, due, said))
            made.say(_about(item), ("custody",), values.custody("in service", on))
    _keep(store, made)


def _items() -> Iterator[dict[str, Any]]:
    for name in FILES:
        yield from table(name)["item"]


def _about(item: dict[str, Any]) -> tuple[str, str]:
    return KINDS[item["kind"]].register, item["id"]


def _examined_on(item: dict[str, Any], today: date) -> str:
    return (today + timedelta(days=item["due"] - EXAMINED_EVERY_DAYS[_about(item)[0]])).isoformat()


def _say_version(made: Made, kind_name: str, name: str, facts: dict[str, Any]) -> None:
    """A version with facts that the kind accepts, or no demonstration at all."""
    kind = KINDS[kind_name]
    if faults := fields.check(kind, facts):
        raise ValueError(f"demo_data: {kind_name} {name}: {faults}")
    made.say((kind.register, name), ("version",), values.version(kind.schema, made.document(kind.schema, facts)))


def _made(store: Store, people: list[dict[str, Any]], who: str, on: str) -> Made:
    person = next(one for one in people if who in (one["id"], one["role"]))
    return Made(Request(
        "POST", "/", person=Person(person["id"], person["name"], person["role"]), device=DEVICE,
        counter=store.next_counter(DEVICE), at=f"{on}T08:00:00Z", salt=secrets.token_hex(16),
    ))


def _keep(store: Store, made: Made) -> None:
    store.keep(made.keep, made.parts, DEVICE, made.keep[0].at)
