"""A database of an older schema is brought up in place, after a backup that opens."""

import sqlite3
from contextlib import closing
from pathlib import Path

import pytest

from checklist_app.checklists.fold import fold
from checklist_app.records import sqlite, upgrade
from checklist_app.records.accounts import Accounts
from checklist_app.records.database import SCHEMA
from checklist_app.records.store import DATABASE, Store
from checklist_app.records.upgrade import STEPS, TooNewDatabase, prepare, version
from checklist_app.records.world import DatabaseWorld
from tests.records import kept_schema
from tests.records.kept_schema import PHOTO, SLING, TASK, story

HERE = Path(__file__).parent
KEPT = {number: HERE / f"schema_{number}.sql" for number in range(1, SCHEMA + 1)}
ONCE_MORE = SCHEMA + 1


def folder_of(kept: Path, folder: Path) -> Path:
    """A server's folder with a database as it was kept, and the photograph beside it."""
    folder.mkdir()
    with closing(sqlite3.connect(folder / DATABASE)) as database:
        database.executescript(kept.read_text())
        database.execute("PRAGMA journal_mode = wal")
    photo = folder / "parts" / (name := kept_schema.digest(PHOTO))[:2] / name
    photo.parent.mkdir(parents=True)
    photo.write_bytes(PHOTO)
    return folder


def assert_all_there(folder: Path) -> None:
    store = Store(folder)
    assert {entry.digest for about in (TASK, SLING) for entry in store.entries(about)} == {e.digest for e in story()}
    assert [arrival.received_at for arrival in store.arrivals(TASK)] == [kept_schema.AT] * 4
    world = DatabaseWorld(store, "2026-11-25")
    sling = world.item("gear", "L-07")
    assert sling.facts["wll_t"] == "2" and sling.state.quarantined == ("cover cut",) and sling.state.due == "2027-01-10"
    assert fold(world.entries(TASK)).values[("mass_kg",)]["text"] == "2,400" and world.tasks() == [TASK[1]]
    assert world.part(kept_schema.digest(PHOTO)) == PHOTO and store.cursor()["number"] == len(story())
    assert Accounts(store.database).named("ada").role == "supervisor"
    assert store.devices.signed_in("d-1") == {"p-1": True}
    store.close()


@pytest.mark.parametrize("number", sorted(KEPT))
def test_a_database_of_every_published_schema_is_kept_and_opens_with_all_that_is_in_it(tmp_path, number):
    folder = folder_of(KEPT[number], tmp_path / "data")
    assert_all_there(folder)
    backups = sorted((folder / "backups").iterdir())
    assert len(backups) == (1 if number < SCHEMA else 0)
    for backup in backups:
        sqlite.check(backup)


def test_todays_tables_are_those_that_are_kept_under_todays_schema(tmp_path):
    """Whoever changes a table makes a new schema and a step to it."""
    kept_schema.fill(tmp_path / "new")

    def tables(text):
        return sorted(line for line in text.split("\n") if line.startswith("CREATE"))

    assert tables(kept_schema.text(tmp_path / "new")) == tables(KEPT[SCHEMA].read_text())


def test_a_key_registered_before_screen_locks_were_known_goes_on_signing_with_its_pin(tmp_path):
    folder = folder_of(KEPT[2], tmp_path / "data")
    with closing(sqlite3.connect(folder / DATABASE)) as database:
        row = ("a" * 64, "d-1", "p-1", "04", "2026-11-25T06:00:00Z", "", "")
        database.execute("INSERT INTO signkey VALUES (?, ?, ?, ?, ?, ?, ?)", row)
        database.commit()
    store = Store(folder)
    key = store.keys.find("a" * 64)
    assert store.keys.good("d-1") == {"p-1": "a" * 64} and store.keys.locks("d-1") == {}
    assert (key.how, key.credential, key.rp_id, key.origin) == ("phone-key", "", "", "")
    store.close()


def test_there_is_a_step_from_every_schema_to_the_next():
    assert set(STEPS) == set(range(1, SCHEMA))


def add_weather(database):
    """A step such as a later version may bring: a column with a value for what is there, and an index."""
    database.execute_sql("ALTER TABLE receipt ADD COLUMN weather TEXT NOT NULL DEFAULT 'not asked'")
    database.execute_sql("CREATE INDEX receipt_weather ON receipt (weather)")


def opened(folder):
    return sqlite.opened(folder / DATABASE)


def prepared(folder, step=add_weather, schema=ONCE_MORE):
    """Open the database as a later version of the app would, with one more step."""
    database = opened(folder)
    try:
        return prepare(database, folder / DATABASE, folder / "backups", {**STEPS, SCHEMA: step}, schema)
    finally:
        database.close()


def columns(path):
    with closing(sqlite3.connect(path)) as database:
        return {row[1] for row in database.execute("PRAGMA table_info(receipt)")}


@pytest.fixture
def folder(tmp_path):
    made = folder_of(KEPT[1], tmp_path / "data")
    Store(made).close()
    return made


def test_an_older_database_gets_the_new_column_in_place_and_its_backup_is_the_old_one_and_opens(folder, tmp_path):
    backup = prepared(folder)
    assert "weather" in columns(folder / DATABASE) and "weather" not in columns(backup)
    database = opened(folder)
    assert version(database) == ONCE_MORE
    said = database.execute_sql("SELECT DISTINCT weather FROM receipt").fetchall()
    database.close()
    assert said == [("not asked",)]
    older = tmp_path / "older"
    older.mkdir()
    backup.rename(older / DATABASE)
    (folder / "parts").rename(older / "parts")
    assert_all_there(older)


def test_a_second_start_changes_nothing_and_makes_no_second_backup(folder):
    assert prepared(folder) is not None and prepared(folder) is None
    assert len(list((folder / "backups").glob(f"before-schema-{ONCE_MORE}*"))) == 1


def test_a_step_that_fails_leaves_the_old_database_and_a_backup_and_can_be_tried_again(folder):
    def half(database):
        add_weather(database)
        raise RuntimeError("the power went off here")

    with pytest.raises(RuntimeError):
        prepared(folder, half)
    assert "weather" not in columns(folder / DATABASE)
    assert prepared(folder) is not None and "weather" in columns(folder / DATABASE)
    assert len(list((folder / "backups").glob(f"before-schema-{ONCE_MORE}*"))) == 2
    assert upgrade.SCHEMA == SCHEMA


def test_a_database_of_a_later_schema_is_refused_in_words_and_left_alone(folder):
    prepared(folder)
    before = (folder / DATABASE).read_bytes()
    with pytest.raises(TooNewDatabase, match="update the app"):
        Store(folder)
    assert (folder / DATABASE).read_bytes() == before
