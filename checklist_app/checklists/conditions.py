"""When a question is asked at all: "hitch=choked|basket" after one of these answers, "edge_mm!=not used" after another.

A condition on an entry of the same row is about that row. What nobody answered meets no condition, unless the
operation has a choice that it takes then.
"""
from collections.abc import Mapping
from dataclasses import dataclass
from enum import Enum
from functools import cache
from typing import Any

from checklist_app.checklists.entry import Path
from checklist_app.checklists.fold import Folded
from checklist_app.checklists.places import Place
from checklist_app.operations.graph import DontKnow, NotUsed, Stopped
from checklist_app.operations.table import Table
from checklist_app.operations.task import Key

NOT_USED, DONT_KNOW, GIVEN = "not used", "don't know", "given"


@dataclass(frozen=True)
class Condition:
    """`wanted`: one of these answers is needed; or, with `other`, any answer that is none of them."""

    name: str
    wanted: tuple[str, ...]
    other: bool

    def holds(self, said: str) -> bool:
        """Whether what was said meets it; nothing said never does."""
        return said != "" and (said in self.wanted) is not self.other


@cache
def condition(text: str) -> Condition:
    """A condition as a procedure writes it.

    Example:
        >>> condition("hitch=choked|basket").holds("choked"), condition("edge_mm!=not used").holds("given")
        (True, True)
        >>> condition("edge_mm!=not used").holds("")
        False
    """
    name, _, answers = text.partition("=")
    return Condition(name.rstrip("!"), tuple(answers.split("|")), name.endswith("!"))


def is_asked(place: Place, table: Table, given: Mapping[Key, Any], labels: Mapping[str, str], folded: Folded) -> bool:
    """Whether a question is asked, by what stands: entered, or filled by a register."""
    for each in map(condition, place.prompt.only_for):
        if (entry := table.entries.get(each.name)) is None:
            said = plainly_said(folded, (*place.path[:-1], each.name)) or plainly_said(folded, (each.name,))
        else:
            key = Key(each.name, labels.get(place.row) if table.home[each.name] is not None else None)
            said = _said(given.get(key, entry.default if isinstance(entry.default, Enum) else None))
        if not each.holds(said):
            return False
    return True


def may_be_asked(place: Place, folded: Folded) -> bool:
    """The same from the entries alone: what a register may still fill is not held against a question."""
    for each in map(condition, place.prompt.only_for):
        path = next((path for path in ((*place.path[:-1], each.name), (each.name,)) if path in folded.values), None)
        if path is not None and not each.holds(plainly_said(folded, path)):
            return False
    return True


def _said(answer: Any) -> str:
    if answer is None or isinstance(answer, Stopped):
        return ""
    if isinstance(answer, Enum):
        return str(answer.value)
    return NOT_USED if isinstance(answer, NotUsed) else DONT_KNOW if isinstance(answer, DontKnow) else GIVEN


def plainly_said(folded: Folded, path: Path) -> str:
    """What an entry says, in the words of a condition."""
    value = folded.values.get(path)
    if value is None:
        return ""
    kinds = {"not_used": NOT_USED, "dont_know": DONT_KNOW, "choice": str(value.get("text", ""))}
    return kinds.get(value["type"], GIVEN)
