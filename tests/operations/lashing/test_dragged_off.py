"""A tie-down that pulls to one side, on faces without friction, drags the load off before anything pushes it."""

from checklist_app.mechanics.lashing.crossing import Body
from checklist_app.mechanics.lashing.friction import Pair, Surface
from checklist_app.operations.check import Verdict
from checklist_app.operations.evaluate import assess
from checklist_app.operations.lashing.choices import FarEnd
from checklist_app.operations.task import Task
from tests.operations.lashing.lashed_tasks import NONE, VEHICLE, at, diagonal, on_vehicle, tie_down


def dragged() -> Task:
    """One strand straight down on the right, the other far out to the left; two diagonals that pull left as well."""
    strap = tie_down(0.0, Body.DECK, far_end=FarEnd.GIVEN) | at("anchor", 0.0, 1.2, -0.15) | at(
        "far_at", 0.0, -0.35, 1.2) | at("far_anchor", 0.0, -0.35, -0.15)
    pulls = [diagonal(x, 1.0, Body.DECK) for x in (1.0, -1.0)]
    return on_vehicle((strap, *pulls), pallet=NONE, load_pair=Pair.BARE_METAL_ON_METAL, load_surface=Surface.OILY)


def test_nothing_that_way_is_within_its_limit() -> None:
    found = assess(VEHICLE, dragged())

    for way in ("forwards", "rearwards", "to the left"):
        assert found.check(f"sliding[{way}]").verdict in (Verdict.CANNOT, Verdict.OVER)
    assert found.verdict.rank >= Verdict.CANNOT.rank


def test_its_lashings_still_have_a_pull() -> None:
    found = assess(VEHICLE, dragged(), with_spread=False)

    for row in ("1", "2", "3"):
        assert found.check(f"lashing_strength[{row}]").outcome.demand > 0.0
