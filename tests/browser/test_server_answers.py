"""Whatever the server answers, what a phone keeps stays on it, the page says what happens, and it is sent again."""

import json
from collections.abc import Iterator

import pytest
from playwright.sync_api import Page, expect

from checklist_app.checklists import values
from checklist_app.checklists.canonical import digest
from checklist_app.checklists.entry import make
from tests.browser.fast_clock import FastClock
from tests.browser.script_page import Kept, served
from tests.browser.test_entry_script import LANDING, MASS, fill, picture

LOOK = "() => dispatchEvent(new Event('online'))"  # as if the network had come back
STAYS = "What is kept here stays, and is sent again by itself"
MODULE = "const module = (name) => import(`/static/js/${name}.js`);"
MANY = f"""async (many) => {{ {MODULE}
  const [{{ keepSaid }}, {{ entry }}] = await Promise.all(["keep", "make"].map(module));
  const said = Array.from({{ length: many }}, (_, n) => ({{ about: ["task", "t-1"], path: ["mark_" + n],
    author: "p-1", device: "d-1", prompt: {{ unit: "kg", replaces: [] }},
    now: {{ type: "number", text: String(n), how: "", plus_minus: "" }} }}));
  await keepSaid(said, entry); (await module("sync")).sync(); }}"""
ANSWERS = {
    429: "The server asks to be left alone for a while", 500: "The server has a fault (500)",
    502: "The server has a fault (502)", 503: "The server has a fault (503)",
}


@pytest.fixture
def kept(page: Page) -> Iterator[Kept]:
    with served() as (address, kept):
        kept.address = address
        page.goto(address)
        page.wait_for_load_state("networkidle")
        yield kept
        page.close()


def offline_answer(page: Page, kept: Kept, name: str, text: str) -> None:
    """Said while the form does not reach the server, so that it goes by itself later."""
    kept.refuses["POST /answer"] = (503, {})
    with page.expect_response("**/answer"):
        page.locator(f'[name="{name}"]').fill(text)
        page.locator(f'[name="{name}"]').blur()
    page.evaluate(LOOK)


@pytest.mark.parametrize("status", ANSWERS)
def test_a_server_that_cannot_take_it_is_told_in_words_and_asked_again(kept: Kept, page: Page, status: int) -> None:
    kept.refuses["PUT /entrie"] = (status, {})
    offline_answer(page, kept, "mass_kg", "2400")
    expect(page.locator("#phone-says")).to_contain_text(f"{ANSWERS[status]}. {STAYS}")
    expect(page.locator("#sync")).to_have_text("1 kept on this phone")
    kept.refuses.clear()
    expect(page.locator("#sync")).to_have_text("all confirmed")
    expect(page.locator("#phone-says")).not_to_contain_text("The server")
    assert kept.folded.values[MASS] == values.number("2400", "kg") and len(kept.entries) == 1


def test_a_full_disk_is_told_in_the_servers_own_words(kept: Kept, page: Page) -> None:
    kept.refuses["PUT /entrie"] = (507, {"words": "The server's disk is full, so nothing more can be kept."})
    offline_answer(page, kept, "mass_kg", "2400")
    expect(page.locator("#phone-says")).to_contain_text(
        f"The server's disk is full, so nothing more can be kept. {STAYS}")


def test_the_pauses_grow_and_the_server_says_how_long(kept: Kept, page: Page) -> None:
    clock = FastClock(page)
    page.goto(kept.address)
    kept.refuses["PUT /entrie"] = (503, {})
    offline_answer(page, kept, "mass_kg", "2400")
    clock.answered()
    kept.asked.clear()
    clock.run(60)
    assert 3 <= kept.asked.count("PUT /entrie") <= 9, "1, 2, 4, 8, 16, 30 seconds"
    kept.refuses["PUT /entrie"] = (503, {"Retry-After": "200"})
    clock.run(40)
    kept.asked.clear()
    clock.run(100, step_s=50)
    assert kept.asked.count("PUT /entrie") == 0
    kept.refuses.clear()
    clock.run(120, step_s=10)
    expect(page.locator("#sync")).to_have_text("all confirmed")


def test_a_batch_that_is_too_large_is_halved_until_it_goes(kept: Kept, page: Page) -> None:
    kept.most = 7
    page.evaluate(MANY, 50)
    for _ in range(300):  # before the page has noticed them, the bar still says what it said
        if len(kept.entries) == 50:
            break
        page.wait_for_timeout(200)
    expect(page.locator("#sync")).to_have_text("all confirmed")
    assert len(kept.entries) == 50 and len({entry.digest for entry in kept.entries}) == 50
    assert max(kept.batches) > 7 >= max(size for size in kept.batches if size <= kept.most)


@pytest.mark.parametrize("status", [413, 500])
def test_a_photograph_that_the_server_fails_over_holds_nothing_else_back(
        kept: Kept, page: Page, tmp_path, status: int) -> None:
    kept.refuses["PUT /parts/"] = (status, {})
    offline_answer(page, kept, "mass_kg", "2400")
    page.locator('[name="label"]').set_input_files(picture(tmp_path, 300, 200))
    expect(page.get_by_text("The photo is kept.")).to_be_visible()
    page.evaluate(LOOK)
    for _ in range(300):
        if len(kept.entries) == 2:
            break
        page.wait_for_timeout(200)
    told = "all confirmed" if status == 413 else "1 photo kept on this phone"
    expect(page.locator("#sync")).to_have_text(told)
    assert {entry.path for entry in kept.entries} == {MASS, ("label",)}
    if status == 413:
        expect(page.locator("#phone-says")).to_contain_text("1 not taken: see what the server says")
        expect(page.locator("[data-outbox-said]")).to_contain_text("1 photograph was too large for the server")
    with page.expect_download() as saved:
        page.locator("[data-outbox-file]").click()
    assert len(json.loads(saved.value.path().read_text())["photos"]) == 1


@pytest.mark.parametrize("way", ["the sign-in ended", "the phone was revoked"])
def test_without_a_sign_in_it_waits_asks_for_the_pin_and_goes_afterwards(kept: Kept, page: Page, way: str) -> None:
    kept.refuses["PUT /entrie"] = kept.refuses["GET /device"] = (401, {})
    offline_answer(page, kept, "mass_kg", "2400")
    says = page.locator("#phone-says")
    expect(says).to_contain_text("Sign in again: what is kept here waits for it")
    expect(says.get_by_role("link", name="Sign in")).to_have_attribute("href", "/sign-in")
    expect(page.locator("#sync")).to_have_text("1 kept on this phone")
    kept.refuses.clear()
    if way == "the phone was revoked":
        kept.credential = "another secret"
    page.evaluate(LOOK)
    expect(page.locator("#sync")).to_have_text("all confirmed")
    expect(says).not_to_contain_text("Sign in again")
    assert len(kept.entries) == 1


def test_what_waits_for_somebody_elses_sign_in_says_whose(kept: Kept, page: Page) -> None:
    kept.later = "p-1 must sign in on this device again"
    kept.people = [{"id": "p-1", "name": "Ada"}]
    page.goto(kept.address)
    page.wait_for_load_state("networkidle")
    offline_answer(page, kept, "mass_kg", "2400")
    expect(page.locator("#phone-says")).to_contain_text("Ada must sign in on this device again")
    expect(page.locator("[data-outbox-said]")).to_contain_text("Ada must sign in on this device again")
    expect(page.locator("#sync")).to_have_text("1 kept on this phone")


def test_what_an_earlier_version_kept_moves_in_and_is_sent(page: Page) -> None:
    text = '{"salt":"s","text":"bed 3"}'
    with served() as (address, kept):
        part = digest(text.encode())
        said = [make(("task", "t-1"), MASS, values.number("2400", "kg"), (), "p-1", "d-1", 4, "2026-11-20T09:00:00Z"),
                make(("task", "t-1"), LANDING, values.text(part), (), "p-1", "d-1", 5, "2026-11-20T09:01:00Z")]
        items = [{"body": said[0].data.decode(), "parts": {}}, {"body": said[1].data.decode(), "parts": {part: text}}]
        kept.down = True
        page.goto(f"{address}static/css/app.css")
        page.evaluate("""([kept, count]) => { localStorage.setItem("entries kept on this phone", kept);
            localStorage.setItem("entries made d-1", count); }""", [json.dumps(items), "5"])
        page.goto(address)
        expect(page.locator("#sync")).to_have_text("2 kept on this phone")
        assert page.evaluate('() => localStorage.getItem("entries kept on this phone")') is None
        kept.down = False
        page.reload()
        expect(page.locator('#sync[data-counted]')).to_have_text("all confirmed")
        assert {entry.digest for entry in kept.entries} == {entry.digest for entry in said}
        assert values.words(kept.parts[part]) == "bed 3"
        fill(page, "mass_kg", "2500", 3)
        assert kept.entries[-1].counter == 6 and kept.entries[-1].replaces == (said[0].digest,)
        page.close()


def test_what_cannot_move_in_stays_where_it_was(page: Page) -> None:
    with served() as (address, _):
        page.goto(f"{address}static/css/app.css")
        page.evaluate("said => localStorage.setItem('entries kept on this phone', said)",
                      '[{"body": "no entry", "parts": {}}]')
        page.goto(address)
        expect(page.locator("#phone-says")).to_contain_text("keeps nothing on the phone")
        assert "no entry" in page.evaluate('() => localStorage.getItem("entries kept on this phone")')
        page.close()
