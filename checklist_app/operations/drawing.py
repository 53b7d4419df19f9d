"""A drawing as a short list of primitives in metres, x to the right and z upwards; screen and paper are back ends.

Each primitive has a role (what it is, hence how it looks) and says `about` which entries and checks it shows, so that
the length being entered can be drawn in chalk and a member in its verdict.
"""

from collections.abc import Iterator
from dataclasses import dataclass, field
from enum import Enum
from functools import cached_property, lru_cache

from checklist_app.mechanics import exact

Point = tuple[float, float]
ARC_STEP_DEG = 4.0
UPRIGHT = 0.2
DIFFERENT_WAYS = 512


class Role(Enum):
    """What a line or a text is."""

    OUTLINE = "outline"
    FINE = "fine"
    SOLID = "solid"
    MEMBER = "member"
    GOVERNS = "governing member"
    WORST = "at the worst"
    PLUMB = "plumb"
    PLUMB_ON = "plumb on"
    ANGLE = "angle"
    MEASURE = "measure"
    GROUND = "ground"
    TEXT = "text"
    TEXT_SOFT = "soft text"
    TEXT_ANGLE = "text at an angle"
    TEXT_BIG = "big text"


class Anchor(Enum):
    """Where a text stands from its point."""

    START = "start"
    MIDDLE = "middle"
    END = "end"


@dataclass(frozen=True)
class Line:
    """A straight line."""

    start: Point
    end: Point
    role: Role
    about: tuple[str, ...] = ()


@dataclass(frozen=True)
class Polyline:
    """A line through points; closed, it is an area."""

    points: tuple[Point, ...]
    role: Role
    closed: bool = False
    about: tuple[str, ...] = ()


@dataclass(frozen=True)
class Arc:
    """Part of a circle, from one angle to another, counted from the x axis towards z [°]."""

    centre: Point
    radius: float
    from_deg: float
    to_deg: float
    role: Role
    about: tuple[str, ...] = ()


@dataclass(frozen=True)
class Text:
    """Words beside a point; `lower` moves them down by so many lines of text, `along` right by so many times its size.

    Words at one point are one block, and a block with `along` is a table.
    """

    at: Point
    words: str
    role: Role = Role.TEXT
    anchor: Anchor = Anchor.START
    lower: float = 0.0
    about: tuple[str, ...] = ()
    along: float = 0.0


@dataclass(frozen=True)
class Dimension:
    """A measured length: its line lies `aside` metres to the left of the way from start to end."""

    start: Point
    end: Point
    words: str
    aside: float = 0.0
    about: tuple[str, ...] = ()


@dataclass(frozen=True)
class Arrow:
    """A line with a head at its end."""

    start: Point
    end: Point
    role: Role
    head: float = 0.06
    about: tuple[str, ...] = ()


Primitive = Line | Polyline | Arc | Text | Dimension | Arrow
Leaf = Line | Polyline | Text


@dataclass(frozen=True)
class Drawing:
    """What is drawn, what it says to those who cannot see it, and the hook that everything hangs on.

    `name` and `note` say from where it is looked at and what stands below it; `others` are further views of the same.
    What is not `to_scale` is a chart: its lengths are no metres.
    """

    label: str
    hook: Point
    parts: tuple[Primitive, ...] = field(default=())
    name: str = ""
    note: str = ""
    others: tuple["Drawing", ...] = ()
    to_scale: bool = True

    def leaves(self) -> tuple[Leaf, ...]:
        """Everything as lines, polylines and texts: all that a back end must know."""
        return self._leaves

    @cached_property
    def _leaves(self) -> tuple[Leaf, ...]:
        """Taken apart once: a back end asks again for every scale it tries."""
        return tuple(leaf for part in self.parts for leaf in leaves(part))

    def bounds(self) -> tuple[Point, Point]:
        """Lower left and upper right corner of all points."""
        points = [self.hook, *(point for leaf in self.leaves() for point in points_of(leaf))]
        across, up = [point[0] for point in points], [point[1] for point in points]
        return (min(across), min(up)), (max(across), max(up))


def points_of(leaf: Leaf) -> tuple[Point, ...]:
    """The points a leaf is made of."""
    if isinstance(leaf, Line):
        return leaf.start, leaf.end
    return leaf.points if isinstance(leaf, Polyline) else (leaf.at,)


def leaves(part: Primitive) -> Iterator[Leaf]:
    """A primitive as lines, polylines and texts."""
    if isinstance(part, Arc):
        yield Polyline(_around(part), part.role, about=part.about)
    elif isinstance(part, Dimension):
        yield from _measured(part)
    elif isinstance(part, Arrow):
        yield Line(part.start, part.end, part.role, part.about)
        yield _head(part.start, part.end, part.head, part.role, part.about)
    else:
        yield part


def _around(arc: Arc) -> tuple[Point, ...]:
    turn = arc.to_deg - arc.from_deg
    steps = max(2, int(abs(turn) / ARC_STEP_DEG) + 1)
    return tuple(_on_circle(arc, arc.from_deg + turn * step / steps) for step in range(steps + 1))


def _on_circle(arc: Arc, angle_deg: float) -> Point:
    across, up = _way(angle_deg)
    return arc.centre[0] + arc.radius * across, arc.centre[1] + arc.radius * up


@lru_cache(maxsize=DIFFERENT_WAYS)
def _way(angle_deg: float) -> Point:
    """A unit step at an angle: whole circles ask for the same ones again and again."""
    angle = angle_deg / exact.RAD_IN_DEG
    return exact.cos(angle), exact.sin(angle)


def _measured(part: Dimension) -> Iterator[Leaf]:
    along = _direction(part.start, part.end)
    left = (-along[1], along[0])
    start, end = (_moved(point, left, part.aside) for point in (part.start, part.end))
    if part.aside:
        yield Line(part.start, start, Role.MEASURE, part.about)
        yield Line(part.end, end, Role.MEASURE, part.about)
    yield Line(start, end, Role.MEASURE, part.about)
    tick = min(0.04, _distance(start, end) / 4.0)
    for point, other in ((start, end), (end, start)):
        yield _head(other, point, tick, Role.SOLID, part.about)
    middle = ((start[0] + end[0]) / 2.0, (start[1] + end[1]) / 2.0)
    upright = part.aside < 0.0 and abs(end[0] - start[0]) < UPRIGHT * abs(end[1] - start[1])
    yield Text(middle, part.words, Role.TEXT_SOFT, Anchor.START if upright else Anchor.MIDDLE, -0.4, part.about)


def _head(start: Point, end: Point, size: float, role: Role, about: tuple[str, ...]) -> Polyline:
    along = _direction(start, end)
    left = (-along[1], along[0])
    back = _moved(end, along, -size)
    return Polyline((end, _moved(back, left, size / 3.0), _moved(back, left, -size / 3.0)), Role.SOLID, True, about)


def _direction(start: Point, end: Point) -> Point:
    distance = _distance(start, end)
    return ((end[0] - start[0]) / distance, (end[1] - start[1]) / distance) if distance > 0.0 else (1.0, 0.0)


def _distance(start: Point, end: Point) -> float:
    across, up = end[0] - start[0], end[1] - start[1]
    return exact.sqrt(across * across + up * up)


def _moved(point: Point, direction: Point, distance: float) -> Point:
    return point[0] + direction[0] * distance, point[1] + direction[1] * distance
