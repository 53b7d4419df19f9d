"""The load on what it stands on, with the lashings and blocks that hold it there."""

from checklist_app.mechanics.lashing import crossing
from checklist_app.mechanics.lashing.crossing import Body, Face
from checklist_app.mechanics.lashing.lashed_body import Block, Stands
from checklist_app.mechanics.lashing.rule_sets import RuleSet
from checklist_app.mechanics.lashing.transport import Direction
from checklist_app.mechanics.vectors import Vec
from checklist_app.operations.gear import Pallet
from checklist_app.operations.graph import CannotAssess, Range, dont_know, each, kept
from checklist_app.operations.lashing.choices import BlockedBy, Blocks
from checklist_app.operations.lashing.lashed import Blocked, Lashed, Standing, lashed
from checklist_app.operations.lashing.legs import Legs
from checklist_app.operations.lashing.room import Room, required_there

NEXT_TO_NOTHING = 0.01
AGAINST = {
    Blocks.FORWARD: Direction.REAR, Blocks.REAR: Direction.FORWARD, Blocks.LEFT: Direction.RIGHT,
    Blocks.RIGHT: Direction.LEFT,
}


@dont_know("cg_z_m")
def cg_height_unknown(height_m: float) -> Range:
    """Anywhere from its feet to its top."""
    return Range(NEXT_TO_NOTHING * height_m, height_m / 2.0, height_m)


@dont_know("cg_x_m")
def cg_along_unknown(base_length_m: float) -> Range:
    """Anywhere over what it stands on."""
    return Range(-base_length_m / 2.0, 0.0, base_length_m / 2.0)


@dont_know("cg_y_m")
def cg_across_unknown(base_width_m: float) -> Range:
    """Anywhere over what it stands on."""
    return Range(-base_width_m / 2.0, 0.0, base_width_m / 2.0)


@each("lashing")
def crosses_load_face(from_body: Body, to_body: Body, load_face: Face) -> bool:
    """Whether it holds the load on what it stands on."""
    return crossing.crosses(load_face, from_body, to_body)


def pallet_height_m(pallet: Pallet | None) -> float:
    """From the deck up to the face that the load stands on."""
    return pallet.height_m if pallet is not None else 0.0


@each("block")
def blocked(
    block: str, blocked_by: BlockedBy, blocks: Blocks, block_on: Body, block_dan: float, block_x_m: float,
    block_y_m: float, block_z_m: float, pallet_height_m: float, load_face: Face, on_a_deck: bool, load_room: Room,
    pallet_room: Room | None,
) -> Blocked:
    """One block; what is fast to the deck touches the pallet, or higher up the load."""
    there = [Body.PALLET] if load_face is Face.LOAD_ON_PALLET else []
    there += [Body.DECK] if on_a_deck else []
    if block_on not in there:
        raise CannotAssess(f"a block here is fast to {' or '.join(each.value for each in there)}")
    up_m = block_z_m if block_on is Body.PALLET else block_z_m - pallet_height_m
    at = Vec(block_x_m, block_y_m, up_m)
    touches = Body.LOAD if up_m >= 0.0 else Body.PALLET
    required_there("it touches", at, touches, load_room if touches is Body.LOAD else pallet_room)

    return Blocked(
        block, block_on, touches,
        Block(at, AGAINST[blocks].way, block_dan, blocked_by is BlockedBy.GIVES),
    )


def half_length_m(base_length_m: float, edge_gives_m: float | None) -> float:
    """From the middle to where it bears, forwards and rearwards; a soft edge bears only farther in."""
    return base_length_m / 2.0 - _soft_m(edge_gives_m)


def half_width_m(base_width_m: float, edge_gives_m: float | None) -> float:
    """From the middle to where it bears, to the left and to the right."""
    return base_width_m / 2.0 - _soft_m(edge_gives_m)


def _soft_m(edge_gives_m: float | None) -> float:
    return 0.0 if edge_gives_m is None or edge_gives_m < 0.0 else edge_gives_m


@kept
def load_lashed(
    rule_set: RuleSet, load_face: Face, weight_dan: float, cg_x_m: float, cg_y_m: float, cg_z_m: float,
    half_length_m: float, half_width_m: float, stands: Stands, legs: tuple[Legs, ...], blocked: tuple[Blocked, ...],
    ends_off_m: float,
) -> Lashed:
    """The load on what it stands on, with the lashings and blocks that hold it there."""
    standing = Standing(weight_dan, Vec(cg_x_m, cg_y_m, cg_z_m), half_length_m, half_width_m, stands)
    return lashed(rule_set, load_face, standing, legs, blocked, ends_off_m)
