"""A load is lashed on a lorry: rigger, supervisor and driver on one phone, up to the sealed record and its paper."""

import json
import subprocess
from pathlib import Path

from playwright.sync_api import Page, expect
from pypdf import PdfReader

from tests.browser import lashing_journey as journey
from tests.browser.hand import Hand
from tests.browser.measure import too_wide
from tests.browser.server import Server
from tests.browser.test_path import said

NARROW, PHONE = {"width": 360, "height": 780}, {"width": 390, "height": 844}


def test_rigger_supervisor_and_driver_do_the_whole_path(page: Page, server: Server, tmp_path: Path) -> None:
    rigger = Hand(page, server)
    rigger.sign_in("Milo Harke")
    journey.say_what(rigger)
    journey.look_at_the_deck(rigger)
    journey.set_it_on_its_bearers(rigger)
    journey.say_what_rubs(rigger)
    journey.put_lashings_on(rigger)
    three_coordinates_stand_in_one_line_on_a_narrow_phone(rigger)
    journey.enter_numbers(rigger)
    journey.walk_round(rigger)
    the_rigger_may_not_release_it_himself(rigger)
    rigger.sign("release", "agata-rusk", "Agata Rusk")
    journey.hand_it_over(rigger)
    nobody_but_the_driver_signs_the_hand_over(rigger)
    journey.the_driver_signs(rigger, "Jonas Osei", "Ferrow Haulage")
    journey.on_the_road(rigger)
    record = journey.close(rigger)
    the_paper_says_what_was_done(page, record, tmp_path)


def three_coordinates_stand_in_one_line_on_a_narrow_phone(rigger: Hand) -> None:
    rigger.page.set_viewport_size(NARROW)
    rigger.page.get_by_role("region", name="Lashing 1", exact=True).get_by_role("link", name="Change").click()
    rigger.page.wait_for_url("**step=put-on**")
    rigger.page.goto(rigger.page.url.partition("#")[0].replace("put-on", "ends"))
    boxes = [rigger.page.locator(f'#work input[name$="/at_{axis}_m"]').bounding_box() for axis in "xyz"]
    tops = {round(box["y"]) for box in boxes if box is not None}

    assert len(boxes) == 3 and len(tops) == 1 and not too_wide(rigger.page)
    rigger.page.set_viewport_size(PHONE)


def the_rigger_may_not_release_it_himself(rigger: Hand) -> None:
    rigger.go("holds/release?act=sign")
    offered = rigger.page.get_by_label("Who signs?").locator("option").all_inner_texts()
    assert any("Agata Rusk" in each for each in offered) and not any("Milo Harke" in each for each in offered)


def nobody_but_the_driver_signs_the_hand_over(rigger: Hand) -> None:
    rigger.go("holds/hand_over?act=sign")
    rigger.page.wait_for_url("**/holds/hand_over/guest")
    expect(rigger.page.get_by_label("His or her own PIN")).to_have_count(0)
    expect(rigger.page.locator("main")).to_contain_text("I draw the lashings again after 10 to 50 km.")


def the_paper_says_what_was_done(page: Page, record: str, tmp_path: Path) -> None:
    sealed = json.loads(page.context.request.get(f"{record}.json").text())
    paper = tmp_path / "record.pdf"
    paper.write_bytes(page.context.request.get(f"{record}.pdf").body())
    pages = PdfReader(paper).pages
    first, whole = said(pages[0].extract_text()), said(" ".join(each.extract_text() for each in pages))

    assert "Record of a lashing" in first and "Generating set 60 kVA" in first and "completed" in first
    assert "Agata Rusk, supervisor" in first
    for words in ("L-01", "L-04", "V-2", "P-3", "Jonas Osei", "1 and 4", "after 10 to 50 km", "How it is lashed"):
        assert words in whole, words
    assert "No trial was entered" not in whole and "slings" not in whole
    strengths = [one for one in sealed["evaluation"]["checks"] if one["quantity"] == "lashing_strength"]
    assert {one["row"] for one in strengths} == set("1234")
    assert sealed["guests"][0]["stands"] and sealed["guests"][0]["capacity"] == "driver"
    checked = subprocess.run(["qpdf", "--check", paper], capture_output=True, text=True, check=False)
    assert checked.returncode == 0, checked.stdout + checked.stderr
