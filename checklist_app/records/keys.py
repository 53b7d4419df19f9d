"""Keys that sign on a phone away from the server: for whom, on which device, until when.

Each person has one that his PIN opens there, and may have one beside it that the phone's screen lock opens.
"""

from collections.abc import Iterable
from datetime import datetime, timedelta

import peewee as p

from checklist_app.checklists.canonical import digest
from checklist_app.checklists.signing import PHONE_KEY
from checklist_app.records import sqlite
from checklist_app.records.key_tables import Contact, SignKey
from checklist_app.records.moments import moment
from checklist_app.records.new_lock import NewLock
from checklist_app.records.signature import NoPublicKey, is_public_point

KEPT_DAYS = 2
NOTED_EVERY_S = 60
NEWER_KEY = "a newer key took its place"
NEW_PIN = "its owner has a new PIN"
LOST_PHONE = "the phone was revoked"
ENDED_THERE = "it was ended on its phone"
SHARED_PHONE = "somebody else signed in on its phone, and can unlock it"
COPIED = "its counter went back, so there may be a copy of it"


class Keys:
    """The keys of one store."""

    def __init__(self, database: p.Database) -> None:
        self.db = database

    def register(self, device: str, person: str, public: bytes, at: datetime) -> str:
        """A new key of a person on a device, whose PIN was checked just now; an earlier one there ends. Gives its id.

        Raises:
            NoPublicKey: If this is no point of the curve, or the key of somebody else.
        """
        return self._register(public, (SignKey.device == device) & (SignKey.person == person), at,
                              device=device, person=person)

    def register_lock(self, beside: SignKey, made: NewLock, at: datetime) -> str:
        """A key that the phone's screen lock opens, beside the one that the PIN opens. Gives its id.

        Raises:
            NoPublicKey: If it is registered already.
        """
        earlier = (SignKey.device == beside.device) & (SignKey.person == beside.person) & (SignKey.how != PHONE_KEY)
        return self._register(made.public, earlier, at, device=beside.device, person=beside.person, how=made.how,
                              credential=made.credential, rp_id=made.rp_id, origin=made.origin)

    def find(self, name: str) -> SignKey | None:
        """The key of this id, good or ended."""
        return SignKey.select().where(SignKey.id == name).first(self.db)

    def good(self, device: str) -> dict[str, str]:
        """Person → id of the key with which he may sign on this device by his PIN."""
        return self._good(device, SignKey.how == PHONE_KEY)

    def locks(self, device: str) -> dict[str, str]:
        """Person → id of the key with which he may sign on this device by its screen lock. Never more than one."""
        return self._good(device, SignKey.how != PHONE_KEY)

    def all(self) -> list[SignKey]:
        """Every key there ever was."""
        return list(SignKey.select().order_by(SignKey.made_at, SignKey.id).execute(self.db))

    def end_of_person(self, person: str, at: datetime) -> None:
        """A new PIN: what was wrapped under the old one signs no more, on any phone."""
        self._end(SignKey.person == person, NEW_PIN, at)

    def end_of_device(self, device: str, at: datetime) -> None:
        """The phone is lost: no key in it signs any more."""
        self._end(SignKey.device == device, LOST_PHONE, at)

    def end_on(self, device: str, person: str, at: datetime) -> None:
        """Somebody ended it on the phone itself."""
        self._end((SignKey.device == device) & (SignKey.person == person), ENDED_THERE, at)

    def end_locks_of_others(self, device: str, person: str, at: datetime) -> None:
        """Whoever signs in on a phone can unlock it: nobody else's signature hangs on its lock any more."""
        others = (SignKey.device == device) & (SignKey.person != person) & (SignKey.how != PHONE_KEY)
        self._end(others, SHARED_PHONE, at)

    def end_copied(self, name: str, at: datetime) -> None:
        """Two phones may hold this key: neither signs with it any more."""
        self._end(SignKey.id == name, COPIED, at)

    def heard(self, device: str, number: int, at: datetime) -> None:
        """The device was told how far receipts go. Of each device the last two days stay, and always the last time."""
        if self.contact(device, number) > moment(at - timedelta(seconds=NOTED_EVERY_S)):
            return
        now, old = moment(at), moment(at - timedelta(days=KEPT_DAYS))
        with sqlite.writing(self.db):
            Contact.replace(device=device, number=number, at=now).execute(self.db)
            Contact.delete().where(Contact.device == device, Contact.number != number,
                                   Contact.at < old).execute(self.db)

    def contact(self, device: str, number: int) -> str:
        """When a device was last told this number; empty if that is not known."""
        row = Contact.select(Contact.at).where(Contact.device == device, Contact.number == number)
        found = row.tuples().first(self.db)
        return str(found[0]) if found else ""

    def last_contacts(self, devices: Iterable[str]) -> dict[str, str]:
        """When each device was last told anything."""
        query = (Contact.select(Contact.device, p.fn.MAX(Contact.at)).where(Contact.device.in_(list(devices)))
                 .group_by(Contact.device))
        return dict(query.tuples().execute(self.db))

    def _register(self, public: bytes, takes_the_place_of: p.Expression, at: datetime, **row: str) -> str:
        if not is_public_point(public):
            raise NoPublicKey("this is no public key of the curve P-256")
        name = digest(public)
        with sqlite.writing(self.db):
            if SignKey.select().where(SignKey.id == name).exists(self.db):
                raise NoPublicKey("this key is registered already: make a new one")
            self._end(takes_the_place_of, NEWER_KEY, at)
            SignKey.insert(id=name, public=public.hex(), made_at=moment(at), **row).execute(self.db)

        return name

    def _good(self, device: str, which: p.Expression) -> dict[str, str]:
        good = (SignKey.device == device) & (SignKey.ended_at == "") & which
        query = SignKey.select(SignKey.person, SignKey.id).where(good)
        return dict(query.tuples().execute(self.db))

    def _end(self, which: p.Expression, why: str, at: datetime) -> None:
        SignKey.update(ended_at=moment(at), ended_why=why).where(which, SignKey.ended_at == "").execute(self.db)
