"""What stands on the paper, each block knowing which part of the structure it is."""

from collections.abc import Callable, Sequence
from typing import Any
from xml.sax.saxutils import escape

from reportlab.lib.styles import ParagraphStyle
from reportlab.platypus import Flowable, LongTable, Paragraph

from checklist_app.records.pdf import faces
from checklist_app.records.pdf.canvas import INK, Sheet

SOFT, RULE, PLUMB = "#2c3d36", "#a9b8ae", "#0a4385"
Cell = str | Flowable | list[Flowable]


def style(name: str, size: float, leading: float, **more: Any) -> ParagraphStyle:
    known = {"fontName": faces.PLAIN, "textColor": INK, "splitLongWords": 1, "embeddedHyphenation": 0}
    return ParagraphStyle(name, fontSize=size, leading=leading, **(known | more))


STYLES = {
    "H1": style("H1", 23, 27, fontName=faces.BOLD, spaceAfter=4),
    "H2": style("H2", 13, 16, fontName=faces.BOLD, spaceBefore=13, spaceAfter=4),
    "H3": style("H3", 10.5, 13, fontName=faces.BOLD, spaceBefore=8, spaceAfter=2),
    "body": style("body", 9.5, 13, spaceAfter=3),
    "bold": style("bold", 9.5, 13, fontName=faces.BOLD),
    "note": style("note", 8, 10.5, textColor=SOFT),
    "small": style("small", 7.5, 9.2),
    "photo": style("photo", 8, 10.5, textColor=SOFT, spaceBefore=3, spaceAfter=8),
    "lead": style("lead", 13, 16, fontName=faces.BOLD),
    "line": style("line", 9, 12.5, leftIndent=10),
    "digest": style("digest", 8, 11, splitLongWords=1),
    "right": style("right", 9.5, 13, alignment=2),
    "head": style("head", 8, 10.5, textColor=SOFT),
    "headright": style("headright", 8, 10.5, textColor=SOFT, alignment=2),
}


class Words(Paragraph):
    """A paragraph or a heading; a heading can be found in the reader's list of contents."""

    tag, words = "P", ""

    def split(self, width: float, height: float) -> list[Flowable]:
        parts = super().split(width, height)
        for part in parts:
            part.tag, part.words = "P" if part is not parts[0] else self.tag, self.words
        return parts

    def draw(self) -> None:
        if self.tag.startswith("H"):
            self.canv.entry(self.words, int(self.tag[1:]) - 1, self.height)
        with self.canv.structure(self.tag):
            super().draw()


def words(text: str, manner: str, tag: str = "P") -> Words:
    """One paragraph in one of the manners of `STYLES`."""
    made = Words(marked(text, str(STYLES[manner].fontName)), STYLES[manner])
    made.tag, made.words = tag, text

    return made


def marked(text: str, face: str) -> str:
    """Checked text as reportlab's mark-up: nothing a user wrote is read as mark-up."""
    text, _ = faces.printable(text)
    stretches = (stretch if name == face else f'<font face="{name}">{stretch}</font>'
                 for name, stretch in ((name, escape(part)) for name, part in faces.runs(text, face)))
    return "".join(stretches).replace("\n", "<br/>")


class Figure(Flowable):
    """Something drawn, with the words that stand for it."""

    def __init__(self, width: float, height: float, alt: str, draw: Callable[[Sheet], None]) -> None:
        super().__init__()
        self.tag, self.alt, self.width, self.height, self.drawn = "Figure", alt, width, height, draw

    def wrap(self, width: float, height: float) -> tuple[float, float]:
        return self.width, self.height

    def draw(self) -> None:
        with self.canv.structure(self.tag, self.alt):
            self.canv.saveState()
            self.drawn(self.canv)
            self.canv.restoreState()


class Ruled(LongTable):
    """A table whose head stands again on every page and whose cells wrap."""

    tag = "Table"


def ruled(head: Sequence[str], rows: Sequence[Sequence[Cell]], widths: Sequence[float],
          right: frozenset[int] = frozenset()) -> Ruled:
    """A table; the columns in `right` hold figures and are set to the right."""
    cells = [[cell(one, column in right) for column, one in enumerate(row)] for row in rows]
    top = [[words(one, "headright" if column in right else "head", "TH") for column, one in enumerate(head)]]

    return Ruled(top + cells, colWidths=list(widths), repeatRows=1, splitInRow=1, style=RULING, hAlign="LEFT",
                 spaceAfter=6)


RULING = [
    ("FONT", (0, 0), (-1, -1), faces.PLAIN, 9), ("LINEABOVE", (0, 0), (-1, 0), 1.1, INK),
    ("LINEBELOW", (0, 0), (-1, 0), 1.1, INK),
    ("LINEBELOW", (0, 1), (-1, -1), 0.4, RULE), ("LINEBELOW", (0, -1), (-1, -1), 1.1, INK),
    ("VALIGN", (0, 0), (-1, -1), "TOP"), ("LEFTPADDING", (0, 0), (-1, -1), 0), ("RIGHTPADDING", (0, 0), (-1, -1), 6),
    ("TOPPADDING", (0, 0), (-1, -1), 2.6), ("BOTTOMPADDING", (0, 0), (-1, -1), 2.6),
]


def cell(content: Cell, right: bool) -> Flowable | list[Flowable]:
    """Plain strings would run over the next column: every text becomes a paragraph."""
    return words(content, "right" if right else "body", "TD") if isinstance(content, str) else content
