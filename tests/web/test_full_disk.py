"""A full disk and a record that cannot be made: nothing confirmed is lost, nobody is told less than he needs."""

import errno
import hashlib
import os
from datetime import UTC
from pathlib import Path
from typing import NoReturn

import peewee
import pytest
from flask import Flask

from checklist_app.records import files
from checklist_app.records.chain import everything
from checklist_app.web.app import create_app
from checklist_app.web.faults import status_of
from tests.records.yard import whole_lift, yard
from tests.web.signed_in import People
from tests.web.test_entries import Phone

PHOTO = b"\xff\xd8\xff a picture"


def no_space(*_: object, **__: object) -> NoReturn:
    raise OSError(errno.ENOSPC, "No space left on device")


def a_fault_of_ours(*_: object, **__: object) -> NoReturn:
    raise KeyError("forgotten")


def test_a_photograph_that_found_no_room_is_not_kept_and_comes_again(
        app: Flask, people: People, monkeypatch: pytest.MonkeyPatch) -> None:
    phone, name = Phone(people.visitor("rigger"), "p-some-rigger"), hashlib.sha256(PHOTO).hexdigest()
    with monkeypatch.context() as full:
        full.setattr(os, "fsync", no_space)
        answer = phone.raw(PHOTO, f"/parts/{name}")
    assert (answer.status_code, answer.json["words"]) == (
        507, "The server's disk is full, so nothing more can be kept.")
    assert app.extensions["store"].parts.get(name) is None
    assert phone.raw(PHOTO, f"/parts/{name}").status_code == 200
    assert app.extensions["store"].parts.get(name) == PHOTO


@pytest.mark.parametrize("fault", [no_space, a_fault_of_ours])
def test_a_server_starts_with_a_record_that_cannot_be_made_and_makes_it_later(
        tmp_path: Path, monkeypatch: pytest.MonkeyPatch, fault) -> None:
    store = yard(tmp_path / "data")
    whole_lift(store)
    store.close()
    with monkeypatch.context() as broken:
        broken.setattr(files, "write", fault)
        started = create_app(tmp_path / "data", ZONE=UTC)
    assert everything(started.extensions["store"]) == []
    started.extensions["store"].close()
    again = create_app(tmp_path / "data", ZONE=UTC)
    assert len(everything(again.extensions["store"])) == 1
    again.extensions["store"].close()


@pytest.mark.parametrize(("error", "status"), [
    (OSError(errno.ENOSPC, "No space left on device"), 507), (OSError(errno.EACCES, "Permission denied"), 500),
    (peewee.OperationalError("database or disk is full"), 507), (peewee.OperationalError("database is locked"), 503),
    (KeyError("forgotten"), 500),
])
def test_a_fault_is_told_by_what_can_be_done_about_it(error: Exception, status: int) -> None:
    assert status_of(error) == status
