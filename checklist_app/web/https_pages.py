"""What an administrator sees of the certificates, and where he says that https is used from now on."""

from flask import Blueprint, Response, abort, redirect, request
from werkzeug.wrappers import Response as AnyResponse

from checklist_app.records.moments import moment
from checklist_app.web import current
from checklist_app.web.access import allowed
from checklist_app.web.pages import frame_of, page
from checklist_app.web.site import site
from checklist_app.web.tls.certificates import address
from checklist_app.web.trust import OFF

ADDRESS = "/security"
BY_HTTPS_ONLY = "Open this page by https first: so you know that it works before http does less."

blueprint = Blueprint("https_pages", __name__)
administrators = allowed("administrator")


@blueprint.get(ADDRESS)
@administrators
def show() -> Response:
    found = site()
    if found is None:
        return page("web/trust/off.html", frame_of("Security", back="/people", back_words="Back to people"), what=OFF)

    return page("web/security.html", frame_of("Security", back="/people", back_words="Back to people"),
                facts=found.certificates.facts(current.now()), https=found.https(), here=found.https(ADDRESS),
                said=found.said, in_use=found.https_in_use, secure=request.is_secure, urls=found.http_urls,
                fixed=address(found.name) is not None, heard=found.announced, unheard=found.not_announced)


@blueprint.post(ADDRESS)
@administrators
def say() -> AnyResponse:
    """Whether http is for entering and checking only. Said by https, so that nobody locks everybody out."""
    found = site()
    if found is None:
        abort(409, OFF)
    if not request.is_secure:
        abort(409, BY_HTTPS_ONLY)
    account = current.account()
    found.say(request.form.get("https") == "only", moment(current.now()), account.name)  # type: ignore[union-attr]

    return redirect(ADDRESS, 303)
