"""Certificates look after themselves: made once, renewed in time, for the addresses that the machine has."""

import logging
import ssl
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest

from checklist_app.web.tls.cabinet import ROOT, Cabinet
from checklist_app.web.tls.certificates import hosts_of
from checklist_app.web.tls.keeper import Keeper

NOW = datetime(2026, 11, 25, 12, 0, tzinfo=UTC)
DAY = timedelta(days=1)


class Machine:
    """A computer whose addresses a test changes."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder
        self.hosts = ["shed", "shed.local", "192.168.1.20"]

    def keeper(self, now: datetime = NOW) -> Keeper:
        return Keeper(self.folder, "Checklist of shed", ["shed"], lambda: self.hosts, now)


@pytest.fixture
def machine(tmp_path: Path) -> Machine:
    return Machine(tmp_path)


def serial(keeper: Keeper) -> int:
    return keeper.server.certificate.serial_number


def test_the_first_start_makes_both_and_the_next_takes_the_same(machine: Machine) -> None:
    first, second = machine.keeper(), machine.keeper(NOW + DAY)
    assert serial(first) == serial(second)
    assert first.root.certificate == second.root.certificate


def test_keys_are_for_the_owner_only(machine: Machine) -> None:
    machine.keeper()
    folder = machine.folder / "tls"
    assert folder.stat().st_mode & 0o077 == 0
    files = list(folder.iterdir())
    assert {one.name for one in files} == {"root.pem", "server.pem"}
    assert all(one.stat().st_mode & 0o777 == 0o600 for one in files)


def test_it_is_renewed_by_itself_long_before_it_ends(machine: Machine) -> None:
    keeper = machine.keeper()
    before, context = serial(keeper), keeper.context
    ends = keeper.server.certificate.not_valid_after_utc
    assert keeper.facts(NOW).renewed_on == ends - 120 * DAY
    assert not keeper.look(ends - 121 * DAY)
    assert keeper.look(ends - 119 * DAY)
    assert serial(keeper) != before
    assert keeper.context is not context, "handshakes still offer the old one"
    assert keeper.server.certificate.not_valid_after_utc > ends + 270 * DAY
    assert serial(machine.keeper(ends)) == serial(keeper), "the new one did not reach the disk"


def test_a_server_that_was_off_for_two_years_has_a_good_one_at_once(machine: Machine) -> None:
    machine.keeper()
    late = NOW + 730 * DAY
    assert machine.keeper(late).server.certificate.not_valid_after_utc > late + 390 * DAY


def test_another_address_makes_another_certificate_below_the_same_root(machine: Machine) -> None:
    keeper = machine.keeper()
    above = keeper.root.certificate
    machine.hosts[-1] = "192.168.1.77"
    assert keeper.look(NOW)
    assert "192.168.1.77" in hosts_of(keeper.server.certificate)
    assert keeper.root.certificate == above
    assert not keeper.look(NOW), "it is renewed once, not each minute"


def test_an_address_that_went_away_needs_no_new_one(machine: Machine) -> None:
    keeper = machine.keeper()
    machine.hosts.remove("192.168.1.20")
    assert not keeper.look(NOW)


def test_what_the_root_may_not_vouch_for_is_left_out_so_that_the_rest_is_believed(machine: Machine) -> None:
    machine.hosts += ["203.0.113.9", "shed.firm.example"]
    assert set(hosts_of(machine.keeper().server.certificate)) == {"shed", "shed.local", "192.168.1.20"}


def test_a_clock_that_was_ahead_leaves_no_certificate_of_the_future(machine: Machine) -> None:
    keeper = machine.keeper()
    ahead = NOW + 300 * DAY
    assert keeper.look(ahead)
    assert keeper.server.certificate.not_valid_before_utc > NOW
    assert keeper.look(NOW)
    assert keeper.server.certificate.not_valid_before_utc < NOW


def test_a_root_that_is_over_is_told_and_never_replaced_behind_everybodys_back(machine: Machine) -> None:
    keeper = machine.keeper()
    ends = keeper.root.certificate.not_valid_after_utc
    assert not keeper.facts(NOW).faults
    assert "root ends on 2036" in keeper.facts(ends - 400 * DAY).faults[0]
    assert not keeper.look(ends + DAY)
    assert any("cannot be renewed" in one for one in keeper.facts(ends + DAY).faults)
    assert machine.keeper(ends + DAY).root.certificate == keeper.root.certificate


def test_in_the_last_year_of_the_root_it_is_not_renewed_each_minute(machine: Machine) -> None:
    keeper = machine.keeper()
    near = keeper.root.certificate.not_valid_after_utc - 50 * DAY
    assert keeper.look(near)
    assert not keeper.look(near + timedelta(minutes=1))


def test_another_root_makes_another_server_certificate(machine: Machine, tmp_path: Path) -> None:
    keeper = machine.keeper()
    before = serial(keeper)
    other = Machine(tmp_path / "other").keeper()
    Cabinet(machine.folder).keep(ROOT, other.root)
    again = machine.keeper()
    assert serial(again) != before
    again.server.certificate.verify_directly_issued_by(other.root.certificate)


@pytest.mark.parametrize("damage", [b"", b"no certificate", None])
def test_a_damaged_root_stops_the_start_instead_of_making_every_phone_trust_anew(machine: Machine,
                                                                                damage: bytes | None) -> None:
    machine.keeper()
    path = machine.folder / "tls" / "root.pem"
    server = (machine.folder / "tls" / "server.pem").read_bytes()
    whole = path.read_bytes()
    path.write_bytes(server.split(b"-----BEGIN CERT")[0] + whole[whole.index(b"-----BEGIN CERT"):]
                     if damage is None else damage)
    with pytest.raises(ValueError, match=r"root\.pem is damaged.*backup"):
        machine.keeper()


def test_renewing_is_written_down(machine: Machine, caplog: pytest.LogCaptureFixture) -> None:
    keeper = machine.keeper()
    machine.hosts.append("192.168.1.78")
    with caplog.at_level(logging.INFO):
        keeper.look(NOW)
    assert "it lacked 192.168.1.78" in caplog.text


def test_only_tls_of_today_is_spoken(machine: Machine) -> None:
    assert machine.keeper().context.minimum_version == ssl.TLSVersion.TLSv1_2
