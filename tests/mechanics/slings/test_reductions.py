"""What choking, bending, edges, heat and chemicals take away, against printed figures."""

import pytest

from checklist_app.mechanics.slings import bends, chemicals, choke, edges, label, temperature
from checklist_app.mechanics.slings.bends import Termination
from checklist_app.mechanics.slings.chemicals import Chemical
from checklist_app.mechanics.slings.kinds import RuleSet, SlingKind
from checklist_app.mechanics.slings.temperature import ChainGrade, Fibre, RopeMake

ROPE, CHAIN = SlingKind.WIRE_ROPE, SlingKind.CHAIN
WEBBING, ROUND = SlingKind.FLAT_WEBBING, SlingKind.ROUNDSLING
CARD = "published, choker card of a rope maker"
ROUND_CARD = "published, choker table of a roundsling maker"


@pytest.mark.parametrize("kind, angle_deg, printed", [
    pytest.param(ROPE, 121.0, 1.00, id=f"{CARD}: over 120°, 100 %"),
    pytest.param(ROPE, 120.0, 0.87, id=f"{CARD}: 90° to 120°, 87 %"),
    pytest.param(ROPE, 90.0, 0.87, id=f"{CARD}: 90°, 87 %"),
    pytest.param(ROPE, 89.0, 0.74, id=f"{CARD}: 60° to 89°, 74 %"),
    pytest.param(CHAIN, 59.0, 0.62, id=f"{CARD}: 30° to 59°, 62 %"),
    pytest.param(ROPE, 29.0, 0.49, id=f"{CARD}: 0° to 29°, 49 %"),
    pytest.param(ROPE, 89.9, 0.74, id="by_hand, between two labels the worse step"),
    pytest.param(ROUND, 121.0, 1.00, id=f"{ROUND_CARD}: over 120°, 100 %"),
    pytest.param(ROUND, 110.0, 0.82, id=f"{ROUND_CARD}: 105° to 120°, 82 %"),
    pytest.param(ROUND, 100.0, 0.71, id=f"{ROUND_CARD}: 90° to 105°, 71 %"),
    pytest.param(ROUND, 75.0, 0.58, id=f"{ROUND_CARD}: 60° to 90°, 58 %"),
    pytest.param(ROUND, 59.0, 0.50, id=f"{ROUND_CARD}: below 60°, 50 %"),
    pytest.param(WEBBING, 100.0, 0.71, id="derived, webbing takes the lower of both tables: 71 against 87 %"),
    pytest.param(WEBBING, 20.0, 0.49, id="derived, webbing takes the lower of both tables: 49 against 50 %"),
])
def test_angle_of_choke(kind: SlingKind, angle_deg: float, printed: float) -> None:
    assert choke.choke_angle_factor(kind, angle_deg) == printed


@pytest.mark.parametrize("tag_kg, angle_deg, printed_kg", [
    pytest.param(5000.0, 20.0, 2450.0, id="published, UK hire handbook 2018: choker 5000 kg below 30°, 2450 kg"),
    pytest.param(5000.0, 100.0, 4350.0, id="derived, rope maker's card: choker 5000 kg at 100°, 4350 kg"),
])
def test_choker_rating_at_an_angle(tag_kg: float, angle_deg: float, printed_kg: float) -> None:
    assert tag_kg * choke.choke_angle_factor(ROPE, angle_deg) == pytest.approx(printed_kg)


def test_published_a_choke_hangs_free_at_135_degrees_and_wider_is_not_recommended() -> None:
    """A rigging supplier's note on choker hitches."""
    assert choke.choke_angle_up_to_deg() == 135.0


def test_a_tighter_choke_never_carries_more() -> None:
    for kind in SlingKind:
        factors = [choke.choke_angle_factor(kind, float(angle)) for angle in range(181)]
        assert factors == sorted(factors)


@pytest.mark.parametrize("ratio, printed", [
    pytest.param(1.0, 2.00, id="published, 0027/ND Table 7-1: D/d 1, bending factor 2.00"),
    pytest.param(1.5, 1.69, id="published, 0027/ND Table 7-1: D/d 1.5, 1.69"),
    pytest.param(2.0, 1.55, id="published, 0027/ND Table 7-1: D/d 2, 1.55"),
    pytest.param(3.0, 1.41, id="published, 0027/ND Table 7-1: D/d 3, 1.41"),
    pytest.param(4.0, 1.33, id="published, 0027/ND Table 7-1: D/d 4, 1.33"),
    pytest.param(5.0, 1.29, id="published, 0027/ND Table 7-1: D/d 5, 1.29"),
    pytest.param(6.0, 1.26, id="published, 0027/ND Table 7-1: D/d 6, 1.26"),
    pytest.param(7.0, 1.23, id="published, 0027/ND Table 7-1: D/d 7, 1.23"),
    pytest.param(25.0, 1.111, id="derived, same formula: D/d 25, efficiency 0.900"),
])
def test_bending_factor(ratio: float, printed: float) -> None:
    assert 1.0 / bends.bend_efficiency(16.0 * ratio, 16.0) == pytest.approx(printed, abs=5e-3)


def test_published_hand_splice_against_ferrule() -> None:
    """0027/ND: 1.12 / 1.25 = 0.896; DGUV Regel 109-005 says 12 % lower."""
    splice, ferrule = (bends.termination_efficiency(t) for t in (Termination.HAND_SPLICE, Termination.FERRULE))
    assert splice / ferrule == pytest.approx(0.896, abs=5e-4)
    assert splice / ferrule == pytest.approx(0.88, rel=0.02)


def test_bend_and_termination_are_not_multiplied() -> None:
    """0027/ND: the worse of the two (by_hand: D/d 4 keeps 0.75, a ferrule 0.893, a hand splice 0.80)."""
    assert bends.worse_efficiency(Termination.FERRULE, 64.0, 16.0) == 0.75
    assert bends.worse_efficiency(Termination.HAND_SPLICE, 160.0, 16.0) == 0.8
    assert bends.labelled_bend_factor(Termination.HAND_SPLICE, 160.0, 16.0) == 1.0
    assert bends.labelled_bend_factor(Termination.FERRULE, 64.0, 16.0) == pytest.approx(0.75 / 0.9)
    assert bends.labelled_bend_factor(Termination.FERRULE, 400.0, 16.0) == 1.0


@pytest.mark.parametrize("termination, ratio, printed", [
    pytest.param(Termination.FERRULE, 25.0, 1.0, id="published, wire rope makers' tables: full basket from D/d 25"),
    pytest.param(Termination.FERRULE, 24.0, 0.898, id="derived, below it the bend counts"),
    pytest.param(Termination.HAND_SPLICE, 15.0, 1.0, id="published, same tables: hand-tucked from D/d 15"),
    pytest.param(Termination.HAND_SPLICE, 14.0, 0.866, id="derived, below it the bend counts"),
])
def test_us_basket_over_a_small_body(termination: Termination, ratio: float, printed: float) -> None:
    assert bends.us_basket_bend_factor(termination, 10.0 * ratio, 10.0) == pytest.approx(printed, abs=5e-4)


@pytest.mark.parametrize("radius_mm, printed", [
    pytest.param(20.1, 1.0, id="published, chain maker's notes: R > 2d, 1.0"),
    pytest.param(20.0, 0.7, id="published, chain maker's notes: R > d, 0.7"),
    pytest.param(10.0, 0.5, id="published, chain maker's notes: R = d, 0.5"),
])
def test_chain_over_an_edge(radius_mm: float, printed: float) -> None:
    assert edges.chain_edge_factor(radius_mm, 10.0) == printed


def test_published_chain_straight_on_a_lug() -> None:
    """Chain maker's notes: lug thicker than three pitches, else half the WLL (10 mm chain, pitch 30 mm)."""
    assert (edges.chain_on_lug_factor(90.1, 30.0), edges.chain_on_lug_factor(90.0, 30.0)) == (1.0, 0.5)


def test_published_textile_needs_protection_only_at_a_sharp_or_rough_place() -> None:
    """DGUV Regel 109-017 and Information 209-061: sharp below the thickness of the webbing (6 mm here, by_hand)."""
    assert edges.textile_edge_factor(6.0, 6.0, rough=False, protected=False) == 1.0
    assert edges.textile_edge_factor(1.0, 6.0, rough=True, protected=True) == 1.0


@pytest.mark.parametrize("width_mm, radius_mm, bears", [
    pytest.param(60.0, 45.0, True, id="published, EN 1492-1 annex D: to 75 mm wide, radius 0.75 × width"),
    pytest.param(60.0, 44.9, False, id="published, EN 1492-1 annex D: less is too tight"),
    pytest.param(75.0, 56.25, True, id="published, EN 1492-1 annex D: 75 mm still may be curved"),
    pytest.param(76.0, 500.0, False, id="published, EN 1492-1 annex D: over 75 mm it is straight"),
    pytest.param(120.0, None, True, id="published, EN 1492-1 annex D: straight suits any width"),
])
def test_soft_eye_of_webbing(width_mm: float, radius_mm: float | None, bears: bool) -> None:
    assert edges.webbing_eye_bears(width_mm, radius_mm) is bears
    assert edges.webbing_eye_opens_up_to_deg() == 20.0


def test_published_soft_eye_of_wire_rope_bears_on_twice_its_diameter() -> None:
    """EN 13414-1 Table 4, note 1."""
    assert edges.soft_eye_factor(32.0, 16.0) == 1.0


@pytest.mark.parametrize("fibre, hottest_c, rule_set", [
    pytest.param(Fibre.POLYESTER, 100.0, RuleSet.EN, id="published, EN 1492-1 scope: polyester to 100 °C"),
    pytest.param(Fibre.POLYAMIDE, 100.0, RuleSet.EN, id="published, EN 1492-1 scope: polyamide to 100 °C"),
    pytest.param(Fibre.POLYPROPYLENE, 80.0, RuleSet.EN, id="published, EN 1492-1 scope: polypropylene to 80 °C"),
    pytest.param(Fibre.POLYESTER, 82.0, RuleSet.US, id="published, restated US rules: polyester to 180 °F"),
    pytest.param(Fibre.POLYPROPYLENE, 80.0, RuleSet.US, id="by_hand, polypropylene keeps the lower limit"),
    pytest.param(Fibre.HMPE, 60.0, RuleSet.EN, id="from memory, HMPE to 60 °C (a maker prints 70)"),
])
def test_fibre_in_heat(fibre: Fibre, hottest_c: float, rule_set: RuleSet) -> None:
    assert temperature.fibre_temperature_factor(fibre, hottest_c, rule_set) == 1.0
    with pytest.raises(ValueError, match="°C"):
        temperature.fibre_temperature_factor(fibre, hottest_c + 0.1, rule_set)


@pytest.mark.parametrize("grade, degrees_c, printed", [
    pytest.param(ChainGrade.GRADE_8, 200.0, 1.0, id="published, EN 818-6 as restated: grade 8 to 200 °C, 100 %"),
    pytest.param(ChainGrade.GRADE_8, 201.0, 0.9, id="published, EN 818-6 as restated: grade 8 to 300 °C, 90 %"),
    pytest.param(ChainGrade.GRADE_8, 400.0, 0.75, id="published, EN 818-6 as restated: grade 8 to 400 °C, 75 %"),
    pytest.param(ChainGrade.GRADE_10, 200.0, 1.0, id="published, chain makers: grade 10 to 200 °C"),
    pytest.param(ChainGrade.GRADE_4, 300.0, 1.0, id="published, DGUV 209-021: grade 4 to 300 °C, 100 %"),
    pytest.param(ChainGrade.GRADE_4, 400.0, 0.75, id="published, DGUV 209-021: grade 4 to 400 °C, 75 %"),
    pytest.param(ChainGrade.GRADE_4, 475.0, 0.5, id="published, DGUV 209-021: grade 4 to 475 °C, 50 %"),
])
def test_chain_in_heat(grade: ChainGrade, degrees_c: float, printed: float) -> None:
    assert temperature.chain_temperature_factor(grade, degrees_c) == printed


@pytest.mark.parametrize("grade, degrees_c, printed", [
    pytest.param(ChainGrade.GRADE_8, 203.0, 1.0, id="published, ASME B30.9 as restated: grade 80 below 204 °C, none"),
    pytest.param(ChainGrade.GRADE_8, 204.0, 0.90, id="published, ASME B30.9 as restated: grade 80, 204 °C, 90 %"),
    pytest.param(ChainGrade.GRADE_8, 260.0, 0.85, id="published, ASME B30.9 as restated: grade 80, 260 °C, 85 %"),
    pytest.param(ChainGrade.GRADE_10, 204.0, 0.85, id="published, ASME B30.9 as restated: grade 100, 204 °C, 85 %"),
    pytest.param(ChainGrade.GRADE_8, 210.0, 0.85, id="by_hand, between two rows the hotter one"),
])
def test_us_chain_in_heat(grade: ChainGrade, degrees_c: float, printed: float) -> None:
    assert temperature.us_chain_temperature_factor(grade, degrees_c) == printed


@pytest.mark.parametrize("make, degrees_c, printed", [
    pytest.param(RopeMake.FIBRE_CORE, 93.0, 1.0, id="published, 29 CFR 1926.251: fibre core to 200 °F"),
    pytest.param(RopeMake.STEEL_CORE_ALUMINIUM_FERRULE, 150.0, 1.0, id="published, EN 13414-1 as restated: aluminium"),
    pytest.param(RopeMake.STEEL_CORE_STEEL_FERRULE, 200.0, 0.9, id="published, EN 13414-1 as restated: to 200 °C"),
    pytest.param(RopeMake.STEEL_CORE_HAND_SPLICE, 300.0, 0.75, id="published, EN 13414-1 as restated: to 300 °C"),
    pytest.param(RopeMake.STEEL_CORE_STEEL_FERRULE, 400.0, 0.65, id="published, EN 13414-1 as restated: to 400 °C"),
])
def test_wire_rope_in_heat(make: RopeMake, degrees_c: float, printed: float) -> None:
    assert temperature.rope_temperature_factor(make, degrees_c) == printed


@pytest.mark.parametrize("fibre, chemical, attacked", [
    pytest.param(Fibre.POLYESTER, Chemical.ALKALI, True, id="published, DGUV 209-013: alkali harms polyester"),
    pytest.param(Fibre.POLYESTER, Chemical.ACID, False, id="published, DGUV 209-013: polyester resists most acids"),
    pytest.param(Fibre.POLYAMIDE, Chemical.ACID, True, id="published, DGUV 209-013: acid harms polyamide"),
    pytest.param(Fibre.POLYAMIDE, Chemical.ALKALI, False, id="published, DGUV 209-013: polyamide resists alkali"),
    pytest.param(Fibre.POLYPROPYLENE, Chemical.SOLVENT, True, id="published, sling maker: polypropylene, not solvents"),
    pytest.param(Fibre.ARAMID, Chemical.NONE, False, id="by_hand, nothing attacks nothing"),
])
def test_fibre_in_chemicals(fibre: Fibre, chemical: Chemical, attacked: bool) -> None:
    assert chemicals.fibre_is_attacked(fibre, chemical) is attacked


def test_published_acid_and_caustic_attack_lifting_steel() -> None:
    """EN 1492, EN 13414-1 and EN 13889 instructions for use: not in acid; chain makers: nor in caustic."""
    assert chemicals.steel_is_attacked(Chemical.ACID)
    assert chemicals.steel_is_attacked(Chemical.ALKALI)
    assert not chemicals.steel_is_attacked(Chemical.NONE)


def test_published_a_sling_carries_what_its_readable_label_says() -> None:
    """WAC 296-155, DOE-STD-1090, EN 1492: without a label out of use; the fibre stands on it (DGUV 209-013)."""
    assert label.labelled_wll_t(2.0, readable=True) == 2.0
    assert label.labelled_fibre(SlingKind.FLAT_WEBBING, Fibre.POLYAMIDE) is Fibre.POLYAMIDE
