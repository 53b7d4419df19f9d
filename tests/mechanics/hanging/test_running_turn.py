"""How easily a load turns on one sling that runs over the hook, and how stiffly it hangs on every rig."""

import math
import random

import mujoco
import numpy as np
import pytest
from scipy.optimize import brentq, minimize, minimize_scalar

from checklist_app.mechanics.hanging.body import rigging
from checklist_app.mechanics.hanging.four_bars import bars, placed
from checklist_app.mechanics.hanging.running_sling import hung_on_running_sling
from checklist_app.mechanics.hanging.running_turn import (
    rocking_radius_m,
    runs_out,
    share_where_it_sticks,
    turned_by_lever_deg,
    turned_by_rise_deg,
)
from checklist_app.mechanics.hanging.sharing import shared_by_stiffness
from checklist_app.mechanics.hanging.stiffness import couple_for_one_degree_nm, turning_stiffness_knm_per_rad
from checklist_app.mechanics.hanging.two_hooks import hung_from_two_hooks
from checklist_app.mechanics.vectors import Vec

Case = tuple[float, float, float, float]


class Sliding:
    """The load of 1 written as two coordinates: where the hook is on the ellipse, and how far the load is turned."""

    def __init__(self, case: Case) -> None:
        span, sling, self.e, self.d = case
        self.c, self.a = span / 2.0, sling / 2.0
        self.b = math.sqrt(self.a * self.a - self.c * self.c)

    def height(self, at: float, turned: float) -> float:
        """Of the centre of gravity under a hook that stays."""
        along, off = self.a * math.sin(at) - self.e, self.b * math.cos(at) + self.d
        return -(along * math.sin(turned) + off * math.cos(turned))

    def lowest(self, turned: float) -> float:
        """With the load held at that turn, the sling runs until the load is as low as it gets."""
        return float(minimize_scalar(
            lambda at: self.height(at, turned), bounds=(-1.57, 1.57), method="bounded", options={"xatol": 1e-12}
        ).fun)

    def rest(self) -> float:
        return float(minimize_scalar(self.lowest, bounds=(-1.4, 1.4), method="bounded", options={"xatol": 1e-11}).x)

    def lever(self, turned: float, step: float = 1e-4) -> float:
        """Slope of the energy: the couple that holds it there, per weight."""
        return (self.lowest(turned + step) - self.lowest(turned - step)) / (2.0 * step)


def some_cases(count: int, seed: int) -> list[Case]:
    r, found = random.Random(seed), list[Case]()
    while len(found) < count:
        span = r.uniform(0.5, 2.0)
        case = span, span * r.uniform(1.4, 3.0), r.uniform(-0.05, 0.05) * span, r.uniform(0.2, 0.8) * span
        if hung_on_running_sling(*case).upright:
            found.append(case)
    return found


def test_by_hand_radius_of_a_level_load_is_the_part_over_the_cosine() -> None:
    """Parts of 1.2 m, half span 0.5 m: cos β = 1.090871/1.2; ρ = 1.44/1.090871 = 1.320046 m, depth left 0.170825 m."""
    beta = math.degrees(math.asin(0.5 / 1.2))
    radius = rocking_radius_m(1.2, 1.2, beta)
    assert radius == pytest.approx(1.320046, abs=1e-6)
    assert hung_on_running_sling(1.0, 2.4, 0.0, 0.4).plumb_m - radius == pytest.approx(0.170825, abs=2e-6)


def test_what_is_left_below_the_rocking_point_is_the_curvature_of_the_energy() -> None:
    for case in some_cases(40, 3):
        hang, sliding = hung_on_running_sling(*case), Sliding(case)
        beta = math.degrees(math.acos(0.5 / hang.share))
        left_m = hang.plumb_m - rocking_radius_m(*hang.parts_m, beta)
        rest, step = math.radians(hang.tilt_deg), 2e-3
        curve = (sliding.lowest(rest + step) - 2.0 * sliding.lowest(rest) + sliding.lowest(rest - step)) / step ** 2
        assert left_m == pytest.approx(curve, rel=2e-3, abs=2e-4)
        assert (left_m > 0.0) is hang.upright
        ratio = math.sqrt(hang.parts_m[0] * hang.parts_m[1]) / sliding.b
        assert math.cos(math.radians(beta)) * ratio == pytest.approx(1.0, rel=1e-9)


def test_a_couple_turns_it_as_far_as_the_slope_of_the_energy_says() -> None:
    for case in some_cases(25, 4):
        sliding, end = Sliding(case), runs_out(*case)
        rest = sliding.rest()
        for part in (0.1, 0.4):
            lever = part * min(end.lever_m, 0.3)
            sides = []
            for side in (-1.0, 1.0):
                far = side * math.radians(end.turned_deg)

                def short(turn: float, case_: Sliding = sliding, at: float = rest, want: float = side * lever) -> float:
                    return case_.lever(at + turn) - want

                if short(0.0) * short(0.9 * far) < 0.0:
                    sides.append(abs(math.degrees(brentq(short, 0.0, 0.9 * far))))
            if len(sides) == 2:
                assert turned_by_lever_deg(*case, lever) == pytest.approx(max(sides), rel=1e-3, abs=1e-3)


def test_all_the_swing_turned_into_turning_is_the_rise_of_the_energy() -> None:
    for case in some_cases(25, 5):
        sliding, hang = Sliding(case), hung_on_running_sling(*case)
        rest = math.radians(hang.tilt_deg)
        turn = turned_by_rise_deg(*case, 0.002)
        rises = [sliding.lowest(rest + side * math.radians(turn)) - sliding.lowest(rest) for side in (-1.0, 1.0)]
        assert min(rises) == pytest.approx(0.002, rel=1e-5)


def test_it_runs_out_where_no_turn_holds_more() -> None:
    for case in some_cases(25, 6):
        sliding, end = Sliding(case), runs_out(*case)
        rest = math.radians(hung_on_running_sling(*case).tilt_deg)
        turns = np.radians(np.linspace(0.5, min(end.turned_deg, 89.0), 40))
        levers = [min(abs(sliding.lever(rest + turn)), abs(sliding.lever(rest - turn))) for turn in turns]
        assert max(levers) <= end.lever_m + 2e-3


def test_by_hand_a_level_load_far_below_its_picks_runs_to_the_end_of_its_sling_at_its_depth() -> None:
    """With the picks plumb one over the other the lever is the depth below the line through them: 0.4 m."""
    assert runs_out(1.0, 2.4, 0.0, 0.4).lever_m == pytest.approx(0.4, abs=1e-4)


def test_more_than_it_withstands_turns_it_right_round() -> None:
    assert turned_by_lever_deg(1.0, 2.4, 0.0, 0.4, 0.41) == turned_by_rise_deg(1.0, 2.4, 0.0, 0.4, 0.5) == 180.0


def test_sticking_shares_are_those_of_two_pulls_that_differ_by_the_capstan() -> None:
    """Two pulls, one e^(0.3 × wrap) times the other, that hold 1 together."""
    for gamma in (0.0, 30.0, 60.0, 90.0, 120.0):
        ratio = math.exp(0.3 * math.radians(180.0 - gamma))
        half = math.radians(gamma / 2.0)
        unit = abs(ratio * np.exp(1j * half) + np.exp(-1j * half))
        assert share_where_it_sticks(gamma) == pytest.approx(ratio / unit, rel=1e-12)
        assert share_where_it_sticks(gamma) > 0.5 / math.cos(half)


SLIDES = """<mujoco><option timestep="0.001" gravity="0 0 -9.80665" integrator="implicitfast"/><worldbody>
<site name="hook" pos="0 0 0"/><body><freejoint/><inertial pos="0 0 0" mass="1000" diaginertia="200 300 400"/>
<site name="left" pos="{left} 0 {up}"/><site name="right" pos="{right} 0 {up}"/></body></worldbody><tendon>
<spatial limited="true" range="0 {sling}" solreflimit="0.004 1" solimplimit="0.99 0.999 0.0001">
<site site="left"/><site site="hook"/><site site="right"/></spatial></tendon></mujoco>"""


def test_a_physics_engine_turns_it_as_far() -> None:
    """One tendon from pick to pick over a fixed point (mujoco), a couple put on slowly and left on, damped."""
    for span, sling, e, d in ((1.0, 2.4, 0.0, 0.4), (1.2, 3.0, 0.02, 0.6)):
        lever, hang = 0.03, hung_on_running_sling(span, sling, e, d)
        model = mujoco.MjModel.from_xml_string(
            SLIDES.format(left=-span / 2.0 - e, right=span / 2.0 - e, up=d, sling=sling)
        )
        found = []
        for side in (-1.0, 1.0):
            data, tilt = mujoco.MjData(model), math.radians(hang.tilt_deg)
            data.qpos[:] = [0.0, 0.0, -hang.plumb_m, math.cos(tilt / 2.0), 0.0, -math.sin(tilt / 2.0), 0.0]
            for step in range(9000):
                data.xfrc_applied[1, 4] = side * lever * 9806.65 * min(1.0, step / 3000.0)
                data.qfrc_applied[:] = -np.concatenate([1000.0 * data.qvel[:3], 400.0 * data.qvel[3:]])
                mujoco.mj_step(model, data)
            up = data.xmat[1].reshape(3, 3)[2]
            found.append(abs(math.degrees(math.atan2(up[0], up[2])) - hang.tilt_deg))
        assert max(found) == pytest.approx(turned_by_lever_deg(span, sling, e, d, lever), rel=0.02)


def potential(hang_legs: list[float], picks: np.ndarray, cg: np.ndarray, up: np.ndarray, stiff: float) -> float:
    """Least energy of a load of 1 that is held at a turn: its hook moves in the load until the stiff legs balance."""
    def energy(hook: np.ndarray) -> float:
        stretch = np.maximum(0.0, np.linalg.norm(hook - picks, axis=1) - hang_legs)
        return float(0.5 * stiff * stretch @ stretch - (hook - cg) @ up)

    hook = np.array([0.0, 0.0, 0.9 * min(hang_legs)]) + picks.mean(axis=0)
    for softer in (1e-3, 1e-2, 1e-1, 1.0):
        stiff_now, stiff = stiff, stiff * softer
        hook = minimize(energy, hook, method="BFGS", options={"gtol": 1e-9}).x
        stiff = stiff_now
    return energy(hook)


@pytest.mark.parametrize("picks, legs, depth", [
    ([(-0.6, -0.4, 0.0), (0.6, -0.4, 0.0), (-0.6, 0.4, 0.0), (0.6, 0.4, 0.0)], 1.5, 0.3),
    ([(-0.6, -0.4, 0.0), (0.6, -0.4, 0.0), (0.0, 0.5, 0.0)], 1.3, -0.1),
    ([(-0.5, 0.0, 0.0), (0.5, 0.0, 0.0)], 1.0, 0.4),
], ids=["four legs", "three legs, top-heavy", "two legs"])
def test_a_couple_for_one_degree_is_the_curvature_of_the_energy(
    picks: list[tuple[float, float, float]], legs: float, depth: float
) -> None:
    """Against second differences of the least energy at given turns (scipy), legs 5,000 times as stiff as the load."""
    what = rigging([Vec(*pick) for pick in picks], [legs] * len(picks), Vec(0.0, 0.0, -depth))
    stiff = [1e6] * len(picks)
    hang = shared_by_stiffness(what, 1.0, stiff)
    array, cg, up = np.array(picks), np.array([0.0, 0.0, -depth]), np.array(hang.upright)
    least, most = turning_stiffness_knm_per_rad(hang, 1.0, stiff)
    arm_across = depth if len(picks) == 2 else hang.plumb_m
    for axis, arm in ((0, hang.plumb_m), (1, arm_across)):
        step = 0.02
        way = np.eye(3)[axis] - up * up[axis]
        way /= np.linalg.norm(way)
        turned = [math.cos(s) * up + math.sin(s) * way for s in (-step, 0.0, step)]
        low, rest, high = (potential([legs] * len(picks), array, cg, each, 5e3) for each in turned)
        curve = (low - 2.0 * rest + high) / step ** 2
        assert couple_for_one_degree_nm(1.0, arm) == pytest.approx(1000.0 * curve * math.pi / 180.0, rel=5e-3)
    assert [least, most] == pytest.approx(sorted([hang.plumb_m, arm_across]), rel=1e-4)


def test_two_hooks_turn_as_stiffly_as_the_chain_of_bars_is_curved() -> None:
    """The rise for each radian of turn, squared, by second differences over the swing of the chain."""
    chain = bars(1.0, 0.65, 0.4, (1.5, 1.5), (0.4, 0.0), (1.0, 0.0))
    hang = hung_from_two_hooks(chain)
    assert hang.turn_curve_m is not None
    rest = math.tan(math.radians(-hang.angles_deg[0]) / 2.0)
    points = []
    for step in (-2e-3, 0.0, 2e-3):
        place = placed(chain, rest + step)
        assert place is not None
        points.append((math.atan2(place.right.z - place.left.z, place.right.x - place.left.x), place.cg.z))
    (t0, z0), (t1, z1), (t2, z2) = points
    curve = 2.0 * ((z2 - z1) / (t2 - t1) - (z1 - z0) / (t1 - t0)) / (t2 - t0)
    assert hang.turn_curve_m == pytest.approx(curve, rel=1e-2)
