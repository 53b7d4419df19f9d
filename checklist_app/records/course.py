"""What happened: begun, signed, changed afterwards, stopped, gone on, closed.

In the order of what replaces what and of each device's counter; clocks decide only where neither does.
"""

from collections.abc import Iterable, Mapping
from heapq import heapify, heappop, heappush
from itertools import pairwise
from typing import Any

from checklist_app.checklists.answered_words import answer_words
from checklist_app.checklists.entry import Entry
from checklist_app.checklists.guests import GUEST, told
from checklist_app.checklists.naming import prompt_words
from checklist_app.checklists.places import place_of
from checklist_app.checklists.running import Running
from checklist_app.checklists.values import words
from checklist_app.checklists.words import sentence
from checklist_app.checklists.world import World
from checklist_app.records.people import name_of

Event = dict[str, Any]
MILESTONES = frozenset({"begin", "signature", "guest", "stop", "go_on", "send_back", "closing", "lost",
                        "acknowledge"})


def events(world: World, now: Running) -> list[Event]:
    """The course of a task. Answers are told one by one only from the first signature on: then each change matters."""
    entries, told, signed = in_order(now.folded.known.values()), [], False
    for entry in entries:
        signed = signed or entry.type == "signature"
        said = milestone(world, now, entry) if entry.type in MILESTONES else change(world, now, entry) if signed else ""
        if said:
            told.append({"at": entry.at, "words": said, "by": name_of(world, entry.author), "entry": entry.digest,
                         "kind": entry.type})
    return told


def in_order(entries: Iterable[Entry]) -> list[Entry]:
    """Entries after what they replace and after what their device made before; else by the devices' clocks."""
    known = {entry.digest: entry for entry in entries}
    after, waits_for = _following(known)
    ready = [_by_clock(known[name]) for name in known if not waits_for[name]]
    heapify(ready)
    found: list[Entry] = []
    while ready:
        name = heappop(ready)[-1]
        found.append(known[name])
        for later in after[name]:
            waits_for[later] -= 1
            if not waits_for[later]:
                heappush(ready, _by_clock(known[later]))
    left = sorted((known[name] for name in known.keys() - {entry.digest for entry in found}), key=_by_clock)

    return [*found, *left]


def _following(known: Mapping[str, Entry]) -> tuple[dict[str, set[str]], dict[str, int]]:
    """What comes right after each entry, and how many come right before it. A phone that was set back counts twice:
    then two entries may each have to come first, and are told last."""
    before: dict[str, set[str]] = {name: {one for one in entry.replaces if one in known}
                                   for name, entry in known.items()}
    counted = sorted(known.values(), key=lambda entry: (entry.device, entry.counter))
    for one, other in pairwise(counted):
        if one.device == other.device and one.counter < other.counter:
            before[other.digest].add(one.digest)
    after: dict[str, set[str]] = {name: set() for name in known}
    for name, earlier in before.items():
        for one in earlier:
            after[one].add(name)

    return after, {name: len(earlier) for name, earlier in before.items()}


def _by_clock(entry: Entry) -> tuple[str, str, int, str]:
    return entry.at, entry.device, entry.counter, entry.digest


def milestone(world: World, now: Running, entry: Entry) -> str:
    """One act, as a sentence."""
    said = words(world.part(entry.value["part"])) if "part" in entry.value else ""
    beginnings = {"begin": "Begun", "stop": "Stopped", "go_on": "Gone on", "send_back": "Sent back",
                  "lost": "A photograph or text was declared lost", "closing": "Closed",
                  "acknowledge": "A supervisor knows of the sign-off given without knowing"}
    if entry.type == "signature":
        hold = now.procedure.hold(entry.path[1]) if len(entry.path) > 1 else None
        return f"{hold.words if hold else 'Sign-off'} signed as {entry.value['capacity']}."
    if entry.type == GUEST:
        guest = told(world.part(entry.value["part"]))
        return f"{guest['name'] if guest else 'A guest'} signed as a guest: {entry.value['text']}."
    if entry.type == "closing":
        said = ": ".join(one for one in (str(entry.value["text"]), said) if one)

    return sentence(f"{beginnings[entry.type]}{': ' if said else ''}{said}")


def change(world: World, now: Running, entry: Entry) -> str:
    """An answer that was replaced by another one, told as both; empty when nothing changed."""
    if entry.type in MILESTONES or place_of(now.procedure, now.folded, entry.path) is None:
        return ""
    before = [now.folded.known[name] for name in entry.replaces if name in now.folded.known]
    old = list(dict.fromkeys(answer_words(world, now, entry.path, one.value) for one in before
                             if one.value != entry.value))
    if not old:
        return ""

    return sentence(f"{prompt_words(now.procedure, entry.path)} changed: {' / '.join(old)} to "
                    f"{answer_words(world, now, entry.path, entry.value)}")
