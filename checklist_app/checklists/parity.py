"""What a machine must say so that another one can hold its evaluation against its own: answers, gear, day, result."""
from typing import Any

from checklist_app.checklists import scope
from checklist_app.checklists.again import evaluated
from checklist_app.checklists.frozen import freeze
from checklist_app.checklists.running import running
from checklist_app.checklists.statement import evaluation
from checklist_app.checklists.world import World

FORM = "parity/1"


def claim(world: World, task: str) -> dict[str, Any]:
    """All answers of a task that stand, the items picked as they are now, and what they come to here."""
    now = running(world, task)
    inputs = scope.everything(now.folded)
    gear = freeze(world, inputs, now.day)

    return {"form": FORM, "task": task, "day": now.day, "inputs": inputs, "gear": gear,
            "evaluation": again(task, inputs, gear, now.day)}


def again(task: str, inputs: Any, gear: Any, day: str) -> dict[str, Any]:
    """What these come to by the code of this machine, from these alone."""
    return evaluation(evaluated(task, inputs, gear, day).report)
