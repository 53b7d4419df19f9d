"""Lashed loads to test with: one that holds, on its skid and on a lorry, and whatever differs from it."""

from typing import Any

from checklist_app.mechanics.lashing.crossing import Body
from checklist_app.mechanics.lashing.direct import Kind
from checklist_app.mechanics.lashing.friction import Pair, Surface
from checklist_app.mechanics.lashing.lashed_body import Stands
from checklist_app.mechanics.lashing.pallet import Bearing
from checklist_app.mechanics.lashing.rule_sets import RuleSet
from checklist_app.operations import pallet_lashing, vehicle_lashing
from checklist_app.operations.gear import Gear, GearState, make
from checklist_app.operations.graph import Day, NotUsed
from checklist_app.operations.lashing.choices import (
    BlockedBy,
    Blocks,
    Edges,
    FarEnd,
    ForksEnter,
    Lies,
    Passes,
    Route,
    Tensioned,
)
from checklist_app.operations.task import Key, Measured, Task

PALLET, VEHICLE = pallet_lashing.TABLE, vehicle_lashing.TABLE
NONE = NotUsed("none here")
Row = dict[str, Any]
CORNERS = ((1.0, 1.0), (1.0, -1.0), (-1.0, 1.0), (-1.0, -1.0))


def exactly(value: float) -> Measured:
    return Measured(value, plus_minus=0.0)


def gear(kind: str, id: str, facts: Row, state: GearState | None, **changes: Any) -> Gear:
    """With None a fact was never entered."""
    return make(kind, id, {name: fact for name, fact in {**facts, **changes}.items() if fact is not None}, state)


def strap(id: str = "L-1", state: GearState | None = None, **changes: Any) -> Gear:
    return gear("web_lashing", id, {"lc_dan": 2500.0, "stf_dan": 350.0, "wll_kg": 2500.0}, state, **changes)


def skid(id: str = "P-1", state: GearState | None = None, **changes: Any) -> Gear:
    facts = {
        "form": "skid", "length_m": 1.4, "width_m": 1.0, "height_m": 0.15, "mass_kg": 50.0, "rated_kg": 3000.0,
        "rated_for": Bearing.FEET.value, "bearers": 2, "bearer_m": 1.4,
    }
    return gear("pallet", id, facts, state, **changes)


def european(**changes: Any) -> Gear:
    facts = {"form": "European pallet", "length_m": 1.2, "width_m": 0.8, "height_m": 0.144, "mass_kg": 25.0}
    return gear("pallet", "P-2", facts, None, **changes)


def lorry(id: str = "V-1", state: GearState | None = None, **changes: Any) -> Gear:
    facts = {
        "form": "lorry", "gross_t": 12.0, "payload_kg": 6000.0, "deck_length_m": 6.0, "deck_width_m": 2.4,
        "headboard_dan": 2000.0, "anchor_dan": 2000.0, "front_axle_m": 0.0, "wheelbase_m": 4.0,
        "front_axle_kg": 3000.0, "rear_axle_kg": 6000.0, "floor_kg_m": 5000.0,
        "load_plan": [{"from_headboard_m": 1.0, "most_kg": 4000.0}, {"from_headboard_m": 3.0, "most_kg": 6000.0},
                      {"from_headboard_m": 5.0, "most_kg": 3000.0}],
    }
    return gear("vehicle", id, facts, state, **changes)


def at(name: str, x_m: float, y_m: float, z_m: float) -> Row:
    return {f"{name}_x_m": x_m, f"{name}_y_m": y_m, f"{name}_z_m": z_m}


def diagonal(x: float = 1.0, y: float = 1.0, to: Body = Body.PALLET, **changes: Any) -> Row:
    """From an eye at a corner of the load outwards, 45° to the length, to the skid or to the deck."""
    out = {Body.PALLET: 0.15, Body.DECK: 0.6}[to]
    low = {Body.PALLET: 0.0, Body.DECK: -0.15}[to]
    return {
        "lashing_item": strap(), "put_on": Kind.DIAGONAL, "from_body": Body.LOAD, "to_body": to,
        **at("at", 0.5 * x, 0.35 * y, 0.8), **at("anchor", (0.5 + out) * x, (0.35 + out) * y, low),
        "anchor_dan": 2000.0, "held_dan": NONE, "edges": Edges.NO_EDGE, **changes,
    }


def tie_down(x: float = 0.0, to: Body = Body.PALLET, **changes: Any) -> Row:
    """Down on both sides of the load from its full height of 1.2 m: straight to the skid, or to the deck beside it."""
    low, aside = {Body.PALLET: (0.0, 0.35), Body.DECK: (-0.15, 0.5)}[to]
    return {
        "lashing_item": strap(), "put_on": Kind.TIE_DOWN, "from_body": Body.LOAD, "to_body": to,
        **at("at", x, 0.35, 1.2), **at("anchor", x, aside, low), "far_end": FarEnd.MIRRORED, "anchor_dan": 2000.0,
        "held_dan": NONE, "tensioned": Tensioned.HAND, "edges": Edges.GUARDED, **changes,
    }


def round_both(x: float = 0.0, passes: Passes = Passes.UNDER_WHOLE_PALLET, **changes: Any) -> Row:
    """A strap round load and skid."""
    return tie_down(x, Body.PALLET, passes=passes, **changes)


def block(way: Blocks, by: BlockedBy = BlockedBy.CHOCK, on: Body = Body.PALLET, **changes: Any) -> Row:
    """Fast to skid or deck, at the edge that it keeps from moving."""
    x, y = {Blocks.FORWARD: (0.5, 0.0), Blocks.REAR: (-0.5, 0.0), Blocks.LEFT: (0.0, 0.35),
            Blocks.RIGHT: (0.0, -0.35)}[way]
    return {"blocked_by": by, "blocks": way, "block_on": on, "block_dan": 1000.0, **at("block", x, y, 0.1), **changes}


def four(to: Body = Body.PALLET, **changes: Any) -> tuple[Row, ...]:
    return tuple(diagonal(x, y, to, **changes) for x, y in CORNERS)


LOAD: Row = {
    "day": Day("2026-11-25"), "mass_kg": 1000.0, "cg_x_m": 0.0, "cg_y_m": 0.0, "cg_z_m": 0.6, "length_m": 1.2,
    "width_m": 0.8, "height_m": 1.2, "stands": Stands.FEET, "base_length_m": 1.0, "base_width_m": 0.7,
    "edge_gives_m": NONE, "pallet": skid(), "bearing": Bearing.FEET,
    "pallet_lies": Lies.LENGTHWAYS, "load_pair": Pair.BARE_METAL_ON_WOOD,
    "load_surface": Surface.CLEAN_DRY, "route": Route.ROAD, "rule_set": RuleSet.EN, "ends_off_m": 0.0,
}
FLOOR: Row = {
    "floor_kg_m": 2000.0, "forks_apart_m": 1.0, "forks_reach_m": 1.0, "forks_enter": ForksEnter.SIDE,
}
DECK: Row = {
    "vehicle": lorry(), "deck_pair": Pair.SAWN_WOOD_ON_PLYWOOD, "deck_surface": Surface.CLEAN_DRY,
    "behind_headboard_m": 3.0, "other_kg": NONE,
}


def on_pallet(lashings: tuple[Row, ...] | None = None, blocks: tuple[Row, ...] = (), **changes: Any) -> Task:
    """1000 kg on feet 1.0 × 0.7 m on a skid, centre of gravity 0.6 m up in the middle, four diagonals, by EN 12195-1;
    numbers given plainly are exact; None leaves an answer out."""
    return _task({**LOAD, **FLOOR, **changes}, four() if lashings is None else lashings, blocks)


def on_vehicle(lashings: tuple[Row, ...] | None = None, blocks: tuple[Row, ...] = (), **changes: Any) -> Task:
    """The same on a lorry, 3 m behind its headboard, diagonals to the deck."""
    return _task({**LOAD, **DECK, **changes}, four(Body.DECK) if lashings is None else lashings, blocks)


def _task(entries: Row, lashings: tuple[Row, ...], blocks: tuple[Row, ...]) -> Task:
    task = Task({Key(name): _told(value) for name, value in entries.items() if value is not None})
    for group, rows in (("lashing", lashings), ("block", blocks)):
        for number, row in enumerate(rows, 1):
            answers = {name: _told(value) for name, value in row.items() if value is not None}
            task = task.with_row(group, str(number), answers)
    return task


def _told(value: Any) -> Any:
    return exactly(value) if isinstance(value, float) else value
