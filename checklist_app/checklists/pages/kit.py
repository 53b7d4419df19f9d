"""The kit, one slot at a time: pick a tag, look at it and feel it; what cannot be used stands there with its reason."""
from dataclasses import replace
from typing import Any

from checklist_app.checklists.answer import Answer, Request, page
from checklist_app.checklists.ask import State
from checklist_app.checklists.asking import ask, asked, felt
from checklist_app.checklists.checks_view import governing
from checklist_app.checklists.fold import seen
from checklist_app.checklists.forms import Taken, take
from checklist_app.checklists.frame import frame, go_to, whole
from checklist_app.checklists.gear_sets import hung, sets_for, why_not
from checklist_app.checklists.last_rig import offered
from checklist_app.checklists.like import after_slot, next_like
from checklist_app.checklists.made import Made
from checklist_app.checklists.picking import filled_at_once, say_picks
from checklist_app.checklists.places import Place
from checklist_app.checklists.plain import NO_STAGE, missing
from checklist_app.checklists.register import Item
from checklist_app.checklists.running import Running, running
from checklist_app.checklists.slots import KIT, Slot, gear_kinds, points, slot_of, slots, slots_beside, store
from checklist_app.checklists.steps import Way, next_stage, slot_href, stage_number
from checklist_app.checklists.tags import tag, why_out
from checklist_app.checklists.wanted import nothing, wanted, wanted_set
from checklist_app.checklists.words import sentence
from checklist_app.checklists.world import World
from checklist_app.operations.graph import Entry


@page("/tasks/<task>/kit")
def kit(request: Request, world: World, task: str) -> Answer:
    """The first slot that is still open."""
    now = running(world, task)
    every = now.places(KIT)
    if not every:
        return missing(request, NO_STAGE)
    return _show(request, world, now, next((place for place in every if now.is_open(place)), every[0]))


@page("/tasks/<task>/kit/<slot>")
def one_slot(request: Request, world: World, task: str, slot: str) -> Answer:
    """One slot: a pick, a tick that it was felt, or that there is none."""
    now = running(world, task)
    place = next((place for place in slots(now) if place.slot == slot), None)
    if place is None:
        return missing(request, "There is no such place in the kit.")
    if request.method != "POST":
        return _show(request, world, now, place)
    if request.one("tag") or request.one("pick"):
        return _pick(request, world, now, place)

    taken = _said(request, world, now, place)
    kept: dict[str, Any] = {"keep": taken.keep, "parts": taken.parts}
    if taken.faults:
        shown = _show(request, world, now, place, next(iter(taken.faults.values())), 422)
        return replace(shown, **kept)
    return go_to(_after(world, now, place, taken), **kept)


def _pick(request: Request, world: World, now: Running, place: Place) -> Answer:
    """By one tap on its tag, or by the number on it; a gear set hangs all its items at once."""
    if (found := wanted_set(request, world)) is not None:
        return _pick_set(request, world, now, place, found)
    item = wanted(request, world, now, place)
    if item is None or why_out(item):
        said = f"{item.id}: {why_out(item).lower()}. Pick another one." if item else ""
        reason = said or nothing(request, world, now, place)
        return _show(request, world, now, place, reason, 422)
    made = Made(request)
    say_picks(made, request, now, filled_at_once(now, place, item), felt=request.one("felt") == "yes")
    kept: dict[str, Any] = {"keep": tuple(made.keep), "parts": made.parts}
    if request.one("felt") == "yes":
        return go_to(_after(world, now, place, Taken(**kept)), **kept)

    return go_to(slot_href(now, place), **kept)


def _pick_set(request: Request, world: World, now: Running, place: Place, found: Item) -> Answer:
    """All items of a set, each in its slot, each still to be felt; one that cannot be picked stops the set."""
    if words := why_not(world, now, found):
        return _show(request, world, now, place, f"{found.id} stops here. {sentence(words)}", 422)
    made = Made(request)
    say_picks(made, request, now, hung(world, now, found))

    return go_to(f"/tasks/{now.id}/kit", keep=tuple(made.keep), parts=made.parts)


def _said(request: Request, world: World, now: Running, place: Place) -> Taken:
    """Every other answer: felt, none, or a choice."""
    if request.one("not_used") and "not_used" in request.form:
        name = place.name
        request = replace(request, form={f"{name}.not_used": ("yes",), f"{name}.reason": request.form.get("why", ())})
    return take(request, (asked(now, place), felt(now, place)), now.folded, world)


def _after(world: World, now: Running, place: Place, taken: Taken) -> str:
    """On to the next slot when this one is done, else here again."""
    later = running(world.with_entries(taken.keep, taken.parts), now.id)
    return slot_href(now, place) if later.is_open(place) else _next(later, place).href


def _show(request: Request, world: World, now: Running, place: Place, fault: str = "", status: int = 200) -> Answer:
    every = slots_beside(now, place)
    number = every.index(place)
    back = Way(f"/tasks/{now.id}", "Back to the task") if place.stage.name == KIT else _next(now, place)
    shown = frame(request, f"{_words(now, place)}, {now.title}", place.stage.words,
                  f"{stage_number(now, place.stage.name)}, {now.title}", back.href, back.words)
    question = ask(world, now, place, points(now, place))
    picked = now.items.get(place.path) if gear_kinds(_entry(now, place)) else None

    return whole(
        request, "checklist/kit.html", shown, status, task=now.id, here=slot_href(now, place),
        slot=slot_of(now, place, question, number + 1, len(every)), question=question,
        picked=tag(picked) if picked is not None else None, felt=_felt(now, place),
        none_said=question.shown if question.state is State.DONE and picked is None else "",
        disputed=question.settle, typed=request.one("tag"), fault_words=fault or now.faults.get(place.path, ""),
        store=[tag(item) for item in store(world, now, place) if picked is None or item.id != picked.id],
        before=[_line(world, now, each) for each in every[:number]],
        after=[_line(world, now, each) for each in every[number + 1:]],
        sets=sets_for(world, now, place) if place.stage.name == KIT and gear_kinds(_entry(now, place)) else (),
        like=next_like(world, now, place) if question.state is State.OPEN else None,
        last=offered(world, now, place) if question.state is State.OPEN else None,
        governing=governing(now), load=now.load, next=_next(now, place),
    )


def _felt(now: Running, place: Place) -> dict[str, str]:
    """The tick that the gear was looked at and felt."""
    tick = felt(now, place)
    value = now.value(place.felt_path) or {}
    return {"name": tick.name, "id": tick.name.replace("/", "-"), "text": str(value.get("text", "")),
            "data": tick.data(seen(now.folded, place.felt_path))}


def _line(world: World, now: Running, place: Place) -> dict[str, str]:
    question = ask(world, now, place)
    return {"words": _words(now, place), "href": slot_href(now, place),
            "state": "" if now.is_open(place) else "done",
            "shown": question.shown or ("" if now.is_open(place) else "answered")}


def _entry(now: Running, place: Place) -> Entry:
    return now.table.entries[place.prompt.name]


def _words(now: Running, place: Place) -> str:
    return Slot.words_of(place, _entry(now, place))


def _next(now: Running, place: Place) -> Way:
    """The slot after this one; elsewhere the step that asks for it."""
    if place.stage.name != KIT:
        return after_slot(now, place)
    every = now.places(KIT)
    following = every[every.index(place) + 1:]
    if not following:
        return next_stage(now, KIT)
    return Way(slot_href(now, following[0]), f"Next: {_words(now, following[0]).lower()}")
