"""An assessment: what is typed into one form, read into a task; nothing of it is kept."""
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any

from checklist_app.checklists.answers import as_field
from checklist_app.checklists.typed_gear import LEGS, TypedSlot, typed_slots
from checklist_app.checklists.usual_case import with_usual
from checklist_app.operations.catalogue import OPERATIONS, Operation
from checklist_app.operations.fields import Fault, Field, FieldType, read_number
from checklist_app.operations.graph import Day, DontKnow, Entry, NotUsed
from checklist_app.operations.task import Key, Measured, Task

OPERATION = "straight_lift"
ALL_LENGTHS, ALL_CG = "lengths.how", "cg.how"
LEFT, RIGHT = LEGS
LABELS = {LEFT: "left", RIGHT: "right"}
TASK_NUMBERS = (
    "mass_kg", "rigging_kg", "eyes_apart_m", "right_eye_higher_m", "cg_x_m", "cg_y_m", "cg_z_m", "bottom_z_m",
    "top_z_m", "lift_height_m", "highest_hook_m", "room_height_m",
)
SAID_HERE = "typed in as not used"


@dataclass(frozen=True)
class Assessed:
    """The task that was typed, and what could not be read, by the name of its field."""

    task: Task
    faults: Mapping[str, str]


def operation() -> Operation:
    """The one that is assessed here."""
    return OPERATIONS[OPERATION]


def assessed(typed: Mapping[str, str], day: str) -> Assessed:
    """Read a form. What the right leg leaves open is as on the left leg, and the page says so."""
    filled = completed(typed)
    answers: dict[Key, Any] = {Key("day"): Day(day)}
    faults: dict[str, str] = {}
    _add_choice(answers, filled, "eyes_given", filled["eyes_given"], Key("eyes_given"))
    for row, label in LABELS.items():
        _add_choice(answers, filled, "hitch", filled.get(f"leg/{row}/hitch", ""), Key("hitch", label))
    for name, key, entry in numbers():
        answer = _number(entry, name, filled)
        if isinstance(answer, Fault):
            faults[name] = answer.words
        elif answer is not None:
            answers[key] = answer
    for slot in typed_slots():
        _add_gear(answers, faults, slot, filled)
    shown = {name: words for name, words in faults.items() if name in typed and typed[name].strip()}

    return Assessed(Task(answers, {"leg": tuple(LABELS.values())}), shown)


def completed(typed: Mapping[str, str]) -> dict[str, str]:
    """What was typed with what goes without typing, as the page says: usual case, right leg, how it is known."""
    usual = with_usual(typed)
    filled = {**usual, **_right_as_left(usual), "eyes_given": "distance"}
    for name, _, entry in numbers():
        if filled.get(name, "").strip() and (how := how_of(name, entry, filled)):
            filled[f"{name}.how"] = how
    return filled


def numbers() -> Iterator[tuple[str, Key, Entry]]:
    """Every number that is asked: its field, its key, its entry. Eyes are given by their distance here."""
    table = operation().table
    for name in TASK_NUMBERS:
        yield name, Key(name), table.entries[name]
    for row, label in LABELS.items():
        yield f"leg/{row}/leg_length_m", Key("leg_length_m", label), table.entries["leg_length_m"]


def how_of(name: str, entry: Entry, typed: Mapping[str, str]) -> str:
    """How a number was come by: said at its field, or once for all lengths."""
    every = ALL_CG if name.startswith("cg_") else ALL_LENGTHS
    said = typed.get(f"{name}.how", "") or typed.get(every, "")
    return said if said in {way.name for way in entry.obtained} else ""


def _number(entry: Entry, name: str, typed: Mapping[str, str]) -> Any:
    if typed.get(f"{name}.dont_know"):
        return DontKnow()
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


def _add_choice(answers: dict[Key, Any], typed: Mapping[str, str], entry: str, text: str, key: Key) -> None:
    kind = operation().table.entries[entry].kind
    found = next((each for each in kind if each.value == text), None)
    if found is not None:
        answers[key] = found


def _add_gear(answers: dict[Key, Any], faults: dict[str, str], slot: TypedSlot, typed: Mapping[str, str]) -> None:
    key = Key(slot.path[-1], LABELS[slot.path[1]] if len(slot.path) == 3 else None)
    gear = slot.gear(typed)
    if gear is not None:
        answers[key] = gear
        faults.update({f"{slot.name}.{name.rpartition('/')[2]}": words for name, words in gear.faults.items()})
    elif typed.get(f"{slot.name}.not_used") and slot.none_words:
        answers[key] = NotUsed(SAID_HERE)


def _right_as_left(typed: Mapping[str, str]) -> dict[str, str]:
    """What the right leg leaves open, taken from the left; a slot answered on the right stands for itself."""
    found = {}
    for name, text in typed.items():
        if not name.startswith(f"leg/{LEFT}/") or not text.strip():
            continue
        slot, dot, fact = name.removeprefix(f"leg/{LEFT}/").partition(".")
        own = f"leg/{RIGHT}/{slot}"
        if not any(each.partition(".")[0] == own and said.strip() for each, said in typed.items()):
            found[f"{own}{dot}{fact}"] = text
    return found
