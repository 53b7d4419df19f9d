"""A server with https at a name, and a browser that trusts its root or does not."""

import os
import shutil
import subprocess
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest
from playwright.sync_api import Browser, BrowserContext

from checklist_app.records.store import Store
from tests.browser.conftest import PATIENCE_MS, PHONE
from tests.browser.server import ROOT, Server, await_first_page, free_port

NAME = "shed.local"
NO_CERTUTIL = "no certutil on this machine: install Debian's package libnss3-tools to let a browser trust a root"
QUIET = ("--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
         "--disable-component-update", "--disable-sync")


class Secured:
    """The yard served by https and by http, on an address of this machine that may change."""

    def __init__(self, folder: Path, *more: str) -> None:
        self.folder, self.more = folder, more
        self.log = folder.parent / f"{folder.name}.log"
        self.http_port, self.https_port = free_port(), free_port()
        self.start("127.0.0.1")

    @property
    def url(self) -> str:
        return f"https://{NAME}:{self.https_port}"

    @property
    def http(self) -> str:
        return f"http://{NAME}:{self.http_port}"

    @property
    def root(self) -> bytes:
        """The root as the trust page gives it, taken from the file it is kept in."""
        return b"-----BEGIN CERTIFICATE" + (self.folder / "tls" / "root.pem").read_bytes().partition(
            b"-----BEGIN CERTIFICATE")[2]

    def start(self, address: str) -> None:
        self.address = address
        command = [sys.executable, "-u", "-m", "checklist_app", "serve", "--demo", "--folder", str(self.folder),
                   "--host", address, "--port", str(self.http_port), "--https-port", str(self.https_port), *self.more]
        with self.log.open("wb") as out:
            self.process = subprocess.Popen(command, cwd=ROOT, stdout=out, stderr=subprocess.STDOUT,
                                            stdin=subprocess.DEVNULL)
        await_first_page(self.by_http())

    def by_http(self) -> Server:
        return Server(f"http://{self.address}:{self.http_port}", self.folder, self.process, self.log)

    def pin(self, name: str) -> str:
        return self.by_http().pin(name)

    def digests(self) -> set[str]:
        """What is in the database."""
        store = Store(self.folder)
        try:
            return {digest for (digest,) in store.database.execute_sql("select entry_id from receipt").fetchall()}
        finally:
            store.close()

    def kill(self) -> None:
        self.process.kill()
        self.process.wait(timeout=20)


@contextmanager
def secured(yard: Path, folder: Path, *more: str) -> Iterator[Secured]:
    shutil.copytree(yard, folder)
    server = Secured(folder, "--name", NAME, *more)
    try:
        yield server
    finally:
        server.kill()


@contextmanager
def visitor(browser: Browser, chromium: str, home: Path, root: bytes = b"", address: str = "127.0.0.1",
            names: str = NAME) -> Iterator[BrowserContext]:
    """A browser with a home of its own: what it keeps and whom it trusts stays there from one time to the next."""
    if root and not (home / ".pki").exists():
        trust(home, root)
    home.mkdir(parents=True, exist_ok=True)
    rules = ",".join(f"MAP {name} {address}" for name in names.split())
    context = browser.browser_type.launch_persistent_context(
        home / "profile", executable_path=chromium, args=[*QUIET, f"--host-resolver-rules={rules}"],
        env={**os.environ, "HOME": str(home)}, headless=True, viewport=PHONE)
    context.set_default_timeout(PATIENCE_MS)
    try:
        yield context
    finally:
        context.close()


def trust(home: Path, root: bytes) -> None:
    """What the trust page tells for Chromium on Linux."""
    if shutil.which("certutil") is None:
        pytest.skip(NO_CERTUTIL)
    store, file = home / ".pki" / "nssdb", home / "workshop-root.crt"
    store.mkdir(parents=True)
    file.write_bytes(root)
    subprocess.run(["certutil", "-d", f"sql:{store}", "-N", "--empty-password"], check=True)
    subprocess.run(["certutil", "-d", f"sql:{store}", "-A", "-t", "C,,", "-n", "workshop", "-i", str(file)], check=True)
