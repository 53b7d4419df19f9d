"""One function of an operation, as it declares itself: what it gives, what it needs, and in which rows."""

import inspect
import typing
from collections.abc import Callable
from dataclasses import dataclass
from enum import Enum
from types import NoneType
from typing import Any

from checklist_app.operations.check import Limit, State, Strength
from checklist_app.operations.drawing import Drawing

CHECK_KINDS = (Strength, Limit, State)
ALL_CHECKS, SPREADS = "checks", "spreads"


class TableError(Exception):
    """The operation's own modules do not fit together: raised at import, never in use."""


@dataclass(frozen=True)
class Quantity:
    """One way to one quantity, as its function declares it.

    `once`: computed once across the rows of its group. `choice`: the entry a branch hangs on, `members` the answers it
    is for. `stands_for`: the entry whose worst case it is. `held`: kept at nominal in the spread. `searched`: found by
    search. `kept`: not computed twice in one spread. `divides`: the spread into sides. `afterwards`: needs the
    finished checks.
    """

    name: str
    run: Callable[..., Any]
    needs: tuple[str, ...]
    hints: typing.Mapping[str, Any]
    returns: Any
    takes_none: frozenset[str]
    group: str | None = None
    once: bool = False
    choice: str | None = None
    members: frozenset[Enum] = frozenset()
    on_known: bool = False
    stands_for: str | None = None
    held: bool = False
    searched: bool = False
    kept: bool = False
    divides: bool = False

    @property
    def afterwards(self) -> bool:
        """Whether it needs the finished checks."""
        return ALL_CHECKS in self.needs

    @property
    def is_check(self) -> bool:
        """Whether it is held against a limit."""
        return self.returns in CHECK_KINDS

    @property
    def is_picture(self) -> bool:
        """Whether it is the drawing; then what it takes as None may be whatever has no value yet."""
        return self.returns is Drawing


def quantity_of(function: Callable[..., Any]) -> Quantity:
    """What a function declares by its name, parameters, annotations and decorators."""
    hints = typing.get_type_hints(function)
    returns = hints.pop("return", None)
    needs = tuple(inspect.signature(function).parameters)
    takes_none = frozenset(need for need in needs if allows_none(hints.get(need)))
    facts: dict[str, Any] = {"name": function.__name__} | function.__dict__.get("quantity", {})
    return Quantity(run=function, needs=needs, hints=hints, returns=returns, takes_none=takes_none, **facts)


def plain(hint: Any) -> set[Any]:
    """The types in an annotation: `tuple[Shackle | None, ...]` gives {Shackle}."""
    if typing.get_origin(hint) is None:
        return {hint} - {NoneType, Ellipsis}

    found: set[Any] = set()
    for inner in typing.get_args(hint):
        found |= plain(inner)
    return found


def allows_none(hint: Any) -> bool:
    """Whether None may come in, in a row or by itself."""
    inner = [each for each in typing.get_args(hint) if each is not Ellipsis]
    return NoneType in inner or any(allows_none(each) for each in inner)
