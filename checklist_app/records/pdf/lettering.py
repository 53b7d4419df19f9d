"""The words of a drawing on the paper: where the pure floor puts them, in the paper's faces, sizes and colours."""

from collections.abc import Callable, Mapping
from typing import NamedTuple

from checklist_app.operations.drawing import Drawing, Point, Role, Text
from checklist_app.operations.lettering import Box, Put, Setting, lettering
from checklist_app.records.pdf import faces
from checklist_app.records.pdf.canvas import INK

SOFT, PLUMB = "#2c3d36", "#0a4385"
SIZES: Mapping[Role, float] = dict.fromkeys(Role, 8.5) | {Role.TEXT_SOFT: 8.0, Role.TEXT_BIG: 11.0}
COLOURS: Mapping[Role, str] = {Role.TEXT_SOFT: SOFT, Role.TEXT_ANGLE: PLUMB}


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


def lettered(drawing: Drawing, at: Callable[[Point], Point]) -> list[Lettered]:
    """All words of a drawing where they stand on the paper."""
    return [letter(put) for put in lettering(drawing, at, Setting(SIZES, wide))]


def letter(put: Put) -> Lettered:
    """A line of words in its face; the small ones have the paper behind them."""
    words, role = faces.printable(put.text.words)[0], put.text.role
    return Lettered(words, face(put.text), SIZES[role], COLOURS.get(role, INK), put.x, put.y, put.box, role in COLOURS)


def wide(text: Text) -> float:
    return faces.width(faces.printable(text.words)[0], face(text), SIZES[text.role])


def face(text: Text) -> str:
    return faces.PLAIN if text.role is Role.TEXT_SOFT else faces.BOLD
