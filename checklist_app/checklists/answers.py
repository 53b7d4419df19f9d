"""Entries as answers of the operation: typed text is read, picks become gear, and registers fill what nobody said."""
from collections.abc import Hashable, Mapping
from dataclasses import dataclass, field
from enum import Enum
from typing import Any

from checklist_app.checklists.entry import Path
from checklist_app.checklists.filled import Filled, filled
from checklist_app.checklists.fold import Folded
from checklist_app.checklists.misfits import misfits
from checklist_app.checklists.picked import Unusable, gear_of, item_of_pick
from checklist_app.checklists.procedure import Procedure
from checklist_app.checklists.register import Item
from checklist_app.checklists.values import Value, words
from checklist_app.checklists.world import World
from checklist_app.operations.catalogue import OPERATIONS
from checklist_app.operations.fields import Fault, Field, FieldType, read_number
from checklist_app.operations.graph import Day, DontKnow, Entry, Missing, NotUsed, Waits
from checklist_app.operations.table import Table
from checklist_app.operations.task import Key, Measured, Task, row_labels


@dataclass(frozen=True)
class Answers:
    """What the entries come to. `sources` says of a filled answer where it is from."""

    task: Task
    items: Mapping[Path, Item]
    faults: Mapping[Path, str]
    sources: Mapping[Key, Filled]
    labels: Mapping[str, str]
    fingerprint: Hashable = field(compare=False)

    @property
    def day(self) -> str:
        """The day of the task, if it was answered and can be read."""
        return str(self.task.answers.get(Key("day"), ""))


def answers(world: World, folded: Folded, procedure: Procedure) -> Answers:
    """Read everything that stands, then let load and place fill what nobody answered."""
    table = OPERATIONS[procedure.operation].table
    labels = {row: name for rows in folded.rows.values() for row, name in row_labels(rows).items()}
    items = {path: item for path, value in folded.values.items()
             if value["type"] == "pick" and (item := item_of_pick(world, value)) is not None}
    given: dict[Key, Any] = {}
    faults = misfits(procedure, folded, items)
    for path, value in folded.values.items():
        entry = _entry_at(table, path)
        if entry is None:
            continue
        answer = Fault(faults[path]) if path in faults else _read(world, entry, value)
        if isinstance(answer, Fault):
            faults[path] = answer.words
            answer = _waits(entry, path, labels, "cannot be read")
        given[_key(entry, path, labels)] = answer
    for path in folded.disputed:
        if (entry := _entry_at(table, path)) is not None:
            given[_key(entry, path, labels)] = _waits(entry, path, labels, "two answers differ")
    sources = {key: fill for key, fill in filled(table, folded, items).items()
               if key not in given and key.name not in procedure.measured_anew}
    rows = {group: tuple(labels[row] for row in rows) for group, rows in folded.rows.items() if group in table.groups}
    task = Task({**{key: fill.answer for key, fill in sources.items()}, **given}, rows)

    return Answers(task, items, faults, sources, labels, _fingerprint(items))


def _entry_at(table: Table, path: Path) -> Entry | None:
    """The entry of the operation that is asked at this path."""
    group = path[0] if len(path) == 3 else None
    entry = table.entries.get(path[-1])
    return entry if entry is not None and table.home[entry.name] == group else None


def _key(entry: Entry, path: Path, labels: Mapping[str, str]) -> Key:
    return Key(entry.name, labels[path[1]] if len(path) == 3 else None)


def _waits(entry: Entry, path: Path, labels: Mapping[str, str], why: str) -> Waits:
    """What was answered but cannot be used waits: neither register nor default may stand in for it."""
    key = _key(entry, path, labels)
    return Waits(Missing(f"{entry.words}{key.behind}: {why}", str(key)))


def _read(world: World, entry: Entry, value: Value) -> Any:
    kind = value["type"]
    if kind == "dont_know":
        return DontKnow()
    if kind == "not_used":
        return _not_used(world, entry, value)
    if kind == "number" and entry.kind is float:
        return _number(entry, value)
    if kind == "pick":
        return _gear(world, entry, value)
    if kind == "date" and entry.kind is Day:
        return _day(value["text"])
    if kind == "choice" and isinstance(entry.kind, type) and issubclass(entry.kind, Enum):
        return _choice(entry.kind, value["text"])

    return Fault(f"This is no answer to: {entry.words}.")


def as_field(entry: Entry) -> Field:
    """A number of the operation as a field that reads what was typed."""
    return Field(entry.name, entry.words, FieldType.NUMBER, entry.unit, entry.low, entry.high, usual=entry.usual)


def _not_used(world: World, entry: Entry, value: Value) -> NotUsed | Fault:
    if not entry.may_be_none:
        return Fault(f"It cannot be left out: {entry.words}.")
    return NotUsed(words(world.part(value.get("part", ""))) or "not used")


def _number(entry: Entry, value: Value) -> float | Measured | Fault:
    number = read_number(value["text"], as_field(entry))
    if isinstance(number, Fault):
        return number
    if value["unit"] != entry.unit:
        return Fault(f"The answer is in {value['unit']}, asked is {entry.unit}.")
    if "plus_minus" not in value:
        return Measured(number, value.get("how"))
    away = read_number(value["plus_minus"], Field("plus_minus", "how far off", FieldType.NUMBER, entry.unit, 0.0))

    return away if isinstance(away, Fault) else Measured(number, value.get("how"), away)


def _gear(world: World, entry: Entry, value: Value) -> Any:
    try:
        return gear_of(world, entry, value)
    except Unusable as error:
        return Fault(str(error))


def _day(text: str) -> Day | Fault:
    try:
        return Day(text)
    except ValueError as error:
        return Fault(str(error))


def _choice(kind: type[Enum], text: str) -> Enum | Fault:
    try:
        return kind(text)
    except ValueError:
        return Fault(f"Choose one of: {', '.join(str(each.value) for each in kind)}.")


def _fingerprint(items: Mapping[Path, Item]) -> Hashable:
    """What an evaluation hangs on besides the entries: the picked items as they stand."""
    return tuple((path, item.subject, item.version, item.rests_on, item.state, item.fault)
                 for path, item in sorted(items.items()))
