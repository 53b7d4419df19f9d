"""Pages that say in words why there is nothing else to see."""
from urllib.parse import quote, urlencode

from checklist_app.checklists.answer import Answer, Request
from checklist_app.checklists.frame import frame, whole

TODAY = ("/today", "Go to today")
START = ("/", "Go to the first page")
NO_STAGE = "This task has no such stage."


def missing(request: Request, what: str) -> Answer:
    """Nothing lies under this address."""
    return _plain(request, 404, "Not found", what, "Check the address, or start from today.", TODAY)


def needs_server(request: Request) -> Answer:
    """A page that only the server has, asked for where it cannot be reached."""
    return _plain(request, 503, "This page needs the server", "The server cannot be reached from this phone now.",
                  "Tasks go on here without it. What you entered is kept on this phone.", TODAY)


def sign_in(request: Request) -> Answer:
    """Nobody is signed in, and this page needs somebody."""
    way = (f"/sign-in?next={quote(_asked(request), safe='')}", "Sign in")
    return _plain(request, 401, "Sign in first", "This page belongs to a task.",
                  "Your answers are kept under your name.", way)


def not_allowed(request: Request) -> Answer:
    """The account may look and not write."""
    return _plain(request, 403, "You may read here, not write", "An auditor changes nothing.",
                  "Ask a rigger or a supervisor to make the entry.", TODAY)


def sealed(request: Request, record: str) -> Answer:
    """The task is closed for good; its record can be read."""
    return _plain(request, 409, "This task is sealed", "Nothing can be entered any more.",
                  "What comes later is written as a supplement to its record.",
                  (f"/records/{record}", "Open the record"))


def refused(request: Request, what: str, then: str, way: tuple[str, str] = TODAY, status: int = 409) -> Answer:
    """Something stands against what was asked."""
    return _plain(request, status, "This cannot be done now", what, then, way)


def arrived(request: Request) -> Answer:
    """A form came again because its answer was lost: it was carried out then, and is not once more."""
    task = request.path.split("/")[2] if request.path.startswith("/tasks/") else ""
    way = (f"/tasks/{task}", "Back to the task") if task else TODAY
    return _plain(request, 200, "This arrived already", "Only the answer to it was lost. It is kept once.",
                  "Go on from there.", way)


def refused_by_http(request: Request, title: str, what: str, then: str, way: tuple[str, str]) -> Answer:
    """Whoever shares the network could read along."""
    return _plain(request, 403, title, what, then, way)


def _asked(request: Request) -> str:
    """The address with all that was typed into it."""
    return f"{request.path}?{urlencode(request.query)}" if request.query else request.path


def _plain(request: Request, status: int, title: str, what: str, then: str, way: tuple[str, str]) -> Answer:
    page = frame(request, title, back="" if request.person is None else "/today")
    template = "checklist/_refused.html" if request.fragment else "checklist/plain.html"
    return whole(request, template, page, status, what=what, then=then, way={"href": way[0], "words": way[1]})
