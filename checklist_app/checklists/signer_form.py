"""Somebody else's name and PIN in a form: who may be chosen, and what is missing."""
from checklist_app.checklists.answer import Request
from checklist_app.checklists.authority import SUPERVISOR, capacities
from checklist_app.checklists.words import day
from checklist_app.checklists.world import World


def supervisors(world: World) -> list[dict[str, str]]:
    """Everybody of the register who is a supervisor today."""
    found = []
    for name, item in world.items("person").items():
        until = capacities(world, name).get(SUPERVISOR, "")
        if until >= world.today:
            found.append({"id": name, "name": item.title, "note": f"supervisor until {day(until)}"})
    return found


def signer_faults(request: Request, missing_pin: str) -> dict[str, str]:
    """What is missing of name and PIN, by field."""
    faults = {}
    if not request.one("signer"):
        faults["signer"] = "Choose who it is."
    if request.pin_fault:
        faults["pin"] = request.pin_fault
    elif request.verified is None or request.verified.person.id != request.one("signer"):
        faults["pin"] = missing_pin
    return faults
