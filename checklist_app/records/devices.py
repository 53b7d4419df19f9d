"""Devices: which phones and browsers may bring entries, and who has signed in on each."""

import secrets

import peewee as p

from checklist_app.checklists.canonical import digest
from checklist_app.records import sqlite
from checklist_app.records.database import Device, Server, SignedIn


class Devices:
    """The devices of one store."""

    def __init__(self, database: p.Database) -> None:
        self.db = database

    def enrol(self, name: str = "") -> tuple[str, str]:
        """A new device: its name, made here unless given, and its secret, of which only the digest is kept.

        Raises:
            ValueError: If a device of this name is enrolled already.
        """
        name, secret = name or f"d-{secrets.token_hex(4)}", secrets.token_hex(16)
        try:
            Device.insert(name=name, secret_digest=digest(secret.encode())).execute(self.db)
        except p.IntegrityError as error:
            raise ValueError(f"a device {name} is enrolled already") from error

        return name, secret

    def find(self, secret: str) -> str | None:
        """The name of the device with this secret. A revoked one is found too: what it brings is kept, and doubted."""
        query = Device.select(Device.name).where(Device.secret_digest == digest(secret.encode("utf-8", "replace")))
        row = query.tuples().first(self.db)
        return str(row[0]) if row else None

    def sign_in(self, device: str, person: str) -> None:
        """This person's entries are taken from this device from now on."""
        SignedIn.insert(device=device, person=person, now=True).on_conflict_replace().execute(self.db)

    def sign_out(self, device: str, person: str) -> None:
        """His entries from this device wait until he signs in there again."""
        SignedIn.update(now=False).where(SignedIn.device == device, SignedIn.person == person).execute(self.db)

    def signed_in(self, device: str) -> dict[str, bool]:
        """Everybody who ever signed in on a device, and whether he still is."""
        query = SignedIn.select(SignedIn.person, SignedIn.now).where(SignedIn.device == device)
        return {person: bool(now) for person, now in query.tuples().execute(self.db)}

    def revoke(self, device: str) -> None:
        """A phone that was lost: what comes from it after now is kept and marked."""
        with sqlite.writing(self.db):
            (number,) = Server.select(Server.number).tuples().execute(self.db)[0]
            Device.update(revoked_after=number).where(Device.name == device).execute(self.db)

    def is_revoked(self, device: str) -> bool:
        """Whether the device was revoked."""
        return Device.select().where(Device.name == device, Device.revoked_after.is_null(False)).exists(self.db)
