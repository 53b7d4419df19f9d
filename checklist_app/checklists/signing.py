"""A signature becomes an entry and its statement; or it is refused, for everybody, with what comes first."""
from collections.abc import Iterable
from dataclasses import dataclass

from checklist_app.checklists import ink
from checklist_app.checklists.answer import Person, Request
from checklist_app.checklists.canonical import digest
from checklist_app.checklists.entry import Entry, make
from checklist_app.checklists.fold import seen
from checklist_app.checklists.holds import HoldState, path
from checklist_app.checklists.running import Running
from checklist_app.checklists.signers import MaySign, meaning
from checklist_app.checklists.statement import Signer, statement
from checklist_app.checklists.values import Value
from checklist_app.checklists.world import World

PIN, PHONE_KEY, LOCK, SHARED_LOCK = "pin", "phone-key", "phone-lock", "shared-lock"
"""How a signer was verified: by the server, to which he gave his PIN, or by a phone that has a key of his, which his
PIN opens or the phone's own screen lock. A shared lock's key may be copied to other devices of its owner."""
HOW_WORDS = {PIN: "PIN", PHONE_KEY: "PIN on enrolled phone",
             LOCK: "screen lock of the enrolled phone (user verified)",
             SHARED_LOCK: "screen lock (user verified), by a key that its owner's devices share"}
LOCKS = frozenset({LOCK, SHARED_LOCK})
BY_KEY = LOCKS | {PHONE_KEY}


@dataclass(frozen=True)
class Signed:
    """The entries to keep and their parts."""

    keep: tuple[Entry, ...]
    parts: dict[str, bytes]


def sign(request: Request, world: World, running: Running, state: HoldState, person: Person, how: str,
         may: MaySign, key: str = "") -> Signed:
    """The sign-off of a person whose PIN was checked, over exactly what is shown now.

    With a phone's `key` the entry still lacks its signature: the phone makes it over the statement's bytes and adds it.
    """
    lift_class = state.lift_class
    if lift_class is None:
        raise ValueError("nobody signs while the class of the lift is not settled")
    signer = Signer(person.id, person.name, may.capacity, may.until, request.device, request.at, key)
    shown = statement(world, running, state.seen, signer, meaning(state, lift_class), may.own_work)
    parts = {digest(shown): shown}
    value: Value = {"type": "signature", "statement": digest(shown), "capacity": may.capacity, "how": how}
    if key:
        value["key"] = key
    if (drawn := ink.made(request.one("ink"), request.one("typed"), request.salt)) is not None:
        value["ink"] = drawn[0]
        parts[drawn[0]] = drawn[1]

    where = path(state.hold, may.capacity)
    said = make(("task", running.id), where, value, seen(running.folded, where), person.id, request.device,
                request.counter, request.at)
    return Signed((said, *_taken_up(request, running, state.sent_back, person)), parts)


def _taken_up(request: Request, running: Running, sent_back: Iterable[Entry], person: Person) -> tuple[Entry, ...]:
    """Whoever signs has seen what was sent back: it waits for nobody any more."""
    waiting = tuple(sent_back)
    if not waiting:
        return ()
    where = waiting[0].path
    return (make(("task", running.id), where, {"type": "withdrawn"}, seen(running.folded, where), person.id,
                 request.device, request.counter + 1, request.at),)
