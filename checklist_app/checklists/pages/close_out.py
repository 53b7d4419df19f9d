"""Close-out: what was found, and how it ended. The closing is the last entry; sealing comes after it."""
from collections.abc import Mapping
from typing import Any

from checklist_app.checklists.answer import Answer, Request, page
from checklist_app.checklists.closing import CLOSING, Course, closing_entry, fault, possible, value
from checklist_app.checklists.entry import Entry
from checklist_app.checklists.fold import seen
from checklist_app.checklists.frame import frame, go_to, whole
from checklist_app.checklists.holds import hold_states
from checklist_app.checklists.last_rig import remember
from checklist_app.checklists.lookat import name_of
from checklist_app.checklists.made import Made
from checklist_app.checklists.naming import prompt_words
from checklist_app.checklists.new_finding import KEEPERS, keep, new_finding
from checklist_app.checklists.pages.step import step
from checklist_app.checklists.places import Place, places
from checklist_app.checklists.running import Running, running
from checklist_app.checklists.steps import Screen, Way
from checklist_app.checklists.stops import is_done, stops
from checklist_app.checklists.values import words
from checklist_app.checklists.world import World

STAGE = "close-out"


@page("/tasks/<task>/close-out")
def close_out(request: Request, world: World, task: str) -> Answer:
    """What was found; then one of four closings."""
    now = running(world, task)
    if (closed := closing_entry(now.folded)) is not None:
        return _closed(request, world, now, closed)
    if request.method == "POST" and request.one("act") == "close":
        return _close(request, world, now)
    if request.method == "POST" and request.one("act") == "finding":
        return _keep_finding(request, world, now)
    return step(request, world, task, STAGE, lambda world, now, screen: beside(request, world, now, screen))


def course(world: World, now: Running) -> Course:
    """How the work went: stopped, signed, done, and what the stages after the last hold point still ask for."""
    asked = (place for stage in _after_holds(now) for place in places(now.procedure, now.folded, stage))
    missing = tuple(prompt_words(now.procedure, place.path) for place in asked if _is_missing(now, place))
    signed = all(state.signed for state in hold_states(world, now))
    return Course(bool(stops(now.folded)), signed, is_done(now), missing, now.procedure.says)


def _after_holds(now: Running) -> tuple[str, ...]:
    names = tuple(stage.name for stage in now.procedure.stages)
    return names[names.index(now.procedure.holds[-1].before):]


def beside(request: Request, world: World, now: Running, screen: Screen, fault_words: str = "") -> Mapping[str, Any]:
    """The closings below the questions, each with what stands against it."""
    chosen = request.one("closing")
    return {
        "below": "checklist/_close_out.html", "fault_words": fault_words,
        "new_finding": new_finding(world, now), "may_keep": _may_keep(request),
        "closings": possible(course(world, now)), "chosen": chosen, "words": request.one("words"),
        "next": Way(f"/tasks/{now.id}/close-out#closings", "Keep, then close it"),
    }


def _may_keep(request: Request) -> bool:
    return request.person is not None and request.person.role in KEEPERS


def _keep_finding(request: Request, world: World, now: Running) -> Answer:
    """What was found becomes the load's; whoever may not keep the register changes nothing."""
    made, offered = Made(request), new_finding(world, now)
    if offered is not None and _may_keep(request):
        keep(made, offered)
    return go_to(f"/tasks/{now.id}/close-out", keep=tuple(made.keep), parts=made.parts)


def _close(request: Request, world: World, now: Running) -> Answer:
    text, said = request.one("closing"), request.one("words")
    if found := fault(text, said, course(world, now)):
        shown = frame(request, f"Close, {now.title}", "Close-out", now.title, f"/tasks/{now.id}/close-out", "Back")
        return whole(request, "checklist/close.html", shown, 422, task=now.id, fault_words=found,
                     closings=possible(course(world, now)), chosen=text, words=said)
    made = Made(request)
    remember(made, now, world, text)
    made.say(("task", now.id), CLOSING, value(text, made.words(said)), seen(now.folded, CLOSING))
    return go_to(f"/tasks/{now.id}/close-out", keep=tuple(made.keep), parts=made.parts)


def _closed(request: Request, world: World, now: Running, closed: Entry) -> Answer:
    shown = frame(request, f"Closed: {now.title}", "Closed", now.title)
    said = words(world.part(closed.value.get("part", "")))
    return whole(request, "checklist/closed.html", shown, text=closed.value["text"], words=said, at=closed.at,
                 name=name_of(world, closed.author), record=world.sealed(now.id))


def _is_missing(now: Running, place: Place) -> bool:
    """Asked for without fail, and not answered so that work is over."""
    answer = now.folded.values.get(place.path)
    wrong = answer is None or place.path in now.faults or (answer["type"] == "tick" and answer["text"] != "yes")
    return place.prompt.killer and wrong and now.is_asked(place)
