"""Inputs drawn at random for any operation, from its declared entries alone: one that is added joins by itself.

Most begin with the operation's own example or another complete one, so that much of it computes; the rest is drawn from
the declared ranges, with their very ends, answers left out, don't know, not used, odd ways of knowing, and rows too few
or too many.
"""

import math
import random
from collections.abc import Mapping
from enum import Enum
from typing import Any

from checklist_app.operations.describe import describe
from checklist_app.operations.fields import Field, FieldType
from checklist_app.operations.gear import is_gear, kind_of, kinds_of
from checklist_app.operations.graph import Day, Entry
from checklist_app.operations.operation import Operation
from tests.operations.more_examples import MORE

Input = dict[str, Any]
LEFT_AS_IN_THE_EXAMPLE = (1.0, 1.0, 0.97, 0.9, 0.6, 0.2)
BIG = 1e4
DAYS = ("2026-11-25", "2020-02-29", "2099-12-31")


def some_inputs(operation: Operation, count: int, seed: int) -> list[Input]:
    """So many inputs; one in four with its spread."""
    draw = random.Random(f"{operation.name} {seed}")
    return [_input(draw, operation) | {"spread": number % 4 == 0} for number in range(count)]


def _input(draw: random.Random, operation: Operation) -> Input:
    example = draw.choice((operation.example, *(each for each in MORE if each["operation"] == operation.name)))
    table, keep = operation.table, draw.choice(LEFT_AS_IN_THE_EXAMPLE)
    own = [table.entries[name] for name in describe(operation)["entries"]]
    made: Input = {"operation": operation.name, "entries": _answers(draw, own, example["entries"], keep)}
    for group in table.groups.values():
        if group.fixed is None:
            rows = list(example.get(group.plural, ()))
            rows = rows if draw.random() < 0.9 else rows[:draw.randrange(len(rows) + 1)] + [{}] * draw.randrange(3)
            rows = rows or [{}] * (draw.random() < 0.4)
            own = [table.entries[name] for name in describe(operation)["groups"][group.name]["entries"]]
            made[group.plural] = [_row(draw, own, row, keep, number) for number, row in enumerate(rows, 1)]
    return made


def _row(draw: random.Random, own: list[Entry], row: Mapping[str, Any], keep: float, number: int) -> Input:
    return {"label": row.get("label", f"row {number}"), **_answers(draw, own, row, keep)}


def _answers(draw: random.Random, own: list[Entry], given: Mapping[str, Any], keep: float) -> Input:
    made = {}
    for entry in own:
        if entry.name in given and draw.random() < keep:
            made[entry.name] = _nudged(draw, entry, given[entry.name])
        elif draw.random() < (0.0 if keep == 1.0 else 0.1 if keep > 0.9 else 0.7):
            made[entry.name] = _drawn(draw, entry)
        elif entry.name in given and draw.random() < keep:
            made[entry.name] = given[entry.name]
    return made


def _nudged(draw: random.Random, entry: Entry, given: Any) -> Any:
    """Near what the example says: numbers and facts of gear a little away, anything else as it is."""
    if entry.kind is float and isinstance(given, Mapping) and "value" in given:
        return {**given, "value": _near(draw, given["value"], entry.low, entry.high)}
    if not is_gear(entry.kind) or not isinstance(given, Mapping) or "not_used" in given:
        return given
    kind = kind_of(given.get("kind") or kinds_of(entry.kind)[0])
    numbers = {each.name: each for each in kind.fields if each.type is FieldType.NUMBER}
    return {name: _near(draw, fact, numbers[name].low, numbers[name].high) if name in numbers else fact
            for name, fact in given.items()}


def _near(draw: random.Random, value: float, low: float | None, high: float | None) -> float:
    if draw.random() < 0.4:
        return value
    most = draw.choice((0.01, 0.03, 0.25))
    away = value * draw.uniform(1.0 - most, 1.0 + most) + draw.choice((0.0, 0.0, draw.uniform(-0.1, 0.1) * most))
    return _inside(round(away, draw.choice((2, 3, 17))), low, high)


def _inside(value: float, low: float | None, high: float | None) -> float:
    return min(max(value, -BIG if low is None else low), BIG if high is None else high)


def _drawn(draw: random.Random, entry: Entry) -> Any:
    """Any answer that is open at this entry, and now and then one that is not."""
    chance = draw.random()
    if chance < 0.08:
        return "don't know"
    if chance < (0.25 if entry.may_be_none else 0.082):
        return {"not_used": "none here"}
    if entry.kind is float:
        return _number(draw, entry)
    if entry.kind is Day:
        return draw.choice(DAYS)
    if is_gear(entry.kind):
        return _gear(draw, draw.choice(kinds_of(entry.kind)))
    if isinstance(entry.kind, type) and issubclass(entry.kind, Enum):
        return draw.choice([str(each.value) for each in entry.kind])
    return draw.choice(("words", "words with °, β and ½"))


def _number(draw: random.Random, entry: Entry) -> Any:
    value = _figure(draw, entry.low, entry.high, entry.usual)
    how = draw.choice([None, *(each.name for each in entry.obtained)])
    spread = draw.choice((None, 0.0, abs(value) * draw.uniform(0.0, 0.05), draw.uniform(0.0, 0.05)))
    return {"value": value} | ({"how": how} if how else {}) | ({"plus_minus": spread} if spread is not None else {})


def _figure(draw: random.Random, low: float | None, high: float | None, usual: tuple[float, float] | None) -> float:
    """From the usual range, from the whole one, or one of their ends and its neighbour."""
    ends = [end for end in (low, high, *(usual or ())) if end is not None]
    if ends and draw.random() < 0.2:
        end = draw.choice(ends)
        return _inside(draw.choice((end, math.nextafter(end, 0.0), 0.0)), low, high)
    least, most = usual if usual and draw.random() < 0.8 else (_inside(-BIG, low, None), _inside(BIG, None, high))
    return round(draw.uniform(least, most), draw.choice((1, 3, 17)))


def _gear(draw: random.Random, kind: str) -> Input:
    """A thing with most of its facts."""
    facts = {each.name: _fact(draw, each) for each in kind_of(kind).fields if each.required or draw.random() < 0.6}
    return {"kind": kind, "id": f"{kind[:1].upper()}-{draw.randrange(100)}", **facts}


def _rows(draw: random.Random, field: Field) -> list[Input]:
    """Mostly as on a plate: the first column goes up, the others go down."""
    count = draw.randrange(1, 4) if draw.random() < 0.95 else 0
    columns = {each.name: [_fact(draw, each) for _ in range(count)] for each in field.columns}
    if draw.random() < 0.9:
        columns = {name: sorted(column, reverse=number > 0) for number, (name, column) in enumerate(columns.items())}
    return [{name: column[row] for name, column in columns.items()} for row in range(count)]


def _fact(draw: random.Random, field: Field) -> Any:
    if field.type is FieldType.NUMBER:
        return _figure(draw, field.low, field.high, field.usual)
    if field.type is FieldType.WHOLE:
        return draw.randrange(int(field.low or 0), int(field.high or 100) + 1)
    if field.type is FieldType.ROWS:
        return _rows(draw, field)
    if field.type is FieldType.FLAG:
        return draw.choice(("yes", "no"))
    if field.type is FieldType.DATE:
        return draw.choice(DAYS)
    return draw.choice(field.choices) if field.choices else "words"
