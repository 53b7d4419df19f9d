"""`serve` with https, in a process of its own: what it says, which name it keeps, what it refuses to start with."""

import re
import socket
import ssl
import subprocess
import sys
import urllib.request
from collections.abc import Iterator
from contextlib import contextmanager
from datetime import UTC, datetime, timedelta
from pathlib import Path

from checklist_app.commands.https import Secured
from checklist_app.web.site import Site
from checklist_app.web.tls.cabinet import Cabinet
from checklist_app.web.tls.certificates import root, server
from checklist_app.web.tls.keeper import Keeper
from tests.web.tls.handshake import pem

ROOT = Path(__file__).resolve().parents[2]
NOW = datetime.now(UTC)
LINES_MOST = 80
START = [sys.executable, "-m", "checklist_app", "serve", "--port", "0"]


@contextmanager
def running(folder: Path, *more: str, host: str = "127.0.0.1") -> Iterator[str]:
    """A server, and what it said until it was ready."""
    process = subprocess.Popen([*START, "--host", host, "--folder", str(folder), *more], cwd=ROOT,
                               stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True)
    said = ""
    for _ in range(LINES_MOST):
        line = process.stdout.readline()  # type: ignore[union-attr]
        said += line
        if not line or "Ctrl-C" in line:
            break
    try:
        yield said
    finally:
        process.terminate()
        process.communicate(timeout=20)


def refused(folder: Path, *more: str) -> str:
    done = subprocess.run([*START, "--host", "127.0.0.1", "--folder", str(folder), *more], cwd=ROOT,
                          capture_output=True, text=True, timeout=60, check=False)
    assert done.returncode == 2, done.stdout
    assert "Traceback" not in done.stderr
    return done.stderr


def answered(address: str, port: int, name: str, folder: Path) -> int:
    """Ask an address by https, believing the workshop's root and insisting on the name."""
    context = ssl.create_default_context(cadata=(folder / "tls" / "root.pem").read_text().partition(
        "-----END PRIVATE KEY-----")[2])
    with socket.create_connection((address, port), timeout=10) as plain, \
            context.wrap_socket(plain, server_hostname=name) as secure:
        secure.sendall(f"GET /trust HTTP/1.1\r\nHost: {name}:{port}\r\nConnection: close\r\n\r\n".encode())
        return int(secure.recv(64).split()[1])


def https_of(said: str) -> tuple[str, int]:
    found = re.search(r"https: https://([^:/]+):(\d+)/", said)
    assert found, said
    return found.group(1), int(found.group(2))


def test_the_start_names_both_addresses_the_trust_page_and_the_fingerprint(tmp_path: Path) -> None:
    with running(tmp_path / "data", "--name", "shed.local") as said:
        name, port = https_of(said)
        assert name == "shed.local"
        page = re.search(r"http://127\.0\.0\.1:\d+/trust", said)
        assert page, said
        with urllib.request.urlopen(page.group(0), timeout=10) as answer:
            shown = answer.read().decode()
        print_ = re.search(r"Fingerprint of the root certificate: ([0-9A-F ]{79})", said)
        assert print_ and print_.group(1) in shown
        assert answered("127.0.0.1", port, "shed.local", tmp_path / "data") == 200


def test_the_name_and_the_root_stay_when_the_address_changes(tmp_path: Path) -> None:
    folder = tmp_path / "data"
    with running(folder, "--name", "shed.local"):
        before = (folder / "tls" / "root.pem").read_bytes()
    with running(folder, host="127.0.0.2") as said:
        name, port = https_of(said)
        assert name == "shed.local", "the name is given once"
        assert answered("127.0.0.2", port, "shed.local", folder) == 200
        assert answered("127.0.0.2", port, "127.0.0.2", folder) == 200, "the certificate lacks the new address"
    assert (folder / "tls" / "root.pem").read_bytes() == before


def test_where_no_name_resolves_the_address_is_the_name(tmp_path: Path) -> None:
    with running(tmp_path / "data") as said:
        assert https_of(said)[0] == "127.0.0.1"


def test_for_trying_it_can_be_left_out(tmp_path: Path) -> None:
    with running(tmp_path / "data", "--http-only") as said:
        assert "https" not in said
    assert not (tmp_path / "data" / "tls").exists()


def test_a_certificate_from_elsewhere_is_served_under_its_own_name(tmp_path: Path) -> None:
    elsewhere = root("Elsewhere", ["checklist.firm.example"], NOW)
    both = pem(tmp_path / "both.pem", server(elsewhere, ["checklist.firm.example"], NOW))
    with running(tmp_path / "data", "--cert", str(both), "--key", str(both)) as said:
        assert https_of(said)[0] == "checklist.firm.example"
        assert "Fingerprint" not in said
    assert not (tmp_path / "data" / "tls" / "root.pem").exists()
    with running(tmp_path / "data") as said:
        assert https_of(said)[0] == "127.0.0.1", "a name was kept that the workshop's own certificate is not for"


def test_what_cannot_serve_is_refused_in_words(tmp_path: Path) -> None:
    elsewhere = root("Elsewhere", ["firm.example"], NOW)
    over = pem(tmp_path / "over.pem", server(elsewhere, ["firm.example"], NOW - timedelta(days=500)))
    good = pem(tmp_path / "good.pem", server(elsewhere, ["*.firm.example"], NOW))
    data = tmp_path / "data"
    assert "ended on" in refused(data, "--cert", str(over), "--key", str(over))
    assert "is not the key of" in refused(data, "--cert", str(good), "--key", str(over))
    assert "belong together" in refused(data, "--cert", str(good))
    assert "say with --name" in refused(data, "--cert", str(good), "--key", str(good))
    assert "is not for shed.local" in refused(data, "--cert", str(good), "--key", str(good), "--name", "shed.local")
    assert "neither a name nor an address" in refused(data, "--name", "https://shed")
    with running(data):
        pass
    assert "choose one ending in .local" in refused(data, "--name", "checklist.firm.example")


def test_a_taken_https_port_ends_the_start_but_not_a_demonstration(tmp_path: Path) -> None:
    with socket.socket() as taken:
        taken.bind(("127.0.0.1", 0))
        taken.listen()
        port = str(taken.getsockname()[1])
        assert f"https port {port} cannot be had: choose another" in refused(tmp_path / "data", "--https-port", port)
        with running(tmp_path / "yard", "--demo", "--https-port", port) as said:
            assert "No https: https port" in said
            assert "The checklist answers at http://127.0.0.1" in said


def test_the_watch_renews_and_leaves_a_server_that_listens_elsewhere_alone(tmp_path: Path) -> None:
    keeper = Keeper(tmp_path, "Checklist of shed", ["shed"], lambda: ["shed.local"], NOW)
    secure = Secured(Site(keeper, Cabinet(tmp_path), "shed.local"), "127.0.0.1", 0)
    before = keeper.context
    secure.look(NOW)
    assert keeper.context is before
    secure.look(NOW + timedelta(days=300))
    assert keeper.context is not before
