"""`verify FOLDER [DIGEST…]`: are the records what was sealed? Told in words, with an exit status."""

import argparse
import sys
from pathlib import Path
from typing import Any

from checklist_app.records.store import Store
from checklist_app.records.verify import Checked, verify


def register(subcommands: Any) -> None:
    """Put the command on the command line."""
    parser = subcommands.add_parser(
        "verify", help="check that no record, entry, photograph or link was changed since it was sealed",
        description="Digests that somebody kept elsewhere (a print, a letter, a phone) also show a cut-off end.")
    parser.add_argument("folder", type=Path, help="folder of the data")
    parser.add_argument("digests", nargs="*", metavar="digest",
                        help="a record's digest kept elsewhere, or its beginning")
    parser.set_defaults(run=run)


def run(arguments: argparse.Namespace) -> int:
    """0 nothing is wrong, 1 something is, 2 there are no data."""
    if not (arguments.folder / "checklist.db").exists():
        print(f"There are no data in {arguments.folder}: name the folder that holds checklist.db.", file=sys.stderr)
        return 2
    store = Store(arguments.folder)
    try:
        found = verify(store, arguments.digests)
    finally:
        store.close()
    print("\n".join(said(found)))

    return 1 if found.faults else 0


def said(found: Checked) -> list[str]:
    """Every fault on a line of its own; then what was looked at."""
    if found.faults:
        return [*found.faults, f"{len(found.faults)} faults in {found.records} records."]
    last = f" The last one is {found.last}." if found.last else ""

    return [f"{found.records} records looked at. Nothing was changed since they were sealed.{last}",
            "Keep that digest elsewhere: with it, a cut-off end is found out next time."]
