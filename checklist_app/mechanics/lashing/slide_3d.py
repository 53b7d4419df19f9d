"""What keeps a lashed load from sliding or turning on its face: friction, pulls, tie-downs and blocks together."""

from collections.abc import Sequence

from checklist_app.mechanics import exact
from checklist_app.mechanics.lashing.foothold import Column, on_three_corners
from checklist_app.mechanics.lashing.greatest import Floor, greatest
from checklist_app.mechanics.lashing.lashed_body import Stands, wrench
from checklist_app.mechanics.lashing.prepared import Prepared, Tension, Withstood, required_run
from checklist_app.mechanics.lashing.sharing import STILL, shared_limits
from checklist_app.mechanics.vectors import Vec, dot

SOURCE = "STATICS_LASHED_BODY"
IN_BALANCE = 1e-11
BEHIND = -1e-9
NO_GRIP = 1e-6  # less friction than this is none


def slides_at(
    what: Prepared, way: Vec, downward: float, friction: float, tie_down_share: float, count_pulls: bool
) -> Withstood | None:
    """The level inertia at which the load begins to slide, turn, or swing its foot out.

        greatest a:  Σ T u + share × Σ F u + Σ B n + Σ (H, N) + (a d − cz z) = 0, and the same for moments,
        |H| ≤ μ N at every corner of the base; T within what the legs share by their stretch

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
    friction = friction if friction >= NO_GRIP else 0.0
    key = ("slides", way, downward, friction, tie_down_share, count_pulls)
    if key not in what.found:
        what.found[key] = _best_sharing(what, way, downward, friction, tie_down_share, count_pulls)
    return what.found[key]


def _best_sharing(
    what: Prepared, way: Vec, downward: float, friction: float, tie_down_share: float, count_pulls: bool
) -> Withstood | None:
    strands = tuple(tie_down_share * each for each in what.strands[Tension.STF])
    strains = [-dot(u, way) / far for u, far in zip(what.ways, what.lengths_m, strict=True)]
    blocks = what.limits[what.legs:]
    if count_pulls:
        kinds = [pull.stretch for pull in what.body.pulls]
        shares = [(*limits, *blocks) for limits in shared_limits(strains, what.limits[: what.legs], kinds)]
        shares.append((0.0,) * what.legs + blocks)
    else:
        shares = [(0.0,) * what.legs + blocks]
    tries = [(*_straight(what, way, strands, downward, friction, limits), limits) for limits in shares]
    best: Withstood | None = None
    for push, pulls, limits in sorted(tries, key=lambda each: -each[0]):
        if best is not None and push <= best.push:
            break
        found = _of_one_sharing(what, way, strands, downward, friction, limits, (push, pulls))
        if found is not None and (best is None or found.push > best.push):
            best = found
    return best


def _straight(
    what: Prepared, way: Vec, strands: Sequence[float], downward: float, friction: float, limits: Sequence[float]
) -> tuple[float, tuple[float, ...]]:
    """The formula of the rules: straight along the way, legs that go slack at nothing."""
    push = friction * (downward - strands[2]) - strands[0] * way[0] - strands[1] * way[1]
    pulls = []
    for i, (column, limit) in enumerate(zip(what.columns, limits, strict=True)):
        against = -(column[0] * way[0] + column[1] * way[1])
        gain = against - friction * column[2]
        slack = i < what.legs and against / what.lengths_m[i] <= STILL
        pulls.append(limit if gain > 0.0 and not slack else 0.0)
        push += pulls[-1] * gain
    return push, tuple(pulls)


def _of_one_sharing(
    what: Prepared, way: Vec, strands: Sequence[float], downward: float, friction: float, limits: Sequence[float],
    straight: tuple[float, tuple[float, ...]],
) -> Withstood | None:
    push, pulls = straight
    cg, weight = what.body.cg, what.body.weight_dan
    given = [a + b for a, b in zip(wrench(cg, Vec(0.0, 0.0, -downward)), strands, strict=True)]
    inertia = wrench(cg, way)
    if push >= 0.0 and _balances(what, way, friction, given, inertia, push, pulls):
        return Withstood(push, push, tuple(pull * weight for pull in pulls[: what.legs]))
    area = what.body.stands is Stands.AREA
    borne = [-value for value in given]
    start = on_three_corners(borne, what.body.base, friction, way, area)
    floor = _area(what, way, friction) if area else _feet(what, friction)
    found = greatest(borne, inertia, what.columns, limits, floor, start)
    if found is None:
        return None
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
        most, best, vx, vy = -1.0, base[0], 0.0, 0.0
        for at in base:
            x, y = fx - mz * at[1], fy + mz * at[0]
            gain = -(fz + mx * at[1] - my * at[0]) + friction * exact.sqrt(x * x + y * y)
            if gain > most:
                most, best, vx, vy = gain, at, x, y
        size = exact.sqrt(vx * vx + vy * vy)
        if not size > 0.0:
            return most, (0.0, 0.0, 1.0, best[1], -best[0], 0.0)
        hx, hy = -friction * vx / size, -friction * vy / size
        return most, (hx, hy, 1.0, best[1], -best[0], best[0] * hy - best[1] * hx)

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
