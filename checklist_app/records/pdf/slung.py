"""How the load was slung or lashed, on paper: rules, a line for each leg, hook or lashing, what is from memory."""

from collections.abc import Mapping
from typing import Any

from checklist_app.records import slung as told
from checklist_app.records.pdf.document import Document
from checklist_app.records.pdf.lashed import lashed
from checklist_app.records.saying import says_of

Record = Mapping[str, Any]
HEAD = ("Leg", "Hitch", "Length", "From vertical", "Pull", "Of the load", "Taken off", "Weakest", "Used")
SHARES = (20, 15, 15, 16, 14, 13, 22, 24, 37)


def slung(document: Document, record: Record) -> None:
    """Nothing is written of a lift of which no leg could be worked out, but the rules it was asked by."""
    rules, legs, hooks = told.rules(record), told.legs(record), told.hooks(record)
    if not rules and not legs:
        return
    document.add(document.heading(2, says_of(record).how))
    document.add(*(document.paragraph(words) for words in rules))
    lashed(document, record)
    if legs:
        document.add(document.table(HEAD, [list(leg) for leg in legs], SHARES, frozenset({2, 3, 4, 5})))
    if hooks:
        document.add(document.table(["Hook", "Hangs on it", "From vertical", "Its hoist used"],
                                    [list(hook) for hook in hooks], [40, 30, 30, 40], frozenset({1, 2})))
    document.add(*(document.paragraph(words) for words in told.spread(record)))
    for words in told.from_memory(record):
        document.add(document.paragraph(f"From memory, can only be stricter: {words}", "note"))
