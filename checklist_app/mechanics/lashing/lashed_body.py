"""A load on its feet or bearers with all that holds it, as points, in the axes of the vehicle.

x forwards, y to the left, z upwards, the face it stands on at z = 0; forces in daN, lengths in metres.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum
from math import isfinite

from checklist_app.mechanics.errors import OutOfRangeError, required_not_negative, required_positive
from checklist_app.mechanics.vectors import Vec, cross, length, less, plain, times

SOURCE = "STATICS_LASHED_BODY"
IN_ONE_LINE = 1e-9
TOO_NEAR_M = 0.01
LONGEST_M = 60.0


class Stands(Enum):
    """What the load bears on: it decides how far the floor resists turning."""

    FEET = "on feet or bearers at its edges"
    AREA = "on a full face"


class Stretch(Enum):
    """What stretches alike; beside a stiffer kind a softer one in the same direction is not counted."""

    WEB = "web lashing"
    CHAIN = "chain"
    WIRE = "wire rope"
    STEEL_BAND = "steel band"


@dataclass(frozen=True)
class Pull:
    """A leg of a direct lashing: it only pulls, up to the weakest of what is in it."""

    at: Vec
    anchor: Vec
    most_dan: float
    stretch: Stretch


@dataclass(frozen=True)
class Strand:
    """An end of a tie-down, from where it last touches the load to its anchor: a steady pull.

    `half_lc_dan` is half of what the lashing is rated at, which one rule puts in place of the tension.
    """

    at: Vec
    anchor: Vec
    tension_dan: float
    half_lc_dan: float


@dataclass(frozen=True)
class Block:
    """Headboard, chock or bolt: pushes level, towards the load, at one height.

    One that gives before it holds counts beside reduced friction only, as direct lashings do.
    """

    at: Vec
    towards: Vec
    most_dan: float
    gives: bool = False


@dataclass(frozen=True)
class LashedBody:
    """What stands and what holds it; the base is the hull of its feet, anticlockwise from above."""

    weight_dan: float
    cg: Vec
    base: tuple[Vec, ...]
    stands: Stands
    pulls: tuple[Pull, ...] = ()
    strands: tuple[Strand, ...] = ()
    blocks: tuple[Block, ...] = ()


def lashed_body(
    weight_dan: float, cg: Vec, standing_on: Sequence[tuple[float, float]], stands: Stands,
    pulls: Sequence[Pull] = (), strands: Sequence[Strand] = (), blocks: Sequence[Block] = (),
) -> LashedBody:
    """A load and its lashings in bare numbers, each looked at once.

    Source:
        STATICS_LASHED_BODY: what stands is the hull of feet or bearers, never the outline of a pallet under them.

    Args:
        weight_dan: mass times the rule set's g [daN], above 0.
        cg: centre of gravity [m], above the face it stands on.
        standing_on: x and y of each foot or bearer's end [m].
        stands: on feet or on a full face.
        pulls: legs of direct lashings.
        strands: ends of tie-downs.
        blocks: headboard, chocks, bolts.

    Returns:
        The body.

    Raises:
        OutOfRangeError: If a number is none, the feet span no area, or a lashing has no length.

    Example:
        >>> feet = [(0.5, 0.3), (-0.5, 0.3), (0.5, -0.3), (-0.5, -0.3), (0.0, 0.0)]
        >>> len(lashed_body(981.0, Vec(0.0, 0.0, 0.8), feet, Stands.FEET).base)
        4
    """
    required_positive("weight of the load", weight_dan, SOURCE)
    for point in (cg, *(Vec(x, y, 0.0) for x, y in standing_on)):
        _required_point("a point of the load", point)
    required_positive("height of the centre of gravity above the face it stands on", cg[2], SOURCE)
    for pull in pulls:
        _required_leg(pull.at, pull.anchor)
        required_positive("what a leg of a direct lashing carries", pull.most_dan, SOURCE)
    for strand in strands:
        _required_leg(strand.at, strand.anchor)
        required_positive("tension of a tie-down", strand.tension_dan, SOURCE)
        required_positive("half of the LC of a tie-down", strand.half_lc_dan, SOURCE)

    return LashedBody(
        float(weight_dan), plain(cg), hull(standing_on), stands, tuple(pulls), tuple(strands),
        tuple(_level_block(block) for block in blocks),
    )


def hull(standing_on: Sequence[tuple[float, float]]) -> tuple[Vec, ...]:
    """The corners of what stands: nothing bears outside them.

    Source:
        STATICS_LASHED_BODY.

    Args:
        standing_on: x and y of each foot or bearer's end [m].

    Returns:
        The corners, anticlockwise seen from above.

    Raises:
        OutOfRangeError: If they span no area.

    Example:
        >>> [tuple(corner) for corner in hull([(0.0, 0.0), (1.0, 0.0), (0.5, 0.0), (0.0, 1.0)])]
        [(0.0, 0.0, 0.0), (1.0, 0.0, 0.0), (0.0, 1.0, 0.0)]
    """
    points = sorted({(float(x), float(y)) for x, y in standing_on})
    corners = [*_half(points), *_half(points[::-1])] if len(points) > 2 else []
    if len(corners) < 3:
        raise OutOfRangeError("feet that the load stands on", f"{len(points)} in a line", "3 or more that span an area",
                              SOURCE)

    return tuple(Vec(x, y, 0.0) for x, y in corners)


def _half(points: Sequence[tuple[float, float]]) -> list[tuple[float, float]]:
    kept: list[tuple[float, float]] = []
    for x, y in points:
        while len(kept) > 1:
            (ax, ay), (bx, by) = kept[-2], kept[-1]
            if (bx - ax) * (y - ay) - (by - ay) * (x - ax) > IN_ONE_LINE:
                break
            kept.pop()
        kept.append((x, y))
    return kept[:-1]


def _required_point(name: str, point: Vec) -> None:
    if not all(isfinite(value) and abs(value) <= LONGEST_M for value in point):
        raise OutOfRangeError(name, tuple(point), f"three numbers within {LONGEST_M:.0f} m", SOURCE)


def _required_leg(at: Vec, anchor: Vec) -> None:
    _required_point("attachment of a lashing", at)
    _required_point("anchor of a lashing", anchor)
    if not length(less(anchor, at)) >= TOO_NEAR_M:
        raise OutOfRangeError("length of a lashing", "0", "an anchor away from where it is attached", SOURCE)


def _level_block(block: Block) -> Block:
    _required_point("a block", block.at)
    _required_point("way a block pushes", block.towards)
    required_positive("what a block holds", block.most_dan, SOURCE)
    required_not_negative("height of a block", block.at[2], SOURCE)
    size = length(Vec(block.towards[0], block.towards[1], 0.0))
    if block.towards[2] != 0.0 or not size > 0.0:
        raise OutOfRangeError("way a block pushes", tuple(block.towards), "a level way", SOURCE)

    return Block(plain(block.at), times(plain(block.towards), 1.0 / size), float(block.most_dan), block.gives)


def wrench(at: Vec, force: Vec) -> tuple[float, ...]:
    """A force with its moments about the middle of the face.

        (F, p × F)

    Source:
        STATICS_LASHED_BODY.

    Args:
        at: p, where it acts [m].
        force: F [any unit of force].

    Returns:
        Three forces and three moments [the unit of force, and times m].

    Example:
        >>> wrench(Vec(0.0, 0.0, 2.0), Vec(1.0, 0.0, 0.0))
        (1.0, 0.0, 0.0, 0.0, 2.0, 0.0)
    """
    return (*force, *cross(at, force))
