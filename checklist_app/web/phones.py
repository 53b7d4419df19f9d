"""Phones for an administrator: whose, when last in touch, who signs on them alone; and a lost one is shut out."""

from flask import Blueprint, Response, abort, redirect
from werkzeug.wrappers import Response as AnyResponse

from checklist_app.checklists.words import listed
from checklist_app.records.phones import phones
from checklist_app.web import current
from checklist_app.web.access import allowed
from checklist_app.web.pages import frame_of, page

blueprint = Blueprint("phones", __name__, url_prefix="/phones")
administrators = allowed("administrator")


@blueprint.get("")
@administrators
def show() -> Response:
    lines = [{"name": one.name, "people": listed(one.people), "signers": listed(one.signers), "last": one.last,
              "revoked": one.revoked, "this": one.name == current.device()} for one in phones(current.store())]
    return page("web/people/phones.html", frame_of("Phones", back="/people", back_words="Back to people"), lines=lines)


@blueprint.post("/<name>/revoke")
@administrators
def revoke(name: str) -> AnyResponse:
    """A lost phone: nobody is signed in on it any more, its keys sign nothing, what it still brings is marked."""
    if name == current.device():
        abort(409, "This is the device you are using. Revoke it from another one.")
    if all(one.name != name for one in phones(current.store())):
        abort(404, "There is no such phone.")
    current.store().devices.revoke(name)
    current.store().keys.end_of_device(name, current.now())

    return redirect("/phones", 303)
