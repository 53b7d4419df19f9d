"""The one command line; each module of `commands` that has a `register` brings its subcommands."""

import argparse
import os
import sys
from collections.abc import Sequence
from importlib import import_module
from pkgutil import iter_modules

from checklist_app import commands

# These need no database: they must not wait for, or fail with, what the others import.
LIGHT = {"assess": "assess", "operations": "assess"}


def main(argv: Sequence[str] | None = None) -> int:
    """Run one subcommand; its exit status comes back."""
    given = list(sys.argv[1:] if argv is None else argv)
    arguments = parser(given[0] if given else "").parse_args(given)
    try:
        status: int = arguments.run(arguments)
        sys.stdout.flush()
    except BrokenPipeError:  # whoever read along has gone; nobody is left to be told
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return 2

    return status


def parser(command: str = "") -> argparse.ArgumentParser:
    """The parser with every subcommand, or only with those of the module that a light one stands in."""
    whole = argparse.ArgumentParser(
        prog="checklist-app",
        description="Pre-lift and lashing checklists; they support, and do not replace, a competent person.",
    )
    subcommands = whole.add_subparsers(dest="command", required=True, metavar="command")
    names = [LIGHT[command]] if command in LIGHT else sorted(found.name for found in iter_modules(commands.__path__))
    for name in names:
        register = getattr(import_module(f"{commands.__name__}.{name}"), "register", None)
        if register is not None:
            register(subcommands)
    return whole
