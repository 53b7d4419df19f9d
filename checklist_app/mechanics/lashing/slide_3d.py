"""What keeps a lashed load from sliding or turning on its face: friction, pulls, tie-downs and blocks together."""

from collections.abc import Sequence
from dataclasses import dataclass

from checklist_app.mechanics.lashing.cone import nearest_direction
from checklist_app.mechanics.lashing.foothold import Column, Foothold, on_three_corners, taken_over
from checklist_app.mechanics.lashing.greatest import Floor, greatest
from checklist_app.mechanics.lashing.lashed_body import Stands, wrench
from checklist_app.mechanics.lashing.prepared import Prepared, Tension, Withstood, required_run
from checklist_app.mechanics.lashing.sharing import STILL, shared_limits
from checklist_app.mechanics.vectors import Vec, dot

SOURCE = "STATICS_LASHED_BODY"
IN_BALANCE = 1e-11
BEHIND = -1e-9
NO_GRIP = 1e-6  # less friction than this is none
SETTLED = 0.5  # what is left of the tension of a tie-down once load and straps have settled


@dataclass(frozen=True)
class Slides:
    """Sliding at the full and at the settled tension; None where the load does not even stand."""

    found: Withstood | None
    with_direct: bool
    settled: Withstood | None


@dataclass
class _Try:
    """One way to count what holds: which friction, what each pull may give; and what carried in it before."""

    friction: float
    limits: tuple[float, ...]
    with_direct: bool
    carried: Foothold | None = None


def slides_at(
    what: Prepared, way: Vec, downward: float, friction: float, tie_down_share: float, count_pulls: bool
) -> Withstood | None:
    """The level inertia at which the load begins to slide, turn, or swing its foot out, at one friction.

        greatest a:  Σ T u + share × Σ F u + Σ B n + Σ (H, N) + (a d − cz z) = 0, and the same for moments,
        |H| ≤ μ N at every corner of the base, in 64 directions; T within what the legs share by their stretch

    On a full face the floor resists along d only: corners would give its friction the longest arm. No more is taken
    than the formula of the rules gives with slack legs at nothing.

    Source:
        STATICS_LASHED_BODY.

    Args:
        what: the body, made ready.
        way: d, level way of the inertia, a unit vector.
        downward: cz, share of the weight that remains [-].
        friction: μ on this face [-].
        tie_down_share: share of the tension of tie-downs that counts: 1 / fs, halved after settling [-].
        count_pulls: with the direct lashings, or tie-downs and blocks alone.

    Returns:
        Inertia as a share of the weight; None where it does not even stand.

    Raises:
        OutOfRangeError: If a number is outside its range, or the sharing does not settle.

    Example:
        >>> from checklist_app.mechanics.lashing.lashed_body import Stands, lashed_body
        >>> from checklist_app.mechanics.lashing.prepared import prepared
        >>> feet = [(0.5, 0.3), (-0.5, 0.3), (0.5, -0.3), (-0.5, -0.3)]
        >>> ready = prepared(lashed_body(981.0, Vec(0.0, 0.0, 0.8), feet, Stands.FEET))
        >>> slides_at(ready, Vec(1.0, 0.0, 0.0), 1.0, 0.1, 0.8, count_pulls=False).push
        0.1
    """
    required_run(way, downward, friction, tie_down_share)
    tries = _with_pulls(what, way, friction) if count_pulls else []
    return _best(what, way, downward, tie_down_share, [*tries, _without(what, friction)])[0]


def slides(
    what: Prepared, way: Vec, downward: float, friction: float, reduced: float, tie_down_share: float,
    settle: bool = True,
) -> Slides:
    """Sliding by the better of blocks and tie-downs at full friction, and everything at the reduced friction.

    A lashing may be left out of account, never do harm. It is worked out again with half the tension of tie-downs.

    Source:
        STATICS_LASHED_BODY; EN_12195_1 and CTU_ANNEX_7 for the reduced friction, which is taken beside a block that
        gives before it holds too.

    Args:
        what: the body, made ready.
        way: level way of the inertia, a unit vector.
        downward: cz, share of the weight that remains [-].
        friction: μ on this face [-].
        reduced: share of it that counts beside direct lashings [-], 0 to 1.
        tie_down_share: 1 / fs, or 0 where tie-downs give nothing [-].
        settle: with half the tension too; else both are told as the first.

    Returns:
        What is withstood, now and settled.

    Raises:
        OutOfRangeError: If a number is outside its range, or the sharing does not settle.

    Example:
        >>> from checklist_app.mechanics.lashing.lashed_body import Stands, lashed_body
        >>> from checklist_app.mechanics.lashing.prepared import prepared
        >>> feet = [(0.5, 0.3), (-0.5, 0.3), (0.5, -0.3), (-0.5, -0.3)]
        >>> ready = prepared(lashed_body(981.0, Vec(0.0, 0.0, 0.8), feet, Stands.FEET))
        >>> slides(ready, Vec(1.0, 0.0, 0.0), 1.0, 0.1, 0.75, 0.8).settled.push
        0.1
    """
    required_run(way, downward, friction, tie_down_share)
    key = ("slides", way, downward, friction, reduced, tie_down_share, settle)
    known = what.found.get(key)
    if isinstance(known, Slides):
        return known
    yields = any(block.gives for block in what.body.blocks)
    tries = [_without(what, friction), *(_with_pulls(what, way, reduced * friction) if what.legs or yields else [])]
    found, direct = _best(what, way, downward, tie_down_share, tries)
    settled = found
    if settle and what.body.strands and tie_down_share > 0.0:
        settled, _ = _best(what, way, downward, tie_down_share * SETTLED, tries)
    what.found[key] = told = Slides(found, direct, settled)
    return told


def _without(what: Prepared, friction: float) -> _Try:
    """Direct lashings left out, and what gives before it holds."""
    blocks = zip(what.body.blocks, what.limits[what.legs:], strict=True)
    rigid = tuple(0.0 if block.gives else limit for block, limit in blocks)
    return _Try(_grip(friction), (0.0,) * what.legs + rigid, False)


def _with_pulls(what: Prepared, way: Vec, friction: float) -> list[_Try]:
    strains = [-dot(u, way) / far for u, far in zip(what.ways, what.lengths_m, strict=True)]
    kinds = [pull.stretch for pull in what.body.pulls]
    blocks = what.limits[what.legs:]
    return [
        _Try(_grip(friction), (*limits, *blocks), True)
        for limits in shared_limits(strains, what.limits[: what.legs], kinds)
    ]


def _grip(friction: float) -> float:
    return friction if friction >= NO_GRIP else 0.0


def _best(
    what: Prepared, way: Vec, downward: float, tie_down_share: float, tries: Sequence[_Try]
) -> tuple[Withstood | None, bool]:
    """The best of the tries; one whose formula is below what was found already is not worked out."""
    strands = tuple(tie_down_share * each for each in what.strands[Tension.STF])
    weight = wrench(what.body.cg, Vec(0.0, 0.0, -downward))
    given = tuple(a + b for a, b in zip(weight, strands, strict=True))
    inertia = wrench(what.body.cg, way)
    straight = [(*_straight(what, way, given, each), each) for each in tries]
    best: Withstood | None = None
    direct = False
    for push, pulls, each in sorted(straight, key=lambda one: -one[0]):
        if best is not None and push <= best.push:
            break
        found = _of_one(what, way, given, inertia, each, (push, pulls))
        if found is not None and (best is None or found.push > best.push):
            best, direct = found, each.with_direct
    return best, direct


def _straight(
    what: Prepared, way: Vec, given: Sequence[float], each: _Try
) -> tuple[float, tuple[float, ...]]:
    """The formula of the rules: straight along the way, legs that go slack at nothing."""
    x, y, friction = way[0], way[1], each.friction
    push = -friction * given[2] - given[0] * x - given[1] * y
    pulls = []
    for i, (column, limit) in enumerate(zip(what.columns, each.limits, strict=True)):
        against = -(column[0] * x + column[1] * y)
        gain = against - friction * column[2]
        slack = i < what.legs and against <= STILL * what.lengths_m[i]
        if limit > 0.0 and gain > 0.0 and not slack:
            pulls.append(limit)
            push += limit * gain
        else:
            pulls.append(0.0)
    return push, tuple(pulls)


def _of_one(
    what: Prepared, way: Vec, given: Sequence[float], inertia: Column, each: _Try,
    straight: tuple[float, tuple[float, ...]],
) -> Withstood | None:
    push, pulls = straight
    weight = what.body.weight_dan
    if push >= 0.0 and _balances(what, way, each.friction, given, inertia, push, pulls):
        return Withstood(push, push, tuple(pull * weight for pull in pulls[: what.legs]))
    area = what.body.stands is Stands.AREA
    borne = [-value for value in given]
    start = taken_over(each.carried, borne, what.columns, each.limits) if each.carried is not None else None
    start = start or on_three_corners(borne, what.body.base, each.friction, way, area)
    floor = _area(what, way, each.friction) if area else _feet(what, each.friction)
    found = greatest(borne, inertia, what.columns, each.limits, floor, start)
    if found is None:
        return None
    each.carried = found.carried
    return Withstood(min(found.push, push), push, tuple(pull * weight for pull in found.pulls[: what.legs]))


def _balances(
    what: Prepared, way: Vec, friction: float, given: Sequence[float], inertia: Sequence[float], push: float,
    pulls: Sequence[float],
) -> bool:
    """Whether the floor holds the straight answer in balance: nothing aside, nothing turning, borne within the base."""
    total = [a + push * b for a, b in zip(given, inertia, strict=True)]
    for pull, column in zip(pulls, what.columns, strict=True):
        if pull > 0.0:
            total = [a + pull * b for a, b in zip(total, column, strict=True)]
    x, y = total[4], -total[3]
    aside = total[1] * way[0] - total[0] * way[1]
    turning = total[5] - friction * (x * way[1] - y * way[0])
    if abs(aside) > IN_BALANCE or abs(turning) > IN_BALANCE:
        return False
    return all(
        (-total[2] * at[0] - x) * out[0] + (-total[2] * at[1] - y) * out[1] >= BEHIND for at, out in what.edges
    )


def _feet(what: Prepared, friction: float) -> Floor:
    base = what.body.base

    def column(price: Sequence[float]) -> tuple[float, Column]:
        fx, fy, fz, mx, my, mz = price
        most, best = -1.0, (0.0, 0.0, 1.0, 0.0, 0.0, 0.0)
        for at in base:
            px, py, _ = at
            vx, vy = fx - mz * py, fy + mz * px
            along, aside = nearest_direction(-vx, -vy)
            gain = -(fz + mx * py - my * px + friction * (vx * along + vy * aside))
            if gain > most:
                hx, hy = friction * along, friction * aside
                most, best = gain, (hx, hy, 1.0, py, -px, px * hy - py * hx)
        return most, best

    return column


def _area(what: Prepared, way: Vec, friction: float) -> Floor:
    base = what.body.base

    def column(price: Sequence[float]) -> tuple[float, Column]:
        fx, fy, fz, mx, my, mz = price
        most, best, along = -1.0, base[0], 0.0
        for at in base:
            v = (fx - mz * at[1]) * way[0] + (fy + mz * at[0]) * way[1]
            gain = -(fz + mx * at[1] - my * at[0]) + friction * abs(v)
            if gain > most:
                most, best, along = gain, at, v
        back = -friction if along > 0.0 else friction
        hx, hy = back * way[0], back * way[1]
        return most, (hx, hy, 1.0, best[1], -best[0], best[0] * hy - best[1] * hx)

    return column
