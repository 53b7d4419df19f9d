"""Whether a trial lift could find it within its limit at all, wherever that lies which nobody knows."""

from collections.abc import Mapping
from typing import Any

from checklist_app.operations import climb
from checklist_app.operations.aim import Aim
from checklist_app.operations.check import Clause, Verdict, badness, verdict
from checklist_app.operations.graph import Stopped
from checklist_app.operations.places import Places, feeds
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
    unknown = [i for i, each in enumerate(plan.variables) if each.unknown and bits.get(slot, 0) >> i & 1]
    if not unknown:
        return False

    places = Places(plan, bits, values, halted, [slot])
    aim = Aim(places, slot, lambda told: badness(told, clause), lambda told: None)
    nominal = places.nominal
    ends = [change for i in unknown for change in climb.to_ends(plan.variables[i], i, nominal)]
    begins = [nominal, *(places.moved(nominal, change) for change in ends)]
    best = climb.down(aim, min(begins, key=aim.at), unknown)
    return verdict(places.at(best, slot), clause) is Verdict.OVER
