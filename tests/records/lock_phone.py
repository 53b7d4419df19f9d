"""A phone whose screen lock signs, as an authenticator and a browser do: every piece can be made to lie."""

import hashlib
import json
from base64 import urlsafe_b64encode
from typing import Any

from cryptography.hazmat.primitives import hashes
from cryptography.hazmat.primitives.asymmetric import ec
from fido2.cose import ES256
from fido2.webauthn import AttestationObject, AttestedCredentialData, AuthenticatorData

from checklist_app.records.new_lock import NewLock, new_lock
from tests.records.signing_phone import ENROLLED, PHONE, SIGNER, SigningPhone
from tests.records.yard import Lift

NAME, ORIGIN = "shed.local", "https://shed.local:8443"
UP, UV, BE, BS, AT = 0x01, 0x04, 0x08, 0x10, 0x40
CHALLENGE = b"asked once by the server".ljust(32, b".")


def page(act: str, challenge: bytes, **lies: Any) -> bytes:
    """What the browser says of the page."""
    asked = urlsafe_b64encode(challenge).rstrip(b"=").decode()
    return json.dumps({"type": act, "challenge": asked, "origin": ORIGIN, "crossOrigin": False} | lies).encode()


def header(rp_id: str, flags: int, count: int) -> bytes:
    return hashlib.sha256(rp_id.encode()).digest() + bytes([flags]) + count.to_bytes(4, "big")


class Authenticator:
    """The part of a phone that keeps keys and knows the finger."""

    def __init__(self, counts: bool = True, shared: bool = False) -> None:
        self.key = ec.generate_private_key(ec.SECP256R1())
        self.credential = hashlib.sha256(str(id(self)).encode()).digest()[:16]
        self.counts, self.count, self.shared = counts, 0, shared

    @property
    def flags(self) -> int:
        return UP | UV | (BE | BS if self.shared else 0)

    def made(self, key: Any = None, flags: int | None = None, **lies: Any) -> tuple[str, str]:
        """A new credential: attestation object and what the browser says, as they are sent."""
        cose = key or ES256.from_cryptography_key(self.key.public_key())
        told = header(lies.pop("rp_id", NAME), (self.flags if flags is None else flags) | AT, 0)
        told += AttestedCredentialData.create(bytes(16), lies.pop("credential", self.credential), cose)
        attested = AttestationObject.create("none", AuthenticatorData(told), {})
        return bytes(attested).hex(), page("webauthn.create", lies.pop("challenge", CHALLENGE), **lies).hex()

    def signs(self, digest: bytes, **lies: Any) -> dict[str, str]:
        """An assertion about a statement. Lies are told before the signature, as by a page that was made to."""
        self.count += self.counts
        told = header(lies.pop("rp_id", NAME), lies.pop("flags", self.flags), lies.pop("count", self.count))
        asked = page(lies.pop("act", "webauthn.get"), lies.pop("challenge", digest), **lies)
        signature = self.key.sign(told + hashlib.sha256(asked).digest(), ec.ECDSA(hashes.SHA256()))
        return {"authenticator": told.hex(), "client": asked.hex(), "signature": signature.hex(),
                "credential": self.credential.hex()}


class LockPhone(SigningPhone):
    """A phone on which its owner enrolled with PIN and screen lock, and signs with the latter."""

    def __init__(self, lift: Lift, person: str = SIGNER, device: str = PHONE, **kind: bool) -> None:
        super().__init__(lift, person, device)
        self.beside, self.authenticator = self.id, Authenticator(**kind)
        made = self.registered()
        beside = self.keys.find(self.beside)
        assert beside is not None
        self.how, self.id = made.how, self.keys.register_lock(beside, made, ENROLLED)
        self.lies: dict[str, Any] = {}

    def registered(self) -> NewLock:
        return new_lock(*self.authenticator.made(), CHALLENGE, NAME, ORIGIN)

    def proof(self, statement: bytes) -> dict[str, str]:
        return self.authenticator.signs(hashlib.sha256(statement).digest(), **self.lies)


RS256_KEY = {1: 3, 3: -257, -1: bytes(256), -2: b"\x01\x00\x01"}
