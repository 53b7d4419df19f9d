"""A task is begun: its procedure, its rows, the load in its build state, place and day, each an entry of its own."""
from collections.abc import Mapping

from checklist_app.checklists import values
from checklist_app.checklists.entry import Path
from checklist_app.checklists.made import Made
from checklist_app.checklists.procedure import Procedure
from checklist_app.checklists.register import Item


def begin(made: Made, procedure: Procedure, day: str) -> str:
    """Say that a task is begun; its id."""
    task = f"t-{made.next_name}"
    about = ("task", task)
    made.say(about, ("begin",), {"type": "begin", "operation": procedure.operation, "procedure": procedure.key})
    for group, rows in procedure.rows.items():
        for row in rows:
            made.say(about, (group, row), values.row("present"))
    made.say(about, ("day",), values.date(day))

    return task


def pick(made: Made, task: str, path: Path, item: Item) -> None:
    """Say that an item is taken, in the version that stands."""
    if item.version is not None:
        made.say(("task", task), path, values.pick(item.subject, item.version))


def choose(made: Made, task: str, path: Path, text: str) -> None:
    """Say one of the named possibilities."""
    made.say(("task", task), path, values.choice(text))


def add_item(made: Made, register: str, name: str, schema: str, facts: Mapping[str, object], since: str) -> str:
    """A new item of a register, incoming; the digest of its version."""
    about = (register, name)
    version = made.say(about, ("version",), values.version(schema, made.document(schema, dict(facts))))
    if register in ("gear", "machine"):
        made.say(about, ("custody",), values.custody("incoming", since))
    return version.digest
