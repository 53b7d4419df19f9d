"""A photograph on the paper, or the sentence that says why it is not there."""

from reportlab.platypus import Flowable

from checklist_app.records.pdf.canvas import picture
from checklist_app.records.pdf.document import Document


def photograph(document: Document, jpeg: bytes, alt: str, widest: float, highest: float) -> Flowable:
    """The photograph as large as the box allows, in its own proportions."""
    try:
        found = picture("photo", jpeg)
    except ValueError:
        return document.paragraph(f"{alt}: this file cannot be printed here. It is kept under its digest.", "note")
    share = min(widest / found.width, highest / found.height)
    width, height = found.width * share, found.height * share

    return document.figure(width, height, alt, lambda sheet: sheet.photograph(jpeg, 0, 0, width, height))
