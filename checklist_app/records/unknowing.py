"""Signed without knowing: what the server held already when a sign-off came, its signer had not seen, and voids it.

It follows from receipts alone: the number in the statement is how far the phone had heard, the number of the sign-off
is when it came. What lies between them and was said elsewhere is put to what the signer knew; if the sign-off is void
by it, that is told for good, also when it is put right afterwards.
"""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import Any

from checklist_app.checklists.entry import Entry
from checklist_app.checklists.register import REGISTERS
from checklist_app.checklists.running import NotBegun, running
from checklist_app.checklists.statement import shown
from checklist_app.checklists.values import parts_named
from checklist_app.checklists.void import why_void
from checklist_app.checklists.world import MemoryWorld
from checklist_app.records.proof import statement_in
from checklist_app.records.signing_phones import is_by_key
from checklist_app.records.store import Arrival, Store

Statement = Mapping[str, Any]
TASK, PERSON = "task", "person"


@dataclass(frozen=True)
class Unknowing:
    """One such sign-off: its entry, the signer's name, and what voids it, in sentences."""

    entry: Entry
    name: str
    why: tuple[str, ...]


def unknowing(store: Store, task: str) -> list[Unknowing]:
    """Every sign-off of a task that was given without knowing, in the order in which they came."""
    said = store.arrivals((TASK, task))
    found = []
    for arrival in said:
        if arrival.counts and is_by_key(arrival.entry):
            signed = statement_in(store.parts.get(arrival.entry.value["statement"]))
            if signed is not None and (why := _why(store, arrival, signed, said)):
                found.append(Unknowing(arrival.entry, str(signed["person"]["name"]), why))
    return found


def _why(store: Store, sign_off: Arrival, signed: Statement, said: list[Arrival]) -> tuple[str, ...]:
    heard = int(signed["cursor"]["number"])
    around = [*said, *_around(store, said, signed)]
    before = [one for one in around if one.number < sign_off.number and one.counts]
    knew = [one.entry for one in before if one.number <= heard or _his_own(one.entry, sign_off.entry, signed)]
    held = [one.entry for one in before]
    if len(held) == len(knew):
        return ()
    known = set(_void(store, sign_off.entry, signed, knew))

    return tuple(why for why in _void(store, sign_off.entry, signed, held) if why not in known)


def _his_own(entry: Entry, sign_off: Entry, signed: Statement) -> bool:
    """What was made on the signer's phone before, and what the statement itself names."""
    made_before = entry.device == sign_off.device and entry.counter < sign_off.counter
    return made_before or entry.digest in _named(signed)


def _named(signed: Statement) -> set[str]:
    inputs = {str(row["entry"]) for row in signed["inputs"]}
    return inputs | {name for gear in signed["gear"] for name in gear["rests_on"]} | set(signed.get("goings_on", ()))


def _around(store: Store, said: list[Arrival], signed: Statement) -> list[Arrival]:
    """What is said of the items that were signed or are picked, and of the people who said anything."""
    picked = {one.entry.value["subject"] for one in said if one.entry.type == "pick"}
    subjects = {gear["subject"] for gear in signed["gear"]} | picked
    subjects |= {f"{PERSON}/{one.entry.author}" for one in said}
    abouts = [tuple(subject.split("/", 1)) for subject in sorted(subjects)]

    return [one for register, name in abouts if register in REGISTERS for one in store.arrivals((register, name))]


def _void(store: Store, sign_off: Entry, signed: Statement, entries: Iterable[Entry]) -> tuple[str, ...]:
    """Why the sign-off does not cover what these entries say."""
    entries = [*entries, sign_off]
    parts = store.parts.small({name for entry in entries for name in parts_named(entry.value)})
    world = MemoryWorld(entries, parts, today=str(signed["at"])[:10])
    try:
        now = running(world, sign_off.about[1])
    except NotBegun:
        return ()
    hold = now.procedure.hold(str(signed["hold"]))
    if hold is None:
        return ()

    return why_void(world, now, sign_off.digest, signed, shown(world, now, hold))
