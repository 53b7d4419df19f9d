"""A phone's screen lock is registered for signing: what the phone answers is looked at before its key is believed.

Source:
    W3C Web Authentication, Level 2 (2021), 7.1 Registering a New Credential; numbers of its steps from memory and
    therefore not given. No attestation is asked for: which make of phone it is proves nothing that is used here.
"""

from collections.abc import Iterator
from dataclasses import dataclass

from fido2.cose import ES256
from fido2.webauthn import AttestationObject, AuthenticatorData, CollectedClientData

from checklist_app.checklists.signing import LOCK, SHARED_LOCK
from checklist_app.records.screen_lock import UNSOUND, page_faults, person_faults
from checklist_app.records.signature import HALF_BYTES, NoPublicKey

LONGEST_CREDENTIAL_BYTES = 1023
P_256 = 1
UNREADABLE = "what the phone answered cannot be read"
OTHER_QUESTION = "the phone answered another question than was asked"
NO_KEY = "the phone made no key of the curve P-256"


@dataclass(frozen=True)
class NewLock:
    """A credential as it is registered: see the table of keys."""

    public: bytes
    credential: str
    how: str
    rp_id: str
    origin: str


def new_lock(attestation: str, client: str, challenge: bytes, rp_id: str, origin: str) -> NewLock:
    """The credential that a phone made for this challenge.

    Args:
        attestation: The attestation object, as hexadecimal text.
        client: What the browser says it asked, as hexadecimal text.
        challenge: What it was to ask.
        rp_id: The name of this server.
        origin: Where its pages lie.

    Raises:
        NoPublicKey: If it is none, with the reason.
    """
    try:
        told = AttestationObject(bytes.fromhex(attestation)).auth_data
        asked = CollectedClientData(bytes.fromhex(client))
    except UNSOUND as error:
        raise NoPublicKey(UNREADABLE) from error
    for fault in _faults(told, asked, challenge, rp_id, origin):
        raise NoPublicKey(fault)
    made = told.credential_data
    if made is None or not 0 < len(made.credential_id) <= LONGEST_CREDENTIAL_BYTES:
        raise NoPublicKey(UNREADABLE)

    how = SHARED_LOCK if told.is_backup_eligible() else LOCK
    return NewLock(_point(made.public_key), made.credential_id.hex(), how, rp_id, origin)


def _faults(told: AuthenticatorData, asked: CollectedClientData, challenge: bytes, rp_id: str, origin: str
            ) -> Iterator[str]:
    yield from page_faults(asked, "webauthn.create", challenge, origin, OTHER_QUESTION)
    yield from person_faults(told, rp_id)


def _point(key: object) -> bytes:
    """A COSE key as the point that is kept of every key, whatever opens it."""
    if not isinstance(key, ES256) or key.get(-1) != P_256:
        raise NoPublicKey(NO_KEY)
    halves = [key.get(-2), key.get(-3)]
    if not all(isinstance(half, bytes) and len(half) == HALF_BYTES for half in halves):
        raise NoPublicKey(NO_KEY)

    return b"\x04" + b"".join(halves)
