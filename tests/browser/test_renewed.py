"""A certificate ends while a phone works: nothing is lost, and the next one heals it with nobody doing anything."""

import os
import time
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from cryptography.hazmat.primitives.serialization import Encoding, NoEncryption, PrivateFormat
from playwright.sync_api import Browser, expect

from checklist_app.web.tls.certificates import SERVER_LIVES, Pair, root
from checklist_app.web.tls.certificates import server as server_certificate
from tests.browser import journey
from tests.browser.phone import Phone
from tests.browser.secured import NAME, secured, visitor
from tests.browser.stoppable import WITHIN_MS

# By hand (-m long): it waits until a certificate has ended, and then for the minute in which the next one is found.
pytestmark = pytest.mark.long

LASTS = timedelta(seconds=150)
RIGGER = "Dunja Fell"
ASK = """() => fetch("/device").then((answer) => String(answer.status), (fault) => fault.message)"""


def put(folder: Path, made: Pair) -> tuple[Path, Path]:
    """The two files, each exchanged at once as whoever renews them does."""
    certificate, key = folder / "served.pem", folder / "served.key"
    said = {key: made.key.private_bytes(Encoding.PEM, PrivateFormat.PKCS8, NoEncryption()),
            certificate: made.certificate.public_bytes(Encoding.PEM)}
    for path, data in said.items():
        beside = path.with_suffix(".new")
        beside.write_bytes(data)
        os.replace(beside, path)
    return certificate, key


def test_what_was_entered_after_the_certificate_had_ended_arrives_when_the_next_one_is_there(
        browser: Browser, chromium_path: str, filled_yard: Path, tmp_path: Path) -> None:
    now = datetime.now(UTC)
    above = root("Yard", [NAME], now)
    ends = now + LASTS
    certificate, key = put(tmp_path, server_certificate(above, [NAME], ends - SERVER_LIVES))
    vouching = above.certificate.public_bytes(Encoding.PEM)
    with secured(filled_yard, tmp_path / "yard", "--cert", str(certificate), "--key", str(key)) as server:
        with visitor(browser, chromium_path, tmp_path / "home", vouching) as context:
            rigger = Phone(context, server)  # type: ignore[arg-type]
            rigger.sign_in(RIGGER)
            rigger.begin(journey.LOAD, "Pump bay")
            rigger.can_go_on_alone()
            rigger.all_confirmed()
            task = rigger.page.url
        assert datetime.now(UTC) < ends, "this machine was too slow for the certificate"
        time.sleep((ends - datetime.now(UTC)).total_seconds() + 1)
        # A browser remembers for half an hour whom it has believed; one that is opened anew looks again.
        with visitor(browser, chromium_path, tmp_path / "home") as context:
            rigger = Phone(context, server)  # type: ignore[arg-type]
            rigger.page.goto(task)
            rigger.fill("landing", "Stand 7")
            expect(rigger.page.locator("#sync")).to_contain_text("kept on this phone", timeout=WITHIN_MS)
            assert rigger.page.evaluate(ASK) == "Failed to fetch", "that is all a browser tells of it"
            put(tmp_path, server_certificate(above, [NAME], datetime.now(UTC)))
            expect(rigger.page.locator("#sync")).to_have_text("all confirmed", timeout=2 * WITHIN_MS)
            assert not rigger.kept("kept", "sent") and server.process.poll() is None
