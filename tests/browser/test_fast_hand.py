"""Typed as fast as the browser takes it: no answer is lost, none is made twice, and nobody disagrees with himself."""

import random

import pytest
from playwright.sync_api import Browser, BrowserContext, Page, expect

from checklist_app.checklists import values
from checklist_app.checklists.entry import Entry
from checklist_app.checklists.fold import fold
from checklist_app.records.store import Store
from tests.browser.conftest import PHONE
from tests.browser.hand import Hand
from tests.browser.script_page import Kept, served
from tests.browser.server import Server
from tests.browser.test_entry_script import FELT, HITCH, LANDING, MASS

# All of it in one turn of the page's script, as no hand can: focus, text, and on to the next field.
AT_ONCE = """said => {
  for (const [name, text] of Object.entries(said)) {
    const field = document.querySelector(`[name="${name}"]`);
    if (field.type === 'checkbox' || field.type === 'radio') { field.click(); continue; }
    field.focus();
    field.select();
    document.execCommand('insertText', false, text);
  }
  document.activeElement.blur();
}"""
OPEN = "() => document.querySelectorAll('#work details').forEach(each => { each.open = true; })"
NUMBERS = "els => els.map(e => e.name)"


@pytest.fixture(scope="module")
def hand(browser: Browser, server: Server) -> Hand:
    context = browser.new_context(viewport=PHONE, has_touch=True, is_mobile=True, locale="en-GB")
    made = Hand(context.new_page(), server)
    made.sign_in("Milo Harke")
    made.begin("Generating set 60", "Engine bay")
    yield made
    context.close()


def slow(context: BrowserContext, page: Page, latency_ms: int) -> None:
    network = context.new_cdp_session(page)
    network.send("Network.enable")
    network.send("Network.emulateNetworkConditions", {
        "offline": False, "latency": latency_ms, "downloadThroughput": -1, "uploadThroughput": -1})


def entries(hand: Hand) -> list[Entry]:
    store = Store(hand.server.folder)
    try:
        return store.entries(("task", hand.task.rpartition("/")[2]))
    finally:
        store.close()


def arrived(hand: Hand, before: int, count: int) -> list[Entry]:
    """What came since, once it is as much as was said and nothing more is under way."""
    for _ in range(300):
        if len(entries(hand)) >= before + count:
            break
        hand.page.wait_for_timeout(200)
    expect(hand.page.locator("form.htmx-request, form .htmx-request")).to_have_count(0)
    hand.page.wait_for_timeout(600)
    return entries(hand)[before:]


def shows(hand: Hand, said: dict[str, str]) -> None:
    for name, text in said.items():
        expect(hand.field(name)).to_have_value(text)
    expect(hand.page.locator("#sync")).to_have_text("all confirmed")


def type_by_keys(hand: Hand, name: str, text: str) -> None:
    hand.field(name).evaluate("field => { field.focus(); field.select(); }")
    for key in text:
        hand.page.keyboard.press(key)
    hand.page.keyboard.press("Tab")


@pytest.mark.parametrize("latency_ms", [0, 250])
def test_fields_typed_one_after_the_other_without_a_pause_are_one_answer_each(hand: Hand, latency_ms: int) -> None:
    seed = random.randrange(10**6)
    print(f"seed {seed}")
    chance = random.Random(seed)
    slow(hand.page.context, hand.page, latency_ms)
    for _ in range(2):
        before = len(entries(hand))
        hand.go("numbers?step=heights")
        hand.page.evaluate(OPEN)
        names = hand.page.eval_on_selector_all("#work .number-value input", NUMBERS)
        said = {name: f"{n},{chance.randrange(10_000):04d}" for n, name in enumerate(names, 1)}
        for name, text in said.items():
            type_by_keys(hand, name, text)
        found = arrived(hand, before, len(said))
        assert [(entry.path[0], entry.value["text"]) for entry in found] == list(said.items())
        shows(hand, said)
        assert not fold(entries(hand)).disputed


def test_a_page_that_an_answer_changes_waits_for_the_field_in_hand(hand: Hand) -> None:
    """What is on the load decides which figures are shown; the hand is in the next field by then."""
    hand.page.goto(f"{hand.url}/today")
    hand.begin("Vertical pump 400, with motor", "Pump bay")
    slow(hand.page.context, hand.page, 250)
    for state, landing in (("bare", "bed 3"), ("complete", "bed 4")):
        before = len(entries(hand))
        hand.go("what?step=lift")
        hand.page.evaluate(OPEN)
        field, old = hand.field("landing"), hand.page.locator("[data-old]")
        field.evaluate("field => { field.dataset.old = ''; }")
        hand.page.locator(f'#work [name="build_state"][value="{state}"]').check(force=True)
        field.evaluate("field => { field.focus(); field.select(); }")
        hand.page.keyboard.type(landing[:3], delay=200)
        hand.page.wait_for_timeout(800)
        expect(field).to_be_focused()
        hand.page.keyboard.type(landing[3:])
        expect(old).to_have_count(1)
        hand.page.keyboard.press("Tab")
        expect(old).to_have_count(0)
        assert [entry.path for entry in arrived(hand, before, 2)] == [("build_state",), ("landing",)]
        shows(hand, {"landing": landing})


@pytest.mark.parametrize("slow_s", [0.0, 0.3])
def test_all_fields_at_once_are_one_answer_each(page: Page, slow_s: float) -> None:
    with served() as (address, kept):
        page.goto(address)
        kept.slow_s = slow_s
        page.evaluate(AT_ONCE, {"mass_kg": "2400", "leg/1-left/hitch": "", "felt": "", "landing": "bed 3"})
        expect(page.locator("#live")).to_have_text("kept 4")
        said_at_once(kept, "2400", "bed 3", 4)
        page.evaluate(AT_ONCE, {"mass_kg": "2410", "landing": "bed 4"})
        expect(page.locator("#live")).to_have_text("kept 6")
        said_at_once(kept, "2410", "bed 4", 6)
        page.close()


def said_at_once(kept: Kept, mass: str, landing: str, count: int) -> None:
    assert len({entry.digest for entry in kept.entries}) == len(kept.entries) == count
    assert [entry.counter for entry in kept.entries] == list(range(1, count + 1))
    assert kept.folded.values[MASS]["text"] == mass and not kept.folded.disputed
    assert values.words(kept.parts[kept.folded.values[LANDING]["part"]]) == landing
    assert kept.folded.values[HITCH] == values.choice("straight") and kept.folded.values[FELT] == values.tick("yes")


def test_what_is_half_typed_is_no_answer(page: Page) -> None:
    with served() as (address, kept):
        page.goto(address)
        page.locator('[name="landing"]').focus()
        page.keyboard.type("bed")
        page.evaluate("() => document.querySelector('[name=felt]').click()")  # the hand stays where it is
        expect(page.locator("#live")).to_have_text("kept 1")
        page.keyboard.type(" 3")
        page.keyboard.press("Tab")
        expect(page.locator("#live")).to_have_text("kept 2")
        assert [entry.path for entry in kept.entries] == [FELT, LANDING]
        assert values.words(kept.parts[kept.folded.values[LANDING]["part"]]) == "bed 3"
        page.close()
