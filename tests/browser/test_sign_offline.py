"""Behind the shed a supervisor signs on the rigger's phone with his own PIN; the server verifies it when it is back."""

import re
from pathlib import Path

from PIL import Image
from playwright.sync_api import Browser, expect

from checklist_app.checklists.entry import Entry
from checklist_app.demo.work import BEGUN
from checklist_app.records.store import Arrival, Store
from tests.browser import journey
from tests.browser.phone import Phone, phone_of, quarantine
from tests.browser.stoppable import MODULE, WITHIN_MS, Stoppable

RIGGER, SIGNER, NAME = "Milo Harke", "agata-rusk", "Agata Rusk"
OTHER = "owen-thrale"
KEYS = f"""async () => {{ {MODULE}
  const store = await module("phone_store");
  return (await store.all("keys")).map((kept) => ({{ person: kept.person.id, names: Object.keys(kept).sort(),
    private: JSON.stringify(kept).includes('"d":'), iterations: kept.iterations }})); }}"""
TRIES = f"""async (forms) => {{ {MODULE}
  const {{ signedHere }} = await module("sign_here");
  const said = [];
  for (const pairs of forms) said.push(await signedHere(pairs));
  return said; }}"""
LONG_ALONE = f"""async () => {{ {MODULE}
  const store = await module("phone_store");
  await store.remember({{ reached_at: Date.now() - 25 * 3_600_000 }}); }}"""


def enrol(phone: Phone) -> None:
    """The supervisor enrols on the rigger's phone, who stays signed in."""
    phone.page.goto(f"{phone.url}/enrol")
    phone.page.get_by_label("Who enrols?").select_option(SIGNER)
    phone.page.get_by_label("His or her own PIN").fill(phone.server.pin(NAME))
    phone.page.get_by_role("button", name="Enrol on this phone").click()
    expect(phone.page.get_by_role("heading", name="Enrolled on this phone")).to_be_visible(timeout=WITHIN_MS)
    phone.page.goto(f"{phone.url}/today")


def ready_to_sign(browser: Browser, server: Stoppable) -> Phone:
    """The demonstration's open lift, rigged and waiting for a release, on its rigger's phone."""
    phone = phone_of(browser, server, RIGGER)
    enrol(phone)
    phone.task = (server.folder / BEGUN).read_text(encoding="utf-8").split()[0]
    phone.go("holds/release")
    phone.can_go_on_alone()
    phone.all_confirmed()
    return phone


def photograph(phone: Phone, picture: Path) -> None:
    phone.go("stop-points?step=rigged")
    phone.page.locator('#work input[type="file"]').first.set_input_files(picture)
    for _ in range(WITHIN_MS // 250):
        if [row for row in phone.kept() if '"type":"photo"' in row["body"]]:
            return
        phone.page.wait_for_timeout(250)
    raise AssertionError("the photograph was not kept")


def try_to_sign(phone: Phone, person: str, pin: str) -> None:
    phone.go("holds/release?act=sign")
    phone.draw()
    phone.page.get_by_label("Who signs?").select_option(person)
    phone.page.get_by_label("His or her own PIN").fill(pin)
    phone.page.locator('.dock button[type="submit"]').last.click()


def sign(phone: Phone, pin: str) -> None:
    try_to_sign(phone, SIGNER, pin)
    phone.page.wait_for_url("**/trial**", timeout=WITHIN_MS)


def fault(phone: Phone, words: str) -> None:
    expect(phone.page.locator("#pin-fault")).to_contain_text(re.compile(words), timeout=WITHIN_MS)


def arrived(server: Stoppable, task: str) -> list[Arrival]:
    """The sign-offs that the server keeps for a task."""
    store = Store(server.folder)
    try:
        return [one for one in store.arrivals(("task", task)) if one.entry.type == "signature"]
    finally:
        store.close()


def compared(server: Stoppable) -> dict[str, str]:
    """Which code worked something out on a phone, and what the server found when it did so too."""
    store = Store(server.folder)
    try:
        return dict(store.database.execute_sql("SELECT code, outcome FROM comparison").fetchall())
    finally:
        store.close()


def assert_verified(one: Arrival) -> Entry:
    assert (one.doubt, one.counts) == ("", True)
    assert (one.entry.author, one.entry.value["how"]) == (SIGNER, "phone-key")
    return one.entry


def test_a_task_begun_photographed_and_signed_with_the_server_gone_is_verified_once_when_it_is_back(
        browser: Browser, gone: Stoppable, tmp_path: Path) -> None:
    Image.new("RGB", (900, 600), "#446688").save(tmp_path / "rigged.jpg")
    phone = phone_of(browser, gone, RIGGER)
    enrol(phone)
    phone.can_go_on_alone()
    phone.all_confirmed()
    before, own = set(gone.digests()), phone.own()
    (key,) = phone.page.evaluate(KEYS)
    assert key["person"] == SIGNER and not key["private"] and key["iterations"] >= 600_000
    assert "wrapped" in key["names"] and "pin" not in key["names"]
    gone.kill()
    phone.page.goto(f"{phone.url}/today")
    phone.opened()
    journey.say_what(phone)
    phone.go("kit")  # by its address: on a loaded machine the page after "Next" was sometimes put in place twice
    journey.fetch_kit(phone)
    journey.enter_numbers(phone)
    journey.read_stop_points(phone)
    photograph(phone, tmp_path / "rigged.jpg")

    try_to_sign(phone, OTHER, "4711")
    fault(phone, "not enrolled on this phone")
    pin = gone.pin(NAME)
    try_to_sign(phone, SIGNER, pin[::-1] if pin != pin[::-1] else "0000")
    fault(phone, "does not open the key")
    sign(phone, pin)
    assert not [one for one in phone.kept("kept") if one["body"].count('"how":"pin"')]
    phone.go("holds/release")
    expect(phone.page.locator(".plate").first).to_contain_text("PIN on enrolled phone", timeout=WITHIN_MS)
    phone.page.goto(f"{phone.url}{phone.task}")
    expect(phone.page.locator("main")).to_contain_text("Checks worked out on this phone.",
                                                           timeout=WITHIN_MS)

    made = phone.own() - own

    gone.again()
    phone.reload()
    phone.all_confirmed()
    at_server = gone.digests()
    assert made == set(at_server) - before and len(at_server) == len(set(at_server))
    (one,) = arrived(gone, phone.task.rpartition("/")[2])
    assert_verified(one)
    phone.page.goto(f"{phone.url}{phone.task}")
    expect(phone.page.locator("main")).to_contain_text("Checks worked out by the server.",
                                                           timeout=WITHIN_MS)
    phone.go("holds/release")
    expect(phone.page.locator(".plate").first).to_contain_text("PIN on enrolled phone", timeout=WITHIN_MS)
    expect(phone.page.locator("#alarms aside")).to_have_count(0)
    for _ in range(120):
        if any(code.startswith("floors-") for code in compared(gone)):
            break
        phone.page.wait_for_timeout(500)
    assert set(compared(gone).values()) == {"equal"} and len(compared(gone)) == 2, "page and statement"
    assert not phone.faults


def test_wrong_pins_are_delayed_on_the_phone_and_after_a_day_alone_it_signs_nothing(
        browser: Browser, gone: Stoppable) -> None:
    phone = ready_to_sign(browser, gone)
    gone.kill()
    tries = [["0000"], ["0000"], ["0000"], [gone.pin(NAME)]]
    *wrong, late = phone.page.evaluate(TRIES, [[["act", "sign"], ["signer", SIGNER], ["pin", pin]] for pin, in tries])
    assert all("does not open the key" in said["pin_fault"] for said in wrong)
    assert re.search("Try again in [1-5] seconds", late["pin_fault"]) and "verified" not in late
    (elsewhere,) = phone.page.evaluate(TRIES, [[["signer", SIGNER], ["pin", gone.pin(NAME)]]])
    assert "only a sign-off" in elsewhere["pin_fault"], "with a PIN he signs; nothing else is done in his name"
    phone.page.evaluate(LONG_ALONE)
    try_to_sign(phone, SIGNER, gone.pin(NAME))
    fault(phone, "more than 24 hours")
    assert not [row for row in phone.kept() if '"type":"signature"' in row["body"] and row["state"] == "kept"]


def test_a_sling_quarantined_before_the_signature_came_alarms_every_phone_until_a_supervisor_gives_his_word(
        browser: Browser, gone: Stoppable) -> None:
    phone = ready_to_sign(browser, gone)
    phone.context.set_offline(True)
    sign(phone, gone.pin(NAME))
    quarantine(browser, gone, "R-23")
    phone.context.set_offline(False)
    phone.reload()
    phone.all_confirmed()
    assert_verified(arrived(gone, phone.task.rpartition("/")[2])[0])

    other = phone_of(browser, gone, "Dunja Fell")
    alarm = other.page.locator("#alarms aside")
    expect(alarm).to_contain_text(re.compile("Signed without knowing.*Agata Rusk.*R-23", re.DOTALL), timeout=WITHIN_MS)
    expect(phone.page.locator("#alarms aside")).to_have_count(1, timeout=WITHIN_MS)
    alarm.get_by_role("link", name="What to do").click()
    other.page.get_by_label("What was done about it?").fill("lowered, sling changed")
    other.page.get_by_label("Which supervisor?").select_option(OTHER)
    other.page.get_by_label("His or her own PIN").fill(gone.pin("Owen Thrale"))
    other.page.get_by_role("button", name="I know of it").click()
    expect(alarm).to_have_count(0, timeout=WITHIN_MS)
    phone.page.goto(f"{phone.url}/today")
    expect(phone.page.locator("#alarms aside")).to_have_count(0)
    assert not phone.faults and not other.faults
