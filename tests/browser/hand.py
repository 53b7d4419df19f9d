"""A person's hand on the page: what somebody in the yard taps and types."""

import re
from collections.abc import Mapping

from playwright.sync_api import Locator, Page, expect

from tests.browser.server import Server

NONE = None
SLOW = 30_000
BREATH_MS = 30


class Hand:
    """One person at one screen."""

    def __init__(self, page: Page, server: Server, host: str = "", script: bool = True) -> None:
        self.page, self.server, self.script = page, server, script
        self.url = server.url.replace("127.0.0.1", host) if host else server.url
        self.task = ""

    def sign_in(self, name: str) -> None:
        self.page.goto(f"{self.url}/sign-in")
        self.page.get_by_label(name, exact=True).check()
        self.page.get_by_label("Your PIN").fill(self.server.pin(name))
        self.page.get_by_role("button", name="Sign in").click()
        self.page.wait_for_url("**/today")

    def begin(self, load: str, place: str, operation: str = "Straight lift") -> None:
        self.page.get_by_role("link", name=re.compile("Start a task|Begin")).first.click()
        self.page.wait_for_url("**/begin")
        self.page.get_by_role("radio", name=operation).check()
        self.page.get_by_role("radio", name=re.compile(load)).check()
        self.page.get_by_role("radio", name=re.compile(place)).check()
        self.page.get_by_role("button", name="Begin").click()
        self.page.wait_for_url("**/what**")
        self.task = re.search(r"/tasks/[^/?]+", self.page.url).group(0)  # type: ignore[union-attr]

    def go(self, where: str) -> None:
        self.page.goto(f"{self.url}{self.task}/{where}")

    def heading(self, words: str) -> None:
        expect(self.page.get_by_role("heading", level=1)).to_contain_text(re.compile(words, re.I), timeout=SLOW)

    def fetch(self, slots: Mapping[str, str | None]) -> None:
        """Slot after slot, in the order the app asks for them."""
        for words, answer in slots.items():
            self.heading(words)
            if answer is NONE:
                self.page.locator('button[name="not_used"]').click()
            elif answer.startswith("="):
                self.page.get_by_role("radio", name=re.compile(answer[1:], re.IGNORECASE)).click()
                self.next_without_script()
            else:
                self.pick(answer)
                self.page.get_by_label("Looked at and felt, all round").click()
                self.next_without_script()

    def next_without_script(self) -> None:
        """With script a tick sends itself; without it there is a button."""
        if not self.script:
            self.page.locator("form button.only-plain").first.click()

    def pick(self, tag: str) -> None:
        self.page.get_by_label("Scan or type the tag number").fill(tag)
        self.page.get_by_role("button", name="Pick", exact=True).click()
        expect(self.page.get_by_label("Looked at and felt, all round")).to_be_visible(timeout=SLOW)

    def tick_all(self) -> None:
        """Every statement of the screen is true; those who read aloud say so."""
        boxes = self.page.locator('#work .tick:not(.tick-way) input[type="checkbox"]')
        for number in range(boxes.count()):
            boxes.nth(number).check()
            self.breathe()

    def choose(self, question: str, answer: str) -> None:
        group = self.page.get_by_role("group", name=re.compile(question))
        group.get_by_role("radio", name=re.compile(answer, re.IGNORECASE)).check()

    def fill(self, name: str, text: str, how: str = "") -> None:
        field = self.field(name)
        field.wait_for(state="attached", timeout=SLOW)  # a page may still be opening
        if not field.is_visible():
            self.page.locator(f'[id="{field.get_attribute("id")}-prompt"] summary').first.click()
        field.fill(text)
        field.blur()
        self.breathe()
        if how:
            self.page.locator(f'select[name="{name}.how"]').select_option(how)
            self.breathe()

    def breathe(self) -> None:
        """No hand is faster than this, in gloves least of all."""
        self.page.wait_for_timeout(BREATH_MS)

    def field(self, name: str) -> Locator:
        return self.page.locator(f'#work input[name="{name}"]').first

    def next(self) -> None:
        """The way on, at the foot of the screen."""
        self.breathe()
        before = self.page.url
        self.page.locator(".dock .button-go").click()
        self.page.wait_for_url(lambda url: url != before, timeout=SLOW)

    def draw(self) -> None:
        """A signature with the finger."""
        canvas = self.page.locator(".signature canvas")
        canvas.scroll_into_view_if_needed()
        box = canvas.bounding_box()
        assert box is not None
        self.page.mouse.move(box["x"] + 40, box["y"] + 70)
        self.page.mouse.down()
        for step in range(12):
            self.page.mouse.move(box["x"] + 40 + 16 * step, box["y"] + 70 + (25 if step % 2 else -25))
        self.page.mouse.up()

    def sign(self, hold: str, person: str, name: str) -> None:
        """The phone is handed over: another person's name and PIN, whoever is signed in stays so."""
        self.go(f"holds/{hold}?act=sign")
        if self.script:
            self.draw()
        else:
            self.page.get_by_label("Name of the one who signs").fill(name)
        self.page.get_by_label("Who signs?").select_option(person)
        self.page.get_by_label("His or her own PIN").fill(self.server.pin(name))
        before = self.page.url
        self.page.locator('.dock button[type="submit"]').last.click()
        self.page.wait_for_url(lambda url: url != before, timeout=SLOW)
