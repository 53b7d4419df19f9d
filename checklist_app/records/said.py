"""The answers of a record: stage by stage, each with how it is known, who said it and when."""

from collections import Counter
from collections.abc import Iterator
from typing import Any

from checklist_app.checklists.answered_words import answer_words
from checklist_app.checklists.naming import prompt_words
from checklist_app.checklists.places import Place, places
from checklist_app.checklists.running import Running
from checklist_app.checklists.values import Value, words
from checklist_app.checklists.words import sentence
from checklist_app.checklists.world import World
from checklist_app.operations.task import Key
from checklist_app.records.people import name_of

ANSWERED, FILLED, DISPUTED, OPEN, UNREADABLE = "answered", "from the register", "two answers", "open", "cannot be read"
WITH_REASON = frozenset({"dont_know", "not_used"})


def answers(world: World, now: Running) -> list[dict[str, Any]]:
    """Every question that was asked, answered or not; one that a stage asks twice says under what."""
    told = [answer(world, now, place) for place in places(now.procedure, now.folded) if now.is_asked(place)]
    times = Counter((one["stage"], one["question"]) for one in told)
    return [one | {"question": f"{one['step']}: {one['question']}"} if times[one["stage"], one["question"]] > 1 else one
            for one in told]


def answer(world: World, now: Running, place: Place) -> dict[str, Any]:
    state, said, note = found(world, now, place)
    heads = now.folded.heads.get(place.path, ()) if state not in (OPEN, FILLED) else ()

    return {"stage": place.stage.words, "step": place.step.words, "path": list(place.path),
            "question": sentence(prompt_words(now.procedure, place.path)).rstrip("."), "state": state, "answer": said,
            "note": note, "by": ", ".join(dict.fromkeys(name_of(world, entry.author) for entry in heads)),
            "at": max((entry.at for entry in heads), default=""), "entries": [entry.digest for entry in heads]}


def found(world: World, now: Running, place: Place) -> tuple[str, str, str]:
    """State, answer and note of one question."""
    path, value = place.path, now.folded.values.get(place.path)
    if path in now.folded.disputed:
        differing = (answer_words(world, now, path, entry.value) for entry in now.folded.disputed[path])
        return DISPUTED, " / ".join(differing), ""
    if path in now.faults and value is not None:
        return UNREADABLE, answer_words(world, now, path, value), now.faults[path]
    if value is not None:
        none = place.prompt.none_words if value["type"] == "not_used" else ""
        return ANSWERED, none or answer_words(world, now, path, value), "; ".join(notes(world, now, place, value))
    fill = now.read.sources.get(Key(place.prompt.name, now.read.labels.get(place.row)))

    return (FILLED, filled(now, place, fill.text), fill.source) if fill is not None else (OPEN, "", "")


def filled(now: Running, place: Place, text: str) -> str:
    entry = now.table.entries.get(place.prompt.name)
    return f"{text} {entry.unit}".strip() if entry is not None else text


def notes(world: World, now: Running, place: Place, value: Value) -> Iterator[str]:
    """What was said beside an answer: a reason, that it was looked at and felt."""
    reason = words(world.part(value.get("part", ""))) if value["type"] in WITH_REASON else ""
    if reason and reason.casefold() != place.prompt.none_words.casefold():
        yield reason
    felt = now.folded.values.get(place.felt_path) if place.prompt.felt else None
    if felt is not None:
        yield {"yes": "looked at and felt", "no": "looked at: not in order"}.get(felt["text"], "could not be seen")
