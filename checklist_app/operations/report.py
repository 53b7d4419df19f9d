"""An evaluation as plain data: what `assess` prints and what a record keeps."""

from collections.abc import Iterator, Mapping
from enum import Enum
from math import isfinite
from typing import Any

from checklist_app.mechanics.sources import SOURCES
from checklist_app.operations.assumed import assumptions
from checklist_app.operations.check import Check, Limit, Outcome, State, Strength, Verdict, utilisation
from checklist_app.operations.evaluate import Evaluation
from checklist_app.operations.graph import CannotAssess, Missing, Stopped
from checklist_app.operations.operation import Operation
from checklist_app.operations.plan import ALL
from checklist_app.operations.words import MEASURED, note, reason
from checklist_app.operations.working import working

KINDS = {Strength: "strength", Limit: "limit", State: "state"}


def report(operation: Operation, ev: Evaluation) -> dict[str, Any]:
    """Verdict, governing check, every check with its working, every quantity, what waits and what is refused.

    What waits or is refused stands only in its map; what is not applicable stands in neither.
    """
    computed = [check for check in ev.checks if check.computed]
    waiting = {check.name: check for check in ev.checks if check.verdict is Verdict.WAITING}
    refused = {check.name: reason(check) for check in ev.checks if check.verdict is Verdict.CANNOT}
    unused = {check.name: reason(check) for check in ev.checks if check.verdict is Verdict.NOT_APPLICABLE}
    return {
        "operation": operation.name,
        "verdict": ev.verdict.words,
        "governs": ev.governs.name if ev.governs else None,
        "class": _class(operation, ev),
        "class_is_at_least": bool(waiting or refused),
        "checks": [_check(ev, check) for check in computed],
        "quantities": dict(quantities(ev)),
        "assumptions": assumptions(ev),
        "cautions": [*operation.cautions, *_cautions(ev)],
        "waiting": {name: waited_for(check) for name, check in waiting.items()},
        "waiting_words": {name: list(_stopped(check).reasons) for name, check in waiting.items()},
        "refused": refused,
        "not_applicable": unused,
    }


def as_text(told: Any) -> Any:
    """The same with every number as text, for canonical JSON."""
    if isinstance(told, Mapping):
        return {str(name): as_text(value) for name, value in told.items()}
    if isinstance(told, list | tuple):
        return [as_text(value) for value in told]

    return rounded_text(told) if isinstance(told, float) else told


def rounded(value: float) -> float:
    """Twelve significant digits: what every machine agrees on where it is shown."""
    return float(rounded_text(value))


def rounded_text(value: float) -> str:
    """Twelve significant digits as text.

    Example:
        >>> rounded_text(0.1 + 0.2), rounded_text(-0.0)
        ('0.3', '0')
    """
    text = f"{value:.12g}"
    return "0" if text == "-0" else text


def waited_for(check: Check) -> list[str]:
    """Names of the entries that a check waits for; the words of a fact of gear that nobody entered."""
    return [each.key if isinstance(each, Missing) else str(each) for each in _stopped(check).reasons]


def _stopped(check: Check) -> Stopped:
    return check.stopped or CannotAssess("nothing to judge")


def _check(ev: Evaluation, check: Check) -> dict[str, Any]:
    clause, source = check.clause, SOURCES.get(check.clause.source)
    return {
        "name": check.name,
        "quantity": check.quantity,
        "row": check.row,
        "kind": kind_of(ev, check),
        "title": clause.title,
        **_figures(check.outcome),
        "unit": clause.unit,
        "at_limit": clause.at_limit.value,
        "verdict": check.verdict.words,
        "worst": _figures(check.worst),
        "driver": check.drivers[0] if check.drivers else None,
        "rule_set": clause.rule_set,
        "source": clause.source,
        "source_words": source.words() if source else clause.source,
        "source_status": source.status.value if source else "not registered",
        "reason": check.outcome.words if isinstance(check.outcome, State) else None,
        "caution": check.caution or None,
        "note": note(check),
        "working": [line.text for line in working(ev, check.name)],
    }


def kind_of(ev: Evaluation, check: Check) -> str:
    """The kind of a check, whether or not it has a result."""
    return KINDS[ev.table.ways[check.quantity][0].returns]


def _figures(outcome: Outcome | Stopped) -> dict[str, float | None]:
    if isinstance(outcome, Stopped | State):
        return {"demand": None, "capacity": None, "utilisation": None}

    used = utilisation(outcome)
    return {
        "demand": rounded(outcome.demand) if isfinite(outcome.demand) else None,
        "capacity": rounded(outcome.capacity) if isfinite(outcome.capacity) else None,
        "utilisation": None if used is None else rounded(used),
    }


def _class(operation: Operation, ev: Evaluation) -> str | None:
    if not operation.class_quantity or not any(check.computed for check in ev.checks):
        return None
    found = ev[operation.class_quantity]
    if isinstance(found, Stopped):
        return None

    return str(found.value) if isinstance(found, Enum) else str(found)


def quantities(ev: Evaluation) -> Iterator[tuple[str, Any]]:
    """Every entry and computed quantity that is a number, a point, a choice or a text, by name."""
    for key, slot in ev.plan.slots.items():
        if slot in ev.halted or (key.row or "").startswith(ALL) or key.name not in ev.table.home:
            continue
        value = plain(ev.values[slot])
        if value is not None:
            yield str(key), value


def plain(value: Any) -> Any:
    """A quantity as plain data; None for what is no quantity a person reads."""
    if isinstance(value, bool | int) or value is None:
        return value
    if isinstance(value, float):
        return rounded(value) if isfinite(value) else None
    if isinstance(value, Enum):
        return str(value.value)
    if isinstance(value, str):
        return str(value)
    if isinstance(value, Strength | Limit | State) or not hasattr(value, "_asdict"):
        return None

    return {name: plain(part) for name, part in value._asdict().items()}


def _minded(ev: Evaluation) -> dict[tuple[str, str], list[str]]:
    """The cautions that checks carry, each once, with the rows that carry it."""
    found: dict[tuple[str, str], list[str]] = {}
    for check in ev.checks:
        if check.computed and check.caution:
            rows = found.setdefault((check.clause.title, check.caution), [])
            rows += [check.row.replace("_", " ")] if check.row else []
    return found


def _cautions(ev: Evaluation) -> Iterator[str]:
    from_memory = dict.fromkeys(
        check.clause.title for check in ev.checks
        if check.computed and (source := SOURCES.get(check.clause.source)) and source.status.value == "from memory"
    )
    for words in from_memory:
        yield f"{words}: its limit is from memory, and may only make the verdict stricter"
    for (title, caution), rows in _minded(ev).items():
        yield f"{', '.join((title, *rows))}: {caution}"
    for check in ev.checks:
        if note(check) not in ("", MEASURED):
            yield f"{check.clause.title}: {note(check)}"
