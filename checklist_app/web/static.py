"""Style sheets, scripts and faces, under an address that changes with their content."""

import hashlib
from functools import cache
from pathlib import Path

from flask import Blueprint, Response, make_response, send_from_directory

from checklist_app.shipped import shipped
from checklist_app.web.access import everybody

FOR_GOOD = "public, max-age=31536000, immutable"
ASK_AGAIN = "no-cache"

blueprint = Blueprint("static_files", __name__)


@cache
def edition() -> str:
    """Digest over every static file, short: a new edition of one file is a new address for all."""
    folder = shipped("static")
    total = hashlib.sha256()
    for path in sorted(found for found in folder.rglob("*") if found.is_file()):
        total.update(path.relative_to(folder).as_posix().encode() + b"\0" + path.read_bytes() + b"\0")

    return total.hexdigest()[:12]


def with_edition(response: Response) -> Response:
    """Pages name plain addresses, because they are also made where nobody knows the edition; it is put in here."""
    if response.mimetype == "text/html" and not response.direct_passthrough:
        response.set_data(response.get_data().replace(b'="/static/', b'="/static/' + edition().encode() + b"/"))

    return response


@blueprint.get("/static/<path:name>")
@everybody
def static_file(name: str) -> Response:
    """One file. The edition in front of its name is left out, and only the right one may be kept for good."""
    first, _, rest = name.partition("/")
    versioned = len(first) == len(edition()) and not Path(shipped("static"), first).exists()
    response = make_response(send_from_directory(shipped("static"), rest if versioned else name))
    response.headers["Cache-Control"] = FOR_GOOD if first == edition() else ASK_AGAIN

    return response
