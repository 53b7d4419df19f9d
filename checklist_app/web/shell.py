"""What lets a phone open the app with no network: service worker, shell, and the paper by which it is installed."""

import json
from typing import Any

from flask import Blueprint, Response, jsonify, make_response

from checklist_app.shipped import shipped
from checklist_app.web.access import everybody
from checklist_app.web.engine import true_addresses
from checklist_app.web.floors import VENDORED, digest_of_sources
from checklist_app.web.pages import frame_of, page
from checklist_app.web.static import ASK_AGAIN, edition, own_files

SCRIPT = "js/sw.js"
NOT_KEPT = (SCRIPT, "icon-512.png")
"""The service worker keeps itself; the large icon is for the home screen only."""
KEPT = (".css", ".js", ".svg", ".png", ".woff2")
PAGES = ("/shell", "/shell/outbox")
NAME, SHORT_NAME = "Lifting checklist", "Checklist"
GROUND, CHALK = "#e3e9e1", "#0a4385"
ICONS = (("icon.svg", "any", "image/svg+xml"), ("icon-192.png", "192x192", "image/png"),
         ("icon-512.png", "512x512", "image/png"))

blueprint = Blueprint("shell", __name__)


@blueprint.get("/sw.js")
@everybody
def service_worker() -> Response:
    """The service worker, with the files of this edition before it: another edition is another service worker."""
    before = {"EDITION": f"{edition()}-{digest_of_sources()}", "FILES": files(), "ENGINE": engine_files()}
    lines = "".join(f"const {name} = {json.dumps(value)};\n" for name, value in before.items())
    response = make_response(lines + (shipped("static") / SCRIPT).read_text(encoding="utf-8"))
    response.mimetype = "text/javascript"
    response.headers["Cache-Control"] = ASK_AGAIN

    return response


def files() -> list[str]:
    """What a phone keeps from its first visit on: the pages that open anything, and all that they are made of."""
    kept = [name for name, path in own_files() if path.suffix in KEPT and name not in NOT_KEPT]

    return [*PAGES, *(f"/static/{edition()}/{name}" for name in kept)]


def engine_files() -> list[str]:
    """What the checks on a phone are made of."""
    engine, floors = (address.decode() for address in true_addresses().values())
    names = sorted(path.stem for path in (shipped("static") / VENDORED).glob("*.gz"))

    return [floors, *(engine + name for name in names)]


@blueprint.get("/shell")
@everybody
def shell() -> Response:
    """The same for everybody: it holds no name, and is filled on the phone."""
    return page("web/shell.html", of_nobody("Opening from this phone"))


@blueprint.get("/shell/outbox")
@everybody
def shell_outbox() -> Response:
    """What is kept on the phone, also where its checks do not start."""
    return page("web/shell_outbox.html", of_nobody("Kept on this phone"))


def of_nobody(title: str) -> dict[str, Any]:
    """A frame without a person: whose phone it is stands on the phone."""
    return frame_of(title, back="/today", back_words="Back") | {"person": None, "nav": (), "device": "", "token": ""}


@blueprint.get("/manifest.webmanifest")
@everybody
def manifest() -> Response:
    """What a phone shows on its home screen."""
    response: Any = jsonify(
        name=NAME, short_name=SHORT_NAME, start_url="/today", scope="/", display="standalone", id="/",
        background_color=GROUND, theme_color=GROUND,
        icons=[{"src": f"/static/{edition()}/{name}", "sizes": sizes, "type": kind, "purpose": "any"}
               for name, sizes, kind in ICONS],
    )
    response.mimetype = "application/manifest+json"
    response.headers["Cache-Control"] = ASK_AGAIN

    return response
