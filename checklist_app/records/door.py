"""The open door: what a device may bring, checked item by item before anything is written.

Only what is no entry is refused here, or what its author did not say on this device. What an entry *means* is judged
later; one whose author's role does not allow it is kept, and marked so that it counts for nothing.
"""

from collections.abc import Container, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any

from marshmallow import ValidationError

from checklist_app.checklists.canonical import NotCanonical, digest, parse
from checklist_app.checklists.entry import Entry, TooNew, Unusable, read
from checklist_app.checklists.versions import Unreadable, facts_now
from checklist_app.operations.kinds import KINDS
from checklist_app.records.parts import LARGEST_INLINE_BYTES, NotThatPart, refuse_other
from checklist_app.records.schemas import EntrySchema, document_faults

LARGEST_BATCH = 50
CONFIRMED, REFUSED, LATER = "confirmed", "refused", "later"
SUPERVISING = frozenset({"supervisor", "administrator"})
SUPERVISED = frozenset({"go_on", "acknowledge", "send_back", "examination", "release", "lost"})
ANYBODYS_CUSTODY = frozenset({"incoming", "lost"})
ANYBODYS_REGISTERS = frozenset({"gear", "machine", "load"})
TASK = "task"
ONCE = ("begin", "version")
"""A task is begun once; a version beside another one is for a supervisor."""
SAID_AT = {
    "version": ("version",), "custody": ("custody",), "examination": ("examination",), "quarantine": ("quarantine",),
    "release": ("quarantine",), "photo": ("photo",), "date": ("due_on_tag",), "rig": ("last_rig",),
}
"""What is said about an item of a register, and where. Nothing else counts: it could hide what it replaces."""

_SCHEMA = EntrySchema()


class TooMany(ValueError):
    """The batch is larger than one is taken; the device halves it."""


@dataclass
class Brought:
    """One item of a batch and its answer so far."""

    digest: str
    state: str
    words: str = ""
    entry: Entry | None = None
    parts: Mapping[str, bytes] = field(default_factory=dict)

    def answered(self, number: int | None) -> dict[str, Any]:
        """What the device is told about this item."""
        said: dict[str, Any] = {"digest": self.digest, "state": self.state}
        if self.state == CONFIRMED:
            said["number"] = number
        if self.words:
            said["words"] = self.words
        return said


def look_at(batch: Sequence[Any]) -> list[Brought]:
    """Every item of a batch, in order.

    Raises:
        TooMany: If there are more than a batch may have.
    """
    if len(batch) > LARGEST_BATCH:
        raise TooMany(f"more than {LARGEST_BATCH} entries in one batch")
    return [_look_at(item) for item in batch]


def refuse_strangers(brought: Sequence[Brought], signed_in: Mapping[str, bool], kept: Mapping[str, int]) -> None:
    """Mark what was not said by somebody who signed in on this device; what is kept already is confirmed again."""
    for item in brought:
        if item.entry is None or item.digest in kept or signed_in.get(item.entry.author, False):
            continue
        if item.entry.author in signed_in:
            item.state, item.words = LATER, f"{item.entry.author} must sign in on this device again"
        else:
            item.state, item.words = REFUSED, f"{item.entry.author} never signed in on this device"


def wait_for_power(brought: Sequence[Brought], roles: Mapping[str, str], present: Container[str]) -> None:
    """Put off what only a supervisor may say while he is not the one signed in: on a phone that went from hand to hand
    whoever holds it could say it for him."""
    for item in brought:
        if item.entry is None or item.state != CONFIRMED or item.entry.author in present:
            continue
        role = roles.get(item.entry.author, "")
        if role in SUPERVISING and powerless(item.entry, "rigger") and not powerless(item.entry, role):
            item.state, item.words = LATER, f"{item.entry.author} must sign in on this device again"


def powerless(entry: Entry, role: str) -> str:
    """Why an entry counts for nothing when a device brings it by itself; empty when it counts.

    A signature needs its signer's PIN, which comes with the signing page only. Registers are kept by supervisors and
    administrators, people by administrators alone; anybody may bring in gear or a load, take gear out of use and say
    that it is lost. An auditor changes nothing, and stops a lift as everybody does.
    """
    if role == "auditor":
        return "" if entry.type == "stop" else "an auditor changes nothing"
    if entry.type == "signature":
        return "signed without the PIN"
    if entry.about[0] != TASK and entry.path != SAID_AT.get(entry.type):
        return "this is not said of an item of a register"
    if entry.about[0] == "person" and role != "administrator":
        return "people are an administrator's to keep"
    if role in SUPERVISING:
        return ""
    if entry.type in SUPERVISED:
        return f"{entry.type.replace('_', ' ')} is for a supervisor"
    if entry.type == "custody" and entry.value["text"] not in ANYBODYS_CUSTODY:
        return "custody is for a supervisor"
    if entry.type == "version" and (entry.replaces or entry.about[0] not in ANYBODYS_REGISTERS):
        return "a register is kept by a supervisor"
    return ""


def brought_as(role: str) -> str:
    """With whose power an entry counts whose author is not signed in where it comes from: what anybody may say.

    Otherwise a supervisor could bring in what he wrote himself in an administrator's name, and whoever holds the phone
    on which a supervisor has a key could say anything for him. A sign-off by that key is judged by itself.
    """
    return role if role == "auditor" else "rigger"


def comes_second(entry: Entry, role: str, said: Container[tuple[str, str]]) -> str:
    """Why an entry counts for nothing after another one; empty when it counts.

    A task is begun once. Whoever does not keep the registers brings in what is new there, and changes nothing: a
    version beside the one in force could be picked by its digest.

    Args:
        said: Subject and type of what counts already.
    """
    if (entry.subject, entry.type) not in said:
        return ""
    if entry.type == "begin":
        return "it was begun already"
    return "a register is kept by a supervisor" if entry.type == "version" and role not in SUPERVISING else ""


def unsound(entry: Entry, parts: Mapping[str, bytes]) -> str:
    """Why a version's document, where it came along, is none of its kind; empty when it is sound or not here."""
    data = parts.get(entry.value["part"]) if entry.type == "version" else None
    if data is None:
        return ""
    kind = KINDS.get(entry.value["schema"].partition("/")[0])
    try:
        facts = facts_now(entry.value["schema"], parse(data))
    except (NotCanonical, Unreadable) as error:
        return f"its document cannot be read: {error}"
    faults = document_faults(kind, facts) if kind is not None else {}

    return f"its document is not complete: {', '.join(sorted(faults))}" if faults else ""


def _look_at(item: Any) -> Brought:
    body, given = (item.get("body"), item.get("parts", {})) if isinstance(item, dict) else (None, {})
    data = body.encode("utf-8", "surrogatepass") if isinstance(body, str) else b""
    try:
        entry = read(data)
        _SCHEMA.load(parse(data))
        return Brought(entry.digest, CONFIRMED, entry=entry, parts=_parts(given))
    except TooNew as error:
        return Brought(digest(data), LATER, str(error))
    except (Unusable, NotThatPart, ValidationError) as error:
        return Brought(digest(data), REFUSED, str(error))


def _parts(given: Any) -> dict[str, bytes]:
    if not isinstance(given, dict) or not all(isinstance(text, str) for text in given.values()):
        raise NotThatPart("parts are texts named by their digests")
    parts = {str(name): text.encode("utf-8", "surrogatepass") for name, text in given.items()}
    for name, data in parts.items():
        refuse_other(name, data, LARGEST_INLINE_BYTES)
    return parts
