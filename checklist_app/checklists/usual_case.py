"""The usual case in a few ticks: each answers several questions of an assessment at once, and says which."""
from collections.abc import Mapping
from dataclasses import dataclass

from checklist_app.checklists.typed_rig import EYES, hook_rows, leg_rows, rig_of
from checklist_app.operations.straight_lift.choices import EyesGiven, Rig

GATHERED = (Rig.THREE_LEGS, Rig.FOUR_LEGS)
"""More legs than a hook takes: a master link gathers them, and is asked for."""
ORIGIN = ("eye_x_m", "eye_y_m", "eye_z_m")


@dataclass(frozen=True)
class Tick:
    """One tick, and the answers that it stands for, by the name of their field."""

    name: str
    words: str
    answers: Mapping[str, str]


def level(rig: Rig) -> Tick:
    """All eyes at one height."""
    if EYES[rig] is EyesGiven.DISTANCE:
        return Tick("usual.level", "Both eyes are at one height", {"right_eye_higher_m": "0"})
    return Tick("usual.level", "All eyes are at one height", {f"leg/{row}/eye_z_m": "0" for row in leg_rows(rig)})


def in_line(rig: Rig) -> Tick:
    """Nothing to one side."""
    under = "Crosswise it lies under the eye" if rig is Rig.ONE_LEG else "Crosswise it lies in line with the eyes"
    return Tick("usual.in_line", under, {"cg_y_m": "0"})


def straight_on(rig: Rig) -> Tick:
    """Nothing between hook, sling and eye."""
    hooks = [f"hook/{row}/hook_load_cell" for row in hook_rows(rig)] or ["load_cell", "hook_fitting"]
    if rig in GATHERED:
        hooks.remove("hook_fitting")
    first = leg_rows(rig)[0]
    none = (*hooks, f"leg/{first}/top_fitting", f"leg/{first}/bottom_fitting")
    on = "master link" if rig in GATHERED else "hook"
    return Tick("usual.straight_on", f"Slings go straight on {on} and eyes: no shackle, no fitting, no load cell",
                {f"{slot}.not_used": "yes" for slot in none})


SHED = Tick("usual.shed", "About 20 °C, and nothing that eats into slings", {
    "sling_temperature_c": "20", "chemicals": "none"})


def ticks(rig: Rig) -> tuple[Tick, ...]:
    """Those that a rig knows."""
    return (level(rig), in_line(rig), straight_on(rig), SHED)


def with_usual(typed: Mapping[str, str]) -> dict[str, str]:
    """What was typed with what its ticks stand for; an answer of its own at a question goes before the tick.

    Example:
        >>> with_usual({"usual.level": "yes"})["right_eye_higher_m"]
        '0'
        >>> with_usual({"usual.level": "yes", "right_eye_higher_m": "0.05"})["right_eye_higher_m"]
        '0.05'
    """
    answered = {name.partition(".")[0] for name, text in typed.items() if text.strip()}
    rig, found = rig_of(typed), dict(typed)
    for tick in ticks(rig):
        if typed.get(tick.name, "").strip():
            found.update({name: text for name, text in tick.answers.items() if name.partition(".")[0] not in answered})
    return {**found, **_measured_from(rig)}


def _measured_from(rig: Rig) -> dict[str, str]:
    """Where measuring starts: the first eye, and the height of the left hook. The page says so."""
    eye = {f"leg/{leg_rows(rig)[0]}/{name}": "0" for name in ORIGIN} if EYES[rig] is EyesGiven.COORDINATES else {}
    return eye | {f"hook/{row}/hook_over_m": "0" for row in hook_rows(rig)[:1]}
