"""The page's script makes entries on plain http, under a name that is not the machine itself."""

import io

import pytest
from PIL import Image
from playwright.sync_api import Page, expect

from checklist_app.checklists import values
from checklist_app.checklists.canonical import digest
from tests.browser.fast_clock import FastClock
from tests.browser.script_page import Kept, served

MASS, HITCH, FELT, LANDING, LABEL = ("mass_kg",), ("leg", "1-left", "hitch"), ("felt",), ("landing",), ("label",)


@pytest.fixture
def kept(page: Page):
    with served() as (address, kept):
        kept.address = address
        page.goto(address)
        yield kept
        page.close()


def fill(page: Page, name: str, text: str, count: int) -> None:
    """Type into a field, leave it, and wait until the server has told how much it keeps."""
    page.locator(f'[name="{name}"]').fill(text)
    page.locator(f'[name="{name}"]').blur()
    expect(page.locator("#live")).to_have_text(f"kept {count}")


def test_it_works_where_the_browser_offers_no_digests(kept: Kept, page: Page) -> None:
    assert page.evaluate("[isSecureContext, typeof crypto.subtle]") == [False, "undefined"]
    fill(page, "mass_kg", "2,400", 1)
    (entry,) = kept.entries
    assert (entry.author, entry.device, entry.path, entry.value) == ("p-1", "d-1", MASS, values.number("2,400", "kg"))
    assert "entries" in kept.forms[-1] and not kept.faults


def test_each_change_is_one_entry_that_replaces_what_was_seen(kept: Kept, page: Page) -> None:
    for count, text in enumerate(("2400", "2410", "2420", ""), 1):
        fill(page, "mass_kg", text, count)
    assert [entry.counter for entry in kept.entries] == [1, 2, 3, 4]
    assert [entry.replaces for entry in kept.entries[1:]] == [(entry.digest,) for entry in kept.entries[:-1]]
    assert kept.entries[-1].value == values.withdrawn() and not kept.folded.values and not kept.folded.disputed


def test_of_a_tick_and_its_way_out_the_last_one_holds(kept: Kept, page: Page) -> None:
    tick, unseen = page.locator('[name="felt"]'), page.locator('[name="felt.cannot_see"]')
    tick.check(force=True)
    expect(page.locator("#live")).to_have_text("kept 1")
    unseen.check(force=True)
    expect(page.locator("#live")).to_have_text("kept 2")
    assert not tick.is_checked() and kept.folded.values[FELT] == values.tick("cannot_see")
    tick.check(force=True)
    expect(page.locator("#live")).to_have_text("kept 3")
    assert not unseen.is_checked() and kept.folded.values[FELT] == values.tick("yes")


def test_what_is_answered_while_an_answer_is_under_way_is_not_lost(kept: Kept, page: Page) -> None:
    kept.slow_s = 0.6
    page.locator('[name="felt"]').check(force=True)
    page.locator('[name="leg/1-left/hitch"][value="straight"]').check(force=True)
    page.locator('[name="landing"]').fill("bed 3")
    page.locator('[name="landing"]').blur()
    expect(page.locator("#live")).to_have_text("kept 3")
    assert kept.folded.values[HITCH] == values.choice("straight") and kept.folded.values[FELT] == values.tick("yes")
    assert values.words(kept.parts[kept.folded.values[LANDING]["part"]]) == "bed 3"


def test_every_kind_of_answer_is_made_in_the_page(kept: Kept, page: Page) -> None:
    page.locator('[name="mass_kg.how"]').select_option("plate")
    expect(page.locator("#live")).to_have_text("kept 0")
    fill(page, "mass_kg", "2400", 1)
    page.locator('[name="leg/1-left/hitch"][value="straight"]').check(force=True)
    expect(page.locator("#live")).to_have_text("kept 2")
    page.locator('[name="felt"]').check(force=True)
    expect(page.locator("#live")).to_have_text("kept 3")
    fill(page, "landing", "  bed e\u0301 <3> ", 4)
    assert kept.folded.values[MASS] == values.number("2400", "kg", "plate")
    assert kept.folded.values[HITCH] == values.choice("straight") and kept.folded.values[FELT] == values.tick("yes")
    assert values.words(kept.parts[kept.folded.values[LANDING]["part"]]) == "bed é <3>"
    page.locator('[name="felt"]').uncheck(force=True)
    expect(page.locator("#live")).to_have_text("kept 5")
    assert FELT not in kept.folded.values
    assert {entry.device for entry in kept.entries} == {"d-1"}


def test_sending_the_whole_form_afterwards_says_nothing_twice(kept: Kept, page: Page) -> None:
    fill(page, "mass_kg", "2400", 1)
    page.get_by_role("button", name="Next").click()
    page.wait_for_url("**/answer")
    assert len(kept.forms) == 2 and len(kept.entries) == 1 and "entries" in kept.forms[-1]


def test_what_the_server_could_not_take_is_sent_again_to_the_byte(kept: Kept, page: Page) -> None:
    kept.down = True
    with page.expect_response("**/answer"):
        page.locator('[name="mass_kg"]').fill("2400")
        page.locator('[name="mass_kg"]').blur()
    kept.down = False
    fill(page, "landing", "bed 3", 2)
    assert [entry.path for entry in kept.entries] == [MASS, LANDING]
    fill(page, "landing", "bed 4", 3)
    assert len(kept.forms[-1]["entry"]) == 1, "what was confirmed is not sent for ever"


def test_what_was_answered_without_network_waits_on_the_phone_and_goes_later_by_itself(kept: Kept, page: Page) -> None:
    kept.down = True
    clock = FastClock(page)
    page.goto(kept.address)
    for name, text in (("mass_kg", "2400"), ("landing", "bed 3")):
        with page.expect_response("**/answer"):
            page.locator(f'[name="{name}"]').fill(text)
            page.locator(f'[name="{name}"]').blur()
    page.goto(kept.address)
    expect(page.locator("#sync")).to_have_text("2 kept on this phone")
    clock.run(25, step_s=5)
    assert kept.entries == []
    kept.down = False
    clock.run(35, step_s=5)
    expect(page.locator("#sync")).to_have_text("all confirmed")
    assert {entry.path for entry in kept.entries} == {MASS, LANDING} and not kept.folded.disputed
    assert values.words(kept.parts[kept.folded.values[LANDING]["part"]]) == "bed 3"


def test_a_page_that_was_open_before_does_not_disagree_with_its_own_device(kept: Kept, page: Page) -> None:
    other = page.context.new_page()
    other.goto(kept.address)
    fill(page, "mass_kg", "2400", 1)
    fill(other, "mass_kg", "2500", 2)
    fill(page, "mass_kg", "2600", 3)
    assert kept.folded.values[MASS]["text"] == "2600" and not kept.folded.disputed
    assert [entry.counter for entry in kept.entries] == [1, 2, 3]
    other.close()


def test_a_phone_handed_over_does_not_replace_the_first_persons_answer(kept: Kept, page: Page) -> None:
    fill(page, "mass_kg", "2400", 1)
    page.goto(f"{kept.address}?person=p-2")
    page.locator('[name="mass_kg"]').fill("2500")
    with page.expect_response("**/answer"):
        page.locator('[name="mass_kg"]').blur()
    assert "Somebody else" in kept.faults["mass_kg"], "the server knows who is signed in, whatever the page says"
    assert [entry.author for entry in kept.entries] == ["p-1"]


def test_what_is_unclear_is_left_to_the_server_which_says_so_at_the_field(kept: Kept, page: Page) -> None:
    fill(page, "landing", "bed 3", 1)
    page.locator("details.ways summary").click()
    page.locator('[name="mass_kg.dont_know"]').check(force=True)
    expect(page.locator("#live")).to_have_text("kept 2")
    assert kept.folded.values[MASS] == values.dont_know()
    fill(page, "mass_kg", "2400", 3)
    assert kept.folded.values[MASS]["text"] == "2400"
    page.locator('[name="mass_kg"]').fill("9" * 300)
    with page.expect_response("**/answer"):
        page.locator('[name="mass_kg"]').blur()
    assert "at most 200" in kept.faults["mass_kg"] and "entries" not in kept.forms[-1]
    assert len(kept.entries) == 3


def picture(folder, width: int, height: int):
    """A photograph as a camera makes it, with the place and the camera's name hidden in it."""
    path = folder / "label.jpg"
    hidden = Image.Exif()
    hidden[0x010F] = "a maker of cameras"
    Image.effect_mandelbrot((width, height), (-2, -1.5, 1, 1.5), 50).convert("RGB").save(path, exif=hidden)
    return path


def test_a_photograph_is_made_small_in_the_page_and_named_by_the_digest_of_those_bytes(kept, page, tmp_path) -> None:
    page.locator('[name="label"]').set_input_files(picture(tmp_path, 2400, 1200))
    expect(page.locator("#live")).to_have_text("kept 1")
    name = kept.folded.values[LABEL]["part"]
    assert kept.folded.values[LABEL]["mime"] == "image/jpeg" and digest(kept.parts[name]) == name
    made = Image.open(io.BytesIO(kept.parts[name]))
    assert (made.format, made.size) == ("JPEG", (1600, 800)) and not made.getexif()
    assert b"a maker of cameras" not in kept.parts[name]
    assert kept.entries[0].device == "d-1"


def test_a_photograph_that_cannot_be_sent_now_is_kept_and_goes_before_the_entry_that_names_it(
        kept, page, tmp_path) -> None:
    kept.down = True
    page.locator('[name="label"]').set_input_files(picture(tmp_path, 300, 200))
    expect(page.get_by_text("The photo is kept.")).to_be_visible()
    expect(page.locator("#sync")).to_have_text("1 kept on this phone")
    page.goto(kept.address)
    expect(page.locator("#sync")).to_have_text("1 kept on this phone")
    kept.down = False
    expect(page.locator("#sync")).to_have_text("all confirmed")
    (entry,) = kept.entries
    assert entry.device == "d-1" and digest(kept.parts[entry.value["part"]]) == entry.value["part"]


def test_a_photograph_that_the_phone_cannot_read_goes_with_the_form(kept, page, tmp_path) -> None:
    (tmp_path / "label.jpg").write_bytes(b"no picture")
    page.locator('[name="label"]').set_input_files(tmp_path / "label.jpg")
    expect(page.get_by_text("It goes with the form")).to_be_visible()
    page.get_by_role("button", name="Next").click()
    page.wait_for_url("**/answer")
    assert kept.folded.values[LABEL]["type"] == "photo" and kept.entries[0].device == "s-1"


def test_without_htmx_the_same_entries_go_with_the_plain_form(page: Page) -> None:
    with served() as (address, kept):
        page.route("**/htmx.min.js", lambda route: route.abort())
        page.goto(address)
        page.locator('[name="mass_kg"]').fill("2400")
        page.get_by_role("button", name="Next").click()
        page.wait_for_url("**/answer")
        assert [(entry.device, entry.value["text"]) for entry in kept.entries] == [("d-1", "2400")]
        page.close()


def test_without_any_script_the_server_makes_the_entries(browser) -> None:
    with served() as (address, kept):
        context = browser.new_context(java_script_enabled=False)
        page = context.new_page()
        page.goto(address)
        page.locator('[name="mass_kg"]').fill("2400")
        page.get_by_role("button", name="Next").click()
        page.wait_for_url("**/answer")
        assert [(entry.device, entry.value["text"]) for entry in kept.entries] == [("s-1", "2400")]
        context.close()
