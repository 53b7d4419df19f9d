"""The climb in pure Python against scipy's linear programming, at random arrangements of everything."""

from math import cos, pi

import pytest

from checklist_app.mechanics.lashing import prepared, slide_3d, tip_3d
from checklist_app.mechanics.lashing.cone import TURNS
from checklist_app.mechanics.lashing.lashed_body import Stands
from checklist_app.mechanics.lashing.prepared import Tension, Withstood
from tests.mechanics.lashing.programme import SIDES, Programme, Run, some_runs

ROUNDING = 1e-6
OUTSIDE, INSIDE = 1.0 / cos(pi / SIDES), cos(pi / TURNS)  # polygons round the cone, and inside the climb's own


def slides(run: Run) -> Withstood | None:
    return slide_3d.slides_at(prepared.prepared(run.body), run.way, run.downward, run.friction, run.share, True)


def differs_sliding(run: Run) -> str:
    """A polygon inside the 64 directions gives less, one round the cone gives more; a full face agrees."""
    programme, found = Programme(run), slides(run)
    area = run.body.stands is Stands.AREA
    low = programme.sliding(run.friction if area else run.friction * INSIDE)
    if low is None or found is None:
        wide = programme.sliding(run.friction * 1.01 + 1e-6)
        return "" if (found is None and low is None) or wide is not None else f"{low} {found}"
    if found.push >= found.straight:  # the formula, slack legs at nothing, is never above the programme
        high = programme.sliding(run.friction if area else run.friction * OUTSIDE)
        return "" if high is not None and found.push <= high + ROUNDING else f"{found} above {high}"
    high = low if area else programme.sliding(run.friction * OUTSIDE)
    assert high is not None
    return "" if low - ROUNDING <= found.push <= high + ROUNDING else f"{low} {found.push} {high}"


def differs_tipping(run: Run) -> str:
    found = tip_3d.tips_at(prepared.prepared(run.body), run.way, run.downward, Tension.STF, run.share)
    expected = Programme(run).tipping()
    if found is None or expected is None:
        return "" if found is None and expected is None else f"{expected} {found}"
    return "" if abs(found.push - expected) <= ROUNDING else f"{expected} {found.push}"


def told(number: int, seed: int) -> list[str]:
    runs = list(some_runs(number, seed))
    return [f"{i}: {differs}" for i, run in enumerate(runs)
            for differs in (differs_sliding(run), differs_tipping(run)) if differs]


def test_sixty_random_arrangements() -> None:
    assert told(60, seed=20261128) == []


def test_the_arrangements_turn_and_lack_lashings() -> None:
    """The formula alone would be wrong in many of them."""
    found = [slides(run) for run in some_runs(60, seed=20261128)]
    assert sum(each is not None and each.push < 0.99 * each.straight for each in found) >= 20


@pytest.mark.long
def test_five_hundred_random_arrangements() -> None:
    assert told(500, seed=6) == []
