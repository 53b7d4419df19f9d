"""What would make it hold: one change at a time, each assessed with its spread. Nobody has to take one."""
from dataclasses import dataclass

from checklist_app.checklists.answer import Answer, Request, page
from checklist_app.checklists.changing import in_store, lashes, take
from checklist_app.checklists.frame import frame, go_to, whole
from checklist_app.checklists.made import Made
from checklist_app.checklists.plain import missing
from checklist_app.checklists.running import Running, running
from checklist_app.checklists.steps import stage_href, stage_number
from checklist_app.checklists.words import mark
from checklist_app.checklists.world import World
from checklist_app.operations.check import Check, Verdict
from checklist_app.operations.lashing.advice import Tried, advice, counted
from checklist_app.operations.lashing.change import Change, Effort
from checklist_app.operations.lashing.lay_flat import stands_below_m
from checklist_app.operations.words import figure, reason, title, utilisation_said

STAGE = "numbers"
NO_LASHING = "In this task nothing is lashed."
GONE = "Somebody answered in between. This is what would do it now."


@dataclass(frozen=True)
class Line:
    """One change as a page shows it; what is only wiped has nothing to take: it is looked at and answered."""

    words: str
    then: str
    verdict: str
    mark: str
    governs: str
    holds: bool
    take: str


@page("/tasks/<task>/change")
def change(request: Request, world: World, task: str) -> Answer:
    """Every change that does it, the least work first; taking one writes its answers."""
    now = running(world, task)
    if not lashes(now):
        return missing(request, NO_LASHING)
    if request.method != "POST":
        return _show(request, world, now)
    found = advice(now.evaluation, in_store(world, now))
    able = {each.change.words: each.change for each in found.tried if each.holds}
    wanted = able.get(request.one("take"))
    if wanted is None or wanted.effort is Effort.CLEAN:
        return _show(request, world, now, GONE, 409)
    made = Made(request)
    take(made, world, now, wanted, request.page_device or request.device)

    return go_to(_next(now, wanted), keep=tuple(made.keep), parts=made.parts)


def _next(now: Running, wanted: Change) -> str:
    """New rows are seen first: each still wants its item."""
    stage = next((stage.name for stage in now.procedure.stages for step in stage.steps
                  if wanted.rows and step.group == wanted.rows[0].group), STAGE)
    return stage_href(now, stage)


def _show(request: Request, world: World, now: Running, fault: str = "", status: int = 200) -> Answer:
    found = advice(now.evaluation, in_store(world, now))
    below = stands_below_m(now.evaluation) if not (found.holds or found.waits) else None
    shown = frame(request, f"What would make it hold, {now.title}", "What would make it hold",
                  f"{stage_number(now, STAGE)}, {now.title}", stage_href(now, STAGE), "Back to the numbers")

    return whole(
        request, "checklist/change.html", shown, status, task=now.id, here=f"/tasks/{now.id}/change",
        holds=found.holds, waits=found.waits, verdict=found.verdict.words, mark_now=mark(found.verdict.words),
        governs=_decides(found.governs), besides=_besides(now),
        lines=tuple(_line(each) for each in found.tried), fault_words=fault,
        flat=f"{figure(below, 'm')} m" if below is not None else "", back=stage_href(now, STAGE),
    )


def _besides(now: Running) -> str:
    """What governs the task and hangs on no lashing: it stays as it is, whatever is changed here."""
    check = now.evaluation.governs
    if check is None or check in counted(now.evaluation) or check.verdict in (Verdict.WITHIN, Verdict.NOT_APPLICABLE):
        return ""
    return f"{_decides(check)}, {check.verdict.words}"


def _line(tried: Tried) -> Line:
    takes = tried.holds and tried.change.effort is not Effort.CLEAN
    return Line(tried.change.words, tried.change.then, tried.verdict.words, mark(tried.verdict.words),
                _decides(tried.governs), tried.holds, tried.change.words if takes else "")


def _decides(check: Check | None) -> str:
    """What decides, with its share as entered and at its worst."""
    return "" if check is None else f"{title(check)}: {utilisation_said(check) or reason(check)}"
