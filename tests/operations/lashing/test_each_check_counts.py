"""Each check and clause in turn says the best it could; one named load then comes out otherwise, so it counts."""

import copy
import dataclasses
import importlib
from types import ModuleType
from typing import Any

import pytest

from checklist_app.mechanics.sources import SOURCES
from checklist_app.operations.catalogue import OPERATIONS
from checklist_app.operations.check import Clause, Limit, State, Strength, Verdict
from checklist_app.operations.evaluate import assess
from checklist_app.operations.inline import from_json
from checklist_app.operations.lashing import (
    agree,
    lashing_class,
    lashing_states,
    metal,
    number,
    on_pallet,
    pallet_checks,
    shared_ends,
    vehicle_checks,
    vehicle_loads,
)
from checklist_app.operations.report import report
from checklist_app.operations.table import Table
from checklist_app.operations.task import Task
from tests.operations.called import called
from tests.operations.lashing.mutations import (
    BEST,
    PALLET_CASES,
    PALLET_CLAUSES,
    TELLS_ONLY,
    VEHICLE_CASES,
    VEHICLE_CLAUSES,
)

MODULES: tuple[ModuleType, ...] = (
    agree, lashing_class, lashing_states, metal, number, on_pallet, pallet_checks, shared_ends, vehicle_checks,
    vehicle_loads,
)
CASES = {"pallet_lashing": PALLET_CASES, "vehicle_lashing": VEHICLE_CASES}
CLAUSES = {"pallet_lashing": PALLET_CLAUSES, "vehicle_lashing": VEHICLE_CLAUSES}
EVERY_CHECK = [(name, check) for name in CASES for check in OPERATIONS[name].table.checks]
WORDS = {Strength: ("kg", "daN", "kg/m"), Limit: ("m", "°", "daN", ""), State: ("",)}


@pytest.mark.parametrize("name", CASES)
def test_every_check_of_the_operation_has_its_case(name: str) -> None:
    assert set(OPERATIONS[name].table.checks) == {*CASES[name], *TELLS_ONLY}


def test_every_clause_behind_these_checks_has_its_case() -> None:
    assert called(MODULES) == {*PALLET_CLAUSES, *VEHICLE_CLAUSES}


@pytest.mark.parametrize("name, check", [(name, check) for name, cases in CASES.items() for check in cases])
def test_a_check_decides_alone_and_is_missed_when_it_says_the_best_it_could(name: str, check: str) -> None:
    table, task = OPERATIONS[name].table, CASES[name][check]
    ev = assess(table, task, with_spread=False)
    assert {each.quantity for each in ev.checks if each.verdict is Verdict.OVER} == {check}
    assert assess(with_best(table, check), task, with_spread=False).verdict is not Verdict.OVER


@pytest.mark.parametrize("name, clause", [(name, clause) for name, cases in CLAUSES.items() for clause in cases])
def test_a_clause_that_says_the_best_it_could_is_noticed(
    name: str, clause: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    best, task = CLAUSES[name][clause]
    table, spread = OPERATIONS[name].table, clause.endswith("by_knowledge")
    before = assessed(table, task, spread)
    module, _, function = clause.rpartition(".")
    monkeypatch.setattr(importlib.import_module(f"checklist_app.mechanics.{module}"), function, best)
    assert assessed(table, task, spread) != before


def assessed(table: Table, task: Task, with_spread: bool) -> tuple[Any, ...]:
    """What a signer is told: the verdict, what governs, the class."""
    ev = assess(table, task, with_spread)
    return ev.verdict, ev.governs.name if ev.governs else None, ev["lashing_class"]


def with_best(table: Table, name: str) -> Table:
    """The same table, one of its checks always at its best."""
    (way,) = table.ways[name]

    def best(*_: Any) -> Any:
        return BEST[way.returns]

    best.__dict__["clause"] = way.run.__dict__["clause"]
    changed = copy.copy(table)
    changed.ways = {**table.ways, name: (dataclasses.replace(way, run=best),)}
    return changed


@pytest.mark.parametrize("name, check", EVERY_CHECK)
def test_every_check_has_its_words_its_source_and_a_unit_that_is_spoken(name: str, check: str) -> None:
    (way,) = OPERATIONS[name].table.ways[check]
    clause: Clause = way.run.__dict__["clause"]
    assert clause.title and clause.rule_set and clause.source in SOURCES
    assert clause.unit in WORDS[way.returns]
    assert len((way.run.__doc__ or "").strip()) > 20


@pytest.mark.parametrize("name", CASES)
def test_no_two_checks_are_called_alike(name: str) -> None:
    table = OPERATIONS[name].table
    titles = [way.run.__dict__["clause"].title for check in table.checks for way in table.ways[check]]
    assert len(titles) == len(set(titles))


@pytest.mark.parametrize("name", CASES)
def test_the_example_is_within_with_its_class_and_cautions(name: str) -> None:
    operation = OPERATIONS[name]
    told = report(operation, assess(operation.table, from_json(operation.table, operation.example)))
    assert told["verdict"] == "within limit" and not told["waiting"] and not told["refused"]
    assert told["class"] == ("routine" if name == "pallet_lashing" else "non-routine")
    assert set(operation.cautions) <= set(told["cautions"])


@pytest.mark.parametrize("name, check", EVERY_CHECK)
def test_a_task_of_which_nothing_is_known_passes_nowhere(name: str, check: str) -> None:
    """Not one check is within before anybody answered; one that does not apply says so."""
    ev = assess(OPERATIONS[name].table, Task())
    for found in (each for each in ev.checks if each.quantity == check):
        assert found.verdict in (Verdict.WAITING, Verdict.NOT_APPLICABLE, Verdict.OVER)
    assert ev.verdict is not Verdict.WITHIN
