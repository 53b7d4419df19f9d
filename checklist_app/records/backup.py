"""A backup is a folder like the one that is in use; putting it back is copying it to where nothing lies yet."""

import os
import shutil
from contextlib import closing
from dataclasses import dataclass
from pathlib import Path

from checklist_app.checklists.canonical import digest
from checklist_app.records import sqlite
from checklist_app.records.database import Part, Server
from checklist_app.records.parts import fsync_folder
from checklist_app.records.store import DATABASE

PARTS, RECORDS, TLS = "parts", "records", "tls"
UNFINISHED = ".unfinished"


class InTheWay(ValueError):
    """Something lies where the copy should go; nothing was touched."""


class NoBackup(ValueError):
    """There is no backup where one was expected."""


@dataclass(frozen=True)
class Restored:
    """What came of putting a backup back: digests of the photographs that it lacks or that were altered in it."""

    folder: Path
    missing: tuple[str, ...]


def backup(folder: Path | str, target: Path | str) -> Path:
    """Copy all that a server keeps, while it runs, to a folder that is not there yet: the workshop's root key too, so
    that phones trust the server that the backup is put back on.

    The database goes first: parts and records are on the disk before their rows, so whatever its copy names is there.

    Raises:
        InTheWay: If the target is there already.
        NoBackup: If the folder holds no data of this app.
        Damaged: If the database contradicts itself.
    """
    folder, target = Path(folder), Path(target)
    if not (folder / DATABASE).is_file():
        raise NoBackup(f"{folder} holds no data of this app: there is no {DATABASE} in it")
    unfinished = _begun(target)
    sqlite.copy(folder / DATABASE, unfinished / DATABASE)
    _copy_files(folder, unfinished)

    return _finished(unfinished, target)


def restore(source: Path | str, folder: Path | str) -> Restored:
    """Put a backup back into a folder that is not there yet. Sealing then waits until a supervisor has looked.

    Raises:
        InTheWay: If the folder is there already, with whatever in it.
        NoBackup: If the source is no backup.
        Damaged: If the backup's database contradicts itself.
    """
    source, folder = Path(source), Path(folder)
    if not (source / DATABASE).is_file():
        raise NoBackup(f"{source} is no backup: there is no {DATABASE} in it")
    sqlite.check(source / DATABASE)
    unfinished = _begun(folder)
    sqlite.copy(source / DATABASE, unfinished / DATABASE)
    _copy_files(source, unfinished)
    missing = _let_sealing_wait(unfinished)

    return Restored(_finished(unfinished, folder), missing)


def _begun(target: Path) -> Path:
    """An empty folder beside the target; a copy that was broken off is never taken for a whole one."""
    if target.is_symlink() or (target.exists() and not (target.is_dir() and not any(target.iterdir()))):
        raise InTheWay(f"{target} is there already: give it another name first, or name a folder that is not there")
    unfinished = target.with_name(target.name + UNFINISHED)
    if unfinished.exists():
        shutil.rmtree(unfinished)
    unfinished.mkdir(parents=True)

    return unfinished


def _copy_files(source: Path, target: Path) -> None:
    for name in (PARTS, RECORDS, TLS):
        (target / name).mkdir(mode=0o700)
        for path in sorted((source / name).rglob("*")):
            if path.is_file() and not path.name.endswith(UNFINISHED):
                goal = target / path.relative_to(source)
                goal.parent.mkdir(parents=True, exist_ok=True)
                shutil.copy2(path, goal)
                _fsync_file(goal)


def _finished(unfinished: Path, target: Path) -> Path:
    if target.exists():
        target.rmdir()
    for folder in (*(path for path in unfinished.rglob("*") if path.is_dir()), unfinished):
        fsync_folder(folder)
    unfinished.replace(target)
    fsync_folder(target.parent)

    return target


def _let_sealing_wait(folder: Path) -> tuple[str, ...]:
    database = sqlite.opened(folder / DATABASE)
    with closing(database):
        Server.update(sealing_waits=True).execute(database)
        files = [name for (name,) in Part.select(Part.digest).where(Part.data.is_null()).tuples().execute(database)]

    return tuple(name for name in files if not _is_whole(folder / PARTS / name[:2] / name, name))


def _is_whole(path: Path, name: str) -> bool:
    return path.is_file() and digest(path.read_bytes()) == name


def _fsync_file(path: Path) -> None:
    handle = os.open(path, os.O_RDWR)
    try:
        os.fsync(handle)
    finally:
        os.close(handle)
