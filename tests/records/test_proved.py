"""Years later: the signatures of phones are checked with nothing but what the record holds."""

import hashlib
import json
import zlib
from base64 import urlsafe_b64decode
from collections.abc import Iterator
from typing import Any

import pytest
from cryptography.hazmat.primitives import hashes
from cryptography.hazmat.primitives.asymmetric import ec
from fido2.cose import ES256
from fido2.server import Fido2Server
from fido2.webauthn import (
    Aaguid,
    AttestedCredentialData,
    AuthenticationResponse,
    AuthenticatorAssertionResponse,
    AuthenticatorData,
    CollectedClientData,
    PublicKeyCredentialRpEntity,
)

from checklist_app.checklists.canonical import canonical, digest
from checklist_app.records import chain, files
from checklist_app.records.database import Seal
from checklist_app.records.new_lock import new_lock
from checklist_app.records.pdf.record import paper
from checklist_app.records.proved import Sealed, unproved_now
from checklist_app.records.screen_lock import faults
from checklist_app.records.seal import seal
from checklist_app.records.store import Store
from checklist_app.records.verify import verify
from tests.records.lock_phone import CHALLENGE, NAME, ORIGIN, UP, UV, Authenticator, LockPhone, header
from tests.records.signing_phone import SigningPhone
from tests.records.yard import DAY, Lift, yard


@pytest.fixture(scope="module")
def store(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Store]:
    """A lift released by the screen lock of one phone and accepted by the PIN on another."""
    made = yard(tmp_path_factory.mktemp("proved") / "data")
    lift = Lift(made).plan().stop_points()
    for phone, hold, after in ((LockPhone(lift, device="d7"), "release", Lift.trial),
                               (SigningPhone(lift, device="d8"), "trial_accepted", Lift.landed)):
        entry, parts = phone.signed(hold)
        phone.bring(entry, parts)
        assert phone.doubt(entry) == ("", True)
        after(lift)
    lift.close()
    seal(made, lift.id, f"{DAY}T13:00:00Z")
    yield made
    made.close()


@pytest.fixture
def record(store: Store) -> dict[str, Any]:
    """What somebody has who was given the file and nothing else."""
    one = chain.everything(store)[0]
    return json.loads(files.text_path(store.records, 1, one.digest).read_bytes())


def by_lock(record: dict[str, Any]) -> dict[str, Any]:
    (one,) = [each for each in record["signoffs"] if each["how"] == "phone-lock"]
    return one


def test_untouched_signatures_are_proved_by_the_record_and_named_in_its_limits(store: Store, record: dict) -> None:
    assert verify(store).faults == ()
    assert list(unproved_now(by_lock(record), None)) == []
    assert [each["how"] for each in record["signoffs"]] == ["phone-lock", "phone-key"]
    assert any(words.startswith("Screen lock of the enrolled phone:") for words in record["limits"])


def test_an_auditor_needs_none_of_our_code(record: dict) -> None:
    """Nothing here but JSON, SHA-256 and ECDSA."""
    one = by_lock(record)
    told, asked = bytes.fromhex(one["authenticator"]), bytes.fromhex(one["client"])
    key = ec.EllipticCurvePublicKey.from_encoded_point(ec.SECP256R1(), bytes.fromhex(one["public"]))
    key.verify(bytes.fromhex(one["signature"]), told + hashlib.sha256(asked).digest(), ec.ECDSA(hashes.SHA256()))
    assert told[:32] == hashlib.sha256(one["rp_id"].encode()).digest() and told[32] & 5 == 5
    said = json.loads(asked)
    assert urlsafe_b64decode(said["challenge"] + "=").hex() == one["statement"]
    assert (said["type"], said["origin"]) == ("webauthn.get", one["origin"])


@pytest.mark.parametrize(("change", "words"), [
    (lambda one: one | {"statement": "0" * 64}, "another statement"),
    (lambda one: one | {"public": one["public"][:-2] + "00"}, "not the one that it names"),
    (lambda one: one | {"key": "0" * 64}, "not the one that it names"),
    (lambda one: one | {"rp_id": "a"}, "another name"), (lambda one: one | {"origin": "https://a"}, "another address"),
    (lambda one: one | {"how": "shared-lock"}, "copied"),
    (lambda one: one | {"signature": one["authenticator"]}, "does not fit"),
    (lambda one: {name: said for name, said in one.items() if name != "client"}, "cannot be read"),
])
def test_what_was_changed_in_the_record_is_told(record: dict, change: Any, words: str) -> None:
    assert any(words in fault for fault in unproved_now(change(by_lock(record)), None))


@pytest.mark.parametrize("at", [0, 1])
def test_verify_checks_each_signature_anew_in_a_record_that_was_rewritten_whole(store: Store, record: dict, at: int
                                                                                ) -> None:
    """Somebody who can write everything, digests and files too, still cannot sign."""
    one = chain.everything(store)[0]
    signed = record["signoffs"][at]
    signed["signature"] = signed["signature"][:20] + "0000" + signed["signature"][24:]
    data = canonical(record)
    pdf = paper(record, store.parts.get)
    files.write(store.records, 1, data, pdf)
    Seal.update(digest=digest(data), data=zlib.compress(data), pdf=digest(pdf)).execute(store.database)
    told = verify(store).faults
    Seal.update(digest=one.digest, data=zlib.compress(one.data), pdf=one.pdf).execute(store.database)
    assert any("the signature of Agata Rusk: its signature does not fit" in fault for fault in told), told
    assert verify(store).faults == ()


LIES: list[dict[str, Any]] = [
    {}, {"count": 0}, {"challenge": bytes(32)}, {"origin": "https://else.local"}, {"rp_id": "else.local"},
    {"act": "webauthn.create"}, {"flags": UP}, {"flags": UV}, {"flags": 0},
]


@pytest.mark.parametrize("lies", LIES, ids=str)
def test_the_librarys_own_server_comes_to_the_same_verdict(lies: dict[str, Any]) -> None:
    """fido2 2.2, Fido2Server.authenticate_complete: a reference of the standard's procedure for signing in."""
    phone, statement = Authenticator(), hashlib.sha256(b"statement").digest()
    said = phone.signs(statement, **lies)
    made = AttestedCredentialData.create(Aaguid.NONE, phone.credential, key_of(phone))
    yard_here = PublicKeyCredentialRpEntity(name="Yard", id=NAME)
    server = Fido2Server(yard_here, verify_origin=lambda origin: origin == ORIGIN)
    _, state = server.authenticate_begin([made], "required", statement)
    given = AuthenticationResponse(raw_id=phone.credential, response=AuthenticatorAssertionResponse(
        client_data=CollectedClientData(bytes.fromhex(said["client"])), signature=bytes.fromhex(said["signature"]),
        authenticator_data=AuthenticatorData(bytes.fromhex(said["authenticator"]))))
    try:
        server.authenticate_complete(state, [made], given)
        believed = True
    except ValueError:
        believed = False
    assert believed is (not list(faults(registered(phone), said, statement.hex())))
    assert believed is (lies in ({}, {"count": 0}))


def key_of(phone: Authenticator) -> Any:
    return ES256.from_cryptography_key(phone.key.public_key())


def registered(phone: Authenticator) -> Any:
    made = new_lock(*phone.made(), CHALLENGE, NAME, ORIGIN)
    return Sealed(made.how, made.public.hex(), made.credential, made.rp_id, made.origin)


def test_the_header_of_the_tests_is_the_one_of_the_standard() -> None:
    told = AuthenticatorData(header(NAME, UP | UV, 7))
    assert (told.counter, bool(told.is_user_present()), bool(told.is_user_verified())) == (7, True, True)
