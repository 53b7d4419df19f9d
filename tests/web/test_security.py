"""What protects answers and forms: headers, tokens, origins, sizes, and refusals in words."""

from io import BytesIO

import pytest
from flask import Flask

from tests.web.signed_in import PIN, People, Visitor
from tests.web.strict import strict


@pytest.mark.parametrize("address", ["/", "/sign-in", "/new-pin", "/first-run", "/nothing-here"])
def test_pages_allow_no_script_or_style_of_their_own(nobody: Visitor, address: str) -> None:
    policy = nobody.get(address).headers["Content-Security-Policy"]
    assert "default-src 'self'" in policy
    assert "frame-ancestors 'none'" in policy
    assert "unsafe" not in policy.replace("'wasm-unsafe-eval'", "")


def test_a_form_without_its_token_changes_nothing(people: People) -> None:
    visitor = people.visitor("administrator")
    page = visitor.client.post("/people/new", data={"name": "Mallory", "role": "administrator"})
    assert page.status_code == 403
    assert "Mallory" not in visitor.get("/people").text


def test_the_token_of_one_sign_in_is_worth_nothing_in_another(people: People) -> None:
    people.add("Ines Okoro", "administrator")
    people.add("Tomas Brandt", "rigger")
    first, second = people.sign_in("Tomas Brandt"), people.sign_in("Ines Okoro")
    second.token = first.token
    assert second.post("/people/new", {"name": "Mallory", "role": "administrator"}).status_code == 403


@pytest.mark.parametrize("headers", [{"Origin": "https://evil.test"}, {"Origin": "null"},
                                     {"Origin": "http://localhost:81"}, {"Sec-Fetch-Site": "cross-site"}])
def test_a_form_from_another_site_is_refused_though_its_token_is_right(people: People, headers: dict[str, str]) -> None:
    visitor = people.visitor("rigger")
    assert visitor.post("/theme", {"theme": "dark"}, headers=headers).status_code == 403


def test_a_form_from_our_own_page_passes(people: People) -> None:
    visitor = people.visitor("rigger")
    assert visitor.post("/theme", {"theme": "dark"}, headers={"Origin": "http://localhost"}).status_code == 303


def test_htmx_may_carry_the_token_in_a_header(people: People) -> None:
    visitor = people.visitor("rigger")
    sent = visitor.client.post("/theme", data={"theme": "dark"}, headers={"X-Form-Token": visitor.token})
    assert sent.status_code == 303


@pytest.mark.parametrize(("address", "status"), [("/nothing-here", 404), ("/registers/tools", 404), ("/theme", 405)])
def test_a_refusal_is_a_page_with_a_way_on(nobody: Visitor, address: str, status: int) -> None:
    page = nobody.get(address)
    assert page.status_code == status
    assert "/" in strict(page.text).links


def test_a_fault_of_the_app_is_a_page_that_gives_nothing_away(app: Flask, nobody: Visitor) -> None:
    def broken() -> str:
        raise RuntimeError("secret detail")
    broken.reads = app.view_functions["start.first_page"].reads  # type: ignore[attr-defined]
    app.view_functions["start.first_page"] = broken
    page = nobody.get("/")
    assert page.status_code == 500
    assert "secret detail" not in page.text
    assert "fault of the app, not yours" in page.text


def test_a_form_larger_than_allowed_is_refused_in_words(nobody: Visitor) -> None:
    page = nobody.post("/sign-in", {"typed": "x" * 1_100_000, "pin": PIN})
    assert page.status_code == 413
    assert "Too large" in page.text


def test_a_body_of_eight_thousand_brackets_is_refused(people: People) -> None:
    visitor = people.visitor("rigger")
    known = visitor.client.get("/device").json
    headers = {"Origin": "http://localhost", "Authorization": f"Bearer {known['credential']}"}
    sent = visitor.client.put("/entries", data=b"[" * 8000, headers=headers)
    assert sent.status_code == 400
    assert sent.json["words"]


def test_static_files_come_under_an_address_that_changes_with_them(nobody: Visitor) -> None:
    address = next(part for part in nobody.get("/").text.split('"') if part.endswith("/css/app.css"))
    kept = nobody.client.get(address, buffered=True)
    plain = nobody.client.get("/static/css/app.css", buffered=True)
    assert kept.data == plain.data
    assert "immutable" in kept.headers["Cache-Control"]
    assert plain.headers["Cache-Control"] == "no-cache"


@pytest.mark.parametrize("name", [
    "../pyproject.toml", "..%2fpyproject.toml", "css/../../pyproject.toml", "/etc/passwd",
])
def test_nothing_but_static_files_comes_from_there(nobody: Visitor, name: str) -> None:
    assert nobody.client.get(f"/static/{name}", buffered=True).status_code in (308, 404)


def test_a_page_made_before_signing_in_says_so_instead_of_failing(people: People, nobody: Visitor) -> None:
    people.add("Ines Okoro", "supervisor")
    nobody.get("/sign-in")
    before = nobody.token
    nobody.post("/sign-in", {"typed": "Ines Okoro", "pin": PIN})
    nobody.token = before
    page = nobody.post("/theme", {"theme": "dark"})
    assert page.status_code == 403
    assert "opened before you signed in or out" in page.text


def test_a_file_where_none_is_asked_for_does_no_harm(nobody: Visitor) -> None:
    page = nobody.post("/sign-in", {"typed": "Nobody", "pin": PIN, "photo": (BytesIO(b"no picture"), "x.jpg")})
    assert page.status_code == 422


def test_a_refusal_inside_a_page_is_a_part_of_it_that_keeps_its_place(people: People, nobody: Visitor) -> None:
    nobody.get("/sign-in")
    part = nobody.post("/tasks/t-x/numbers", {"mass_kg": "2350"}, headers={"HX-Request": "true"})
    assert part.status_code == 401
    assert "<html" not in part.text
    assert 'id="live"' in part.text
    assert "Sign in" in part.text
