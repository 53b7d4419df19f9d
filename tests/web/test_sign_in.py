"""Signing in and out, first start, new PIN: what a person sees and what a stranger gets."""

import pytest

from tests.web.signed_in import PIN, People, Visitor
from tests.web.strict import strict


def test_the_first_page_offers_sign_in_and_assessing_and_says_what_the_app_is_not(nobody: Visitor) -> None:
    page = nobody.get("/")
    assert {"/sign-in", "/assess"} <= set(strict(page.text).links)
    assert "never the competent person" in page.text
    assert "http: it is for trying" in page.text


def test_who_is_signed_in_goes_to_work(people: People) -> None:
    assert people.visitor("rigger").get("/").headers["Location"] == "/today"


def test_a_name_is_found_however_it_is_written(people: People, nobody: Visitor) -> None:
    people.add("Ines Okoro", "supervisor")
    assert nobody.post("/sign-in", {"typed": "  ines   OKORO", "pin": PIN}).headers["Location"] == "/today"


def test_a_wrong_pin_keeps_the_name_and_never_shows_the_pin(people: People, nobody: Visitor) -> None:
    people.add("Ines Okoro", "supervisor")
    page = nobody.post("/sign-in", {"typed": "Ines Okoro", "pin": "8265"})
    assert page.status_code == 422
    assert "Name and PIN do not belong together" in page.text
    assert 'value="Ines Okoro"' in page.text
    assert "8265" not in page.text


def test_a_name_nobody_has_reads_the_same_as_a_wrong_pin(people: People, nobody: Visitor) -> None:
    assert "Name and PIN do not belong together" in nobody.post("/sign-in", {"typed": "Nobody", "pin": PIN}).text


def test_strangers_are_shown_no_names_and_a_known_phone_shows_its_own(people: People, nobody: Visitor) -> None:
    people.add("Ines Okoro", "supervisor")
    people.add("Tomas Brandt", "rigger")
    assert "Ines" not in nobody.get("/sign-in").text
    visitor = people.sign_in("Ines Okoro")
    visitor.post("/sign-out")
    page = visitor.get("/sign-in").text
    assert "Ines Okoro" in page
    assert "Tomas" not in page


def test_after_three_wrong_pins_the_page_says_how_long_to_wait(people: People, nobody: Visitor) -> None:
    people.add("Ines Okoro", "supervisor")
    for _ in range(3):
        nobody.post("/sign-in", {"typed": "Ines Okoro", "pin": "8265"})
    page = nobody.post("/sign-in", {"typed": "Ines Okoro", "pin": PIN})
    assert page.status_code == 429
    assert "Try again in 5 seconds" in page.text


def test_a_strangers_tries_leave_the_phone_of_the_person_alone(people: People, nobody: Visitor) -> None:
    people.add("Ines Okoro", "supervisor")
    own = people.sign_in("Ines Okoro")
    own.post("/sign-out")
    for _ in range(5):
        nobody.post("/sign-in", {"typed": "Ines Okoro", "pin": "8265"})
    own.get("/sign-in")
    assert own.post("/sign-in", {"typed": "Ines Okoro", "pin": PIN}).status_code == 303


@pytest.mark.parametrize("elsewhere", ["https://evil.test/", "//evil.test/x", "/\\evil.test", "evil", "/\nx"])
def test_signing_in_never_leads_to_another_site(people: People, nobody: Visitor, elsewhere: str) -> None:
    people.add("Ines Okoro", "supervisor")
    page = nobody.post("/sign-in", {"typed": "Ines Okoro", "pin": PIN, "next": elsewhere})
    assert page.headers["Location"] == "/today"


def test_signing_in_leads_back_to_the_page_that_asked_for_it(people: People, nobody: Visitor) -> None:
    people.add("Ines Okoro", "supervisor")
    sent = nobody.get("/registers/gear").headers["Location"]
    assert sent == "/sign-in?next=/registers/gear"
    nobody.get(sent)
    there = {"typed": "Ines Okoro", "pin": PIN, "next": "/registers/gear"}
    assert nobody.post("/sign-in", there).headers["Location"] == "/registers/gear"


def test_the_cookies_are_out_of_reach_of_scripts_and_other_sites(people: People, nobody: Visitor) -> None:
    people.add("Ines Okoro", "supervisor")
    cookies = nobody.post("/sign-in", {"typed": "Ines Okoro", "pin": PIN}).headers.getlist("Set-Cookie")
    given = [one for one in cookies if one.startswith(("session=", "device="))]
    assert len(given) == 2
    assert all("HttpOnly" in one and "SameSite=Lax" in one for one in given)


def test_over_https_the_cookies_stay_on_https(people: People, nobody: Visitor) -> None:
    people.add("Ines Okoro", "supervisor")
    nobody.get("/sign-in", base_url="https://localhost")
    sent = nobody.post("/sign-in", {"typed": "Ines Okoro", "pin": PIN}, base_url="https://localhost")
    given = [one for one in sent.headers.getlist("Set-Cookie") if one.startswith(("__Host-session=", "__Host-device="))]
    assert len(given) == 2
    assert all("Secure" in one for one in given)


@pytest.mark.parametrize(("there", "here"), [("http", "https"), ("https", "http")])
def test_a_sign_in_by_one_of_http_and_https_opens_nothing_by_the_other(people: People, nobody: Visitor, there: str,
                                                                      here: str) -> None:
    """Whoever read along by http has the secret, and can put it under any name."""
    people.add("Ines Okoro", "supervisor")
    nobody.get("/sign-in", base_url=f"{there}://localhost")
    sent = nobody.post("/sign-in", {"typed": "Ines Okoro", "pin": PIN}, base_url=f"{there}://localhost")
    assert sent.status_code == 303
    assert nobody.get("/registers", base_url=f"{there}://localhost").status_code == 200
    given = dict(one.split(";")[0].split("=", 1) for one in sent.headers.getlist("Set-Cookie"))
    named = {name.removeprefix("__Host-"): secret for name, secret in given.items()}
    before = "__Host-" if here == "https" else ""
    for name in ("session", "device"):
        nobody.client.set_cookie(before + name, named[name], secure=here == "https")
    assert nobody.get("/registers", base_url=f"{here}://localhost").status_code == 303


def test_after_signing_out_the_old_cookie_opens_nothing(people: People) -> None:
    visitor = people.visitor("rigger")
    old = visitor.client.get_cookie("session").value  # type: ignore[union-attr]
    visitor.post("/sign-out")
    visitor.client.set_cookie("session", old)
    assert visitor.get("/registers").status_code == 303


def test_a_sign_in_does_not_open_on_another_device(people: People, nobody: Visitor) -> None:
    visitor = people.visitor("rigger")
    nobody.client.set_cookie("session", visitor.client.get_cookie("session").value)  # type: ignore[union-attr]
    assert nobody.get("/registers").status_code == 303


def test_a_phone_that_was_revoked_is_signed_out(people: People, app) -> None:
    visitor = people.visitor("rigger")
    device = visitor.client.get("/device").json["device"]
    app.extensions["store"].devices.revoke(device)
    assert visitor.get("/registers").status_code == 303


def test_the_first_start_makes_an_administrator_with_the_code_and_only_once(app, clock, nobody: Visitor) -> None:
    code = app.extensions["accounts"].give_code(None, clock())
    assert "/first-run" in strict(nobody.get("/").text).links
    nobody.get("/first-run")
    form = {"code": code, "name": "Vera Lund", "pin": PIN, "again": PIN}
    assert nobody.post("/first-run", form | {"code": "AAAAA-AAAAA"}).status_code == 422
    assert nobody.post("/first-run", form | {"pin": "1234", "again": "1234"}).status_code == 422
    assert nobody.post("/first-run", form | {"again": "8265"}).status_code == 422
    assert nobody.post("/first-run", form).headers["Location"] == "/people"
    assert "Vera Lund" in nobody.get("/people").text
    assert nobody.get("/first-run").status_code == 404


def test_there_is_no_way_in_before_the_first_start(app, nobody: Visitor) -> None:
    assert app.extensions["accounts"].all() == []
    for name in ("admin", "administrator", "root", ""):
        for pin in ("", "0000", "admin"):
            assert nobody.post("/sign-in", {"typed": name, "pin": pin}).status_code == 422


def test_a_code_sets_a_new_pin_and_signs_in(people: People, app, clock, nobody: Visitor) -> None:
    person = people.add("Ines Okoro", "supervisor")
    code = app.extensions["accounts"].give_code(person, clock())
    nobody.get("/new-pin")
    assert nobody.post("/new-pin", {"code": code, "pin": "8265", "again": "8266"}).status_code == 422
    assert nobody.post("/new-pin", {"code": code, "pin": "8265", "again": "8265"}).headers["Location"] == "/today"
    assert nobody.get("/registers").status_code == 200
    assert nobody.post("/new-pin", {"code": code, "pin": "9173", "again": "9173"}).status_code == 422


def test_the_screen_is_kept_as_chosen(nobody: Visitor) -> None:
    assert nobody.post("/theme", {"theme": "dark", "next": "/sign-in"}).headers["Location"] == "/sign-in"
    assert 'data-theme="dark"' in nobody.get("/sign-in").text
    nobody.post("/theme", {"theme": "auto"})
    assert "data-theme" not in nobody.get("/sign-in").text
    nobody.post("/theme", {"theme": '"><script>'})
    assert "data-theme" not in nobody.get("/sign-in").text


def test_signing_in_as_somebody_else_ends_the_sign_in_before(people: People) -> None:
    people.add("Ines Okoro", "supervisor")
    visitor = people.visitor("rigger")
    old = visitor.client.get_cookie("session").value  # type: ignore[union-attr]
    visitor.get("/sign-in")
    visitor.post("/sign-in", {"typed": "Ines Okoro", "pin": PIN})
    assert "Ines Okoro" in visitor.get("/today").text
    visitor.client.set_cookie("session", old)
    assert visitor.get("/registers").status_code == 303
