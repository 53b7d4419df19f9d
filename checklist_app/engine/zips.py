"""Zips that come out the same wherever they are made: stored, in order, with one date."""

import zipfile
from collections.abc import Mapping
from pathlib import Path


def written(path: Path, files: Mapping[str, bytes]) -> None:
    """Stored and not deflated: the way over the air presses it better, and the phone need not unpack."""
    from checklist_app.web.floors import zipped

    path.write_bytes(zipped(files))


def unpacked(path: Path, folder: Path) -> Path:
    """A zip's files in a folder."""
    with zipfile.ZipFile(path) as opened:
        opened.extractall(folder)

    return folder
