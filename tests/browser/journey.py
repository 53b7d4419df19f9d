"""A pump is lifted by two slings: the rigger's part, stage by stage."""

import re

from playwright.sync_api import expect

from tests.browser.hand import NONE, SLOW, Hand

LOAD = "Vertical pump 400, with motor"
STOP_POINTS = ("loose", "rigged", "aloud")
RIG = {"how is the load slung": "=two legs on one hook"}
HOOK = {"hoist": "H-1", "load cell": "C-51", "fitting on the hook": NONE}
LEFT = {
    "left fitting at the top": NONE, "left sling": "R-21", "left hitch": "=straight",
    "left fitting at the bottom": "B-31", "left eye": NONE, "carries the eye, left": "=left",
}
RIGHT = {
    "right fitting at the top": NONE, "right sling": "R-22", "right hitch": "=straight",
    "right fitting at the bottom": "B-32", "right eye": NONE, "carries the eye, right": "=right",
}


def say_what(hand: Hand) -> None:
    hand.begin(LOAD, "Pump bay")
    hand.fill("landing", "Stand 1")
    hand.fill("signaller", "Benno Clay")
    hand.next()


def say_rig(hand: Hand) -> None:
    hand.go("kit")
    hand.fetch(RIG)
    hand.heading("hoist")


def fetch_kit(hand: Hand, rig_said: bool = False) -> None:
    hand.fetch(HOOK | LEFT | RIGHT if rig_said else RIG | HOOK | LEFT | RIGHT)
    hand.page.wait_for_load_state("networkidle")


def enter_numbers(hand: Hand) -> None:
    hand.go("numbers?step=legs")
    hand.choose("How the legs are given", "^lengths")
    hand.next()
    for side in ("left", "right"):
        hand.choose(f"{side.capitalize()} pull on the shackles", "^in line")
        hand.choose(f"on the pins of the shackles, {side}", "^one part")
        hand.next()
    hand.go("numbers?step=around")
    hand.fill("sling_temperature_c", "20")
    hand.choose("What gets onto the slings", "^none")
    hand.next()
    hand.go("numbers?step=heights")
    hand.fill("lift_height_m", "0.30", "tape")
    hand.next()
    hand.go("numbers?step=way")
    hand.choose("Where is it lifted", "^indoors, straight")
    hand.fill("load_length_m", "1.60", "tape")
    hand.fill("load_width_m", "0.90", "tape")
    hand.next()


def read_stop_points(hand: Hand) -> None:
    for step in STOP_POINTS:
        hand.go(f"stop-points?step={step}")
        read_aloud(hand, step)
        hand.next()


def read_aloud(hand: Hand, step: str) -> None:
    """All of one step, each as it should be."""
    hand.tick_all()
    if step == "aloud":
        hand.choose("How is the mass", "weighed")
        hand.choose("Where is the hook", "over the centre")


def try_it(hand: Hand, hook_load_kg: str = "2370") -> None:
    hand.go("trial")
    hand.page.get_by_role("button", name="Write down a trial lift").click()
    hand.page.wait_for_url("**lifted**")
    row = "trial/" + hand.page.url.rpartition("lifted.")[2] + "/"
    hand.fill(row + "lifted_mm", "30")
    hand.fill(row + "held_s", "90")
    hand.fill(row + "hook_load_kg", hook_load_kg, "load cell")
    hand.fill(row + "tilt_along_deg", "0.6", "inclinometer")
    hand.choose("Which end hangs low", "^right end")
    hand.fill(row + "tilt_across_deg", "0.2", "inclinometer")
    hand.choose("Which side hangs low", "^neither")
    hand.next()
    hand.tick_all()
    hand.next()


def move_and_set(hand: Hand) -> None:
    for step in ("way", "set"):
        hand.go(f"move?step={step}")
        hand.tick_all()
        hand.next()


def close(hand: Hand) -> str:
    """Close it as completed; the address of the record."""
    hand.go("close-out")
    hand.choose("How did it go", "as planned")
    hand.choose("And the gear", "all looked at")
    with hand.page.expect_response(lambda answer: answer.request.method == "GET" and "close-out" in answer.url):
        hand.page.locator(".dock .button-go").click()
    hand.page.wait_for_load_state("networkidle")
    completed = hand.page.get_by_role("radio", name=re.compile("^Completed"))
    expect(completed).to_be_enabled(timeout=SLOW)
    completed.check()
    hand.page.get_by_role("button", name="Close and seal").click()
    sealed_or_told_again(hand)

    return hand.page.url


def sealed_or_told_again(hand: Hand) -> None:
    """A slow seal is asked for a second time, and the page then says that it arrived already: on to the record."""
    told = hand.page.locator(".seal").or_(hand.page.get_by_text("arrived already"))
    expect(told.first).to_be_visible(timeout=2 * SLOW)
    if "/records/" not in hand.page.url:
        hand.page.goto(f"{hand.url}{hand.task}")
        hand.page.locator('main a[href^="/records/"]').first.click()
    hand.page.wait_for_url("**/records/*", timeout=SLOW)
