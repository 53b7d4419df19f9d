"""How a phone comes to trust this workshop: the root certificate, its fingerprint, and the steps for each system."""

import segno
from flask import Blueprint, Response, abort, make_response, request
from markupsafe import Markup

from checklist_app.web import current
from checklist_app.web.access import everybody
from checklist_app.web.pages import frame_of, page
from checklist_app.web.site import Site, site
from checklist_app.web.tls.certificates import address

ADDRESS = "/trust"
FILE = "workshop-root.crt"
MIME = "application/x-x509-ca-cert"
QUIET_MODULES = 4
OFF = "This server answers by http only: it was started so."

blueprint = Blueprint("trust", __name__)


@blueprint.get(ADDRESS)
@everybody
def show() -> Response:
    found = site()
    if found is None:
        return page("web/trust/off.html", frame_of("https", back="/", back_words="Back to the first page"), what=OFF)
    here = page_address(found)
    facts = found.certificates.facts(current.now())

    return page("web/trust/page.html", frame_of("Trust this workshop", back="/", back_words="Back to the first page"),
                facts=facts, file=f"{ADDRESS}/{FILE}" if found.certificates.root_file else "", here=here,
                code=code_of(here), https=found.https(), secure=request.is_secure, in_use=found.https_in_use,
                fixed=address(found.name) is not None, name=found.name, unheard=found.not_announced)


@blueprint.get(f"{ADDRESS}/{FILE}")
@everybody
def root_file() -> Response:
    """The workshop's root, of a kind that phones offer to install."""
    found = site()
    if found is None or not found.certificates.root_file:
        abort(404, "There is no root of this workshop here: its certificate comes from elsewhere, or https is off.")
    response = make_response(found.certificates.root_file)
    response.headers["Content-Type"] = MIME
    response.headers["Content-Disposition"] = f'attachment; filename="{FILE}"'

    return response


def page_address(found: Site) -> str:
    """Where another phone finds this page: by http, which needs no trust yet."""
    if not request.is_secure or not found.http_urls:
        return request.host_url.rstrip("/") + ADDRESS

    return found.http_urls[0] + ADDRESS


def code_of(url: str) -> Markup:
    """An address as a QR code, dark on light whatever the screen."""
    return Markup(segno.make(url, micro=False).svg_inline(border=QUIET_MODULES, omitsize=True, dark="#000",
                                                          light="#fff", svgclass="code-picture", lineclass=None))
