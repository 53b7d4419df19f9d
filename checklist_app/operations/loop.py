"""The one loop: it runs whatever can be run, and passes on why the rest has no value."""

from collections.abc import Sequence
from typing import Any

from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.operations.graph import CannotAssess, NotApplicable, Stopped, Waits
from checklist_app.operations.plan import Step, together


def run(steps: Sequence[Step], values: list[Any], stopped: dict[int, Stopped]) -> None:
    """Fill in values, and in `stopped` the reasons of what has none.

    Any exception but `Stopped` and `OutOfRangeError` is a fault of ours and goes up.
    """
    for step in steps:
        if stopped and not stopped.keys().isdisjoint(step.waits_for):
            reason = _hindrance(step, stopped)
            if reason is not None:
                stopped[step.out] = reason
                continue
            for slot in step.tolerates:
                if slot in stopped:
                    values[slot] = None
        try:
            values[step.out] = step.run(*step.take(values))
        except Stopped as reason:
            stopped[step.out] = reason
        except OutOfRangeError as refusal:
            stopped[step.out] = CannotAssess(str(refusal))


def _hindrance(step: Step, stopped: dict[int, Stopped]) -> Stopped | None:
    hits = [stopped[slot] for slot in step.waits_for if slot in stopped and not _tolerated(step, slot, stopped[slot])]
    if not hits:
        return None

    reason = _deciding(hits)
    if step.run is together and isinstance(reason, NotApplicable):
        return CannotAssess(*(f"a row is not used: {words}" for words in reason.reasons))
    return reason


def _tolerated(step: Step, slot: int, reason: Stopped) -> bool:
    return slot in step.tolerates and (step.tolerates_all or isinstance(reason, NotApplicable))


def _deciding(hits: list[Stopped]) -> Stopped:
    """*Not used* settles it, whatever else is missing; then a refusal; then what is waited for."""
    kind = next(kind for kind in (NotApplicable, CannotAssess, Waits) if any(isinstance(hit, kind) for hit in hits))
    return kind(*dict.fromkeys(words for hit in hits if isinstance(hit, kind) for words in hit.reasons))
