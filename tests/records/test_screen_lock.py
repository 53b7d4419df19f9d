"""A sign-off by the phone's screen lock: what it must prove, and every way in which somebody could make it lie."""

from pathlib import Path
from typing import Any

import pytest
from cryptography.hazmat.primitives.asymmetric import ec, utils
from fido2.cose import ES256, CoseKey

from checklist_app.checklists.canonical import canonical, parse
from checklist_app.checklists.entry import Entry, read
from checklist_app.checklists.holds import hold_states
from checklist_app.checklists.register import REGISTERS
from checklist_app.checklists.running import running
from checklist_app.checklists.signing import LOCK, PHONE_KEY, SHARED_LOCK
from checklist_app.checklists.world import MemoryWorld
from checklist_app.records.keys import COPIED
from checklist_app.records.new_lock import new_lock
from checklist_app.records.proof import went_back
from checklist_app.records.signature import NoPublicKey
from checklist_app.records.world import DatabaseWorld
from tests.records.lock_phone import AT, BE, CHALLENGE, NAME, ORIGIN, RS256_KEY, UP, UV, Authenticator, LockPhone
from tests.records.signing_phone import ENROLLED, PHONE, SigningPhone, digest_of
from tests.records.yard import DAY, Lift, yard


@pytest.fixture
def lift(tmp_path: Path) -> Lift:
    made = Lift(yard(tmp_path / "data")).plan().stop_points()
    yield made
    made.store.close()


@pytest.fixture
def phone(lift: Lift) -> LockPhone:
    return LockPhone(lift)


def standing(phone: SigningPhone) -> list[str]:
    world = DatabaseWorld(phone.store, DAY)
    return [each.name for each in hold_states(world, running(world, phone.lift.id))[0].standing]


def refused(phone: SigningPhone, words: str, entry: Entry, parts: dict[str, bytes]) -> None:
    """It is kept and marked, and counts for nothing."""
    assert phone.bring(entry, parts)["state"] == "confirmed"
    doubt, counts = phone.doubt(entry)
    assert words in doubt and not counts
    assert standing(phone) == []


def altered(entry: Entry, **value: str) -> Entry:
    """The same entry with something else in its value."""
    body = parse(entry.data)
    body["value"] |= value
    return read(canonical(body))


@pytest.mark.parametrize(("kind", "how"), [({}, LOCK), ({"shared": True}, SHARED_LOCK), ({"counts": False}, LOCK)])
def test_a_signature_by_the_registered_screen_lock_counts_and_says_how(lift: Lift, kind: dict, how: str) -> None:
    phone = LockPhone(lift, **kind)
    entry, parts = phone.signed()
    assert phone.bring(entry, parts)["state"] == "confirmed" and phone.doubt(entry) == ("", True)
    assert standing(phone) == ["Agata Rusk"] and entry.value["how"] == how


@pytest.mark.parametrize(("lies", "words"), [
    ({"challenge": bytes(32)}, "signed another statement"), ({"challenge": b""}, "signed another statement"),
    ({"origin": "https://shed.local.example"}, "another address"), ({"origin": None}, "another address"),
    ({"origin": "http://shed.local:8443"}, "another address"), ({"origin": "https://shed.local"}, "another address"),
    ({"rp_id": "example"}, "another name"), ({"act": "webauthn.create"}, "something else than a signature"),
    ({"act": "payment.get"}, "something else than a signature"), ({"crossOrigin": True}, "inside another page"),
    ({"flags": UP}, "did not verify who holds it"), ({"flags": UV}, "nobody was there"),
    ({"flags": 0}, "nobody was there"),
    ({"flags": UP | UV | BE}, "whether it can be copied"), ({"flags": UP | UV | AT}, "cannot be read"),
])
def test_an_authenticator_that_signed_something_else_is_not_believed(phone: LockPhone, lies: dict[str, Any],
                                                                     words: str) -> None:
    phone.lies = lies
    refused(phone, words, *phone.signed())


def test_an_assertion_over_one_statement_is_no_signature_under_another(phone: LockPhone) -> None:
    first, _ = phone.signed()
    second, parts = phone.signed(at=f"{DAY}T11:00:00Z")
    taken = {name: first.value[name] for name in ("authenticator", "client", "signature", "credential")}
    refused(phone, "signed another statement", altered(second, **taken), parts)


@pytest.mark.parametrize(("field", "change", "words"), [
    ("client", lambda text: bytes.fromhex(text).replace(b"shed.local", b"shad.local").hex(), "does not fit"),
    ("client", lambda text: bytes.fromhex(text).replace(b'"crossOrigin": false', b'"crossOrigin":false').hex(),
     "does not fit"),
    ("authenticator", lambda text: text[:64] + f"{UP | UV:02x}" + "000000ff", "does not fit"),
    ("signature", lambda text: text[:-2] + f"{int(text[-2:], 16) ^ 1:02x}", "does not fit"),
    ("credential", lambda text: "00" + text[2:], "another credential"), ("signature", lambda text: "", "does not fit"),
    ("client", lambda text: "7b7d", "cannot be read"), ("client", lambda text: "5b" * 4000, "cannot be read"),
    ("client", lambda text: "zz", "cannot be read"), ("authenticator", lambda text: "00", "cannot be read"),
    ("authenticator", lambda text: text + "00", "cannot be read"), ("signature", lambda text: "zz", "cannot be read"),
    ("authenticator", lambda text: text[:64] + "c5" + text[66:] + "00" * 40, "cannot be read"),
])
def test_what_was_altered_afterwards_is_found(phone: LockPhone, field: str, change: Any, words: str) -> None:
    entry, parts = phone.signed()
    changed = change(entry.value[field])
    assert changed != entry.value[field]
    if len(changed) < 8000:
        refused(phone, words, altered(entry, **{field: changed}), parts)
    else:
        with pytest.raises(ValueError, match="larger"):
            altered(entry, **{field: changed})


@pytest.mark.parametrize("gone", ["authenticator", "client", "signature", "credential"])
def test_what_is_not_there_proves_nothing(phone: LockPhone, gone: str) -> None:
    entry, parts = phone.signed()
    body = parse(entry.data)
    del body["value"][gone]
    refused(phone, "", read(canonical(body)), parts)


def test_another_persons_screen_lock_signs_nothing_for_him(lift: Lift) -> None:
    """Both on phones of their own; the other signs what names the supervisor's key."""
    mine, other = LockPhone(lift), LockPhone(lift, person="sam-oduya", device="d2")
    mine.authenticator = other.authenticator
    refused(mine, "does not fit", *mine.signed())


def test_a_key_behind_a_pin_is_not_called_a_screen_lock_nor_the_other_way_round(lift: Lift, phone: LockPhone) -> None:
    entry, parts = phone.signed()
    refused(phone, "something else", altered(entry, how=PHONE_KEY), parts)
    refused(phone, "something else", altered(entry, how=SHARED_LOCK), parts)
    by_pin = SigningPhone(lift, device="d2")
    entry, parts = by_pin.signed()
    refused(by_pin, "something else", altered(entry, how=LOCK), parts)


def test_a_revoked_phones_screen_lock_signs_nothing(phone: LockPhone) -> None:
    entry, parts = phone.signed()
    phone.store.devices.revoke(PHONE)
    phone.keys.end_of_device(PHONE, ENROLLED)
    refused(phone, "revoked", entry, parts)


@pytest.mark.parametrize(("end", "words"), [
    (lambda keys: keys.end_of_person("agata-rusk", ENROLLED), "a new PIN"),
    (lambda keys: keys.end_on(PHONE, "agata-rusk", ENROLLED), "ended on its phone"),
    (lambda keys: keys.end_locks_of_others(PHONE, "milo-harke", ENROLLED), "somebody else signed in"),
])
def test_what_ends_a_key_ends_a_screen_lock(phone: LockPhone, end: Any, words: str) -> None:
    entry, parts = phone.signed()
    end(phone.keys)
    refused(phone, words, entry, parts)


def test_somebody_else_who_signs_in_ends_the_lock_and_leaves_the_pin(phone: LockPhone) -> None:
    phone.keys.end_locks_of_others(PHONE, phone.person, ENROLLED)
    assert phone.keys.locks(PHONE) == {phone.person: phone.id}, "he himself signed in again"
    phone.keys.end_locks_of_others(PHONE, "milo-harke", ENROLLED)
    assert phone.keys.locks(PHONE) == {} and phone.keys.good(PHONE) == {phone.person: phone.beside}


def test_after_a_day_alone_a_screen_lock_signs_nothing_either(phone: LockPhone) -> None:
    for table, column in (("signkey", "made_at"), ("receipt", "received_at")):
        phone.store.database.execute_sql(f"UPDATE {table} SET {column} = '2026-11-20T06:00:00Z'")
    refused(phone, "24 hours", *phone.signed())


def test_a_counter_that_goes_back_counts_for_nothing_and_ends_the_key(phone: LockPhone) -> None:
    first, parts = phone.signed()
    phone.bring(first, parts)
    phone.authenticator.count -= 1
    second, parts = phone.signed(hold="release", world=phone_world(phone, without=first))
    phone.bring(second, parts)
    assert phone.doubt(second) == ("the screen lock's counter went back: there may be a copy of its key", False)
    key = phone.keys.find(phone.id)
    assert key is not None and key.ended_why == COPIED and phone.keys.locks(PHONE) == {}
    assert phone.doubt(first) == ("", True), "what counted stays as it was judged"


def phone_world(phone: LockPhone, without: Entry) -> Any:
    """The task as it lay before the phone when the first sign-off was not yet given."""
    world = phone.lift.world
    said = [one for about in [("task", phone.lift.id), *((register, name) for register in REGISTERS
                                                            for name in world.items(register))]
            for one in world.entries(about) if one != without]
    parts = {name: world.part(name) for entry in said for name in (entry.value.get("part"),) if name}
    return MemoryWorld(said, parts, today=DAY)


@pytest.mark.parametrize(("made", "counted", "others", "back"), [
    (5, 2, [], False), (5, 2, [(4, 1)], False), (5, 2, [(6, 3)], False), (5, 0, [(4, 0), (6, 0)], False),
    (5, 2, [(4, 2)], True), (5, 2, [(4, 3)], True), (5, 2, [(6, 2)], True), (5, 2, [(6, 1)], True),
    (5, 0, [(4, 1)], True), (5, 2, [(6, 0)], True), (5, 2, [(5, 2)], True),
])
def test_counters_go_on_in_the_order_in_which_the_phone_asked_however_they_arrive(
        made: int, counted: int, others: list[tuple[int, int]], back: bool) -> None:
    assert went_back(made, counted, others) is back


def test_an_assertion_that_is_brought_again_in_another_entry_ends_no_key(phone: LockPhone) -> None:
    """Anybody who reads the entries could otherwise end a supervisor's key; a copy is the same signer's signature."""
    (first, parts), (second, more), (third, others) = phone.signed(), phone.signed(), phone.signed()
    phone.bring(second, more)
    for counter in (1, first.counter, 90):
        copy = read(canonical(parse(second.data) | {"counter": counter}))
        for one in (copy, altered(copy, signature=turned_over(second.value["signature"]))):
            phone.bring(one, more)
            assert phone.doubt(one)[1] and phone.keys.locks(PHONE) == {phone.person: phone.id}
    for one, along in ((first, parts), (third, others)):
        phone.bring(one, along)
        assert phone.doubt(one)[1], "the true ones come late"
    assert set(standing(phone)) == {"Agata Rusk"}


def turned_over(signature: str) -> str:
    """The second valid signature that anybody can make from a first one: s as the order of the curve less s."""
    order = 0xFFFFFFFF00000000FFFFFFFFFFFFFFFFBCE6FAADA7179E84F3B9CAC2FC632551
    r, s = utils.decode_dss_signature(bytes.fromhex(signature))
    return utils.encode_dss_signature(r, order - s).hex()


def test_two_sign_offs_that_come_together_or_again_are_no_copy(phone: LockPhone) -> None:
    first, more = phone.signed()
    second, parts = phone.signed(world=phone.lift.world)
    batch = [(second, parts), (first, more)]
    for name, data in (parts | more).items():
        phone.store.parts.put(name, data)
    answers = phone.store.put(PHONE, [{"body": one.data.decode()} for one, _ in batch], f"{DAY}T12:00:00Z")
    assert [one["state"] for one in answers] == ["confirmed"] * 2
    assert phone.doubt(first) == phone.doubt(second) == ("", True)
    assert phone.bring(first, more)["state"] == "confirmed" and phone.keys.locks(PHONE) != {}


def test_of_two_in_one_batch_with_one_count_the_second_is_flagged(phone: LockPhone) -> None:
    first, more = phone.signed()
    phone.authenticator.count -= 1
    second, parts = phone.signed(at=f"{DAY}T10:30:00Z")
    for name, data in (parts | more).items():
        phone.store.parts.put(name, data)
    phone.store.put(PHONE, [{"body": one.data.decode()} for one in (first, second)], f"{DAY}T12:00:00Z")
    assert phone.doubt(first)[1] and "went back" in phone.doubt(second)[0]


@pytest.mark.parametrize(("lies", "words"), [
    ({"challenge": bytes(32)}, "another question"), ({"origin": "https://elsewhere.local"}, "another address"),
    ({"rp_id": "elsewhere.local"}, "another name"), ({"flags": UP}, "did not verify"),
    ({"flags": UV}, "nobody was there"), ({"type": "webauthn.get"}, "something else"),
    ({"crossOrigin": True}, "inside another page"),
    ({"key": CoseKey.parse(RS256_KEY)}, "no key of the curve"), ({"credential": b""}, "cannot be read"),
    ({"credential": bytes(1024)}, "cannot be read"),
    ({"key": ES256({1: 2, 3: -7, -1: 2, -2: bytes(32), -3: bytes(32)})}, "no key of the curve"),
    ({"key": ES256({1: 2, 3: -7, -1: 1, -2: bytes(31), -3: bytes(32)})}, "no key of the curve"),
])
def test_a_screen_lock_that_answers_something_else_is_not_registered(lies: dict[str, Any], words: str) -> None:
    with pytest.raises(NoPublicKey, match=words):
        new_lock(*Authenticator().made(**lies), CHALLENGE, NAME, ORIGIN)


@pytest.mark.parametrize("attestation", ["", "zz", "00", "a0", "ff" * 40, "9f" * 400])
def test_what_is_no_answer_of_a_phone_is_not_registered(attestation: str) -> None:
    with pytest.raises(NoPublicKey, match="cannot be read"):
        new_lock(attestation, Authenticator().made()[1], CHALLENGE, NAME, ORIGIN)


def test_a_point_beside_the_curve_is_not_registered_and_no_credential_twice(lift: Lift, phone: LockPhone) -> None:
    beside = phone.keys.find(phone.beside)
    with pytest.raises(NoPublicKey, match="already"):
        phone.keys.register_lock(beside, phone.registered(), ENROLLED)
    off = ES256({1: 2, 3: -7, -1: 1, -2: b"\x01" * 32, -3: b"\x02" * 32})
    made = new_lock(*Authenticator().made(key=off), CHALLENGE, NAME, ORIGIN)
    with pytest.raises(NoPublicKey, match="curve"):
        phone.keys.register_lock(beside, made, ENROLLED)


def test_a_new_key_behind_the_pin_ends_the_lock_a_new_lock_only_the_earlier_lock(lift: Lift, phone: LockPhone) -> None:
    authenticator, beside = Authenticator(), phone.keys.find(phone.beside)
    made = new_lock(*authenticator.made(), CHALLENGE, NAME, ORIGIN)
    later = phone.keys.register_lock(beside, made, ENROLLED)
    assert phone.keys.locks(PHONE) == {phone.person: later} and phone.keys.good(PHONE) == {phone.person: phone.beside}
    again = SigningPhone(lift)
    assert phone.keys.good(PHONE) == {phone.person: again.id} and phone.keys.locks(PHONE) == {}


def test_the_key_is_known_by_the_digest_of_its_public_half(phone: LockPhone) -> None:
    key = phone.keys.find(phone.id)
    assert isinstance(phone.authenticator.key, ec.EllipticCurvePrivateKey)
    assert key is not None and digest_of(bytes.fromhex(key.public)) == phone.id
