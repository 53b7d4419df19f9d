"""Whether a trial lift could find it within its limit at all, wherever that lies which nobody knows."""

from collections.abc import Mapping
from typing import Any

from checklist_app.operations.check import Clause, Verdict, verdict
from checklist_app.operations.climb import STRIDES, Climb, to_ends
from checklist_app.operations.graph import Stopped
from checklist_app.operations.loop import hindering
from checklist_app.operations.nest import ancestors, feeds
from checklist_app.operations.plan import Plan


def hopeless(plan: Plan, values: list[Any], halted: Mapping[int, Stopped], slot: int, clause: Clause) -> bool:
    """Over limit at every place that was tried of what nobody knows, all else as entered: no trial tells it better.

    Args:
        plan: the steps of the task.
        values: every slot at its nominal value.
        halted: why other slots have none.
        slot: where the check stands.
        clause: of that check.
    """
    bits = feeds(plan)
    steps = [step for step in ancestors(plan, [slot]) if bits.get(step.out)]
    unknown = [each for i, each in enumerate(plan.variables) if each.unknown and bits.get(slot, 0) >> i & 1]
    climb = Climb(steps, values, hindering(steps, halted, bits), slot, clause, unknown)
    if not unknown:
        return False

    begins = [climb.tried({}), *(climb.tried(change) for change in to_ends(unknown, {}))]
    best = climb.down(min(begins, key=lambda begin: begin.badness), STRIDES)
    return verdict(best.result, clause) is Verdict.OVER
