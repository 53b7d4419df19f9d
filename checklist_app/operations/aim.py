"""What is made as bad as it can be in the spread: a check, or a number that checks are made of."""

from collections.abc import Callable, Sequence
from math import fsum
from typing import Any

from checklist_app.operations.check import Limit, Strength
from checklist_app.operations.places import Place, Places
from checklist_app.operations.strewn import tendency

Badness = tuple[int, float]
Alone = Sequence[tuple[Place, Place]]
LEAST: Badness = (-1, 0.0)
SURE, LITTLE = 1.5, 0.003
ROUGH, VERY_ROUGH = 0.03, 0.25
ALIKE = 1e-9


class Aim:
    """One aim, and how the uncertain entries move it.

    `ranked` are the entries that it hangs on, those first that move it most, alone; `unclear` those of which it is not
    clear which end is worse; `rough` is how much entries work on each other, as a share of what they do: from `ROUGH`
    there may be several hills. `begins` are places to climb from, `tops` where climbs ended.
    """

    def __init__(
        self, places: Places, slot: int, told: Callable[[Any], Badness], number: Callable[[Any], float | None]
    ) -> None:
        self.places, self.slot, self._told, self._number = places, slot, told, number
        self.own = places.own(slot)
        self.known: dict[Place, Badness] = {}
        self.nominal = self.at(places.nominal)
        self.alone: dict[int, tuple[Place, Place]] = {}
        self.ranked: tuple[int, ...] = ()
        self.unclear: tuple[int, ...] = ()
        self.rough = float("inf")
        self.measures: list[float] = []
        self.begins: list[Place] = []
        self.tops: list[Place] = []

    def at(self, place: Place) -> Badness:
        """How bad it is in one place."""
        if place not in self.known:
            self.known[place] = self._told(self.places.at(place, self.slot))
        return self.known[place]

    def effect(self, i: int) -> Badness:
        """How far one entry moves it, alone: by verdict, and by number."""
        moved = [self.at(place) for place in self.alone[i]]
        return max(abs(rank - self.nominal[0]) for rank, _ in moved), max(abs(by - self.nominal[1]) for _, by in moved)

    def bent(self, i: int) -> bool:
        """Whether it may be worst with an entry between its ends."""
        low, high = (self.at(place) for place in self.alone[i])
        return self.places.variables[i].unknown or (self.nominal >= max(low, high) and self.nominal > min(low, high))

    def learn(self, alone: Alone, strewn: Sequence[Place]) -> "Aim":
        """What the entries do, from places with one of them moved and from corners strewn over all."""
        self.alone = {i: alone[i] for i in self.own}
        self.ranked = self.unclear = tuple(sorted(self.own, key=self.effect, reverse=True))
        ends = {i: max(self.alone[i], key=self.at).levels[i] for i in self.own}
        self.begins = [self.places.moved(self.places.nominal, ends), max(strewn, key=self.at)]
        self.begins += [place for i in self.own for place in self.alone[i]]
        measures = [self._measure(place) for place in (*strewn, *self.begins[2:], self.places.nominal)]
        if len(self.own) > 1 and all(measure is not None for measure in measures):
            self.measures = [measure for measure in measures if measure is not None]
            self._tend(self.measures[:len(strewn)], ends)
        return self

    def alike(self, other: "Aim") -> bool:
        """Whether both are worst in the same places, as far as was looked: one is the other times a number."""
        if not self.measures or self.own != other.own or not other.measures:
            return False
        return all(abs(a - b) <= ALIKE for a, b in zip(_shape(self.measures), _shape(other.measures), strict=True))

    def _measure(self, place: Place) -> float | None:
        return self._number(self.places.at(place, self.slot))

    def _tend(self, measures: Sequence[float], alone: dict[int, float]) -> None:
        variables, own = self.places.variables, self.own
        slopes, rest = tendency(measures, len(variables))
        total = fsum([abs(slopes[i]) for i in own])
        ends = {i: variables[i].levels[2 if slopes[i] > 0.0 else 0] for i in own if slopes[i] != 0.0}
        self.begins.append(self.places.moved(self.places.nominal, alone | ends))
        self.rough = rest / total if total > 0.0 else float("inf")
        if self.rough <= ROUGH:
            unclear = {i for i in own if variables[i].unknown or _unclear(abs(slopes[i]), rest, total)}
            self.unclear = tuple(i for i in self.ranked if i in unclear)


def number_of(told: Any) -> float | None:
    """How bad an outcome is as one number; None where there is none."""
    if isinstance(told, Strength):
        return told.demand / told.capacity if told.capacity > 0.0 else None
    return told.demand - told.capacity if isinstance(told, Limit) else None


def _shape(measures: Sequence[float]) -> list[float]:
    away = [measure - measures[-1] for measure in measures]
    furthest = max(abs(by) for by in away)
    return [by / furthest if furthest > 0.0 else 0.0 for by in away]


def _unclear(slope: float, rest: float, total: float) -> bool:
    """Whether what is left over may turn what an entry does, and that much matters."""
    return slope < SURE * rest and slope + SURE * rest > LITTLE * total
