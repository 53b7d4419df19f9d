"""Begin a task: which load in which build state, where, and on which day. A load not yet known is added here."""
from collections.abc import Mapping

from checklist_app.checklists import begun
from checklist_app.checklists.answer import Answer, Request, page
from checklist_app.checklists.ask import Option
from checklist_app.checklists.carried import carried, keep_carried
from checklist_app.checklists.choosing import build_states
from checklist_app.checklists.frame import frame, go_to, whole
from checklist_app.checklists.made import Made
from checklist_app.checklists.new_load import facts, load_boxes, load_faults
from checklist_app.checklists.procedure import Procedure, newest, procedures
from checklist_app.checklists.words import short_name
from checklist_app.checklists.world import World
from checklist_app.operations.catalogue import OPERATIONS
from checklist_app.operations.graph import Day
from checklist_app.operations.kinds import KINDS

NEW = "new"
APART = "|"
ELSEWHERE = Option("", "Elsewhere", "Of a lift, room and hook are measured.")


@page("/begin")
def begin(request: Request, world: World) -> Answer:
    """The form, and the task it begins."""
    if request.method != "POST":
        return _show(request, world)
    faults = _faults(request, world)
    if faults:
        return _show(request, world, faults, 422)

    made = Made(request)
    task = _begin(request, world, made)
    more = keep_carried(request, world, made, task)
    return go_to(f"/tasks/{task}/what", keep=(*made.keep, *more.keep), parts={**made.parts, **more.parts})


def _begin(request: Request, world: World, made: Made) -> str:
    task = begun.begin(made, newest(request.one("operation")), request.one("day"))
    if request.one("lift") == NEW:
        name = "-".join(filter(None, (short_name(request.one("name")), made.next_name)))
        version = begun.add_item(made, "load", name, KINDS["load"].schema, facts(request), world.today)
        made.say(("task", task), ("load",), {"type": "pick", "subject": f"load/{name}", "version": version})
        begun.choose(made, task, ("build_state",), facts(request)["build_states"][0]["state"])
    else:
        load, _, state = request.one("lift").partition(APART)
        begun.pick(made, task, ("load",), world.items("load")[load])
        begun.choose(made, task, ("build_state",), state)
    if (place := world.item("place", request.one("place"))) is not None:
        begun.pick(made, task, ("place",), place)

    return task


def _faults(request: Request, world: World) -> dict[str, str]:
    """What is wrong, by field."""
    faults = {}
    if request.one("operation") not in _operations():
        faults["operation"] = "Choose what is done with the load."
    if request.one("lift") == NEW:
        faults.update(load_faults(request))
    elif request.one("lift") not in {option.value for option in _lifts(world)}:
        faults["lift"] = "Choose the load and what is on it, or add it."
    if request.one("place") and world.item("place", request.one("place")) is None:
        faults["place"] = "This place is not in the register."
    try:
        Day(request.one("day"))
    except ValueError as error:
        faults["day"] = f"{error}."
    return faults


def _show(request: Request, world: World, faults: Mapping[str, str] | None = None, status: int = 200) -> Answer:
    found = dict(faults or {})
    new = request.one("lift") == NEW or (request.method != "POST" and request.query.get("load") == NEW)
    return whole(
        request, "checklist/begin.html", frame(request, "Begin a task", "Begin a task"), status, faults=found,
        first=next(iter(found), ""), operations=_operations().values(), lifts=_lifts(world), places=_places(world),
        chosen={"lift": request.one("lift"), "place": request.one("place"), "day": request.one("day") or world.today,
                "operation": request.one("operation") or request.query.get("operation", "")},
        new=new, boxes=load_boxes(request, found) if new else {}, carried=carried(request),
    )


def _operations() -> Mapping[str, Procedure]:
    """What can be done: the newest procedure of each operation."""
    known = {each.operation for each in procedures().values()}
    return {name: newest(name) for name in OPERATIONS if name in known}


def _lifts(world: World) -> tuple[Option, ...]:
    """Every load in each of its build states."""
    return tuple(Option(f"{load.id}{APART}{state.value}", f"{load.title}, {state.words}", state.note)
                 for load in world.items("load").values() if load.version is not None and not load.fault
                 for state in build_states(load))


def _places(world: World) -> tuple[Option, ...]:
    known = tuple(Option(place.id, place.title) for place in world.items("place").values() if place.version is not None)
    return (*known, ELSEWHERE)
