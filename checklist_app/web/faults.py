"""What a refused or failed request reads like: what is wrong, what to do, and the way on."""

import errno
import logging

from flask import Flask, Response, jsonify, make_response, request
from werkzeug.exceptions import HTTPException

from checklist_app.checklists.frame import frame
from checklist_app.web import current
from checklist_app.web.pages import asked, is_fragment, page

WORDS = {
    400: ("This could not be read", "The request was not what a page of this app sends.", "Go back and try again."),
    401: ("Sign in first", "Your sign-in has ended, so nothing was kept.",
          "Go back: what you typed is still there. Sign in in another window, then open the page again."),
    403: ("This is not open to you", "Your role does not include it, or the form is no longer good.",
          "Open the page again. If it stays closed, ask an administrator."),
    404: ("Not found", "There is no page here.", "Check the address, or start from today."),
    405: ("This could not be read", "The page does not take what was sent.", "Open the page again."),
    409: ("This cannot be done now", "Something else was kept in the meantime.", "Open the page again and look."),
    413: ("Too large", "What was sent is larger than this app takes. A photo may have 8 MB.", "Send a smaller one."),
    415: ("This could not be read", "This kind of file is not taken.", "Send a photo as JPEG, PNG or WebP."),
    422: ("Look again", "Something in the form is missing or not allowed.", "Go back and correct it."),
    429: ("Wait a moment", "Too many tries in a short time.", "Wait, then try again."),
    500: ("The app has failed here", "This is a fault of the app, not yours. It was written down.",
          "Nothing was changed unless a page said so. Open the page again and look."),
    503: ("Wait a moment", "The server is busy with something else.", "Nothing was kept. Try again in a minute."),
    507: ("The disk is full", "The server's disk is full, so nothing more can be kept.",
          "Tell whoever runs the server. What was confirmed before is safe."),
}
OTHER = 400
FULL, LOCKED = "database or disk is full", "database is locked"
"""What the database says; it has no other name for it."""
log = logging.getLogger(__name__)


def explain(app: Flask) -> None:
    app.register_error_handler(HTTPException, refused)
    app.register_error_handler(RecursionError, too_deep)
    app.register_error_handler(Exception, failed)


def refused(error: HTTPException) -> Response:
    """Any refusal, in words; our own words when the code that refused gave some."""
    if error.code is None or error.code < 400:
        return make_response(error.get_response())
    own = error.description if error.description not in (None, type(error).description) else ""
    response = told(error.code, own or "")
    if error.code == 405:
        response.headers["Allow"] = ", ".join(error.valid_methods or ())  # type: ignore[attr-defined]

    return response


def too_deep(error: RecursionError) -> Response:
    """Brackets within brackets, thousands deep: nobody's entry looks like this."""
    log.warning("refused %s: nested too deep", request.path)
    return told(400, "It is nested too deep.")


def failed(error: Exception) -> Response:
    log.error("fault at %s %s", request.method, request.path, exc_info=error)
    return told(status_of(error), "")


def status_of(error: Exception) -> int:
    """Somebody can do something about a full disk; all else is ours to put right."""
    if FULL in str(error) or (isinstance(error, OSError) and error.errno == errno.ENOSPC):
        return 507
    return 503 if LOCKED in str(error) else 500


def told(status: int, own: str) -> Response:
    """The refusal as page, or as JSON for those who do not read pages."""
    title, what, then = WORDS.get(status, WORDS[500] if status >= 500 else WORDS[OTHER])
    if request.path.startswith(("/entries", "/parts/", "/device")):
        return make_response(jsonify(words=own or what, then=then), status)
    way = ("/today", "Go to today") if current.account() else ("/", "Go to the first page")
    if status == 401:
        way = ("/sign-in", "Sign in")

    template = "checklist/_refused.html" if is_fragment() else "checklist/plain.html"

    return page(template, frame(asked(), title, back=""), status,
                what=own or what, then=then, way={"href": way[0], "words": way[1]})
