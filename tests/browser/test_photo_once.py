"""A photograph in a plain form whose answer was lost is sent again, and is kept once."""

import io
import re
from base64 import b64encode
from collections import Counter
from datetime import date
from pathlib import Path

from PIL import Image
from playwright.sync_api import Page, Route, expect

from checklist_app.records.store import Store
from checklist_app.records.world import DatabaseWorld
from checklist_app.web.photos import small
from tests.browser.hand import Hand
from tests.browser.server import Server
from tests.browser.stoppable import WITHIN_MS
from tests.browser.test_entry_script import picture
from tests.web.test_photos import file

SHRINK = """async (base64) => {
  const src = document.querySelector('script[src*="/js/phone.js"]').src;
  const { shrunk, isSmall } = await import(src.replace("phone.js", "shrink.js"));
  const bytes = Uint8Array.from(atob(base64), (each) => each.charCodeAt(0));
  const once = await shrunk(new Blob([bytes], { type: "image/jpeg" }));
  const twice = await shrunk(new Blob([once], { type: "image/jpeg" }));
  return [Array.from(once), String(once) === String(twice), isSmall(bytes), isSmall(once)]; }"""


def test_what_the_page_made_small_stays_so_in_the_page_and_at_the_server(
        page: Page, server: Server, tmp_path: Path) -> None:
    page.goto(f"{server.url}/sign-in")
    base64 = b64encode(picture(tmp_path, 2400, 1200).read_bytes()).decode()
    made, same, was_small, is_small = page.evaluate(SHRINK, base64)
    assert (same, was_small, is_small) == (True, False, True)
    assert small(file(bytes(made))).data == bytes(made), "the server makes another picture of it"
    assert Image.open(io.BytesIO(bytes(made))).size == (1600, 800)


def test_a_form_with_a_photo_that_arrived_without_an_answer_is_carried_out_once(
        page: Page, server: Server, tmp_path: Path) -> None:
    hand = Hand(page, server)
    hand.sign_in("Milo Harke")
    page.goto(f"{server.url}/gear/add?kind=round_sling")
    for name, text in {"id": "ONCE-1", "wll_t": "3", "length_m": "1.5", "due": "2030-01-01"}.items():
        page.locator(f'#work [name="{name}"]').fill(text)
    for name, choice in {"marked": "yes", "origin": "bought"}.items():
        page.locator(f'#work [name="{name}"][value="{choice}"]').check(force=True)
    page.locator('#work [name="photo"]').set_input_files(picture(tmp_path, 2400, 1200))
    lost: list[int] = []

    def lose(route: Route) -> None:
        """It arrives; the answer does not."""
        if route.request.method == "POST" and not lost:
            lost.append(route.fetch(max_redirects=0).status)
            return route.abort()
        return route.continue_()

    page.route("**/gear/add*", lose)
    page.get_by_role("button", name="Add it").click()
    # The phone knows by then that it arrived; or it does not yet, and makes the very same entries once more.
    expect(page.get_by_role("heading", level=1)).to_have_text(
        re.compile("This arrived already|^[A-Z][a-z]+day "), timeout=WITHIN_MS)
    assert lost == [303], "the first one arrived and was kept"
    expect(page.locator("#sync")).to_have_text("all confirmed")
    page.wait_for_timeout(1_500)
    store = Store(server.folder)
    try:
        world = DatabaseWorld(store, date.today().isoformat())
        mine = [name for name in world.items("gear") if name.upper() == "ONCE-1"]
        assert len(mine) == 1
        said = store.arrivals(("gear", mine[0]))
        photos = [one.entry.value["part"] for one in said if one.entry.type == "photo"]
        assert len(photos) == 1 and store.parts.get(photos[0])
        assert [one.doubt for one in said] == [""] * len(said), "nothing was counted twice"
        assert Counter(one.entry.type for one in said).most_common(1)[0][1] == 1
    finally:
        store.close()
