"""People: role, capacities with their last day, one-time codes, in use or not. For administrators."""

from collections import defaultdict
from typing import Any

from flask import Blueprint, Response, abort, redirect, request
from werkzeug.wrappers import Response as AnyResponse

from checklist_app.checklists.authority import capacities
from checklist_app.checklists.words import day
from checklist_app.operations.kinds import KINDS
from checklist_app.records.account_tables import ROLES, Account
from checklist_app.records.accounts import LastAdministrator, NameTaken
from checklist_app.web import current, registry
from checklist_app.web.access import allowed
from checklist_app.web.item_form import ADD, asks, facts_of, faults_of, on_top
from checklist_app.web.pages import frame_of, page
from checklist_app.web.registers import CHANGED

TAKEN = "Somebody signs in by this name already. Add something that tells them apart."
LAST = "Nobody else is an administrator. Make another one first."

blueprint = Blueprint("people", __name__, url_prefix="/people")
administrators = allowed("administrator")


@blueprint.get("")
@administrators
def show_list() -> Response:
    lines = [{"href": f"/people/{one.person}", "name": one.name, "role": one.role, "active": one.active,
              "has_pin": bool(one.pin_hash), "capacities": capacity_words(one)} for one in current.accounts().all()]
    return page("web/people/list.html", frame_of("People", back="/today", back_words="Back to today"), lines=lines)


@blueprint.get("/new")
@administrators
def show_new() -> Response:
    return form_page(None, {}, {})


@blueprint.post("/new")
@administrators
def save_new() -> AnyResponse:
    """A new account and its entry in the register of people; then a code for its PIN."""
    facts = facts_of(KINDS["person"], request.form)
    if ADD in request.form:
        return form_page(None, facts, {})
    if faults := faults_of(KINDS["person"], facts) | role_fault():
        return form_page(None, facts, faults)
    person = registry.person_id()
    try:
        current.accounts().add(person, facts["name"], request.form["role"])
    except NameTaken:
        return form_page(None, facts, {"name": TAKEN})
    registry.save_version(KINDS["person"], person, facts, ())

    return code_page(account(person))


@blueprint.get("/<person>")
@administrators
def show(person: str) -> Response:
    return form_page(account(person), facts_now(person), {})


@blueprint.post("/<person>")
@administrators
def save(person: str) -> AnyResponse:
    """Name, role and capacities. The register keeps every version; the account only what is so now."""
    found, facts = account(person), facts_of(KINDS["person"], request.form)
    if ADD in request.form:
        return form_page(found, facts, {}, stands=request.form.get("stands", ""))
    if faults := faults_of(KINDS["person"], facts) | role_fault():
        return form_page(found, facts, faults, stands=request.form.get("stands", ""))
    if request.form.get("stands", "") != standing(person):
        return form_page(found, facts, {"": CHANGED}, status=409)
    try:
        current.accounts().change(person, facts["name"], request.form["role"], request.form.get("active") == "yes")
    except NameTaken:
        return form_page(found, facts, {"name": TAKEN})
    except LastAdministrator:
        return form_page(found, facts, {"role": LAST})
    if facts != facts_now(person):
        registry.save_version(KINDS["person"], person, facts, standing(person).split())

    return redirect("/people", 303)


@blueprint.get("/<person>/code")
@administrators
def back_from_code(person: str) -> AnyResponse:
    """A code is shown once: whoever reloads its page comes back to the person."""
    return redirect(f"/people/{person}", 303)


@blueprint.post("/<person>/code")
@administrators
def give_code(person: str) -> Response:
    """A code for a new PIN; it is shown once."""
    found = account(person)
    if not found.active:
        abort(409, "This account is not in use. Put it into use first.")

    return code_page(found)


def form_page(found: Account | None, facts: Any, faults: dict[str, str], status: int | None = None,
              stands: str | None = None) -> Response:
    sent = request.method == "POST"
    made = frame_of("New person" if found is None else found.name, back="/people", back_words="Back without saving")
    return page("web/people/form.html", made, status or (422 if faults else 200),
                asks=asks(KINDS["person"], facts, faults, request.form), top=on_top(faults),
                faults=defaultdict(str, faults), roles=ROLES, account=found,
                role=request.form.get("role", "") if sent else found.role if found else "",
                active=request.form.get("active") == "yes" if sent else found is None or found.active,
                stands=(standing(found.person) if found else "") if stands is None else stands, action=request.path)


def code_page(found: Account) -> Response:
    code = current.accounts().give_code(found.person, current.now())
    made = frame_of(f"A code for {found.name}", back="/people", back_words="Back to people")
    return page("web/people/code.html", made, name=found.name, code=code)


def account(person: str) -> Account:
    return current.accounts().get(person) or abort(404, "There is no such person.")


def facts_now(person: str) -> Any:
    """The facts that stand; where two versions differ, one of them to start from."""
    item = current.world().item("person", person)
    if item is None:
        return {}

    return item.versions[item.disputed[0]] if item.disputed else dict(item.facts)


def standing(person: str) -> str:
    return " ".join(entry.digest for entry in registry.folded(("person", person)).heads.get(registry.VERSION, ()))


def role_fault() -> dict[str, str]:
    return {} if request.form.get("role") in ROLES else {"role": "Choose what this account may do."}


def capacity_words(one: Account) -> str:
    """As what somebody may sign, and until when.

    A capacity that has run out says so.
    """
    held = capacities(current.world(), one.person)
    today = current.today()
    return ", ".join(f"{name} {'until' if until >= today else 'ran out'} {day(until)}"
                     for name, until in held.items() if until)
