"""Two legs from two hooks: figures worked out beforehand, heights of the centre of gravity, textbook curvature."""

import math
import random

import numpy as np
import pytest

from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.hanging.four_bars import Bars, bars, placed, slope_m
from checklist_app.mechanics.hanging.settling import settled
from checklist_app.mechanics.hanging.two_hooks import TwoHookHang, hung_from_two_hooks
from checklist_app.mechanics.hanging.two_lines import share_on_first_line
from tests.mechanics.hanging.bodies import TONNE_N, pair

LEVEL = (1.0, 0.0)


@pytest.mark.parametrize("cg, apart_m, tilt_deg, pulls_n, curve_m", [
    pytest.param((0.65, 0.4), 0.4, -1.8905, (3650.6, 6343.4), 4.5347, id="by_hand; scipy minimisation"),
    pytest.param((0.55, -0.3), 0.4, -0.7441, (4472.7, 5533.9), 3.848, id="by_hand, above its picks; scipy"),
])
def test_two_hooks(
    cg: tuple[float, float], apart_m: float, tilt_deg: float, pulls_n: tuple[float, float], curve_m: float
) -> None:
    hang = hung_from_two_hooks(bars(1.0, *cg, (1.5, 1.5), (apart_m, 0.0), LEVEL))
    assert hang.tilt_deg == pytest.approx(tilt_deg, rel=2e-4)
    assert [TONNE_N * share for share in hang.shares] == pytest.approx(pulls_n, rel=2e-4)
    assert hang.turn_curve_m == pytest.approx(curve_m, rel=2e-4) and hang.upright


def test_by_hand_legs_leaning_out_let_a_high_load_go_over() -> None:
    """Hooks 1.8 m apart over picks 1 m apart, centre of gravity 3.2 m above them: curvature −0.6298 m."""
    hang = hung_from_two_hooks(bars(1.0, 0.5, -3.2, (1.5, 1.5), (1.8, 0.0), LEVEL))
    assert hang.turn_curve_m == pytest.approx(-0.6298, rel=2e-4)
    assert not hang.upright


@pytest.mark.parametrize("share, below_m", [(0.5, 0.4), (0.3, 0.4), (0.5, -0.2)])
def test_common_practice_without_source_upright_lines_carry_by_the_lever(share: float, below_m: float) -> None:
    """P2 with separate vertical overhead points: a central load puts 50 % on each."""
    hang = hung_from_two_hooks(bars(2.0, 2.0 * share, below_m, (1.5, 1.5), (2.0, 0.0), LEVEL))
    assert hang.shares == pytest.approx((1.0 - share, share), abs=1e-12)
    assert hang.tilt_deg == pytest.approx(0.0, abs=1e-9)
    assert hang.turn_curve_m is None and hang.swing_curve_m == pytest.approx(1.5)


def test_two_hooks_in_one_place_are_one_hook() -> None:
    one = settled(pair((0.15, 0, -0.4), (1.1, 0.8)))
    two = hung_from_two_hooks(bars(1.0, 0.65, 0.4, (1.1, 0.8), (0.0, 0.0), LEVEL))
    assert two.shares == pytest.approx(one.shares, rel=1e-9)
    assert two.tilt_deg == pytest.approx(one.tilt_along_deg, abs=1e-9)
    assert two.turn_curve_m == pytest.approx(one.plumb_m, rel=1e-9)


def test_a_hook_raised_tilts_the_load() -> None:
    """Long upright lines, one hook 0.5 m higher over picks 2 m apart: about asin(0.5 / 2)."""
    hang = hung_from_two_hooks(bars(2.0, 1.0, 0.4, (20.0, 20.0), (2.0, 0.5), LEVEL))
    assert hang.tilt_deg == pytest.approx(math.degrees(math.asin(0.25)), rel=5e-3)


def test_a_leg_that_would_have_to_push_is_slack() -> None:
    hang = hung_from_two_hooks(bars(1.0, 1.3, 0.4, (1.5, 1.5), (1.0, 0.2), LEVEL))
    assert hang.shares == (0.0, 1.0)
    assert hang.cg.x == pytest.approx(hang.right.x, abs=1e-12) and hang.right.x == pytest.approx(1.0, abs=1e-12)


def random_bars(r: random.Random) -> Bars:
    span = r.uniform(0.6, 2.0)
    run, stands = r.uniform(0.0, 2.5), (span, 0.0)
    legs = (r.uniform(0.9, 2.0), r.uniform(0.9, 2.0))
    return bars(span, r.uniform(0.2, 0.8) * span, r.uniform(-0.3, 0.8), legs, (run, r.uniform(-0.3, 0.3)), stands)


def test_balances_of_300_random_chains_are_flat_places_of_the_energy() -> None:
    r, done, stays = random.Random(15), 0, 0
    while done < 300:
        what = random_bars(r)
        try:
            hang = hung_from_two_hooks(what)
        except OutOfRangeError:
            continue
        assert hang.off_balance < 1e-9
        assert_lengths(what, hang)
        if min(hang.shares) > 0.0:
            assert_turns(what, hang)
            stays += hang.upright
        done += 1
    assert 150 < stays < 300


def assert_lengths(what: Bars, hang: TwoHookHang) -> None:
    assert math.dist(hang.left, hang.right) == pytest.approx(what.span_m, abs=1e-9)
    reach = math.hypot(*hang.left), math.dist(hang.right, what.right_hook)
    assert all(far <= leg + 1e-9 for far, leg in zip(reach, what.legs_m, strict=True))


def assert_turns(what: Bars, hang: TwoHookHang) -> None:
    """Slope nothing and curvature as by differences of the height of the centre of gravity."""
    angle, step = math.atan2(hang.left.x, -hang.left.z), 1e-4
    rises = []
    for turn in (angle - step, angle, angle + step):
        place = placed(what, math.tan(turn / 2.0))
        if place is None:
            return
        rises.append(place.cg.z)
    curve = (rises[0] - 2.0 * rises[1] + rises[2]) / step / step
    assert rises[2] - rises[0] == pytest.approx(0.0, abs=1e-9 + 1e-6 * step * (1.0 + abs(curve)))
    assert hang.swing_curve_m == pytest.approx(curve, rel=1e-3, abs=1e-5)


def test_slope_alone_is_the_slope_of_the_place() -> None:
    r = random.Random(16)
    for _ in range(200):
        what, half = random_bars(r), r.uniform(-0.9, 0.9)
        place, slope = placed(what, half), slope_m(what, half)
        assert (place is None) == (slope is None)
        if place is not None and slope is not None:
            assert slope == pytest.approx(place.slope_m, rel=1e-9, abs=1e-9)


def test_euler_savary_gives_the_same_curvature() -> None:
    """z'' = a_I,z + (z_I − z_G) with the pole I of the legs: the closed form of textbooks on mechanisms."""
    r, done = random.Random(17), 0
    while done < 100:
        what = random_bars(r)
        try:
            hang = hung_from_two_hooks(what)
        except OutOfRangeError:
            continue
        if hang.turn_curve_m is None or min(hang.shares) <= 0.0:
            continue
        ups = [
            -np.array(hang.left) / what.legs_m[0], (np.array(what.right_hook) - np.array(hang.right)) / what.legs_m[1]
        ]
        if abs(np.linalg.det(ups)) < 0.05:
            continue
        left, right = np.array(hang.left), np.array(hang.right)
        radii = np.linalg.solve(np.column_stack([ups[0], -ups[1]]), right - left)
        pole = left + radii[0] * ups[0]
        pulls = [rad * (rad - leg) / leg for rad, leg in zip(radii, what.legs_m, strict=True)]
        speed = np.linalg.solve(np.array(ups), np.array(pulls))
        assert hang.turn_curve_m == pytest.approx(speed[1] + pole[1] - hang.cg.z, rel=1e-6, abs=1e-6)
        done += 1


def test_published_two_hook_tilt_factor() -> None:
    """0027/ND, appendix B.1.2, its example: L 25, c 12, d 13, a 10, b 14, x 0.9, z 0.8 m, 3°; 0.582144 worked out."""
    assert share_on_first_line((11.1, 13.9), (10.8, 14.8), 3.0) == pytest.approx(0.582144, abs=5e-7)


def test_two_upright_lines_agree_with_long_legs() -> None:
    hang = hung_from_two_hooks(bars(5.0, 2.0, 1.0, (5000.0, 5000.0), (4.9, -0.4), (5.0, 0.0)))
    share = share_on_first_line((2.0, 3.0), (1.0, 1.0), -hang.tilt_deg)
    assert hang.shares[0] == pytest.approx(share, rel=1e-3)
