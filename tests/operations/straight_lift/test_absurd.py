"""What is no number, or an absurd one, never passes: every number of the operation in turn, whoever let it in."""

import math

import pytest

from checklist_app.mechanics.slings.kinds import Hitch
from checklist_app.mechanics.slings.wrap import Stop
from checklist_app.operations.check import Limit, State, Strength, Verdict
from checklist_app.operations.evaluate import Evaluation, assess
from checklist_app.operations.gear import make
from checklist_app.operations.straight_lift import way_entries
from checklist_app.operations.straight_lift.choices import EyesGiven, LegsGiven, Protected
from checklist_app.operations.task import Key, Measured, Task
from tests.operations.straight_lift.lifts import TABLE, eye, hoist, hook, lift, pick_point, shackle, sling
from tests.operations.straight_lift.on_the_way import BOTH, HELD, TRAVELS
from tests.operations.straight_lift.rigged import four, running, two_hooks

PASSED = (Verdict.WITHIN, Verdict.CLOSE)
COORDINATES = lift(
    {"eye_x_m": 0.0, "eye_y_m": 0.0, "eye_z_m": 0.0}, {"eye_x_m": 1.0, "eye_y_m": 0.0, "eye_z_m": 0.0},
    eyes_given=EyesGiven.COORDINATES,
)
TRIED = lift(trials=({"hook_load_kg": 1000.0, "tilt_along_deg": 0.0, "tilt_across_deg": 0.0},))
EYE = ("eye_x_m", "eye_y_m", "eye_z_m")
NOT_COMPUTED_WITH = {"lifted_mm", "held_s"}
NUMBERS = sorted(name for name, entry in TABLE.entries.items() if entry.kind is float and name not in NOT_COMPUTED_WITH)
STOPPED = {"stop": Stop.COLLAR}
WAY = [entry.name for entry in way_entries.WAY]
CHAIN = make("chain_sling", "C", {
    "wll_t": 4.0, "length_m": 1.0, "mass_kg": 1.0, "grade": "grade 8", "size_mm": 8.0,
})
ROPE = make("wire_rope_sling", "W", {
    "wll_t": 4.0, "length_m": 1.0, "mass_kg": 1.0, "diameter_mm": 10.0, "core": "steel", "termination": "hand splice",
})
BY_HEIGHT = lift(both={"leg_length_m": None, "sling": sling(2.0, 1.0)}, legs_given=LegsGiven.HOOK_HEIGHT)
RECTANGLE = four(eyes_given=EyesGiven.RECTANGLE, eyes_apart_m=1.2)
BASES: dict[str, Task] = {
    "eyes_across_m": RECTANGLE, "hook_over_eyes_m": BY_HEIGHT, "hook_at_x_m": two_hooks(), "hook_over_m": two_hooks(),
    "sling_off_tag": lift(both={"leg_length_m": None}), "sling_temperature_c": lift(both={"sling": CHAIN}),
    "choke_angle_deg": lift(both=STOPPED | {"hitch": Hitch.CHOKED, "choke_angle_deg": 130.0}),
    "part_angle_deg": lift(both=STOPPED | {"hitch": Hitch.BASKET, "part_angle_deg": 0.0}),
    "bend_mm": lift(both=STOPPED | {"sling": ROPE, "hitch": Hitch.BASKET, "part_angle_deg": 0.0, "bend_mm": 300.0}),
    "edge_mm": lift(both={"sling": CHAIN, "edge_mm": 20.0, "edge_protected": Protected.SMOOTH}),
    "friction": lift(both={"hitch": Hitch.BASKET, "part_angle_deg": 0.0, "stop": Stop.NONE, "friction": 0.9}),
    **dict.fromkeys(WAY, lift(**BOTH | HELD)), "running_m": running(), "over_hook_mm": running(),
    **dict.fromkeys(("out_of_step_m", "step_way"), two_hooks(**TRAVELS, out_of_step_m=0.02)),
}
USUAL = {
    "cg_x_m": 0.5, "cg_z_m": -0.4, "bottom_z_m": -0.9, "top_z_m": 0.2, "mass_kg": 1000.0, "leg_length_m": 1.0,
    "eyes_apart_m": 1.0, "highest_hook_m": 3.0, "room_height_m": 4.0, "lift_height_m": 0.3, "hook_load_kg": 900.0,
    "eyes_across_m": 0.8, "hook_over_eyes_m": 0.866, "choke_angle_deg": 130.0, "bend_mm": 300.0, "edge_mm": 20.0,
    "friction": 0.9, "leg_angle_read_deg": 30.0, "sling_temperature_c": 20.0, "load_length_m": 1.4, "load_width_m": 0.8,
    "side_room_m": 2.0, "hook_below_m": 2.0, "travel_speed_m_s": 0.3, "stopping_m": 0.3, "gust_m_s": 4.0,
    "side_area_m2": 1.5, "side_area_z_m": -0.3, "tag_length_m": 6.0, "tag_below_deg": 20.0,
    "running_m": 2.4, "over_hook_mm": 60.0, "out_of_step_m": 0.02,
}


def with_number(name: str, value: float) -> Task:
    home = TABLE.home[name]
    row = {None: None, "leg": "left", "hook": "left", "trial": "1"}[home]
    base = COORDINATES if name in EYE else TRIED if home == "trial" else BASES.get(name, lift())

    return base.changed({Key(name, row): Measured(value, plus_minus=0.0)})


def numbers_of(ev: Evaluation) -> list[float]:
    """Every number a check that passed rests its verdict on."""
    told = [check.outcome for check in ev.checks if check.verdict in PASSED]
    assert all(isinstance(outcome, Strength | Limit | State) for outcome in told)

    return [number for outcome in told if not isinstance(outcome, State) for number in outcome[:2]]


@pytest.mark.parametrize("name", NUMBERS)
def test_the_base_passes(name: str) -> None:
    assert assess(TABLE, with_number(name, USUAL.get(name, 0.0))).verdict in PASSED


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
