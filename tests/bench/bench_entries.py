"""What an entry costs on its way in, each figure beside a bare one: python -m tests.bench.bench_entries.

The bare route commits one row of the same bytes to SQLite with the same care (WAL, synchronous FULL). Both go through
Flask's test client, so that no network stands between. Medians of 200; run it on a machine that does nothing else.
"""

import json
import sqlite3
import statistics
import tempfile
import time
from collections.abc import Callable, Iterator
from pathlib import Path

from flask import Flask, request
from flask.testing import FlaskClient

from checklist_app.checklists import values
from checklist_app.checklists.entry import Entry, make, read
from checklist_app.checklists.fold import fold
from checklist_app.records.store import DATABASE, Store
from checklist_app.records.world import DatabaseWorld
from checklist_app.web.app import create_app

AT, DAY = "2026-11-25T09:00:00Z", "2026-11-25"
TIMES = 200


def told(label: str, run: Callable[[], object], times: int = TIMES) -> float:
    took = []
    for _ in range(times):
        start = time.perf_counter()
        run()
        took.append((time.perf_counter() - start) * 1000)
    median = statistics.median(took)
    print(f"{label:62s} {median:8.3f} ms   best {min(took):8.3f} ms")
    return median


def entries(task: str, device: str = "d-1") -> Iterator[Entry]:
    """A third of the answers replace an earlier one."""
    last: dict[tuple[str, ...], str] = {}
    for number in range(1, 1_000_000):
        path = ("leg", f"{number % 2}-leg", f"prompt_{number % 45}") if number % 3 else (f"prompt_{number % 101}",)
        before = [last[path]] if path in last and number % 3 == 0 else []
        entry = make(("task", task), path, values.number(str(number), "kg", "plate"), before, "p-1", device, number, AT)
        last[path] = entry.digest
        yield entry


def batches(size: int, task: str, count: int) -> list[str]:
    """As many batches, each of a task of its own."""
    made = []
    for number in range(count):
        left = entries(f"{task}-{number}")
        made.append(json.dumps({"entries": [{"body": next(left).data.decode()} for _ in range(size)]}))
    return made


def bare(path: Path) -> Flask:
    app = Flask(__name__)
    database = sqlite3.connect(path, isolation_level=None)
    database.execute("PRAGMA journal_mode = wal")
    database.execute("PRAGMA synchronous = full")
    database.execute("CREATE TABLE kept (number INTEGER PRIMARY KEY, data BLOB)")

    @app.put("/entries")
    def put() -> dict[str, int]:
        bodies = [(each["body"],) for each in request.json["entries"]]
        database.execute("BEGIN IMMEDIATE")
        database.executemany("INSERT INTO kept (data) VALUES (?)", bodies)
        database.execute("COMMIT")
        return {"kept": len(bodies)}

    return app


def main(folder: Path) -> None:
    app = create_app(folder / "data")
    store: Store = app.extensions["store"]
    name, secret = store.devices.enrol("d-1")
    store.devices.sign_in(name, "p-1")
    another = sqlite3.connect(folder / "data" / DATABASE)  # a running server's main thread keeps one open, too
    another.execute("SELECT count(*) FROM kept").fetchone()
    headers = {"Authorization": f"Bearer {secret}", "Origin": "http://localhost"}
    clients = {"ours": app.test_client(), "bare": bare(folder / "bare.db").test_client()}
    for size in (1, 50):
        medians = {}
        for who, client in clients.items():
            left = iter(batches(size, f"t-{size}", TIMES))

            def put(client: FlaskClient = client, left: Iterator[str] = left) -> None:
                answer = client.put("/entries", data=next(left), headers=headers, content_type="application/json")
                assert answer.status_code == 200, answer.text

            medians[who] = told(f"PUT /entries, {size} new, {who}", put)
        print(f"{'':62s} {medians['ours'] / medians['bare']:8.1f} times the bare route")
    some = [entry for _, entry in zip(range(500), entries("t-500"), strict=False)]
    told("read and check 50 entries at the door", lambda: [read(entry.data) for entry in some[:50]])
    told("fold a task of 500", lambda: fold(some))
    told("  bare: one dict and one set over the 500",
         lambda: ({entry.digest: entry for entry in some}, {name for entry in some for name in entry.replaces}))
    store.keep(some, {}, "d-1", AT)
    told("a world and the task of 500, asked before", lambda: DatabaseWorld(store, DAY).entries(("task", "t-500")))
    told("the same by a server just started", lambda: fresh(folder / "data"), 20)
    store.close()
    another.close()


def fresh(folder: Path) -> None:
    store = Store(folder)
    DatabaseWorld(store, DAY).entries(("task", "t-500"))
    store.close()


if __name__ == "__main__":
    with tempfile.TemporaryDirectory() as made:
        main(Path(made))
