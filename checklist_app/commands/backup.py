"""`backup` and `restore`: all that a server keeps, copied while it runs, and put back where nothing lies yet."""

import argparse
import sys
from datetime import datetime
from pathlib import Path
from typing import Any

from checklist_app.commands.folders import existing, folder_of, with_folder
from checklist_app.records.backup import InTheWay, NoBackup, backup, restore
from checklist_app.records.sqlite import Damaged

BACKUPS = "backups"


def register(subcommands: Any) -> None:
    """Put both commands on the command line."""
    out = subcommands.add_parser("backup", help="copy everything to another folder, also while the server runs")
    out.add_argument("target", type=Path, nargs="?",
                     help="folder that is not there yet (a new one in backups/, unless said)")
    back = subcommands.add_parser("restore", help="put a backup back; stop the server first")
    back.add_argument("source", type=Path, help="folder of the backup")
    for parser, run in ((out, run_backup), (back, run_restore)):
        with_folder(parser)
        parser.add_argument("--demo", action="store_true", help="the demonstration's folder")
        parser.set_defaults(run=run)


def run_backup(arguments: argparse.Namespace) -> int:
    """0 with the backup's folder printed, 2 if there is none."""
    try:
        folder = existing(arguments)
        target = arguments.target or folder / BACKUPS / f"{datetime.now():%Y-%m-%d-%H%M%S}"
        print(f"Backed up to {backup(folder, target).resolve()}")
    except (OSError, InTheWay, NoBackup, Damaged) as error:
        return no("backup was made", error)
    if arguments.target is None:
        print("It lies on the same disk as the data: copy it to another one.")

    return 0


def run_restore(arguments: argparse.Namespace) -> int:
    """0 when all is back, 1 when photos are missing, 2 if nothing was done."""
    folder = folder_of(arguments)
    try:
        restored = restore(arguments.source, folder)
    except (OSError, InTheWay, NoBackup, Damaged) as error:
        return no("backup was put back", error)
    print(f"Put back into {restored.folder.resolve()}")
    print("Phones offer again what the backup lacks.")
    print("Nothing is sealed until a supervisor has opened /sealing and looked.")
    for name in restored.missing:
        print(f"A photo is missing or altered: {name}")

    return 1 if restored.missing else 0


def no(what: str, error: Exception) -> int:
    print(f"No {what}: {error}.", file=sys.stderr)
    return 2
