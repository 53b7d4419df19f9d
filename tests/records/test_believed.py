"""A supervisor's day is the day that is believed: a clock that was set back makes nobody a supervisor again."""

from datetime import datetime
from pathlib import Path

import pytest

from checklist_app.checklists import values
from checklist_app.checklists.entry import make
from tests.records.signing_phone import CAME, PHONE, SigningPhone
from tests.records.yard import DAY, Lift, yard


@pytest.fixture
def phone(tmp_path: Path) -> SigningPhone:
    lift = Lift(yard(tmp_path / "data")).plan().stop_points()
    yield SigningPhone(lift)
    lift.store.close()


def until(phone: SigningPhone, day: str) -> None:
    """The register says how long the signer is a supervisor."""
    part, data = values.document_part("person/1", {"name": "Agata Rusk", "capacities": [
        {"capacity": "supervisor", "until": day}]}, f"salt-{day}")
    stands = [one.digest for one in phone.lift.world.entries(("person", phone.person)) if one.type == "version"]
    later = make(("person", phone.person), ("version",), values.version("person/1", part), stands, "sam-oduya",
                 "s-yard", 901, f"{DAY}T08:00:00Z")
    phone.store.keep([later], {part: data}, "s-yard", f"{DAY}T08:00:00Z")


def test_a_clock_that_was_set_back_makes_nobody_a_supervisor_again(phone: SigningPhone) -> None:
    """The phone was in touch this morning, so it did not sign yesterday."""
    entry, parts = phone.signed(at="2026-11-24T18:00:00Z")
    until(phone, "2026-11-24")
    assert phone.bring(entry, parts)["state"] == "confirmed"
    assert phone.doubt(entry) == ("its signer was not supervisor on that day", False)


def go_on(phone: SigningPhone, at: str, came: str) -> tuple[str, bool]:
    """A supervisor, signed in on his own phone, goes on after a stop."""
    phone.store.devices.sign_in(phone.device, phone.person)
    phone.lift.say("stop", {"type": "stop"})
    part, data = values.words_part("all clear", f"salt-{at}")
    said = make(("task", phone.lift.id), ("stop",), {"type": "go_on", "part": part}, (), phone.person, phone.device,
                900, at)
    assert phone.bring(said, {part: data}, at=came)["state"] == "confirmed"
    return phone.doubt(said)


@pytest.mark.parametrize(("last_day", "contact", "at", "counts"), [
    ("2026-12-31", "25T06:00:00", "25T10:00:00", True), ("2026-11-24", "25T06:00:00", "25T10:00:00", False),
    ("2026-11-24", "24T12:00:00", "24T18:00:00", True), ("2026-11-24", "25T06:00:00", "24T18:00:00", False),
    ("2026-11-24", "", "24T18:00:00", False), ("2026-11-24", "24T12:00:00", "26T18:00:00", False),
])
def test_going_on_is_a_supervisors_on_the_day_that_is_believed(
        phone: SigningPhone, last_day: str, contact: str, at: str, counts: bool) -> None:
    until(phone, last_day)
    if contact:
        phone.keys.heard(PHONE, 5, datetime.fromisoformat(f"2026-11-{contact}Z"))
    doubt, counted = go_on(phone, f"2026-11-{at}Z", CAME)
    assert counted is counts and ("its author is a supervisor no more" in doubt) is not counts
