"""How many legs count, what two of four would carry, and when a lift counts as symmetric."""

from math import cos, radians, sqrt

import pytest

from checklist_app.mechanics.slings import en_modes, legs
from checklist_app.mechanics.slings.kinds import Hitch, LegRule


@pytest.mark.parametrize("there_are, rule, count", [
    pytest.param(4, LegRule.TWO_DIAGONAL_LEGS, 2, id="published, Queensland guide for doggers 2010: two diagonal legs"),
    pytest.param(4, LegRule.THREE_LEGS, 3, id="published, EN 818-4: three- and four-leg slings alike"),
    pytest.param(3, LegRule.TWO_LEGS, 2, id="published, DGUV Information 209-021: two, unless sharing is assured"),
    pytest.param(4, LegRule.TWO_LEGS, 2, id="published, NAVEDTRA 14080: four legs by the two-leg value"),
    pytest.param(3, LegRule.TWO_DIAGONAL_LEGS, 3, id="derived, three legs are determinate: all count"),
    pytest.param(2, LegRule.THREE_LEGS, 2, id="by_hand, two legs are two"),
    pytest.param(1, LegRule.TWO_LEGS, 1, id="by_hand, one leg is one"),
])
def test_counted_legs(there_are: int, rule: LegRule, count: int) -> None:
    assert legs.counted_legs(there_are, rule) == count


@pytest.mark.parametrize("flat_deg, share", [
    pytest.param(45.0, 1.48, id="derived, EN 818-4 four legs at 45°: 2.1 / (2 cos 45°) = 1.48"),
    pytest.param(60.0, 1.50, id="derived, EN 818-4 four legs at 60°: 1.5 / (2 cos 60°) = 1.50"),
])
def test_two_legs_of_four_at_the_full_table(flat_deg: float, share: float) -> None:
    factor = en_modes.multi_leg_factor(4, Hitch.STRAIGHT, flat_deg)
    assert legs.pull_if_two_carry(factor, flat_deg) == pytest.approx(share, abs=5e-3)


def test_published_four_legs_against_two_diagonal_legs() -> None:
    """Transport engineering exercise: frame 330.4 × 120.5 in, hook 230 in over it, 95452 N: 30038 N a leg of four;
    two diagonal legs alone would take 60076 N each (derived)."""
    half_diagonal = sqrt(330.4 * 330.4 + 120.5 * 120.5) / 2.0
    sine = 230.0 / sqrt(half_diagonal * half_diagonal + 230.0 * 230.0)
    of_four, of_two = 95452.0 / (4.0 * sine), 95452.0 / (2.0 * sine)
    assert of_four == pytest.approx(30038.0, rel=5e-4)
    assert of_two == pytest.approx(60076.0, rel=5e-4)
    assert legs.counted_legs(4, LegRule.TWO_DIAGONAL_LEGS) * of_two == pytest.approx(4.0 * of_four)


def test_published_trigonometric_method_of_a_chain_maker() -> None:
    """Four legs of 3.15 t at 30° from vertical, three counted: 3 × 3.15 × cos 30° = 8.18 t; the table gives less."""
    counted = legs.counted_legs(4, LegRule.THREE_LEGS)
    assert counted * 3.15 * cos(radians(30.0)) == pytest.approx(8.18, abs=5e-3)
    assert en_modes.multi_leg_factor(counted, Hitch.STRAIGHT, 30.0) * 3.15 < 8.18


def test_the_weakest_leg_rates_them_all() -> None:
    """Directive 2006/42/EC, Annex I 4.1.2.5 (by_hand)."""
    assert legs.weakest_leg_wll_t((2.0, 1.5, 3.0, 1.6)) == 1.5


@pytest.mark.parametrize("from_vertical_deg, alike", [
    pytest.param((40.0, 40.0), True, id="published, EN 818-6: equal angles"),
    pytest.param((20.0, 38.0), False, id="published, EN 818-6: 18° apart"),
    pytest.param((30.0, 45.0, 38.0, 31.0), True, id="by_hand, four legs within 15°"),
    pytest.param((30.0, 45.1, 38.0, 31.0), False, id="by_hand, four legs, the extremes 15.1° apart"),
])
def test_leg_angles_alike(from_vertical_deg: tuple[float, ...], alike: bool) -> None:
    assert legs.leg_angles_alike(from_vertical_deg) is alike


@pytest.mark.parametrize("bearing_deg, alike", [
    pytest.param((0.0, 90.0, 180.0, 270.0), True, id="by_hand, four legs square"),
    pytest.param((350.0, 95.0, 175.0, 262.0), False, id="by_hand, gaps of 80° to 105°"),
    pytest.param((0.0, 120.0, 240.0), True, id="by_hand, three legs even"),
    pytest.param((0.0, 113.0, 240.0), True, id="by_hand, three legs, gaps of 113° to 127°"),
    pytest.param((-5.0, 180.0), True, id="by_hand, two legs nearly opposite"),
    pytest.param((0.0, 160.0), False, id="by_hand, two legs 20° from opposite"),
])
def test_plan_angles_alike(bearing_deg: tuple[float, ...], alike: bool) -> None:
    assert legs.plan_angles_alike(bearing_deg) is alike


def test_published_steep_legs_are_a_caution() -> None:
    """EN 818-6 as chain makers restate it: legs nearer vertical than 15° are to be avoided."""
    assert legs.nearly_vertical_below_deg() == 15.0
