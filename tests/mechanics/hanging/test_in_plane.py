"""Two picks anywhere in space, laid into the plane they hang in, against vectors and against one hook in space."""

import numpy as np
import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.hanging.body import rigging
from checklist_app.mechanics.hanging.four_bars import bars
from checklist_app.mechanics.hanging.in_plane import two_picks
from checklist_app.mechanics.hanging.running_sling import hung_on_running_sling
from checklist_app.mechanics.hanging.settling import settled
from checklist_app.mechanics.hanging.two_hooks import hung_from_two_hooks
from tests.mechanics.hanging.bodies import vec

OFF = st.floats(-0.3, 0.3)
POINTS = st.tuples(st.tuples(OFF, OFF, OFF), st.tuples(OFF, OFF, OFF), st.tuples(OFF, OFF, st.floats(-0.9, -0.4)))


@settings(max_examples=100)
@given(POINTS)
def test_along_off_and_below_are_those_of_vectors(points: tuple[tuple[float, ...], ...]) -> None:
    out = np.array([0.7, 0.0, 0.0])
    a, b, cg = np.array(points[0]) - out, np.array(points[1]) + out, np.array(points[2])
    got = two_picks([vec(*a), vec(*b)], vec(*cg))
    way = (b - a) / np.linalg.norm(b - a)
    along = float(np.dot(cg - a, way))
    off = a + along * way - cg
    upward = np.cross(way, np.cross([0, 0, 1], way))
    assert (got.span_m, got.cg_along_m) == pytest.approx((np.linalg.norm(b - a), along), abs=1e-12)
    assert got.cg_off_m == pytest.approx(np.linalg.norm(off), abs=1e-12)
    assert got.below_m == pytest.approx(np.dot(off, upward) / np.linalg.norm(upward), abs=1e-12)


@settings(max_examples=100)
@given(POINTS, st.floats(1.2, 2.0), st.floats(1.2, 2.0))
def test_two_hooks_in_one_place_are_one_hook_in_space(
    points: tuple[tuple[float, ...], ...], left_m: float, right_m: float
) -> None:
    picks = [vec(points[0][0] - 0.7, *points[0][1:]), vec(points[1][0] + 0.7, *points[1][1:])]
    cg = vec(*points[2])
    one = settled(rigging(picks, [left_m, right_m], cg))
    assume(min(one.shares) > 0.02)
    flat = two_picks(picks, cg)
    two = hung_from_two_hooks(
        bars(flat.span_m, flat.cg_along_m, flat.cg_off_m, (left_m, right_m), (0.0, 0.0), flat.stands)
    )
    assert two.shares == pytest.approx(one.shares, abs=1e-8)
    assert -two.cg.z == pytest.approx(one.plumb_m, abs=1e-8)


def test_a_running_sling_on_picks_in_space_hangs_in_their_plane() -> None:
    flat = two_picks([vec(-0.5, 0, 0), vec(0.5, 0, 0)], vec(0.02, 0.3, -0.4))
    hang = hung_on_running_sling(flat.span_m, 2.4, flat.cg_along_m - flat.span_m / 2.0, flat.cg_off_m)
    assert flat.cg_off_m == pytest.approx(0.5) and hang.upright


def test_three_picks_are_no_plane() -> None:
    with pytest.raises(OutOfRangeError, match="number of picks is 3; allowed: two"):
        two_picks([vec(0, 0, 0)] * 3, vec(0, 0, -1))
