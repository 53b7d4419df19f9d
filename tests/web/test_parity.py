"""Phones bring what they worked out; where it differs the task says so until an administrator has looked."""

import json

import pytest
from flask import Flask

from checklist_app.checklists import values
from checklist_app.checklists.canonical import canonical, parse
from checklist_app.checklists.parity import claim
from checklist_app.records.key_tables import Comparison
from checklist_app.records.world import DatabaseWorld
from tests.web.signed_in import People
from tests.web.test_entries import Phone

TASK = ("task", "t-9")


@pytest.fixture
def phone(people: People) -> Phone:
    made = Phone(people.visitor("rigger"), "p-some-rigger")
    begin = {"type": "begin", "operation": "straight_lift", "procedure": "straight_lift/1"}
    made.put([made.entry(TASK, ("begin",), begin), made.entry(TASK, ("mass_kg",), values.number("900", "kg", "plate"))])
    return made


def said(app: Flask) -> dict:
    return parse(canonical(claim(DatabaseWorld(app.extensions["store"], "2026-11-25"), "t-9")))


def bring(phone: Phone, told: dict, status: int = 200, credential: str = "", **more: str):
    headers = {"Authorization": f"Bearer {credential or phone.credential}", "Origin": "http://localhost", **more}
    answer = phone.client.put("/parity", data=json.dumps({"code": "floors-1.zip", "claim": told}), headers=headers)
    assert answer.status_code == status, answer.text
    return answer


def test_what_agrees_is_kept_and_says_nothing(app: Flask, people: People, phone: Phone) -> None:
    assert bring(phone, said(app)).json == {"outcome": "equal"}
    assert people.visitor("administrator").get("/parity").text.count("Nothing differs.") == 1


def test_what_differs_stands_on_the_task_until_an_administrator_has_looked(
        app: Flask, people: People, phone: Phone) -> None:
    told = said(app)
    told["evaluation"]["verdict"] = "within limit"
    assert bring(phone, told).json == {"outcome": "differs"}
    rigger, boss = people.sign_in("Some rigger"), people.visitor("administrator")
    assert "something else than the server" in rigger.get("/tasks/t-9").text
    assert "Checks worked out by the server." in rigger.get("/tasks/t-9").text
    page = boss.get("/parity")
    assert "floors-1.zip" in page.text and "verdict" in page.text
    (row,) = Comparison.select().execute(app.extensions["store"].database)
    boss.post(f"/parity/{row.digest}/looked")
    assert "something else than the server" not in rigger.get("/tasks/t-9").text
    assert "Looked at by" in boss.get("/parity").text


@pytest.mark.parametrize("role", ["rigger", "supervisor", "auditor"])
def test_only_an_administrator_sees_and_settles_them(people: People, role: str) -> None:
    somebody = people.visitor(role)
    assert somebody.get("/parity").status_code == 403
    assert somebody.post(f"/parity/{'0' * 64}/looked").status_code == 403


def test_a_stranger_brings_nothing_and_nonsense_is_refused_in_words(app: Flask, phone: Phone) -> None:
    told = said(app)
    bring(phone, told, 401, credential="nobody")
    bring(phone, told, 403, Origin="http://evil.test")
    for nonsense in ({}, [], 5, {"form": "parity/1"}):
        assert "." in bring(phone, nonsense, 422).text
    assert not Comparison.select().exists(app.extensions["store"].database)


def tell(phone: Phone, told: object, status: int = 200) -> None:
    headers = {"Authorization": f"Bearer {phone.credential}", "Origin": "http://localhost"}
    answer = phone.client.put("/parity/fault", data=json.dumps(told), headers=headers)
    assert answer.status_code == status, answer.text


def test_a_fault_of_the_checks_on_a_phone_is_told_once_and_without_what_was_entered(
        app: Flask, people: People, phone: Phone) -> None:
    fault = "Traceback: answer of Ada Stone, 2400 kg\nModuleNotFoundError: No module named 'checklist_app.operations.x'"
    for _ in range(3):
        tell(phone, {"words": fault, "code": "floors-1.zip"})
    tell(phone, {"words": "Ada Stone said 2400 kg", "code": "floors-1.zip"})
    boss = people.visitor("administrator")
    shown = boss.get("/parity").text
    assert shown.count("The module checklist_app.operations.x is not on the phone") == 1
    assert "The checks failed over their own build" in shown
    assert "Ada" not in shown and "2400" not in shown
    rows = list(Comparison.select().execute(app.extensions["store"].database))
    assert len(rows) == 2 and not any(b"Ada" in (row.said or b"") for row in rows)
    boss.post(f"/parity/{rows[0].digest}/looked")
    assert "Looked at by" in boss.get("/parity").text


def test_a_phone_cannot_fill_the_disk_with_faults(app: Flask, phone: Phone) -> None:
    for number in range(40):
        tell(phone, {"words": f"No module named 'module_{number}'", "code": "floors-1.zip"})
    assert Comparison.select().count(app.extensions["store"].database) == 20


@pytest.mark.parametrize("told", [7, [], "text", None])
def test_a_fault_that_is_none_is_refused_in_words(phone: Phone, told: object) -> None:
    tell(phone, told, 422)
