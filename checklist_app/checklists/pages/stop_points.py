"""Stop points: read aloud by two people, before anything is tensioned."""
from collections.abc import Mapping
from typing import Any

from checklist_app.checklists.answer import Answer, Request, page
from checklist_app.checklists.pages.step import step
from checklist_app.checklists.running import Running
from checklist_app.checklists.steps import Screen, Way, next_way, screens
from checklist_app.checklists.world import World

STAGE = "stop-points"


@page("/tasks/<task>/stop-points")
def stop_points(request: Request, world: World, task: str) -> Answer:
    """One reads, the other points and answers; "I cannot see it" is an answer too."""
    return step(request, world, task, STAGE, beside)


def beside(world: World, now: Running, screen: Screen) -> Mapping[str, Any]:
    """After the last screen comes the hold point."""
    last = screens(now, STAGE)[-1].key == screen.key
    return {"next": _hold(now) if last else next_way(now, STAGE, screen.key)}


def _hold(now: Running) -> Way:
    """The first hold point of the procedure stands after the stop points."""
    hold = now.procedure.holds[0]
    return Way(f"/tasks/{now.id}/holds/{hold.name}", f"Next: hold, {hold.words.lower()}")
