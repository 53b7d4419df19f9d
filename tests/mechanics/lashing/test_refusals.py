"""Outside what a clause of lashing covers it refuses, in words that say what would be allowed."""

import math
from collections.abc import Callable

import pytest

from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.lashing import (
    angles,
    blocking,
    cfr_393,
    changes,
    crossing,
    css_balance,
    css_forces,
    demands,
    direct,
    freight,
    friction,
    greatest,
    holding,
    label,
    lashed_body,
    lift_off,
    pallet,
    prepared,
    rule_sets,
    slide_3d,
    tie_down,
    tip_3d,
    tipping,
    transport,
    vehicle,
)
from checklist_app.mechanics.lashing.cfr_393 import Route
from checklist_app.mechanics.lashing.crossing import Body, Face
from checklist_app.mechanics.lashing.css_balance import Make
from checklist_app.mechanics.lashing.css_forces import Level, ShipForces
from checklist_app.mechanics.lashing.demands import TiltRule
from checklist_app.mechanics.lashing.direct import Kind
from checklist_app.mechanics.lashing.freight import Mode, Wood
from checklist_app.mechanics.lashing.friction import Pair, Surface
from checklist_app.mechanics.lashing.lashed_body import Block, Pull, Stands, Strand, Stretch
from checklist_app.mechanics.lashing.pallet import Bearing
from checklist_app.mechanics.lashing.prepared import Tension
from checklist_app.mechanics.lashing.rule_sets import RuleSet
from checklist_app.mechanics.lashing.transport import Direction, Transport, Waters
from checklist_app.mechanics.vectors import Vec
from tests.mechanics.lashing.arranged import FORWARD, corners, oily

NAN = math.nan
CG, UP = Vec(0.0, 0.0, 0.8), Vec(0.0, 0.0, 1.0)
FEET = corners(0.5, 0.3)
READY = prepared.prepared(oily(1.1))
ROAD = demands.demand(RuleSet.EN, Transport.ROAD, Direction.FORWARD, False, TiltRule.PAIRS)
LEG = (Vec(0.5, 0.3, 1.0), Vec(1.5, 1.0, 0.0))
WEAK = holding.Held("sliding forwards", 0.8, 0.7, 0.7, 0.7, True, True, (1000.0,))
UNSTEADY = (0.0, 0.0, 1.0, 0.0, 0.0, 0.0)


def body(**other: object) -> object:
    return lashed_body.lashed_body(**{  # type: ignore[arg-type]
        "weight_dan": 981.0, "cg": CG, "standing_on": FEET, "stands": Stands.FEET, **other})


def sliding(**other: float) -> float:
    return tie_down.tie_downs_against_sliding(**{  # type: ignore[arg-type]
        "weight_dan": 981.0, "push": 0.8, "downward": 1.0, "friction": 0.3, "angle_deg": 60.0, "tension_dan": 350.0,
        "fs": 1.25, **other})


def over(**other: float) -> float:
    return tie_down.tie_downs_against_tipping(**{
        "weight_dan": 392.4, "push": 0.6, "downward": 1.0, "height_m": 0.9, "to_edge_m": 0.4, "strands_m": 0.8,
        "angle_deg": 80.0, "tension_dan": 350.0, "fs": 1.1, **other})


@pytest.mark.parametrize("call, words", [
    (lambda: rule_sets.weight_dan(RuleSet.EN, NAN), "mass of the load is nan"),
    (lambda: rule_sets.weight_dan(RuleSet.EN, 0.0), "mass of the load is 0"),
    (lambda: rule_sets.weight_dan(RuleSet.EN, 2e6), "200 000 kg at most"),
    (lambda: transport.sea_area(RuleSet.UK, Waters.BALTIC), "allowed: EN 12195-1 or the CTU Code"),
    (lambda: demands.demand(RuleSet.NTC, Transport.RAIL, Direction.REAR, True, TiltRule.PAIRS), "allowed: road"),
    (lambda: demands.demand(RuleSet.CSS, Transport.SEA_A, Direction.REAR, True, TiltRule.PAIRS), "those of the ship"),
    (lambda: demands.van_demand(NAN, Direction.LEFT), "gross mass of the vehicle is nan"),
    (lambda: friction.friction(RuleSet.EN, Pair.MAT, Surface.OILY), "mat is oil or grease; allowed: clean on both"),
    (lambda: friction.friction(RuleSet.CSS, Pair.PLASTIC_PALLET_ON_STEEL, Surface.CLEAN_DRY), "other as measured"),
    *((lambda mu=mu: friction.measured_friction(RuleSet.EN, Pair.BARE_METAL_ON_WOOD, Surface.CLEAN_DRY, mu),
       "measured friction is") for mu in (0.0, -0.1, 1.1, NAN)),
    (lambda: friction.measured_friction(RuleSet.EN, Pair.MAT, Surface.OILY, 0.4), "clean on both sides"),
    (lambda: friction.worst_friction(RuleSet.EN, Pair.MAT, None), "faces of a mat is not known"),
    (lambda: friction.beside_direct_lashings(RuleSet.EN, NAN), "friction is nan"),
    (lambda: friction.beside_direct_lashings(RuleSet.EN, 1.1), "friction is 1.1; allowed: 0 to 1"),
    (lambda: label.labelled_lc_dan(None, True), "LC on the label of the lashing is missing"),
    (lambda: label.labelled_lc_dan(2500.0, False), "LC on the label of the lashing is unreadable"),
    (lambda: label.labelled_lc_dan(NAN, True), "LC on the label of the lashing is nan"),
    (lambda: label.tie_down_tension_dan(2500.0, None, True), "STF on the label is missing; allowed: an STF"),
    (lambda: label.tie_down_tension_dan(2500.0, 1300.0, True), "STF on the label is 1300; allowed: 250 to 1250 daN"),
    (lambda: label.tie_down_tension_dan(2500.0, 200.0, True), "STF on the label is 200; allowed: 250 to 1250 daN"),
    (lambda: label.tie_down_tension_dan(2500.0, NAN, True), "STF on the label is nan"),
    (lambda: label.measured_tension_dan(2500.0, 2600.0), "tension as measured is 2600"),
    (lambda: label.measured_tension_dan(2500.0, NAN), "tension as measured is nan"),
    (lambda: label.weakest_dan({}), "parts of the lashing is none"),
    (lambda: label.weakest_dan({"strap": 2500.0, "anchor": None}), "anchor is not known; allowed: its rating"),
    (lambda: label.weakest_dan({"strap": 0.0}), "carries at strap is 0"),
    (lambda: label.band_breaking_dan(NAN, 1.0), "width of the band is nan"),
    (lambda: label.band_msl_dan(32.0, 0.0), "thickness of the band is 0"),
    (lambda: label.lashing_point_dan(3.5), "gross mass of the vehicle is 3.5; allowed: above 3.5 t"),
    (lambda: angles.lie(UP, UP), "length of the lashing is 0"),
    (lambda: angles.lie(UP, Vec(NAN, 0.0, 0.0)), "length of the lashing is nan"),
    (lambda: angles.shares_of_angles(91.0, 0.0), "angle to the deck is 91"),
    (lambda: angles.shares_of_angles(45.0, NAN), "angle from the vehicle's length is nan"),
    (lambda: angles.angles_agree(45.0, 45.0, 0.0), "by how much angles may differ is 0"),
    (lambda: sliding(weight_dan=NAN), "weight of the load is nan"),
    (lambda: sliding(push=-0.1), "coefficient of acceleration is -0.1"),
    (lambda: sliding(downward=0.0), "share of the weight that remains is 0"),
    (lambda: sliding(downward=1.8), "share of the weight that remains is 1.8"),
    (lambda: sliding(friction=NAN), "friction is nan"),
    (lambda: sliding(angle_deg=90.1), "angle of the tie-down to the deck is 90.1"),
    (lambda: sliding(tension_dan=0.0), "tension of a tie-down is 0"),
    (lambda: sliding(fs=0.9), "safety factor of tie-downs is 0.9"),
    (lambda: sliding(blocked_dan=-1.0), "what blocks hold is -1"),
    (lambda: sliding(k=2.1), "k of the far side is 2.1"),
    (lambda: sliding(friction=0.0), "nothing holds; allowed: friction, straps steeper than level; or block it"),
    (lambda: sliding(angle_deg=0.0), "nothing holds; allowed: friction, straps steeper"),
    (lambda: tie_down.tie_downs_against_sliding(981.0, NAN, 1.0, 0.3, 60.0, 350.0, 1.25), "acceleration is nan"),
    (lambda: tie_down.sliding_with_tie_downs(981.0, 0.8, 1.0, 0.3, 60.0, NAN, 1.25), "tension of all tie-downs is nan"),
    (lambda: tie_down.sliding_with_tie_downs(981.0, 0.8, 1.0, 0.3, 60.0, 0.0, 1.25, 0.0, 0.5), "k of the far side"),
    (lambda: over(strands_m=0.0), "distances of the strands from the edge is 0"),
    (lambda: over(height_m=NAN), "height of the centre of gravity is nan"),
    (lambda: over(angle_deg=0.0), "slope of tie-downs is 0; allowed: steeper than level"),
    (lambda: tie_down.tie_downs_against_tipping(0.0, 0.6, 1.0, 0.9, 0.4, 0.8, 80.0, 350.0, 1.1), "weight of the load"),
    (lambda: tie_down.count(NAN), "number of tie-downs is nan"),
    (lambda: tie_down.count(-1.0), "number of tie-downs is -1"),
    (lambda: tie_down.flat_angle_factor(29.9), "is 29.9; allowed: 30 to 90°; flatter: lash otherwise"),
    (lambda: direct.direct_legs(Kind.TIE_DOWN, [LEG, LEG], 900.0, Stretch.WEB), "allowed: slope, diagonal, loop or"),
    (lambda: direct.direct_legs(Kind.LOOP, [LEG], 900.0, Stretch.WEB), "ends of a loop lashing is 1; allowed: 2"),
    (lambda: direct.direct_legs(Kind.SLOPE, [LEG], NAN, Stretch.WEB), "what the lashing carries is nan"),
    (lambda: direct.tie_down_strands([LEG], 350.0, 2500.0, 2.0), "ends of a tie-down is 1; allowed: 2"),
    (lambda: direct.tie_down_strands([LEG, LEG], NAN, 2500.0, 2.0), "tension of a tie-down is nan"),
    (lambda: direct.tie_down_strands([LEG, LEG], 350.0, 2500.0, 1.0), "k of the far side is 1"),
    (lambda: direct.direct_against_sliding_dan(981.0, 0.8, 1.0, 0.1, 0.75, []), "legs against the motion is none"),
    (lambda: direct.direct_against_sliding_dan(981.0, 0.8, 1.0, 0.1, 0.75, [(10.0, 170.0)]), "legs against the motion"),
    (lambda: direct.direct_against_sliding_dan(981.0, 0.8, 1.0, 0.1, 0.0, [(10.0, 0.0)]), "friction that counts is 0"),
    (lambda: direct.direct_against_sliding_dan(981.0, 0.8, 1.0, NAN, 0.75, [(10.0, 0.0)]), "friction is nan"),
    (lambda: direct.direct_against_tipping(981.0, 0.8, 1.0, 0.0, 0.5, []), "height of the centre of gravity is 0"),
    (lambda: direct.direct_against_tipping(981.0, 0.8, 1.0, 0.8, 0.5, [(NAN, 9.0, 9.0, 1.0, 1.0)]), "of a leg is nan"),
    (lambda: direct.foot_stays(981.0, 0.8, 1.0, 0.8, NAN, []), "centre of gravity to heel is nan"),
    (lambda: direct.foot_stays(981.0, 0.8, 1.0, 0.8, 0.5, [(1.0, 95.0, 9.0, 1.0, 1.0)]), "leg to the deck is 95"),
    (lambda: tipping.stands_unlashed(0.8, 1.0, 0.9, NAN), "centre of gravity to edge is nan"),
    (lambda: tipping.stands_unlashed(0.8, 1.0, 0.0, 0.4), "height of the centre of gravity is 0"),
    (lambda: tipping.base_over_height_needed(NAN, 1.0), "coefficient of acceleration is nan"),
    (lambda: tipping.nearest_edge_m((0.4, 0.3), 0.3), "centre of gravity to where it bears is 0"),
    (lambda: tipping.nearest_edge_m((0.4, NAN), 0.0), "centre of gravity to edge is nan"),
    (lambda: tipping.block_against_tipping_m(NAN, 0.1, 981.0), "what a block holds is nan"),
    (lambda: blocking.blocking_needed_dan(981.0, 0.8, 1.0, NAN, True), "friction is nan"),
    (lambda: blocking.bag_tipping_kn(0.9, 9.81, 0.8, 1.0, 0.0, 1.6), "width of the load is 0"),
    (lambda: blocking.battens_kn(0, 5.0, 10.0, 2.2), "number of battens is 0"),
    (lambda: blocking.battens_kn(6, 5.0, 10.0, NAN), "free length of a batten is nan"),
    (lambda: blocking.timber_contact_kn(NAN), "area of the timber is nan"),
    (lambda: blocking.nails_needed(NAN, False, False), "force on a chock is nan"),
    (lambda: blocking.wall_kn(0.0, True), "weight of the permitted payload is 0"),
    (lambda: blocking.voids_are_filled((NAN,)), "gap beside the load is nan"),
    (lambda: css_forces.length_speed_factor(49.0, 15.0), "length of the ship is 49; allowed: 50 to 300 m"),
    (lambda: css_forces.length_speed_factor(120.0, NAN), "service speed of the ship is nan"),
    (lambda: css_forces.b_over_gm_factor(Level.TWEEN, 6.9), "breadth over metacentric height is 6.9"),
    (lambda: css_forces.accelerations_m_s2(Level.TWEEN, NAN), "place along the ship is nan"),
    (lambda: css_forces.ship_forces(NAN, (1.0, 1.0, 1.0), 1.0, 1.0, 0.0, 0.0, 0.0, 0.0), "mass of the load is nan"),
    (lambda: css_forces.ship_forces(1.0, (1.0, 1.0, 1.0), 1.0, 0.9, 0.0, 0.0, 0.0, 0.0), "stiff ship is 0.9"),
    (lambda: css_forces.ship_forces(1.0, (1.0, 1.0, 1.0), 1.0, 1.0, 1.0, 1.0, 2.0, 0.0), "that the sea can reach is 2"),
    (lambda: css_forces.ship_demand(ShipForces(1.0, 1.0, 9.81), 1.0, Direction.REAR), "weight that remains on board"),
    (lambda: css_balance.msl_kn(Make.CHAIN, NAN), "breaking load is nan"),
    (lambda: css_balance.calculated_strength_kn(0.0, True), "MSL of the weakest part is 0"),
    (lambda: css_balance.securing_factor(0.3, 91.0), "angle of the lashing from level is 91"),
    (lambda: css_balance.securing_factor(NAN, 10.0), "friction is nan"),
    (lambda: css_balance.transverse_have_kn(62.0, NAN, []), "friction is nan"),
    (lambda: css_balance.longitudinal_have_kn(62.0, 700.0, 0.3, []), "weight that remains on board"),
    (lambda: css_balance.tipping_have_knm(62.0, 2.0, [(60.0, NAN)]), "arm of a lashing is nan"),
    (lambda: css_balance.rule_of_thumb_kn(NAN), "mass of the load is nan"),
    (lambda: cfr_393.chain_wll_lb("3/4", None), "size of the chain is 3/4"),
    (lambda: cfr_393.chain_wll_lb("7/16", "80"), "grade of the chain is 80; allowed: 30, 43, 70"),
    (lambda: cfr_393.webbing_wll_lb("1"), "width of the webbing is 1; allowed: 1-3/4, 2, 3, 4"),
    (lambda: cfr_393.wire_rope_wll_lb("1"), "diameter of the wire rope is 1"),
    (lambda: cfr_393.aggregate_wll([(Route.TO_THE_LOAD, NAN)]), "WLL of a tie-down is nan"),
    (lambda: cfr_393.aggregate_wll_needed(0.0), "weight of the load is 0"),
    (lambda: cfr_393.tie_downs_by_wll(NAN, Route.TO_THE_LOAD, 1.0), "weight of the load is nan"),
    (lambda: cfr_393.fewest_tie_downs(NAN, 1.0, True), "length of the load is nan"),
    (lambda: cfr_393.fewest_tie_downs(4.0, 0.0, False), "weight of the load is 0"),
    (lambda: lift_off.held_down(RuleSet.EN, 981.0, 200.0), "allowed: NTC 2018 or 49 CFR 393"),
    (lambda: lift_off.held_down(RuleSet.NTC, 981.0, NAN), "upright parts of the lashings is nan"),
    (lambda: lift_off.mass_per_tie_down_kg(300.0, 90.0, 0.8, 0.8), "above the friction: else friction holds it"),
    (lambda: lift_off.mass_per_tie_down_kg(300.0, 0.0, 0.3, 0.8), "angle of the tie-down to the deck is 0"),
    (lambda: pallet.pallet_kg(NAN, Bearing.FEET, Bearing.FEET), "rating marked on the pallet is nan"),
    (lambda: pallet.pallet_kg(1500.0, Bearing.EVEN, Bearing.FEET), "or a spreader under the feet"),
    (lambda: pallet.strap_on_pallet_dan(pallet.Route.THROUGH_PALLET, 1000.0, None), "under the whole pallet"),
    (lambda: pallet.floor_line_load_kg_m(1200.0, 0, 1.2), "bearers is 0"),
    (lambda: pallet.floor_line_load_kg_m(NAN, 2, 1.2), "mass on the bearers is nan"),
    (lambda: pallet.bearer_bending_mpa(NAN, 0.8, 100.0, 100.0), "force under a foot is nan"),
    (lambda: pallet.section_modulus_cm3(100.0, 0.0), "height of the bearer is 0"),
    (lambda: pallet.uneven_bearing(0.21, 1.2, 0.0, 0.8), "centre of gravity out of the middle is 0.21"),
    (lambda: pallet.uneven_bearing(0.1, 1.2, NAN, 0.8), "out of the middle, across is nan"),
    (lambda: pallet.uneven_bearing(0.1, 0.0, 0.0, 0.8), "length that bears is 0"),
    (lambda: pallet.tilt_on_forks_deg(0.9, 0.0), "centre of gravity inside the forks is 0"),
    (lambda: vehicle.load_plan_kg([(1.0, 8000.0)], 1.0), "points of the load plan is 1"),
    (lambda: vehicle.load_plan_kg([(1.0, 8000.0), (1.0, 9000.0)], 1.0), "two or more, each farther back"),
    (lambda: vehicle.load_plan_kg([(1.0, 8000.0), (3.0, 9000.0)], NAN), "1 to 3 m by the load plan"),
    (lambda: vehicle.common_place_m([]), "mass on the vehicle is 0"),
    (lambda: vehicle.axle_loads_kg(1200.0, 9.0, 4.0), "load behind the front axle is 9"),
    (lambda: vehicle.van_push(NAN, Direction.LEFT), "gross mass of the vehicle is nan"),
    (lambda: freight.volumetric_kg(Mode.AIR, NAN, 1.0, 1.0), "length is nan"),
    (lambda: freight.chargeable_kg(Mode.AIR, 0.0, 1.0), "mass as weighed is 0"),
    (lambda: freight.verified_gross_mass_kg(2200.0, [], 180.0), "packages is none"),
    (lambda: freight.wood_needs_mark(Wood.SOLID, NAN), "thickness of the wood is nan"),
    (lambda: crossing.crosses(Face.LOAD_ON_DECK, Body.DECK, Body.DECK), "both on the deck"),
    (lambda: crossing.mass_above_kg(Face.LOAD_ON_DECK, NAN, 0.0), "mass of the load is nan"),
    (lambda: crossing.mass_above_kg(Face.LOAD_ON_DECK, 1.0, -1.0), "mass of the pallet is -1"),
    (lambda: changes.smallest_number(lambda n: True, -1), "lashings to be had is -1"),
    (lambda: changes.friction_needed(981.0, 0.8, 1.0, NAN, 0.0), "what tie-downs press with is nan"),
    (lambda: changes.cg_must_be_below_m(0.0, 1.0, 0.4), "coefficient of acceleration is 0"),
    (lambda: changes.with_more(oily(1.1), [Pull(UP, UP, 900.0, Stretch.WEB)]), "length of a lashing is 0"),
    (lambda: lashed_body.lashed_body(NAN, CG, FEET, Stands.FEET), "weight of the load is nan"),
    (lambda: body(cg=Vec(0.0, NAN, 0.8)), "a point of the load"),
    (lambda: body(cg=Vec(0.0, 0.0, 0.0)), "height of the centre of gravity above the face it stands on is 0"),
    (lambda: body(standing_on=[(0.0, 0.0), (1.0, 0.0)]), "feet that the load stands on is 2 in a line"),
    (lambda: body(pulls=[Pull(UP, Vec(1.0, 0.0, 0.0), NAN, Stretch.WEB)]), "leg of a direct lashing carries is nan"),
    (lambda: body(strands=[Strand(UP, Vec(1.0, 0.0, 0.0), 0.0, 1.0)]), "tension of a tie-down is 0"),
    (lambda: body(strands=[Strand(UP, Vec(1e9, 0.0, 0.0), 1.0, 1.0)]), "three numbers within 60 m"),
    (lambda: body(blocks=[Block(CG, UP, 400.0)]), "way a block pushes"),
    (lambda: body(blocks=[Block(CG, FORWARD, NAN)]), "what a block holds is nan"),
    (lambda: lashed_body.hull([(0.0, 0.0), (1.0, 1.0), (2.0, 2.0)]), "3 in a line; allowed: 3 or more"),
    (lambda: prepared.required_run(UP, 1.0, 0.3, 1.0), "allowed: a level way of length 1"),
    (lambda: prepared.required_run(FORWARD, NAN, 0.3, 1.0), "share of the weight that remains is nan"),
    (lambda: slide_3d.slides_at(READY, FORWARD, 1.0, NAN, 1.0, True), "friction is nan"),
    (lambda: slide_3d.slides_at(READY, FORWARD, 1.0, 0.3, 1.1, True), "share of the tension that counts is 1.1"),
    (lambda: slide_3d.slides(READY, FORWARD, 1.0, 0.3, 0.75, NAN), "share of the tension that counts is nan"),
    (lambda: tip_3d.tips_at(READY, FORWARD, 0.0, Tension.STF, 1.0), "share of the weight that remains is 0"),
    (lambda: tip_3d.tips_at(READY, FORWARD, 1.0, Tension.STF, 1.0, NAN), "share of the rating that counts is nan"),
    (lambda: holding.pulls_at_need_dan(WEAK, 0.1), "sliding forwards is 0.7; allowed: 0.8 or more before"),
    (lambda: holding.pulls_at_need_dan(WEAK, NAN), "withstood without direct lashings is nan"),
    (lambda: css_balance.counts_against_tipping(30.0, NAN), "angle from athwartships is nan"),
    (lambda: holding.held(RuleSet.EN, holding.Ways(READY), ROAD, NAN), "friction is nan"),
    (lambda: greatest.greatest(UNSTEADY, UNSTEADY, [], [], lambda price: (1.0, tuple(-x for x in UNSTEADY)), None),
     "without end"),
])
def test_it_refuses_in_words(call: Callable[[], object], words: str) -> None:
    with pytest.raises(OutOfRangeError, match=words):
        call()
