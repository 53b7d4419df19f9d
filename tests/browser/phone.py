"""One person's phone: what it keeps, whether it can go on alone, and what becomes of it when it is killed."""

import re
from contextlib import suppress
from typing import Any

from playwright.sync_api import BrowserContext, Page, expect
from playwright.sync_api import Error as BrowserError

from tests.browser.hand import Hand
from tests.browser.stoppable import MODULE, WITHIN_MS, Stoppable

KEPT = f"""async () => {{ {MODULE}
  const store = await module("phone_store");
  return (await store.all("entries")).map(({{ digest, state, device, counter, body }}) => (
    {{ digest, state, device, counter, body }})); }}"""
READY = f"""async () => {{ {MODULE}
  const {{ status }} = await module("engine");
  const store = await module("phone_store");
  return status().state === "ready" && Boolean(await store.meta("cursor")); }}"""
CACHED = """async () => Boolean(navigator.serviceWorker.controller) &&
  (await (await caches.open("engine")).keys()).length >= 6"""
DEVICE = """() => document.querySelector('meta[name="device"]').content"""


class Phone(Hand):
    """A hand on a phone that may lose its server, its page and its tab."""

    def __init__(self, context: BrowserContext, server: Stoppable, host: str = "") -> None:
        self.context = context
        self.faults: list[str] = []
        super().__init__(self.new_page(), server, host)

    def new_page(self) -> Page:
        page = self.context.new_page()
        page.set_default_timeout(WITHIN_MS)
        page.on("pageerror", lambda fault: self.faults.append(str(fault)))
        return page

    def until(self, script: str) -> None:
        """Wait for a fact of the page. The policy of the pages forbids to wait by a text of script."""
        for _ in range(WITHIN_MS // 250):
            if self.page.evaluate(script):
                return
            self.page.wait_for_timeout(250)
        raise AssertionError(f"this never came true: {script}")

    def can_go_on_alone(self, cached: bool = True) -> None:
        """The checks answer and all that the server had is here; with a service worker, the engine is kept too."""
        self.until(READY)
        if cached:
            self.until(CACHED)

    def kept(self, *states: str) -> list[dict[str, Any]]:
        """What stands in the phone's store, of these states or of all."""
        return [row for row in self.page.evaluate(KEPT) if not states or row["state"] in states]

    def own(self) -> set[str]:
        """Digests of what was made on this phone."""
        device = self.page.evaluate(DEVICE)
        return {row["digest"] for row in self.kept() if row["device"] == device}

    def all_confirmed(self) -> None:
        expect(self.page.locator("#sync")).to_have_text("all confirmed", timeout=WITHIN_MS)
        for _ in range(200):
            if not self.kept("kept", "sent"):
                return
            self.page.wait_for_timeout(250)
        raise AssertionError(f"not confirmed: {self.kept('kept', 'sent')}")

    def reload(self) -> None:
        self.page.reload()

    def lose_tab(self) -> None:
        """The tab is killed by the system; the same address is opened in another one."""
        address = self.page.url
        crashed: list[Page] = []
        self.page.on("crash", lambda page: crashed.append(page))
        with suppress(BrowserError):  # it answers nothing any more, which is what was wanted
            self.page.goto("chrome://crash", timeout=5_000)
        with suppress(BrowserError):
            self.page.wait_for_timeout(5_000)  # ends as soon as it is known
        assert crashed, "the tab lived on"
        self.page.close()
        self.page = self.new_page()
        self.page.goto(address)

    def says(self, words: str) -> None:
        expect(self.page.locator("#phone-says")).to_contain_text(re.compile(words), timeout=WITHIN_MS)
