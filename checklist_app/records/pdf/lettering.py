"""Where the words of a drawing stand on the paper: at their points, moved aside where two would cover each other."""

from collections.abc import Iterable, Mapping, Sequence
from typing import NamedTuple

from checklist_app.operations.drawing import Anchor, Role, Text
from checklist_app.records.pdf import faces
from checklist_app.records.pdf.canvas import INK

SOFT, PLUMB = "#2c3d36", "#0a4385"
SIZES: Mapping[Role, float] = {Role.TEXT: 8.5, Role.TEXT_SOFT: 8.0, Role.TEXT_ANGLE: 8.5, Role.TEXT_BIG: 11.0}
COLOURS: Mapping[Role, str] = {Role.TEXT_SOFT: SOFT, Role.TEXT_ANGLE: PLUMB}
LINE_HIGH, GAP = 1.3, 2.0
Place = tuple[float, float]


class Box(NamedTuple):
    """A rectangle on the paper, in points."""

    left: float
    low: float
    right: float
    high: float

    def covers(self, other: "Box") -> bool:
        """Whether two rectangles share some paper."""
        return self.left < other.right and other.left < self.right and self.low < other.high and other.low < self.high

    def moved(self, across: float) -> "Box":
        return Box(self.left + across, self.low, self.right + across, self.high)


class Lettered(NamedTuple):
    """One line of words with its face, size, colour, the start of its line of writing, and what it covers."""

    words: str
    face: str
    size: float
    colour: str
    x: float
    y: float
    box: Box
    patch: bool


def lettered(texts: Iterable[tuple[Text, Place]], members: Sequence[tuple[Place, Place]]) -> list[Lettered]:
    """All words of a drawing; those at angles keep their place, the others make way for them and for the members."""
    placed: list[Lettered] = []
    for text, at in sorted(texts, key=lambda one: one[0].role is not Role.TEXT_ANGLE):
        taken = [one.box for one in placed]
        if text.role is not Role.TEXT_ANGLE and text.anchor is not Anchor.MIDDLE:
            taken += [slice_at(letter(text, at).box, member) for member in members]
        placed.append(beside(letter(text, at), text.anchor, [box for box in taken if box.right > box.left]))
    return placed


def slice_at(box: Box, member: tuple[Place, Place]) -> Box:
    """The part of a member that lies at the height of a box; nothing wide where it lies elsewhere."""
    (x1, y1), (x2, y2) = sorted(member, key=lambda place: place[1])
    low, high = max(y1, box.low), min(y2, box.high)
    if low >= high:
        return Box(0.0, 0.0, 0.0, 0.0)
    across = [x1 + (x2 - x1) * (y - y1) / (y2 - y1) for y in (low, high)]

    return Box(min(across) - GAP, low, max(across) + GAP, high)


def letter(text: Text, at: Place) -> Lettered:
    """A line of words at its own point."""
    face = faces.PLAIN if text.role is Role.TEXT_SOFT else faces.BOLD
    size, words = SIZES.get(text.role, 8.5), faces.printable(text.words)[0]
    wide = faces.width(words, face, size)
    x = at[0] - {Anchor.START: 0.0, Anchor.MIDDLE: wide / 2, Anchor.END: wide}[text.anchor]
    y = at[1] - text.lower * size * LINE_HIGH - size * 0.35

    return Lettered(words, face, size, COLOURS.get(text.role, INK), x, y,
                    Box(x, y - size * 0.22, x + wide, y + size * 0.75), text.role in COLOURS)


def beside(one: Lettered, anchor: Anchor, taken: list[Box]) -> Lettered:
    """The same words moved away from their point until they cover no others."""
    for _ in taken:
        other = next((box for box in taken if box.covers(one.box)), None)
        if other is None:
            break
        across = other.left - one.box.right - GAP if anchor is Anchor.END else other.right - one.box.left + GAP
        one = one._replace(x=one.x + across, box=one.box.moved(across))

    return one
