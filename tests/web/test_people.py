"""People: added, changed and put out of use by an administrator, each with a code for a PIN of his own."""

import re

import pytest
from flask import Flask

from tests.web.signed_in import People, Visitor
from tests.web.strict import strict

INES = {"name": "Ines Okoro", "role": "supervisor", "capacities/0/capacity": "supervisor",
        "capacities/0/until": "2027-03-31"}
CODE = re.compile(r"[A-Z2-9]{5}-[A-Z2-9]{5}")


@pytest.fixture
def administrator(people: People) -> Visitor:
    return people.visitor("administrator")


def ines(administrator: Visitor) -> str:
    """Address of Ines's page."""
    page = strict(administrator.get("/people").text)
    return next(link for link in page.links if link.startswith("/people/p-") and "administrator" not in link
                and "Ines" in administrator.get(link).text)


def saved(administrator: Visitor, address: str, **changed: str):
    stands = administrator.get(address).text.split('name="stands" value="')[1].split('"')[0]
    return administrator.post(address, INES | {"active": "yes", "stands": stands} | changed)


def test_a_new_person_gets_a_code_and_signs_in_with_a_pin_of_her_own(administrator: Visitor, nobody: Visitor) -> None:
    page = administrator.post("/people/new", INES)
    code = CODE.search(page.text).group(0)  # type: ignore[union-attr]
    assert "no PIN yet" in administrator.get("/people").text
    nobody.get("/new-pin")
    assert nobody.post("/new-pin", {"code": code, "pin": "8265", "again": "8265"}).status_code == 303
    listed = administrator.get("/people").text
    assert "Signs as supervisor until 31 March 2027." in listed
    assert "no PIN yet" not in listed


def test_capacities_come_from_the_register_of_people(app: Flask, administrator: Visitor) -> None:
    administrator.post("/people/new", INES)
    person = ines(administrator).rpartition("/")[2]
    with app.test_request_context():
        app.preprocess_request()
        from checklist_app.web import current
        found = current.person_of(current.accounts().get(person))  # type: ignore[arg-type]
    assert (found.name, found.role, found.capacities) == ("Ines Okoro", "supervisor", {"supervisor": "2027-03-31"})


def test_a_capacity_that_has_run_out_says_so(administrator: Visitor) -> None:
    administrator.post("/people/new", INES | {"capacities/0/until": "2026-11-24"})
    assert "supervisor ran out 24 November 2026" in administrator.get("/people").text


@pytest.mark.parametrize(("changed", "words"), [
    ({"name": ""}, "nobody answered it yet"), ({"role": ""}, "what this account may do"),
    ({"role": "chief"}, "what this"),
    ({"capacities/0/capacity": "king"}, "choose one of"), ({"capacities/0/until": ""}, "nobody answered it yet"),
    ({"name": "some  ADMINISTRATOR"}, "signs in by this name already"),
])
def test_what_is_missing_or_taken_is_said_at_the_field(administrator: Visitor, changed, words: str) -> None:
    page = administrator.post("/people/new", INES | changed)
    assert page.status_code == 422
    assert words in page.text
    assert "Ines" not in administrator.get("/people").text


def test_role_and_capacity_change_at_once(administrator: Visitor, people: People) -> None:
    administrator.post("/people/new", INES)
    address = ines(administrator)
    assert saved(administrator, address, role="rigger").status_code == 303
    assert "Rigger" in administrator.get("/people").text


def test_a_person_out_of_use_is_out_at_once_and_can_come_back(administrator: Visitor, people: People) -> None:
    person = people.add("Ines Okoro", "supervisor")
    visitor = people.sign_in("Ines Okoro")
    assert saved(administrator, f"/people/{person}", active="no").status_code == 303
    assert visitor.get("/registers").status_code == 303
    assert "not in use" in administrator.get("/people").text
    saved(administrator, f"/people/{person}")
    people.sign_in("Ines Okoro")


def test_a_new_code_ends_the_sign_ins_when_it_is_used(administrator: Visitor, people: People, nobody: Visitor) -> None:
    person = people.add("Ines Okoro", "supervisor")
    visitor = people.sign_in("Ines Okoro")
    administrator.get(f"/people/{person}")
    code = CODE.search(administrator.post(f"/people/{person}/code").text).group(0)  # type: ignore[union-attr]
    assert visitor.get("/registers").status_code == 200
    nobody.get("/new-pin")
    nobody.post("/new-pin", {"code": code, "pin": "8265", "again": "8265"})
    assert visitor.get("/registers").status_code == 303


def test_the_last_administrator_cannot_be_put_out_of_use(administrator: Visitor) -> None:
    page = saved(administrator, "/people/p-some-administrator", name="Some administrator", role="rigger")
    assert page.status_code == 422
    assert "Nobody else is an administrator" in page.text
    assert administrator.get("/people").status_code == 200


def test_of_two_tabs_the_second_is_told(administrator: Visitor, people: People) -> None:
    person = people.add("Ines Okoro", "supervisor")
    old = administrator.get(f"/people/{person}").text.split('name="stands" value="')[1].split('"')[0]
    saved(administrator, f"/people/{person}")
    page = administrator.post(f"/people/{person}", INES | {"active": "yes", "stands": old, "role": "rigger"})
    assert page.status_code == 409
    assert "Supervisor" in administrator.get("/people").text


def test_a_name_is_nowhere_in_the_entries(app: Flask, administrator: Visitor) -> None:
    administrator.post("/people/new", INES)
    store = app.extensions["store"]
    kept = [arrival.entry.data for arrival in store.since({"number": 0, "head": ""})[0]]
    assert kept
    assert not any(b"Ines" in data or b"Okoro" in data for data in kept)
