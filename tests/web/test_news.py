"""What a phone is told: running tasks and registers in pages, and nothing by which somebody could sign in."""

import pytest
from flask import Flask

from checklist_app.checklists import values
from checklist_app.checklists.canonical import canonical, digest
from checklist_app.records.database import Seal
from checklist_app.records.devices import Devices
from tests.web.signed_in import People, Visitor
from tests.web.test_enrol import device_of
from tests.web.test_enrol_lock import answer, asked
from tests.web.test_entries import Phone


@pytest.fixture
def phone(people: People) -> Phone:
    return Phone(people.visitor("rigger"), "p-some-rigger")


def told(phone: Phone, query: str = "", status: int = 200):
    answer = phone.client.get(f"/entries?{query}", headers={"Authorization": f"Bearer {phone.credential}"})
    assert answer.status_code == status, answer.text
    return answer.json


def test_a_phone_hears_which_keys_on_it_are_good(app: Flask, people: People) -> None:
    visitor = people.visitor("supervisor")
    phone, person = Phone(visitor, "p-some-supervisor"), "p-some-supervisor"
    enrolled = asked(visitor)
    answer(visitor, enrolled)
    keys, here = app.extensions["store"].keys, device_of(visitor)
    assert told(phone)["keys"] == sorted([enrolled["id"], keys.locks(here)[person]])
    keys.end_of_person(person, app.config["CLOCK"]())
    assert told(phone)["keys"] == []


def all_of_it(phone: Phone, cursor: dict | None = None) -> tuple[list[str], dict]:
    bodies, more = [], True
    at = cursor or {"number": 0, "head": ""}
    while more:
        said = told(phone, f"number={at['number']}&head={at['head']}")
        bodies += [entry["body"] for entry in said["entries"]]
        at, more = said["cursor"], said["more"]
    return bodies, at


def sealed(app: Flask, task: str, at: str = "2026-11-25T11:00:00Z") -> None:
    Seal.insert(digest="a" * 64, number=1, task=task, previous="b" * 64, sealed_at=at, pdf="c" * 64,
                data=b"").execute(app.extensions["store"].database)


def test_a_phone_is_told_each_entry_once_and_then_only_what_is_new(phone: Phone) -> None:
    phone.put([phone.quarantine() for _ in range(40)])
    bodies, cursor = all_of_it(phone)
    assert len(bodies) == len(set(bodies)) >= 41
    assert all_of_it(phone, cursor) == ([], cursor)
    new = phone.quarantine()
    phone.put([new])
    assert all_of_it(phone, cursor)[0] == [new.data.decode()]


def test_more_than_a_page_comes_in_pages_without_a_gap(phone: Phone) -> None:
    for _ in range(11):
        phone.put([phone.quarantine() for _ in range(50)])
    first = told(phone)
    assert len(first["entries"]) == 500 and first["more"]
    bodies, _ = all_of_it(phone)
    assert len(set(bodies)) == len(bodies) >= 550


def test_entries_of_a_sealed_task_stay_here_and_the_phone_hears_of_its_record(app: Flask, phone: Phone) -> None:
    gone = phone.entry(("task", "t-1"), ("begin",), values.tick("yes"))
    runs = phone.entry(("task", "t-2"), ("begin",), values.tick("yes"))
    phone.put([gone, runs])
    sealed(app, "t-1")
    bodies, _ = all_of_it(phone)
    assert gone.data.decode() not in bodies and runs.data.decode() in bodies
    assert told(phone)["sealed"] == {"t-1": "a" * 64}


def test_a_record_of_long_ago_is_not_told_of(app: Flask, phone: Phone) -> None:
    sealed(app, "t-1", "2026-09-01T11:00:00Z")
    assert told(phone)["sealed"] == {}


def test_the_texts_that_entries_name_come_along_and_photographs_are_only_named(phone: Phone) -> None:
    text = canonical({"salt": "s", "text": "hook is worn"})
    said = phone.entry(("gear", "L-07"), ("quarantine",), values.quarantine("2026-11-25", digest(text)))
    phone.put([{"body": said.data.decode(), "parts": {digest(text): text.decode()}}])
    photo = b"\xff\xd8\xff a picture"
    phone.raw(photo, f"/parts/{digest(photo)}")
    shown = phone.entry(("task", "t-9"), ("label",), values.photo(digest(photo)))
    phone.put([shown])
    parts = told(phone)["parts"]
    assert parts[digest(text)] == text.decode()
    assert parts[digest(photo)] is None and digest(photo) in parts


def test_a_part_that_came_late_is_asked_for_by_name(phone: Phone) -> None:
    text = canonical({"salt": "s", "text": "late"})
    name = digest(text)
    phone.put([phone.entry(("gear", "L-07"), ("quarantine",), values.quarantine("2026-11-25", name))])
    _, cursor = all_of_it(phone)
    at = f"number={cursor['number']}&head={cursor['head']}"
    assert told(phone, at)["parts"] == {} == told(phone, f"{at}&wanted={name}")["parts"]
    phone.raw(text, f"/parts/{name}")
    assert told(phone, f"{at}&wanted={name}")["parts"] == {name: text.decode()}


def test_what_counts_for_nothing_is_named_and_not_told(phone: Phone) -> None:
    idle = phone.entry(("person", "p-some-rigger"), ("version",), values.version("person/1", "d" * 64))
    phone.put([idle])
    assert idle.digest in told(phone)["powerless"]
    assert idle.data.decode() not in all_of_it(phone)[0]


def test_people_come_with_name_and_role_and_nothing_else(app: Flask, phone: Phone) -> None:
    said = told(phone)
    assert {tuple(sorted(one)) for one in said["people"]} == {("id", "name", "role")}
    assert {"id": "p-some-rigger", "name": "Some rigger", "role": "rigger"} in said["people"]
    (secret,) = {row.pin_hash for row in app.extensions["accounts"].all()}
    assert secret and secret not in str(said) and phone.credential not in str(said)


def test_it_says_when_and_by_which_code(phone: Phone) -> None:
    said = told(phone)
    assert said["now"] == "2026-11-25T12:00:00Z" and "+" in said["code"] and said["device"] == phone.device


def test_an_unknown_cursor_means_that_the_server_was_set_back(phone: Phone) -> None:
    told(phone, f"number=7&head={'0' * 64}", 409)


@pytest.mark.parametrize("number", ["-1", "x", "", "1" * 40, "²"])
def test_a_cursor_that_is_none_is_refused(phone: Phone, number: str) -> None:
    told(phone, f"number={number}", 400)


def test_without_credential_or_sign_in_nothing_is_told(app: Flask, people: People, nobody: Visitor) -> None:
    visitor = people.visitor("rigger")
    phone = Phone(visitor, "p-some-rigger")
    assert nobody.client.get("/entries").status_code == 401
    visitor.post("/sign-out")
    told(phone, status=401)


def test_a_revoked_phone_is_told_nothing_more(app: Flask, phone: Phone) -> None:
    Devices(app.extensions["store"].database).revoke(phone.device)
    told(phone, status=401)
