"""What would level a load, put to the test by hanging it so."""

from dataclasses import replace

import pytest

from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.hanging.body import rigging
from checklist_app.mechanics.hanging.levelling import (
    lengths_that_level_m,
    levelled_by_another_pick,
    levelled_by_one_leg,
)
from checklist_app.mechanics.hanging.settling import settled
from tests.mechanics.hanging.bodies import box, pair, vec


@pytest.mark.parametrize("kept", [0, 1, 2, 3])
def test_the_lengths_that_level_it_do(kept: int) -> None:
    what = box((0.12, -0.07, -0.3), (1.5, 1.4, 1.6, 1.5))
    lengths = lengths_that_level_m(what, kept)
    assert lengths[kept] == pytest.approx(what.legs_m[kept], rel=1e-12)
    assert settled(replace(what, legs_m=lengths)).tilt_deg == pytest.approx(0.0, abs=1e-7)


def test_by_hand_leg_lengths_that_hang_two_legs_level() -> None:
    """Centre of gravity 0.15 m off the middle of 1 m, hook √3/2 over it: 1.08282 and 0.934077 m."""
    assert lengths_that_level_m(pair((0.15, 0, -0.4), (1.08282, 1.0)), 0)[1] == pytest.approx(0.934077, rel=1e-5)


def test_one_leg_alone_levels_a_load_on_two_picks() -> None:
    what = pair((0.1, 0, -0.4), (1.0, 1.0))
    for leg in (0, 1):
        change = levelled_by_one_leg(what, leg)
        legs = [*what.legs_m]
        legs[leg] += change.by_m
        assert abs(settled(replace(what, legs_m=tuple(legs))).tilt_deg) == pytest.approx(change.tilt_deg, abs=1e-9)
        assert change.tilt_deg < 1e-4
        assert (change.by_m > 0.0) == (leg == 0), "the heavy side is the right one: longer left, or shorter right"


def test_one_leg_of_three_leaves_what_it_cannot_level() -> None:
    what = rigging([vec(0.6, 0, 0), vec(-0.4, 0.5, 0), vec(-0.4, -0.5, 0)], [1.5] * 3, vec(0.1, 0.08, -0.3))
    before = settled(what).tilt_deg
    changes = [levelled_by_one_leg(what, leg) for leg in range(3)]
    assert all(0.1 < change.tilt_deg <= before + 1e-9 for change in changes)
    best = min(changes, key=lambda change: change.tilt_deg)
    tries = [settled(replace(what, legs_m=tuple(
        leg_m + (by if place == best.leg else 0.0) for place, leg_m in enumerate(what.legs_m)
    ))).tilt_deg for by in (best.by_m - 0.005, best.by_m + 0.005)]
    assert best.tilt_deg < min(tries)


def test_another_pick_is_ranked_by_how_level_it_then_hangs() -> None:
    what = pair((0.1, 0, -0.4), (1.0, 1.0))
    changes = levelled_by_another_pick(what, 1, [vec(0.6, 0, 0), vec(0.7, 0, 0), vec(0.9, 0, 0), vec(9.0, 0, 0)])
    assert [change.pick for change in changes] == [1, 0, 2], "the last one is out of reach and not offered"
    assert changes[0].tilt_deg == pytest.approx(0.0, abs=1e-9)


def test_a_leg_too_short_to_reach_over_the_centre_of_gravity_is_refused() -> None:
    with pytest.raises(OutOfRangeError, match="what is left of the leg over the centre of gravity"):
        lengths_that_level_m(pair((3.0, 0, -0.4), (1.0, 1.0)), 0)
