"""What a register or a form asks for, as plain data; forms, storage schemas and checks of facts come from it."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from enum import Enum
from typing import Any

from checklist_app.operations.graph import Day
from checklist_app.operations.numbers import Fault, in_range, read_text


class FieldType(Enum):
    """What kind of answer a field takes."""

    TEXT = "text"
    NUMBER = "number"
    WHOLE = "whole number"
    CHOICE = "choice"
    DATE = "date"
    FLAG = "yes or no"
    ROWS = "rows"


@dataclass(frozen=True)
class Field:
    """One question: what is asked, in which unit and range, whether it must be answered; `columns` for rows."""

    name: str
    words: str
    type: FieldType = FieldType.TEXT
    unit: str = ""
    low: float | None = None
    high: float | None = None
    required: bool = False
    choices: tuple[str, ...] = ()
    columns: tuple["Field", ...] = ()
    hint: str = ""
    usual: tuple[float, float] | None = None


LONGEST_TEXT = 300


def read_number(text: str, field: Field) -> float | Fault:
    """The number somebody typed, or what is wrong with it in words of the workshop.

    Example:
        >>> read_number("1,5", Field("length_m", "length", FieldType.NUMBER, "m", 0.1, 30.0))
        1.5
        >>> read_number("1,250", Field("mass_kg", "mass", FieldType.NUMBER, "kg", 1.0, 9000.0)).words
        '1,250 can be read in two ways. Write 1250, or 1.25.'
    """
    number = read_text(text, field.unit)
    return number if isinstance(number, Fault) else in_range(number, field.unit, field.low, field.high, field.usual)


def read(field: Field, given: Any) -> Any:
    """The value of one answer, None where an optional one was left empty, or a `Fault`."""
    if given is None or given == "" or given == []:
        return Fault(f"{field.words}: nobody answered it yet.") if field.required else None

    return READERS[field.type](field, given)


def _text(field: Field, given: Any) -> Any:
    if not isinstance(given, str):
        return Fault(f"{field.words}: write it in words.")
    words = " ".join(given.split())
    if len(words) > LONGEST_TEXT:
        return Fault(f"{field.words}: {len(words)} characters are too many, {LONGEST_TEXT} fit.")

    return words or (Fault(f"{field.words}: nobody answered it yet.") if field.required else None)


def _number(field: Field, given: Any) -> Any:
    if isinstance(given, str):
        return read_number(given, field)
    if isinstance(given, bool) or not isinstance(given, int | float):
        return Fault(f"{field.words}: a number is expected.")

    return in_range(given, field.unit, field.low, field.high, field.usual)


def _whole(field: Field, given: Any) -> Any:
    number = _number(field, given)
    if isinstance(number, Fault):
        return number

    return int(number) if number == int(number) else Fault(f"{field.words}: a whole number is expected.")


def _choice(field: Field, given: Any) -> Any:
    return given if given in field.choices else Fault(f"{field.words}: choose one of {', '.join(field.choices)}.")


def _date(field: Field, given: Any) -> Any:
    try:
        return Day(given)
    except ValueError as fault:
        return Fault(f"{field.words}: {fault}.")


def _flag(field: Field, given: Any) -> Any:
    if given in ("yes", True):
        return True
    return False if given in ("no", False) else Fault(f"{field.words}: answer yes or no.")


def _rows(field: Field, given: Any) -> Any:
    if isinstance(given, str) or not isinstance(given, Sequence):
        return Fault(f"{field.words}: rows are expected.")
    faults = rows_faults(field, given)
    if faults:
        return Fault(next(iter(faults.values())))

    return tuple({column.name: read(column, row.get(column.name)) for column in field.columns} for row in given)


def rows_faults(field: Field, given: Sequence[Any]) -> dict[str, str]:
    """What is wrong in rows, by `name/row/column`, rows counted from 0."""
    faults: dict[str, str] = {}
    for number, row in enumerate(given):
        if not isinstance(row, Mapping):
            faults[f"{field.name}/{number}"] = f"{field.words}: row {number + 1} is no row."
            continue
        for name in sorted(set(row) - {column.name for column in field.columns}, key=str):
            faults[f"{field.name}/{number}/{name}"] = f"{field.words}: there is no column {name}."
        for column in field.columns:
            value = read(column, row.get(column.name))
            if isinstance(value, Fault):
                faults[f"{field.name}/{number}/{column.name}"] = value.words
    return faults


READERS = {
    FieldType.TEXT: _text, FieldType.NUMBER: _number, FieldType.WHOLE: _whole, FieldType.CHOICE: _choice,
    FieldType.DATE: _date, FieldType.FLAG: _flag, FieldType.ROWS: _rows,
}


def read_all(fields: Sequence[Field], facts: Mapping[str, Any]) -> tuple[dict[str, Any], dict[str, str]]:
    """The values of the facts that can be read, and what is wrong with the others, by field."""
    values: dict[str, Any] = {}
    faults = {name: f"{name}: there is no such fact here." for name in facts if name not in {f.name for f in fields}}
    for field in fields:
        given = facts.get(field.name)
        value = read(field, given)
        if not isinstance(value, Fault):
            values |= {} if value is None else {field.name: value}
        elif field.type is FieldType.ROWS and isinstance(given, Sequence) and given and not isinstance(given, str):
            faults |= rows_faults(field, given)
        else:
            faults[field.name] = value.words
    return values, faults


def check(kind: Any, facts: Mapping[str, Any]) -> dict[str, str]:
    """What is wrong with the facts of an item of a kind, by field; empty when nothing is."""
    values, faults = read_all(kind.fields, facts)
    for rule in kind.rules:
        faults |= {name: words for name, words in rule(values).items() if name not in faults}
    return faults


__all__ = ["Fault", "Field", "FieldType", "check", "read", "read_all", "read_number", "rows_faults"]
