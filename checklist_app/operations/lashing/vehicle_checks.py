"""A load on a vehicle: which faces that makes, what it is hooked to, whether it lies on the deck."""

from checklist_app.mechanics import exact
from checklist_app.mechanics.lashing import label
from checklist_app.mechanics.lashing.crossing import Body, Face
from checklist_app.mechanics.lashing.friction import Pair
from checklist_app.mechanics.lift_class import LiftClass
from checklist_app.operations.check import Limit, State, check
from checklist_app.operations.gear import Pallet, Vehicle
from checklist_app.operations.graph import Day, Known, NotApplicable, each, when
from checklist_app.operations.lashing.choices import BlockedBy
from checklist_app.operations.lashing.lashed import Blocked
from checklist_app.operations.lashing.metal import METAL
from checklist_app.operations.lashing.number import HOLDS, LOOSE
from checklist_app.operations.usable import fit

RATINGS = "what plate or papers of the vehicle give"


def this_face(load_face: Face) -> Face:
    """What is lashed here stands on the deck: the pallet with its load, or the load itself."""
    return Face.PALLET_ON_DECK if load_face is Face.LOAD_ON_PALLET else load_face


def goods_kg(mass_kg: float, mass_with_pallet_kg: float | None) -> float:
    """Mass that is lashed here: with its pallet, where there is one."""
    return mass_kg if mass_with_pallet_kg is None else mass_with_pallet_kg


def goods_length_m(outline_along_m: float) -> float:
    """Length of what is lashed here: with its pallet."""
    return outline_along_m


def least_class() -> LiftClass:
    """What leaves in somebody else's hands is looked at by two."""
    return LiftClass.NON_ROUTINE


@when("metal_on_deck", pallet=Known.NO)
def load_on_deck_itself() -> bool:
    """Without a pallet there is one face, and its pair is the one under the load."""
    return False


@when("metal_on_deck", pallet=Known.YES)
def pallet_on_deck(deck_pair: Pair) -> bool:
    """Whether a steel skid lies on a metal deck."""
    return deck_pair in METAL


@check("something holds it on its pallet", source="EN_12195_1", rule_set=HOLDS)
def load_wandering(
    pallet: Pallet, crosses_load_face: tuple[bool, ...], blocked: tuple[Blocked, ...],
    blocked_by: tuple[BlockedBy, ...],
) -> State:
    """A lashing round the pallet alone holds nothing of what stands on it."""
    if any(crosses_load_face):
        return State(True, f"{crosses_load_face.count(True)} of {len(crosses_load_face)} lashings go over the load")
    if any(one.touches is Body.LOAD and by is BlockedBy.BOLTS for one, by in zip(blocked, blocked_by, strict=True)):
        return State(True, f"bolted to {pallet.id}")

    return State(False, LOOSE)


@each("lashing")
@check("anchor of the vehicle", unit="daN", source="PLATE", rule_set=RATINGS)
def anchor_rating(anchor_dan: float, to_body: Body, vehicle: Vehicle) -> Limit:
    """An anchor on the deck is counted with no more than the vehicle's points are rated for."""
    if to_body is not Body.DECK:
        raise NotApplicable(f"it is made fast to {to_body.value}")

    return Limit(label.weakest_dan({"the anchor": anchor_dan}), vehicle.anchor_dan)


@each("block")
@check("headboard", unit="daN", source="PLATE", rule_set=RATINGS)
def headboard_rating(block_dan: float, blocked_by: BlockedBy, vehicle: Vehicle) -> Limit:
    """The headboard is counted with no more than it is rated for."""
    if blocked_by is not BlockedBy.HEADBOARD:
        raise NotApplicable(f"it is {blocked_by.value}")

    return Limit(label.weakest_dan({"the headboard": block_dan}), vehicle.headboard_dan)


def outline_along_m(
    length_m: float, pallet_along_m: float | None, pallet_across_m: float | None, pallet_turned_too: bool | None
) -> float:
    """What load and pallet measure forwards, over all."""
    return _outline_m(length_m, pallet_along_m, pallet_across_m, pallet_turned_too)


def outline_across_m(
    width_m: float, pallet_along_m: float | None, pallet_across_m: float | None, pallet_turned_too: bool | None
) -> float:
    """What load and pallet measure from left to right, over all."""
    return _outline_m(width_m, pallet_across_m, pallet_along_m, pallet_turned_too)


def _outline_m(load_m: float, pallet_m: float | None, other_m: float | None, turned_too: bool | None) -> float:
    """The longest that stands there; a pallet that may lie either way with its longer side."""
    outline_m = load_m
    for side_m in (pallet_m, other_m if turned_too else None):
        if side_m is not None and side_m > outline_m:
            outline_m = side_m
    return outline_m


def room_at_ends_m(behind_headboard_m: float, outline_along_m: float, vehicle: Vehicle) -> float:
    """Room to the headboard or to the end of the deck, whichever is less."""
    front_m = behind_headboard_m - outline_along_m / 2.0
    rear_m = vehicle.deck_length_m - behind_headboard_m - outline_along_m / 2.0

    return exact.least(front_m, rear_m)


def room_at_sides_m(outline_across_m: float, vehicle: Vehicle) -> float:
    """Room on either side, the load in the middle of the deck."""
    return (vehicle.deck_width_m - outline_across_m) / 2.0


@check("on the deck", unit="m", source="STATICS_LASHING", rule_set="what reaches beyond the deck is not carried by it")
def on_deck(room_at_ends_m: float, room_at_sides_m: float) -> Limit:
    """Load and pallet lie within the deck, behind the headboard."""
    return Limit(0.0, exact.least(room_at_ends_m, room_at_sides_m))


@check("vehicle status", source="HOUSE_SETTING", rule_set="custody, marking, quarantine")
def vehicle_usable(vehicle: Vehicle, day: Day) -> State:
    """In service, marked, in no quarantine; its own examinations are its owner's."""
    return fit(vehicle)
