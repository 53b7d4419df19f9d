"""Loads to lash: one on the deck itself, or on a pallet, and whatever differs from it; plain numbers are exact."""

from collections.abc import Sequence
from typing import Any

from checklist_app.mechanics.lashing.crossing import Body
from checklist_app.mechanics.lashing.direct import Kind
from checklist_app.mechanics.lashing.friction import Pair, Surface
from checklist_app.mechanics.lashing.lashed_body import Stands
from checklist_app.mechanics.lashing.pallet import Bearing
from checklist_app.mechanics.lashing.rule_sets import RuleSet
from checklist_app.mechanics.lashing.transport import Direction, Waters
from checklist_app.operations import pallet_lashing, vehicle_lashing
from checklist_app.operations.evaluate import Evaluation, assess
from checklist_app.operations.gear import Gear, make
from checklist_app.operations.graph import Day, NotUsed
from checklist_app.operations.lashing.choices import BlockedBy, Blocks, Edges, FarEnd, Lies, Passes, Route, Tensioned
from checklist_app.operations.lashing.run import Run
from checklist_app.operations.task import Key, Measured, Task

Point = tuple[float, float, float]
Row = dict[str, Any]
ON_VEHICLE, ON_PALLET = vehicle_lashing.TABLE, pallet_lashing.TABLE
NONE = NotUsed("none here")
WAYS = tuple(str(way.value) for way in Direction)
FORWARD, REAR, LEFT, RIGHT = WAYS
STRONG = 50_000.0


def strap(lc_dan: float = 2500.0, stf_dan: float | None = 350.0, **facts: Any) -> Gear:
    told = {"lc_dan": lc_dan, "stf_dan": stf_dan, "marked": True, "origin": "bought"} | facts
    kind = told.pop("kind", "web_lashing")
    return make(kind, told.pop("id", "L-1"), {name: fact for name, fact in told.items() if fact is not None})


def pallet(length_m: float = 1.2, width_m: float = 0.8, height_m: float = 0.144, **facts: Any) -> Gear:
    told = {
        "form": "European pallet", "length_m": length_m, "width_m": width_m, "height_m": height_m, "mass_kg": 25.0,
        "marked": True, "origin": "bought",
    }
    return make("pallet", "P-1", told | facts)


def vehicle(**facts: Any) -> Gear:
    told = {
        "form": "lorry", "gross_t": 12.0, "payload_kg": 60_000.0, "deck_length_m": 13.0, "deck_width_m": 3.0,
        "marked": True, "origin": "bought",
    }
    return make("vehicle", "V-1", {name: fact for name, fact in (told | facts).items() if fact is not None})


def lashing(put_on: Kind, at: Point, anchor: Point, **changes: Any) -> Row:
    """A lashing from the load to the deck, its anchor stronger than itself."""
    row = {
        "lashing_item": strap(), "put_on": put_on, "from_body": Body.LOAD, "to_body": Body.DECK,
        "far_end": FarEnd.MIRRORED, "passes": Passes.ELSEWHERE, "anchor_dan": STRONG, "held_dan": NONE,
        "tensioned": Tensioned.HAND, "edges": Edges.GUARDED, **_point("at", at), **_point("anchor", anchor),
    }
    return row | changes


def _point(name: str, at: Point) -> Row:
    return {f"{name}_{axis}_m": value for axis, value in zip("xyz", at, strict=True)}


def tie_down(at: Point, anchor: Point, tension_dan: float | None = None, **changes: Any) -> Row:
    """Drawn as its label says, or to a tension that was read."""
    if tension_dan is not None:
        changes = {"tensioned": Tensioned.MEASURED, "tension_dan": tension_dan} | changes
    return lashing(Kind.TIE_DOWN, at, anchor, **changes)


def diagonal(at: Point, anchor: Point, rated_dan: float = 1000.0, **changes: Any) -> Row:
    return lashing(Kind.DIAGONAL, at, anchor, **({"lashing_item": strap(rated_dan, None)} | changes))


def four(at: Point, anchor: Point, rated_dan: float = 1000.0, **changes: Any) -> list[Row]:
    """One at each corner."""
    return [
        diagonal((x * at[0], y * at[1], at[2]), (x * anchor[0], y * anchor[1], anchor[2]), rated_dan, **changes)
        for x in (1.0, -1.0) for y in (1.0, -1.0)
    ]


def block(blocks: Blocks, at: Point, most_dan: float, **changes: Any) -> Row:
    row = {
        "blocked_by": BlockedBy.CHOCK, "blocks": blocks, "block_on": Body.DECK, "block_dan": most_dan,
        **_point("block", at),
    }
    return row | changes


def load(lashings: Sequence[Row] = (), blocks: Sequence[Row] = (), **changes: Any) -> Task:
    """1000 kg on the deck, its centre of gravity in the middle and 0.5 m up, feet 1.6 × 1.6 m apart, μ 0.3, by road."""
    entries: Row = {
        "day": Day("2026-11-25"), "mass_kg": 1000.0, "cg_x_m": 0.0, "cg_y_m": 0.0, "cg_z_m": 0.5, "length_m": 1.8,
        "width_m": 1.8, "height_m": 1.5, "stands": Stands.FEET, "base_length_m": 1.6, "base_width_m": 1.6,
        "edge_gives_m": NONE, "pallet": NONE, "bearing": Bearing.FEET, "pallet_lies": Lies.LENGTHWAYS,
        "load_pair": rough_enough(changes.get("load_friction")), "load_surface": Surface.CLEAN_DRY,
        "load_friction": 0.3, "route": Route.ROAD, "waters": Waters.OPEN_OCEAN,
        "rule_set": RuleSet.EN, "vehicle": vehicle(), "deck_pair": Pair.SAWN_WOOD_ON_PLYWOOD,
        "deck_surface": Surface.CLEAN_DRY, "behind_headboard_m": 3.0, "other_kg": NONE,
        "ends_off_m": 0.0,
    }
    told = {Key(name): exactly(value) for name, value in (entries | changes).items() if value is not None}
    task = Task(told, {"lashing": (), "block": ()})
    for group, rows in (("lashing", lashings), ("block", blocks)):
        for number, row in enumerate(rows, 1):
            answers = {name: value for name, value in row.items() if value is not None}
            task = task.with_row(group, f"{group[0].upper()}{number}", answers)
    return task


def rough_enough(friction: Any) -> Pair:
    """The faces of an entered friction: ones that have no less as published, swept clean and dry."""
    if not isinstance(friction, float) or friction <= 0.3:
        return Pair.BARE_METAL_ON_WOOD
    return Pair.SAWN_WOOD_ON_PLYWOOD if friction <= 0.45 else Pair.MAT


def exactly(value: Any) -> Any:
    return Measured(value, plus_minus=0.0) if isinstance(value, float) else value


def on_a_pallet(lashings: Sequence[Row] = (), blocks: Sequence[Row] = (), **changes: Any) -> Task:
    """The same load on smaller feet on a European pallet."""
    small = {"pallet": pallet(), "base_length_m": 0.8, "base_width_m": 0.5, "length_m": 0.9, "width_m": 0.6}
    return load(lashings, blocks, **(small | changes))


def nominal(task: Task, table: Any = ON_VEHICLE) -> Evaluation:
    return assess(table, task, with_spread=False)


def runs(ev: Evaluation, way: str, quantity: str = "held_load") -> tuple[Run, ...]:
    found = ev[f"{quantity}[{way}]"]
    assert not isinstance(found, Exception), found
    told: tuple[Run, ...] = found.runs
    return told


def run(ev: Evaluation, way: str, title: str, transport: str = "road", quantity: str = "held_load") -> Run:
    """The run that holds least of those that begin so, on that transport."""
    found = [
        each for each in runs(ev, way, quantity)
        if each.held.title.startswith(title) and each.transport.startswith(transport)
    ]
    return min(found, key=lambda each: each.held.times)


def times(ev: Evaluation, way: str, title: str, transport: str = "road", quantity: str = "held_load") -> float:
    """How many times what is asked is withstood."""
    return run(ev, way, title, transport, quantity).held.times


def words(ev: Evaluation, name: str) -> str:
    """Why a check has no verdict on numbers."""
    return str(ev.check(name).stopped)
