"""A new version of the app is offered in words and taken by a tap; nobody gets it in the middle of his work."""

import shutil
from pathlib import Path

import pytest
from playwright.sync_api import Browser, expect

from tests.browser import journey
from tests.browser.phone import Phone, phone_of
from tests.browser.server import ROOT
from tests.browser.stoppable import WITHIN_MS, Stoppable

RIGGER = "Dunja Fell"
OLD, NEW = "Go to the work", "Go straight to the work"
WAITS = "async () => Boolean((await navigator.serviceWorker.getRegistration()).waiting)"
EDITION = """() => document.querySelector('script[src*="/js/phone.js"]').src.split("/")[4]"""


@pytest.fixture
def newer(tmp_path: Path) -> Path:
    """The next version: a script and a template of the floors have changed."""
    root = tmp_path / "newer"
    for name in ("checklist_app", "static", "templates", "demo_data"):
        shutil.copytree(ROOT / name, root / name, ignore=shutil.ignore_patterns("__pycache__"))
    script, layout = root / "static" / "js" / "chance.js", root / "templates" / "checklist" / "layout.html"
    script.write_text(script.read_text(encoding="utf-8") + "// the next version\n", encoding="utf-8")
    assert OLD in layout.read_text(encoding="utf-8")
    layout.write_text(layout.read_text(encoding="utf-8").replace(OLD, NEW), encoding="utf-8")
    return root


def enter(phone: Phone, height_m: str) -> None:
    phone.go("numbers?step=heights")
    phone.fill("lift_height_m", height_m, "tape")
    expect(phone.page.locator("#live")).to_contain_text("computed", timeout=WITHIN_MS)


def test_a_new_version_waits_for_a_tap_while_the_old_one_goes_on_also_with_no_server(
        browser: Browser, gone: Stoppable, newer: Path) -> None:
    rigger = phone_of(browser, gone, RIGGER)
    journey.say_what(rigger)
    enter(rigger, "0.30")
    before = rigger.page.evaluate(EDITION)
    bar = rigger.page.locator("#new-version")
    expect(bar).to_have_count(0)
    gone.kill()
    gone.root = newer
    gone.again()

    rigger.reload()
    expect(bar).to_contain_text("A new version of the app is here.", timeout=WITHIN_MS)
    for height_m in ("0.31", "0.32"):
        enter(rigger, height_m)
        expect(bar.get_by_role("button", name="Take it now")).to_be_visible(timeout=WITHIN_MS)
        assert rigger.page.evaluate(WAITS), "the new version was taken by itself"
    gone.kill()
    rigger.reload()
    enter(rigger, "0.33")
    expect(rigger.page.locator("#sync")).to_contain_text("kept on this phone", timeout=WITHIN_MS)
    expect(rigger.page.locator("a.skip")).to_have_text(OLD)
    assert rigger.page.evaluate(WAITS), "the new version was taken by itself"
    made = rigger.own()

    gone.again()
    rigger.reload()
    rigger.all_confirmed()
    with rigger.page.expect_navigation():
        bar.get_by_role("button", name="Take it now").click()
    expect(bar).to_have_count(0, timeout=WITHIN_MS)
    rigger.can_go_on_alone()
    assert rigger.page.evaluate(EDITION) != before
    assert made <= rigger.own() and made <= set(gone.digests())
    gone.kill()
    rigger.go("numbers?step=heights")
    expect(rigger.page.locator("a.skip")).to_have_text(NEW, timeout=WITHIN_MS)
    expect(rigger.field("lift_height_m")).to_have_value("0.33")
    assert not rigger.faults
