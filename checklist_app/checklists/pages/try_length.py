"""Try another length of the slings: drawing and verdict of what was tried, and no answer is given."""
from typing import Any

from checklist_app.checklists.answer import Answer, Request, page
from checklist_app.checklists.checks_view import announced, governing_of, seen
from checklist_app.checklists.frame import frame, whole
from checklist_app.checklists.picture import HELD, picture
from checklist_app.checklists.plain import missing
from checklist_app.checklists.running import Running, running
from checklist_app.checklists.steps import stage_href, stage_number
from checklist_app.checklists.tried import EVERY_LEG, TRIED, advice, in_store_m, rows, which_legs, with_length
from checklist_app.checklists.world import World
from checklist_app.operations.evaluate import assess
from checklist_app.operations.fields import Fault, read_number
from checklist_app.operations.gear import Sling
from checklist_app.operations.task import Key
from checklist_app.operations.words import figure

STAGE = "numbers"
MOST_BUTTONS = 6
NO_SLINGS_HERE = "In this task nothing hangs in slings."
NO_SLINGS = "Pick the slings first: what is tried is another length of the same slings."


@page("/tasks/<task>/try")
def try_length(request: Request, world: World, task: str) -> Answer:
    """All of it travels in the address: `length` in metres, `leg` one of them or every."""
    now = running(world, task)
    if "sling" not in now.table.entries:
        return missing(request, NO_SLINGS_HERE)
    text, leg = request.query.get("length", "").strip(), _leg(request, now)
    length = read_number(text, TRIED) if text else None
    slings = [answer for each in now.task.rows.get("leg", ())
              if isinstance(answer := now.task.answers.get(Key("sling", each)), Sling)]
    fault = length.words if isinstance(length, Fault) else "" if slings else NO_SLINGS
    evaluation = assess(now.table, with_length(now, length, leg)) if isinstance(length, float) and slings else None
    found = rows(world, now, leg) if slings else ()
    shown = frame(request, f"Try a length, {now.title}", "Try a length", f"{stage_number(now, STAGE)}, {now.title}",
                  stage_href(now, STAGE), "Back to the numbers")
    context: dict[str, Any] = {
        "task": now.id, "typed": text, "fault_words": fault, "leg": leg, "legs": which_legs(now), "rows": found,
        "advice": advice(found) if found else "", "buttons": _buttons(world, now),
        "picture": picture(evaluation, tallest=HELD) if evaluation is not None else None,
        "checks": seen(evaluation) if evaluation is not None else None,
        "governing": governing_of(evaluation) if evaluation is not None else None,
        "said": announced(evaluation) if evaluation is not None else "",
        "length": f"{figure(length, 'm')} m" if isinstance(length, float) else "", "back": stage_href(now, STAGE),
    }
    return whole(request, "checklist/try_length.html", shown, 422 if fault and text else 200, **context)


def _leg(request: Request, now: Running) -> str:
    asked = request.query.get("leg", EVERY_LEG)
    return asked if asked in now.task.rows.get("leg", ()) else EVERY_LEG


def _buttons(world: World, now: Running) -> tuple[str, ...]:
    """Lengths to tap: those that lie in store."""
    return tuple(figure(length, "m") for length in sorted(in_store_m(world, now)))[:MOST_BUTTONS]
