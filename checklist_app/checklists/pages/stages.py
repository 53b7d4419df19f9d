"""The stages that ask questions and nothing else, each under its own address; rows that people add are listed first."""
from collections.abc import Callable

from checklist_app.checklists.answer import Answer, Request, page
from checklist_app.checklists.banner import banner
from checklist_app.checklists.checks_view import governing
from checklist_app.checklists.frame import frame, go_to, whole
from checklist_app.checklists.made import Made
from checklist_app.checklists.pages.step import step
from checklist_app.checklists.picture import held
from checklist_app.checklists.plain import NO_STAGE, missing
from checklist_app.checklists.procedure import procedures
from checklist_app.checklists.rows import add, added_rows, copy, is_full, mirrors, remove
from checklist_app.checklists.rows_again import put_down, rows_offered
from checklist_app.checklists.rows_view import rows_of
from checklist_app.checklists.running import Running, running
from checklist_app.checklists.slots import is_slot
from checklist_app.checklists.steps import has_rows, next_stage, place_href, screens, stage_href, stage_number
from checklist_app.checklists.world import World

WITH_A_PAGE = frozenset({"what", "numbers", "kit", "stop-points", "trial", "move", "close-out"})
"""Stages that a page of their own answers."""
ACTS = frozenset({"add", "copy", "mirror", "remove", "again"})


def stage_page(stage: str) -> Callable[..., Answer]:
    """The page of one stage."""
    def answer(request: Request, world: World, task: str) -> Answer:
        now = running(world, task)
        if not now.procedure.has_stage(stage):
            return missing(request, NO_STAGE)
        if not has_rows(now, stage):
            return step(request, world, task, stage)
        if request.method == "POST" and request.one("act") in ACTS:
            return _act(request, world, now, stage)
        return step(request, world, task, stage) if "step" in request.query else _list(request, world, now, stage)
    return answer


for _stage in sorted({stage.name for each in procedures().values() for stage in each.stages} - WITH_A_PAGE):
    page(f"/tasks/<task>/{_stage}")(stage_page(_stage))


def _list(request: Request, world: World, now: Running, stage: str, fault: str = "", status: int = 200) -> Answer:
    told = now.procedure.stage(stage)
    shown = frame(request, f"{told.words}, {now.title}", told.words, f"{stage_number(now, stage)}, {now.title}",
                  f"/tasks/{now.id}", "Back to the task")
    return whole(request, "checklist/rows.html", shown, status, task=now.id, stage=told, fault_words=fault,
                 here=stage_href(now, stage), again=rows_offered(world, now),
                 rows=rows_of(world, now, stage), banner=banner(world, now, stage),
                 picture=held(now.evaluation) if told.drawn else None, governing=governing(now),
                 next=next_stage(now, stage))


def _act(request: Request, world: World, now: Running, stage: str) -> Answer:
    """One tap on a row: one more like it, its mirror image, away with it; or a new one."""
    if request.one("act") == "again":
        return _again(request, world, now, stage)
    group, _, row = request.one("row").partition("/")
    act, number = request.one("act"), request.one("mirror")
    if group not in now.procedure.adds or (act != "add" and row not in added_rows(now, group)):
        return _list(request, world, now, stage, "That row is not there any more. Look again.", 409)
    if act in ("copy", "mirror") and not now.procedure.adds[group].copied:
        return _list(request, world, now, stage, "This is not copied: each is looked at anew.", 409)
    if act != "remove" and is_full(now, group):
        most, one = now.procedure.adds[group].most, now.procedure.one_of(group)
        return _list(request, world, now, stage, f"No more than {most} of them. Take a {one} off first.", 409)
    made = Made(request)
    device = request.page_device or request.device
    if act == "remove":
        remove(made, now, group, row)
        return go_to(stage_href(now, stage), keep=tuple(made.keep))
    if act == "add":
        new = add(made, now, group, device)
    else:
        mirror = dict(mirrors(now, group, row)).get(int(number)) if act == "mirror" and number.isdigit() else None
        if act == "mirror" and mirror is None:
            return _list(request, world, now, stage, "Its mirror image is itself.", 409)
        new = copy(made, now, group, row, device, mirror)
    return go_to(_first(running(world.with_entries(made.keep, made.parts), now.id), stage, group, new),
                 keep=tuple(made.keep))


def _again(request: Request, world: World, now: Running, stage: str) -> Answer:
    """The rows of last time, as long as none is there."""
    if not rows_offered(world, now):
        return _list(request, world, now, stage, "There is a row already, or nothing stood there last time.", 409)
    made = Made(request)
    put_down(made, world, now)
    return go_to(stage_href(now, stage), keep=tuple(made.keep), parts=made.parts)


def _first(now: Running, stage: str, group: str, row: str) -> str:
    """Where a new row is answered: its gear first."""
    own = next(screen for screen in screens(now, stage) if screen.row == (group, row))
    first = own.places[0]
    return place_href(now, first) if is_slot(now, first) else own.href
