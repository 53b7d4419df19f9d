"""A hold point: what is to be signed, whatever must be looked at, and the signature of a named person."""
from checklist_app.checklists.answer import Answer, Person, Request, page
from checklist_app.checklists.entry import make
from checklist_app.checklists.fold import seen
from checklist_app.checklists.frame import frame, go_to, whole
from checklist_app.checklists.holds import SEND_BACK, HoldState, heads, hold_states, path
from checklist_app.checklists.ink import drawn, made
from checklist_app.checklists.made import Made
from checklist_app.checklists.plain import missing
from checklist_app.checklists.refusals import Refusal, refusals
from checklist_app.checklists.review_view import head, not_signing, review, sheet, signers, signing
from checklist_app.checklists.running import Running, running
from checklist_app.checklists.signer_form import signer_faults, supervisors
from checklist_app.checklists.signers import MayNot, may_sign
from checklist_app.checklists.signing import sign
from checklist_app.checklists.values import words_part
from checklist_app.checklists.world import World

CHANGED = "Something changed while you looked. Look again, then sign."
SUPERVISING = frozenset({"supervisor", "administrator"})
FIELDS = ("signer", "pin", "typed", "words")


@page("/tasks/<task>/holds/<hold>")
def hold_point(request: Request, world: World, task: str, hold: str) -> Answer:
    """Review, sign, send back, or say that it is put right."""
    now = running(world, task)
    states = hold_states(world, now)
    at = next((n for n, state in enumerate(states) if state.hold.name == hold), None)
    if at is None:
        return missing(request, "This procedure has no such hold point.")
    first = refusals(world, now, states[at], states[:at])
    if request.method == "POST":
        return _post(request, world, now, states[at], first)
    act = request.query.get("act", "")
    if act == "sign" and states[at].hold.guest:
        return go_to(f"/tasks/{task}/holds/{hold}/guest")
    if act == "sign" and not first and states[at].missing:
        return _sign_page(request, world, now, states[at])
    if act == "send-back":
        return _send_back_page(request, world, now, states[at])
    return _review(request, world, now, states[at], first)


def _post(request: Request, world: World, now: Running, state: HoldState, first: tuple[Refusal, ...]) -> Answer:
    act = request.one("act")
    if act == "send_back":
        return _send_back(request, world, now, state)
    if act == "ask_again":
        return _ask_again(request, now, state)
    if first or not state.missing:
        return _review(request, world, now, state, first, 409)
    return _sign(request, world, now, state)


def _sign(request: Request, world: World, now: Running, state: HoldState) -> Answer:
    """One signature, once everything about it holds."""
    if request.one("shown") != state.seen.fingerprint:
        return _sign_page(request, world, now, state, {"work": CHANGED}, 409)
    faults = _faults(request)
    if faults or request.verified is None:
        return _sign_page(request, world, now, state, faults, 422)
    person = request.verified.person
    try:
        may = may_sign(now, state, person, world.today)
    except MayNot as refused:
        return _sign_page(request, world, now, state, {"signer": str(refused)}, 422)

    signed = sign(request, world, now, state, person, request.verified.how, may, request.verified.key)
    complete = len(state.missing) == 1
    return go_to(f"/tasks/{now.id}/{state.hold.before}" if complete else _here(now, state),
                 keep=signed.keep, parts=signed.parts)


def _faults(request: Request) -> dict[str, str]:
    """What is missing from the form, by its field."""
    faults = signer_faults(request, "Enter the PIN of the one who signs.")
    if made(request.one("ink"), request.one("typed"), request.salt) is None:
        faults["typed"] = "Draw the signature, or type the name."
    return faults


def _send_back(request: Request, world: World, now: Running, state: HoldState) -> Answer:
    """By a supervisor on his own device, or on the rigger's phone with his PIN."""
    faults = {} if request.one("words") else {"words": "Say in a few words what is to be put right."}
    person = request.person if _supervises(request.person) else request.verified.person if request.verified else None
    if person is None:
        faults |= signer_faults(request, "Enter the PIN of the one who sends it back.")
    elif not _supervises(person):
        faults["signer"] = f"{person.name} is not a supervisor."
    if faults or person is None:
        return _send_back_page(request, world, now, state, faults, 422)

    part, data = words_part(request.one("words"), request.salt)
    said = make(("task", now.id), path(state.hold, SEND_BACK), {"type": SEND_BACK, "part": part}, _seen(now, state),
                person.id, request.device, request.counter, request.at)
    return go_to(_here(now, state), keep=(said,), parts={part: data})


def _supervises(person: Person | None) -> bool:
    return person is not None and person.role in SUPERVISING


def _ask_again(request: Request, now: Running, state: HoldState) -> Answer:
    """What was sent back is put right: it waits for the signer again."""
    added = Made(request)
    if state.sent_back:
        added.say(("task", now.id), path(state.hold, SEND_BACK), {"type": "withdrawn"}, _seen(now, state))
    return go_to(_here(now, state), keep=tuple(added.keep), parts=added.parts)


def _review(request: Request, world: World, now: Running, state: HoldState, first: tuple[Refusal, ...],
            status: int = 200) -> Answer:
    shown = frame(request, f"{state.hold.words}: {now.title}", state.hold.words, now.title, f"/tasks/{now.id}",
                  "Back to the task")
    return whole(request, "checklist/hold.html", shown, status, task=now.id, here=_here(now, state),
                 head=head(world, now, state), sheet=sheet(world, now, state), first=first,
                 **review(world, now, state))


def _sign_page(request: Request, world: World, now: Running, state: HoldState,
               faults: dict[str, str] | None = None, status: int = 200) -> Answer:
    shown = frame(request, f"Sign: {now.title}", state.hold.words, now.title, _here(now, state), "Back to the review")
    found = {name: (faults or {}).get(name, "") for name in (*FIELDS, "work")}
    return whole(request, "checklist/hold_sign.html", shown, status, task=now.id, here=_here(now, state),
                 head=head(world, now, state), sheet=sheet(world, now, state), faults=found, typed=request.one("typed"),
                 ink=request.one("ink") if drawn(request.one("ink")) else "",
                 signers=signers(world, now, state), not_signing=not_signing(world, now, state),
                 chosen=_chosen(request), **signing(now, state))


def _send_back_page(request: Request, world: World, now: Running, state: HoldState,
                    faults: dict[str, str] | None = None, status: int = 200) -> Answer:
    shown = frame(request, f"Send back: {now.title}", state.hold.words, now.title, _here(now, state),
                  "Back to the review")
    found = {name: (faults or {}).get(name, "") for name in FIELDS}
    return whole(request, "checklist/send_back.html", shown, status, here=_here(now, state), faults=found,
                 words=request.one("words"), by_pin=not _supervises(request.person), signers=supervisors(world),
                 chosen=request.one("signer"))


def _chosen(request: Request) -> str:
    return request.one("signer") or (request.person.id if request.person else "")


def _seen(now: Running, state: HoldState) -> tuple[str, ...]:
    return seen(now.folded, path(state.hold, SEND_BACK)) if heads(now, state.hold, SEND_BACK) else ()


def _here(now: Running, state: HoldState) -> str:
    return f"/tasks/{now.id}/holds/{state.hold.name}"
