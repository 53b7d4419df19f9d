"""A backup is made while the server runs, opens, and is put back only where nothing lies."""

import pytest

from checklist_app.checklists.canonical import digest
from checklist_app.records import sqlite
from checklist_app.records.backup import InTheWay, NoBackup, backup, restore
from checklist_app.records.store import DATABASE, SetBack, Store
from tests.records.brought import AT, TASK, batch, some

PHOTO = b"\xff\xd8\xff" + b"a picture" * 9


@pytest.fixture
def full(store):
    store.keep(some(10), {digest(PHOTO): PHOTO}, "d-1", AT)
    (store.records / "one.json").write_bytes(b"{}")
    return store


def files(folder):
    return {str(path.relative_to(folder)): path.read_bytes() for path in folder.rglob("*")
            if path.is_file() and DATABASE not in path.name}


def test_a_backup_taken_in_mid_work_is_put_back_whole(full, tmp_path):
    made = backup(full.folder, tmp_path / "backup")
    full.keep(some(5, "d-9"), {}, "d-9", AT)
    restored = restore(made, tmp_path / "again")
    again = Store(restored.folder)
    assert restored.missing == () and again.entries(TASK) == some(10)
    assert again.parts.get(digest(PHOTO)) == PHOTO
    assert files(made) == files(full.folder) == files(restored.folder)
    again.close()


def test_after_a_backup_was_put_back_sealing_waits_until_a_supervisor_has_looked(full, tmp_path):
    assert not full.sealing_waits
    again = Store(restore(backup(full.folder, tmp_path / "backup"), tmp_path / "again").folder)
    assert again.sealing_waits
    again.let_sealing_go_on()
    assert not again.sealing_waits
    again.close()


def test_a_phone_notices_that_the_server_was_set_back_and_offers_all_again(full, tmp_path):
    made = backup(full.folder, tmp_path / "backup")
    later = some(20, first=11)
    full.keep(later, {}, "d-1", AT)
    cursor = full.cursor()
    again = Store(restore(made, tmp_path / "again").folder)
    again.keep(some(20, "d-9"), {}, "d-9", AT)
    assert again.cursor()["number"] == cursor["number"], "the same number is there again, for something else"
    with pytest.raises(SetBack):
        again.since(cursor)
    assert {answer["state"] for answer in again.put("d-1", batch(*some(10), *later), AT)} == {"confirmed"}
    assert {entry.digest for entry in [*some(10), *later]} <= {entry.digest for entry in again.entries(TASK)}
    again.close()


def test_nothing_is_put_back_over_a_folder_that_is_in_use(full, tmp_path):
    made = backup(full.folder, tmp_path / "backup")
    before = files(full.folder)
    with pytest.raises(InTheWay, match="there already"):
        restore(made, full.folder)
    assert files(full.folder) == before and len(full.entries(TASK)) == 10


def test_neither_is_a_backup_written_over_anything(full, tmp_path):
    (tmp_path / "notes").mkdir()
    (tmp_path / "notes" / "mine.txt").write_text("mine")
    with pytest.raises(InTheWay):
        backup(full.folder, tmp_path / "notes")
    assert (tmp_path / "notes" / "mine.txt").read_text() == "mine"


def test_an_empty_folder_is_as_good_as_none(full, tmp_path):
    (tmp_path / "empty").mkdir()
    (tmp_path / "new").mkdir()
    assert restore(backup(full.folder, tmp_path / "empty"), tmp_path / "new").missing == ()


def test_a_backup_that_was_broken_off_is_never_taken_for_a_whole_one(full, tmp_path, monkeypatch):
    def broken(*_):
        raise OSError("the disk is full")

    with monkeypatch.context() as patched:
        patched.setattr("shutil.copy2", broken)
        with pytest.raises(OSError, match="full"):
            backup(full.folder, tmp_path / "backup")
    assert not (tmp_path / "backup").exists()
    assert backup(full.folder, tmp_path / "backup") == tmp_path / "backup"


def test_photographs_that_a_backup_lacks_or_that_were_altered_are_named(full, tmp_path):
    made = backup(full.folder, tmp_path / "backup")
    (made / "parts" / digest(PHOTO)[:2] / digest(PHOTO)).write_bytes(b"other")
    assert restore(made, tmp_path / "altered").missing == (digest(PHOTO),)
    (made / "parts" / digest(PHOTO)[:2] / digest(PHOTO)).unlink()
    assert restore(made, tmp_path / "lacking").missing == (digest(PHOTO),)


def test_what_is_no_backup_is_refused_in_words(full, tmp_path):
    with pytest.raises(NoBackup, match="no backup"):
        restore(tmp_path, tmp_path / "again")
    with pytest.raises(NoBackup, match="no data"):
        backup(tmp_path, tmp_path / "again")
    made = backup(full.folder, tmp_path / "backup")
    (made / DATABASE).write_bytes(b"SQLite format 3\x00" + b"rubbish" * 999)
    with pytest.raises(sqlite.Damaged):
        restore(made, tmp_path / "again")
    assert not (tmp_path / "again").exists()


def test_the_root_that_phones_trust_comes_along_for_its_owner_only(full, tmp_path):
    root = full.folder / "tls" / "root.pem"
    root.parent.mkdir()
    root.write_bytes(b"key and certificate")
    root.chmod(0o600)
    restored = restore(backup(full.folder, tmp_path / "backup"), tmp_path / "again").folder
    for folder in (tmp_path / "backup", restored):
        kept = folder / "tls" / "root.pem"
        assert kept.read_bytes() == b"key and certificate"
        assert kept.stat().st_mode & 0o077 == kept.parent.stat().st_mode & 0o077 == 0
