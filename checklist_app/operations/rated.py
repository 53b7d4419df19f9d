"""Where a rating goes down in steps, a check is worst at the top of a hill or just beyond the edge of a step.

From the place of the greatest demand those entries are moved first by which least of it is lost on the way to the
edge. Then, along the edge, one entry goes to its other end and the one that lies between its ends follows.
"""

from collections.abc import Sequence
from typing import Any

from checklist_app.operations import climb
from checklist_app.operations.aim import LEAST, ROUGH, Aim, Alone, Badness
from checklist_app.operations.check import Strength
from checklist_app.operations.places import Place
from checklist_app.operations.reach import Part, Reach

HALVINGS, EXCHANGES, FAILURES = 10, 20, 5
WORTH_IT = 1e-4


class Steps:
    """The steps of the rating of one check."""

    def __init__(self, aim: Aim, alone: Alone, strewn: Sequence[Place]) -> None:
        self.aim, self.places = aim, aim.places
        self.demand = Aim(aim.places, aim.slot, _demand, _number).learn(alone, strewn)

    def edges(self, best: Place, parts: Sequence[Part], reach: Reach) -> list[Place]:
        """The worst places found just beyond an edge."""
        entries = self.demand.ranked if self.demand.rough > ROUGH else self.demand.unclear
        top = climb.up(self.demand, max([best, *self.demand.begins], key=self.demand.at), entries)
        found = [top]
        for towards in self._lower(top):
            for part in parts:
                edge = self._edge(top, towards, reach.aim(part))
                if edge is not None:
                    found += [edge, self._exchanged(edge, reach.aim(part))]
        return found

    def _lower(self, top: Place) -> list[Place]:
        """The worst place known under each lower rating than the one that holds where the demand is greatest."""
        found: dict[float, Place] = {}
        for place in sorted(self.aim.known, key=self.aim.at, reverse=True):
            rating = self._rating(place)
            if rating is not None and rating < (self._rating(top) or 0.0):
                found.setdefault(rating, place)
        return list(found.values())

    def _edge(self, top: Place, towards: Place, number: Aim) -> Place | None:
        begun, most, order = number.at(top)[1], self.demand.at(top)[1], []
        side = 1.0 if number.at(towards)[1] > begun else -1.0
        for i in self.aim.own:
            if top.levels[i] != towards.levels[i]:
                other = self.places.moved(top, {i: towards.levels[i]})
                nearer, lost = side * (number.at(other)[1] - begun), most - self.demand.at(other)[1]
                order.append((lost / nearer if nearer > 0.0 else climb.FAR, i))
        here, rating = top, self._rating(towards)
        for _, i in sorted(order):
            beyond = self.places.moved(here, {i: towards.levels[i]})
            if self._rating(beyond) == rating:
                return self._halved(here, beyond, i)
            here = beyond
        return None

    def _halved(self, here: Place, beyond: Place, i: int) -> Place:
        """Between two places that differ in one entry, the one just beyond the edge."""
        near, far, rating = here.levels[i], beyond.levels[i], self._rating(beyond)
        for _ in range(HALVINGS):
            middle = (near + far) / 2.0
            place = self.places.moved(here, {i: middle})
            if self._rating(place) == rating:
                beyond, far = place, middle
            else:
                near = middle
        return beyond

    def _exchanged(self, best: Place, number: Aim) -> Place:
        failed: set[int] = set()
        for _ in range(EXCHANGES):
            free = next((i for i in self.aim.own if best.levels[i] not in self.places.variables[i].levels[::2]), None)
            promising = None if free is None else self._promising(best, number, free, failed)
            if free is None:
                return climb.up(self.aim, best, self.aim.ranked)
            if promising is None:
                break
            other = self._followed(best, promising, free)
            if other is not None and self.aim.at(other) > self.aim.at(best):
                best, failed = other, set()
            else:
                failed.add(promising)
        return best

    def _promising(self, here: Place, number: Aim, free: int, failed: set[int]) -> int | None:
        """The entry by whose other end most demand is won, at the price that the free one pays for staying beyond."""
        now, level = here.levels[free], self.places.variables[free].levels
        ends = [self.places.moved(here, {free: now + (end - now) / 4.0}) for end in level[::2]]
        deep = next((place for place in ends if self._rating(place) == self._rating(here)), None)
        most, at = self.demand.at(here)[1], number.at(here)[1]
        if deep is None or number.at(deep)[1] == at or len(failed) > FAILURES:
            return None
        price = (most - self.demand.at(deep)[1]) / (number.at(deep)[1] - at)
        won = {
            i: self.demand.at(other)[1] - most + price * (number.at(other)[1] - at)
            for i in self.aim.own if i != free and i not in failed and (other := climb.other_end(self.aim, here, i))
        }
        best = max(won, key=lambda i: won[i], default=None)
        return best if best is not None and won[best] > WORTH_IT * most else None

    def _followed(self, here: Place, i: int, free: int) -> Place | None:
        moved = climb.other_end(self.aim, here, i)
        low, high = [self.places.moved(moved, {free: level}) for level in self.places.variables[free].levels[::2]]
        beyond = [place for place in (low, high) if self._rating(place) == self._rating(here)]
        if len(beyond) != 1:
            return max(beyond, key=self.aim.at, default=None)
        return self._halved(high if beyond[0] is low else low, beyond[0], free)

    def _rating(self, place: Place) -> float | None:
        told = self.places.at(place, self.aim.slot)
        return told.capacity if isinstance(told, Strength) else None


def _demand(told: Any) -> Badness:
    return (0, told.demand) if isinstance(told, Strength) else LEAST


def _number(told: Any) -> float | None:
    return told.demand if isinstance(told, Strength) else None
