"""`serve`: start the server on the workshop network and say where it answers."""

import argparse
import io
import os
import signal
import sys
from datetime import UTC, datetime
from pathlib import Path
from types import FrameType
from typing import Any

import segno
from cheroot.wsgi import Server
from flask import Flask

from checklist_app.commands import demo, https
from checklist_app.commands.addresses import addresses
from checklist_app.commands.folders import folder_of, with_folder
from checklist_app.commands.https import Secured
from checklist_app.web.app import create_app
from checklist_app.web.tls.door import Door, Greeting

PORT = 8080
THREADS = 12
LARGEST_HEADERS_BYTES = 64 * 1024
LARGEST_REQUEST_BYTES = 25 * 1024 * 1024
QUIET_S = 10


def register(subcommands: Any) -> None:
    """Put the command on the command line."""
    parser = subcommands.add_parser("serve", help="start the server", description=__doc__)
    with_folder(parser)
    parser.add_argument("--demo", action="store_true", help="an invented yard in a folder of its own, PINs printed")
    parser.add_argument("--host", default="0.0.0.0", help="address to listen on (all of this machine's, unless said)")
    parser.add_argument("--port", type=int, default=PORT, help=f"port to listen on ({PORT}, unless said)")
    https.with_https(parser)
    parser.set_defaults(run=run)


def run(arguments: argparse.Namespace) -> int:
    """Serve until Ctrl-C or SIGTERM. 0 after a clean stop, 2 if the server cannot start."""
    os.umask(0o077)
    folder = folder_of(arguments)
    try:
        people = demo.fill(folder) if arguments.demo else {}
        secure = https_of(arguments, folder)
        app = create_app(folder, SITE=secure and secure.site, **({"DEMO": True} if arguments.demo else {}))
        server = listening(app, arguments.host, arguments.port)
        secure = opened(secure, app, server, arguments.demo)
    except (OSError, ValueError) as error:
        print(f"The server cannot start: {error}", file=sys.stderr)
        return 2
    lifts = demo.begin_lifts(folder) if arguments.demo else None
    signal.signal(signal.SIGTERM, interrupt)
    try:
        greet(app, folder, arguments.host, server.bind_addr[1], people, secure)
        server.serve()
    except KeyboardInterrupt:
        print("\nStopped. What was confirmed is on the disk.", flush=True)
    finally:
        server.stop()
        if secure is not None:
            secure.close()
        if lifts is not None:
            lifts.terminate()

    return 0


def https_of(arguments: argparse.Namespace, folder: Path) -> Secured | None:
    """https, unless it is not wanted. A demonstration goes on without what it cannot have."""
    if arguments.http_only:
        return None
    try:
        return https.secured(arguments, folder)
    except (OSError, ValueError) as error:
        if not arguments.demo:
            raise
        print(f"No https: {error}", file=sys.stderr)
        return None


def opened(secure: Secured | None, app: Flask, server: Server, is_demo: bool) -> Secured | None:
    """The door of https, beside that of http. Who cannot have both leaves none open."""
    if secure is None:
        return None
    try:
        secure.open(app, listening, server.bind_addr[1])
    except (OSError, ValueError) as error:
        secure.close()
        if not is_demo:
            server.stop()
            raise
        print(f"No https: {error}", file=sys.stderr)
        app.config["SITE"] = None
        return None

    return secure


def listening(app: Flask, host: str, port: int, door: Door | None = None) -> Server:
    """The server with its door open, so that the address it prints answers; by https through a door of TLS."""
    server = Server((host, port), app, numthreads=THREADS, server_name="checklist", timeout=QUIET_S)
    server.max_request_header_size = LARGEST_HEADERS_BYTES
    server.max_request_body_size = LARGEST_REQUEST_BYTES
    if door is not None:
        server.ssl_adapter, server.ConnectionClass = door, Greeting
    server.prepare()

    return server


def interrupt(number: int, frame: FrameType | None) -> None:
    """SIGTERM stops as cleanly as Ctrl-C."""
    raise KeyboardInterrupt


def greet(app: Flask, folder: Path, host: str, port: int, people: dict[str, dict[str, str]],
          secure: Secured | None) -> None:
    """Everything that whoever started the server must know."""
    urls = [f"http://{address}:{port}" for address in addresses(host)]
    print(f"The checklist answers at {' and '.join(urls)}", flush=True)
    print(picture(urls[0]))
    print("http is for trying: who shares the network could read along.")
    for line in https.words(secure, urls[0]) if secure is not None else ():
        print(line)
    print(f"The data lie in {folder.resolve()}")
    for name, one in people.items():
        print(f"  {name}, {one['role']}, PIN {one['pin']}")
    accounts = app.extensions["accounts"]
    if not accounts.has_administrator():
        code = accounts.give_code(None, datetime.now(UTC))
        print(f"Nobody can sign in yet. Open {urls[0]}/first-run with this code, good once, for one day: {code}")
    app.extensions["store"].close()
    print("Stop it with Ctrl-C.", flush=True)


def picture(url: str) -> str:
    """The address as a QR code, where the terminal can show one."""
    drawn = io.StringIO()
    segno.make(url, micro=False).terminal(out=drawn, compact=True)
    try:
        drawn.getvalue().encode(sys.stdout.encoding or "ascii")
    except UnicodeEncodeError:
        return ""

    return drawn.getvalue().rstrip()
