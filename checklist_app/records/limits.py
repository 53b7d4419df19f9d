"""What a record does not show: the same for all, and what is missing in this one."""

from collections.abc import Mapping
from typing import Any

from checklist_app.checklists.running import Running
from checklist_app.checklists.signing import LOCKS, PHONE_KEY, SHARED_LOCK

ALWAYS = (
    "It shows what people entered and photographed, and what follows from it. It does not show what nobody looked at.",
    "The ratings are those of plates and papers. Hidden damage of gear, load or building is not found by arithmetic.",
    "A person is known by name and PIN, or by a phone's screen lock where a sign-off says so. A drawn signature is "
    "kept as drawn and compared with nothing.",
    "Times are those of the phones. The order in which entries reached the server is kept by the server's receipts.",
    "A changed record is found out by the chain only while somebody holds a later digest: the next record's, a print.",
)
UNTRIED = "No trial was entered: hook load and tilt are planned values, not measured ones."
BY_PHONE = ("PIN on enrolled phone: a key of that phone signed the statement. A short PIN can be guessed by whoever "
            "steals the phone and takes it apart.")
BY_LOCK = ("Screen lock of the enrolled phone: the phone's own authenticator had verified whoever held it, by finger, "
           "face or the phone's code, and signed the statement. Everybody who can unlock that phone can do so.")
BY_SHARED_LOCK = ("Where a key is shared by its owner's devices, any of them, and whoever gets into the account that "
                  "carries it from one to the other, could have signed.")
BY_GUEST = ("Guests signed by hand. Nobody checked who they are; whoever was signed in says that he saw it. A guest's "
            "signature stands for no other; only where a hold point asks for a guest is it what was asked for.")
UNSIGNED = "No sign-off was given."


def limits(now: Running, found: Mapping[str, Any]) -> list[str]:
    """Sentences for the end of a record."""
    own = []
    if now.procedure.has_stage("trial") and not now.folded.rows.get("trial"):
        own.append(UNTRIED)
    if not any(entry.type == "signature" for entry in now.folded.known.values()):
        own.append(UNSIGNED)
    ways = {entry.value["how"] for entry in now.folded.known.values() if entry.type == "signature"}
    own += [BY_PHONE] if PHONE_KEY in ways else []
    own += [BY_LOCK] if ways & LOCKS else []
    own += [BY_SHARED_LOCK] if SHARED_LOCK in ways else []
    if any(entry.type == "guest" for entry in now.folded.known.values()):
        own.append(BY_GUEST)
    if found["waiting"]:
        own.append(f"{len(found['waiting'])} checks could not be made: an entry was missing.")
    if found["refused"]:
        own.append(f"{len(found['refused'])} checks could not be assessed: see Checks.")
    if now.folded.missing:
        own.append(f"{len(now.folded.missing)} entries that others replaced have not arrived here.")

    return [*own, ALWAYS[0], now.procedure.says.statics, *ALWAYS[1:]]
