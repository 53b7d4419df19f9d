"""The door of TLS on a real socket: a new certificate at the next handshake, nobody waits for somebody else's."""

import http.client
import socket
import ssl
import threading
import time
from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from cheroot.wsgi import Server
from cryptography import x509

from checklist_app.web.tls.door import Door, Greeting
from checklist_app.web.tls.keeper import Keeper

NOW = datetime.now(UTC)
THREADS = 4


def app(environ: dict, start: object) -> list[bytes]:
    start("200 OK", [("Content-Type", "text/plain")])  # type: ignore[operator]
    return [environ["wsgi.url_scheme"].encode()]


class Served:
    def __init__(self, folder: Path) -> None:
        self.keeper = Keeper(folder, "Checklist of shed", ["shed"], lambda: ["127.0.0.1"], NOW)
        self.server = Server(("127.0.0.1", 0), app, numthreads=THREADS, timeout=10)
        self.server.ssl_adapter, self.server.ConnectionClass = Door(self.keeper), Greeting
        self.server.shutdown_timeout = 1
        self.server.prepare()
        self.port = self.server.bind_addr[1]
        self.thread = threading.Thread(target=self.server.serve)
        self.thread.start()

    def asked(self) -> tuple[str, int]:
        """What came back, and the serial number of the certificate it came with."""
        context = ssl.create_default_context(cadata=self.keeper.root_file.decode())
        connection = http.client.HTTPSConnection("127.0.0.1", self.port, context=context, timeout=8)
        connection.connect()
        shown = x509.load_der_x509_certificate(connection.sock.getpeercert(True))  # type: ignore[union-attr]
        connection.request("GET", "/")
        body = connection.getresponse().read().decode()
        connection.close()
        return body, shown.serial_number

    def stop(self) -> None:
        self.server.stop()
        self.thread.join()


@pytest.fixture
def served(tmp_path: Path) -> Iterator[Served]:
    running = Served(tmp_path)
    yield running
    running.stop()


def test_an_answer_comes_by_https(served: Served) -> None:
    assert served.asked() == ("https", served.keeper.server.certificate.serial_number)


def test_a_renewed_certificate_is_offered_at_the_next_handshake(served: Served) -> None:
    _, before = served.asked()
    assert served.keeper.look(NOW + timedelta(days=300))
    served.keeper.look(NOW)  # the clock of the test goes back, so that the handshake's own clock agrees
    _, after = served.asked()
    assert after == served.keeper.server.certificate.serial_number != before


def test_phones_that_fall_silent_before_the_handshake_keep_nobody_waiting(served: Served) -> None:
    silent = [socket.create_connection(("127.0.0.1", served.port)) for _ in range(THREADS - 1)]
    began = time.monotonic()
    assert served.asked()[0] == "https"
    assert time.monotonic() - began < 5
    for one in silent:
        one.close()


def test_whoever_speaks_http_to_it_is_told(served: Served) -> None:
    connection = http.client.HTTPConnection("127.0.0.1", served.port, timeout=8)
    connection.request("GET", "/")
    answer = connection.getresponse()
    assert answer.status == 400
    assert "speaks https only" in answer.read().decode()
    connection.close()


def test_who_does_not_trust_it_hangs_up_and_others_go_on(served: Served, capfd: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(ssl.SSLCertVerificationError), socket.create_connection(("127.0.0.1", served.port)) as plain:
        ssl.create_default_context().wrap_socket(plain, server_hostname="127.0.0.1")
    assert served.asked()[0] == "https"
    assert "Traceback" not in capfd.readouterr().err
