"""What an evaluation rests on that nobody measured: worst cases, how numbers were come by, what counts as exact."""

from collections.abc import Iterator
from enum import Enum
from typing import Any

from checklist_app.operations.answered import at_least
from checklist_app.operations.evaluate import Evaluation
from checklist_app.operations.gear import Gear, PickPoint
from checklist_app.operations.graph import DontKnow, Entry, NotApplicable, NotUsed
from checklist_app.operations.plan import words_of
from checklist_app.operations.settings import HOUSE_VALUE
from checklist_app.operations.task import Key, Measured
from checklist_app.operations.words import said

NOT_USED = "not used"


def assumptions(ev: Evaluation) -> list[str]:
    """One sentence for each, in the order the entries are asked."""
    found: list[str] = []
    if not ev.with_spread:
        found.append("every number counts as exact: how far it may lie off was left out")
    used = {slot for step in ev.plan.steps for slot in step.args}
    counts = _counts(ev)
    branched = {way.choice for way in ev.table.all_ways() if way.choice}
    choices = {way.choice for way in ev.table.all_ways() if way.choice and not way.on_known}
    for key, slot in ev.plan.slots.items():
        entry = None if (key.row or "").startswith("*") else ev.table.entries.get(key.name)
        if entry is not None and (
            key in ev.task.answers or slot in used or key.name in choices or isinstance(entry.default, NotUsed)
        ) and (key in ev.task.answers or slot not in used or slot in counts or key.name in branched):
            found.extend(_of(ev, key, entry))
    return found


def _counts(ev: Evaluation) -> set[int]:
    """Slots that something is worked out from: what only does not apply says nothing of what was taken for it."""
    return {
        slot for step in ev.plan.steps if not isinstance(ev.halted.get(step.out), NotApplicable) for slot in step.args
    }


def _of(ev: Evaluation, key: Key, entry: Entry) -> Iterator[str]:
    given = ev.task.answers.get(key)
    words = words_of(ev.table, key)
    if given is None and entry.default is not None:
        yield f"{words}: {_default(entry.default, entry.unit)}"
    elif isinstance(given, DontKnow):
        yield f"{words}: not known; the worst case is taken"
    elif isinstance(given, NotUsed):
        yield f"{words}: not used" if given.reason == NOT_USED else f"{words}: not used ({given.reason})"
    elif isinstance(given, Measured) and ev.with_spread:
        yield from _measured(words, entry, given)
    elif isinstance(given, PickPoint):
        yield f"{words}: {given.id}, its rating by {given.facts.get('evidence') or 'no evidence that is named'}"
    elif isinstance(given, Gear) and given.state is None:
        yield f"{words}: {given.id} was typed in, not taken from the register"


def _measured(words: str, entry: Entry, given: Measured) -> Iterator[str]:
    how = next((each for each in entry.obtained if each.name == given.how), None)
    if given.plus_minus is not None:
        least = at_least(entry, given)
        more = f"; all the same up to {_short(least)} {entry.unit} ({HOUSE_VALUE})" if (
            least > given.value + given.plus_minus) else ""
        came = f", {how.words}" if how else ""
        away = f"± {_short(given.plus_minus)} {entry.unit}".rstrip()
        yield f"{words}: {said(given.value, entry.unit)}{came}, {away}{more}"
    elif how is not None:
        where = how.spread(given.value)
        low = f"{_short(where.low)} to" if where.low < given.value else "up to"
        ends = f"{low} {_short(where.high)}"
        yield f"{words}: {said(given.value, entry.unit)}, {how.words}, {ends} {entry.unit} ({HOUSE_VALUE})"


def _default(default: Any, unit: str) -> str:
    if isinstance(default, NotUsed):
        return default.reason
    if isinstance(default, Enum):
        return f"{default.value} ({HOUSE_VALUE})"
    if isinstance(default, Measured) and default.plus_minus is not None:
        return f"{_short(default.value)} ± {_short(default.plus_minus)} {unit}".rstrip() + f" ({HOUSE_VALUE})"
    low, high = getattr(default, "low", None), getattr(default, "high", None)
    if low is not None and high is not None:
        return f"{_short(low)} to {_short(high)} {unit}".rstrip() + f" ({HOUSE_VALUE})"

    return f"{default} {unit}".rstrip() + f" ({HOUSE_VALUE})"


def _short(value: float) -> str:
    return f"{value:.6g}".replace("-", "−")
