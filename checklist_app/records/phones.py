"""The phones and browsers of the workshop: who used each, when it was last in touch, who may sign on it alone."""

from collections.abc import Iterator
from dataclasses import dataclass

import peewee as p

from checklist_app.records.account_tables import Account, Session
from checklist_app.records.database import Device, Receipt, SignedIn
from checklist_app.records.key_tables import SignKey
from checklist_app.records.store import Store


@dataclass(frozen=True)
class Phone:
    """One device. `people` signed in on it, `signers` may sign on it alone; `last` is empty if it never came back."""

    name: str
    people: tuple[str, ...]
    signers: tuple[str, ...]
    last: str
    revoked: bool


def phones(store: Store) -> list[Phone]:
    """Every device on which somebody signed in, the one that was last in touch first."""
    return sorted(_phones(store), key=lambda phone: (phone.revoked, _backwards(phone.last), phone.name))


def _phones(store: Store) -> Iterator[Phone]:
    db = store.database
    names = dict(Account.select(Account.person, Account.name).tuples().execute(db))
    people = _by_device(SignedIn.select(SignedIn.device, SignedIn.person).tuples().execute(db))
    good = SignKey.select(SignKey.device, SignKey.person).where(SignKey.ended_at == "").tuples().execute(db)
    signers = _by_device(good)
    devices = Device.select(Device.name, Device.revoked_after).tuples().execute(db)
    last = _last_contacts(store, people)
    for name, revoked in devices:
        if name in people or name in signers:
            yield Phone(name, _called(names, people.get(name, ())), _called(names, signers.get(name, ())),
                        last.get(name, ""), revoked is not None)


def _last_contacts(store: Store, devices: dict[str, list[str]]) -> dict[str, str]:
    """By what it was told, what it brought, and the pages it opened."""
    brought = (Receipt.select(Receipt.device, p.fn.MAX(Receipt.received_at)).group_by(Receipt.device)
               .tuples().execute(store.database))
    opened = (Session.select(Session.device, p.fn.MAX(Session.seen_at)).group_by(Session.device)
              .tuples().execute(store.database))
    found = store.keys.last_contacts(devices)
    for times in (dict(brought), dict(opened)):
        found |= {name: max(at, found.get(name, "")) for name, at in times.items()}
    return found


def _by_device(rows: p.ModelSelect) -> dict[str, list[str]]:
    found: dict[str, list[str]] = {}
    for device, person in rows:
        found.setdefault(device, []).append(person)
    return found


def _called(names: dict[str, str], people: list[str] | tuple[str, ...]) -> tuple[str, ...]:
    return tuple(sorted({names.get(person, person) for person in people}))


def _backwards(at: str) -> tuple[int, ...]:
    """Sorts the latest first, and what never came last."""
    return tuple(-ord(sign) for sign in at) or (0,)
