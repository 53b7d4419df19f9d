"""What an operation is written with: entries, groups of rows, decorators, and the ways to have no value.

A function's name is the quantity it computes; its parameters are the quantities it needs.
"""

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from datetime import date
from enum import Enum
from typing import Any, Self, TypeVar

F = TypeVar("F", bound=Callable[..., Any])


class Stopped(Exception):
    """Why a quantity has no value, in words."""

    def __init__(self, *reasons: str) -> None:
        super().__init__("; ".join(reasons))
        self.reasons = reasons


class Waits(Stopped):
    """Entries or facts are missing; each reason is a `Missing` or plain words."""


class CannotAssess(Stopped):
    """A clause refuses, with its reason."""


class NotApplicable(Stopped):
    """Answered *not used*, or the clause does not apply, with the reason."""


class Missing(str):
    """What is waited for, in words; `key` is the entry that would give it (`sling[left]`)."""

    key: str

    def __new__(cls, words: str, key: str) -> Self:
        self = super().__new__(cls, words)
        self.key = key
        return self


class Day(str):
    """A day as `2026-11-25`; such texts sort as the days do.

    Example:
        >>> Day("2026-02-29")
        Traceback (most recent call last):
        ...
        ValueError: 2026-02-29 is no day: write it as 2026-11-25
    """

    def __new__(cls, text: str) -> Self:
        try:
            plain = date.fromisoformat(text).isoformat() == text
        except (TypeError, ValueError):
            plain = False
        if not plain:
            raise ValueError(f"{text} is no day: write it as 2026-11-25")

        return super().__new__(cls, text)


class Known(Enum):
    """A branch may hang on whether an entry is known at all: `@when("tension", cg_x_m=Known.NO)`.

    *Not used* counts as not known too: an entry with `default=NotUsed("…")` need not be asked at all.
    """

    YES = "known"
    NO = "don't know"


@dataclass(frozen=True)
class DontKnow:
    """An answer: the published worst case is taken, and named."""


@dataclass(frozen=True)
class NotUsed:
    """An answer: there is none here, and why."""

    reason: str


@dataclass(frozen=True)
class Range:
    """Where the true value lies, and the value taken as nominal."""

    low: float
    nominal: float
    high: float


@dataclass(frozen=True)
class Obtained:
    """A way a number was come by, and how far the true value may lie from it.

    Just one of: `plus_minus` in the entry's unit, `relative` (0.02 is ± 2 %), `factor` (upper end only: a contingency).
    """

    name: str
    words: str
    plus_minus: float | None = None
    relative: float | None = None
    factor: float | None = None

    def spread(self, value: float) -> Range:
        """The value with its spread."""
        if self.factor is not None:
            return Range(value, value, value * self.factor)

        away = self.plus_minus if self.plus_minus is not None else abs(value) * (self.relative or 0.0)
        return Range(value - away, value, value + away)


@dataclass(frozen=True)
class Entry:
    """One question: what is asked, in which unit and range, and which answers are open besides a value.

    `kind` is float, str, Day, an Enum, or one or several (`A | B`) kinds of gear. `low` and `high` bound what is
    accepted, `usual` is what one expects. A number with `obtained` waits until it is said how it was come by.
    """

    name: str
    words: str
    kind: Any
    unit: str = ""
    low: float | None = None
    high: float | None = None
    usual: tuple[float, float] | None = None
    obtained: tuple[Obtained, ...] = ()
    may_be_none: bool = False
    default: Any = None
    hint: str = ""


@dataclass(frozen=True)
class Group:
    """Rows: either entered (`at_least` to `at_most` of them), or fixed by the members of an Enum.

    `rows_by` names a choice and how many rows, least and most, each of its answers wants.
    """

    name: str
    plural: str
    entries: tuple[Entry, ...] = ()
    at_least: int = 0
    at_most: int = 99
    fixed: type[Enum] | None = None
    rows_by: tuple[str, Mapping[Any, tuple[int, int]]] | None = None


def each(group: str) -> Callable[[F], F]:
    """Run once per row; of a name the row's own comes first, then the task's."""
    return _mark(group=group)


def across(group: str) -> Callable[[F], F]:
    """Run once with all rows in sight; the result is a tuple, one value per row."""
    return _mark(group=group, once=True)


def when(quantity: str, **choice: Any) -> Callable[[F], F]:
    """One of several ways to `quantity`, for one or some of the answers to one entry.

    Of two functions of one name Python keeps the last, so a branch has a name of its own.
    """
    if len(choice) != 1:
        raise TypeError(f"@when({quantity!r}) hangs on just one entry")

    (entry, given), = choice.items()
    members = given if isinstance(given, tuple) else (given,)
    return _mark(name=quantity, choice=entry, members=frozenset(members), on_known=isinstance(members[0], Known))


def dont_know(entry: str) -> Callable[[F], F]:
    """The published worst case of an entry that nobody knows: a value, or a `Range` that is tried throughout."""
    return _mark(stands_for=entry)


def at_nominal(function: F) -> F:
    """Computed from the nominal entries and held in every sample of the spread: whether a clause applies."""
    return _mark(held=True)(function)


def by_search(function: F) -> F:
    """Its working says that it was found by search; what takes it proves it, line by line."""
    return _mark(searched=True)(function)


def kept(function: F) -> F:
    """Costly, and asked with the same numbers many times in one spread: what it gave is kept while that is searched."""
    return _mark(kept=True)(function)


def divides(function: F) -> F:
    """What it gives is one of a few, and what it comes to divides the spread into sides: on each the load behaves
    otherwise, so the worst is looked for on each."""
    return _mark(divides=True)(function)


def _mark(**facts: Any) -> Callable[[F], F]:
    def decorate(function: F) -> F:
        function.__dict__.setdefault("quantity", {}).update(facts)
        return function

    return decorate
