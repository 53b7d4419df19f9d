"""The workshop's root certificate, and the server certificates that it vouches for.

A phone that trusts the root trusts it for this workshop only: critical name constraints (RFC 5280, 4.2.1.10) keep a
stolen key from vouching for the rest of the world.
"""

import ipaddress
from collections.abc import Iterable
from datetime import datetime, timedelta
from typing import NamedTuple

from cryptography import x509
from cryptography.hazmat.primitives import hashes
from cryptography.hazmat.primitives.asymmetric import ec
from cryptography.x509.oid import ExtendedKeyUsageOID, NameOID

Address = ipaddress.IPv4Address | ipaddress.IPv6Address
DAY = timedelta(days=1)
BEFORE = DAY
"""Certificates begin a day early: the clock of a phone may be behind."""
SERVER_LIVES = 396 * DAY
"""With the day before: 397 days, the most that browsers take from public roots (CA/Browser Forum baseline
requirements 6.3.2, from memory); shorter is never refused."""
ROOT_LIVES = 3650 * DAY
FIRST_YEAR = 2026
LOCAL_ENDINGS = ("local", "lan", "internal")
PRIVATE_NETWORKS = (
    "10.0.0.0/8", "172.16.0.0/12", "192.168.0.0/16", "169.254.0.0/16", "127.0.0.0/8", "::1/128", "fc00::/7",
    "fe80::/10",
)
USES = ("digital_signature", "content_commitment", "key_encipherment", "data_encipherment", "key_agreement",
        "key_cert_sign", "crl_sign", "encipher_only", "decipher_only")


class Pair(NamedTuple):
    """A certificate with its private key."""

    certificate: x509.Certificate
    key: ec.EllipticCurvePrivateKey


def root(title: str, own_names: Iterable[str], now: datetime) -> Pair:
    """A root for this workshop: its own host names, the local endings and the private networks, nothing else.

    Raises:
        ValueError: If the clock cannot be right; a root made then would be over before it is used.
    """
    if now.year < FIRST_YEAR:
        raise ValueError(f"the clock of this machine says {now:%Y-%m-%d}: set it first")
    key = ec.generate_private_key(ec.SECP256R1())
    names = dict.fromkeys((*own_names, "localhost", *LOCAL_ENDINGS))
    permitted = [*(x509.DNSName(name) for name in names if address(name) is None),
                 *(x509.IPAddress(ipaddress.ip_network(one)) for one in PRIVATE_NETWORKS)]
    made = (_begun(title, title, key, now, now + ROOT_LIVES)
            .add_extension(x509.BasicConstraints(ca=True, path_length=0), critical=True)
            .add_extension(_uses("key_cert_sign", "crl_sign"), critical=True)
            .add_extension(x509.NameConstraints(permitted, None), critical=True))

    return Pair(made.sign(key, hashes.SHA256()), key)


def server(vouching: Pair, hosts: Iterable[str], now: datetime) -> Pair:
    """A server certificate for names and addresses; it ends no later than the root that vouches for it."""
    key, above = ec.generate_private_key(ec.SECP256R1()), vouching.certificate
    voucher = x509.AuthorityKeyIdentifier.from_issuer_public_key(vouching.key.public_key())
    title = above.subject.get_attributes_for_oid(NameOID.COMMON_NAME)[0].value
    made = (_begun("Checklist server", str(title), key, now, server_end(above, now))
            .add_extension(x509.SubjectAlternativeName([_general(one) for one in hosts]), critical=False)
            .add_extension(x509.BasicConstraints(ca=False, path_length=None), critical=True)
            .add_extension(_uses("digital_signature"), critical=True)
            .add_extension(x509.ExtendedKeyUsage([ExtendedKeyUsageOID.SERVER_AUTH]), critical=False)
            .add_extension(voucher, critical=False))

    return Pair(made.sign(vouching.key, hashes.SHA256()), key)


def server_end(above: x509.Certificate, now: datetime) -> datetime:
    """When a server certificate made now would end."""
    return min(now + SERVER_LIVES, above.not_valid_after_utc)


def permits(above: x509.Certificate, host: str) -> bool:
    """Whether the root may vouch for a name or address. One that it may not makes browsers refuse all the others."""
    allowed = above.extensions.get_extension_for_class(x509.NameConstraints).value.permitted_subtrees or ()
    number = address(host)
    if number is not None:
        return any(number in one.value for one in allowed if isinstance(one, x509.IPAddress))

    return any(host == one.value or host.endswith("." + one.value) for one in allowed if isinstance(one, x509.DNSName))


def hosts_of(certificate: x509.Certificate) -> tuple[str, ...]:
    """The names and addresses that a certificate is for, names first."""
    try:
        said = certificate.extensions.get_extension_for_class(x509.SubjectAlternativeName).value
    except x509.ExtensionNotFound:
        return ()

    return (*said.get_values_for_type(x509.DNSName), *map(str, said.get_values_for_type(x509.IPAddress)))


def address(host: str) -> Address | None:
    """The host as an address, or None for a name."""
    try:
        return ipaddress.ip_address(host)
    except ValueError:
        return None


def fingerprint(certificate: x509.Certificate) -> str:
    """SHA-256 of the certificate, in groups that two people can compare aloud."""
    digits = certificate.fingerprint(hashes.SHA256()).hex().upper()

    return " ".join(digits[at:at + 4] for at in range(0, len(digits), 4))


def _begun(title: str, issuer: str, key: ec.EllipticCurvePrivateKey, now: datetime,
           end: datetime) -> x509.CertificateBuilder:
    return (x509.CertificateBuilder(_named(issuer), _named(title), key.public_key(), x509.random_serial_number(),
                                    now - BEFORE, end)
            .add_extension(x509.SubjectKeyIdentifier.from_public_key(key.public_key()), critical=False))


def _named(title: str) -> x509.Name:
    return x509.Name([x509.NameAttribute(NameOID.COMMON_NAME, title)])


def _uses(*allowed: str) -> x509.KeyUsage:
    return x509.KeyUsage(**{use: use in allowed for use in USES})


def _general(host: str) -> x509.GeneralName:
    number = address(host)
    return x509.DNSName(host) if number is None else x509.IPAddress(number)
