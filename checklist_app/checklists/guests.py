"""A guest signs: somebody whom the register does not know, by name and hand, and whoever is signed in has seen it.

It takes the place of no other signature: nobody checked who the guest is or what he may decide. Only where a hold
point asks for a guest himself, such as the driver at a hand-over, is his hand what is asked for.
"""
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any

from checklist_app.checklists import ink
from checklist_app.checklists.answer import Request
from checklist_app.checklists.canonical import NotCanonical, parse
from checklist_app.checklists.entry import Entry
from checklist_app.checklists.holds import GUEST, HoldState, heads, path
from checklist_app.checklists.made import Made
from checklist_app.checklists.running import Running
from checklist_app.checklists.world import World

FORM = "guest/1"
LONGEST = 80
AS_WHAT = ("operator", "signaller", "haulier", "driver", "for the owner of the load", "for the customer",
           "as a visitor")
MEANING = ("I was shown what is written here: load, gear, numbers and checks. I know what is planned and what my part "
           "in it is.")


@dataclass(frozen=True)
class Guest:
    """One guest's signature: who and for whom, in his own words; `stands` while what he was shown is what is there."""

    entry: Entry
    name: str
    firm: str
    meaning: str
    stands: bool

    @property
    def capacity(self) -> str:
        """As what he signed."""
        return str(self.entry.value["text"])

    @property
    def who(self) -> str:
        """Name, firm and as what, in one line."""
        return ", ".join(one for one in (self.name, self.firm, self.capacity) if one)


def guests(world: World, running: Running, state: HoldState) -> Iterator[Guest]:
    """The guests who signed at a hold point, in the order of the devices' clocks."""
    for entry in sorted(heads(running, state.hold, GUEST), key=lambda one: (one.at, one.digest)):
        said = told(world.part(entry.value["part"])) if entry.type == GUEST else None
        if said is not None:
            yield Guest(entry, said["name"], said["firm"], said["meaning"],
                        entry.value["shown"] == state.seen.fingerprint)


def told(part: bytes | None) -> Mapping[str, str] | None:
    """What a guest wrote; none when the part is not here or is none of this kind."""
    try:
        said = parse(part) if part is not None else None
    except NotCanonical:
        return None
    facts = said.get("facts") if isinstance(said, dict) and said.get("schema") == FORM else None
    names = ("name", "firm", "meaning")
    if not isinstance(facts, dict) or not all(isinstance(facts.get(name), str) for name in names):
        return None
    return facts


def ways(state: HoldState) -> tuple[str, ...]:
    """As what a guest may sign here."""
    return (state.hold.guest,) if state.hold.guest else AS_WHAT


def meaning(state: HoldState) -> str:
    """What a guest's signature says: the hold's own words where it asks for him."""
    return state.hold.meaning if state.hold.guest else MEANING


def faults(request: Request, state: HoldState) -> dict[str, str]:
    """What is missing from the form, by its field."""
    found = {}
    if not request.one("guest"):
        found["guest"] = "Write the guest's name."
    elif request.person is not None and request.one("guest").casefold() == request.person.name.casefold():
        found["guest"] = "The guest and the witness are two persons. Who has an account signs with his own PIN."
    if request.one("as") not in ways(state):
        found["as"] = "Choose as what the guest signs."
    if not ink.drawn(request.one("ink")):
        found["ink"] = "The guest draws the signature by hand."
    if not request.one("seen"):
        found["seen"] = "Tick that you saw it. Without a witness a guest does not sign."
    return found


def signed(request: Request, running: Running, state: HoldState) -> Made:
    """The guest's signature over what is shown, said by the witness: nothing replaces it."""
    made = Made(request)
    facts: dict[str, Any] = {"name": request.one("guest")[:LONGEST], "firm": request.one("firm")[:LONGEST],
                             "meaning": meaning(state)}
    value = {"type": GUEST, "text": request.one("as"), "part": made.document(FORM, facts),
             "shown": state.seen.fingerprint}
    drawn = ink.made(request.one("ink"), "", f"{request.salt}-{GUEST}")
    if drawn is None:
        raise ValueError("a guest's signature without a hand")
    value["ink"] = drawn[0]
    made.parts[drawn[0]] = drawn[1]
    made.say(("task", running.id), path(state.hold, GUEST), value)
    return made
