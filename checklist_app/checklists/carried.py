"""What was typed into an assessment goes along into the task: its numbers as answers, its gear as incoming items."""
from collections.abc import Mapping
from dataclasses import dataclass, replace
from urllib.parse import urlencode

from checklist_app.checklists import values
from checklist_app.checklists.answer import Request
from checklist_app.checklists.asking import asked
from checklist_app.checklists.assessing import completed
from checklist_app.checklists.forms import Taken, take
from checklist_app.checklists.made import Made
from checklist_app.checklists.places import places
from checklist_app.checklists.procedure import PromptKind
from checklist_app.checklists.running import running
from checklist_app.checklists.typed_gear import add_typed, typed_slots
from checklist_app.checklists.typed_lashing import PALLET, VEHICLE, lashing_entries
from checklist_app.checklists.typed_rig import RIG, leg_rows, rig_of
from checklist_app.checklists.world import World
from checklist_app.operations.straight_lift.choices import Rig

CARRY = "carry."
COMPANIONS = frozenset({"", "how", "plus_minus", "dont_know", "not_used", "reason"})
NOT_CARRIED = frozenset({"load", "shape", "example"})
OPERATION = "operation"


@dataclass(frozen=True)
class Carried:
    """What goes along, for the form that begins the task: hidden fields, and how it is said."""

    fields: tuple[tuple[str, str], ...]
    said: str
    query: str


def carried(request: Request) -> Carried:
    """What came from an assessment, by the address or by the form that was sent before."""
    found = _fields(request)
    counted = len([name for name in found if "." not in name and name != OPERATION])
    said = f"{counted} answers" if counted else ""
    return Carried(tuple(found.items()), said, urlencode(found))


def keep_carried(request: Request, world: World, made: Made, task: str) -> Taken:
    """The entries of what was carried, after those that begin the task; nothing of it into another operation."""
    fields = _fields(request)
    of = fields.pop(OPERATION, "straight_lift")
    if not fields or of != request.one(OPERATION):
        return Taken()
    if of in (PALLET, VEHICLE):
        found = lashing_entries(made, task, fields, of, world.today)
    else:
        found = completed(fields)
        made.say(("task", task), (RIG,), values.choice(found[RIG]))
        _add_gear(made, task, found, world.today)
    begun_world = world.with_entries(made.keep, made.parts)
    now = running(begun_world, task)
    every = [place for place in places(now.procedure, now.folded) if place.prompt.kind is PromptKind.ENTRY]
    form = {name: (text,) for name, text in found.items() if _is_answer(name)}
    later = replace(request, form=form, counter=request.counter + len(made.keep), salt=f"{request.salt}-carried")

    return take(later, tuple(asked(now, place) for place in every), now.folded, begun_world)


def _fields(request: Request) -> dict[str, str]:
    if request.method == "POST":
        return {name.removeprefix(CARRY): request.one(name) for name in request.form
                if name.startswith(CARRY) and request.one(name)}
    return {name: text for name, text in request.query.items() if text.strip() and name not in NOT_CARRIED}


def _is_answer(name: str) -> bool:
    """Whether a field is an answer by itself; the facts of typed gear are not, they became an item."""
    return name.partition(".")[2] in COMPANIONS


def _add_gear(made: Made, task: str, found: Mapping[str, str], day: str) -> None:
    """Gear that was only typed in: incoming, not marked, so that nobody signs before somebody has seen it."""
    rig = rig_of(found)
    first, *others = leg_rows(rig)
    also = [("leg", row, "sling") for row in others] if rig is Rig.RUNNING else []
    for slot in typed_slots(rig):
        if slot.path not in also:
            add_typed(made, task, slot, slot.path, found, day, also if slot.path == ("leg", first, "sling") else ())
