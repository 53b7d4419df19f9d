"""What the tests of the engineering compared: source, case, our value, theirs, the difference, and how it is known.

How it is known, and whose figure it is, stands in the id of a case ("published, EN 1492 table: green 2 t, straight")
or in the name of a test (`test_published_…`, its docstring then tells the source). A test that calls a library which
computes the same by other means is known by that library.
"""

import ast
import re
from pathlib import Path
from typing import NamedTuple

import pytest

from tests.mechanics.compared import COMPARED, Compared, values
from tests.mechanics.oracles import libraries

HOW = {"published": "published", "published exercise": "published", "derived": "derived from published figures",
       "by_hand": "worked by hand", "by hand": "worked by hand", "common practice": "common practice, no source",
       "from memory": "from memory, stricter only"}
LIBRARY = "reference library"
OURSELVES = "worked out from statics"
NUMBERED = ("0027", "2006", "29 CFR", "49 CFR")


class Row(NamedTuple):
    """One line of the table."""

    topic: str
    how: str
    source: str
    case: str
    ours: str
    theirs: str
    difference: str


class Told(NamedTuple):
    """What a test says of itself; `together` if all its cases are one line."""

    how: str
    words: str
    together: bool
    source: str = ""


def is_recorded(item: pytest.Item) -> bool:
    """Whether a test is held against something outside. Random cases are not kept: they change from run to run."""
    return not hasattr(item.obj, "hypothesis") and bool(told_by(item).how)  # type: ignore[attr-defined]


class Recorder:
    """Collects the comparisons of a session, test by test."""

    def __init__(self) -> None:
        self.items: dict[str, pytest.Item] = {}
        self.seen: dict[str, list[Compared]] = {}

    def note(self, item: pytest.Item, explained: str) -> None:
        """One assertion that held."""
        found = COMPARED.match(explained.split("\n")[0].removeprefix("assert "))
        if found and not found.group(3).startswith("not "):
            told = told_by(item)
            name = item.nodeid.partition("[")[0] if told.together else item.nodeid
            self.items.setdefault(name, item)
            self.seen.setdefault(name, []).append(Compared(*found.groups()))

    def rows(self) -> list[Row]:
        """The table, topic by topic as the tests stand."""
        last: dict[Path, dict[str, str]] = {}
        lines = (row_of(self.items[name], compared, last.setdefault(self.items[name].path, {}))
                 for name, compared in self.seen.items())
        return [line for line in lines if line is not None]


def row_of(item: pytest.Item, compared: list[Compared], last: dict[str, str]) -> Row | None:
    """What one test proves; None where it is held against nothing outside. `last` keeps what "same" refers to."""
    told = told_by(item)
    if not told.how:
        return None
    source, case = (told.source, told.words) if told.source else whose(told.words, last)

    return Row(topic(item), told.how, source, case, *values(compared))


def topic(item: pytest.Item) -> str:
    """What the file of the test is about."""
    first = (item.module.__doc__ or "").strip().split("\n")[0]  # type: ignore[attr-defined]
    return str(re.split(r"[;:.]", first)[0])


def told_by(item: pytest.Item) -> Told:
    """How a case is known, and what is told of it: by its id, else by its test's name, else by what it calls."""
    name, _, ids = item.name.partition("[")
    ids = _unescaped(ids.removesuffix("]"))
    for start in sorted(HOW, key=len, reverse=True):
        if ids.startswith((f"{start}, ", f"{start}: ")):
            rest = ids[len(start) + 2:]
            named = ids.startswith(f"{start}: ")
            return Told(HOW[start], rest, False, (OURSELVES if start == "by_hand" else start) if named else "")
    words = name.removeprefix("test_").replace("_", " ")
    for start, how in HOW.items():
        if words.startswith(start.replace("_", " ") + " "):
            doc = " ".join((item.obj.__doc__ or words.removeprefix(start)).split())  # type: ignore[attr-defined]
            return Told(how, doc.split(". ")[0].rstrip("."), True, OURSELVES if how == HOW["by_hand"] else "")
    found = libraries(item.module, item.obj)  # type: ignore[attr-defined]

    return Told(LIBRARY if found else "", words, True, ", ".join(found))


def whose(told: str, last: dict[str, str]) -> tuple[str, str]:
    """Source and case: "EN 1492 table: green 2 t"; "same card, 45°: 1.414" is of the card that was named before."""
    ends = [place for place in (told.find(": "), told.find(", ")) if place > 0]
    source, case = (told[:min(ends)], told[min(ends) + 2:]) if ends else (OURSELVES, told)
    if source.startswith("same "):
        return last.get(source.removeprefix("same "), last.get("", source)), case
    if source.startswith("no source"):
        return "common practice", case
    if source[0].isdigit() and not source.startswith(NUMBERED):
        return OURSELVES, told
    last.update(dict.fromkeys(("", *source.split()), source))

    return source, case


def _unescaped(text: str) -> str:
    """pytest writes what is not ASCII in an id as its code."""
    return str(ast.literal_eval(f'"{text}"')) if "\\u" in text or "\\x" in text else text
