"""What proves what: every comparison of the engineering with a figure of somebody else, for anybody to read.

The table is written by `python -m tests.mechanics.proofs` from the cases that the tests run, and a test finds it stale.
"""

import json
from collections import Counter
from functools import cache
from itertools import groupby
from pathlib import Path
from typing import Any

from flask import Blueprint, Response

from checklist_app.web.access import everybody
from checklist_app.web.pages import frame_of, page

FILE = Path(__file__).with_name("proofs.json")
MEANING = (
    ("published", "printed in the source named; ours agrees to half a unit of its last digit, or it says how far"),
    ("derived from published figures", "the source prints the figures that go in; what comes out follows by statics"),
    ("reference library", "a general library, or a physics engine, works the same out by other means"),
    ("worked by hand", "by ourselves, by another way than the app's; nobody printed it"),
    ("common practice, no source", "what the trade does; nobody was found who printed it"),
    ("from memory, stricter only", "not read in the source; it can forbid, never allow"),
)

blueprint = Blueprint("proofs", __name__)


@blueprint.get("/proofs")
@everybody
def proofs() -> Response:
    """All of it on one page, topic by topic."""
    rows = table()
    count = Counter(row["how"] for row in rows)
    topics = [(topic, list(lines)) for topic, lines in groupby(rows, key=lambda row: str(row["topic"]))]

    return page("web/proofs.html", frame_of("What proves what", back="/", back_words="Back to the first page"),
                topics=topics, total=len(rows), counts=[(how, words, count[how]) for how, words in MEANING])


@cache
def table() -> tuple[dict[str, Any], ...]:
    """The lines of the table, those of one topic together."""
    return tuple(sorted(json.loads(FILE.read_text(encoding="utf-8")), key=lambda row: str(row["topic"]).lower()))
