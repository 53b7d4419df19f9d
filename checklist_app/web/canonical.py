"""Everybody ends up at the one https name: what a phone keeps belongs to the name under which it was kept.

Only the opening of a page is sent on. A form, an entry or a question of the page script is answered under the name that
it came to, so that nothing is lost on the way. A phone that has worked under the other name first empties what it keeps
there: it is shown a page that does so, and goes on from there by itself.
"""

from flask import Flask, Response, redirect, request
from werkzeug.wrappers import Response as AnyResponse

from checklist_app.web.access import DEVICE
from checklist_app.web.cookies import cookie
from checklist_app.web.pages import frame_of, page
from checklist_app.web.security import CHANGES
from checklist_app.web.site import Site, site
from checklist_app.web.tls.reach import plain_host

SIGN_IN = "/sign-in"
"""Whose sign-in has ended under the old name signs in there once more, to send what is kept there."""
NOT_FOR_GOOD = "no-store"
"""A browser would otherwise remember a 308 for ever, and the name may be changed."""


def send_on(app: Flask) -> None:
    app.before_request(to_the_one_name)


def to_the_one_name() -> AnyResponse | None:
    found = site()
    if found is None or not request.is_secure or plain_host(request.host) == found.name or not opens_a_page():
        return None
    if cookie(DEVICE):
        return None if request.path == SIGN_IN else moving(found)
    response = redirect(found.https(here()), 308)
    response.headers["Cache-Control"] = NOT_FOR_GOOD

    return response


def moving(found: Site) -> Response:
    response = page("web/moving.html", frame_of("One moment", back=""), name=found.name, href=found.https(here()))
    response.headers["Cache-Control"] = NOT_FOR_GOOD

    return response


def opens_a_page() -> bool:
    """Whether a browser opens a page with this request; browsers that do not say so ask for HTML, and not by htmx."""
    if request.method in CHANGES:
        return False
    mode = request.headers.get("Sec-Fetch-Mode")
    if mode is not None:
        return mode == "navigate"

    return "HX-Request" not in request.headers and "text/html" in request.headers.get("Accept", "")


def here() -> str:
    """The page that was asked for, with its question."""
    return request.full_path.rstrip("?")
