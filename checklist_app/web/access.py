"""Who may open what. Every view says so beside its name; one that does not say is not served at all."""

from collections.abc import Callable
from typing import Any, TypeVar
from urllib.parse import quote

from flask import Flask, Response, abort, current_app, g, redirect, request
from werkzeug.wrappers import Response as AnyResponse

from checklist_app.records.account_tables import ROLES
from checklist_app.web import current
from checklist_app.web.cookies import cookie, set_cookie
from checklist_app.web.security import CHANGES, SESSION

View = TypeVar("View", bound=Callable[..., Any])
NOBODY = "nobody"
WRITERS = ("rigger", "supervisor", "administrator")
KEEPERS = ("supervisor", "administrator")
DEVICE = "device"
DEVICE_DAYS = 400
BY_HTTPS = "https-"


def allowed(*reads: str, writes: tuple[str, ...] | None = None) -> Callable[[View], View]:
    """Roles that may open the view, and those that may send something to it (the same, unless said)."""
    def declare(view: View) -> View:
        view.reads = frozenset(reads)  # type: ignore[attr-defined]
        view.writes = frozenset(reads if writes is None else writes)  # type: ignore[attr-defined]
        return view
    return declare


everybody = allowed(NOBODY, *ROLES)
signed_in = allowed(*ROLES)
by_device = everybody
"""Of entries and parts: the device's credential decides, which the view itself asks for."""


def guard(app: Flask) -> None:
    app.before_request(identify)
    app.before_request(admit)


def refuse_undeclared(app: Flask) -> None:
    """Called once all routes stand.

    Raises:
        LookupError: If a route does not say who may open it.
    """
    silent = [rule.rule for rule in app.url_map.iter_rules() if not hasattr(app.view_functions[rule.endpoint], "reads")]
    if silent:
        raise LookupError(f"say with access.allowed(…) who may open: {', '.join(sorted(silent))}")


def identify() -> None:
    """Find the device and the sign-in by their cookies. A sign-in holds on its own device only, and on its own way:
    what somebody could read along by http opens nothing by https."""
    if request.blueprint in ("static_files", "engine"):
        return
    g.device = known_device(cookie(DEVICE))
    secret = cookie(SESSION)
    comes_right = secret and secret.startswith(BY_HTTPS) == request.is_secure
    found = current.sessions().find(secret, current.now()) if comes_right else None
    g.account = found.person if found is not None and found.device == g.device else None


def known_device(credential: str) -> str:
    """The device with this credential; a revoked one signs nobody in any more."""
    devices = current.store().devices
    name = devices.find(credential) if credential else None

    return name if name is not None and not devices.is_revoked(name) else ""


def admit() -> AnyResponse | None:
    """Let the request through, send the visitor to sign in, or refuse."""
    if request.endpoint is None:
        return None
    view = current_app.view_functions[request.endpoint]
    permitted = view.writes if request.method in CHANGES else view.reads  # type: ignore[attr-defined]
    who = current.account()
    if (NOBODY if who is None else who.role) in permitted:
        return None
    if who is not None:
        abort(403)

    return to_sign_in()


def to_sign_in() -> AnyResponse:
    """A page can wait until somebody has signed in; what was sent cannot, and stays on the screen it was typed on."""
    if request.method in CHANGES:
        abort(401)
    if "HX-Request" in request.headers:
        return Response(status=204, headers={"HX-Redirect": sign_in_address()})

    return redirect(sign_in_address(), 303)


def sign_in_address() -> str:
    return "/sign-in?next=" + quote(request.full_path.rstrip("?"), safe="/")


def remember_device(response: AnyResponse, credential: str) -> None:
    set_cookie(response, DEVICE, credential, days=DEVICE_DAYS)


def way_inside(address: str) -> str:
    """An address of this server to go on to; anything else becomes the list of today's tasks."""
    inside = address.startswith("/") and not address.startswith(("//", "/\\")) and address.isprintable()
    return address if inside and "\\" not in address else "/today"
