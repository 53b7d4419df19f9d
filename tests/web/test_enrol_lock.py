"""Registering a phone's screen lock: beside the PIN, by its owner, on a phone that is his alone, at a name."""

from datetime import timedelta

import pytest
from flask import Flask
from werkzeug.test import TestResponse

from tests.records.lock_phone import Authenticator
from tests.web.conftest import Clock
from tests.web.signed_in import PIN, People, Visitor
from tests.web.test_enrol import JSON, device_of, enrolled

LOCAL = "http://localhost"


@pytest.fixture
def ines(people: People) -> Visitor:
    """A supervisor, signed in on her own phone."""
    return people.visitor("supervisor")


def asked(visitor: Visitor, signer: str = "p-some-supervisor", pin: str = PIN) -> dict:
    answer = enrolled(visitor, signer, pin)
    assert answer.status_code == 200, answer.text
    return answer.json


def answer(visitor: Visitor, said: dict, phone: Authenticator | None = None, **lies: object) -> TestResponse:
    """What the phone's authenticator answers to the question of the server."""
    told = {"challenge": bytes.fromhex(said["ask"]["challenge"]), "rp_id": said["ask"]["rp_id"], "origin": LOCAL} | lies
    attestation, client = (phone or Authenticator()).made(**told)
    return visitor.post("/enrol/lock", {"key": said["id"], "attestation": attestation, "client": client}, headers=JSON)


def locks(app: Flask, visitor: Visitor) -> dict[str, str]:
    return app.extensions["store"].keys.locks(device_of(visitor))


@pytest.mark.parametrize(("shared", "how"), [(False, "phone-lock"), (True, "shared-lock")])
def test_who_is_signed_in_on_his_own_phone_registers_its_screen_lock(app: Flask, ines: Visitor, shared: bool, how: str
                                                                     ) -> None:
    said = asked(ines)
    assert said["ask"]["rp_id"] == "localhost" and len(bytes.fromhex(said["ask"]["challenge"])) == 32
    phone = Authenticator(shared=shared)
    kept = answer(ines, said, phone).json
    key = app.extensions["store"].keys.find(kept["id"])
    assert kept == {"id": key.id, "how": how, "credential": phone.credential.hex(), "rp_id": "localhost"}
    assert (key.how, key.person, key.device) == (how, "p-some-supervisor", device_of(ines))
    assert (key.rp_id, key.origin) == ("localhost", LOCAL) and locks(app, ines) == {"p-some-supervisor": key.id}
    assert "by PIN and by screen lock" in ines.get("/enrol").text


@pytest.mark.parametrize("lies", [{"challenge": bytes(32)}, {"rp_id": "elsewhere"}, {"origin": "https://localhost"},
                                  {"flags": 1}, {"type": "webauthn.get"}])
def test_what_answers_another_question_is_not_registered(app: Flask, ines: Visitor, lies: dict) -> None:
    answered = answer(ines, asked(ines), **lies)
    assert answered.status_code == 422 and answered.json["words"].endswith(".")
    assert locks(app, ines) == {}


def test_an_answer_is_good_for_the_enrolment_it_was_asked_at_and_for_ten_minutes(app: Flask, ines: Visitor, clock: Clock
                                                                                 ) -> None:
    first, second = asked(ines), asked(ines)
    assert first["ask"]["challenge"] != second["ask"]["challenge"]
    assert answer(ines, first).status_code == 422, "another key took its place"
    assert answer(ines, second | {"ask": first["ask"]}).status_code == 422
    clock.at += timedelta(minutes=11)
    assert "too long ago" in answer(ines, second).json["words"]
    assert answer(ines, second | {"id": "0" * 64}).status_code == 422
    assert locks(app, ines) == {}


def test_on_a_phone_of_somebody_else_it_is_the_pin(app: Flask, people: People, ines: Visitor) -> None:
    """Whoever can unlock the rigger's phone could sign in the supervisor's name."""
    rigger = people.visitor("rigger")
    said = asked(rigger, "p-some-supervisor")
    assert said["ask"] is None
    forced = said | {"ask": {"challenge": "00" * 32, "rp_id": "localhost"}}
    assert "only who is signed in" in answer(rigger, forced).json["words"] and locks(app, rigger) == {}


def test_where_others_are_signed_in_too_it_is_the_pin_until_they_have_signed_out(app: Flask, people: People,
                                                                                 ines: Visitor) -> None:
    people.add("Guest Gus", "rigger", "rigger")
    devices, here = app.extensions["store"].devices, device_of(ines)
    devices.sign_in(here, "p-guest-gus")
    assert asked(ines)["ask"] is None and "Others are signed in on this phone" in ines.get("/enrol").text
    devices.sign_out(here, "p-guest-gus")
    said = asked(ines)
    assert said["ask"] is not None
    devices.sign_in(here, "p-guest-gus")
    assert "Others are signed in" in answer(ines, said).json["words"] and locks(app, ines) == {}


def test_when_somebody_else_signs_in_on_the_phone_its_lock_signs_no_more(app: Flask, people: People, ines: Visitor
                                                                         ) -> None:
    people.add("Guest Gus", "rigger", "rigger", pin="8265")
    answer(ines, asked(ines))
    assert locks(app, ines) != {}
    assert ines.post("/sign-in", {"typed": "Guest Gus", "pin": "8265"}).status_code == 303
    assert locks(app, ines) == {} and app.extensions["store"].keys.good(device_of(ines)) != {}


@pytest.mark.parametrize(("base", "asks"), [("http://localhost", True), ("http://127.0.0.1:8000", False),
                                            ("https://192.168.1.20", False), ("https://[fd00::1]", False),
                                            ("https://shed.local", True)])
def test_a_screen_lock_signs_for_a_name_only(app: Flask, people: People, base: str, asks: bool) -> None:
    people.add("Ines Okoro", "supervisor", "supervisor")
    visitor, there = Visitor(app), {"base_url": base}
    visitor.get("/sign-in", **there)
    fresh = {"headers": {"Origin": base}, **there}
    assert visitor.post("/sign-in", {"typed": "Ines Okoro", "pin": PIN}, **fresh).status_code == 303
    page = visitor.get("/enrol", **there)
    assert page.status_code == 200 and ("known by an address" in page.text) is not asks


def test_a_revoked_phone_and_an_ended_enrolment_lose_the_lock_too(app: Flask, people: People, ines: Visitor) -> None:
    answer(ines, asked(ines))
    ines.get("/enrol")
    assert ines.post("/enrol/end", {"person": "p-some-supervisor"}).status_code == 303
    assert locks(app, ines) == {}
    answer(ines, asked(ines))
    lost = device_of(ines)
    boss = people.visitor("administrator")
    assert "Signs alone: Some supervisor" in boss.get("/phones").text, "named once, though by two keys"
    boss.post(f"/phones/{lost}/revoke")
    assert app.extensions["store"].keys.locks(lost) == {}


def test_who_only_reads_registers_nothing(people: People) -> None:
    assert people.visitor("auditor").post("/enrol/lock", {"key": "0" * 64}).status_code == 403
