"""How the load was lashed, on paper: friction and hand-over in words, a line for each lashing and each block."""

from collections.abc import Mapping
from typing import Any

from checklist_app.records import lashed as told
from checklist_app.records.pdf.document import Document

LASHING = ("", "Tag", "How", "From (m)", "To (m)", "Angles", "Rated", "Pull", "Used")
SHARES = (12, 28, 74, 100, 100, 46, 50, 44, 30)
BLOCK = ("Block", "Keeps it from going", "What", "Touches at (m)", "Holds")
POINTS = ("Points: forwards / to the left / upwards from the middle between its feet. Angles: to the deck / from the "
          "length of the vehicle. Rated: the weakest of label, anchor and what it is hooked to. Pull: at the greatest "
          "push that the rules ask for.")


def lashed(document: Document, record: Mapping[str, Any]) -> None:
    """Nothing is written where nothing was lashed."""
    document.add(*(document.paragraph(words) for words in told.sentences(record)))
    if lashings := told.lashings(record):
        table = document.table(LASHING, [list(each) for each in lashings], SHARES, frozenset({6, 7, 8}))
        document.add(document.together(table, document.paragraph(POINTS, "photo")))
    if blocks := told.blocks(record):
        document.add(document.table(BLOCK, [list(each) for each in blocks], [12, 30, 60, 45, 25], frozenset({4})))
