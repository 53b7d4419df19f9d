"""A generating set is lashed on a lorry: the rigger's part, place by place."""

import re

from playwright.sync_api import expect

from tests.browser.hand import SLOW, Hand
from tests.browser.journey import sealed_or_told_again

LOAD = "Generating set 60 kVA"
FIRST = {"at_x_m": "0.55", "at_y_m": "0.30", "at_z_m": "0.85", "anchor_x_m": "1.50", "anchor_y_m": "1.10",
         "anchor_z_m": "-0.15"}
BODY = {"cg_x_m": ("0.03", "trial"), "cg_y_m": ("0", "trial"), "cg_z_m": ("0.62", "trial"),
        "length_m": ("1.55", "tape"), "width_m": ("0.80", "tape"), "height_m": ("1.25", "tape")}


def say_what(hand: Hand) -> None:
    hand.begin(LOAD, "Pump bay", "Lashing on a vehicle")
    fetch(hand, "vehicle", "V-2")
    hand.fill("driver", "J. Osei, Ferrow Haulage")
    hand.fill("bound_for", "Port of Wexmouth")
    hand.go("what?step=way")
    hand.choose("How does it travel", "^by road(?!,| and)")
    hand.choose("By which rules", "^EN 12195")
    hand.next()


def look_at_the_deck(hand: Hand) -> None:
    hand.go("deck?step=driver")
    hand.tick_all()
    hand.next()
    hand.tick_all()
    hand.choose("rating of the anchors", "from the plate")
    hand.next()


def set_it_on_its_bearers(hand: Hand) -> None:
    hand.go("bearers?step=pallet")
    fetch(hand, "pallet or skid", "P-3")
    hand.go("bearers?step=body")
    for name, (text, how) in BODY.items():
        hand.fill(name, text, how)
    hand.next()
    hand.choose("What does it stand on", "on feet")
    hand.fill("base_length_m", "1.30", "tape")
    hand.fill("base_width_m", "0.75", "tape")
    not_used(hand, "edge_gives_m")
    hand.choose("stand on the pallet", "on feet, anywhere")
    hand.next()
    hand.tick_all()
    hand.choose("Is it drained", "^drained")
    hand.choose("treated wood", "^seen")
    hand.next()


def say_what_rubs(hand: Hand) -> None:
    hand.go("friction?step=under-load")
    hand.choose("What meets under the load", "bare metal foot on timber")
    hand.choose("What is on those faces", "oil or grease")
    hand.next()
    hand.choose("What meets on the deck", "wooden pallet on plywood")
    hand.choose("What is on those faces", "swept clean, wet")
    hand.next()


def put_lashings_on(hand: Hand) -> None:
    """The first in full, its mirror image, then the same two at the other end: three taps and three tags felt."""
    hand.go("lashings")
    hand.page.get_by_role("button", name="Add a lashing").click()
    hand.pick("L-01")
    hand.page.get_by_label("Looked at and felt, all round").click()
    hand.page.wait_for_url("**step=put-on**")
    row = "lashing/" + hand.page.url.rpartition("put-on.")[2].partition("#")[0]
    hand.choose("How is it put on", "^diagonal")
    hand.choose("What does it hold", "^the load")
    hand.choose("made fast to", "^the deck")
    hand.choose("Where it bends", "bends round no edge")
    hand.next()
    for name, text in FIRST.items():
        hand.fill(f"{row}/{name}", text)
    hand.next()
    hand.fill(f"{row}/anchor_dan", "2000")
    hand.fill(f"{row}/held_dan", "4000")
    hand.next()
    one_more(hand, 1, "The same on the other side", "L-02")
    one_more(hand, 1, "The same at the other end", "L-03")
    one_more(hand, 3, "The same on the other side", "L-04", free=False)
    expect(hand.page.get_by_role("region", name="Lashing 4")).to_contain_text("-0.55 / -0.30 / 0.85 m")


def one_more(hand: Hand, row: int, words: str, tag: str, free: bool = True) -> None:
    """One tap for the row, one for its item by whoever has felt it, one for ring and eye by whoever looked at them.

    What another task holds is not offered, and picked by its number.
    """
    card = hand.page.get_by_role("region", name=f"Lashing {row}", exact=True)
    button = card.get_by_role("button", name=words)
    if not button.is_visible():
        card.locator("summary").click()
    button.click()
    if free:
        hand.page.get_by_role("button", name=f"Take {tag}: looked at and felt").click()
    else:
        hand.page.wait_for_url("**/kit/lashing.*", timeout=SLOW)
        hand.pick(tag)
        hand.page.get_by_label("Looked at and felt, all round").click()
    hand.page.wait_for_url("**step=pull**", timeout=SLOW)
    hand.page.get_by_role("button", name="Looked at: the same here").click()
    hand.page.wait_for_url("**/lashings", timeout=SLOW)


def enter_numbers(hand: Hand) -> None:
    hand.go("numbers")
    hand.fill("behind_headboard_m", "3.20", "tape")
    not_used(hand, "other_kg")
    hand.next()


def walk_round(hand: Hand) -> None:
    hand.go("walk-round?step=round")
    hand.tick_all()
    hand.next()


def hand_it_over(hand: Hand) -> None:
    hand.go("hand-over")
    hand.tick_all()
    hand.fill("off_last", "1 and 4")
    hand.fill("seal_number", "WX 20418")
    hand.next()


def the_driver_signs(hand: Hand, name: str, firm: str) -> None:
    """A guest by name and hand; whoever is signed in has seen it."""
    hand.go("holds/hand_over/guest")
    hand.page.get_by_label("Name of the guest").fill(name)
    hand.page.get_by_label("For which firm?").fill(firm)
    hand.draw()
    hand.page.get_by_label("I saw the guest sign").check()
    before = hand.page.url
    hand.page.get_by_role("button", name="The guest has signed").click()
    hand.page.wait_for_url(lambda url: url != before, timeout=SLOW)


def on_the_road(hand: Hand) -> None:
    hand.go("road?step=gone")
    hand.tick_all()
    hand.next()
    hand.page.get_by_role("button", name="Write down a re-tension").click()
    hand.page.wait_for_url("**step=again**")
    hand.choose("When was it", "10 to 50 km")
    hand.choose("What was found", "drawn again")
    hand.choose("How was the tension told", "by hand")
    hand.fill(hand_row(hand) + "/retension_who", "J. Osei, by telephone")
    hand.next()


def hand_row(hand: Hand) -> str:
    return "retension/" + hand.page.url.rpartition("again.")[2].partition("#")[0]


def close(hand: Hand) -> str:
    """Close it as completed; the address of the record."""
    hand.go("close-out")
    hand.choose("How did it go", "as planned")
    with hand.page.expect_response(lambda answer: answer.request.method == "GET" and "close-out" in answer.url):
        hand.page.locator(".dock .button-go").click()
    hand.page.wait_for_load_state("networkidle")
    completed = hand.page.get_by_role("radio", name=re.compile("^Completed"))
    expect(completed).to_be_enabled(timeout=SLOW)
    completed.check()
    hand.page.get_by_role("button", name="Close and seal").click()
    sealed_or_told_again(hand)
    return hand.page.url


def fetch(hand: Hand, words: str, tag: str) -> None:
    """Gear that is asked in a step: to its slot, and back."""
    hand.page.get_by_role("link", name=f"Pick: {words}").click()
    hand.pick(tag)
    before = hand.page.url
    hand.page.get_by_label("Looked at and felt, all round").click()
    hand.page.wait_for_url(lambda url: url != before, timeout=SLOW)


def not_used(hand: Hand, name: str) -> None:
    prompt = hand.page.locator(f'[id="{name}-prompt"]')
    prompt.locator("details.ways > summary").click()
    prompt.locator(f'input[name="{name}.not_used"]').check()
    hand.breathe()
