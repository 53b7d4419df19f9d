"""A sealed text on paper: first page, answers, checks, gear, assumptions, photographs, sign-offs, course, digests."""

from collections.abc import Callable, Mapping
from datetime import datetime
from typing import Any

from checklist_app.checklists.canonical import canonical, digest
from checklist_app.checklists.words import clock
from checklist_app.records import figures, pictures
from checklist_app.records.pdf import checks, evidence, sections
from checklist_app.records.pdf.document import Document
from checklist_app.records.pdf.first_page import first_page
from checklist_app.records.pdf.slung import slung
from checklist_app.records.pdf.views import other_views

AUTHOR = "Checklist app"
SUPPORT = ("The checks support, and do not replace, a competent person's plan, the makers' plates and local law.")
BANNER = "DEMONSTRATION. None of this was done."
Part = Callable[[str], bytes | None]


def paper(record: Mapping[str, Any], part: Part) -> bytes:
    """The PDF of a record. The same text and the same parts give the same bytes.

    Args:
        record: The sealed text.
        part: Gives photographs and drawn signatures by their digests.
    """
    name = digest(canonical(record))
    document = Document(title(record), AUTHOR, name, datetime.fromisoformat(record["sealed_at"]), foot(record, name),
                        BANNER if record["demonstration"] else "")
    drawn = [one["ink"] for one in (*record["signoffs"], *record.get("guests", ())) if one["ink"]]
    inks = {name: part(name) or b"" for name in drawn}
    picture = pictures.drawing(record["drawing"]) if record["drawing"] is not None else None
    first_page(document, record, inks, picture)
    document.next_page()
    verdicts = {check["name"]: str(check["verdict"]) for check in record["evaluation"]["checks"]}
    if record["kind"] == "supplement":
        sections.supplement(document, record)
    other_views(document, picture, verdicts)
    slung(document, record)
    sections.answers(document, record)
    checks.checks(document, record)
    sections.gear(document, record)
    sections.sentences(document, "Assumptions", record["evaluation"]["assumptions"], "None was needed.")
    evidence.photographs(document, record, part)
    evidence.sign_offs(document, record, inks)
    sections.course(document, record)
    sections.sentences(document, "Cautions", record["evaluation"]["cautions"], "")
    sections.sentences(document, "What this record does not show", record["limits"], "")
    sections.digests(document, record, name)

    return document.pdf()


def title(record: Mapping[str, Any]) -> str:
    kind = "Supplement" if record["kind"] == "supplement" else "Record"
    return f"{kind} {record['number']:04d}: {record['title']}, {record['operation_words'].lower()}"


def foot(record: Mapping[str, Any], name: str) -> str:
    after = f", after {figures.grouped(record['previous'], 16)} …" if record["number"] > 1 else ", the first one"
    return f"{SUPPORT}\nSealed {clock(record['sealed_at'])}. {figures.grouped(name)} …{after}"
