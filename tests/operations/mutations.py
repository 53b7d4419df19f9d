"""For each clause and each check a lift in which it alone decides, and the best that it could say."""

from collections.abc import Callable, Mapping
from dataclasses import replace
from typing import Any

from checklist_app.mechanics.fittings.eye_use import Turning
from checklist_app.mechanics.hanging.body import Rigging, hung
from checklist_app.mechanics.hanging.bounds import Pair
from checklist_app.mechanics.hanging.four_bars import Flat, bars
from checklist_app.mechanics.hanging.margin import Face
from checklist_app.mechanics.hanging.taut import hook_of_tight_legs
from checklist_app.mechanics.hanging.two_hooks import hung_from_two_hooks
from checklist_app.mechanics.lift_class import LiftClass
from checklist_app.mechanics.slings.chemicals import Chemical
from checklist_app.mechanics.slings.kinds import Hitch, RuleSet
from checklist_app.mechanics.slings.slip import Face as Face_
from checklist_app.mechanics.slings.temperature import Fibre
from checklist_app.mechanics.slings.wrap import Stop
from checklist_app.mechanics.vectors import Vec
from checklist_app.operations.gear import GearState, make
from checklist_app.operations.graph import DontKnow
from checklist_app.operations.straight_lift.choices import Gathered, Protected, ShacklePull, ShareRule
from checklist_app.operations.task import Measured, Task
from tests.operations.mutations_on_the_way import (
    WAY_CHECKS,
    WAY_CLAUSES,
    WAY_NEVER_ALONE,
    WAY_SHOWN,
    WAY_TELLS,
)
from tests.operations.mutations_running import RUNNING_CHECKS, RUNNING_CLAUSES, RUNNING_SHOWN, RUNNING_TELLS
from tests.operations.straight_lift.lifts import NONE, eye, hoist, hook, lift, pick_point, shackle, sling
from tests.operations.straight_lift.rigged import four, narrow, one, three, two_hooks

HUGE = 1e6
LATE = GearState("in service", (), "2026-10-01", True)


def late(kind: str, **facts: Any) -> Any:
    return make(kind, "late", {"wll_t": 9.0, "reach_m": 0.1, "length_m": 1.0, "mass_kg": 1.0, **facts}, LATE)


LATE_EYE = make("eye", "late", {"ratings": [{"up_to_deg": 60.0, "wll_t": 9.0}], "reach_m": 0.1, "mass_kg": 1.0}, LATE)
HEAVY = {"hook_load_kg": 1200.0, "tilt_along_deg": 0.0, "tilt_across_deg": 0.0}
STEEP_PAIR = lift(both={"sling": sling(1.0)}, mass_kg=1500.0)
FLAT_PAIR = lift(both={"sling": sling(1.0)}, mass_kg=1010.0, eyes_apart_m=1.6, cg_x_m=0.8)
TOO_FLAT = lift(eyes_apart_m=1.75, cg_x_m=0.875, highest_hook_m=50.0, room_height_m=50.0)
SLANTING = lift(right_eye_higher_m=-0.2, cg_z_m=-0.08)
UNLIKE_LEGS = lift({"leg_length_m": 0.8544, "sling": sling(0.5)}, {"leg_length_m": 1.063}, cg_x_m=0.3)
ASIDE = lift(cg_y_m=0.05)
LEVEL = {"hook_load_kg": 1000.0, "tilt_along_deg": 0.0, "tilt_across_deg": 0.0}
ROLLED = lift(both={"eye": eye((40.0, 4.0), (90.0, 0.1))}, cg_y_m=0.3, trials=(LEVEL,))
LEANING = lift(cg_x_m=0.65)

NOOSE = {"hitch": Hitch.CHOKED, "choke_angle_deg": 130.0, "stop": Stop.COLLAR}
BASKET = {"hitch": Hitch.BASKET, "part_angle_deg": 30.0, "stop": Stop.COLLAR}
LOOSE = {"hitch": Hitch.BASKET, "part_angle_deg": 0.0, "stop": Stop.NONE, "face": Face_.DRY_AND_CLEAN}
SLIPS = lift(both=LOOSE)
BARE_EDGE = {"edge_mm": 3.0, "edge_protected": Protected.SMOOTH}
WLL = {"length_m": 1.0, "mass_kg": 1.0}
WEBBING = {"sling": make("flat_sling", "F", WLL | {"wll_t": 2.0, "fibre": "polyester", "thickness_mm": 7.0})}
CHAIN = {"sling": make("chain_sling", "C", WLL | {"wll_t": 0.75, "grade": "grade 8", "size_mm": 6.0})}
ROPE = {"sling": make("wire_rope_sling", "W", WLL | {
    "wll_t": 0.75, "diameter_mm": 10.0, "core": "steel", "termination": "steel ferrule",
})}
HOT: dict[str, Any] = {"mass_kg": 900.0, "sling_temperature_c": 250.0}
THIN_ROPE = {"sling": make("wire_rope_sling", "W", {**ROPE["sling"].facts, "wll_t": 0.35})}
STAMPED = make("eye", "D", {
    "ratings": [{"up_to_deg": 60.0, "wll_t": 9.0}], "reach_m": 0.05, "mass_kg": 0.5, "thread": "M16",
    "marking": "DIN 580 or DIN 582, 2010 and later", "stamped_t": 0.7,
})
COLLAR = make("eye", "B", {
    "ratings": [{"up_to_deg": 60.0, "wll_t": 9.0}], "reach_m": 0.05, "mass_kg": 0.5, "thread": "M30",
    "marking": "BS 4278 collar eyebolt, metric thread", "stamped_t": 4.0,
})
BOW = make("shackle", "P", {"wll_t": 1.0, "reach_m": 0.1, "mass_kg": 1.0, "form": "bow", "pin": "screw pin"})
CELL = make("load_cell", "C", {"wll_t": 0.5, "reach_m": 0.3, "mass_kg": 3.0})
ZERO = Vec(0.0, 0.0, 0.0)
# Laid double the legs have no table of their own: their pull alone decides.
DOUBLE = {"hitch": Hitch.DOUBLED, "part_angle_deg": 0.0, "stop": Stop.COLLAR, "sling": sling(0.28)}
FOUR_BY_TABLE = four(every={"sling": sling(1.0)}, mass_kg=1450.0)
TOO_FLAT_4 = four(every={"leg_length_m": 0.78})
NARROW = narrow(1.333)
TOP_HEAVY = four(cg_z_m=0.9, bottom_z_m=-0.5, top_z_m=2.5)
LEANING_HOOKS = two_hooks(hooks=(0.3, 0.9))
PLUMB_HOOKS = replace(
    hung_from_two_hooks(bars(0.6, 0.2, 0.4, (1.5, 1.5), (0.6, 0.0), (0.6, 0.0))), right=Flat(0.6, -1.5)
)

CLAUSE_CASES: Mapping[str, tuple[Callable[..., Any], Task]] = {
    "weight.gross_mass_kg": (lambda *_: 1.0, lift(rigging_kg=200.0, hoist=hoist(1.1))),
    "weight.gross_load_t": (lambda *_: 0.001, lift(hoist=hoist(0.9))),
    "suspension.level_between_eyes_m": (lambda *_: 0.4, lift(cg_x_m=0.5, cg_y_m=0.05)),
    "suspension.cg_along_pick_line_m": (lambda *_: 0.5, LEANING),
    "suspension.cg_beside_pick_line_m": (lambda *_: 0.0, ASIDE),
    "suspension.hook_along_pick_line_m": (lambda apart, *_: apart / 2.0, lift({"leg_length_m": 1.1})),
    "suspension.hook_off_pick_line_m": (lambda *_: 10.0, TOO_FLAT),
    "attitude.legs_upright": (lambda *_: 1.0, ROLLED),
    "attitude.legs_aside": (lambda *_: 0.0, ASIDE),
    "attitude.level_share_m": (lambda *_: 0.0, LEANING),
    "attitude.upward_share_m": (lambda *_: HUGE, LEANING),
    "attitude.tilt_deg": (lambda *_: 0.0, LEANING),
    "leg_tension.eye_drop_m": (lambda *_: HUGE, TOO_FLAT),
    "leg_tension.eye_reach_m": (lambda *_: 0.0, TOO_FLAT),
    "leg_tension.share_of_leg": (lambda *_: 0.0, UNLIKE_LEGS),
    "leg_tension.one_leg_carries_all": (lambda: 0.0, lift(both={"sling": sling(0.9)}, cg_x_m=DontKnow())),
    "leg_tension.angle_from_vertical_deg": (lambda *_: 0.0, TOO_FLAT),
    "stability.cg_below_pick_line_m": (lambda *_: 10.0, lift(cg_z_m=0.1)),
    "slings.rules.bridle_factor": (lambda *_: 1.4, FLAT_PAIR),
    "slings.legs.weakest_leg_wll_t": (lambda *_: HUGE, STEEP_PAIR),
    "slings.rules.hitch_factor": (lambda *_: 1.0, lift(both=NOOSE | {"sling": sling(0.72)})),
    "slings.rules.basket_factor": (lambda *_: 2.0, lift(both=BASKET | {"sling": sling(0.4)})),
    "slings.choke.choke_angle_factor": (
        lambda *_: 1.0, lift(both=NOOSE | {"sling": sling(1.0), "choke_angle_deg": 80.0})
    ),
    "slings.legs.counted_legs": (lambda *_: 3, FOUR_BY_TABLE),
    "slings.legs.leg_angles_alike": (lambda *_: False, FOUR_BY_TABLE),
    "slings.bends.labelled_bend_factor": (lambda *_: 1.0, lift(both=ROPE | BASKET | {"bend_mm": 16.0})),
    "slings.bends.us_basket_bend_factor": (
        lambda *_: 1.0, lift(both=THIN_ROPE | BASKET | {"bend_mm": 16.0}, rule_set=RuleSet.US)
    ),
    "slings.edges.chain_edge_factor": (lambda *_: 1.0, lift(both=CHAIN | BARE_EDGE)),
    "slings.edges.textile_edge_factor": (lambda *_, **__: 1.0, lift(both=WEBBING | BARE_EDGE)),
    "slings.temperature.fibre_temperature_factor": (lambda *_: 1.0, lift(both=WEBBING, sling_temperature_c=120.0)),
    "slings.temperature.chain_temperature_factor": (lambda *_: 1.0, lift(both=CHAIN, sling_temperature_c=350.0)),
    "slings.temperature.us_chain_temperature_factor": (
        lambda *_: 1.0, lift(both=CHAIN, sling_temperature_c=500.0, rule_set=RuleSet.US)
    ),
    "slings.temperature.rope_temperature_factor": (lambda *_: 1.0, lift(both=ROPE, sling_temperature_c=350.0)),
    "slings.chemicals.fibre_is_attacked": (lambda *_: False, lift(both=WEBBING, chemicals=Chemical.ALKALI)),
    "slings.chemicals.steel_is_attacked": (lambda *_: False, lift(both=CHAIN, chemicals=Chemical.ACID)),
    "slings.label.labelled_fibre": (
        lambda *_: Fibre.POLYPROPYLENE, lift(both=WEBBING, chemicals=Chemical.ALKALI)
    ),
    "slings.slip.friction_coefficient": (lambda *_: 1.0, SLIPS),
    "slings.slip.friction_needed": (lambda *_: 0.0, SLIPS),
    "slings.slip.measured_friction": (lambda *_: 1.0, lift(both=LOOSE | {"friction": 0.2})),
    "slings.wrap.choke_holds_upright": (lambda *_: True, one(every=NOOSE | {"stop": Stop.NONE, "friction": 0.3})),
    "fittings.shackles.side_load_factor": (
        lambda *_: 1.0, lift(both={"bottom_fitting": BOW, "shackle_pull": ShacklePull.ASIDE})
    ),
    "fittings.shackles.pin_use_factor": (lambda *_: 1.0, lift(hook_shackle=Gathered.ON_PIN)),
    "fittings.cold.coldest_c": (
        lambda *_: -60.0, lift(both=CHAIN | {"eye": NONE}, mass_kg=900.0, sling_temperature_c=-30.0)
    ),
    "fittings.eye_use.single_eye_stays": (lambda *_: True, one(every={"turning": Turning.FREE})),
    "fittings.eye_use.eye_use_factor": (lambda *_: 1.0, one(every={"eye": COLLAR, "bottom_fitting": hook()})),
    "slings.legs.plan_angles_alike": (lambda *_: False, three(every={"sling": sling(0.45)})),
    "fittings.shackles.shackle_temperature_factor": (
        lambda *_: 1.0, lift(both=CHAIN | {"eye": NONE}, hook_fitting=shackle(0.95), **HOT)
    ),
    "fittings.din_eyes.eye_temperature_factor": (lambda *_: 1.0, lift(both=CHAIN, **HOT)),
    "fittings.eye_rating.eye_wll_t": (lambda *_: HUGE, lift({"eye": STAMPED})),
    "hanging.body.frame": (lambda *_: (ZERO, ZERO, ZERO), TOO_FLAT_4),
    "hanging.body.rigging": (lambda picks, _legs, cg: Rigging(tuple(picks), (9.0,) * 4, cg), TOO_FLAT_4),
    "hanging.taut.hook_of_tight_legs": (lambda *_: Vec(0.6, 0.4, 9.0), TOO_FLAT_4),
    "hanging.settling.settled": (lambda what: hung(what, hook_of_tight_legs(what), (1.0,) * 4, (True,) * 4), NARROW),
    "hanging.taut.area_m2": (lambda *_: 0.0, four(every=DOUBLE)),
    "hanging.taut.share_of_three": (lambda *_: 0.0, four(every=DOUBLE)),
    "hanging.taut.even_share": (
        lambda *_: 0.0, four(every=DOUBLE | {"sling": sling(0.18)}, share_rule=ShareRule.THREE)
    ),
    "hanging.taut.share_by_moments": (lambda *_: 0.0, two_hooks(every={"sling": sling(0.5)})),
    "hanging.four_bars.bars": (lambda *_: bars(0.6, 0.2, 0.4, (1.5, 1.5), (0.6, 0.0), (0.6, 0.0)), LEANING_HOOKS),
    "hanging.two_hooks.hung_from_two_hooks": (lambda *_: PLUMB_HOOKS, LEANING_HOOKS),
    "hanging.margin.faces": (lambda *_: (Face((0, 1), 0.5, -0.1),), TOP_HEAVY),
    "hanging.margin.push_that_slackens_kn": (lambda *_: HUGE, TOP_HEAVY),
    "angle_ratings.wll_at_angle_t": (lambda *_: HUGE, lift({"eye": eye((60.0, 0.5))})),
    "shackles.bow_wll_t": (lambda *_: HUGE, lift(hook_fitting=shackle(0.9))),
    "shackles.hook_wll_t": (lambda *_: HUGE, lift(hook_fitting=hook(0.9))),
    "angle_limits.leg_from_vertical_limit_deg": (lambda: 180.0, TOO_FLAT),
    "angle_limits.legs_alike": (lambda *_: False, STEEP_PAIR),
    "headroom.hook_height_m": (lambda *_: 0.0, lift(highest_hook_m=2.2)),
    "headroom.left_above_m": (lambda *_: HUGE, lift(highest_hook_m=2.2)),
    "lift_class.class_by_utilisation": (lambda *_: LiftClass.ROUTINE, lift(hoist=hoist(1.05))),
    "lift_class.class_by_knowledge": (
        lambda *_, **__: LiftClass.ROUTINE, lift(mass_kg=Measured(1000.0, "estimate"))
    ),
    **WAY_CLAUSES,
    **RUNNING_CLAUSES,
}
# Only shown, in no check: the force beside the load in the unit of the labels.
SHOWN_ONLY = {
    "weight.weight_kn": (lift(), "leg_tension_kn[left]", 0.0),
    "hanging.margin.couple_that_slackens_knm": (TOP_HEAVY, "slack_couple_knm", 0.0),
    "hanging.margin.rise_before_it_goes_over_m": (TOP_HEAVY, "rise_to_go_over_m", 0.0),
    "hanging.bounds.opposite_pairs": (
        four(cg_x_m=0.7, share_rule=ShareRule.DIAGONALS), "leg_share[right_rear]", ((0, 2), (1, 3))
    ),
    "hanging.bounds.carried_by_opposite_pairs": (FOUR_BY_TABLE, "two_would_carry", (Pair((0, 3), (9.0, 9.0)),)),
    **WAY_SHOWN,
    **RUNNING_SHOWN,
}
# Never alone: legs further apart than a link takes lie flatter than any leg may; the caution's bound is read at import.
NEVER_ALONE = {"fittings.hooks.master_link_factor", "slings.legs.nearly_vertical_below_deg", *WAY_NEVER_ALONE}

CHECK_CASES: Mapping[str, Task] = {
    "hoist_strength": lift(hoist=hoist(0.9)),
    "load_cell_strength": lift(load_cell=make("load_cell", "C", {"wll_t": 0.9, "reach_m": 0.3, "mass_kg": 3.0})),
    "hook_fitting_strength": lift(hook_fitting=shackle(0.9)),
    "sling_strength": UNLIKE_LEGS,
    "pair_strength": STEEP_PAIR,
    "top_fitting_strength": lift({"top_fitting": shackle(0.5)}),
    "bottom_fitting_strength": lift({"bottom_fitting": shackle(0.5)}),
    "eye_strength": lift({"eye": eye((60.0, 0.5))}),
    "carrier_strength": lift({"carrier": pick_point((60.0, 0.5))}),
    "leg_angle": lift(cg_x_m=0.55, eyes_apart_m=1.1, both={"leg_length_m": 0.62}),
    "tilt_along": LEANING,
    "tilt_across": ASIDE,
    "tilt_agrees": lift(cg_x_m=0.7, trials=(LEVEL,)),
    "stability": lift(cg_z_m=Measured(-0.09, "by eye")),
    "headroom": lift(highest_hook_m=2.2),
    "room": lift(room_height_m=1.5),
    "mass_agrees": lift(trials=(HEAVY,)),
    "hoist_usable": lift(hoist=late("hoist", reach_m=None, length_m=None)),
    "load_cell_usable": lift(load_cell=late("load_cell", length_m=None)),
    "hook_fitting_usable": lift(hook_fitting=late("shackle", length_m=None)),
    "sling_usable": lift({"sling": late("round_sling", reach_m=None)}),
    "top_fitting_usable": lift({"top_fitting": late("shackle", length_m=None)}),
    "bottom_fitting_usable": lift({"bottom_fitting": late("shackle", length_m=None)}),
    "eye_usable": lift({"eye": LATE_EYE}),
    "eye_marking": lift({"eye": STAMPED}),
    "eye_stays_in": one(every={"turning": Turning.FREE}),
    "chemicals_resisted": lift(both=WEBBING, chemicals=Chemical.ALKALI),
    "slip": SLIPS,
    "angle_agrees": lift({"leg_angle_read_deg": 20.0}),
    "legs_carry": four({"left_front": {"leg_length_m": 1.55}}),
    "push_stability": TOP_HEAVY,
    "hook_hoist_strength": two_hooks(each_hook={"hook_hoist": hoist(0.5)}),
    "hook_load_cell_strength": two_hooks(each_hook={"hook_load_cell": CELL}),
    "hook_plumb": two_hooks(hooks=(0.1, 1.2)),
    "hook_hoist_usable": two_hooks(each_hook={"hook_hoist": late("hoist", reach_m=None, length_m=None)}),
    "hook_load_cell_usable": two_hooks(each_hook={"hook_load_cell": late("load_cell", length_m=None)}),
    **WAY_CHECKS,
    **RUNNING_CHECKS,
}
# They tell how four legs share, and what is left over an edge or in heat: that counts, or is refused, in the strength.
# A steep leg is a caution, which decides nothing.
TELLS_ONLY = {"sharing", "edge", "temperature", "leg_upright", *WAY_TELLS, *RUNNING_TELLS}
