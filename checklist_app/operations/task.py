"""What people answered: one immutable task."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field, replace
from typing import Any, NamedTuple

from checklist_app.operations.graph import DontKnow, NotUsed

__all__ = ["DontKnow", "Key", "Measured", "NotUsed", "Task", "key_of", "row_labels"]


class Key(NamedTuple):
    """A name, of the task or in one row; `row` is the row's label."""

    name: str
    row: str | None = None

    def __str__(self) -> str:
        return self.name if self.row is None else f"{self.name}[{self.row}]"

    @property
    def behind(self) -> str:
        """The row as it is said behind what is of it: ", left front"; nothing without a row."""
        return f", {self.row.replace('_', ' ')}" if self.row else ""


def key_of(name: str) -> Key:
    """The key that prints as a name.

    Example:
        >>> key_of("sling[left]")
        Key(name='sling', row='left')
    """
    head, bracket, row = name.partition("[")
    return Key(head, row[:-1]) if bracket else Key(head)


@dataclass(frozen=True)
class Measured:
    """A number and how it was come by, or how far it may lie off [in its unit]."""

    value: float
    how: str | None = None
    plus_minus: float | None = None


@dataclass(frozen=True)
class Task:
    """Answers by key, and the labels of the rows of each group, in order.

    An answer is a value, a number as `Measured`, a `Range`, `DontKnow` or `NotUsed`; what is not there was never
    answered.
    """

    answers: Mapping[Key, Any] = field(default_factory=dict)
    rows: Mapping[str, tuple[str, ...]] = field(default_factory=dict)

    def changed(self, changes: Mapping[Key, Any]) -> "Task":
        """The same task with some answers given or given anew."""
        return replace(self, answers={**self.answers, **changes})

    def without(self, *keys: Key) -> "Task":
        """The same task with some answers never given."""
        return replace(self, answers={key: value for key, value in self.answers.items() if key not in keys})

    def with_row(self, group: str, label: str, answers: Mapping[str, Any]) -> "Task":
        """The same task with one more row."""
        if label in self.rows.get(group, ()):
            raise ValueError(f"there are two rows {label}")

        rows = {**self.rows, group: (*self.rows.get(group, ()), label)}
        return Task({**self.answers, **{Key(name, label): value for name, value in answers.items()}}, rows)


def row_labels(ids: Iterable[str]) -> dict[str, str]:
    """The label of each row id, in order: what stands behind the first dash; the whole id where two would be alike.

    Example:
        >>> row_labels(["2-right", "1-left", "3-left"])
        {'1-left': 'left', '2-right': 'right', '3-left': '3-left'}
    """
    labels: dict[str, str] = {}
    for row in sorted(set(ids)):
        label = row.partition("-")[2] or row
        labels[row] = row if label in labels.values() else label
    return labels
