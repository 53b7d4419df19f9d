"""What is no number, or an absurd one, never passes: every number of both operations in turn, whoever let it in."""

import math
from collections.abc import Callable, Mapping
from functools import partial

import pytest

from checklist_app.mechanics.lashing.crossing import Body
from checklist_app.mechanics.lashing.css_forces import Level
from checklist_app.mechanics.lashing.rule_sets import RuleSet
from checklist_app.operations.catalogue import OPERATIONS
from checklist_app.operations.check import Limit, State, Strength, Verdict
from checklist_app.operations.evaluate import Evaluation, assess
from checklist_app.operations.gear import Gear
from checklist_app.operations.lashing.choices import Blocks, FarEnd, OnDeck, Route, Tensioned
from checklist_app.operations.task import Key, Task
from tests.operations.lashing.lashed_tasks import (
    Row,
    at,
    block,
    diagonal,
    exactly,
    four,
    lorry,
    on_pallet,
    on_vehicle,
    skid,
    strap,
    tie_down,
)

PASSED = (Verdict.WITHIN, Verdict.CLOSE)
LAST = "5"
DOWN = (tie_down(-0.2, to=Body.DECK), tie_down(0.2, to=Body.DECK))
CHOCKS = tuple(block(way, block_z_m=0.0, block_dan=3000.0) for way in Blocks)
CHOCKS_ON_DECK = tuple({**each, "block_on": Body.DECK} for each in CHOCKS)
SHIP: Row = {
    "route": Route.SEA, "rule_set": RuleSet.CSS, "ship_level": Level.DECK_LOW, "ship_place": 0.5,
    "ship_length_m": 120.0, "ship_speed_kn": 15.0, "ship_b_over_gm": 14.0, "ship_open": OnDeck.OPEN,
}


def rows(to: Body) -> tuple[Row, ...]:
    """A diagonal of which all is measured, three more, and a tie-down with two measured ends and a measured tension."""
    low, aside = {Body.PALLET: (0.0, -0.35), Body.DECK: (-0.15, -0.5)}[to]
    down = {"far_end": FarEnd.GIVEN, "tensioned": Tensioned.MEASURED, "tension_dan": 300.0}
    ends = {**at("far_at", 0.0, -0.35, 1.2), **at("far_anchor", 0.0, aside, low)}
    read = {"heading_read_deg": 45.0, "slope_read_deg": {Body.PALLET: 75.1, Body.DECK: 48.2}[to]}
    return (diagonal(to=to, held_dan=4000.0, **read), *four(to)[1:], tie_down(to=to, **down, **ends))


BASES = {
    "pallet_lashing": on_pallet(rows(Body.PALLET), (block(Blocks.FORWARD),), edge_gives_m=0.01, load_friction=0.3),
    "vehicle_lashing": on_vehicle(
        rows(Body.DECK), (block(Blocks.FORWARD, on=Body.DECK),), edge_gives_m=0.01, load_friction=0.3,
        deck_friction=0.3, other_kg=500.0, other_behind_headboard_m=4.0,
    ),
}
AT_SEA = {
    name: task.changed({Key(key): exactly(value) if isinstance(value, float) else value for key, value in SHIP.items()})
    for name, task in BASES.items()
}
SEEN_AT_SEA = {*SHIP, "length_m", "width_m", "height_m"}
NUMBERS = [
    (name, entry.name) for name in BASES for entry in OPERATIONS[name].table.entries.values() if entry.kind is float
]


def base_of(name: str, entry: str) -> Task:
    """A task that is computed with this entry."""
    return (AT_SEA if entry in SEEN_AT_SEA else BASES)[name]


def with_number(name: str, entry: str, value: float) -> Task:
    home = OPERATIONS[name].table.home[entry]
    of_last = entry.startswith("far_") or entry == "tension_dan"
    row = None if home is None else LAST if of_last else "1"

    return base_of(name, entry).changed({Key(entry, row): exactly(value)})


def assessed(name: str, task: Task) -> Evaluation:
    return assess(OPERATIONS[name].table, task, with_spread=False)


def numbers_of(ev: Evaluation) -> list[float]:
    """Every number a check that passed rests its verdict on."""
    told = [check.outcome for check in ev.checks if check.verdict in PASSED]
    assert all(isinstance(outcome, Strength | Limit | State) for outcome in told)

    return [number for outcome in told if not isinstance(outcome, State) for number in outcome[:2]]


@pytest.mark.parametrize("name", BASES)
@pytest.mark.parametrize("bases", [BASES, AT_SEA], ids=["on the road", "at sea"])
def test_the_base_passes(bases: Mapping[str, Task], name: str) -> None:
    assert assessed(name, bases[name]).verdict in PASSED


@pytest.mark.parametrize("name, entry", NUMBERS)
def test_what_is_no_number_never_passes(name: str, entry: str) -> None:
    ev = assessed(name, with_number(name, entry, math.nan))
    assert ev.verdict not in PASSED
    assert not any(math.isnan(number) for number in numbers_of(ev))


@pytest.mark.parametrize("value", [math.inf, -math.inf])
@pytest.mark.parametrize("name, entry", NUMBERS)
def test_no_check_passes_on_an_infinite_number(name: str, entry: str, value: float) -> None:
    ev = assessed(name, with_number(name, entry, value))
    assert all(math.isfinite(number) for number in numbers_of(ev))


FACTS = [
    ("lashing_item", strap, ("lc_dan", "stf_dan")),
    ("pallet", skid, ("length_m", "width_m", "height_m", "mass_kg", "rated_kg")),
    ("vehicle", lorry, ("payload_kg", "deck_length_m", "deck_width_m", "front_axle_m", "wheelbase_m", "front_axle_kg",
                        "rear_axle_kg", "floor_kg_m", "anchor_dan")),
]


@pytest.mark.parametrize("value", [math.nan, math.inf, -1e9, 1e99])
@pytest.mark.parametrize("entry, made, fact", [(entry, made, fact) for entry, made, facts in FACTS for fact in facts])
def test_gear_with_an_absurd_figure_never_passes(
    entry: str, made: Callable[..., Gear], fact: str, value: float
) -> None:
    """What cannot be read from the register is waited for, as if nobody had entered it."""
    tied = tuple({**row, "lashing_item": strap(**{fact: value})} if entry == "lashing_item" else row for row in DOWN)
    made = partial(made, load_plan=None) if "axle" in fact or fact == "wheelbase_m" else made
    given = {} if entry == "lashing_item" else {entry: made(**{fact: value})}
    task = on_vehicle(tied, (*CHOCKS, *CHOCKS_ON_DECK), cg_z_m=0.3, **given)
    assert assessed("vehicle_lashing", task).verdict not in PASSED
    assert assessed("vehicle_lashing", on_vehicle(DOWN, (*CHOCKS, *CHOCKS_ON_DECK), cg_z_m=0.3)).verdict in PASSED
