"""What is no number, or an absurd one, never passes: every number of the operation in turn, whoever let it in."""

import math

import pytest

from checklist_app.operations.check import Limit, State, Strength, Verdict
from checklist_app.operations.evaluate import Evaluation, assess
from checklist_app.operations.straight_lift.entries import EyesGiven
from checklist_app.operations.task import Key, Measured, Task
from tests.operations.straight_lift.lifts import TABLE, eye, hoist, hook, lift, pick_point, shackle, sling

PASSED = (Verdict.WITHIN, Verdict.CLOSE)
COORDINATES = lift(
    {"eye_x_m": 0.0, "eye_y_m": 0.0, "eye_z_m": 0.0}, {"eye_x_m": 1.0, "eye_y_m": 0.0, "eye_z_m": 0.0},
    eyes_given=EyesGiven.COORDINATES,
)
TRIED = lift(trials=({"hook_load_kg": 1000.0, "tilt_along_deg": 0.0, "tilt_across_deg": 0.0},))
NOT_COMPUTED_WITH = {"lifted_mm", "held_s"}
OF_OTHER_RIGS = {
    "eyes_across_m", "hook_over_eyes_m", "sling_temperature_c", "hook_at_x_m", "hook_over_m", "leg_angle_read_deg",
    "choke_angle_deg", "part_angle_deg", "bend_mm", "edge_mm", "friction",
}
LEFT_OUT = NOT_COMPUTED_WITH | OF_OTHER_RIGS
NUMBERS = sorted(name for name, entry in TABLE.entries.items() if entry.kind is float and name not in LEFT_OUT)


def with_number(name: str, value: float) -> Task:
    home = TABLE.home[name]
    row = {None: None, "leg": "left", "trial": "1"}[home]
    base = COORDINATES if name.startswith("eye_") else TRIED if home == "trial" else lift()
    if name == "sling_off_tag":
        base = lift(both={"leg_length_m": None})

    return base.changed({Key(name, row): Measured(value, plus_minus=0.0)})


def numbers_of(ev: Evaluation) -> list[float]:
    """Every number a check that passed rests its verdict on."""
    told = [check.outcome for check in ev.checks if check.verdict in PASSED]
    assert all(isinstance(outcome, Strength | Limit | State) for outcome in told)

    return [number for outcome in told if not isinstance(outcome, State) for number in outcome[:2]]


@pytest.mark.parametrize("name", NUMBERS)
def test_the_base_passes(name: str) -> None:
    usual = {
        "cg_x_m": 0.5, "cg_z_m": -0.4, "bottom_z_m": -0.9, "top_z_m": 0.2, "mass_kg": 1000.0, "leg_length_m": 1.0,
        "eyes_apart_m": 1.0, "highest_hook_m": 3.0, "room_height_m": 4.0, "lift_height_m": 0.3, "hook_load_kg": 900.0,
    }
    assert assess(TABLE, with_number(name, usual.get(name, 0.0))).verdict in PASSED


@pytest.mark.parametrize("name", NUMBERS)
def test_what_is_no_number_never_passes(name: str) -> None:
    ev = assess(TABLE, with_number(name, math.nan))
    assert ev.verdict not in PASSED
    assert not any(math.isnan(number) for number in numbers_of(ev))


@pytest.mark.parametrize("value", [math.inf, -math.inf])
@pytest.mark.parametrize("name", NUMBERS)
def test_no_check_passes_on_an_infinite_number(name: str, value: float) -> None:
    """A hook that can go up without end is no less absurd than a mass without end."""
    assert all(math.isfinite(number) for number in numbers_of(assess(TABLE, with_number(name, value))))


@pytest.mark.parametrize("task", [
    pytest.param(lift({"sling": sling(wll_t=math.nan)}), id="sling"),
    pytest.param(lift(both={"leg_length_m": None, "sling": sling(length_m=math.nan)}), id="length of a sling"),
    pytest.param(lift(hoist=hoist(math.nan)), id="hoist"), pytest.param(lift(hoist=hoist(-5.0)), id="hoist below 0"),
    pytest.param(lift(hoist=hoist(1e99)), id="hoist of 1e99 t"),
    pytest.param(lift(hook_fitting=shackle(math.nan)), id="shackle"),
    pytest.param(lift(hook_fitting=hook(reach_m=math.nan)), id="reach of a hook"),
    pytest.param(lift({"eye": eye((60.0, math.nan))}), id="eye"),
    pytest.param(lift({"eye": eye((math.nan, 2.0))}), id="step of an eye"),
    pytest.param(lift({"carrier": pick_point((60.0, math.inf))}), id="pick point"),
])
def test_gear_with_an_absurd_figure_never_passes(task: Task) -> None:
    assert assess(TABLE, task).verdict not in PASSED
