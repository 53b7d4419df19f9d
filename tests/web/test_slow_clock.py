"""A form says what its phone's clock says; where that is far off, what it brings is marked, as in a batch."""

import json
from datetime import timedelta

import pytest
from flask import Flask

from checklist_app.records.moments import moment
from checklist_app.records.store import Arrival
from tests.web.conftest import Clock
from tests.web.signed_in import People
from tests.web.test_registers import SHACKLE

GEAR = ("gear", "S-31")
WAY, WORDS = "/registers/gear/S-31/quarantine", {"quarantine_why": "Pin is bent."}


@pytest.fixture(autouse=True)
def shackle(people: People) -> None:
    assert people.visitor("supervisor").post("/registers/gear/new/shackle", SHACKLE).status_code == 303


def counted(at: str) -> dict[str, str]:
    """Made on the phone, as its script counts."""
    return {"made": json.dumps({"counter": 1, "at": at, "salt": "0" * 32})}


def quarantined(app: Flask, people: People, form: dict[str, str]) -> Arrival:
    """A rigger's phone sends the form; what the server has of it then."""
    assert people.visitor("rigger").post(WAY, WORDS | form).status_code == 303
    (one,) = [each for each in app.extensions["store"].arrivals(GEAR) if each.entry.type == "quarantine"]
    return one


@pytest.mark.parametrize(("hours", "doubt"), [
    (-2, "the phone's clock was 2 hours behind the server's"),
    (3, "the phone's clock was 3 hours ahead of the server's"), (0, ""),
])
def test_a_clock_that_is_far_off_is_told_at_what_its_forms_make(
        app: Flask, people: People, clock: Clock, hours: int, doubt: str) -> None:
    says = moment(clock() + timedelta(hours=hours))
    one = quarantined(app, people, counted(says) | {"now": says})
    assert one.entry.at == says and one.entry.device.startswith("d-")
    assert one.doubt == doubt and one.counts


@pytest.mark.parametrize("now", ["yesterday", "", "2026-99-99T00:00:00Z"])
def test_a_clock_that_says_nothing_readable_is_not_doubted(app: Flask, people: People, clock: Clock, now: str) -> None:
    assert quarantined(app, people, counted(moment(clock())) | {"now": now}).doubt == ""


def test_what_the_server_makes_for_a_browser_has_the_servers_time(app: Flask, people: People, clock: Clock) -> None:
    one = quarantined(app, people, {"now": moment(clock() - timedelta(hours=2))})
    assert (one.entry.at, one.doubt) == (moment(clock()), "")
