"""A form for an item on the spot: fields of its kind, read back as facts, each fault at its field."""
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from checklist_app.checklists.answer import Request
from checklist_app.operations.fields import Field, FieldType, check
from checklist_app.operations.kind import Kind
from checklist_app.operations.obtained import CG_HOW, MASS_HOW


@dataclass(frozen=True)
class Box:
    """One field of the form as it is shown."""

    name: str
    words: str
    kind: str
    unit: str
    choices: tuple[tuple[str, str], ...]
    hint: str
    required: bool
    text: str
    fault: str
    first_fault: bool = False

    @property
    def id(self) -> str:
        """The field's id on the page."""
        return self.name.replace("/", "-").replace(".", "-")


KIND_OF = {FieldType.NUMBER: "number", FieldType.WHOLE: "number", FieldType.CHOICE: "choice", FieldType.DATE: "date",
           FieldType.FLAG: "choice", FieldType.TEXT: "text"}
WAYS = {"mass_how": MASS_HOW, "cg_how": CG_HOW}
YES_NO = (("yes", "Yes"), ("no", "No"))


def boxes(fields: Sequence[Field], request: Request, faults: Mapping[str, str], prefix: str = "") -> tuple[Box, ...]:
    """Plain fields as boxes, with what was typed still in them."""
    first = next(iter(faults), None)
    return tuple(_box(field, f"{prefix}{field.name}", request, faults, first) for field in fields
                 if field.type is not FieldType.ROWS)


def facts_of(fields: Sequence[Field], request: Request, prefix: str = "") -> dict[str, Any]:
    """The facts typed in, as typed; what was left empty is not there."""
    typed = {field.name: request.one(f"{prefix}{field.name}") for field in fields if field.type is not FieldType.ROWS}
    return {name: text for name, text in typed.items() if text}


def faults_of(kind: Kind, facts: Mapping[str, Any]) -> dict[str, str]:
    """What is wrong, by field; a field of a row is called `rows/0/field`."""
    return check(kind, facts)


def _said(field: Field, choice: str) -> str:
    """A choice in words: how a figure is known is said in full."""
    words = next((way.words for way in WAYS.get(field.name, ()) if way.name == choice), choice)
    return words[:1].upper() + words[1:]


def _box(field: Field, name: str, request: Request, faults: Mapping[str, str], first: str | None) -> Box:
    choices = YES_NO if field.type is FieldType.FLAG else tuple((each, _said(field, each)) for each in field.choices)
    words = field.words[:1].upper() + field.words[1:]
    return Box(name, words, KIND_OF[field.type], field.unit, choices, field.hint, field.required, request.one(name),
               faults.get(name, ""), name == first)
