"""A signature by a phone's screen lock: what its own authenticator signed, looked at piece by piece.

The phone signs the authenticator's data and the digest of the browser's data; in the latter stands, as the challenge,
the digest of the statement. So a statement is signed by a finger or a face, and nothing but the registered public key
is needed to check it, today or years later. The library reads the bytes and verifies the signature.

Source:
    W3C Web Authentication, Level 2 (2021), 7.2 Verifying an Authentication Assertion; numbers of its steps from memory
    and therefore not given.
"""

import struct
from collections.abc import Iterator, Mapping
from hashlib import sha256
from typing import Any, Protocol

from cryptography.exceptions import InvalidSignature
from cryptography.hazmat.primitives.asymmetric import ec
from fido2.cose import ES256
from fido2.webauthn import AuthenticatorData, CollectedClientData

from checklist_app.checklists.signing import SHARED_LOCK
from checklist_app.records.signature import is_public_point

UNREADABLE = "what the screen lock signed cannot be read"
WRONG_SIGNATURE = "its signature does not fit what the screen lock says it signed"
STRANGE_CREDENTIAL = "it was signed with another credential than the one registered"
NO_SIGNING = "the screen lock was asked for something else than a signature"
OTHER_STATEMENT = "the screen lock signed another statement"
OTHER_PAGE = "it was signed on a page of another address than the phone was enrolled at"
INSIDE_ANOTHER = "it was signed on a page inside another page"
OTHER_NAME = "it was signed for another name than the phone was enrolled at"
NOT_TOUCHED = "nobody was there when the phone signed"
NOT_VERIFIED = "the phone did not verify who holds it"
OTHER_KIND = "its key says otherwise than when it was registered whether it can be copied"
UNSOUND = (ValueError, KeyError, TypeError, AttributeError, IndexError, RecursionError, struct.error)
"""What the library raises over bytes that are not what they should be."""


class Registered(Protocol):
    """What was registered of a key, or is kept of it in a record."""

    how: str
    public: str
    credential: str
    rp_id: str
    origin: str


def faults(lock: Registered, said: Mapping[str, Any], statement: str) -> Iterator[str]:
    """Everything for which this is no signature of a statement by this key; nothing when it is one.

    Args:
        lock: The key as it was registered.
        said: `authenticator`, `client`, `credential` and `signature`, as hexadecimal text.
        statement: Digest of the statement.
    """
    try:
        authenticator = AuthenticatorData(bytes.fromhex(said["authenticator"]))
        client = CollectedClientData(bytes.fromhex(said["client"]))
        signature = bytes.fromhex(said["signature"])
    except UNSOUND:
        yield UNREADABLE
        return
    if not _fits(lock.public, bytes(authenticator) + client.hash, signature):
        yield WRONG_SIGNATURE
    if said.get("credential") != lock.credential:
        yield STRANGE_CREDENTIAL
    yield from page_faults(client, "webauthn.get", bytes.fromhex(statement), lock.origin, OTHER_STATEMENT)
    yield from person_faults(authenticator, lock.rp_id)
    if bool(authenticator.is_backup_eligible()) is not (lock.how == SHARED_LOCK):
        yield OTHER_KIND


def page_faults(client: CollectedClientData, act: str, challenge: bytes, origin: str, other: str) -> Iterator[str]:
    """What the browser says of the page: what it asked for, about what, and where it lay."""
    if client.type != act:
        yield NO_SIGNING
    if client.challenge != challenge:
        yield other
    if client.origin != origin:
        yield OTHER_PAGE
    if client.cross_origin is not False:
        yield INSIDE_ANOTHER


def person_faults(authenticator: AuthenticatorData, rp_id: str) -> Iterator[str]:
    """What the authenticator says: for which name, and whether it knows who is there."""
    if authenticator.rp_id_hash != sha256(rp_id.encode()).digest():
        yield OTHER_NAME
    if not authenticator.is_user_present():
        yield NOT_TOUCHED
    if not authenticator.is_user_verified():
        yield NOT_VERIFIED


def count(said: Mapping[str, Any]) -> int:
    """How many signatures the authenticator says it has made; 0 where it does not count."""
    try:
        return AuthenticatorData(bytes.fromhex(said["authenticator"])).counter
    except UNSOUND:
        return 0


def _fits(public: str, data: bytes, signature: bytes) -> bool:
    point = bytes.fromhex(public)
    if not is_public_point(point):
        return False
    key = ec.EllipticCurvePublicKey.from_encoded_point(ec.SECP256R1(), point)
    try:
        ES256.from_cryptography_key(key).verify(data, signature)
    except (InvalidSignature, ValueError):
        return False

    return True
