"""The https side of `serve`: certificates, the one name, its door beside that of http, and the watch over them."""

import argparse
import logging
import socket
import threading
from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

from flask import Flask

from checklist_app.commands.addresses import EVERYWHERE, LOOPBACK, addresses
from checklist_app.web.site import Site
from checklist_app.web.tls.announce import Announcement, NotAnnounced
from checklist_app.web.tls.cabinet import Cabinet
from checklist_app.web.tls.door import Door
from checklist_app.web.tls.keeper import Certificates, Keeper
from checklist_app.web.tls.own import OwnPair
from checklist_app.web.tls.reach import LOCAL, canonical, label, tidy_host

PORT = 8443
NAME = "name"
LOOK_EVERY_S = 60
HEAR_NOBODY = "this server listens to its own machine only"
NOT_VOUCHED = ("{name} is a name that this workshop's certificate may not be made for: choose one ending in .local, "
               ".lan or .internal, or a private address")
NAME_WANTED = "the certificate in {path} is for {hosts}: say with --name which name everybody shall use"
TAKEN = "https port {port} cannot be had: choose another with --https-port, or start with --http-only ({why})"
log = logging.getLogger(__name__)


def with_https(parser: argparse.ArgumentParser) -> None:
    """What the command line may say about https."""
    parser.add_argument("--https-port", type=int, default=None,
                        help=f"port of https ({PORT} unless said; with --port 0 any free one)")
    parser.add_argument("--http-only", action="store_true", help="no https, for trying")
    parser.add_argument("--name", default="", help="the one https name or address that everybody uses; it is kept")
    parser.add_argument("--cert", type=Path, default=None, help="a certificate (PEM) from elsewhere, with --key")
    parser.add_argument("--key", type=Path, default=None, help="its private key (PEM)")


@dataclass
class Secured:
    """Everything about https that one running server holds."""

    site: Site
    host: str
    port: int
    server: Any = None
    announcement: Announcement | None = None
    closing: threading.Event = field(default_factory=threading.Event)

    def open(self, app: Flask, listening: Callable[..., Any], http_port: int) -> None:
        """Listen; decide the name, tell it to the network, and keep watch. The first request comes after that.

        Raises:
            ValueError: If the port is taken.
        """
        try:
            self.server = listening(app, self.host, self.port, Door(self.site.certificates))
        except OSError as error:
            raise ValueError(TAKEN.format(port=self.port, why=error)) from error
        self.site.https_port = self.server.bind_addr[1]
        found = addresses(self.host)
        self.site.http_urls = tuple(f"http://{one}:{http_port}" for one in found)
        self._choose_name(found)
        for task in (self.server.serve, self._watch):
            threading.Thread(target=task, daemon=True).start()

    def close(self) -> None:
        self.closing.set()
        if self.announcement is not None:
            self.announcement.close()
        if self.server is not None:
            self.server.stop()

    def look(self, now: datetime) -> None:
        """What is done every minute: certificates are renewed, and the name follows the machine's addresses."""
        if self.site.certificates.look(now):
            log.warning("another server certificate is in use from now on")
        if self.announcement is not None and set(self.announcement.addresses) != set(outside(addresses(self.host))):
            self.announcement.close()
            self._announce(self.site.name, outside(addresses(self.host)))

    def _choose_name(self, found: list[str]) -> None:
        """The name given, or the one kept; at first the machine's own if the network takes it, else its address."""
        site = self.site
        kept, short = site.cabinet.said(NAME) or "", label(socket.gethostname())
        kept = kept if site.certificates.covers(kept) else ""
        fit = [one for one in found if site.certificates.covers(one)]
        wanted = canonical(site.name, kept, short, fit, announced=True)
        if wanted.endswith(LOCAL):
            self._announce(wanted, outside(found))
        site.name = canonical(site.name, kept, short, fit, announced=self.announcement is not None)
        site.cabinet.note(NAME, site.name)

    def _announce(self, name: str, found: list[str]) -> None:
        self.announcement, self.site.announced, self.site.not_announced = None, "", ""
        try:
            if self.host not in EVERYWHERE:
                raise NotAnnounced(HEAR_NOBODY)
            self.announcement = Announcement(name, self.site.https_port, found)
            self.site.announced = name
        except NotAnnounced as error:
            self.site.not_announced = str(error)

    def _watch(self) -> None:
        while not self.closing.wait(LOOK_EVERY_S):
            try:
                self.look(datetime.now(UTC))
            except Exception:
                log.exception("the certificates could not be looked after; tried again in a minute")


def secured(arguments: argparse.Namespace, folder: Path) -> Secured:
    """Certificates for this machine, made now if there are none.

    Raises:
        ValueError: In words: what is wrong with the name, the certificates or the clock.
        OSError: If the folder cannot be written.
    """
    name = tidy_host(arguments.name) if arguments.name else ""
    if arguments.cert or arguments.key:
        certificates: Certificates = own(arguments)
        name = name or named_first(certificates, arguments.cert)
    else:
        certificates = workshops(arguments.host, folder, name)
    if name and not certificates.covers(name):
        raise ValueError(NOT_VOUCHED.format(name=name) if certificates.root_file else
                         f"the certificate in {arguments.cert} is not for {name}")
    port = arguments.https_port if arguments.https_port is not None else (PORT if arguments.port else 0)

    return Secured(Site(certificates, Cabinet(folder), name), arguments.host, port)


def workshops(host: str, folder: Path, name: str) -> Certificates:
    short, cabinet = label(socket.gethostname()), Cabinet(folder)

    def hosts() -> list[str]:
        kept = cabinet.said(NAME)
        return [short, short + LOCAL, "localhost", LOOPBACK, *filter(None, (name, kept)), *addresses(host)]

    return Keeper(folder, f"Checklist of {short}", [one for one in (short, name) if one], hosts, datetime.now(UTC))


def own(arguments: argparse.Namespace) -> Certificates:
    if not (arguments.cert and arguments.key):
        raise ValueError("--cert and --key belong together: name both files")

    return OwnPair(arguments.cert, arguments.key, datetime.now(UTC))


def named_first(certificates: Certificates, path: Path) -> str:
    """The name that a certificate from elsewhere puts first, if it names one at all."""
    hosts = certificates.facts(datetime.now(UTC)).hosts
    found = next((one for one in hosts if "*" not in one), None)
    if found is None:
        raise ValueError(NAME_WANTED.format(path=path, hosts=", ".join(hosts)))

    return found


def outside(found: list[str]) -> list[str]:
    """The addresses that others reach."""
    return [one for one in found if one != LOOPBACK] or found


def words(secure: Secured, http_url: str) -> list[str]:
    """What whoever started the server must know of https."""
    site: Any = secure.site
    facts = site.certificates.facts(datetime.now(UTC))
    said = [f"https: {site.https()} for phones that trust this workshop. How they come to: {http_url}/trust"]
    if facts.root_print:
        said.append(f"Fingerprint of the root certificate: {facts.root_print}")
    if site.not_announced and site.name.endswith(LOCAL):
        said.append(f"Phones may not find {site.name} ({site.not_announced}); then start with --name and an address.")

    return [*said, *facts.faults]
