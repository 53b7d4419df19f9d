"""When a question is asked at all: "hitch=choked|basket" after one of these answers, "edge_mm!=not used" after another.

"top_fitting|bottom_fitting=shackle" holds if either of the two is one: gear is said by its kind. A condition on an
entry of the same row is about that row. What nobody answered meets no condition, unless the operation has a choice that
it takes then.
"""
from collections.abc import Mapping
from dataclasses import dataclass
from enum import Enum
from functools import cache
from typing import Any

from checklist_app.checklists.entry import Path
from checklist_app.checklists.fold import Folded
from checklist_app.checklists.places import Place
from checklist_app.operations.gear import Gear
from checklist_app.operations.graph import DontKnow, NotUsed, Stopped
from checklist_app.operations.table import Table
from checklist_app.operations.task import Key

NOT_USED, DONT_KNOW, GIVEN = "not used", "don't know", "given"


@dataclass(frozen=True)
class Condition:
    """`wanted`: one of these answers is needed, to any of `names`; or, with `other`, any that is none of them."""

    name: str
    wanted: tuple[str, ...]
    other: bool

    @property
    def names(self) -> tuple[str, ...]:
        """The questions it is about: an answer to any of them will do."""
        return tuple(self.name.split("|"))

    def holds(self, said: str) -> bool:
        """Whether what was said meets it; nothing said never does."""
        return said != "" and (said in self.wanted) is not self.other

    def may_hold_for_gear(self) -> bool:
        """Whether it can hold for something that was picked, of whatever kind it is."""
        return self.other or not set(self.wanted) <= {NOT_USED, DONT_KNOW}


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
    def said(name: str) -> str:
        if (entry := table.entries.get(name)) is None:
            return plainly_said(folded, (*place.path[:-1], name)) or plainly_said(folded, (name,))
        key = Key(name, labels.get(place.row) if table.home[name] is not None else None)
        return _said(given.get(key, entry.default if isinstance(entry.default, Enum) else None))

    return all(
        any(each.holds(said(name)) for name in each.names) for each in map(condition, place.prompt.only_for)
    )


def may_be_asked(place: Place, folded: Folded) -> bool:
    """The same from the entries alone: what a register may still fill, or knows, is not held against a question."""
    def may_hold(each: Condition, name: str) -> bool:
        path = next((path for path in ((*place.path[:-1], name), (name,)) if path in folded.values), None)
        if path is None or folded.values[path]["type"] == "pick":
            return path is None or each.may_hold_for_gear()
        return each.holds(plainly_said(folded, path))

    return all(any(may_hold(each, name) for name in each.names) for each in map(condition, place.prompt.only_for))


def _said(answer: Any) -> str:
    if answer is None or isinstance(answer, Stopped):
        return ""
    if isinstance(answer, Enum):
        return str(answer.value)
    if isinstance(answer, Gear):
        return answer.kind
    return NOT_USED if isinstance(answer, NotUsed) else DONT_KNOW if isinstance(answer, DontKnow) else GIVEN


def plainly_said(folded: Folded, path: Path) -> str:
    """What an entry says, in the words of a condition."""
    value = folded.values.get(path)
    if value is None:
        return ""
    kinds = {"not_used": NOT_USED, "dont_know": DONT_KNOW, "choice": str(value.get("text", ""))}
    return kinds.get(value["type"], GIVEN)
