"""Who has gone on to the next page is not brought back by the answer to what he said on the one before."""

import pytest
from playwright.sync_api import Browser, Route, expect

from tests.browser.conftest import PHONE
from tests.browser.hand import Hand
from tests.browser.server import Server
from tests.browser.test_fast_hand import slow

LATE_MS = 900
BOTH = """() => {
  document.querySelector('[name="build_state"]:not(:checked)').click();
  document.querySelector('.dock a.button-go, .dock .button-go a, .dock .button-go').click();
}"""


@pytest.fixture
def hand(browser: Browser, server: Server) -> Hand:
    context = browser.new_context(viewport=PHONE, has_touch=True, is_mobile=True, locale="en-GB")
    made = Hand(context.new_page(), server)
    made.sign_in("Milo Harke")
    made.begin("Vertical pump 400, with motor", "Pump bay")
    yield made
    context.close()


def test_a_page_that_was_left_calls_nobody_back(hand: Hand) -> None:
    """A build state changes which questions are asked, so its answer sends for its page anew: too late by then."""
    page = hand.page
    slow(page.context, page, LATE_MS)
    page.evaluate(BOTH)
    page.wait_for_url(lambda address: "/what" not in address)
    left_for = page.url
    page.wait_for_timeout(6 * LATE_MS)
    assert page.url == left_for


def test_a_page_that_was_under_way_calls_nobody_back(browser: Browser, server: Server) -> None:
    """The answer came in time, the page with the new questions only after he had gone on."""
    context = browser.new_context(
        viewport=PHONE, has_touch=True, is_mobile=True, locale="en-GB", service_workers="block"
    )
    hand = Hand(context.new_page(), server)
    hand.sign_in("Milo Harke")
    hand.begin("Vertical pump 400, with motor", "Pump bay")
    page, held = hand.page, list[Route]()

    def hold(route: Route) -> None:
        asked = route.request.headers
        if route.request.method == "GET" and "hx-request" in asked and "hx-boosted" not in asked:
            held.append(route)
        else:
            route.continue_()

    page.route("**/what**", hold)
    page.locator('[name="build_state"]:not(:checked)').first.check()
    expect(page.locator("body")).to_have_class("htmx-request")
    page.locator(".dock .button-go").click()
    page.wait_for_url(lambda address: "/what" not in address)
    left_for = page.url
    assert len(held) == 1
    held[0].continue_()
    page.wait_for_timeout(LATE_MS)
    assert page.url == left_for
    context.close()
