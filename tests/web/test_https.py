"""https and http beside it, as a browser is answered: one name, the lesser mode, trust page, certificates."""

import re
from pathlib import Path

import pytest
from cryptography import x509
from flask import Flask

from checklist_app.web.site import Site
from checklist_app.web.tls.cabinet import Cabinet
from checklist_app.web.tls.keeper import Keeper
from tests.web.conftest import Clock
from tests.web.signed_in import PIN, People, Visitor
from tests.web.strict import strict

HTTPS, OTHER, HTTP = "https://shed.local:8443", "https://192.168.1.20:8443", "http://192.168.1.20:8080"
OPENS = {"Accept": "text/html", "Sec-Fetch-Mode": "navigate"}


@pytest.fixture
def site(app: Flask, clock: Clock, tmp_path: Path) -> Site:
    """An app that answers by https as well."""
    keeper = Keeper(tmp_path / "data", "Checklist of shed", ["shed"], lambda: ["shed.local", "192.168.1.20"], clock())
    made = Site(keeper, Cabinet(tmp_path / "data"), "shed.local", 8443, (HTTP,))
    app.config["SITE"] = made
    return made


def at(place: str, visitor: Visitor) -> Visitor:
    """The same visitor, at another address."""
    visitor.client.environ_base["HTTP_SEC_FETCH_SITE"] = "same-origin"
    get, post = visitor.get, visitor.post
    visitor.get = lambda address, **more: get(address, base_url=place, **more)  # type: ignore[method-assign]
    visitor.post = lambda address, form=None, **more: post(address, form, base_url=place, **more)  # type: ignore[method-assign]
    return visitor


def signed_in_at(place: str, app: Flask, people: People, role: str) -> Visitor:
    name = f"Some {role}"
    people.add(name, role, role if role != "administrator" else "examiner")
    visitor = at(place, Visitor(app))
    visitor.get("/sign-in")
    assert visitor.post("/sign-in", {"typed": name, "pin": PIN}).status_code == 303
    visitor.get("/registers")
    return visitor


@pytest.mark.parametrize("headers", [OPENS, {"Accept": "text/html"}])
def test_opening_a_page_under_another_name_leads_to_the_one_name(site: Site, nobody: Visitor, headers: dict) -> None:
    page = nobody.get("/assess?load_mass_kg=2", base_url=OTHER, headers=headers)
    assert page.status_code == 308
    assert page.headers["Location"] == f"{HTTPS}/assess?load_mass_kg=2"
    assert page.headers["Cache-Control"] == "no-store", "the name may be changed, and browsers keep a 308 for ever"


def test_under_the_one_name_and_by_http_nobody_is_sent_on(site: Site, nobody: Visitor) -> None:
    assert nobody.get("/", base_url=HTTPS, headers=OPENS).status_code == 200
    assert nobody.get("/", base_url=HTTP, headers=OPENS).status_code == 200


@pytest.mark.parametrize("headers", [{"Sec-Fetch-Mode": "cors"}, {"Accept": "text/html", "HX-Request": "true"},
                                     {"Accept": "*/*"}])
def test_questions_of_the_page_script_are_answered_where_they_come(site: Site, nobody: Visitor, headers: dict) -> None:
    assert nobody.get("/assess", base_url=OTHER, headers=headers).status_code == 200


def test_a_form_and_entries_are_never_sent_on(site: Site, app: Flask, people: People) -> None:
    rigger = signed_in_at(OTHER, app, people, "rigger")
    assert rigger.post("/theme", {"theme": "dark"}).headers["Location"] == "/today"
    credential = rigger.get("/device").json["credential"]
    sent = rigger.client.put("/entries", json={"entries": []}, base_url=OTHER,
                             headers={"Origin": OTHER, "Authorization": f"Bearer {credential}"})
    assert sent.status_code == 200


def test_a_browser_that_has_worked_under_the_other_name_empties_its_outbox_before_it_goes(
        site: Site, app: Flask, people: People) -> None:
    rigger = signed_in_at(OTHER, app, people, "rigger")
    page = rigger.get("/today", headers=OPENS)
    assert page.status_code == 200
    assert re.search(rf'href="{HTTPS}/today" hx-boost="false" data-behaviour="move" data-at-once', page.text)
    assert rigger.get("/sign-in", headers=OPENS).status_code == 200, "who must sign in again to send could not"


def test_a_form_that_names_http_as_its_origin_is_refused_by_https(site: Site, app: Flask, people: People) -> None:
    rigger = signed_in_at(HTTPS, app, people, "rigger")
    assert rigger.post("/theme", {"theme": "dark"}, headers={"Origin": HTTPS}).status_code == 303
    assert rigger.post("/theme", {"theme": "dark"}, headers={"Origin": "http://shed.local:8443"}).status_code == 403
    assert rigger.post("/theme", {"theme": "dark"}, headers={"Origin": OTHER}).status_code == 403


def test_no_answer_binds_the_host_name_to_https(site: Site, nobody: Visitor) -> None:
    assert "Strict-Transport-Security" not in nobody.get("/", base_url=HTTPS).headers


def test_before_https_is_used_http_does_everything(site: Site, app: Flask, people: People) -> None:
    supervisor = signed_in_at(HTTP, app, people, "supervisor")
    assert supervisor.get("/begin").status_code == 200
    assert "enter and check only" not in supervisor.get("/today").text


def test_the_first_sign_in_by_https_makes_http_the_lesser_one(site: Site, app: Flask, people: People) -> None:
    signed_in_at(HTTPS, app, people, "rigger")
    assert site.https_in_use
    assert Site(site.certificates, site.cabinet).https_in_use, "after a restart it was forgotten"
    seen = Visitor(app).get("/assess", base_url=HTTP).text
    assert "By http: enter and check only." in seen
    assert f'href="{HTTPS}/assess"' in seen


def test_in_a_demonstration_only_an_administrator_makes_http_the_lesser_one(site: Site, app: Flask,
                                                                           people: People) -> None:
    app.config["DEMO"] = True
    signed_in_at(HTTPS, app, people, "rigger")
    assert not site.https_in_use


@pytest.fixture
def by_http(site: Site, app: Flask, people: People) -> Visitor:
    """A supervisor signed in by http, after https came into use."""
    visitor = signed_in_at(HTTP, app, people, "supervisor")
    site.say(True, "2026-11-25T12:00:00Z", "Ines Okoro")
    return visitor


@pytest.mark.parametrize(("address", "form"), [
    ("/begin", None), ("/begin", {"load": "x"}), ("/tasks/t-d-1/holds/release?act=sign", None),
    ("/tasks/t-d-1/holds/release", {"act": "sign", "pin": PIN}), ("/tasks/t-d-1/holds/release", {"act": "sign"}),
    ("/tasks/t-d-1/holds/release", {"act": "send_back", "pin": PIN}), ("/tasks/t-d-1/go-on", None),
    ("/tasks/t-d-1/holds/release/guest", {"guest": "Jan Berg"}), ("/tasks/t-d-1/go-on", {"reason": "put right"}),
    ("/sealing", {}), ("/registers/gear/new/shackle", {"id": "S-1"}),
])
def test_by_http_nothing_is_signed_begun_or_administered(by_http: Visitor, address: str, form: dict | None) -> None:
    page = by_http.get(address) if form is None else by_http.post(address, form)
    assert page.status_code == 403
    assert "needs https" in strict(page.text).headings[0]
    to = HTTPS + (address if form is None else address.partition("?")[0])
    assert f'href="{to}" hx-boost="false" data-behaviour="move"' in page.text
    assert "/trust" in strict(page.text).links


def test_the_refusal_inside_a_page_is_a_part_of_it(by_http: Visitor) -> None:
    part = by_http.post("/tasks/t-d-1/holds/release", {"pin": PIN}, headers={"HX-Request": "true"})
    assert part.status_code == 403
    assert "<html" not in part.text
    assert f'href="{HTTPS}/tasks/t-d-1/holds/release"' in part.text


@pytest.mark.parametrize(("address", "form"), [
    ("/tasks/t-d-1/numbers", {"mass_kg": "2"}), ("/tasks/t-d-1/stop", {"words": "wind"}),
    ("/tasks/t-d-1/close-out", {}), ("/gear/L-07/quarantine", {"words": "cut"}),
    ("/registers/gear/L-07/quarantine", {"words": "cut"}), ("/theme", {"theme": "dark"}),
    ("/sign-out", {}), ("/today", None), ("/assess", None), ("/tasks/t-d-1/holds/release", None), ("/registers", None),
])
def test_by_http_one_still_enters_checks_stops_and_reads(by_http: Visitor, address: str, form: dict | None) -> None:
    page = by_http.get(address) if form is None else by_http.post(address, form)
    assert page.status_code in (200, 303, 404, 422)
    assert "This needs https" not in page.text


def test_by_https_the_same_things_are_done(site: Site, app: Flask, people: People) -> None:
    supervisor = signed_in_at(HTTPS, app, people, "supervisor")
    assert site.https_in_use
    assert supervisor.get("/begin").status_code == 200
    assert supervisor.post("/sealing").status_code == 303


def test_entries_that_a_phone_still_holds_are_taken_by_http(site: Site, by_http: Visitor) -> None:
    credential = by_http.get("/device").json["credential"]
    sent = by_http.client.put("/entries", json={"entries": []}, base_url=HTTP,
                              headers={"Origin": HTTP, "Authorization": f"Bearer {credential}"})
    assert sent.status_code == 200


def test_the_trust_page_has_the_file_the_fingerprint_the_code_and_every_system(site: Site, nobody: Visitor) -> None:
    page = nobody.get("/trust", base_url=HTTP)
    looked = strict(page.text)
    assert {"/trust/workshop-root.crt", f"{HTTPS}/"} <= set(looked.links)
    assert site.certificates.facts(site.certificates.root.certificate.not_valid_before_utc).root_print in page.text
    assert f'aria-label="QR code of {HTTP}/trust"' in page.text
    for system in ("Android", "iPhone", "Windows", "macOS", "Linux: Chromium", "Linux: Firefox"):
        assert system in page.text
    assert page.text.count("Not tried on a device yet.") == 5
    assert page.text.count("To remove:") == 6


def test_the_root_comes_as_a_certificate_of_an_authority(site: Site, nobody: Visitor) -> None:
    file = nobody.get("/trust/workshop-root.crt", base_url=HTTP)
    assert file.headers["Content-Type"] == "application/x-x509-ca-cert"
    assert x509.load_pem_x509_certificate(file.data) == site.certificates.root.certificate  # type: ignore[attr-defined]
    assert b"PRIVATE" not in file.data


def test_where_no_name_resolves_the_page_says_that_the_address_must_stay(site: Site, nobody: Visitor) -> None:
    assert "It must stay the same" not in nobody.get("/trust", base_url=HTTP).text
    site.name = "192.168.1.20"
    assert "by its address 192.168.1.20. It must stay the same" in nobody.get("/trust", base_url=HTTP).text


def test_without_https_the_trust_page_says_so(nobody: Visitor) -> None:
    assert "answers by http only" in nobody.get("/trust").text
    assert nobody.get("/trust/workshop-root.crt").status_code == 404


def test_an_administrator_sees_certificates_and_says_what_http_may(site: Site, app: Flask, people: People) -> None:
    app.config["DEMO"] = True
    chief = signed_in_at(HTTPS, app, people, "administrator")
    page = chief.get("/security").text
    for words in ("24 November 2026 to 26 December 2027", "by itself on 28 August 2027", "Root ends",
                  "shed.local, 192.168.1.20", "By http everything is possible"):
        assert words in page
    assert chief.post("/security", {"https": "only"}).status_code == 303
    assert site.https_in_use
    assert "enter and check only, since 25 November 2026: Some administrator" in chief.get("/security").text
    chief.post("/security", {"https": "also"})
    assert not site.https_in_use
    app.config["DEMO"] = False
    signed_in_at(HTTPS, app, people, "rigger")
    assert not site.https_in_use, "an administrator's word holds until his next one"


def test_by_http_no_administrator_can_lock_everybody_out(site: Site, app: Flask, people: People) -> None:
    chief = signed_in_at(HTTP, app, people, "administrator")
    assert f"{HTTPS}/security" in strict(chief.get("/security").text).links
    assert chief.post("/security", {"https": "only"}).status_code == 409
    assert not site.https_in_use


def test_a_fault_of_the_certificates_is_shown_to_administrators(site: Site, app: Flask, people: People,
                                                               clock: Clock) -> None:
    clock.wait(days=3400)
    chief = signed_in_at(HTTPS, app, people, "administrator")
    assert "root ends on 2036" in chief.get("/security").text


def test_a_phone_is_told_where_https_is_only_by_http_and_only_once_it_is_in_use(site: Site, app: Flask,
                                                                               people: People) -> None:
    """So that the pages that it makes by itself say the same as the server's."""
    def told(visitor: Visitor, base: str) -> str:
        known = visitor.client.get("/device", base_url=base).json
        headers = {"Authorization": f"Bearer {known['credential']}"}
        return visitor.client.get("/entries", base_url=base, headers=headers).json["https"]

    supervisor = signed_in_at(HTTP, app, people, "supervisor")
    assert told(supervisor, HTTP) == ""
    site.say(True, "2026-11-25T12:00:00Z", "Ines Okoro")
    assert told(supervisor, HTTP) == HTTPS
    assert told(signed_in_at(HTTPS, app, people, "rigger"), HTTPS) == ""
