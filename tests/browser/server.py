"""A real server in a process of its own, filled with the demo data."""

import re
import socket
import subprocess
import sys
import time
import urllib.error
import urllib.request
from dataclasses import dataclass
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
START_S = 120.0


@dataclass(frozen=True)
class Server:
    """A running server: where it answers, where its data lie, who may sign in with which PIN."""

    url: str
    folder: Path
    process: subprocess.Popen[bytes]
    log: Path

    def pin(self, name: str) -> str:
        found = re.search(rf"{re.escape(name)}\D*?(\d{{4,}})", self.log.read_text(encoding="utf-8", errors="replace"))
        assert found, f"the server printed no PIN for {name}"
        return found.group(1)

    def stop(self) -> None:
        self.process.terminate()
        self.process.wait(timeout=20)


def free_port() -> int:
    with socket.socket() as door:
        door.bind(("127.0.0.1", 0))
        return int(door.getsockname()[1])


def started(folder: Path) -> Server:
    port = free_port()
    log = folder.parent / f"{folder.name}.log"
    with log.open("wb") as out:
        process = subprocess.Popen(
            [sys.executable, "-u", "-m", "checklist_app", "serve", "--demo", "--folder", str(folder),
             "--host", "127.0.0.1", "--port", str(port)],
            cwd=ROOT, stdout=out, stderr=subprocess.STDOUT, stdin=subprocess.DEVNULL,
        )
    server = Server(f"http://127.0.0.1:{port}", folder, process, log)
    await_first_page(server)

    return server


def await_first_page(server: Server) -> None:
    end = time.monotonic() + START_S
    while time.monotonic() < end:
        if server.process.poll() is not None:
            break
        try:
            with urllib.request.urlopen(server.url, timeout=5):
                return
        except (urllib.error.URLError, ConnectionError, TimeoutError):
            time.sleep(0.1)
    server.process.kill()
    raise AssertionError(f"no page within {START_S:.0f} s:\n{server.log.read_text(errors='replace')[-3000:]}")
