"""The phone's screen lock signs: registered by https at a name, on and off the network, verified by the server."""

from collections.abc import Callable, Iterator
from contextlib import suppress
from datetime import UTC, datetime
from pathlib import Path

import pytest
from playwright.sync_api import Browser, BrowserContext, CDPSession, Page, expect
from playwright.sync_api import Error as BrowserError

from checklist_app.records.proved import misfits
from checklist_app.records.store import Arrival, Store
from tests.browser.measure import faults_of, too_wide
from tests.browser.phone import Phone
from tests.browser.secured import Secured, secured, visitor
from tests.browser.stoppable import MODULE, WITHIN_MS

SIGNER, NAME = "agata-rusk", "Agata Rusk"
KEPT = f"""async () => {{ {MODULE}
  const store = await module("phone_store");
  return (await store.all("keys")).map(({{ lock }}) => lock ?? null); }}"""
NOBODY_TAPPED = """Object.defineProperty(navigator, "userActivation", { value: { isActive: false } });"""
LOCK = "Signed with this phone's screen lock"


@pytest.fixture
def workshop(tmp_path: Path, filled_yard: Path) -> Iterator[Secured]:
    with secured(filled_yard, tmp_path / "yard") as server:
        yield server


@pytest.fixture
def phone(browser: Browser, chromium_path: str, workshop: Secured, tmp_path: Path) -> Iterator[Phone]:
    """The supervisor's own phone, which trusts the workshop; a lift of the demonstration waits for her."""
    with visitor(browser, chromium_path, tmp_path / "home", workshop.root) as context:
        phone = Phone(context, workshop)  # type: ignore[arg-type]
        phone.finger = Finger(context, phone.page)  # type: ignore[attr-defined]
        phone.sign_in(NAME)
        phone.task = phone.page.locator('a[href^="/tasks/"]').first.get_attribute("href").partition("/holds")[0]
        yield phone
        assert not phone.faults


class Finger:
    """The authenticator of a phone, in place of a real one: it says whether it knows the finger."""

    def __init__(self, context: BrowserContext, page: Page, **kind: bool) -> None:
        self.session: CDPSession = context.new_cdp_session(page)
        self.session.send("WebAuthn.enable")
        options = {"protocol": "ctap2", "transport": "internal", "hasResidentKey": True, "hasUserVerification": True,
                   "isUserVerified": True, "automaticPresenceSimulation": True, **kind}
        self.id = self.session.send("WebAuthn.addVirtualAuthenticator", {"options": options})["authenticatorId"]

    def knows(self, verified: bool) -> None:
        self.session.send("WebAuthn.setUserVerified", {"authenticatorId": self.id, "isUserVerified": verified})

    def lost(self) -> None:
        self.session.send("WebAuthn.removeVirtualAuthenticator", {"authenticatorId": self.id})

    def keys(self) -> list[dict]:
        return self.session.send("WebAuthn.getCredentials", {"authenticatorId": self.id})["credentials"]


def enrolled(phone: Phone) -> None:
    """By PIN first; then the phone's lock is offered."""
    page = phone.page
    page.goto(f"{phone.url}/enrol")
    page.get_by_label("Who enrols?").select_option(SIGNER)
    page.get_by_label("His or her own PIN").fill(phone.server.pin(NAME))
    page.get_by_role("button", name="Enrol on this phone").click()
    expect(page.get_by_role("heading", name="With the screen lock too?")).to_be_focused(timeout=WITHIN_MS)


def arrived(server: Secured, task: str) -> list[Arrival]:
    store = Store(server.folder)
    try:
        found = [one for one in store.arrivals(("task", task.rpartition("/")[2])) if one.entry.type == "signature"]
        for one in found:
            key, statement = store.keys.find(one.entry.value["key"]), store.parts.get(one.entry.value["statement"])
            assert key is not None and statement is not None and list(misfits(key, one.entry.value, statement)) == []
        return found
    finally:
        store.close()


def sign(phone: Phone, hold: str = "release") -> None:
    """The name is hers already, and the lock stands in place of the PIN."""
    phone.go(f"holds/{hold}?act=sign")
    expect(phone.page.get_by_text(LOCK)).to_be_visible(timeout=WITHIN_MS)
    expect(phone.page.get_by_label("His or her own PIN")).to_be_hidden()
    phone.draw()
    phone.page.locator('.dock button[type="submit"]').last.click()


def until(phone: Phone, come: Callable[[], bool]) -> None:
    """Where the checks took longer than a tap counts for, the page asks for another one."""
    again = phone.page.get_by_role("button", name="Confirm with the screen lock")
    for _ in range(WITHIN_MS // 250):
        if come():
            return
        if again.is_visible():
            with suppress(BrowserError):  # it has just gone
                again.click(timeout=2_000)
        phone.page.wait_for_timeout(250)
    raise AssertionError(f"it never came: {phone.page.locator('main').inner_text()[:400]}")


def confirmed(phone: Phone) -> None:
    """The lift goes on."""
    until(phone, lambda: "/trial" in phone.page.url)


def registered(phone: Phone) -> None:
    enrolled(phone)
    phone.page.get_by_role("button", name="Use this phone's screen lock").click()
    expect(phone.page.get_by_text("by PIN and by screen lock")).to_be_visible(timeout=WITHIN_MS)


def test_a_supervisor_signs_by_the_screen_lock_of_her_own_phone(phone: Phone, workshop: Secured) -> None:
    page, finger = phone.page, phone.finger  # type: ignore[attr-defined]
    enrolled(phone)
    assert not faults_of(page)
    finger.knows(False)
    page.get_by_role("button", name="Use this phone's screen lock").click()
    expect(page.locator("[data-lock-says]")).to_contain_text("not confirmed", timeout=WITHIN_MS)
    assert finger.keys() == []
    finger.knows(True)
    registered(phone)
    (made,), (kept,) = finger.keys(), page.evaluate(KEPT)
    assert made["rpId"] == kept["rp_id"] == "shed.local" and kept["how"] == "phone-lock" and "privateKey" not in kept

    page.goto(f"{phone.url}{phone.task}")
    phone.can_go_on_alone()
    finger.knows(False)
    sign(phone)
    until(phone, lambda: "not confirmed" in page.locator("#pin-fault").inner_text())
    expect(page.get_by_label("His or her own PIN")).to_be_focused()
    expect(page.locator("#pin-fault")).to_be_in_viewport()
    page.get_by_role("button", name="Use the screen lock instead").click()
    expect(page.get_by_text(LOCK)).to_be_visible()
    assert not faults_of(page)
    assert not too_wide(page)
    assert not arrived(workshop, phone.task)
    finger.knows(True)
    page.locator('.dock button[type="submit"]').last.click()
    confirmed(phone)
    phone.all_confirmed()
    (one,) = arrived(workshop, phone.task)
    assert (one.doubt, one.counts, one.entry.value["how"], one.entry.author) == ("", True, "phone-lock", SIGNER)


def test_behind_the_shed_she_signs_by_it_too_after_a_tap_and_it_is_verified_when_the_server_is_back(
        phone: Phone, workshop: Secured) -> None:
    registered(phone)
    phone.page.goto(f"{phone.url}{phone.task}")
    phone.can_go_on_alone()
    phone.all_confirmed()
    workshop.kill()
    phone.page.add_init_script(NOBODY_TAPPED)
    sign(phone)
    asked = phone.page.get_by_role("dialog", name="Ready to sign")
    expect(asked).to_be_visible(timeout=WITHIN_MS)
    asked.get_by_role("button", name="Do not sign").click()
    expect(phone.page.locator("#pin-fault")).to_contain_text("not confirmed", timeout=WITHIN_MS)
    assert not [one for one in phone.kept("kept") if '"type":"signature"' in one["body"]]
    sign(phone)
    confirmed(phone)
    phone.go("holds/release")
    expect(phone.page.locator(".plate").first).to_contain_text(
        "screen lock of the enrolled phone (user verified)", timeout=WITHIN_MS)
    assert '"how":"phone-lock"' in "".join(one["body"] for one in phone.kept("kept"))
    workshop.start("127.0.0.1")
    phone.reload()
    phone.all_confirmed()
    (one,) = arrived(workshop, phone.task)
    assert (one.doubt, one.counts, one.entry.value["how"]) == ("", True, "phone-lock")


def test_a_key_that_phones_share_is_called_so_and_is_forgotten_where_somebody_else_signs_in(phone: Phone) -> None:
    phone.finger.lost()  # type: ignore[attr-defined]
    Finger(phone.context, phone.page, defaultBackupEligibility=True, defaultBackupState=True)
    registered(phone)
    assert [lock["how"] for lock in phone.page.evaluate(KEPT)] == ["shared-lock"]
    phone.sign_in("Owen Thrale")
    phone.sign_in(NAME)
    assert phone.page.evaluate(KEPT) == [None], "her PIN's key is still there"
    phone.go("holds/release?act=sign")
    expect(phone.page.get_by_label("His or her own PIN")).to_be_visible()
    expect(phone.page.get_by_text(LOCK)).to_be_hidden()


def test_a_key_that_has_ended_at_the_server_is_forgotten_on_the_phone_that_hears_of_it(
        phone: Phone, workshop: Secured) -> None:
    registered(phone)
    store = Store(workshop.folder)
    store.keys.end_of_person(SIGNER, datetime.now(UTC))
    store.close()
    phone.page.goto(f"{phone.url}/today")
    until(phone, lambda: phone.page.evaluate(KEPT) == [])
