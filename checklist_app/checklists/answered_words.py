"""An answer as a person says it: the name behind a number, the words of a choice, what the register says instead."""
from checklist_app.checklists.entry import Path
from checklist_app.checklists.filled import build_state, filled
from checklist_app.checklists.naming import value_words
from checklist_app.checklists.running import Running
from checklist_app.checklists.values import Value
from checklist_app.checklists.words import day, own_number
from checklist_app.checklists.world import World
from checklist_app.operations.task import Key

BUILD_STATE = "build_state"
FROM_REGISTER = " from the register"
NAMED = frozenset({"load", "place", "person"})


def answer_words(world: World, running: Running, path: Path, value: Value | None) -> str:
    """One answer in the words of its question; where nobody answered, what a register says in its place."""
    if value is None:
        return _from_register(running, path) or value_words(value, world)
    if value["type"] == "pick" and "point" not in value:
        return _item(world, value)
    if value["type"] == "date":
        return day(value["text"])
    if path == (BUILD_STATE,) and running.load is not None:
        state = build_state(running.load, value.get("text", "")) or {}
        return str(state.get("words") or value_words(value, world))
    if value["type"] == "number" and value.get("how"):
        plain = value_words({name: said for name, said in value.items() if name != "how"}, world)
        return f"{plain}, {_how(running, path, value['how'])}"

    return value_words(value, world)


def _item(world: World, value: Value) -> str:
    """Loads, places and people have names; gear is called by its tag."""
    register, _, name = str(value["subject"]).partition("/")
    item = world.item(register, name) if register in NAMED else None
    if item is None:
        return value_words(value, world)
    number = own_number(name, item.title)

    return f"{item.title}, {number}" if number else item.title


def _how(running: Running, path: Path, how: str) -> str:
    entry = running.table.entries.get(path[-1])
    return next((each.words for each in (entry.obtained if entry is not None else ()) if each.name == how), how)


def _from_register(running: Running, path: Path) -> str:
    found = filled(running.table, running.folded, running.items).get(Key(path[0])) if len(path) == 1 else None
    entry = running.table.entries.get(path[0])
    if found is None or entry is None or path[0] in running.procedure.measured_anew:
        return ""

    return f"{found.text} {entry.unit}".strip() + FROM_REGISTER
