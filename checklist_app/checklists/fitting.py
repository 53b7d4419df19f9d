"""Answers that fit how the load is slung: only those are offered, and one that no longer fits says why."""
from collections.abc import Iterable
from enum import Enum
from typing import Any

from checklist_app.checklists.running import Running
from checklist_app.operations.graph import Entry
from checklist_app.operations.straight_lift.choices import EYES_FIT, EyesGiven
from checklist_app.operations.task import Key

RIG = "rig"
FIT = {"eyes_given": EYES_FIT}
WHY = {EyesGiven.DISTANCE: "A distance places two eyes", EyesGiven.RECTANGLE: "A rectangle places four eyes"}


def fitting(now: Running, entry: Entry) -> Iterable[Enum]:
    """The answers of a choice that can be given for this rig."""
    rig = _answer(now, RIG) if entry.name in FIT else None
    offered: Iterable[Enum] = FIT[entry.name].get(rig, entry.kind) if rig is not None else entry.kind

    return offered


def misfit(now: Running, entry: Entry | None) -> str:
    """Why what was answered here does not fit the rig; empty where it does."""
    given = _answer(now, entry.name) if entry is not None and entry.name in FIT else None
    if entry is None or given is None or given in tuple(fitting(now, entry)):
        return ""

    return f"{WHY[given]}, and this load is slung otherwise: {_answer(now, RIG).value}. Choose another answer."


def _answer(now: Running, name: str) -> Any:
    """What stands, or what is taken where nobody was asked."""
    entry = now.table.entries.get(name)
    return now.task.answers.get(Key(name), entry.default if entry is not None else None)
