"""What the server has, in the shape in which a phone's worker is told it."""

from datetime import date
from pathlib import Path
from typing import Any

from checklist_app.checklists.register import REGISTERS
from checklist_app.checklists.values import parts_named
from checklist_app.records.store import Store
from checklist_app.records.world import DatabaseWorld

TO_WORKER = """({ entries, cursor, texts }) => ({ entries, cursor, sealed: {},
  parts: texts.map(([name, text]) => [name, new TextEncoder().encode(text)]) })"""


def known(folder: Path) -> dict[str, Any]:
    """All entries of running tasks and registers, and the texts that they name; `TO_WORKER` makes a message of it."""
    store = Store(folder)
    try:
        world = DatabaseWorld(store, date.today().isoformat())
        abouts = [("task", task) for task in world.tasks()]
        abouts += [(register, name) for register in REGISTERS for name in world.items(register)]
        entries = [entry for about in abouts for entry in world.entries(about)]
        parts = {name: world.part(name) for entry in entries if entry.type != "photo"
                 for name in parts_named(entry.value)}
        return {"entries": [entry.data.decode() for entry in entries], "cursor": dict(world.cursor()),
                "texts": [[name, data.decode()] for name, data in parts.items() if data is not None]}
    finally:
        store.close()
