"""A person enrols on a phone: a key is made there, and its public half is registered here beside his PIN. On his own
phone its screen lock may be registered too, and signs in place of the PIN.

Only where the browser keeps secrets: by https, or on the machine itself.
"""

from typing import Any

from flask import Blueprint, Response, abort, jsonify, redirect, request
from werkzeug.wrappers import Response as AnyResponse

from checklist_app.checklists.authority import capacities
from checklist_app.checklists.signing import PHONE_KEY
from checklist_app.checklists.words import clock, sentence
from checklist_app.operations.settings import SIGNS_ALONE
from checklist_app.records.account_tables import Account
from checklist_app.records.accounts import TooSoon, WrongPin
from checklist_app.records.signature import NoPublicKey
from checklist_app.web import current, screen_locks
from checklist_app.web.access import WRITERS, allowed
from checklist_app.web.pages import frame_of, page
from checklist_app.web.sign_in import NO_SUCH, span

LOOPBACK = ("127.0.0.1", "localhost", "[::1]")
SIGNS_NOTHING = "Nobody of this name may sign anything today. The register of people says who may."
BY_HTTPS = "A phone keeps a key by https only. By http nobody enrols, and nothing is signed away from the server."
NO_SCRIPT = "The key is made by the page itself, and this browser did not let it. Nothing was registered."

blueprint = Blueprint("enrol", __name__)
writers = allowed(*WRITERS)


@blueprint.get("/enrol")
@writers
def show() -> Response:
    return enrol_page()


@blueprint.post("/enrol")
@writers
def enrol() -> AnyResponse:
    """The page sends name, PIN and the public half of the key that it made, and keeps what comes back."""
    if not keeps_secrets():
        return refused(BY_HTTPS, 403)
    signer = current.accounts().get(request.form.get("signer", ""))
    if signer is None or not signs_today(signer):
        return refused(SIGNS_NOTHING)
    try:
        current.accounts().check_pin(signer.person, request.form.get("pin", "").strip(), current.device(),
                                     current.now())
        key = current.store().keys.register(current.device(), signer.person, public(), current.now())
    except TooSoon as error:
        return refused(f"Too many wrong PINs. Try again in {span(error.wait_s)}.", 429)
    except WrongPin:
        return refused(NO_SUCH)
    except NoPublicKey:
        return refused(NO_SCRIPT)

    return jsonify(id=key, device=current.device(), person=person_data(signer), hours=round(SIGNS_ALONE.value),
                   ask=screen_locks.question(signer, key))


@blueprint.post("/enrol/lock")
@writers
def lock() -> AnyResponse:
    """What the phone's screen lock made beside the key that was registered just now."""
    keys = current.store().keys
    beside = keys.find(request.form.get("key", ""))
    try:
        made = screen_locks.answered(beside)
        key = keys.register_lock(beside, made, current.now())  # type: ignore[arg-type]
    except NoPublicKey as error:
        return refused(sentence(str(error)))

    return jsonify(id=key, how=made.how, credential=made.credential, rp_id=made.rp_id)


@blueprint.post("/enrol/end")
@writers
def end() -> AnyResponse:
    """Nobody is harmed by a key that ends: whoever holds the phone may end any of it."""
    current.store().keys.end_on(current.device(), request.form.get("person", ""), current.now())

    return redirect("/enrol", 303)


def enrol_page(fault: str = "", status: int = 200) -> Response:
    keys = {key.person: key for key in current.store().keys.all()
            if key.device == current.device() and key.how == PHONE_KEY and not key.ended_at}
    names = {one.person: one.name for one in current.accounts().all()}
    locks = current.store().keys.locks(current.device())
    here = [{"id": person, "name": names.get(person, person), "since": clock(key.made_at), "lock": person in locks}
            for person, key in keys.items()]
    account = current.account()
    no_lock = screen_locks.why_not(account.person if account else "")
    return page("web/enrol.html", frame_of("Sign without network", back="/today", back_words="Back to today"), status,
                signers=[one for one in current.accounts().all() if one.active and signs_today(one)], here=here,
                chosen=request.form.get("signer", "") or (account.person if account else ""), fault=fault,
                no_lock=no_lock, secure=keeps_secrets(), by_https=BY_HTTPS, hours=round(SIGNS_ALONE.value))


def refused(words: str, status: int = 422) -> AnyResponse:
    """To the page's script in words, to a form without script as a page."""
    if request.accept_mimetypes.best == "application/json":
        return jsonify(words=words), status  # type: ignore[return-value]

    return enrol_page(words, status)


def keeps_secrets() -> bool:
    """Whether browsers let a page of this address make and keep keys."""
    return request.is_secure or request.host.rsplit(":", 1)[0] in LOOPBACK


def signs_today(one: Account) -> bool:
    """Whether somebody is listed with a capacity that has not run out. An auditor signs nothing."""
    held = capacities(current.world(), one.person)
    return one.active and one.role != "auditor" and any(until >= current.today() for until in held.values())


def public() -> bytes:
    try:
        return bytes.fromhex(request.form.get("public", ""))
    except ValueError:
        abort(400, "The public half of a key is sent as hexadecimal text.")


def person_data(one: Account) -> dict[str, Any]:
    person = current.person_of(one)
    return {"id": person.id, "name": person.name, "role": person.role, "capacities": dict(person.capacities)}
