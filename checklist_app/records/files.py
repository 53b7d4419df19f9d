"""The two files of a record, its text and its PDF: whole on the disk before the record counts, or not there."""

import os
from pathlib import Path

from checklist_app.checklists.canonical import digest
from checklist_app.records.parts import fsync_folder, write_through

SHORT = 12


def stem(number: int, name: str) -> str:
    """What a record's files are called: its number and the beginning of its digest.

    >>> stem(12, "7c419e02b8d560af13c7")
    '0012-7c419e02b8d5'
    """
    return f"{number:04d}-{name[:SHORT]}"


def text_path(folder: Path, number: int, name: str) -> Path:
    """The record's text, canonical JSON."""
    return folder / f"{stem(number, name)}.json"


def pdf_path(folder: Path, number: int, name: str) -> Path:
    """The record on paper."""
    return folder / f"{stem(number, name)}.pdf"


def write(folder: Path, number: int, data: bytes, pdf: bytes) -> tuple[Path, Path]:
    """Both files: written aside, on the disk, then under their names, and the folder on the disk too."""
    targets = text_path(folder, number, digest(data)), pdf_path(folder, number, digest(data))
    for target, content in zip(targets, (data, pdf), strict=True):
        aside = target.with_name(f"{target.name}.{os.getpid()}.unfinished")
        write_through(aside, content)
        aside.replace(target)
    fsync_folder(folder)

    return targets


def take_back(paths: tuple[Path, Path]) -> None:
    """Remove the files of a record that lost its place to another one."""
    for path in paths:
        path.unlink(missing_ok=True)
