"""The first page: the line falls from the edge of the paper into the drawing's hook; verdict, seal, signatures."""

from collections.abc import Mapping
from itertools import accumulate
from typing import Any

from reportlab.lib.units import mm
from reportlab.platypus import Flowable, Spacer

from checklist_app.checklists import words
from checklist_app.operations.drawing import Drawing
from checklist_app.operations.words import FIXED
from checklist_app.records import figures
from checklist_app.records.pdf import faces
from checklist_app.records.pdf.blocks import PLUMB, Ruled
from checklist_app.records.pdf.canvas import INK, Sheet
from checklist_app.records.pdf.document import FIRST_HEIGHT, HEIGHT, WIDTH, Document
from checklist_app.records.pdf.drawing import drawn
from checklist_app.records.pdf.marks import draw_mark, draw_seal, mark
from checklist_app.records.pdf.plate import plate
from checklist_app.records.saying import says_of

AT, HEAD, GAP = 0.56, 60 * mm, 5 * mm
RIGHT_WIDE = WIDTH * (1 - AT) - 5 * mm
PLATE, LOWEST_DRAWING, FEWEST_CHECKS, MOST_CHECKS = 60 * mm, 70 * mm, 4, 24
ALL_HIGH, SEAL_RADIUS, STRING_ENDS = 150 * mm, 14 * mm, 4.5 * mm
LONGEST_TITLE, LONGEST_PLACE = 60, 140
Record = Mapping[str, Any]


def first_page(document: Document, record: Record, inks: Mapping[str, bytes], drawing: Drawing | None) -> None:
    """Set the first page; the drawing takes the height that verdict, checks and signatures leave."""
    verdicts = {check["name"]: str(check["verdict"]) for check in record["evaluation"]["checks"]}
    signed = plate(document, record, inks, PLATE)
    signed_height = signed.wrap(PLATE, HEIGHT)[1]
    checks = best_fit(document, record, max(signed_height, 45 * mm if drawing is not None else ALL_HIGH))
    foot = max(signed_height, checks.wrap(WIDTH - PLATE - GAP, HEIGHT)[1])
    height = FIRST_HEIGHT - HEAD - foot - 2 * GAP
    document.add(masthead(document, record))
    if drawing is not None and height >= LOWEST_DRAWING:
        document.add(drawn(document, drawing, WIDTH, height, AT, verdicts), Spacer(1, GAP))
    else:
        document.add(document.figure(WIDTH, 2 * GAP, "the line ends", lambda sheet: plumb_end(sheet, 2 * GAP)))
        document.add(*why_stopped(document, record))
    document.add(document.beside([(WIDTH - PLATE - GAP, [checks]), (GAP, []), (PLATE, [signed])]))
    if drawing is not None and height < LOWEST_DRAWING:
        document.next_page()
        document.add(drawn(document, drawing, WIDTH, 150 * mm, None, verdicts))


def masthead(document: Document, record: Record) -> Flowable:
    """Left of the line what was lifted, right of it the verdict, and the seal."""
    place = one_line(f"{record['operation_words']}{', ' + record['place'] if record['place'] else ''}.", LONGEST_PLACE)
    left = [
        Spacer(1, 13 * mm),
        document.paragraph(f"Record of a {says_of(record).work}, number {record['number']}", "note"),
        document.heading(1, one_line(record["title"], LONGEST_TITLE)),
        document.paragraph(place),
        document.paragraph(f"{words.day(record['day'])}. {class_words(record)} Closed: {record['closing']['text']}."),
    ]
    right = document.figure(RIGHT_WIDE, HEAD, verdict_words(record), lambda sheet: verdict(sheet, record))

    return document.beside([(WIDTH * AT - 4 * mm, left), (9 * mm, []), (RIGHT_WIDE, [right])], HEAD)


def one_line(text: str, most: int) -> str:
    """A name as long as the masthead has room for; in full it stands among the answers."""
    return text if len(text) <= most else f"{text[:most].rstrip()} …"


def class_words(record: Record) -> str:
    return f"{words.sentence(record['lift_class'])}" if record["lift_class"] else "Class not reached."


def verdict_words(record: Record) -> str:
    check = figures.governing(record)
    return f"{record['verdict']}; {figures.title(check)} governs, {figures.used(check)}" if check else record["verdict"]


def verdict(sheet: Sheet, record: Record) -> None:
    """Mark, figure, what governed, the verdict's word; the seal hangs at the right from the edge of the paper."""
    wide, check = RIGHT_WIDE, figures.governing(record)
    seal(sheet, record, wide - 15 * mm)
    draw_mark(sheet, record["verdict"], 0, 16 * mm, 10 * mm)
    sheet.setFillColor(INK)
    giant, small = headline(check, record["verdict"])
    end = sheet.write(13 * mm, (17 if small else 15.5) * mm, giant, faces.BOLD, 32 if small else 16)
    room = wide - 15 * mm - STRING_ENDS - (end + 4)
    sheet.write(end + 4, 17 * mm, small, faces.PLAIN, min(18, 18 * room / max(faces.width(small, faces.PLAIN, 18), 1)))
    lines = [(f"{figures.title(check)} governs", faces.BOLD, 10)] if check else []
    lines += [(record["verdict"] + spread_words(check), faces.PLAIN, 9.5)]
    for row, (line, face, size) in enumerate(lines):
        sheet.write(0, 9.5 * mm - row * 4.8 * mm, shortened(line, face, size, wide), face, size)


def why_stopped(document: Document, record: Record) -> list[Flowable]:
    """The whole reason, where what governs could not be assessed."""
    check = figures.governing(record)
    if check is None or "why" not in check:
        return []

    return [document.paragraph(words.sentence(f"{figures.title(check)}: {check['why']}")), Spacer(1, GAP)]


def headline(check: figures.Check | None, word: str) -> tuple[str, str]:
    """The largest thing on the page: a percentage, a margin, or the verdict's word."""
    if check is None or check["kind"] == "state" or (check["kind"] == "strength" and check["utilisation"] is None):
        return word, ""
    said = figures.percentage(check) if check["kind"] == "strength" else figures.left(check, check["unit"])
    first, _, rest = said.replace(FIXED, " ").partition(" ")

    return first, rest


def spread_words(check: figures.Check | None) -> str:
    if check is not None and "why" in check:
        return f": {check['why']}"
    if check is None or check["kind"] != "strength":
        return ""
    worst = figures.percentage(check.get("worst") or {})
    reach = f", up to {worst}" if worst not in (figures.NOTHING, figures.percentage(check)) else ""

    return f", {figures.demand(check)} of {figures.capacity(check)}{reach}"


def seal(sheet: Sheet, record: Record, x: float) -> None:
    radius = SEAL_RADIUS
    y = HEAD - 24 * mm
    sheet.line_of(PLUMB, 2.2, x, HEAD, x, y + radius)
    sheet.line_of(PLUMB, 1.6, x - 6, y - radius + 2, x - 9, y - radius - 9)
    sheet.line_of(PLUMB, 1.6, x + 6, y - radius + 2, x + 9, y - radius - 9)
    rim = f"SEALED · {words.day(record['sealed_at']).upper()} · {'DEMONSTRATION · ' if record['demonstration'] else ''}"
    draw_seal(sheet, f"{record['number']:04d}", rim, x, y, radius)


def shortened(text: str, face: str, size: float, widest: float) -> str:
    """One line that fits; the whole sentence stands in the table of checks."""
    if faces.width(text, face, size) <= widest:
        return text
    while text and faces.width(text + "…", face, size) > widest:
        text = text[:-1]

    return text.rstrip() + "…"


def best_fit(document: Document, record: Record, height: float) -> Ruled:
    """The worst checks, as many as stand beside the signatures."""
    ranked = figures.every_check(record["evaluation"])
    whole = checks_table(document, ranked, min(MOST_CHECKS, len(ranked)))
    whole.wrap(WIDTH - PLATE - GAP, HEIGHT)
    tops = list(accumulate(whole._rowHeights))
    room = height if len(ranked) <= MOST_CHECKS and tops[-1] <= height else height - tops[0]
    count = max(sum(top <= room for top in tops) - 1, min(FEWEST_CHECKS, len(ranked)))

    return checks_table(document, ranked, min(count, len(ranked), MOST_CHECKS))


def checks_table(document: Document, ranked: list[Any], count: int) -> Ruled:
    rows: list[list[Any]] = [[mark(check["verdict"], 9), figures.title(check), figures.demand(check),
                              figures.capacity(check), figures.used(check)] for check in ranked[:count]]
    rest = len(ranked) - count
    if rest:
        rows.append(["", f"and {rest} more: see Checks", "", "", ""])
    if not ranked:
        rows.append(["", "No check could be computed.", "", "", ""])

    return document.table(["", "Check", "Demand", "Limit", "Used"], rows, [6, 35, 20, 20, 29], frozenset({2, 3, 4}),
                          WIDTH - PLATE - GAP)


def plumb_end(sheet: Sheet, height: float) -> None:
    """Nothing could be drawn: the line ends here with its bob."""
    x = WIDTH * AT
    sheet.line_of(PLUMB, 2.2, x, HEAD + height, x, height / 2)
    sheet.setFillColor(PLUMB)
    bob = sheet.beginPath()
    bob.moveTo(x - 5, height / 2)
    bob.lineTo(x + 5, height / 2)
    bob.lineTo(x, 0)
    bob.close()
    sheet.drawPath(bob, stroke=0, fill=1)

