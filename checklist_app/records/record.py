"""The text of a record: everything that stands, in the words it will be read in, and all it takes to work it out again.

It is canonical JSON; its digest is the record. The PDF, the record's page and the search are made from it alone.
"""

from collections.abc import Iterable, Mapping
from typing import Any

from checklist_app.checklists.again import evaluated
from checklist_app.checklists.closing import closing_entry
from checklist_app.checklists.entry import Entry
from checklist_app.checklists.fold import removes_row
from checklist_app.checklists.frozen import freeze
from checklist_app.checklists.holds import hold_states
from checklist_app.checklists.naming import prompt_words
from checklist_app.checklists.running import Running, running
from checklist_app.checklists.statement import evaluation
from checklist_app.checklists.values import parts_named, words
from checklist_app.checklists.world import World
from checklist_app.operations.drawing import Drawing
from checklist_app.records.code import code
from checklist_app.records.course import events
from checklist_app.records.kit import kit
from checklist_app.records.limits import limits
from checklist_app.records.people import name_of
from checklist_app.records.pictures import sealed
from checklist_app.records.said import answers
from checklist_app.records.signed import guests_signed, sign_offs

FORM = "record/1"
Record = dict[str, Any]


class NoClosing(ValueError):
    """The task is not closed, or two closings stand: there is nothing to seal yet."""


def build(world: World, task: str) -> Record:
    """The text of a task's record, without its place in the chain.

    Raises:
        NoClosing: If nobody has closed the task.
    """
    now = running(world, task)
    closed = closing_entry(now.folded)
    if closed is None or ("closing",) in now.folded.disputed:
        raise NoClosing("it is not closed yet" if closed is None else "two different closings stand: settle them first")
    entries = sorted(now.folded.known.values(), key=lambda entry: entry.digest)
    inputs = answered(now)
    gear = freeze(world, inputs, now.day)
    again = evaluated(task, inputs, gear, now.day)
    found = again.report
    picture = again.evaluation.picture
    states = hold_states(world, now)

    return {
        "form": FORM, "about": ["task", task], "code": code(), "procedure": now.procedure.key,
        "operation": now.procedure.operation, "operation_words": now.procedure.words, **heading(world, now),
        "verdict": str(found["verdict"]), "governs": governing(found), "lift_class": str(found["class"] or ""),
        "closing": {"text": closed.value["text"], "words": words(world.part(closed.value.get("part", ""))),
                    "by": name_of(world, closed.author), "at": closed.at, "entry": closed.digest},
        "entries": [entry.digest for entry in entries], "missing": sorted(now.folded.missing),
        "inputs": inputs, "gear": gear, "evaluation": evaluation(found),
        "drawing": sealed(picture) if isinstance(picture, Drawing) else None,
        "answers": answers(world, now), "kit": kit(world, now, found), "signoffs": sign_offs(world, now, states),
        "guests": [guest for state in states for guest in guests_signed(world, now, state)],
        "events": events(world, now), "photos": photos(world, now), "people": people(world, entries),
        "limits": limits(now, found), "receipts": dict(world.cursor()), **parts(world, entries),
    }


def heading(world: World, now: Running) -> dict[str, str]:
    """What the record is called: load, build state, place and day."""
    load, place = now.load, now.items.get(("place",))
    title = "No load picked" if load is None else load.title
    if load is not None and load.id.lower() not in title.lower().replace(" ", "-"):
        title = f"{title} {load.id}"
    landing = now.folded.values.get(("landing",), {}).get("part", "")
    where = [place.title if place is not None else "", words(world.part(landing)) if landing else ""]
    state = now.folded.values.get(("build_state",), {}).get("text", "")

    return {"title": title, "build_state": state, "load": load.subject if load is not None else "",
            "place": " to ".join(one for one in where if one), "day": now.day}


def answered(now: Running) -> list[dict[str, Any]]:
    """Every answer and row that stands, with the entry that says so: what the evaluation was made from."""
    standing = [(path, now.folded.heads[path][0]) for path in now.folded.values]
    for group, ids in now.folded.rows.items():
        for row in ids:
            added = [entry for entry in now.folded.heads.get((group, row), ()) if not removes_row(entry)]
            standing += [((group, row), entry) for entry in added[:1]]

    return [{"path": list(path), "value": dict(entry.value), "entry": entry.digest} for path, entry in sorted(standing)]


def governing(found: Mapping[str, Any]) -> str | None:
    """The check that decides, by its full name; none where nothing could be computed."""
    return None if found["governs"] is None else str(found["governs"])


def photos(world: World, now: Running) -> list[dict[str, Any]]:
    """The photographs that stand, in the order of their prompts."""
    return [{"part": entry.value["part"], "words": prompt_words(now.procedure, path), "at": entry.at,
             "by": name_of(world, entry.author), "here": world.has_part(entry.value["part"])}
            for path, heads in now.folded.heads.items() for entry in heads if entry.type == "photo"]


def people(world: World, entries: Iterable[Entry]) -> list[dict[str, str]]:
    """Everybody who said something, by id and name."""
    return [{"id": person, "name": name_of(world, person)} for person in sorted({entry.author for entry in entries})]


def parts(world: World, entries: Iterable[Entry]) -> dict[str, list[str]]:
    """Digests of the parts that are here, that are declared lost, and that have not arrived."""
    entries = list(entries)
    named = {part for entry in entries for part in parts_named(entry.value)}
    lost = {str(entry.value["part"]) for entry in entries if entry.type == "lost"}
    here = {part for part in named if world.has_part(part)}

    return {"parts": sorted(here), "lost": sorted(lost - here), "awaited": sorted(named - here - lost)}
