"""By hand: start, first page and memory of the real server; an entry's round trip against a bare route and commit.

    .venv/bin/python tests/bench/bench_server.py

Prints figures only; the last ones stand, with their date, in DEVELOPERS.md.
"""

import json
import sqlite3
import statistics
import sys
import tempfile
import time
from collections.abc import Callable
from pathlib import Path

from flask import Flask

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from checklist_app.checklists import values  # noqa: E402
from checklist_app.checklists.entry import make  # noqa: E402
from checklist_app.web.app import create_app  # noqa: E402
from tests.browser.server import started  # noqa: E402

ROUNDS = 300
ORIGIN = "http://localhost"


def main() -> None:
    with tempfile.TemporaryDirectory() as folder:
        start(Path(folder))
        ours, bare = entry_ms(Path(folder)), bare_ms(Path(folder))
    print(f"one entry, PUT to answer: {ours:.2f} ms")
    print(f"bare Flask route and SQLite commit: {bare:.2f} ms ({ours / bare:.1f}×)")


def start(folder: Path) -> None:
    """From the command to the first page, an empty folder with the demonstration to fill."""
    began = time.perf_counter()
    server = started(folder / "yard")
    first_s = time.perf_counter() - began
    status = Path(f"/proc/{server.process.pid}/status").read_text()
    memory_mb = next(int(line.split()[1]) for line in status.splitlines() if line.startswith("VmRSS")) / 1024
    server.stop()
    print(f"first page of a fresh demonstration: {first_s:.2f} s after the command; server {memory_mb:.0f} MB")


def entry_ms(folder: Path) -> float:
    app = create_app(folder / "own")
    store = app.extensions["store"]
    app.extensions["accounts"].add("p-1", "Somebody", "rigger")
    _, credential = store.devices.enrol("d-1")
    store.devices.sign_in("d-1", "p-1")
    client = app.test_client()
    headers = {"Authorization": f"Bearer {credential}", "Origin": ORIGIN}

    def put(number: int) -> None:
        said = make(("task", "t-1"), ("mass_kg",), values.number(str(number), "kg"), (), "p-1", "d-1", number,
                    "2026-11-25T08:00:00Z")
        answer = client.put("/entries", headers=headers, json={"entries": [{"body": said.data.decode(), "parts": {}}]})
        assert answer.status_code == 200, answer.get_data(as_text=True)
        assert answer.json["entries"][0]["state"] == "confirmed", answer.get_data(as_text=True)

    return median_ms(put)


def bare_ms(folder: Path) -> float:
    database = sqlite3.connect(folder / "bare.db", isolation_level=None)
    database.execute("pragma journal_mode = wal")
    database.execute("pragma synchronous = full")
    database.execute("create table kept (data blob)")
    app = Flask("bare")

    @app.put("/entries")
    def keep() -> str:
        from flask import request

        database.execute("insert into kept values (?)", (request.get_data(),))
        return "{}"

    client = app.test_client()
    body = json.dumps({"entries": [{"body": "x" * 280, "parts": {}}]})

    return median_ms(lambda number: client.put("/entries", data=body))


def median_ms(once: Callable[[int], object]) -> float:
    taken = []
    for number in range(1, ROUNDS + 1):
        began = time.perf_counter()
        once(number)
        taken.append(time.perf_counter() - began)

    return statistics.median(taken) * 1000


if __name__ == "__main__":
    main()
