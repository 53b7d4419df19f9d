"""What a record calls its work: the words of the procedure by which it was done."""

from collections.abc import Mapping
from typing import Any

from checklist_app.checklists.procedure import procedures
from checklist_app.checklists.says import A_LIFT, Says


def says_of(record: Mapping[str, Any]) -> Says:
    """The words of its procedure; those of a lift where this version of the app does not know it."""
    procedure = procedures().get(str(record.get("procedure", "")))
    return procedure.says if procedure is not None else A_LIFT
