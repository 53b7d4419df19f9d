"""A demonstration in a folder of its own: an invented yard, filled once, with random PINs kept beside its database."""

import json
import os
import secrets
import subprocess
import sys
from datetime import UTC, datetime
from pathlib import Path

from checklist_app.demo.data import PINS, pins, table
from checklist_app.demo.registers import fill_items, fill_people, fill_quarantine
from checklist_app.demo.work import BEGUN, Begun
from checklist_app.records.accounts import Accounts
from checklist_app.records.pins import SHORTEST, pin_fault
from checklist_app.records.seal import DEMONSTRATION
from checklist_app.records.store import Store

UNFINISHED = ".filling"


def fill(folder: Path, now: datetime | None = None) -> dict[str, dict[str, str]]:
    """Fill a fresh folder with the invented yard; one that is filled stays as it is.

    Args:
        folder: Will hold the demonstration's own database.
        now: The instant the dates count from; the clock's, when nothing is said.

    Returns:
        Role and PIN of everybody by name, in the order of `demo_data/people.toml`.

    Raises:
        FileExistsError: If the folder holds a workshop's own data.
    """
    folder = Path(folder)
    if (folder / PINS).exists():
        return pins(folder)
    if folder.exists() and any(folder.iterdir()):
        raise FileExistsError(f"{folder} holds something else; the demonstration needs a folder of its own")
    _make(folder, now or datetime.now(UTC))

    return pins(folder)


def begin_lifts(folder: Path) -> "subprocess.Popen[bytes] | None":
    """Carry out lifts and lashings beside the server, in a process of their own: it answers meanwhile."""
    if Begun(folder / BEGUN).all_done:
        return None
    print("Lifts and lashings are being carried out now; they appear under Records within two minutes.", flush=True)
    command = [sys.executable, "-m", "checklist_app.demo.carry_out", str(folder)]
    return subprocess.Popen(command, stdin=subprocess.DEVNULL, start_new_session=True)


def _make(folder: Path, now: datetime) -> None:
    """Everything is made beside the folder and put into place when it is whole."""
    unfinished = folder.with_name(folder.name + UNFINISHED)
    _clear(unfinished)
    store = Store(unfinished)
    accounts = Accounts(store.database)
    today = now.date()
    fill_people(store, accounts, today)
    fill_items(store, today)
    fill_quarantine(store, today)
    people = table("people")["person"]
    given: dict[str, dict[str, str]] = {}
    for one in people:
        taken = {other["pin"] for other in given.values()}
        given[one["name"]] = {"role": one["role"], "pin": _give_pin(accounts, one["id"], now, taken)}
    store.close()
    (unfinished / DEMONSTRATION).touch()
    _write_private(unfinished / PINS, json.dumps(given, indent=2))
    if folder.exists():
        folder.rmdir()
    unfinished.rename(folder)


def _give_pin(accounts: Accounts, person: str, now: datetime, taken: set[str]) -> str:
    pin = "0000"
    while pin_fault(pin) or pin in taken:
        pin = "".join(secrets.choice("0123456789") for _ in range(SHORTEST))
    accounts.set_pin(person, pin, accounts.give_code(person, now), now)

    return pin


def _write_private(path: Path, text: str) -> None:
    with os.fdopen(os.open(path, os.O_WRONLY | os.O_CREAT | os.O_TRUNC, 0o600), "w", encoding="utf-8") as file:
        file.write(text)


def _clear(folder: Path) -> None:
    """What a fill that was cut off has left."""
    if folder.exists():
        for path in sorted(folder.rglob("*"), reverse=True):
            path.rmdir() if path.is_dir() else path.unlink()
        folder.rmdir()
