"""Answers that are none to their question, however they came: what stands there cannot be read, and nobody signs it.

A form offers only what fits, but answers also come from other devices, from old pages, and from before the load was
changed. What binds is therefore looked at once more where it is used.
"""
from collections import Counter
from collections.abc import Iterator, Mapping, Set

from checklist_app.checklists.conditions import may_be_asked
from checklist_app.checklists.entry import Path
from checklist_app.checklists.filled import build_state
from checklist_app.checklists.fold import Folded
from checklist_app.checklists.legs import most_places
from checklist_app.checklists.places import Place, places
from checklist_app.checklists.procedure import Procedure, Prompt, PromptKind
from checklist_app.checklists.register import Item
from checklist_app.checklists.values import Value
from checklist_app.operations.catalogue import OPERATIONS
from checklist_app.operations.gear import PICK_POINT, is_gear, kinds_of

LOAD: Path = ("load",)
BUILD_STATE = "build_state"
WITH_ONE_PLACE = frozenset({"gear", "machine"})
ANOTHER = "This is an answer to another question. Answer it again."
TAKES = {
    PromptKind.TICK: {"tick"}, PromptKind.CHOICE: {"choice"}, PromptKind.PICK: {"pick"}, PromptKind.TEXT: {"text"},
    PromptKind.PHOTO: {"photo"}, PromptKind.NUMBER: {"number"},
}
LEFT_OUT = frozenset({"dont_know", "not_used"})


def misfits(procedure: Procedure, folded: Folded, items: Mapping[Path, Item]) -> dict[Path, str]:
    """What cannot be taken for an answer, in words, by its path."""
    asked = {path: place for place in places(procedure, folded) for path in (place.path, place.felt_path)}
    found = {path: words for path, value in folded.values.items()
             if path in asked and (words := _misfit(asked[path], path, value, items))}

    unasked = {path for path, place in asked.items() if not may_be_asked(place, folded)}
    return {**found, **dict(_elsewhere(procedure, folded)), **dict(_twice(folded, unasked, items))}


def _misfit(place: Place, path: Path, value: Value, items: Mapping[Path, Item]) -> str:
    """Of a prompt of the procedure; what the operation asks for is read by the operation."""
    prompt = place.prompt
    if path == place.felt_path:
        return "" if value["type"] == "tick" else ANOTHER
    if prompt.kind is PromptKind.ENTRY:
        return ""
    if value["type"] in LEFT_OUT:
        return "It cannot be left out." if prompt.killer else ""
    if value["type"] not in TAKES[prompt.kind] or not _is_offered(prompt, value):
        return ANOTHER
    if prompt.name == BUILD_STATE and LOAD in items and build_state(items[LOAD], value["text"]) is None:
        return f"{items[LOAD].title} has no such build state. Choose again what is on it."

    return ""


def _is_offered(prompt: Prompt, value: Value) -> bool:
    if prompt.kind is PromptKind.PICK:
        return bool(value["subject"].partition("/")[0] == prompt.register)
    return not prompt.choices or value["text"] in prompt.choices


def _elsewhere(procedure: Procedure, folded: Folded) -> Iterator[tuple[Path, str]]:
    """Pick points of a load that is no longer the one that is lifted, or of other figures of it."""
    table, load = OPERATIONS[procedure.operation].table, folded.values.get(LOAD, {})
    for path, value in folded.values.items():
        entry = table.entries.get(path[-1])
        if entry is None or value["type"] != "pick" or not is_gear(entry.kind):
            continue
        if PICK_POINT.name not in kinds_of(entry.kind):
            continue
        if value["subject"] != load.get("subject"):
            yield path, "This is a point of another load. Choose a point of the one that is lifted."
        elif value["version"] != load.get("version"):
            yield path, "The load was picked anew, with other figures. Choose its point again."


def _twice(folded: Folded, unasked: Set[Path], items: Mapping[Path, Item]) -> Iterator[tuple[Path, str]]:
    """One piece of gear hangs in one place; a sling of several legs in as many slings as it has legs."""
    picked = {path: value["subject"] for path, value in folded.values.items() if path not in unasked
              and value["type"] == "pick" and value["subject"].partition("/")[0] in WITH_ONE_PLACE}
    counted = Counter(picked.values())
    for path, subject in picked.items():
        most = most_places(items[path], path, folded) if path in items else 1
        if counted[subject] > most:
            yield path, _too_often(subject.partition("/")[2], counted[subject], most)


def _too_often(name: str, counted: int, most: int) -> str:
    if most == 1:
        return f"{name} stands in {counted} places of the kit. It hangs in one."
    return f"{name} stands in {counted} places of the kit. It has {most} legs."
