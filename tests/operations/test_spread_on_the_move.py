"""No sample of what is uncertain is worse than the worst reported: a running sling, and two hooks that travel."""

import random

import pytest

from checklist_app.operations.evaluate import assess
from checklist_app.operations.gear import make
from checklist_app.operations.task import Key, Measured, Task
from tests.operations.rigged_lifts import some_rigged_lifts
from tests.operations.straight_lift.lifts import TABLE, told
from tests.operations.straight_lift.on_the_way import TRAVELS
from tests.operations.straight_lift.rigged import running
from tests.operations.test_spread import missed

SEED, SAMPLES = 5, 300


def on_a_running_sling(draw: random.Random, travels: bool) -> Task:
    span = draw.uniform(0.6, 1.4)
    long = span * draw.uniform(1.6, 2.6)
    own = make("round_sling", "R-1", {
        "wll_t": draw.choice((1.0, 2.0)), "length_m": long, "mass_kg": 1.0, "thickness_mm": 20.0})
    way = {**TRAVELS, "travel_speed_m_s": Measured(draw.uniform(0.05, 0.15), "plate"),
           "stopping_m": Measured(0.1, "tape")} if travels else {}
    return running({"sling": own}, **{
        "eyes_apart_m": Measured(span, "tape"), "running_m": Measured(long, "tape"),
        "cg_x_m": Measured(span / 2.0 + draw.uniform(-0.01, 0.01), "drawing"), "cg_y_m": Measured(0.0, "drawing"),
        "cg_z_m": Measured(-span * draw.uniform(0.5, 0.9), "trial"),
        "mass_kg": Measured(draw.uniform(300.0, 2000.0), draw.choice(("weighed", "plate"))),
        "right_eye_higher_m": Measured(draw.uniform(-0.02, 0.02), "tape"), "bottom_z_m": Measured(-1.6, "tape"),
        "top_z_m": Measured(0.3, "tape"), "highest_hook_m": 9.0, "room_height_m": 9.0, **way,
    })


def on_two_hooks(draw: random.Random, number: int) -> Task:
    task = some_rigged_lifts(3, SEED + number)[2]
    more = {**TRAVELS, "travel_speed_m_s": Measured(draw.uniform(0.05, 0.3), "plate"),
            "stopping_m": Measured(0.2, "tape"), "out_of_step_m": Measured(draw.uniform(0.02, 0.12), "tape")}
    return task.changed({Key(name): told(value) for name, value in more.items()})


@pytest.mark.parametrize("number", range(12))
def test_no_sample_is_worse_on_a_running_sling_or_on_two_hooks_that_travel(number: int) -> None:
    draw = random.Random(SEED + number)
    for task in (on_a_running_sling(draw, number % 2 == 1), on_two_hooks(draw, number)):
        ev = assess(TABLE, task)
        assert sum(bool(check.drivers) for check in ev.checks) > 5
        assert not (found := missed(ev, SAMPLES, SEED + number)), f"seed {SEED + number}: {found}"
