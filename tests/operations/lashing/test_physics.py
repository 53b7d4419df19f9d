"""What must hold of any load: more never holds less, steeper never less, the mirror image the same, all in balance."""

from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from checklist_app.mechanics.lashing.transport import Waters
from checklist_app.operations.evaluate import Evaluation
from checklist_app.operations.lashing.choices import Blocks, FarEnd, Route
from tests.operations.lashing.loads import (
    FORWARD,
    LEFT,
    REAR,
    RIGHT,
    WAYS,
    Row,
    block,
    diagonal,
    load,
    nominal,
    runs,
    tie_down,
)

FEW = settings(max_examples=25, deadline=None)
OTHER = {LEFT: RIGHT, RIGHT: LEFT, FORWARD: FORWARD, REAR: REAR}
ROUNDING = 1e-6
INSIDE_X, AT_THE_EDGE_Y = st.floats(-0.45, 0.45), st.floats(0.341, 0.345)
BASE = {"base_length_m": 1.0, "base_width_m": 0.7, "cg_z_m": 0.8}


@st.composite
def direct(draw: st.DrawFn) -> Row:
    """A diagonal at any corner of the load."""
    x, y = draw(st.sampled_from((1.0, -1.0))), draw(st.sampled_from((1.0, -1.0)))
    at = (x * draw(st.floats(0.1, 0.5)), y * draw(st.floats(0.1, 0.35)), draw(st.floats(0.1, 1.4)))
    anchor = (x * draw(st.floats(0.6, 1.8)), y * draw(st.floats(0.4, 1.2)), 0.0)
    return diagonal(at, anchor, draw(st.floats(200.0, 2500.0)))


@st.composite
def tied(draw: st.DrawFn) -> Row:
    """A tie-down whose strands come down at the edge of the feet, and not outside."""
    x, y, high = draw(INSIDE_X), draw(AT_THE_EDGE_Y), draw(st.floats(0.9, 1.5))
    return tie_down((x, y, high), (x, y + draw(st.floats(0.0, 0.005)), 0.0), draw(st.floats(100.0, 1000.0)))


LOADS = st.fixed_dictionaries({
    "cg_x_m": st.floats(-0.15, 0.15), "cg_y_m": st.floats(-0.1, 0.1), "load_friction": st.floats(0.05, 0.7),
    "mass_kg": st.floats(300.0, 3000.0),
})


def found(ev: Evaluation) -> dict[tuple[str, str, str], float]:
    return {
        (way, each.transport, each.held.title): each.held.have for way in WAYS for each in runs(ev, way)
    }


def no_less(more: dict[Any, float], less: dict[Any, float]) -> None:
    """A run that only the one has, half of LC with a first tie-down, has nothing to be compared with."""
    for key in set(more) & set(less):
        assert more[key] >= less[key] * (1.0 - ROUNDING) - ROUNDING, key


@FEW
@given(told=LOADS, rows=st.lists(st.one_of(direct(), tied()), max_size=4), one=st.one_of(direct(), tied()))
def test_one_lashing_more_never_holds_less(told: Row, rows: list[Row], one: Row) -> None:
    no_less(found(nominal(load([*rows, one], **BASE, **told))), found(nominal(load(rows, **BASE, **told))))


@FEW
@given(told=LOADS, rows=st.lists(st.one_of(direct(), tied()), max_size=3), which=st.sampled_from(Blocks),
       high=st.floats(0.02, 0.6), most=st.floats(50.0, 5000.0))
def test_a_block_never_does_harm(told: Row, rows: list[Row], which: Blocks, high: float, most: float) -> None:
    at = {Blocks.FORWARD: (0.5, 0.0, high), Blocks.REAR: (-0.5, 0.0, high), Blocks.LEFT: (0.0, 0.35, high),
          Blocks.RIGHT: (0.0, -0.35, high)}[which]
    blocked = load(rows, [block(which, at, most)], **BASE, **told)
    no_less(found(nominal(blocked)), found(nominal(load(rows, **BASE, **told))))


@FEW
@given(told=LOADS, x=INSIDE_X, out=st.floats(0.0, 1.0), steeper=st.floats(0.0, 1.0), tension=st.floats(100.0, 1200.0))
def test_a_steeper_tie_down_never_holds_less(
    told: Row, x: float, out: float, steeper: float, tension: float
) -> None:
    """Symmetrical about a centre of gravity in the middle, from as flat as 45° up to upright."""
    middle = told | {"cg_x_m": 0.0, "cg_y_m": 0.0}

    def at(out_m: float) -> dict[Any, float]:
        rows = [tie_down((side * x, 0.345, 1.0), (side * x, 0.345 + out_m, 0.0), tension) for side in (1.0, -1.0)]
        return found(nominal(load(rows, **BASE, **middle)))
    no_less(at(out * steeper), at(out))


def mirrored(row: Row) -> Row:
    """On the other side."""
    other = {name: -value if name.endswith("_y_m") else value for name, value in row.items()}
    swapped = {Blocks.LEFT: Blocks.RIGHT, Blocks.RIGHT: Blocks.LEFT}
    return other | ({"blocks": swapped.get(row["blocks"], row["blocks"])} if "blocks" in row else {})


@FEW
@given(told=LOADS, rows=st.lists(st.one_of(direct(), tied()), max_size=4), which=st.sampled_from(Blocks))
def test_mirrored_input_mirrored_output(told: Row, rows: list[Row], which: Blocks) -> None:
    blocks = [block(which, (0.2, 0.1, 0.3), 400.0)]
    here = found(nominal(load(rows, blocks, **BASE, **told)))
    there = found(nominal(load(
        [mirrored(row) for row in rows], [mirrored(row) for row in blocks], **BASE,
        **(told | {"cg_y_m": -told["cg_y_m"]}),
    )))
    swapped = {(OTHER[way], transport, title.replace(way, OTHER[way])): have
               for (way, transport, title), have in there.items()}
    assert swapped == pytest.approx(here, rel=1e-6, abs=1e-9)


@FEW
@given(told=LOADS, rows=st.lists(st.one_of(direct(), tied()), max_size=4))
def test_what_is_found_is_never_more_than_the_formula_and_settled_never_more_than_that(
    told: Row, rows: list[Row]
) -> None:
    ev = nominal(load(rows, route=Route.SEA, waters=Waters.NORTH_SEA, **BASE, **told))
    for way in WAYS:
        for name in ("slide", "tip"):
            withstood = ev[f"{name}_withstood_dan[{way}]"]
            assert withstood <= ev[f"{name}_by_formula_dan[{way}]"] * (1.0 + ROUNDING)
            settled = ev[f"{name}_settled_dan[{way}]"]
            assert settled is None or settled <= withstood * (1.0 + ROUNDING)


@FEW
@given(told=LOADS, rows=st.lists(st.one_of(direct(), tied()), min_size=1, max_size=5))
def test_no_lashing_pulls_more_than_it_is_rated_for(told: Row, rows: list[Row]) -> None:
    ev = nominal(load(rows, **BASE, **told))
    for number in range(1, len(rows) + 1):
        assert 0.0 <= ev[f"lashing_pull_dan[L{number}]"] <= ev[f"rated_dan[L{number}]"] * (1.0 + ROUNDING)


@FEW
@given(told=LOADS, far_x=st.floats(-0.4, 0.4))
def test_an_end_that_is_mirrored_is_as_one_that_was_measured_there(told: Row, far_x: float) -> None:
    row = tie_down((far_x, 0.3, 1.2), (far_x, 0.9, 0.0))
    given_too = row | {"far_end": FarEnd.GIVEN, "far_at_x_m": far_x, "far_at_y_m": -0.3, "far_at_z_m": 1.2,
                       "far_anchor_x_m": far_x, "far_anchor_y_m": -0.9, "far_anchor_z_m": 0.0}
    assert found(nominal(load([given_too], **BASE, **told))) == found(nominal(load([row], **BASE, **told)))


@pytest.mark.parametrize("way", WAYS)
def test_by_hand_a_skewed_pair_of_lashings_turns_the_load(way: str) -> None:
    """Two diagonals at opposite corners turn it on its face: less than the formula, more than one alone."""
    rows = [diagonal((x * 0.45, x * 0.3, 0.6), (x * 1.2, x * 1.1, 0.0)) for x in (1.0, -1.0)]
    ev = nominal(load(rows, load_friction=0.1, **BASE))
    assert ev[f"slide_lost_dan[{way}]"] > 1.0
