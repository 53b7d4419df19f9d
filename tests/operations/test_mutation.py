"""Each clause and each check in turn says the best it could; one named lift then comes out otherwise, so it counts.

The lists are taken from the modules: a new clause or check without a case fails.
"""

import copy
import dataclasses
import importlib
from typing import Any

import pytest

from checklist_app.operations.check import Limit, State, Strength
from checklist_app.operations.evaluate import Evaluation, assess
from checklist_app.operations.straight_lift import MODULES, TABLE
from checklist_app.operations.table import Table
from tests.operations.called import called
from tests.operations.mutations import CHECK_CASES, CLAUSE_CASES, NEVER_ALONE, SHOWN_ONLY, TELLS_ONLY

BEST = {Strength: Strength(0.0, 1.0), Limit: Limit(-1e9, 1e9), State: State(True, "")}


def decision(ev: Evaluation) -> tuple[Any, ...]:
    """What a signer is told: the verdict, what governs, the class."""
    return ev.verdict, ev.governs.name if ev.governs else None, ev["lift_class"]


def test_every_clause_that_the_operation_calls_has_its_case() -> None:
    assert called(MODULES) == {*CLAUSE_CASES, *SHOWN_ONLY, *NEVER_ALONE}


def test_every_check_of_the_operation_has_its_case() -> None:
    assert set(TABLE.checks) == {*CHECK_CASES, *TELLS_ONLY}


@pytest.mark.parametrize("name", CLAUSE_CASES)
def test_a_clause_that_says_the_best_it_could_is_noticed(name: str, monkeypatch: pytest.MonkeyPatch) -> None:
    best, task = CLAUSE_CASES[name]
    before = decision(assess(TABLE, task))
    module, _, function = name.rpartition(".")
    monkeypatch.setattr(importlib.import_module(f"checklist_app.mechanics.{module}"), function, best)
    assert decision(assess(TABLE, task)) != before


@pytest.mark.parametrize("name", SHOWN_ONLY)
def test_a_clause_that_is_only_shown_is_noticed_where_it_is_shown(name: str, monkeypatch: pytest.MonkeyPatch) -> None:
    task, quantity, best = SHOWN_ONLY[name]
    before = assess(TABLE, task)[quantity]
    module, _, function = name.rpartition(".")
    monkeypatch.setattr(importlib.import_module(f"checklist_app.mechanics.{module}"), function, lambda *_: best)
    assert assess(TABLE, task)[quantity] != before


@pytest.mark.parametrize("name", CHECK_CASES)
def test_a_check_that_says_the_best_it_could_is_noticed(name: str) -> None:
    task = CHECK_CASES[name]
    assert decision(assess(with_best(name), task)) != decision(assess(TABLE, task))


def with_best(name: str) -> Table:
    """The same table, one of its checks always at its best."""
    (way,) = TABLE.ways[name]

    def best(*_: Any) -> Any:
        return BEST[way.returns]

    best.__dict__["clause"] = way.run.__dict__["clause"]
    table = copy.copy(TABLE)
    table.ways = {**TABLE.ways, name: (dataclasses.replace(way, run=best),)}
    return table
