"""Where the numbers that a check is made of are greatest and least: there another step of a rating may hold."""

from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from checklist_app.operations.climb import Point, to_ends
from checklist_app.operations.graph import Stopped
from checklist_app.operations.loop import hindering, run
from checklist_app.operations.nest import ancestors
from checklist_app.operations.plan import Plan, Step

Part = tuple[int, int | None]
LEAST = float("-inf")


class Corners:
    """The corners of one task; checks made of the same numbers share them."""

    def __init__(
        self, plan: Plan, bits: Mapping[int, int], values: list[Any], halted: Mapping[int, Stopped]
    ) -> None:
        self.plan, self.bits, self.values = plan, bits, values
        self.halted = halted
        self.args = {step.out: step.args for step in plan.steps}
        self.known: dict[tuple[Part, float], Point] = {}

    def of(self, slot: int) -> Iterator[Point]:
        """The corners of one check; one that is made of a single number has none worth looking at."""
        parts = [part for arg in self.args[slot] if self.bits.get(arg) for part in self._parts(arg)]
        if len(parts) > 1:
            yield from (self._furthest(part, side) for part in parts for side in (1.0, -1.0))

    def _parts(self, arg: int) -> Iterator[Part]:
        value = self.values[arg]
        if isinstance(value, float):
            yield arg, None
        elif isinstance(value, tuple):
            yield from ((arg, index) for index, each in enumerate(value) if isinstance(each, float))

    def _furthest(self, part: Part, side: float) -> Point:
        """Entries moved one at a time until the number goes no further."""
        if (part, side) in self.known:
            return self.known[part, side]

        steps = [step for step in ancestors(self.plan, [part[0]]) if self.bits.get(step.out)]
        variables = [each for i, each in enumerate(self.plan.variables) if self.bits[part[0]] >> i & 1]
        clear = hindering(steps, self.halted, self.bits)
        point: Point = {}
        far, better = self._value(steps, clear, part, side, point), True
        while better:
            better = False
            for change in to_ends(variables, point):
                now = self._value(steps, clear, part, side, point | change)
                if now > far:
                    far, point, better = now, point | change, True
        self.known[part, side] = point
        return point

    def _value(
        self, steps: Sequence[Step], clear: Mapping[int, Stopped], part: Part, side: float, point: Point
    ) -> float:
        values, halted = self.values.copy(), dict(clear)
        for where, level in point.items():
            values[where] = level
        run(steps, values, halted)
        slot, index = part
        if slot in halted:
            return LEAST

        value: float = values[slot] if index is None else values[slot][index]
        return side * value
