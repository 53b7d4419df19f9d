"""Parts: small ones lie in the database, photographs as files named by their digest, on the disk before their row."""

import os
from collections.abc import Iterable, Mapping
from pathlib import Path

import peewee as p

from checklist_app.checklists.canonical import digest
from checklist_app.records import sqlite
from checklist_app.records.database import Part

LARGEST_INLINE_BYTES = 65_536
LARGEST_BYTES = 8_388_608
AT_ONCE = 500
# Asked so often that putting a query together would cost more than the answer.
ONE = "select data from part where digest = ?"
PICTURES = (b"\xff\xd8\xff", b"\x89PNG\r\n\x1a\n", b"RIFF")


class NotThatPart(ValueError):
    """The bytes are not what their digest says, or too many."""


class Parts:
    """The parts of one store."""

    def __init__(self, database: p.Database, folder: Path) -> None:
        self.db = database
        self.folder = folder
        folder.mkdir(parents=True, exist_ok=True)

    def put(self, name: str, data: bytes) -> None:
        """Keep a part for good; the same part again changes nothing.

        Raises:
            NotThatPart: If the bytes are not what the digest says, or more than a part may have.
        """
        refuse_other(name, data, LARGEST_BYTES)
        self.write_files({name: data})
        with sqlite.writing(self.db):
            self.insert_rows({name: data})

    def write_files(self, parts: Mapping[str, bytes]) -> None:
        """The files among these parts, each safe on the disk; their rows come after."""
        written = False
        for name, data in parts.items():
            if is_file(data) and not self.path(name).exists():
                self._write(name, data)
                written = True
        if written:
            fsync_folder(self.folder)

    def insert_rows(self, parts: Mapping[str, bytes]) -> None:
        """The rows of these parts, inside the caller's transaction."""
        rows = [(name, None if is_file(data) else data) for name, data in parts.items()]
        if rows:
            Part.insert_many(rows, fields=[Part.digest, Part.data]).on_conflict_ignore().execute(self.db)

    def get(self, name: str) -> bytes | None:
        """The bytes of a part, or none if they are not here."""
        row = self.db.execute_sql(ONE, (name,)).fetchone()
        if row is None:
            return None
        if row[0] is not None:
            return bytes(row[0])
        return self.path(name).read_bytes() if self.path(name).exists() else None

    def small(self, names: Iterable[str]) -> dict[str, bytes]:
        """Those of these parts that lie in the database."""
        found: dict[str, bytes] = {}
        for some in p.chunked(names, AT_ONCE):
            query = Part.select(Part.digest, Part.data).where(Part.digest.in_(some), Part.data.is_null(False))
            found |= {name: bytes(data) for name, data in query.tuples().execute(self.db)}
        return found

    def here(self, names: Iterable[str]) -> set[str]:
        """Which of these parts have arrived."""
        query = Part.select(Part.digest).where(Part.digest.in_(list(names)))
        return {name for (name,) in query.tuples().execute(self.db)}

    def path(self, name: str) -> Path:
        """The file of a part that is one."""
        return self.folder / name[:2] / name

    def _write(self, name: str, data: bytes) -> None:
        target = self.path(name)
        target.parent.mkdir(exist_ok=True)
        unfinished = target.with_name(f"{name}.{os.getpid()}.unfinished")
        write_through(unfinished, data)
        unfinished.replace(target)
        fsync_folder(target.parent)


def is_file(data: bytes) -> bool:
    """Whether a part lies beside the database: pictures, and whatever is large."""
    return len(data) > LARGEST_INLINE_BYTES or data.startswith(PICTURES)


def refuse_other(name: str, data: bytes, most: int) -> None:
    """Refuse bytes that are too many or are not what they are called.

    Raises:
        NotThatPart: In words.
    """
    if len(data) > most:
        raise NotThatPart(f"a part has at most {most} bytes")
    if digest(data) != name:
        raise NotThatPart("these bytes are not what their digest says")


def write_through(path: Path, data: bytes) -> None:
    """Write a file and wait until it is on the disk."""
    with path.open("wb") as file:
        file.write(data)
        file.flush()
        os.fsync(file.fileno())


def fsync_folder(folder: Path) -> None:
    """Wait until a folder's list of names is on the disk; Windows has no such call and needs none."""
    if os.name == "nt":
        return
    handle = os.open(folder, os.O_RDONLY)
    try:
        os.fsync(handle)
    finally:
        os.close(handle)
