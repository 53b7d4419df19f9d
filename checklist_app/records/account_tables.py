"""What is kept about who may sign in. Nothing here is an entry: PINs, codes and sessions never travel.

The queries name their database each time, so that several stores can be open in one process and many threads.
"""

import peewee as p

ROLES = ("rigger", "supervisor", "auditor", "administrator")


class Account(p.Model):
    """`person` is the id in the register of people. A name is kept here only for signing in."""

    person = p.CharField(64, primary_key=True)
    name = p.CharField(80)
    name_key = p.CharField(80, unique=True)
    role = p.CharField(16, constraints=[p.Check("role IN ('rigger', 'supervisor', 'auditor', 'administrator')")])
    pin_hash = p.CharField(200, default="")
    active = p.BooleanField(default=True)


class OneTimeCode(p.Model):
    """A code that sets a PIN once. Without a person it makes the first administrator."""

    digest = p.CharField(64, primary_key=True)
    person = p.ForeignKeyField(Account, null=True, on_delete="CASCADE")
    until = p.CharField(20)


class Tries(p.Model):
    """Wrong PINs in a row, per person and per where they were tried from."""

    person = p.ForeignKeyField(Account, on_delete="CASCADE")
    place = p.CharField(64)
    wrong = p.IntegerField(default=0)
    last_at = p.CharField(20)

    class Meta:
        primary_key = p.CompositeKey("person", "place")


class Session(p.Model):
    """A sign-in. The cookie holds the secret, this its digest: a stolen database signs nobody in."""

    digest = p.CharField(64, primary_key=True)
    person = p.ForeignKeyField(Account, on_delete="CASCADE", index=True)
    device = p.CharField(64, index=True)
    started_at = p.CharField(20)
    seen_at = p.CharField(20)


TABLES = (Account, OneTimeCode, Tries, Session)


def create_account_tables(database: p.Database) -> None:
    """Make what is not there yet."""
    for table in TABLES:
        p.SchemaManager(table, database=database).create_all(safe=True)
