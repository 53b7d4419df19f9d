"""What a question tells from the checks: at the zone, how far it reaches."""
from checklist_app.checklists.procedure import Prompt
from checklist_app.checklists.running import Running
from checklist_app.operations.check import State


def told(now: Running, prompt: Prompt) -> str:
    """The words of the check that a prompt names in `tells`; nothing while it waits or does not apply."""
    if not prompt.tells:
        return ""
    found = next((check for check in now.evaluation.checks if check.quantity == prompt.tells), None)
    if found is None or not isinstance(found.outcome, State):
        return ""

    return f"{found.outcome.reason[:1].upper()}{found.outcome.reason[1:]}."
