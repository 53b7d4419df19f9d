"""What protects every answer and every form: headers, the form's token, and where a request came from."""

import hashlib
import hmac
import secrets
from urllib.parse import urlsplit

from flask import Flask, Response, abort, g, request

from checklist_app.web.cookies import cookie, set_cookie

POLICY = "; ".join((
    "default-src 'self'",
    "script-src 'self' 'wasm-unsafe-eval'",
    "worker-src 'self'",
    "connect-src 'self'",
    "manifest-src 'self'",
    "img-src 'self' data: blob:",
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'self'",
    "frame-ancestors 'none'",
))
HEADERS = {
    "Content-Security-Policy": POLICY,
    "X-Content-Type-Options": "nosniff",
    "X-Frame-Options": "DENY",
    "Referrer-Policy": "same-origin",
}
PRIVATE = "private, no-cache"
LARGEST_UPLOAD_BYTES = 24 * 1024 * 1024
VISIT = "visit"
SESSION = "session"
TOKEN_FIELD = "form_token"
TOKEN_HEADER = "X-Form-Token"
CHANGES = frozenset({"POST", "PUT", "PATCH", "DELETE"})


def protect(app: Flask) -> None:
    app.before_request(greet)
    app.before_request(refuse_foreign_forms)
    app.after_request(dress)


def greet() -> None:
    """Everybody gets a secret of his own, even before signing in: the token of the forms hangs on it."""
    g.form_secret = cookie(SESSION) or cookie(VISIT)
    g.new_visit = ""


def form_token() -> str:
    """The token of this browser's forms. Whoever cannot read its cookie cannot make it."""
    if not g.form_secret:
        g.form_secret = g.new_visit = secrets.token_urlsafe(24)

    return hmac.new(g.form_secret.encode(), b"form", hashlib.sha256).hexdigest()


def challenge(about: str) -> bytes:
    """What a phone is to sign so that its answer is one to this browser, about this. `about` never comes twice."""
    return hmac.new(g.form_secret.encode(), f"challenge {about}".encode(), hashlib.sha256).digest()


def refuse_foreign_forms() -> None:
    """A form counts only when it comes from our own page; entries and parts carry their device's credential instead."""
    if request.method not in CHANGES:
        return
    if request.mimetype == "multipart/form-data":
        request.max_content_length = LARGEST_UPLOAD_BYTES
    if not from_our_own_page():
        abort(403, "The form came from another site.")
    if request.method == "POST" and not token_fits():
        abort(403, "This form is no longer good: it was opened before you signed in or out.")


def from_our_own_page() -> bool:
    """Whether the browser names us as the origin. Browsers name it with every change; PUT asks for it."""
    origin = request.headers.get("Origin")
    if origin is None:
        return request.method == "POST" and request.headers.get("Sec-Fetch-Site", "same-origin") == "same-origin"

    said = urlsplit(origin)

    return said.netloc == request.host and (said.scheme == "https" or not request.is_secure)


def token_fits() -> bool:
    given = request.headers.get(TOKEN_HEADER) or request.form.get(TOKEN_FIELD, "")

    return bool(g.form_secret) and hmac.compare_digest(given.encode(), form_token().encode())


def dress(response: Response) -> Response:
    """Headers for every answer, and the cookie that a first visit is given."""
    for name, value in HEADERS.items():
        response.headers[name] = value
    response.headers.setdefault("Cache-Control", PRIVATE)
    if g.get("new_visit"):
        set_cookie(response, VISIT, g.new_visit)

    return response
