"""The tables. Nothing that can be computed is kept: heads, void, late and custody are found in the entries.

Queries name their database each time, so that several stores can be open in one process and in many threads.
"""

import secrets

import peewee as p

from checklist_app.records import sqlite
from checklist_app.records.account_tables import create_account_tables
from checklist_app.records.card_table import TABLES as CARD_TABLES
from checklist_app.records.key_tables import TABLES as KEY_TABLES

SCHEMA = 3
DIGEST_LENGTH = "length(digest) = 64"


class SchemaVersion(p.Model):
    """One row: the version of these tables that the database has."""

    id = p.IntegerField(primary_key=True, constraints=[p.Check("id = 1")])
    version = p.IntegerField()


class Server(p.Model):
    """One row: where receipts have got to. `origin` is random, so that two servers' receipts never run together."""

    id = p.IntegerField(primary_key=True, constraints=[p.Check("id = 1")])
    origin = p.CharField(64)
    number = p.BigIntegerField()
    head = p.CharField(64)
    sealing_waits = p.BooleanField(default=False)


class Kept(p.Model):
    """An entry: its bytes, and what they are looked up by."""

    digest = p.CharField(64, primary_key=True, constraints=[p.Check(DIGEST_LENGTH)])
    subject = p.CharField(129, index=True)
    type = p.CharField(32)
    device = p.CharField(64)
    counter = p.BigIntegerField()
    data = p.BlobField()

    class Meta:
        indexes = ((("device", "counter"), False), (("type", "subject"), False))


class Receipt(p.Model):
    """That an entry came, when and from which device. `head` binds it to all receipts before it."""

    number = p.BigIntegerField(primary_key=True)
    entry = p.ForeignKeyField(Kept, unique=True)
    received_at = p.CharField(20)
    device = p.CharField(64)
    doubt = p.CharField(200, default="")
    counts = p.BooleanField(default=True)
    head = p.CharField(64)


class Part(p.Model):
    """Bytes that an entry names; without data here they lie in a file named by the digest."""

    digest = p.CharField(64, primary_key=True, constraints=[p.Check(DIGEST_LENGTH)])
    data = p.BlobField(null=True)


class Device(p.Model):
    """A phone or browser. Its secret is 128 random bits, of which only the digest is kept."""

    name = p.CharField(64, primary_key=True)
    secret_digest = p.CharField(64, unique=True)
    revoked_after = p.BigIntegerField(null=True)


class SignedIn(p.Model):
    """Who has signed in on a device; `now` is false once he signed out."""

    device = p.ForeignKeyField(Device, on_delete="CASCADE")
    person = p.CharField(64)
    now = p.BooleanField(default=True)

    class Meta:
        primary_key = p.CompositeKey("device", "person")


class Seal(p.Model):
    """A closed record, or a supplement `of` one. `previous` is unique, so the chain cannot fork.

    Its text and its PDF are files; `data` is the text once more (packed), so that a changed file can be told from a
    changed row, and what was changed can be named. `pdf` is the digest of the PDF's bytes.
    """

    digest = p.CharField(64, primary_key=True, constraints=[p.Check(DIGEST_LENGTH)])
    number = p.IntegerField(unique=True)
    task = p.CharField(64, index=True)
    previous = p.CharField(64, unique=True)
    of = p.CharField(64, unique=True, null=True)
    sealed_at = p.CharField(20)
    pdf = p.CharField(64)
    data = p.BlobField()


TABLES = (SchemaVersion, Server, Kept, Receipt, Part, Device, SignedIn, Seal, *CARD_TABLES, *KEY_TABLES)


def create_tables(database: p.Database) -> None:
    """Fresh tables of today's schema, with a random origin for the running digest."""
    for table in TABLES:
        p.SchemaManager(table, database=database).create_all(safe=True)
    create_account_tables(database)
    sqlite.finish_schema(database)
    origin = secrets.token_hex(32)
    Server.insert(id=1, origin=origin, number=0, head=origin).on_conflict_ignore().execute(database)
    SchemaVersion.insert(id=1, version=SCHEMA).on_conflict_ignore().execute(database)
