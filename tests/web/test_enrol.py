"""Enrolling on a phone, and shutting a lost one out."""

import pytest
from cryptography.hazmat.primitives.asymmetric import ec
from flask import Flask

from checklist_app.records.database import Device
from tests.records.signing_phone import public
from tests.web.signed_in import PIN, People, Visitor

JSON = {"Accept": "application/json"}


def key() -> str:
    return public(ec.generate_private_key(ec.SECP256R1())).hex()


def device_of(visitor: Visitor) -> str:
    return visitor.client.get("/device").json["device"]


def enrolled(visitor: Visitor, signer: str, pin: str = PIN, **more: object):
    return visitor.post("/enrol", {"signer": signer, "pin": pin, "public": key()} | more, headers=JSON)


@pytest.fixture
def rigger(people: People) -> Visitor:
    return people.visitor("rigger")


@pytest.fixture
def ines(people: People) -> str:
    return people.add("Ines Okoro", "supervisor", "supervisor", pin="8265")


def keys(app: Flask, visitor: Visitor) -> dict[str, str]:
    return app.extensions["store"].keys.good(device_of(visitor))


def test_a_supervisor_enrols_on_the_riggers_phone_with_his_own_pin(app: Flask, rigger: Visitor, ines: str) -> None:
    answer = enrolled(rigger, ines, "8265")
    assert answer.status_code == 200, answer.text
    said = answer.json
    assert keys(app, rigger) == {ines: said["id"]}
    assert said["person"] == {"id": ines, "name": "Ines Okoro", "role": "supervisor",
                              "capacities": {"supervisor": "2027-06-30"}}
    assert (said["device"], said["hours"]) == (device_of(rigger), 24)
    assert "Ines Okoro" in rigger.get("/enrol").text


@pytest.mark.parametrize(("more", "words"), [
    ({"pin": "4712"}, "do not belong together"), ({"signer": "p-nobody"}, "may sign anything"),
    ({"signer": ""}, "may sign anything"), ({"public": ""}, "Nothing was registered"),
    ({"public": "04" * 65}, "Nothing was registered"), ({"public": "00" * 65}, "Nothing was registered"),
])
def test_what_is_wrong_is_said_and_nothing_is_registered(app: Flask, rigger: Visitor, ines: str, more, words) -> None:
    answer = enrolled(rigger, **{"signer": ines, "pin": "8265"} | more)
    assert answer.status_code == 422 and words in answer.json["words"]
    assert keys(app, rigger) == {}


def test_wrong_pins_wait_longer_each_time_here_too(rigger: Visitor, ines: str) -> None:
    for _ in range(3):
        enrolled(rigger, ines, "4711")
    assert enrolled(rigger, ines, "8265").status_code == 429


def test_who_signs_nothing_does_not_enrol(people: People, rigger: Visitor) -> None:
    people.add("Late Lena", "supervisor", "supervisor", until="2026-11-24", pin="8265")
    people.add("No Capacity", "rigger", "", pin="8265")
    people.add("Read Only", "auditor", "planner", pin="8265")
    for person in ("p-late-lena", "p-no-capacity", "p-read-only"):
        assert enrolled(rigger, person, "8265").status_code == 422
    page = rigger.get("/enrol").text
    assert all(name not in page for name in ("Late Lena", "No Capacity", "Read Only"))


def test_a_form_without_script_comes_back_with_words_and_registers_nothing(app, rigger: Visitor, ines: str) -> None:
    page = rigger.post("/enrol", {"signer": ines, "pin": "8265", "public": ""})
    assert page.status_code == 422 and "made by the page itself" in page.text
    assert keys(app, rigger) == {}


def test_by_http_over_the_network_nobody_enrols_and_the_page_says_why(app: Flask, rigger: Visitor, ines: str) -> None:
    far = {"base_url": "http://workshop.test"}
    for cookie in ("device", "session"):
        found = rigger.client.get_cookie(cookie)
        rigger.client.set_cookie(cookie, found.value, domain="workshop.test")
    page = rigger.get("/enrol", **far)
    assert "by https only" in page.text and "<select" not in page.text
    answer = enrolled_far(rigger, ines, far)
    assert answer.status_code == 403 and "https only" in answer.json["words"]
    assert keys(app, rigger) == {}


def enrolled_far(visitor: Visitor, signer: str, far: dict[str, str]):
    form = {"form_token": visitor.token, "signer": signer, "pin": "8265", "public": key()}
    return visitor.client.post("/enrol", data=form, headers=JSON, **far)


def test_anybody_on_the_phone_ends_an_enrolment(app: Flask, rigger: Visitor, ines: str) -> None:
    enrolled(rigger, ines, "8265")
    rigger.get("/enrol")
    assert rigger.post("/enrol/end", {"person": ines}).status_code == 303
    assert keys(app, rigger) == {}


def test_an_auditor_does_not_enrol(people: People) -> None:
    assert people.visitor("auditor").get("/enrol").status_code == 403


def test_an_administrator_sees_phones_by_person_and_shuts_a_lost_one_out(
        app: Flask, people: People, rigger: Visitor, ines: str) -> None:
    enrolled(rigger, ines, "8265")
    lost = device_of(rigger)
    boss = people.visitor("administrator")
    page = boss.get("/phones").text
    assert lost in page and "Some rigger" in page and "Signs alone: Ines Okoro" in page and "Last in touch" in page
    assert boss.post(f"/phones/{lost}/revoke").status_code == 303
    assert keys(app, boss) == {} and app.extensions["store"].keys.good(lost) == {}
    assert app.extensions["store"].devices.is_revoked(lost)
    assert "Revoked." in boss.get("/phones").text
    assert rigger.get("/today").status_code == 303, "nobody is signed in on it any more"


def test_the_device_in_hand_is_not_revoked_by_itself(app: Flask, people: People) -> None:
    boss = people.visitor("administrator")
    boss.get("/phones")
    assert boss.post(f"/phones/{device_of(boss)}/revoke").status_code == 409
    assert boss.post("/phones/d-none/revoke").status_code == 404
    assert not Device.select().where(Device.revoked_after.is_null(False)).exists(app.extensions["store"].database)


@pytest.mark.parametrize("role", ["rigger", "supervisor", "auditor"])
def test_only_an_administrator_revokes(people: People, role: str) -> None:
    somebody = people.visitor(role)
    assert somebody.get("/phones").status_code == 403
    assert somebody.post("/phones/d-1/revoke").status_code == 403
