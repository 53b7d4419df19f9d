"""Today: the tasks under way on the line, where each was left, and what waits for a supervisor."""
from typing import Any

from checklist_app.checklists.answer import Answer, Request, may_write, page
from checklist_app.checklists.frame import frame, whole
from checklist_app.checklists.holds import HoldState, hold_states
from checklist_app.checklists.progress import go_on, headline, left_at, stands_at
from checklist_app.checklists.running import Running, under_way
from checklist_app.checklists.stops import stops
from checklist_app.checklists.words import own_number
from checklist_app.checklists.world import World
from checklist_app.operations.task import Key, Measured
from checklist_app.operations.words import figure

THEME_WORDS = (("", "As the phone"), ("light", "Light"), ("dark", "Dark"), ("sunlight", "Sunlight"))
SMALL_NUMBERS = ("No task", "One task", "Two tasks", "Three tasks", "Four tasks", "Five tasks", "Six tasks")


@page("/today")
def today(request: Request, world: World) -> Answer:
    """Every task that is not sealed, the way to begin one, and the other pages."""
    jobs = [_job(now, hold_states(world, now)) for now in under_way(world)]
    waiting = len([job for job in jobs if job["state"] == "hold"])

    return whole(request, "checklist/today.html", frame(request, "Today", "Today", _who(request), back=""),
                 today=world.today, summary=_summary(len(jobs), waiting), jobs=jobs, themes=THEME_WORDS,
                 may_write=may_write(request.person), after_seal=request.after_seal)


def _job(now: Running, holds: tuple[HoldState, ...]) -> dict[str, Any]:
    held = bool(stops(now.folded)) or stands_at(now, holds) is not None
    mass = now.task.answers.get(Key("mass_kg"))
    return {
        "name": headline(now), "id": own_number(now.load.id, now.load.title) if now.load is not None else "",
        "state": "hold" if held else "now", "href": go_on(now, holds).href, "operation": now.procedure.words,
        "day": now.day, "where": left_at(now, holds),
        "mass": figure(mass.value / 1000.0, "t") if isinstance(mass, Measured) else "", "unit": "t",
    }


def _summary(tasks: int, waiting: int) -> str:
    counted = SMALL_NUMBERS[tasks] if tasks < len(SMALL_NUMBERS) else f"{tasks} tasks"
    some = SMALL_NUMBERS[waiting].split()[0] if waiting < len(SMALL_NUMBERS) else str(waiting)
    held = f" {some} {'waits' if waiting == 1 else 'wait'} for a sign-off." if waiting else ""
    return f"{counted} under way.{held}"


def _who(request: Request) -> str:
    return f"{request.person.name}, {request.person.role}" if request.person is not None else ""
