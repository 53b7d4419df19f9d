"""Sign-ins: opened with a PIN, found by the cookie's secret, ended by signing out, by time or by an administrator."""

import hashlib
import secrets
from datetime import datetime, timedelta

import peewee as p

from checklist_app.records import sqlite
from checklist_app.records.account_tables import Account, Session
from checklist_app.records.moments import moment

HOURS_UNUSED = 12
SEEN_EVERY_MINUTES = 10
SWEPT_DAYS = 400
"""One that has run out is refused at once; its row is only swept much later, as clocks of two processes may differ."""


class Sessions:
    """The sign-ins in one database."""

    def __init__(self, database: p.Database) -> None:
        self.db = database

    def open(self, person: str, device: str, now: datetime, beginning: str = "") -> str:
        """The secret of a new sign-in, with a beginning that nobody can change; what ran out long ago is swept away."""
        secret = beginning + secrets.token_urlsafe(32)
        at = moment(now)
        with sqlite.writing(self.db):
            Session.delete().where(Session.seen_at < moment(now - timedelta(days=SWEPT_DAYS))).execute(self.db)
            row = {"person": person, "device": device, "started_at": at, "seen_at": at}
            Session.insert(digest=_digest(secret), **row).execute(self.db)

        return secret

    def find(self, secret: str, now: datetime) -> Session | None:
        """The sign-in with this secret, its account loaded. Being used keeps it alive; that is written now and then."""
        query = Session.select(Session, Account).join(Account).where(
            Session.digest == _digest(secret), Session.seen_at >= _oldest(now), Account.active)
        found = query.first(self.db)
        if found is not None and found.seen_at < moment(now - timedelta(minutes=SEEN_EVERY_MINUTES)):
            Session.update(seen_at=moment(now)).where(Session.digest == found.digest).execute(self.db)

        return found

    def people_on(self, device: str) -> set[str]:
        """Who is signed in on a device: of those who used it one after the other, the last."""
        query = Session.select(Session.person).where(Session.device == device).distinct()
        return {person for (person,) in query.tuples().execute(self.db)}

    def close(self, secret: str) -> None:
        Session.delete().where(Session.digest == _digest(secret)).execute(self.db)


def _oldest(now: datetime) -> str:
    return moment(now - timedelta(hours=HOURS_UNUSED))


def _digest(secret: str) -> str:
    return hashlib.sha256(secret.encode()).hexdigest()
