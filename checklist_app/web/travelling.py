"""The thin caller of the pages that travel: what came in becomes a Request, what comes out is kept and sent."""

from collections.abc import Iterable
from dataclasses import replace

from flask import Blueprint, Response, abort, make_response, request
from werkzeug.wrappers import Response as AnyResponse

from checklist_app.checklists.answer import Answer, Request, Verified, addresses, answer, is_anybodys, is_public
from checklist_app.checklists.entry import Entry
from checklist_app.checklists.plain import arrived
from checklist_app.records.account_tables import ROLES
from checklist_app.records.accounts import TooSoon, WrongPin
from checklist_app.records.door import powerless
from checklist_app.web import current
from checklist_app.web.access import WRITERS, allowed, everybody
from checklist_app.web.keeping import MADE, counted_by_script, keep, one_at_a_time, with_counter
from checklist_app.web.pages import asked, is_fragment
from checklist_app.web.photos import photos_of
from checklist_app.web.sealing import seal_what_closed
from checklist_app.web.security import TOKEN_FIELD
from checklist_app.web.sign_in import span

SIGNER, PIN = "signer", "pin"
NOT_KEPT_FORWARD = (PIN, TOKEN_FIELD, MADE)

blueprint = Blueprint("travelling", __name__)


@everybody
def public_page(**ids: str) -> AnyResponse:
    return travelled()


@allowed(*ROLES, writes=WRITERS)
def task_page(**ids: str) -> AnyResponse:
    return travelled()


@allowed(*ROLES)
def anybodys_page(**ids: str) -> AnyResponse:
    return travelled()


for _address in addresses():
    _view = public_page if is_public(_address) else anybodys_page if is_anybodys(_address) else task_page
    blueprint.add_url_rule(_address, _address, _view, methods=["GET", "POST"])


def travelled() -> AnyResponse:
    """Ask the pure function, keep what it wants kept, then send what it says."""
    if request.method != "POST":
        return sent(answer(asked_here(), current.world()))
    with one_at_a_time():
        counted = with_counter(asked_here())
        if counted_by_script() is not None and current.store().has_counted(counted.device, counted.counter):
            return sent(arrived(counted))
        told = with_pin(counted)
        given = answer(told, current.world())
        refuse_powerless(given.keep, told)
        keep(given.keep, given.parts)
    record = seal_what_closed(given.keep)

    return sent(given if record is None else replace(given, status=303, html="", location=f"/records/{record}"))


def asked_here() -> Request:
    """The request as data."""
    form = {name: tuple(texts) for name, texts in request.form.lists() if name not in NOT_KEPT_FORWARD}

    return replace(asked(), query=request.args.to_dict(), form=form, fragment=is_fragment(),
                   files=photos_of(request.files))


def with_pin(told: Request) -> Request:
    """The same request with the signer verified, or with the reason why not. The PIN itself stays here."""
    if PIN not in request.form:
        return told
    signer = told.one(SIGNER) or (told.person.id if told.person else "")
    accounts = current.accounts()
    try:
        accounts.check_pin(signer, request.form[PIN].strip(), current.device(), current.now())
    except TooSoon as error:
        return replace(told, pin_fault=f"Too many wrong PINs. Try again in {span(error.wait_s)}.")
    except WrongPin:
        return replace(told, pin_fault="Name and PIN do not belong together.")
    found = accounts.get(signer)

    return replace(told, verified=None if found is None else Verified(current.person_of(found), "pin"))


def refuse_powerless(entries: Iterable[Entry], told: Request) -> None:
    """A page keeps only what its reader, or whoever gave his PIN, may say."""
    people = {one.id: one for one in (told.person, told.verified.person if told.verified else None) if one}
    for entry in entries:
        said_by = people.get(entry.author)
        if said_by is None:
            abort(403, "Somebody else is named as the author.")
        by_pin = entry.type == "signature" and told.verified is not None and said_by is told.verified.person
        if not by_pin and (words := powerless(entry, said_by.role)):
            abort(403, f"This is not open to you: {words}.")


def sent(given: Answer) -> Response:
    response = make_response(given.html, given.status)
    response.headers.update(given.headers)
    response.headers.add("Vary", "Cookie")
    if given.location is not None:
        response.headers["Location"] = given.location

    return response
