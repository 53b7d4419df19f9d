"""Cookies that no script reads and no other site sends; those of https are none of http's.

Browsers keep one jar for all ports and both schemes of a host. A name beginning with `__Host-` is taken from https
only, so that nobody on the network can put one there, and what is signed in by http is not signed in by https.
"""

from flask import request
from werkzeug.wrappers import Response

SECURED = "__Host-"
DAY_S = 86_400


def name_here(name: str) -> str:
    """What the cookie is called on the way that the request came."""
    return SECURED + name if request.is_secure else name


def cookie(name: str) -> str:
    """What the browser brought under this name, empty if nothing."""
    return request.cookies.get(name_here(name), "")


def set_cookie(response: Response, name: str, value: str, days: int | None = None) -> None:
    age = None if days is None else days * DAY_S
    response.set_cookie(name_here(name), value, max_age=age, httponly=True, samesite="Lax", secure=request.is_secure,
                        path="/")


def take_back(response: Response, name: str) -> None:
    response.delete_cookie(name_here(name), httponly=True, samesite="Lax", secure=request.is_secure, path="/")
