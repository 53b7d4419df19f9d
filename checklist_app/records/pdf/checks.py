"""The checks on paper: all in one table, then each with its working and the source of its limit."""

from collections.abc import Iterable, Mapping
from typing import Any

from reportlab.platypus import Flowable

from checklist_app.checklists.words import sentence
from checklist_app.records import figures
from checklist_app.records.pdf.document import Document
from checklist_app.records.pdf.marks import mark

Record = Mapping[str, Any]
MEANING = {"read": "read in the source", "derived": "derived from it",
           "from memory": "from memory, can only be stricter"}


def checks(document: Document, record: Record) -> None:
    """Table of all checks, those that could not be made, then working and source."""
    found = record["evaluation"]
    document.add(document.heading(2, "Checks"))
    ranked = sorted(found["checks"], key=figures.rank)
    if ranked:
        document.add(table(document, ranked))
    for name, why in named(found, "waiting_words"):
        document.add(document.paragraph(f"Waiting: {figures.spoken(name)}, for {', '.join(why)}."))
    for name, why in named(found, "refused"):
        document.add(document.paragraph(f"Cannot be assessed: {figures.spoken(name)}. {sentence(str(why))}"))
    for what, why in alike(named(found, "not_applicable")):
        document.add(document.paragraph(f"Not applicable: {what}. {sentence(why)}", "note"))
    if ranked:
        document.add(document.heading(2, "Working and sources"))
    printed: dict[str, int] = {}
    for check in ranked:
        document.add(*worked(document, check, printed))


def named(found: Mapping[str, Any], key: str) -> list[tuple[str, Any]]:
    """A map of the report that is keyed by names of checks, as a sealed text holds it."""
    return [(one["name"], one["value"]) for one in found[key]]


def alike(named: Iterable[tuple[str, Any]]) -> list[tuple[str, str]]:
    """Checks that do not apply for one reason, the rows of each in one line.

    >>> alike([("carrier_strength[left]", "none"), ("cg_x_m", "none"), ("carrier_strength[right]", "none")])
    [('what carries the eye, left, right', 'none'), ('centre of gravity, lengthwise', 'none')]
    """
    rows: dict[tuple[str, str], list[str]] = {}
    for name, why in named:
        bare, _, row = name.partition("[")
        rows.setdefault((bare, str(why)), []).extend([row.rstrip("]").replace("_", " ")] if row else [])

    return [(", ".join((figures.spoken(bare), *each)), why) for (bare, why), each in rows.items()]


def table(document: Document, ranked: list[Any]) -> Flowable:
    rows = [[mark(check["verdict"], 9), figures.title(check), figures.demand(check), figures.capacity(check),
             figures.used(check), check["verdict"]] for check in ranked]
    return document.table(["", "Check", "Demand", "Limit", "Used or left", "Verdict"], rows, [6, 62, 24, 24, 32, 26],
                          frozenset({2, 3, 4}))


def worked(document: Document, check: Mapping[str, Any], printed: dict[str, int]) -> list[Flowable]:
    """One check: its pencil lines, what moves it most, the source and how the source is known.

    Lines are numbered through, and a line that stands already is not printed again but named.
    """
    known = [printed[line] for line in check["working"] if line in printed]
    fresh = [line for line in check["working"] if line not in printed]
    printed |= {line: len(printed) + place for place, line in enumerate(fresh, 1)}
    lines = [document.paragraph(f"{printed[line]}. {line}", "line") for line in fresh]
    notes = [f"Follows from {ranges(known)}."] if known else []
    if check.get("driver"):
        notes.append(f"Moved most by: {figures.spoken(str(check['driver']))}.")
    if check.get("worst") and check["kind"] != "state":
        worst = check["worst"]
        notes.append(f"At worst: {figures.measured(worst.get('demand'), check['unit'])} of "
                     f"{figures.measured(worst.get('capacity'), check['unit'])}.")
    notes += [sentence(str(check["reason"]))] if check.get("reason") else []
    notes += [sentence(str(check["note"]))] if check.get("note") else []
    status = str(check["source_status"])
    notes.append(f"Source: {check['source_words'].rstrip('.')} ({MEANING.get(status, status)}).")
    head = document.heading(3, f"{figures.title(check)}: {figures.used(check)}, {check['verdict']}")

    return [head, *lines, document.paragraph(" ".join(notes), "note")]


def ranges(numbers: list[int]) -> str:
    """Numbers of lines, in runs.

    >>> ranges([1, 2, 3, 7])
    'lines 1 to 3, 7'
    """
    runs: list[list[int]] = []
    for number in sorted(numbers):
        if runs and number == runs[-1][-1] + 1:
            runs[-1].append(number)
        else:
            runs.append([number])

    return "lines " + ", ".join(str(run[0]) if len(run) == 1 else f"{run[0]} to {run[-1]}" for run in runs)
