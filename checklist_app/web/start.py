"""The first page, the very first start, and how the screen looks."""

from collections import defaultdict

from flask import Blueprint, Response, abort, redirect, request
from werkzeug.wrappers import Response as AnyResponse

from checklist_app.checklists.frame import THEMES
from checklist_app.records.accounts import tidy
from checklist_app.records.pins import pin_fault
from checklist_app.web import current, registry
from checklist_app.web.access import everybody, way_inside
from checklist_app.web.cookies import set_cookie, take_back
from checklist_app.web.pages import THEME, frame_of, page
from checklist_app.web.sign_in import NO_CODE, NOT_SAME, let_in

YEAR_DAYS = 365

blueprint = Blueprint("start", __name__)


@blueprint.get("/")
@everybody
def first_page() -> AnyResponse:
    """Who is signed in goes to work; who is not may assess, or sign in."""
    if current.account() is not None:
        return redirect("/today", 303)

    return page("web/start.html", frame_of("Before you lift"), secure=request.is_secure,
                first_run=not current.accounts().has_administrator())


@blueprint.get("/first-run")
@everybody
def show_first_run() -> Response:
    refuse_when_run()
    return first_run_page()


@blueprint.post("/first-run")
@everybody
def first_run() -> AnyResponse:
    """The code from the terminal makes the first administrator. Nothing else does, and it does it once."""
    refuse_when_run()
    code, name = request.form.get("code", ""), tidy(request.form.get("name", ""))
    pin = request.form.get("pin", "").strip()
    found = current.accounts().code(code, current.now())
    if found is None or found.person_id is not None:
        return first_run_page(code=NO_CODE.replace("an administrator", "who started the server"))
    if not name:
        return first_run_page(name="Type your name.")
    if words := pin_fault(pin) or ("" if pin == request.form.get("again", "").strip() else NOT_SAME):
        return first_run_page(pin=words)
    person = registry.new_person(name, "administrator")
    current.accounts().set_pin(person, pin, code, current.now())

    return let_in(current.accounts().get(person), "/people")  # type: ignore[arg-type]


@blueprint.post("/theme")
@everybody
def theme() -> AnyResponse:
    """Keep how the screen shall look, on this device."""
    chosen = request.form.get("theme", "")
    response = redirect(way_inside(request.form.get("next", "")), 303)
    if chosen in THEMES:
        set_cookie(response, THEME, chosen, days=YEAR_DAYS)
    else:
        take_back(response, THEME)

    return response


def refuse_when_run() -> None:
    if current.accounts().has_administrator():
        abort(404, "The first administrator is there already. Others are added under People.")


def first_run_page(**faults: str) -> Response:
    return page("web/first_run.html", frame_of("First start", back="/", back_words="Back to the first page"),
                422 if faults else 200, faults=defaultdict(str, faults), code=request.form.get("code", ""),
                name=request.form.get("name", ""))
