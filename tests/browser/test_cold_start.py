"""A phone whose browser was killed opens the app with no server: by https that it trusts, and not otherwise."""

import os
import signal
from pathlib import Path

import pytest
from playwright.sync_api import Browser, BrowserContext, expect
from playwright.sync_api import Error as BrowserError

from tests.browser import journey
from tests.browser.phone import Phone
from tests.browser.secured import Secured, secured, visitor
from tests.browser.stoppable import WITHIN_MS

RIGGER = "Dunja Fell"


def kill_browser(context: BrowserContext, home: Path) -> None:
    """All its processes at once, as when the battery is taken out."""
    owned = f"--user-data-dir={home / 'profile'}".encode()
    gone: list[bool] = []
    context.on("close", lambda _: gone.append(True))
    for folder in Path("/proc").glob("[0-9]*"):
        try:
            if owned in (folder / "cmdline").read_bytes().split(b"\0"):
                os.kill(int(folder.name), signal.SIGKILL)
        except (FileNotFoundError, ProcessLookupError):
            continue  # it has just ended
    with pytest.raises(BrowserError):
        context.pages[0].wait_for_timeout(WITHIN_MS)
    assert gone, "the browser lived on"


def test_after_the_browser_was_killed_the_app_opens_with_no_server_and_what_was_entered_is_there(
        browser: Browser, chromium_path: str, filled_yard: Path, tmp_path: Path) -> None:
    home = tmp_path / "home"
    with secured(filled_yard, tmp_path / "yard") as server:
        with visitor(browser, chromium_path, home, server.root) as context:
            rigger = phone_in(context, server)
            rigger.sign_in(RIGGER)
            rigger.can_go_on_alone()
            journey.say_what(rigger)
            server.kill()
            rigger.go("numbers?step=heights")
            rigger.fill("lift_height_m", "0.30", "tape")
            expect(rigger.page.locator("#sync")).to_contain_text("kept on this phone")
            made, task = rigger.own(), rigger.task
            kill_browser(context, home)
        with visitor(browser, chromium_path, home) as context:
            rigger = phone_in(context, server)
            rigger.task = task
            rigger.go("numbers?step=heights")
            expect(rigger.field("lift_height_m")).to_have_value("0.30", timeout=WITHIN_MS)
            assert made <= rigger.own()
            rigger.fill("lift_height_m", "0.40")
            expect(rigger.page.locator("#live")).to_contain_text("computed", timeout=WITHIN_MS)
            made = rigger.own()
            server.start("127.0.0.1")
            rigger.sign_in(RIGGER)  # the browser had no time to write its cookies down
            rigger.all_confirmed()
            assert made <= server.digests()
            assert not rigger.faults


def test_by_http_nothing_opens_with_no_server_and_what_was_entered_waits_for_it(
        browser: Browser, chromium_path: str, filled_yard: Path, tmp_path: Path) -> None:
    home = tmp_path / "home"
    with secured(filled_yard, tmp_path / "yard") as server:
        with visitor(browser, chromium_path, home) as context:
            with pytest.raises(BrowserError, match="ERR_CERT_AUTHORITY_INVALID"):
                context.pages[0].goto(server.url)
            rigger = phone_in(context, server, server.http)
            rigger.sign_in(RIGGER)
            rigger.begin(journey.LOAD, "Pump bay")
            rigger.can_go_on_alone("page")
            server.kill()
            rigger.fill("landing", "Stand 7")
            expect(rigger.page.locator("#sync")).to_contain_text("kept on this phone", timeout=WITHIN_MS)
            made = rigger.own()
            kill_browser(context, home)
        with visitor(browser, chromium_path, home) as context:
            rigger = phone_in(context, server, server.http)
            with pytest.raises(BrowserError, match="ERR_CONNECTION_REFUSED"):
                rigger.page.goto(f"{rigger.url}/today")
            server.start("127.0.0.1")
            rigger.sign_in(RIGGER)
            rigger.all_confirmed()
            assert made <= server.digests()


def phone_in(context: BrowserContext, server: Secured, url: str = "") -> Phone:
    phone = Phone(context, server)  # type: ignore[arg-type]
    phone.url = url or server.url
    return phone
