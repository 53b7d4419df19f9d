"""Where a guest signs: what is signed, his name and hand, and the witness who is signed in."""
from typing import Any

from checklist_app.checklists.answer import Answer, Request, page
from checklist_app.checklists.frame import frame, go_to, whole
from checklist_app.checklists.guests import faults, meaning, signed, ways
from checklist_app.checklists.holds import HoldState, hold_states
from checklist_app.checklists.ink import drawn
from checklist_app.checklists.plain import missing
from checklist_app.checklists.refusals import refusals
from checklist_app.checklists.review_view import head, signing
from checklist_app.checklists.running import Running, running
from checklist_app.checklists.world import World

CHANGED = "Something changed while he looked. Show it once more, then he signs."
FIELDS = ("guest", "firm", "as", "ink", "seen", "work")


@page("/tasks/<task>/holds/<hold>/guest")
def guest(request: Request, world: World, task: str, hold: str) -> Answer:
    """The form, and what becomes of it. Where nobody may sign, no guest does."""
    now = running(world, task)
    states = hold_states(world, now)
    at = next((n for n, state in enumerate(states) if state.hold.name == hold), None)
    if at is None:
        return missing(request, "This procedure has no such hold point.")
    state, here = states[at], f"/tasks/{task}/holds/{hold}"
    if refusals(world, now, state, states[:at]):
        return go_to(here)
    if request.method != "POST":
        return _form(request, world, now, state, {})
    if request.one("shown") != state.seen.fingerprint:
        return _form(request, world, now, state, {"work": CHANGED}, 409)
    if found := faults(request, state):
        return _form(request, world, now, state, found, 422)
    made = signed(request, now, state)
    return go_to(here, keep=tuple(made.keep), parts=made.parts)


def _form(request: Request, world: World, now: Running, state: HoldState, found: dict[str, str],
          status: int = 200) -> Answer:
    here = f"/tasks/{now.id}/holds/{state.hold.name}"
    shown = frame(request, f"A guest signs: {now.title}", state.hold.words, now.title, here, "Back to the review")
    typed: dict[str, Any] = {name: request.one(name) for name in FIELDS}
    return whole(request, "checklist/guest.html", shown, status, task=now.id, here=here,
                 head=head(world, now, state), faults={name: found.get(name, "") for name in FIELDS}, typed=typed,
                 ink=request.one("ink") if drawn(request.one("ink")) else "", ways=ways(state), needed=state.hold.guest,
                 witness=request.person.name if request.person else "",
                 **(signing(now, state) | {"meaning": meaning(state)}))
