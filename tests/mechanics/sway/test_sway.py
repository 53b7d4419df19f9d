"""Wind, swing, tag line and zones: published figures, elliptic integrals, and the equation of motion itself."""

import math
from collections.abc import Callable

import mpmath
import numpy as np
import pytest
from scipy.integrate import solve_ivp

from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.gravity import STANDARD_GRAVITY_M_S2
from checklist_app.mechanics.sway import swing, tag_line, wind, zone

G = STANDARD_GRAVITY_M_S2


def test_published_wind_sheet_of_a_lifting_contractor() -> None:
    """A crawler crane's wind sheet: 11.3 m/s gives 79.81 N/m²; 1.2 × q × 96.80 m² = 9270.29 N; the same force on
    133.65 m² is 57.80 N/m²."""
    q = wind.wind_pressure_n_m2(11.3)
    assert q == pytest.approx(79.81, abs=5e-3)
    force = wind.wind_force_kn(q, 1.2, 96.80)
    assert 1000.0 * force == pytest.approx(9270.29, abs=0.01)
    slower = wind.wind_speed_for_force_m_s(force, 1.2, 133.65)
    assert wind.wind_pressure_n_m2(slower) == pytest.approx(57.80, abs=5e-3)


@pytest.mark.parametrize("shape, drag", [
    pytest.param(wind.Shape.BOX, 2.0, id="published, a loader crane maker's manual: box 2"),
    pytest.param(wind.Shape.CYLINDER, 1.0, id="published, same manual: cylinder 1"),
    pytest.param(wind.Shape.NOT_KNOWN, 2.4, id="published, same manual: not known 2.4"),
])
def test_drag_coefficients(shape: wind.Shape, drag: float) -> None:
    assert wind.drag_coefficient(shape) == drag


def test_a_shape_not_known_is_taken_for_the_bluntest() -> None:
    assert max(wind.DRAG.values()) == wind.DRAG[wind.Shape.NOT_KNOWN]


def test_wind_holds_the_line_along_the_resultant() -> None:
    angle = math.radians(wind.held_off_plumb_deg(3.0, 20.0))
    pull = wind.pull_of_the_line_kn(3.0, 20.0)
    assert (pull * math.sin(angle), pull * math.cos(angle)) == pytest.approx((3.0, 20.0), rel=1e-12)


def test_published_pendulum() -> None:
    """A physics exercise: L 1.11 m, g 9.81: 2.114 s."""
    assert swing.period_s(1.11, 0.0) * math.sqrt(G / 9.81) == pytest.approx(2.114, abs=5e-4)


@pytest.mark.parametrize("amplitude_deg, seconds", [
    pytest.param(0.0, 3.475203, id="by_hand, 3 m, small"), pytest.param(20.0, 3.501854, id="by_hand, 3 m, 20°; scipy"),
])
def test_period_of_three_metres(amplitude_deg: float, seconds: float) -> None:
    assert swing.period_s(3.0, amplitude_deg) == pytest.approx(seconds, rel=1e-6)


@pytest.mark.parametrize("amplitude_deg", [1.0, 10.0, 45.0, 70.0, 90.0])
def test_the_period_is_the_elliptic_integral(amplitude_deg: float) -> None:
    k = math.sin(math.radians(amplitude_deg) / 2.0)
    exact = 4.0 * math.sqrt(2.5 / G) * float(mpmath.ellipk(k * k))
    assert swing.period_s(2.5, amplitude_deg) == pytest.approx(exact, rel=1e-13)


def swung_deg(push: Callable[[float], float], seconds: float, line_m: float = 3.0) -> float:
    """Largest swing of a pendulum whose hoist is accelerated so, from rest, by the equation of motion."""
    def move(t: float, state: np.ndarray) -> list[float]:
        return [state[1], -(G * math.sin(state[0]) + push(t) * math.cos(state[0])) / line_m]

    times = np.linspace(0.0, seconds, 4000)
    path = solve_ivp(move, (0.0, seconds), [0.0, 0.0], t_eval=times, rtol=1e-10, atol=1e-12, max_step=0.02)
    return float(np.degrees(np.abs(path.y[0]).max()))


def test_by_hand_sudden_start_peaks_at_twice_the_steady_angle() -> None:
    """a 0.3 m/s²: 1.752217° and 3.504433°; reproduced by the equation of motion."""
    assert swing.steady_swing_deg(0.3) == pytest.approx(1.752217, rel=1e-6)
    assert swing.swing_after_sudden_start_deg(0.3) == pytest.approx(3.504433, rel=1e-6)
    assert swung_deg(lambda t: 0.3, 6.0) == pytest.approx(swing.swing_after_sudden_start_deg(0.3), rel=1e-5)


def test_no_moment_for_stopping_swings_it_further_than_is_told() -> None:
    period, most = swing.period_s(3.0, 5.0), 0.0
    for share in np.linspace(0.4, 1.6, 7):
        stop = share * period
        most = max(most, swung_deg(lambda t, at=stop: 0.5 if t < at else (-0.5 if t < 2.0 * at else 0.0), 6.0 * period))
    told = swing.swing_after_start_and_stop_deg(0.5)
    assert 0.9 * told < most <= told * 1.001


def test_stopping_dead_swings_as_the_energy_says() -> None:
    angle = math.radians(swing.swing_after_stop_deg(1.0, 3.0))
    assert 3.0 * (1.0 - math.cos(angle)) == pytest.approx(1.0 / (2.0 * G), rel=1e-9)
    assert swing.swing_out_m(3.0, math.degrees(angle)) == pytest.approx(3.0 * math.sin(angle), rel=1e-9)


def test_pull_at_the_bottom_of_a_swing() -> None:
    """W + m v² / L with v² = 2 g L (1 − cos A)."""
    line, amplitude, load = 4.0, 35.0, 10.0
    v2 = 2.0 * G * line * (1.0 - math.cos(math.radians(amplitude)))
    assert swing.highest_pull_kn(load, amplitude) == pytest.approx(load + load / G * v2 / line, rel=1e-12)


def test_by_hand_tag_line() -> None:
    """W 20 kN, 30° below level, 0.5 m off plumb on 3 m: 4325.75 and 22477.26 N; reproduced by a linear solve."""
    pull, hoist = tag_line.tag_line_pull_kn(20.0, 3.0, 0.5, 30.0), tag_line.hoist_pull_kn(20.0, 3.0, 0.5, 30.0)
    assert (1000.0 * pull, 1000.0 * hoist) == pytest.approx((4325.75, 22477.26), rel=1e-6)
    turned, below = math.asin(0.5 / 3.0), math.radians(30.0)
    forces = np.array([[-math.sin(turned), math.cos(below)], [math.cos(turned), -math.sin(below)]])
    assert [hoist, pull] == pytest.approx(list(np.linalg.solve(forces, [0.0, 20.0])), rel=1e-9)


def test_a_low_tag_line_adds_to_the_hook_and_a_level_one_hardly() -> None:
    pulls = [tag_line.hoist_pull_kn(20.0, 3.0, 0.5, below) for below in (0.0, 15.0, 30.0, 45.0, 60.0)]
    assert pulls == sorted(pulls) and pulls[0] == pytest.approx(20.0 / math.cos(math.asin(0.5 / 3.0)), rel=1e-12)


def test_zones_add_up() -> None:
    """Common practice, no source: height of the load and a metre; the way as wide as the load and twice swing + 1 m."""
    assert zone.zone_radius_m(zone.half_diagonal_m(1.2, 0.9), 1.1, 0.3, 1.0) == pytest.approx(0.75 + 1.1 + 0.3 + 1.0)
    assert zone.corridor_width_m(0.9, 0.3, 1.0) == pytest.approx(0.9 + 2.6)
    assert zone.thrown_m(2.0, 1.5) == pytest.approx(2.0 * math.sqrt(3.0 / G), rel=1e-12)


@pytest.mark.parametrize("call, words", [
    (lambda: wind.wind_pressure_n_m2(math.nan), "wind speed is nan"),
    (lambda: wind.wind_pressure_n_m2(61.0), "wind speed is 61"),
    (lambda: wind.wind_pressure_n_m2(-1.0), "wind speed is -1"),
    (lambda: wind.wind_force_kn(80.0, 0.0, 1.0), "drag coefficient is 0"),
    (lambda: wind.wind_force_kn(80.0, 1.0, 0.0), "area in the wind is 0"),
    (lambda: wind.wind_force_kn(math.nan, 1.0, 1.0), "pressure of the wind is nan"),
    (lambda: wind.wind_speed_for_force_m_s(0.0, 1.0, 1.0), "force of the wind is 0"),
    (lambda: wind.held_off_plumb_deg(-1.0, 1.0), "side force is -1"),
    (lambda: wind.pull_of_the_line_kn(1.0, math.nan), "load on the hook is nan"),
    (lambda: swing.period_s(0.0, 1.0), "length of the hoist line is 0"),
    (lambda: swing.period_s(1.0, 91.0), "amplitude is 91"),
    (lambda: swing.period_s(1.0, math.nan), "amplitude is nan"),
    (lambda: swing.steady_swing_deg(-0.1), "acceleration is -0.1"),
    (lambda: swing.swing_after_start_and_stop_deg(math.nan), "acceleration is nan"),
    (lambda: swing.rise_after_stop_m(-1.0), "travelling speed is -1"),
    (lambda: swing.swing_after_stop_deg(9.0, 3.0), "travelling speed is 9; allowed: a speed that does not swing it"),
    (lambda: swing.swing_after_stop_deg(1.0, 0.0), "length of the hoist line is 0"),
    (lambda: swing.swing_out_m(3.0, -1.0), "swing is -1"),
    (lambda: swing.highest_pull_kn(0.0, 10.0), "load on the hook is 0"),
    (lambda: tag_line.tag_line_pull_kn(20.0, 3.0, 3.0, 30.0), "held off plumb is 3; allowed: less than the hoist line"),
    (lambda: tag_line.tag_line_pull_kn(20.0, 3.0, 2.9, 60.0), "so low a tag line cannot hold it"),
    (lambda: tag_line.hoist_pull_kn(20.0, 3.0, 0.5, 61.0), "tag line below level is 61"),
    (lambda: tag_line.hoist_pull_kn(20.0, 3.0, math.nan, 30.0), "load held off plumb is nan"),
    (lambda: zone.half_diagonal_m(1.0, 0.0), "width of the load is 0"),
    (lambda: zone.thrown_m(math.nan, 1.0), "speed sideways is nan"),
    (lambda: zone.thrown_m(1.0, -1.0), "underside over the floor is -1"),
    (lambda: zone.zone_radius_m(1.0, 0.0, 0.0, 1.0), "height of the load is 0"),
    (lambda: zone.zone_radius_m(1.0, 1.0, math.nan, 1.0), "swing and throw is nan"),
    (lambda: zone.corridor_width_m(1.0, 0.1, -0.1), "margin of the way is -0.1"),
])
def test_it_refuses_and_says_why(call: Callable[[], object], words: str) -> None:
    with pytest.raises(OutOfRangeError, match=words):
        call()
