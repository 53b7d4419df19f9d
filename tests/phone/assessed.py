"""One input assessed, as bytes that can be compared: the same lines run on the server's Python and on the phone's."""

import json
import sys
from importlib import import_module
from types import ModuleType

from checklist_app.checklists.canonical import canonical
from checklist_app.checklists.statement import evaluation
from checklist_app.operations.catalogue import OPERATIONS
from checklist_app.operations.evaluate import assess
from checklist_app.operations.inline import InputFault, from_json
from checklist_app.operations.report import report


def assessed(text: str) -> str:
    """Canonical JSON of the report, every figure as text; or why the input cannot be used."""
    given = json.loads(text)
    operation = OPERATIONS[given["operation"]]
    try:
        task = from_json(operation.table, given)
    except InputFault as fault:
        return f"cannot be used: {fault}"

    found = report(operation, assess(operation.table, task, given["spread"]))
    return canonical(evaluation(found)).decode()


def absent(text: str) -> str:
    """Those of the listed modules that cannot be imported here."""
    missing = []
    for name in json.loads(text):
        try:
            import_module(name)
        except ImportError:
            missing.append(name)
    return json.dumps(missing)


def take_away(name: str) -> None:
    """Whoever imports this module from now on finds none; asked again it is back."""
    if sys.modules.get(name) is None:
        sys.modules[name] = taken_away.pop(name)
    else:
        taken_away[name], sys.modules[name] = sys.modules[name], None  # type: ignore[assignment]


taken_away: dict[str, ModuleType] = {}
