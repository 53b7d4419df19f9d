"""A certificate that the workshop got elsewhere: looked at in words before it is used, read again when it changes."""

import logging
from datetime import datetime, timedelta
from pathlib import Path

from cryptography import x509
from cryptography.hazmat.primitives import serialization
from cryptography.hazmat.primitives.asymmetric.types import PrivateKeyTypes
from cryptography.hazmat.primitives.serialization import Encoding, PublicFormat

from checklist_app.web.tls.certificates import hosts_of
from checklist_app.web.tls.keeper import Facts, offered

TOLD_LEFT = timedelta(days=21)
log = logging.getLogger(__name__)


class Unfit(ValueError):
    """The files cannot serve; the words say which and why."""


class OwnPair:
    """The two files of `--cert` and `--key`. Whoever renews them need not restart the server."""

    root_file = b""

    def __init__(self, certificate: Path, key: Path, now: datetime) -> None:
        self.paths = (certificate, key)
        self.fault = ""
        self.seen = self._stamps()
        self.certificate = read(*self.paths, now)
        self.context = offered(*self.paths)

    def covers(self, host: str) -> bool:
        return any(host == one or (one.startswith("*.") and host.partition(".")[2] == one[2:])
                   for one in hosts_of(self.certificate))

    def look(self, now: datetime) -> bool:
        """Take the files anew if they changed. What cannot serve is told, and the old ones go on."""
        try:
            stamps = self._stamps()
            if stamps == self.seen:
                return False
            certificate = read(*self.paths, now)
            self.context, self.certificate, self.seen, self.fault = offered(*self.paths), certificate, stamps, ""
        except (Unfit, OSError) as error:
            if str(error) != self.fault:
                log.warning("the new certificate cannot be used: %s", error)
            self.fault = str(error)
            return False

        return True

    def facts(self, now: datetime) -> Facts:
        one, end = self.certificate, self.certificate.not_valid_after_utc
        told = f"The certificate ends on {end:%Y-%m-%d}: replace its files." if end - now < TOLD_LEFT else ""

        return Facts(hosts_of(one), one.not_valid_before_utc, end, one.issuer.rfc4514_string(),
                     faults=tuple(filter(None, (self.fault, told))))

    def _stamps(self) -> tuple[int, ...]:
        try:
            return tuple(path.stat().st_mtime_ns for path in self.paths)
        except OSError as error:
            raise Unfit(f"{error.filename} cannot be read: {error.strerror}") from error


def read(certificate_path: Path, key_path: Path, now: datetime) -> x509.Certificate:
    """The certificate, if it and its key can serve today.

    Raises:
        Unfit: If not; in words that name the file.
    """
    certificate, key = _certificate(certificate_path), _key(key_path)
    form = (Encoding.DER, PublicFormat.SubjectPublicKeyInfo)
    if certificate.public_key().public_bytes(*form) != key.public_key().public_bytes(*form):
        raise Unfit(f"{key_path} is not the key of the first certificate in {certificate_path}")
    if now > certificate.not_valid_after_utc:
        raise Unfit(f"the certificate in {certificate_path} ended on {certificate.not_valid_after_utc:%Y-%m-%d}")
    if now < certificate.not_valid_before_utc:
        raise Unfit(f"the certificate in {certificate_path} begins on {certificate.not_valid_before_utc:%Y-%m-%d} only")
    if not hosts_of(certificate):
        raise Unfit(f"the certificate in {certificate_path} names no host in its subject alternative names")

    return certificate


def _certificate(path: Path) -> x509.Certificate:
    try:
        return x509.load_pem_x509_certificates(_bytes(path))[0]
    except ValueError as error:
        raise Unfit(f"{path} holds no certificate in PEM form") from error


def _key(path: Path) -> PrivateKeyTypes:
    try:
        return serialization.load_pem_private_key(_bytes(path), None)
    except TypeError as error:
        raise Unfit(f"{path} is locked with a password: save the key without one") from error
    except ValueError as error:
        raise Unfit(f"{path} holds no private key in PEM form") from error


def _bytes(path: Path) -> bytes:
    try:
        return path.read_bytes()
    except OSError as error:
        raise Unfit(f"{path} cannot be read: {error.strerror}") from error
