"""The parts of a record that are words and tables."""

from collections.abc import Iterable, Mapping, Sequence
from itertools import groupby
from typing import Any

from checklist_app.checklists.words import clock, sentence
from checklist_app.records import figures
from checklist_app.records.pdf.document import Document
from checklist_app.records.said import ANSWERED, FILLED, OPEN

Record = Mapping[str, Any]


def answers(document: Document, record: Record) -> None:
    """Every answer, stage by stage; what was not answered is named below."""
    document.add(document.heading(2, "Answers"))
    for stage, group in groupby(record["answers"], lambda one: str(one["stage"])):
        asked = list(group)
        rows = [answer(one, record["day"]) for one in asked if one["state"] != OPEN]
        document.add(document.heading(3, stage))
        if rows:
            document.add(document.table(["Question", "Answer", "Said by"], rows, [66, 64, 42]))
        unanswered = [one["question"] for one in asked if one["state"] == OPEN]
        if unanswered:
            document.add(document.paragraph(f"Not answered: {'; '.join(unanswered)}.", "note"))


def answer(one: Mapping[str, Any], on: str) -> Sequence[str]:
    """Question; answer with what was said beside it; by whom and when."""
    said = ", ".join(filter(None, (one["answer"], one["note"])))
    if one["state"] not in (ANSWERED, FILLED):
        said = f"{said} ({one['state']})"

    return one["question"], said, f"{one['by']}, {moment(one['at'], on)}" if one["by"] else "nobody, taken over"


def moment(at: str, on: str) -> str:
    """The time of day; with its date when it was another day than the lift's."""
    return f"{at[11:16]} UTC" if at[:10] == on else clock(at)


def gear(document: Document, record: Record) -> None:
    """What was in the path of the load, the rating that was used, and how it stood that day."""
    document.add(document.heading(2, "Gear as it was that day"))
    rows = [[one["slot"], one["tag"], ", ".join(filter(None, (one["kind"], one["length"]))), one["plate"], one["used"],
             one["state"], looked(one)] for one in record["kit"]]
    if not rows:
        document.add(document.paragraph("No gear was picked."))
        return
    document.add(document.table(["Where", "Tag", "What", "Plate", "Rating used", "State", "Looked at"], rows,
                                [24, 19, 26, 26, 20, 34, 28]))


def looked(one: Mapping[str, Any]) -> str:
    return f"{one['looked_by']}\n{one['looked_at'][11:16]} UTC" if one["looked_by"] else "nobody said so"


def sentences(document: Document, heading: str, said: Iterable[str], none: str) -> None:
    """A heading and one paragraph for each sentence."""
    document.add(document.heading(2, heading))
    said = list(said)
    document.add(*(document.paragraph(sentence(one)) for one in said or [none]))


def course(document: Document, record: Record) -> None:
    """What happened, by the clocks of the devices."""
    document.add(document.heading(2, "What happened"))
    rows = [[moment(event["at"], record["day"]), event["words"], event["by"]] for event in record["events"]]
    document.add(document.table(["When", "What", "Who"], rows, [34, 104, 34]))


def supplement(document: Document, record: Record) -> None:
    """That this comes after a record, and what it adds."""
    count = len(record["late"])
    document.add(document.heading(2, "This is a supplement"))
    document.add(document.paragraph(
        f"The task was sealed before. {count} {'entry' if count == 1 else 'entries'} came after the seal; this text "
        "tells the whole task as it stands with them. The record before stays as it is: "
        f"{figures.grouped(record['of'], 64)}"))


def digests(document: Document, record: Record, name: str) -> None:
    """By what the record is known, what it follows, and what it covers."""
    document.add(document.heading(2, "Digests"))
    first = record["number"] == 1
    rows = [["This record", figures.grouped(name, 64)],
            ["Server that began the chain" if first else f"Record {record['number'] - 1:04d} before it",
             figures.grouped(record["previous"], 64)]]
    rows += [] if first else [["PDF of the record before", figures.grouped(record["previous_pdf"], 64)]]
    rows += [[f"Statement signed by {one['name']}", figures.grouped(one["statement"], 64)]
             for one in record["signoffs"]]
    rows += [["Covers", f"{len(record['entries'])} entries, {len(record['parts'])} parts, receipts up to number "
                        f"{record['receipts']['number']}"],
             ["Made by", f"version {record['code']}, procedure {record['procedure']}"]]
    rows += [["Declared lost", f"{len(record['lost'])} photographs or texts"]] if record["lost"] else []
    rows += [["Doubt", f"entry {figures.grouped(one['entry'], 16)} …: {one['words']}"] for one in record["doubts"]]
    document.add(document.table(["What", "SHA-256, or number"], rows, [46, 126]))
    if document.replaced:
        codes = ", ".join(sorted(f"U+{ord(one):04X}" for one in document.replaced))
        document.add(document.paragraph(f"Printed as their code, no face of this paper has them: {codes}.", "note"))
