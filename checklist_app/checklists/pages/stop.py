"""Stop is one tap, by anybody, without a reason; the page then says what to do. Going on takes a supervisor."""
from checklist_app.checklists.answer import Answer, Person, Request, may_write, page
from checklist_app.checklists.ask import Ask, Option
from checklist_app.checklists.authority import SUPERVISOR, capacities, valid_on
from checklist_app.checklists.entry import Entry, make
from checklist_app.checklists.fold import seen
from checklist_app.checklists.forms import take
from checklist_app.checklists.frame import frame, go_to, whole
from checklist_app.checklists.holds import HoldState, hold_states
from checklist_app.checklists.lookat import name_of
from checklist_app.checklists.made import Made
from checklist_app.checklists.naming import value_words
from checklist_app.checklists.plain import not_allowed
from checklist_app.checklists.prompts import Asked
from checklist_app.checklists.running import Running, running
from checklist_app.checklists.signer_form import signer_faults, supervisors
from checklist_app.checklists.stops import NOTE, PHOTO, STOP, WHY, go_on_part, is_done, stops
from checklist_app.checklists.words import sentence
from checklist_app.checklists.world import World

WORDS = {WHY: "Why? It can wait.", NOTE: "In your own words", PHOTO: "Photo"}


@page("/tasks/<task>/stop", anybody=True)
def stop(request: Request, world: World, task: str) -> Answer:
    """Stop now; or what to do after a stop, and why it was."""
    now = running(world, task)
    if request.method == "POST" and request.one("act") == "why":
        if not may_write(request.person):
            return not_allowed(request)
        return _why(request, world, now)
    if request.method == "POST":
        return _stop(request, now)
    return _stopped(request, world, now)


@page("/tasks/<task>/go-on")
def go_on(request: Request, world: World, task: str) -> Answer:
    """A supervisor looked, says why work may go on, and is known by his PIN."""
    now = running(world, task)
    if not stops(now.folded):
        return go_to(f"/tasks/{task}")
    if request.method != "POST":
        return _go_on_page(request, world, now)
    faults = _faults(request, world)
    if faults or request.verified is None:
        return _go_on_page(request, world, now, faults, 422)

    part, data = go_on_part(request.one("reason"), used_up(now, hold_states(world, now)), request.salt)
    said = make(("task", task), STOP, {"type": "go_on", "part": part}, seen(now.folded, STOP),
                request.verified.person.id, request.device, request.counter, request.at)
    return go_to(f"/tasks/{task}", keep=(said,), parts={part: data})


def used_up(now: Running, states: tuple[HoldState, ...]) -> tuple[str, ...]:
    """The sign-offs that have done their work: the next hold point is signed, or all is done."""
    done = [state.signed for state in states[1:]] + [is_done(now)]
    return tuple(each.entry.digest for state, over in zip(states, done, strict=True) if over for each in state.standing)


def _stop(request: Request, now: Running) -> Answer:
    """One entry; a second tap by the same person adds none."""
    person = request.person.id if request.person else ""
    made = Made(request)
    if all(entry.author != person for entry in stops(now.folded)):
        made.say(("task", now.id), STOP, {"type": "stop"})
    return go_to(f"/tasks/{now.id}/stop", keep=tuple(made.keep))


def _why(request: Request, world: World, now: Running) -> Answer:
    taken = take(request, asked(now), now.folded, world)
    if taken.faults:
        return _stopped(request, world, now, taken.faults, 422)
    return go_to(f"/tasks/{now.id}/stop", keep=taken.keep, parts=taken.parts)


def asked(now: Running) -> tuple[Asked, ...]:
    """What is asked after a stop. None of it has to be answered."""
    about = ("task", now.id)
    return (Asked(about, WHY, "choice", choices=now.procedure.says.reasons, other_answers=False),
            Asked(about, NOTE, "text", other_answers=False), Asked(about, PHOTO, "photo", other_answers=False))


def _stopped(request: Request, world: World, now: Running, faults: dict[str, str] | None = None,
             status: int = 200) -> Answer:
    shown = frame(request, f"Stopped: {now.title}", "Stopped", now.title)
    found = stops(now.folded)
    if not found:
        return whole(request, "checklist/stop.html", shown, task=now.id)
    return whole(request, "checklist/stopped.html", shown, status, task=now.id, says=now.procedure.says,
                 void=_void(now, world),
                 where=f"{now.procedure.words}, {now.procedure.stage(now.stage).words.lower()}",
                 stops=[{"at": entry.at, "name": name_of(world, entry.author)} for entry in found],
                 asks=[_ask(each, now, world, faults or {}) for each in asked(now) if may_write(request.person)])


def _ask(each: Asked, now: Running, world: World, faults: dict[str, str]) -> Ask:
    value = now.folded.values.get(each.path)
    said = "" if value is None else value_words(value, world)
    return Ask(each.name, each.type, WORDS[each.path], data=each.data(seen(now.folded, each.path)),
               text=said if each.type != "photo" else "", shown="A photo is kept." if said else "",
               options=tuple(Option(choice, sentence(choice).rstrip(".")) for choice in each.choices),
               fault=faults.get(each.name, ""))


def _go_on_page(request: Request, world: World, now: Running, faults: dict[str, str] | None = None,
                status: int = 200) -> Answer:
    found = faults or {}
    shown = frame(request, f"Go on: {now.title}", "Go on", now.title, f"/tasks/{now.id}/stop", "Back to the stop")
    why = [{"words": WORDS[path], "shown": value_words(now.folded.values[path], world)}
           for path in (WHY, NOTE) if path in now.folded.values]
    return whole(request, "checklist/go_on.html", shown, status, task=now.id, why=why, reason=request.one("reason"),
                 void=_void(now, world), signers=supervisors(world), chosen=_chosen(request),
                 reason_fault=found.get("reason", ""), signer_fault=found.get("signer", ""),
                 pin_fault=found.get("pin", ""))


def _faults(request: Request, world: World) -> dict[str, str]:
    faults = {}
    if not request.one("reason"):
        faults["reason"] = "Say in a few words why work may go on."
    faults |= signer_faults(request, "Enter the PIN of the supervisor.")
    if faults or request.verified is None:
        return faults
    if not valid_on(capacities(world, request.verified.person.id), SUPERVISOR, world.today):
        faults["signer"] = f"{request.verified.person.name} is not a supervisor today."
    return faults


def _void(now: Running, world: World) -> str:
    """What going on makes void, in one sentence."""
    states = hold_states(world, now)
    over = used_up(now, states)
    gone: list[Entry] = [each.entry for state in states for each in state.standing if each.entry.digest not in over]
    if not gone:
        return ""
    return f"{len(gone)} sign-off{'' if len(gone) == 1 else 's'} will be void, and must be given anew."


def _chosen(request: Request) -> str:
    person: Person | None = request.person
    return request.one("signer") or (person.id if person is not None else "")
