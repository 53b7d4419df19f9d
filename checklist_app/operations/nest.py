"""All combinations of a few uncertain entries, with nothing computed twice."""

from collections.abc import Iterable, Mapping
from typing import Any

from checklist_app.operations.check import Clause, Limit, Strength, badness
from checklist_app.operations.climb import Best, Point, Result
from checklist_app.operations.graph import Stopped
from checklist_app.operations.loop import hindering, run
from checklist_app.operations.plan import Plan, Step

Tried = list[tuple[int, int, tuple[float, ...]]]


class Nest:
    """Nested loops over variables given as (bit, slot, levels); the one with most work behind it is outermost."""

    def __init__(
        self, plan: Plan, bits: Mapping[int, int], tried: Tried, values: list[Any], halted: Mapping[int, Stopped],
        checks: Mapping[int, Clause],
    ) -> None:
        self.values, self.checks, self.feeds = values, checks, bits
        steps = ancestors(plan, checks)
        self.order = sorted(tried, key=lambda one: -len([s for s in steps if self.feeds.get(s.out, 0) >> one[0] & 1]))
        self.stages: list[list[Step]] = [[] for _ in range(len(self.order) + 1)]
        for step in steps:
            self.stages[self._depth(step)].append(step)
        self.lead = dict.fromkeys(checks, float("-inf"))
        self.best: dict[int, Best] = {}
        self.nominal, self.start = halted, hindering(steps, halted, bits)

    def _depth(self, step: Step) -> int:
        bits = self.feeds.get(step.out, 0)
        return max((depth + 1 for depth, (bit, _, _) in enumerate(self.order) if bits >> bit & 1), default=0)

    def walked(self) -> dict[int, Best]:
        """The worst of each check over all combinations."""
        self._stage(0, self.start)
        for slot, clause in self.checks.items():
            result = self.nominal.get(slot, self.values[slot])
            self.best[slot] = Best(badness(result, clause), result, self._here())
        self._inside(0, self.start)
        return self.best

    def _stage(self, depth: int, halted: dict[int, Stopped]) -> None:
        for step in self.stages[depth]:
            halted.pop(step.out, None)
        run(self.stages[depth], self.values, halted)

    def _inside(self, depth: int, halted: dict[int, Stopped]) -> None:
        if depth == len(self.order):
            for slot in self.checks:
                self._compare(slot, halted[slot] if slot in halted else self.values[slot])
            return

        _, where, levels = self.order[depth]
        for level in levels:
            self.values[where] = level
            inner = halted.copy() if halted else {}
            self._stage(depth + 1, inner)
            self._inside(depth + 1, inner)

    def _compare(self, slot: int, result: Result) -> None:
        """The cheap measure first; the verdict only where it might be worse."""
        measure = _measure(result)
        if measure is not None:
            if measure <= self.lead[slot]:
                return
            self.lead[slot] = measure
        told = badness(result, self.checks[slot])
        if slot not in self.best or told > self.best[slot].badness:
            self.best[slot] = Best(told, result, self._here())

    def _here(self) -> Point:
        return {where: self.values[where] for _, where, _ in self.order}


def feeds(plan: Plan) -> dict[int, int]:
    """Per slot, the uncertain entries it hangs on, as bits; what is held at nominal hangs on none."""
    bits = {variable.slot: 1 << i for i, variable in enumerate(plan.variables)}
    for step in plan.steps:
        found = 0
        for arg in step.args:
            found |= bits.get(arg, 0)
        if found and not step.held:
            bits[step.out] = found
    return bits


def ancestors(plan: Plan, slots: Iterable[int]) -> list[Step]:
    """The steps that some slots hang on, in order."""
    wanted = set(slots)
    steps: list[Step] = []
    for step in reversed(plan.steps):
        if step.out in wanted:
            wanted.update(step.args)
            steps.append(step)
    return steps[::-1]


def _measure(result: Result) -> float | None:
    """A cheap key where there are two numbers that can be compared; None: look at the verdict."""
    if isinstance(result, Strength):
        found = result.demand / result.capacity if result.capacity > 0.0 else None
    else:
        found = result.demand - result.capacity if isinstance(result, Limit) else None
    return found if found is not None and found == found else None
