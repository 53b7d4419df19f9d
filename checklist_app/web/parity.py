"""Phones bring what they worked out; an administrator sees where it was something else than here."""

import json

import peewee as p
from flask import Blueprint, Response, abort, jsonify, redirect, request
from werkzeug.wrappers import Response as AnyResponse

from checklist_app.records.key_tables import Comparison
from checklist_app.records.parity import DIFFERS, EQUAL, SMALL, NoClaim, compare
from checklist_app.records.phone_faults import FAULT, note_fault
from checklist_app.web import current
from checklist_app.web.access import allowed, by_device
from checklist_app.web.entries import device_of_request
from checklist_app.web.pages import frame_of, page

FEW = 50

blueprint = Blueprint("parity", __name__, url_prefix="/parity")
administrators = allowed("administrator")


@blueprint.put("")
@by_device
def put() -> Response:
    """One evaluation by a phone, with all that it was made from."""
    name = device_of_request()
    try:
        said = json.loads(request.get_data())
        outcome = compare(current.store(), said.get("claim"), name, str(said.get("code", "")), current.now())
    except (NoClaim, ValueError, RecursionError, AttributeError) as error:
        abort(422, f"{error}.")

    return jsonify(outcome=outcome)


@blueprint.put("/fault")
@by_device
def put_fault() -> Response:
    """The checks of a phone failed over their own build: what they said, and which code it was."""
    name = device_of_request()
    try:
        said = json.loads(request.get_data())
        words, code = str(said.get("words", "")), str(said.get("code", ""))
    except (ValueError, RecursionError, AttributeError):
        abort(422, "A fault is told in words.")
    note_fault(current.store(), words, name, code, current.now())

    return jsonify(outcome=FAULT)


@blueprint.get("")
@administrators
def show() -> Response:
    """How often both agreed, every evaluation that differed, and where the checks of a phone failed."""
    db = current.store().database
    counts = (Comparison.select(Comparison.outcome, p.fn.COUNT(Comparison.digest)).group_by(Comparison.outcome)
              .tuples().execute(db))
    found = (Comparison.select().where(Comparison.outcome.in_((DIFFERS, FAULT)))
             .order_by(Comparison.looked_by, Comparison.at.desc()).limit(FEW).execute(db))
    made = frame_of("Phone and server", back="/people", back_words="Back to people")
    counted = {EQUAL: 0, SMALL: 0, DIFFERS: 0, FAULT: 0} | dict(counts)

    return page("web/parity.html", made, counts=counted, lines=list(found))


@blueprint.post("/<digest>/looked")
@administrators
def looked(digest: str) -> AnyResponse:
    """Somebody has found out why: the words leave the task."""
    account = current.account()
    Comparison.update(looked_by=account.person if account else "").where(
        Comparison.digest == digest, Comparison.outcome.in_((DIFFERS, FAULT))).execute(current.store().database)

    return redirect("/parity", 303)
