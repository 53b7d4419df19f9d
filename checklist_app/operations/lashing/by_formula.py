"""What the formulas of the rules give for the run that governs: straight along the push, one plane, a line a lashing.

They know of no turning, no sharing and no foot that swings out: what is found in space is never more.
"""

from collections.abc import Iterator, Sequence
from typing import NamedTuple

from checklist_app.mechanics import exact
from checklist_app.mechanics.lashing import crossing
from checklist_app.mechanics.lashing.crossing import Face
from checklist_app.mechanics.lashing.lashed_body import Pull, Strand
from checklist_app.mechanics.lashing.prepared import Tension
from checklist_app.mechanics.lashing.rule_sets import RULES
from checklist_app.mechanics.vectors import Vec, dot
from checklist_app.operations.lashing.lashed import Blocked
from checklist_app.operations.lashing.legs import Legs
from checklist_app.operations.lashing.run import Run


class Shares(NamedTuple):
    """One end: where it leaves the load, and the shares of its pull forwards, to the left and downwards."""

    at: Vec
    along: float
    across: float
    down: float


class Arranged(NamedTuple):
    """All that might hold, in the order of the rows, and the face that is looked at."""

    face: Face
    legs: Sequence[Legs]
    near: Sequence[Shares]
    far: Sequence[Shares | None]
    blocked: Sequence[Blocked]


def slid_dan(run: Run, weight_dan: float, friction: float, what: Arranged) -> float:
    """Push that the formulas against sliding give."""
    (slide,) = run.asked.slides
    rules, direct = RULES[run.by], run.held.with_direct
    counted = rules.direct_friction_share if direct else 1.0
    grip = exact.let("friction that counts", friction * counted)
    total = exact.let("friction of what weight remains", grip * slide.downward * weight_dan)
    fs_share = 1.0 / run.asked.fs if rules.tie_downs_count else 0.0
    for legs, ends in _holding(what):
        gives = 0.0
        for one, share in ends:
            against = _against(share, run)
            if isinstance(one, Strand):
                gives = gives + one.tension_dan * fs_share * (against + grip * share.down)
            elif direct and against > 0.0:
                most_dan = legs.breaks_dan if slide.against_breaking else one.most_dan
                gives = gives + most_dan * (against + grip * share.down)
        total = total + exact.let(f"{legs.label} gives", gives) if gives != 0.0 else total
    for block in _blocks(run, what):
        if direct or not block.block.gives:
            total = total + exact.let(f"block {block.label} gives", block.block.most_dan)
    return total


def tipped_dan(
    run: Run, weight_dan: float, cg: tuple[float, float], half_m: float, what: Arranged,
    lift_m: float = 0.0,
) -> float:
    """Push that the formulas against tipping give, about the edge ahead of it.

    Args:
        run: the run that governs.
        weight_dan: of all that stands on the face [daN].
        cg: how far its centre of gravity lies towards that edge from the middle, and how high [m].
        half_m: from the middle to that edge [m].
        what: all that might hold.
        lift_m: how far the face lies below the one that lengths count from [m].
    """
    (tip,) = run.asked.tips
    rules, way = RULES[run.by], run.asked.direction.way
    fs_share = 1.0 / run.asked.fs if rules.tie_downs_count else 0.0
    aside_m, high_m = cg
    total = exact.let("moment of what weight remains", tip.downward * weight_dan * (half_m - aside_m))
    for legs, ends in _holding(what):
        holds = 0.0
        for one, share in ends:
            inside_m = half_m - _towards(share.at, way)
            arm_m = _against(share, run) * (share.at.z + lift_m) + share.down * inside_m
            if isinstance(one, Strand):
                tension_dan = one.half_lc_dan if tip.tension is Tension.HALF_LC else one.tension_dan
                holds = holds + tension_dan * fs_share * arm_m
            elif arm_m > 0.0:
                holds = holds + one.most_dan * rules.moment_share * arm_m
        total = total + exact.let(f"moment of {legs.label}", holds) if holds != 0.0 else total
    for block in _blocks(run, what):
        total = total + exact.let(f"moment of block {block.label}", block.block.most_dan * (block.block.at.z + lift_m))
    return total / high_m


def _holding(what: Arranged) -> Iterator[tuple[Legs, list[tuple[Strand | Pull, Shares]]]]:
    for legs, near, far in zip(what.legs, what.near, what.far, strict=True):
        if crossing.crosses(what.face, legs.from_body, legs.to_body):
            ends: list[Strand | Pull] = [*legs.strands, *legs.pulls]
            yield legs, [*zip(ends, [near] if far is None else [near, far], strict=True)]


def _blocks(run: Run, what: Arranged) -> Iterator[Blocked]:
    for each in what.blocked:
        against = dot(each.block.towards, run.asked.direction.way) < 0.0
        if against and crossing.crosses(what.face, each.touches, each.fast_to):
            yield each


def _against(shares: Shares, run: Run) -> float:
    """Share of its pull straight against the push."""
    return -_towards(Vec(shares.along, shares.across, 0.0), run.asked.direction.way)


def _towards(point: Vec, way: Vec) -> float:
    """Component along a way that lies along one axis."""
    if way.x != 0.0:
        return point.x if way.x > 0.0 else -point.x

    return point.y if way.y > 0.0 else -point.y
