"""Trial lifts are rows; what was planned and what was measured are different names, and adopting copies a value."""
from collections.abc import Mapping
from dataclasses import dataclass
from math import ceil
from typing import Any

from checklist_app.checklists.places import label
from checklist_app.checklists.running import Running
from checklist_app.operations.gear import LoadCell
from checklist_app.operations.task import Key, Measured, NotUsed
from checklist_app.operations.words import figure

TRIAL = "trial"
MOST = 99


@dataclass(frozen=True)
class Trial:
    """One trial lift as it was read. Texts are empty where nothing was read."""

    row: str
    number: str
    lifted: str
    held: str
    hook_load: str
    tilt_along: str
    tilt_across: str


@dataclass(frozen=True)
class Planned:
    """What the plan says, to stand beside the readings."""

    hook_load: str
    tilt_along: str
    tilt_across: str


def trials(now: Running) -> tuple[Trial, ...]:
    """Every trial lift, in order."""
    return tuple(_trial(now, row) for row in now.folded.rows.get(TRIAL, ()))


def next_row(now: Running) -> str:
    """The id of one more trial: its place first, so that ten comes after nine.

    Two phones that each write down the second trial write down the same one: what they read differently is a
    disagreement that a person settles.
    """
    rows = now.folded.rows.get(TRIAL, ())
    last = max((int(row.partition("-")[0]) for row in rows if row.partition("-")[0].isdigit()), default=0)
    return f"{last + 1:02d}-{last + 1}"


def planned(now: Running) -> Planned:
    """Hook load and tilt as they were worked out."""
    return Planned(_quantity(now, "gross_mass_kg", "kg"), _quantity(now, "hung_tilt_along_deg", "°"),
                   _quantity(now, "hung_tilt_across_deg", "°"))


def adopted_mass_kg(now: Running, row: str) -> str:
    """The mass of the load that a trial's hook load gives, rounded up; empty where no load cell was read.

    What hangs below the load cell is taken off, the cell itself is not: it does not weigh itself.
    """
    read = _number(now, "hook_load_kg", row)
    gross, mass = now.evaluation["gross_mass_kg"], now.evaluation["mass_kg"]
    if read is None or not isinstance(gross, float) or not isinstance(mass, float):
        return ""
    below = gross - mass - _cell_kg(now)
    found = read - (below if below > 0.0 else 0.0)
    return str(ceil(found)) if found > 0.0 else ""


def _cell_kg(now: Running) -> float:
    cell = now.task.answers.get(Key("load_cell"))
    return float(cell.facts.get("mass_kg", 0.0)) if isinstance(cell, LoadCell) else 0.0


def _trial(now: Running, row: str) -> Trial:
    def said(name: str, unit: str) -> str:
        read = _number(now, name, row)
        return _with_unit(read, unit) if read is not None else ""

    cell = now.task.answers.get(Key("hook_load_kg", _label(now, row)))
    return Trial(row, label(row), said("lifted_mm", "mm"), said("held_s", "s"),
                 "no load cell" if isinstance(cell, NotUsed) else said("hook_load_kg", "kg"),
                 said("tilt_along_deg", "°"), said("tilt_across_deg", "°"))


def _number(now: Running, name: str, row: str) -> float | None:
    answer = now.task.answers.get(Key(name, _label(now, row)))
    return float(answer.value) if isinstance(answer, Measured) else None


def _label(now: Running, row: str) -> str:
    labels: Mapping[str, str] = now.read.labels
    return labels.get(row, row)


def _quantity(now: Running, name: str, unit: str) -> str:
    found: Any = now.evaluation[name]
    return _with_unit(abs(float(found)), unit) if isinstance(found, float) else ""


def _with_unit(value: float, unit: str) -> str:
    return figure(value, unit) + ("" if unit == "°" else " ") + unit
