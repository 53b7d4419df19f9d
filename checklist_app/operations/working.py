"""The working behind a check or a quantity: the functions that computed it, run again with numbers that remember."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Any

from checklist_app.operations.check import Limit, Strength
from checklist_app.operations.evaluate import Evaluation
from checklist_app.operations.gear import Gear
from checklist_app.operations.graph import Stopped
from checklist_app.operations.plan import ALL, Step
from checklist_app.operations.task import Key, key_of
from checklist_app.operations.traced import FIGURES, Traced, digits, result, traced

UNITS = {
    "kn": "kN", "t": "t", "kg": "kg", "dan": "daN", "m": "m", "mm": "mm", "deg": "°", "s": "s", "m2": "m²", "pa": "Pa",
    "nm": "N·m", "knm": "kN·m",
}
OF_TWO = {("kg", "m"): "kg/m", ("m", "s"): "m/s", ("m", "s2"): "m/s²"}


@dataclass(frozen=True)
class Line:
    """One line a pencil can follow: what it gives, in words, in figures, and the result."""

    name: str
    words: str
    figures: str
    result: str
    unit: str = ""

    @property
    def text(self) -> str:
        """The line as it is printed; `words = figures = result`, each left out where it says the same again."""
        gap = "" if self.unit in ("", "°") else "\u00a0"
        parts = dict.fromkeys((self.words, self.figures, self.result))
        return " = ".join((self.name, *parts)) + gap + self.unit


def working(ev: Evaluation, name: str) -> list[Line]:
    """Every line of arithmetic behind one quantity or check at its nominal, in the order it is done."""
    if name not in ev.told:
        ev.told[name] = tuple(Working(ev).lines_of(key_of(name)))

    return [*ev.told[name]]


class Working:
    """One telling of an evaluation."""

    def __init__(self, ev: Evaluation) -> None:
        self.ev = ev
        self.keys = {slot: key for key, slot in ev.plan.slots.items()}
        self.lines: list[Line] = []
        self.row: str | None = None

    def lines_of(self, key: Key) -> list[Line]:
        """The lines behind one key."""
        for step in self._steps(key):
            known = self.keys[step.out]
            if step.out not in self.ev.halted and known in self.ev.plan.quantities:
                self._tell(step, known)
        return [*dict.fromkeys(self.lines)]

    def _steps(self, key: Key) -> list[Step]:
        wanted = {self.ev.plan.slots[key]}
        steps: list[Step] = []
        for step in reversed(self.ev.plan.steps):
            if step.out in wanted:
                wanted.update(step.args)
                steps.append(step)
        return steps[::-1]

    def _tell(self, step: Step, key: Key) -> None:
        quantity = self.ev.plan.quantities[key]
        if quantity.run is not step.run:
            return
        self.row = key.row if key.row != ALL else None
        try:
            outcome = step.run(*(self._leaf(slot) for slot in step.args))
        except Stopped:
            return
        rows = self.ev.plan.rows(quantity.group) if quantity.group else ()
        for part, told in _parts(key, outcome, rows):
            if quantity.searched and isinstance(told, float):
                self.lines.append(_found(part, float(told), unit_of(key.name)))
            elif isinstance(told, float) and (quantity.is_check or _says_more(part, traced(told))):
                clause = quantity.run.__dict__.get("clause")
                self.lines.append(_line(part, traced(told), clause.unit if clause else unit_of(key.name)))

    def _leaf(self, slot: int) -> Any:
        key = self.keys[slot]
        if slot in self.ev.halted:
            return None
        return self._told(key, self.ev.values[slot])

    def _told(self, key: Key, value: Any, field: str = "") -> Any:
        """Numbers that remember in place of numbers: through gear, points and tuples of rows."""
        if isinstance(value, float):
            return Traced.atom(value, self._words(key) + field, self._let)
        if isinstance(value, Gear):
            return value.retold(lambda fact, number: Traced.atom(number, f"{fact} of {value.id}", self._let))
        if isinstance(value, tuple) and hasattr(value, "_fields"):
            parts = zip(value._fields, value, strict=True)
            return type(value)(*(self._told(key, part, f"{field} {name}") for name, part in parts))
        if isinstance(value, tuple) and (key.row or "").startswith(ALL) and key.name in self.ev.table.home:
            rows = self.ev.plan.rows(self.ev.table.home[key.name] or "")
            return tuple(self._told(Key(key.name, row), part) for row, part in zip(rows, value, strict=True))

        return value

    def _let(self, name: str, told: Traced) -> None:
        words = name if name.isascii() and len(name) == 1 else spoken(name)
        row = _of_row(self.row)
        self.lines.append(_line(words + row, told, unit_of(name)))

    def _words(self, key: Key) -> str:
        entry = self.ev.table.entries.get(key.name)
        return (entry.words if entry else spoken(key.name)) + _of_row(key.row)


def _of_row(label: str | None) -> str:
    return f" [{label.replace('_', ' ')}]" if label else ""


def _line(name: str, told: Traced, unit: str) -> Line:
    return Line(name, told.words, told.figures, result(told, told.printed), unit)


def _says_more(name: str, told: Traced) -> bool:
    """Not a plain number, and not what goes by the same name already."""
    return not told.is_atom or told.words not in (name, told.figures)


def _found(name: str, value: float, unit: str) -> Line:
    """What no pencil finds; the lines that take it prove it."""
    shown = digits(value, FIGURES)

    return Line(name, "found by search", shown, shown, unit)


def _parts(key: Key, outcome: Any, rows: Sequence[str]) -> Iterator[tuple[str, Any]]:
    row = _of_row(key.row) if key.row != ALL else ""
    if isinstance(outcome, Strength | Limit):
        yield f"demand{row}", outcome.demand
        yield f"capacity{row}", outcome.capacity
    elif isinstance(outcome, tuple) and hasattr(outcome, "_fields"):
        for field, value in zip(outcome._fields, outcome, strict=True):
            yield f"{spoken(key.name)}{row} {field}", value
    elif isinstance(outcome, tuple):
        for label, value in zip(rows, outcome, strict=True):
            yield from _parts(Key(key.name, label), value, ())
    else:
        yield spoken(key.name) + row, outcome


def spoken(name: str) -> str:
    """A quantity's name without its unit.

    Example:
        >>> spoken("leg_tension_kn"), spoken("braking_m_s2")
        ('leg tension', 'braking')
    """
    parts = name.split("_")
    if len(parts) > 2 and tuple(parts[-2:]) in OF_TWO:
        return " ".join(parts[:-2])
    return " ".join(parts[:-1] if len(parts) > 1 and parts[-1] in UNITS else parts)


def unit_of(name: str) -> str:
    """The unit in a quantity's name.

    Example:
        >>> unit_of("leg_angle_deg"), unit_of("leg_share"), unit_of("sideways_m_s")
        ('°', '', 'm/s')
    """
    parts = name.split("_")
    if len(parts) > 2 and tuple(parts[-2:]) in OF_TWO:
        return OF_TWO[parts[-2], parts[-1]]
    return UNITS.get(parts[-1], "") if len(parts) > 1 else ""
