"""A database is brought to today's schema in place when the store opens, and backed up before."""

from collections.abc import Callable, Mapping
from pathlib import Path

import peewee as p

from checklist_app.records import sqlite
from checklist_app.records.database import SCHEMA, SchemaVersion, create_tables
from checklist_app.records.steps import to_schema_2, to_schema_3

Step = Callable[[p.Database], None]

STEPS: Mapping[int, Step] = {1: to_schema_2, 2: to_schema_3}
"""Version → what makes the next one of it. A step is never changed once it has been published."""


class TooNewDatabase(ValueError):
    """Written by a later version of the app, which alone can read it."""


def prepare(database: p.Database, path: Path, backups: Path, steps: Mapping[int, Step] = STEPS,
            schema: int = SCHEMA) -> Path | None:
    """Bring the database to `schema`; gives the backup made before, or none if nothing had to change.

    Raises:
        TooNewDatabase: If the database has a later schema.
    """
    with sqlite.writing(database):
        if not sqlite.has_table(database, "schemaversion"):
            create_tables(database)
    found = version(database)
    if found > schema:
        raise TooNewDatabase(f"{path.name} has schema {found}; this version of the app knows {schema}: update the app")
    if found == schema:
        return None
    backup = backups / f"before-schema-{schema}-from-{found}.db"
    number = 1
    while backup.exists():
        number += 1
        backup = backups / f"before-schema-{schema}-from-{found}-{number}.db"
    sqlite.copy(path, backup)
    _walk(database, steps, schema)

    return backup


def version(database: p.Database) -> int:
    """The schema that the database has."""
    (found,) = SchemaVersion.select(SchemaVersion.version).tuples().execute(database)[0]
    return int(found)


def _walk(database: p.Database, steps: Mapping[int, Step], schema: int) -> None:
    """All steps in one transaction: after a crash the database has the old schema or the new one."""
    with sqlite.writing(database):
        for number in range(version(database), schema):
            steps[number](database)
        SchemaVersion.update(version=schema).execute(database)
