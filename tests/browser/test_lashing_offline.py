"""A load is lashed where there is no signal: the server is really gone, the phone adds, compares and advises."""

import re
import shutil
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from playwright.sync_api import Browser, expect

from checklist_app.demo.carry_out import scripts
from checklist_app.demo.lashings import Lashing
from checklist_app.demo.phone import Clock
from checklist_app.demo.phone import Phone as Sender
from checklist_app.demo.work import BEGUN, Begun, Script, signers
from checklist_app.mechanics.lashing.rule_sets import RuleSet
from checklist_app.web.app import create_app
from tests.browser import lashing_journey as journey
from tests.browser.measure import too_wide
from tests.browser.phone import KEPT, Phone, phone_of
from tests.browser.stoppable import WITHIN_MS, Stoppable, stoppable

SCRIPT = {"day": 0, "until": "numbers", "lashings": ["L-01"], "made_of": []}
NARROW_PX = 360
BY_SERVER, BY_PHONE = "Checks worked out by the server.", "Checks worked out on this phone."


@dataclass(frozen=True)
class Looked:
    """What a rigger sees of his task: who worked it out, what governs, every check, the drawing to the byte."""

    by: str
    governs: str
    checks: str
    drawing: str
    rules: str
    change: str


@pytest.fixture
def slides(tmp_path: Path, filled_yard: Path) -> Iterator[tuple[Stoppable, str]]:
    """A server that may be killed, and a task with one lashing on a load that stands in oil: all else is answered."""
    folder = tmp_path / "yard"
    shutil.copytree(filled_yard, folder)
    task = one_lashing_on_it(folder)
    with stoppable(folder) as server:
        yield server, task


def one_lashing_on_it(folder: Path) -> str:
    """By the app's own pages, as the yard's own on the lorry was done; what held other lashings is given up."""
    clock, people = Clock(datetime.now(UTC) - timedelta(minutes=40)), signers(folder)
    app = create_app(folder, CLOCK=clock, ZONE=UTC)

    def work(script: Script, begun: Path) -> Lashing:
        sender, person = Sender(app), people[script["rigger"]]
        sender.sign_in(person.name, person.pin)
        return Lashing(sender, clock, script, people, Begun(begun))

    on_lorry = [one for one in scripts() if one.get("operation") == "vehicle_lashing"]
    open_now, done = (next(one for one in on_lorry if (one["day"] == 0) is today) for today in (True, False))
    work({**open_now, "closing": "abandoned"}, folder / BEGUN).carry_out(scripts().index(open_now))
    lashed = work({**done, **SCRIPT, "answers": done["answers"] | {"load_surface": "oil or grease"}}, folder / "one")
    lashed.carry_out(0)
    app.extensions["store"].close()
    return lashed.task


def text_of(phone: Phone, part: str) -> str:
    """All of it, opened or not."""
    return re.sub(r"\s+", " ", phone.page.locator(part).text_content() or "").strip()


def look(phone: Phone, pictures: Path) -> Looked:
    """Page after page as it stands; each fits the screen, and is kept as a picture."""
    seen = {}
    for where in ("", "checks", "rules", "change", "numbers"):
        part = "#governs" if where == "numbers" else "main"
        phone.page.goto(f"{phone.url}{phone.task}/{where}".rstrip("/"))
        phone.opened()
        expect(phone.page.locator(part)).not_to_be_empty(timeout=WITHIN_MS)
        assert not too_wide(phone.page), where
        phone.page.screenshot(path=pictures / f"{len(list(pictures.iterdir())):02d}-{where or 'task'}.png",
                              full_page=True)
        seen[where] = text_of(phone, part)
    by = next(words for words in (BY_SERVER, BY_PHONE) if words in seen[""])
    drawn = phone.page.locator("#drawing svg").evaluate("(one) => one.outerHTML")
    return Looked(by, seen["numbers"], seen["checks"], drawn, seen["rules"], seen["change"])


def take_one(phone: Phone) -> None:
    """The change that is the least work; its new lashings still want their items."""
    phone.go("numbers")
    phone.page.get_by_role("link", name="What would make it hold?").click()
    phone.heading("What would make it hold")
    phone.page.get_by_role("button", name=re.compile("^Take it")).first.click()
    phone.page.wait_for_url("**/lashings", timeout=WITHIN_MS)
    for number in (3, 4):
        card = phone.page.get_by_role("region", name=f"Lashing {number}", exact=True)
        card.get_by_role("link", name="Answer").click()
        phone.page.get_by_role("button", name=re.compile(r"Take L-\d+: looked at and felt")).first.click()
        phone.page.wait_for_url(lambda url: ".lashing_item" not in url, timeout=WITHIN_MS)
        phone.go("lashings")
        card.get_by_role("link", name="Answer").click()
        phone.page.get_by_role("button", name="Looked at: the same here").click()
        phone.page.wait_for_url("**/lashings", timeout=WITHIN_MS)


def test_lashings_are_added_compared_and_advised_with_the_server_gone_and_come_to_it_once(
        browser: Browser, slides: tuple[Stoppable, str], tmp_path: Path) -> None:
    server, task = slides
    pictures = tmp_path / "pictures"
    pictures.mkdir()
    phone = phone_of(browser, server, "Milo Harke", width=NARROW_PX)
    phone.task = task
    phone.go("lashings")
    phone.can_go_on_alone()
    phone.until(f"async () => (await ({KEPT})()).some(({{ body }}) => body.includes('behind_headboard_m'))")
    phone.all_confirmed()
    told = look(phone, pictures)
    before, own = set(server.digests()), phone.own()
    server.kill()

    one = look(phone, pictures)
    assert (told.by, one.by) == (BY_SERVER, BY_PHONE)
    phone.go("lashings")
    journey.one_more(phone, 1, "The same on the other side", "L-02")
    two = look(phone, pictures)
    assert two.drawing != one.drawing
    assert (" 1: " in one.checks, " 1, 2: " in one.checks, " 1, 2: " in two.checks) == (True, False, True)
    assert "Sliding" in two.governs
    assert two.rules != one.rules and all(each.value in two.rules for each in RuleSet) and "(binds)" in two.rules
    take_one(phone)
    four = look(phone, pictures)
    assert four.drawing != two.drawing and four.governs != two.governs and "Sliding" not in four.governs
    assert "over limit" in two.change and "Nothing has to be changed" in four.change
    made = phone.own() - own
    assert made and made == {row["digest"] for row in phone.kept("kept")}

    server.again()
    phone.reload()
    phone.all_confirmed()
    at_server = server.digests()
    assert made == set(at_server) - before and len(at_server) == len(set(at_server))
    back = look(phone, pictures)
    assert back == Looked(BY_SERVER, four.governs, four.checks, four.drawing, four.rules, four.change)
    assert not phone.faults
