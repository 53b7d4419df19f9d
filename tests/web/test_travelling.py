"""The thin caller of the pages that travel: what it passes on, what it keeps, what it keeps out."""

import hashlib
from io import BytesIO
from pathlib import Path

import pytest
from flask import Flask
from flask.testing import FlaskClient
from PIL import Image

from checklist_app.checklists.answer import Request
from checklist_app.records.database import TABLES
from checklist_app.web import travelling
from tests.web.signed_in import PIN, People, Visitor


def everything(app: Flask, folder: Path) -> tuple[dict[str, str], dict[str, int]]:
    """Digest of every file with data, rows of every table."""
    store = app.extensions["store"]
    rows = {table.__name__: table.select().count(store.database) for table in TABLES}
    for name in ("account", "session", "tries", "onetimecode"):
        rows[name] = store.database.execute_sql(f"SELECT count(*) FROM {name}").fetchone()[0]
    store.close()
    files = {path.name: hashlib.sha256(path.read_bytes()).hexdigest() for path in sorted(folder.rglob("*"))
             if path.is_file() and not path.name.endswith("-shm")}
    return files, rows


def test_assessing_without_sign_in_changes_nothing_that_is_kept(
        app: Flask, people: People, nobody: Visitor, tmp_path: Path) -> None:
    people.add("Ines Okoro", "supervisor")
    before = everything(app, tmp_path / "data")
    assert nobody.get("/assess").status_code == 200
    for form in ({}, {"mass_kg": "2350", "mass_kg.how": "weighed"}, {"mass_kg": "NaN"}, {"mass_kg": "1,250"}):
        assert nobody.post("/assess", form).status_code in (200, 303, 422)
        assert nobody.post("/assess", form, headers={"HX-Request": "true"}).status_code in (200, 422)
    assert everything(app, tmp_path / "data") == before


def asked(app: Flask, visitor: Visitor, monkeypatch: pytest.MonkeyPatch, form: dict[str, object],
          headers: dict[str, str] | None = None) -> Request:
    """What the pure function was given for a form."""
    seen: list[Request] = []
    true_answer = travelling.answer

    def listening(request: Request, world):
        seen.append(request)
        return true_answer(request, world)
    monkeypatch.setattr(travelling, "answer", listening)
    visitor.post("/begin", form, headers=headers or {})
    return seen[-1]


def test_the_pin_stays_outside_and_the_signer_comes_in(app: Flask, people: People, monkeypatch) -> None:
    supervisor = people.add("Ines Okoro", "supervisor", "supervisor", pin="8265")
    rigger = people.visitor("rigger")
    request = asked(app, rigger, monkeypatch, {"signer": supervisor, "pin": "8265"})
    assert request.verified is not None
    assert (request.verified.person.id, request.verified.how) == (supervisor, "pin")
    assert request.verified.person.capacities == {"supervisor": "2027-06-30"}
    assert request.person.id == "p-some-rigger"
    assert "8265" not in repr(request)


@pytest.mark.parametrize(("signer", "pin"), [
    ("p-ines-okoro", PIN), ("p-ines-okoro", ""), ("p-nobody", "8265"), ("", "8265"),
])
def test_a_wrong_pin_verifies_nobody(app: Flask, people: People, monkeypatch, signer: str, pin: str) -> None:
    people.add("Ines Okoro", "supervisor", "supervisor", pin="8265")
    request = asked(app, people.visitor("rigger"), monkeypatch, {"signer": signer, "pin": pin})
    assert request.verified is None
    assert request.pin_fault == "Name and PIN do not belong together."


def test_wrong_pins_on_the_phone_handed_over_wait_longer_each_time(app: Flask, people: People, monkeypatch) -> None:
    supervisor = people.add("Ines Okoro", "supervisor", "supervisor", pin="8265")
    rigger = people.visitor("rigger")
    for _ in range(3):
        asked(app, rigger, monkeypatch, {"signer": supervisor, "pin": PIN})
    request = asked(app, rigger, monkeypatch, {"signer": supervisor, "pin": "8265"})
    assert request.verified is None
    assert "Try again in 5 seconds" in request.pin_fault


def test_the_request_carries_what_the_page_may_know(app: Flask, people: People, monkeypatch) -> None:
    rigger = people.visitor("rigger")
    device = rigger.client.get("/device").json["device"]
    request = asked(app, rigger, monkeypatch, {"leg/1-left/sling": ["gear/a", "gear/b"]})
    assert request.form["leg/1-left/sling"] == ("gear/a", "gear/b")
    assert (request.at, request.page_device) == ("2026-11-25T12:00:00Z", device)
    assert request.device == f"s-{device[2:]}"
    assert request.form_token == rigger.token
    assert "form_token" not in request.form
    assert not request.fragment


@pytest.mark.parametrize(("headers", "fragment"), [
    ({"HX-Request": "true"}, True), ({"HX-Request": "true", "HX-Boosted": "true"}, False),
    ({"HX-Request": "true", "HX-History-Restore-Request": "true"}, False),
])
def test_only_what_a_part_of_a_page_asks_for_is_a_fragment(app, people, monkeypatch, headers, fragment: bool) -> None:
    assert asked(app, people.visitor("rigger"), monkeypatch, {}, headers).fragment is fragment


def test_a_photo_of_a_form_without_script_arrives_small(app: Flask, people: People, monkeypatch) -> None:
    noise = BytesIO()
    Image.effect_noise((2400, 1800), 90).save(noise, "PNG")
    assert noise.tell() > 3_000_000
    noise.seek(0)
    request = asked(app, people.visitor("rigger"), monkeypatch, {"label": (noise, "label.png")})
    (photo,) = request.files["label"]
    assert photo.mime == "image/jpeg"
    assert Image.open(BytesIO(photo.data)).size == (1600, 1200)


def test_a_file_that_is_no_photo_is_refused_in_words(people: People) -> None:
    page = people.visitor("rigger").post("/begin", {"label": (BytesIO(b"no picture"), "label.jpg")})
    assert page.status_code == 415
    assert "no photo that can be read" in page.text


def test_more_than_a_form_may_carry_is_refused(people: People) -> None:
    page = people.visitor("rigger").post("/begin", {"label": (BytesIO(bytes(25_000_000)), "label.jpg")})
    assert page.status_code == 413


def test_two_salts_are_never_the_same(app: Flask, people: People, monkeypatch) -> None:
    rigger = people.visitor("rigger")
    assert asked(app, rigger, monkeypatch, {}).salt != asked(app, rigger, monkeypatch, {}).salt


def test_caches_keep_page_and_fragment_apart(people: People) -> None:
    page = people.visitor("rigger").get("/today")
    assert "HX-Request" in page.headers.get("Vary", "")
    assert page.headers["Cache-Control"] == "private, no-cache"


def test_no_page_takes_an_entry_in_somebody_elses_name(app: Flask, people: People, client: FlaskClient) -> None:
    from checklist_app.checklists import values
    from checklist_app.checklists.answer import Person
    from checklist_app.checklists.entry import make

    told = Request("POST", "/begin", person=Person("p-a", "A", "rigger"))
    foreign = make(("gear", "L-07"), ("quarantine",), values.quarantine("2026-11-25"), (), "p-b", "d-x", 1,
                   "2026-11-25T12:00:00Z")
    mighty = make(("gear", "L-07"), ("quarantine",), values.release(), (), "p-a", "d-x", 1, "2026-11-25T12:00:00Z")
    own = make(("gear", "L-07"), ("quarantine",), values.quarantine("2026-11-25"), (), "p-a", "d-x", 1,
               "2026-11-25T12:00:00Z")
    travelling.refuse_powerless([own], told)
    for entry in (foreign, mighty):
        with app.test_request_context(), pytest.raises(Exception, match="403"):
            travelling.refuse_powerless([entry], told)


def test_a_form_whose_answer_was_lost_is_carried_out_once_and_says_so(app: Flask, people: People) -> None:
    """Its script counted it, so that it is known again; the same gear a second time would read as a fault."""
    visitor, store = people.visitor("rigger"), app.extensions["store"]

    def add(counter: int, tag: str = "ONCE-1"):
        made = f'{{"at":"2026-11-25T11:59:00Z","counter":{counter},"salt":"0123456789abcdef0123456789abcdef"}}'
        form = {"made": made, "kind": "round_sling", "id": tag, "wll_t": "3", "length_m": "1.5", "marked": "yes",
                "origin": "bought", "due": "2030-01-01"}
        return visitor.post("/gear/add", form)

    assert add(7).status_code == 303
    before = store.cursor()
    again = add(7)
    assert (again.status_code, store.cursor()) == (200, before)
    assert "This arrived already" in again.text and "It is kept once" in again.text
    assert "There is a ONCE-1 already" in add(57).text, "counted anew it is another form"
    assert add(107, "ONCE-2").status_code == 303
