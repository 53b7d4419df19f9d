"""The same answers and frozen items, evaluated again: by a statement's reader, or to see what changed since."""
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from functools import lru_cache
from typing import Any

from checklist_app.checklists.canonical import canonical, parse
from checklist_app.checklists.frozen import SignedWorld
from checklist_app.checklists.running import running
from checklist_app.operations.evaluate import Evaluation
from checklist_app.operations.report import report

UNCOUNTED = frozenset({"tick", "text", "photo"})


@dataclass(frozen=True)
class Evaluated:
    """An evaluation, and its report as plain data."""

    evaluation: Evaluation
    report: Mapping[str, Any]


def evaluated(task: str, inputs: Iterable[Mapping[str, Any]], gear: Iterable[Mapping[str, Any]],
              day: str) -> Evaluated:
    """The task that these answers and frozen items make, evaluated by the code of today.

    Ticks, words and pictures are left out: no quantity hangs on one, and what was ticked or told since a signature
    need not be worked out anew.
    """
    counted = [row for row in inputs if row["value"]["type"] not in UNCOUNTED]
    return _evaluated(canonical({"task": task, "inputs": counted, "gear": list(gear), "day": day}))


def evaluated_statement(signed: Mapping[str, Any]) -> Evaluated:
    """What today's code makes of the answers and items in a statement, and of nothing else."""
    return evaluated(signed["about"][1], signed["inputs"], signed["gear"], signed["day"])


@lru_cache(maxsize=64)
def _evaluated(data: bytes) -> Evaluated:
    said = parse(data)
    now = running(SignedWorld(said["task"], said["inputs"], said["gear"], said["day"]), said["task"])
    return Evaluated(now.evaluation, report(now.operation, now.evaluation))
