"""The table of one operation: built from the functions defined in its modules, and proved when it is imported."""

import inspect
from collections.abc import Callable, Iterator
from types import ModuleType
from typing import Any

from checklist_app.operations.graph import Entry, Group, NotUsed
from checklist_app.operations.proof import prove
from checklist_app.operations.quantity import ALL_CHECKS, SPREADS, Quantity, TableError, quantity_of

__all__ = ["Table", "TableError"]


class Table:
    """All entries, groups and quantities of one operation, proved to fit together."""

    def __init__(self, *modules: ModuleType) -> None:
        declared = [each for module in modules for each in getattr(module, "ENTRIES", ())]
        self.groups = {each.name: each for each in declared if isinstance(each, Group)}
        self.entries: dict[str, Entry] = {}
        self.home: dict[str, str | None] = {}
        self.ways: dict[str, tuple[Quantity, ...]] = {}
        self.worst_cases: dict[str, Quantity] = {}
        for each in declared:
            self._declare(each)
        for module in modules:
            for function in _defined_in(module):
                self._add(quantity_of(function))
        prove(self)

    @property
    def checks(self) -> tuple[str, ...]:
        """Names of the check functions, in the order they are written."""
        return tuple(name for name, ways in self.ways.items() if ways[0].is_check)

    def all_ways(self) -> Iterator[Quantity]:
        """Every function, branches and worst cases among them."""
        for ways in self.ways.values():
            yield from ways
        yield from self.worst_cases.values()

    def may_not_know(self, name: str) -> bool:
        """Whether *don't know* is an answer: a worst case stands for it, or a branch that takes one.

        A branch for what nobody was asked says nothing about what nobody knows.
        """
        entry = self.entries[name]
        branches = any(way.choice == name and way.on_known for way in self.all_ways())

        return name in self.worst_cases or (
            branches and not entry.may_be_none and not isinstance(entry.default, NotUsed)
        )

    def many(self, quantity: Quantity, need: str) -> bool:
        """Whether a function sees all rows of what it needs, rather than its own."""
        home = need if need in self.groups else self.home[need]
        return home is not None and (home != quantity.group or quantity.once)

    def _declare(self, each: Entry | Group) -> None:
        for entry in each.entries if isinstance(each, Group) else (each,):
            self._new(entry.name, each.name if isinstance(each, Group) else None)
            self.entries[entry.name] = entry

    def _add(self, quantity: Quantity) -> None:
        if quantity.stands_for is not None:
            if quantity.stands_for in self.worst_cases:
                raise TableError(f"{quantity.stands_for} has two worst cases")
            self.worst_cases[quantity.stands_for] = quantity
        elif quantity.choice is not None and all(way.choice for way in self.ways.get(quantity.name, ())):
            if quantity.name not in self.ways:
                self._new(quantity.name, quantity.group)
            self.ways[quantity.name] = (*self.ways.get(quantity.name, ()), quantity)
        else:
            self._new(quantity.name, quantity.group)
            self.ways[quantity.name] = (quantity,)

    def _new(self, name: str, group: str | None) -> None:
        if name in self.home or name in self.groups or name in (ALL_CHECKS, SPREADS):
            raise TableError(f"{name} is there twice")
        self.home[name] = group


def _defined_in(module: ModuleType) -> Iterator[Callable[..., Any]]:
    for name, each in vars(module).items():
        if inspect.isfunction(each) and each.__module__ == module.__name__ and not name.startswith("_"):
            yield each
