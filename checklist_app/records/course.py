"""What happened, in order of the devices' clocks: begun, signed, changed afterwards, stopped, gone on, closed."""

from typing import Any

from checklist_app.checklists.entry import Entry
from checklist_app.checklists.guests import GUEST, told
from checklist_app.checklists.naming import prompt_words, value_words
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
    entries = sorted(now.folded.known.values(), key=lambda entry: (entry.at, entry.device, entry.counter))
    signed = next((entry.at for entry in entries if entry.type == "signature"), "")
    told = [(entry, milestone(world, now, entry)) for entry in entries if entry.type in MILESTONES]
    told += [(entry, change(world, now, entry)) for entry in entries if signed and entry.at >= signed]

    return [{"at": entry.at, "words": said, "by": name_of(world, entry.author), "entry": entry.digest,
             "kind": entry.type}
            for entry, said in sorted(told, key=lambda one: (one[0].at, one[0].device, one[0].counter)) if said]


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
    old = list(dict.fromkeys(value_words(one.value, world) for one in before if one.value != entry.value))
    if not old:
        return ""

    return sentence(f"{prompt_words(now.procedure, entry.path)} changed: {' / '.join(old)} to "
                    f"{value_words(entry.value, world)}")
