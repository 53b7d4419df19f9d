"""Stop points: read aloud by two people, before anything is tensioned."""
from checklist_app.checklists.answer import Answer, Request, page
from checklist_app.checklists.pages.step import step
from checklist_app.checklists.world import World

STAGE = "stop-points"


@page("/tasks/<task>/stop-points")
def stop_points(request: Request, world: World, task: str) -> Answer:
    """One reads, the other points and answers; "I cannot see it" is an answer too. The hold point comes after."""
    return step(request, world, task, STAGE)
