"""A step of questions with its live checks: what is lifted, and the numbers."""
from collections.abc import Callable, Mapping
from dataclasses import replace
from typing import Any

from checklist_app.checklists.answer import Answer, Request, page
from checklist_app.checklists.as_there import as_there
from checklist_app.checklists.ask import Ask, blocks
from checklist_app.checklists.asking import asked, asks, focus_first
from checklist_app.checklists.banner import banner
from checklist_app.checklists.changing import lashes
from checklist_app.checklists.checks_view import governing, live
from checklist_app.checklists.choosing import choices
from checklist_app.checklists.forms import take
from checklist_app.checklists.frame import frame, go_to, inside, whole
from checklist_app.checklists.last_figures import last_figures
from checklist_app.checklists.picture import held
from checklist_app.checklists.plain import NO_STAGE, missing
from checklist_app.checklists.running import Running, running
from checklist_app.checklists.slots import is_slot
from checklist_app.checklists.steps import Screen, chosen, next_way, screens, stage_href, stage_number
from checklist_app.checklists.tried import EVERY_LEG, which_legs
from checklist_app.checklists.worked_out import EVIDENCE
from checklist_app.checklists.world import World

SEEN, SLING = ".seen", "sling"
CHANGES_OTHERS = frozenset({"load", "build_state", "again"})
Beside = Callable[[World, Running, Screen], Mapping[str, Any]]


def nothing_beside(world: World, now: Running, screen: Screen) -> Mapping[str, Any]:
    """Questions only."""
    return {}


@page("/tasks/<task>/what")
def what(request: Request, world: World, task: str) -> Answer:
    """Which load, on which day, from where to where, and who signals."""
    return step(request, world, task, "what")


@page("/tasks/<task>/numbers")
def numbers(request: Request, world: World, task: str) -> Answer:
    """Mass, centre of gravity, eyes and heights, under the drawing of the lift as it will hang."""
    return step(request, world, task, "numbers")


def step(request: Request, world: World, task: str, stage: str, beside: Beside = nothing_beside) -> Answer:
    """One screenful of a stage: shown, or its answers taken. `beside` is what stands there besides the questions."""
    now = running(world, task)
    try:
        screen = chosen(now, stage, request.query.get("step", ""))
    except LookupError:
        return missing(request, NO_STAGE)
    if request.method != "POST":
        return _show(request, world, now, stage, screen, beside)

    taken = take(request, tuple(asked(now, place) for place in screen.places), now.folded, world)
    after = world.with_entries(taken.keep, taken.parts)
    later = running(after, task)
    screen = chosen(later, stage, screen.key)
    unread = any(place.path in later.faults for place in screen.places)
    kept: dict[str, Any] = {"keep": taken.keep, "parts": taken.parts}
    if request.fragment or taken.faults or unread:
        status = 422 if taken.faults or unread else 200
        answered = frozenset("/".join(entry.path) for entry in taken.keep)
        given = _show(request, after, later, stage, screen, beside, taken.faults, status, answered)
        return replace(given, **kept, headers={**given.headers, **_elsewhere(request, later, screen, answered)})

    return go_to(inside(request.one("next") or screen.href), **kept)


def _elsewhere(request: Request, now: Running, screen: Screen, answered: frozenset[str]) -> dict[str, str]:
    """An answer that changes which questions are asked brings the whole page anew."""
    shown = {name.removesuffix(SEEN) for name in request.form if name.endswith(SEEN)}
    asked_now = {place.name for place in screen.places if now.is_asked(place) and not is_slot(now, place)}
    moved = (shown and asked_now != shown) or CHANGES_OTHERS & answered
    return {"HX-Location": screen.href} if request.fragment and moved else {}


def _show(request: Request, world: World, now: Running, stage: str, screen: Screen, beside: Beside,
          faults: Mapping[str, str] | None = None, status: int = 200, answered: frozenset[str] = frozenset()) -> Answer:
    told = now.procedure.stage(stage)
    drawn = told.drawn
    questions = _with_faults(request, asks(world, now, screen.places, choices(world, now)), faults or {})
    context: dict[str, Any] = {"task": now.id, "asks": questions, "governing": governing(now),
               "checks": live(now) if drawn else None, "picture": held(now.evaluation) if drawn else None}
    back = (stage_href(now, stage), f"Back to the {told.words.lower()}") if screen.row[0] in now.procedure.adds else (
        f"/tasks/{now.id}", "Back to the task")
    shown = frame(request, f"{screen.words}, {now.title}", told.words, f"{stage_number(now, stage)}, {now.title}",
                  *back)
    if request.fragment and request.method == "POST":
        return whole(request, "checklist/_live_answer.html", shown, status, answered=answered,
                     shrunk=request.form.get("shrunk", ()), **context | dict(beside(world, now, screen)))

    before, after = _around(now, stage, screen)
    context |= {"legs": which_legs(now), "leg": EVERY_LEG, "typed": "", "fault_words": "",
                "tries": SLING in now.table.entries, "works_out": any(each.name == EVIDENCE for each in questions),
                "lashed": lashes(now)} if drawn else {}
    context |= {"blocks": blocks(questions), "step": screen, "before": before, "after": after, "here": screen.href,
                "last": last_figures(world, now, screen), "there": as_there(world, now, stage, screen),
                "banner": banner(world, now, stage), "below": None,
                "next": next_way(now, stage, screen.key)}
    return whole(request, "checklist/step.html", shown, status, **context | dict(beside(world, now, screen)))


def _with_faults(request: Request, questions: tuple[Ask, ...], faults: Mapping[str, str]) -> tuple[Ask, ...]:
    """What could not be kept at all stands in its field as typed, with the reason."""
    return focus_first(tuple(
        replace(each, fault=faults[each.name], text=request.one(each.name)) if each.name in faults else each
        for each in questions))


def _around(now: Running, stage: str, here: Screen) -> tuple[list[dict[str, Any]], list[dict[str, Any]]]:
    """The other screens of the stage, or of the row that people added: those before, those to come."""
    own = here.row if here.row[0] in now.procedure.adds else None
    every = tuple(screen for screen in screens(now, stage) if own is None or screen.row == own)
    number = next(number for number, screen in enumerate(every) if screen.key == here.key)
    told = [{"words": screen.words, "href": screen.href, "done": screen.done,
             "shown": "done" if screen.done else "still open"} for screen in every]
    return told[:number], told[number + 1:]
