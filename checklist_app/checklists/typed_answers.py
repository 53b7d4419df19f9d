"""Typed texts of an assessment as answers: a number, a choice, gear; and what could not be read."""
from collections.abc import Mapping
from dataclasses import dataclass
from enum import Enum
from typing import Any

from checklist_app.checklists.answers import as_field
from checklist_app.checklists.typed_gear import TypedSlot
from checklist_app.operations.fields import Fault, Field, FieldType, read_number
from checklist_app.operations.graph import DontKnow, Entry, NotUsed
from checklist_app.operations.task import Key, Measured, Task

SAID_HERE = "typed in as not used"


@dataclass(frozen=True)
class Assessed:
    """The task that was typed, and what could not be read, by the name of its field."""

    task: Task
    faults: Mapping[str, str]


def typed_number(entry: Entry, name: str, typed: Mapping[str, str]) -> Any:
    """The answer in a field and its companions: a value, don't know, not used, a fault, or None while it is open."""
    if typed.get(f"{name}.dont_know"):
        return DontKnow()
    if typed.get(f"{name}.not_used") and entry.may_be_none:
        return NotUsed(SAID_HERE)
    text = typed.get(name, "").strip()
    if not text:
        return None
    number = read_number(text, as_field(entry))
    if isinstance(number, Fault):
        return number
    away_text = typed.get(f"{name}.plus_minus", "").strip()
    spread = Field("plus_minus", "how far off", FieldType.NUMBER, entry.unit, 0.0)
    away = read_number(away_text, spread) if away_text else None
    if isinstance(away, Fault):
        return away

    return Measured(number, typed.get(f"{name}.how") or None, away)


def typed_choice(entry: Entry, text: str) -> Enum | None:
    """One of the named answers; what is no choice of a question is none."""
    return next((each for each in entry.kind if each.value == text), None)


def add_gear(answers: dict[Key, Any], faults: dict[str, str], slot: TypedSlot, typed: Mapping[str, str]) -> None:
    """The gear of a slot as it was typed, or that there is none."""
    key = Key(slot.path[-1], slot.path[1].partition("-")[2] if len(slot.path) == 3 else None)
    gear = slot.gear(typed)
    if gear is not None:
        answers[key] = gear
        faults.update({f"{slot.name}.{name.rpartition('/')[2]}": words for name, words in gear.faults.items()})
    elif typed.get(f"{slot.name}.not_used") and slot.none_words:
        answers[key] = NotUsed(SAID_HERE)
