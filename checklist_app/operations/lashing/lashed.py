"""What stands on one face, with all that holds it there, made ready once for every way it may be pushed."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from typing import NamedTuple

from checklist_app.mechanics.lashing import crossing, lashed_body, prepared
from checklist_app.mechanics.lashing.crossing import Body, Face
from checklist_app.mechanics.lashing.holding import Ways
from checklist_app.mechanics.lashing.lashed_body import Block, LashedBody, Pull, Stands, Strand
from checklist_app.mechanics.lashing.rule_sets import RuleSet
from checklist_app.mechanics.vectors import Vec
from checklist_app.operations.graph import CannotAssess
from checklist_app.operations.lashing.legs import Legs

LOW_M = 0.01


class Standing(NamedTuple):
    """What stands on a face: weight, centre of gravity over it, half the sides of what bears."""

    weight_dan: float
    cg: Vec
    half_length_m: float
    half_width_m: float
    stands: Stands


@dataclass(frozen=True, eq=False)
class Blocked:
    """A block, what it is fast to and what it touches."""

    label: str
    fast_to: Body
    touches: Body
    block: Block


@dataclass(frozen=True, eq=False)
class Lashed:
    """A load on one face, ready; `rows` says of each leg of its direct lashings which lashing it is of."""

    face: Face
    standing: Standing
    ways: Ways
    rows: tuple[str, ...]

    @property
    def tied(self) -> bool:
        """Whether tie-downs hold it."""
        return bool(self.ways.rated.body.strands)


def lashed(
    rule_set: RuleSet, face: Face, standing: Standing, legs: Iterable[Legs], blocked: Iterable[Blocked],
    ends_off_m: float, lift_m: float = 0.0,
) -> Lashed:
    """What stands on one face; `lift_m` is how far that face lies below the one that lengths count from."""
    _required_to_stand(standing)
    holding = [each for each in legs if crossing.crosses(face, each.from_body, each.to_body)]
    blocks = [
        replace(each.block, at=_up(each.block.at, lift_m)) for each in blocked
        if crossing.crosses(face, each.touches, each.fast_to)
    ]
    off_m = float(ends_off_m)
    strands = [
        replace(one, at=_up(one.at, lift_m + off_m), anchor=_up(one.anchor, lift_m))
        for each in holding for one in each.strands
    ]
    pulls = [
        replace(one, at=_up(one.at, lift_m + off_m), anchor=_up(one.anchor, lift_m))
        for each in holding for one in each.pulls
    ]
    rows = tuple(each.label for each in holding for _ in each.pulls)
    rated = prepared.prepared(body_of(standing, pulls, strands, blocks))
    if rule_set is not RuleSet.US or not pulls:
        return Lashed(face, standing, Ways(rated), rows)
    breaks = [each.breaks_dan for each in holding for _ in each.pulls]
    stronger = [replace(one, most_dan=dan) for one, dan in zip(pulls, breaks, strict=True)]

    return Lashed(face, standing, Ways(rated, prepared.prepared(body_of(standing, stronger, strands, blocks))), rows)


def body_of(
    standing: Standing, pulls: Sequence[Pull] = (), strands: Sequence[Strand] = (), blocks: Sequence[Block] = ()
) -> LashedBody:
    """A body in bare numbers; its centre of gravity is never below its feet."""
    length, width = float(standing.half_length_m), float(standing.half_width_m)
    x, y, z = (float(each) for each in standing.cg)
    feet = [(length, width), (-length, width), (length, -width), (-length, -width)]
    if not (length > 0.0 and width > 0.0):
        raise CannotAssess("nothing is left of what it stands on: soft at the edge farther in than its middle")

    return lashed_body.lashed_body(
        float(standing.weight_dan), Vec(x, y, LOW_M if z < LOW_M else z), feet, standing.stands, pulls, strands, blocks
    )


def _required_to_stand(standing: Standing) -> None:
    """No lashing is put on a load that goes over before it is lashed."""
    x, y, _ = standing.cg
    outside = abs(x) > standing.half_length_m > 0.0 or abs(y) > standing.half_width_m > 0.0
    if outside:
        raise CannotAssess("its centre of gravity lies outside what it stands on: it goes over before it is lashed")


def _up(point: Vec, by_m: float) -> Vec:
    return Vec(float(point.x), float(point.y), float(point.z) + by_m)
