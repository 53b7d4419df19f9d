"""The marks of the verdicts and the lead seal, as on the screen: told apart by shape, without colour."""

from math import cos, pi, sin
from typing import NamedTuple

from checklist_app.records.pdf import faces, path
from checklist_app.records.pdf.blocks import PLUMB, Figure
from checklist_app.records.pdf.canvas import INK, Sheet

CLOSE, OVER, PAPER = "#ffd978", "#ff8b3d", "#f5f8f3"
BOX = 32.0


class Stroke(NamedTuple):
    """One outline of a mark: how thick, and filled with what."""

    outline: str
    wide: float = 2.4
    fill: str = ""
    dash: tuple[int, ...] = ()
    edge: bool = True


MARKS: dict[str, tuple[str, tuple[Stroke, ...]]] = {
    "within limit": (PLUMB, (Stroke("M16 0v6"), Stroke("M9 6h14v4l-7 10-7-10z", fill=PLUMB), Stroke("M3 28.5h26"))),
    "close to limit": (INK, (Stroke("M16 0v7"), Stroke("M8.5 15.5h15L16 27.5z", fill=CLOSE, edge=False),
                             Stroke("M7 7h18v6l-9 14.5L7 13z"), Stroke("M2 29.5h28", wide=4))),
    "over limit": (INK, (Stroke("M16 0v4"), Stroke("M-2 17h6l3 7M34 17h-6l-3 7", wide=3.5),
                         Stroke("M7 4h18v7l-9 20-9-20z", fill=OVER))),
    "waiting": (INK, (Stroke("M16 0v8"), Stroke("M16 8.5l4 1.5l1.5 4l-1.5 4l-4 1.5l-4-1.5l-1.5-4l1.5-4z"),
                      Stroke("M3 28.5h26", dash=(5, 5)))),
    "cannot be assessed": (INK, (Stroke("M16 -1v5M16 3l-4 5M16 3l4 5"),
                                 Stroke("M16 11L6.4 25l4 3 9.8-14z", fill=INK, edge=False),
                                 Stroke("M13.2 28.5h15L23 14.6z", fill=INK, edge=False), Stroke("M3 29h26"))),
    "not applicable": (INK, (Stroke("M10 16h12"),)),
}


def mark(verdict: str, size: float) -> Figure:
    """The mark of a verdict as a figure of its own."""
    return Figure(size, size, verdict, lambda sheet: draw_mark(sheet, verdict, 0, 0, size))


def draw_mark(sheet: Sheet, verdict: str, x: float, y: float, size: float) -> None:
    """Draw a mark into the square above and right of x, y."""
    colour, strokes = MARKS[verdict]
    sheet.saveState()
    sheet.translate(x, y + size)
    sheet.scale(size / BOX, size / BOX)
    for stroke in strokes:
        sheet.setStrokeColor(colour)
        sheet.setLineWidth(stroke.wide)
        sheet.setDash(list(stroke.dash))
        sheet.setFillColor(stroke.fill or INK)
        path.draw(sheet, stroke.outline, fill=bool(stroke.fill), stroke=stroke.edge)
    sheet.restoreState()


def draw_seal(sheet: Sheet, number: str, rim: str, x: float, y: float, radius: float) -> None:
    """The lead seal round x, y: the record's number, house and day in its rim."""
    sheet.setFillColor(PAPER)
    sheet.setStrokeColor(INK)
    sheet.setLineWidth(1.4)
    sheet.circle(x, y, radius, stroke=1, fill=1)
    sheet.setLineWidth(0.5)
    sheet.circle(x, y, radius * 0.67, stroke=1, fill=0)
    sheet.setFillColor(INK)
    size = radius * 0.52 if len(number) <= 4 else radius * 2.0 / len(number)
    sheet.write(x, y - size * 0.36, number, faces.BOLD, size, "middle")
    draw_rim(sheet, rim, x, y, radius * 0.78)


def draw_rim(sheet: Sheet, words: str, x: float, y: float, radius: float) -> None:
    """Words once round a circle, clockwise from its left."""
    words, _ = faces.printable(words)
    size = radius * 0.215
    share = min(2 * pi * radius / max(faces.width(words, faces.BOLD, size), 1.0), 1.6)
    angle = pi
    for one in words:
        wide = faces.width(one, faces.BOLD, size) * share
        angle -= wide / 2 / radius
        sheet.saveState()
        sheet.translate(x + radius * cos(angle), y + radius * sin(angle))
        sheet.rotate(angle * 180 / pi - 90)
        sheet.write(0, 0, one, faces.BOLD, size, "middle")
        sheet.restoreState()
        angle -= wide / 2 / radius
