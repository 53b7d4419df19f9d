"""Mode and leg factors of both rule sets against printed tables; tolerance is half a unit of the last printed digit.

`published`: figure printed in the source. `derived`: inputs printed, result from statics. `by_hand`: ours.
"""

import pytest

from checklist_app.mechanics.slings import en_modes, rules, us_modes
from checklist_app.mechanics.slings.kinds import Hitch, LegRule, RuleSet
from checklist_app.mechanics.slings.legs import weakest_leg_wll_t

STRAIGHT, CHOKED = Hitch.STRAIGHT, Hitch.CHOKED
CARD = "published, EN 1492 table in a sling maker's instruction"


@pytest.mark.parametrize("label_t, hitch, printed_t", [
    pytest.param(2.0, STRAIGHT, 2.0, id=f"{CARD}: green 2 t, straight 2.0"),
    pytest.param(1.0, CHOKED, 0.8, id=f"{CARD}: violet 1 t, choked 0.8"),
    pytest.param(2.0, CHOKED, 1.6, id=f"{CARD}: green 2 t, choked 1.6"),
    pytest.param(6.0, CHOKED, 4.8, id=f"{CARD}: brown 6 t, choked 4.8"),
    pytest.param(4.0, CHOKED, 3.2, id="published, DGUV Information 209-021: 16 mm grade 4 chain 4000 kg, choked 3200"),
])
def test_en_one_sling(label_t: float, hitch: Hitch, printed_t: float) -> None:
    assert label_t * en_modes.single_leg_factor(hitch) == pytest.approx(printed_t, abs=0.05)


@pytest.mark.parametrize("label_t, part_deg, printed_t", [
    pytest.param(5.0, 0.0, 10.0, id=f"{CARD}: red 5 t, parallel 10.0"),
    pytest.param(3.0, 0.0, 6.0, id=f"{CARD}: yellow 3 t, parallel 6.0"),
    pytest.param(3.0, 45.0, 4.2, id=f"{CARD}: yellow 3 t, basket to 45°, 4.2"),
    pytest.param(3.0, 45.1, 3.0, id=f"{CARD}: yellow 3 t, basket 45° to 60°, 3.0"),
    pytest.param(8.0, 30.0, 11.2, id=f"{CARD}: blue 8 t, basket to 45°, 11.2"),
    pytest.param(8.0, 60.0, 8.0, id=f"{CARD}: blue 8 t, basket 45° to 60°, 8.0"),
    pytest.param(8.0, 7.0, 11.2, id="from memory, EN 1492: parallel ends at 6°, at 7° the 45° column counts"),
])
def test_en_basket(label_t: float, part_deg: float, printed_t: float) -> None:
    assert label_t * en_modes.basket_factor(part_deg) == pytest.approx(printed_t, abs=0.05)


@pytest.mark.parametrize("legs, hitch, from_vertical_deg, label_t, printed_t", [
    pytest.param(2, STRAIGHT, 45.0, 6.0, 8.4, id=f"{CARD}: brown 6 t, two legs to 45°, 8.4"),
    pytest.param(2, STRAIGHT, 60.0, 6.0, 6.0, id=f"{CARD}: brown 6 t, two legs 45° to 60°, 6.0"),
    pytest.param(3, STRAIGHT, 45.0, 2.0, 4.2, id=f"{CARD}: green 2 t, three legs to 45°, 4.2"),
    pytest.param(4, STRAIGHT, 45.0, 5.0, 10.5, id=f"{CARD}: red 5 t, four legs to 45°, 10.5"),
    pytest.param(4, STRAIGHT, 60.0, 5.0, 7.5, id=f"{CARD}: red 5 t, four legs 45° to 60°, 7.5"),
    pytest.param(3, STRAIGHT, 50.0, 10.0, 15.0, id=f"{CARD}: orange 10 t, three legs 45° to 60°, 15.0"),
    pytest.param(2, CHOKED, 45.0, 4.0, 4.48, id="from memory, EN 1492: grey 4 t, two legs choked to 45°, 4.48"),
    pytest.param(2, CHOKED, 60.0, 4.0, 3.2, id="from memory, EN 1492: grey 4 t, two legs choked 45° to 60°, 3.2"),
    pytest.param(4, CHOKED, 45.0, 4.0, 6.72, id="from memory, EN 1492: grey 4 t, four legs choked to 45°, 1.68 × 4"),
    pytest.param(4, CHOKED, 60.0, 4.0, 4.8, id="from memory, EN 1492: grey 4 t, four legs choked 45° to 60°, 1.2 × 4"),
    pytest.param(1, CHOKED, 0.0, 4.0, 3.2, id=f"{CARD}: grey 4 t, one leg choked 3.2"),
])
def test_en_legs(legs: int, hitch: Hitch, from_vertical_deg: float, label_t: float, printed_t: float) -> None:
    assert label_t * en_modes.multi_leg_factor(legs, hitch, from_vertical_deg) == pytest.approx(printed_t, abs=5e-3)


@pytest.mark.parametrize("pair_t, hitch, flat_deg, load_t, share", [
    pytest.param((1.0, 1.0), STRAIGHT, 45.0, 1.0, 0.71, id="common practice, no source: 1 t on two of 1 t, 71 %"),
    pytest.param((1.0, 1.0), STRAIGHT, 46.0, 1.0, 1.00, id="common practice, no source: the same beyond 45°, 100 %"),
    pytest.param((4.0, 4.0), STRAIGHT, 45.0, 4.5, 0.80, id="common practice, no source: 4.5 t on two of 4 t, 80 %"),
    pytest.param((4.0, 4.0), STRAIGHT, 60.0, 4.5, 1.125, id="common practice, no source: beyond 45°, 112.5 %"),
    pytest.param((1.0, 1.0), CHOKED, 45.0, 1.0, 0.89, id="common practice, no source: choked, 89 %"),
    pytest.param((1.0, 1.0), CHOKED, 60.0, 1.0, 1.25, id="common practice, no source: choked beyond 45°, 125 %"),
])
def test_common_practice_of_two_slings_on_an_engine(
    pair_t: tuple[float, float], hitch: Hitch, flat_deg: float, load_t: float, share: float
) -> None:
    capacity_t = en_modes.multi_leg_factor(2, hitch, flat_deg) * weakest_leg_wll_t(pair_t)
    assert load_t / capacity_t == pytest.approx(share, abs=5e-3)


@pytest.mark.parametrize("angle_deg, printed", [
    pytest.param(85.0, 0.996, id="published, sling-angle card of a rope maker (US), 85°: 0.996"),
    pytest.param(75.0, 0.966, id="published, same card, 75°: 0.966"),
    pytest.param(65.0, 0.906, id="published, same card, 65°: 0.906"),
    pytest.param(55.0, 0.819, id="published, same card, 55°: 0.819"),
    pytest.param(50.0, 0.766, id="published, same card, 50°: 0.766"),
    pytest.param(45.0, 0.707, id="published, same card, 45°: 0.707"),
    pytest.param(40.0, 0.643, id="published, same card, 40°: 0.643 (one copy misprints 0.6248)"),
    pytest.param(35.0, 0.574, id="published, same card, 35°: 0.574"),
    pytest.param(30.0, 0.500, id="published, same card, 30°: 0.500"),
])
def test_us_reduction_factor(angle_deg: float, printed: float) -> None:
    assert us_modes.sling_angle_factor(angle_deg) == pytest.approx(printed, abs=5e-4)
    assert us_modes.load_angle_factor(angle_deg) * us_modes.sling_angle_factor(angle_deg) == pytest.approx(1.0)


@pytest.mark.parametrize("angle_deg, printed_percent", [
    pytest.param(90.0, 200.0, id="published, wire rope sling maker's note: basket upright 200 %"),
    pytest.param(60.0, 170.0, id="published, same note: 60° 170 % (173.2, digits cut off)"),
    pytest.param(45.0, 140.0, id="published, same note: 45° 140 % (141.4, digits cut off)"),
    pytest.param(30.0, 100.0, id="published, same note: 30° 100 %"),
])
def test_us_basket(angle_deg: float, printed_percent: float) -> None:
    assert 100.0 * us_modes.basket_factor(angle_deg) == pytest.approx(printed_percent, rel=0.02)


@pytest.mark.parametrize("leg_lb, legs, angle_deg, printed_lb", [
    pytest.param(7100.0, 2, 60.0, 12300.0, id="published, US grade 80 3/8 in, two legs at 60°: 12300 lb"),
    pytest.param(7100.0, 2, 45.0, 10000.0, id="published, US grade 80 3/8 in, two legs at 45°: 10000 lb"),
    pytest.param(7100.0, 2, 30.0, 7100.0, id="published, US grade 80 3/8 in, two legs at 30°: 7100 lb"),
    pytest.param(7100.0, 4, 60.0, 18400.0, id="published, US grade 80 3/8 in, four legs at 60°: 18400 lb"),
    pytest.param(7100.0, 3, 45.0, 15100.0, id="published, US grade 80 3/8 in, three legs at 45°: 15100 lb"),
    pytest.param(7100.0, 3, 30.0, 10600.0, id="published, US grade 80 3/8 in, three legs at 30°: 10600 lb"),
])
def test_us_bridle(leg_lb: float, legs: int, angle_deg: float, printed_lb: float) -> None:
    """Printed to the hundred, cut off or rounded: half a per cent."""
    assert leg_lb * us_modes.multi_leg_factor(legs, STRAIGHT, angle_deg) == pytest.approx(printed_lb, rel=5e-3)


def test_published_us_bridle_used_choked() -> None:
    """British Columbia crane safety, practice question: bridle of 9900 lb used as chokers, 7425 lb."""
    assert 9900.0 * us_modes.single_leg_factor(CHOKED) == 7425.0


def test_published_us_choker_at_75_percent() -> None:
    """Canadian Centre for Occupational Health and Safety: choker hitches at 75 % or less of the rated capacity."""
    assert us_modes.single_leg_factor(CHOKED) <= 0.75


def test_published_us_choker_by_length_over_height() -> None:
    """Rope maker's card: choker rating 6000 lb, leg 6, height 4: factor 0.667, 4000 lb a sling."""
    from_vertical_deg = 48.18968510422140  # the leg of 6 over a height of 4
    alpha_deg = us_modes.from_horizontal_deg(from_vertical_deg)
    assert us_modes.sling_angle_factor(alpha_deg) == pytest.approx(0.667, abs=5e-4)
    assert 6000.0 * us_modes.sling_angle_factor(alpha_deg) == pytest.approx(4000.0, abs=0.5)


def test_published_a_second_wrap_adds_nothing() -> None:
    """A chain maker's instruction: choked in a double wrap 80 % of the tag, as in a single one."""
    assert en_modes.single_leg_factor(Hitch.DOUBLE_WRAPPED_CHOKED) == 0.8
    for modes in (en_modes, us_modes):
        assert modes.single_leg_factor(Hitch.DOUBLE_WRAPPED_CHOKED) == modes.single_leg_factor(CHOKED)
        assert modes.single_leg_factor(Hitch.DOUBLE_WRAPPED_BASKET) == modes.single_leg_factor(Hitch.BASKET)
        assert modes.single_leg_factor(Hitch.DOUBLED_CHOKED) == modes.single_leg_factor(CHOKED)


@pytest.mark.parametrize("rule_set, leg_rule, wll_t, hitches, flat_deg, together_t", [
    pytest.param(RuleSet.EN, LegRule.THREE_LEGS, (5.0,) * 4, (STRAIGHT,) * 4, 45.0, 10.5,
                 id=f"{CARD}: red 5 t, four legs, three counted, 10.5"),
    pytest.param(RuleSet.EN, LegRule.TWO_DIAGONAL_LEGS, (5.0,) * 4, (STRAIGHT,) * 4, 45.0, 7.0,
                 id=f"{CARD}: red 5 t, two of four counted, as two legs 7.0"),
    pytest.param(RuleSet.EN, LegRule.TWO_LEGS, (5.0,) * 3, (STRAIGHT,) * 3, 60.0, 5.0,
                 id=f"{CARD}: red 5 t, two of three counted, 45° to 60°, 5.0"),
    pytest.param(RuleSet.EN, LegRule.TWO_LEGS, (4.0, 5.0), (CHOKED, STRAIGHT), 45.0, 4.48,
                 id="derived, one leg choked rates the pair: 1.4 × 0.8 × 4"),
    pytest.param(RuleSet.US, LegRule.THREE_LEGS, (3.0,) * 4, (STRAIGHT,) * 4, 60.0, 4.5,
                 id="derived, US sine for three of four: 3 × sin 30° × 3"),
    pytest.param(RuleSet.US, LegRule.TWO_LEGS, (9.9 / 2.0,) * 2, (CHOKED,) * 2, 0.0, 7.425,
                 id="published, British Columbia crane safety: bridle of 9900 lb choked, 7425 lb"),
])
def test_legs_together(
    rule_set: RuleSet, leg_rule: LegRule, wll_t: tuple[float, ...], hitches: tuple[Hitch, ...], flat_deg: float,
    together_t: float,
) -> None:
    assert rules.bridle_wll_t(rule_set, leg_rule, wll_t, hitches, flat_deg) == pytest.approx(together_t, abs=5e-3)


@pytest.mark.parametrize("beta_deg", [0.0, 20.0, 45.0, 60.0])
def test_both_rule_sets_are_the_modules_they_name(beta_deg: float) -> None:
    for hitch in Hitch:
        assert rules.hitch_factor(RuleSet.EN, hitch) == en_modes.single_leg_factor(hitch)
        assert rules.hitch_factor(RuleSet.US, hitch) == us_modes.single_leg_factor(hitch)
    assert rules.basket_factor(RuleSet.EN, beta_deg) == en_modes.basket_factor(beta_deg)
    assert rules.basket_factor(RuleSet.US, beta_deg) == us_modes.basket_factor(90.0 - beta_deg)
    assert rules.bridle_factor(RuleSet.US, 4, beta_deg) == us_modes.multi_leg_factor(4, STRAIGHT, 90.0 - beta_deg)
