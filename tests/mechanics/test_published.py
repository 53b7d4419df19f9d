"""Published and textbook figures, source and page beside each; tolerance is half a unit of the last printed digit.

`published`: figure printed in the source. `derived`: inputs printed, result worked out from statics. `by_hand`: ours.
"""

from math import radians

import pytest

from checklist_app.mechanics import angle_ratings, leg_tension, lift_class, shackles, suspension, weight
from checklist_app.mechanics.exact import cos, sin, sqrt
from checklist_app.mechanics.slings import legs, rules
from checklist_app.mechanics.slings.kinds import RuleSet


def symmetric_pull(
    weight_: float, horizontal_deg: float | None = None, sides: tuple[float, float] | None = None
) -> float:
    """Pull in one of two alike legs: by angle from the horizontal, or by leg length and hook height."""
    if sides is None:
        assert horizontal_deg is not None
        leg, drop, reach = 1.0, sin(radians(horizontal_deg)), cos(radians(horizontal_deg))
    else:
        leg, drop = sides
        reach = sqrt(leg * leg - drop * drop)
    return weight_ * leg_tension.share_of_leg(leg, drop, reach, drop, reach)


@pytest.mark.parametrize("horizontal_deg, printed, half_unit", [
    pytest.param(60.0, 1.155, 5e-4, id="published, sling-angle card of a rope maker, 60°: 1.155"),
    pytest.param(45.0, 1.414, 5e-4, id="published, same card, 45°: 1.414"),
    pytest.param(50.0, 1.305, 5e-4, id="published, same card, 50°: 1.305"),
    pytest.param(75.0, 1.035, 5e-4, id="published, same card, 75°: 1.035"),
    pytest.param(70.0, 1.064, 5e-4, id="published, same card, 70°: 1.064"),
    pytest.param(80.0, 1.015, 5e-4, id="published, same card, 80°: 1.015"),
    pytest.param(85.0, 1.004, 5e-4, id="published, same card, 85°: 1.004"),
    pytest.param(30.0, 2.000, 5e-4, id="published, same card, 30°: 2.000"),
    pytest.param(40.0, 1.555, 1.6e-3, id="published, same card, 40°: 1.555 (exact 1.5557; cards cut digits off)"),
    pytest.param(35.0, 1.742, 1.6e-3, id="published, same card, 35°: 1.742 (exact 1.7434; cards cut digits off)"),
])
def test_load_angle_factor(horizontal_deg: float, printed: float, half_unit: float) -> None:
    assert symmetric_pull(2.0, horizontal_deg) == pytest.approx(printed, abs=half_unit)


@pytest.mark.parametrize("weight_, horizontal_deg, printed, half_unit", [
    pytest.param(10000.0, 60.0, 5775.0, 5.0, id="published, sling card of a rope maker: 10000 lb, 60°: 5775 lb a leg"),
    pytest.param(10000.0, 30.0, 10000.0, 0.5, id="published, same card: 10000 lb, 30°: 10000 lb a leg"),
    pytest.param(1000.0, 60.0, 577.0, 0.5, id="published, wire rope card: 1000 lb, 60°: 577 lb a leg"),
    pytest.param(1000.0, 45.0, 707.0, 0.5, id="published, wire rope card: 1000 lb, 45°: 707 lb a leg"),
    pytest.param(2000.0, 15.0, 3864.0, 0.5, id="published, mathematics for operators: 2000 lb, 15°: 3864 lb a leg"),
    pytest.param(2000.0, 45.0, 1414.0, 0.5, id="derived, 2000 kg, 45°: 1414 kg a leg"),
])
def test_pull_in_a_leg_by_its_angle(weight_: float, horizontal_deg: float, printed: float, half_unit: float) -> None:
    assert symmetric_pull(weight_, horizontal_deg) == pytest.approx(printed, abs=half_unit)


@pytest.mark.parametrize("weight_, sides, printed, half_unit", [
    pytest.param(6000.0, (36.0, 24.0), 4500.0, 0.5, id="published, UK hire handbook 2018 p. 155: 6000 kg, 36/24 in"),
    pytest.param(15000.0, (16.0, 12.0), 10000.0, 0.5, id="published, British Columbia crane practice: 16/12 ft"),
    pytest.param(2.0, (16.25, 10.0), 1.625, 5e-4, id="published, crane institute sling note: 16.25 over 10 in: 1.625"),
    pytest.param(2 * 4000.0, (6.0, 4.0), 6000.0, 0.5, id="published, rope maker's card: L 6, H 4: 6000 lb takes 4000"),
])
def test_pull_in_a_leg_by_length_over_height(
    weight_: float, sides: tuple[float, float], printed: float, half_unit: float
) -> None:
    assert symmetric_pull(weight_, sides=sides) == pytest.approx(printed, abs=half_unit)


def test_published_vertical_legs_off_centre() -> None:
    """A sling maker's note on centre of gravity: 10000 lb, arms 8 and 2 ft: 8000 lb near it, 2000 lb far."""
    near = 10000.0 * leg_tension.share_of_leg(5.0, 5.0, 2.0, 5.0, 8.0)
    far = 10000.0 * leg_tension.share_of_leg(5.0, 5.0, 8.0, 5.0, 2.0)
    assert (near, far) == pytest.approx((8000.0, 2000.0), abs=0.5)


def test_published_university_arithmetic() -> None:
    """Old Dominion University rigging course, worked example: W 4000 lb, D 2 and 10, S 4 and 14, H 3 ft: 4444.44 and
    3111.11 lb. Its triangle cannot close (4² ≠ 2² + 3²): arithmetic of the formula only."""
    first = 4000.0 * leg_tension.share_of_leg(4.0, 3.0, 2.0, 3.0, 10.0)
    second = 4000.0 * leg_tension.share_of_leg(14.0, 3.0, 10.0, 3.0, 2.0)
    assert (first, second) == pytest.approx((4444.44, 3111.11), abs=5e-3)


def test_derived_eyes_at_different_heights_pull_as_statics_says_and_not_as_the_short_method() -> None:
    """W 3000 kg, D 0.6 and 0.9, H 1.5 and 1.1 m: 2170.1 and 1272.8 kg; the short method (own L/H times the share of
    the centre of gravity) gives 1938.7 and reads the lower point 10.7 % too low."""
    legs = sqrt(0.6 * 0.6 + 1.5 * 1.5), sqrt(0.9 * 0.9 + 1.1 * 1.1)
    lower = 3000.0 * leg_tension.share_of_leg(legs[0], 1.5, 0.6, 1.1, 0.9)
    upper = 3000.0 * leg_tension.share_of_leg(legs[1], 1.1, 0.9, 1.5, 0.6)
    assert (lower, upper) == pytest.approx((2170.1, 1272.8), abs=0.05)
    assert lower * 1.5 / legs[0] + upper * 1.1 / legs[1] == pytest.approx(3000.0, abs=1e-9)
    assert lower * 0.6 / legs[0] == pytest.approx(upper * 0.9 / legs[1], abs=1e-9)
    assert 1938.7 / lower - 1.0 == pytest.approx(-0.107, abs=5e-4)


def test_derived_two_legs_by_angles_from_a_textbook() -> None:
    """OpenStax College Physics, 15.0 kg on wires at 30° and 45°: 108 N and 132 N printed."""
    sides = [(sin(radians(a)), cos(radians(a))) for a in (30.0, 45.0)]
    (drop_a, reach_a), (drop_b, reach_b) = sides
    pull = 15.0 * 9.80
    assert pull * leg_tension.share_of_leg(1.0, drop_a, reach_a, drop_b, reach_b) == pytest.approx(108.0, abs=0.5)
    assert pull * leg_tension.share_of_leg(1.0, drop_b, reach_b, drop_a, reach_a) == pytest.approx(132.0, abs=0.5)


@pytest.mark.parametrize("wll_t, angle_deg, pair_t", [
    pytest.param(3.0, 30.0, 4.2, id="published, EN 1492 table, yellow 3 t, two legs to 45°: 4.2 t"),
    pytest.param(3.0, 60.0, 3.0, id="published, EN 1492 table, yellow 3 t, two legs over 45° to 60°: 3.0 t"),
    pytest.param(1.0, 45.0, 1.4, id="published, EN 1492 table, violet 1 t, two legs to 45°: 1.4 t"),
    pytest.param(4.0, 45.0, 5.6, id="published, EN 1492 table, grey 4 t, two legs to 45°: 5.6 t"),
    pytest.param(8.0, 20.0, 11.2, id="published, EN 1492 table, blue 8 t, two legs to 45°: 11.2 t"),
    pytest.param(5.0, 45.1, 5.0, id="published, EN 1492 table, red 5 t, two legs over 45° to 60°: 5.0 t"),
    pytest.param(10.0, 45.0, 14.0, id="published, EN 1492 table, orange 10 t, two legs to 45°: 14.0 t"),
])
def test_two_leg_mode_factor(wll_t: float, angle_deg: float, pair_t: float) -> None:
    rated = legs.weakest_leg_wll_t((wll_t, wll_t)) * rules.bridle_factor(RuleSet.EN, 2, angle_deg)
    assert rated == pytest.approx(pair_t, abs=0.05)


@pytest.mark.parametrize("steps, angle_deg, wll_t", [
    pytest.param(((0.0, 1.2), (45.0, 0.86), (90.0, 0.6)), 0.0, 1.2, id="published, DIN 580 M20 axial: 1200 kg"),
    pytest.param(((0.0, 1.2), (45.0, 0.86), (90.0, 0.6)), 45.0, 0.86, id="published, DIN 580 M20 to 45°: 860 kg"),
    pytest.param(((0.0, 1.2), (45.0, 0.86), (90.0, 0.6)), 90.0, 0.6, id="published, DIN 580 M20 at 90°: 600 kg"),
    pytest.param(((0.0, 1.2), (45.0, 0.86), (90.0, 0.6)), 30.0, 0.86, id="by_hand, DIN 580 M20 at 30°: the next step"),
    pytest.param(((0.0, 6292.0), (45.0, 1573.0)), 45.0, 1573.0, id="published, US list M20 at 45°: 1573 lb"),
])
def test_eye_ratings_are_steps(steps: tuple[tuple[float, float], ...], angle_deg: float, wll_t: float) -> None:
    assert angle_ratings.wll_at_angle_t("eye", steps, angle_deg, "PLATE") == wll_t


def test_published_din_eye_pair_is_not_twice_one_eye() -> None:
    """DIN 580 M20 pair at 45°: 2 × 860 × cos 45° = 1216 kg on the pair (derived), not 1720 kg."""
    one = symmetric_pull(1216.0, 45.0)
    assert one == pytest.approx(860.0, abs=0.5)


def test_published_bow_keeps_its_rating_to_120_degrees() -> None:
    """Shackle makers' charts to EN 13889: two slings in the bow, 120° between them, full WLL (4.75 t)."""
    assert shackles.bow_wll_t(4.75, 120.0) == 4.75


@pytest.mark.parametrize("load_kg, rigging_kg, dynamic_factor, gross_t", [
    pytest.param(5000.0, 800.0, 1.0, 5.8, id="published, crane examination question: 5000 + 800 = 5800 lb"),
    pytest.param(4500.0, 350.0, 1.0, 4.85, id="derived, 0027/ND: static 4.85 t"),
    pytest.param(4500.0, 350.0, 1.10, 5.335, id="derived, 0027/ND Table 5-1, onshore 3 to 100 t, DAF 1.10: 5.335 t"),
])
def test_gross_load(load_kg: float, rigging_kg: float, dynamic_factor: float, gross_t: float) -> None:
    mass_kg = weight.gross_mass_kg(load_kg, rigging_kg)
    assert weight.gross_load_t(mass_kg, dynamic_factor) == pytest.approx(gross_t, abs=5e-4)


def test_derived_class_at_76_percent_is_above_the_army_engineers_line() -> None:
    """EM 385-1-1: 3.80 t on a 5.0 t crane is 76 %, critical at 75 %, not yet at 90 %."""
    assert lift_class.class_by_utilisation(3.80 / 5.0) is lift_class.LiftClass.NON_ROUTINE


def test_derived_leg_lengths_that_hang_it_level() -> None:
    """Centre of gravity 0.15 m right of the middle of eyes 1 m apart, hook √3/2 over them."""
    along = suspension.hook_along_pick_line_m(1.0, 1.08282, 0.934077)
    assert along == pytest.approx(0.65, abs=5e-6)
    assert suspension.hook_off_pick_line_m(1.08282, along) == pytest.approx(0.8660254, abs=5e-6)
    pulls = (
        1000.0 * leg_tension.share_of_leg(1.08282, 0.8660254, 0.65, 0.8660254, 0.35),
        1000.0 * leg_tension.share_of_leg(0.934077, 0.8660254, 0.35, 0.8660254, 0.65),
    )
    assert pulls == pytest.approx((437.6167, 701.0766), rel=1e-5)
