"""The greatest push a load withstands, by the simplex method with bounds: six rows, the same steps on every machine.

One column is the push; pulls and blocks lie between 0 and their limit; what the floor gives has no limit, and its
columns are made when they are asked for. Every step of the climb is a balance of forces, and what is given back is
looked at once more: it refuses rather than tell of one that is none.
"""

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field

from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.lashing.foothold import FLOOR, PAD, PUSH, Column, Foothold, rows_alone

SOURCE = "STATICS_LASHED_BODY"
NO_LIMIT = float("inf")
NOTHING = 1e-11  # a level this small, in weights, is none
LEFT_OVER = 1e-8  # what may be left unbalanced at the end, in weights
NO_GAIN = 1e-9
PIVOT = 1e-9
SLACK = 1e-11  # how far a level may go below 0, in weights, for a steadier matrix
STEPS = 150

Floor = Callable[[Sequence[float]], tuple[float, Column]]


@dataclass(frozen=True)
class Greatest:
    """The push at its greatest, what each pull then is, and what carried."""

    push: float
    pulls: tuple[float, ...]
    carried: Foothold | None = field(default=None, compare=False, repr=False)


def greatest(
    given: Sequence[float], push: Column, pulls: Sequence[Column], limits: Sequence[float], floor: Floor,
    start: Foothold | None,
) -> Greatest | None:
    """Most push that pulls and floor can balance.

        greatest a with  a push + Σ t pull + Σ floor = given,  0 ≤ t ≤ limit

    Source:
        STATICS_LASHED_BODY: linear programming by the simplex method with bounded variables.

    Args:
        given: what must be balanced, three forces and three moments [weights, and times m].
        push: column of the push.
        pulls: columns of pulls and blocks.
        limits: the most that each gives [weights].
        floor: for the price of each row, how much the best column of the floor gains, and that column.
        start: columns of the floor that carry already; without, it begins from nothing.

    Returns:
        The push and the pulls; None where even without a push nothing balances.

    Raises:
        OutOfRangeError: If the push has no end, or the steps, begun anew from nothing, do not come to a balance.

    Example:
        >>> down, up, none = (-1.0, *[0.0] * 5), (1.0, *[0.0] * 5), [0.0] * 5
        >>> greatest((2.0, *none), up, [down], [5.0], lambda price: (-price[0], up), None)
        Greatest(push=7.0, pulls=(5.0,))
    """
    climb = _Climb(start or rows_alone(given), limits)
    choice = [(i, pull, limits[i]) for i, pull in enumerate(pulls) if limits[i] > 0.0]
    for _ in range(STEPS):
        price = climb.price()
        step = (PUSH, push, NO_LIMIT) if price is None else _best(climb, price, push, choice, floor)
        if step is not None:
            climb.enter(*step)
        elif climb.has_settled():
            found = _told(climb, given, push, pulls, limits)
            if found is not None:
                return found
            break
        elif not climb.drop_rounding():
            return None

    if start is not None:
        return greatest(given, push, pulls, limits, floor, None)
    raise OutOfRangeError("sharing between lashings and floor", "does not settle", "another arrangement", SOURCE)


class _Climb:
    """What carries now; `tops` are limits, `full` the pulls that stand at theirs without being reckoned with."""

    def __init__(self, start: Foothold, limits: Sequence[float]) -> None:
        self.names, self.columns = list(start.names), list(start.columns)
        self.levels, self.inverse = list(start.levels), start.inverse
        self.tops = [limits[name] if name >= 0 else NO_LIMIT for name in start.names]
        self.full = set(start.full)

    def missing(self) -> list[int]:
        """Rows that are not balanced yet."""
        return [i for i, name in enumerate(self.names) if name == PAD and self.levels[i] > NOTHING]

    def has_settled(self) -> bool:
        """Whether every row is balanced."""
        return not self.missing()

    def drop_rounding(self) -> bool:
        """Take what is no more than rounding as balanced; False where more is missing."""
        rows = self.missing()
        for i in rows:
            if self.levels[i] > LEFT_OVER:
                return False
            self.levels[i] = 0.0
        return True

    def price(self) -> list[float] | None:
        """What a unit of each row is worth; None where the push does not carry yet."""
        rows = self.missing() if PAD in self.names else ()
        if not rows:
            return self.inverse[self.names.index(PUSH)] if PUSH in self.names else None
        worth = [-value for value in self.inverse[rows[0]]]
        for i in rows[1:]:
            worth = [a - b for a, b in zip(worth, self.inverse[i], strict=True)]
        return worth

    def enter(self, name: int, column: Column, top: float) -> None:
        """A column comes up from 0, or down from its limit, until it or another one is stopped."""
        down = name in self.full
        a, b, c, d, e, f = column
        ways = [p * a + q * b + r * c + s * d + t * e + u * f for p, q, r, s, t, u in self.inverse]
        moves = [-way for way in ways] if down else ways
        step, out, at_top = self._stopped_by(moves, top)
        self.levels = [level - step * move for level, move in zip(self.levels, moves, strict=True)]
        if out < 0:
            (self.full.discard if down else self.full.add)(name)
            return
        if at_top and self.names[out] >= 0:
            self.full.add(self.names[out])
        self.full.discard(name)
        self._swap(out, ways)
        self.names[out], self.columns[out], self.tops[out] = name, column, top
        self.levels[out] = top - step if down else step

    def _stopped_by(self, moves: list[float], top: float) -> tuple[float, int, bool]:
        """Of those that stop it at about the same place the one that moves most: it leaves the steadiest matrix."""
        rooms = []
        near = top
        for i, move in enumerate(moves):
            if move > PIVOT:
                room = self.levels[i]
            elif move < -PIVOT:
                most = 0.0 if self.names[i] == PAD and self.levels[i] <= NOTHING else self.tops[i]
                if most == NO_LIMIT:
                    continue
                room, move = most - self.levels[i], -move
            else:
                continue
            room = room if room > 0.0 else 0.0
            rooms.append((room / move, move, i))
            if (room + SLACK) / move < near:
                near = (room + SLACK) / move
        if near == NO_LIMIT:
            raise OutOfRangeError("what the load withstands", "without end", "a load that can be pushed over", SOURCE)
        step, size, out = top, 0.0, -1
        for room, move, i in rooms:
            if room <= near and move > size:
                step, size, out = room, move, i
        return (step, out, moves[out] < 0.0) if step < top else (top, -1, False)

    def _swap(self, out: int, ways: list[float]) -> None:
        share = 1.0 / ways[out]
        a, b, c, d, e, f = lead = [value * share for value in self.inverse[out]]
        fresh = []
        for row, way in zip(self.inverse, ways, strict=True):
            if way != 0.0:
                p, q, r, s, t, u = row
                row = [p - way * a, q - way * b, r - way * c, s - way * d, t - way * e, u - way * f]
            fresh.append(row)
        fresh[out] = lead
        self.inverse = fresh


def _dot(a: Sequence[float], b: Sequence[float]) -> float:
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2] + a[3] * b[3] + a[4] * b[4] + a[5] * b[5]


def _best(
    climb: _Climb, price: Sequence[float], push: Column, choice: Sequence[tuple[int, Column, float]], floor: Floor
) -> tuple[int, Column, float] | None:
    """The column that gains most; None where none gains."""
    most: float = NO_GAIN
    best: tuple[int, Column, float] | None = None
    gain, column = floor(price)
    if gain > most:
        most, best = gain, (FLOOR, column, NO_LIMIT)
    names, full = climb.names, climb.full
    a, b, c, d, e, f = price
    for each in choice:
        p, q, r, s, t, u = each[1]
        gain = a * p + b * q + c * r + d * s + e * t + f * u
        if (gain > most and each[0] in full) or (gain < -most and each[0] not in full and each[0] not in names):
            most, best = abs(gain), each
    if PUSH not in names and -_dot(price, push) > most:
        best = (PUSH, push, NO_LIMIT)

    return best


def _told(
    climb: _Climb, given: Sequence[float], push: Column, pulls: Sequence[Column], limits: Sequence[float]
) -> Greatest | None:
    """The levels, if they are seen to balance what is given."""
    left = list(given)
    forces = [limits[i] if i in climb.full else 0.0 for i in range(len(pulls))]
    found = 0.0
    for name, column, level in zip(climb.names, climb.columns, climb.levels, strict=True):
        if name >= 0:
            forces[name] = level
        elif name == PUSH:
            found = level
        elif name == FLOOR:
            left = [a - level * b for a, b in zip(left, column, strict=True)]
    for force, column in ((found, push), *zip(forces, pulls, strict=True)):
        left = [a - force * b for a, b in zip(left, column, strict=True)]
    if not (max(abs(value) for value in left) <= LEFT_OVER and min(climb.levels) >= -LEFT_OVER):
        return None

    carried = Foothold(climb.names, climb.columns, climb.levels, climb.inverse, frozenset(climb.full))
    return Greatest(found, tuple(forces), carried)
