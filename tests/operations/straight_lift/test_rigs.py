"""Every rig against statics written another way: sums of forces, energy, a linear programme, published cases."""

import math
import random
from typing import Any

import numpy as np
import pytest
from scipy.optimize import linprog, minimize

from checklist_app.operations.check import Verdict
from checklist_app.operations.evaluate import Evaluation, assess
from checklist_app.operations.graph import DontKnow, Stopped
from checklist_app.operations.straight_lift.choices import EyesGiven, LegsGiven, Rig, ShareRule
from checklist_app.operations.task import Key, Task
from tests.operations.straight_lift.lifts import TABLE, lift, sling
from tests.operations.straight_lift.rigged import CORNERS, THREE, four, one, three, two_hooks

UP = np.array([0.0, 0.0, 1.0])


def nominal(task: Task) -> Evaluation:
    return assess(TABLE, task, with_spread=False)


def rows(ev: Evaluation, name: str, labels: tuple[str, ...]) -> list[Any]:
    return [ev[f"{name}[{label}]"] for label in labels]


def ways(ev: Evaluation, labels: tuple[str, ...]) -> np.ndarray:
    """Unit vectors from each eye to the hook, in the load's axes."""
    hook = np.array(ev["hook_at"])
    along = [hook - np.array(ev[f"eye_at[{label}]"]) for label in labels]
    return np.array([way / np.linalg.norm(way) for way in along])


def random_lift(r: random.Random, labels: tuple[str, ...]) -> Task:
    wide, deep = r.uniform(0.8, 1.6), r.uniform(0.6, 1.2)
    places = {"left_front": (0, 0), "right_front": (1, 0), "left_rear": (0, 1), "right_rear": (1, 1), "left": (0, 0),
              "right": (1, 0), "middle": (0.5, 1)}
    legs = r.uniform(1.2, 2.0)
    own = {
        label: {"eye_x_m": wide * places[label][0] + r.uniform(-0.1, 0.1), "leg_length_m": legs * r.uniform(0.97, 1.03),
                "eye_y_m": deep * places[label][1] + r.uniform(-0.1, 0.1), "eye_z_m": r.uniform(-0.1, 0.1)}
        for label in labels
    }
    middle = (0.5 * wide, (0.5 if len(labels) == 4 else 0.35) * deep)
    at = {"cg_x_m": middle[0] + r.uniform(-0.1, 0.1), "cg_y_m": middle[1] + r.uniform(-0.1, 0.1),
          "cg_z_m": r.uniform(-0.8, -0.15), "bottom_z_m": -2.0, "top_z_m": 1.0}
    return (four if len(labels) == 4 else three)(own, **at)


@pytest.mark.parametrize("labels", [THREE, CORNERS], ids=["three", "four"])
def test_the_hook_is_as_far_from_the_centre_of_gravity_as_the_legs_let_it(labels: tuple[str, ...]) -> None:
    """Energy: the load hangs as low as it can; SLSQP finds the same place for legs that do not stretch."""
    r, done = random.Random(len(labels)), 0
    while done < 25:
        task = random_lift(r, labels)
        ev = nominal(task)
        if isinstance(ev["hook_at"], Stopped):
            continue
        eyes = np.array(rows(ev, "eye_at", labels))
        longs, cg = np.array(rows(ev, "leg_m", labels)), np.array([ev[f"cg_{axis}_m"] for axis in "xyz"])
        found = minimize(
            lambda hook, cg=cg: -float(np.linalg.norm(hook - cg)), eyes.mean(axis=0) + UP, method="SLSQP",
            constraints=[{
                "type": "ineq", "fun": lambda hook, at=eyes, to=longs: to - np.linalg.norm(hook - at, axis=1),
            }],
            options={"ftol": 1e-12, "maxiter": 500},
        )
        reach = float(np.linalg.norm(np.array(ev["hook_at"]) - cg))
        assert reach >= -found.fun - 1e-6, task
        done += 1


@pytest.mark.parametrize("labels", [THREE, CORNERS], ids=["three", "four"])
def test_pulls_balance_the_load_and_no_leg_can_pull_more(labels: tuple[str, ...]) -> None:
    """scipy's linear programme: the most a leg can pull with all pulls in balance and none pushing."""
    r, done = random.Random(10 + len(labels)), 0
    while done < 25:
        ev = nominal(random_lift(r, labels))
        shares = rows(ev, "leg_share", labels)
        if any(isinstance(share, Stopped) for share in shares):
            continue
        up = -np.array(ev["down"])
        for at, share in enumerate(shares):
            aim = np.zeros(len(labels))
            aim[at] = -1.0
            most = linprog(aim, A_eq=ways(ev, labels).T, b_eq=up, bounds=[(0, None)] * len(labels))
            assert share == pytest.approx(-most.fun, rel=1e-7, abs=1e-7)
        done += 1


def test_what_is_seen_in_hanging_axes_is_the_same_lift() -> None:
    ev = nominal(four(cg_x_m=0.7, cg_y_m=0.35))
    for label in CORNERS:
        eye, far = np.array(ev[f"hung_eye[{label}]"]), np.array(ev[f"eye_at[{label}]"]) - np.array(ev["hook_at"])
        assert np.linalg.norm(eye) == pytest.approx(np.linalg.norm(far), rel=1e-12)
        assert ev[f"eye_drop_m[{label}]"] == pytest.approx(-eye[2], rel=1e-12)
    assert tuple(ev["hung_cg"]) == pytest.approx((0.0, 0.0, -ev["plumb_m"]), abs=1e-12)


@pytest.mark.parametrize("cg, shares", [
    pytest.param((0.6, 0.4), (0.5, 0.5, 0.5, 0.5), id="derived, W/2 when centred"),
    pytest.param((0.7, 0.4), (5.0 / 12.0, 0.5, 5.0 / 12.0, 0.5), id="derived, W/2 (1 + min(±ξ, 0))"),
])
def test_the_worst_upright_part_of_a_leg_of_four_is_half_the_load_on_a_middle_line(
    cg: tuple[float, float], shares: tuple[float, ...]
) -> None:
    """Bound for a rectangle of level eyes: W/2 (1 + min(±ξ, ±η)); the legs hang it level."""
    x, y = cg
    height = 1.3
    own = {label: {"leg_length_m": math.dist((x, y, height), (*corner, 0.0))} for label, corner in zip(
        CORNERS, ((0.0, 0.0), (1.2, 0.0), (0.0, 0.8), (1.2, 0.8)), strict=True)}
    ev = nominal(four(own, cg_x_m=x, cg_y_m=y))
    upright = [ev[f"leg_share[{label}]"] * height / own[label]["leg_length_m"] for label in CORNERS]
    assert upright == pytest.approx(shares, rel=1e-9)


def test_published_rule_two_of_four_legs_may_carry_the_whole_rigid_load() -> None:
    """NAVEDTRA: two legs of a four-leg sling may carry practically the whole rigid load."""
    worst = nominal(four())["leg_share[left_front]"]
    two = nominal(four(share_rule=ShareRule.DIAGONALS))["leg_share[left_front]"]
    beta = math.radians(nominal(four())["leg_angle_deg[left_front]"])
    assert worst == pytest.approx(two, rel=1e-12) == pytest.approx(1.0 / (2.0 * math.cos(beta)), rel=1e-12)


def test_counting_three_of_four_legs_is_a_choice_and_says_what_two_would_carry() -> None:
    ev = nominal(four(share_rule=ShareRule.THREE))
    beta = math.radians(ev["leg_angle_deg[left_front]"])
    assert ev["leg_share[left_front]"] == pytest.approx(1.0 / (3.0 * math.cos(beta)), rel=1e-9)
    assert "two diagonal legs alone: up to 0.57 t" in ev.check("sharing").outcome.reason
    assert ev.check("pair_strength").outcome.capacity == pytest.approx(2.1 * 2.0)


def test_even_sharing_is_that_of_four_feet_of_equal_stiffness() -> None:
    """Classical: V = W/4 (1 ± ξ ± η); 1.2 × 0.8 m, e (0.1, −0.05), W 20 kN gives 5208, 6458, 4792, 3542 N."""
    own = {label: {"leg_length_m": math.dist((0.7, 0.35, 1.3), (*corner, 0.0))} for label, corner in zip(
        CORNERS, ((0.0, 0.0), (1.2, 0.0), (0.0, 0.8), (1.2, 0.8)), strict=True)}
    ev = nominal(four(own, cg_x_m=0.7, cg_y_m=0.35, share_rule=ShareRule.THREE))
    upright = [0.75 * 20_000.0 * ev[f"leg_share[{label}]"] * 1.3 / own[label]["leg_length_m"] for label in CORNERS]
    assert upright == pytest.approx([4791.667, 6458.333, 3541.667, 5208.333], rel=1e-6)


@pytest.mark.parametrize("cg, hooks, tilt_deg, pulls_n", [
    pytest.param((0.65, -0.4), (0.3, 0.7), -1.8905, (3650.6, 6343.4), id="derived, two hooks: energy minimisation"),
])
def test_two_hooks_hang_as_energy_says(
    cg: tuple[float, float], hooks: tuple[float, float], tilt_deg: float, pulls_n: tuple[float, float]
) -> None:
    """Hooks 0.4 m apart at 3 m, legs 1.5 m, eyes 1 m apart: a balance found by minimising the height."""
    own = {"right": {"eye_x_m": 1.0}}
    ev = nominal(two_hooks(own, hooks=hooks, cg_x_m=cg[0], cg_z_m=cg[1]))
    assert ev["hung_tilt_along_deg"] == pytest.approx(tilt_deg, abs=1e-4)
    assert [1000.0 * pull for pull in rows(ev, "leg_tension_kn", ("left", "right"))] == pytest.approx(pulls_n, rel=2e-4)


def test_plumb_legs_share_by_the_lever() -> None:
    ev = nominal(two_hooks())
    assert rows(ev, "leg_share", ("left", "right")) == pytest.approx([2.0 / 3.0, 1.0 / 3.0], rel=1e-12)
    assert ev["hung_tilt_along_deg"] == pytest.approx(0.0, abs=1e-9)
    assert ev.check("hook_hoist_strength[left]").outcome.demand == pytest.approx(2.0 / 3.0)


def test_two_hooks_do_not_hold_a_load_whose_centre_of_gravity_lies_over_its_eyes() -> None:
    assert nominal(two_hooks(cg_z_m=0.1)).check("stability").verdict is Verdict.OVER


def test_a_hoist_pulled_out_of_plumb_is_over_limit() -> None:
    assert nominal(two_hooks(hooks=(0.2, 1.0))).check("hook_plumb[left]").verdict is Verdict.OVER


def test_one_leg_carries_everything_and_its_load_swings_under_the_eye() -> None:
    ev = nominal(one(cg_x_m=0.02))
    assert ev["leg_share[left]"] == 1.0 and ev["leg_angle_deg[left]"] == pytest.approx(0.0, abs=1e-6)
    assert abs(ev["hung_tilt_along_deg"]) == pytest.approx(math.degrees(math.atan2(0.02, 0.4)))
    assert nominal(one(cg_z_m=0.1)).check("stability").verdict is Verdict.OVER


def test_a_top_heavy_load_on_four_legs_is_told_the_push_that_slackens_a_leg() -> None:
    steady, shaky = nominal(four(cg_z_m=0.2, top_z_m=1.0)), nominal(four(cg_z_m=0.9, bottom_z_m=-0.5, top_z_m=2.5))
    assert steady.check("push_stability").verdict is Verdict.WITHIN
    assert shaky.check("push_stability").outcome.capacity < steady.check("push_stability").outcome.capacity
    assert nominal(four()).check("push_stability").verdict is Verdict.NOT_APPLICABLE
    assert steady["slack_push_kn"] > 0.0 and steady["rise_to_go_over_m"] > 0.0


def test_a_leg_that_is_clearly_too_long_hangs_slack() -> None:
    ev = nominal(four({"right_rear": {"leg_length_m": 1.6}}))
    assert ev.check("legs_carry[right_rear]").verdict is Verdict.OVER


def test_outside_of_its_eyes_no_leg_pulls() -> None:
    for task in (four(cg_x_m=1.6), three(cg_x_m=1.6), two_hooks(cg_x_m=1.6)):
        assert nominal(task).verdict not in (Verdict.WITHIN, Verdict.CLOSE)


def test_the_hook_gives_the_legs_that_hang_it_level() -> None:
    """T = W d2 L / (h d), the form that university rigging courses print; here with four legs of unlike lengths."""
    own = {label: {"sling": sling(2.0, math.dist((0.7, 0.4, 1.3), (*corner, 0.0)))} for label, corner in zip(
        CORNERS, ((0.0, 0.0), (1.2, 0.0), (0.0, 0.8), (1.2, 0.8)), strict=True)}
    ev = nominal(four(
        own, legs_given=LegsGiven.HOOK_HEIGHT, hook_over_eyes_m=1.3, cg_x_m=0.7, every={"leg_length_m": None}
    ))
    assert ev["leg_m[left_front]"] == pytest.approx(math.dist((0.7, 0.4, 1.3), (0.0, 0.0, 0.0)))
    assert ev["hung_tilt_along_deg"] == pytest.approx(0.0, abs=1e-6)


def test_angles_read_on_the_legs_give_the_same_lift_and_the_flattest_counts() -> None:
    beta = math.degrees(math.atan2(0.5, 0.8660254))
    read = {"leg_angle_read_deg": beta, "leg_length_m": None, "sling": sling(2.0, 1.0)}
    ev = nominal(lift(both=read, legs_given=LegsGiven.ANGLES))
    assert ev["leg_m[left]"] == pytest.approx(1.0, rel=1e-6)
    flatter = nominal(lift(read | {"leg_angle_read_deg": beta + 1.0}, read, legs_given=LegsGiven.ANGLES))
    assert flatter["leg_share[right]"] > ev["leg_share[right]"]
    assert flatter["hook_height_m"] == pytest.approx(ev["hook_height_m"], abs=1e-6), "headroom counts with the steepest"
    apart = nominal(lift(read | {"leg_angle_read_deg": beta + 12.0}, read, legs_given=LegsGiven.ANGLES))
    assert apart.check("sling_strength[left]").verdict is Verdict.CANNOT


@pytest.mark.parametrize("read_deg, verdict", [
    (30.0, Verdict.WITHIN), (34.0, Verdict.CLOSE), (36.0, Verdict.OVER),
])
def test_an_angle_that_was_read_as_well_is_held_against_the_plan(read_deg: float, verdict: Verdict) -> None:
    assert nominal(lift({"leg_angle_read_deg": read_deg})).check("angle_agrees[left]").verdict is verdict


def test_a_rectangle_places_four_level_eyes() -> None:
    changes = {"eyes_given": EyesGiven.RECTANGLE, "eyes_apart_m": 1.2, "eyes_across_m": 0.8}
    by_rectangle, by_points = nominal(four(**changes)), nominal(four())
    assert rows(by_rectangle, "leg_share", CORNERS) == rows(by_points, "leg_share", CORNERS)
    assert nominal(three(**changes)).check("sling_strength[left]").verdict is Verdict.CANNOT


def test_nobody_knows_where_along_it_the_centre_of_gravity_is_so_each_leg_carries_all() -> None:
    ev = nominal(four(cg_x_m=DontKnow()))
    assert rows(ev, "leg_share", CORNERS) == [1.0] * 4
    assert ev.check("tilt_along").verdict is Verdict.CLOSE


@pytest.mark.parametrize("rig", [Rig.ONE_LEG, Rig.TWO_LEGS, Rig.THREE_LEGS, Rig.TWO_HOOKS])
def test_more_legs_than_the_rig_has_cannot_be_assessed(rig: Rig) -> None:
    ev = nominal(four().changed({Key("rig"): rig}))
    assert ev.verdict is Verdict.CANNOT
    assert "four legs" in str(ev.check("sling_strength[left_front]").stopped)


def test_fewer_legs_than_the_rig_has_are_waited_for() -> None:
    ev = nominal(three().changed({Key("rig"): Rig.FOUR_LEGS}))
    assert ev.verdict is Verdict.WAITING and "four legs" in str(ev.check("sling_strength[left]").stopped)


