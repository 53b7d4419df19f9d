"""A lashed body made ready for many runs: columns of every pull, per weight of the load, and what was found before."""

from collections.abc import Sequence
from dataclasses import dataclass, field
from enum import Enum
from math import isfinite

from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.lashing.lashed_body import LashedBody, wrench
from checklist_app.mechanics.vectors import Vec, length, less, times

SOURCE = "STATICS_LASHED_BODY"


class Tension(Enum):
    """What a tie-down is taken to pull with."""

    STF = "tension of the label or as measured"
    HALF_LC = "half of its LC"


@dataclass(frozen=True)
class Withstood:
    """What inertia a load withstands one way, as a share of its weight, and the pulls in its direct lashings then.

    `straight` is what the formula of the rules gives, which knows of no turning and no slack.
    """

    push: float
    straight: float
    pulls: tuple[float, ...]


@dataclass(frozen=True)
class Prepared:
    """Unit vectors, lengths and columns of the pulls, then of the blocks; forces as shares of the weight."""

    body: LashedBody
    ways: tuple[Vec, ...]
    lengths_m: tuple[float, ...]
    columns: tuple[tuple[float, ...], ...]
    limits: tuple[float, ...]
    strands: dict[Tension, tuple[float, ...]]
    edges: tuple[tuple[Vec, Vec], ...]
    found: dict[tuple[object, ...], object] = field(default_factory=dict)

    @property
    def legs(self) -> int:
        """How many of the columns are direct lashings."""
        return len(self.ways)


def prepared(body: LashedBody) -> Prepared:
    """A body made ready.

    Source:
        STATICS_LASHED_BODY.

    Args:
        body: what stands and what holds it.

    Returns:
        The columns of all that pulls, per weight of the load, with the edges it may tip over.

    Example:
        >>> from checklist_app.mechanics.lashing.lashed_body import Stands, lashed_body
        >>> feet = [(0.5, 0.3), (-0.5, 0.3), (0.5, -0.3), (-0.5, -0.3)]
        >>> len(prepared(lashed_body(981.0, Vec(0.0, 0.0, 0.8), feet, Stands.FEET)).edges)
        4
    """
    reaches = [less(pull.anchor, pull.at) for pull in body.pulls]
    lengths = tuple(length(reach) for reach in reaches)
    ways = tuple(times(reach, 1.0 / far) for reach, far in zip(reaches, lengths, strict=True))
    return Prepared(
        body, ways, lengths,
        (
            *(wrench(pull.at, way) for pull, way in zip(body.pulls, ways, strict=True)),
            *(wrench(block.at, block.towards) for block in body.blocks),
        ),
        (
            *(pull.most_dan / body.weight_dan for pull in body.pulls),
            *(block.most_dan / body.weight_dan for block in body.blocks),
        ),
        {
            Tension.STF: _strands(body, [strand.tension_dan for strand in body.strands]),
            Tension.HALF_LC: _strands(body, [strand.half_lc_dan for strand in body.strands]),
        },
        tuple(_edge(a, b) for a, b in zip(body.base, (*body.base[1:], body.base[0]), strict=True)),
    )


def required_run(way: Vec, downward: float, friction: float, tie_down_share: float) -> None:
    """Refuse a run that is asked for with a number that is none.

    Source:
        STATICS_LASHED_BODY.

    Args:
        way: unit vector of the inertia, level.
        downward: cz, weight that remains, as a share [-], above 0 up to 1.
        friction: μ [-], 0 to 1.
        tie_down_share: share of the tension that counts [-], 0 to 1.

    Returns:
        Nothing.

    Raises:
        OutOfRangeError: If one of them is outside.

    Example:
        >>> required_run(Vec(1.0, 0.0, 0.0), 1.0, 0.3, 1.0 / 1.25)
    """
    if not (way[2] == 0.0 and abs(length(way) - 1.0) <= 1e-9):
        raise OutOfRangeError("way of the inertia", tuple(way), "a level way of length 1", SOURCE)
    if not (isfinite(downward) and 0.0 < downward <= 1.0):
        raise OutOfRangeError("share of the weight that remains", downward, "above 0, 1 at most", SOURCE)
    if not 0.0 <= friction <= 1.0:
        raise OutOfRangeError("friction", friction, "0 to 1", SOURCE)
    if not 0.0 <= tie_down_share <= 1.0:
        raise OutOfRangeError("share of the tension that counts", tie_down_share, "0 to 1", SOURCE)


def _strands(body: LashedBody, forces_dan: Sequence[float]) -> tuple[float, ...]:
    total: tuple[float, ...] = (0.0,) * 6
    for strand, force_dan in zip(body.strands, forces_dan, strict=True):
        reach = less(strand.anchor, strand.at)
        pull = wrench(strand.at, times(reach, force_dan / (length(reach) * body.weight_dan)))
        total = tuple(a + b for a, b in zip(total, pull, strict=True))
    return total


def _edge(a: Vec, b: Vec) -> tuple[Vec, Vec]:
    """A point of an edge of the base, and the level way out of it."""
    along = less(b, a)
    size = length(along)
    return a, Vec(along[1] / size, -along[0] / size, 0.0)
