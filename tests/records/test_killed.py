"""kill -9 at any moment: what was acknowledged is there, what was not can simply be sent again."""

import hashlib
import random
import signal
import subprocess
import sys
import time
from pathlib import Path

import pytest

from checklist_app.checklists.canonical import digest
from checklist_app.records import sqlite
from checklist_app.records.database import Server
from checklist_app.records.store import DATABASE, Store
from tests.records.writer import photo

ROOT = Path(__file__).parents[2]
TASK = ("task", "t-1")
WRITES = 200
KILLS = 10
SEED = 20261125


def started(folder, device, first, count, *how):
    program = [sys.executable, "-m", "tests.records.writer", str(folder), device, str(first), str(count), *how]
    process = subprocess.Popen(program, cwd=ROOT, stdout=subprocess.PIPE, text=True)
    assert process.stdout.readline() == "ready\n"
    return process


def rest(process):
    """What a writer that has ended acknowledged: digest and number; a line broken off was acknowledged to nobody."""
    with process.stdout:
        lines = process.stdout.read().split("\n")[:-1]
    assert process.wait() in (0, -signal.SIGKILL)
    return [line.split() for line in lines]


def assert_whole(folder, acknowledged):
    """Every acknowledged entry and its photograph are there, and the receipts run without a gap."""
    sqlite.check(folder / DATABASE)
    store = Store(folder)
    arrivals = store.arrivals(TASK)
    head = Server.select(Server.origin).tuples().first(store.database)[0]
    for arrival in arrivals:
        head = hashlib.sha256((head + arrival.entry.digest).encode()).hexdigest()
    assert [arrival.number for arrival in arrivals] == list(range(1, len(arrivals) + 1))
    assert store.cursor() == {"number": len(arrivals), "head": head}
    assert set(acknowledged) <= {arrival.entry.digest for arrival in arrivals}
    for arrival in arrivals:
        data = store.parts.get(arrival.entry.value["part"])
        assert data is not None and digest(data) == arrival.entry.value["part"]
    store.close()
    return len(arrivals)


def test_killed_at_random_moments_of_200_writes_nothing_acknowledged_is_lost(tmp_path):
    rng = random.Random(SEED)
    acknowledged, done, kills = [], 0, 0
    while done < WRITES:
        process = started(tmp_path, "d-1", done + 1, WRITES - done)
        if kills < KILLS:
            time.sleep(rng.uniform(0.0, 0.06))
            process.kill()
            kills += 1
        said = rest(process)
        acknowledged += [name for name, _ in said]
        done = max([done, *(int(number) for _, number in said)])
        assert assert_whole(tmp_path, acknowledged) >= len(set(acknowledged)), f"seed {SEED}"
    assert kills == KILLS and assert_whole(tmp_path, acknowledged) == WRITES == len(set(acknowledged))


@pytest.mark.parametrize("moment", ["die-before-row", "die-before-rename"])
def test_killed_between_the_photograph_and_its_row_nothing_is_lost_and_the_same_is_sent_again(tmp_path, moment):
    acknowledged = [name for name, _ in rest(started(tmp_path, "d-1", 1, 3))]
    process = started(tmp_path, "d-1", 4, 1, moment)
    assert rest(process) == [] and process.returncode == -signal.SIGKILL
    data = photo("d-1", 4)
    store = Store(tmp_path)
    assert store.parts.path(digest(data)).exists() == (moment == "die-before-row")
    assert store.parts.get(digest(data)) is None and store.cursor()["number"] == 3
    store.close()
    acknowledged += [name for name, _ in rest(started(tmp_path, "d-1", 4, 1))]
    assert assert_whole(tmp_path, acknowledged) == 4


def test_two_processes_write_at_once_and_every_entry_has_its_own_receipt(tmp_path):
    processes = [started(tmp_path, f"d-{number}", 1, 60) for number in range(2)]
    acknowledged = [name for process in processes for name, _ in rest(process)]
    assert assert_whole(tmp_path, acknowledged) == len(acknowledged) == 120


def test_two_servers_that_start_at_once_make_one_database(tmp_path):
    processes = [started(tmp_path / "new", f"d-{number}", 1, 1) for number in range(2)]
    for process in processes:
        rest(process)
    assert assert_whole(tmp_path / "new", []) == 2
