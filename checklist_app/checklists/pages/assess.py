"""Assess a lift without signing in: numbers, drawing and verdict on one page. Nothing is kept."""
from collections.abc import Mapping
from typing import Any

from checklist_app.checklists.answer import Answer, Request, page
from checklist_app.checklists.assess_form import sections, shape
from checklist_app.checklists.assessing import assessed, operation
from checklist_app.checklists.checks_view import governing_of, seen
from checklist_app.checklists.example import example
from checklist_app.checklists.frame import frame, whole
from checklist_app.checklists.picture import HELD, picture
from checklist_app.checklists.typed_rig import refitted
from checklist_app.checklists.world import World
from checklist_app.operations.evaluate import assess as evaluate


@page("/assess", public=True)
def assess(request: Request, world: World) -> Answer:
    """The form with what was typed, and what comes of it. All of it travels in the address."""
    typed = refitted(example() if request.query.get("example") else _typed(request))
    read = assessed(typed, world.today)
    evaluation = evaluate(operation().table, read.task)
    found = sections(typed, read.faults)
    context: dict[str, Any] = {
        "governing": governing_of(evaluation), "checks": seen(evaluation),
        "picture": picture(evaluation, tallest=HELD), "shows_views": True,
        "asks": tuple(ask for section in found for ask in section.asks),
        "answered": (), "shrunk": (), "sections": found, "shape": shape(found),
    }
    status = 422 if read.faults else 200
    back = "/today" if request.person else "/"
    shown = frame(request, "Assess a lift", "Assess a lift", "Nothing is kept", back, "Back")
    if request.fragment:
        template = "_live_answer" if typed.get("shape") == context["shape"] else "_assess_answer"
        return whole(request, f"checklist/{template}.html", shown, status, **context)

    return whole(request, "checklist/assess.html", shown, status, **context, here="/assess",
                 operation=operation().name, cautions=operation().cautions)


def _typed(request: Request) -> Mapping[str, str]:
    """What was sent: by the address, or by a form without it."""
    return {**request.query, **{name: request.one(name) for name in request.form}}
