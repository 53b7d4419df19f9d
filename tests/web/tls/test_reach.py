"""The one name: what is chosen at first, and that it stays."""

import doctest

import pytest

from checklist_app.web.tls import reach
from checklist_app.web.tls.reach import canonical, in_link, label, plain_host, tidy_host


def test_the_examples_hold() -> None:
    assert doctest.testmod(reach).failed == 0


@pytest.mark.parametrize(("kept", "addresses", "announced", "chosen"), [
    ("", ["192.168.1.20"], True, "shed.local"),
    ("", ["192.168.1.20"], False, "192.168.1.20"),
    ("", [], False, "shed.local"),
    ("old.local", ["192.168.1.20"], True, "old.local"),
    ("old.local", ["192.168.1.20"], False, "old.local"),
    ("192.168.1.20", ["192.168.1.77", "192.168.1.20"], True, "192.168.1.20"),
    ("192.168.1.20", ["192.168.1.77"], False, "192.168.1.77"),
])
def test_a_name_once_chosen_stays_as_long_as_it_can(kept: str, addresses: list[str], announced: bool,
                                                    chosen: str) -> None:
    assert canonical("", kept, "shed", addresses, announced) == chosen


def test_what_the_command_line_says_goes_before_everything() -> None:
    assert canonical("checklist.lan", "old.local", "shed", ["192.168.1.20"], True) == "checklist.lan"


@pytest.mark.parametrize(("typed", "meant"), [
    ("Checklist.LAN", "checklist.lan"), (" shed.local. ", "shed.local"), ("192.168.1.20", "192.168.1.20"),
    ("[FD00::7]", "fd00::7"),
])
def test_a_name_is_read_as_it_is_meant(typed: str, meant: str) -> None:
    assert tidy_host(typed) == meant


@pytest.mark.parametrize("typed", ["https://shed.local", "shed local", "shed.local:8443", "-shed", "300.1.1.1",
                                   "a..b", ""])
def test_what_is_no_name_is_refused_in_words(typed: str) -> None:
    with pytest.raises(ValueError, match=r"write it like checklist\.local"):
        tidy_host(typed)


@pytest.mark.parametrize("hostname", ["", "localhost", "...", "___"])
def test_a_machine_without_a_name_gets_one(hostname: str) -> None:
    assert label(hostname) == "checklist"


def test_an_address_of_six_stands_in_brackets() -> None:
    assert in_link("fd00::7") == "[fd00::7]"
    assert plain_host("[fd00::7]:8443") == "fd00::7"
    assert plain_host("SHED.local.:8443") == "shed.local"
