"""`assess` one task written as JSON; `operations` says how such a task is written."""

import argparse
import json
import sys
from pathlib import Path
from typing import Any

from checklist_app.operations.catalogue import OPERATIONS
from checklist_app.operations.check import Verdict
from checklist_app.operations.describe import describe
from checklist_app.operations.evaluate import assess
from checklist_app.operations.inline import InputFault, from_json
from checklist_app.operations.report import report

DONE, OVER, UNUSABLE, OPEN = 0, 1, 2, 3
STATUS = {
    Verdict.WITHIN: DONE, Verdict.CLOSE: DONE, Verdict.OVER: OVER, Verdict.WAITING: OPEN, Verdict.CANNOT: OPEN,
}
LARGEST_INPUT = 2_000_000
DEEPEST = 40
LONGEST_WHOLE = 18


def register(subcommands: Any) -> None:
    """Add both to the command line."""
    one = subcommands.add_parser("assess", help="check one task written as JSON; nothing is kept")
    one.add_argument("file", help="file with the task, or - for standard input")
    one.set_defaults(run=run_assess)
    listed = subcommands.add_parser("operations", help="entries of every operation, and a complete example, as JSON")
    listed.set_defaults(run=run_operations)


def run_assess(arguments: argparse.Namespace) -> int:
    """Print the report; 0 within or close, 1 over, 2 unusable input, 3 waiting or cannot be assessed."""
    try:
        told, verdict = assessed(read(arguments.file))
    except InputFault as fault:
        print(f"cannot use this input: {fault}", file=sys.stderr)
        return UNUSABLE

    print(json.dumps(told, indent=2, allow_nan=False))
    return STATUS[verdict]


def run_operations(_: argparse.Namespace) -> int:
    """Print what every operation asks for."""
    print(json.dumps({"operations": {name: describe(each) for name, each in OPERATIONS.items()}}, indent=2))
    return DONE


def assessed(data: Any) -> tuple[dict[str, Any], Verdict]:
    """The report on one input, and its verdict.

    Raises:
        InputFault: If the input cannot be used; the message names the field.
    """
    if not isinstance(data, dict):
        raise InputFault('the input: an object is expected, {"operation": …, "entries": {…}}')
    name = data.get("operation")
    operation = OPERATIONS.get(name) if isinstance(name, str) else None
    if operation is None:
        raise InputFault(f"operation: {json.dumps(name)} is not known; known are {', '.join(OPERATIONS)}")
    with_spread = data.get("spread", True)
    if not isinstance(with_spread, bool):
        raise InputFault("spread: true or false is expected")

    ev = assess(operation.table, from_json(operation.table, data), with_spread)
    return report(operation, ev), ev.verdict


def read(file: str) -> Any:
    """The JSON of a file or of standard input, with nothing in it that JSON does not know."""
    try:
        raw = sys.stdin.buffer.read(LARGEST_INPUT + 1) if file == "-" else _head(Path(file))
        text = raw.decode("utf-8-sig")
    except OSError as fault:
        raise InputFault(f"{file}: {fault.strerror or fault}") from None
    except UnicodeDecodeError:
        raise InputFault(f"{file}: the text is not UTF-8") from None
    if len(raw) > LARGEST_INPUT:
        raise InputFault(f"{file}: more than {LARGEST_INPUT} bytes")

    return parsed(text)


def parsed(text: str) -> Any:
    """JSON, strictly: no name twice, no endless brackets. NaN comes through, and is refused at its field."""
    try:
        data = json.loads(text, parse_int=_whole, object_pairs_hook=_no_name_twice)
    except RecursionError:
        raise InputFault("the input: its brackets go too deep") from None
    except json.JSONDecodeError as fault:
        raise InputFault(f"the input is no JSON: {fault.msg}, line {fault.lineno}, column {fault.colno}") from None
    if _deeper_than(data, DEEPEST):
        raise InputFault("the input: its brackets go too deep")

    return data


def _head(path: Path) -> bytes:
    with path.open("rb") as opened:
        return opened.read(LARGEST_INPUT + 1)


def _whole(digits: str) -> int | float:
    return int(digits) if len(digits) <= LONGEST_WHOLE else float(digits)


def _no_name_twice(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    found: dict[str, Any] = {}
    for name, value in pairs:
        if name in found:
            raise InputFault(f"{name}: stands twice in one place")
        found[name] = value
    return found


def _deeper_than(data: Any, most: int) -> bool:
    level = [data]
    for _ in range(most):
        level = [
            inner
            for outer in level
            for inner in (outer.values() if isinstance(outer, dict) else outer if isinstance(outer, list) else ())
        ]
        if not level:
            return False
    return True
