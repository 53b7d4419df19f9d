"""From one place of the uncertain entries, one at a time is moved until nothing gets worse."""

from collections.abc import Iterator, Sequence

from checklist_app.operations.aim import Aim
from checklist_app.operations.places import Place
from checklist_app.operations.plan import Variable

EIGHTHS = tuple(part / 8.0 for part in range(9))
STRIDES = (0.25, 0.0625, 0.015625, 0.00390625)
FAR = float("inf")
Change = dict[int, float]


def up(aim: Aim, place: Place, entries: Sequence[int]) -> Place:
    """The top of the hill that a place lies on, by the ends of the ranges.

    An entry is tried again only where what it would have lost is less than what others have won since: so much may
    their moves have changed it.
    """
    best, won, again = place, 0.0, dict.fromkeys(entries, -1.0)
    while any(again[i] < won or again[i] < 0.0 for i in entries):
        for i in entries:
            if again[i] >= max(won, 0.0):
                continue
            other = max(_ends(aim, best, i), key=aim.at)
            here, there = aim.at(best), aim.at(other)
            by = abs(there[1] - here[1])
            if there > here:
                best, won = other, won + by
                again = dict.fromkeys(entries, -1.0) if there[0] != here[0] else again
            again[i] = won + by
    return best


def down(aim: Aim, place: Place, entries: Sequence[int]) -> Place:
    """The least bad place near a place, by strides inside the ranges."""
    for stride in STRIDES:
        other: Place | None = place
        while other is not None:
            place = other
            nearby = (aim.places.moved(place, change) for change in _strides(aim, place, stride, entries))
            other = next((each for each in nearby if aim.at(each) < aim.at(place)), None)
    return place


def inside(aim: Aim, place: Place, entries: Sequence[int]) -> Place:
    """The worst place near a place, by strides inside the ranges; small strides only where a large one helped."""
    best = place
    for stride in STRIDES:
        better = True
        while better:
            better = False
            for change in _strides(aim, best, stride, entries):
                other = aim.places.moved(best, change)
                if aim.at(other) > aim.at(best):
                    best, better = other, True
        if best is place and not any(aim.places.variables[i].unknown for i in entries):
            break
    return best


def to_ends(variable: Variable, i: int, place: Place) -> Iterator[Change]:
    """One entry to an end of its range; one that nobody knows also to places between."""
    low, _nominal, high = variable.levels
    between = [low + (high - low) * part for part in EIGHTHS[1:-1]] if variable.unknown else []
    for level in (low, high, *between):
        if place.levels[i] != level:
            yield {i: level}


def other_end(aim: Aim, place: Place, *entries: int) -> Place:
    """The place with some entries at their other ends."""
    changes = {}
    for i in entries:
        low, _nominal, high = aim.places.variables[i].levels
        changes[i] = low if place.levels[i] == high else high
    return aim.places.moved(place, changes)


def _ends(aim: Aim, place: Place, i: int) -> list[Place]:
    return [aim.places.moved(place, change) for change in to_ends(aim.places.variables[i], i, place)]


def _strides(aim: Aim, place: Place, stride: float, entries: Sequence[int]) -> Iterator[Change]:
    """One entry by a share of its range, up or down."""
    for i in entries:
        low, _nominal, high = aim.places.variables[i].levels
        now, wide = place.levels[i], (high - low) * stride
        yield from ({i: level} for level in (min(now + wide, high), max(now - wide, low)) if level != now)
