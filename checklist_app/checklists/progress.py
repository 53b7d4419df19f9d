"""How far a task is, in words: what it is called, where it was left, what it waits for."""
from collections.abc import Iterable

from checklist_app.checklists.holds import HoldState
from checklist_app.checklists.places import Place
from checklist_app.checklists.running import Running
from checklist_app.checklists.steps import Way, place_href, screens, stage_href
from checklist_app.checklists.stops import stops
from checklist_app.checklists.trials import TRIAL


def headline(now: Running) -> str:
    """The load by its name, or the operation while no load was picked."""
    return now.load.title if now.load is not None else now.procedure.words


def stands_at(now: Running, holds: Iterable[HoldState]) -> HoldState | None:
    """The hold point at which work stands: everything before it is answered, and it is not open."""
    order = [stage.name for stage in now.procedure.stages]
    here = order.index(now.stage) if now.resume is not None or now.empty_stage is not None else len(order)
    return next((state for state in holds if not state.open and order.index(state.hold.before) <= here), None)


def no_trial_yet(now: Running, held: HoldState) -> bool:
    """Whether the hold is about a trial lift that nobody made yet."""
    return TRIAL in held.hold.groups and not now.folded.rows.get(TRIAL)


def go_on(now: Running, holds: Iterable[HoldState]) -> Way:
    """Where work goes on: what stopped it, a hold point, or the first open question."""
    if stops(now.folded):
        return Way(f"/tasks/{now.id}/stop", "Stopped: see")
    if (held := stands_at(now, holds)) is not None:
        if no_trial_yet(now, held):
            return Way(stage_href(now, TRIAL), "Go on: trial")
        return Way(f"/tasks/{now.id}/holds/{held.hold.name}", f"Hold: {held.hold.words.lower()}")
    place = now.resume
    if place is not None and now.empty_stage is None:
        return Way(_where(now, place), f"Go on: {place.stage.words.lower()}")
    return Way(stage_href(now, now.stage), f"Go on: {now.procedure.stage(now.stage).words.lower()}")


def left_at(now: Running, holds: Iterable[HoldState]) -> str:
    """Where the task was left, as one sentence."""
    if stops(now.folded):
        return "Stopped. A supervisor decides."
    if (held := stands_at(now, holds)) is not None:
        if no_trial_yet(now, held):
            return "Released. The trial lift comes next."
        return f"Held at {held.hold.words.lower()}. {_who(held)}"
    place = now.resume
    if (empty := now.empty_stage) is not None:
        return f"You stopped at {empty.words}: none is entered yet."
    if place is None:
        return "Everything is answered. Close it."
    every = screens(now, place.stage.name)
    number = next(number for number, screen in enumerate(every, 1) if place in screen.places)
    return f"You stopped at {place.stage.words}, step {number} of {len(every)}."


def _who(held: HoldState) -> str:
    if held.sent_back:
        return "It was sent back."
    return f"Signs: {' and '.join(each.words for each in held.missing)}." if held.missing else held.expired


def _where(now: Running, place: Place) -> str:
    return place_href(now, place)
