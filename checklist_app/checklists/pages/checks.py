"""Every check of a task, the one that was asked for opened; the governing one when none was."""
from dataclasses import replace

from checklist_app.checklists.answer import Answer, Request, page
from checklist_app.checklists.checks_view import Row, governing, live
from checklist_app.checklists.frame import frame, whole
from checklist_app.checklists.picture import picture
from checklist_app.checklists.plain import missing
from checklist_app.checklists.running import Running, running
from checklist_app.checklists.steps import Way, stage_href
from checklist_app.checklists.world import World


@page("/tasks/<task>/checks")
def checks(request: Request, world: World, task: str) -> Answer:
    """All checks, the governing one on top."""
    now = running(world, task)
    return _show(request, now, governing(now))


@page("/tasks/<task>/checks/<name>")
def check(request: Request, world: World, task: str, name: str) -> Answer:
    """One check with demand, capacity, working and source."""
    now = running(world, task)
    found = next((row for row in live(now).rows if row.id == name), None)
    return _show(request, now, found) if found is not None else missing(request, "There is no such check.")


def _show(request: Request, now: Running, first: Row | None) -> Answer:
    every = live(now)
    deciding = governing(now)
    governs = first is not None and deciding is not None and first.id == deciding.id
    heading = "Nothing is computed yet" if first is None else f"{first.title} governs" if governs else first.title
    shown = frame(request, f"{heading}, {now.title}", "Checks", now.title, f"/tasks/{now.id}", "Back to the task")
    rows = tuple(sorted(every.rows, key=lambda row: first is None or row.id != first.id))

    return whole(request, "checklist/checks.html", shown, task=now.id, first=first, heading=heading,
                 checks=replace(every, rows=rows), governing=deciding, picture=picture(now.evaluation),
                 next=Way(stage_href(now, now.stage), f"Go on: {now.procedure.stage(now.stage).words.lower()}"))
