"""Two hooks that travel with one load: out of step, stopping one before the other, each with a quarter kept."""

import math
from typing import Any

import numpy as np
import pytest
from scipy.optimize import minimize

from checklist_app.operations.check import Strength, Verdict
from checklist_app.operations.evaluate import Evaluation, assess
from checklist_app.operations.graph import DontKnow
from checklist_app.operations.straight_lift.ways import Way
from checklist_app.operations.task import Task
from tests.operations.straight_lift.lifts import TABLE, hoist, lift
from tests.operations.straight_lift.on_the_way import STILL, TRAVELS, WIND
from tests.operations.straight_lift.rigged import four, two_hooks

PASSED = (Verdict.WITHIN, Verdict.CLOSE)
IN_STEP: dict[str, Any] = {**TRAVELS, "out_of_step_m": 0.05}


def worst(ev: Evaluation, name: str) -> Strength:
    outcome = ev.check(name).worst
    assert isinstance(outcome, Strength), outcome
    return outcome


def test_two_hooks_that_travel_are_assessed() -> None:
    ev = assess(TABLE, two_hooks(**IN_STEP))
    assert ev.verdict in PASSED
    for name in ("swing_limit", "side_room", "zone", "hook_together[left]", "hook_plumb[right]"):
        assert ev.check(name).computed, name


def test_by_hand_the_line_of_a_stop_ends_at_the_eyes() -> None:
    """2 m to the hook and 1.5 m of leg; 0.3 m/s stopped dead: cos A = 1 − 0.09/(2 × 9.80665 × 3.5), twice."""
    ev = assess(TABLE, two_hooks(**IN_STEP | {"stopping_m": DontKnow()}))
    assert ev["stop_line_m"] == pytest.approx(3.5)
    once = math.degrees(math.acos(1.0 - 0.09 / (2.0 * 9.80665 * 3.5)))
    assert ev["swing_deg"] == pytest.approx(2.0 * once, rel=1e-9)
    assert ev["hang_line_m"] == pytest.approx(3.9), "how far out it comes counts from where the lines hang"


def resting_share(apart_m: float) -> tuple[float, float]:
    """Shares of both hooks and the tilt by energy (scipy): stiff lines of 1.5 m, eyes 1.2 m apart, load of 1."""
    stiff = 3e4

    def energy(at: np.ndarray) -> float:
        x, z, turn = at
        along, up = np.array([math.cos(turn), math.sin(turn)]), np.array([-math.sin(turn), math.cos(turn)])
        cg = np.array([x, z])
        total = float(z)
        for eye, hook in ((-0.4, 0.0), (0.8, apart_m)):
            point = cg + eye * along + 0.4 * up
            stretch = max(0.0, float(np.linalg.norm(point - np.array([hook, 0.0]))) - 1.5)
            total += 0.5 * stiff * stretch * stretch
        return total

    at = minimize(energy, [0.4, -1.9, 0.0], method="Nelder-Mead", options={"xatol": 1e-11, "fatol": 1e-14,
                                                                          "maxiter": 20000}).x
    x, z, turn = at
    along, up = np.array([math.cos(turn), math.sin(turn)]), np.array([-math.sin(turn), math.cos(turn)])
    pulls = []
    for eye, hook in ((-0.4, 0.0), (0.8, apart_m)):
        point = np.array([x, z]) + eye * along + 0.4 * up
        pulls.append(stiff * max(0.0, float(np.linalg.norm(point - np.array([hook, 0.0]))) - 1.5))
    return pulls[0], pulls[1]


@pytest.mark.parametrize("step_m", [0.1, 0.25])
def test_no_hook_carries_more_out_of_step_than_is_told(step_m: float) -> None:
    """Against the least energy with the hooks that much nearer and farther; the swing on top is left out here."""
    ev = assess(TABLE, two_hooks(**TRAVELS | {"travel_speed_m_s": 0.02, "stopping_m": 1.0}, out_of_step_m=step_m))
    for place, label in enumerate(("left", "right")):
        told = worst(ev, f"hook_together[{label}]").demand
        least = max(resting_share(1.2 + sign * step_m)[place] for sign in (-1.0, 1.0))
        assert least * (1.0 - 2e-3) <= told <= 1.1 * least


def test_each_keeps_a_quarter_of_its_rating_on_the_way_and_not_else() -> None:
    """The left hook has two thirds of 1 t and what the swing adds: a hoist of 0.85 t is used up to 94 % of three
    quarters of it."""
    on_the_way = assess(TABLE, two_hooks(each_hook={"hook_hoist": hoist(0.85)}, **IN_STEP))
    together = worst(on_the_way, "hook_together[left]")
    assert together.capacity == pytest.approx(0.75 * 0.85)
    assert on_the_way.check("hook_together[left]").verdict is Verdict.OVER
    assert on_the_way.check("hook_hoist_strength[left]").verdict in PASSED
    for task in (two_hooks(), two_hooks(**STILL), two_hooks(**WIND), lift(**TRAVELS), four(**TRAVELS)):
        ev = assess(TABLE, task)
        assert all(check.verdict is Verdict.NOT_APPLICABLE for check in ev.checks if check.quantity == "hook_together")


@pytest.mark.parametrize("step_m, verdict", [(0.02, Verdict.WITHIN), (0.1, Verdict.CLOSE), (0.3, Verdict.OVER)])
def test_more_out_of_step_pulls_the_hooks_further_out_of_plumb(step_m: float, verdict: Verdict) -> None:
    assert assess(TABLE, two_hooks(**TRAVELS, out_of_step_m=step_m)).check("hook_plumb[right]").verdict is verdict


def test_a_step_that_nobody_knows_says_what_to_do_instead() -> None:
    ev = assess(TABLE, two_hooks(**TRAVELS, out_of_step_m=DontKnow()))
    assert ev.verdict is Verdict.CANNOT
    assert "move one hook at a time" in str(ev.check("hook_plumb[left]").stopped)


@pytest.mark.parametrize("way", [Way.TRAVELS, Way.BOTH])
def test_an_older_task_that_was_not_asked_how_far_waits(way: Way) -> None:
    task: Task = two_hooks(**{**TRAVELS, **WIND, "way": way})
    ev = assess(TABLE, task)
    assert ev.verdict is Verdict.WAITING
    assert "one hook ahead" in str(ev.check("hook_hoist_strength[left]").stopped)


def test_what_drives_it_is_named() -> None:
    ev = assess(TABLE, two_hooks(**TRAVELS, out_of_step_m=0.1))
    assert ev.check("hook_plumb[right]").drivers[0] == "step_way"


def test_hooks_that_stay_are_judged_as_ever() -> None:
    still, unasked = assess(TABLE, two_hooks(**STILL)), assess(TABLE, two_hooks())
    for label in ("left", "right"):
        assert worst(still, f"hook_hoist_strength[{label}]") == worst(unasked, f"hook_hoist_strength[{label}]")
        assert unasked.check(f"hook_plumb[{label}]").worst == unasked.check(f"hook_plumb[{label}]").outcome
