"""Everything that only SQLite understands. Another engine gets a module of its own with these functions."""

import sqlite3
from contextlib import AbstractContextManager, closing
from pathlib import Path
from typing import Any

import peewee as p

WAIT_S = 20
PRAGMAS = {"journal_mode": "wal", "synchronous": "full", "foreign_keys": 1}
ONE_RECORD_A_TASK = "CREATE UNIQUE INDEX IF NOT EXISTS one_record_a_task ON seal (task) WHERE of IS NULL"


class Damaged(ValueError):
    """The file is no database, or one that contradicts itself."""


def opened(path: Path) -> p.SqliteDatabase:
    """A database in which a commit is on the disk before anybody is told of it."""
    return p.SqliteDatabase(str(path), timeout=WAIT_S, pragmas=PRAGMAS)


def writing(database: p.Database) -> AbstractContextManager[Any]:
    """One transaction that takes the right to write at once, so that it never fails half-way for want of it."""
    return database.atomic("IMMEDIATE")


def reading(database: p.Database) -> AbstractContextManager[Any]:
    """Everything read inside is of one moment, whatever is written meanwhile."""
    return database.atomic("DEFERRED")


def finish_schema(database: p.Database) -> None:
    """What the models cannot say: a task has one record, everything after it is a supplement."""
    database.execute_sql(ONE_RECORD_A_TASK)


def has_table(database: p.Database, name: str) -> bool:
    """Whether the database has a table of this name."""
    return database.table_exists(name)


def copy(source: Path, target: Path) -> None:
    """A whole and consistent copy of a database that may be in use, checked before it counts as one.

    Raises:
        Damaged: If the copy contradicts itself.
    """
    with closing(sqlite3.connect(source, timeout=WAIT_S)) as old, closing(sqlite3.connect(target)) as new:
        old.backup(new)
        new.execute("PRAGMA journal_mode = delete")
    check(target)


def check(path: Path) -> None:
    """Refuse a file that is no whole database.

    Raises:
        Damaged: With what is wrong.
    """
    try:
        with closing(sqlite3.connect(f"file:{path}?mode=ro", uri=True)) as database:
            (said,) = database.execute("PRAGMA integrity_check(1)").fetchone()
    except sqlite3.DatabaseError as error:
        raise Damaged(f"{path.name}: {error}") from error
    if said != "ok":
        raise Damaged(f"{path.name}: {said}")
