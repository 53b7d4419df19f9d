"""Whether what was measured can be: the base within the load, and each end where there is something to hook it to."""

from checklist_app.mechanics.lashing.crossing import Body
from checklist_app.mechanics.lashing.direct import Kind
from checklist_app.mechanics.lashing.lashed_body import Stands
from checklist_app.mechanics.vectors import Vec
from checklist_app.operations.gear import Pallet
from checklist_app.operations.graph import CannotAssess, at_nominal, each
from checklist_app.operations.lashing.choices import TWO_ENDS, Passes
from checklist_app.operations.lashing.legs import End
from checklist_app.operations.lashing.room import Room, required_there
from checklist_app.operations.settings import MEASURES_DIFFER, TAPE

UNDER_PALLET = "nobody can hook it to the deck under a pallet"
UNDER_FACE = "the load stands on all of its face, and no anchor is under it"
BENDS_AGAIN = "what goes over or round the load bends again at its lower edge, and pulls otherwise than from up there"


@at_nominal
def load_room(
    length_m: float, width_m: float, height_m: float, base_length_m: float, base_width_m: float, cg_z_m: float
) -> Room:
    """Where the load can be: its outline covers what it stands on, and reaches no farther than it is long."""
    for words, base_m, over_all_m in (("long", base_length_m, length_m), ("wide", base_width_m, width_m)):
        if base_m > over_all_m + MEASURES_DIFFER.value:
            raise CannotAssess(
                f"what it stands on is {base_m:.2f} m {words} and the load {over_all_m:.2f} m over all: measure again"
            )
    if cg_z_m > height_m:
        raise CannotAssess(f"its centre of gravity is {cg_z_m:.2f} m up and the load {height_m:.2f} m high")
    ahead_m, aside_m = length_m - base_length_m / 2.0, width_m - base_width_m / 2.0

    return Room(Vec(-ahead_m, -aside_m, 0.0), Vec(ahead_m, aside_m, height_m))


@at_nominal
def pallet_room(pallet: Pallet, load_room: Room) -> Room:
    """Where the pallet and what stands up from it can be, whichever way it lies."""
    half_m = (pallet.length_m if pallet.length_m > pallet.width_m else pallet.width_m) / 2.0

    return Room(Vec(-half_m, -half_m, -pallet.height_m), Vec(half_m, half_m, load_room.high.z))


@at_nominal
@each("lashing")
def ends_placed(
    from_body: Body, to_body: Body, passes: Passes, near_end: End, second_end: End | None, load_room: Room,
    pallet_room: Room | None, deck_room: Room | None, put_on: Kind, stands: Stands, base_length_m: float,
    base_width_m: float, pallet_along_m: float | None, pallet_across_m: float | None,
) -> bool:
    """Each end on what it is said to be on; a slip of the pen makes a lashing longer and better."""
    if passes is not Passes.ELSEWHERE and to_body is Body.DECK:
        raise CannotAssess(f"it passes {passes.value} and is made fast to {to_body.value}: one of the two")
    leaves = load_room if from_body is Body.LOAD else pallet_room
    made_fast = deck_room if to_body is Body.DECK else pallet_room if to_body is Body.PALLET else None
    for end in (near_end, second_end):
        if end is not None:
            required_there("it leaves the load", end.at, from_body, leaves)
            required_there("its anchor lies", end.anchor, to_body, made_fast)
            if pallet_along_m is not None and pallet_across_m is not None and to_body is Body.DECK:
                _required_outside(end, pallet_along_m, pallet_across_m, UNDER_PALLET)
            if stands is Stands.AREA or put_on in TWO_ENDS:
                why = UNDER_FACE if stands is Stands.AREA else BENDS_AGAIN
                _required_outside(end, base_length_m, base_width_m, why)
    return True


def _required_outside(end: End, along_m: float, across_m: float, why: str) -> None:
    """Refuse an anchor that lies inside, farther from the edge than a tape is off."""
    ahead_m, aside_m = (half_m / 2.0 - TAPE.value for half_m in (along_m, across_m))
    if abs(end.anchor.x) < ahead_m and abs(end.anchor.y) < aside_m:
        raise CannotAssess(
            f"its anchor lies {end.anchor.x:.2f} m forwards and {end.anchor.y:.2f} m to the left, inside what stands "
            f"there: {why}"
        )
