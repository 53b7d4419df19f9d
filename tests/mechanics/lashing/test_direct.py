"""Direct lashings by the formulas of the rules, and the angles they need."""

from math import cos, hypot, radians, sin

import pytest
from hypothesis import given
from hypothesis import strategies as st

from checklist_app.mechanics.lashing import angles, direct
from checklist_app.mechanics.lashing.direct import Kind
from checklist_app.mechanics.lashing.lashed_body import Stretch
from checklist_app.mechanics.lashing.rule_sets import DIRECT_FRICTION_SHARE, RuleSet, weight_dan
from checklist_app.mechanics.vectors import Vec

G_1200 = weight_dan(RuleSet.EN, 1200.0)


@pytest.mark.parametrize("push, legs, expected_dan", [
    pytest.param(0.8, [(35.0, 40.0)] * 2, 447.3, id="derived, GDV forms: diagonal, 1200 kg, 35° and 40°, forwards"),
    pytest.param(0.5, [(45.0, 0.0)] * 2, 186.9, id="derived, GDV forms: slope lashing, 1200 kg, 45°, sideways"),
    pytest.param(0.8, [(30.0, 20.0)] * 2, 365.4, id="derived, GDV forms: one spring, 1200 kg, 30° and 20°, forwards"),
])
def test_force_of_each_leg(push: float, legs: list[tuple[float, float]], expected_dan: float) -> None:
    found = direct.direct_against_sliding_dan(G_1200, push, 1.0, 0.3, DIRECT_FRICTION_SHARE, legs)
    assert found == pytest.approx(expected_dan, abs=0.5)


def test_derived_shares_of_a_pull() -> None:
    """GDV forms: 35° to the deck, 40° from the length: X/L 0.6275, Y/L 0.5265, Z/L 0.5736."""
    shares = angles.shares_of_angles(35.0, 40.0)
    assert shares == pytest.approx((0.6275, 0.5265, 0.5736), abs=1e-4)
    assert hypot(*shares) == pytest.approx(1.0, abs=1e-12)


@pytest.mark.parametrize("k, far_dan", [(2.0, 350.0), (1.5, 175.0)])
def test_by_hand_the_far_strand_of_a_tie_down(k: float, far_dan: float) -> None:
    """EN 12195-1:2010 takes both alike; VDI 2700 gives the far side half."""
    ends = [(Vec(0.0, s * 0.3, 1.3), Vec(0.0, s * 1.2, 0.0)) for s in (1.0, -1.0)]
    near, far = direct.tie_down_strands(ends, 350.0, 2500.0, k)
    assert (near.tension_dan, far.tension_dan) == (350.0, far_dan)
    assert (near.half_lc_dan, far.half_lc_dan) == (1250.0, (k - 1.0) * 1250.0)


def test_both_legs_of_a_loop_count() -> None:
    """By hand: legs at 20° and 60° square to the side: each takes G (c − f μ) / Σ (cos α + f μ sin α)."""
    counted = sum(cos(radians(a)) + 0.225 * sin(radians(a)) for a in (20.0, 60.0))
    found = direct.direct_against_sliding_dan(G_1200, 0.5, 1.0, 0.3, 0.75, [(20.0, 0.0), (60.0, 0.0)])
    assert found == pytest.approx(G_1200 * (0.5 - 0.225) / counted, rel=1e-12)


def test_trap_a_leg_that_pulls_with_the_motion_counts_nothing() -> None:
    two = direct.direct_against_sliding_dan(G_1200, 0.8, 1.0, 0.3, 0.75, [(35.0, 40.0)] * 2)
    four = direct.direct_against_sliding_dan(G_1200, 0.8, 1.0, 0.3, 0.75, [(35.0, 40.0)] * 2 + [(35.0, 140.0)] * 2)
    assert four == two


def test_a_slack_leg_counts_nothing_against_tipping() -> None:
    """Anchored on the tipping side, low down: its bracket is below 0."""
    alone = direct.direct_against_tipping(981.0, 0.8, 1.0, 0.8, 0.5, [(1000.0, 45.0, 30.0, 1.1, 0.9)])
    slack = (1000.0, 10.0, 180.0, 1.1, 0.05)
    both = direct.direct_against_tipping(981.0, 0.8, 1.0, 0.8, 0.5, [(1000.0, 45.0, 30.0, 1.1, 0.9), slack])
    assert both == alone
    assert not alone.equality_holds


@pytest.mark.parametrize("attached_m, stays", [(1.1, True), (1.8, False)])
def test_high_lashings_let_the_foot_swing_out(attached_m: float, stays: bool) -> None:
    """Sideways, at what the formula against sliding gives: attached at 1.1 m the foot stays, at 1.8 m it does not."""
    of_it = angles.lie(Vec(0.45, 0.30, attached_m), Vec(1.2, 1.1, 0.0))
    alpha, beta = of_it.to_deck_deg, 90.0 - of_it.from_length_deg
    gives = 0.075 * 981.0 + 2000.0 * (of_it.across + 0.075 * of_it.down)
    inside = (1000.0, alpha, beta, attached_m, 0.05)
    assert direct.foot_stays(981.0, gives / 981.0, 1.0, 0.8, 0.35, [inside] * 2).holds is stays


@pytest.mark.parametrize("kind, legs", [(Kind.SLOPE, 1), (Kind.DIAGONAL, 1), (Kind.LOOP, 2), (Kind.SPRING, 2)])
def test_legs_of_each_kind(kind: Kind, legs: int) -> None:
    ends = [(Vec(0.5, 0.3, 1.0), Vec(1.5, 1.0, 0.0)), (Vec(0.5, -0.3, 1.0), Vec(1.5, -1.0, 0.0))][:legs]
    assert [pull.most_dan for pull in direct.direct_legs(kind, ends, 900.0, Stretch.WEB)] == [900.0] * legs


@given(st.floats(0.1, 3.0), st.floats(-3.0, 3.0), st.floats(0.1, 2.0))
def test_the_two_ends_and_the_two_angles_tell_the_same(x: float, y: float, up: float) -> None:
    of_it = angles.lie(Vec(0.0, 0.0, up), Vec(x, y, 0.0))
    along, across, down = angles.shares_of_angles(of_it.to_deck_deg, of_it.from_length_deg)
    assert (along, across, down) == pytest.approx((of_it.along, abs(of_it.across), of_it.down), abs=1e-9)


@pytest.mark.parametrize("measured_deg, agrees", [(47.0, True), (48.2, False), (float("nan"), False)])
def test_a_measured_angle_agrees_or_not(measured_deg: float, agrees: bool) -> None:
    assert angles.angles_agree(45.0, measured_deg, 3.0) is agrees
