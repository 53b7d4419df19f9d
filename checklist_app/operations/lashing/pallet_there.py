"""Lashed to a pallet or skid: it is not on a deck yet, and nobody knows which vehicle will take it."""

from checklist_app.mechanics.lashing.crossing import Face
from checklist_app.mechanics.lashing.vehicle import LIGHT_T
from checklist_app.operations.gear import Pallet
from checklist_app.operations.graph import CannotAssess, across, when
from checklist_app.operations.lashing.choices import Route
from checklist_app.operations.lashing.lashed import Lashed
from checklist_app.operations.lashing.legs import Legs
from checklist_app.operations.lashing.pulls import greatest_pulls
from checklist_app.operations.lashing.room import Room
from checklist_app.operations.lashing.run import Runs


def load_face(pallet: Pallet | None) -> Face:
    """The load on its pallet."""
    if pallet is None:
        raise CannotAssess("there is no pallet or skid that it could be lashed to")

    return Face.LOAD_ON_PALLET


def on_a_deck(load_face: Face) -> bool:
    """Nothing is made fast to a deck here."""
    return False


def deck_room() -> Room | None:
    """There is no deck yet."""
    return None


@when("van_gross_t", route=Route.VAN)
def lightest_van() -> float | None:
    """Which van is not known: the light one asks most."""
    return LIGHT_T


@when("van_gross_t", route=tuple(route for route in Route if route is not Route.VAN))
def no_van() -> float | None:
    """No van is on the route."""
    return None


@across("lashing")
def lashing_pulled_dan(
    lashing: tuple[str, ...], legs: tuple[Legs, ...], load_lashed: Lashed,
    load_friction_there: float, slid_load: tuple[Runs, ...], tipped_load: tuple[Runs, ...],
) -> tuple[float, ...]:
    """What each lashing pulls when the load is pushed as the rules ask, or as much as it withstands."""
    return greatest_pulls(lashing, legs, [(load_lashed, load_friction_there, (*slid_load, *tipped_load))])
