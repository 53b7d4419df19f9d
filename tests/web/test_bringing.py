"""The last resort of a phone that reaches no server: a file, brought in by who made the entries or by a supervisor."""

import base64
import json
from io import BytesIO

import pytest
from flask import Flask

from checklist_app.checklists import values
from checklist_app.checklists.canonical import canonical, digest
from checklist_app.records.devices import Devices
from tests.web.signed_in import People, Visitor
from tests.web.test_entries import Phone

PHOTO = b"\xff\xd8\xff a picture"


@pytest.fixture
def phone(people: People) -> Phone:
    return Phone(people.visitor("rigger"), "p-some-rigger")


def bring(visitor: Visitor, data: bytes, status: int = 200) -> str:
    response = visitor.post("/import", {"file": (BytesIO(data), "kept.json")}, content_type="multipart/form-data")
    assert response.status_code == status
    return response.text


def saved(phone: Phone, count: int = 1) -> bytes:
    text = canonical({"salt": "s", "text": "strand broken"})
    entry = phone.entry(("gear", "L-07"), ("quarantine",), values.quarantine("2026-11-25", digest(text)))
    more = [phone.quarantine() for _ in range(count - 1)]
    items = [{"body": each.data.decode(), "parts": {}} for each in more]
    items.append({"body": entry.data.decode(), "parts": {digest(text): text.decode()}})
    photo = {"digest": digest(PHOTO), "mime": "image/jpeg", "data": base64.b64encode(PHOTO).decode()}
    return json.dumps({"form": "kept on a phone/1", "entries": items, "photos": [photo]}).encode()


def arrivals(app: Flask):
    return [one for one in app.extensions["store"].arrivals(("gear", "L-07")) if one.entry.type == "quarantine"]


def test_a_supervisor_brings_what_another_phone_saved_and_it_is_marked_so(
        app: Flask, people: People, phone: Phone) -> None:
    supervisor = people.visitor("supervisor")
    shown = bring(supervisor, saved(phone, 120))
    assert "120 entries confirmed" in shown and "1 photograph in the file" in shown
    assert len(arrivals(app)) == 120
    assert all(one.counts and one.doubt == f"brought by {one.device}" != f"brought by {phone.device}"
               for one in arrivals(app))
    assert app.extensions["store"].parts.get(digest(PHOTO)) == PHOTO


def test_the_same_file_again_adds_nothing(app: Flask, people: People, phone: Phone) -> None:
    supervisor, file = people.visitor("supervisor"), saved(phone)
    bring(supervisor, file)
    assert "1 entry confirmed" in bring(supervisor, file)
    assert len(arrivals(app)) == 1


def test_a_rigger_brings_his_own_entries_and_nobody_elses(app: Flask, people: People, phone: Phone) -> None:
    file = saved(phone)
    people.add("Another rigger", "rigger")
    assert "never signed in on this device" in bring(people.sign_in("Another rigger"), file)
    assert arrivals(app) == []
    assert "1 entry confirmed" in bring(people.sign_in("Some rigger"), file)


def test_what_somebody_else_is_said_to_have_said_has_no_power(app: Flask, people: People) -> None:
    """Or a supervisor whose time has run out could make himself one again, in an administrator's name."""
    people.add("Some administrator", "administrator")
    person = people.add("Run Out", "supervisor", "supervisor", until="2026-11-24")
    supervisor = people.sign_in("Run Out")
    phone = Phone(supervisor, "p-some-administrator")
    facts = {"name": "Run Out", "capacities": [{"capacity": "supervisor", "until": "2030-01-01"}]}
    part, data = values.document_part("person/1", facts, "salt")
    forged = phone.entry(("person", person), ("version",), values.version("person/1", part))
    lifted = phone.entry(("gear", "L-07"), ("quarantine",), values.release(""))
    items = [{"body": forged.data.decode(), "parts": {part: data.decode()}}, {"body": lifted.data.decode()}]
    assert "2 entries confirmed" in bring(supervisor, json.dumps({"entries": items}).encode())
    store = app.extensions["store"]
    for about in (("person", person), ("gear", "L-07")):
        brought = [one for one in store.arrivals(about) if one.entry.author == "p-some-administrator"]
        assert [one.counts for one in brought] == [False], about


def test_nobody_vouches_for_a_person_who_has_no_account(app: Flask, people: People, phone: Phone) -> None:
    stranger = phone.quarantine(author="p-nobody-knows")
    file = json.dumps({"entries": [{"body": stranger.data.decode()}]}).encode()
    assert "0 entries confirmed" in bring(people.visitor("supervisor"), file)
    assert arrivals(app) == []


@pytest.mark.parametrize("data", [b"", b"{}", b"[]", b"7", b"\xff", b"[" * 8000, b'{"entries": 7}'])
def test_what_is_no_such_file_is_refused_in_words(people: People, data: bytes) -> None:
    assert "no file that a phone saved" in bring(people.visitor("rigger"), data, 422)


def test_without_a_file_the_page_asks_for_one(people: People) -> None:
    visitor = people.visitor("rigger")
    assert "Choose the file" in visitor.post("/import", {}).text


@pytest.mark.parametrize("photo", [7, {}, {"digest": "0" * 64, "data": "AAAA"}, {"digest": "0" * 64, "data": "?"}])
def test_a_photograph_that_is_none_does_not_hold_back_the_entries(
        app: Flask, people: People, phone: Phone, photo: object) -> None:
    file = json.loads(saved(phone)) | {"photos": [photo]}
    shown = bring(people.visitor("supervisor"), json.dumps(file).encode())
    assert "1 entry confirmed" in shown and "photograph" in shown


def test_a_revoked_phones_file_is_taken_from_the_supervisor(app: Flask, people: People, phone: Phone) -> None:
    Devices(app.extensions["store"].database).revoke(phone.device)
    assert "1 entry confirmed" in bring(people.visitor("supervisor"), saved(phone))
