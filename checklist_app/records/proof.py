"""What a sign-off made on a phone away from the server must prove before it counts.

The signature shows that a key made in that phone signed exactly these bytes. All else is held against what this server
knows: whose key it is, whether it was still good, how long the phone had not been in touch, and what the signed answers
come to when they are worked out here.
"""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from typing import Any

from checklist_app.checklists.again import evaluated_statement
from checklist_app.checklists.authority import belongs, valid_on
from checklist_app.checklists.canonical import NotCanonical, digest, parse
from checklist_app.checklists.entry import Entry
from checklist_app.checklists.frozen import SignedWorld
from checklist_app.checklists.holds import hold_state
from checklist_app.checklists.procedure import Hold, procedures
from checklist_app.checklists.refusals import refusals
from checklist_app.checklists.running import NotBegun, running
from checklist_app.checklists.signers import unsettled
from checklist_app.checklists.signing import BY_KEY, LOCKS
from checklist_app.checklists.statement import FORM
from checklist_app.checklists.verdicts import MAY_BE_SIGNED, verdicts, within
from checklist_app.mechanics.lift_class import LiftClass
from checklist_app.operations.settings import SIGNS_ALONE
from checklist_app.records.key_tables import SignKey
from checklist_app.records.moments import believed
from checklist_app.records.proved import misfits
from checklist_app.records.screen_lock import count

ZONES = timedelta(days=1)
"""The day of a workshop and the day of a device's time, which is UTC, differ by one at most."""
UNREADABLE = "its statement cannot be read"
STRANGE_KEY = "its key was never registered for this person on this phone"
WENT_BACK = "the screen lock's counter went back: there may be a copy of its key"
SHAPE: Mapping[str, type] = {
    "about": list, "at": str, "capacity": str, "cursor": dict, "day": str, "device": str, "evaluation": dict,
    "gear": list, "hold": str, "inputs": list, "lift_class": str, "meaning": str, "own_work": bool, "person": dict,
    "procedure": str,
}
OTHER_WORDS = "it says something else than its statement"
REVOKED = "the phone was revoked before it came"
NOT_IN_USE = "the account of its signer is not in use"


@dataclass(frozen=True)
class Known:
    """What the server knows around one sign-off.

    Args:
        key: The key that the entry names, if it is registered.
        revoked: Whether its phone was revoked.
        role: Role of the signer's account; empty if it is not in use.
        capacities: What the signer holds, each with its last day.
        authors: Who gave the answers that it covers, as far as they have arrived, by entry.
        contact: When the phone was last in touch before it signed.
        received_at: When the sign-off came.
        counts: Of the other sign-offs by this key that count: the device's counter and the authenticator's.
    """

    key: SignKey | None
    revoked: bool
    role: str
    capacities: Mapping[str, str]
    authors: Mapping[str, str]
    contact: str
    received_at: str
    counts: tuple[tuple[int, int], ...] = ()


def statement_in(data: bytes | None) -> Mapping[str, Any] | None:
    """The statement in a part; none if it is none."""
    try:
        said = parse(data) if data is not None else None
    except NotCanonical:
        return None

    if not isinstance(said, dict) or said.get("form") != FORM:
        return None
    return said if all(isinstance(said.get(name), shape) for name, shape in SHAPE.items()) else None


def unproved(entry: Entry, data: bytes, known: Known) -> str:
    """Why a sign-off by a phone's key counts for nothing; empty when it counts."""
    signed = statement_in(data)
    if signed is None or digest(data) != entry.value["statement"]:
        return UNREADABLE
    try:
        return next(_reasons(entry, data, signed, known), "")
    except (KeyError, TypeError, ValueError, AttributeError, NotBegun):
        return UNREADABLE


def _reasons(entry: Entry, data: bytes, signed: Mapping[str, Any], known: Known) -> Iterator[str]:
    key = known.key
    if key is None or (key.device, key.person) != (entry.device, entry.author):
        yield STRANGE_KEY
        return
    yield from misfits(key, entry.value, data)
    if not belongs(entry, signed) or signed["at"] != entry.at or not entry.value["how"] == key.how in BY_KEY:
        yield OTHER_WORDS
    if key.how in LOCKS and went_back(entry.counter, count(entry.value), known.counts):
        yield WENT_BACK
    if known.revoked:
        yield REVOKED
    if key.ended_at:
        yield f"its key had ended before it came: {key.ended_why}"
    if not known.role:
        yield NOT_IN_USE
    yield from _person(signed, known)
    if alone_too_long(entry.at, known.contact, known.received_at):
        yield f"the phone had not reached the server for more than {SIGNS_ALONE.value:.0f} hours"
    yield from _evaluation(signed)


def _person(signed: Mapping[str, Any], known: Known) -> Iterator[str]:
    """The capacity on the day it was signed, as far as that day is believed; and whether he signed for his own work as
    he may."""
    capacity, day = str(signed["capacity"]), believed(signed["at"], known.contact, known.received_at).date()
    if not valid_on(known.capacities, capacity, day.isoformat()):
        yield f"its signer was not {capacity} on that day"
    own = any(known.authors.get(row["entry"]) == signed["person"]["id"] for row in signed["inputs"]
              if row["path"] != ["begin"])
    if own and not (signed["own_work"] is True and signed["lift_class"] == LiftClass.ROUTINE.value):
        yield "its signer gave answers that it covers: another person signs"


def _evaluation(signed: Mapping[str, Any]) -> Iterator[str]:
    """What the signed answers and items come to here. A phone that works out something else is not believed."""
    procedure = procedures()[signed["procedure"]]
    hold = procedure.hold(signed["hold"])
    if hold is None:
        yield OTHER_WORDS
        return
    yield from _refused(signed, hold)
    report = evaluated_statement(signed).report
    for name, verdict in within(verdicts(report), hold.checks).items():
        if verdict not in MAY_BE_SIGNED:
            yield f"worked out here, {name} is {verdict}"
    order = [each.value for each in LiftClass]
    if report["class"] not in order or order.index(report["class"]) > order.index(signed["lift_class"]):
        yield f"worked out here, the class is {report['class'] or 'not settled'}"


def _refused(signed: Mapping[str, Any], hold: Hold) -> Iterator[str]:
    """What the page would have refused: a question without which nobody signs, gear, a day. The phone said so itself,
    and somebody may have made it say otherwise."""
    task = signed["about"][1]
    world = SignedWorld(task, signed["inputs"], signed["gear"], signed["day"])
    now = running(world, task)
    state = hold_state(world, now, hold)
    for refusal in refusals(world, now, state, ()):
        yield f"worked out here, it could not be signed: {refusal.words}"
    if signed["own_work"] and (unseen := unsettled(now, state)):
        yield f"another person signs: {unseen[0]}"
    if abs(date.fromisoformat(signed["day"]) - date.fromisoformat(signed["at"][:10])) > ZONES:
        yield "it was signed for another day than the one on which it was signed"


def alone_too_long(made_at: str, contact: str, received_at: str) -> bool:
    """Whether a sign-off was made longer after the phone's last contact than a phone may sign alone."""
    alone = believed(made_at, contact, received_at) - datetime.fromisoformat(contact)

    return alone > timedelta(hours=SIGNS_ALONE.value)


def went_back(made: int, counted: int, others: Iterable[tuple[int, int]]) -> bool:
    """Whether an authenticator counted otherwise than the device that asked it: the one who signed later counts higher.

    By the device's own counter, because sign-offs arrive in any order. An authenticator that never counts says 0.
    """
    return any((counted <= other) if made > before else (counted >= other)
               for before, other in others if counted or other)
