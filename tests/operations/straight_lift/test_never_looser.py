"""No input, however wild, is within limit while statics alone, written here another way, says otherwise."""

import math
import random
from itertools import combinations
from typing import Any

import numpy as np
import pytest

from checklist_app.mechanics.slings.kinds import Hitch
from checklist_app.mechanics.slings.wrap import Stop
from checklist_app.operations.check import Verdict
from checklist_app.operations.evaluate import Evaluation, assess
from checklist_app.operations.straight_lift.choices import Rig, ShareRule
from checklist_app.operations.task import Key, Measured, Task
from tests.operations.straight_lift.lifts import TABLE, eye, hoist, pick_point, sling
from tests.operations.straight_lift.rigged import CORNERS, THREE, four, one, three, two_hooks

PASSED = (Verdict.WITHIN, Verdict.CLOSE)
LABELS = {Rig.ONE_LEG: ("left",), Rig.THREE_LEGS: THREE, Rig.FOUR_LEGS: CORNERS, Rig.TWO_HOOKS: ("left", "right")}
MAKERS = {Rig.ONE_LEG: lambda own, every, **more: one(**more), Rig.THREE_LEGS: three, Rig.FOUR_LEGS: four,
          Rig.TWO_HOOKS: two_hooks}
WILD = (0.0, -1.0, 1e-9, 1e9, math.inf, -math.inf, math.nan)
ALMOST = 1.0 - 1e-9


def wild_lift(r: random.Random) -> tuple[Rig, Task]:
    """Any rig, ratings about the load, places anywhere near, now and then a number that cannot be."""
    rig = r.choice(tuple(LABELS))
    every = {
        "sling": sling(r.choice((0.3, 0.6, 1.0, 2.0)), 1.5), "eye": eye((35.0, 2.0), (60.0, r.uniform(0.3, 2.0))),
        "carrier": pick_point((60.0, r.uniform(0.5, 3.0))),
        "hitch": r.choice((Hitch.STRAIGHT, Hitch.STRAIGHT, Hitch.CHOKED, Hitch.BASKET)), "stop": Stop.COLLAR,
        "choke_angle_deg": r.uniform(0.0, 180.0), "part_angle_deg": r.uniform(0.0, 60.0),
    }
    tame = r.random() < 0.5
    own: dict[str, dict[str, Any]] = {
        label: {"leg_length_m": 1.5 if tame else r.choice((1.5, r.uniform(0.7, 3.0)))} for label in LABELS[rig]
    }
    task: Task = MAKERS[rig](own, every, mass_kg=Measured(r.uniform(200.0, 3000.0), "weighed"))
    changes: dict[Key, Any] = {}
    if rig is not Rig.TWO_HOOKS:
        changes[Key("hoist")] = hoist(r.choice((0.5, 1.0, 3.2)))
    if rig is Rig.FOUR_LEGS:
        changes[Key("share_rule")] = r.choice(tuple(ShareRule))
    for name, low, high in (("cg_x_m", -0.3, 1.5), ("cg_y_m", -0.2, 1.0), ("cg_z_m", -0.8, 0.8)):
        if r.random() < 0.5 and not tame:
            changes[Key(name)] = Measured(r.uniform(low, high), plus_minus=0.0)
    if r.random() < 0.2:
        key = r.choice([key for key, value in task.answers.items() if isinstance(value, Measured)])
        changes[key] = Measured(r.choice(WILD), plus_minus=0.0)
    return rig, task.changed(changes)


def says_otherwise(rig: Rig, task: Task) -> str:
    """Why it can never be within: from weight, WLLs and geometry as entered, and nothing that was computed."""
    number = {key: value.value for key, value in task.answers.items() if isinstance(value, Measured)}
    if not all(math.isfinite(each) for each in number.values()):
        return "a number is none"
    weight_t = number[Key("mass_kg")] / 1000.0
    if not weight_t > 0.0:
        return "nothing is lifted"
    labels = LABELS[rig]
    carry = [_carries_t(task, label) for label in labels]
    if sum(carry) < weight_t * ALMOST:
        return "all slings together carry less than the load"
    if rig is not Rig.TWO_HOOKS and task.answers[Key("hoist")].wll_t < weight_t * ALMOST:
        return "the hoist carries less than the load"
    cg = np.array([number[Key(f"cg_{axis}_m")] for axis in "xyz"])
    eyes = np.array([[number[Key(f"eye_{axis}_m", label)] for axis in "xyz"] for label in labels])
    if rig in (Rig.ONE_LEG, Rig.TWO_HOOKS) and cg[2] >= eyes[:, 2].max():
        return "the centre of gravity does not hang below two picks"
    if len(labels) > 2:
        return _upright(labels, number, eyes, weight_t, carry)
    return ""


def _carries_t(task: Task, label: str) -> float:
    """The most a sling can carry in any hitch: twice as a basket, its WLL otherwise."""
    wll = task.answers[Key("sling", label)].wll_t
    return float(2.0 * wll if task.answers[Key("hitch", label)] is Hitch.BASKET else wll)


def _upright(
    labels: tuple[str, ...], number: dict[Key, float], eyes: np.ndarray, weight_t: float, carry: list[float]
) -> str:
    """Two legs and the line between their eyes are a triangle: the angle between them is known, however it hangs.

    Of two legs at an angle γ the one that lies flatter has β ≥ γ/2, so all legs hold at most their sum less what that
    one loses.
    """
    lengths = [number[Key("leg_length_m", label)] for label in labels]
    lost = 0.0
    for i, j in combinations(range(len(labels)), 2):
        apart = float(np.linalg.norm(eyes[i] - eyes[j]))
        if lengths[i] + lengths[j] < apart * ALMOST:
            return "two legs do not reach each other"
        if abs(lengths[i] - lengths[j]) < apart:
            cos = (lengths[i] ** 2 + lengths[j] ** 2 - apart ** 2) / (2.0 * lengths[i] * lengths[j])
            half = 0.5 * math.acos(max(-1.0, min(1.0, cos)))
            lost = max(lost, (1.0 - math.cos(half)) * min(carry[i], carry[j]))
    return "leaning as they do, the legs hold less than the load" if sum(carry) - lost < weight_t * ALMOST else ""


@pytest.mark.parametrize("seed", range(4))
def test_no_lift_is_within_limit_while_statics_says_otherwise(seed: int) -> None:
    r, refused, passed = random.Random(seed), 0, 0
    for _ in range(70):
        rig, task = wild_lift(r)
        ev = assess(TABLE, task, with_spread=False)
        why = says_otherwise(rig, task)
        if ev.verdict in PASSED:
            passed += 1
            assert not why, f"seed {seed}: {why}: {rig}"
            balanced(rig, task, ev)
        refused += bool(why)
    assert refused > 10 and passed > 2, f"seed {seed}: {refused} refused, {passed} passed"


def balanced(rig: Rig, task: Task, ev: Evaluation) -> None:
    """A lift that passes hangs on legs that can hold it: least squares of pulls none of which exceeds its sling."""
    if rig is Rig.TWO_HOOKS:
        return
    labels = LABELS[rig]
    hook, up = np.array(ev["hook_at"]), -np.array(ev["down"])
    ways = np.array([hook - np.array(ev[f"eye_at[{label}]"]) for label in labels])
    ways /= np.linalg.norm(ways, axis=1)[:, None]
    weight_t = task.answers[Key("mass_kg")].value / 1000.0
    pulls = np.array([ev[f"leg_load_t[{label}]"] for label in labels])
    assert all(pull <= _carries_t(task, label) * (1.0 + 1e-9) for pull, label in zip(pulls, labels, strict=True))
    assert float(pulls @ (ways @ up)) >= weight_t * (1.0 - 1e-9), "the upright parts do not add up to the load"


ESSENTIAL = {
    Rig.ONE_LEG: ("hoist_strength", "stability", "tilt_along", "headroom", "room"),
    Rig.THREE_LEGS: ("hoist_strength", "hook_fitting_strength", "tilt_along", "headroom", "room"),
    Rig.FOUR_LEGS: ("hoist_strength", "hook_fitting_strength", "tilt_along", "headroom", "room", "sharing"),
    Rig.TWO_HOOKS: ("hook_hoist_strength[left]", "hook_hoist_strength[right]", "hook_plumb[left]", "stability",
                    "tilt_along", "headroom", "room"),
}


@pytest.mark.parametrize("rig", ESSENTIAL)
def test_no_rig_leaves_out_what_holds_the_load(rig: Rig) -> None:
    task = MAKERS[rig](None, None)
    ev = assess(TABLE, task, with_spread=False)
    for name in (*ESSENTIAL[rig], *(f"{each}[{label}]" for label in LABELS[rig] for each in (
            "sling_strength", "eye_strength", "carrier_strength", "leg_angle"))):
        assert ev.check(name).computed, name
