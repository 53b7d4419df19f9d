"""A process of its own that writes to a store until it is done or killed; it prints what was acknowledged.

python writer.py FOLDER DEVICE FIRST COUNT [die-before-row | die-before-rename]
"""

import os
import signal
import sys
from pathlib import Path

from checklist_app.checklists import values
from checklist_app.checklists.canonical import digest
from checklist_app.checklists.entry import make
from checklist_app.records.store import Store

AT = "2026-11-25T09:00:00Z"


def die(*_):
    os.kill(os.getpid(), signal.SIGKILL)


def photo(device: str, number: int) -> bytes:
    return b"\xff\xd8\xff" + f"{device} {number} ".encode() * 200


def main(folder: str, device: str, first: int, count: int, how: str = "") -> None:
    store = Store(folder)
    if how == "die-before-row":
        store.parts.insert_rows = die
    if how == "die-before-rename":
        Path.replace = die
    print("ready", flush=True)
    for number in range(first, first + count):
        data = photo(device, number)
        value = values.photo(digest(data))
        entry = make(("task", "t-1"), ("label",), value, (), "p-1", device, number, AT)
        store.keep([entry], {digest(data): data}, device, AT)
        print(entry.digest, number, flush=True)
    store.close()


if __name__ == "__main__":
    folder, device, first, count, *how = sys.argv[1:]
    main(folder, device, int(first), int(count), *how)
