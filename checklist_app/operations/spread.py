"""The worst of each check over what is not exactly known.

One entry at a time first. Then, per check, the entries that matter most at both ends in full, the rest at their own
worst; and from the worst found, and from its mirror image, one entry at a time is moved until nothing gets worse.
Without that climb a lift whose entries work on each other hides up to 15 % of the effect.
"""

from collections.abc import Iterable, Mapping, Sequence
from typing import Any, NamedTuple

from checklist_app.operations.check import Clause, Limit, Outcome, Strength, badness
from checklist_app.operations.graph import Stopped
from checklist_app.operations.loop import run
from checklist_app.operations.plan import Plan, Step, Variable

IN_FULL = 6
Result = Outcome | Stopped
Point = dict[int, float]
Worst = dict[int, tuple[Result, tuple[str, ...]]]


class Trial(NamedTuple):
    """What a check came to with one entry moved, alone."""

    result: Result
    level: float


class Best(NamedTuple):
    """The worst found so far, and where."""

    badness: tuple[int, float]
    result: Result
    point: Point


def worst(plan: Plan, values: list[Any], halted: dict[int, Stopped], checks: Mapping[int, Clause]) -> Worst:
    """The worst result of each check that hangs on an uncertain entry, and those entries, most moving first.

    Args:
        plan: the steps of the task.
        values: every slot at its nominal value.
        halted: why other slots have none.
        checks: clauses of the checks that have a result, by slot.
    """
    return Search(plan, values, halted, checks).found()


class Search:
    """One search over the uncertain entries of one task."""

    def __init__(self, plan: Plan, values: list[Any], halted: dict[int, Stopped], checks: Mapping[int, Clause]) -> None:
        self.plan, self.values, self.halted = plan, values, halted
        self.variables = plan.variables
        self.feeds = feeds(plan)
        self.checks = {slot: clause for slot, clause in checks.items() if self.feeds.get(slot)}
        self.alone: dict[int, dict[int, list[Trial]]] = {slot: {} for slot in self.checks}

    def found(self) -> Worst:
        """Search, check by check; checks whose search is alike share one."""
        if not self.checks:
            return {}

        self._one_at_a_time()
        order = {slot: self._ranked(slot) for slot in self.checks}
        shared: dict[tuple[Any, ...], list[int]] = {}
        for slot, ranked in order.items():
            shared.setdefault(self._to_try(slot, ranked), []).append(slot)
        found: Worst = {}
        for (tried, settled), slots in shared.items():
            for slot, best in self._in_full(tried, settled, slots).items():
                result = self._climbed(slot, order[slot], best)
                found[slot] = result, tuple(str(self.variables[i].key) for i in order[slot] if self._moves(slot, i))
        return found

    def _one_at_a_time(self) -> None:
        needed = ancestors(self.plan, self.checks)
        for i, variable in enumerate(self.variables):
            steps = [step for step in needed if self.feeds.get(step.out, 0) >> i & 1]
            clear = {slot: why for slot, why in self.halted.items() if not self.feeds.get(slot, 0) >> i & 1}
            for level in variable.levels:
                values, halted = self.values.copy(), clear.copy()
                values[variable.slot] = level
                run(steps, values, halted)
                for slot in self.checks:
                    if self.feeds[slot] >> i & 1:
                        self.alone[slot].setdefault(i, []).append(Trial(halted.get(slot, values[slot]), level))

    def _effect(self, slot: int, i: int) -> tuple[int, float]:
        base = badness(self.halted.get(slot, self.values[slot]), self.checks[slot])
        moved = [badness(trial.result, self.checks[slot]) for trial in self.alone[slot][i]]
        return max(abs(rank - base[0]) for rank, _ in moved), max(abs(by - base[1]) for _, by in moved)

    def _moves(self, slot: int, i: int) -> bool:
        return self._effect(slot, i) > (0, 0.0)

    def _ranked(self, slot: int) -> list[int]:
        """Variables by how far each alone moves the check, most first."""
        return sorted(self.alone[slot], key=lambda i: self._effect(slot, i), reverse=True)

    def _to_try(self, slot: int, ranked: Sequence[int]) -> tuple[Any, ...]:
        """What is tried in full, and what stays at its own worst."""
        clause, alone = self.checks[slot], self.alone[slot]
        settled = tuple(
            (i, max(alone[i], key=lambda trial: badness(trial.result, clause)).level) for i in ranked[IN_FULL:]
        )
        return tuple((i, _levels(alone[i], clause)) for i in sorted(ranked[:IN_FULL])), settled

    def _in_full(self, tried: Any, settled: Any, slots: Sequence[int]) -> dict[int, Best]:
        start = self.values.copy()
        for i, level in settled:
            start[self.variables[i].slot] = level
        checks = {slot: self.checks[slot] for slot in slots}
        at = {self.variables[i].slot: level for i, level in settled}
        nest = Nest(self, [(i, self.variables[i].slot, levels) for i, levels in tried], start, checks)
        return {slot: best._replace(point=at | best.point) for slot, best in nest.walked().items()}

    def _climbed(self, slot: int, ranked: Sequence[int], best: Best) -> Result:
        """From the worst found, and from its mirror image: a lift leans to one side as readily as to the other."""
        levels = {variable.slot: variable.levels for variable in self.variables}
        mirrored = {where: levels[where][2 - levels[where].index(level)] for where, level in best.point.items()}
        steps = [step for step in ancestors(self.plan, [slot]) if self.feeds.get(step.out)]
        for begin in (best.point, mirrored):
            other = self._climb(slot, steps, [self.variables[i] for i in ranked], begin)
            if other.badness > best.badness:
                best = other
        return best.result

    def _climb(self, slot: int, steps: Sequence[Step], variables: Sequence[Variable], point: Point) -> Best:
        best, better = self._tried(slot, steps, point), True
        while better:
            better = False
            for variable in variables:
                for level in variable.levels[::2]:
                    if best.point.get(variable.slot) != level:
                        now = self._tried(slot, steps, best.point | {variable.slot: level})
                        if now.badness > best.badness:
                            best, better = now, True
        return best

    def _tried(self, slot: int, steps: Sequence[Step], point: Point) -> Best:
        values = self.values.copy()
        halted = {where: why for where, why in self.halted.items() if not self.feeds.get(where)}
        for where, level in point.items():
            values[where] = level
        run(steps, values, halted)
        result = halted.get(slot, values[slot])
        return Best(badness(result, self.checks[slot]), result, point)


class Nest:
    """Nested loops over the levels of some variables; the one with most work behind it is outermost."""

    def __init__(
        self, search: Search, tried: list[tuple[int, int, tuple[float, ...]]], values: list[Any],
        checks: Mapping[int, Clause],
    ) -> None:
        self.values, self.checks, self.feeds = values, checks, search.feeds
        steps = ancestors(search.plan, checks)
        self.order = sorted(tried, key=lambda one: -len([s for s in steps if self.feeds.get(s.out, 0) >> one[0] & 1]))
        self.stages: list[list[Step]] = [[] for _ in range(len(self.order) + 1)]
        for step in steps:
            self.stages[self._depth(step)].append(step)
        self.lead = dict.fromkeys(checks, float("-inf"))
        self.best: dict[int, Best] = {}
        self.start = dict(search.halted)

    def _depth(self, step: Step) -> int:
        bits = self.feeds.get(step.out, 0)
        return max((depth + 1 for depth, (bit, _, _) in enumerate(self.order) if bits >> bit & 1), default=0)

    def walked(self) -> dict[int, Best]:
        """The worst of each check over all combinations."""
        self._stage(0, self.start)
        for slot, clause in self.checks.items():
            result = self.start.get(slot, self.values[slot])
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
            inner = halted.copy()
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


def _levels(trials: list[Trial], clause: Clause) -> tuple[float, ...]:
    """Both ends; the middle too, unless alone it lies strictly between them."""
    low, middle, high = (badness(trial.result, clause) for trial in trials)
    between = low < middle < high or high < middle < low
    levels = [trial.level for trial in (trials[::2] if between else trials)]
    return tuple(dict.fromkeys(levels))


def _measure(result: Result) -> float | None:
    """A cheap key where there are two numbers that can be compared; None: look at the verdict."""
    if isinstance(result, Strength):
        found = result.demand / result.capacity if result.capacity > 0.0 else None
    else:
        found = result.demand - result.capacity if isinstance(result, Limit) else None
    return found if found is not None and found == found else None
