"""From one combination of uncertain entries, one at a time is moved until nothing gets worse."""

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from functools import partial
from itertools import combinations
from typing import Any, NamedTuple

from checklist_app.operations.check import Clause, Outcome, Strength, badness
from checklist_app.operations.graph import Stopped
from checklist_app.operations.loop import run
from checklist_app.operations.plan import Step, Variable

EIGHTHS = tuple(part / 8.0 for part in range(9))
STRIDES = (0.25, 0.0625, 0.015625, 0.00390625)
IN_PAIRS = 6
HALVINGS = 10
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
    is climbed anew; and the edge of the step is looked for, by one entry and by two at a time. Where an entry alone is
    worst between its ends, or nobody knows it, the climb goes inside the ranges too.
    """

    def __init__(
        self, steps: Sequence[Step], values: list[Any], halted: Mapping[int, Stopped], slot: int, clause: Clause,
        variables: Sequence[Variable],
    ) -> None:
        self.steps, self.values, self.halted = steps, values, halted
        self.slot, self.clause, self.variables = slot, clause, variables
        self.known: dict[tuple[float, ...], Best] = {}

    def worst(
        self, found: Best, others: Iterable[Point], corners: Iterable[Point], bent: Sequence[Variable]
    ) -> Best:
        """The worst from what was found, from its mirror image, from others, and from corners where other rules hold.

        A lift leans to one side as readily as to the other.

        Args:
            found: the worst so far.
            others: where else a hill may begin.
            corners: where the numbers that the check is made of are greatest and least.
            bent: entries that alone are worst between their ends, or best.
        """
        tops = [found, *(self.up(begin) for begin in (found.point, self._mirrored(found.point), *others))]
        if self.clause.smooth:
            return self._between(max(tops, key=_badness), bent)
        seen = {_rules(top) for top in tops}
        begins = [self.tried(corner) for corner in corners]
        for begin in begins:
            if _rules(begin) not in seen:
                tops.append(self.up(begin.point))
                seen |= {_rules(begin), _rules(tops[-1])}
        several = len(seen) > 1
        if several:
            tops += [edge for start in (*begins, *tops) for edge in self._edges(start)]
        if several or bent:
            inside = self.variables if several else bent
            tops += [self._inside(top, inside, in_pairs=several) for top in _one_each(tops)]
        return max(tops, key=_badness)

    def up(self, point: Point) -> Best:
        """The top of the hill that a point lies on, by the ends of the ranges."""
        return self._moved(self.tried(point), lambda now: to_ends(self.variables, now.point))

    def down(self, best: Best, strides: Iterable[float]) -> Best:
        """The least bad place near a point, by strides inside the ranges."""
        for stride in strides:
            other: Best | None = best
            while other is not None:
                best = other
                nearby = (self.tried(best.point | change) for change in self._by(stride, self.variables, False, best))
                other = next((place for place in nearby if place.badness < best.badness), None)
        return best

    def tried(self, point: Point) -> Best:
        """What one combination comes to; none is computed twice."""
        place = tuple([point.get(variable.slot, variable.levels[1]) for variable in self.variables])
        if place not in self.known:
            self.known[place] = self._computed(point)
        return self.known[place]._replace(point=point)

    def _computed(self, point: Point) -> Best:
        values, halted = self.values.copy(), dict(self.halted)
        for where, level in point.items():
            values[where] = level
        run(self.steps, values, halted)
        result = halted.get(self.slot, values[self.slot])
        return Best(badness(result, self.clause), result, point)

    def _inside(self, top: Best, variables: Sequence[Variable], in_pairs: bool) -> Best:
        for stride in STRIDES:
            top = self._moved(top, partial(self._by, stride, variables, in_pairs))
        return top

    def _between(self, top: Best, bent: Sequence[Variable]) -> Best:
        """From the worst at the ends a long stride inwards by each entry; where that is worse, finer ones."""
        inwards = self._moved(top, partial(self._by, STRIDES[0], self.variables, False))
        inside = [each for each in self.variables if inwards.point.get(each.slot, each.levels[1]) not in each.levels]

        return self._inside(inwards, [*inside, *(each for each in bent if each not in inside)], in_pairs=False)

    def _edges(self, start: Best) -> Iterator[Best]:
        """Where, with one entry moved towards an end, other rules begin to hold: just beyond that edge."""
        for variable in self.variables:
            for end in variable.levels[::2]:
                beyond = self.tried(start.point | {variable.slot: end})
                if _rules(beyond) != _rules(start):
                    yield self._edge(variable, start, beyond)

    def _edge(self, variable: Variable, start: Best, beyond: Best) -> Best:
        here, there = start.point.get(variable.slot, variable.levels[1]), beyond.point[variable.slot]
        for _ in range(HALVINGS):
            middle = self.tried(start.point | {variable.slot: (here + there) / 2.0})
            if _rules(middle) == _rules(start):
                here = (here + there) / 2.0
            else:
                beyond, there = middle, (here + there) / 2.0
        return beyond

    def _moved(self, best: Best, moves: Callable[[Best], Iterable[Point]]) -> Best:
        """Take every move that makes it worse, until none does."""
        better = True
        while better:
            better = False
            for change in moves(best):
                other = self.tried(best.point | change)
                if other.badness > best.badness:
                    best, better = other, True
        return best

    def _by(self, stride: float, variables: Sequence[Variable], in_pairs: bool, best: Best) -> Iterator[Point]:
        """One entry by a share of its range; two of those that matter most at once, each up or down."""
        steps = [_strides(variable, best.point, stride) for variable in variables]
        for one in steps:
            yield from one
        if in_pairs:
            for one, other in combinations(steps[:IN_PAIRS], 2):
                yield from (first | second for first in one for second in other)

    def _mirrored(self, point: Point) -> Point:
        levels = {variable.slot: variable.levels for variable in self.variables}
        return {where: levels[where][2 - levels[where].index(level)] for where, level in point.items()}


def _badness(top: Best) -> tuple[int, float]:
    return top.badness


def to_ends(variables: Iterable[Variable], point: Point) -> Iterator[Point]:
    """One entry to an end of its range; one that nobody knows also to places between."""
    for variable in variables:
        low, _nominal, high = variable.levels
        inside = [low + (high - low) * part for part in EIGHTHS[1:-1]] if variable.unknown else []
        for level in (low, high, *inside):
            if point.get(variable.slot) != level:
                yield {variable.slot: level}


def _strides(variable: Variable, point: Point, stride: float) -> list[Point]:
    low, nominal, high = variable.levels
    now, wide = point.get(variable.slot, nominal), (high - low) * stride
    return [{variable.slot: level} for level in (min(now + wide, high), max(now - wide, low)) if level != now]


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
