"""What the workshop's root may vouch for, and what a verifier makes of it."""

import hashlib
import ipaddress
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from cryptography import x509
from cryptography.hazmat.primitives import hashes
from cryptography.hazmat.primitives.asymmetric import ec
from cryptography.hazmat.primitives.serialization import Encoding
from cryptography.x509.oid import ExtendedKeyUsageOID

from checklist_app.web.tls.certificates import Pair, fingerprint, hosts_of, permits, root, server
from tests.web.tls.handshake import refused_because, trusted

NOW = datetime.now(UTC)
HOSTS = ("shed.local", "shed", "localhost", "127.0.0.1", "192.168.1.20")


@pytest.fixture(scope="module")
def ours() -> Pair:
    return root("Checklist of shed", ["shed", "checklist.firm.example"], NOW)


def test_the_root_is_a_root_for_servers_of_the_workshop_only(ours: Pair) -> None:
    said = ours.certificate.extensions
    basic = said.get_extension_for_class(x509.BasicConstraints)
    assert basic.critical and basic.value.ca and basic.value.path_length == 0
    bound = said.get_extension_for_class(x509.NameConstraints)
    assert bound.critical, "a browser that does not know constraints must refuse it"
    names = bound.value.permitted_subtrees or []
    assert {one.value for one in names if isinstance(one, x509.DNSName)} == {
        "shed", "checklist.firm.example", "localhost", "local", "lan", "internal"}
    networks = {str(one.value) for one in names if isinstance(one, x509.IPAddress)}
    assert {"10.0.0.0/8", "172.16.0.0/12", "192.168.0.0/16", "127.0.0.0/8", "fc00::/7", "fe80::/10"} <= networks
    assert all(ipaddress.ip_network(one).is_private for one in networks)
    assert isinstance(ours.key.curve, ec.SECP256R1)


def test_a_server_certificate_serves_for_397_days_and_signs_nothing(ours: Pair) -> None:
    made = server(ours, HOSTS, NOW).certificate
    assert made.not_valid_after_utc - made.not_valid_before_utc <= timedelta(days=397)
    assert made.not_valid_before_utc < NOW
    said = made.extensions
    assert not said.get_extension_for_class(x509.BasicConstraints).value.ca
    assert list(said.get_extension_for_class(x509.ExtendedKeyUsage).value) == [ExtendedKeyUsageOID.SERVER_AUTH]
    assert not said.get_extension_for_class(x509.KeyUsage).value.key_cert_sign
    assert set(hosts_of(made)) == set(HOSTS)
    made.verify_directly_issued_by(ours.certificate)


def test_no_server_certificate_outlives_its_root(ours: Pair) -> None:
    late = ours.certificate.not_valid_after_utc - timedelta(days=30)
    assert server(ours, HOSTS, late).certificate.not_valid_after_utc == ours.certificate.not_valid_after_utc


@pytest.mark.parametrize("host", HOSTS)
def test_a_verifier_takes_each_name_and_address(ours: Pair, tmp_path: Path, host: str) -> None:
    assert trusted(ours, server(ours, HOSTS, NOW), host, tmp_path)


@pytest.mark.parametrize("foreign", ["bank.example", "firm.example", "8.8.8.8", "notlocal", "2001:db8::1"])
def test_a_verifier_refuses_what_a_stolen_root_key_would_sign_for_the_rest_of_the_world(
        ours: Pair, tmp_path: Path, foreign: str) -> None:
    stolen = server(ours, [foreign], NOW)
    assert "permitted subtree violation" in refused_because(ours, stolen, foreign, tmp_path)


def test_a_verifier_takes_no_second_authority_below_the_root(ours: Pair, tmp_path: Path) -> None:
    alone = root("Below", ["shed"], NOW)
    made = (x509.CertificateBuilder(ours.certificate.subject, alone.certificate.subject, alone.key.public_key(), 7,
                                    NOW - timedelta(days=1), NOW + timedelta(days=9))
            .add_extension(x509.BasicConstraints(ca=True, path_length=None), critical=True))
    below = Pair(made.sign(ours.key, hashes.SHA256()), alone.key)
    served = server(below, HOSTS, NOW)
    assert "path length constraint exceeded" in refused_because(ours, served, "shed.local", tmp_path, below.certificate)


@pytest.mark.parametrize(("host", "may"), [
    ("shed", True), ("a.shed", True), ("shed.local", True), ("x.y.internal", True), ("checklist.firm.example", True),
    ("172.31.0.1", True), ("fd00::7", True), ("fe80::1", True), ("firm.example", False), ("172.32.0.1", False),
    ("bushed", False), ("mylocal", False), ("2001:db8::1", False),
])
def test_the_root_says_what_it_may_vouch_for(ours: Pair, host: str, may: bool) -> None:
    assert permits(ours.certificate, host) is may


def test_the_fingerprint_is_the_digest_of_the_certificate_in_groups_to_read_aloud(ours: Pair) -> None:
    said = fingerprint(ours.certificate)
    assert len(said.split()) == 16
    assert all(len(one) == 4 for one in said.split())
    encoded = ours.certificate.public_bytes(Encoding.DER)
    assert said.replace(" ", "") == hashlib.sha256(encoded).hexdigest().upper()


def test_a_clock_that_cannot_be_right_makes_no_root() -> None:
    with pytest.raises(ValueError, match="the clock of this machine says 2000-01-01: set it first"):
        root("Early", ["shed"], datetime(2000, 1, 1, tzinfo=UTC))
