"""What wind and swing add to the pulls: every strength is held against the load as it moves, no leg against less."""

import random
from itertools import combinations
from math import atan, cos, sin
from typing import Any

import numpy as np
import pytest

from checklist_app.operations.check import Strength, Verdict
from checklist_app.operations.evaluate import Evaluation, assess
from checklist_app.operations.graph import DontKnow
from checklist_app.operations.straight_lift.choices import ShareRule
from checklist_app.operations.task import Task
from tests.operations.straight_lift.lifts import TABLE, lift, shackle
from tests.operations.straight_lift.on_the_way import BOTH, STILL, TRAVELS, WIND
from tests.operations.straight_lift.rigged import CORNERS, THREE, four, one, three, two_hooks

PUSHED = WIND | {"side_area_m2": 4.0, "side_area_z_m": 0.4}
RIGS: dict[str, Any] = {
    "one": one, "two": lift, "three": three, "two hooks": two_hooks,
    **{rule.name: lambda rule=rule, **more: four(share_rule=rule, **more) for rule in ShareRule},
}


def at_once(task: Task) -> Evaluation:
    return assess(TABLE, task, with_spread=False)


def demands(ev: Evaluation) -> dict[str, float]:
    return {check.name: check.outcome.demand for check in ev.checks if isinstance(check.outcome, Strength)}


@pytest.mark.parametrize("rig", RIGS)
def test_a_load_that_hangs_still_pulls_as_where_nobody_asked(rig: str) -> None:
    assert demands(at_once(RIGS[rig](**STILL))) == demands(at_once(RIGS[rig]()))


@pytest.mark.parametrize("rig", RIGS)
@pytest.mark.parametrize("way", [TRAVELS, PUSHED, BOTH], ids=["travels", "wind", "both"])
def test_no_strength_is_held_against_less_than_at_rest(rig: str, way: dict[str, Any]) -> None:
    still, moved = demands(at_once(RIGS[rig]())), demands(at_once(RIGS[rig](**way, out_of_step_m=0.0)))
    assert still.keys() == {name for name in moved if not name.startswith("hook_together")}
    assert all(moved[name] > still[name] for name in still), {name: (still[name], moved[name]) for name in still}


def test_a_hoist_carries_what_a_pendulum_pulls_at_the_limit_of_its_swing() -> None:
    """By hand: 10° out of plumb, braked with 0.1 g: √(9 + 0.01) − 2 cos 10° = 1.0321 times its load."""
    ev = at_once(lift(**TRAVELS | {"travel_speed_m_s": 0.5, "stopping_m": 0.1275}))
    swing, braked = ev["swing_deg"], 0.5 * 0.5 / (2.0 * 0.1275) / 9.80665
    assert demands(ev)["hoist_strength"] == pytest.approx((9.0 + braked ** 2) ** 0.5 - 2.0 * cos(swing * 0.01745329252))
    assert 1.01 < demands(ev)["hoist_strength"] < 1.04


def test_not_knowing_how_it_stops_is_never_better_than_knowing() -> None:
    known = demands(at_once(lift(**TRAVELS)))
    unknown = demands(at_once(lift(**TRAVELS | {"stopping_m": DontKnow()})))
    assert all(unknown[name] >= known[name] for name in known)


def test_not_knowing_where_it_goes_cannot_be_assessed() -> None:
    assert at_once(lift(**STILL | {"way": DontKnow()})).verdict is Verdict.CANNOT


def wild(seed: int) -> tuple[Evaluation, tuple[str, ...]]:
    """A lift in the wind on three legs, or on four of any length, its centre of gravity somewhere between them."""
    r = random.Random(seed)
    own = {label: {"leg_length_m": r.uniform(1.35, 1.6)} for label in CORNERS}
    place = {"cg_x_m": r.uniform(0.4, 0.8), "cg_y_m": r.uniform(0.25, 0.5), "cg_z_m": r.uniform(-0.6, -0.1)}
    area = {"side_area_m2": r.uniform(1.0, 6.0), "side_area_z_m": r.uniform(0.0, 1.0)}
    wind = WIND | {"gust_m_s": r.uniform(3.0, 7.0), **area}
    if seed % 2:
        own = {label: own.get(label, {"leg_length_m": 1.5}) for label in THREE}
        return at_once(three(own, **place, **wind)), THREE
    return at_once(four(own, **place, **wind)), CORNERS


@pytest.mark.parametrize("seed", range(8))
def test_in_the_steady_push_no_leg_pulls_more_than_it_is_held_against(seed: int) -> None:
    """Weight and wind on the body where they act, every three of its legs solved by numpy, whichever way it blows."""
    ev, labels = wild(seed)
    eyes = np.array([ev[f"hung_eye[{label}]"] for label in labels])
    load, wind = ev["gross_load_kn"], ev["wind_force_kn"]
    off, plumb = ev["wind_over_cg_m"], ev["plumb_m"]
    held = np.array([ev[f"leg_pull_t[{label}]"] for label in labels]) * 9.80665
    for way in np.linspace(0.0, 2.0 * np.pi, 73):
        out = atan(wind / load)
        lean = np.arcsin(abs(off) * sin(out) / plumb)
        pull = np.hypot(load, wind) * np.array([sin(lean) * cos(way), sin(lean) * sin(way), cos(lean)])
        for three_of in combinations(range(len(labels)), 3):
            some = eyes[list(three_of)]
            ways = -some / np.linalg.norm(some, axis=1)[:, None]
            pulls = np.linalg.solve(ways.T, pull)
            if pulls.min() >= 0.0:
                assert np.all(pulls <= held[list(three_of)] + 1e-9)


def test_a_strength_at_its_limit_at_rest_is_over_it_on_the_way() -> None:
    task = {"hook_fitting": shackle(1.001)}
    assert at_once(lift(**task)).check("hook_fitting_strength").verdict is Verdict.CLOSE
    assert at_once(lift(**task, **TRAVELS)).check("hook_fitting_strength").verdict is Verdict.OVER
