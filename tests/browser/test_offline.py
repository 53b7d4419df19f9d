"""There is no signal behind the shed: the server process is really gone, and the rigger goes on."""

import re
import shutil
from collections.abc import Iterator
from pathlib import Path

import pytest
from PIL import Image
from playwright.sync_api import Browser, expect

from tests.browser import journey
from tests.browser.conftest import PHONE
from tests.browser.hand import Hand
from tests.browser.phone import KEPT, Phone
from tests.browser.stoppable import WITHIN_MS, Stoppable, stoppable

# By hand (-m long) until they pass on every machine: they wait for an engine of 3.7 MB to be cached.
pytestmark = pytest.mark.long

KILLS = 10
RIGGER = "Dunja Fell"


@pytest.fixture
def gone(tmp_path: Path, filled_yard: Path) -> Iterator[Stoppable]:
    """A server of its own for each test, which may be killed."""
    folder = tmp_path / "yard"
    shutil.copytree(filled_yard, folder)
    with stoppable(folder) as server:
        yield server


def phone_of(browser: Browser, server: Stoppable, name: str, host: str = "", width: int = PHONE["width"]) -> Phone:
    context = browser.new_context(viewport={**PHONE, "width": width}, has_touch=True, is_mobile=True, locale="en-GB")
    phone = Phone(context, server, host)
    phone.sign_in(name)
    phone.can_go_on_alone(cached=not host)
    return phone


def quarantine(browser: Browser, server: Stoppable, tag: str) -> None:
    """Another man takes a piece of gear out of use, while there is a network."""
    context = browser.new_context(viewport=PHONE)
    other = Hand(context.new_page(), server)
    other.sign_in("Benno Clay")
    other.page.goto(f"{server.url}/gear/{tag}/quarantine")
    other.page.get_by_label("What is wrong with it?").fill("strand cut")
    other.page.get_by_role("button", name="Out of use").click()
    other.page.wait_for_url(lambda url: "quarantine" not in url)
    context.close()


def same_checks(phone: Phone) -> str:
    """The checks as they read, without how they came."""
    return re.sub(r"\s+", " ", phone.page.locator("#live").inner_text())


def test_the_riggers_whole_part_goes_on_while_page_and_tab_are_lost_ten_times(
        browser: Browser, gone: Stoppable) -> None:
    quarantine(browser, gone, "R-23")
    rigger = phone_of(browser, gone, RIGGER)
    journey.say_what(rigger)
    gone.kill()
    journey.fetch_kit(rigger)
    rigger.go("kit/leg.1-left.sling")
    expect(rigger.page.locator("main")).to_contain_text(re.compile("quarantine", re.IGNORECASE))
    made = rigger.own()
    assert len(made) >= 20
    rigger.go("numbers?step=heights")
    for turn in range(KILLS):
        rigger.fill("lift_height_m", f"0.{30 + turn}", "" if turn else "tape")
        expect(rigger.page.locator("#sync")).to_contain_text("kept on this phone")
        expect(rigger.page.locator("#live")).to_contain_text("Left sling", timeout=WITHIN_MS)
        now = rigger.own()
        assert made < now, f"turn {turn}: nothing new was kept, or something is gone"
        made = now
        rigger.lose_tab() if turn % 2 else rigger.reload()
        expect(rigger.field("lift_height_m")).to_have_value(f"0.{30 + turn}", timeout=WITHIN_MS)
        assert rigger.own() == made
    expect(rigger.page.locator("#drawing svg")).to_be_visible()
    journey.read_stop_points(rigger)
    rigger.go("numbers?step=heights")
    alone = same_checks(rigger)
    assert "within" in alone or "close" in alone, alone
    made = rigger.own()

    gone.again()
    rigger.reload()
    rigger.all_confirmed()
    at_server = gone.digests()
    assert made <= set(at_server) and len(at_server) == len(set(at_server))
    rigger.go("numbers?step=heights")
    assert same_checks(rigger) == alone
    assert not rigger.faults


def test_a_task_begun_behind_the_shed_comes_to_the_server_with_each_entry_once(
        browser: Browser, gone: Stoppable, tmp_path: Path) -> None:
    Image.new("RGB", (900, 600), "#446688").save(tmp_path / "label.jpg")
    rigger = phone_of(browser, gone, RIGGER)
    before = set(gone.digests())
    gone.kill()
    rigger.page.goto(f"{gone.url}/today")
    rigger.begin(journey.LOAD, "Pump bay")
    rigger.go("kit/leg.1-left.sling")
    rigger.page.get_by_role("link", name="It is not in the list: add it here").click()
    rigger.page.get_by_role("radio", name="Round sling").click()
    rigger.page.get_by_role("button", name="Next").click()
    rigger.page.get_by_label("Photo of the label").set_input_files(tmp_path / "label.jpg")
    for label, text in (("number on its tag", "R-99"), ("WLL", "2"), ("length", "2")):
        rigger.page.get_by_label(re.compile(label, re.IGNORECASE)).first.fill(text)
    for question in rigger.page.locator("#work fieldset").all():
        question.get_by_role("radio").first.check()
    rigger.page.get_by_role("button", name="Add it").click()
    expect(rigger.page.locator("main")).to_contain_text("R-99", timeout=WITHIN_MS)
    rigger.page.goto(f"{gone.url}/gear/R-22/quarantine")
    rigger.page.get_by_label("What is wrong with it?").fill("cover cut")
    rigger.page.get_by_role("button", name="Out of use").click()
    rigger.go("what")
    rigger.page.locator(".button-stop").click()
    expect(rigger.page.locator("h1")).to_have_text("Stopped", timeout=WITHIN_MS)
    made = rigger.own()
    types = " ".join(row["body"] for row in rigger.kept() if row["digest"] in made)
    for each in ('"type":"begin"', '"type":"version"', '"type":"photo"', '"type":"quarantine"', '"type":"stop"'):
        assert types.count(each) == 1, f"{each}: {types.count(each)}"
    counters = [row["counter"] for row in rigger.kept() if row["digest"] in made]
    assert len(counters) == len(set(counters))

    gone.again()
    rigger.page.reload()
    rigger.all_confirmed()
    at_server = gone.digests()
    assert made == set(at_server) - before and len(at_server) == len(set(at_server))
    rigger.page.goto(f"{gone.url}/registers/gear/R-22")
    expect(rigger.page.locator("main")).to_contain_text("quarantine")
    assert not rigger.faults


def test_two_phones_apart_disagree_and_a_person_settles_it(browser: Browser, gone: Stoppable) -> None:
    one, two = phone_of(browser, gone, RIGGER), phone_of(browser, gone, "Milo Harke")
    one.page.goto(f"{gone.url}/today")
    one.begin(journey.LOAD, "Pump bay")
    two.page.goto(gone.url + one.task)
    two.task = one.task
    two.reload()
    two.until(f'async () => (await ({KEPT})()).some(({{ body }}) => body.includes("{one.task.rpartition("/")[2]}"))')
    gone.kill()
    for phone, text in ((one, "Stand 1"), (two, "Stand 2")):
        phone.go("what")
        phone.fill("landing", text)
        expect(phone.page.locator("#sync")).to_contain_text("kept on this phone", timeout=WITHIN_MS)
    gone.again()
    for phone in (one, two):
        phone.reload()
        phone.all_confirmed()
    gone.kill()
    for phone in (one, two):
        phone.go("settle")
        expect(phone.page.locator("main")).to_contain_text("differ", timeout=WITHIN_MS)
    gone.again()
    one.go("settle")
    one.page.get_by_role("link", name=re.compile("Settle|Land|land|Where")).first.click()
    one.page.get_by_role("radio", name=re.compile("Stand 2")).check()
    one.page.get_by_role("button", name="This one holds").click()
    one.page.wait_for_url(lambda url: "settle" not in url or "where" not in url)
    two.go("what")
    expect(two.field("landing")).to_have_value("Stand 2")


def test_by_plain_http_entries_and_checks_go_on_without_a_service_worker(browser: Browser, gone: Stoppable) -> None:
    rigger = phone_of(browser, gone, RIGGER, host="workshop.test")
    assert rigger.page.evaluate("[isSecureContext, 'serviceWorker' in navigator]") == [False, False]
    journey.say_what(rigger)
    rigger.go("numbers?step=heights")
    rigger.can_go_on_alone(cached=False)
    gone.kill()
    rigger.fill("lift_height_m", "0.30", "tape")
    expect(rigger.page.locator("#sync")).to_contain_text("kept on this phone", timeout=WITHIN_MS)
    expect(rigger.page.locator("#live")).to_contain_text("computed", timeout=WITHIN_MS)
    rigger.page.locator(".bar-back").click()
    expect(rigger.page.locator("h1")).to_contain_text("pump", ignore_case=True)
    made = rigger.own()
    gone.again()
    rigger.reload()
    rigger.all_confirmed()
    assert made <= set(gone.digests())


def test_pages_of_the_server_say_so_and_the_rest_fits_a_small_screen(
        browser: Browser, gone: Stoppable, tmp_path: Path) -> None:
    rigger = phone_of(browser, gone, RIGGER, width=360)
    journey.say_what(rigger)
    gone.kill()
    for address in ("registers", "records", "registers/gear/R-21"):
        rigger.page.goto(f"{gone.url}/{address}")
        expect(rigger.page.locator("h1")).to_have_text("This page needs the server", timeout=WITHIN_MS)
    for where in ("", "/kit", "/numbers?step=heights", "/checks", "/stop-points", "/trial", "/move", "/close-out"):
        rigger.page.goto(gone.url + rigger.task + where)
        expect(rigger.page.locator("h1").first).not_to_have_text("Opening from this phone", timeout=WITHIN_MS)
        assert rigger.page.evaluate("document.documentElement.scrollWidth") <= 360, where
        rigger.page.screenshot(path=tmp_path / f"{where.strip('/').partition('?')[0] or 'task'}.png", full_page=True)
    rigger.page.goto(f"{gone.url}/outbox")
    assert rigger.page.evaluate("document.documentElement.scrollWidth") <= 360
    rigger.page.screenshot(path=tmp_path / "outbox.png", full_page=True)


def test_a_second_tab_and_a_plain_form_are_answered_with_no_server(browser: Browser, gone: Stoppable) -> None:
    rigger = phone_of(browser, gone, RIGGER)
    journey.say_what(rigger)
    gone.kill()
    rigger.go("what")
    second = rigger.new_page()
    second.goto(rigger.page.url)
    expect(second.locator('#work input[name="landing"]')).to_have_value("Stand 1", timeout=WITHIN_MS)
    rigger.page.evaluate("""(path) => { const form = document.createElement("form");
      Object.assign(form, { method: "post", action: path + "/stop" });
      form.innerHTML = '<input name="stop" value="yes">'; document.body.append(form); form.submit(); }""", rigger.task)
    expect(rigger.page.locator("h1")).to_have_text("Stopped", timeout=WITHIN_MS)
    assert [row for row in rigger.kept("kept") if '"type":"stop"' in row["body"]]
