"""A certificate from elsewhere: refused in words where it cannot serve, read again when it was replaced."""

import os
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from cryptography.hazmat.primitives.serialization import BestAvailableEncryption, Encoding, NoEncryption, PrivateFormat

from checklist_app.web.tls.certificates import Pair, root, server
from checklist_app.web.tls.own import OwnPair, Unfit

NOW = datetime(2026, 11, 25, 12, 0, tzinfo=UTC)
DAY = timedelta(days=1)
HOSTS = ("checklist.firm.example", "*.yard.firm.example")


@pytest.fixture(scope="module")
def elsewhere() -> Pair:
    return root("Some authority", ["firm.example"], NOW)


def written(folder: Path, pair: Pair, password: bytes = b"") -> tuple[Path, Path]:
    kept = BestAvailableEncryption(password) if password else NoEncryption()
    certificate, key = folder / "chain.pem", folder / "key.pem"
    certificate.write_bytes(pair.certificate.public_bytes(Encoding.PEM))
    key.write_bytes(pair.key.private_bytes(Encoding.PEM, PrivateFormat.PKCS8, kept))
    return certificate, key


def test_a_good_pair_serves_its_names(elsewhere: Pair, tmp_path: Path) -> None:
    pair = OwnPair(*written(tmp_path, server(elsewhere, HOSTS, NOW)), NOW)
    assert pair.covers("checklist.firm.example")
    assert pair.covers("shed.yard.firm.example")
    assert not pair.covers("a.shed.yard.firm.example")
    assert not pair.covers("firm.example")
    facts = pair.facts(NOW)
    assert facts.issuer == "CN=Some authority"
    assert facts.renewed_on is None and not facts.root_print and not facts.faults


def test_a_key_of_another_certificate_is_refused(elsewhere: Pair, tmp_path: Path) -> None:
    certificate, _ = written(tmp_path, server(elsewhere, HOSTS, NOW))
    (tmp_path / "other").mkdir()
    _, key = written(tmp_path / "other", server(elsewhere, HOSTS, NOW))
    with pytest.raises(Unfit, match=r"key\.pem is not the key of the first certificate in .*chain\.pem"):
        OwnPair(certificate, key, NOW)


@pytest.mark.parametrize(("at", "words"), [
    (NOW + 400 * DAY, "ended on 2027-12-26"), (NOW - 10 * DAY, "begins on 2026-11-24 only"),
])
def test_out_of_its_time_it_is_refused(elsewhere: Pair, tmp_path: Path, at: datetime, words: str) -> None:
    files = written(tmp_path, server(elsewhere, HOSTS, NOW))
    with pytest.raises(Unfit, match=words):
        OwnPair(*files, at)


def test_a_certificate_without_names_is_refused(elsewhere: Pair, tmp_path: Path) -> None:
    with pytest.raises(Unfit, match="names no host"):
        OwnPair(*written(tmp_path, elsewhere), NOW)


@pytest.mark.parametrize(("which", "content", "words"), [
    (0, None, r"chain\.pem cannot be read: No such file"), (1, None, r"key\.pem cannot be read: No such file"),
    (0, b"rubbish", r"chain\.pem holds no certificate in PEM form"),
    (1, b"rubbish", r"key\.pem holds no private key in PEM form"),
])
def test_a_file_that_is_none_is_named(elsewhere: Pair, tmp_path: Path, which: int, content: bytes | None,
                                      words: str) -> None:
    files = written(tmp_path, server(elsewhere, HOSTS, NOW))
    files[which].unlink() if content is None else files[which].write_bytes(content)
    with pytest.raises(Unfit, match=words):
        OwnPair(*files, NOW)


def test_a_locked_key_is_refused_instead_of_asking_at_the_terminal(elsewhere: Pair, tmp_path: Path) -> None:
    files = written(tmp_path, server(elsewhere, HOSTS, NOW), b"secret")
    with pytest.raises(Unfit, match="locked with a password"):
        OwnPair(*files, NOW)


def test_replaced_files_are_used_without_a_restart_and_bad_ones_are_told(elsewhere: Pair, tmp_path: Path) -> None:
    files = written(tmp_path, server(elsewhere, HOSTS, NOW))
    pair = OwnPair(*files, NOW)
    first, context = pair.certificate, pair.context
    assert not pair.look(NOW)
    files[0].write_bytes(b"half of it")
    moved(files[0])
    assert not pair.look(NOW)
    assert pair.certificate == first and pair.context is context
    assert "holds no certificate" in pair.facts(NOW).faults[0]
    written(tmp_path, server(elsewhere, HOSTS, NOW + 300 * DAY))
    moved(files[1])
    assert pair.look(NOW + 300 * DAY)
    assert pair.certificate != first and pair.context is not context
    assert not pair.facts(NOW + 300 * DAY).faults


def test_an_end_that_comes_near_is_told(elsewhere: Pair, tmp_path: Path) -> None:
    pair = OwnPair(*written(tmp_path, server(elsewhere, HOSTS, NOW)), NOW)
    assert not pair.facts(NOW + 370 * DAY).faults
    assert "ends on 2027-12-26: replace its files" in pair.facts(NOW + 380 * DAY).faults[0]


def moved(path: Path) -> None:
    """The clock of some disks counts in whole seconds."""
    os.utime(path, ns=(0, path.stat().st_mtime_ns + 2_000_000_000))
