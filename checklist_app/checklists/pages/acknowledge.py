"""A sign-off was given without knowing what the server already held: what to do, and a supervisor's word on it."""
from collections.abc import Mapping

from checklist_app.checklists import values
from checklist_app.checklists.answer import Answer, Request, page
from checklist_app.checklists.authority import SUPERVISOR, capacities, valid_on
from checklist_app.checklists.entry import make
from checklist_app.checklists.frame import frame, go_to, whole
from checklist_app.checklists.running import Running, running
from checklist_app.checklists.signer_form import signer_faults, supervisors
from checklist_app.checklists.world import World

ACKNOWLEDGE = ("acknowledge",)


@page("/tasks/<task>/acknowledge")
def acknowledge(request: Request, world: World, task: str) -> Answer:
    """What was signed, what the signer had not seen; the word is one entry, which ends the alarm everywhere."""
    now, found = running(world, task), _alarms(request, world, task)
    if not found:
        return go_to(f"/tasks/{task}")
    if request.method != "POST":
        return _page(request, world, now, found)
    faults = _faults(request, world, found)
    if faults or request.verified is None:
        return _page(request, world, now, found, faults, 422)

    part, data = values.words_part(request.one("words"), request.salt)
    said = make(("task", task), ACKNOWLEDGE, values.acknowledge(request.one("sign_off"), part), (),
                request.verified.person.id, request.device, request.counter, request.at)
    return go_to(f"/tasks/{task}", keep=(said,), parts={part: data})


def acknowledged(now: Running) -> frozenset[str]:
    """The sign-offs on which a supervisor has given his word."""
    return frozenset(str(entry.value["entry"]) for entry in now.folded.known.values() if entry.type == "acknowledge")


def _alarms(request: Request, world: World, task: str) -> list[Mapping[str, str]]:
    """The alarms of this task that still stand. A word given on this phone ends one before the server has heard."""
    done = acknowledged(running(world, task))
    return [alarm for alarm in request.alarms if alarm["task"] == task and alarm["sign_off"] not in done]


def _faults(request: Request, world: World, found: list[Mapping[str, str]]) -> dict[str, str]:
    faults = signer_faults(request, "Enter the PIN of the supervisor.")
    if not request.one("words"):
        faults["words"] = "Say in a few words what was done about it."
    if request.one("sign_off") not in {alarm["sign_off"] for alarm in found}:
        faults["words"] = "Somebody gave his word on this already. Look again."
    if faults or request.verified is None:
        return faults
    if not valid_on(capacities(world, request.verified.person.id), SUPERVISOR, world.today):
        faults["signer"] = f"{request.verified.person.name} is not a supervisor today."
    return faults


def _page(request: Request, world: World, now: Running, found: list[Mapping[str, str]],
          faults: dict[str, str] | None = None, status: int = 200) -> Answer:
    shown = frame(request, f"Alarm: {now.title}", "Alarm", now.title, f"/tasks/{now.id}", "Back to the task")
    said = {name: (faults or {}).get(name, "") for name in ("words", "signer", "pin")}
    return whole(request, "checklist/acknowledge.html", shown, status, task=now.id, alarm=found[0], faults=said,
                 words=request.one("words"), signers=supervisors(world), chosen=request.one("signer"))
