"""A table and the shape of a task become a straight list of steps over numbered slots."""

from collections.abc import Callable, Mapping, Sequence
from operator import itemgetter
from typing import Any, NamedTuple

from checklist_app.operations.answered import plainly
from checklist_app.operations.graph import CannotAssess, DontKnow, Group, Known, Missing, NotUsed, Range, Stopped, Waits
from checklist_app.operations.quantity import ALL_CHECKS, SPREADS, Quantity
from checklist_app.operations.table import Table
from checklist_app.operations.task import Key, Task

ALL = "*"
NUMBERS = ("no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve")


class Step(NamedTuple):
    """One call. `tolerates`: slots that may have no value; `waits_for`: the arguments, and row counts where needed."""

    out: int
    run: Callable[..., Any]
    take: Callable[[list[Any]], tuple[Any, ...]]
    args: tuple[int, ...]
    tolerates: frozenset[int]
    waits_for: tuple[int, ...]
    tolerates_all: bool = False
    held: bool = False


class Variable(NamedTuple):
    """An entry that is not exactly known: where it goes in, the values tried, and whether nobody knows it."""

    key: Key
    slot: int
    levels: tuple[float, float, float]
    unknown: bool


class Plan:
    """The steps of one task, its start values, and what stands still from the start."""

    def __init__(self, table: Table, task: Task, with_spread: bool = True) -> None:
        self.table, self.task, self.with_spread = table, task, with_spread
        self.slots: dict[Key, int] = {}
        self.steps: list[Step] = []
        self.start: list[Any] = []
        self.stopped: dict[int, Stopped] = {}
        self.variables: list[Variable] = []
        self.unknown: dict[int, Key] = {}
        self.quantities: dict[Key, Quantity] = {}
        for name in table.home:
            if not any(way.afterwards for way in table.ways.get(name, ())):
                for row in self._rows_of(name):
                    self._one(Key(name, row))
        for group in table.groups:
            self._count(group)

    def rows(self, group: str) -> tuple[str, ...]:
        """Labels of the rows of a group, in order."""
        fixed = self.table.groups[group].fixed
        return tuple(str(each.value) for each in fixed) if fixed else self.task.rows.get(group, ())

    def add_afterwards(self, checks: Any, spreads: Mapping[str, Range]) -> list[Step]:
        """The steps of what needs the finished checks, and where the entries may lie."""
        before = len(self.steps)
        for name, known in ((ALL_CHECKS, checks), (SPREADS, spreads)):
            self.start[self._new(Key(name))] = known
        for name, ways in self.table.ways.items():
            if ways[0].afterwards:
                self._one(Key(name))
        return self.steps[before:]

    def _rows_of(self, name: str) -> Sequence[str | None]:
        home = self.table.home[name]
        return (None,) if home is None else self.rows(home)

    def _one(self, key: Key) -> int:
        if key not in self.slots:
            if key.name in self.table.entries:
                self._entry(key)
            else:
                self._computed(key)
        return self.slots[key]

    def _every(self, name: str, tolerant: bool, all_alike: bool) -> int:
        """The slot of the tuple of all rows; None stands in it only for a function that takes None."""
        group = self.table.home[name] or ""
        key = Key(name, ALL + "?" * tolerant + "?" * all_alike)
        if key in self.slots:
            return self.slots[key]
        parts = [self._one(Key(name, row)) for row in self.rows(group)]
        if key not in self.slots:
            waits_for = (*parts, self._count(group))
            self._step(key, together, parts, frozenset(parts) if tolerant else frozenset(), waits_for, all_alike)
        return self.slots[key]

    def _count(self, group: str) -> int:
        key = Key(f"rows of {group}", ALL)
        if key not in self.slots:
            slot, declared = self._new(key), self.table.groups[group]
            rows = self.start[slot] = self.rows(group)
            wanted = self._wanted(declared)
            if isinstance(wanted, Stopped):
                self.stopped[slot] = wanted
            elif len(rows) > wanted[1]:
                self.stopped[slot] = CannotAssess(f"{number(len(rows))} {declared.plural}")
            elif len(rows) < wanted[0]:
                self.stopped[slot] = Waits(Missing(f"{number(wanted[0])} {declared.plural}", declared.plural))
        return self.slots[key]

    def _wanted(self, group: Group) -> tuple[int, int] | Stopped:
        """How many rows there must be, least and most."""
        if group.rows_by is None:
            return group.at_least, group.at_most
        choice, wanted = group.rows_by
        slot = self._one(Key(choice))
        return self.stopped[slot] if slot in self.stopped else wanted[self.start[slot]]

    def _new(self, key: Key) -> int:
        self.slots[key] = len(self.start)
        self.start.append(None)
        return self.slots[key]

    def _entry(self, key: Key) -> None:
        entry = self.table.entries[key.name]
        answer = plainly(entry, self._given(key), key, self.with_spread)
        if isinstance(answer, DontKnow):
            self._unknown(key)
            return
        slot = self._new(key)
        if isinstance(answer, Stopped):
            self.stopped[slot] = answer
        elif isinstance(answer, Range):
            self.start[slot] = answer.nominal
            self.variables.append(Variable(key, slot, (answer.low, answer.nominal, answer.high), False))
        else:
            self.start[slot] = answer

    def _unknown(self, key: Key) -> None:
        worst = self.table.worst_cases.get(key.name)
        if worst is None:
            words = f"{words_of(self.table, key)} is not known, and no worst case is published for it"
            self.stopped[self._new(key)] = CannotAssess(words)
        elif worst.returns is not Range:
            self._call(key, worst, key.row)
        else:
            where = self._call(Key(worst.name, key.row), worst, key.row)
            part = self._new(Key(f"{key.name} between its ends", key.row))
            self.start[part] = 0.0
            self.variables.append(Variable(key, part, (-1.0, 0.0, 1.0), True))
            self._step(key, within, (where, part))
        self.unknown[self.slots[key]] = key

    def _computed(self, key: Key) -> None:
        ways = self.table.ways[key.name]
        row = None if ways[0].once else key.row
        slot = self._call(Key(key.name, ALL) if ways[0].once else key, self._way(ways, row), row)
        choice = Key(ways[0].choice or "", row if ways[0].choice and self.table.home[ways[0].choice] else None)
        if self._is_unknown(choice):
            self.unknown[slot] = choice
        if ways[0].once:
            self._share_out(key, ways[0], slot)

    def _share_out(self, key: Key, way: Quantity, all_rows: int) -> None:
        for index, row in enumerate(self.rows(way.group or "")):
            self._step(Key(key.name, row), itemgetter(index), (all_rows,))
            self.quantities[Key(key.name, row)] = way

    def _is_unknown(self, key: Key) -> bool:
        return key.name in self.table.entries and isinstance(self._given(key), DontKnow)

    def _given(self, key: Key) -> Any:
        return self.task.answers.get(key, self.table.entries[key.name].default)

    def _way(self, ways: Sequence[Quantity], row: str | None) -> Quantity | Stopped:
        choice = ways[0].choice
        if choice is None:
            return ways[0]

        key = Key(choice, row if self.table.home[choice] else None)
        slot = self._one(key)
        if ways[0].on_known:
            if isinstance(self._given(key), DontKnow | NotUsed):
                return next(way for way in ways if Known.NO in way.members)
            if slot in self.stopped:
                return self.stopped[slot]
            return next(way for way in ways if Known.YES in way.members)
        if slot in self.stopped:
            return self.stopped[slot]
        return next(way for way in ways if self.start[slot] in way.members)

    def _call(self, key: Key, way: Quantity | Stopped, row: str | None) -> int:
        if isinstance(way, Stopped):
            self.stopped[self._new(key)] = way
            return self.slots[key]

        self.quantities[key] = way
        args = [self._argument(way, need, row) for need in way.needs]
        counted = [way.group] if way.once and way.group else []
        counted += [group for need in way.needs if (group := self._seen_whole(way, need))]
        counts = [] if way.is_picture else [self._count(group) for group in counted]
        tolerates = frozenset(arg for arg, need in zip(args, way.needs, strict=True) if need in way.takes_none)
        return self._step(key, way.run, args, tolerates, (*args, *counts), way.is_picture, way.held)

    def _seen_whole(self, way: Quantity, need: str) -> str | None:
        if need in (ALL_CHECKS, SPREADS) or not self.table.many(way, need):
            return None
        return need if need in self.table.groups else self.table.home[need]

    def _argument(self, way: Quantity, need: str, row: str | None) -> int:
        if need in (ALL_CHECKS, SPREADS):
            return self.slots[Key(need)]
        many = self.table.many(way, need)
        if need in self.table.groups:
            return self._count(need) if many else self._row_itself(need, row)
        if many:
            tolerant = need in way.takes_none
            return self._every(need, tolerant, tolerant and way.is_picture)
        return self._one(Key(need, row if self.table.home[need] else None))

    def _row_itself(self, group: str, row: str | None) -> int:
        key = Key(group, row)
        if key not in self.slots:
            fixed = self.table.groups[group].fixed
            self.start[self._new(key)] = fixed(row) if fixed else row
        return self.slots[key]

    def _step(
        self, key: Key, run: Callable[..., Any], args: Sequence[int], tolerates: frozenset[int] = frozenset(),
        waits_for: Sequence[int] = (), tolerates_all: bool = False, held: bool = False,
    ) -> int:
        waited = tuple(waits_for or args)
        self.steps.append(Step(self._new(key), run, _taker(args), tuple(args), tolerates, waited, tolerates_all, held))
        return self.slots[key]


def words_of(table: Table, key: Key) -> str:
    """An entry in words, with the label of its row."""
    return table.entries[key.name].words + key.behind


def number(count: int) -> str:
    """A small number as a word."""
    return NUMBERS[count] if count < len(NUMBERS) else str(count)


def together(*values: Any) -> tuple[Any, ...]:
    """One value per row, side by side."""
    return values


def within(where: Range, part: float) -> float:
    """A place in a range: −1 is its low end, 0 its nominal value, 1 its high end."""
    if part < 0.0:
        return where.nominal + part * (where.nominal - where.low)
    return where.nominal + part * (where.high - where.nominal)


def _taker(args: Sequence[int]) -> Callable[[list[Any]], tuple[Any, ...]]:
    if len(args) >= 2:
        return itemgetter(*args)
    if args:
        (only,) = args
        return lambda values: (values[only],)
    return lambda values: ()
