"""On a vehicle: the second face under the pallet, with the pallet's own weight, and what holds both on the deck."""

from checklist_app.mechanics.lashing import crossing, rule_sets
from checklist_app.mechanics.lashing.crossing import Body, Face
from checklist_app.mechanics.lashing.lashed_body import Stands
from checklist_app.mechanics.lashing.rule_sets import RuleSet
from checklist_app.mechanics.lashing.vehicle import VAN_T
from checklist_app.mechanics.vectors import Vec
from checklist_app.operations.gear import Pallet, Vehicle
from checklist_app.operations.graph import across, at_nominal, each, kept, when
from checklist_app.operations.lashing.asked import Asked
from checklist_app.operations.lashing.choices import Route
from checklist_app.operations.lashing.lashed import Blocked, Lashed, Standing, lashed
from checklist_app.operations.lashing.legs import Legs
from checklist_app.operations.lashing.pulls import greatest_pulls
from checklist_app.operations.lashing.room import Room
from checklist_app.operations.lashing.run import Governs, Runs, all_runs, governs, runs_of

VAN = "van"


def load_face(pallet: Pallet | None) -> Face:
    """The load on its pallet, or on the deck itself."""
    return Face.LOAD_ON_PALLET if pallet is not None else Face.LOAD_ON_DECK


def on_a_deck(load_face: Face) -> bool:
    """Lashings and blocks may be fast to the deck."""
    return True


@at_nominal
def deck_room(vehicle: Vehicle, behind_headboard_m: float, pallet_height_m: float, load_room: Room) -> Room | None:
    """Where on the vehicle an anchor can be: from its headboard to its end, the load in the middle of its width."""
    half_m = vehicle.deck_width_m / 2.0
    return Room(
        Vec(behind_headboard_m - vehicle.deck_length_m, -half_m, -pallet_height_m),
        Vec(behind_headboard_m, half_m, load_room.high.z),
    )


@when("van_gross_t", route=Route.VAN)
def gross_of_the_van(vehicle: Vehicle) -> float | None:
    """By its plate."""
    gross_t: float = vehicle.gross_t
    return gross_t


@when("van_gross_t", route=tuple(route for route in Route if route is not Route.VAN))
def gross_if_light(vehicle: Vehicle) -> float | None:
    """What weighs no more than a van is one, whatever the route is called; a van must say what it weighs."""
    if vehicle.facts.get("form") == VAN:
        of_van_t: float = vehicle.gross_t
        return of_van_t
    gross_t: float | None = vehicle.facts.get("gross_t")

    return gross_t if gross_t is not None and gross_t <= VAN_T else None


@each("lashing")
def crosses_deck_face(from_body: Body, to_body: Body, pallet: Pallet) -> bool:
    """Whether it holds load and pallet on the deck."""
    return crossing.crosses(Face.PALLET_ON_DECK, from_body, to_body)


def mass_with_pallet_kg(mass_kg: float, pallet: Pallet) -> float:
    """What slides on the deck."""
    return crossing.mass_above_kg(Face.PALLET_ON_DECK, mass_kg, pallet.mass_kg)


def deck_weight_dan(rule_set: RuleSet, mass_with_pallet_kg: float) -> float:
    """Weight of load and pallet by the g of the rule set."""
    return rule_sets.weight_dan(rule_set, mass_with_pallet_kg)


def deck_cg_x_m(cg_x_m: float, mass_kg: float, mass_with_pallet_kg: float) -> float:
    """Centre of gravity of load and pallet, forwards; the pallet's own is in its middle."""
    return cg_x_m * mass_kg / mass_with_pallet_kg


def deck_cg_y_m(cg_y_m: float, mass_kg: float, mass_with_pallet_kg: float) -> float:
    """Centre of gravity of load and pallet, to the left."""
    return cg_y_m * mass_kg / mass_with_pallet_kg


def deck_cg_z_m(
    cg_z_m: float, mass_kg: float, mass_with_pallet_kg: float, pallet_height_m: float, pallet: Pallet
) -> float:
    """Centre of gravity of load and pallet over the deck."""
    return ((cg_z_m + pallet_height_m) * mass_kg + pallet_height_m / 2.0 * pallet.mass_kg) / mass_with_pallet_kg


@kept
def deck_lashed(
    rule_set: RuleSet, deck_weight_dan: float, deck_cg_x_m: float, deck_cg_y_m: float, deck_cg_z_m: float,
    deck_half_length_m: float, deck_half_width_m: float, pallet_height_m: float, legs: tuple[Legs, ...],
    blocked: tuple[Blocked, ...], ends_off_m: float,
) -> Lashed:
    """Load and pallet on the deck; pallet and skid are taken to bear on all of their underside."""
    standing = Standing(
        deck_weight_dan, Vec(deck_cg_x_m, deck_cg_y_m, deck_cg_z_m), deck_half_length_m, deck_half_width_m, Stands.AREA
    )
    return lashed(rule_set, Face.PALLET_ON_DECK, standing, legs, blocked, ends_off_m, pallet_height_m)


def deck_half_length_m(pallet_bears_along_m: float) -> float:
    """From the middle of the pallet to its edge, forwards and rearwards."""
    return pallet_bears_along_m / 2.0


def deck_half_width_m(pallet_bears_across_m: float) -> float:
    """From the middle of the pallet to its edge, to the left and to the right."""
    return pallet_bears_across_m / 2.0


@kept
@each("direction")
def slid_deck(deck_lashed: Lashed, asked: Asked, deck_friction_there: float) -> Runs:
    """Every run against sliding on the deck."""
    return runs_of(deck_lashed, asked.slides, deck_friction_there)


@kept
@each("direction")
def tipped_deck(deck_lashed: Lashed, asked: Asked, deck_friction_there: float) -> Runs:
    """Every run against tipping over an edge of the pallet."""
    return runs_of(deck_lashed, asked.tips_tied if deck_lashed.tied else asked.tips, deck_friction_there)


@each("direction")
def slide_on_deck(slid_deck: Runs) -> Governs:
    """The run against sliding that governs."""
    return governs(slid_deck)


@each("direction")
def tip_on_deck(tipped_deck: Runs) -> Governs:
    """The run against tipping that governs."""
    return governs(tipped_deck)


@at_nominal
@each("direction")
def held_deck(deck_lashed: Lashed, asked: Asked, deck_friction_there: float) -> Runs:
    """Every run on the deck, sliding first, now and settled."""
    return all_runs(deck_lashed, asked, deck_friction_there)


def deck_face_friction(deck_friction_there: float, pallet: Pallet) -> float:
    """Friction on the deck, where a pallet makes that a face of its own."""
    return deck_friction_there


@across("lashing")
def lashing_pulled_dan(
    lashing: tuple[str, ...], legs: tuple[Legs, ...], load_lashed: Lashed,
    load_friction_there: float, slid_load: tuple[Runs, ...], tipped_load: tuple[Runs, ...],
    deck_lashed: Lashed | None, deck_face_friction: float | None, slid_deck: tuple[Runs | None, ...],
    tipped_deck: tuple[Runs | None, ...],
) -> tuple[float, ...]:
    """What each lashing pulls when the load is pushed as the rules ask, or as much as it withstands; on both faces."""
    faces = [(load_lashed, load_friction_there, (*slid_load, *tipped_load))]
    on_deck = tuple(each for each in (*slid_deck, *tipped_deck) if each is not None)
    if deck_lashed is not None and deck_face_friction is not None:
        faces.append((deck_lashed, deck_face_friction, on_deck))

    return greatest_pulls(lashing, legs, faces)
