"""CSS Code, CTU Code, steel band, nails, timber, labels and lashing points: printed cases."""

import pytest

from checklist_app.mechanics.lashing import blocking, css_balance, css_forces, label
from checklist_app.mechanics.lashing.css_balance import Make
from checklist_app.mechanics.lashing.css_forces import Level
from checklist_app.mechanics.lashing.transport import Direction


def test_published_forces_of_the_first_example() -> None:
    """CSS Code, Annex 13 Appendix 1, example 1: 62 t, 6 × 4 × 4 m, on deck low at 0.7 L, k 0.89: 184, 384, 342 kN."""
    basic = css_forces.accelerations_m_s2(Level.DECK_LOW, 0.7)
    forces = css_forces.ship_forces(62.0, basic, 0.89, 1.0, 16.0, 24.0, 8.0, 12.0)
    assert (forces.along_kn, forces.across_kn, forces.upright_kn) == pytest.approx((184.0, 384.0, 342.0), abs=0.5)


@pytest.mark.parametrize("length_m, speed_kn, printed", [
    pytest.param(120.0, 15.0, 0.89, id="published, CSS Code Annex 13 example 1: L 120 m, 15 kn, 0.89"),
    pytest.param(160.0, 18.0, 0.82, id="published, CSS Code Annex 13 example 2: L 160 m, 18 kn, 0.82"),
    pytest.param(120.0, 15.0, 0.889, id="from memory, CSS Code Annex 13 formula of k: 0.889"),
    pytest.param(160.0, 18.0, 0.817, id="from memory, CSS Code Annex 13 formula of k: 0.817"),
])
def test_length_and_speed(length_m: float, speed_kn: float, printed: float) -> None:
    half_digit = 0.005 if printed in (0.89, 0.82) else 0.001
    assert css_forces.length_speed_factor(length_m, speed_kn) == pytest.approx(printed, abs=half_digit)


@pytest.mark.parametrize("angle_deg, printed", [
    pytest.param(40.0, 0.96, id="published, CSS Code Annex 13 example 1: friction 0.3 at 40°, f 0.96"),
    pytest.param(10.0, 1.04, id="published, CSS Code Annex 13 example 1: friction 0.3 at 10°, f 1.04"),
])
def test_printed_factor_of_a_lashing(angle_deg: float, printed: float) -> None:
    assert css_balance.securing_factor(0.3, angle_deg) == pytest.approx(printed, abs=0.005)


def test_published_moments_of_the_first_example() -> None:
    """CSS Code, Annex 13 Appendix 1, example 1: 384 kN at 1.8 m against half of 4 m: 691 < 1216 kN m, no tipping."""
    need = 384.0 * 1.8
    have = css_balance.tipping_have_knm(62.0, 2.0, [])
    assert need == pytest.approx(691.0, abs=0.5)
    assert have == pytest.approx(1216.0, abs=0.5)
    assert need < have


@pytest.mark.parametrize("make, breaking_kn, printed", [
    pytest.param(Make.WIRE_ONCE, 125.0, 100.0,
                 id="published, CSS Code Annex 13 example 1: wire 125 kN used once, 100 kN"),
    pytest.param(Make.STEEL_FITTING, 180.0, 90.0, id="published, CSS Code Annex 13 example 1: shackle 180 kN, 90 kN"),
])
def test_printed_msl(make: Make, breaking_kn: float, printed: float) -> None:
    assert css_balance.msl_kn(make, breaking_kn) == printed


def test_published_calculated_strength() -> None:
    """CSS Code, Annex 13 example 1: 90 / 1.5 is 60 kN; in space the divisor is 1.35."""
    assert css_balance.calculated_strength_kn(90.0, False) == 60.0
    assert css_balance.calculated_strength_kn(90.0, True) == pytest.approx(66.667, abs=0.001)


def test_derived_rule_of_thumb() -> None:
    """CSS Code, Annex 13 section 5: 1.5 t wants 14.7 kN of MSL on each side."""
    assert css_balance.rule_of_thumb_kn(1.5) == pytest.approx(14.7, abs=0.05)


def test_lengthways_only_what_weight_remains_gives_friction() -> None:
    """From memory, stricter: μ (m g − Fz), never μ m g."""
    lashings = [(60.0, 40.0)] * 2
    whole = css_balance.transverse_have_kn(62.0, 0.3, lashings)
    left = css_balance.longitudinal_have_kn(62.0, 342.0, 0.3, lashings)
    assert whole - left == pytest.approx(0.3 * 342.0)


@pytest.mark.parametrize("to_deck_deg, from_athwart_deg, counts", [
    (44.9, 45.1, False), (45.0, 60.0, True), (30.0, 45.0, True), (80.0, 90.0, True),
])
def test_flat_lashings_along_the_ship_do_not_count_against_tipping(
    to_deck_deg: float, from_athwart_deg: float, counts: bool
) -> None:
    """From memory, stricter."""
    assert css_balance.counts_against_tipping(to_deck_deg, from_athwart_deg) is counts


@pytest.mark.parametrize("level", list(Level))
def test_a_stiff_ship_only_ever_asks_for_more(level: Level) -> None:
    """From memory, stricter; between columns the stiffer one."""
    factors = [css_forces.b_over_gm_factor(level, ratio) for ratio in (7.0, 7.9, 8.0, 9.5, 12.9, 13.0, 40.0)]
    assert factors == sorted(factors, reverse=True)
    assert factors[0] == factors[1] and factors[-1] == 1.0


def test_between_two_places_on_board_the_larger_counts() -> None:
    assert css_forces.accelerations_m_s2(Level.DECK_HIGH, 0.85) == (3.8, 7.4, 9.2)
    assert css_forces.accelerations_m_s2(Level.LOWER_HOLD, 0.0) == (1.5, 5.5, 7.6)


def test_the_ship_asks_crosswise_of_the_whole_weight_and_lengthways_of_the_rest() -> None:
    forces = css_forces.ShipForces(184.0, 384.0, 342.0)
    aside = css_forces.ship_demand(forces, 62.0, Direction.LEFT).slides[0]
    ahead = css_forces.ship_demand(forces, 62.0, Direction.FORWARD).slides[0]
    assert (aside.push, aside.downward) == pytest.approx((384.0 / 608.22, 1.0))
    assert (ahead.push, ahead.downward) == pytest.approx((184.0 / 608.22, 1.0 - 342.0 / 608.22))


def test_published_battens() -> None:
    """CTU Code, Annex 7 Appendix 4: six battens 5 × 10 cm, 2.2 m free: 24 kN."""
    assert blocking.battens_kn(6, 5.0, 10.0, 2.2) == pytest.approx(24.35, abs=0.1)


def test_published_battens_hold_a_container_at_sea() -> None:
    """CTU Code, Annex 7 Appendix 4: 7.5 t, 0.4 g, friction 0.4, upward part 0.8: 29 < 30 kN.

    Trap: what is tabulated elsewhere is the weight that remains, 1 − 0.8.
    """
    weight_kn, downward = 7.5 * 9.81, 1.0 - 0.8
    need, have = 0.4 * weight_kn, 0.4 * downward * weight_kn + blocking.battens_kn(6, 5.0, 10.0, 2.2)
    assert need == pytest.approx(29.0, abs=0.5)
    assert have == pytest.approx(30.0, abs=0.5)
    left_dan = blocking.blocking_needed_dan(100.0 * weight_kn, 0.4, downward, 0.4, rigid_and_tight=True)
    assert left_dan / 100.0 < blocking.battens_kn(6, 5.0, 10.0, 2.2)
    wrong_dan = blocking.blocking_needed_dan(100.0 * weight_kn, 0.4, 0.8, 0.4, rigid_and_tight=True)
    assert wrong_dan < 0.3 * left_dan


def test_derived_dunnage_bag() -> None:
    """CTU Code, Annex 7 Appendix 4: 2.4 t, 0.8 g, friction 0.3: 13.54 kN, for a bag gives before it holds."""
    load_dan = blocking.blocking_needed_dan(2.4 * 981.0, 0.8, 1.0, 0.3, rigid_and_tight=False)
    assert load_dan / 100.0 == pytest.approx(13.54, abs=0.01)


@pytest.mark.parametrize("width_mm, thickness_mm, breaking_dan, msl_dan", [
    pytest.param(32.0, 1.6, 4352.0, 3046.4, id="published, GDV container handbook 5.2.14.16: band 32 × 1.6"),
    pytest.param(19.0, 0.6, 969.0, 678.0, id="derived, GDV container handbook 5.2.14.16: band 19 × 0.6"),
])
def test_steel_band(width_mm: float, thickness_mm: float, breaking_dan: float, msl_dan: float) -> None:
    assert label.band_breaking_dan(width_mm, thickness_mm) == pytest.approx(breaking_dan, abs=0.1)
    assert label.band_msl_dan(width_mm, thickness_mm) == pytest.approx(msl_dan, abs=0.5)


def test_published_four_parts_of_band() -> None:
    """GDV container handbook 5.2.14.16: four parts of band 32 × 1.6 hold 12185.6 daN."""
    assert 4.0 * label.band_msl_dan(32.0, 1.6) == pytest.approx(12185.6, abs=0.1)


@pytest.mark.parametrize("wet, each, number", [
    pytest.param(False, 0.80, 2, id="derived, GDV container handbook 4.3.8: nails for 318.8 daN, dry"),
    pytest.param(True, 1.59, 2, id="derived, GDV container handbook 4.3.8: nails for 318.8 daN, wet"),
])
def test_nails(wet: bool, each: float, number: int) -> None:
    """Never fewer than two: common practice, no source."""
    assert 318.8 / blocking.nail_dan(wet, False) == pytest.approx(each, abs=0.005)
    assert blocking.nails_needed(318.8, wet, False) == number


def test_published_side_wall_holds_a_slab() -> None:
    """GDV container handbook 5.2.14.20: inertia 0.8, friction 0.2: 0.6 G to hold, and a side wall holds 0.6 of it."""
    need = blocking.blocking_needed_dan(1.0, 0.8, 1.0, 0.2, True)
    assert need == pytest.approx(0.6, abs=1e-12)
    assert blocking.wall_kn(1.0, side_wall=True) == 0.6
    assert blocking.wall_kn(1.0, side_wall=False) == 0.4


def test_derived_timber_square_to_its_grain() -> None:
    """CSS Code, Annex 13 section 4: 0.3 kN/cm² on 10 × 10 cm: 30 kN."""
    assert blocking.timber_contact_kn(100.0) == pytest.approx(30.0, abs=1e-9)


@pytest.mark.parametrize("gaps_cm, filled", [((15.0,), True), ((10.0, 5.1), False), ((), True)])
def test_gaps(gaps_cm: tuple[float, ...], filled: bool) -> None:
    """MSC.1/Circ.1498: 15 cm in all."""
    assert blocking.voids_are_filled(gaps_cm) is filled


@pytest.mark.parametrize("gross_t, printed_dan", [
    pytest.param(7.5, 800.0, id="published, EN 12640 by TÜV: 7.5 t, 800 daN"),
    pytest.param(7.6, 1000.0, id="published, EN 12640 by TÜV: 7.6 t, 1000 daN"),
    pytest.param(12.0, 1000.0, id="published, EN 12640 by TÜV: 12 t, 1000 daN"),
    pytest.param(12.1, 2000.0, id="published, EN 12640 by TÜV: 12.1 t, 2000 daN"),
])
def test_lashing_points(gross_t: float, printed_dan: float) -> None:
    assert label.lashing_point_dan(gross_t) == printed_dan


@pytest.mark.parametrize("stf_dan", [
    pytest.param(250.0, id="published, EN 12195-2: least STF of LC 2500 is 250"),
    pytest.param(1250.0, id="published, EN 12195-2: most STF of LC 2500 is 1250"),
])
def test_limits_of_stf(stf_dan: float) -> None:
    assert label.tie_down_tension_dan(2500.0, stf_dan, True) == stf_dan


def test_a_measured_tension_counts_up_to_half_of_lc() -> None:
    """From memory, stricter."""
    assert label.measured_tension_dan(2500.0, 300.0) == 300.0
    assert label.measured_tension_dan(2500.0, 1400.0) == 1250.0


def test_trap_the_weakest_of_strap_eye_anchor_and_board_counts() -> None:
    assert label.weakest_dan({"strap": 2500.0, "hook": 2500.0, "eye": 1800.0, "anchor": 800.0}) == 800.0
    assert label.labelled_lc_dan(2500.0, True) == 2500.0
