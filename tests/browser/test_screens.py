"""Every page on a phone: nothing cut off, nothing small, nothing pale; and drawn as it was computed."""

from math import atan2, degrees

import pytest
from playwright.sync_api import Browser, BrowserContext, expect

from tests.browser.conftest import PHONE
from tests.browser.hand import Hand
from tests.browser.measure import faults_of, too_wide
from tests.browser.server import Server

PUBLIC = ("/", "/assess", "/assess/pallet", "/assess/vehicle", "/sign-in", "/new-pin", "/proofs")
OF_A_TASK = (
    "", "/what", "/kit", "/kit/rig", "/kit/leg.1-left.sling", "/kit/leg.1-left.hitch", "/kit/leg.1-left.carrier",
    "/numbers?step=mass", "/numbers?step=eyes", "/numbers?step=legs", "/numbers?step=around", "/numbers?step=heights",
    "/numbers?step=way",
    "/try", "/try?length=2.5", "/work-out", "/work-out?by=two", "/work-out?by=more", "/work-out?by=parts&go=3",
    "/checks", "/checks/pair_strength", "/stop-points", "/trial", "/move", "/close-out",
    "/holds/release", "/holds/release?act=sign", "/holds/release/guest", "/holds/release?act=send-back",
    "/holds/trial_accepted",
)
OF_THE_YARD = (
    "/today", "/enrol", "/begin", "/begin?load=new", "/gear/add", "/gear/F-11/quarantine", "/records", "/registers",
    "/registers/gear", "/registers/gear/R-25", "/registers/gear/new/eye", "/registers/gear/new/gear_set",
    "/gear/add?kinds=chain_sling", "/gear/add?kinds=wire_rope_sling", "/registers/load/VP-400",
    "/registers/load/VP-400/version", "/registers/place",
)
ASSESSED = (
    "/assess?rig=four legs on one hook", "/assess?leg/1-left/hitch=choked",
    "/assess?way=outdoors, the hook travels with it&tag_line=held by hand", "/assess/vehicle?example=yes",
    "/assess/pallet?example=yes",
)
OF_A_LASHING = (
    "/what?step=load", "/what?step=way", "/deck", "/bearers?step=pallet", "/bearers?step=body", "/friction",
    "/lashings", "/lashings?step=put-on.{row}", "/lashings?step=ends.{row}", "/lashings?step=pull.{row}",
    "/kit/lashing.{row}.lashing_item", "/kit/vehicle", "/numbers", "/walk-round?step=photos", "/hand-over", "/road",
    "/other-end", "/checks", "/holds/release", "/holds/hand_over",
)
OF_PEOPLE = ("/people", "/people/new", "/people/milo-harke", "/phones", "/parity")


@pytest.fixture(scope="module")
def desks(browser: Browser, server: Server) -> dict[str, Hand]:
    """A supervisor and an administrator, each signed in on a phone of his own."""
    found = {}
    for name in ("Agata Rusk", "Sam Oduya"):
        context = browser.new_context(viewport=PHONE, is_mobile=True, has_touch=True)
        found[name] = Hand(context.new_page(), server)
        found[name].sign_in(name)
    supervisor = found["Agata Rusk"]
    task = supervisor.page.locator('a[href^="/tasks/"]').first.get_attribute("href") or ""
    supervisor.task = "/".join(task.split("/")[:3])

    return found


@pytest.mark.parametrize("path", (*PUBLIC, *ASSESSED))
def test_a_page_without_sign_in_is_fit_for_a_phone(phone: BrowserContext, server: Server, path: str) -> None:
    page = phone.new_page()
    page.goto(server.url + path)
    assert not faults_of(page)
    page.set_viewport_size({"width": 360, "height": 780})
    assert not too_wide(page)


@pytest.mark.parametrize("path", OF_A_TASK)
def test_a_page_of_a_task_is_fit_for_a_phone(desks: dict[str, Hand], path: str) -> None:
    fit(desks["Agata Rusk"], desks["Agata Rusk"].task + path)


@pytest.fixture(scope="module")
def lashing(desks: dict[str, Hand]) -> tuple[str, str]:
    """A lashing task with one row in it: its address, and the row."""
    hand = desks["Agata Rusk"]
    before = hand.task
    hand.page.goto(f"{hand.url}/today")
    hand.begin("Generating set 60 kVA", "Pump bay", "Lashing on a vehicle")
    task, hand.task = hand.task, before
    hand.page.goto(f"{hand.url}{task}/lashings")
    hand.page.get_by_role("button", name="Add a lashing").click()
    hand.page.wait_for_url("**/kit/lashing.**")
    return task, hand.page.url.rpartition("/kit/lashing.")[2].partition(".")[0]


@pytest.mark.parametrize("path", OF_A_LASHING)
def test_a_page_of_a_lashing_is_fit_for_a_phone(desks: dict[str, Hand], lashing: tuple[str, str], path: str) -> None:
    task, row = lashing
    fit(desks["Agata Rusk"], task + path.format(row=row))


@pytest.mark.parametrize("path", OF_THE_YARD)
def test_a_page_of_the_yard_is_fit_for_a_phone(desks: dict[str, Hand], path: str) -> None:
    fit(desks["Agata Rusk"], path)


@pytest.mark.parametrize("path", OF_PEOPLE)
def test_a_page_about_people_is_fit_for_a_phone(desks: dict[str, Hand], path: str) -> None:
    fit(desks["Sam Oduya"], path)


def test_a_record_is_fit_for_a_phone_and_drawn_as_it_was_computed(desks: dict[str, Hand]) -> None:
    page = desks["Agata Rusk"].page
    page.goto(f"{desks['Agata Rusk'].url}/records?closing=completed")
    path = page.locator('a[href^="/records/"]').first.get_attribute("href") or ""
    fit(desks["Agata Rusk"], path)
    sealed = page.context.request.get(f"{desks['Agata Rusk'].url}{path}.json").json()
    for side in ("left", "right"):
        computed = next(float(one["value"]) for one in sealed["evaluation"]["quantities"]
                        if one["name"] == f"leg_angle_deg[{side}]")
        line = page.locator(f'.drawing line.d-sling[data-about~="sling_strength[{side}]"]').first
        x1, y1, x2, y2 = (float(line.get_attribute(name) or "nan") for name in ("x1", "y1", "x2", "y2"))
        assert degrees(atan2(abs(x2 - x1), abs(y2 - y1))) == pytest.approx(computed, abs=0.1)


def fit(hand: Hand, path: str) -> None:
    """No fault at 390 px, and nothing sideways at 360 px."""
    hand.page.set_viewport_size(PHONE)
    answer = hand.page.goto(hand.url + path)
    assert answer is not None and answer.status == 200, f"{path}: {answer and answer.status}"
    expect(hand.page.locator("main")).to_be_visible()
    assert not faults_of(hand.page)
    hand.page.set_viewport_size({"width": 360, "height": 780})
    assert not too_wide(hand.page)
