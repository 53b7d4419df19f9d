"""Gear added on the spot: its tag number, its kind, what stands on its label, a photo. Held as incoming."""
from collections.abc import Mapping
from typing import Any

from checklist_app.checklists import begun, values
from checklist_app.checklists.answer import Answer, Request, page
from checklist_app.checklists.entry import WORD
from checklist_app.checklists.fact_form import Box, boxes, facts_of, faults_of
from checklist_app.checklists.frame import frame, go_to, whole
from checklist_app.checklists.label_facts import folded_of, label_of
from checklist_app.checklists.made import Made
from checklist_app.checklists.picking import filled_at_once, say_picks
from checklist_app.checklists.running import running
from checklist_app.checklists.slots import slots
from checklist_app.checklists.world import World
from checklist_app.operations.fields import Fault, Field, FieldType, read
from checklist_app.operations.kind import Kind
from checklist_app.operations.kinds import GEAR_SET, KINDS, RATING_COLUMNS, TAGGED_REGISTERS

STEPS = 3
TAG_NUMBER = Field("id", "number on its tag", required=True)
DUE = Field("due", "next examination due, as its tag says", FieldType.DATE)
DUE_ON_TAG = ("due_on_tag",)
"""What a tag says is no examination: one is entered by whoever has seen the report."""


@page("/gear/add")
def add_gear(request: Request, world: World) -> Answer:
    """First which kind; then the few facts that its label gives."""
    kinds = _kinds(request)
    kind = kinds.get(request.one("kind") or request.query.get("kind", "")) or (
        next(iter(kinds.values())) if len(kinds) == 1 else None)
    if request.method != "POST" or kind is None or request.one("kind_only"):
        return _show(request, kinds, kind)
    facts = _facts(request, kind)
    faults = {**_id_faults(request, world), **_named(faults_of(kind, facts)), **_due_faults(request)}
    if faults:
        return _show(request, kinds, kind, faults, 422)

    made = Made(request)
    begun.add_item(made, kind.register, request.one("id"), kind.schema, facts, world.today)
    about = (kind.register, request.one("id"))
    if request.one(DUE.name):
        made.say(about, DUE_ON_TAG, values.date(request.one(DUE.name)))
    for photo in request.files.get("photo", ()):
        made.say(about, ("photo",), made.photo(photo))
    _pick(request, world, made, kind)

    return go_to(_back(request), keep=tuple(made.keep), parts=made.parts)


def _pick(request: Request, world: World, made: Made, kind: Kind) -> None:
    """Into the slot from which it was added, where there is one that it fits."""
    task, slot = request.query.get("task", ""), request.query.get("slot", "")
    if not task or not world.entries(("task", task)) or world.sealed(task):
        return
    now = running(world, task)
    place = next((place for place in slots(now) if place.slot == slot), None)
    item = world.with_entries(made.keep, made.parts).item(kind.register, request.one("id"))
    if place is not None and item is not None:
        say_picks(made, request, now, filled_at_once(now, place, item))


def _back(request: Request) -> str:
    task, slot = request.query.get("task", ""), request.query.get("slot", "")
    return f"/tasks/{task}/kit/{slot}" if task and slot else "/today"


def _kinds(request: Request) -> Mapping[str, Kind]:
    """The kinds that fit the slot, or every kind of gear and machine."""
    wanted = set(request.query.get("kinds", "").split(".")) - {""}
    return {name: kind for name, kind in KINDS.items()
            if kind.register in TAGGED_REGISTERS and name != GEAR_SET and (name in wanted or not wanted)}


def _facts(request: Request, kind: Kind) -> dict[str, Any]:
    facts = facts_of(_fields(kind), request)
    if not _is_rated(kind):
        return facts
    rows = [facts_of(RATING_COLUMNS, request, f"ratings/{number}/") for number in range(STEPS)]
    return facts | {"ratings": [row for row in rows if row]}


def _id_faults(request: Request, world: World) -> dict[str, str]:
    name = request.one("id")
    if not WORD.match(name):
        return {"id": "Write the number on its tag: letters, digits, dash, no blanks."}
    if any(known.casefold() == name.casefold() for register in TAGGED_REGISTERS for known in world.items(register)):
        return {"id": f"There is a {name} already. Pick it from the list."}
    return {}


def _due_faults(request: Request) -> dict[str, str]:
    due = read(DUE, request.one(DUE.name))
    return {DUE.name: due.words} if isinstance(due, Fault) else {}


def _named(faults: Mapping[str, str]) -> dict[str, str]:
    """Faults at a field of the page: one about all ratings stands at the first."""
    return {("ratings/0/up_to_deg" if name == "ratings" else name): words for name, words in faults.items()}


def _show(request: Request, kinds: Mapping[str, Kind], kind: Kind | None, faults: Mapping[str, str] | None = None,
          status: int = 200) -> Answer:
    found = dict(faults or {})
    shown = frame(request, "Add gear", "Add gear", kind.words if kind is not None else "", _back(request), "Back")
    shown_boxes = boxes((TAG_NUMBER, *_fields(kind), DUE) if kind is not None else (), request, found)
    folded = folded_of(kind.name) if kind is not None else frozenset()
    return whole(request, "checklist/add_gear.html", shown, status, kinds=tuple(kinds.values()), kind=kind,
                 here=_here(request), boxes=tuple(box for box in shown_boxes if box.name not in folded),
                 more=tuple(box for box in shown_boxes if box.name in folded),
                 steps=_steps(request, found) if kind is not None and _is_rated(kind) else ())


def _here(request: Request) -> str:
    query = "&".join(f"{name}={text}" for name, text in request.query.items() if name in ("kinds", "task", "slot"))
    return f"{request.path}?{query}" if query else request.path


def _steps(request: Request, faults: Mapping[str, str]) -> tuple[tuple[Box, ...], ...]:
    return tuple(boxes(RATING_COLUMNS, request, faults, f"ratings/{number}/") for number in range(STEPS))


def _fields(kind: Kind) -> tuple[Field, ...]:
    """What the label gives, in the order one reads it."""
    return tuple(field for name in label_of(kind.name) for field in kind.fields if field.name == name)


def _is_rated(kind: Kind) -> bool:
    return any(field.type is FieldType.ROWS and field.name == "ratings" for field in kind.fields)
