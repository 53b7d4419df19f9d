"""The drawing on paper: the same primitives as on the screen, at a standard scale, under the falling line."""

from collections.abc import Mapping, Sequence
from typing import NamedTuple

from reportlab.lib.units import mm

from checklist_app.operations.drawing import Drawing, Line, Point, Polyline, Role, Text, points_of
from checklist_app.operations.lettering import Box
from checklist_app.records.pdf import faces
from checklist_app.records.pdf.blocks import PLUMB, SOFT, Figure
from checklist_app.records.pdf.canvas import INK, Sheet
from checklist_app.records.pdf.document import HEIGHT, Document
from checklist_app.records.pdf.lettering import Lettered, lettered

SCALES = (5, 10, 12, 15, 20, 25, 30, 35, 40, 45, 50, 60, 75, 100, 125, 150, 200, 250, 300, 400, 500, 750, 1000)
POINTS_IN_METRE = 1000 * mm
BAR_HIGH, MARGIN, NOTE = 9 * mm, 1.5 * mm, 8
CORE = {"close to limit": "#ffd978", "over limit": "#ff8b3d"}
WHITE, PALE = "#ffffff", "#f5f8f3"


class Pen(NamedTuple):
    """How a role looks: thickness and dashes in points of the paper, so that they do not scale."""

    wide: float
    colour: str = INK
    fill: str = ""
    dash: tuple[float, ...] = ()


PENS = {
    Role.OUTLINE: Pen(0.9, fill=PALE), Role.FINE: Pen(0.4), Role.SOLID: Pen(0.3, fill=INK),
    Role.PLUMB: Pen(1.4, PLUMB), Role.PLUMB_ON: Pen(1.4, PLUMB, dash=(9, 3, 1.5, 3)), Role.ANGLE: Pen(0.8, PLUMB),
    Role.MEASURE: Pen(0.4), Role.GROUND: Pen(1.2), Role.MEMBER: Pen(3.4), Role.GOVERNS: Pen(5.4),
    Role.WORST: Pen(0.5, SOFT, dash=(3, 2)),
}


class View(NamedTuple):
    """Where metres land on the paper."""

    scale: int
    x: float
    y: float

    @property
    def points(self) -> float:
        """Points of the paper in one metre."""
        return POINTS_IN_METRE / self.scale

    def at(self, place: Point) -> tuple[float, float]:
        return self.x + place[0] * self.points, self.y + place[1] * self.points


def drawn(document: Document, drawing: Drawing, width: float, height: float, hook_at: float | None,
          verdicts: Mapping[str, str], scales: Sequence[int] = SCALES) -> Figure:
    """The drawing as a figure. With `hook_at` its hook hangs there on the line from the paper's edge."""
    view = fitted(drawing, width, height - bar_high(drawing), hook_at, scales)
    label = f"{drawing.label} Scale 1:{view.scale}." if drawing.to_scale else drawing.label

    def draw(sheet: Sheet) -> None:
        if hook_at is not None:
            falling_line(sheet, view.at(drawing.hook))
        for leaf in drawing.leaves():
            if not isinstance(leaf, Text):
                draw_line(sheet, leaf, view, verdicts)
        for words in lettering(drawing, view):
            draw_words(sheet, words)
        if drawing.to_scale:
            scale_bar(sheet, view, drawing.note, width)

    for leaf in drawing.leaves():
        document.checked(leaf.words if isinstance(leaf, Text) else drawing.note)
    return document.figure(width, height, label, draw)


def bar_high(drawing: Drawing) -> float:
    """What the scale bar takes below a drawing."""
    return BAR_HIGH if drawing.to_scale else 0.0


def fitted(drawing: Drawing, width: float, height: float, hook_at: float | None,
           scales: Sequence[int] = SCALES) -> View:
    """The largest of the scales at which lines and words fit, with the hook where it belongs."""
    for scale in scales:
        box = extent(drawing, View(scale, 0.0, 0.0))
        hook = View(scale, 0.0, 0.0).at(drawing.hook)
        wide = box.right - box.left
        x = (width - wide) / 2 - box.left if hook_at is None else width * hook_at - hook[0]
        if box.high - box.low <= height - MARGIN and x + box.left >= -0.01 and x + box.right <= width + 0.01:
            return View(scale, x, bar_high(drawing) + height - MARGIN - box.high)
    if hook_at is not None:
        return fitted(drawing, width, height, None, scales)
    raise ValueError("the drawing is too large for the paper at every scale")


def extent(drawing: Drawing, view: View) -> Box:
    """What the drawing covers on the paper, words included."""
    boxes = [words.box for words in lettering(drawing, view)]
    places = [view.at(place) for leaf in drawing.leaves() if not isinstance(leaf, Text) for place in points_of(leaf)]
    places += [(box.left, box.low) for box in boxes] + [(box.right, box.high) for box in boxes]
    across, up = [place[0] for place in places], [place[1] for place in places]

    return Box(min(across), min(up), max(across), max(up))


def lettering(drawing: Drawing, view: View) -> list[Lettered]:
    """The words of the drawing where they stand on the paper."""
    return lettered(drawing, view.at)


def draw_line(sheet: Sheet, leaf: Line | Polyline, view: View, verdicts: Mapping[str, str]) -> None:
    """A line or an area; a member is hollow, filled by the verdict of the check it shows."""
    places = [view.at(place) for place in points_of(leaf)]
    pen, closed = PENS[leaf.role], getattr(leaf, "closed", False)
    stroke(sheet, places, pen, closed)
    if leaf.role in (Role.MEMBER, Role.GOVERNS):
        verdict = next((verdicts[name] for name in leaf.about if name in verdicts), "")
        stroke(sheet, places, Pen(pen.wide - 1.4, CORE.get(verdict, WHITE)), closed)


def draw_words(sheet: Sheet, words: Lettered) -> None:
    """Words, with the paper showing behind the small ones where a line would run through them."""
    if words.patch:
        box = words.box
        sheet.setFillColor(WHITE)
        sheet.rect(box.left - 1, box.low, box.right - box.left + 2, box.high - box.low, stroke=0, fill=1)
    sheet.setFillColor(words.colour)
    sheet.write(words.x, words.y, words.words, words.face, words.size)


def stroke(sheet: Sheet, places: list[tuple[float, float]], pen: Pen, closed: bool) -> None:
    sheet.setStrokeColor(pen.colour)
    sheet.setLineWidth(pen.wide)
    sheet.setDash(list(pen.dash))
    sheet.setLineJoin(1)
    fill = bool(pen.fill) and closed
    if fill:
        sheet.setFillColor(pen.fill)
    path = sheet.beginPath()
    path.moveTo(*places[0])
    for place in places[1:]:
        path.lineTo(*place)
    if closed:
        path.close()
    sheet.drawPath(path, stroke=1, fill=int(fill))


def falling_line(sheet: Sheet, hook: tuple[float, float]) -> None:
    """From the edge of the paper down to the hook: everything else hangs on it."""
    _, bottom = sheet.absolutePosition(0, 0)
    sheet.setDash([])
    sheet.line_of(PLUMB, 2.2, hook[0], HEIGHT - bottom, hook[0], hook[1])


def bar_told(view: View) -> tuple[float, str]:
    """How long the scale bar is on the paper, and the words that stand beside it at least."""
    metre = view.points
    length, words = (metre, "1 m") if metre <= 90 * mm else (metre / 2, "0.5 m")

    return length, f"{words}, scale 1:{view.scale} on A4"


def bar_wide(view: View) -> float:
    """How wide a drawing is at least, so that its scale bar can be read."""
    length, told = bar_told(view)

    return length + 6 + faces.width(told, faces.PLAIN, NOTE)


def scale_bar(sheet: Sheet, view: View, note: str, width: float) -> None:
    """One metre of the drawing, and the scale: a copy of another size still tells lengths.

    What is noted stands beside it, or below where there is no room.
    """
    y, (length, told) = 3 * mm, bar_told(view)
    sheet.setDash([])
    sheet.setFillColor(INK)
    sheet.setStrokeColor(INK)
    sheet.setLineWidth(0.6)
    sheet.rect(0, y, length / 2, 2.5, stroke=1, fill=1)
    sheet.rect(length / 2, y, length / 2, 2.5, stroke=1, fill=0)
    sheet.setFillColor(SOFT)
    beside = f"{told}. {note}".rstrip(". ")
    fits = length + 6 + faces.width(beside, faces.PLAIN, NOTE) <= width
    sheet.write(length + 6, y - 1.5, beside if fits else told, size=NOTE)
    if not fits:
        sheet.write(0, y - 1.5 - 1.2 * NOTE, note, size=NOTE)
