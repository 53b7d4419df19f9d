"""WLL tables of chain and wire rope against printed cells, their own leg factors, and a second printing.

`published`: figure printed in the source. `derived`: inputs printed, result worked out.
"""

import pytest

from checklist_app.mechanics.slings import breaking_force, chain_wll, en_modes, rope_wll, us_chain_wll, us_modes
from checklist_app.mechanics.slings.kinds import Hitch, RuleSet, SlingKind

CHAIN = "published, EN 818-4 grade 8 table as a fittings maker restates it"
ROPE = "published, EN 13414-1:2003 Table 4"
US_100 = "published, US grade 100 table of a chain maker"
FIBRE = "published, EN 13414-1 fibre core as a sling maker prints it"
US = "published, second printing of the US grade 80 table in a chain maker's rigging report"


@pytest.mark.parametrize("size_mm, legs, angle_deg, printed_t", [
    pytest.param(13, 2, 50.0, 5.30, id=f"{CHAIN}: 13 mm, two legs 45° to 60°, 5.30"),
    pytest.param(10, 2, 45.0, 4.25, id=f"{CHAIN}: 10 mm, two legs to 45°, 4.25"),
    pytest.param(6, 4, 30.0, 2.36, id=f"{CHAIN}: 6 mm, four legs to 45°, 2.36"),
    pytest.param(16, 3, 60.0, 11.80, id=f"{CHAIN}: 16 mm, three legs 45° to 60°, 11.80"),
    pytest.param(26, 1, 0.0, 21.20, id=f"{CHAIN}: 26 mm, one leg, 21.20"),
    pytest.param(32, 4, 45.0, 67.00, id=f"{CHAIN}: 32 mm, four legs to 45°, 67.00"),
])
def test_grade_8_cells(size_mm: int, legs: int, angle_deg: float, printed_t: float) -> None:
    assert chain_wll.grade_8_wll_t(size_mm, legs, angle_deg) == printed_t


def test_published_grade_8_endless_choked() -> None:
    """EN 818-4 grade 8 table: 7 mm 2.50 t, 22 mm 23.60 t."""
    assert [chain_wll.grade_8_endless_choked_wll_t(size) for size in (7, 22)] == [2.50, 23.60]


@pytest.mark.parametrize("size_mm", chain_wll.GRADE_8)
@pytest.mark.parametrize("legs", [2, 3, 4])
@pytest.mark.parametrize("angle_deg", [45.0, 60.0])
def test_derived_every_grade_8_cell_lies_near_its_leg_factor(size_mm: int, legs: int, angle_deg: float) -> None:
    """The table is rounded to preferred numbers: 3.6 % under to 2.0 % over leg factor × one leg."""
    product_t = en_modes.multi_leg_factor(legs, Hitch.STRAIGHT, angle_deg) * chain_wll.grade_8_wll_t(size_mm, 1, 0.0)
    assert -0.0365 <= chain_wll.grade_8_wll_t(size_mm, legs, angle_deg) / product_t - 1.0 <= 0.0205


@pytest.mark.parametrize("size_mm, choked, printed_t", [
    pytest.param(16, True, 3.2, id="published, DGUV Information 209-021, grade 4: 16 mm choked 3200 kg"),
    pytest.param(8, False, 1.0, id="published, same table: 8 mm straight 1000 kg"),
    pytest.param(13, True, 2.12, id="published, same table: 13 mm choked 2120 kg"),
    pytest.param(20, True, 5.04, id="published, same table: 20 mm choked 5040 kg"),
])
def test_grade_4(size_mm: int, choked: bool, printed_t: float) -> None:
    assert chain_wll.grade_4_wll_t(size_mm, choked) == printed_t
    straight_t = chain_wll.grade_4_wll_t(size_mm, choked=False)
    assert chain_wll.grade_4_wll_t(size_mm, choked=True) == pytest.approx(0.8 * straight_t)


@pytest.mark.parametrize("rope_mm, legs, angle_deg, printed_t", [
    pytest.param(10, 1, 0.0, 1.15, id=f"{ROPE}: 10 mm, one leg 1.15"),
    pytest.param(14, 2, 40.0, 3.15, id=f"{ROPE}: 14 mm, two legs to 45°, 3.15"),
    pytest.param(18, 3, 60.0, 5.65, id=f"{ROPE}: 18 mm, three legs 45° to 60°, 5.65"),
    pytest.param(26, 4, 45.0, 16.5, id=f"{ROPE}: 26 mm, four legs to 45°, 16.5"),
    pytest.param(40, 4, 46.0, 28.0, id=f"{ROPE}: 40 mm, four legs 45° to 60°, 28.0"),
])
def test_wire_rope_cells(rope_mm: int, legs: int, angle_deg: float, printed_t: float) -> None:
    assert rope_wll.wire_rope_wll_t(rope_mm, legs, angle_deg) == printed_t


@pytest.mark.parametrize("rope_mm", rope_wll.TABLE_4)
def test_derived_every_wire_rope_cell_lies_near_its_leg_factor(rope_mm: int) -> None:
    """EN 13414-1 prints the leg factors 1.4, 1, 2.1, 1.5 and 1.6 (endless) under its table; cells are rounded."""
    one_t = rope_wll.wire_rope_wll_t(rope_mm, 1, 0.0)
    for legs, angle_deg, factor in ((2, 45.0, 1.4), (2, 60.0, 1.0), (3, 45.0, 2.1), (4, 60.0, 1.5)):
        assert rope_wll.wire_rope_wll_t(rope_mm, legs, angle_deg) == pytest.approx(factor * one_t, rel=0.045)
    assert rope_wll.wire_rope_endless_choked_wll_t(rope_mm) == pytest.approx(1.6 * one_t, rel=0.045)


@pytest.mark.parametrize("rope_mm, legs, angle_deg, printed_t", [
    pytest.param(10, 1, 0.0, 1.05, id=f"{FIBRE}: 10 mm, one leg 1.05"),
    pytest.param(16, 2, 45.0, 3.85, id=f"{FIBRE}: 16 mm, two legs to 45°, 3.85"),
    pytest.param(20, 4, 45.0, 9.0, id=f"{FIBRE}: 20 mm, four legs to 45°, 9"),
    pytest.param(24, 3, 60.0, 9.4, id=f"{FIBRE}: 24 mm, three legs 45° to 60°, 9.4"),
])
def test_fibre_core_cells(rope_mm: int, legs: int, angle_deg: float, printed_t: float) -> None:
    assert rope_wll.fibre_core_rope_wll_t(rope_mm, legs, angle_deg) == printed_t


@pytest.mark.parametrize("rope_mm", rope_wll.FIBRE_CORE)
@pytest.mark.parametrize("legs, angle_deg", [(1, 0.0), (2, 45.0), (2, 60.0), (3, 45.0), (4, 60.0)])
def test_derived_a_fibre_core_carries_less_than_a_steel_core(rope_mm: int, legs: int, angle_deg: float) -> None:
    """Both tables of EN 13414-1: 5 to 11 % less, cells rounded."""
    steel_t = rope_wll.wire_rope_wll_t(rope_mm, legs, angle_deg)
    assert 0.85 * steel_t <= rope_wll.fibre_core_rope_wll_t(rope_mm, legs, angle_deg) < steel_t


def test_derived_wire_rope_wll_from_its_breaking_force() -> None:
    """EN 13414-1, 5.2.4: 10 mm 6x36 steel core, grade 1770, 0.356 × 10² × 1770 N = 63.0 kN (0.356 from memory), ferrule
    0.9, coefficient 5: 1.157 t; Table 4 prints 1.15 t."""
    breaking_kn = 0.356 * 100.0 * 1770.0 / 1000.0
    coefficient = breaking_force.working_coefficient(SlingKind.WIRE_ROPE, RuleSet.EN)
    wll_t = breaking_force.wll_from_breaking_force_t(breaking_kn, 0.9, coefficient)
    assert wll_t == pytest.approx(1.157, abs=1e-3)
    assert rope_wll.wire_rope_wll_t(10, 1, 0.0) == pytest.approx(wll_t, rel=0.025)


@pytest.mark.parametrize("kind, rule_set, printed", [
    pytest.param(SlingKind.WIRE_ROPE, RuleSet.EN, 5.0, id="published, 2006/42/EC Annex I 4.1.2.5: wire rope 5"),
    pytest.param(SlingKind.CHAIN, RuleSet.EN, 4.0, id="published, 2006/42/EC Annex I 4.1.2.5: welded chain 4"),
    pytest.param(SlingKind.FLAT_WEBBING, RuleSet.EN, 7.0, id="published, 2006/42/EC Annex I 4.1.2.5: textile 7"),
    pytest.param(SlingKind.ROUNDSLING, RuleSet.US, 5.0, id="published, DOE-STD-1090: textile slings 5 to 1"),
])
def test_working_coefficient(kind: SlingKind, rule_set: RuleSet, printed: float) -> None:
    assert breaking_force.working_coefficient(kind, rule_set) == printed


@pytest.mark.parametrize("size_in, legs, angle_deg, printed_lb", [
    pytest.param("7/32", 1, 90.0, 2100.0, id=f"{US}: 7/32 in, one leg 2100 lb"),
    pytest.param("7/32", 4, 60.0, 5500.0, id=f"{US}: 7/32 in, four legs at 60°, 5500 lb (5450 in the first)"),
    pytest.param("9/32", 2, 45.0, 4900.0, id=f"{US}: 9/32 in, two legs at 45°, 4900 lb"),
    pytest.param("3/8", 3, 30.0, 10600.0, id=f"{US}: 3/8 in, three legs at 30°, 10600 lb"),
    pytest.param("1/2", 4, 45.0, 25500.0, id=f"{US}: 1/2 in, four legs at 45°, 25500 lb"),
    pytest.param("5/8", 2, 30.0, 18100.0, id=f"{US}: 5/8 in, two legs at 30°, 18100 lb"),
    pytest.param("3/4", 4, 30.0, 42400.0, id=f"{US}: 3/4 in, four legs at 30°, 42400 lb"),
    pytest.param("7/8", 2, 60.0, 59200.0, id=f"{US}: 7/8 in, two legs at 60°, 59200 lb"),
    pytest.param("1", 3, 60.0, 123900.0, id=f"{US}: 1 in, three legs at 60°, 123900 lb"),
])
def test_us_grade_80(size_in: str, legs: int, angle_deg: float, printed_lb: float) -> None:
    assert us_chain_wll.grade_80_lb(size_in, legs, angle_deg) == pytest.approx(printed_lb, rel=0.01)


@pytest.mark.parametrize("size_in, legs, angle_deg, printed_lb", [
    pytest.param("9/32", 1, 90.0, 4300.0, id=f"{US_100}: 9/32 in, one leg 4300 lb"),
    pytest.param("3/8", 2, 45.0, 12400.0, id=f"{US_100}: 3/8 in, two legs at 45°, 12400 lb"),
    pytest.param("1/2", 4, 60.0, 39000.0, id=f"{US_100}: 1/2 in, four legs at 60°, 39000 lb"),
    pytest.param("5/8", 3, 30.0, 33900.0, id=f"{US_100}: 5/8 in, three legs at 30°, 33900 lb"),
])
def test_us_grade_100(size_in: str, legs: int, angle_deg: float, printed_lb: float) -> None:
    assert us_chain_wll.grade_100_lb(size_in, legs, angle_deg) == printed_lb


@pytest.mark.parametrize("table", [us_chain_wll.GRADE_80, us_chain_wll.GRADE_100], ids=["grade 80", "grade 100"])
def test_derived_every_us_cell_lies_near_the_sine(table: dict[str, tuple[int, ...]]) -> None:
    """n sin α × one leg, rounded to the hundred or fifty pounds and cut off: within 2 %."""
    for one, *cells in table.values():
        for legs, three in ((2, cells[:3]), (3, cells[3:])):
            for angle_deg, printed_lb in zip((60.0, 45.0, 30.0), three, strict=True):
                by_sine = one * us_modes.multi_leg_factor(legs, Hitch.STRAIGHT, angle_deg)
                assert printed_lb == pytest.approx(by_sine, rel=0.02)


def test_an_angle_between_two_us_columns_takes_the_flatter_one() -> None:
    assert us_chain_wll.grade_80_lb("1/2", 2, 59.9) == us_chain_wll.grade_80_lb("1/2", 2, 45.0)
    assert us_chain_wll.grade_80_lb("1/2", 2, 44.9) == us_chain_wll.grade_80_lb("1/2", 2, 30.0)
    assert us_chain_wll.tonnes_of_lb(1.0 / 0.45359237) == pytest.approx(0.001)
