"""Schemas at the door: of an entry, and of a register document, made from the fields of its kind."""

from collections.abc import Mapping
from typing import Any

from marshmallow import RAISE, Schema, fields, validate

from checklist_app.checklists.entry import DEEPEST_PATH, FORM, MOST_REPLACED

_WORD = validate.Regexp(r"[A-Za-z0-9_.\-]{1,64}\Z", error="not a plain name")
_DIGEST = validate.Regexp(r"[0-9a-f]{64}\Z", error="not a digest")
_MOMENT = validate.Regexp(r"[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}:[0-9]{2}Z\Z", error="not a time in UTC")


class EntrySchema(Schema):
    """What every entry looks like; the value's own shape is known on the floor that travels."""

    class Meta:
        unknown = RAISE

    form = fields.Integer(required=True, strict=True, validate=validate.Equal(FORM))
    about = fields.List(fields.String(validate=_WORD), required=True, validate=validate.Length(equal=2))
    path = fields.List(fields.String(validate=_WORD), required=True, validate=validate.Length(1, DEEPEST_PATH))
    value = fields.Dict(required=True)
    replaces = fields.List(fields.String(validate=_DIGEST), required=True, validate=validate.Length(max=MOST_REPLACED))
    author = fields.String(required=True, validate=_WORD)
    device = fields.String(required=True, validate=_WORD)
    counter = fields.Integer(required=True, strict=True, validate=validate.Range(min=1))
    at = fields.String(required=True, validate=_MOMENT)


def entry_faults(body: Mapping[str, Any]) -> Mapping[str, Any]:
    """What the schema finds wrong with the body of an entry, by name; nothing for an entry."""
    return EntrySchema().validate(dict(body))
