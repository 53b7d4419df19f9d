"""Schemas at the door: of an entry, and of a register document, made from the fields of its kind."""

from collections.abc import Mapping
from typing import Any

from marshmallow import RAISE, Schema, ValidationError, fields, missing, validate

from checklist_app.checklists.entry import DEEPEST_PATH, FORM, MOST_REPLACED
from checklist_app.operations.fields import Fault, Field, FieldType, read
from checklist_app.operations.kind import Kind

_WORD = validate.Regexp(r"[A-Za-z0-9_.\-]{1,64}\Z", error="not a plain name")
_DIGEST = validate.Regexp(r"[0-9a-f]{64}\Z", error="not a digest")
_MOMENT = validate.Regexp(r"[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}:[0-9]{2}Z\Z", error="not a time in UTC")


class Strict(Schema):
    """A schema that refuses every name it does not know."""

    class Meta:
        unknown = RAISE


class EntrySchema(Strict):
    """What every entry looks like; the value's own shape is known on the floor that travels."""

    form = fields.Integer(required=True, strict=True, validate=validate.Equal(FORM))
    about = fields.List(fields.String(validate=_WORD), required=True, validate=validate.Length(equal=2))
    path = fields.List(fields.String(validate=_WORD), required=True, validate=validate.Length(1, DEEPEST_PATH))
    value = fields.Dict(required=True)
    replaces = fields.List(fields.String(validate=_DIGEST), required=True, validate=validate.Length(max=MOST_REPLACED))
    author = fields.String(required=True, validate=_WORD)
    device = fields.String(required=True, validate=_WORD)
    counter = fields.Integer(required=True, strict=True, validate=validate.Range(min=1))
    at = fields.String(required=True, validate=_MOMENT)


class Answer(fields.Field):
    """One fact as typed. It is kept as typed; what cannot be read as its field asks is refused in the field's words."""

    def __init__(self, asked: Field, **options: Any) -> None:
        super().__init__(required=asked.required, allow_none=not asked.required, **options)
        self.asked = asked

    def _deserialize(self, value: Any, attr: str | None, data: Any, **more: Any) -> Any:
        found = read(self.asked, value)
        if isinstance(found, Fault):
            raise ValidationError(found.words)
        return value


class Rows(fields.List):
    """The rows of a field. Nothing at all is no row, which only an optional field may have."""

    def deserialize(self, value: Any, attr: str | None = None, data: Any = None, **more: Any) -> Any:
        empty = value is None or value == "" or value == []
        return super().deserialize(missing if empty else value, attr, data, **more)


def schema_of(kind: Kind) -> type[Schema]:
    """The schema of a document of this kind, made from the kind's fields."""
    made: dict[str, Any] = {asked.name: _field(asked) for asked in kind.fields}
    return type(kind.name, (Strict,), made)


def document_faults(kind: Kind, facts: Mapping[str, Any]) -> Mapping[str, Any]:
    """What the schema of a kind finds wrong with the facts of a document, by name; nothing for a sound one."""
    return schema_of(kind)().validate(dict(facts))


def _field(asked: Field) -> fields.Field:
    if asked.type is not FieldType.ROWS:
        return Answer(asked)
    rows = type(asked.name, (Strict,), {column.name: _field(column) for column in asked.columns})
    return Rows(fields.Nested(rows), required=asked.required)
