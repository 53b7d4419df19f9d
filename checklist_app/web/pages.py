"""Pages that stay on the server: the same frame and the same templates as those that travel."""

from typing import Any

from flask import Response, current_app, make_response, request

from checklist_app.checklists.answer import Request
from checklist_app.checklists.frame import frame
from checklist_app.checklists.render import render
from checklist_app.records.moments import moment
from checklist_app.records.notices import Notices
from checklist_app.web import current
from checklist_app.web.cookies import cookie
from checklist_app.web.security import CHANGES, form_token
from checklist_app.web.site import site

THEME = "theme"
DEMONSTRATION = "DEMONSTRATION. All is invented."
NOTHING = Notices((), {})


def asked() -> Request:
    """What a page needs to know of the request when it reads no form."""
    person = current.person()
    told = current.notices() if person is not None else NOTHING
    return Request(request.method, request.path, person=person, device=current.device(),
                   at=moment(current.now()), form_token=form_token(), theme=cookie(THEME),
                   mark=DEMONSTRATION if current_app.config["DEMO"] else "", https_way=https_way(),
                   alarms=told.alarms, notes=told.notes, after_seal=told.after_seal)


def https_way() -> str:
    """This page by https, if it came by http and https is in use."""
    origin = https_origin()
    return origin and origin + ("/" if request.method in CHANGES else request.full_path.rstrip("?"))


def https_origin() -> str:
    """Where everything may be done, if this request came by http and may not do everything; without a path."""
    found = site()
    if found is None or request.is_secure or not found.https_in_use:
        return ""

    return found.https("")


def is_fragment() -> bool:
    """Whether a part of a page was asked for; a page fetched by a link is whole, whoever fetched it."""
    headers = request.headers

    return "HX-Request" in headers and "HX-Boosted" not in headers and "HX-History-Restore-Request" not in headers


def frame_of(title: str, back: str = "", **more: Any) -> dict[str, Any]:
    """The frame of a page of this floor."""
    return frame(asked(), title, back=back, **more)


def page(template: str, frame_: dict[str, Any], status: int = 200, **context: Any) -> Response:
    response = make_response(render(template, page=frame_, **context), status)
    response.headers["Vary"] = "HX-Request"

    return response
