"""The worst of each check over what is not exactly known.

One entry at a time first, then corners strewn evenly over all: they tell which end of each entry is worse, and how much
entries work on each other. From there each check is climbed, one entry at a time, until nothing gets worse; where
entries work on each other, from the mirror image and from the worst corners too. Where the load hangs otherwise from
corner to corner, since other legs are tight, the spread has sides: each is climbed from its worst corner, and the
edges between them are crossed by two entries at once. A place is worked out once for all checks, and each looks at
where the others came to.
"""

from collections.abc import Mapping, Sequence
from typing import Any, NamedTuple

from checklist_app.operations import climb
from checklist_app.operations.aim import ROUGH, VERY_ROUGH, Aim, Badness, number_of
from checklist_app.operations.check import Clause, Outcome, Strength, badness
from checklist_app.operations.graph import CannotAssess, Stopped
from checklist_app.operations.places import Place, Places, feeds
from checklist_app.operations.plan import Plan
from checklist_app.operations.quicker import never, nothing_collected, remembering
from checklist_app.operations.rated import Steps
from checklist_app.operations.reach import Part, Reach
from checklist_app.operations.strewn import corners

BENT = 6
BEGINS, MORE_BEGINS = 1, 3
SMOOTH = 0.01
Result = Outcome | Stopped


class AtWorst(NamedTuple):
    """The worst of one check: what it comes to, the entries that move it, most first, and where it was found."""

    result: Result
    drivers: tuple[str, ...]
    point: dict[int, float]


Worst = dict[int, AtWorst]


def worst(plan: Plan, values: list[Any], halted: dict[int, Stopped], checks: Mapping[int, Clause]) -> Worst:
    """The worst of each check that hangs on an uncertain entry.

    Args:
        plan: the steps of the task.
        values: every slot at its nominal value.
        halted: why other slots have none.
        checks: clauses of the checks that have a result, by slot.
    """
    bits = feeds(plan)
    idle = never(plan, halted, bits)
    moved = {slot: clause for slot, clause in checks.items() if bits.get(slot) and slot not in idle}
    if not moved:
        return {}
    with nothing_collected():
        return Search(Places(remembering(plan), bits, values, halted, moved), values, moved).found()


class Search:
    """One search over the uncertain entries of one task."""

    def __init__(self, places: Places, values: Sequence[Any], checks: Mapping[int, Clause]) -> None:
        self.places, self.checks = places, checks
        self.variables, nominal = places.variables, places.nominal
        self.alone = [
            (places.moved(nominal, {i: each.levels[0]}), places.moved(nominal, {i: each.levels[2]}))
            for i, each in enumerate(self.variables)
        ]
        self.strewn = [
            places.moved(nominal, {i: self.variables[i].levels[end] for i, end in enumerate(corner)})
            for corner in corners(len(self.variables))
        ]
        self.reach = Reach(places, values, self.alone, self.strewn)
        self.divided = len({places.side(place) for place in self.strewn}) > 1
        self.leaders: list[Aim] = []
        self.tops: list[Place] = []

    def found(self) -> Worst:
        """Climb for each check, then let each look at where the others came to."""
        aims = [self._aim(slot, clause) for slot, clause in self.checks.items()]
        for aim in aims:
            self._climb(aim)
        reached = [top for leader in self.leaders for top in leader.tops]
        for leader in self.leaders:
            self._climb_on(leader, reached)
        at = {aim.slot: self._worst(aim) for aim in aims}
        for aim in aims:
            at[aim.slot] = max([at[aim.slot], *self.places.refusing(aim.slot)], key=aim.at)
        return {aim.slot: self._told(aim, at[aim.slot]) for aim in aims}

    def _aim(self, slot: int, clause: Clause) -> Aim:
        def told(result: Result) -> Badness:
            return badness(result, clause)

        return Aim(self.places, slot, told, number_of).learn(self.alone, self.strewn)

    def _climb(self, aim: Aim) -> None:
        leader = next((other for other in self.leaders if aim.alike(other)), None)
        if leader is not None:
            aim.tops = leader.tops
            return
        entries = aim.ranked if aim.rough > ROUGH else aim.unclear
        first = climb.up(aim, max([*aim.begins, *self.tops], key=aim.at), entries)
        begins = self._other_begins(aim, first) if self._hilly(aim) else ()
        aim.tops = [first, *(climb.up(aim, begin, aim.ranked, first) for begin in begins)]
        if self.divided and len(aim.own) > 1:
            aim.tops.append(climb.over(aim, max(aim.tops, key=aim.at)))
        self.leaders.append(aim)
        self.tops.append(max(aim.tops, key=aim.at))

    def _hilly(self, aim: Aim) -> bool:
        """Whether it may have several hills."""
        return len(aim.own) > 1 and aim.rough > (SMOOTH if self.divided else ROUGH)

    def _other_begins(self, aim: Aim, first: Place) -> Sequence[Place]:
        """The worst corner on each side of the spread; without sides, the mirror image and the worst corners."""
        worst = sorted(self.strewn, key=aim.at, reverse=True)
        if not self.divided:
            count = MORE_BEGINS if aim.rough > VERY_ROUGH else BEGINS
            return climb.other_end(aim, first, *aim.own), *worst[:count]
        sides: dict[Any, Place] = {}
        for place in worst:
            sides.setdefault(self.places.side(place), place)
        return tuple(sides.values())

    def _climb_on(self, aim: Aim, reached: Sequence[Place]) -> None:
        """From where the others came to, if it is worse or another hill."""
        begins = sorted((place for place in reached if place not in aim.tops), key=aim.at, reverse=True)[:1]
        if self._hilly(aim):
            best = max(aim.tops, key=aim.at)
            aim.tops += [climb.up(aim, begin, aim.ranked, best) for begin in begins]

    def _worst(self, aim: Aim) -> Place:
        best = max([*aim.tops, *aim.begins, *self.tops], key=aim.at)
        if best not in aim.tops:
            best = climb.up(aim, best, aim.ranked)
        nominal = self.places.at(self.places.nominal, aim.slot)
        smooth = self.checks[aim.slot].smooth
        if isinstance(nominal, Strength) and len(self.reach.args[aim.slot]) > 1 and not smooth:
            best = self._rated(aim, best)
        bent = aim.ranked if smooth else tuple(i for i in aim.ranked if aim.bent(i))[:BENT]
        return climb.inside(aim, best, bent) if bent else best

    def _rated(self, aim: Aim, best: Place) -> Place:
        """A rating may go down in steps."""
        parts = self.reach.parts(aim.slot)
        best = max([best, *(climb.up(aim, place, aim.ranked) for place in self._by_rule(aim, best, parts))], key=aim.at)
        if parts and not isinstance(self.places.at(best, aim.slot), CannotAssess):
            best = max([best, *Steps(aim, self.alone, self.strewn).edges(best, parts, self.reach)], key=aim.at)
        return best

    def _by_rule(self, aim: Aim, best: Place, parts: Sequence[Part]) -> list[Place]:
        """The worst place known under each other step of the rating, and under each other verdict without numbers."""
        places = [best, *aim.begins, *aim.tops, *self.tops, *(self.reach.furthest(part) for part in parts)]
        found: dict[Any, Place] = {}
        for place in sorted(places, key=aim.at, reverse=True):
            result = self.places.at(place, aim.slot)
            found.setdefault(result.capacity if isinstance(result, Strength) else type(result), place)
        return list(found.values())

    def _told(self, aim: Aim, place: Place) -> AtWorst:
        drivers = tuple(str(self.variables[i].key) for i in aim.ranked if aim.effect(i) > (0, 0.0))
        point = {self.variables[i].slot: place.levels[i] for i in aim.own}
        return AtWorst(self.places.at(place, aim.slot), drivers, point)
