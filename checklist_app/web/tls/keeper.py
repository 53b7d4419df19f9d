"""The workshop's own certificates: made at the first start, renewed by themselves, put to use without a restart."""

import logging
import ssl
import threading
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from pathlib import Path
from typing import Protocol

from cryptography import x509

from checklist_app.web.tls.cabinet import PEM, ROOT, SERVER, Cabinet
from checklist_app.web.tls.certificates import Pair, fingerprint, hosts_of, permits, root, server, server_end

DAY = timedelta(days=1)
RENEWED_LEFT = 120 * DAY
"""A third of its life: months of faults can be mended before a phone notices."""
ROOT_TOLD_LEFT = 500 * DAY
ROOT_OVER = "The workshop's root ends on {end:%Y-%m-%d}. Make a new one in time: every phone must trust it anew."
NO_MORE = ("The server certificate cannot be renewed: the workshop's root ended on {end:%Y-%m-%d}, or the clock of "
           "this machine is wrong.")
log = logging.getLogger(__name__)


@dataclass(frozen=True)
class Facts:
    """What an administrator is shown about the certificates in use."""

    hosts: tuple[str, ...]
    begins: datetime
    ends: datetime
    issuer: str
    renewed_on: datetime | None = None
    root_print: str = ""
    root_ends: datetime | None = None
    faults: tuple[str, ...] = ()


class Certificates(Protocol):
    """What the server needs of them, whoever made them."""

    context: ssl.SSLContext
    root_file: bytes

    def look(self, now: datetime) -> bool: ...
    def facts(self, now: datetime) -> Facts: ...
    def covers(self, host: str) -> bool: ...


class Keeper:
    """Keeps root and server certificate of one folder. `hosts` tells all names and addresses of the machine."""

    def __init__(self, folder: Path, title: str, own_names: Sequence[str], hosts: Callable[[], Sequence[str]],
                 now: datetime) -> None:
        self.cabinet, self.hosts, self.lock = Cabinet(folder), hosts, threading.Lock()
        kept = self.cabinet.pair(ROOT)
        if kept is None:
            kept = root(f"{title}, made {now:%Y-%m-%d}", own_names, now)
            self.cabinet.keep(ROOT, kept)
        self.root: Pair = kept
        self.root_file = kept.certificate.public_bytes(PEM)
        self.fault = ""
        self.server = self._renewed(now, self.cabinet.pair(SERVER))
        self.context = offered(self.cabinet.server_path)

    def covers(self, host: str) -> bool:
        """Whether the root may vouch for this name or address."""
        return permits(self.root.certificate, host)

    def look(self, now: datetime) -> bool:
        """Renew the server certificate if it is time, or if the machine has another address; whether it was."""
        with self.lock:
            before, self.server = self.server, self._renewed(now, self.server)
            if self.server is before:
                return False
            self.context = offered(self.cabinet.server_path)

        return True

    def facts(self, now: datetime) -> Facts:
        certificate, above = self.server.certificate, self.root.certificate
        end, root_end = certificate.not_valid_after_utc, above.not_valid_after_utc
        told = ROOT_OVER.format(end=root_end) if root_end - now < ROOT_TOLD_LEFT else ""

        return Facts(hosts_of(certificate), certificate.not_valid_before_utc, end, _title(above), end - RENEWED_LEFT,
                     fingerprint(above), root_end, tuple(filter(None, (self.fault, told))))

    def _renewed(self, now: datetime, kept: Pair | None) -> Pair:
        """The pair that is good now: the kept one, or a new one that is on the disk already."""
        root_end = self.root.certificate.not_valid_after_utc
        self.fault = NO_MORE.format(end=root_end) if root_end <= now else ""
        if self.fault and kept is None:
            raise ValueError(self.fault)
        hosts = sorted({one for one in self.hosts() if self.covers(one)})
        if kept is not None and (self.fault or not (why := self._why(now, kept.certificate, hosts))):
            return kept
        made = server(self.root, hosts, now)
        self.cabinet.keep(SERVER, made)
        log.info("new server certificate until %s: %s", made.certificate.not_valid_after_utc.date(),
                 "the first one" if kept is None else why)

        return made

    def _why(self, now: datetime, kept: x509.Certificate, hosts: Sequence[str]) -> str:
        """Why a new certificate is needed; empty when none is."""
        above = self.root.certificate
        if not _vouched(kept, above):
            return "the root is another one"
        if missing := set(hosts) - set(hosts_of(kept)):
            return f"it lacked {', '.join(sorted(missing))}"
        if kept.not_valid_before_utc > now:
            return "it had not begun"
        longer = server_end(above, now) - kept.not_valid_after_utc

        return "the old one was to end" if kept.not_valid_after_utc - now < RENEWED_LEFT and longer > DAY else ""


def offered(certificate: Path, key: Path | None = None) -> ssl.SSLContext:
    """What a handshake offers. A new one each time: one in use by other threads is never changed.

    Raises:
        OSError: If the files cannot be used.
    """
    context = ssl.SSLContext(ssl.PROTOCOL_TLS_SERVER)
    context.minimum_version = ssl.TLSVersion.TLSv1_2
    context.load_cert_chain(certificate, key, password=_none)

    return context


def _none() -> str:
    """Instead of asking whoever sits at the terminal for a password."""
    return ""


def _vouched(certificate: x509.Certificate, above: x509.Certificate) -> bool:
    try:
        certificate.verify_directly_issued_by(above)
    except Exception:  # the library names three kinds, and any of them means no
        return False

    return True


def _title(certificate: x509.Certificate) -> str:
    return ", ".join(str(one.value) for one in certificate.subject) or "nobody named"
