"""The trial: lift a little, hold, read; every trial is a row, and the last one counts."""
from collections.abc import Mapping
from typing import Any

from checklist_app.checklists import values
from checklist_app.checklists.answer import Answer, Request, page
from checklist_app.checklists.banner import banner
from checklist_app.checklists.checks_view import governing
from checklist_app.checklists.finding import finding
from checklist_app.checklists.fold import seen
from checklist_app.checklists.frame import frame, go_to, whole
from checklist_app.checklists.made import Made
from checklist_app.checklists.pages.step import step
from checklist_app.checklists.plain import NO_STAGE, missing
from checklist_app.checklists.running import Running, running
from checklist_app.checklists.steps import Screen, Way, next_way, screens, stage_number
from checklist_app.checklists.trial_read import AS_HUNG, hung_otherwise
from checklist_app.checklists.trials import TRIAL, adopted_mass_kg, next_row, planned, trials
from checklist_app.checklists.world import World
from checklist_app.operations.straight_lift.as_hung import as_hung

STAGE = "trial"
WEIGHED, FROM_TRIAL = "weighed", "trial"


@page("/tasks/<task>/trial")
def trial(request: Request, world: World, task: str) -> Answer:
    """Add a trial, read it, adopt what it weighed."""
    now = running(world, task)
    if not now.procedure.has_stage(STAGE):
        return missing(request, NO_STAGE)
    act = request.one("act")
    if request.method == "POST" and act == "add":
        return _add(request, now)
    if request.method == "POST" and act == "adopt":
        return _adopt(request, now)
    if request.method == "POST" and act == "adopt_cg":
        return _adopt_cg(request, now)
    if not trials(now):
        return _none_yet(request, world, now)
    return step(request, world, task, STAGE, beside)


def beside(world: World, now: Running, screen: Screen) -> Mapping[str, Any]:
    """Readings beside the plan; after the last screen comes the hold point."""
    last = screens(now, STAGE)[-1].key == screen.key
    rows = trials(now)
    hold = next(hold for hold in now.procedure.holds if TRIAL in hold.groups)
    return {
        "below": "checklist/_trials.html", "trials": rows,
        "planned": planned(now), "adopt": adopted_mass_kg(now, rows[-1].row),
        "mass": now.folded.values.get(("mass_kg",)), "finding": finding(now), "changed": hung_otherwise(now),
        "next": Way(f"/tasks/{now.id}/holds/{hold.name}", f"Next: hold, {hold.words.lower()}") if last
        else next_way(now, STAGE, screen.key),
    }


def _none_yet(request: Request, world: World, now: Running) -> Answer:
    shown = frame(request, f"Trial, {now.title}", "Trial", f"{stage_number(now, STAGE)}, {now.title}",
                  f"/tasks/{now.id}", "Back to the task")
    return whole(request, "checklist/trial.html", shown, task=now.id, banner=banner(world, now, STAGE),
                 planned=planned(now), governing=governing(now))


def _add(request: Request, now: Running) -> Answer:
    """One more row, with the rig as it is now. The readings are answers in it."""
    row = next_row(now)
    made = Made(request)
    made.say(("task", now.id), (TRIAL, row), values.row("present"), seen(now.folded, (TRIAL, row)))
    if rig := as_hung(now.evaluation):
        path = (TRIAL, row, AS_HUNG)
        made.say(("task", now.id), path, values.choice(rig), seen(now.folded, path))
    return go_to(f"/tasks/{now.id}/trial?step=lifted.{row}", keep=tuple(made.keep))


def _adopt(request: Request, now: Running) -> Answer:
    """The mass that the last trial weighed becomes the plan's, and what was signed on the old one is void."""
    rows = trials(now)
    found = adopted_mass_kg(now, rows[-1].row) if rows else ""
    made = Made(request)
    if found:
        made.say(("task", now.id), ("mass_kg",), values.number(found, "kg", WEIGHED), seen(now.folded, ("mass_kg",)))
    return go_to(f"/tasks/{now.id}/trial", keep=tuple(made.keep))


def _adopt_cg(request: Request, now: Running) -> Answer:
    """The centre of gravity that the trials give becomes the plan's, with how far off it may be."""
    found, made = finding(now), Made(request)
    for each in found.adopt if found is not None else ():
        path = (each.name,)
        made.say(("task", now.id), path, values.number(each.text, "m", FROM_TRIAL, each.plus_minus),
                 seen(now.folded, path))
    return go_to(f"/tasks/{now.id}/trial", keep=tuple(made.keep))
