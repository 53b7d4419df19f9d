"""49 CFR 393, the Australian guide, vans, pallets, freight: printed and derived cases."""

import pytest

from checklist_app.mechanics.lashing import cfr_393, freight, lift_off, pallet, vehicle
from checklist_app.mechanics.lashing.cfr_393 import Route
from checklist_app.mechanics.lashing.freight import Fuel, Mode, Wood
from checklist_app.mechanics.lashing.pallet import Bearing
from checklist_app.mechanics.lashing.rule_sets import RuleSet
from checklist_app.mechanics.lashing.transport import Direction


@pytest.mark.parametrize("length_ft, weight_lb, number", [
    pytest.param(5.0, 1100.0, 1, id="derived, 49 CFR 393.110: 5 ft, 1100 lb, not blocked"),
    pytest.param(5.0, 1101.0, 2, id="derived, 49 CFR 393.110: 5 ft, 1101 lb, not blocked"),
    pytest.param(7.0, 500.0, 2, id="derived, 49 CFR 393.110: 7 ft, not blocked"),
    pytest.param(10.0, 500.0, 2, id="from memory, 49 CFR 393.110: 10 ft counts as not longer, not blocked"),
    pytest.param(12.0, 500.0, 3, id="derived, 49 CFR 393.110: 12 ft, not blocked"),
    pytest.param(20.0, 500.0, 3, id="derived, 49 CFR 393.110: 20 ft, not blocked"),
    pytest.param(20.5, 500.0, 4, id="derived, 49 CFR 393.110: 20.5 ft, not blocked"),
    pytest.param(32.0, 500.0, 5, id="derived, 49 CFR 393.110: 32 ft, not blocked"),
])
def test_fewest_not_blocked(length_ft: float, weight_lb: float, number: int) -> None:
    assert cfr_393.fewest_tie_downs(length_ft, weight_lb, False) == number


@pytest.mark.parametrize("length_ft, number", [
    pytest.param(5.0, 1, id="derived, 49 CFR 393.110: 5 ft, blocked"),
    pytest.param(12.0, 2, id="derived, 49 CFR 393.110: 12 ft, blocked"),
    pytest.param(20.0, 2, id="derived, 49 CFR 393.110: 20 ft, blocked"),
    pytest.param(20.5, 3, id="derived, 49 CFR 393.110: 20.5 ft, blocked"),
    pytest.param(32.0, 4, id="derived, 49 CFR 393.110: 32 ft, blocked"),
])
def test_fewest_blocked(length_ft: float, number: int) -> None:
    """Test sites for US drivers that print 2 and 4 for 20 ft contradict the regulation."""
    assert cfr_393.fewest_tie_downs(length_ft, 5000.0, True) == number


def test_derived_a_light_crate_wants_two_by_number_and_one_by_wll() -> None:
    """49 CFR 393.106, 108, 110: 4 ft, 1500 lb, unmarked 2 in webbing over the top."""
    assert cfr_393.aggregate_wll_needed(1500.0) == 750.0
    assert cfr_393.tie_downs_by_wll(1500.0, Route.OVER_TO_THE_OTHER_SIDE, cfr_393.webbing_wll_lb("2")) <= 1.0
    assert cfr_393.fewest_tie_downs(4.0, 1500.0, False) == 2


@pytest.mark.parametrize("route, quotient", [
    pytest.param(Route.TO_THE_LOAD, 1.515, id="derived, 49 CFR 393.106: 10000 lb, 3/8 grade 70 to the load, 2"),
    pytest.param(Route.BACK_TO_THE_SAME_SIDE, 1.515, id="derived, 49 CFR 393.106: the same back to its side, 2"),
    pytest.param(Route.OVER_TO_THE_OTHER_SIDE, 0.758, id="derived, 49 CFR 393.106: the same over the top, 1"),
])
def test_aggregate_wll(route: Route, quotient: float) -> None:
    wll = cfr_393.chain_wll_lb("3/8", "70")
    assert cfr_393.tie_downs_by_wll(10000.0, route, wll) == pytest.approx(quotient, abs=0.001)
    assert cfr_393.aggregate_wll([(route, wll)] * 2) >= cfr_393.aggregate_wll_needed(10000.0)


def test_published_unmarked_chain_is_grade_30() -> None:
    """49 CFR 393.108: unmarked 3/8 in: 2650 lb."""
    assert cfr_393.chain_wll_lb("3/8", None) == 2650.0


def test_published_odd_step_of_the_chain_table() -> None:
    """49 CFR 393.108: 5/16 in grade 80 is 4500 lb, less than 4700 of grade 70; it stands so in the table."""
    assert (cfr_393.chain_wll_lb("5/16", "80"), cfr_393.chain_wll_lb("5/16", "70")) == (4500.0, 4700.0)


def test_published_wire_rope() -> None:
    """49 CFR 393.108: wire rope 6 × 37 fibre core, 1/2 in: 5300 lb."""
    assert cfr_393.wire_rope_wll_lb("1/2") == 5300.0


@pytest.mark.parametrize("friction, mass_kg", [
    pytest.param(0.2, 200.0, id="derived, NTC Load Restraint Guide: strap of 300 kg upright, friction 0.2"),
    pytest.param(0.4, 600.0, id="derived, NTC Load Restraint Guide: strap of 300 kg upright, friction 0.4"),
    pytest.param(0.6, 1800.0, id="derived, NTC Load Restraint Guide: strap of 300 kg upright, friction 0.6"),
])
def test_mass_per_strap(friction: float, mass_kg: float) -> None:
    """Its table heads are from memory; its formula gives them."""
    assert lift_off.mass_per_tie_down_kg(300.0, 90.0, friction, 0.8) == pytest.approx(mass_kg, abs=0.01)


def test_derived_one_strap_holds_three_tonnes_down() -> None:
    """NTC Load Restraint Guide 2018: 0.2 W upwards, one strap of 300 kg over the top: 3000 kg and no more."""
    strap_dan = 2.0 * 300.0 * 0.981
    assert lift_off.held_down(RuleSet.NTC, 3000.0 * 0.981, strap_dan).need == pytest.approx(strap_dan)
    assert lift_off.held_down(RuleSet.NTC, 2999.0 * 0.981, strap_dan).holds
    assert not lift_off.held_down(RuleSet.US, 3001.0 * 0.981, strap_dan).holds


@pytest.mark.parametrize("gross_t, side", [
    pytest.param(2.0, 0.7, id="published, VDI 2700-16: van of 2.0 t, 0.7 sideways"),
    pytest.param(3.0, 0.6, id="published, VDI 2700-16: van of 3.0 t, 0.6 sideways; another restatement says 0.5"),
    pytest.param(3.6, 0.5, id="published, VDI 2700-16: lorry of 3.6 t, 0.5 sideways"),
])
def test_vans(gross_t: float, side: float) -> None:
    assert vehicle.van_push(gross_t, Direction.LEFT) == side
    assert vehicle.van_push(gross_t, Direction.FORWARD) >= 0.8
    assert vehicle.van_push(gross_t, Direction.REAR) == 0.5


@pytest.mark.parametrize("bearing, printed", [
    pytest.param(Bearing.FEET, 1000.0, id="published, UIC 435-2: any position on the deck, 1000 kg"),
    pytest.param(Bearing.EVEN, 1500.0, id="published, UIC 435-2: evenly distributed, 1500 kg"),
    pytest.param(Bearing.COMPACT, 2000.0, id="published, UIC 435-2: compact over the full surface, 2000 kg"),
])
def test_european_pallet(bearing: Bearing, printed: float) -> None:
    assert pallet.eur_pallet_kg(bearing) == printed


def test_derived_an_engine_of_1200_kg_needs_a_spreader_on_a_european_pallet() -> None:
    """UIC 435-2: on its feet 1200 kg is over 1000; on a spreader over the whole deck it is within 1500 and 2000."""
    assert pallet.eur_pallet_kg(Bearing.FEET) < 1200.0
    assert pallet.eur_pallet_kg(Bearing.EVEN) >= 1200.0
    assert pallet.eur_pallet_kg(Bearing.COMPACT) >= 1200.0
    assert pallet.pallet_kg(1300.0, Bearing.FEET, Bearing.COMPACT) == 1300.0


def test_by_hand_bearers_floor_and_forks() -> None:
    """1.2 t on two bearers of 1.2 m; 3 kN on a timber 10 × 10 cm over 0.8 m; 0.25 m inside the forks at 0.9 m."""
    assert pallet.floor_line_load_kg_m(1200.0, 2, 1.2) == 500.0
    assert pallet.bearer_bending_mpa(3.0, 0.8, 100.0, 100.0) == pytest.approx(600000.0 / 166666.67, rel=1e-6)
    assert pallet.tilt_on_forks_deg(0.9, 0.25) == pytest.approx(15.524, abs=0.001)


@pytest.mark.parametrize("bearers", [2, 3, 4, 6])
def test_by_hand_no_bearer_of_a_stiff_skid_gets_more_than_the_edge_of_a_plate(bearers: int) -> None:
    """By moments on n bearers side by side over 0.8 m, 0.05 m off: along a bearer it runs straight to 1 + 6 e/l.

    Two bearers at ± 0.4 m get 1/2 ± 0.05/0.8 of it: 1.125 times an even half.
    """
    places = [-0.4 + 0.8 * n / (bearers - 1) for n in range(bearers)]
    worst = bearers * (1.0 / bearers + 0.05 * 0.4 / sum(y * y for y in places))
    assert worst <= pallet.uneven_bearing(0.0, 1.2, 0.05, 0.8) == pytest.approx(1.375, rel=1e-12)
    assert pallet.uneven_bearing(0.1, 1.2, 0.0, 0.8) == pytest.approx(1.5, rel=1e-12)
    if bearers == 2:
        assert worst == pytest.approx(1.125, rel=1e-12)


def test_a_handbook_prints_a_smaller_timber() -> None:
    """GDV container handbook 6.1.2 prints 152 cm³ for 10 × 10 cm; the full section has 166.7."""
    assert pallet.section_modulus_cm3(100.0, 100.0) == pytest.approx(166.7, abs=0.05)
    assert pallet.section_modulus_cm3(97.0, 97.0) == pytest.approx(152.0, abs=0.2)


def test_by_hand_place_on_the_vehicle() -> None:
    """Levers: 1200 kg one metre behind a rear axle 4 m back takes 300 kg from the front; plan and common place."""
    assert vehicle.axle_loads_kg(1200.0, 5.0, 4.0) == (-300.0, 1500.0)
    assert vehicle.common_place_m([(1000.0, 1.0), (3000.0, 3.0)]) == 2.5
    plan = [(1.0, 8000.0), (3.0, 12000.0), (5.0, 6000.0)]
    assert [vehicle.load_plan_kg(plan, at) for at in (1.0, 2.0, 3.0, 4.0, 5.0)] == [8e3, 1e4, 12e3, 9e3, 6e3]


def test_published_air_freight() -> None:
    """Freight conventions: 150 × 100 × 110 cm, 130 kg: 275 kg volumetric, charged as 275."""
    assert freight.volumetric_kg(Mode.AIR, 150.0, 100.0, 110.0) == 275.0
    assert freight.chargeable_kg(Mode.AIR, 130.0, 275.0) == 275.0


@pytest.mark.parametrize("mode, volumetric, charged", [
    pytest.param(Mode.AIR, 160.0, 450.0,
                 id="derived, freight conventions: engine pallet 120 × 80 × 100 cm, 450 kg, air"),
    pytest.param(Mode.ROAD, 319.7, 450.0, id="derived, freight conventions: the same by road"),
    pytest.param(Mode.SEA, 960.0, 1000.0, id="derived, freight conventions: the same by sea, one unit at least"),
])
def test_engine_on_a_pallet(mode: Mode, volumetric: float, charged: float) -> None:
    assert freight.volumetric_kg(mode, 120.0, 80.0, 100.0) == pytest.approx(volumetric, abs=0.05)
    assert freight.chargeable_kg(mode, 450.0, volumetric) == charged


def test_derived_verified_gross_mass() -> None:
    """SOLAS VI/2, method 2: 2200 + 3 × 685 + 180 is 4435 kg."""
    assert freight.verified_gross_mass_kg(2200.0, [685.0] * 3, 180.0) == 4435.0


@pytest.mark.parametrize("mode, fuel, dangerous", [
    pytest.param(Mode.ROAD, Fuel.DRAINED, False, id="published, special provision 363: drained, by road, not subject"),
    pytest.param(Mode.SEA, Fuel.DRAINED, False, id="published, special provision 363: drained, by sea, not subject"),
    pytest.param(Mode.AIR, Fuel.DRAINED, True, id="published, air rules: drained, lines wet, still dangerous goods"),
    pytest.param(Mode.AIR, Fuel.PURGED, False, id="published, air rules: cleaned and free of vapour, not subject"),
    pytest.param(Mode.ROAD, Fuel.IN_TANK, True, id="published, special provision 363: fuel in the tank, subject"),
])
def test_engine_that_has_held_fuel(mode: Mode, fuel: Fuel, dangerous: bool) -> None:
    assert freight.is_dangerous_goods(mode, fuel) is dangerous


@pytest.mark.parametrize("wood, thickness_mm, mark", [
    pytest.param(Wood.PANEL, 6.0, False, id="derived, ISPM 15: crate of 6 mm plywood needs none"),
    pytest.param(Wood.SOLID, 50.0, True, id="derived, ISPM 15: skids of pine 50 mm need the mark"),
    pytest.param(Wood.SOLID, 6.0, False, id="derived, ISPM 15: solid wood up to 6 mm needs none"),
])
def test_wood(wood: Wood, thickness_mm: float, mark: bool) -> None:
    assert freight.wood_needs_mark(wood, thickness_mm) is mark
