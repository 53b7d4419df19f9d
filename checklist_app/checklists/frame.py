"""What every page carries around its content: bar, sync state, theme, token, who and which device."""
import re
from typing import Any

from checklist_app.checklists.answer import Answer, Request
from checklist_app.checklists.render import render

ALL_CONFIRMED = {"state": "confirmed", "words": "all confirmed"}
INSIDE = re.compile(r"/[A-Za-z0-9][^\s\\]*")
THEMES = ("light", "dark", "sunlight")
EVALUATED_BY = {"server": "Checks worked out by the server.", "phone": "Checks worked out on this phone."}
NAVIGATION = (("/today", "Today"), ("/records", "Records"), ("/registers", "Registers"))
FOR_ADMINISTRATORS = (("/people", "People"), ("/security", "Security"))


def frame(request: Request, title: str, where: str = "", note: str = "", back: str = "/today",
          back_words: str = "Back to today") -> dict[str, Any]:
    """The `page` of layout.html. An empty `back` shows the bob that leads to today."""
    return {
        "title": title,
        "where": where or title,
        "note": note,
        "back": back,
        "back_words": back_words,
        "sync": ALL_CONFIRMED,
        "person": request.person,
        "theme": request.theme if request.theme in THEMES else "",
        "token": request.form_token,
        "mark": request.mark,
        "https_way": request.https_way,
        "device": request.page_device or request.device,
        "path": request.path,
        "nav": navigation(request),
        "alarms": request.alarms if request.person is not None else (),
        "evaluated_by": EVALUATED_BY.get(request.evaluated_by, ""),
    }


def navigation(request: Request) -> tuple[dict[str, Any], ...]:
    """Where a signed-in person may go from every page of a desk."""
    if request.person is None:
        return ()
    ways = NAVIGATION + (FOR_ADMINISTRATORS if request.person.role == "administrator" else ())

    return tuple({"href": href, "words": words, "current": request.path.startswith(href)} for href, words in ways)


def whole(request: Request, template: str, page: dict[str, Any], status: int = 200, **context: Any) -> Answer:
    """A page, or the fragment that is asked for: both come from one address, so caches must tell them apart."""
    html = render(template, page=page, **context)
    return Answer(status, html, headers={"Vary": "HX-Request"})


def go_to(location: str, **kept: Any) -> Answer:
    """After a plain form: on to the next page, so that going back sends nothing twice."""
    return Answer(303, "", location=location, **kept)


def inside(address: str) -> str:
    """An address of our own pages, today's if somebody put another one there."""
    return address if INSIDE.fullmatch(address) else "/today"
