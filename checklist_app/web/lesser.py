"""http, once https is in use: enter and check only.

Whoever shares the network can read along and change what goes by http. So nothing is signed, begun or administered
there; entering, checking, stopping, taking gear out of use and delivering what a phone holds go on.
"""

from flask import Flask, request
from werkzeug.wrappers import Response as AnyResponse

from checklist_app.checklists.lesser import OPEN, THEN, TITLE, WHAT
from checklist_app.checklists.lesser import needs_https as asks_for_https
from checklist_app.web.canonical import here
from checklist_app.web.pages import frame_of, is_fragment, page
from checklist_app.web.security import CHANGES
from checklist_app.web.site import site

ENTERING = frozenset({"travelling", "sign_in", "start", "entries", "static_files", "trust"})
"""Blueprints that take something by http."""
SAFETY = frozenset({"item_actions.quarantine", "parity.put", "parity.put_fault"})
"""Gear is taken out of use from anywhere, and a phone that computes otherwise says so."""
PIN = "pin"
TRUST = {"href": "/trust", "words": "How a phone comes to trust it"}


def stand_in_the_way(app: Flask) -> None:
    app.before_request(refuse_what_needs_https)


def refuse_what_needs_https() -> AnyResponse | None:
    found = site()
    if found is None or not found.https_in_use or request.is_secure or request.endpoint is None or not needs_https():
        return None
    place = here() if request.method not in CHANGES else request.path
    way = {"href": found.https(place), "words": OPEN, "move": True}
    if is_fragment():
        return page("checklist/_refused.html", frame_of(TITLE, back=""), 403, what=WHAT, then=THEN, way=way)

    return page("web/needs_https.html", frame_of(TITLE), 403, what=WHAT, then=THEN, ways=(way, TRUST))


def needs_https() -> bool:
    if request.blueprint == "travelling":
        return asks_for_https(request.path, request.values.get("act", "")) or PIN in request.form

    return request.method in CHANGES and request.blueprint not in ENTERING and request.endpoint not in SAFETY
