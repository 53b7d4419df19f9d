"""From one place of the uncertain entries, one at a time is moved until nothing gets worse."""

from collections.abc import Iterator, Sequence

from checklist_app.operations.aim import Aim
from checklist_app.operations.places import Place
from checklist_app.operations.plan import Variable

EIGHTHS = tuple(part / 8.0 for part in range(9))
STRIDES = (0.25, 0.0625, 0.015625, 0.00390625)
FAR = float("inf")
WORTH, SHORT, STILL_TO_WIN = 0.01, 1.0 / 32.0, 0.25
Change = dict[int, float]


def up(aim: Aim, place: Place, entries: Sequence[int], beat: Place | None = None) -> Place:
    """The top of the hill that a place lies on, by the ends of the ranges.

    An entry is tried again only where what it would have lost is less than what others have won since: so much may
    their moves have changed it. Given a place to `beat`, a hill is left that stays far below it once every entry was
    tried.
    """
    best, won, again = place, 0.0, dict.fromkeys(entries, -1.0)
    while any(again[i] < won or again[i] < 0.0 for i in entries):
        if beat is not None and best is not place and _far_below(aim, best, beat, STILL_TO_WIN * won):
            break
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


def over(aim: Aim, place: Place) -> Place:
    """The top of the hills on both sides of an edge: two entries go to their other ends at once, one over, one back.

    An entry that leads over the edge would win something if the edge were not there: a short way shows how much. So
    much the other one may lose that leads back.
    """
    best = up(aim, place, aim.ranked)
    better: Place | None = best
    while better is not None:
        best = up(aim, better, aim.ranked)
        both = (other_end(aim, best, i, j) for i, j in _over_and_back(aim, best))
        better = next((other for other in both if aim.at(other) > aim.at(best)), None)
    return best


def _over_and_back(aim: Aim, place: Place) -> Iterator[tuple[int, int]]:
    lost = sorted((_lost(aim, place, other_end(aim, place, i)), i) for i in aim.own)
    won = sorted(((_promised(aim, place, i), i) for i in aim.own), reverse=True)
    for by, i in won:
        yield from ((i, j) for loss, j in lost if loss < by and j != i)
    little = WORTH * abs(aim.at(place)[1] - aim.nominal[1])
    for b, (more, j) in enumerate(lost):
        yield from ((i, j) for less, i in lost[:b] if less + more <= little)


def _promised(aim: Aim, place: Place, i: int) -> float:
    """What an entry that leads to another side would win at its other end if it stayed on this side."""
    here, side = aim.at(place), aim.places.side(place)
    other = other_end(aim, place, i)
    if aim.places.side(other) == side:
        return 0.0
    near = aim.places.moved(place, {i: place.levels[i] + (other.levels[i] - place.levels[i]) * SHORT})
    there = aim.at(near)
    return (there[1] - here[1]) / SHORT if there[0] == here[0] and aim.places.side(near) == side else 0.0


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


def _far_below(aim: Aim, here: Place, there: Place, by: float) -> bool:
    """Whether a place stays below another, won it so much more."""
    now, then = aim.at(here), aim.at(there)
    return now[0] < then[0] or (now[0] == then[0] and now[1] + by < then[1])


def _lost(aim: Aim, here: Place, there: Place) -> float:
    """How much less bad another place is; without bound where its verdict is better."""
    now, then = aim.at(here), aim.at(there)
    return now[1] - then[1] if now[0] == then[0] else FAR


def _ends(aim: Aim, place: Place, i: int) -> list[Place]:
    return [aim.places.moved(place, change) for change in to_ends(aim.places.variables[i], i, place)]


def _strides(aim: Aim, place: Place, stride: float, entries: Sequence[int]) -> Iterator[Change]:
    """One entry by a share of its range, up or down."""
    for i in entries:
        low, _nominal, high = aim.places.variables[i].levels
        now, wide = place.levels[i], (high - low) * stride
        yield from ({i: level} for level in (min(now + wide, high), max(now - wide, low)) if level != now)
