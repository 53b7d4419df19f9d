"""For each check of both operations, and each clause behind the checks beside the balances, a load that it decides."""

from collections.abc import Callable, Mapping
from typing import Any

from checklist_app.mechanics.lashing.angles import Lie
from checklist_app.mechanics.lashing.balance import Balance
from checklist_app.mechanics.lashing.crossing import Body
from checklist_app.mechanics.lashing.friction import Pair, Surface
from checklist_app.mechanics.lashing.rule_sets import RuleSet
from checklist_app.mechanics.lift_class import LiftClass
from checklist_app.operations.check import Limit, State, Strength
from checklist_app.operations.gear import GearState
from checklist_app.operations.lashing.choices import BlockedBy, Blocks, Edges, Passes
from checklist_app.operations.task import Measured, Task
from tests.operations.lashing.lashed_tasks import (
    NONE,
    at,
    block,
    european,
    four,
    lorry,
    on_pallet,
    on_vehicle,
    round_both,
    skid,
    strap,
    tie_down,
)

HUGE = 1e6
BEST = {Strength: Strength(0.0, 1.0), Limit: Limit(-1e9, 1e9), State: State(True, "")}
TORN = GearState("in service", ("edge cut",), "2027-05-01", True)
OILY = {"load_surface": Surface.OILY}
ON_A_MAT = {"load_pair": Pair.MAT, "load_surface": Surface.CLEAN_DRY}
CHOCKED = tuple(block(way, block_z_m=0.0, block_dan=5000.0) for way in Blocks)
BOLTED = tuple({**each, "blocked_by": BlockedBy.BOLTS} for each in CHOCKED)
ON_DECK = four(Body.DECK)
PALLET_DOWN = four(Body.DECK, from_body=Body.PALLET, at_z_m=-0.02)
CHOCKED_ON_DECK = tuple({**each, "block_on": Body.DECK} for each in CHOCKED)
BOLTED_ON_DECK = tuple({**each, "block_on": Body.DECK} for each in BOLTED)
GIVES_ON_DECK = tuple({**each, "blocked_by": BlockedBy.GIVES} for each in CHOCKED_ON_DECK)
HEADBOARD = block(Blocks.FORWARD, BlockedBy.HEADBOARD, Body.DECK, block_dan=2500.0)
WEAK = {"lashing_item": strap(lc_dan=1000.0, stf_dan=100.0)}
ONE_RING = {"anchor_dan": 600.0}
ONE_EYE = {"held_dan": 600.0}
US = {"rule_set": RuleSet.US}
NTC = {"rule_set": RuleSet.NTC}
LOW = {"cg_z_m": 0.3}

PALLET_CASES: Mapping[str, Task] = {
    "sliding": on_pallet((tie_down(),), **OILY),
    "tipping": on_pallet((), BOLTED, cg_z_m=0.62),
    "lashing_strength": on_pallet((tie_down(anchor_dan=340.0),), CHOCKED, **ON_A_MAT),
    "anchor_strength": on_pallet((tie_down(**ONE_RING),) * 2, CHOCKED, **LOW),
    "load_eye_strength": on_pallet((tie_down(**ONE_EYE),) * 2, CHOCKED, **LOW),
    "wandering": on_pallet((), CHOCKED, **LOW),
    "lashing_number": on_pallet((tie_down(),), CHOCKED[1:], **LOW, **ON_A_MAT, **US),
    "aggregate_wll": on_pallet(four(lashing_item=strap(wll_kg=220.0)), CHOCKED, **LOW, **US),
    "held_down": on_pallet((tie_down(**WEAK),), CHOCKED, mass_kg=1040.0, **LOW, **NTC),
    "pallet_strength": on_pallet(pallet=european(), mass_kg=1100.0, floor_kg_m=NONE),
    "overhang": on_pallet(base_length_m=1.45),
    "strap_through_pallet": on_pallet((*four(), round_both(passes=Passes.THROUGH_PALLET))),
    "pallet_usable": on_pallet(pallet=skid(state=TORN)),
    "edge_guarded": on_pallet(four(edges=Edges.BARE)),
    "tie_down_label": on_pallet((*four(), tie_down(lashing_item=strap(stf_dan=200.0)))),
    "lashing_usable": on_pallet(four(lashing_item=strap(state=TORN))),
    "slope_agrees": on_pallet(four(slope_read_deg=20.0)),
    "heading_agrees": on_pallet(four(heading_read_deg=10.0)),
    "floor_load": on_pallet(floor_kg_m=360.0),
    "fork_tilt": on_pallet(forks_apart_m=0.4),
}
VEHICLE_CASES: Mapping[str, Task] = {
    "sliding": on_vehicle((tie_down(to=Body.DECK),), CHOCKED_ON_DECK, **OILY),
    "tipping": on_vehicle(PALLET_DOWN, BOLTED, cg_z_m=0.62),
    "lashing_strength": on_vehicle((tie_down(to=Body.DECK, anchor_dan=340.0),), (*CHOCKED, *CHOCKED_ON_DECK), **LOW),
    "deck_sliding": on_vehicle((*four(), tie_down(to=Body.DECK)), deck_surface=Surface.OILY),
    "deck_tipping": on_vehicle(four(), BOLTED_ON_DECK, cg_z_m=0.739),
    "anchor_strength": on_vehicle((tie_down(to=Body.DECK, **ONE_RING),) * 2, (*CHOCKED, *CHOCKED_ON_DECK), **LOW),
    "load_eye_strength": on_vehicle((tie_down(to=Body.DECK, **ONE_EYE),) * 2, (*CHOCKED, *CHOCKED_ON_DECK), **LOW),
    "wandering": on_vehicle(four(), CHOCKED_ON_DECK, **LOW),
    "load_wandering": on_vehicle(PALLET_DOWN, CHOCKED, **LOW),
    "lashing_number": on_vehicle((tie_down(to=Body.DECK),), (*CHOCKED, *GIVES_ON_DECK), **LOW, **US),
    "aggregate_wll": on_vehicle(
        four(Body.DECK, lashing_item=strap(wll_kg=220.0)), (*CHOCKED, *CHOCKED_ON_DECK), **LOW, **US
    ),
    "held_down": on_vehicle((tie_down(to=Body.DECK, **WEAK),), (*CHOCKED, *CHOCKED_ON_DECK), **LOW, **NTC),
    "pallet_strength": on_vehicle(pallet=european(), mass_kg=1100.0),
    "overhang": on_vehicle(base_length_m=1.45),
    "strap_through_pallet": on_vehicle((*ON_DECK, round_both(passes=Passes.THROUGH_PALLET))),
    "pallet_usable": on_vehicle(pallet=skid(state=TORN)),
    "edge_guarded": on_vehicle(four(Body.DECK, edges=Edges.BARE)),
    "tie_down_label": on_vehicle((*ON_DECK, tie_down(to=Body.DECK, lashing_item=strap(stf_dan=200.0)))),
    "lashing_usable": on_vehicle(four(Body.DECK, lashing_item=strap(state=TORN))),
    "slope_agrees": on_vehicle(four(Body.DECK, slope_read_deg=10.0)),
    "heading_agrees": on_vehicle(four(Body.DECK, heading_read_deg=10.0)),
    "anchor_rating": on_vehicle(four(Body.DECK, anchor_dan=2500.0)),
    "headboard_rating": on_vehicle(blocks=(HEADBOARD,)),
    "on_deck": on_vehicle(width_m=2.5),
    "vehicle_usable": on_vehicle(vehicle=lorry(state=TORN)),
    "payload": on_vehicle(vehicle=lorry(payload_kg=1000.0)),
    "load_plan": on_vehicle(vehicle=lorry(load_plan=[
        {"from_headboard_m": 1.0, "most_kg": 900.0}, {"from_headboard_m": 5.0, "most_kg": 900.0}])),
    "front_axle": on_vehicle(vehicle=lorry(front_axle_kg=200.0)),
    "rear_axle": on_vehicle(vehicle=lorry(rear_axle_kg=700.0)),
    "deck_floor": on_vehicle(vehicle=lorry(floor_kg_m=700.0)),
}
# A caution: it tells, and decides nothing.
TELLS_ONLY = {"steel_on_steel"}

FLAT = {**WEAK, **at("anchor", 0.0, 0.35 + 1.2 * 3.0 ** 0.5, 0.0)}
FAR_BACK = {"other_kg": 4000.0, "other_behind_headboard_m": 4.5}
SPREAD_OUT = {"cg_x_m": 0.07, "cg_y_m": -0.05}
# What the best is that each clause behind these checks could say.
PALLET_CLAUSES: Mapping[str, tuple[Callable[..., Any], Task]] = {
    "lashing.angles.lie": (
        lambda *_: Lie(1.0, 0.0, 0.0, 1.0), on_pallet((tie_down(**FLAT),), CHOCKED, mass_kg=900.0, **LOW, **NTC)
    ),
    "lashing.rule_sets.weight_dan": (lambda *_: 1e-6, PALLET_CASES["aggregate_wll"]),
    "lashing.cfr_393.fewest_tie_downs": (lambda *_: 0, PALLET_CASES["lashing_number"]),
    "lashing.cfr_393.aggregate_wll": (lambda *_: HUGE, PALLET_CASES["aggregate_wll"]),
    "lashing.cfr_393.aggregate_wll_needed": (lambda *_: 0.0, PALLET_CASES["aggregate_wll"]),
    "lashing.lift_off.held_down": (lambda *_: Balance(0.0, 1.0), PALLET_CASES["held_down"]),
    "lashing.pallet.eur_pallet_kg": (lambda *_: HUGE, PALLET_CASES["pallet_strength"]),
    "lashing.pallet.pallet_kg": (lambda *_: HUGE, on_pallet(pallet=skid(rated_kg=900.0))),
    "lashing.pallet.floor_line_load_kg_m": (lambda *_: 1.0, PALLET_CASES["floor_load"]),
    "lashing.pallet.uneven_bearing": (lambda *_: 1.0, on_pallet(floor_kg_m=500.0, **SPREAD_OUT)),
    "lashing.pallet.tilt_on_forks_deg": (lambda *_: 90.0, PALLET_CASES["fork_tilt"]),
    "lift_class.class_by_utilisation": (lambda *_: LiftClass.ROUTINE, on_pallet(pallet=skid(rated_kg=1200.0))),
    "lift_class.class_by_knowledge": (
        lambda *_, **__: LiftClass.ROUTINE, on_pallet(mass_kg=Measured(1000.0, "estimate"))
    ),
}
VEHICLE_CLAUSES: Mapping[str, tuple[Callable[..., Any], Task]] = {
    "lashing.crossing.crosses": (lambda *_: True, VEHICLE_CASES["wandering"]),
    "lashing.label.weakest_dan": (lambda *_: 1500.0, VEHICLE_CASES["anchor_rating"]),
    "lashing.vehicle.load_plan_kg": (lambda *_: HUGE, VEHICLE_CASES["load_plan"]),
    "lashing.vehicle.common_place_m": (lambda *_: 3.0, on_vehicle(**FAR_BACK)),
    "lashing.vehicle.axle_loads_kg": (lambda *_: (0.0, 0.0), VEHICLE_CASES["rear_axle"]),
    "lashing.pallet.floor_line_load_kg_m": (lambda *_: 1.0, VEHICLE_CASES["deck_floor"]),
    "lashing.pallet.uneven_bearing": (
        lambda *_: 1.0, on_vehicle(vehicle=lorry(floor_kg_m=900.0), cg_x_m=0.07)
    ),
}
