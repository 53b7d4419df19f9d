"""Style sheets, scripts and faces, under an address that changes with their content."""

import gzip
import hashlib
import re
from collections.abc import Iterator
from functools import cache, lru_cache
from pathlib import Path

from flask import Blueprint, Response, make_response, request, send_from_directory
from werkzeug.security import safe_join

from checklist_app.shipped import shipped
from checklist_app.web.access import everybody
from checklist_app.web.engine import FOR_GOOD, PLAIN_ENGINE, PLAIN_FLOORS, accepts, true_addresses
from checklist_app.web.floors import FLOORS, VENDORED

ASK_AGAIN = "no-cache"
BY_THEIR_OWN_DIGEST = (VENDORED, FLOORS)
TEXTS = {".css": "text/css", ".js": "text/javascript", ".svg": "image/svg+xml"}
ADDRESS = re.compile(rf'="({re.escape(PLAIN_ENGINE)}|{re.escape(PLAIN_FLOORS)}|/static/)'.encode())

blueprint = Blueprint("static_files", __name__)


@cache
def edition() -> str:
    """Digest over every static file, short: a new edition of one file is a new address for all."""
    total = hashlib.sha256()
    for name, path in own_files():
        total.update(name.encode() + b"\0" + path.read_bytes() + b"\0")

    return total.hexdigest()[:12]


def own_files() -> Iterator[tuple[str, Path]]:
    """Every static file by its name, but for the engine and its floors: those have digests of their own."""
    folder = shipped("static")
    for path in sorted(found for found in folder.rglob("*") if found.is_file()):
        name = path.relative_to(folder).as_posix()
        if not name.startswith(tuple(f"{own}/" for own in BY_THEIR_OWN_DIGEST)):
            yield name, path


def with_edition(response: Response) -> Response:
    """Pages name plain addresses, because they are also made where nobody knows the edition; it is put in here."""
    if response.mimetype == "text/html" and not response.direct_passthrough:
        response.set_data(ADDRESS.sub(true_address, response.get_data()))

    return response


def true_address(found: re.Match[bytes]) -> bytes:
    return b'="' + true_addresses().get(found[1], f"/static/{edition()}/".encode())


@blueprint.get("/static/<path:name>")
@everybody
def static_file(name: str) -> Response:
    """One file. The edition in front of its name is left out, and only the right one may be kept for good."""
    first, _, rest = name.partition("/")
    versioned = len(first) == len(edition()) and not Path(shipped("static"), first).exists()
    response = file_or_its_small_form(rest if versioned else name)
    response.headers["Cache-Control"] = FOR_GOOD if first == edition() else ASK_AGAIN

    return response


def file_or_its_small_form(name: str) -> Response:
    """Texts go over the air pressed, where the browser takes that."""
    path = Path(safe_join(str(shipped("static")), name) or "")
    if path.suffix not in TEXTS or not path.is_file():
        return make_response(send_from_directory(shipped("static"), name))
    pressed = accepts("gzip")
    response = make_response(small(path, path.stat().st_mtime_ns) if pressed else path.read_bytes())
    response.mimetype = TEXTS[path.suffix]
    response.headers["Vary"] = "Accept-Encoding"
    if pressed:
        response.headers["Content-Encoding"] = "gzip"
    response.add_etag()

    return response.make_conditional(request)


@lru_cache(maxsize=256)
def small(path: Path, changed_ns: int) -> bytes:
    """The file pressed; pressed again only when it has changed."""
    return gzip.compress(path.read_bytes(), 9, mtime=0)
