"""The whole path on a phone, as three people, with two things wrong on the way; and the same without script."""

import json
import re
from pathlib import Path
from typing import Any

from playwright.sync_api import Browser, Page, expect
from pypdf import PdfReader

from tests.browser import journey
from tests.browser.conftest import PHONE
from tests.browser.hand import Hand
from tests.browser.server import Server


def test_rigger_supervisor_and_auditor_do_the_whole_path(
    page: Page, browser: Browser, server: Server, tmp_path: Path
) -> None:
    rigger = Hand(page, server)
    rigger.sign_in("Milo Harke")
    journey.say_what(rigger)
    journey.say_rig(rigger)
    a_quarantined_sling_cannot_be_picked(rigger)
    rigger.go("kit")
    journey.fetch_kit(rigger, rig_said=True)
    a_letter_in_a_number_is_a_fault_and_never_within_limit(rigger)
    journey.enter_numbers(rigger)
    nobody_signs_before_the_stop_points(rigger)
    journey.read_stop_points(rigger)
    rigger.sign("release", "agata-rusk", "Agata Rusk")
    the_rigger_is_still_signed_in(rigger)
    journey.try_it(rigger)
    rigger.sign("trial_accepted", "agata-rusk", "Agata Rusk")
    journey.move_and_set(rigger)
    record = journey.close(rigger)
    the_auditor_finds_and_reads_it(browser, server, record, tmp_path)


def a_quarantined_sling_cannot_be_picked(rigger: Hand) -> None:
    rigger.go("kit/leg.1-left.sling")
    rigger.page.get_by_label("Scan or type the tag number").fill("r-25")
    rigger.page.get_by_role("button", name="Pick", exact=True).click()
    expect(rigger.page.locator("#tag-number-fault")).to_contain_text("R-25: in quarantine")
    assert rigger.page.get_by_label("Scan or type the tag number").input_value() == "r-25"
    expect(rigger.page.get_by_label("Looked at and felt, all round")).to_have_count(0)


def a_letter_in_a_number_is_a_fault_and_never_within_limit(rigger: Hand) -> None:
    rigger.go("numbers?step=heights")
    rigger.fill("lift_height_m", "0.3o")
    expect(rigger.page.locator("#lift_height_m-fault")).to_contain_text("0.3o")
    assert rigger.field("lift_height_m").input_value() == "0.3o"
    expect(rigger.page.locator("#live")).not_to_contain_text("The lift is within limit")


def nobody_signs_before_the_stop_points(rigger: Hand) -> None:
    rigger.go("holds/release")
    expect(rigger.page.locator(".dock")).to_contain_text("First")
    rigger.go("holds/release?act=sign")
    expect(rigger.page.get_by_label("His or her own PIN")).to_have_count(0)


def the_rigger_is_still_signed_in(rigger: Hand) -> None:
    rigger.page.goto(f"{rigger.url}/today")
    expect(rigger.page.locator(".bar-where")).to_contain_text("Milo Harke")


def the_auditor_finds_and_reads_it(browser: Browser, server: Server, record: str, tmp_path: Path) -> None:
    context = browser.new_context(viewport=PHONE, is_mobile=True, has_touch=True)
    auditor = Hand(context.new_page(), server)
    auditor.sign_in("Lene Varga")
    auditor.page.goto(f"{auditor.url}/records?gear=C-51&closing=completed")
    path = record.removeprefix(server.url)
    auditor.page.locator(f'a[href="{path}"]').first.click()
    expect(auditor.page.locator(".seal").first).to_contain_text("Nothing changed since")
    sealed = json.loads(context.request.get(f"{record}.json").text())
    (tmp_path / "record.pdf").write_bytes(context.request.get(f"{record}.pdf").body())
    the_paper_says_what_was_sealed(PdfReader(tmp_path / "record.pdf"), sealed)
    refused = context.request.post(f"{server.url}/begin", form={"operation": "straight_lift"})
    assert refused.status in (401, 403)
    context.close()


def the_paper_says_what_was_sealed(paper: PdfReader, sealed: dict[str, Any]) -> None:
    first = said(paper.pages[0].extract_text())
    whole = said(" ".join(page.extract_text() for page in paper.pages))
    assert "Vertical pump 400" in first and "DEMONSTRATION" in first.upper()
    assert "Agata Rusk, supervisor" in first and "completed" in first
    for side in ("left", "right"):
        assert f"{quantity(sealed, f'leg_load_t[{side}]'):.2f} t" in first
    for tag in ("R-21", "R-22", "B-31", "B-32", "C-51", "H-1"):
        assert tag in whole, tag
    assert "0.30" in whole and "2370" in whole
    assert "R-25" not in whole


def quantity(sealed: dict[str, Any], name: str) -> float:
    return next(float(one["value"]) for one in sealed["evaluation"]["quantities"] if one["name"] == name)


def said(text: str) -> str:
    return re.sub(r"\s+", " ", text)


def test_the_same_path_works_without_script(browser: Browser, server: Server) -> None:
    context = browser.new_context(viewport=PHONE, java_script_enabled=False)
    rigger = Hand(context.new_page(), server, script=False)
    rigger.sign_in("Dunja Fell")
    journey.say_what(rigger)
    journey.fetch_kit(rigger)
    journey.enter_numbers(rigger)
    journey.read_stop_points(rigger)
    rigger.sign("release", "owen-thrale", "Owen Thrale")
    journey.try_it(rigger)
    rigger.sign("trial_accepted", "owen-thrale", "Owen Thrale")
    journey.move_and_set(rigger)
    journey.close(rigger)
    expect(rigger.page.get_by_role("heading", level=1)).to_contain_text("Vertical pump 400")
    context.close()
