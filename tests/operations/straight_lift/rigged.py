"""Lifts of every rig to test with: one, three and four legs on one hook, and two hooks; plain numbers are exact."""

from typing import Any

from checklist_app.operations.gear import make
from checklist_app.operations.straight_lift.choices import EyesGiven, Rig
from checklist_app.operations.task import Task
from tests.operations.straight_lift.lifts import NONE, hoist, leg, lift, sling, told

CORNERS = ("left_front", "right_front", "left_rear", "right_rear")
THREE = ("left", "right", "middle")
TWO = ("left", "right")
POINTS = {
    "left_front": (0.0, 0.0, 0.0), "right_front": (1.2, 0.0, 0.0), "left_rear": (0.0, 0.8, 0.0),
    "right_rear": (1.2, 0.8, 0.0), "left": (0.0, 0.0, 0.0), "right": (1.2, 0.0, 0.0), "middle": (0.6, 0.9, 0.0),
}
NARROW = (
    ((0.1091, 0.0475, -0.0447), 2.0986), ((1.6502, -0.0032, -0.0634), 2.384), ((0.1644, 0.3126, 0.0318), 2.0246),
    ((1.8411, 0.2308, 0.0236), 2.386),
)
Own = dict[str, dict[str, Any]]


def link(wll_t: float = 9.0) -> Any:
    return make("master_link", "L-1", {"wll_t": wll_t, "reach_m": 0.1, "mass_kg": 3.0})


def rigged(rig: Rig, labels: tuple[str, ...], every: dict[str, Any] | None, own: Own | None, **changes: Any) -> Task:
    """So many legs, each of 1.5 m to an eye at its own coordinates unless told otherwise."""
    entries = {
        "rig": rig, "eyes_given": EyesGiven.COORDINATES, "eyes_apart_m": None, "right_eye_higher_m": None,
        "hook_fitting": link(), "highest_hook_m": 9.0, "room_height_m": 9.0, **changes,
    }
    task = Task({key: value for key, value in lift(**entries).answers.items() if key.row is None})
    for label in labels:
        x, y, z = POINTS[label]
        answers = leg(**{
            "leg_length_m": 1.5, "eye_x_m": x, "eye_y_m": y, "eye_z_m": z, **(every or {}),
            **(own or {}).get(label, {}),
        })
        task = task.with_row("leg", label, {name: told(value) for name, value in answers.items()})
    return task


def four(own: Own | None = None, every: dict[str, Any] | None = None, **changes: Any) -> Task:
    """Eyes 1.2 m × 0.8 m apart and level, legs of 1.5 m, the centre of gravity in the middle, 0.3 m below them."""
    return rigged(Rig.FOUR_LEGS, CORNERS, every, own, **{"cg_x_m": 0.6, "cg_y_m": 0.4, "cg_z_m": -0.3, **changes})


def three(own: Own | None = None, every: dict[str, Any] | None = None, **changes: Any) -> Task:
    """Eyes at the corners of a triangle, legs of 1.5 m, the centre of gravity inside of it."""
    return rigged(Rig.THREE_LEGS, THREE, every, own, **{"cg_x_m": 0.6, "cg_y_m": 0.3, "cg_z_m": -0.3, **changes})


def one(every: dict[str, Any] | None = None, **changes: Any) -> Task:
    """One leg of 1.5 m straight up from an eye over the centre of gravity."""
    return rigged(Rig.ONE_LEG, ("left",), every, None, **{"cg_x_m": 0.0, "cg_y_m": 0.0, "cg_z_m": -0.4, **changes})


def two_hooks(
    own: Own | None = None, every: dict[str, Any] | None = None, hooks: tuple[float, float] = (0.0, 1.2),
    over_m: float = 0.0, each_hook: dict[str, Any] | None = None, **changes: Any,
) -> Task:
    """Two hooks plumb over two eyes 1.2 m apart, the centre of gravity nearer to the left one."""
    entries = {
        "cg_x_m": 0.4, "cg_y_m": 0.0, "cg_z_m": -0.4, "hoist": None, "load_cell": None, "hook_fitting": None, **changes
    }
    task = rigged(Rig.TWO_HOOKS, TWO, every, own, **entries)
    for label, at_m, higher_m in (("left", hooks[0], 0.0), ("right", hooks[1], over_m)):
        answers = {"hook_hoist": hoist(), "hook_load_cell": NONE, "hook_at_x_m": at_m, "hook_over_m": higher_m}
        told_of = {name: told(value) for name, value in {**answers, **(each_hook or {})}.items()}
        task = task.with_row("hook", label, told_of)
    return task


def running(every: dict[str, Any] | None = None, **changes: Any) -> Task:
    """One sling of 2.4 m over the hook to two level eyes 1 m apart, the centre of gravity midway, 0.5 m below them."""
    own = {"sling": make("round_sling", "R-1", {"wll_t": 2.0, "length_m": 2.4, "mass_kg": 1.0, "thickness_mm": 20.0})}
    return lift(both={**own, "leg_length_m": None, **(every or {})}, **{
        "rig": Rig.RUNNING, "running_m": 2.4, "over_hook_mm": 60.0, "cg_z_m": -0.5, **changes,
    })


def narrow(cg_z_m: float) -> Task:
    """A narrow load on four legs of unlike length, the hook plumb over its centre of gravity; one is a little slack."""
    own = {
        label: {"eye_x_m": x, "eye_y_m": y, "eye_z_m": z, "leg_length_m": leg_m, "sling": sling(5.0, leg_m)}
        for label, ((x, y, z), leg_m) in zip(CORNERS, NARROW, strict=True)
    }

    return four(own, cg_x_m=0.5282, cg_y_m=0.0917, cg_z_m=cg_z_m, top_z_m=1.34)
