"""What is kept on a phone reaches the server once and whole, whenever the server is killed; or it says why not."""

import random
import shutil
import time
from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser, expect

from tests.browser.conftest import PHONE
from tests.browser.phone import Phone, phone_of
from tests.browser.stoppable import MODULE, WITHIN_MS, Stoppable

RIGGER = "Dunja Fell"
KILLS, LONG_KILLS, ENTRIES = 5, 50, 2_000
FILL = f"""async (many) => {{ {MODULE}
  const [{{ keepSaid }}, {{ entry }}, {{ device, person }}] = await Promise.all(["keep", "make", "device"].map(module));
  const said = Array.from({{ length: many }}, (_, n) => ({{ about: ["task", "t-none-1"], path: ["mark_" + n],
    author: person(), device: device(), prompt: {{ unit: "kg", replaces: [] }},
    now: {{ type: "number", text: String(n), how: "", plus_minus: "" }} }}));
  return (await keepSaid(said, entry)).length; }}"""
SYNC = f"async () => {{ {MODULE} (await module('sync')).sync(); }}"
WAITING = f"async () => {{ {MODULE} return (await module('offer')).countOf('kept'); }}"
META = f"async ([key, value]) => {{ {MODULE} await (await module('phone_store')).remember({{ [key]: value }}); }}"


@pytest.fixture(scope="module")
def carried(browser: Browser, shared_yard: Stoppable) -> Iterator[Phone]:
    """One phone that several tests take along."""
    phone = phone_of(browser, shared_yard, RIGGER)
    yield phone
    phone.context.close()


@pytest.fixture
def phone(carried: Phone, shared_yard: Stoppable) -> Iterator[Phone]:
    """The same phone, in reach, with all that it made before confirmed."""
    carried.page.goto(f"{shared_yard.url}/today")
    carried.can_go_on_alone()
    carried.all_confirmed()
    yield carried
    shared_yard.kill()
    shared_yard.again()


def fill(phone: Phone, many: int) -> None:
    assert phone.page.evaluate(FILL, many) == many


def test_a_server_killed_at_random_moments_loses_nothing_and_keeps_nothing_twice(
        browser: Browser, gone: Stoppable) -> None:
    killed(browser, gone, KILLS, longest_ms=5_000)


@pytest.mark.long
def test_a_server_killed_fifty_times_loses_nothing_and_keeps_nothing_twice(browser: Browser, gone: Stoppable) -> None:
    killed(browser, gone, LONG_KILLS, longest_ms=900)


def killed(browser: Browser, gone: Stoppable, kills: int, longest_ms: float) -> None:
    seed = random.randrange(10**6)
    chance = random.Random(seed)
    phone = phone_of(browser, gone, RIGGER)
    before = set(gone.digests())
    gone.kill()
    fill(phone, ENTRIES)
    made = phone.own()
    assert len(made - before) >= ENTRIES
    middle = 0
    for _ in range(kills):
        gone.again()
        phone.page.evaluate(SYNC)
        some_time(phone, chance, longest_ms)
        gone.kill()
        middle += 0 < len(phone.kept("kept", "sent")) < ENTRIES
    gone.again()
    for _ in range(400):
        phone.page.evaluate(SYNC)
        if not phone.kept("kept", "sent"):
            break
        phone.page.wait_for_timeout(500)
    at_server = gone.digests()
    print(f"seed {seed}: {kills} kills, {middle} in the middle, {len(made & set(at_server))} of {len(made)} kept")
    assert made <= set(at_server), f"{len(made - set(at_server))} are lost, seed {seed}"
    assert len(at_server) == len(set(at_server))
    assert {row["state"] for row in phone.kept() if row["digest"] in made} == {"confirmed"}
    assert middle >= 1, f"no kill fell into the middle of the sync, seed {seed}: this run proved nothing"


def some_time(phone: Phone, chance: random.Random, longest_ms: float) -> None:
    """Until a random moment, or until a random part of the entries has gone: on a fast machine all would be gone."""
    ends, left = time.monotonic() + chance.uniform(30, longest_ms) / 1_000, chance.uniform(0, 1) * ENTRIES
    while time.monotonic() < ends and phone.page.evaluate(WAITING) > left:
        phone.page.wait_for_timeout(20)


def test_a_server_that_was_set_back_is_offered_everything_again(
        browser: Browser, gone: Stoppable, tmp_path: Path) -> None:
    phone = phone_of(browser, gone, RIGGER)
    gone.kill()
    shutil.copytree(gone.folder, tmp_path / "backup")
    gone.again()
    fill(phone, 7)
    phone.page.evaluate(SYNC)
    phone.all_confirmed()
    made = phone.own()
    gone.kill()
    shutil.rmtree(gone.folder)
    shutil.copytree(tmp_path / "backup", gone.folder)
    gone.again()
    assert not made <= set(gone.digests())
    phone.page.evaluate(SYNC)
    phone.until(f"async () => {{ {MODULE} return (await (await module('offer')).countOf('kept')) === 0; }}")
    phone.reload()
    phone.all_confirmed()
    assert made <= set(gone.digests())


def test_after_signing_out_entries_wait_and_go_when_the_person_signs_in_again(
        phone: Phone, shared_yard: Stoppable) -> None:
    shared_yard.kill()
    fill(phone, 3)
    phone.page.route("**/entries*", lambda route: route.abort())  # before the server can be reached again
    shared_yard.again()
    phone.page.goto(f"{shared_yard.url}/today")
    phone.page.get_by_role("button", name="Sign out").click()
    phone.page.wait_for_url(lambda url: url.rstrip("/") == shared_yard.url)
    phone.page.unroute("**/entries*")
    phone.page.goto(f"{shared_yard.url}/outbox")
    expect(phone.page.locator("[data-outbox-said]")).to_contain_text("3 entries are kept here")
    phone.page.evaluate(SYNC)
    assert len(phone.kept("kept")) == 3
    phone.sign_in(RIGGER)
    phone.all_confirmed()
    assert phone.own() <= set(shared_yard.digests())


def test_a_file_saved_with_the_server_gone_is_brought_in_by_a_supervisor(
        browser: Browser, phone: Phone, shared_yard: Stoppable, tmp_path: Path) -> None:
    shared_yard.kill()
    fill(phone, 60)
    made = {row["digest"] for row in phone.kept("kept")}
    phone.page.goto(f"{shared_yard.url}/outbox")
    expect(phone.page.locator("[data-outbox-said]")).to_contain_text("60 entries are kept here", timeout=WITHIN_MS)
    with phone.page.expect_download() as saved:
        phone.page.get_by_text("Save to a file").first.click()
    saved.value.save_as(tmp_path / "kept.json")
    phone.context.set_offline(True)  # this phone brings nothing itself
    shared_yard.again()
    context = browser.new_context()
    supervisor = Phone(context, shared_yard)
    supervisor.sign_in("Owen Thrale")
    supervisor.page.goto(f"{shared_yard.url}/import")
    supervisor.page.get_by_label("The file").set_input_files(tmp_path / "kept.json")
    supervisor.page.get_by_role("button", name="Bring it in").click()
    expect(supervisor.page.get_by_text("60 entries confirmed")).to_be_visible()
    assert made <= set(shared_yard.digests())
    context.close()
    phone.context.set_offline(False)


def test_a_clock_that_is_far_off_is_said(phone: Phone, shared_yard: Stoppable) -> None:
    shared_yard.kill()  # or a sync that ends now measures it anew
    phone.page.evaluate(META, ["skew_s", -7_500])
    phone.page.evaluate("() => document.dispatchEvent(new CustomEvent('phone:changed'))")
    phone.says("clock is 2 hours behind the server's")


def test_the_bar_says_when_the_server_was_last_reached(phone: Phone, shared_yard: Stoppable) -> None:
    shared_yard.kill()
    fill(phone, 3)
    phone.page.evaluate(META, ["reached_at", 1])
    phone.page.evaluate(SYNC)
    expect(phone.page.locator("#sync")).to_have_text("3 kept on this phone", timeout=WITHIN_MS)
    phone.says(r"Last reached the server 1 January, \d\d:\d\d")


def test_what_holds_the_outbox_up_stays_in_sight_on_a_narrow_phone(
        phone: Phone, shared_yard: Stoppable, tmp_path: Path) -> None:
    shared_yard.kill()
    fill(phone, 3)
    phone.page.set_viewport_size({"width": 360, "height": 640})
    phone.go("begin")
    phone.page.evaluate(META, ["reached_at", 1])
    phone.page.evaluate(SYNC)
    phone.says("Last reached the server")
    phone.page.evaluate("() => scrollTo(0, document.body.scrollHeight)")
    assert phone.page.evaluate("() => scrollY") > 200, "the page is too short to prove anything"
    strip = phone.page.locator("#phone-says")
    expect(strip).to_be_in_viewport(ratio=1)
    box = strip.bounding_box()
    assert box is not None
    assert phone.page.evaluate("([x, y]) => Boolean(document.elementFromPoint(x, y)?.closest('#phone-says'))",
                               [180, box["y"] + 2]), "the bar lies over it"
    phone.page.screenshot(path=tmp_path / "strip.png")
    phone.page.set_viewport_size(PHONE)


def test_what_the_server_refuses_is_shown_with_its_words_and_stays(phone: Phone, shared_yard: Stoppable) -> None:
    phone.page.evaluate(FILL.replace("author: person()", 'author: "p-never-here"'), 1)
    fill(phone, 2)
    phone.page.evaluate(SYNC)
    phone.says("1 not taken")
    assert [row["state"] for row in phone.kept() if "p-never-here" in row["body"]] == ["refused"]
    phone.page.goto(f"{shared_yard.url}/outbox")
    expect(phone.page.locator("[data-outbox-refused]")).to_contain_text("never signed in on this device")
    phone.reload()
    expect(phone.page.locator("[data-outbox-said]")).to_contain_text("1 entry was not taken")
