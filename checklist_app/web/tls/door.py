"""The TLS door of the server.

The handshake is done by the thread that will answer, not by the one that opens the door to everybody: a phone that
goes out of reach in mid-handshake keeps nobody else waiting.
"""

import os
import ssl
from contextlib import suppress
from socket import SHUT_WR, socket
from typing import Any

from cheroot.makefile import StreamReader, StreamWriter
from cheroot.server import HTTPConnection
from cheroot.ssl import Adapter

from checklist_app.web.tls.keeper import Certificates

SECURE = {"wsgi.url_scheme": "https", "HTTPS": "on"}
PLAIN = "http request"
DRAIN_S, DRAIN_BYTES = 0.5, 65_536
USE_HTTPS = b"This port speaks https only. Write https:// in front of the address.\n"
ANSWER = (b"HTTP/1.1 400 Bad Request\r\nContent-Type: text/plain\r\nConnection: close\r\nContent-Length: "
          + str(len(USE_HTTPS)).encode() + b"\r\n\r\n" + USE_HTTPS)


class Door(Adapter):
    """Offers whatever certificate is in use at the moment of a handshake."""

    def __init__(self, certificates: Certificates) -> None:
        self.certificates = certificates

    @property
    def context(self) -> ssl.SSLContext:
        return self.certificates.context

    @context.setter
    def context(self, context: ssl.SSLContext) -> None:
        raise AttributeError("the certificates say what is offered")

    def bind(self, sock: socket) -> socket:
        return sock

    def wrap(self, sock: socket) -> tuple[ssl.SSLSocket, dict[str, str]]:
        wrapped = self.context.wrap_socket(sock, server_side=True, do_handshake_on_connect=False,
                                           suppress_ragged_eofs=True)
        return wrapped, self.get_environ(wrapped)

    def get_environ(self, sock: ssl.SSLSocket) -> dict[str, str]:
        return dict(SECURE)

    def makefile(self, sock: socket, mode: str = "r", bufsize: int = -1) -> StreamReader | StreamWriter:
        return (StreamReader if "r" in mode else StreamWriter)(sock, mode, bufsize)


class Greeting(HTTPConnection):
    """A connection that shakes hands when its turn comes."""

    greeted = False

    def communicate(self) -> Any:
        if not self.greeted:
            try:
                self.socket.do_handshake()
            except OSError as error:
                self._explain(error)
                return False
            self.greeted = True

        return super().communicate()

    def _explain(self, error: OSError) -> None:
        """A phone that does not trust us just hangs up; one that spoke http is told."""
        if PLAIN not in str(error).lower().replace("_", " "):
            return
        with socket(fileno=os.dup(self.socket.fileno())) as plain, suppress(OSError):
            plain.settimeout(DRAIN_S)
            plain.sendall(ANSWER)
            plain.shutdown(SHUT_WR)
            plain.recv(DRAIN_BYTES)
