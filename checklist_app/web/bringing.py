"""A file that a phone saved as its last resort is brought in: by who made the entries, or by a supervisor."""

import base64
import binascii
import json
from collections import Counter
from collections.abc import Iterator
from typing import Any

from flask import Blueprint, Response, request

from checklist_app.checklists.entry import trusted
from checklist_app.records.door import CONFIRMED, LARGEST_BATCH
from checklist_app.records.moments import moment
from checklist_app.records.parts import NotThatPart
from checklist_app.web import current
from checklist_app.web.access import KEEPERS, WRITERS, allowed
from checklist_app.web.pages import frame_of, page
from checklist_app.web.sealing import seal_what_closed

FIELD = "file"
NO_FILE = "Choose the file that the phone saved."
NOT_OURS = "This is no file that a phone saved here. Nothing was taken from it."

blueprint = Blueprint("bringing", __name__)


@blueprint.get("/import")
@allowed(*WRITERS)
def show() -> Response:
    return brought_page()


@blueprint.post("/import")
@allowed(*WRITERS)
def bring() -> Response:
    """Photographs first, then entries, each answered for itself. The same file again changes nothing."""
    file = request.files.get(FIELD)
    if file is None or not file.filename:
        return brought_page(NO_FILE)
    try:
        said = json.loads(file.stream.read())
        items, photos = list(said["entries"]), list(said.get("photos", ()))
    except (ValueError, KeyError, TypeError, RecursionError):
        return brought_page(NOT_OURS)
    refused = [words for photo in photos if (words := keep_photo(photo))]
    answers = [answer for batch in batches(items) for answer in put(batch)]
    refused += [answer.get("words", "no entry") for answer in answers if answer["state"] != CONFIRMED]

    return brought_page(taken=len([answer for answer in answers if answer["state"] == CONFIRMED]),
                        photos=len(photos), refused=Counter(refused).most_common())


def put(batch: list[Any]) -> list[dict[str, Any]]:
    """One batch through the door by which phones bring theirs; a supervisor answers for what others said."""
    who = current.account()
    vouched = who is not None and who.role in KEEPERS
    answers = current.store().put(current.device(), batch, moment(current.now()), vouched)
    current.changed()
    seal_what_closed(trusted(item["body"].encode()) for item, answer in zip(batch, answers, strict=True)
                     if answer["state"] == CONFIRMED)

    return answers


def batches(items: list[Any]) -> Iterator[list[Any]]:
    for start in range(0, len(items), LARGEST_BATCH):
        yield items[start:start + LARGEST_BATCH]


def keep_photo(photo: Any) -> str:
    """Why a photograph was not taken; empty when it was."""
    try:
        current.store().parts.put(str(photo["digest"]), base64.b64decode(photo["data"], validate=True))
    except NotThatPart as error:
        return f"a photograph: {error}"
    except (KeyError, TypeError, binascii.Error, ValueError):
        return "a photograph that cannot be read"

    return ""


def brought_page(fault: str = "", **told: Any) -> Response:
    frame = frame_of("Bring a file", back="/today", back_words="Back to today")
    return page("web/bring.html", frame, 422 if fault else 200, fault=fault, told=told)
