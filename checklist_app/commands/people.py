"""`new-pin` and `first-run`: one-time codes for whoever stands at the server's terminal."""

import argparse
import sys
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

from checklist_app.commands.folders import existing, with_folder
from checklist_app.records.accounts import Accounts
from checklist_app.records.store import Store


def register(subcommands: Any) -> None:
    """Put both commands on the command line."""
    new_pin = subcommands.add_parser("new-pin", help="a one-time code for somebody who has forgotten his PIN")
    new_pin.add_argument("name", help="the name he signs in by")
    first = subcommands.add_parser("first-run", help="a new code for the first administrator")
    for parser, run in ((new_pin, run_new_pin), (first, run_first_run)):
        with_folder(parser)
        parser.add_argument("--demo", action="store_true", help="the demonstration's folder")
        parser.set_defaults(run=run)


def run_new_pin(arguments: argparse.Namespace) -> int:
    """0 with the code printed, 2 if nobody of this name may sign in."""
    def code(accounts: Accounts) -> str:
        found = accounts.named(arguments.name)
        if found is None or not found.active:
            raise LookupError(f"nobody signs in by the name {arguments.name}")
        given = accounts.give_code(found.person, datetime.now(UTC))
        return (f"Code for {found.name}, good once, for one day: {given}\n"
                "Open /new-pin on the server's address and choose a new PIN.")

    return said(arguments, code)


def run_first_run(arguments: argparse.Namespace) -> int:
    """0 with the code printed, 2 if there is an administrator already."""
    def code(accounts: Accounts) -> str:
        if accounts.has_administrator():
            raise LookupError("there is an administrator already; he gives codes under People, or use new-pin NAME")
        given = accounts.give_code(None, datetime.now(UTC))
        return (f"Code for the first administrator, good once, for one day: {given}\n"
                "Open /first-run on the server's address.")

    return said(arguments, code)


def said(arguments: argparse.Namespace, code: Any) -> int:
    try:
        print(with_accounts(existing(arguments), code))
    except (LookupError, FileNotFoundError) as error:
        print(f"No code: {error}.", file=sys.stderr)
        return 2

    return 0


def with_accounts(folder: Path, code: Any) -> str:
    store = Store(folder)
    try:
        return str(code(Accounts(store.database)))
    finally:
        store.close()
