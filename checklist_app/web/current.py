"""What belongs to the request under way: the clock, the store, who is signed in, on which device."""

from datetime import datetime
from typing import cast

from flask import current_app, g

from checklist_app.checklists.answer import Person
from checklist_app.checklists.authority import capacities
from checklist_app.checklists.world import World
from checklist_app.records.account_tables import Account
from checklist_app.records.accounts import Accounts
from checklist_app.records.notices import NoticeBoard, Notices
from checklist_app.records.sessions import Sessions
from checklist_app.records.store import Store
from checklist_app.records.world import DatabaseWorld


def now() -> datetime:
    """The instant, with its time zone."""
    return cast(datetime, current_app.config["CLOCK"]())


def today() -> str:
    """The day on the workshop's calendar, as YYYY-MM-DD."""
    return now().astimezone(current_app.config["ZONE"]).date().isoformat()


def store() -> Store:
    return cast(Store, current_app.extensions["store"])


def accounts() -> Accounts:
    return cast(Accounts, current_app.extensions["accounts"])


def sessions() -> Sessions:
    return cast(Sessions, current_app.extensions["sessions"])


def notices() -> Notices:
    """What the server tells everybody: alarms, and words on tasks."""
    return cast(NoticeBoard, current_app.extensions["notices"]).notices(world())


def world() -> World:
    """What is kept, as of now; one view for the whole request."""
    if "world" not in g:
        g.world = DatabaseWorld(store(), today())

    return cast(World, g.world)


def changed() -> None:
    """Something was kept: who asks again in this request sees it."""
    g.pop("world", None)


def account() -> Account | None:
    """Whose sign-in this is."""
    return cast(Account | None, g.get("account"))


def device() -> str:
    """Id of the enrolled device that asks; empty for one that nobody knows."""
    return cast(str, g.get("device", ""))


def person() -> Person | None:
    """Who is signed in, with the capacities the register of people gives him."""
    found = account()
    return None if found is None else person_of(found)


def person_of(found: Account) -> Person:
    """An account as a page sees it, with what it may sign as."""
    return Person(found.person, found.name, found.role, capacities(world(), found.person))
