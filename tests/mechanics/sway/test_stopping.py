"""A hook that stops, hands on a tag line, a load rolling about two picks: published figures, and the laws."""

import math
from collections.abc import Callable

import numpy as np
import pytest
from scipy.integrate import solve_ivp
from scipy.optimize import brentq

from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.gravity import STANDARD_GRAVITY_M_S2
from checklist_app.mechanics.sway import by_hand, rolling, stopping, swing, tag_line

G = STANDARD_GRAVITY_M_S2


def test_published_guideline_figures_for_pushing_and_pulling() -> None:
    """HSE L23, guideline figures: to start or stop a load about 150 N (women, the lower figure), to keep it moving
    70 N."""
    assert by_hand.pulled_by_hand_limit_n() == 150.0
    assert by_hand.kept_up_by_hand_n() == 70.0


def test_by_hand_braking_from_a_walk() -> None:
    """1 m/s in 0.3 m is 0.17 g, which a steady pull holds at 9.6°."""
    braking = stopping.braking_m_s2(1.0, 0.3)
    assert braking / G == pytest.approx(0.17, abs=5e-3)
    assert swing.steady_swing_deg(braking) == pytest.approx(9.6, abs=0.05)


def test_speed_at_plumb_is_that_of_the_fall() -> None:
    """Energy: from where a hook that stops dead at v swings it to, it comes back through plumb at v."""
    for speed, line in ((0.33, 3.4), (1.0, 2.0), (0.05, 8.0)):
        swung = swing.swing_after_stop_deg(speed, line)
        assert stopping.speed_at_plumb_m_s(line, swung) == pytest.approx(speed, rel=1e-9)


def test_a_load_out_of_plumb_leans_as_two_forces_say() -> None:
    """By moments about where the line hangs: W L sin A = Q L cos A."""
    for angle in (0.0, 3.0, 20.0, 60.0):
        push = stopping.leaning_push_kn(12.0, angle)
        assert 12.0 * math.sin(math.radians(angle)) == pytest.approx(push * math.cos(math.radians(angle)), abs=1e-12)


def test_by_hand_load_pushed_at_sixteen_and_a_half_degrees() -> None:
    """Statics of a gantry: 5946.667 N stand for a load of 20 kN that hangs 16.55897° out of plumb."""
    assert 1000.0 * stopping.leaning_push_kn(20.0, 16.55897) == pytest.approx(5946.667, rel=1e-5)


def farthest_deg(start_s: float, braked_s: float, speed: float, wait_s: float, line: float) -> float:
    """Largest swing of a hook that starts evenly, travels, and brakes evenly, by the equation of motion."""
    def pushed(t: float) -> float:
        if t < start_s:
            return speed / start_s
        return -speed / braked_s if start_s + wait_s < t < start_s + wait_s + braked_s else 0.0

    def move(t: float, state: np.ndarray) -> list[float]:
        return [state[1], -(G * math.sin(state[0]) + pushed(t) * math.cos(state[0])) / line]

    end = start_s + wait_s + braked_s + 2.0 * math.pi * math.sqrt(line / G)
    times = np.linspace(0.0, end, 1500)
    path = solve_ivp(move, (0.0, end), [0.0, 0.0], t_eval=times, rtol=1e-8, atol=1e-10, max_step=0.02)
    return float(np.degrees(np.abs(path.y[0]).max()))


@pytest.mark.parametrize("speed, stop_m, line", [(0.33, 0.02, 3.4), (0.33, 0.1, 3.4), (0.6, 0.5, 3.0), (0.4, 0.8, 6.0)])
def test_no_moment_to_stop_swings_it_beyond_twice_the_lesser_of_braking_and_stopping_dead(
    speed: float, stop_m: float, line: float
) -> None:
    braking = stopping.braking_m_s2(speed, stop_m)
    once = min(swing.swing_after_sudden_start_deg(braking), swing.swing_after_stop_deg(speed, line))
    seconds, period = 2.0 * stop_m / speed, swing.period_s(line, 5.0)
    found = [farthest_deg(seconds, seconds, speed, wait * period, line) for wait in np.linspace(0.05, 1.05, 11)]
    assert max(found) <= 2.0 * once * 1.001
    assert max(found) >= 0.6 * 2.0 * once


def test_a_tag_line_against_wind_and_out_of_plumb_is_a_linear_solve() -> None:
    """Three forces on the load: hoist line, tag line, weight with a side wind away from the hand."""
    load, wind, line, off, below = 20.0, 0.4, 3.0, 0.25, 30.0
    swung, dips = math.asin(off / line), math.radians(below)
    forces = np.array([[-math.sin(swung), math.cos(dips)], [math.cos(swung), -math.sin(dips)]])
    _, pull = np.linalg.solve(forces, [wind, load])
    held, blown = tag_line.tag_line_pull_kn, by_hand.pull_against_side_force_kn
    assert held(load, line, off, below) + blown(wind, line, off, below) == pytest.approx(pull, rel=1e-9)


def test_a_load_on_two_picks_rolls_to_where_its_potential_is_lowest() -> None:
    """scipy: the turn at which −W d cos ρ − F e sin ρ stands still."""
    wind, lever, load, depth = 0.3, 0.7, 11.0, 0.25
    turn = brentq(lambda r: load * depth * math.sin(r) - wind * lever * math.cos(r), 0.0, 1.5)
    assert math.radians(rolling.rolled_by_side_force_deg(wind, lever, load, depth)) == pytest.approx(turn, rel=1e-9)


def test_a_level_line_reaches_as_far_as_it_is_long() -> None:
    assert by_hand.stands_off_m(6.0, 0.0) == 6.0
    assert by_hand.stands_off_m(6.0, 30.0) == pytest.approx(6.0 * math.sqrt(0.75), rel=1e-12)


@pytest.mark.parametrize("call, words", [
    (lambda: stopping.braking_m_s2(0.0, 1.0), "travelling speed is 0"),
    (lambda: stopping.braking_m_s2(1.0, math.nan), "way to stop is nan"),
    (lambda: stopping.speed_at_plumb_m_s(0.0, 3.0), "length of the hoist line is 0"),
    (lambda: stopping.speed_at_plumb_m_s(1.0, 91.0), "amplitude is 91"),
    (lambda: stopping.leaning_push_kn(0.0, 3.0), "load on the hook is 0"),
    (lambda: stopping.leaning_push_kn(1.0, 60.1), "swing out of plumb is 60.1"),
    (lambda: stopping.leaning_push_kn(1.0, math.nan), "swing out of plumb is nan"),
    (lambda: by_hand.pull_against_side_force_kn(-0.1, 3.0, 0.0, 0.0), "side force is -0.1"),
    (lambda: by_hand.pull_against_side_force_kn(0.1, 0.0, 0.0, 0.0), "length of the hoist line is 0"),
    (lambda: by_hand.pull_against_side_force_kn(0.1, 3.0, -1.0, 0.0), "held off plumb is -1"),
    (lambda: by_hand.pull_against_side_force_kn(0.1, 3.0, 3.0, 0.0), "allowed: less than the hoist line"),
    (lambda: by_hand.pull_against_side_force_kn(0.1, 3.0, 2.9, 60.0), "so low a tag line cannot hold it"),
    (lambda: by_hand.pull_against_side_force_kn(0.1, 3.0, 0.1, 60.1), "tag line below level is 60.1"),
    (lambda: by_hand.stands_off_m(0.0, 0.0), "length of the tag line is 0"),
    (lambda: by_hand.stands_off_m(5.0, math.nan), "tag line below level is nan"),
    (lambda: rolling.rolled_by_side_force_deg(-0.1, 0.5, 10.0, 0.1), "side force is -0.1"),
    (lambda: rolling.rolled_by_side_force_deg(0.1, math.nan, 10.0, 0.1), "off the picks is nan"),
    (lambda: rolling.rolled_by_side_force_deg(0.1, 0.5, 0.0, 0.1), "load on the hook is 0"),
    (lambda: rolling.rolled_by_side_force_deg(0.1, 0.5, 10.0, 0.0), "centre of gravity below the picks is 0"),
])
def test_it_refuses_and_says_why(call: Callable[[], object], words: str) -> None:
    with pytest.raises(OutOfRangeError, match=words):
        call()
