"""Tasks that are closed and have no record yet: why, and what a supervisor can do about it."""

from flask import Blueprint, Response, redirect
from werkzeug.wrappers import Response as AnyResponse

from checklist_app.checklists import values
from checklist_app.checklists.values import parts_named
from checklist_app.records.account_tables import ROLES
from checklist_app.records.moments import moment
from checklist_app.records.seal import why_not
from checklist_app.web import current, keeping, record_view, sealing
from checklist_app.web.access import KEEPERS, allowed
from checklist_app.web.pages import frame_of, page

blueprint = Blueprint("waiting", __name__)


@blueprint.get("/records/waiting")
@allowed(*ROLES)
def show() -> Response:
    """Each with the reason; nothing here is lost, and it is tried again with everything that arrives."""
    at, who = moment(current.now()), current.account()
    rows = [{"task": task, "why": why_not(current.store(), task, at), "missing": len(missing(task))}
            for task in record_view.waiting()]
    made = frame_of("Closed, not sealed yet", back="/records", back_words="Back to records")

    return page("web/records/waiting.html", made, rows=rows, may=who is not None and who.role in KEEPERS)


@blueprint.post("/records/waiting/<task>/lost")
@allowed(*ROLES, writes=KEEPERS)
def lost(task: str) -> AnyResponse:
    """What has not arrived never will: the phone that held it is gone. The record names it."""
    if task in record_view.waiting():
        made = keeping.making()
        for number, part in enumerate(missing(task), 1):
            made.say(("task", task), (f"lost_{part[:16]}_{number}",), values.lost(part))
        keeping.keep_made(made)
        if record := sealing.sealed(task):
            return redirect(f"/records/{record}", 303)

    return redirect("/records/waiting", 303)


def missing(task: str) -> list[str]:
    """Digests of photographs and texts that entries of a task name and that are not here."""
    named = {part for entry in current.store().entries(("task", task)) for part in parts_named(entry.value)}
    return sorted(named - current.store().parts.here(named))
