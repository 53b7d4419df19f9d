"""One person's phone: what it keeps, whether it can go on alone, and what becomes of it when it is killed."""

import json
import re
from contextlib import suppress
from typing import Any

from playwright.sync_api import Browser, BrowserContext, Page, expect
from playwright.sync_api import Error as BrowserError

from tests.browser.conftest import PHONE
from tests.browser.hand import Hand
from tests.browser.stoppable import MODULE, WITHIN_MS, Stoppable

KEPT = f"""async () => {{ {MODULE}
  const store = await module("phone_store");
  return (await store.all("entries")).map(({{ digest, state, device, counter, body }}) => (
    {{ digest, state, device, counter, body }})); }}"""
TEXTS = f"""async () => {{ {MODULE}
  const store = await module("phone_store");
  return (await store.all("parts")).filter(({{ data, mime }}) => data && !mime).map(({{ data }}) =>
    new TextDecoder().decode(data)); }}"""
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

    def can_go_on_alone(self, state: str = "ready") -> None:
        """As the page says itself: all that it needs is on the phone, and the checks have started."""
        root = self.page.locator("html")
        expect(root).to_have_attribute("data-alone", state, timeout=WITHIN_MS)
        expect(root).to_have_attribute("data-checks", "ready", timeout=WITHIN_MS)

    def kept(self, *states: str) -> list[dict[str, Any]]:
        """What stands in the phone's store, of these states or of all."""
        return [row for row in self.page.evaluate(KEPT) if not states or row["state"] in states]

    def learns(self, *texts: str) -> None:
        """Wait until the phone has these texts, whoever wrote them."""
        self.until(f"async () => {{ const here = (await ({TEXTS})()).join();"
                   f" return {json.dumps(texts)}.every((text) => here.includes(text)); }}")

    def own(self) -> set[str]:
        """Digests of what was made on this phone."""
        device = self.page.evaluate(DEVICE)
        return {row["digest"] for row in self.kept() if row["device"] == device}

    def all_confirmed(self) -> None:
        expect(self.page.locator("#sync")).to_have_text("all confirmed", timeout=WITHIN_MS)
        for _ in range(WITHIN_MS // 250):  # the words may be the server's, from before the bar has counted
            if not self.kept("kept", "sent"):
                return
            self.page.wait_for_timeout(250)
        raise AssertionError(f"not confirmed: {self.kept('kept', 'sent')}")

    def go(self, where: str) -> None:
        super().go(where)
        self.opened()

    def reload(self) -> None:
        self.page.reload()
        self.opened()

    def opened(self) -> None:
        """The page that was asked for is there: with no server the shell opens first, and puts it in its place."""
        expect(self.page.locator("h1").first).not_to_have_text("Opening from this phone", timeout=WITHIN_MS)

    def lose_tab(self) -> None:
        """The tab is killed by the system; the same address is opened in another one."""
        address = self.page.url
        crashed: list[Page] = []
        self.page.on("crash", lambda page: crashed.append(page))
        with suppress(BrowserError):  # it answers nothing any more, which is what was wanted
            self.page.goto("chrome://crash", timeout=5_000)
        with suppress(BrowserError):
            self.page.wait_for_timeout(WITHIN_MS)  # ends as soon as it is known
        assert crashed, "the tab lived on"
        self.page.close()
        self.page = self.new_page()
        self.page.goto(address)
        self.opened()

    def says(self, words: str) -> None:
        expect(self.page.locator("#phone-says")).to_contain_text(re.compile(words), timeout=WITHIN_MS)


def phone_of(browser: Browser, server: Stoppable, name: str, host: str = "", width: int = PHONE["width"]) -> Phone:
    """The phone of somebody who is signed in and may walk out of reach; by http, at a `host`, with its page only."""
    context = browser.new_context(viewport={**PHONE, "width": width}, has_touch=True, is_mobile=True, locale="en-GB")
    phone = Phone(context, server, host)
    phone.sign_in(name)
    phone.can_go_on_alone("page" if host else "ready")
    return phone


def quarantine(browser: Browser, server: Stoppable, tag: str) -> None:
    """Another man takes a piece of gear out of use, while there is a network."""
    context = browser.new_context(viewport=PHONE)
    other = Hand(context.new_page(), server)
    other.sign_in("Benno Clay")
    other.page.goto(f"{server.url}/gear/{tag}/quarantine")
    other.page.get_by_label("What is wrong with it?").fill("strand cut")
    other.page.get_by_role("button", name="Out of use").click()
    other.page.wait_for_url(lambda url: "quarantine" not in url)
    context.close()
