"""Whether what was measured can be: the base within the load, and each end where there is something to hook it to."""

from checklist_app.mechanics.lashing.crossing import Body
from checklist_app.mechanics.vectors import Vec
from checklist_app.operations.gear import Pallet
from checklist_app.operations.graph import CannotAssess, at_nominal, each
from checklist_app.operations.lashing.choices import Passes
from checklist_app.operations.lashing.legs import End
from checklist_app.operations.lashing.room import Room, required_there
from checklist_app.operations.settings import MEASURES_DIFFER


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
    pallet_room: Room | None, deck_room: Room | None,
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
    return True
