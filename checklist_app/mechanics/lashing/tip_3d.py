"""What keeps a lashed load from going over an edge of what it stands on; its foot held against sliding meanwhile."""

from collections.abc import Sequence

from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.lashing.foothold import Column, on_three_corners
from checklist_app.mechanics.lashing.greatest import Floor, greatest
from checklist_app.mechanics.lashing.lashed_body import wrench
from checklist_app.mechanics.lashing.prepared import Prepared, Tension, Withstood, required_run
from checklist_app.mechanics.lashing.sharing import shared_limits
from checklist_app.mechanics.vectors import Vec, cross, dot, less

SOURCE = "STATICS_LASHED_BODY"
LIFTED = -1e-9
AHEAD = 1e-12


def tips_at(
    what: Prepared, way: Vec, downward: float, tension: Tension, tie_down_share: float, pull_share: float = 1.0
) -> Withstood | None:
    """The level inertia at which the load begins to tip.

        greatest a:  about every edge of the base  Σ T m + share × Σ F m + Σ B m + cz b − a d ≥ 0

    with all direct lashings, tie-downs and blocks; m is the moment of a unit of each, T within what the legs share by
    their stretch as the load turns about the edge. Blocks count by their height.

    Source:
        STATICS_LASHED_BODY.

    Args:
        what: the body, made ready.
        way: d, level way of the inertia, a unit vector.
        downward: cz, share of the weight that remains [-].
        tension: what the tie-downs are taken to pull with.
        tie_down_share: share of it that counts: 1 / fs, halved after settling [-].
        pull_share: share of the rating of direct lashings that counts against tipping [-], above 0 up to 1.

    Returns:
        Inertia as a share of the weight; None where it does not even stand.

    Raises:
        OutOfRangeError: If a number is outside its range, or the sharing does not settle.

    Example:
        >>> from checklist_app.mechanics.lashing.lashed_body import Stands, lashed_body
        >>> from checklist_app.mechanics.lashing.prepared import prepared
        >>> feet = [(0.5, 0.35), (-0.5, 0.35), (0.5, -0.35), (-0.5, -0.35)]
        >>> ready = prepared(lashed_body(981.0, Vec(0.0, 0.0, 0.8), feet, Stands.FEET))
        >>> tips_at(ready, Vec(1.0, 0.0, 0.0), 1.0, Tension.STF, 0.8).push
        0.625
    """
    required_run(way, downward, 0.0, tie_down_share)
    if not 0.0 < pull_share <= 1.0:
        raise OutOfRangeError("share of the rating that counts", pull_share, "above 0, 1 at most", SOURCE)
    key = ("tips", way, downward, tension, tie_down_share, pull_share)
    known = what.found.get(key)
    if isinstance(known, Withstood):
        return known
    found = _best_sharing(what, way, downward, tension, tie_down_share, pull_share)
    what.found[key] = found
    return found


def _best_sharing(
    what: Prepared, way: Vec, downward: float, tension: Tension, tie_down_share: float, pull_share: float
) -> Withstood | None:
    fixed = [
        a + tie_down_share * b
        for a, b in zip(wrench(what.body.cg, Vec(0.0, 0.0, -downward)), what.strands[tension], strict=True)
    ]
    kinds = [pull.stretch for pull in what.body.pulls]
    best: Withstood | None = None
    ratings = [pull_share * limit for limit in what.limits[: what.legs]]
    for limits in shared_limits(_strains(what, way), ratings, kinds):
        found = _of_one_sharing(what, way, fixed, (*limits, *what.limits[what.legs:]))
        if found is not None and (best is None or found.push > best.push):
            best = found
    return best


def _strains(what: Prepared, way: Vec) -> list[float]:
    """Stretch of each leg over its length as the load begins to turn about its furthest corner that way."""
    corner = max(what.body.base, key=lambda at: dot(at, way))
    about = cross(Vec(0.0, 0.0, 1.0), way)
    return [
        -dot(u, cross(about, less(pull.at, corner))) / far
        for pull, u, far in zip(what.body.pulls, what.ways, what.lengths_m, strict=True)
    ]


def _of_one_sharing(
    what: Prepared, way: Vec, fixed: Sequence[float], limits: Sequence[float]
) -> Withstood | None:
    rising = [_moments(edge, what, fixed, limits) for edge in what.edges]
    arms = [dot(out, way) * what.body.cg[2] for _, out in what.edges]
    pushes = [(best / arm, i) for i, ((best, _), arm) in enumerate(zip(rising, arms, strict=True)) if arm > AHEAD]
    push, edge = min(pushes)
    pulls = rising[edge][1]
    weight = what.body.weight_dan
    if push >= 0.0 and _stands(what, fixed, pulls, push, arms):
        return Withstood(push, push, tuple(pull * weight for pull in pulls[: what.legs]))
    borne = _upright([-value for value in fixed])
    found = greatest(
        borne, _upright(wrench(what.body.cg, way)), [_upright(each) for each in what.columns], limits, _corners(what),
        on_three_corners(borne, what.body.base, 0.0, way, True),
    )
    if found is None:
        return None
    return Withstood(found.push, push, tuple(pull * weight for pull in found.pulls[: what.legs]))


def _about(edge: tuple[Vec, Vec], column: Sequence[float]) -> float:
    """Moment of a force that holds down about an edge."""
    at, out = edge
    beside = column[2] * (at[0] * out[0] + at[1] * out[1])
    return -column[4] * out[0] + column[3] * out[1] - beside


def _moments(
    edge: tuple[Vec, Vec], what: Prepared, fixed: Sequence[float], limits: Sequence[float]
) -> tuple[float, tuple[float, ...]]:
    """The most that can hold down about an edge, and the pulls that do."""
    total, pulls = _about(edge, fixed), []
    for column, limit in zip(what.columns, limits, strict=True):
        gain = _about(edge, column)
        pulls.append(limit if gain > 0.0 else 0.0)
        total += pulls[-1] * gain
    return total, tuple(pulls)


def _stands(
    what: Prepared, fixed: Sequence[float], pulls: Sequence[float], push: float, arms: Sequence[float]
) -> bool:
    total = list(fixed)
    for pull, column in zip(pulls, what.columns, strict=True):
        if pull > 0.0:
            total = [a + pull * b for a, b in zip(total, column, strict=True)]
    return total[2] < 0.0 and all(
        _about(edge, total) - push * arm >= LIFTED for edge, arm in zip(what.edges, arms, strict=True)
    )


def _upright(column: Sequence[float]) -> Column:
    """What is left of a force where the foot is held: how it presses, and how it turns the load over."""
    return (0.0, 0.0, column[2], column[3], column[4], 0.0)


def _corners(what: Prepared) -> Floor:
    def column(price: Sequence[float]) -> tuple[float, Column]:
        _, _, fz, mx, my, _ = price
        best = max(what.body.base, key=lambda at: -(fz + mx * at[1] - my * at[0]))
        return -(fz + mx * best[1] - my * best[0]), (0.0, 0.0, 1.0, best[1], -best[0], 0.0)

    return column
