"""Where the uncertain entries of one task may lie: each place is worked out once, and only as far as somebody asks."""

from collections.abc import Iterable, Iterator, Mapping
from typing import Any

from checklist_app.operations.graph import Stopped
from checklist_app.operations.loop import hindering, run_one
from checklist_app.operations.plan import Plan, Step

UNSET: Any = object()
Levels = tuple[float, ...]


class Place:
    """A level for each uncertain entry, and what is known there so far."""

    __slots__ = ("halted", "levels", "values")

    def __init__(self, levels: Levels, values: list[Any], halted: dict[int, Stopped]) -> None:
        self.levels, self.values, self.halted = levels, values, halted


class Places:
    """The places of one task that were looked at; one that differs in few entries begins from its neighbour.

    `refused` holds a place for each slot that has a value at nominal and none there.
    """

    def __init__(
        self, plan: Plan, bits: Mapping[int, int], values: list[Any], halted: Mapping[int, Stopped],
        slots: Iterable[int],
    ) -> None:
        self.variables, self.bits = plan.variables, bits
        self.dividing = [
            plan.slots[key] for key, way in plan.quantities.items() if way.divides and bits.get(plan.slots[key])
        ]
        steps = [step for step in ancestors(plan, (*slots, *self.dividing)) if bits.get(step.out)]
        self.steps = {step.out: step for step in steps}
        self.varying = {step.out: tuple(arg for arg in step.args if arg in self.steps) for step in steps}
        self.behind = [[s.out for s in steps if bits[s.out] >> i & 1] for i in range(len(plan.variables))]
        self.ways: dict[int, list[Step]] = {}
        self.refused: dict[int, Place] = {}
        self.nominal_halted = halted
        start = values.copy()
        for step in steps:
            start[step.out] = UNSET
        self.nominal = Place(tuple([each.levels[1] for each in self.variables]), start, hindering(steps, halted, bits))
        self.known = {self.nominal.levels: self.nominal}

    def moved(self, place: Place, changes: Mapping[int, float]) -> Place:
        """The place with some entries, by their number, on other levels."""
        levels = list(place.levels)
        for i, level in changes.items():
            levels[i] = level
        key = tuple(levels)
        if key not in self.known:
            self.known[key] = self._new(key, place, changes)
        return self.known[key]

    def at(self, place: Place, slot: int) -> Any:
        """What a slot comes to there, or the `Stopped` that says why it has no value."""
        values, halted = place.values, place.halted
        if values[slot] is UNSET and slot not in halted:
            before = len(halted)
            self._work_out(slot, values, halted)
            if len(halted) > before:
                self._note(place)
        return halted[slot] if slot in halted else values[slot]

    def side(self, place: Place) -> tuple[Any, ...]:
        """On which side of the spread a place lies; None in it where that cannot be told."""
        told = [self.at(place, slot) for slot in self.dividing]
        return tuple(None if isinstance(each, Stopped) else each for each in told)

    def own(self, slot: int) -> tuple[int, ...]:
        """The numbers of the entries that a slot hangs on."""
        bits = self.bits[slot]
        return tuple(i for i in range(len(self.variables)) if bits >> i & 1)

    def refusing(self, slot: int) -> Iterator[Place]:
        """Places where something is refused that a slot hangs on."""
        way = {step.out for step in self._way(slot)}
        return (place for root, place in self.refused.items() if root in way)

    def _work_out(self, slot: int, values: list[Any], halted: dict[int, Stopped]) -> None:
        for arg in self.varying[slot]:
            if values[arg] is UNSET and arg not in halted:
                self._work_out(arg, values, halted)
        run_one(self.steps[slot], values, halted)

    def _note(self, place: Place) -> None:
        root = next((out for out in place.halted if out in self.steps and out not in self.nominal_halted), None)
        if root is not None:
            self.refused.setdefault(root, place)

    def _new(self, levels: Levels, near: Place, changes: Mapping[int, float]) -> Place:
        values, changed = near.values.copy(), 0
        for i, level in changes.items():
            changed |= 1 << i
            for out in self.behind[i]:
                values[out] = UNSET
            values[self.variables[i].slot] = level
        halted = {slot: why for slot, why in near.halted.items() if not self.bits.get(slot, 0) & changed}
        return Place(levels, values, halted)

    def _way(self, slot: int) -> list[Step]:
        if slot not in self.ways:
            wanted, way = {slot}, []
            for step in reversed(self.steps.values()):
                if step.out in wanted:
                    wanted.update(step.args)
                    way.append(step)
            self.ways[slot] = way[::-1]
        return self.ways[slot]


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
