"""An assessment: what is typed into one form, read into a task; nothing of it is kept."""
from collections.abc import Iterator, Mapping
from typing import Any

from checklist_app.checklists.typed_answers import Assessed, add_gear, typed_choice, typed_number
from checklist_app.checklists.typed_gear import typed_slots
from checklist_app.checklists.typed_rig import (
    EYES,
    LEGS_GIVEN,
    OPERATION,
    RIG,
    hook_rows,
    leg_rows,
    legs_given_of,
    refitted,
    rig_of,
)
from checklist_app.checklists.usual_case import ORIGIN, with_usual
from checklist_app.operations.catalogue import OPERATIONS, Operation
from checklist_app.operations.fields import Fault
from checklist_app.operations.graph import Day, Entry
from checklist_app.operations.straight_lift.choices import EyesGiven, LegsGiven, Rig
from checklist_app.operations.straight_lift.way_entries import WAY
from checklist_app.operations.task import Key, Task

ALL_LENGTHS, ALL_CG, ALL_ANGLES = "lengths.how", "cg.how", "angles.how"
OF_LOAD = ("mass_kg", "rigging_kg", "cg_x_m", "cg_y_m", "cg_z_m", "bottom_z_m", "top_z_m", "lift_height_m",
           "highest_hook_m", "room_height_m", "sling_temperature_c",
           *(entry.name for entry in WAY if entry.kind is float))
OF_EYES = {EyesGiven.DISTANCE: ("eyes_apart_m", "right_eye_higher_m"),
           EyesGiven.RECTANGLE: ("eyes_apart_m", "eyes_across_m")}
OF_LEGS = {LegsGiven.LENGTHS: "leg_length_m", LegsGiven.ANGLES: "leg_angle_read_deg"}
OF_RUNNING = ("running_m", "over_hook_mm")
OF_HITCH = ("choke_angle_deg", "part_angle_deg", "bend_mm", "edge_mm")
OF_HOOK = ("hook_at_x_m", "hook_over_m")
CHOICES = (RIG, LEGS_GIVEN, "share_rule", "rule_set", "chemicals", "eyes_given", "way", "wind_shape", "tag_line",
           "hook_shackle")
ROW_CHOICES = ("hitch", "edge_protected", "face", "stop", "eye_turned", "shackle_pull", "shackle_pin", "turning")
NEVER_ALIKE = frozenset({*ORIGIN, *OF_HOOK})


def operation() -> Operation:
    """The one that is assessed here."""
    return OPERATIONS[OPERATION]


def assessed(typed: Mapping[str, str], day: str) -> Assessed:
    """Read a form. What the other legs leave open is as on the first leg, and the page says so."""
    typed = refitted(typed)
    filled, rig = completed(typed), rig_of(typed)
    answers: dict[Key, Any] = {Key("day"): Day(day), **dict(_choices(filled, rig))}
    faults: dict[str, str] = {}
    for name, key, entry in numbers(filled):
        answer = typed_number(entry, name, filled)
        if isinstance(answer, Fault):
            faults[name] = answer.words
        elif answer is not None:
            answers[key] = answer
    for slot in typed_slots(rig):
        add_gear(answers, faults, slot, filled)
    if rig is Rig.RUNNING:
        answers |= _one_sling(answers)
    shown = {name: words for name, words in faults.items() if name in typed and typed[name].strip()}
    rows = {group: tuple(_label(row) for row in ids) for group, ids in
            (("leg", leg_rows(rig)), ("hook", hook_rows(rig))) if ids}

    return Assessed(Task(answers, rows), shown)


def _one_sling(answers: Mapping[Key, Any]) -> dict[Key, Any]:
    """A sling that runs over the hook is both parts: what was typed for the first."""
    first, second = (Key("sling", _label(row)) for row in leg_rows(Rig.RUNNING))
    return {second: answers[first]} if first in answers else {}


def completed(typed: Mapping[str, str]) -> dict[str, str]:
    """What was typed with what goes without typing, as the page says: usual case, other legs, how it is known."""
    usual = with_usual(refitted(typed))
    rig = rig_of(usual)
    filled = {**usual, RIG: rig.value, LEGS_GIVEN: legs_given_of(usual).value, "eyes_given": EYES[rig].value}
    for group, rows in (("leg", leg_rows(rig)), ("hook", hook_rows(rig))):
        for row in rows[1:]:
            filled |= _as_first(usual, f"{group}/{rows[0]}/", f"{group}/{row}/")
    for name, _, entry in numbers(filled):
        if filled.get(name, "").strip() and (how := how_of(name, entry, filled)):
            filled[f"{name}.how"] = how
    return filled


def numbers(typed: Mapping[str, str]) -> Iterator[tuple[str, Key, Entry]]:
    """Every number that this rig asks: its field, its key, its entry."""
    rig, way = rig_of(typed), legs_given_of(typed)
    entries = operation().table.entries
    height = ("hook_over_eyes_m",) if way is LegsGiven.HOOK_HEIGHT else ()
    for name in (*OF_LOAD, *OF_EYES.get(EYES[rig], ()), *height, *(OF_RUNNING if rig is Rig.RUNNING else ())):
        yield name, Key(name), entries[name]
    of_row = (*((OF_LEGS[way],) if way in OF_LEGS and rig is not Rig.RUNNING else ()), *OF_HITCH,
              *(ORIGIN if EYES[rig] is EyesGiven.COORDINATES else ()))
    for group, rows, asked in (("leg", leg_rows(rig), of_row), ("hook", hook_rows(rig), OF_HOOK)):
        for row in rows:
            for name in asked:
                yield f"{group}/{row}/{name}", Key(name, _label(row)), entries[name]


def how_of(name: str, entry: Entry, typed: Mapping[str, str]) -> str:
    """How a number was come by: said at its field, or once for all of its sort."""
    every = ALL_CG if name.startswith("cg_") else ALL_ANGLES if entry.unit == "°" else ALL_LENGTHS
    said = typed.get(f"{name}.how", "") or typed.get(every, "")
    return said if said in {way.name for way in entry.obtained} else ""


def _label(row: str) -> str:
    """The row as the operation calls it."""
    return row.partition("-")[2] or row


def _choices(typed: Mapping[str, str], rig: Rig) -> Iterator[tuple[Key, Any]]:
    """What was chosen, for the lift and for each leg; what is no choice of a question is none."""
    fields = [(name, Key(name)) for name in CHOICES]
    fields += [(f"leg/{row}/{name}", Key(name, _label(row))) for row in leg_rows(rig) for name in ROW_CHOICES]
    for field, key in fields:
        found = typed_choice(operation().table.entries[key.name], typed.get(field, ""))
        if found is not None:
            yield key, found


def _as_first(typed: Mapping[str, str], first: str, other: str) -> dict[str, str]:
    """What another row leaves open, taken from the first; a slot answered there stands for itself."""
    found = {}
    for name, text in typed.items():
        if not name.startswith(first) or not text.strip():
            continue
        slot, dot, fact = name.removeprefix(first).partition(".")
        own = f"{other}{slot}"
        answered = any(each.partition(".")[0] == own and said.strip() for each, said in typed.items())
        if slot not in NEVER_ALIKE and not answered:
            found[f"{own}{dot}{fact}"] = text
    return found
