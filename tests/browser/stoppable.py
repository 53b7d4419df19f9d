"""A server that is really stopped, by SIGKILL, and started again on the same database at the same address."""

import subprocess
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from checklist_app.records.store import Store
from tests.browser.server import ROOT, Server, await_first_page, free_port

# The page's own modules, under the address at which it loaded them.
MODULE = """const module = (name) => import(document.querySelector('script[src*="/js/phone.js"]').src
  .replace("phone.js", name + ".js"));"""
WITHIN_MS = 90_000


class Stoppable:
    """The demonstration, by http only."""

    def __init__(self, folder: Path) -> None:
        self.folder, self.port, self.root = folder, free_port(), ROOT
        self.url = f"http://127.0.0.1:{self.port}"
        self.log = folder.parent / f"{folder.name}.log"
        self.begin_again()
        self.wait()

    def pin(self, name: str) -> str:
        return self.as_server().pin(name)

    def as_server(self) -> Server:
        return Server(self.url, self.folder, self.process, self.log)

    def wait(self) -> None:
        await_first_page(self.as_server())

    def kill(self) -> None:
        self.process.kill()
        self.process.wait(timeout=20)

    def again(self) -> None:
        self.begin_again()
        self.wait()

    def begin_again(self) -> None:
        """Without waiting until it answers."""
        self.process = start(self.folder, self.port, self.log, self.root)

    def digests(self) -> list[str]:
        """What is in the database, however often."""
        store = Store(self.folder)
        try:
            return [digest for (digest,) in store.database.execute_sql("select entry_id from receipt").fetchall()]
        finally:
            store.close()


def start(folder: Path, port: int, log: Path, root: Path = ROOT) -> "subprocess.Popen[bytes]":
    command = [sys.executable, "-u", "-m", "checklist_app", "serve", "--demo", "--http-only", "--folder", str(folder),
               "--host", "127.0.0.1", "--port", str(port)]
    with log.open("wb") as out:
        return subprocess.Popen(command, cwd=root, stdout=out, stderr=subprocess.STDOUT, stdin=subprocess.DEVNULL)


@contextmanager
def stoppable(folder: Path) -> Iterator[Stoppable]:
    server = Stoppable(folder)
    try:
        yield server
    finally:
        server.process.kill()
        server.process.wait(timeout=20)
