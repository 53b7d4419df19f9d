"""Signing in by name and PIN, signing out, and a PIN set by one-time code."""

from collections import defaultdict

from flask import Blueprint, Response, current_app, redirect, request
from werkzeug.wrappers import Response as AnyResponse

from checklist_app.records.account_tables import Account
from checklist_app.records.accounts import TooSoon, WrongPin
from checklist_app.records.moments import moment
from checklist_app.records.pins import pin_fault
from checklist_app.web import current
from checklist_app.web.access import BY_HTTPS, DEVICE, everybody, remember_device, signed_in, way_inside
from checklist_app.web.cookies import cookie, set_cookie, take_back
from checklist_app.web.pages import frame_of, page
from checklist_app.web.security import SESSION, VISIT
from checklist_app.web.site import site

NO_SUCH = "Name and PIN do not belong together."
NOT_SAME = "The two PINs differ."
NO_CODE = "This code is not good: used, older than a day, or replaced by a newer one. Ask an administrator."

blueprint = Blueprint("sign_in", __name__)


@blueprint.get("/sign-in")
@everybody
def show() -> Response:
    return sign_in_page()


@blueprint.post("/sign-in")
@everybody
def sign_in() -> AnyResponse:
    """The name that was chosen, or the one typed."""
    name = request.form.get("typed", "").strip() or request.form.get("name", "").strip()
    if not name:
        return sign_in_page("Choose your name, or type it.", status=422)
    found = current.accounts().named(name)
    try:
        current.accounts().check_pin(found.person if found else "", request.form.get("pin", "").strip(),
                                     current.device(), current.now())
    except TooSoon as error:
        return sign_in_page(f"Too many wrong PINs. Try again in {span(error.wait_s)}.", name, 429)
    except WrongPin:
        return sign_in_page(NO_SUCH, name, 422)

    return let_in(found, way_inside(request.form.get("next", "")))  # type: ignore[arg-type]


@blueprint.post("/sign-out")
@signed_in
def sign_out() -> AnyResponse:
    current.sessions().close(cookie(SESSION))
    current.store().devices.sign_out(current.device(), current.account().person)  # type: ignore[union-attr]
    response = redirect("/", 303)
    take_back(response, SESSION)

    return response


@blueprint.get("/new-pin")
@everybody
def show_new_pin() -> Response:
    return new_pin_page()


@blueprint.post("/new-pin")
@everybody
def new_pin() -> AnyResponse:
    """Whoever holds the code sets the PIN and is signed in with it."""
    code, pin = request.form.get("code", ""), request.form.get("pin", "").strip()
    found = current.accounts().code(code, current.now())
    if found is None or found.person_id is None:
        return new_pin_page(code=NO_CODE)
    if words := pin_fault(pin) or ("" if pin == request.form.get("again", "").strip() else NOT_SAME):
        return new_pin_page(pin=words)
    if not current.accounts().set_pin(found.person_id, pin, code, current.now()):
        return new_pin_page(code=NO_CODE)

    return let_in(current.accounts().get(found.person_id), "/today")  # type: ignore[arg-type]


def let_in(account: Account, location: str) -> AnyResponse:
    """Open a sign-in on this device, enrolling the device at its first."""
    devices = current.store().devices
    device, credential = current.device(), cookie(DEVICE)
    if not device:
        device, credential = devices.enrol()
        current.accounts().used_on(account.person, device, current.now())
    devices.sign_in(device, account.person)
    current.store().keys.end_locks_of_others(device, account.person, current.now())
    current.sessions().close(cookie(SESSION))
    secret = current.sessions().open(account.person, device, current.now(), BY_HTTPS if request.is_secure else "")
    response = redirect(location, 303)
    remember_device(response, credential)
    set_cookie(response, SESSION, secret)
    take_back(response, VISIT)
    if request.is_secure and not current_app.config["DEMO"] and (found := site()) is not None:
        found.somebody_signed_in(moment(current.now()))

    return response


def sign_in_page(fault: str = "", name: str = "", status: int = 200) -> Response:
    """The names of who has signed in on this device; of everybody, where all is a demonstration."""
    known = current.accounts().on_device(current.device())
    if current_app.config["DEMO"]:
        known = [one for one in current.accounts().all() if one.active]
    names = [one.name for one in known]
    return page("web/sign_in.html", frame_of("Sign in"), status, names=names, fault=fault,
                chosen=name if name in names else "", typed="" if name in names else name,
                next=way_inside(request.values.get("next", "")))


def new_pin_page(**faults: str) -> Response:
    return page("web/new_pin.html", frame_of("New PIN", back="/sign-in", back_words="Back to sign in"),
                422 if faults else 200, faults=defaultdict(str, faults), code=request.form.get("code", ""))


def span(seconds: int) -> str:
    """A time to wait, in words.

    Example:
        >>> span(20), span(61), span(900)
        ('20 seconds', '2 minutes', '15 minutes')
    """
    if seconds < 60:
        return f"{seconds} second" + ("s" if seconds > 1 else "")
    minutes = -(-seconds // 60)

    return f"{minutes} minute" + ("s" if minutes > 1 else "")
