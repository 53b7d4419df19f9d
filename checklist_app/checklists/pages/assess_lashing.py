"""Assess a lashing without signing in: on a pallet, or on a vehicle. Nothing is kept."""
from collections.abc import Callable, Mapping
from typing import Any

from checklist_app.checklists.answer import Answer, Request, page
from checklist_app.checklists.assess_form import shape
from checklist_app.checklists.checks_view import governing_of, seen
from checklist_app.checklists.frame import frame, whole
from checklist_app.checklists.lashing_example import example
from checklist_app.checklists.lashing_form import sections
from checklist_app.checklists.picture import HELD, picture
from checklist_app.checklists.procedure import newest
from checklist_app.checklists.typed_lashing import PALLET, VEHICLE, assessed
from checklist_app.checklists.world import World
from checklist_app.operations.catalogue import OPERATIONS
from checklist_app.operations.evaluate import assess as evaluate

ADDRESSES = {"/assess/pallet": (PALLET, "Assess a lashing on a pallet"),
             "/assess/vehicle": (VEHICLE, "Assess a lashing on a vehicle")}


def assess_page(address: str, name: str, title: str) -> Callable[..., Answer]:
    """The page of one operation."""
    def answer(request: Request, world: World) -> Answer:
        operation = OPERATIONS[name]
        typed = example(name) if request.query.get("example") else _typed(request)
        read = assessed(typed, name, world.today)
        evaluation, says = evaluate(operation.table, read.task), newest(name).says
        found = sections(typed, read.faults, name)
        context: dict[str, Any] = {
            "governing": governing_of(evaluation, says=says) if read.task.rows["lashing"] else None,
            "checks": seen(evaluation, says=says), "picture": picture(evaluation, tallest=HELD), "shows_views": True,
            "asks": tuple(ask for section in found for ask in section.asks), "answered": (), "shrunk": (),
            "sections": found, "shape": shape(found),
        }
        status = 422 if read.faults else 200
        shown = frame(request, title, title, "Nothing is kept", "/today" if request.person else "/", "Back")
        if request.fragment:
            template = "_live_answer" if typed.get("shape") == context["shape"] else "_assess_answer"
            return whole(request, f"checklist/{template}.html", shown, status, **context)
        return whole(request, "checklist/assess.html", shown, status, **context, here=address, operation=name,
                     cautions=operation.cautions)
    return answer


for _address, (_name, _title) in ADDRESSES.items():
    page(_address, public=True)(assess_page(_address, _name, _title))


def _typed(request: Request) -> Mapping[str, str]:
    return {**request.query, **{name: request.one(name) for name in request.form}}
