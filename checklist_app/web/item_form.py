"""The form of one kind of item, made from its fields: what is shown, and the facts in what was sent.

A field with rows is shown as one group of inputs a row, named `field/number/column`. One empty row is always
there, so that a row can be added without script; a row left empty is no row.
"""

from collections.abc import Mapping
from typing import Any

from werkzeug.datastructures import MultiDict

from checklist_app.checklists.canonical import as_typed
from checklist_app.operations import fields
from checklist_app.operations.fields import Field, FieldType
from checklist_app.operations.kind import Kind

MOST_ROWS = 40
MOST_SIGNS = 400
ADD = "add_row"
REMOVE = "remove"
INPUTS = {FieldType.NUMBER: "decimal", FieldType.WHOLE: "numeric"}
YES_NO = (("yes", "yes"), ("no", "no"))


def facts_of(kind: Kind, form: "MultiDict[str, str]") -> dict[str, Any]:
    """The facts as typed; what was left empty is left out, whether it may be is for `faults`."""
    facts: dict[str, Any] = {}
    for field in kind.fields:
        found: Any = rows_of(field, form) if field.type is FieldType.ROWS else typed(form.get(field.name, ""))
        if found:
            facts[field.name] = found

    return facts


def rows_of(field: Field, form: "MultiDict[str, str]") -> list[dict[str, str]]:
    """The rows of a field that hold something and are not marked for removal."""
    rows = []
    for number in range(MOST_ROWS):
        start = f"{field.name}/{number}/"
        row = {column.name: said for column in field.columns if (said := typed(form.get(start + column.name, "")))}
        if row and not form.get(start + REMOVE):
            rows.append(row)

    return rows


def empty_rows(field: Field, form: "MultiDict[str, str]") -> int:
    """How many empty rows to show: one, and one more than before for whoever asked for it."""
    if form.get(ADD) != field.name:
        return 1
    numbers = {name.split("/")[1] for name in form if name.startswith(f"{field.name}/")}

    return len(numbers) - len(rows_of(field, form)) + 1


def typed(text: str) -> str:
    return as_typed(text.strip()[:MOST_SIGNS])


def faults_of(kind: Kind, facts: Mapping[str, Any]) -> dict[str, str]:
    """What is wrong, in words, by field (`field/number/column` inside a row)."""
    return fields.check(kind, facts)


def asks(kind: Kind, facts: Mapping[str, Any], faults: Mapping[str, str],
         form: "MultiDict[str, str]") -> list[dict[str, Any]]:
    """The fields of the form, ready for the template; `form` is what was sent, and tells how many rows to show."""
    return [rows_ask(field, facts.get(field.name, ()), faults, empty_rows(field, form))
            if field.type is FieldType.ROWS else ask(field, field.name, str(facts.get(field.name, "")), faults)
            for field in kind.fields]


def ask(field: Field, name: str, text: str, faults: Mapping[str, str]) -> dict[str, Any]:
    """One question: its input, what stands in it, what is wrong with it."""
    return {
        "kind": "choice" if field.type in (FieldType.CHOICE, FieldType.FLAG) else
                "date" if field.type is FieldType.DATE else "text",
        "name": name, "id": "f-" + name.replace("/", "-"), "words": headline(field.words), "unit": field.unit,
        "hint": hint(field), "text": text, "inputmode": INPUTS.get(field.type, "text"), "required": field.required,
        "choices": YES_NO if field.type is FieldType.FLAG else tuple((one, one) for one in field.choices),
        "fault": headline(faults.get(name, "")),
    }


def rows_ask(field: Field, rows: Any, faults: Mapping[str, str], empty: int) -> dict[str, Any]:
    """A field with rows: those that are there, and empty ones while there is room."""
    shown = [*rows, *({} for _ in range(empty))][:MOST_ROWS]
    return {
        "kind": "rows", "name": field.name, "id": f"f-{field.name}", "words": headline(field.words), "hint": field.hint,
        "fault": faults.get(field.name, ""),
        "rows": [{"number": number, "is_new": not row, "asks": [
            ask(column, f"{field.name}/{number}/{column.name}", str(row.get(column.name, "")), faults)
            for column in field.columns]} for number, row in enumerate(shown)],
    }


def headline(words: str) -> str:
    """Words at the head of a field.

    Example:
        >>> headline("length on the tag"), headline("WLL")
        ('Length on the tag', 'WLL')
    """
    return words[:1].upper() + words[1:]


def on_top(faults: Mapping[str, str]) -> str:
    """What is said above a form: what concerns it as a whole, or where to look."""
    return faults.get("") or ("Look at the marked fields. Nothing was saved yet." if faults else "")


def hint(field: Field) -> str:
    """What is allowed, in words, after the field's own hint."""
    bounds = ""
    if field.low is not None and field.high is not None and field.type in INPUTS:
        bounds = f"{field.low:g} to {field.high:g} {field.unit}".strip() + "."

    return " ".join(part for part in (field.hint, bounds) if part)


def settled(kind: Kind, facts: Mapping[str, Any]) -> dict[str, Any]:
    """Facts without faults, as they are kept: figures with a point for the comma, everything else as typed."""
    return {field.name: [row_as_kept(field, row) for row in facts[field.name]] if field.type is FieldType.ROWS
            else as_kept(field, facts[field.name]) for field in kind.fields if field.name in facts}


def row_as_kept(field: Field, row: Mapping[str, str]) -> dict[str, str]:
    return {column.name: as_kept(column, row[column.name]) for column in field.columns if column.name in row}


def as_kept(field: Field, text: str) -> str:
    if field.type not in INPUTS:
        return text
    value, plain = fields.read(field, text), text.replace(",", ".")
    try:
        return plain if float(plain) == value else repr(value)
    except ValueError:
        return repr(value)
