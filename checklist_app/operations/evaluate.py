"""Assess a task: every check at nominal and at its worst, every quantity, what waits and why."""

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cached_property
from typing import Any

from checklist_app.operations import spread
from checklist_app.operations.check import Check, Verdict, governs, overall
from checklist_app.operations.drawing import Drawing
from checklist_app.operations.drawing_worst import with_worst
from checklist_app.operations.graph import NotApplicable, Range, Stopped
from checklist_app.operations.hoped import hopeless
from checklist_app.operations.loop import run
from checklist_app.operations.plan import ALL, Plan
from checklist_app.operations.table import Table
from checklist_app.operations.task import Key, Task, key_of


@dataclass(frozen=True)
class Evaluation:
    """What came out of one task."""

    table: Table
    task: Task
    plan: Plan
    values: list[Any]
    halted: dict[int, Stopped]
    checks: tuple[Check, ...]
    with_spread: bool

    @cached_property
    def verdict(self) -> Verdict:
        """The verdict on the whole task."""
        return overall(self.checks)

    @cached_property
    def governs(self) -> Check | None:
        """The check that decides."""
        return governs(self.checks)

    @cached_property
    def told(self) -> dict[str, Any]:
        """The working of what was asked for so far, by name: the same evaluation is shown many times."""
        return {}

    def __getitem__(self, name: str) -> Any:
        """A value by name, `ev["leg_tension_kn[left]"]`, or the `Stopped` that says why there is none."""
        slot = self.plan.slots[key_of(name)]
        return self.halted.get(slot, self.values[slot])

    def check(self, name: str) -> Check:
        """A check by name."""
        found = next((check for check in self.checks if check.name == name), None)
        if found is None:
            raise KeyError(name)

        return found

    @cached_property
    def picture(self) -> Drawing | Stopped | None:
        """The drawing of the operation, why there is none, or None where the operation draws nothing.

        Where what governs is at its worst in another attitude than the stated one, that attitude is drawn too.
        """
        name = next((name for name, ways in self.table.ways.items() if ways[0].is_picture), None)
        found: Drawing | Stopped | None = self[name] if name is not None else None
        if not isinstance(found, Drawing) or self.governs is None or not self.governs.point:
            return found
        there = self._at(self.governs.point, name or "")
        return with_worst(found, there, self.governs.clause.title) if isinstance(there, Drawing) else found

    def _at(self, point: Mapping[int, float], name: str) -> Any:
        """A quantity with some entries moved."""
        values, halted = self.plan.start.copy(), dict(self.plan.stopped)
        for slot, level in point.items():
            values[slot] = level
        run(self.plan.steps, values, halted)
        slot = self.plan.slots[key_of(name)]
        return halted.get(slot, values[slot])


def assess(table: Table, task: Task, with_spread: bool = True) -> Evaluation:
    """Evaluate a task; without spread every number counts as exact, but *don't know* is tried all the same."""
    plan = Plan(table, task, with_spread)
    values, halted = plan.start.copy(), dict(plan.stopped)
    run(plan.steps, values, halted)
    checks = _checks(plan, values, halted)
    if any(ways[0].afterwards for ways in table.ways.values()):
        _finish(plan, values, halted, checks)

    return Evaluation(table, task, plan, values, halted, checks, with_spread)


def _checks(plan: Plan, values: list[Any], halted: dict[int, Stopped]) -> tuple[Check, ...]:
    keys = [key for key, way in plan.quantities.items() if way.is_check and key.row != ALL]
    clauses = {plan.slots[key]: plan.quantities[key].run.__dict__["clause"] for key in keys}
    able = {
        slot: clause for slot, clause in clauses.items()
        if slot not in halted or isinstance(halted[slot], NotApplicable)
    }
    worst = spread.worst(plan, values, halted, able)
    unknown = _unknown(plan)
    checks: list[Check] = []
    for key in keys:
        slot = plan.slots[key]
        nominal = halted.get(slot, values[slot])
        at_worst, drivers, point = worst.get(slot, spread.AtWorst(nominal, (), {}))
        names, clause = unknown.get(slot, ()), clauses[slot]
        in_vain = clause.trial_tells and bool(names) and hopeless(plan, values, halted, slot, clause)
        checks.append(Check(str(key), key.name, key.row, clause, nominal, at_worst, drivers, names, in_vain, point))
    return tuple(checks)


def _unknown(plan: Plan) -> dict[int, tuple[str, ...]]:
    """Per slot, the *don't know* answers it hangs on."""
    hangs: dict[int, tuple[str, ...]] = {slot: (str(key),) for slot, key in plan.unknown.items()}
    if not hangs:
        return hangs
    for step in plan.steps:
        names = dict.fromkeys(name for arg in (*step.args, step.out) for name in hangs.get(arg, ()))
        if names:
            hangs[step.out] = tuple(names)
    return hangs


def _spreads(plan: Plan, values: list[Any], halted: Mapping[int, Stopped]) -> dict[str, Range]:
    """By name, where each entry may lie that is not exactly known; what nobody knows, as far as it is published."""
    found: dict[str, Range] = {}
    for key, _, levels, unknown in plan.variables:
        if not unknown:
            found[str(key)] = Range(*levels)
            continue
        slot = plan.slots[Key(plan.table.worst_cases[key.name].name, key.row)]
        if slot not in halted:
            found[str(key)] = values[slot]
    return found


def _finish(plan: Plan, values: list[Any], halted: dict[int, Stopped], checks: tuple[Check, ...]) -> None:
    known = len(plan.start)
    steps = plan.add_afterwards(checks, _spreads(plan, values, halted))
    values.extend(plan.start[known:])
    halted.update({slot: why for slot, why in plan.stopped.items() if slot >= known})
    run(steps, values, halted)
