"""What one answer gives the plan: a value, a range, *don't know*, or why there is none."""

from math import isfinite
from typing import Any

from checklist_app.operations.graph import CannotAssess, Entry, Missing, NotApplicable, NotUsed, Range, Waits
from checklist_app.operations.task import Key, Measured

WEIGHED = "weighed"


def plainly(entry: Entry, answer: Any, key: Key, with_spread: bool) -> Any:
    """A value, a `Range`, `DontKnow`, or the `Stopped` that says why the entry has no value."""
    if answer is None:
        return Waits(Missing(entry.words + key.behind, str(key)))
    if isinstance(answer, NotUsed):
        return NotApplicable(answer.reason)
    if isinstance(answer, float | int) and entry.obtained:
        answer = Measured(float(answer))
    if isinstance(answer, Measured):
        return _measured(entry, answer, key, with_spread)
    if isinstance(answer, Range) and not with_spread:
        return answer.nominal

    return answer


def _measured(entry: Entry, answer: Measured, key: Key, with_spread: bool) -> Any:
    if not with_spread:
        return answer.value
    if answer.plus_minus is not None:
        low, high = answer.value - answer.plus_minus, answer.value + answer.plus_minus
        return _spread(entry, Range(low, answer.value, max(high, at_least(entry, answer))))
    if not entry.obtained:
        return answer.value
    how = next((each for each in entry.obtained if each.name == answer.how), None)
    if how is None:
        return Waits(Missing(f"how {entry.words}{key.behind} was obtained", f"{key}.how"))

    return _spread(entry, how.spread(answer.value))


def at_least(entry: Entry, answer: Measured) -> float:
    """A contingency stays whatever margin is claimed, unless the number was weighed."""
    how = next((each for each in entry.obtained if each.name == answer.how), None)
    if how is None or how.factor is None or how.name == WEIGHED:
        return answer.value

    return how.spread(answer.value).high


def _spread(entry: Entry, found: Range) -> Any:
    if not (isfinite(found.low) and isfinite(found.high)):
        return CannotAssess(f"{entry.words}: the spread is no number")
    return found if found.low < found.high else found.nominal
