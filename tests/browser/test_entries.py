"""What the page's own script makes: over plain http on a name of the network, in two tabs, from bad input."""

import hashlib
import re
from collections.abc import Iterator

import pytest
from playwright.sync_api import Browser, BrowserContext, Page, expect

from checklist_app.checklists.entry import Entry
from checklist_app.records.store import Store
from tests.browser.conftest import PATIENCE_MS, PHONE
from tests.browser.hand import Hand
from tests.browser.server import Server

HEIGHTS = "numbers?step=heights"


@pytest.fixture(scope="module")
def signed_in(browser: Browser, server: Server) -> Iterator[Hand]:
    """A rigger on a phone on which the checks were started once; each test begins a task of its own."""
    context = browser.new_context(viewport=PHONE, has_touch=True, is_mobile=True, locale="en-GB")
    context.set_default_timeout(PATIENCE_MS)
    hand = Hand(context.new_page(), server)
    hand.sign_in("Milo Harke")
    yield hand
    context.close()


@pytest.fixture
def hand(signed_in: Hand) -> Hand:
    """That rigger on the page of today."""
    signed_in.task = ""
    signed_in.page.goto(f"{signed_in.url}/today")
    return signed_in


def under_way(hand: Hand) -> Hand:
    """At the heights of a task of the hand's own."""
    hand.begin("Generating set 60", "Engine bay")
    hand.go(HEIGHTS)
    return hand


def entries(server: Server, hand: Hand) -> list[Entry]:
    store = Store(server.folder)
    found = store.entries(("task", hand.task.rpartition("/")[2]))
    store.close()
    return found


def test_over_plain_http_the_page_makes_entries_and_their_digests_are_right(page: Page, server: Server) -> None:
    hand = Hand(page, server, host="workshop.test")
    hand.sign_in("Milo Harke")
    assert page.evaluate("[isSecureContext, !!crypto.subtle]") == [False, False]
    under_way(hand)
    told(hand, "0,25")
    (made,) = [entry for entry in entries(server, hand) if entry.path == ("lift_height_m",)]
    assert made.device.startswith("d-"), "the page's script made none, so the server did"
    assert made.value["text"] == "0,25"
    assert hashlib.sha256(made.data).hexdigest() == made.digest


def test_an_old_tab_of_the_same_phone_is_no_disagreement(phone: BrowserContext, server: Server) -> None:
    first = Hand(phone.new_page(), server)
    first.sign_in("Dunja Fell")
    under_way(first)
    second = Hand(phone.new_page(), server)
    second.task = first.task
    second.go(HEIGHTS)
    told(first, "0.30")
    told(second, "0.40")
    first.go(HEIGHTS)
    expect(first.page.locator("main")).not_to_contain_text("Two answers differ")
    assert first.field("lift_height_m").input_value() == "0.40"


def test_two_people_who_answer_differently_see_both_answers(phone: BrowserContext, browser: Browser,
                                                            server: Server) -> None:
    rigger = Hand(phone.new_page(), server)
    rigger.sign_in("Benno Clay")
    under_way(rigger)
    elsewhere = browser.new_context(viewport=PHONE)
    other = Hand(elsewhere.new_page(), server)
    other.sign_in("Owen Thrale")
    other.task = rigger.task
    other.go(HEIGHTS)
    told(rigger, "0.30")
    told(other, "0.50")
    rigger.go(HEIGHTS)
    expect(rigger.page.locator("main")).to_contain_text("Two answers differ")
    expect(rigger.page.locator("#live")).not_to_contain_text("The lift is within limit")
    elsewhere.close()


@pytest.mark.parametrize("text", ["abc", "1e99", "NaN", "-3", "1,250", "0.3.0", "∞", "9" * 150])
def test_bad_input_is_told_at_its_field_and_never_within_limit(hand: Hand, text: str) -> None:
    page = under_way(hand).page
    assert hand.field("lift_height_m").input_value() == ""
    told(hand, text)
    expect(page.locator("#lift_height_m-fault")).to_contain_text(re.compile(r"\S{2,}"))
    assert hand.field("lift_height_m").input_value() == text
    expect(page.locator("#live")).not_to_contain_text("The lift is within limit")
    hand.go(HEIGHTS)
    assert hand.field("lift_height_m").input_value() == text


def test_an_empty_task_waits(hand: Hand) -> None:
    page = under_way(hand).page
    hand.go("checks")
    expect(page.locator("main")).to_contain_text(re.compile("waiting", re.IGNORECASE))
    expect(page.locator("main")).not_to_contain_text("The lift is within limit")


def test_an_address_that_leads_nowhere_says_so(hand: Hand) -> None:
    answer = hand.page.goto(f"{hand.url}/tasks/t-nobody-1/numbers")
    assert answer is not None and answer.status == 404
    expect(hand.page.locator("main")).to_contain_text("no such task")


def test_eight_thousand_brackets_are_refused_and_the_server_goes_on(phone: BrowserContext, server: Server) -> None:
    body = '{"entries": [{"body": "' + "[" * 8000 + '"}]}'
    headers = {"Content-Type": "application/json", "Origin": server.url}
    for sent in (body, "[" * 8000):
        assert 400 <= phone.request.put(f"{server.url}/entries", data=sent.encode(), headers=headers).status < 500
    assert phone.request.get(server.url).ok


def told(hand: Hand, text: str) -> None:
    """Typed, and the server has answered."""
    with hand.page.expect_response(lambda answer: answer.request.method == "POST" and "numbers" in answer.url):
        hand.fill("lift_height_m", text)
