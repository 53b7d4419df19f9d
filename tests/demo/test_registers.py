"""The invented yard, as it stands after a fill."""

import json
from collections import Counter
from datetime import UTC, datetime
from pathlib import Path

import pytest

from checklist_app.checklists.register import REGISTERS
from checklist_app.commands.demo import PINS, fill, pins
from checklist_app.records.accounts import Accounts
from checklist_app.records.store import Store
from checklist_app.records.world import DatabaseWorld

NOW = datetime(2027, 3, 1, 9, 0, tzinfo=UTC)
TODAY = "2027-03-01"


@pytest.fixture(scope="module")
def folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    place = tmp_path_factory.mktemp("yard") / "demo"
    fill(place, NOW)
    return place


@pytest.fixture(scope="module")
def world(folder: Path) -> DatabaseWorld:
    return DatabaseWorld(Store(folder), TODAY)


def test_the_yard_holds_what_was_promised(world: DatabaseWorld) -> None:
    assert [len(world.items(name)) for name in ("load", "gear", "machine")] == [8, 34, 3]
    assert not [item.fault for name in REGISTERS for item in world.items(name).values() if item.fault]


def test_some_gear_is_due_overdue_quarantined_or_unproved(world: DatabaseWorld) -> None:
    gear = world.items("gear").values()
    assert any(item.state.due_soon for item in gear)
    assert any(item.state.overdue for item in gear)
    assert any(item.state.quarantined for item in gear)
    assert any(item.facts.get("origin") == "own-built" and "proof_test" not in item.facts for item in gear)


def test_there_is_somebody_in_each_role_and_one_whose_capacity_has_run_out(folder: Path, world: DatabaseWorld) -> None:
    roles = Counter(one.role for one in Accounts(Store(folder).database).all())
    assert set(roles) == {"rigger", "supervisor", "auditor", "administrator"}
    held = [row for person in world.items("person").values() for row in person.facts.get("capacities", ())]
    assert any(row["until"] < TODAY for row in held)


def test_dates_count_from_the_day_of_the_fill(world: DatabaseWorld) -> None:
    hoist = world.item("machine", "H-2")
    assert hoist is not None and hoist.state.due == "2027-03-10"


def test_every_pin_opens_its_account_and_only_the_owner_reads_the_file(folder: Path) -> None:
    accounts = Accounts(Store(folder).database)
    for name, given in pins(folder).items():
        account = accounts.named(name)
        assert account is not None and account.role == given["role"]
        accounts.check_pin(account.person, given["pin"], "", NOW)
    assert (folder / PINS).stat().st_mode & 0o077 == 0


def test_two_fills_give_different_pins(folder: Path, tmp_path: Path) -> None:
    assert fill(tmp_path / "other", NOW) != pins(folder)


def test_a_second_fill_changes_nothing(folder: Path) -> None:
    before, cursor = pins(folder), Store(folder).cursor()
    assert fill(folder, NOW) == before
    assert Store(folder).cursor() == cursor


def test_a_workshops_own_data_are_left_alone(tmp_path: Path) -> None:
    Store(tmp_path / "own").close()
    with pytest.raises(FileExistsError, match="folder of its own"):
        fill(tmp_path / "own", NOW)
    assert not (tmp_path / "own" / PINS).exists()


def test_a_fill_that_was_cut_off_starts_again(tmp_path: Path) -> None:
    cut_off = tmp_path / "demo.filling" / "parts"
    cut_off.mkdir(parents=True)
    (cut_off / "half").write_bytes(b"half a photo")
    fill(tmp_path / "demo", NOW)
    assert json.loads((tmp_path / "demo" / PINS).read_text()) and not cut_off.exists()
