"""What devices send by themselves: each entry is confirmed, refused in words or put off; nothing is half kept."""

import hashlib
import json

import pytest
from flask import Flask

from checklist_app.checklists import values
from checklist_app.checklists.canonical import canonical
from checklist_app.checklists.entry import Entry, make
from checklist_app.checklists.register import Item
from checklist_app.web import current
from tests.web.signed_in import PIN, People, Visitor

AT = "2026-11-25T11:59:00Z"


class Phone:
    """The script of a page: it knows its device's credential and sends what it made."""

    def __init__(self, visitor: Visitor, person: str) -> None:
        self.client, self.person = visitor.client, person
        known = self.client.get("/device").json
        self.device, self.credential, self.counter = known["device"], known["credential"], 0

    def quarantine(self, about: tuple[str, str] = ("gear", "L-07"), author: str = "") -> Entry:
        return self.entry(about, ("quarantine",), values.quarantine("2026-11-25"), author)

    def entry(self, about, path, value, author: str = "") -> Entry:
        self.counter += 1
        return make(about, path, value, (), author or self.person, self.device, self.counter, AT)

    def put(self, entries, cursor=None, **headers: str):
        items = [{"body": entry.data.decode()} if isinstance(entry, Entry) else entry for entry in entries]
        return self.raw(json.dumps({"cursor": cursor, "entries": items}).encode(), **headers)

    def raw(self, data: bytes, address: str = "/entries", **headers: str):
        given = {"Origin": "http://localhost", "Authorization": f"Bearer {self.credential}"} | headers
        return self.client.put(address, data=data, headers=given)


@pytest.fixture
def phone(people: People) -> Phone:
    return Phone(people.visitor("rigger"), "p-some-rigger")


def kept(app: Flask) -> int:
    return app.extensions["store"].cursor()["number"]


def test_an_entry_is_confirmed_with_its_number_and_again_with_the_same(app: Flask, phone: Phone) -> None:
    entry = phone.quarantine()
    first, second = phone.put([entry]), phone.put([entry])
    assert first.status_code == 200
    (answer,) = first.json["entries"]
    assert (answer["digest"], answer["state"]) == (entry.digest, "confirmed")
    assert second.json["entries"] == [answer]
    assert first.json["cursor"] == app.extensions["store"].cursor()


def test_each_item_has_its_own_answer_in_order(phone: Phone) -> None:
    good, strange = phone.quarantine(), phone.quarantine(author="p-somebody-else")
    later = canonical(json.loads(good.data) | {"form": 2}).decode()
    answers = phone.put([{"body": "no entry"}, good, strange, {"body": later}, 7]).json["entries"]
    assert [answer["state"] for answer in answers] == ["refused", "confirmed", "refused", "later", "refused"]
    assert all(answer["words"] for answer in answers if answer["state"] != "confirmed")


@pytest.mark.parametrize(("data", "status"), [
    (b"", 400), (b"[]", 400), (b"{}", 400), (b'{"entries": {}}', 400), (b'{"entries": [], "cursor": 7}', 400),
    (b'{"entries": [], "cursor": {"number": -1, "head": ""}}', 400), (b"[" * 8000, 400), (b'{"a":' * 8000, 400),
    (b"\xff\xfe", 400), (b"x" * 1_100_000, 413),
])
def test_what_is_no_batch_is_refused_in_words(app: Flask, phone: Phone, data: bytes, status: int) -> None:
    before = kept(app)
    answer = phone.raw(data)
    assert answer.status_code == status
    assert answer.json["words"]
    assert kept(app) == before


def test_too_many_at_once_are_sent_back_to_be_halved(phone: Phone) -> None:
    assert phone.put([phone.quarantine() for _ in range(51)]).status_code == 413


def test_a_cursor_this_server_never_gave_means_it_was_set_back(phone: Phone) -> None:
    assert phone.put([], {"number": 7, "head": "0" * 64}).status_code == 409
    assert phone.put([], phone.put([phone.quarantine()]).json["cursor"]).status_code == 200


@pytest.mark.parametrize("headers", [
    {"Authorization": ""}, {"Authorization": "Bearer "}, {"Authorization": "Bearer nonsense"},
    {"Authorization": "Basic eDp5"}])
def test_without_the_devices_credential_nothing_is_taken(phone: Phone, headers: dict[str, str]) -> None:
    assert phone.put([phone.quarantine()], **headers).status_code == 401


@pytest.mark.parametrize("origin", ["https://evil.test", "null", "http://localhost.evil.test", "http://localhost:81"])
def test_another_site_sends_nothing_even_with_the_credential(phone: Phone, origin: str) -> None:
    assert phone.put([phone.quarantine()], Origin=origin).status_code == 403


def test_a_request_that_names_no_origin_is_refused(phone: Phone) -> None:
    answer = phone.client.put("/entries", data=b"{}", headers={"Authorization": f"Bearer {phone.credential}"})
    assert answer.status_code == 403


def test_after_signing_out_the_entries_wait_on_the_phone(people: People) -> None:
    visitor = people.visitor("rigger")
    phone = Phone(visitor, "p-some-rigger")
    visitor.post("/sign-out")
    (answer,) = phone.put([phone.quarantine()]).json["entries"]
    assert answer["state"] == "later"
    assert "sign in" in answer["words"]


def test_on_a_phone_that_went_from_hand_to_hand_nobody_speaks_with_a_supervisors_power(
        app: Flask, people: People) -> None:
    """The supervisor signed in on it, then the rigger: whose hands it is in now could lift a quarantine for him."""
    people.add("Some rigger", "rigger", "rigger")
    phone = Phone(people.visitor("supervisor"), "p-some-supervisor")
    visitor = Visitor(app)
    visitor.client = phone.client
    visitor.get("/sign-in")
    assert visitor.post("/sign-in", {"typed": "Some rigger", "pin": PIN}).status_code == 303
    lifted, ordinary = phone.entry(("gear", "L-07"), ("quarantine",), values.release("")), phone.quarantine()
    answers = phone.put([lifted, ordinary]).json["entries"]
    assert [answer["state"] for answer in answers] == ["later", "confirmed"]
    visitor.get("/sign-in")
    assert visitor.post("/sign-in", {"typed": "Some supervisor", "pin": PIN}).status_code == 303
    assert phone.put([lifted]).json["entries"][0]["state"] == "confirmed"


def test_a_rigger_cannot_make_himself_a_supervisor_by_sending_an_entry(app: Flask, phone: Phone) -> None:
    facts = {"name": "Some rigger", "capacities": [{"capacity": "supervisor", "until": "2030-01-01"}]}
    name, data = values.document_part("person/1", facts, "salt")
    entry = phone.entry(("person", "p-some-rigger"), ("version",), values.version("person/1", name))
    phone.put([{"body": entry.data.decode(), "parts": {name: data.decode()}}])
    with app.test_request_context():
        app.preprocess_request()
        from checklist_app.web import current
        found = current.person_of(current.accounts().get("p-some-rigger"))  # type: ignore[arg-type]
    assert found.capacities == {"rigger": "2027-06-30"}


SLING = {"wll_t": "2", "length_m": "1.5", "mass_kg": "1", "marked": "yes", "origin": "bought"}


def version_put(phone: Phone, about: tuple[str, str], wll_t: str, path: tuple[str, ...] = ("version",)) -> Entry:
    """A version of a sling as a device brings it."""
    name, data = values.document_part("round_sling/1", SLING | {"wll_t": wll_t}, f"salt-{wll_t}")
    entry = phone.entry(about, path, values.version("round_sling/1", name))
    (answer,) = phone.put([{"body": entry.data.decode(), "parts": {name: data.decode()}}]).json["entries"]
    assert answer["state"] == "confirmed"
    return entry


def item(app: Flask, register: str, name: str) -> Item | None:
    with app.test_request_context():
        app.preprocess_request()
        return current.world().item(register, name)


@pytest.mark.parametrize("path", [("version",), ("photo",), ("note",), ("version", "1", "wll_t")])
def test_a_rigger_cannot_put_a_rating_of_his_own_beside_the_one_in_force(
        app: Flask, people: People, phone: Phone, path: tuple[str, ...]) -> None:
    supervisor = Phone(people.visitor("supervisor"), "p-some-supervisor")
    true = version_put(supervisor, ("gear", "R-1"), "2")
    forged = version_put(phone, ("gear", "R-1"), "50", path)
    found = item(app, "gear", "R-1")
    assert found is not None and found.version == true.digest
    assert set(found.versions) == {true.digest}, f"{forged.digest} could be picked"


def test_what_a_rigger_brings_in_as_new_counts_once(app: Flask, phone: Phone) -> None:
    first = version_put(phone, ("gear", "RS-9"), "2")
    version_put(phone, ("gear", "RS-9"), "3")
    found = item(app, "gear", "RS-9")
    assert found is not None and (found.version, found.state.custody) == (first.digest, "incoming")


@pytest.mark.parametrize(("register", "path"), [
    ("gear", "version"), ("gear", "custody"), ("gear", "examination"), ("gear", "quarantine"), ("load", "version"),
])
def test_nothing_that_stands_in_a_register_is_taken_back_by_an_answer_that_says_nothing(
        app: Flask, people: People, phone: Phone, register: str, path: str) -> None:
    """Whoever could take an examination or a version back could choose which of two stands."""
    supervisor = Phone(people.visitor("supervisor"), "p-some-supervisor")
    about = (register, "R-1")
    said = [version_put(supervisor, about, "2"), supervisor.quarantine(about),
            supervisor.entry(about, ("custody",), values.custody("at repair", "2026-11-25")),
            supervisor.entry(about, ("examination",), values.examination("bad", "2026-01-01", "2026-02-01"))]
    supervisor.put(said[1:])
    before = item(app, register, "R-1")
    for number, value in enumerate((values.withdrawn(), values.choice("x"), values.row("absent"))):
        taken_back = make(about, (path,), value, [one.digest for one in said if one.path == (path,)],
                          phone.person, phone.device, 100 + number, AT)
        phone.put([taken_back])
    assert item(app, register, "R-1") == before


def test_a_task_is_begun_once(app: Flask, people: People, phone: Phone) -> None:
    """A second beginning under the same name would hide the task from everybody, and nobody could stop it."""
    other = Phone(people.visitor("supervisor"), "p-some-supervisor")
    began = {"type": "begin", "operation": "straight_lift", "procedure": "straight_lift/1"}
    about = ("task", f"t-{phone.device}-1")
    phone.put([phone.entry(about, ("begin",), began)])
    forged = make(about, ("begin",), began | {"procedure": "other/9"}, (), other.person, phone.device, 1, AT)
    other.put([forged])
    assert phone.client.get(f"/tasks/{about[1]}").status_code in (200, 303)
    kinds = [entry.type for entry in app.extensions["store"].entries(about)]
    assert kinds == ["begin"]


def test_a_part_is_kept_under_its_digest_and_nothing_else(app: Flask, phone: Phone) -> None:
    data = b"\xff\xd8\xff a picture"
    name = hashlib.sha256(data).hexdigest()
    assert phone.raw(data, f"/parts/{name}").status_code == 200
    assert phone.raw(data, f"/parts/{name}").status_code == 200
    assert app.extensions["store"].parts.get(name) == data
    assert phone.raw(data + b"!", f"/parts/{name}").status_code == 422
    assert phone.raw(data, "/parts/..%2f..%2fchecklist.db").status_code in (404, 422)
    assert phone.raw(b"x" * (8 * 1024 * 1024 + 1), f"/parts/{name}").status_code == 413


def test_a_photo_of_several_megabytes_is_taken(phone: Phone) -> None:
    data = b"\xff\xd8\xff" + bytes(3_000_000)
    assert phone.raw(data, f"/parts/{hashlib.sha256(data).hexdigest()}").status_code == 200


def test_a_photograph_is_shown_to_whoever_is_signed_in_and_words_are_shown_to_nobody(
        app: Flask, phone: Phone, people: People, nobody: Visitor) -> None:
    photo, words = b"\xff\xd8\xff\xe0 a photograph", canonical({"salt": "s", "text": "Ada fell ill"})
    for data in (photo, words):
        assert phone.raw(data, f"/parts/{hashlib.sha256(data).hexdigest()}").status_code == 200
    shown = people.visitor("auditor").get(f"/parts/{hashlib.sha256(photo).hexdigest()}")
    assert (shown.status_code, shown.data, shown.content_type) == (200, photo, "image/jpeg")
    assert phone.client.get(f"/parts/{hashlib.sha256(words).hexdigest()}").status_code == 404
    assert nobody.get(f"/parts/{hashlib.sha256(photo).hexdigest()}").status_code in (303, 401)
