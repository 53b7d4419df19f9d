"""Signatures as a browser makes them: ECDSA over P-256 with SHA-256, r and s of 32 bytes each, one after the other."""

from cryptography.exceptions import InvalidSignature
from cryptography.hazmat.primitives import hashes
from cryptography.hazmat.primitives.asymmetric import ec

HALF_BYTES = 32
INTEGER, SEQUENCE = 0x02, 0x30
NEGATIVE = 0x80


class NoPublicKey(ValueError):
    """What was to be registered is no public key, or one that is known already."""


def is_public_point(public: bytes) -> bool:
    """Whether these bytes are a point of the curve, uncompressed as browsers export it."""
    if len(public) != 1 + 2 * HALF_BYTES:
        return False
    try:
        ec.EllipticCurvePublicKey.from_encoded_point(ec.SECP256R1(), public)
    except ValueError:
        return False

    return True


def fits(public: bytes, signature: bytes, data: bytes) -> bool:
    """Whether the owner of the key signed exactly these bytes.

    A second valid signature can be made by anybody from a first one, so a signature never names anything.
    """
    if len(signature) != 2 * HALF_BYTES or not is_public_point(public):
        return False
    key = ec.EllipticCurvePublicKey.from_encoded_point(ec.SECP256R1(), public)
    try:
        key.verify(der(signature), data, ec.ECDSA(hashes.SHA256()))
    except InvalidSignature:
        return False

    return True


def der(signature: bytes) -> bytes:
    """The same signature the way libraries want it: two integers without leading zeros, and never negative."""
    halves = b"".join(_integer(half) for half in (signature[:HALF_BYTES], signature[HALF_BYTES:]))
    return bytes([SEQUENCE, len(halves)]) + halves


def _integer(half: bytes) -> bytes:
    short = half.lstrip(b"\0") or b"\0"
    if short[0] & NEGATIVE:
        short = b"\0" + short
    return bytes([INTEGER, len(short)]) + short
