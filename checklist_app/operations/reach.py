"""The numbers that checks are made of, and how far they may go: beyond a step of a rating another capacity holds."""

from collections.abc import Iterator, Sequence
from math import fsum
from typing import Any

from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.operations import climb
from checklist_app.operations.aim import LEAST, ROUGH, Aim, Alone, Badness
from checklist_app.operations.graph import Stopped
from checklist_app.operations.places import Place, Places

Part = tuple[int, int | None, float]
WIDER = 1.25


class Reach:
    """The numbers that the checks of one task are made of, and how far each goes; checks share them."""

    def __init__(
        self, places: Places, values: Sequence[Any], alone: Alone, strewn: Sequence[Place]
    ) -> None:
        self.places, self.values, self.alone, self.strewn = places, values, alone, strewn
        self.args = {out: tuple(dict.fromkeys(step.args)) for out, step in places.steps.items()}
        self.aims: dict[Part, Aim] = {}
        self.tops: dict[Part, Place] = {}
        self.bounds: dict[Part, float] = {}

    def parts(self, slot: int) -> list[Part]:
        """The numbers which, if they went as far as they may, would bring a check to another step of its rating."""
        parts = [part for arg in self.args[slot] if self.places.bits.get(arg) for part in self._parts(arg)]
        return [part for part in parts if self._may_change(slot, part)] if len(parts) > 2 else []

    def furthest(self, part: Part) -> Place:
        """Where a number is greatest, or least."""
        if part not in self.tops:
            aim = self.aim(part)
            begin = max([*aim.begins, *self.tops.values()], key=aim.at)
            self.tops[part] = climb.up(aim, begin, aim.ranked if aim.rough > ROUGH else aim.unclear)
        return self.tops[part]

    def aim(self, part: Part) -> Aim:
        """A number as an aim: to be as great as it can be, or as small."""
        if part not in self.aims:
            aim = Aim(self.places, part[0], lambda told: _far(told, part), lambda told: _number(told, part))
            self.aims[part] = aim.learn(self.alone, self.strewn)
        return self.aims[part]

    def _parts(self, arg: int) -> Iterator[Part]:
        value = self.values[arg]
        each = range(len(value)) if isinstance(value, tuple) else ()
        numbers = [None] if isinstance(value, float) else [k for k in each if isinstance(value[k], float)]
        return ((arg, k, side) for k in numbers for side in (1.0, -1.0))

    def _may_change(self, slot: int, part: Part) -> bool:
        step, nominal = self.places.steps[slot], self.places.nominal
        args = list(step.take(nominal.values))
        where, bound = step.args.index(part[0]), self._bound(part)
        args[where] = bound if part[1] is None else (*args[where][:part[1]], bound, *args[where][part[1] + 1:])
        try:
            return bool(step.run(*args).capacity != self.places.at(nominal, slot).capacity)
        except (Stopped, OutOfRangeError):
            return True

    def _bound(self, part: Part) -> float:
        """Further than the number is likely to go."""
        if part not in self.bounds:
            aim = self.aim(part)
            middle = aim.nominal[1]
            added = fsum([max(0.0, *(aim.at(place)[1] - middle for place in aim.alone[i])) for i in aim.own])
            far = max((aim.at(place)[1] - middle for place in self.strewn if aim.at(place)[0] == 0), default=0.0)
            self.bounds[part] = part[2] * (middle + WIDER * max(added, far))
        return self.bounds[part]


def _number(told: Any, part: Part) -> float | None:
    if isinstance(told, Stopped):
        return None
    number: float = told if part[1] is None else told[part[1]]
    return part[2] * number


def _far(told: Any, part: Part) -> Badness:
    number = _number(told, part)
    return LEAST if number is None else (0, number)
