"""Where the climb begins: the load as it stands on three of its corners, before anything pushes it."""

from collections.abc import Sequence
from dataclasses import dataclass, replace

from checklist_app.mechanics.vectors import Vec, cross, dot

Column = tuple[float, ...]
PUSH, FLOOR, PAD = -1, -2, -3  # names of columns that are no pull: the push, what the floor gives, a row not balanced
FLAT = 1e-9
BELOW = -1e-12


@dataclass
class Foothold:
    """The columns that carry, by name; their levels, and the inverse of the matrix that they make.

    `full` are the pulls that stand at their limits without being among them.
    """

    names: list[int]
    columns: list[Column]
    levels: list[float]
    inverse: list[list[float]]
    full: frozenset[int] = frozenset()


def rows_alone(given: Sequence[float]) -> Foothold:
    """No row is balanced: each has a stand-in.

    Source:
        STATICS_LASHED_BODY.

    Args:
        given: what must be balanced, three forces and three moments [weights, and times m].

    Returns:
        Six stand-ins.

    Example:
        >>> rows_alone((2.0, -1.0, 0.0, 0.0, 0.0, 0.0)).levels
        [2.0, 1.0, 0.0, 0.0, 0.0, 0.0]
    """
    signs = [-1.0 if value < 0.0 else 1.0 for value in given]
    square = [[signs[i] if i == j else 0.0 for j in range(6)] for i in range(6)]
    return Foothold([PAD] * 6, [tuple(row) for row in square], [abs(value) for value in given], square)


def on_three_corners(
    given: Sequence[float], base: Sequence[Vec], friction: float, along: Vec, only_along: bool
) -> Foothold | None:
    """Upright forces at three corners that hold the weight, and friction there either way, held in reserve.

    Source:
        STATICS_LASHED_BODY.

    Args:
        given: what the floor must balance, three forces and three moments [weights, and times m].
        base: corners that bear.
        friction: μ [-], 0 to 1.
        along: the way of the inertia, level.
        only_along: the floor resists along that way alone.

    Returns:
        The columns that carry; None where the weight does not come down inside, or friction alone does not hold what
        pulls sideways.

    Example:
        >>> base = (Vec(-1.0, -1.0, 0.0), Vec(1.0, -1.0, 0.0), Vec(0.0, 1.0, 0.0))
        >>> on_three_corners((0.0, 0.0, 1.0, 0.0, 0.0, 0.0), base, 0.3, Vec(1.0, 0.0, 0.0), False).levels
        [0.125, 0.125, 0.125, 0.125, 0.25, 0.25]
        >>> on_three_corners((0.0, 0.0, 1.0, 2.0, 0.0, 0.0), base, 0.3, Vec(1.0, 0.0, 0.0), False) is None
        True
    """
    if not given[2] > 0.0:
        return None
    x, y = -given[4] / given[2], given[3] / given[2]
    for i in range(1, len(base) - 1):
        corners = (base[0], base[i], base[i + 1])
        shares = _upright(corners)
        if min(row[2] + row[3] * y - row[4] * x for row in shares) >= 0.0:
            start = _foothold(given, corners, shares, friction, along, only_along)
            return start if min(start.levels) >= BELOW else None
    return None


def taken_over(
    last: Foothold, given: Sequence[float], pulls: Sequence[Column], limits: Sequence[float]
) -> Foothold | None:
    """What carried in one run, where it carries in the next as well: the same floor, another weight or tension.

    Source:
        STATICS_LASHED_BODY.

    Args:
        last: how the last run ended.
        given: what must be balanced now, three forces and three moments [weights, and times m].
        pulls: columns of pulls and blocks.
        limits: the most that each gives [weights].

    Returns:
        The same columns at their new levels; None where one of them would have to push, or give more than it can.

    Example:
        >>> first = rows_alone((2.0, 0.0, 0.0, 0.0, 0.0, 0.0))
        >>> taken_over(first, (3.0, 0.0, 0.0, 0.0, 0.0, 0.0), [], []).levels
        [3.0, 0.0, 0.0, 0.0, 0.0, 0.0]
        >>> taken_over(first, (-3.0, 0.0, 0.0, 0.0, 0.0, 0.0), [], []) is None
        True
    """
    left = list(given)
    for i in last.full:
        left = [a - limits[i] * b for a, b in zip(left, pulls[i], strict=True)]
    levels = [_dot(row, left) for row in last.inverse]
    for name, level in zip(last.names, levels, strict=True):
        if level < BELOW or (name >= 0 and level > limits[name]):
            return None
    return replace(last, levels=levels)


def _upright(corners: Sequence[Vec]) -> list[list[float]]:
    """For each corner the row that says how much of the weight it carries."""
    rows = []
    for i in range(3):
        a, b = corners[(i + 1) % 3], corners[(i + 2) % 3]
        c = corners[i]
        size = (a.x - c.x) * (b.y - c.y) - (b.x - c.x) * (a.y - c.y)
        rows.append([0.0, 0.0, (a.x * b.y - b.x * a.y) / size, (b.x - a.x) / size, (b.y - a.y) / size, 0.0])
    return rows


def _foothold(
    given: Sequence[float], corners: Sequence[Vec], shares: Sequence[list[float]], friction: float, along: Vec,
    only_along: bool,
) -> Foothold:
    level = _level_ways(corners, friction, along, only_along)
    start = Foothold([], [], [], [])
    for i, (corner, share) in enumerate(zip(corners, shares, strict=True)):
        way, held = level[i]
        row = _row_of(level, i)
        up = (0.0, 0.0, 1.0, corner.y, -corner.x, 0.0)
        if held:
            for sign in (1.0, -1.0):
                start.names.append(FLOOR)
                back = (sign * friction * way.x, sign * friction * way.y, 0.0, 0.0, 0.0, sign * friction * way.z)
                start.columns.append(tuple(a + b for a, b in zip(up, back, strict=True)))
                start.inverse.append([(a + sign * b / friction) / 2.0 for a, b in zip(share, row, strict=True)])
        else:
            sign = -1.0 if _dot(row, given) < 0.0 else 1.0
            start.names += [FLOOR, PAD]
            start.columns += [up, (sign * way.x, sign * way.y, 0.0, 0.0, 0.0, sign * way.z)]
            start.inverse += [share, [sign * value for value in row]]
    start.levels = [_dot(row, given) for row in start.inverse]
    return start


def _level_ways(
    corners: Sequence[Vec], friction: float, along: Vec, only_along: bool
) -> list[tuple[Vec, bool]]:
    """Three independent level forces as (x, y, moment about the middle), and whether friction gives them."""
    if not friction > 0.0:
        return [(Vec(1.0, 0.0, 0.0), False), (Vec(0.0, 1.0, 0.0), False), (Vec(0.0, 0.0, 1.0), False)]
    arms = [at.y * along.x - at.x * along.y for at in corners]
    loose = min(range(3), key=lambda i: (-abs(arms[(i + 1) % 3] - arms[(i + 2) % 3]), i))
    aside = Vec(-along.y, along.x, 0.0)
    third = (aside, False) if only_along else (_at(corners[loose], aside), True)
    return [third if i == loose else (_at(at, along), True) for i, at in enumerate(corners)]


def _at(at: Vec, way: Vec) -> Vec:
    return Vec(way.x, way.y, at.x * way.y - at.y * way.x)


def _row_of(level: Sequence[tuple[Vec, bool]], i: int) -> list[float]:
    """The row that says how much of one level force is in what is given."""
    own, a, b = level[i][0], level[(i + 1) % 3][0], level[(i + 2) % 3][0]
    square = cross(a, b)
    size = dot(own, square)
    return [square.x / size, square.y / size, 0.0, 0.0, 0.0, square.z / size]


def _dot(a: Sequence[float], b: Sequence[float]) -> float:
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2] + a[3] * b[3] + a[4] * b[4] + a[5] * b[5]
