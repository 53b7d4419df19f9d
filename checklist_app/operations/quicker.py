"""What a search of the spread need not do twice, or at all."""

import gc
from collections.abc import Callable, Iterator, Mapping
from contextlib import contextmanager
from copy import copy
from typing import Any

from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.operations.graph import NotApplicable, Stopped
from checklist_app.operations.plan import Plan, Step


class Kept:
    """A function that remembers what it gave, or why it refused."""

    def __init__(self, run: Callable[..., Any]) -> None:
        self.run = run
        self.known: dict[tuple[Any, ...], Any] = {}
        self.refused: dict[tuple[Any, ...], Exception] = {}

    def __call__(self, *args: Any) -> Any:
        if args in self.known:
            return self.known[args]
        if args in self.refused:
            raise self.refused[args]
        try:
            found = self.known[args] = self.run(*args)
        except (Stopped, OutOfRangeError) as refusal:
            self.refused[args] = refusal
            raise
        return found


def remembering(plan: Plan) -> Plan:
    """The same plan, its costly steps remembering what they gave."""
    quick = copy(plan)
    quick.steps = [step._replace(run=Kept(step.run)) if _is_kept(step) else step for step in plan.steps]

    return quick


def _is_kept(step: Step) -> bool:
    return bool(getattr(step.run, "__dict__", {}).get("quantity", {}).get("kept"))


def never(plan: Plan, halted: Mapping[int, Stopped], varying: Mapping[int, int]) -> set[int]:
    """What does not apply, wherever the uncertain entries lie: something certain says so."""
    found = {slot for slot, why in halted.items() if slot not in varying and isinstance(why, NotApplicable)}
    for step in plan.steps:
        hindered = any(slot in found and slot not in step.tolerates for slot in step.waits_for)
        if hindered and isinstance(halted.get(step.out), NotApplicable):
            found.add(step.out)
    return found


@contextmanager
def nothing_collected() -> Iterator[None]:
    """No search for garbage meanwhile: a search keeps all that it makes until its end, and looking it through is a
    quarter of its time."""
    at_work = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if at_work:
            gc.enable()
