"""A kept document of an older schema is read as if written today; the document itself is never rewritten."""

from collections.abc import Mapping
from typing import Any

from checklist_app.operations.fields import FieldType
from checklist_app.operations.kind import Kind
from checklist_app.operations.kinds import KINDS


class Unreadable(ValueError):
    """The facts of this document cannot be used; the message says why."""


def facts_now(schema: str, document: Any) -> Mapping[str, Any]:
    """The facts of a document as of today's schema of its kind.

    Args:
        schema: Name and version it was written by, such as `flat_sling/1`.
        document: The parsed document, with its `facts`.

    Raises:
        Unreadable: If the kind is unknown, the version is from a later app, or it is no such document.
    """
    name, _, number = schema.partition("/")
    kind = KINDS.get(name)
    if kind is None or not number.isdecimal():
        raise Unreadable(f"{schema}: no such kind of item here")
    known = isinstance(document, dict) and document.get("schema") == schema
    if not known or not isinstance(document.get("facts"), dict):
        raise Unreadable("not a document of the kind it names")
    if int(number) > kind.version:
        raise Unreadable(f"{schema} was written by a later version of the app")
    facts = dict(document["facts"])
    for version in range(int(number), kind.version):
        facts = dict(kind.older[version](facts))

    _refuse_rows(kind, facts)

    return facts


def _refuse_rows(kind: Kind, facts: Mapping[str, Any]) -> None:
    """A field may hold a text that cannot be read: it waits. Rows that are none would be no facts at all."""
    for field in kind.fields:
        if field.type is not FieldType.ROWS or field.name not in facts:
            continue
        rows = facts[field.name]
        required = {column.name for column in field.columns if column.required}
        if not isinstance(rows, list) or not all(isinstance(row, dict) and required <= row.keys() for row in rows):
            raise Unreadable(f"{field.words}: a row is not complete")
