"""One hook, figures worked out beforehand by a second code: energy minimisation, a physics engine, a linear programme.

None of these was printed by anybody: `by_hand`, with what else reproduces it.
"""

import math

import pytest

from checklist_app.mechanics.hanging.bounds import carried_by_opposite_pairs, most_of_any_length
from checklist_app.mechanics.hanging.settling import settled
from checklist_app.mechanics.hanging.sharing import shared_by_stiffness
from tests.mechanics.hanging.bodies import CORNERS, TONNE_N, box, pair


@pytest.mark.parametrize("cg, legs_m, tilt_deg, pulls_n", [
    pytest.param((0, 0, -0.4), (1.0, 1.0), 0.0, (5661.871, 5661.871), id="by_hand, centred; scipy minimisation"),
    pytest.param((0.15, 0, -0.4), (1.0, 1.0), -6.75696, (4468.714, 6776.377), id="by_hand, off centre; also mujoco"),
    pytest.param((0.15, 0, -0.4), (1.10, 0.80), 6.5788, (4225.9, 7040.8), id="by_hand, legs unlike; scipy"),
])
def test_two_legs(
    cg: tuple[float, float, float], legs_m: tuple[float, float], tilt_deg: float, pulls_n: tuple[float, float]
) -> None:
    hang = settled(pair(cg, legs_m))
    assert hang.tilt_along_deg == pytest.approx(tilt_deg, rel=1e-4, abs=1e-9)
    assert [TONNE_N * share for share in hang.shares] == pytest.approx(pulls_n, rel=1e-4)


def test_by_hand_leg_lengths_that_hang_it_level() -> None:
    """Centre of gravity 0.15 m off the middle, hook √3/2 over it: legs 1.08282 and 0.934077, pulls of 1000."""
    hang = settled(pair((0.15, 0, -0.4), (1.08282, 0.934077)))
    assert hang.tilt_along_deg == pytest.approx(0.0, abs=2e-4)
    assert [1000.0 * share for share in hang.shares] == pytest.approx((437.6167, 701.0766), rel=1e-5)


def test_by_hand_four_equal_legs_share_by_stiffness() -> None:
    """W 20 kN, k 2e6 N/m; reproduced by scipy's Nelder-Mead."""
    hang = shared_by_stiffness(box((0.1, -0.05, -0.3)), 20.0, [2000.0] * 4)
    assert hang.tilt_deg == pytest.approx(3.99912, rel=2e-4)
    assert [20e3 * share for share in hang.shares] == pytest.approx((5880.0, 7034.0, 5491.0, 4336.4), rel=2e-4)


@pytest.mark.parametrize("stiffness_kn_per_m, pulls_kn", [
    pytest.param(200.0, (5.6, 7.2, 5.2, 4.6), id="by_hand, soft"),
    pytest.param(2000.0, (3.4, 9.5, 3.0, 6.8), id="by_hand, medium"),
    pytest.param(2e6, (0.3, 12.6, 0.0, 9.9), id="by_hand, stiff: one leg slack"),
])
def test_one_leg_five_millimetres_long(stiffness_kn_per_m: float, pulls_kn: tuple[float, ...]) -> None:
    hang = shared_by_stiffness(box((0.1, -0.05, -0.3), (1.505, 1.5, 1.5, 1.5)), 20.0, [stiffness_kn_per_m] * 4)
    assert [20.0 * share for share in hang.shares] == pytest.approx(pulls_kn, abs=0.05)


def test_published_rule_two_legs_of_four_carry_practically_the_whole_rigid_load() -> None:
    """US Navy training text, p. 13-28; figures by hand: one diagonal 2 mm long, the other pulls W / (2 cos β)."""
    hang = shared_by_stiffness(box((0.0, 0.0, -0.3), (1.502, 1.5, 1.502, 1.5)), 20.0, [2e6] * 4)
    assert [20e3 * share for share in hang.shares] == pytest.approx((0.0, 11404.29, 0.0, 11404.29), abs=0.5)
    for alone in carried_by_opposite_pairs(settled(box((0.0, 0.0, -0.3)))):
        assert [20e3 * share for share in alone.shares] == pytest.approx((11404.29, 11404.29), abs=0.01)


def test_by_hand_most_a_leg_can_carry_whatever_the_lengths() -> None:
    """Vertical parts W/2 (1 + min(±ξ, ±η)) of a rectangle; reproduced by scipy's linear programme."""
    cg, hook = (0.1, -0.05, -0.3), (0.1, -0.05, 1.2)
    hang = settled(box(cg, tuple(math.dist(hook, corner) for corner in CORNERS)))
    upright_n = [
        20e3 * share * drop / far
        for share, drop, far in zip(most_of_any_length(hang), hang.drops_m, hang.distances_m, strict=True)
    ]
    assert hang.tilt_deg == pytest.approx(0.0, abs=1e-9)
    assert upright_n == pytest.approx((8750.0, 11250.0, 8333.333, 8333.333), rel=1e-5)


@pytest.mark.parametrize("off_vertical_deg, factor", [
    pytest.param(45.0, 2.1, id="tabulated 2.1 at 45°"), pytest.param(60.0, 1.5, id="tabulated 1.5 at 60°"),
])
def test_by_hand_a_stiff_load_at_the_full_table_of_four_legs_puts_one_and_a_half_ratings_on_two(
    off_vertical_deg: float, factor: float
) -> None:
    """Table of four legs read as three; two opposite legs that carry everything pull 1.5 times the rating of one."""
    reach = math.hypot(0.6, 0.4)
    hang = settled(box((0.0, 0.0, -0.3), (reach / math.sin(math.radians(off_vertical_deg)),) * 4))
    assert hang.angles_deg[0] == pytest.approx(off_vertical_deg, abs=1e-9)
    for alone in carried_by_opposite_pairs(hang):
        assert factor * max(alone.shares) == pytest.approx(1.5, abs=0.02)


def test_by_hand_a_skew_factor_of_one_and_a_quarter_is_no_upper_bound() -> None:
    """Two of four legs carry all: twice the equal share, where the skew factor in use offshore says 1.25."""
    hang = settled(box((0.0, 0.0, -0.3)))
    equal = 1.0 / (4.0 * math.cos(math.radians(hang.angles_deg[0])))
    assert max(most_of_any_length(hang)) / equal == pytest.approx(2.0, rel=1e-9)
