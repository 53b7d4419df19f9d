"""What a phone is told: everything it needs to go on alone, since it last asked."""

import re
from typing import Any

from flask import Blueprint, Response, abort, jsonify, request

from checklist_app.records import outgoing
from checklist_app.records.code import code
from checklist_app.records.moments import moment
from checklist_app.records.store import SetBack
from checklist_app.web import current
from checklist_app.web.access import by_device
from checklist_app.web.entries import device_of_request
from checklist_app.web.pages import https_origin
from checklist_app.web.site import site
from checklist_app.web.trust import page_address

DIGEST = re.compile(r"[0-9a-f]{64}")
MOST_WANTED = 50
HIGHEST = 2**53

blueprint = Blueprint("news", __name__)


@blueprint.get("/entries")
@by_device
def news() -> Response:
    """One page after the phone's cursor. Only for a phone on which somebody is signed in."""
    name = device_of_request()
    devices = current.store().devices
    if devices.is_revoked(name) or not any(devices.signed_in(name).values()):
        abort(401, "Nobody is signed in on this phone: sign in on it.")
    try:
        page = outgoing.outgoing(current.store(), cursor(), wanted())
    except SetBack as error:
        abort(409, f"{error}.")
    keys = current.store().keys
    keys.heard(name, page.cursor["number"], current.now())
    told = current.notices()

    return jsonify(
        alarms=told.alarms, notes=told.notes, after_seal=told.after_seal, https=https_origin(),
        keys=sorted({*keys.good(name).values(), *keys.locks(name).values()}),
        entries=[{"number": number, "body": body} for number, body in page.entries], powerless=page.powerless,
        parts=page.parts, cursor=page.cursor, more=page.more,
        sealed=outgoing.sealed_lately(current.store(), current.now()), people=outgoing.people(current.store()),
        trust=trust_address(), device=name, counted=current.store().next_counter(name) - 1, code=code(),
        now=moment(current.now()),
    )


def trust_address() -> str:
    """Where this phone finds out what is wrong with the certificate, by http; nothing without https."""
    found = site()
    return "" if found is None else page_address(found)


def cursor() -> dict[str, Any]:
    """How far the phone says it is; from the start if it says nothing."""
    said = request.args.get("number", "0")
    if not (said.isascii() and said.isdigit()) or int(said) >= HIGHEST:
        abort(400, "The number of a cursor is a whole number.")

    return {"number": int(said), "head": request.args.get("head", "")}


def wanted() -> tuple[str, ...]:
    """Parts that the phone has heard of and does not have."""
    return tuple(DIGEST.findall(request.args.get("wanted", ""))[:MOST_WANTED])
