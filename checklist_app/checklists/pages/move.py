"""Move and set. What makes the load safe is asked whatever is void, stopped or held."""
from collections.abc import Mapping
from dataclasses import replace
from typing import Any

from checklist_app.checklists.answer import Answer, Request, page
from checklist_app.checklists.banner import banner
from checklist_app.checklists.pages.step import step
from checklist_app.checklists.running import Running, running
from checklist_app.checklists.steps import Screen, next_stage, next_way
from checklist_app.checklists.world import World

STAGE = "move"
GOING_UP, SET_DOWN = "way", "set"


@page("/tasks/<task>/move")
def move(request: Request, world: World, task: str) -> Answer:
    """Before it goes up, only once everything is signed; lower, land and secure at any time."""
    found = banner(world, running(world, task), STAGE)
    closed = found is not None and (found.stopped or found.held is not None)
    if closed and request.query.get("step", GOING_UP) == GOING_UP:
        request = replace(request, query={**request.query, "step": SET_DOWN})
    return step(request, world, task, STAGE, beside)


def beside(world: World, now: Running, screen: Screen) -> Mapping[str, Any]:
    """While work may not go on, the questions before going up are not there."""
    found = banner(world, now, STAGE)
    way = next_stage(now, STAGE) if screen.key == SET_DOWN else next_way(now, STAGE, screen.key)
    if found is None or not (found.stopped or found.held):
        return {"next": way}
    return {"next": way, "before": [], "after": []}
