"""What comes after a record was sealed is told with the record, to everybody for two weeks, and to phones."""

import pytest
from flask import Flask

from checklist_app.checklists import values
from checklist_app.checklists.phone import request_of
from checklist_app.records.after_seal import lately_supplemented
from tests.web.signed_in import People
from tests.web.test_entries import Phone

TASK = ("task", "t-9")


@pytest.fixture
def phone(people: People) -> Phone:
    """A task that was abandoned and sealed, and then another entry of it arrives."""
    made = Phone(people.visitor("rigger"), "p-some-rigger")
    begin = {"type": "begin", "operation": "straight_lift", "procedure": "straight_lift/1"}
    part, data = values.words_part("no crane", "salt")
    closing = {"type": "closing", "text": "abandoned", "part": part}
    made.put([made.entry(TASK, ("begin",), begin), made.entry(TASK, ("mass_kg",), values.number("900", "kg", "plate")),
              {"body": made.entry(TASK, ("closing",), closing).data.decode(), "parts": {part: data.decode()}}])
    return made


def record(phone: Phone) -> str:
    return phone.client.get("/records/of/t-9").headers["Location"]


def test_before_anything_came_nothing_is_told(people: People, phone: Phone) -> None:
    supervisor = people.visitor("supervisor")
    assert "Came after the seal" not in supervisor.get("/today").text
    assert "after it was sealed" not in supervisor.get(record(phone)).text


def test_a_late_entry_is_told_on_the_record_on_today_and_to_phones(people: People, phone: Phone) -> None:
    phone.put([phone.entry(TASK, ("mass_kg",), values.number("950", "kg", "plate"))])
    supervisor = people.visitor("supervisor")
    shown, today = supervisor.get(record(phone)).text, supervisor.get("/today").text
    assert "1 entry came after it was sealed" in shown and "Supplement 0002" in shown and 'role="alert"' in shown
    assert "Mass" in shown[shown.index("1 entry came"):shown.index("Open the PDF")]
    assert "Came after the seal" in today
    assert f'href="{record(phone)}">1 entry came after record 0001 was sealed' in today
    headers = {"Authorization": f"Bearer {phone.credential}"}
    told = phone.client.get("/entries", headers=headers).json["after_seal"]
    assert told == [{"href": record(phone), "words": "1 entry came after record 0001 was sealed"}]
    assert request_of({"method": "GET", "path": "/today", "after_seal": told}).after_seal == tuple(told)


def test_after_two_weeks_only_the_record_tells_it(app: Flask, people: People, phone: Phone) -> None:
    phone.put([phone.entry(TASK, ("mass_kg",), values.number("950", "kg", "plate"))])
    store = app.extensions["store"]
    assert list(lately_supplemented(store, "2026-12-09")) and not list(lately_supplemented(store, "2026-12-10"))
