"""After a backup was put back nothing is sealed until a supervisor has looked."""

from flask import Blueprint, Response, redirect
from werkzeug.wrappers import Response as AnyResponse

from checklist_app.web import current, sealing
from checklist_app.web.access import KEEPERS, allowed
from checklist_app.web.pages import frame_of, page

blueprint = Blueprint("sealing_pages", __name__)
keepers = allowed(*KEEPERS)


@blueprint.get("/sealing")
@keepers
def show() -> Response:
    made = frame_of("Sealing", back="/records", back_words="Back to the records")
    return page("web/sealing.html", made, waits=current.store().sealing_waits)


@blueprint.post("/sealing")
@keepers
def go_on() -> AnyResponse:
    """Somebody has looked: what was closed meanwhile is sealed now."""
    current.store().let_sealing_go_on()
    sealing.seal_what_was_left()

    return redirect("/sealing", 303)
