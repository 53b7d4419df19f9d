"""A task written as JSON, with its gear inline: `{"operation": …, "spread": true, "entries": {…}, "legs": [{…}, {…}]}`.

Every refusal names the field and says what is allowed.
"""

from collections.abc import Mapping
from enum import Enum
from typing import Any

from checklist_app.operations.gear import Lashing, is_gear, kinds_of, make
from checklist_app.operations.graph import Day, DontKnow, Entry, Group, NotUsed
from checklist_app.operations.numbers import Fault, in_range
from checklist_app.operations.table import Table
from checklist_app.operations.task import Key, Measured, Task

DONT_KNOW = "don't know"
MOST_ROWS = 50
LONGEST = 200


class InputFault(ValueError):
    """The input cannot be used; the message names the field."""


def from_json(table: Table, data: Mapping[str, Any]) -> Task:
    """The task that the input describes.

    Raises:
        InputFault: If a name, a kind or a range does not fit.
    """
    groups = {group.plural: group for group in table.groups.values() if group.fixed is None}
    _known_only("the input", data, {"operation", "spread", "entries", *groups})
    entries = _mapping("entries", data.get("entries", {}))
    task = Task().changed(_answers(table, entries, None, "entries"))
    for plural, group in groups.items():
        task = _with_rows(table, task, group, data.get(plural, []))
    _required_in_one_place(task)
    return task


def _required_in_one_place(task: Task) -> None:
    """One strap lies in one place; a sling may have legs enough for several."""
    places: dict[str, list[str]] = {}
    for key, given in task.answers.items():
        if isinstance(given, Lashing):
            places.setdefault(given.id, []).append(str(key))
    for name, where in places.items():
        if len(where) > 1:
            raise InputFault(f"{where[1]}: {name} stands in {len(where)} places. It lies in one.")


def _with_rows(table: Table, task: Task, group: Group, rows: Any) -> Task:
    if not isinstance(rows, list):
        raise InputFault(f"{group.plural}: a list of rows is expected")
    if len(rows) > MOST_ROWS:
        raise InputFault(f"{group.plural}: {len(rows)} rows are too many")
    for number, row in enumerate(rows, 1):
        row = _mapping(f"{group.plural}, row {number}", row)
        label = _label(group, row.get("label", str(number)))
        if label in task.rows.get(group.name, ()):
            raise InputFault(f"{group.plural}: there are two rows {label}")
        own = {name: given for name, given in row.items() if name != "label"}
        answers = _answers(table, own, group, f"{group.plural}[{label}]")
        task = task.with_row(group.name, label, {key.name: value for key, value in answers.items()})
    return task


def _label(group: Group, label: Any) -> str:
    if not isinstance(label, str) or not 0 < len(label.strip()) <= 40 or set(label) & set("[]"):
        raise InputFault(f"{group.plural}: a label is a word without brackets, such as \"left\"")

    return label.strip()


def _answers(table: Table, given: Mapping[str, Any], group: Group | None, where: str) -> dict[Key, Any]:
    own = {name for name, home in table.home.items() if name in table.entries and home == (group and group.name)}
    _known_only(where, given, own)
    return {
        Key(name): answer(table.entries[name], value, f"{where}.{name}")
        for name, value in given.items()
        if value is not None
    }


def answer(entry: Entry, given: Any, where: str) -> Any:
    """The answer to one entry as a task holds it.

    Raises:
        InputFault: If it does not fit the entry; the message begins with `where`.
    """
    if given == DONT_KNOW:
        return DontKnow()
    if isinstance(given, Mapping) and "not_used" in given:
        return _not_used(entry, given, where)
    if is_gear(entry.kind):
        return _gear(entry, given, where)
    if entry.kind is float:
        return _number(entry, given, where)

    return _plain(entry, given, where)


def _not_used(entry: Entry, given: Mapping[str, Any], where: str) -> NotUsed:
    if not entry.may_be_none:
        raise InputFault(f"{where}: \"not used\" is no answer here")
    _known_only(where, given, {"not_used"})
    reason = given["not_used"]
    if not isinstance(reason, str) or not 0 < len(reason.strip()) <= LONGEST:
        raise InputFault(f"{where}: say why it is not used, as {{\"not_used\": \"reason\"}}")

    return NotUsed(" ".join(reason.split()))


def _plain(entry: Entry, given: Any, where: str) -> Any:
    if not isinstance(given, str) or not 0 < len(given.strip()) <= LONGEST:
        raise InputFault(f"{where}: a text is expected")
    if entry.kind is Day:
        try:
            return Day(given)
        except ValueError as fault:
            raise InputFault(f"{where}: {fault}") from None
    if issubclass(entry.kind, Enum):
        allowed = [str(each.value) for each in entry.kind]
        if given not in allowed:
            raise InputFault(f"{where}: {given!r} is not one of {', '.join(allowed)}")
        return next(each for each in entry.kind if each.value == given)

    return given.strip()


def _number(entry: Entry, given: Any, where: str) -> Any:
    if not isinstance(given, Mapping):
        value = _within_range(entry, given, where)
        return Measured(value) if entry.obtained else value
    _known_only(where, given, {"value", "how", "plus_minus"})
    if given.get("value") is None:
        raise InputFault(f"{where}: \"value\" is missing")
    how, plus_minus = given.get("how"), given.get("plus_minus")
    names = [each.name for each in entry.obtained]
    if how is not None and how not in names:
        allowed = f"one of {', '.join(names)}" if names else "not asked here"
        raise InputFault(f"{where}.how: {how!r} is not known; it is {allowed}")
    if plus_minus is not None:
        plus_minus = _checked(in_range(_real(plus_minus, f"{where}.plus_minus"), entry.unit, 0.0, 1e6), where)

    return Measured(_within_range(entry, given["value"], where), how, plus_minus)


def _within_range(entry: Entry, given: Any, where: str) -> float:
    return _checked(in_range(_real(given, where), entry.unit, entry.low, entry.high, entry.usual), where)


def _real(given: Any, where: str) -> float:
    if isinstance(given, bool) or not isinstance(given, int | float):
        raise InputFault(f"{where}: a number is expected, such as 1.25 or {{\"value\": 1.25, \"how\": \"tape\"}}")

    return given


def _checked(found: float | Fault, where: str) -> float:
    if isinstance(found, Fault):
        raise InputFault(f"{where}: {found.words}")

    return found


def _gear(entry: Entry, given: Any, where: str) -> Any:
    facts = dict(_mapping(where, given))
    open_kinds = kinds_of(entry.kind)
    kind = facts.pop("kind", open_kinds[0] if len(open_kinds) == 1 else None)
    if kind not in open_kinds:
        raise InputFault(f"{where}.kind: say which kind it is: {', '.join(open_kinds)}")
    item = facts.pop("id", where)
    if not isinstance(item, str) or not 0 < len(item.strip()) <= 60:
        raise InputFault(f"{where}.id: a text is expected")
    made = make(kind, item.strip(), facts)
    for name, words in made.faults.items():
        if facts.get(name.partition("/")[0]) is not None:
            raise InputFault(f"{where}.{name}: {words}")

    return made


def _mapping(where: str, given: Any) -> Mapping[str, Any]:
    if not isinstance(given, Mapping):
        raise InputFault(f"{where}: names with values are expected, as {{\"name\": value}}")

    return given


def _known_only(where: str, given: Mapping[str, Any], known: set[str]) -> None:
    unknown = sorted(set(given) - known)
    if unknown:
        raise InputFault(f"{where}: there is no {unknown[0]!r} here; known are {', '.join(sorted(known)) or 'none'}")


