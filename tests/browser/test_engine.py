"""The worker in a real browser, under the server's policy: it starts, answers as the server does, and starts again."""

from collections.abc import Iterator
from datetime import date
from typing import Any

import pytest
from playwright.sync_api import Browser, expect

from tests.browser import journey
from tests.browser.conftest import PHONE
from tests.browser.hand import Hand
from tests.browser.known import TO_WORKER, known
from tests.browser.server import Server

ENGINE = """import(document.querySelector('script[src*="engine_start"]').src.replace("engine_start", "engine"))"""
STATE = f"async () => (await {ENGINE}).status().state"
READY = f"""(state) => new Promise((yes) => {{
  const look = async () => ((await {ENGINE}).status().state === state ? yes() : setTimeout(look, 50)); look(); }})"""
ASK = f"async (message) => (await {ENGINE}).ask(message)"
FRAGMENT = """async (path) => { const answer = await fetch(path, { headers: { "HX-Request": "true" } });
  return { status: answer.status, html: await answer.text() }; }"""
DEVICE = """() => document.querySelector('meta[name="device"]').content"""
TOKEN = """() => document.querySelector('meta[name="form-token"]').content"""
PAGES: dict[str, dict[str, str]] = {
    "numbers": {"step": "heights"}, "checks": {}, "kit": {}, "stop-points": {"step": "loose"}, "what": {}, "trial": {},
    "holds/release": {},
}
BOOT_MS = 60_000


@pytest.fixture(scope="module")
def signed_in(browser: Browser, server: Server) -> Iterator[Hand]:
    """Somebody with a task under way, on a phone that every test of the worker finds again."""
    context = browser.new_context(viewport=PHONE, has_touch=True, is_mobile=True, locale="en-GB")
    context.set_default_timeout(BOOT_MS)
    hand = Hand(context.new_page(), server)
    hand.sign_in("Milo Harke")
    journey.say_what(hand)
    yield hand
    context.close()


@pytest.fixture
def rigger(signed_in: Hand) -> Hand:
    """At the numbers of the task, on a page and with a worker of its own, which is ready."""
    page = signed_in.page
    signed_in.go("numbers?step=heights")
    page.evaluate(READY, "ready")
    expect(page.locator("#sync[data-counted]")).to_have_text("all confirmed")
    return signed_in


def request(hand: Hand, path: str, query: dict[str, str]) -> dict[str, Any]:
    day = date.today().isoformat()
    person = {"id": "milo-harke", "name": "Milo Harke", "role": "rigger", "capacities": {"rigger": "2099-01-01"}}
    return {"method": "GET", "path": path, "query": query, "fragment": True, "person": person, "counter": 1,
            "device": hand.page.evaluate(DEVICE), "form_token": hand.page.evaluate(TOKEN), "salt": "s",
            "at": f"{day}T08:00:00Z", "today": day, "theme": "", "mark": "DEMONSTRATION. All is invented."}


def test_the_worker_gives_the_page_of_the_server_to_the_byte(rigger: Hand, server: Server) -> None:
    page = rigger.page
    load = f"async (known) => (await {ENGINE}).ask({{ do: 'load', ...({TO_WORKER})(known) }})"
    page.evaluate(load, known(server.folder))
    for where, query in PAGES.items():
        path = f"{rigger.task}/{where}"
        there = page.evaluate(ASK, {"do": "answer", "request": request(rigger, path, query)})
        search = "".join(f"?{name}={text}" for name, text in query.items())
        here = page.evaluate(FRAGMENT, path + search)

        assert there["status"] == here["status"] == 200
        assert body(there["html"]) == body(here["html"]), where


def body(html: str) -> str:
    """What the page shows; its head names files by their edition, which only the server knows."""
    start = html.index("<body")
    assert len(html) - start > 500
    return html[start:]


def test_a_worker_that_dies_is_followed_by_one_that_knows_the_same(rigger: Hand, server: Server) -> None:
    page = rigger.page
    page.evaluate(f"async (known) => {{ window.told = 0; await (await {ENGINE}).onReload(async () => {{"
                  f" window.told += 1; return ({TO_WORKER})(known); }}); }}", known(server.folder))
    asked = {"do": "answer", "request": request(rigger, f"{rigger.task}/checks", {})}
    before = page.evaluate(ASK, asked)
    page.workers[0].evaluate("() => { setTimeout(() => { throw new Error('no memory left'); }, 0); }")
    page.evaluate(READY, "starting")
    page.evaluate(f"async (asked) => {{ window.late = (await {ENGINE}).ask(asked); }}", asked)
    expect(page.locator("#live [role='status']")).to_have_text("Checks waiting.")
    after = page.evaluate("() => window.late")

    assert body(after["html"]) == body(before["html"])
    expect(page.locator("#live [role='status']")).not_to_have_text("Checks waiting.")
    assert page.evaluate("() => window.told") == 2


def test_what_the_worker_cannot_do_is_refused_in_words(rigger: Hand) -> None:
    words = rigger.page.evaluate(f"async () => (await {ENGINE}).ask({{ do: 'evaluate', task: 't-none', today: '' }})"
                                 ".catch((error) => [error.words, error.message])")
    assert words[0] == "cannot be assessed on this phone"
    assert "NotBegun" in words[1]


def test_the_policy_lets_the_engine_run_and_no_text_become_script(rigger: Hand) -> None:
    assert rigger.page.evaluate(STATE) == "ready"
    rigger.page.evaluate("() => { window.ran = 0; setTimeout('window.ran = 1', 0); }")
    rigger.page.wait_for_timeout(200)
    assert rigger.page.evaluate("() => window.ran") == 0
