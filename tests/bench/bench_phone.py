"""What a visit costs a phone: bytes over the air, time to a usable page and to the first check that the phone computed.

    python -m tests.bench.bench_phone [1,4,6]

Each slowness has a browser of its own, closed and opened again between the visits; it rests before the page is opened.
`busy` is a loop in the worker itself: only where it takes as many times longer did the brake reach it. Build the floors
first (`python -m checklist_app.engine.build floors`), and run it on a machine that does nothing else.
"""

import json
import logging
import os
import subprocess
import sys
import tempfile
import threading
from collections.abc import Iterable, Iterator
from contextlib import contextmanager
from datetime import date
from pathlib import Path
from typing import Any

from playwright.sync_api import Playwright, sync_playwright
from werkzeug.serving import make_server

from checklist_app.commands.demo import fill
from checklist_app.demo.phone import Phone
from checklist_app.web.app import create_app
from checklist_app.web.floors import current_name
from tests.bench import brake
from tests.browser.known import TO_WORKER, known

RIGGER, CHROMIUM, REST_MS = "Milo Harke", "/usr/bin/chromium", 3000
ARGUMENTS = ["--no-sandbox", "--disable-gpu", "--disable-background-networking", "--disable-component-update"]
DATA = ("/entries", "/parts", "/device")
ENGINE = """import(document.querySelector('script[src*="engine_start"]').src.replace("engine_start", "engine"))"""
FIRST = f"""async ([known, request]) => {{ const engine = await {ENGINE};
  engine.ask({{ do: "load", ...({TO_WORKER})(known) }});
  const told = await engine.ask({{ do: "answer", request }});
  const at = performance.now(), page = performance.getEntriesByType("navigation")[0];
  const paint = performance.getEntriesByName("first-contentful-paint")[0];
  const again = [];
  for (let n = 0; n < 10; n += 1) {{ const start = performance.now(); await engine.ask({{ do: "answer", request }});
    again.push(performance.now() - start); }}
  return {{ right: told.status === 200 && told.html.includes("Checks"), paint_ms: Math.round(paint?.startTime ?? 0),
    usable_ms: Math.round(page.domContentLoadedEventEnd), first_check_ms: Math.round(at),
    next_check_ms: Math.round(again.sort((a, b) => a - b)[5]) }}; }}"""
BUSY = """() => { const start = performance.now(); let x = 0; for (let i = 0; i < 4e7; i += 1) x = (x * 31 + i) | 0;
  return Math.round(performance.now() - start); }"""


class Counted:
    """An app, and how many bytes it has sent."""

    def __init__(self, app: Any) -> None:
        self.app, self.page, self.data, self.engine = app, 0, 0, 0

    def __call__(self, environ: dict[str, Any], start_response: Any) -> Iterable[bytes]:
        data = b"".join(self.app(environ, start_response))
        if environ["PATH_INFO"].startswith("/static/engine/"):
            self.engine += len(data)
        elif environ["PATH_INFO"].startswith(DATA):
            self.data += len(data)
        else:
            self.page += len(data)
        return [data]

    def taken(self) -> dict[str, int]:
        told = {"page_bytes": self.page, "data_bytes": self.data, "engine_bytes": self.engine}
        self.page = self.data = self.engine = 0
        return told


@contextmanager
def served(folder: Path) -> Iterator[tuple[str, Counted, str, str]]:
    """Address, counter, the rigger's PIN, and a task under way."""
    pin = fill(folder)[RIGGER]["pin"]
    app = create_app(folder)
    phone = Phone(app)
    phone.sign_in(RIGGER, pin)
    form = {"operation": "straight_lift", "lift": "VP-400|complete", "place": "pump-bay",
            "day": date.today().isoformat()}
    task = phone.send("/begin", **form).headers["Location"].partition("?")[0].rpartition("/")[0]
    counted = Counted(app.wsgi_app)
    server = make_server("127.0.0.1", 0, counted, threaded=True)
    thread = threading.Thread(target=server.serve_forever)
    thread.start()
    yield f"http://127.0.0.1:{server.server_port}", counted, pin, task
    server.shutdown()
    thread.join()


def visit(
    playwright: Playwright, profile: Path, address: str, sign_in: Any, asked: Any, times: float
) -> dict[str, Any]:
    """One visit of a browser that is opened for it."""
    context = playwright.chromium.launch_persistent_context(profile, executable_path=CHROMIUM, args=ARGUMENTS)
    context.set_default_timeout(120_000)
    try:
        page = context.pages[0]
        sign_in(page)
        page.wait_for_timeout(REST_MS)
        with braked(times):
            page.goto(address, wait_until="commit")
            page.wait_for_selector('script[src*="engine_start"]', state="attached")
            told = page.evaluate(FIRST, asked)
            told["busy_ms"] = page.workers[0].evaluate(BUSY)
        told["memory_mb"] = max(memory_mb(process) for process in brake.below(os.getpid()))
        page.wait_for_timeout(1000)
        return dict(told)
    finally:
        context.close()


@contextmanager
def braked(times: float) -> Iterator[None]:
    command = [sys.executable, brake.__file__, str(os.getpid()), str(times)]
    process = subprocess.Popen(command) if times > 1 else None
    try:
        yield
    finally:
        if process is not None:
            process.terminate()
            process.wait()


def memory_mb(process: int) -> int:
    lines = Path(f"/proc/{process}/smaps_rollup").read_text().splitlines()
    return int(next(line for line in lines if line.startswith("Pss:")).split()[1]) // 1024


def main(slownesses: list[float]) -> None:
    logging.getLogger("werkzeug").setLevel(logging.ERROR)
    print(f"floors: {current_name()}")
    with (tempfile.TemporaryDirectory() as scratch, sync_playwright() as playwright,
          served(Path(scratch) / "yard") as (url, counted, pin, task)):
        asked = [known(Path(scratch) / "yard"), request(task)]
        for times in slownesses:
            def sign_in(page: Any) -> None:
                page.request.post(f"{url}/sign-in", form=form_of(page, url, pin), headers={"Origin": url})
                counted.taken()

            for name in ("first", "second", "third"):
                profile = Path(scratch) / f"profile-{times}"
                told = visit(playwright, profile, f"{url}{task}/numbers?step=heights", sign_in, asked, times)
                print(json.dumps({"slower": times, "visit": name, **told, **counted.taken()}), flush=True)


def form_of(page: Any, url: str, pin: str) -> dict[str, str]:
    text = page.request.get(f"{url}/sign-in").text()
    token = text.partition('name="form-token" content="')[2].partition('"')[0]
    return {"form_token": token, "name": RIGGER, "typed": "", "pin": pin}


def request(task: str) -> dict[str, Any]:
    return {"method": "GET", "path": f"{task}/numbers", "query": {"step": "heights"}, "fragment": True, "device": "d",
            "counter": 1, "at": f"{date.today()}T08:00:00Z", "today": str(date.today()), "salt": "s",
            "person": {"id": "milo-harke", "name": RIGGER, "role": "rigger"}}


if __name__ == "__main__":
    main([float(each) for each in (sys.argv[1] if len(sys.argv) > 1 else "1,4,6").split(",")])
