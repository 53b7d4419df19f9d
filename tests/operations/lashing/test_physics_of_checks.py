"""What must be so of forks, floors, axles and sums, whatever the numbers: levers, mirror images, order, more of it."""

import copy
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from checklist_app.mechanics.lashing.crossing import Body
from checklist_app.mechanics.lashing.rule_sets import RuleSet
from checklist_app.operations.evaluate import assess
from checklist_app.operations.lashing.choices import ForksEnter
from checklist_app.operations.quantity import Quantity
from checklist_app.operations.table import Table
from checklist_app.operations.task import Task
from tests.operations.lashing.lashed_tasks import (
    PALLET,
    VEHICLE,
    diagonal,
    four,
    lorry,
    on_pallet,
    on_vehicle,
    strap,
    tie_down,
)

OFF = st.floats(-0.05, 0.05)
HIGH = st.floats(0.2, 0.6)
ENTER = st.sampled_from(ForksEnter)


def only(table: Table, *names: str) -> Table:
    """What of a table leads to some checks, and nothing else: no balance in space is worked out here."""
    wanted, new = {*table.groups}, {*names}
    while new:
        wanted |= new
        ways = [way for name in new for way in (*table.ways.get(name, ()), *worst_of(table, name))]
        new = {need for way in ways for need in (*way.needs, *((way.choice,) if way.choice else ()))} - wanted
    part = copy.copy(table)
    part.home = {name: home for name, home in table.home.items() if name in wanted}
    part.ways = {name: ways for name, ways in table.ways.items() if name in wanted}
    return part


def worst_of(table: Table, name: str) -> tuple[Quantity, ...]:
    return (table.worst_cases[name],) if name in table.worst_cases else ()


FORKS, FLOOR = only(PALLET, "fork_tilt"), only(PALLET, "floor_load")
AXLES = only(VEHICLE, "front_axle", "rear_axle", "payload")
SUMS = ("lashing_number", "aggregate_wll", "held_down")
ON_PALLET, ON_VEHICLE = only(PALLET, *SUMS), only(VEHICLE, *SUMS)


def told(table: Table, task: Task, name: str) -> Any:
    return assess(table, task, with_spread=False).check(name).outcome


@given(x=OFF, y=OFF, z=HIGH, enter=ENTER)
def test_a_mirror_image_goes_over_on_the_forks_at_the_same_tilt(
    x: float, y: float, z: float, enter: ForksEnter
) -> None:
    one, *others = (
        told(FORKS, on_pallet(cg_x_m=a * x, cg_y_m=b * y, cg_z_m=z, forks_enter=enter), "fork_tilt")
        for a in (1.0, -1.0) for b in (1.0, -1.0)
    )
    assert all(other == one for other in others)


@given(x=OFF, y=OFF, z=HIGH, enter=ENTER, apart=st.floats(0.4, 0.9), reach=st.floats(0.8, 1.4))
def test_wider_longer_lower_never_goes_over_sooner(
    x: float, y: float, z: float, enter: ForksEnter, apart: float, reach: float
) -> None:
    def at(**changes: float) -> float:
        forks = {"forks_apart_m": apart, "forks_reach_m": reach, "cg_z_m": z, **changes}
        over: float = told(FORKS, on_pallet(cg_x_m=x, cg_y_m=y, forks_enter=enter, **forks), "fork_tilt").capacity
        return over
    now = at()
    assert at(forks_apart_m=apart + 0.1) >= now
    assert at(forks_reach_m=reach + 0.1) >= now
    assert at(cg_z_m=z - 0.1) > now


@given(x=OFF, y=OFF)
def test_the_bearer_that_gets_most_gets_least_with_the_load_in_the_middle(x: float, y: float) -> None:
    middle = told(FLOOR, on_pallet(), "floor_load").demand
    found = told(FLOOR, on_pallet(cg_x_m=x, cg_y_m=y), "floor_load").demand
    assert found >= middle
    assert told(FLOOR, on_pallet(cg_x_m=-x, cg_y_m=-y), "floor_load").demand == found


@given(place=st.floats(0.8, 3.9), other=st.floats(100.0, 3000.0), there=st.floats(0.5, 4.0), x=OFF)
def test_both_axles_together_get_all_that_is_loaded(place: float, other: float, there: float, x: float) -> None:
    task = on_vehicle(behind_headboard_m=place, other_kg=other, other_behind_headboard_m=there, cg_x_m=x)
    ev = assess(AXLES, task, with_spread=False)
    front, rear, all_of_it = (ev.check(name).outcome.demand for name in ("front_axle", "rear_axle", "payload"))
    assert front + rear == pytest.approx(all_of_it, rel=1e-12)
    moment = 1000.0 * (place - x) + 50.0 * place + other * there
    assert rear * lorry().wheelbase_m == pytest.approx(moment, rel=1e-12)


@given(order=st.permutations(range(5)))
def test_the_order_of_the_lashings_changes_no_sum(order: list[int]) -> None:
    rows = (*four(), tie_down(lashing_item=strap(wll_kg=1500.0)))
    for rule_set, names in ((RuleSet.US, SUMS), (RuleSet.NTC, ("held_down",))):
        for name in names:
            one = told(ON_PALLET, on_pallet(rows, rule_set=rule_set), name)
            other = told(ON_PALLET, on_pallet(tuple(rows[place] for place in order), rule_set=rule_set), name)
            assert other == pytest.approx(one, rel=1e-12)


@given(more=st.integers(1, 4), to=st.sampled_from((Body.PALLET, Body.DECK)))
def test_one_more_lashing_never_counts_for_less(more: int, to: Body) -> None:
    """On the lorry those to the pallet count for nothing more, and never against it."""
    rows, added = four(Body.DECK), tuple(diagonal(-1.0, 1.0, to) for _ in range(more))
    for name in SUMS:
        before = told(ON_VEHICLE, on_vehicle(rows, rule_set=RuleSet.US), name).capacity
        after = told(ON_VEHICLE, on_vehicle((*rows, *added), rule_set=RuleSet.US), name).capacity
        assert after > before if to is Body.DECK else after == before
