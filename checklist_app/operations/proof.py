"""What is proved of a table at import; each refusal says what does not fit, and where."""

import itertools
import typing
from collections.abc import Iterable, Mapping
from enum import Enum
from typing import TYPE_CHECKING, Any

from checklist_app.operations.check import Check
from checklist_app.operations.graph import Known, Range
from checklist_app.operations.quantity import ALL_CHECKS, CHECK_KINDS, SPREADS, Quantity, TableError, plain

if TYPE_CHECKING:
    from checklist_app.operations.table import Table

Choice = tuple[str, bool]


def prove(table: "Table") -> None:
    """Raise `TableError` unless every wire, branch and check of the table fits, and nothing goes round in a circle."""
    for group in table.groups.values():
        if group.fixed is not None and group.entries:
            raise TableError(f"{group.name}: fixed rows have no entries")
        if group.rows_by is not None and {*group.rows_by[1]} != {*_answers(table, (group.rows_by[0], False))}:
            raise TableError(f"{group.name}: say for each answer to {group.rows_by[0]} how many rows there are")
    for quantity in table.all_ways():
        _prove_place(table, quantity)
        _prove_check(quantity)
        for need in quantity.needs:
            _prove_wire(table, quantity, need)
    for name, ways in table.ways.items():
        _prove_branches(table, name, ways)
    for entry, worst in table.worst_cases.items():
        _prove_worst_case(table, entry, worst)
    _prove_no_circle(table)


def _prove_place(table: "Table", quantity: Quantity) -> None:
    if quantity.group is not None and quantity.group not in table.groups:
        raise TableError(f"{quantity.name}: there is no group {quantity.group}")
    if quantity.returns is None:
        raise TableError(f"{quantity.name}: say what it returns (annotation)")
    if quantity.once != (typing.get_origin(quantity.returns) is tuple):
        raise TableError(f"{quantity.name}: @across returns a tuple, one value per row, and nothing else does")


def _prove_check(quantity: Quantity) -> None:
    inner = plain(quantity.returns)
    if hasattr(quantity.run, "clause") != quantity.is_check:
        raise TableError(f"{quantity.name}: a check has both @check and -> Strength, Limit or State")
    if not quantity.is_check and inner & {*CHECK_KINDS}:
        raise TableError(f"{quantity.name}: a check gives one Strength, Limit or State; use @each for rows")
    if quantity.is_check and (quantity.once or quantity.choice or quantity.stands_for or quantity.held):
        raise TableError(f"{quantity.name}: a check is no branch, worst case or row of @across, and is not @at_nominal")


def _prove_wire(table: "Table", quantity: Quantity, need: str) -> None:
    if need == ALL_CHECKS:
        return _prove_afterwards(quantity)
    if need == SPREADS:
        return _prove_spreads(quantity)
    if need not in table.home and need not in table.groups:
        raise TableError(f"{quantity.name} needs {need}, which is neither an entry nor a quantity")
    if need not in quantity.hints:
        raise TableError(f"{quantity.name}: say what {need} is (annotation)")
    hint = quantity.hints[need]
    if table.many(quantity, need) != (typing.get_origin(hint) is tuple):
        seen = "one value per row, a tuple" if table.many(quantity, need) else "one value"
        raise TableError(f"{quantity.name}: {need} is {seen}")
    asked, given = plain(hint), _given(table, need)
    if not asked >= given:
        raise TableError(f"{quantity.name}: {need} is {_names(given)}, not {_names(asked)}")
    if need in table.ways and any(way.afterwards for way in table.ways[need]) and not quantity.afterwards:
        raise TableError(f"{quantity.name}: {need} is there only after the checks; take `{ALL_CHECKS}` too")


def _prove_afterwards(quantity: Quantity) -> None:
    if quantity.hints.get(ALL_CHECKS) != tuple[Check, ...] or quantity.group or quantity.choice or quantity.is_check:
        raise TableError(f"{quantity.name}: `{ALL_CHECKS}: tuple[Check, ...]` is for a quantity of the task, no check")


def _prove_spreads(quantity: Quantity) -> None:
    if quantity.hints.get(SPREADS) != Mapping[str, Range] or not quantity.is_picture or not quantity.afterwards:
        raise TableError(f"{quantity.name}: `{SPREADS}: Mapping[str, Range]` is for a drawing that takes the checks")


def _given(table: "Table", name: str) -> set[Any]:
    """The types that come out under a name."""
    if name in table.groups:
        return {table.groups[name].fixed or str}
    if name in table.entries:
        return plain(table.entries[name].kind)

    found: set[Any] = set()
    for way in table.ways[name]:
        found |= plain(way.returns)
    return found


def _prove_branches(table: "Table", name: str, ways: tuple[Quantity, ...]) -> None:
    choice = ways[0].choice
    if choice is None:
        return
    alike = {(way.choice, way.group, way.once, way.on_known) for way in ways}
    if len(alike) > 1 or choice not in table.entries:
        raise TableError(f"{name}: its branches must hang on one entry, with rows alike")
    if table.home[choice] is not None and (table.home[choice] != ways[0].group or ways[0].once):
        raise TableError(f"{name}: {choice} is answered per row, so its branches need @each({table.home[choice]!r})")
    told = [member for way in ways for member in way.members]
    if len(told) != len(set(told)) or set(told) != set(_answers(table, (choice, ways[0].on_known))):
        raise TableError(f"{name}: each answer to {choice} needs exactly one branch")


def _answers(table: "Table", choice: Choice) -> type[Enum]:
    entry, on_known = choice
    if on_known:
        return Known
    kind = table.entries[entry].kind
    if not (isinstance(kind, type) and issubclass(kind, Enum)):
        raise TableError(f"{entry}: a branch hangs on a choice, or on whether the entry is known")

    return kind


def _prove_worst_case(table: "Table", entry: str, worst: Quantity) -> None:
    if entry not in table.entries:
        raise TableError(f"{worst.name} stands for {entry}, which is not an entry")
    if worst.group != table.home[entry] or worst.once or worst.choice:
        raise TableError(f"{worst.name}: the worst case of {entry} is found where {entry} is entered")
    if worst.returns is not Range and {worst.returns} != plain(table.entries[entry].kind):
        raise TableError(f"{worst.name}: it gives a Range or a value of {entry}")


def _prove_no_circle(table: "Table") -> None:
    """Lengths from the height in one branch and height from lengths in another is no circle."""
    knot = _knot(table)
    choices = sorted({(way.choice, way.on_known) for name in knot for way in _all_of(table, name) if way.choice})
    for answers in itertools.product(*(_answers(table, choice) for choice in choices)) if knot else ():
        found = _circle(table, dict(zip(choices, answers, strict=True)), knot)
        if found is not None:
            raise TableError("goes round in a circle: " + " → ".join(found))


def _knot(table: "Table") -> set[str]:
    """What is left when everything is taken away that needs nothing else, or that nothing else needs."""
    needs = {name: {need for way in _all_of(table, name) for need in _needs(way)} for name in table.home}
    left = set(needs)
    while True:
        needed = {need for name in left for need in needs[name]}
        inner = {name for name in left if name in needed and needs[name] & left}
        if inner == left:
            return left
        left = inner


def _all_of(table: "Table", name: str) -> tuple[Quantity, ...]:
    worst = table.worst_cases.get(name)

    return (*table.ways.get(name, ()), *((worst,) if worst else ()))


def _needs(way: Quantity) -> tuple[str, ...]:
    return *way.needs, *((way.choice,) if way.choice else ())


def _circle(table: "Table", answers: Mapping[Choice, Enum], among: set[str]) -> tuple[str, ...] | None:
    """A circle among the ways that these answers open; where nothing is answered every way is open."""
    done: set[str] = set()

    def visit(name: str, path: tuple[str, ...]) -> tuple[str, ...] | None:
        if name in path:
            return (*path[path.index(name):], name)
        if name in done or name not in among:
            return None
        for way in _open(table, name, answers):
            for need in _needs(way):
                found = visit(need, (*path, name))
                if found is not None:
                    return found
        done.add(name)
        return None

    return next((found for name in table.home if (found := visit(name, ())) is not None), None)


def _open(table: "Table", name: str, answers: Mapping[Choice, Enum]) -> Iterable[Quantity]:
    ways = table.ways.get(name, ())
    if name in table.worst_cases and answers.get((name, True)) is not Known.YES:
        ways = (*ways, table.worst_cases[name])
    for way in ways:
        choice = (way.choice or "", way.on_known)
        if way.choice is None or choice not in answers or answers[choice] in way.members:
            yield way


def _names(kinds: set[Any]) -> str:
    return " or ".join(sorted(getattr(kind, "__name__", str(kind)) for kind in kinds))
