"""Who may put gear back into use: another person than the one who took it out, and a competent one."""

from checklist_app.checklists.authority import capacities, valid_on
from checklist_app.checklists.entry import Path
from checklist_app.web import current, registry

COMPETENT = ("supervisor", "examiner")


def why_not_release(about: Path) -> str:
    """Why the signed-in person may not lift this quarantine, in words; empty when he may."""
    stands = registry.folded(about)
    held = [entry for entry in stands.heads.get(registry.QUARANTINE, ()) if entry.type == "quarantine"]
    if not held:
        return "It is not in quarantine."
    if not registry.set_by_others(stands, registry.author()):
        return "You put it into quarantine yourself. Another competent person must look at it and release it."
    held_capacities = capacities(current.world(), registry.author())
    if not any(valid_on(held_capacities, one, current.today()) for one in COMPETENT):
        return "Release is for a supervisor or an examiner whose capacity is in date. Yours is not."

    return ""
