"""The plate of signatures: one cell each with act, name, capacity, meaning, drawn signature and time.

A guest has a cell only where a hold point asks for him, as a hand-over does for the driver.
"""

from collections.abc import Mapping, Sequence
from typing import Any

from reportlab.lib.units import mm
from reportlab.platypus import Flowable, Table

from checklist_app.checklists import words
from checklist_app.checklists.ink import HIGH, WIDE, read
from checklist_app.checklists.procedure import procedures
from checklist_app.checklists.signing import HOW_WORDS
from checklist_app.records.pdf.canvas import INK, Sheet
from checklist_app.records.pdf.document import Document
from checklist_app.records.pdf.marks import PAPER

INK_HIGH = 9 * mm
LONGEST = 240


def plate(document: Document, record: Mapping[str, Any], inks: Mapping[str, bytes], width: float) -> Table:
    """Signatures that stand, in the order in which they were given, and how the task was closed."""
    standing = [one for one in record["signoffs"] if one["standing"] == "stands"]
    cells = [signature(document, one, inks.get(one["ink"], b""), width - 6 * mm) for one in standing]
    if not standing:
        cells.append([document.paragraph("No signature stands.", "bold"), *void_note(document, record)])
    cells += [guest(document, one, inks.get(one["ink"], b""), width - 6 * mm) for one in asked_for(record)]
    cells.append(closing(document, record))
    edges = [("BOX", (0, 0), (-1, -1), 1.1, INK), ("LINEBELOW", (0, 0), (-1, -2), 0.5, INK),
             ("BACKGROUND", (0, 0), (-1, -1), PAPER), ("FONT", (0, 0), (-1, -1), "Paper", 9),
             ("LEFTPADDING", (0, 0), (-1, -1), 3 * mm), ("RIGHTPADDING", (0, 0), (-1, -1), 3 * mm),
             ("TOPPADDING", (0, 0), (-1, -1), 4), ("BOTTOMPADDING", (0, 0), (-1, -1), 4)]
    made = Table([[cell] for cell in cells], colWidths=[width], style=edges)
    made.tag = "Div"

    return made


def signature(document: Document, one: Mapping[str, Any], ink: bytes, width: float) -> list[Flowable]:
    return [document.paragraph(one["act"], "note"), document.paragraph(f"{one['name']}, {one['capacity']}", "bold"),
            document.paragraph(one["meaning"], "small"), *hand(document, one["name"], ink, width),
            document.paragraph(f"{words.clock(one['at'])}, {HOW_WORDS.get(one['how'], one['how'])}", "note"),
            *([document.paragraph("Signed without knowing: see Sign-offs.", "bold")] if one.get("unknowing") else [])]


def guest(document: Document, one: Mapping[str, Any], ink: bytes, width: float) -> list[Flowable]:
    who = ", ".join(word for word in (one["name"], one["firm"], one["capacity"]) if word)
    return [document.paragraph(one["act"], "note"), document.paragraph(who, "bold"),
            document.paragraph(one["meaning"], "small"), *hand(document, one["name"], ink, width),
            document.paragraph(f"{words.clock(one['at'])}, by hand, witness: {one['witness']}", "note")]


def asked_for(record: Mapping[str, Any]) -> list[Mapping[str, Any]]:
    """The guests whose hand a hold point asks for, and who saw what is here."""
    procedure = procedures().get(str(record["procedure"]))
    holds = {hold.name for hold in procedure.holds if hold.guest} if procedure is not None else set()
    return [one for one in record.get("guests", ()) if one["stands"] and one["hold"] in holds]


def hand(document: Document, name: str, ink: bytes, width: float) -> list[Flowable]:
    """The drawn signature, or the sentence that stands for it."""
    found = read(ink)
    if found is None:
        return [document.paragraph("no drawn signature", "note")]
    if found.typed:
        return [document.paragraph(f"signed by typing the name: {found.typed}", "note")]
    wide = min(width, INK_HIGH * WIDE / HIGH)

    return [document.figure(wide, INK_HIGH, f"drawn signature of {name}",
                            lambda sheet: draw_ink(sheet, found.strokes, wide, INK_HIGH))]


def closing(document: Document, record: Mapping[str, Any]) -> list[Flowable]:
    end = record["closing"]
    return [document.paragraph("Closed out", "note"),
            document.paragraph(f"{words.sentence(end['text'])} {end['by']}", "bold"),
            *([document.paragraph(brief(end["words"]), "small")] if end["words"] else []),
            document.paragraph(words.clock(end["at"]), "note")]


def brief(text: str) -> str:
    """As much as the first page has room for; the whole stands under What happened."""
    return text if len(text) <= LONGEST else f"{text[:LONGEST].rstrip()} … (the rest: What happened)"


def void_note(document: Document, record: Mapping[str, Any]) -> list[Flowable]:
    void = sum(one["standing"] != "stands" for one in record["signoffs"])
    return [document.paragraph(f"{void} given and void: see Sign-offs.", "note")] if void else []


def draw_ink(sheet: Sheet, strokes: Sequence[Sequence[int]], width: float, height: float) -> None:
    """A signature as it was drawn, in the proportions of the pad."""
    path = sheet.beginPath()
    for stroke in strokes:
        points = [(x * width / WIDE, height - y * height / HIGH)
                  for x, y in zip(stroke[::2], stroke[1::2], strict=True)]
        path.moveTo(*points[0])
        for point in points[1:] or points:
            path.lineTo(*point)
    sheet.setStrokeColor(INK)
    sheet.setLineWidth(1.0)
    sheet.setLineCap(1)
    sheet.setLineJoin(1)
    sheet.drawPath(path, stroke=1, fill=0)
