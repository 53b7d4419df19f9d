"""Where the words of a drawing stand: at their points, moved aside where they would cover words or lie on a line.

Words at one point are one block and keep together. Screen and paper place them alike, each with its sizes; y goes up.
"""

from collections.abc import Callable, Iterator, Mapping, Sequence
from itertools import groupby
from typing import NamedTuple

from checklist_app.operations.drawing import Anchor, Drawing, Leaf, Line, Point, Role, Text, points_of

LINE_HIGH, BELOW, ABOVE, HALF_HIGH = 1.3, 0.22, 0.75, 0.35
GAP, STRIDE, OUTWARDS_MOST, INWARDS_MOST, UP_MOST = 0.12, 0.5, 14, 3, 10
INWARDS, UPWARDS = 1.6, 1.2
WORDS_COVERED, MEMBER_CROSSED, LINE_CROSSED, OUTSIDE = 4000.0, 400.0, 60.0, 4000.0
HATCHING_CROSSED = 200.0
WEIGHTS = {
    Role.MEMBER: MEMBER_CROSSED, Role.GOVERNS: MEMBER_CROSSED, Role.WORST: 20.0, Role.GROUND: HATCHING_CROSSED
}
ROUND, COARSE, THICK = 24, 6, 0.2
Segment = tuple[Point, Point, float]


class Box(NamedTuple):
    """A rectangle, y upwards."""

    left: float
    low: float
    right: float
    high: float

    def covers(self, other: "Box") -> bool:
        """Whether two rectangles share some paper."""
        return self.left < other.right and other.left < self.right and self.low < other.high and other.low < self.high

    def holds(self, other: "Box") -> bool:
        """Whether the other lies inside."""
        return (
            self.left <= other.left and other.right <= self.right and self.low <= other.low and other.high <= self.high
        )

    def moved(self, across: float, up: float) -> "Box":
        return Box(self.left + across, self.low + up, self.right + across, self.high + up)


class Put(NamedTuple):
    """One line of words in its place: the start of the line of writing, and what it covers."""

    text: Text
    x: float
    y: float
    wide: float
    box: Box


class Setting(NamedTuple):
    """How a back end sets words: their size by role, their width, the paper there is, how deep ground is hatched."""

    sizes: Mapping[Role, float]
    width: Callable[[Text], float]
    paper: Box | None = None
    hatched: float = 0.0


def lettering(drawing: Drawing, at: Callable[[Point], Point], setting: Setting) -> list[Put]:
    """All words of a drawing; large blocks come first, then what stands in the middle of a dimension."""
    leaves = drawing.leaves()
    lines = [segment for leaf in leaves for segment in (*_segments(leaf, at), *_hatching(leaf, at, setting.hatched))]
    texts = sorted((leaf for leaf in leaves if isinstance(leaf, Text)), key=lambda text: (text.at, text.anchor.value))
    blocks = [tuple(block) for _, block in groupby(texts, key=lambda text: (text.at, text.anchor))]
    placed: list[Put] = []
    for block in sorted(blocks, key=lambda block: (-len(block), block[0].anchor is not Anchor.MIDDLE)):
        placed += _placed([unmoved(text, at(text.at), setting) for text in block], lines, placed, setting.paper)
    return placed


def unmoved(text: Text, at: Point, setting: Setting) -> Put:
    """A line of words at its own point."""
    size, wide = setting.sizes[text.role], setting.width(text)
    x = at[0] + text.along * size - {Anchor.START: 0.0, Anchor.MIDDLE: wide / 2.0, Anchor.END: wide}[text.anchor]
    y = at[1] - text.lower * size * LINE_HIGH - size * HALF_HIGH
    gap = GAP * size

    return Put(text, x, y, wide, Box(x - gap, y - size * BELOW, x + wide + gap, y + size * ABOVE))


def _placed(block: list[Put], lines: Sequence[Segment], placed: Sequence[Put], paper: Box | None) -> list[Put]:
    """The block at the nearest place where it covers nothing; else where it covers least."""
    step = STRIDE * (block[0].box.high - block[0].box.low)
    best, least = block, float("inf")
    for away, across, up in OFFSETS[block[0].text.anchor]:
        if away >= least:
            break
        moved = [_moved(put, across * step, up * step) for put in block]
        cost = away
        for hit in _covered(moved, lines, placed, paper):
            cost = cost + hit
            if cost >= least:
                break
        else:
            best, least = moved, cost
    return best


def _offsets(anchor: Anchor) -> list[tuple[float, int, int]]:
    """Ways to move, the nearest first; towards the point costs more than away from it, and up more than down."""
    away = {Anchor.START: 1.0, Anchor.MIDDLE: 0.0, Anchor.END: -1.0}[anchor]
    found = []
    for across in range(-OUTWARDS_MOST, OUTWARDS_MOST + 1):
        if across * away < -INWARDS_MOST:
            continue
        for up in range(-UP_MOST, UP_MOST + 1):
            sideways = abs(across) * (INWARDS if across * away < 0.0 else 1.0)
            found.append((sideways + abs(up) * (UPWARDS if up > 0 else 1.0), across, up))
    return sorted(found)


OFFSETS = {anchor: _offsets(anchor) for anchor in Anchor}


def _moved(put: Put, across: float, up: float) -> Put:
    return Put(put.text, put.x + across, put.y + up, put.wide, put.box.moved(across, up))


def _covered(
    block: Sequence[Put], lines: Sequence[Segment], placed: Sequence[Put], paper: Box | None
) -> Iterator[float]:
    """What each fault of a place costs. No line may run between the words of one block either."""
    for put in block:
        if paper is not None and not paper.holds(put.box):
            yield OUTSIDE
        yield from (WORDS_COVERED for other in placed if put.box.covers(other.box))
    boxes = [put.box for put in block]
    whole = Box(
        min(box.left for box in boxes), min(box.low for box in boxes), max(box.right for box in boxes),
        max(box.high for box in boxes),
    )
    wider = _grown(whole, THICK * (boxes[0].high - boxes[0].low))
    for start, end, weight in lines:
        if crosses(wider if weight == MEMBER_CROSSED else whole, start, end):
            yield weight


def _grown(box: Box, by: float) -> Box:
    """A member is drawn thick: words keep clear of its edge."""
    return Box(box.left - by, box.low - by, box.right + by, box.high + by)


def crosses(box: Box, start: Point, end: Point) -> bool:
    """Whether a straight line comes into a rectangle.

    Example:
        >>> box = Box(0.0, 0.0, 2.0, 1.0)
        >>> crosses(box, (-1.0, 0.5), (3.0, 0.5)), crosses(box, (0.0, 2.0), (3.0, 1.1))
        (True, False)
    """
    (x1, y1), (x2, y2) = start, end
    if (x1 < box.left and x2 < box.left) or (x1 > box.right and x2 > box.right):
        return False
    if (y1 < box.low and y2 < box.low) or (y1 > box.high and y2 > box.high):
        return False

    run, rise = x2 - x1, y2 - y1
    sides = [run * (y - y1) - rise * (x - x1) for x in (box.left, box.right) for y in (box.low, box.high)]
    return not (all(side > 0.0 for side in sides) or all(side < 0.0 for side in sides))


def _hatching(leaf: Leaf, at: Callable[[Point], Point], deep: float) -> Iterator[Segment]:
    """The foot of the strokes under the ground: who keeps off it and off the ground itself keeps off the hatching."""
    if leaf.role is Role.GROUND and deep > 0.0:
        for start, end, weight in _segments(leaf, at):
            yield (start[0], start[1] - deep), (end[0], end[1] - deep), weight


def _segments(leaf: Leaf, at: Callable[[Point], Point]) -> Iterator[Segment]:
    """The straight pieces of a line, each with what it costs to write over it."""
    if isinstance(leaf, Text):
        return
    points = points_of(leaf)
    places = [at(point) for point in (points if len(points) < ROUND else (*points[:-1:COARSE], points[-1]))]
    closed = not isinstance(leaf, Line) and leaf.closed
    weight = WEIGHTS.get(leaf.role, LINE_CROSSED)
    yield from ((start, end, weight) for start, end in zip(places, places[1:] + places[:1] * closed, strict=False))
