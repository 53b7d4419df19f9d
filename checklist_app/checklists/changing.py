"""What would make a lashed task pass, from today's store, and the entries of a change that somebody takes."""
from collections.abc import Mapping
from enum import Enum
from typing import Any

from checklist_app.checklists import values
from checklist_app.checklists.elsewhere import held_elsewhere
from checklist_app.checklists.entry import Path
from checklist_app.checklists.fold import seen
from checklist_app.checklists.made import Made
from checklist_app.checklists.picked import state_of
from checklist_app.checklists.register import Item
from checklist_app.checklists.rows import add, copy
from checklist_app.checklists.running import Running, running
from checklist_app.checklists.tags import why_out
from checklist_app.checklists.values import Value
from checklist_app.checklists.world import World
from checklist_app.operations.gear import Gear, Lashing, Mat, make
from checklist_app.operations.lashing.change import Change, Store
from checklist_app.operations.usable import IN_USE

LASHING = "lashing"
RATED_THERE = "block_dan"
"""What a chock holds is found when it is made; what was needed is no answer to that."""
READ_THERE = ("held_dan", "slope_read_deg", "heading_read_deg")
"""Said of the place where a lashing was: moved, it hangs on another eye, at other angles."""


def lashes(now: Running) -> bool:
    """Whether the task lashes something."""
    return LASHING in now.table.groups


def in_store(world: World, now: Running) -> Store:
    """Lashings and mats that may be used today, are marked, and hold nothing in another task that is under way.

    What is due for examination is not among them.
    """
    taken = held_elsewhere(world, now)
    items = [item for _, item in sorted(world.items("gear").items()) if not why_out(item) and item.subject not in taken]
    lashings = tuple(gear for item in items if isinstance(gear := _gear(item, Lashing.kinds), Lashing)
                     and item.state.due)
    mats = tuple(gear for item in items if isinstance(gear := _gear(item, Mat.kinds), Mat))

    return Store(lashings, mats)


def _gear(item: Item, kinds: tuple[str, ...]) -> Gear | None:
    if item.kind not in kinds:
        return None
    state = state_of(item)
    return make(item.kind, item.id, item.facts, state) if state.marked and state.custody in IN_USE else None


def take(made: Made, world: World, now: Running, change: Change, device: str) -> None:
    """The entries of a change: answers given anew, and rows with no item in them yet."""
    ids = {label: row for row, label in now.read.labels.items()}
    for key, answer in change.answers.items():
        path: Path = (key.name,) if key.row is None else (LASHING, ids[key.row], key.name)
        made.say(("task", now.id), path, _value(now, key.name, answer), seen(now.folded, path))
    for label in dict.fromkeys(key.row for key in change.answers if key.row is not None):
        _asked_anew(made, now, ids[label])
    for row in change.rows:
        later = running(world.with_entries(tuple(made.keep), made.parts), now.id)
        said = {name: _value(now, name, answer) for name, answer in row.answers.items()
                if name != RATED_THERE}
        if row.like:
            copy(made, later, row.group, ids[row.like], device, otherwise=said)
        else:
            _answered(made, later, row.group, said, device)


def _asked_anew(made: Made, now: Running, row: str) -> None:
    for name in READ_THERE:
        path = (LASHING, row, name)
        if (now.folded.values.get(path) or {}).get("type") == "number":
            made.say(("task", now.id), path, values.withdrawn(), seen(now.folded, path))


def _answered(made: Made, now: Running, group: str, said: Mapping[str, Value], device: str) -> None:
    new = add(made, now, group, device)
    for name, value in said.items():
        made.say(("task", now.id), (group, new, name), value)


def _value(now: Running, name: str, answer: Any) -> Value:
    if isinstance(answer, Enum):
        return values.choice(str(answer.value))
    return values.number(f"{answer:.4g}", now.table.entries[name].unit)
