"""A sign-off made away from the server counts when it proves itself on arrival; else it is kept, marked, and counts for
nothing."""

from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from cryptography.hazmat.primitives.asymmetric import ec

from checklist_app.checklists import values
from checklist_app.checklists.canonical import canonical, parse
from checklist_app.checklists.entry import make, read
from checklist_app.checklists.holds import hold_states
from checklist_app.checklists.running import running
from checklist_app.records.accounts import Accounts
from checklist_app.records.keys import Keys
from checklist_app.records.proof import alone_too_long
from checklist_app.records.signature import NoPublicKey
from checklist_app.records.world import DatabaseWorld
from tests.records.signing_phone import CAME, ENROLLED, PHONE, SigningPhone, digest_of, public, raw
from tests.records.yard import DAY, Lift, yard


@pytest.fixture
def lift(tmp_path: Path) -> Lift:
    made = Lift(yard(tmp_path / "data")).plan().stop_points()
    yield made
    made.store.close()


@pytest.fixture
def phone(lift: Lift) -> SigningPhone:
    return SigningPhone(lift)


def standing(phone: SigningPhone) -> list[str]:
    """Whose sign-offs stand at the first hold point."""
    world = DatabaseWorld(phone.store, DAY)
    return [each.name for each in hold_states(world, running(world, phone.lift.id))[0].standing]


def refused(phone: SigningPhone, words: str, entry, parts, **more) -> None:
    """It is confirmed, so that the phone keeps it no longer; it is kept here, marked, and counts for nothing."""
    assert phone.bring(entry, parts, **more)["state"] == "confirmed"
    doubt, counts = phone.doubt(entry)
    assert words in doubt and not counts
    assert standing(phone) == []


def test_a_signature_by_the_registered_key_counts(phone: SigningPhone) -> None:
    entry, parts = phone.signed()
    answer = phone.bring(entry, parts)
    assert answer["state"] == "confirmed" and phone.doubt(entry) == ("", True)
    assert standing(phone) == ["Agata Rusk"]
    again = phone.bring(entry, parts, at=f"{DAY}T13:00:00Z")
    assert again["number"] == answer["number"] and standing(phone) == ["Agata Rusk"]


def test_without_its_statement_it_waits_on_the_phone_and_counts_when_both_are_there(phone: SigningPhone) -> None:
    entry, parts = phone.signed()
    assert phone.bring(entry, {})["state"] == "later" and standing(phone) == []
    phone.store.parts.put(entry.value["statement"], parts[entry.value["statement"]])
    assert phone.bring(entry, {})["state"] == "confirmed" and standing(phone) == ["Agata Rusk"]


def test_whoever_brings_a_sign_off_by_a_registered_key_it_is_judged_by_itself(phone: SigningPhone) -> None:
    """The phone was signed in anew, and has another name since; or its file was read in elsewhere."""
    phone.store.devices.enrol("d-new")
    entry, parts = phone.signed()
    assert phone.bring(entry, parts, device="d-new")["state"] == "confirmed"
    assert phone.doubt(entry) == ("brought by d-new", True) and standing(phone) == ["Agata Rusk"]


def test_a_key_that_was_never_registered_signs_nothing(phone: SigningPhone) -> None:
    phone.key, phone.id = ec.generate_private_key(ec.SECP256R1()), "0" * 64
    phone.store.devices.sign_in(PHONE, phone.person)
    refused(phone, "never registered", *phone.signed())


def test_another_key_under_the_registered_name_signs_nothing(phone: SigningPhone) -> None:
    phone.key = ec.generate_private_key(ec.SECP256R1())
    refused(phone, "does not fit", *phone.signed())


def test_a_key_of_another_phone_or_person_signs_nothing(lift: Lift) -> None:
    elsewhere = SigningPhone(lift, device="d2")
    elsewhere.store.devices.enrol(PHONE)
    elsewhere.device = PHONE
    elsewhere.store.devices.sign_in(PHONE, elsewhere.person)
    refused(elsewhere, "never registered", *elsewhere.signed())


@pytest.mark.parametrize("signature", ["", "00", "zz" * 64, "00" * 64, "ff" * 64])
def test_what_is_no_signature_is_told_and_stops_nothing(phone: SigningPhone, signature: str) -> None:
    entry, parts = phone.signed()
    body = parse(entry.data)
    body["value"]["signature"] = signature
    refused(phone, "does not fit", read(canonical(body)), parts)


def test_one_letter_of_the_statement_altered_afterwards_is_found(phone: SigningPhone) -> None:
    entry, parts = phone.signed()
    told = parse(parts[entry.value["statement"]])
    data = canonical(told | {"meaning": told["meaning"] + " "})
    body = parse(entry.data)
    body["value"]["statement"] = digest_of(data)
    refused(phone, "does not fit", read(canonical(body)), {digest_of(data): data})


@pytest.mark.parametrize("changed", [
    {"hold": "trial_accepted"}, {"person": {"id": "milo-harke", "name": "Milo Harke"}}, {"capacity": "planner"},
    {"device": "d9"}, {"key": "1" * 64}, {"about": ["task", "t-other"]}, {"at": f"{DAY}T07:00:00Z"},
])
def test_an_entry_that_says_something_else_than_its_statement_counts_for_nothing(phone: SigningPhone, changed) -> None:
    refused(phone, "something else", *phone.signed_as(*phone.signed(), **changed))


@pytest.mark.parametrize("changed", [
    {"inputs": "none"}, {"inputs": [{}]}, {"gear": [{"subject": "gear/R-21"}]}, {"procedure": "straight_lift/99"},
    {"lift_class": "easy"}, {"cursor": "x"}, {"day": 5}, {"inputs": [], "gear": []},
])
def test_a_statement_of_a_shape_that_no_phone_of_ours_makes_is_kept_and_counts_for_nothing(phone, changed) -> None:
    refused(phone, "", *phone.signed(**changed))


def test_a_phone_that_works_out_something_else_is_not_believed(phone: SigningPhone) -> None:
    """The signed answers are over the limit here, whatever the phone's evaluation says."""
    entry, parts = phone.signed()
    told = parse(parts[entry.value["statement"]])
    heavy = [row | {"value": row["value"] | {"text": "9.9"}} if row["path"] == ["lift_height_m"] else row
             for row in told["inputs"]]
    assert heavy != told["inputs"]
    refused(phone, "worked out here", *phone.signed(inputs=heavy))


def test_a_class_that_asks_for_fewer_signatures_than_the_lift_is_not_believed(lift: Lift) -> None:
    lift.say("mass_kg", values.number("2700", "kg", "weighed"))
    phone = SigningPhone(lift)
    entry, parts = phone.signed()
    assert parse(parts[entry.value["statement"]])["lift_class"] == "non-routine"
    refused(phone, "the class is non-routine", *phone.signed_as(entry, parts, lift_class="routine"))


def test_a_revoked_phones_signature_counts_for_nothing_and_its_answers_are_doubted(phone: SigningPhone) -> None:
    entry, parts = phone.signed()
    phone.store.devices.revoke(PHONE)
    phone.keys.end_of_device(PHONE, ENROLLED)
    phone.store.devices.sign_in(PHONE, phone.person)
    refused(phone, "revoked", entry, parts)
    assert "this phone was revoked" in phone.doubt(entry)[0]


def test_a_new_pin_ends_the_key(phone: SigningPhone) -> None:
    entry, parts = phone.signed()
    accounts, now = Accounts(phone.store.database), datetime(2026, 11, 25, 11, 0, tzinfo=UTC)
    assert accounts.set_pin(phone.person, "8265", accounts.give_code(phone.person, now), now)
    assert phone.keys.good(PHONE) == {}
    phone.store.devices.sign_in(PHONE, phone.person)
    refused(phone, "a new PIN", entry, parts)


def test_enrolling_again_ends_the_earlier_key_of_that_person_on_that_phone_only(lift: Lift) -> None:
    first, other = SigningPhone(lift), SigningPhone(lift, person="sam-oduya")
    elsewhere = SigningPhone(lift, device="d2")
    second = SigningPhone(lift)
    assert lift.store.keys.good(PHONE) == {first.person: second.id, other.person: other.id}
    assert lift.store.keys.good("d2") == {first.person: elsewhere.id}


def test_an_account_that_is_not_in_use_signs_nothing(phone: SigningPhone) -> None:
    entry, parts = phone.signed()
    Accounts(phone.store.database).change(phone.person, "Agata Rusk", "supervisor", active=False)
    refused(phone, "not in use", entry, parts)


def test_a_capacity_that_ran_out_signs_nothing(phone: SigningPhone) -> None:
    entry, parts = phone.signed()
    world = phone.lift.world
    part, data = values.document_part("person/1", {"name": "Agata Rusk", "capacities": [
        {"capacity": "supervisor", "until": "2026-11-24"}]}, "salt-later")
    stands = [one.digest for one in world.entries(("person", phone.person)) if one.type == "version"]
    later = make(("person", phone.person), ("version",), values.version("person/1", part), stands, "sam-oduya",
                 "s-yard", 900, f"{DAY}T08:00:00Z")
    phone.store.keep([later], {part: data}, "s-yard", f"{DAY}T08:00:00Z")
    refused(phone, "was not supervisor", entry, parts)


def test_the_rigger_of_the_lift_cannot_sign_it_as_another_person(lift: Lift) -> None:
    phone = SigningPhone(lift)
    entry, parts = phone.signed()
    told = parse(parts[entry.value["statement"]])
    assert told["own_work"] is False
    lift.author = phone.person
    lift.say("lift_height_m", values.number("0.31", "m", "tape"))
    now = {tuple(row["path"]): row for row in told["inputs"]}
    own = next(one for one in lift.world.entries(("task", lift.id)) if one.author == phone.person)
    now["lift_height_m",] = {"path": ["lift_height_m"], "value": dict(own.value), "entry": own.digest}
    refused(phone, "gave answers", *phone.signed_as(entry, parts, inputs=list(now.values())))


@pytest.mark.parametrize(("made", "contact", "came", "too_long"), [
    ("25T12:00:00", "24T12:00:00", "25T12:30:00", False),
    ("25T12:00:01", "24T12:00:00", "25T12:30:00", True),
    ("24T13:00:00", "24T12:00:00", "28T12:00:00", False),
    ("24T11:55:00", "24T12:00:00", "28T12:00:00", False),
    ("24T11:00:00", "24T12:00:00", "28T12:00:00", True),
    ("24T11:00:00", "24T12:00:00", "25T11:00:00", False),
    ("29T12:00:00", "24T12:00:00", "25T11:00:00", False),
    ("29T12:00:00", "24T12:00:00", "25T13:00:00", True),
])
def test_a_phone_signs_alone_for_a_day_and_its_clock_is_believed_only_between_contact_and_arrival(
        made: str, contact: str, came: str, too_long: bool) -> None:
    assert alone_too_long(*(f"2026-11-{text}Z" for text in (made, contact, came))) is too_long


def test_the_last_contact_is_when_the_phone_was_told_the_number_that_its_statement_names(phone: SigningPhone) -> None:
    number = phone.store.cursor()["number"]
    long_ago = datetime(2026, 11, 24, 6, 0, tzinfo=UTC)
    phone.store.database.execute_sql("UPDATE signkey SET made_at = '2026-11-20T06:00:00Z'")
    phone.store.database.execute_sql("UPDATE receipt SET received_at = '2026-11-20T06:00:00Z'")
    phone.keys.heard(PHONE, number, long_ago)
    at = f"{DAY}T06:00:01Z"
    refused(phone, "24 hours", *phone.signed(at=at))
    phone.keys.heard(PHONE, number, long_ago + timedelta(minutes=5))
    entry, parts = phone.signed(at=at)
    phone.bring(entry, parts)
    assert phone.doubt(entry) == ("", True)


def test_of_each_phone_the_last_contact_stays_however_old(phone: SigningPhone) -> None:
    start = datetime(2026, 11, 1, tzinfo=UTC)
    for day in range(10):
        phone.keys.heard(PHONE, day, start + timedelta(days=day))
    kept = [row[0] for row in phone.store.database.execute_sql("SELECT number FROM contact ORDER BY number")]
    assert kept == [7, 8, 9]
    assert phone.keys.last_contacts([PHONE]) == {PHONE: "2026-11-10T00:00:00Z"}


@pytest.mark.parametrize("point", [b"", b"\x04" + bytes(64), b"\x04" * 65, bytes(65)])
def test_what_is_no_point_of_the_curve_is_not_registered(phone: SigningPhone, point: bytes) -> None:
    with pytest.raises(NoPublicKey, match="no public key"):
        phone.keys.register("d5", "agata-rusk", point, ENROLLED)


def test_a_key_is_registered_once(phone: SigningPhone) -> None:
    with pytest.raises(NoPublicKey, match="already"):
        Keys(phone.store.database).register("d5", "milo-harke", public(phone.key), ENROLLED)


def test_two_signatures_of_the_same_statement_are_two_entries_and_one_signer(phone: SigningPhone) -> None:
    entry, parts = phone.signed()
    body = parse(entry.data)
    body["value"]["signature"] = raw(phone.key, parts[entry.value["statement"]]).hex()
    second = read(canonical(body))
    assert second != entry
    phone.bring(entry, parts)
    phone.bring(second, parts, at=CAME)
    assert set(standing(phone)) == {"Agata Rusk"}


@pytest.mark.parametrize(("path", "value", "words"), [
    ("zone_closed", values.tick("no"), "The zone is closed"),
    ("pins_in", values.withdrawn(), "Each pin is home and secured: not answered"),
    ("signaller", values.dont_know(), "Who signals cannot be read"),
    ("leg/1-left/sling_felt", values.tick("no"), "left sling: not looked at and felt"),
    ("day", values.date("2026-12-20"), "another day"),
])
def test_what_the_page_would_have_refused_is_not_signed_by_a_phone_that_was_made_to(
        lift: Lift, phone: SigningPhone, path: str, value: values.Value, words: str) -> None:
    lift.say(path, value)
    refused(phone, words, *phone.signed())


def test_a_key_in_a_phone_gives_its_holder_no_voice_but_its_signature(phone: SigningPhone) -> None:
    """Whoever is handed the phone could otherwise go on after a stop in the supervisor's name."""
    phone.lift.say("stop", {"type": "stop"})
    part, data = values.words_part("all clear", "salt")
    said = make(("task", phone.lift.id), ("stop",), {"type": "go_on", "part": part}, (), phone.person, phone.device,
                900, phone.lift.at)
    phone.bring(said, {part: data})
    assert phone.doubt(said) == ("go_on is for a supervisor".replace("_", " "), False)
