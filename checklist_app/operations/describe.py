"""What an operation asks for, as plain data: entries, groups, kinds of gear, how answers are written, an example."""

from enum import Enum
from typing import Any

from checklist_app.operations.fields import Field
from checklist_app.operations.gear import is_gear, kind_of, kinds_of
from checklist_app.operations.graph import Day, Entry, Group
from checklist_app.operations.inline import DONT_KNOW
from checklist_app.operations.operation import Operation
from checklist_app.operations.table import Table

ANSWERS = {
    "number": "1.25",
    "number with how it was obtained": '{"value": 1.25, "how": "tape"}: the house\'s spread for it is taken',
    "number with its spread": '{"value": 1.25, "plus_minus": 0.01}: in the unit of the entry',
    "don't know": f'"{DONT_KNOW}": the published worst case is taken; without one it cannot be assessed',
    "not used": '{"not_used": "reason"}: only where may_be_none is true',
    "spread": '"spread": false at the top: every number counts as exact; only here, never on a task',
    "waiting": "an entry left out, or null, waits; a number with obtained waits until it is said how",
    "gear": '{"kind": …, "id": …, and its facts}; kind may be left out where only one is open',
    "rows": 'a list under the group\'s plural; "label" is unique in it, else rows are 1, 2, …',
}


def describe(operation: Operation) -> dict[str, Any]:
    """Everything somebody needs to write an input for `assess`."""
    table = operation.table
    kinds = {kind: None for entry in table.entries.values() if is_gear(entry.kind) for kind in kinds_of(entry.kind)}
    return {
        "words": operation.words,
        "entries": {name: _entry(table, name) for name, home in table.home.items() if _own(table, name, home, None)},
        "groups": {group.name: _group(table, group) for group in table.groups.values()},
        "gear": {kind: _gear(kind) for kind in kinds},
        "answers": ANSWERS,
        "checks": {name: table.ways[name][0].run.__dict__["clause"].title for name in operation.checks},
        "example": dict(operation.example),
    }


def _own(table: Table, name: str, home: str | None, group: str | None) -> bool:
    return name in table.entries and home == group


def _group(table: Table, group: Group) -> dict[str, Any]:
    return {
        "plural": group.plural,
        "at_least": group.at_least,
        "at_most": group.at_most,
        **_rows_by(group),
        "fixed": [str(each.value) for each in group.fixed] if group.fixed else None,
        "entries": {n: _entry(table, n) for n, home in table.home.items() if _own(table, n, home, group.name)},
    }


def _rows_by(group: Group) -> dict[str, Any]:
    if group.rows_by is None:
        return {}
    choice, wanted = group.rows_by
    return {"rows_by": {choice: {str(each.value): list(bounds) for each, bounds in wanted.items()}}}


def _entry(table: Table, name: str) -> dict[str, Any]:
    entry = table.entries[name]
    return {
        "words": entry.words,
        "kind": _kind(entry),
        **_bounds(entry.unit, entry.low, entry.high, entry.usual),
        "choices": [str(each.value) for each in entry.kind] if _is_choice(entry) else None,
        "gear": list(kinds_of(entry.kind)) if is_gear(entry.kind) else None,
        "obtained": {
            how.name: {
                "words": how.words, "plus_minus": how.plus_minus, "relative": how.relative, "factor": how.factor
            }
            for how in entry.obtained
        },
        "dont_know": table.may_not_know(name),
        "may_be_none": entry.may_be_none,
        "must_be_answered": entry.default is None,
        "hint": entry.hint,
    }


def _bounds(
    unit: str, low: float | None, high: float | None, usual: tuple[float, float] | None
) -> dict[str, Any]:
    return {"unit": unit, "low": low, "high": high, "usual": list(usual) if usual else None}


def _is_choice(entry: Entry) -> bool:
    return isinstance(entry.kind, type) and issubclass(entry.kind, Enum)


def _kind(entry: Entry) -> str:
    if is_gear(entry.kind):
        return "gear"
    if entry.kind is Day:
        return "day, as 2026-11-25"
    if entry.kind is float:
        return "number"

    return "choice" if _is_choice(entry) else "text"


def _gear(kind: str) -> dict[str, Any]:
    declared = kind_of(kind)
    return {"words": declared.words, "facts": {each.name: _field(each) for each in declared.fields}}


def _field(field: Field) -> dict[str, Any]:
    told: dict[str, Any] = {
        "words": field.words, "kind": field.type.value, **_bounds(field.unit, field.low, field.high, field.usual),
        "hint": field.hint,
    }
    if field.choices:
        told["choices"] = list(field.choices)
    if field.columns:
        told["columns"] = {column.name: _field(column) for column in field.columns}
    return told
