"""The one loop: it runs whatever can be run, and passes on why the rest has no value."""

from collections.abc import Mapping, Sequence
from typing import Any

from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.operations.graph import CannotAssess, NotApplicable, Stopped, Waits
from checklist_app.operations.plan import Step, together


def run(steps: Sequence[Step], values: list[Any], stopped: dict[int, Stopped]) -> None:
    """Fill in values, and in `stopped` the reasons of what has none.

    Any exception but `Stopped` and `OutOfRangeError` is a fault of ours and goes up.
    """
    for step in steps:
        run_one(step, values, stopped)


def run_one(step: Step, values: list[Any], stopped: dict[int, Stopped]) -> None:
    """Fill in one value, or the reason why it has none; the reason keeps no frames, which would keep all the values."""
    out, function, take, _args, tolerates, waits_for, _all, _held = step
    if stopped and not stopped.keys().isdisjoint(waits_for):
        hindrance = _hindrance(step, stopped)
        if hindrance is not None:
            stopped[out] = hindrance
            return
        for slot in tolerates:
            if slot in stopped:
                values[slot] = None
    try:
        values[out] = function(*take(values))
    except Stopped as reason:
        stopped[out] = reason.with_traceback(None)
    except OutOfRangeError as refusal:
        stopped[out] = CannotAssess(str(refusal))


def hindering(steps: Sequence[Step], stopped: Mapping[int, Stopped], varying: Mapping[int, int]) -> dict[int, Stopped]:
    """Of what has no value and does not vary, only what keeps one of these steps from being run."""
    return {
        slot: stopped[slot]
        for step in steps
        for slot in step.waits_for
        if slot in stopped and slot not in varying and not _tolerated(step, slot, stopped[slot])
    }


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
