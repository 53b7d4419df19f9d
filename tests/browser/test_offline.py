"""There is no signal behind the shed: the server process is really gone, and the rigger goes on."""

import json
import re
from collections.abc import Iterator
from itertools import count
from pathlib import Path

import pytest
from PIL import Image
from playwright.sync_api import Browser, Locator, expect

from tests.browser import journey
from tests.browser.hand import Hand
from tests.browser.phone import KEPT, Phone, phone_of, quarantine
from tests.browser.stoppable import WITHIN_MS, Stoppable

LOSSES = 10
RIGGER, OTHER = "Dunja Fell", "Milo Harke"
NARROW_PX = 360


@pytest.fixture(scope="module")
def carried(browser: Browser, shared_yard: Stoppable) -> Iterator[Phone]:
    """One small phone that several tests take along."""
    phone = phone_of(browser, shared_yard, RIGGER, width=NARROW_PX)
    yield phone
    phone.context.close()


@pytest.fixture
def rigger(carried: Phone, shared_yard: Stoppable) -> Iterator[Phone]:
    """The same phone, in reach; the server is there again for the next test."""
    carried.page.goto(f"{shared_yard.url}/today")
    carried.can_go_on_alone()
    yield carried
    shared_yard.kill()
    shared_yard.again()


def text_of(part: Locator) -> str:
    return re.sub(r"\s+", " ", part.inner_text())


def checks_and_drawing(phone: Phone) -> tuple[str, str, str]:
    """Every check as it reads, opened or not, and the drawing to the byte."""
    phone.go("checks")
    expect(phone.page.locator("main")).to_contain_text("Left sling", timeout=WITHIN_MS)
    every = re.sub(r"\s+", " ", phone.page.locator("main").text_content() or "")
    phone.go("numbers?step=heights")
    expect(phone.page.locator("#live")).to_contain_text("Left sling", timeout=WITHIN_MS)
    drawing = phone.page.locator("#drawing svg").evaluate("(one) => one.outerHTML")
    return every, text_of(phone.page.locator("#live")), drawing


class Lost:
    """A phone that loses its page, then its tab, and so on; nothing that was entered goes with it."""

    def __init__(self, phone: Phone) -> None:
        self.phone, self.turns, self.made = phone, count(), phone.own()

    def again(self) -> None:
        now = self.phone.own()
        assert self.made < now, "nothing new was kept, or something is gone"
        self.phone.lose_tab() if next(self.turns) % 2 else self.phone.reload()
        self.made = self.phone.own()
        assert now <= self.made


def test_the_riggers_whole_part_goes_on_while_page_and_tab_are_lost_ten_times(
        browser: Browser, gone: Stoppable) -> None:
    rigger = phone_of(browser, gone, RIGGER)
    journey.say_what(rigger)
    rigger.go("what")
    disagree(browser, gone, rigger)
    quarantine(browser, gone, "R-23")
    rigger.page.goto(f"{gone.url}/today")
    rigger.learns("strand cut", "Stand 2")
    gone.kill()

    lost = Lost(rigger)
    rigger.go("kit")
    hook = journey.RIG | journey.HOOK
    for some, following in ((hook, "left fitting at the top"), (journey.LEFT, "right fitting at the top")):
        rigger.fetch(some)
        rigger.heading(following)
        lost.again()
    a_quarantined_sling_is_refused(rigger)
    rigger.go("kit")
    rigger.fetch(journey.RIGHT)
    rigger.page.wait_for_url("**/numbers**", timeout=WITHIN_MS)
    lost.again()
    rigger.go("numbers?step=heights")
    for turn in range(4):
        rigger.fill("lift_height_m", f"0.{30 + turn}", "" if turn else "tape")
        expect(rigger.page.locator("#sync")).to_contain_text("kept on this phone")
        expect(rigger.page.locator("#live")).to_contain_text("Left sling", timeout=WITHIN_MS)
        lost.again()
        expect(rigger.field("lift_height_m")).to_have_value(f"0.{30 + turn}", timeout=WITHIN_MS)
    expect(rigger.page.locator("#drawing svg")).to_be_visible()
    for step in journey.STOP_POINTS:
        rigger.go(f"stop-points?step={step}")
        journey.read_aloud(rigger, step)
        lost.again()
    assert next(lost.turns) == LOSSES
    rigger.go("settle")
    expect(rigger.page.locator("main")).to_contain_text("differ", timeout=WITHIN_MS)
    alone = checks_and_drawing(rigger)
    assert "within" in alone[0] or "close" in alone[0], alone[0]

    gone.again()
    rigger.reload()
    rigger.all_confirmed()
    at_server = gone.digests()
    assert lost.made <= set(at_server) and len(at_server) == len(set(at_server))
    assert checks_and_drawing(rigger) == alone
    assert not rigger.faults


def a_quarantined_sling_is_refused(rigger: Phone) -> None:
    """It stands in the list with what is wrong; typed in all the same it is not taken, and what was typed stays."""
    rigger.go("kit/leg.2-right.sling")
    expect(rigger.page.locator("main").get_by_text("R-23").first).to_be_visible(timeout=WITHIN_MS)
    before = rigger.own()
    tag = rigger.page.get_by_label("Scan or type the tag number")
    tag.fill("r-23")
    rigger.page.get_by_role("button", name="Pick", exact=True).click()
    expect(rigger.page.locator("#tag-number-fault")).to_contain_text("R-23: in quarantine", timeout=WITHIN_MS)
    expect(tag).to_have_value("r-23")
    expect(rigger.page.get_by_label("Looked at and felt, all round")).to_have_count(0)
    assert rigger.own() == before, "nothing was picked"


def disagree(browser: Browser, server: Stoppable, rigger: Hand) -> None:
    """Somebody else answers the landing otherwise, on a page that was opened before the rigger answered."""
    context = browser.new_context()
    other = Hand(context.new_page(), server)
    other.sign_in(OTHER)
    other.page.goto(server.url + rigger.task + "/what")
    rigger.fill("landing", "Stand 1, on timbers")
    with other.page.expect_response(lambda answer: answer.request.method == "POST" and "/what" in answer.url):
        other.fill("landing", "Stand 2")
    context.close()


def test_a_task_begun_behind_the_shed_comes_to_the_server_with_each_entry_once(
        rigger: Phone, shared_yard: Stoppable, tmp_path: Path) -> None:
    Image.new("RGB", (900, 600), "#446688").save(tmp_path / "label.jpg")
    rigger.all_confirmed()
    before, own = set(shared_yard.digests()), rigger.own()
    shared_yard.kill()
    rigger.page.goto(f"{rigger.url}/today")
    rigger.begin(journey.LOAD, "Pump bay")
    journey.say_rig(rigger)
    rigger.go("kit/leg.1-left.sling")
    rigger.page.get_by_role("link", name="It is not in the list: add it here").click()
    rigger.page.get_by_role("radio", name="Round sling").click()
    rigger.page.get_by_role("button", name="Next").click()
    rigger.page.get_by_label("Photo of the label").set_input_files(tmp_path / "label.jpg")
    for label, text in (("number on its tag", "R-99"), ("WLL", "2"), ("length", "2")):
        rigger.page.get_by_label(re.compile(label, re.IGNORECASE)).first.fill(text)
    for question in rigger.page.locator("#work fieldset:visible").all():
        question.get_by_role("radio").first.check()
    rigger.page.get_by_role("button", name="Add it").click()
    expect(rigger.page.locator("main")).to_contain_text("R-99", timeout=WITHIN_MS)
    rigger.page.goto(f"{rigger.url}/gear/R-22/quarantine")
    rigger.page.get_by_label("What is wrong with it?").fill("cover cut")
    rigger.page.get_by_role("button", name="Out of use").click()
    rigger.page.wait_for_url(lambda url: "quarantine" not in url)
    rigger.go("what")
    rigger.page.locator(".button-stop").click()
    expect(rigger.page.locator("h1")).to_have_text("Stopped", timeout=WITHIN_MS)
    made = rigger.own() - own
    types = " ".join(row["body"] for row in rigger.kept() if row["digest"] in made)
    for each in ('"type":"begin"', '"type":"version"', '"type":"photo"', '"type":"quarantine"', '"type":"stop"'):
        assert types.count(each) == 1, f"{each}: {types.count(each)}"
    counters = [row["counter"] for row in rigger.kept() if row["digest"] in made]
    assert len(counters) == len(set(counters))

    shared_yard.again()
    rigger.page.reload()
    rigger.all_confirmed()
    at_server = shared_yard.digests()
    assert made == set(at_server) - before and len(at_server) == len(set(at_server))
    rigger.page.goto(f"{rigger.url}/registers/gear/R-22")
    expect(rigger.page.locator("main")).to_contain_text("quarantine")
    assert not rigger.faults


def test_two_phones_apart_disagree_and_a_person_settles_it(browser: Browser, gone: Stoppable) -> None:
    one, two = phone_of(browser, gone, RIGGER), phone_of(browser, gone, OTHER)
    one.page.goto(f"{gone.url}/today")
    one.begin(journey.LOAD, "Pump bay")
    one.all_confirmed()
    two.page.goto(gone.url + one.task)
    two.task = one.task
    two.until(f'async () => (await ({KEPT})()).some(({{ body }}) => body.includes("{one.task.rpartition("/")[2]}"))')
    gone.kill()
    for phone, text in ((one, "Stand 1"), (two, "Stand 2")):
        phone.go("what")
        phone.fill("landing", text)
        expect(phone.page.locator("#sync")).to_contain_text("kept on this phone", timeout=WITHIN_MS)
    gone.again()
    for phone in (one, two, one):  # the first learns what the second brought
        phone.reload()
        phone.all_confirmed()
    for phone in (one, two):
        phone.learns("Stand 1", "Stand 2")
    gone.kill()
    for phone in (one, two):
        phone.go("settle")
        expect(phone.page.locator("main")).to_contain_text("differ", timeout=WITHIN_MS)
    gone.again()
    one.go("settle")
    one.page.get_by_role("link", name=re.compile("Settle|Land|land|Where")).first.click()
    one.page.get_by_role("radio", name=re.compile("Stand 2")).check()
    one.page.get_by_role("button", name="This one holds").click()
    one.page.wait_for_url(lambda url: "settle" not in url)
    one.all_confirmed()
    settled = one.own()
    two.reload()
    two.until(f"async () => {{ const here = (await ({KEPT})()).map(({{ digest }}) => digest);"
              f" return {json.dumps(sorted(settled))}.every((digest) => here.includes(digest)); }}")
    two.go("what")
    expect(two.field("landing")).to_have_value("Stand 2")


def test_by_plain_http_entries_and_checks_go_on_without_a_service_worker(browser: Browser, gone: Stoppable) -> None:
    rigger = phone_of(browser, gone, RIGGER, host="workshop.test")
    assert rigger.page.evaluate("[isSecureContext, 'serviceWorker' in navigator]") == [False, False]
    journey.say_what(rigger)
    rigger.go("numbers?step=heights")
    rigger.can_go_on_alone("page")
    gone.kill()
    rigger.fill("lift_height_m", "0.30", "tape")
    expect(rigger.page.locator("#sync")).to_contain_text("kept on this phone", timeout=WITHIN_MS)
    expect(rigger.page.locator("#live")).to_contain_text("computed", timeout=WITHIN_MS)
    rigger.page.locator(".bar-back").click()
    expect(rigger.page.locator("h1")).to_contain_text("pump", ignore_case=True, timeout=WITHIN_MS)
    made = rigger.own()
    gone.again()
    rigger.reload()
    rigger.all_confirmed()
    assert made <= set(gone.digests())


def test_pages_of_the_server_say_so_and_the_rest_fits_a_small_screen(
        rigger: Phone, shared_yard: Stoppable, tmp_path: Path) -> None:
    journey.say_what(rigger)
    rigger.all_confirmed()
    shared_yard.kill()
    for address in ("registers", "records", "registers/gear/R-21"):
        rigger.page.goto(f"{rigger.url}/{address}")
        expect(rigger.page.locator("h1")).to_have_text("This page needs the server", timeout=WITHIN_MS)
    for where in ("", "/kit", "/numbers?step=heights", "/checks", "/stop-points", "/trial", "/move", "/close-out"):
        rigger.page.goto(rigger.url + rigger.task + where)
        expect(rigger.page.locator("h1").first).not_to_have_text("Opening from this phone", timeout=WITHIN_MS)
        assert rigger.page.evaluate("document.documentElement.scrollWidth") <= NARROW_PX, where
        rigger.page.screenshot(path=tmp_path / f"{where.strip('/').partition('?')[0] or 'task'}.png", full_page=True)
    rigger.page.goto(f"{rigger.url}/outbox")
    expect(rigger.page.locator("[data-outbox-alone]")).to_have_text("This phone can go on with no network.")
    assert rigger.page.evaluate("document.documentElement.scrollWidth") <= NARROW_PX
    rigger.page.screenshot(path=tmp_path / "outbox.png", full_page=True)


def test_a_second_tab_and_a_plain_form_are_answered_with_no_server(rigger: Phone, shared_yard: Stoppable) -> None:
    journey.say_what(rigger)
    rigger.all_confirmed()
    shared_yard.kill()
    rigger.go("what")
    second = rigger.new_page()
    second.goto(rigger.page.url)
    expect(second.locator('#work input[name="landing"]')).to_have_value("Stand 1", timeout=WITHIN_MS)
    rigger.page.evaluate("""(path) => { const form = document.createElement("form");
      Object.assign(form, { method: "post", action: path + "/stop" });
      form.innerHTML = '<input name="stop" value="yes">'; document.body.append(form); form.submit(); }""", rigger.task)
    expect(rigger.page.locator("h1")).to_have_text("Stopped", timeout=WITHIN_MS)
    assert [row for row in rigger.kept("kept") if '"type":"stop"' in row["body"]]
    second.close()
