"""http, once https is in use: enter and check only. The same on the server and on a phone that answers by itself."""
from checklist_app.checklists.answer import Answer, Request
from checklist_app.checklists.plain import refused_by_http

BEGINNING = "/begin"
BY_PERSON = ("/go-on", "/guest")
SIGN = "sign"
TITLE = "This needs https"
WHAT = ("By http you can enter and check. Signing, beginning a task, going on after a stop and keeping registers need "
        "https here: by http, whoever shares the network could read your PIN or change what you sign.")
THEN = "Open this page by https. If your phone warns you there, it does not trust this workshop yet."
OPEN = "Open by https"


def needs_https(path: str, act: str) -> bool:
    """Whether a page of a task is one on which a PIN is asked for, or somebody decides that work begins or goes on."""
    return path == BEGINNING or act == SIGN or path.endswith(BY_PERSON)


def by_https(request: Request) -> Answer | None:
    """What stands in the way of a page by http; nothing where it may be answered."""
    act = request.one("act") or request.query.get("act", "")
    if not request.https_way or not needs_https(request.path, act):
        return None
    return refused_by_http(request, TITLE, WHAT, THEN, (request.https_way, OPEN))
