"""The parts of the body in space by hand: hull, columns, footholds, the climb itself, sharing."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from checklist_app.mechanics.lashing import cone, foothold, greatest, lashed_body, prepared, sharing
from checklist_app.mechanics.lashing.balance import Balance
from checklist_app.mechanics.lashing.lashed_body import Block, Stands, Stretch
from checklist_app.mechanics.vectors import Vec
from tests.mechanics.lashing.arranged import FORWARD, REAR, corners

NONE = (0.0,) * 5


def test_by_hand_nothing_bears_outside_the_feet() -> None:
    """A foot inside the others adds no corner."""
    feet = [*corners(0.5, 0.3), (0.1, 0.1), (0.0, 0.3)]
    assert [(at.x, at.y) for at in lashed_body.hull(feet)] == [(-0.5, -0.3), (0.5, -0.3), (0.5, 0.3), (-0.5, 0.3)]


def test_by_hand_a_force_with_its_moments() -> None:
    """10 daN forwards at 2 m up and 1 m left: 20 over the front, −10 about the upright."""
    assert lashed_body.wrench(Vec(0.0, 1.0, 2.0), Vec(10.0, 0.0, 0.0)) == (10.0, 0.0, 0.0, 0.0, 20.0, -10.0)


def test_a_block_pushes_level_with_a_way_of_length_1() -> None:
    body = lashed_body.lashed_body(981.0, Vec(0.0, 0.0, 0.8), corners(0.5, 0.3), Stands.FEET,
                                   blocks=[Block(Vec(0.5, 0.0, 0.1), Vec(-3.0, 4.0, 0.0), 400.0)])
    assert tuple(body.blocks[0].towards) == pytest.approx((-0.6, 0.8, 0.0))
    assert prepared.required_run(REAR, 1.0, 0.3, 0.8) is None
    assert len(prepared.prepared(body).columns) == 1


@settings(max_examples=50, deadline=None)
@given(st.floats(-0.45, 0.45), st.floats(-0.25, 0.25), st.floats(0.01, 0.6), st.booleans())
def test_a_foothold_carries_the_weight(x: float, y: float, friction: float, only_along: bool) -> None:
    """numpy: columns times levels give what is given, and the inverse is one."""
    given_ = (0.0, 0.0, 1.0, y, -x, 0.0)
    start = foothold.on_three_corners(given_, lashed_body.hull(corners(0.5, 0.3)), friction, FORWARD, only_along)
    assert start is not None
    matrix = np.array(start.columns).T
    assert matrix @ np.array(start.levels) == pytest.approx(np.array(given_), abs=1e-12)
    assert np.array(start.inverse) @ matrix == pytest.approx(np.eye(6), abs=1e-9)
    assert min(start.levels) >= 0.0


def test_no_foothold_where_the_weight_comes_down_outside() -> None:
    base = lashed_body.hull(corners(0.5, 0.3))
    assert foothold.on_three_corners((0.0, 0.0, 1.0, 0.0, -0.51, 0.0), base, 0.3, FORWARD, False) is None
    assert foothold.on_three_corners((0.0, 0.0, -1.0, 0.0, 0.0, 0.0), base, 0.3, FORWARD, False) is None
    assert foothold.rows_alone((2.0, -1.0, 0.0, 0.0, 0.0, 0.0)).levels == [2.0, 1.0, 0.0, 0.0, 0.0, 0.0]


@given(st.floats(-1.0, 1.0), st.floats(-1.0, 1.0))
def test_no_direction_on_the_cone_lies_nearer(x: float, y: float) -> None:
    """numpy over all 64; a length of 1 each, and the nearest loses 0.12 % at most."""
    turns = 2.0 * np.pi * np.arange(cone.TURNS) / cone.TURNS
    best = np.max(np.cos(turns) * x + np.sin(turns) * y)
    along, aside = cone.nearest_direction(x, y)
    assert along * along + aside * aside == pytest.approx(1.0, abs=1e-15)
    assert along * x + aside * y == pytest.approx(best, abs=1e-12)
    assert best >= 0.9987 * float(np.hypot(x, y))


def test_by_hand_what_carried_carries_another_weight() -> None:
    """Half the weight: the same columns at half the level; a weight outside the feet would need one to pull."""
    base = lashed_body.hull(corners(0.5, 0.3))
    first = foothold.on_three_corners((0.0, 0.0, 1.0, 0.0, 0.0, 0.0), base, 0.3, FORWARD, False)
    assert first is not None
    half = foothold.taken_over(first, (0.0, 0.0, 0.5, 0.0, 0.0, 0.0), [], [])
    assert half is not None
    assert half.levels == pytest.approx([level / 2.0 for level in first.levels])
    assert foothold.taken_over(first, (0.0, 0.0, 0.5, 0.0, 0.5, 0.0), [], []) is None


def test_by_hand_the_climb_stops_at_limits() -> None:
    """Push a, two pulls against it up to 5 and 3, nothing else: a is 8; with 2 given it is 10."""
    up, down = (1.0, *NONE), (-1.0, *NONE)

    def no_floor(price: object) -> tuple[float, tuple[float, ...]]:
        return -1.0, up
    assert greatest.greatest((0.0, *NONE), up, [down, down], [5.0, 3.0], no_floor, None) == greatest.Greatest(
        8.0, (5.0, 3.0))
    found = greatest.greatest((2.0, *NONE), up, [down, down], [5.0, 3.0], no_floor, None)
    assert found is not None and found.push == 10.0


def test_by_hand_what_nothing_balances_is_none() -> None:
    """Something pulls aside and nothing holds it."""
    up = (1.0, *NONE)
    assert greatest.greatest((0.0, 1.0, 0.0, 0.0, 0.0, 0.0), up, [], [], lambda price: (-1.0, up), None) is None


def test_by_hand_straps_share_by_their_stretch() -> None:
    """Strains 0.2 and 0.1 of one kind give 10 and 5; the stiffer may be left out; chain and web one by one."""
    web, chain = Stretch.WEB, Stretch.CHAIN
    both = sharing.shared_limits((0.2, 0.1, -0.1), (10.0, 10.0, 10.0), (web,) * 3)
    assert both == ((10.0, 5.0, 10.0), (0.0, 10.0, 10.0))
    assert sharing.shared_limits((0.2, 0.1), (10.0, 8.0), (web, chain)) == ((10.0, 0.0), (0.0, 8.0))
    assert sharing.shared_limits((-0.2,), (10.0,), (web,)) == ((10.0,),)


@pytest.mark.parametrize("need, have, equality, holds", [
    (1.0, 1.0, True, True), (1.0, 1.0, False, False), (1.0, 1.1, False, True), (float("nan"), 1.0, True, False),
    (1.0, float("nan"), True, False), (1.0, float("inf"), True, False),
])
def test_what_is_no_number_never_holds(need: float, have: float, equality: bool, holds: bool) -> None:
    assert Balance(need, have, equality).holds is holds
