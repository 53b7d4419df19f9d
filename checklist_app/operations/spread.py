"""The worst of each check over what is not exactly known.

One entry at a time first. Then, per check, the entries that matter most at both ends in full, the rest at their own
worst; and from the worst found, and from its mirror image, one entry at a time is moved until nothing gets worse.
Without that climb a lift whose entries work on each other hides up to 15 % of the effect. Which of four legs are tight
changes from corner to corner, so there it is climbed from the worst of some corners strewn over all too.
"""

from collections.abc import Iterable, Mapping, Sequence
from typing import Any, NamedTuple

from checklist_app.operations.check import Clause, Strength, badness
from checklist_app.operations.climb import Best, Climb, Point, Result
from checklist_app.operations.corners import Corners
from checklist_app.operations.graph import Stopped
from checklist_app.operations.loop import hindering, run
from checklist_app.operations.nest import Nest, ancestors, feeds
from checklist_app.operations.plan import Plan, Step
from checklist_app.operations.quicker import hanging_on_search, never, remembering, strewn

IN_FULL, IN_FULL_SMOOTH = 6, 4
STREWN, BEGINS = 8, 2


class AtWorst(NamedTuple):
    """The worst of one check: what it comes to, the entries that move it, most first, and where it was found."""

    result: Result
    drivers: tuple[str, ...]
    point: Point


Worst = dict[int, AtWorst]


class Trial(NamedTuple):
    """What a check came to with one entry moved, alone."""

    result: Result
    level: float


def worst(plan: Plan, values: list[Any], halted: dict[int, Stopped], checks: Mapping[int, Clause]) -> Worst:
    """The worst of each check that hangs on an uncertain entry.

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
        self.plan, self.values, self.halted = remembering(plan), values, halted
        self.variables = plan.variables
        self.feeds = feeds(plan)
        self.args = {step.out: step.args for step in plan.steps}
        idle = never(plan, halted, self.feeds)
        self.checks = {slot: clause for slot, clause in checks.items() if self.feeds.get(slot) and slot not in idle}
        self.alone: dict[int, dict[int, list[Trial]]] = {slot: {} for slot in self.checks}
        self.corners = Corners(self.plan, self.feeds, values, halted)
        self.tops: dict[int, Point] = {}
        self.scattered: dict[int, list[Point]] = {}
        self.joint: list[Step] = []
        self.effects: dict[tuple[int, int], tuple[int, float]] = {}

    def found(self) -> Worst:
        """Search, check by check; checks whose search is alike share one."""
        if not self.checks:
            return {}

        self._one_at_a_time()
        self.scattered = self._scattered()
        order = {slot: self._ranked(slot) for slot in self.checks}
        shared: dict[tuple[Any, ...], list[int]] = {}
        for slot, ranked in order.items():
            shared.setdefault(self._to_try(slot, ranked), []).append(slot)
        found: Worst = {}
        for (tried, settled), slots in shared.items():
            for slot, best in self._in_full(tried, settled, slots).items():
                top = self._climbed(slot, order[slot], best)
                drivers = tuple(str(self.variables[i].key) for i in order[slot] if self._moves(slot, i))
                found[slot] = AtWorst(top.result, drivers, top.point)
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

    def _scattered(self) -> dict[int, list[Point]]:
        """For checks of which a search decides: corners strewn over all, each then moved by all that worsens it alone.

        Such checks have several hills, unless they are smooth.
        """
        stepped = {slot for slot, clause in self.checks.items() if not clause.smooth}
        found: dict[int, list[Point]] = {slot: [] for slot in stepped & hanging_on_search(self.plan)}
        self.joint = [step for step in ancestors(self.plan, found) if self.feeds.get(step.out)]
        for ends in strewn(len(self.variables), STREWN) if found else ():
            base = {each.slot: each.levels[end] for each, end in zip(self.variables, ends, strict=True)}
            told, worse = self._all_at(base, found), {slot: dict(base) for slot in found}
            for each in self.variables:
                other = {each.slot: each.levels[0] if base[each.slot] == each.levels[2] else each.levels[2]}
                for slot, moved in self._all_at(base | other, found).items():
                    if moved > told[slot]:
                        worse[slot] |= other
            for slot, point in worse.items():
                found[slot].append(point)
        return found

    def _all_at(self, point: Point, slots: Iterable[int]) -> dict[int, tuple[int, float]]:
        """How bad some checks are in one place."""
        values, halted = self.values.copy(), hindering(self.joint, self.halted, self.feeds)
        for where, level in point.items():
            values[where] = level
        run(self.joint, values, halted)
        return {slot: badness(halted.get(slot, values[slot]), self.checks[slot]) for slot in slots}

    def _effect(self, slot: int, i: int) -> tuple[int, float]:
        if (slot, i) not in self.effects:
            base = badness(self.halted.get(slot, self.values[slot]), self.checks[slot])
            moved = [badness(trial.result, self.checks[slot]) for trial in self.alone[slot][i]]
            ranks, ways = [abs(rank - base[0]) for rank, _ in moved], [abs(by - base[1]) for _, by in moved]
            self.effects[slot, i] = max(ranks), max(ways)
        return self.effects[slot, i]

    def _moves(self, slot: int, i: int) -> bool:
        return self._effect(slot, i) > (0, 0.0)

    def _ranked(self, slot: int) -> list[int]:
        """Variables by how far each alone moves the check, most first."""
        return sorted(self.alone[slot], key=lambda i: self._effect(slot, i), reverse=True)

    def _to_try(self, slot: int, ranked: Sequence[int]) -> tuple[Any, ...]:
        """What is tried in full, and what stays at its own worst."""
        clause, alone = self.checks[slot], self.alone[slot]
        most = IN_FULL_SMOOTH if clause.smooth else IN_FULL
        settled = tuple(
            (i, max(alone[i], key=lambda trial: badness(trial.result, clause)).level) for i in ranked[most:]
        )
        return tuple((i, _levels(alone[i], clause)) for i in sorted(ranked[:most])), settled

    def _in_full(self, tried: Any, settled: Any, slots: Sequence[int]) -> dict[int, Best]:
        start = self.values.copy()
        for i, level in settled:
            start[self.variables[i].slot] = level
        checks = {slot: self.checks[slot] for slot in slots}
        at = {self.variables[i].slot: level for i, level in settled}
        order = [(i, self.variables[i].slot, levels) for i, levels in tried]
        nest = Nest(self.plan, self.feeds, order, start, self.halted, checks)
        return {slot: best._replace(point=at | best.point) for slot, best in nest.walked().items()}

    def _climbed(self, slot: int, ranked: Sequence[int], best: Best) -> Best:
        steps = [step for step in ancestors(self.plan, [slot]) if self.feeds.get(step.out)]
        clear = hindering(steps, self.halted, self.feeds)
        variables = [self.variables[i] for i in ranked]
        climb = Climb(steps, self.values, clear, slot, self.checks[slot], variables)
        demand = self._demand(slot)
        if demand in self.tops:
            return max(best, climb.tried(self.tops[demand]), key=lambda top: top.badness)
        top = self._top(slot, ranked, climb, best)
        if demand is not None:
            self.tops[demand] = top.point
        return top

    def _demand(self, slot: int) -> int | None:
        """The one uncertain number that this check holds against a certain one: such checks are worst together."""
        varying = [arg for arg in self.args[slot] if self.feeds.get(arg)]
        results = [self.values[slot], *(trial.result for trials in self.alone[slot].values() for trial in trials)]
        if len(varying) != 1 or slot in self.halted or not all(isinstance(result, Strength) for result in results):
            return None
        same = self.values[slot].demand == self.values[varying[0]]

        return varying[0] if same and len({result.capacity for result in results}) == 1 else None

    def _top(self, slot: int, ranked: Sequence[int], climb: Climb, best: Best) -> Best:
        alone, clause = self.alone[slot], self.checks[slot]
        bent = [self.variables[i] for i in ranked if len(_levels(alone[i], clause)) > 2 or self.variables[i].unknown]
        stepped = isinstance(best.result, Strength) and not clause.smooth
        corners = self.corners.of(slot) if stepped else ()
        begins = sorted(map(climb.tried, self.scattered.get(slot, ())), key=lambda begin: begin.badness, reverse=True)
        others = [begin.point for begin in begins[:BEGINS]]
        return climb.worst(best, others, corners, bent[:IN_FULL])


def _levels(trials: list[Trial], clause: Clause) -> tuple[float, ...]:
    """Both ends; the middle too, unless alone it lies strictly between them."""
    low, middle, high = (badness(trial.result, clause) for trial in trials)
    between = low < middle < high or high < middle < low or clause.smooth and middle < max(low, high)
    levels = [trial.level for trial in (trials[::2] if between else trials)]
    return tuple(dict.fromkeys(levels))
