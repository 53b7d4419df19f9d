"""Entries that a page's script made: their exact bytes come in hidden fields, and nothing about them is altered."""

from collections.abc import Iterable

from checklist_app.checklists.canonical import digest
from checklist_app.checklists.entry import Entry, Unusable, read
from checklist_app.checklists.prompts import Asked, Form
from checklist_app.checklists.values import parts_named

SCRIPTED = "entries"
"""Sent by the page's script when it spoke for every prompt of the form: no plain field is read again."""
ENTRY, PART = "entry", "part"
ALWAYS = frozenset({"withdrawn"})
OTHER_ANSWERS = frozenset({"dont_know", "not_used"})


def left_to_read(form: Form, asked: Iterable[Asked]) -> tuple[Asked, ...]:
    """The prompts whose plain fields are to be read: all that the page's script did not speak for."""
    if SCRIPTED in form:
        return ()
    spoken = set()
    for text in form.get(ENTRY, ()):
        try:
            entry = read(text.encode("utf-8", "surrogatepass"))
        except Unusable:
            continue
        spoken.add((entry.about, entry.path))
    return tuple(prompt for prompt in asked if (prompt.about, prompt.path) not in spoken)


def brought(form: Form, asked: Iterable[Asked], author: str) -> tuple[
        tuple[Entry, ...], dict[str, bytes], dict[str, str]]:
    """The entries and parts of a form, and what is wrong with others, by the name of their field.

    Args:
        form: What was sent.
        asked: The prompts that this form asks; an entry about anything else is refused.
        author: Id of the person who is signed in.
    """
    prompts = {(prompt.about, prompt.path): prompt for prompt in asked}
    entries: dict[str, Entry] = {}
    faults = {}
    for text in form.get(ENTRY, ()):
        try:
            entry = read(text.encode("utf-8", "surrogatepass"))
        except Unusable as error:
            faults[ENTRY] = f"What the page sent is no answer: {error}."
            continue
        words = _refusal(entry, prompts.get((entry.about, entry.path)), author)
        if words:
            faults["/".join(entry.path)] = words
        else:
            entries[entry.digest] = entry

    return tuple(entries.values()), _parts(form, entries.values()), faults


def _refusal(entry: Entry, prompt: Asked | None, author: str) -> str:
    """Why an entry is not taken from this form; empty when it is."""
    if prompt is None:
        return "This page does not ask that."
    if entry.author != author:
        return "Somebody else was signed in when this was answered. Answer it again."
    if entry.type in ALWAYS or (entry.type in OTHER_ANSWERS and prompt.other_answers):
        return ""
    if entry.type != prompt.type or entry.value.get("unit", prompt.unit) != prompt.unit:
        return "This is an answer to another question. Load the page again."
    if prompt.choices and entry.value.get("text") not in prompt.choices:
        return "Choose one of the answers shown."
    return ""


def _parts(form: Form, entries: Iterable[Entry]) -> dict[str, bytes]:
    """The parts that these entries name; any other that came along is left."""
    came = {digest(data): data for data in (text.encode("utf-8", "surrogatepass") for text in form.get(PART, ()))}
    named = {name for entry in entries for name in parts_named(entry.value)}
    return {name: data for name, data in came.items() if name in named}
