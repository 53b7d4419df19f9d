"""The rig in which a trial hung, kept with the trial as one line of text: a later change of the rig must not move it.

    -300 0 1600 1560; 300 0 1600 1560; off 31 10

Whole millimetres: per leg its eye in the load's axes and its length; last how far a length and an eye may be off.
"""

from dataclasses import dataclass
from math import ceil, isfinite
from typing import Any

from checklist_app.mechanics.vectors import Vec
from checklist_app.operations.evaluate import Evaluation
from checklist_app.operations.settings import TAPE
from checklist_app.operations.straight_lift.choices import Rig
from checklist_app.operations.task import Key

MM_IN_M = 1000.0
FROM_ONE_HOOK = frozenset({Rig.ONE_LEG, Rig.TWO_LEGS, Rig.THREE_LEGS, Rig.FOUR_LEGS})
LENGTHS, SHARES = frozenset({"leg_length_m", "hook_over_eyes_m"}), frozenset({"sling_off_tag"})
PLACES = frozenset({"eye_x_m", "eye_y_m", "eye_z_m", "eyes_apart_m", "eyes_across_m", "right_eye_higher_m"})
MOST_M = 60.0
OFF = "off"


@dataclass(frozen=True)
class AsHung:
    """Eyes and legs of one trial, and how far they may be off [m]."""

    eyes: tuple[Vec, ...]
    legs_m: tuple[float, ...]
    leg_off_m: float
    eye_off_m: float


def as_hung(evaluation: Evaluation) -> str:
    """The rig as the task has it now; empty where eyes or legs are not known, or it does not hang from one hook."""
    if "rig" not in evaluation.table.entries:
        return ""
    eyes, legs, rig = _rows(evaluation, "eye_at"), _rows(evaluation, "leg_m"), evaluation["rig"]
    known = all(isinstance(eye, Vec) for eye in eyes) and all(isinstance(leg_m, float) for leg_m in legs)
    if rig not in FROM_ONE_HOOK or not eyes or not known:
        return ""
    if not all(isfinite(each) and abs(each) < MOST_M for each in (*legs, *(part for eye in eyes for part in eye))):
        return ""
    rows = [(*eye, leg_m) for eye, leg_m in zip(eyes, legs, strict=True)]
    off = (_leg_off_m(evaluation, max(legs)), _eye_off_m(evaluation))

    return "; ".join([*(_line(row) for row in rows), f"{OFF} {_up(off[0])} {_up(off[1])}"])


def read(text: str) -> AsHung | None:
    """The rig of a trial from its line; None for a text that is none.

    Example:
        >>> read("-300 0 1600 1560; 300 0 1600 1560; off 31 10").legs_m
        (1.56, 1.56)
        >>> read("two slings") is None
        True
    """
    *legs, off = text.split("; ")
    try:
        rows = [[int(part) / MM_IN_M for part in leg.split(" ")] for leg in legs]
        word, leg_off, eye_off = off.split(" ")
        told = AsHung(tuple(Vec(*row[:3]) for row in rows), tuple(row[3] for row in rows), int(leg_off) / MM_IN_M,
                      int(eye_off) / MM_IN_M)
    except (ValueError, TypeError, IndexError):
        return None
    sound = word == OFF and 1 <= len(rows) <= 4 and all(len(row) == 4 and row[3] > 0.0 for row in rows)

    return told if sound and told.leg_off_m >= 0.0 and told.eye_off_m >= 0.0 else None


def _rows(evaluation: Evaluation, name: str) -> tuple[Any, ...]:
    return tuple(evaluation[f"{name}[{row}]"] for row in evaluation.task.rows.get("leg", ()))


def _line(metres: tuple[float, ...]) -> str:
    return " ".join(str(round(each * MM_IN_M)) for each in metres)


def _up(metres: float) -> int:
    return ceil(metres * MM_IN_M - 1e-9)


def _leg_off_m(evaluation: Evaluation, longest_m: float) -> float:
    """Of the leg that is known worst: a measured length stands in for the tag of its sling."""
    away = _spreads(evaluation)
    measured = {key.row for key in away if key.name == "leg_length_m"}
    off = [far for key, far in away.items() if key.name in LENGTHS]
    off += [far * longest_m for key, far in away.items() if key.name in SHARES and key.row not in measured]

    return max(off, default=0.0)


def _eye_off_m(evaluation: Evaluation) -> float:
    """At least a tape's: a register keeps no spread for its pick points."""
    return max((far for key, far in _spreads(evaluation).items() if key.name in PLACES), default=TAPE.value)


def _spreads(evaluation: Evaluation) -> dict[Key, float]:
    return {each.key: max(each.levels[1] - each.levels[0], each.levels[2] - each.levels[1])
            for each in evaluation.plan.variables if not each.unknown}
