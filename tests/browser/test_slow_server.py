"""A server that is slow to answer is waited for where nobody is signed in; who is signed in goes on from his phone."""

import os
import signal

from playwright.sync_api import Browser, expect

from tests.browser.conftest import PHONE
from tests.browser.hand import Hand
from tests.browser.phone import phone_of
from tests.browser.stoppable import WITHIN_MS, Stoppable

LONGER_THAN_IT_WAITS_MS = 7_000
IN_CONTROL = "() => navigator.serviceWorker.ready.then(() => navigator.serviceWorker.controller !== null)"


def leave_for(hand: Hand, where: str) -> None:
    """Without waiting for the page, as a tap does."""
    hand.page.evaluate("where => { setTimeout(() => location.assign(where)); }", where)


def test_nobody_is_left_on_a_page_that_has_nothing_for_him(browser: Browser, gone: Stoppable) -> None:
    context = browser.new_context(viewport=PHONE)
    hand = Hand(context.new_page(), gone.as_server())
    hand.page.goto(f"{hand.url}/sign-in")
    for _ in range(WITHIN_MS // 250):
        if hand.page.evaluate(IN_CONTROL):
            break
        hand.page.wait_for_timeout(250)
    os.kill(gone.process.pid, signal.SIGSTOP)
    leave_for(hand, "/sign-in?slow")
    hand.page.wait_for_timeout(LONGER_THAN_IT_WAITS_MS)
    os.kill(gone.process.pid, signal.SIGCONT)
    expect(hand.page).to_have_url(f"{hand.url}/sign-in?slow", timeout=WITHIN_MS)
    expect(hand.page.get_by_label("Your PIN")).to_be_visible(timeout=WITHIN_MS)
    context.close()


def test_who_is_signed_in_goes_on_while_the_server_thinks(browser: Browser, gone: Stoppable) -> None:
    phone = phone_of(browser, gone, "Milo Harke")
    os.kill(gone.process.pid, signal.SIGSTOP)
    try:
        leave_for(phone, "/begin")
        expect(phone.page.locator("h1")).to_have_text("Begin a task", timeout=WITHIN_MS)
        assert gone.process.poll() is None, "it is there, and silent"
    finally:
        os.kill(gone.process.pid, signal.SIGCONT)
    phone.context.close()
