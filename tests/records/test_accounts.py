"""Signing in: what a PIN must be, what a stranger can and cannot do, what a one-time code is good for."""

from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest

from checklist_app.records import sqlite
from checklist_app.records.accounts import Accounts, LastAdministrator, NameTaken, TooSoon, WrongPin
from checklist_app.records.database import create_tables
from checklist_app.records.devices import Devices
from checklist_app.records.pins import pin_fault
from checklist_app.records.sessions import Sessions

NOON = datetime(2026, 11, 25, 12, 0, tzinfo=UTC)
PIN = "4711"


@pytest.fixture
def database(tmp_path: Path):
    made = sqlite.opened(tmp_path / "checklist.db")
    create_tables(made)
    yield made
    made.close()


@pytest.fixture
def accounts(database) -> Accounts:
    made = Accounts(database)
    made.add("p-1", "Ines Okoro", "supervisor")
    give_pin(made, "p-1", PIN)
    return made


def give_pin(accounts: Accounts, person: str, pin: str) -> None:
    assert accounts.set_pin(person, pin, accounts.give_code(person, NOON), NOON)


def try_wrong(accounts: Accounts, times: int, device: str, now: datetime = NOON) -> None:
    for _ in range(times):
        with pytest.raises(WrongPin):
            accounts.check_pin("p-1", "0815", device, now)


@pytest.mark.parametrize("pin", ["", "123", "123456789", "12a4", "١٢٣٤", "1111", "1234", "9876", "0123", "7890", "4747",
                                 "123123", "1984", "2026", "2580", "4 71", "-471"])
def test_a_pin_that_is_guessed_first_is_refused(pin: str) -> None:
    assert pin_fault(pin)


@pytest.mark.parametrize("pin", ["4711", "0815", "31415", "27182818"])
def test_another_pin_is_taken(pin: str) -> None:
    assert pin_fault(pin) == ""


def test_the_pin_is_not_kept_readable(accounts, database) -> None:
    (kept,) = database.execute_sql("SELECT pin_hash FROM account").fetchone()
    assert kept.startswith("$argon2id$") and PIN not in kept


def test_the_right_pin_passes_and_a_wrong_one_does_not(accounts) -> None:
    accounts.check_pin("p-1", PIN, "", NOON)
    with pytest.raises(WrongPin):
        accounts.check_pin("p-1", "4712", "", NOON)


def test_a_clock_that_ran_ahead_and_was_put_right_shuts_nobody_out(accounts) -> None:
    ahead = NOON + timedelta(days=400)
    try_wrong(accounts, 3, "d-1", ahead)
    try_wrong(accounts, 1, "d-1", NOON)
    with pytest.raises(TooSoon) as wait:
        accounts.check_pin("p-1", PIN, "d-1", NOON)
    assert wait.value.wait_s == 10
    accounts.check_pin("p-1", PIN, "d-1", NOON + timedelta(seconds=11))


def test_an_account_without_a_pin_opens_for_nothing(accounts) -> None:
    accounts.add("p-2", "Tomas Brandt", "rigger")
    for pin in ("", "0000", PIN):
        with pytest.raises(WrongPin):
            accounts.check_pin("p-2", pin, "", NOON)


def test_each_wrong_pin_makes_the_next_wait_longer(accounts) -> None:
    try_wrong(accounts, 3, "")
    with pytest.raises(TooSoon) as first:
        accounts.check_pin("p-1", PIN, "", NOON + timedelta(seconds=1))
    assert first.value.wait_s == 4
    try_wrong(accounts, 1, "", NOON + timedelta(seconds=5))
    with pytest.raises(TooSoon):
        accounts.check_pin("p-1", PIN, "", NOON + timedelta(seconds=14))
    accounts.check_pin("p-1", PIN, "", NOON + timedelta(seconds=15))


def test_a_strangers_tries_do_not_slow_down_a_phone_that_signed_in_before(accounts) -> None:
    accounts.check_pin("p-1", PIN, "d-own", NOON)
    try_wrong(accounts, 3, "")
    with pytest.raises(TooSoon):
        accounts.check_pin("p-1", PIN, "", NOON)
    accounts.check_pin("p-1", PIN, "d-own", NOON)


def test_many_unknown_phones_share_one_delay(accounts) -> None:
    for device in ("d-a", "d-b", "d-c"):
        try_wrong(accounts, 1, device)
    with pytest.raises(TooSoon):
        accounts.check_pin("p-1", PIN, "d-d", NOON)


def test_tries_for_one_person_do_not_slow_down_another(accounts) -> None:
    accounts.add("p-2", "Tomas Brandt", "rigger")
    give_pin(accounts, "p-2", "8265")
    try_wrong(accounts, 3, "")
    accounts.check_pin("p-2", "8265", "", NOON)


def test_a_code_sets_a_pin_once(accounts) -> None:
    code = accounts.give_code("p-1", NOON)
    assert accounts.set_pin("p-1", "8265", code.lower().replace("-", " "), NOON)
    assert not accounts.set_pin("p-1", "9173", code, NOON)
    accounts.check_pin("p-1", "8265", "", NOON)


def test_a_code_is_worth_nothing_after_a_day_or_when_a_newer_one_was_given(accounts) -> None:
    old = accounts.give_code("p-1", NOON)
    new = accounts.give_code("p-1", NOON)
    assert accounts.code(old, NOON) is None
    assert accounts.code(new, NOON) is not None
    assert accounts.code(new, NOON + timedelta(hours=25)) is None


def test_a_new_pin_ends_every_earlier_sign_in(accounts, database) -> None:
    sessions = Sessions(database)
    secret = sessions.open("p-1", "d-own", NOON)
    assert sessions.find(secret, NOON) is not None
    give_pin(accounts, "p-1", "8265")
    assert sessions.find(secret, NOON) is None


def test_a_sign_in_ends_when_unused_for_a_shift_and_not_before(accounts, database) -> None:
    sessions = Sessions(database)
    secret = sessions.open("p-1", "d-own", NOON)
    assert sessions.find(secret, NOON + timedelta(hours=11)) is not None
    assert sessions.find(secret, NOON + timedelta(hours=22)) is not None
    assert sessions.find(secret, NOON + timedelta(hours=35)) is None


def test_the_cookie_of_a_sign_in_is_not_in_the_database(accounts, database) -> None:
    secret = Sessions(database).open("p-1", "d-own", NOON)
    assert secret not in str(database.execute_sql("SELECT * FROM session").fetchall())


def test_an_account_out_of_use_is_signed_out_and_cannot_sign_in(accounts, database) -> None:
    sessions = Sessions(database)
    secret = sessions.open("p-1", "d-own", NOON)
    accounts.change("p-1", "Ines Okoro", "supervisor", active=False)
    assert sessions.find(secret, NOON) is None
    with pytest.raises(WrongPin):
        accounts.check_pin("p-1", PIN, "d-own", NOON)


def test_two_people_cannot_sign_in_by_one_name(accounts) -> None:
    with pytest.raises(NameTaken, match="INES okoro"):
        accounts.add("p-2", " INES  okoro", "rigger")


def test_the_last_administrator_stays(accounts) -> None:
    accounts.add("p-9", "Vera Lund", "administrator")
    with pytest.raises(LastAdministrator):
        accounts.change("p-9", "Vera Lund", "rigger", active=True)
    with pytest.raises(LastAdministrator):
        accounts.change("p-9", "Vera Lund", "administrator", active=False)


def test_a_new_pin_stops_the_phone_in_the_wrong_hands_from_sending_entries(accounts, database) -> None:
    devices = Devices(database)
    devices.enrol("d-own")
    devices.sign_in("d-own", "p-1")
    give_pin(accounts, "p-1", "8265")
    assert devices.signed_in("d-own") == {"p-1": False}


def test_a_sign_in_under_a_later_clock_sweeps_away_nobody_elses(accounts, database) -> None:
    sessions = Sessions(database)
    earlier = sessions.open("p-1", "d-own", NOON)
    sessions.open("p-1", "d-other", NOON + timedelta(days=90))
    assert sessions.find(earlier, NOON) is not None
    sessions.open("p-1", "d-other", NOON + timedelta(days=401))
    assert sessions.find(earlier, NOON) is None
