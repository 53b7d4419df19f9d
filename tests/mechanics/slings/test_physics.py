"""No tabulated factor allows more than statics does, and none grows as a leg lies flatter."""

from math import cos, radians, sin

import pytest
from hypothesis import given
from hypothesis import strategies as st

from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.slings import en_modes, legs, us_modes
from checklist_app.mechanics.slings.kinds import Hitch, LegRule

BETA = st.floats(0.0, 60.0)
LEGS = st.sampled_from([2, 3, 4])
CHOKABLE = st.sampled_from([Hitch.STRAIGHT, Hitch.CHOKED, Hitch.DOUBLED_CHOKED, Hitch.DOUBLE_WRAPPED_CHOKED])


@given(BETA, LEGS, CHOKABLE)
def test_en_legs_carry_no_more_than_three_of_them_by_statics(beta_deg: float, count: int, hitch: Hitch) -> None:
    by_statics = min(count, 3) * cos(radians(beta_deg)) * en_modes.single_leg_factor(hitch)
    assert en_modes.multi_leg_factor(count, hitch, beta_deg) <= by_statics + 1e-12


@given(BETA)
def test_an_en_basket_carries_no_more_than_two_parts_by_statics(beta_deg: float) -> None:
    assert en_modes.basket_factor(beta_deg) <= 2.0 * cos(radians(beta_deg)) + 1e-12


@given(BETA, BETA, LEGS, CHOKABLE)
def test_a_flatter_leg_never_carries_more(one_deg: float, other_deg: float, count: int, hitch: Hitch) -> None:
    steep, flat = sorted((one_deg, other_deg))
    assert en_modes.multi_leg_factor(count, hitch, flat) <= en_modes.multi_leg_factor(count, hitch, steep)
    assert en_modes.basket_factor(flat) <= en_modes.basket_factor(steep)
    from_level = [us_modes.from_horizontal_deg(angle) for angle in (flat, steep)]
    us = [us_modes.multi_leg_factor(count, hitch, alpha) for alpha in from_level]
    assert us[0] <= us[1] + 1e-12


@given(BETA, LEGS)
def test_us_factor_is_the_sine_for_the_legs_that_count(beta_deg: float, count: int) -> None:
    alpha_deg = us_modes.from_horizontal_deg(beta_deg)
    expected = min(count, 3) * sin(radians(alpha_deg))
    assert us_modes.multi_leg_factor(count, Hitch.STRAIGHT, alpha_deg) == pytest.approx(expected, abs=1e-12)


@given(BETA)
def test_counting_two_diagonal_legs_never_overloads_them(beta_deg: float) -> None:
    """Four legs of which two are counted: those two alone stay within their single-leg WLL; with three counted, not."""
    two = legs.counted_legs(4, LegRule.TWO_DIAGONAL_LEGS)
    safe = legs.pull_if_two_carry(en_modes.multi_leg_factor(two, Hitch.STRAIGHT, beta_deg), beta_deg)
    credited = legs.pull_if_two_carry(en_modes.multi_leg_factor(3, Hitch.STRAIGHT, beta_deg), beta_deg)
    assert safe <= 1.0 + 1e-12 < credited <= 1.5 + 1e-12


@given(st.lists(st.floats(0.1, 50.0), min_size=1, max_size=4))
def test_the_order_of_the_legs_does_not_matter(wll_t: list[float]) -> None:
    assert legs.weakest_leg_wll_t(wll_t) == legs.weakest_leg_wll_t(wll_t[::-1]) == min(wll_t)


@given(st.lists(st.floats(0.0, 359.0), min_size=2, max_size=4), st.floats(-360.0, 360.0))
def test_turning_the_whole_lift_changes_nothing(bearing_deg: list[float], turn_deg: float) -> None:
    whole = [float(round(each)) for each in bearing_deg]
    turned = [each + float(round(turn_deg)) for each in whole]
    assert legs.plan_angles_alike(whole) == legs.plan_angles_alike(turned)


@given(st.floats(allow_nan=True, allow_infinity=True).filter(lambda x: not 0.0 <= x <= 60.0))
def test_no_angle_beyond_60_degrees_passes(wild_deg: float) -> None:
    for hitch in (Hitch.STRAIGHT, Hitch.CHOKED):
        with pytest.raises(OutOfRangeError, match="0 to 60°"):
            en_modes.multi_leg_factor(4, hitch, wild_deg)
    with pytest.raises(OutOfRangeError, match="0 to 60°"):
        en_modes.basket_factor(wild_deg)
