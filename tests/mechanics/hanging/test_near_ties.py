"""Legs alike to a hair, picks in a row to a hair: real entries are, and nothing may depend on the last digit."""

import random

import pytest

from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.hanging.body import Rigging, rigging
from checklist_app.mechanics.hanging.settling import settled
from checklist_app.mechanics.hanging.sharing import shared_by_stiffness
from tests.mechanics.hanging.bodies import CORNERS, box, pair, vec

CORNERS_OF = {2: ((0.6, 0, 0), (-0.6, 0, 0)), 3: ((0.6, 0, 0), (-0.6, 0.4, 0), (-0.6, -0.4, 0)), 4: CORNERS}
PLACES = ((0, 0, -0.3), (0, 0, 0.3), (0.1, 0, -0.3), (0.1, -0.05, 0.2), (0.6, 0.4, -0.3), (0.3, 0.2, -0.2))


def nudged(r: random.Random) -> Rigging:
    """Every number off by nothing, or by as little as can be told apart, or by up to a tenth of a millimetre."""
    small = 10.0 ** r.uniform(-16.0, -4.0)

    def off() -> float:
        return r.choice((0.0, 0.0, small, -small, r.uniform(-small, small)))

    corners = CORNERS_OF[r.choice((2, 3, 4, 4))]
    picks = [vec(*(axis + off() for axis in corner)) for corner in corners]
    return rigging(picks, [1.5 + off() for _ in picks], vec(*(axis + off() for axis in r.choice(PLACES))))


def test_4000_loads_that_are_nearly_alike_all_settle() -> None:
    r = random.Random(77)
    for _ in range(4000):
        assert settled(nudged(r)).off_balance < 1e-9


def test_1500_of_them_share_by_stiffness() -> None:
    r = random.Random(78)
    for _ in range(1500):
        what = nudged(r)
        hang = shared_by_stiffness(what, 20.0, [10.0 ** r.uniform(1.5, 5.0)] * len(what.legs_m))
        assert hang.off_balance < 1e-9


@pytest.mark.parametrize("nudge", [1e-12, 1e-10, 1e-8, 1e-6])
def test_a_hair_more_length_moves_the_load_by_no_more_than_a_hair(nudge: float) -> None:
    cg = (0.1, -0.05, -0.3)
    plain, other = settled(box(cg)), settled(box(cg, (1.5 + nudge, 1.5, 1.5, 1.5)))
    assert other.tilt_deg == pytest.approx(plain.tilt_deg, abs=1e-9 + 1e3 * nudge)


@pytest.mark.parametrize("apex_m", [0.4, 1.0, 3.0, 30.0])
@pytest.mark.parametrize("above_m", [0.0, 0.01, 0.1])
def test_two_picks_at_or_below_the_centre_of_gravity_turn_over_whatever_the_apex(apex_m: float, above_m: float) -> None:
    """Common practice P8: at the line it lies as it likes, above it upside down."""
    leg_m = (0.25 + apex_m * apex_m) ** 0.5
    try:
        hang = settled(pair((0.02, 1e-4, above_m), (leg_m, leg_m)))
    except OutOfRangeError as refused:
        assert "centre of gravity" in str(refused)
        return
    assert hang.tilt_deg > 80.0
