"""From one combination of uncertain entries, one at a time is moved until nothing gets worse."""

from collections.abc import Iterable, Mapping, Sequence
from typing import Any, NamedTuple

from checklist_app.operations.check import Clause, Outcome, Strength, badness
from checklist_app.operations.graph import Stopped
from checklist_app.operations.loop import run
from checklist_app.operations.plan import Step, Variable

EIGHTHS = tuple(part / 8.0 for part in range(9))
NEARER = (0.0625, 0.03125, 0.015625, 0.0078125, 0.00390625)
Result = Outcome | Stopped
Point = dict[int, float]


class Best(NamedTuple):
    """The worst found so far, and where."""

    badness: tuple[int, float]
    result: Result
    point: Point


class Climb:
    """The climbs of one check.

    A rating that goes down in steps makes several hills: from a corner where another step or another verdict holds, it
    is climbed anew; and then entries are moved inside their ranges too, up to the edge of a step. The same for an entry
    that nobody knows: its range is so wide that the worst may lie inside.
    """

    def __init__(
        self, steps: Sequence[Step], values: list[Any], halted: Mapping[int, Stopped], slot: int, clause: Clause,
        variables: Sequence[Variable],
    ) -> None:
        self.steps, self.values, self.halted = steps, values, halted
        self.slot, self.clause, self.variables = slot, clause, variables

    def worst(self, found: Best, corners: Iterable[Point]) -> Result:
        """The worst from what was found, from its mirror image, and from corners where other rules hold.

        A lift leans to one side as readily as to the other.
        """
        tops = [found, *(self.up(begin) for begin in (found.point, self._mirrored(found.point)))]
        seen = {_rules(top) for top in tops}
        for corner in corners:
            begin = self.tried(corner)
            if _rules(begin) not in seen:
                tops.append(self.up(corner))
                seen |= {_rules(begin), _rules(tops[-1])}
        if len(seen) > 1:
            tops += [self.up(top.point, inside=True) for top in _one_each(tops)]
        return max(tops, key=lambda top: top.badness).result

    def up(self, point: Point, inside: bool = False) -> Best:
        """The top of the hill that a point lies on."""
        best, better = self.tried(point), True
        while better:
            better = False
            for variable in self.variables:
                now = best.point.get(variable.slot, variable.levels[1])
                for level in _moves(variable, now, inside or variable.unknown):
                    other = self.tried(best.point | {variable.slot: level})
                    if other.badness > best.badness:
                        best, better = other, True
        return best

    def tried(self, point: Point) -> Best:
        """What one combination comes to."""
        values, halted = self.values.copy(), dict(self.halted)
        for where, level in point.items():
            values[where] = level
        run(self.steps, values, halted)
        result = halted.get(self.slot, values[self.slot])
        return Best(badness(result, self.clause), result, point)

    def _mirrored(self, point: Point) -> Point:
        levels = {variable.slot: variable.levels for variable in self.variables}
        return {where: levels[where][2 - levels[where].index(level)] for where, level in point.items()}


def _rules(best: Best) -> tuple[Any, ...]:
    """What holds at a point: the verdict's rank where there are no numbers, the step of a rating."""
    if isinstance(best.result, Strength):
        return "strength", best.result.capacity
    return type(best.result).__name__, best.badness[0] if isinstance(best.result, Stopped) else 0


def _one_each(tops: Iterable[Best]) -> list[Best]:
    """The worst under each of the rules."""
    kept: dict[tuple[Any, ...], Best] = {}
    for top in tops:
        if _rules(top) not in kept or top.badness > kept[_rules(top)].badness:
            kept[_rules(top)] = top
    return list(kept.values())


def _moves(variable: Variable, now: float, inside: bool) -> list[float]:
    """Where an entry may be moved from where it is: to its ends, or inside its range too."""
    low, _nominal, high = variable.levels
    wide = high - low
    if not inside:
        return [level for level in (low, high) if level != now]

    near = [now + side * wide * step for step in NEARER for side in (1.0, -1.0)]
    return [low, high, *(low + wide * part for part in EIGHTHS[1:-1]), *(at for at in near if low <= at <= high)]
