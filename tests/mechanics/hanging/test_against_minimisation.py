"""Attitude, slack legs and sharing against energy minimisation by scipy, at random geometries."""

import math
import random

import numpy as np
import pytest

from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.hanging.body import Rigging, rigging
from checklist_app.mechanics.hanging.settling import settled
from checklist_app.mechanics.hanging.sharing import shared_by_stiffness
from tests.mechanics.hanging.bodies import vec
from tests.mechanics.hanging.lowest import Lowest

SEED = 20261128


def random_load(r: random.Random, legs: int) -> Rigging | None:
    """Picks about the corners of a box, legs alike or not, centre of gravity below or above them; None if too short."""
    half, wide = r.uniform(0.4, 1.5), r.uniform(0.3, 1.0)
    turns = [(1, 1), (1, -1), (-1, -1), (-1, 1)] if legs == 4 else [(1, 0), (-1, 1), (-1, -1)][:legs]
    picks = [
        vec(half * x + r.uniform(-0.2, 0.2), wide * y + r.uniform(-0.2, 0.2), r.uniform(-0.15, 0.15)) for x, y in turns
    ]
    one = r.uniform(1.1, 2.0) * math.hypot(half, wide)
    unlike = r.choice((0.0, 0.002, 0.05, 0.4))
    lengths = [one * (1.0 + r.uniform(-unlike, unlike)) for _ in picks]
    cg = vec(r.uniform(-0.6, 0.6) * half, r.uniform(-0.6, 0.6) * wide, r.choice((-0.5, -0.3, -0.1, 0.1)))
    what = rigging(picks, lengths, cg)
    try:
        settled(what)
    except OutOfRangeError as refused:
        assert "reach each other" in str(refused)
        return None
    return what


def compared(seed: int, wanted: int) -> tuple[int, int, int]:
    """Loads compared, those with a slack leg, and high ones that soft legs at the start let down elsewhere."""
    r, done, slack, elsewhere = random.Random(seed), 0, 0, 0
    while done < wanted:
        legs = r.choice((2, 3, 4, 4, 4))
        what = random_load(r, legs)
        if what is None:
            continue
        stiff = [10.0 ** r.uniform(1.5, 4.0)] * legs
        hang = shared_by_stiffness(what, 1.0, stiff)
        spring, hook = Lowest(what, stiff), np.array(hang.hook)
        done, slack = done + 1, slack + (min(hang.shares) == 0.0)
        assert np.abs(spring.slope(hook)).max() < 1e-9
        assert_steady(spring, hook)
        lowest = spring.hook()
        if np.abs(lowest - hook).max() > 1e-3:
            elsewhere += 1
            assert what.cg.z > -0.2, "the centre of gravity well below the picks leaves one way to hang only"
            lowest = spring.hook(hook + 1e-3 * np.array([r.uniform(-1.0, 1.0) for _ in range(3)]))
        assert spring.energy(hook) <= spring.energy(lowest) + 1e-12
        assert list(hang.shares) == pytest.approx(list(spring.pulls(lowest)), rel=2e-4, abs=2e-4)
        assert hang.tilt_deg == pytest.approx(spring.tilt_deg(lowest), abs=5e-3)
    return done, slack, elsewhere


def assert_steady(spring: Lowest, hook: np.ndarray) -> None:
    """A little either way costs energy."""
    bend = np.linalg.eigvalsh((spring.curvature(hook) + spring.curvature(hook).T) / 2.0)
    assert bend.min() > -1e-4


def test_60_loads_hang_where_their_energy_is_least() -> None:
    done, slack, elsewhere = compared(SEED, 60)
    assert slack > 5 and elsewhere <= done // 10


@pytest.mark.long
def test_1000_loads_hang_where_their_energy_is_least() -> None:
    done, slack, elsewhere = compared(SEED + 1, 1000)
    print(f"{done} loads, {slack} with a slack leg, {elsewhere} let down elsewhere by soft legs, so begun nearby")
    assert slack > 100 and elsewhere <= done // 10


def test_legs_that_do_not_stretch_are_the_limit_of_stiff_ones() -> None:
    r, done = random.Random(SEED + 2), 0
    while done < 60:
        what = random_load(r, r.choice((2, 3, 4)))
        if what is None:
            continue
        firm, stiff = settled(what), shared_by_stiffness(what, 1.0, [1e5] * len(what.legs_m))
        assert firm.tilt_deg == pytest.approx(stiff.tilt_deg, abs=0.05)
        if sum(firm.tight) <= 3:
            assert list(firm.shares) == pytest.approx(list(stiff.shares), abs=5e-3)
        done += 1
