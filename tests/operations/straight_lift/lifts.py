"""Lifts to test with: one symmetric lift, and whatever differs from it."""

from typing import Any

from checklist_app.mechanics.slings.kinds import Hitch
from checklist_app.operations.gear import Gear, GearState, make
from checklist_app.operations.graph import Day, NotUsed
from checklist_app.operations.straight_lift import TABLE
from checklist_app.operations.straight_lift.entries import EyesGiven
from checklist_app.operations.task import Key, Measured, Task

__all__ = ["TABLE", "exactly", "eye", "hoist", "hook", "lift", "pick_point", "shackle", "sling"]

STEPS = ({"up_to_deg": 5.0, "wll_t": 4.0}, {"up_to_deg": 60.0, "wll_t": 4.0})
NONE = NotUsed("none here")


def sling(wll_t: float = 2.0, length_m: float = 1.0, id: str = "R-1", state: GearState | None = None) -> Gear:
    return make("round_sling", id, {"wll_t": wll_t, "length_m": length_m, "mass_kg": 1.0}, state)


def shackle(wll_t: float = 4.75, reach_m: float = 0.1, id: str = "S-1") -> Gear:
    return make("shackle", id, {"wll_t": wll_t, "reach_m": reach_m, "mass_kg": 2.0})


def hook(wll_t: float = 4.75, reach_m: float = 0.1, id: str = "K-1") -> Gear:
    return make("hook", id, {"wll_t": wll_t, "reach_m": reach_m, "mass_kg": 2.0})


def hoist(wll_t: float = 5.0, **facts: Any) -> Gear:
    return make("hoist", "H-1", {"wll_t": wll_t, **facts})


def eye(*steps: tuple[float, float], id: str = "E-1") -> Gear:
    rows = [{"up_to_deg": up_to, "wll_t": wll} for up_to, wll in steps] if steps else list(STEPS)
    return make("eye", id, {"ratings": rows, "reach_m": 0.05, "mass_kg": 0.5})


def pick_point(*steps: tuple[float, float], **facts: Any) -> Gear:
    rows = [{"up_to_deg": up_to, "wll_t": wll} for up_to, wll in steps] if steps else list(STEPS)
    return make("pick_point", "bracket", {"ratings": rows, "evidence": "drawing", **facts})


def exactly(value: float) -> Measured:
    return Measured(value, plus_minus=0.0)


def leg(**changes: Any) -> dict[str, Any]:
    answers: dict[str, Any] = {
        "sling": sling(), "hitch": Hitch.STRAIGHT, "leg_length_m": exactly(1.0), "top_fitting": NONE,
        "bottom_fitting": NONE, "eye": eye(), "carrier": pick_point(),
    }
    answers = {name: value for name, value in {**answers, **changes}.items() if value is not None}
    length = answers.get("leg_length_m")
    if isinstance(length, float | Measured) and "sling" in answers and answers["sling"].facts.get("length_m") == 1.0:
        answers["sling"] = fitting(answers["sling"], answers, length if isinstance(length, float) else length.value)

    return answers


def fitting(short: Gear, answers: dict[str, Any], leg_m: float) -> Gear:
    """A sling of the length that makes the leg with its fittings."""
    fittings = [answers[name] for name in ("top_fitting", "bottom_fitting") if isinstance(answers.get(name), Gear)]
    length_m = leg_m - sum(each.facts["reach_m"] for each in fittings)

    return make(short.kind, short.id, {**short.facts, "length_m": length_m if length_m > 0.2 else 1.0}, short.state)


def lift(
    left: dict[str, Any] | None = None, right: dict[str, Any] | None = None, both: dict[str, Any] | None = None,
    trials: tuple[dict[str, Any], ...] = (), **changes: Any,
) -> Task:
    """Eyes 1 m apart and level, legs of 1 m, the centre of gravity in the middle and 0.4 m below them, 1000 kg, no
    rigging, a gathering shackle; numbers given plainly are exact; None leaves an answer out."""
    entries: dict[str, Any] = {
        "day": Day("2026-11-25"), "mass_kg": 1000.0, "rigging_kg": 0.0, "eyes_given": EyesGiven.DISTANCE,
        "eyes_apart_m": 1.0, "right_eye_higher_m": 0.0, "cg_x_m": 0.5, "cg_y_m": 0.0, "cg_z_m": -0.4,
        "bottom_z_m": -0.9, "top_z_m": 0.2, "lift_height_m": 0.3, "highest_hook_m": 3.0, "room_height_m": 4.0,
        "hoist": hoist(), "load_cell": NONE, "hook_fitting": shackle(),
    }
    task = Task({Key(name): told(value) for name, value in {**entries, **changes}.items() if value is not None})
    for label, own in (("left", left), ("right", right)):
        answers = leg(**{**(both or {}), **(own or {})})
        task = task.with_row("leg", label, {name: told(value) for name, value in answers.items()})
    for number, answers in enumerate(trials, 1):
        task = task.with_row("trial", str(number), {name: told(value) for name, value in answers.items()})
    return task


def told(value: Any) -> Any:
    return exactly(value) if isinstance(value, float) else value
