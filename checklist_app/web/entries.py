"""The one way in for what devices made themselves: entries, and the parts that they name."""

import json
from collections.abc import Iterator, Mapping
from contextlib import suppress
from typing import Any

from flask import Blueprint, Response, abort, jsonify, make_response, request

from checklist_app.checklists.entry import Entry, trusted
from checklist_app.records.clocks import clock_doubt, skew_s
from checklist_app.records.door import CONFIRMED, TooMany
from checklist_app.records.moments import moment
from checklist_app.records.parity import NoClaim, compare_statement
from checklist_app.records.parts import LARGEST_BYTES, NotThatPart
from checklist_app.records.proof import statement_in
from checklist_app.records.signing_phones import is_by_key
from checklist_app.records.store import SetBack
from checklist_app.web import current
from checklist_app.web.access import DEVICE, by_device, signed_in
from checklist_app.web.cookies import cookie
from checklist_app.web.sealing import seal_what_closed, seal_what_was_left
from checklist_app.web.security import form_token

LARGEST_BATCH_BYTES = 1024 * 1024
BEARER = "Bearer "
JPEG = b"\xff\xd8\xff"

blueprint = Blueprint("entries", __name__)


@blueprint.get("/device")
@signed_in
def device() -> Response:
    """What the page script needs to send entries and forms by itself. Only a page of ours can read it."""
    return jsonify(device=current.device(), credential=cookie(DEVICE), form_token=form_token())


@blueprint.put("/entries")
@by_device
def put_entries() -> Response:
    """One answer an item, in order: confirmed with its number, refused in words, or later."""
    name = device_of_request()
    batch = batch_of(request.get_data())
    if batch["cursor"]["number"]:
        refuse_unknown_cursor(batch["cursor"])
    try:
        answers = current.store().put(name, batch["entries"], moment(current.now()),
                                      present=current.sessions().people_on(name),
                                      clock=clock_doubt(skew_s(batch["now"], current.now())))
    except TooMany as error:
        abort(413, f"{error}: send half of it.")
    current.changed()
    kept = confirmed(batch["entries"], answers)
    for signed in signed_away(kept):
        with suppress(NoClaim):  # what cannot be evaluated was marked when it came
            compare_statement(current.store(), signed, name, current.now())
    seal_what_closed(kept)

    return jsonify(entries=answers, cursor=current.store().cursor())


@blueprint.put("/parts/<digest>")
@by_device
def put_part(digest: str) -> Response:
    """Bytes under their digest. The same bytes again change nothing; a closed task may have waited for them."""
    request.max_content_length = LARGEST_BYTES
    device_of_request()
    try:
        current.store().parts.put(digest, request.get_data())
    except NotThatPart as error:
        abort(422, f"{error}.")

    seal_what_was_left()

    return jsonify(part=digest)


@blueprint.get("/parts/<digest>")
@signed_in
def photo(digest: str) -> Response:
    """A photograph that was taken for a task or an item. Words, signatures and documents are not given out here."""
    data = current.store().parts.get(digest)
    if data is None or not data.startswith(JPEG):
        abort(404)
    response = make_response(data)
    response.headers["Content-Type"] = "image/jpeg"
    response.headers["Cache-Control"] = "private, max-age=3600"

    return response


def signed_away(entries: list[Entry]) -> Iterator[Mapping[str, Any]]:
    """Statements that were signed on a phone: their evaluations are the phone's own."""
    for entry in entries:
        found = statement_in(current.store().parts.get(entry.value["statement"])) if is_by_key(entry) else None
        if found is not None:
            yield found


def confirmed(items: list[Any], answers: list[dict[str, Any]]) -> list[Entry]:
    """The entries of a batch that are kept now."""
    return [trusted(item["body"].encode()) for item, answer in zip(items, answers, strict=True)
            if answer["state"] == CONFIRMED]


def device_of_request() -> str:
    """The device whose credential came with the request. A revoked one is heard, and what it brings is marked."""
    said = request.headers.get("Authorization", "")
    found = current.store().devices.find(said.removeprefix(BEARER)) if said.startswith(BEARER) else None
    if found is None:
        abort(401, "This device is not known here: sign in on it.")

    return found


def batch_of(data: bytes) -> dict[str, Any]:
    """What was sent, as far as its outer shape goes; each entry is looked at by itself later."""
    try:
        said = json.loads(data)
    except (ValueError, RecursionError):
        abort(400, "This is no batch of entries.")
    cursor = said.get("cursor") or {"number": 0, "head": ""} if isinstance(said, dict) else None
    if not is_cursor(cursor) or not isinstance(said.get("entries"), list):
        abort(400, "A batch has a cursor and a list of entries.")

    return {"cursor": cursor, "entries": said["entries"], "now": said.get("now")}


def is_cursor(said: Any) -> bool:
    return (isinstance(said, dict) and isinstance(said.get("head"), str)
            and isinstance(said.get("number"), int) and 0 <= said["number"] < 2**53)


def refuse_unknown_cursor(cursor: dict[str, Any]) -> None:
    """A server that was set back must be offered everything again."""
    try:
        current.store().since(cursor, limit=1)
    except SetBack as error:
        abort(409, f"{error}.")
