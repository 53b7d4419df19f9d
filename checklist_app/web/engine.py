"""The engine of the phone and the floors it runs, each under an address that holds the digest of its content."""

import gzip
from functools import cache
from pathlib import Path

from flask import Blueprint, Response, abort, make_response, request

from checklist_app.shipped import shipped
from checklist_app.web.access import everybody
from checklist_app.web.floors import FLOORS, VENDORED, current_name, engine_name, source_name, source_zip

FOR_GOOD = "public, max-age=31536000, immutable"
TYPES = {
    ".mjs": "text/javascript", ".js": "text/javascript", ".wasm": "application/wasm", ".zip": "application/zip",
    ".json": "application/json",
}
PRESSED = (("br", ".br"), ("gzip", ".gz"))
"""The smallest first. Over plain http no browser asks for br."""
PLAIN_ENGINE, PLAIN_FLOORS = "/static/engine/pyodide/", "/static/engine/floors.zip"
"""What the pages name, because they are also made where nobody knows the digests."""

blueprint = Blueprint("engine", __name__)


def true_addresses() -> dict[bytes, bytes]:
    """The plain addresses, and those that hold a digest."""
    return {PLAIN_ENGINE.encode(): f"/static/engine/pyodide-{engine_name()}/".encode(),
            PLAIN_FLOORS.encode(): f"/static/engine/{current_name()}".encode()}


@blueprint.get("/static/engine/pyodide-<digest>/<name>")
@everybody
def engine_file(digest: str, name: str) -> Response:
    """One file of the vendored engine. A page of an earlier version that asks for its own engine finds none."""
    if digest != engine_name() or not name.replace("-", "").replace(".", "").replace("_", "").isalnum():
        abort(404)

    return pressed(shipped("static") / VENDORED / name)


@blueprint.get("/static/engine/<name>")
@everybody
def floors_file(name: str) -> Response:
    """Our floors: compiled where the release build fits, else their sources."""
    if name == source_name():
        return ready(pressed_sources(), "gzip", ".zip") if accepts("gzip") else ready(source_zip(), "", ".zip")
    if name != current_name():
        abort(404)

    return pressed(shipped("static") / FLOORS / name)


def pressed(path: Path) -> Response:
    """The smallest form that the browser takes. The plain file is not kept: it is what the pressed one holds."""
    small = path.with_name(f"{path.name}.gz")
    if not small.is_file():
        abort(404)
    for coding, suffix in PRESSED:
        if accepts(coding):
            return ready(path.with_name(path.name + suffix).read_bytes(), coding, path.suffix)

    return ready(gzip.decompress(small.read_bytes()), "", path.suffix)


def accepts(coding: str) -> bool:
    return bool(request.accept_encodings[coding])


def ready(data: bytes, coding: str, suffix: str) -> Response:
    response = make_response(data)
    response.mimetype = TYPES[suffix]
    response.headers["Cache-Control"] = FOR_GOOD
    response.headers["Vary"] = "Accept-Encoding"
    if coding:
        response.headers["Content-Encoding"] = coding

    return response


@cache
def pressed_sources() -> bytes:
    return gzip.compress(source_zip(), 9, mtime=0)
