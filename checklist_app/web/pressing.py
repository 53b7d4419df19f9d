"""Pages and lists go over the air pressed: behind the shed each kilobyte is waited for.

A pressed page could tell its form's token by its length to somebody who can make a browser fetch it again and again
with words of his own inside. Our cookies do not go along with what another site's page fetches: he sees no token.
"""

import gzip

from flask import Response

from checklist_app.web.engine import accepts

TYPES = ("text/html", "application/json", "text/javascript")
LEAST_BYTES = 1000
LEVEL = 6


def press(response: Response) -> Response:
    """The same answer, smaller; what is small already stays as it is."""
    if response.mimetype not in TYPES or response.direct_passthrough or "Content-Encoding" in response.headers:
        return response
    response.vary.add("Accept-Encoding")
    data = response.get_data()
    if len(data) < LEAST_BYTES or not accepts("gzip"):
        return response
    response.set_data(gzip.compress(data, LEVEL, mtime=0))
    response.headers["Content-Encoding"] = "gzip"

    return response
