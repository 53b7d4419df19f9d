"""The one writer of the paper: headings, paragraphs, tables, figures, and what stands round them on every page."""

import io
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from datetime import datetime

from reportlab.lib.pagesizes import A4
from reportlab.lib.units import mm
from reportlab.platypus import (
    BaseDocTemplate,
    CondPageBreak,
    Flowable,
    Frame,
    KeepTogether,
    NextPageTemplate,
    PageBreak,
    PageTemplate,
    Table,
)

from checklist_app.records.pdf import faces
from checklist_app.records.pdf.blocks import PLUMB, RULE, SOFT, Cell, Figure, Ruled, Words, ruled, words
from checklist_app.records.pdf.canvas import INK, PAGES, Sheet

LEFT, RIGHT, TOP, BOTTOM = 24 * mm, 14 * mm, 22 * mm, 20 * mm
WIDTH, HEIGHT = A4[0] - LEFT - RIGHT, A4[1]
FIRST_HEIGHT = HEIGHT - BOTTOM
ROOM = {"H2": 42 * mm, "H3": 28 * mm}


@dataclass
class Document:
    """A record on its way to paper. Blocks are made by its methods and put in place by `add`."""

    title: str
    author: str
    digest: str
    when: datetime
    foot: str
    banner: str = ""
    replaced: set[str] = field(default_factory=set)
    blocks: list[Flowable] = field(default_factory=list)
    file: bytes = b""

    def add(self, *blocks: Flowable) -> None:
        """Put blocks in place, one below the other; a heading never stands alone at the foot of a page."""
        for block in blocks:
            if (room := ROOM.get(getattr(block, "tag", ""))) is not None:
                self.blocks.append(CondPageBreak(room))
            self.blocks.append(block)

    def heading(self, level: int, text: str) -> Words:
        return words(self.checked(text), f"H{level}", f"H{level}")

    def paragraph(self, text: str, manner: str = "body") -> Words:
        return words(self.checked(text), manner)

    def table(self, head: Sequence[str], rows: Sequence[Sequence[Cell]], shares: Sequence[float],
              right: frozenset[int] = frozenset(), width: float = WIDTH) -> Ruled:
        for one in (one for row in rows for one in row if isinstance(one, str)):
            self.checked(one)
        return ruled(head, rows, [width * share / sum(shares) for share in shares], right)

    def figure(self, width: float, height: float, alt: str, draw: Callable[[Sheet], None]) -> Figure:
        return Figure(width, height, self.checked(alt), draw)

    def beside(self, columns: Sequence[tuple[float, Sequence[Flowable]]], height: float | None = None) -> Table:
        """Columns of blocks next to each other: (width, blocks)."""
        plain = [("VALIGN", (0, 0), (-1, -1), "TOP"), ("FONT", (0, 0), (-1, -1), faces.PLAIN, 9)]
        plain += [(f"{side}PADDING", (0, 0), (-1, -1), 0) for side in ("LEFT", "RIGHT", "TOP", "BOTTOM")]
        made = Table([[list(blocks) or "" for _, blocks in columns]], colWidths=[width for width, _ in columns],
                     rowHeights=height, style=plain)
        made.tag = "Div"

        return made

    def together(self, *blocks: Flowable) -> KeepTogether:
        return KeepTogether(list(blocks))

    def checked(self, text: str) -> str:
        """Note what no face has; the blocks print it as its code."""
        self.replaced |= faces.printable(text)[1]
        return text

    def next_page(self) -> None:
        self.add(NextPageTemplate("more"), PageBreak())

    def pdf(self) -> bytes:
        """The finished file, made once. The same blocks give the same bytes."""
        self.file = self.file or self.made()
        return self.file

    def made(self) -> bytes:
        faces.register()
        made = io.BytesIO()
        template = BaseDocTemplate(made, pagesize=A4, invariant=1, lang="en", initialFontName=faces.PLAIN,
                                   initialFontSize=9, title=self.title, author=self.author)
        template.addPageTemplates([
            PageTemplate("first", [frame(0, BOTTOM)], onPage=self.begin),
            PageTemplate("more", [frame(TOP, BOTTOM)], onPage=self.begin),
        ])
        template.build(self.blocks, canvasmaker=Sheet)

        return made.getvalue()

    def begin(self, sheet: Sheet, template: BaseDocTemplate) -> None:
        if sheet.getPageNumber() == 1:
            sheet.name_record(self.title, self.author, self.digest, self.when)
        with sheet.artifact():
            self.header(sheet)
            self.footer(sheet)

    def header(self, sheet: Sheet) -> None:
        if self.banner:
            sheet.setFillColor(INK)
            sheet.write(LEFT, HEIGHT - 9 * mm, self.banner, faces.BOLD, 9)
        if sheet.getPageNumber() == 1:
            return
        sheet.setFillColor(SOFT)
        sheet.write(LEFT, HEIGHT - 15 * mm, self.title, size=8)
        sheet.line_of(RULE, 0.4, LEFT, HEIGHT - 17 * mm, LEFT + WIDTH, HEIGHT - 17 * mm)

    def footer(self, sheet: Sheet) -> None:
        sheet.line_of(INK, 0.6, LEFT, 15 * mm, LEFT + WIDTH, 15 * mm)
        sheet.setFillColor(SOFT)
        for row, line in enumerate(self.foot.split("\n")):
            sheet.write(LEFT, 11.5 * mm - row * 3.6 * mm, line, size=7.5)
        end = LEFT + WIDTH - 8 * mm
        sheet.write(end, 11.5 * mm, f"page {sheet.getPageNumber()} of ", size=7.5, anchor="end")
        sheet.saveState()
        sheet.translate(end + 1.5, 11.5 * mm)
        sheet.doForm(PAGES)
        sheet.restoreState()


def frame(top: float, bottom: float) -> Frame:
    return Frame(LEFT, bottom, WIDTH, HEIGHT - top - bottom, 0, 0, 0, 0)


__all__ = ["FIRST_HEIGHT", "PLUMB", "WIDTH", "Document"]
