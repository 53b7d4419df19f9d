"""Small parts lie in the database, photographs in files named by their digest."""

import os

import pytest

from checklist_app.checklists.canonical import digest
from checklist_app.records.parts import LARGEST_BYTES, NotThatPart
from checklist_app.records.store import Store

PHOTO = b"\xff\xd8\xff" + b"a picture" * 9
TEXT = b'{"salt":"1","text":"bed 3"}'


def test_a_photograph_is_a_file_under_its_digest_and_a_text_is_not(store):
    store.parts.put(digest(PHOTO), PHOTO)
    store.parts.put(digest(TEXT), TEXT)
    files = [path for path in (store.folder / "parts").rglob("*") if path.is_file()]
    assert files == [store.parts.path(digest(PHOTO))] and files[0].read_bytes() == PHOTO
    assert store.parts.get(digest(PHOTO)) == PHOTO and store.parts.get(digest(TEXT)) == TEXT
    assert store.parts.here([digest(PHOTO), digest(TEXT), digest(b"other")]) == {digest(PHOTO), digest(TEXT)}
    assert store.parts.small([digest(PHOTO), digest(TEXT)]) == {digest(TEXT): TEXT}


def test_what_is_large_is_a_file_whatever_it_is(store):
    data = b"x" * 70_000
    store.parts.put(digest(data), data)
    assert store.parts.path(digest(data)).is_file() and store.parts.get(digest(data)) == data


@pytest.mark.parametrize(("name", "data", "words"), [
    (digest(b"other"), PHOTO, "not what their digest says"), ("../../etc/passwd", PHOTO, "not what"),
    (digest(b"x" * (LARGEST_BYTES + 1)), b"x" * (LARGEST_BYTES + 1), "at most"),
], ids=["another name", "a path", "too many"])
def test_bytes_under_another_name_or_too_many_are_refused_and_leave_nothing(store, name, data, words):
    with pytest.raises(NotThatPart, match=words):
        store.parts.put(name, data)
    assert not [path for path in (store.folder / "parts").rglob("*") if path.is_file()]


def test_the_same_part_again_changes_nothing(store):
    store.parts.put(digest(PHOTO), PHOTO)
    before = os.stat(store.parts.path(digest(PHOTO)))
    store.parts.put(digest(PHOTO), PHOTO)
    after = os.stat(store.parts.path(digest(PHOTO)))
    assert (before.st_ino, before.st_mtime_ns) == (after.st_ino, after.st_mtime_ns)


def test_the_photograph_and_its_folder_are_on_the_disk_before_its_row(store, monkeypatch):
    """Watches the system's own calls, in their order."""
    synced, rows = [], []
    real_fsync, real_insert = os.fsync, store.parts.insert_rows

    def fsync(handle):
        synced.append(os.readlink(f"/proc/self/fd/{handle}"))
        real_fsync(handle)

    def insert_rows(parts):
        rows.append(list(synced))
        real_insert(parts)

    monkeypatch.setattr(os, "fsync", fsync)
    monkeypatch.setattr(store.parts, "insert_rows", insert_rows)
    store.parts.put(digest(PHOTO), PHOTO)
    file, folder = store.parts.path(digest(PHOTO)), store.parts.path(digest(PHOTO)).parent
    assert [path for path in rows[0] if path.startswith(str(file))] and str(folder) in rows[0]
    assert str(folder.parent) in rows[0]


def test_a_row_without_its_file_is_no_part(store):
    store.parts.put(digest(PHOTO), PHOTO)
    store.parts.path(digest(PHOTO)).unlink()
    assert store.parts.get(digest(PHOTO)) is None


def test_a_store_opened_again_still_has_its_parts(store):
    store.parts.put(digest(PHOTO), PHOTO)
    store.close()
    again = Store(store.folder)
    assert again.parts.get(digest(PHOTO)) == PHOTO
    again.close()
