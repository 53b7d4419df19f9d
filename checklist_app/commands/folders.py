"""Where the data lie, unless the command line says otherwise."""

import argparse
from pathlib import Path

DATA, DEMO = Path("data"), Path("demo")


def with_folder(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("--folder", type=Path, default=None,
                        help=f"folder of the data (./{DATA}, or ./{DEMO} with --demo, unless said)")


def folder_of(arguments: argparse.Namespace) -> Path:
    """The folder that was named, or the usual one."""
    named: Path | None = arguments.folder
    return named or (DEMO if getattr(arguments, "demo", False) else DATA)


def existing(arguments: argparse.Namespace) -> Path:
    """The folder, if there are data in it: a mistyped name must not make an empty database.

    Raises:
        FileNotFoundError: If there are none.
    """
    folder = folder_of(arguments)
    if not (folder / "checklist.db").exists():
        raise FileNotFoundError(f"there are no data in {folder.resolve()}: name the folder with --folder")

    return folder
