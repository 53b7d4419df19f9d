"""Whether a signature by a phone's key fits what was signed, whichever way the key was opened.

It takes nothing but the public half, the digest of the statement and, for a key that a PIN opens, the statement itself:
an auditor can ask years later.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any

from checklist_app.checklists.canonical import digest
from checklist_app.checklists.signing import LOCKS
from checklist_app.records import screen_lock
from checklist_app.records.screen_lock import Registered
from checklist_app.records.signature import fits

WRONG_SIGNATURE = "its signature does not fit the statement"


def misfits(key: Registered, said: Mapping[str, Any], statement: bytes) -> Iterator[str]:
    """Why this is no signature of these bytes by this key; nothing when it is one."""
    if key.how in LOCKS:
        yield from screen_lock.faults(key, said, digest(statement))
    elif not fits(_bytes(key.public), _bytes(said.get("signature", "")), statement):
        yield WRONG_SIGNATURE


def unproved_now(one: Mapping[str, Any], statement: bytes | None) -> Iterator[str]:
    """Why a sign-off of a record is not proved by what the record itself holds of it; nothing when it is.

    A screen lock signs the digest of the statement, which the record names; a key behind a PIN signs its bytes. That
    those are gone or altered is told elsewhere.
    """
    key = Sealed(*(str(one.get(name, "")) for name in ("how", "public", "credential", "rp_id", "origin")))
    if digest(_bytes(key.public)) != one["key"]:
        yield "the public key in the record is not the one that it names"
    if key.how in LOCKS:
        yield from screen_lock.faults(key, one, one["statement"])
    elif statement is not None and digest(statement) == one["statement"]:
        yield from misfits(key, one, statement)


@dataclass(frozen=True)
class Sealed:
    """A key as a record holds it."""

    how: str
    public: str
    credential: str
    rp_id: str
    origin: str


def _bytes(text: str) -> bytes:
    try:
        return bytes.fromhex(text)
    except ValueError:
        return b""
