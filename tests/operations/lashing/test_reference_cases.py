"""Published and derived cases of lashing through the whole operation: number of straps, forces, verdicts."""

from math import cos, radians, sin, tan

import pytest

from checklist_app.mechanics.lashing.demands import TiltRule
from checklist_app.mechanics.lashing.direct import Kind
from checklist_app.mechanics.lashing.friction import Pair, Surface
from checklist_app.mechanics.lashing.rule_sets import RuleSet
from checklist_app.mechanics.lashing.transport import Waters
from checklist_app.operations.check import Verdict
from checklist_app.operations.evaluate import Evaluation
from checklist_app.operations.graph import CannotAssess
from checklist_app.operations.lashing.choices import Blocks, Route
from tests.operations.lashing.loads import (
    FORWARD,
    LEFT,
    REAR,
    WAYS,
    Row,
    block,
    diagonal,
    lashing,
    load,
    nominal,
    run,
    strap,
    tie_down,
    times,
    vehicle,
)

SLIDES, TIPS = "sliding", "tipping"
LOW = {"cg_z_m": 0.1}


def over_the_top(angle_deg: float, tension_dan: float | None = None, stf_dan: float = 350.0, x: float = 0.0) -> Row:
    """A strap over the middle of the load, at so many degrees to the deck."""
    out = 0.0 if angle_deg == 90.0 else 1.0 / tan(radians(angle_deg))
    item = strap(2500.0, stf_dan)
    return tie_down((x, 0.8, 1.0), (x, 0.8 + out, 0.0), tension_dan, lashing_item=item)


def straps(number: int, angle_deg: float, stf_dan: float = 350.0) -> list[Row]:
    return [over_the_top(angle_deg, stf_dan=stf_dan)] * number


def verdict(ev: Evaluation, check: str, way: str) -> bool:
    told = ev.check(f"{check}[{way}]").verdict
    assert told in (Verdict.WITHIN, Verdict.CLOSE, Verdict.OVER)
    return told is not Verdict.OVER


@pytest.mark.parametrize("mass_kg, friction, angle_deg, stf_dan, way, number", [
    pytest.param(2000.0, 0.2, 85.0, 350.0, FORWARD, 11, id="published, building-trade magazine: 11 straps at 85°"),
    pytest.param(2000.0, 0.2, 45.0, 350.0, FORWARD, 15, id="published, same magazine: 15 straps at 45°"),
    pytest.param(4000.0, 0.3, 60.0, 300.0, FORWARD, 16, id="mismatch, German textbook prints 14 (safety factor 1.1)"),
    pytest.param(4000.0, 0.6, 60.0, 300.0, FORWARD, 4, id="mismatch, German textbook prints 3 (safety factor 1.1)"),
    pytest.param(650.0, 0.3, 90.0, 350.0, FORWARD, 2, id="derived, EN 12195-1: 650 kg, friction 0.3, upright"),
    pytest.param(650.0, 0.45, 60.0, 350.0, FORWARD, 2, id="derived, EN 12195-1: 650 kg, friction 0.45, 60°"),
    pytest.param(650.0, 0.6, 90.0, 350.0, FORWARD, 1, id="derived, EN 12195-1: 650 kg on a mat"),
    pytest.param(650.0, 0.6, 90.0, 350.0, LEFT, 0, id="derived, EN 12195-1: 650 kg on a mat, sideways"),
    pytest.param(650.0, 0.3, 90.0, 350.0, LEFT, 1, id="derived, EN 12195-1: 650 kg, friction 0.3, sideways"),
    pytest.param(1000.0, 0.1, 60.0, 350.0, FORWARD, 15, id="derived, EN 12195-1: oily, 15 straps forwards"),
    pytest.param(1000.0, 0.1, 60.0, 350.0, LEFT, 8, id="derived, EN 12195-1: oily, 8 straps sideways"),
    pytest.param(1000.0, 0.45, 60.0, 350.0, FORWARD, 2, id="derived, EN 12195-1: the same clean, 2 forwards"),
    pytest.param(1000.0, 0.45, 60.0, 350.0, LEFT, 1, id="derived, EN 12195-1: the same clean, 1 sideways"),
])
def test_so_many_straps_hold_and_one_less_does_not(
    mass_kg: float, friction: float, angle_deg: float, stf_dan: float, way: str, number: int
) -> None:
    told = {"mass_kg": mass_kg, "load_friction": friction, "vehicle": vehicle(deck_width_m=4.0)} | LOW
    assert verdict(nominal(load(straps(number, angle_deg, stf_dan), **told)), SLIDES, way)
    if number:
        assert not verdict(nominal(load(straps(number - 1, angle_deg, stf_dan), **told)), SLIDES, way)


@pytest.mark.parametrize("quotient, friction, angle_deg, way, route, waters, transport", [
    pytest.param(1.898, 0.3, 90.0, FORWARD, Route.ROAD, None, "road", id="derived, EN 12195-1: road forwards"),
    pytest.param(1.023, 0.45, 60.0, FORWARD, Route.ROAD, None, "road", id="derived, EN 12195-1: road forwards, 0.45"),
    pytest.param(0.380, 0.6, 90.0, FORWARD, Route.ROAD, None, "road", id="derived, EN 12195-1: road forwards, mat"),
    pytest.param(0.668, 0.3, 90.0, LEFT, Route.ROAD, None, "road", id="derived, EN 12195-1: road sideways"),
    pytest.param(1.928, 0.3, 60.0, LEFT, Route.SEA, Waters.OPEN_OCEAN, "sea area C",
                 id="derived, GDV handbook 2.2.2: sea C crosswise"),
    pytest.param(1.543, 0.3, 60.0, LEFT, Route.SEA, Waters.NORTH_SEA, "sea area B",
                 id="derived, GDV handbook 2.2.2: sea B crosswise"),
    pytest.param(0.810, 0.3, 60.0, FORWARD, Route.SEA, Waters.NORTH_SEA, "sea area B",
                 id="derived, GDV handbook 2.2.2: sea B lengthways"),
    pytest.param(2.700, 0.3, 60.0, FORWARD, Route.RAIL, None, "rail", id="derived, GDV handbook: rail lengthways"),
    pytest.param(1.118, 0.3, 60.0, LEFT, Route.RAIL, None, "rail", id="derived, GDV handbook 2.2.3: rail crosswise"),
])
def test_the_exact_quotient_of_straps_just_holds(
    quotient: float, friction: float, angle_deg: float, way: str, route: Route, waters: Waters | None, transport: str
) -> None:
    """650 kg and STF 350: one strap drawn with the quotient times 350 daN is just enough."""
    rows = [over_the_top(angle_deg, quotient * 350.0 / 2.0)] * 2
    ev = nominal(load(rows, mass_kg=650.0, load_friction=friction, route=route, waters=waters, **LOW))
    assert times(ev, way, SLIDES, transport) == pytest.approx(1.0, abs=0.002)


@pytest.mark.parametrize("friction, aside_t, forward_t", [
    pytest.param(0.10, 0.18, 0.09, id="derived, EN 12195-1: tonnes a strap of 400 daN at 75°, friction 0.1"),
    pytest.param(0.20, 0.48, 0.21, id="derived, EN 12195-1: tonnes a strap of 400 daN at 75°, friction 0.2"),
    pytest.param(0.30, 1.07, 0.38, id="derived, EN 12195-1: tonnes a strap of 400 daN at 75°, friction 0.3"),
    pytest.param(0.40, 2.86, 0.63, id="derived, EN 12195-1: tonnes a strap of 400 daN at 75°, friction 0.4"),
    pytest.param(0.45, 6.44, 0.81, id="derived, EN 12195-1: tonnes a strap of 400 daN at 75°, friction 0.45"),
    pytest.param(0.50, None, 1.05, id="derived, EN 12195-1: tonnes a strap of 400 daN at 75°, friction 0.5"),
    pytest.param(0.60, None, 1.89, id="derived, EN 12195-1: tonnes a strap of 400 daN at 75°, friction 0.6"),
])
def test_tonnes_that_one_strap_holds(friction: float, aside_t: float | None, forward_t: float) -> None:
    """Printed to 0.01 t: half a hundredth less holds, half a hundredth more does not."""
    for way, tonnes in ((FORWARD, forward_t), (LEFT, aside_t)):
        if tonnes is None:
            assert verdict(nominal(load([], mass_kg=5000.0, load_friction=friction, **LOW)), SLIDES, way)
            continue
        for off_t, holds in ((-0.006, True), (0.006, False)):
            told = {"mass_kg": 1000.0 * (tonnes + off_t), "load_friction": friction} | LOW
            assert verdict(nominal(load([over_the_top(75.0, stf_dan=400.0)], **told)), SLIDES, way) is holds


def test_published_headboard_and_eleven_straps_hold_ten_tonnes() -> None:
    """GDV handbook 4.1.6: demand 7848, capacity 12186.5 daN with its factor 1.6; its angle taken as 90°."""
    blocks = [block(Blocks.FORWARD, (0.8, 0.0, 0.1), 5000.0)]
    ev = nominal(load(straps(11, 90.0), blocks, mass_kg=10_000.0, load_friction=0.45, **LOW))
    sliding = ev.check(f"sliding[{FORWARD}]").outcome
    assert sliding == pytest.approx((7848.0, 12186.5), abs=0.1)


def test_published_single_strap() -> None:
    """GDV handbook 3.4: one strap of 400 daN at friction 0.3 gives 2 μ F = 240 daN; no factor beside it."""
    bare, one = (
        nominal(load(rows, load_friction=0.3, rule_set=RuleSet.NTC, **LOW)) for rows in ([], straps(1, 90.0, 400.0))
    )
    gained = [ev.check(f"sliding[{FORWARD}]").outcome[1] for ev in (bare, one)]
    assert gained[1] - gained[0] == pytest.approx(240.0, abs=0.01)


@pytest.mark.parametrize("mass_kg, friction, way, needed_dan", [
    pytest.param(650.0, 0.3, FORWARD, 318.8, id="derived, EN 12195-1: blocking of 650 kg forwards"),
    pytest.param(650.0, 0.3, LEFT, 127.5, id="derived, EN 12195-1: blocking of 650 kg sideways"),
    pytest.param(2000.0, 0.4, FORWARD, 784.8, id="published, load-securing glossary: 800 with g 10, 784.8 with 9.81"),
    pytest.param(2500.0, 0.2, FORWARD, 1471.5, id="published, training answers: 1500 with G = m, 1471.5 with 9.81"),
])
def test_a_block_of_the_force_that_is_left_just_holds(
    mass_kg: float, friction: float, way: str, needed_dan: float
) -> None:
    blocks, at = (Blocks.FORWARD, (0.8, 0.0, 0.1)) if way == FORWARD else (Blocks.LEFT, (0.0, 0.8, 0.1))
    for off_dan, holds in ((-0.1, False), (0.1, True)):
        rows = [block(blocks, at, needed_dan + off_dan)]
        assert verdict(nominal(load([], rows, mass_kg=mass_kg, load_friction=friction, **LOW)), SLIDES, way) is holds


@pytest.mark.parametrize("kind, alpha_deg, beta_deg, way, needed_dan", [
    pytest.param(Kind.DIAGONAL, 35.0, 40.0, FORWARD, 447.3, id="derived, GDV forms: diagonals at 35° and 40°"),
    pytest.param(Kind.SLOPE, 45.0, 0.0, LEFT, 186.9, id="derived, GDV forms: slope lashings at 45°, sideways"),
    pytest.param(Kind.SPRING, 30.0, 20.0, FORWARD, 365.4, id="from memory, EN 12195-1 5.5.5.2: one spring at 30°, 20°"),
])
def test_direct_lashings_of_the_force_needed_just_hold(
    kind: Kind, alpha_deg: float, beta_deg: float, way: str, needed_dan: float
) -> None:
    """1200 kg, friction 0.3, two legs against the push."""
    level, down = cos(radians(alpha_deg)), sin(radians(alpha_deg))
    near, far = level * cos(radians(beta_deg)), level * sin(radians(beta_deg))
    rows = []
    for side in (1.0,) if kind is Kind.SPRING else (1.0, -1.0):
        at = (-0.5, 0.5 * side, down) if way == FORWARD else (0.3 * side, -0.5, down)
        anchor = (at[0] - near, at[1] + far * side, 0.0) if way == FORWARD else (at[0], at[1] - near, 0.0)
        rows.append(lashing(kind, at, anchor, lashing_item=strap(needed_dan, None)))
    ev = nominal(load(rows, mass_kg=1200.0, load_friction=0.3, **LOW))
    assert times(ev, way, SLIDES) == pytest.approx(1.0, abs=0.001)


def test_published_shares_of_a_pull() -> None:
    """GDV forms: 35° to the deck and 40° from the length: X/L 0.6275, Y/L 0.5265, Z/L 0.5736."""
    level, down = cos(radians(35.0)), sin(radians(35.0))
    ends = ((0.0, 0.0, down), (level * cos(radians(40.0)), level * sin(radians(40.0)), 0.0))
    ev = nominal(load([diagonal(*ends)]))
    _, *shares = ev["near_shares[L1]"]
    assert shares == pytest.approx([0.6275, 0.5265, 0.5736], abs=1e-4)
    assert (ev["to_deck_deg[L1]"], ev["from_length_deg[L1]"]) == pytest.approx((35.0, 40.0))


def test_without_friction_no_number_of_straps_holds() -> None:
    """Oil on metal leaves nothing: refused in words, never divided by; a block alone holds it."""
    oily = LOW | {"load_friction": None, "load_pair": Pair.BARE_METAL_ON_METAL, "load_surface": Surface.OILY}
    ev = nominal(load(straps(16, 90.0), **oily))
    found = ev.check(f"sliding[{FORWARD}]").outcome
    assert isinstance(found, CannotAssess) and "nothing withstands" in str(found)
    blocks = [block(Blocks.FORWARD, (0.8, 0.0, 0.1), 785.0)]
    assert verdict(nominal(load([], blocks, **oily)), SLIDES, FORWARD)


@pytest.mark.parametrize("half_m, high_m, way, told, stands", [
    pytest.param(0.29, 0.44, FORWARD, {}, False, id="published, BGHM-Information 108 8.4: crate tips forwards"),
    pytest.param(0.29, 0.44, LEFT, {}, True, id="published, BGHM-Information 108 8.4: crate stands sideways, 0.6 too"),
    pytest.param(0.85, 1.0, FORWARD, {}, True, id="published, load-securing leaflet: 0.85 forwards stands"),
    pytest.param(0.80, 1.0, FORWARD, {}, False, id="published, same leaflet: 0.80 forwards tips, equality too"),
    pytest.param(0.75, 1.0, LEFT, {"route": Route.VAN, "vehicle": vehicle(form="van", gross_t=2.0)}, True,
                 id="published, same leaflet: 0.75 sideways stands at 0.7"),
    pytest.param(0.70, 1.0, LEFT, {"route": Route.VAN, "vehicle": vehicle(form="van", gross_t=2.0)}, False,
                 id="published, same leaflet: 0.70 sideways tips at 0.7"),
    pytest.param(0.55, 1.0, REAR, {}, True, id="published, same leaflet: 0.55 rearwards stands"),
    pytest.param(0.50, 1.0, REAR, {}, False, id="published, same leaflet: 0.50 rearwards tips"),
])
def test_printed_verdicts_on_tipping(half_m: float, high_m: float, way: str, told: Row, stands: bool) -> None:
    base = {"base_length_m": 2.0 * half_m, "base_width_m": 2.0 * half_m, "cg_z_m": high_m}
    assert verdict(nominal(load([], **base, **told)), TIPS, way) is stands


@pytest.mark.parametrize("way", WAYS)
@pytest.mark.parametrize("half_m, high_m", [
    pytest.param(0.40, 0.90, id="derived, EN 12195-1: 0.40 / 0.90"),
    pytest.param(0.35, 0.80, id="trap: 0.35 / 0.80"),
])
def test_too_narrow_it_tips_every_way_on_the_road_and_at_sea(half_m: float, high_m: float, way: str) -> None:
    base = {"base_length_m": 2.0 * half_m, "base_width_m": 2.0 * half_m, "cg_z_m": high_m}
    for waters in (Waters.BALTIC, Waters.NORTH_SEA, Waters.OPEN_OCEAN):
        ev = nominal(load([], route=Route.SEA, waters=waters, **base))
        assert times(ev, way, TIPS) < 1.0 and times(ev, way, TIPS, "sea") < 1.0


@pytest.mark.parametrize("waters, needed", [
    pytest.param(Waters.BALTIC, 0.6, id="derived, GDV handbook 2.2.2: sea A lengthways"),
    pytest.param(Waters.NORTH_SEA, 1.0, id="derived, GDV handbook 2.2.2: sea B lengthways"),
    pytest.param(Waters.OPEN_OCEAN, 2.0, id="derived, GDV handbook 2.2.2: sea C lengthways"),
])
def test_base_over_height_at_sea(waters: Waters, needed: float) -> None:
    for factor, stands in ((0.999, False), (1.001, True)):
        ev = nominal(load([], route=Route.SEA, waters=waters, cg_z_m=1.0, base_length_m=2.0 * needed * factor))
        assert run(ev, FORWARD, TIPS, "sea").held.holds is stands


@pytest.mark.parametrize("tilt_rule, tension_dan, way, title", [
    pytest.param(TiltRule.HOUSE, 0.219 * 350.0, LEFT, "tipping to the left",
                 id="derived, statics of tipping: engine of 400 kg sideways, house rule, 0.219 straps"),
    pytest.param(TiltRule.PAIRS, 0.078 * 350.0, LEFT, "tipping to the left",
                 id="derived, statics of tipping: the same at 0.5 with STF, 0.078 straps"),
    pytest.param(TiltRule.PAIRS, 0.142 * 350.0, FORWARD, "tipping forwards",
                 id="derived, statics of tipping: the same forwards, 0.142 straps"),
])
def test_tie_downs_against_tipping(tilt_rule: TiltRule, tension_dan: float, way: str, title: str) -> None:
    """b 0.40 and 0.60 m, d 0.90 m, strap at 80°; its width at the top, 1.2 m on 0.8 m of base, counts for nothing."""
    rows = [tie_down((0.0, 0.6, 1.0), (0.0, 0.6 + 1.0 / tan(radians(80.0)), 0.0), tension_dan)]
    base = {"mass_kg": 400.0, "cg_z_m": 0.9, "base_width_m": 0.8, "base_length_m": 1.2}
    ev = nominal(load(rows, tilt_rule=tilt_rule, **base))
    (found,) = (each for each in ev[f"held_load[{way}]"].runs if each.held.title == title)
    assert found.held.times == pytest.approx(1.0, abs=0.002)


@pytest.mark.parametrize("stf_dan", [
    pytest.param(1300.0, id="published, EN 12195-2: STF 1300 of LC 2500 is refused"),
    pytest.param(200.0, id="published, EN 12195-2: STF 200 of LC 2500 is refused"),
])
def test_an_stf_that_does_not_go_with_the_lc_is_no_tie_down(stf_dan: float) -> None:
    ev = nominal(load(straps(4, 80.0, stf_dan)))
    assert ev.check(f"sliding[{FORWARD}]").verdict in (Verdict.CANNOT, Verdict.WAITING)


@pytest.mark.parametrize("friction, mass_kg", [
    pytest.param(0.2, 200.0, id="derived, NTC Load Restraint Guide: strap of 300 kg upright, friction 0.2"),
    pytest.param(0.4, 600.0, id="derived, NTC Load Restraint Guide: strap of 300 kg upright, friction 0.4"),
    pytest.param(0.6, 1800.0, id="derived, NTC Load Restraint Guide: strap of 300 kg upright, friction 0.6"),
])
def test_mass_per_strap_by_the_australian_guide(friction: float, mass_kg: float) -> None:
    ev = nominal(load(
        [over_the_top(90.0, 300.0 * 0.981)], rule_set=RuleSet.NTC, load_friction=friction, mass_kg=mass_kg, **LOW
    ))
    assert times(ev, FORWARD, SLIDES) == pytest.approx(1.0, rel=1e-6)


@pytest.mark.parametrize("gross_t, push", [
    pytest.param(2.0, 0.7, id="published, VDI 2700-16: van of 2.0 t, 0.7 sideways"),
    pytest.param(3.0, 0.6, id="published, VDI 2700-16: van of 3.0 t, 0.6 sideways; another restatement says 0.5"),
    pytest.param(3.6, 0.5, id="published, VDI 2700-16: lorry of 3.6 t, 0.5 sideways"),
])
def test_vans(gross_t: float, push: float) -> None:
    ev = nominal(load([], vehicle=vehicle(gross_t=gross_t)))
    assert max(each.held.need for each in ev[f"slid_load[{LEFT}]"].runs) == push
