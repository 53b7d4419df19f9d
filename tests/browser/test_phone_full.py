"""A phone that is full says so before anything is lost, keeps what was typed, and puts it away when there is room."""

import json
from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page, expect

from checklist_app.checklists import values
from tests.browser.conftest import PATIENCE_MS, PHONE
from tests.browser.script_page import Kept, served
from tests.browser.test_entry_script import LANDING, MASS, picture

MODULE = "const module = (name) => import(`/static/js/${name}.js`);"
STATES = f"""async () => {{ {MODULE}
  return (await (await module("phone_store")).all("entries")).map(({{ state }}) => state); }}"""
QUOTA = 900_000
FILL = f"""async ([state, mime, most = 99]) => {{ {MODULE}
  const [store, {{ partOf }}] = await Promise.all([module("phone_store"), module("keep")]);
  for (const size of [60_000, 4_000, 200]) for (let n = 0; n < most; n += 1) {{
    const digest = `${{size}}-${{n}}`.padEnd(64, "f");
    const data = crypto.getRandomValues(new Uint8Array(size));
    try {{
      const row = partOf(digest, mime ? new Blob([data]) : data, {{ state, mime }});
      await store.write(["parts"], ({{ parts }}) => parts.put(row));
    }} catch (fault) {{ if (size === 200) return fault.name; break; }}
  }}
  return "there is room"; }}"""


@pytest.fixture(scope="module")
def measured(browser: Browser, chromium_path: str) -> Iterator[Browser]:
    """A browser that tells the room that there is; today's tell a fixed figure unless they are told not to."""
    launched = browser.browser_type.launch(executable_path=chromium_path, args=[
        "--no-sandbox", "--disable-features=StaticStorageQuota", "--host-resolver-rules=MAP workshop.test 127.0.0.1"])
    yield launched
    launched.close()


@pytest.fixture
def page(measured: Browser) -> Iterator[Page]:
    context = measured.new_context(viewport=PHONE, locale="en-GB")
    context.set_default_timeout(PATIENCE_MS)
    yield context.new_page()
    context.close()


@pytest.fixture
def kept(page: Page) -> Iterator[Kept]:
    """On loopback the browser tells how much room there is, as it does by https. Room for a little from the start: what
    it once had is believed for half a minute."""
    with served() as (address, kept):
        kept.address = address.replace("workshop.test", "127.0.0.1")
        kept.session = page.context.new_cdp_session(page)
        has_room(kept, QUOTA)
        page.goto(kept.address)
        page.wait_for_load_state("networkidle")
        yield kept
        page.close(run_before_unload=False)


def has_room(kept: Kept, quota: int | None) -> None:
    kept.session.send("Storage.overrideQuotaForOrigin",
                      {"origin": kept.address.rstrip("/")} | ({} if quota is None else {"quotaSize": quota}))


def fill_up(page: Page, state: str = "kept", mime: str = "") -> None:
    """Until the browser refuses."""
    assert page.evaluate(FILL, [state, mime]) == "QuotaExceededError"


def say(page: Page, name: str, text: str) -> None:
    with page.expect_response("**/answer"):
        page.locator(f'[name="{name}"]').fill(text)
        page.locator(f'[name="{name}"]').blur()


def test_a_full_phone_says_so_keeps_what_was_typed_in_the_page_and_puts_it_away_later(kept: Kept, page: Page) -> None:
    fill_up(page)
    kept.down = True
    say(page, "mass_kg", "2400")
    says = page.locator("#phone-says")
    expect(says).to_contain_text("This phone is full")
    expect(says).to_contain_text("1 answer stands in this page only: leave it open")
    say(page, "landing", "bed 3")
    expect(says).to_contain_text("2 answers stand in this page only")
    assert page.locator('[name="mass_kg"]').input_value() == "2400" and page.evaluate(STATES) == []
    has_room(kept, None)
    say(page, "landing", "bed 4")
    expect(says).not_to_contain_text("full")
    for _ in range(100):
        if page.evaluate(STATES) == ["kept"] * 3:
            break
        page.wait_for_timeout(200)
    assert page.evaluate(STATES) == ["kept"] * 3
    kept.down = False
    page.evaluate("() => dispatchEvent(new Event('online'))")
    expect(page.locator("#sync")).to_have_text("all confirmed")
    assert kept.folded.values[MASS] == values.number("2400", "kg") and not kept.folded.disputed
    assert values.words(kept.parts[kept.folded.values[LANDING]["part"]]) == "bed 4"
    assert len(kept.entries) == 3


def test_on_a_full_phone_the_server_still_gets_what_was_typed(kept: Kept, page: Page) -> None:
    fill_up(page)
    say(page, "mass_kg", "2400")
    expect(page.locator("#live")).to_have_text("kept 1")
    assert kept.folded.values[MASS] == values.number("2400", "kg")
    expect(page.locator("#phone-says")).to_contain_text("This phone is full")
    expect(page.locator("#phone-says")).not_to_contain_text("in this page only")


def test_pictures_that_the_server_has_make_room_for_entries(kept: Kept, page: Page) -> None:
    fill_up(page, "confirmed", "image/jpeg")
    kept.down = True
    say(page, "mass_kg", "2400")
    expect(page.locator("#sync")).to_have_text("1 kept on this phone")
    expect(page.locator("#phone-says")).not_to_contain_text("This phone is full")
    assert page.evaluate(STATES) == ["kept"]


def test_a_photograph_leaves_room_for_entries(kept: Kept, page: Page, tmp_path: Path) -> None:
    page.locator('[name="label"]').set_input_files(picture(tmp_path, 1600, 1200))
    expect(page.get_by_text("The photo is not kept on this phone. It goes with the form.")).to_be_visible()
    say(page, "mass_kg", "2400")
    assert len(page.evaluate(STATES)) == 1, "an entry is small enough"


def test_a_phone_that_is_nearly_full_says_so_while_it_still_keeps_all(kept: Kept, page: Page) -> None:
    assert page.evaluate(FILL, ["confirmed", "", 12]) == "there is room"
    page.reload()
    expect(page.locator("#phone-says")).to_contain_text("This phone is nearly full")
    say(page, "mass_kg", "2400")
    assert len(page.evaluate(STATES)) == 1


def test_the_page_of_what_is_kept_tells_what_the_browser_promised(kept: Kept, page: Page) -> None:
    room, install = page.locator("[data-outbox-room]"), page.locator("[data-outbox-install]")
    expect(room).to_contain_text("The browser has not promised to keep it")
    expect(room).to_contain_text("MB are used")
    expect(install).to_be_visible()
    page.evaluate("() => { navigator.storage.persisted = async () => true; document.dispatchEvent("
                  "new CustomEvent('phone:changed')); }")
    expect(room).to_contain_text("The browser has promised to keep what is on this phone")
    expect(install).to_be_hidden()
    page.goto(kept.address.replace("127.0.0.1", "workshop.test"))
    expect(room).to_have_text("By http the browser does not say whether it keeps what is here for good.")


def test_what_stands_in_a_full_page_goes_into_the_file_once_there_is_room(kept: Kept, page: Page) -> None:
    kept.down = True
    fill_up(page)
    say(page, "mass_kg", "2400")
    has_room(kept, None)
    say(page, "landing", "bed 3")
    expect(page.locator("#sync")).to_have_text("2 kept on this phone")
    with page.expect_download() as saved:
        page.locator("[data-outbox-file]").click()
    file = json.loads(Path(saved.value.path()).read_text())
    assert {json.loads(one["body"])["path"][0] for one in file["entries"]} == {"mass_kg", "landing"}
