"""One change of a lashed load that a rigger can make, as answers; and what the store has for it."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from enum import Enum
from typing import Any, NamedTuple

from checklist_app.operations.gear import Lashing, Mat
from checklist_app.operations.task import Key, Measured, Task


class Effort(Enum):
    """Kinds of change, the least work first."""

    CLEAN = "clean"
    MAT = "mat"
    MOVE = "move"
    MORE = "more"
    BLOCK = "block"


class Store(NamedTuple):
    """What may be used today and is in no task: lashings and mats."""

    lashings: tuple[Lashing, ...] = ()
    mats: tuple[Mat, ...] = ()


@dataclass(frozen=True)
class Row:
    """One more row: the group, the row it is like ("" for none), what is answered otherwise, the item for it."""

    group: str
    like: str = ""
    answers: Mapping[str, Any] = field(default_factory=dict)
    item: Any = None


@dataclass(frozen=True)
class Change:
    """What to do, in words of the yard, and the answers that say it was done."""

    effort: Effort
    words: str
    answers: Mapping[Key, Any] = field(default_factory=dict)
    rows: tuple[Row, ...] = ()
    then: str = ""


def applied(task: Task, change: Change) -> Task:
    """The task as if it were done."""
    done = task.changed(change.answers)
    for number, row in enumerate(change.rows, 1):
        label = f"{row.group} more {number}"
        answers = {key.name: value for key, value in task.answers.items() if row.like and key.row == row.like}
        answers |= {name: exactly(value) for name, value in row.answers.items()}
        if row.item is not None:
            answers["lashing_item"] = row.item
        done = done.with_row(row.group, label, answers)
    return done


def exactly(value: Any) -> Any:
    """A number as it is to be made."""
    return Measured(value, plus_minus=0.0) if isinstance(value, float) else value


def plain(answer: Any) -> Any:
    """A number out of an answer, None where it is none."""
    value = answer.value if isinstance(answer, Measured) else answer
    return float(value) if isinstance(value, float | int) and not isinstance(value, bool) else None
