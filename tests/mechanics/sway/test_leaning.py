"""A pull that leans in the load, against forces solved as equations; a swing, against a pendulum in small steps."""

from math import atan, cos, degrees, pi, sin, sqrt, tan

import numpy as np
import pytest
from scipy.integrate import solve_ivp
from scipy.optimize import brentq

from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.sway import leaning, stopping, swing
from checklist_app.mechanics.vectors import Vec

G = 9.80665


def pulls(eyes: np.ndarray, leaning_to: np.ndarray) -> np.ndarray:
    """Three pulls that hold a unit weight, and so much of it sideways, on one hook: equations solved by numpy."""
    ways = -eyes / np.linalg.norm(eyes, axis=1)[:, None]
    return np.linalg.solve(ways.T, np.array([-leaning_to[0], -leaning_to[1], 1.0]))


@pytest.mark.parametrize("seed", range(5))
def test_one_of_three_legs_takes_no_more_than_is_said_whichever_way_the_pull_leans(seed: int) -> None:
    r = np.random.default_rng(seed)
    around = np.sort(r.uniform(0.0, 0.8, 3)) + np.array([0.0, 2.0, 4.1])
    eyes = np.stack([np.cos(around), np.sin(around), r.uniform(-2.0, -0.8, 3)], axis=1) * r.uniform(0.5, 1.5, (3, 1))
    slope, long_m = r.uniform(0.01, 0.2), np.linalg.norm(eyes, axis=1)
    still = pulls(eyes, np.zeros(2))
    turned = [pulls(eyes, slope * np.array([cos(a), sin(a)])) for a in np.linspace(0.0, 2.0 * pi, 721)]
    most = np.max(turned, axis=0) - still
    for leg in range(3):
        other, third = (Vec(*eyes[(leg + k) % 3]) for k in (1, 2))
        lever = float(np.linalg.det(eyes))
        said = leaning.more_in_one_of_three(slope, float(long_m[leg]), other, third, lever)
        assert said == pytest.approx(most[leg], rel=1e-4) and said >= most[leg] - 1e-12


@pytest.mark.parametrize("slope", [0.0, 0.05, 0.3])
def test_one_of_two_legs_takes_what_the_equations_say(slope: float) -> None:
    left, right = np.array([-0.7, -1.1]), np.array([0.4, -0.9])
    ways = np.stack([-left / np.linalg.norm(left), -right / np.linalg.norm(right)], axis=1)
    # level is not counted at rest: the pull of the hook is upright
    still, leant = np.linalg.solve(ways, [0.0, 1.0]), np.linalg.solve(ways, [slope, 1.0])
    more = leaning.more_in_one_of_two(slope, float(np.linalg.norm(left)), 1.1, 0.7, 0.9, 0.4)
    assert more == pytest.approx(abs(leant[0] - still[0]), abs=1e-12)


def hangs_in_wind(plumb_m: float, off_m: float, force: float) -> tuple[float, float]:
    """Lean of the pull in the load and swing of the pull, by the moments about the hook: found by bisection."""
    def moment(turn: float) -> float:
        return plumb_m * sin(turn) - force * (plumb_m * cos(turn) - off_m * cos(turn))
    turn = brentq(moment, -1.5, 1.5)
    return abs(atan(force) - turn), atan(force)


@pytest.mark.parametrize("plumb_m, off_m", [(1.5, 0.4), (1.2, 0.9), (3.0, 0.2)])
@pytest.mark.parametrize("force", [0.01, 0.05, 0.1])
def test_the_slope_is_that_of_a_body_in_balance_on_its_hook(plumb_m: float, off_m: float, force: float) -> None:
    """The wind's height counts as the load hangs; turned with it, as here, it differs by the square of the lean."""
    lean, swung = hangs_in_wind(plumb_m, off_m, force)
    assert leaning.leaning_slope(off_m, degrees(swung), plumb_m) == pytest.approx(tan(lean), rel=2e-2)


def hardest_pull(speed: float, line: float, stop: float, wind: float, wait: float) -> tuple[float, float]:
    """Highest pull over the weight, and widest swing, of a load whose hook starts, travels and brakes in a gust."""
    brake = speed * speed / (2.0 * stop)
    ends = np.cumsum([speed / brake, wait, speed / brake, 5.0])
    now, pull, wide, begun = [0.0, 0.0], 1.0, 0.0, 0.0
    for end, hook in zip(ends, (brake, 0.0, -brake, 0.0), strict=True):
        def rates(_: float, y: list[float], hook: float = hook) -> list[float]:
            return [y[1], (-(G * sin(y[0])) + (wind * G - hook) * cos(y[0])) / line]
        way = solve_ivp(rates, (begun, end), now, rtol=1e-7, atol=1e-9, max_step=0.03)
        angle, rate = way.y
        pulled = (G * np.cos(angle) + (wind * G - hook) * np.sin(angle) + line * rate * rate) / G
        pull, wide = max(pull, float(pulled.max())), max(wide, float(np.abs(angle).max()))
        now, begun = [float(angle[-1]), float(rate[-1])], end
    return pull, wide


@pytest.mark.parametrize("speed, line, stop, wind", [
    (0.3, 3.0, 0.3, 0.0), (0.3, 3.0, 0.05, 0.0), (0.5, 3.0, 0.02, 0.0),
    (0.5, 4.0, 0.15, 0.02), (0.2, 1.5, 0.1, 0.03), (0.6, 6.0, 0.2, 0.01),
])
def test_no_moment_of_a_swing_pulls_more_than_is_said(speed: float, line: float, stop: float, wind: float) -> None:
    """Start, travel and stop at the worst time in a gust that comes at once, worked out by scipy in small steps."""
    brake_deg = swing.swing_after_sudden_start_deg(speed * speed / (2.0 * stop))
    stop_deg = min(brake_deg, swing.swing_after_stop_deg(speed, line))
    swing_deg = 2.0 * stop_deg + 2.0 * degrees(atan(wind))
    said = stopping.highest_pull_kn(1.0, swing_deg, speed * speed / (2.0 * stop * G) + wind)
    for wait in np.linspace(0.0, 2.0 * pi * sqrt(line / G), 7):
        pull, wide = hardest_pull(speed, line, stop, wind, float(wait))
        assert pull <= said and degrees(wide) <= swing_deg + 1e-3


@pytest.mark.parametrize("call, words", [
    (lambda: leaning.leaning_slope(-0.1, 2.0, 1.0), "wind off the centre of gravity is -0.1"),
    (lambda: leaning.leaning_slope(0.1, 91.0, 1.0), "swing out of plumb is 91"),
    (lambda: leaning.leaning_slope(0.1, float("nan"), 1.0), "swing out of plumb is nan"),
    (lambda: leaning.leaning_slope(0.1, 2.0, 0.0), "centre of gravity below the hook is 0"),
    (lambda: leaning.leaning_slope(9.0, 40.0, 1.0), "upside down"),
    (lambda: leaning.more_in_one_of_two(-0.1, 1.0, 1.0, 1.0, 1.0, 1.0), "slope of the pull is -0.1"),
    (lambda: leaning.more_in_one_of_two(0.1, 0.0, 1.0, 1.0, 1.0, 1.0), "length of a leg is 0"),
    (lambda: leaning.more_in_one_of_two(0.1, 1.0, 1.0, -1.0, 1.0, 1.0), "two legs is in one line"),
    (lambda: leaning.more_in_one_of_three(float("inf"), 1.0, Vec(1, 0, -1), Vec(0, 1, -1), 1.0), "slope of the pull"),
    (lambda: leaning.more_in_one_of_three(0.1, 1.0, Vec(1, 0, -1), Vec(0, 1, -1), 0.0), "three legs is in one plane"),
    (lambda: leaning.more_in_one_of_three(0.1, -1.0, Vec(1, 0, -1), Vec(0, 1, -1), 1.0), "length of a leg is -1"),
])
def test_a_lean_outside_what_is_covered_is_refused(call, words: str) -> None:  # type: ignore[no-untyped-def]
    with pytest.raises(OutOfRangeError, match=words):
        call()


def test_a_load_pushed_at_its_centre_of_gravity_hangs_as_it_did() -> None:
    assert leaning.leaning_slope(0.0, 8.0, 1.5) == 0.0
    assert leaning.more_in_one_of_two(0.0, 1.0, 0.8, 0.6, 0.8, 0.6) == 0.0
