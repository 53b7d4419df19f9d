"""Time that passes faster on a page than here, and waits for the network all the same."""

from playwright.sync_api import Page, Request

BREATH_MS = 20


class FastClock:
    """The clock of a page in the test's hand: between two steps every request of the page gets its answer."""

    def __init__(self, page: Page) -> None:
        self.page = page
        self.under_way: set[Request] = set()
        page.on("request", lambda request: self.under_way.add(request))
        page.on("requestfinished", lambda request: self.under_way.discard(request))
        page.on("requestfailed", lambda request: self.under_way.discard(request))
        page.clock.install()

    def run(self, seconds: int, step_s: int = 1) -> None:
        for _ in range(0, seconds, step_s):
            self.page.clock.run_for(step_s * 1_000)
            self.answered()

    def answered(self) -> None:
        self.page.wait_for_timeout(BREATH_MS)
        while self.under_way:
            self.page.wait_for_timeout(BREATH_MS)
