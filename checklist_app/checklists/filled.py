"""What the registers know of load and place fills what nobody answered. The page says where it is from."""
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import Any

from checklist_app.checklists.entry import Path
from checklist_app.checklists.fold import Folded
from checklist_app.checklists.register import Item
from checklist_app.operations.fields import Fault, Field, FieldType, read_number
from checklist_app.operations.graph import Entry
from checklist_app.operations.obtained import TAPE
from checklist_app.operations.table import Table
from checklist_app.operations.task import Key, Measured

OF_BUILD_STATE = {"mass_kg": "mass_how", "cg_x_m": "cg_how", "cg_y_m": "cg_how", "cg_z_m": "cg_how"}
CG_HOW_NAME, CG_OFF = "cg_how", "cg_off_m"
OFF = Field(CG_OFF, "how far off", FieldType.NUMBER, "m", 0.001, 2.0)
OF_LOAD = ("bottom_z_m", "top_z_m")
OF_PLACE = ("room_height_m", "highest_hook_m")
OF_HOIST = ("highest_hook_m",)


@dataclass(frozen=True)
class Filled:
    """An answer nobody gave, the text it was kept as, and where it is from."""

    answer: Any
    text: str
    source: str


def filled(table: Table, folded: Folded, items: Mapping[Path, Item]) -> dict[Key, Filled]:
    """Answers from the picked load in its build state, the place, and the hoist. The nearest source comes last."""
    load, place, hoist = (items.get((name,)) for name in ("load", "place", "hoist"))
    found: dict[Key, Filled] = {}
    if hoist is not None:
        found.update(_numbers(table, hoist.facts, dict.fromkeys(OF_HOIST, ""), hoist.title))
    if place is not None:
        found.update(_numbers(table, place.facts, dict.fromkeys(OF_PLACE, ""), place.title))
    if load is None:
        return found
    found.update(_numbers(table, load.facts, dict.fromkeys(OF_LOAD, ""), load.title))
    state = build_state(load, folded.values.get(("build_state",), {}).get("text", ""))
    if state is not None:
        found.update(_numbers(table, state, OF_BUILD_STATE, f"{load.title}, {state.get('words') or state['state']}"))
    if load.facts.get("pick_points"):
        found.update(_eyes(table, load.title))

    return found


def build_state(load: Item, name: str) -> Mapping[str, Any] | None:
    """The facts of a load in one of its build states."""
    return next((state for state in load.facts.get("build_states", ()) if state.get("state") == name), None)


def _numbers(table: Table, facts: Mapping[str, Any], names: Mapping[str, str],
             title: str) -> Iterable[tuple[Key, Filled]]:
    """Numbers of a document; a length it gives without saying how counts as measured with a tape."""
    for name, how_name in names.items():
        entry, text = table.entries.get(name), str(facts.get(name, ""))
        number = read_number(text, _field(entry)) if entry is not None and text else None
        if entry is None or number is None or isinstance(number, Fault):
            continue
        how = str(facts.get(how_name, "")) if how_name else TAPE.name
        said = f"from the register: {title}{_how_words(entry, how, bool(how_name))}"
        yield Key(name), Filled(Measured(number, how or None, _off_m(facts, how_name)), text, said)


def _off_m(facts: Mapping[str, Any], how_name: str) -> float | None:
    """How far off a centre of gravity may be, where its finding says so; else the house's spread stands."""
    off = read_number(str(facts[CG_OFF]), OFF) if how_name == CG_HOW_NAME and facts.get(CG_OFF) else None
    return off if isinstance(off, float) else None


def _how_words(entry: Entry, how: str, said_there: bool) -> str:
    words = next((way.words for way in entry.obtained if way.name == how), "")
    if not words:
        return ""
    return f", {words}" if said_there else f", taken as {words}"


def _eyes(table: Table, title: str) -> Iterable[tuple[Key, Filled]]:
    """A load with pick points says itself where the eyes are."""
    entry = table.entries.get("eyes_given")
    if entry is not None:
        answer = entry.kind("pick points of the load")
        yield Key("eyes_given"), Filled(answer, answer.value, f"from the register: {title}")


def _field(entry: Entry) -> Field:
    return Field(entry.name, entry.words, FieldType.NUMBER, entry.unit, entry.low, entry.high)
