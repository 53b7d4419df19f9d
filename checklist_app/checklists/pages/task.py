"""One task: where it stands, stage by stage, and where it goes on."""
from typing import Any

from checklist_app.checklists.answer import Answer, Request, page
from checklist_app.checklists.checks_view import governing
from checklist_app.checklists.frame import frame, whole
from checklist_app.checklists.holds import HoldState, hold_states, void_words
from checklist_app.checklists.places import Place
from checklist_app.checklists.procedure import PromptKind, Stage
from checklist_app.checklists.progress import go_on, headline, no_trial_yet, stands_at
from checklist_app.checklists.running import Running, running
from checklist_app.checklists.steps import screens, stage_href
from checklist_app.checklists.stops import stops
from checklist_app.checklists.trials import TRIAL
from checklist_app.checklists.words import day, mark
from checklist_app.checklists.world import World

CANNOT_SEE = "cannot_see"


@page("/tasks/<task>")
def task(request: Request, world: World, task: str) -> Answer:
    """The stages and hold points of a task on the line."""
    now = running(world, task)
    holds = hold_states(world, now)
    verdict = now.evaluation.verdict.words
    disputed = ({"href": f"/tasks/{task}/settle", "words": _differ(len(now.folded.disputed))}
                if now.folded.disputed else None)

    shown = frame(request, headline(now), now.procedure.words, now.title)
    return whole(
        request, "checklist/task.html", shown, task=task, heading=headline(now),
        summary=f"{now.procedure.words}, {day(now.day)}", verdict=verdict, verdict_mark=mark(verdict),
        stages=_line(now, holds), disputed=disputed, notes=request.notes.get(task, ()),
        void=void_words(holds), governing=governing(now),
        next=go_on(now, holds),
    )


def _differ(questions: int) -> str:
    """How many questions have two answers, on the way to settle them."""
    return "Two answers to one question differ: settle it" if questions == 1 else (
        f"Answers to {questions} questions differ: settle them")


def _line(now: Running, holds: tuple[HoldState, ...]) -> list[dict[str, Any]]:
    """Stages in order, each hold before the stage it guards."""
    here = None if stops(now.folded) else _here(now, holds)
    told = []
    for stage in now.procedure.stages:
        told += [_hold(now, state) for state in holds if state.hold.before == stage.name]
        told.append(_stage(now, stage, here))
    return told


def _here(now: Running, holds: tuple[HoldState, ...]) -> str | None:
    """The stage at which work goes on; none while it is held."""
    held = stands_at(now, holds)
    if held is None:
        return now.stage
    return TRIAL if no_trial_yet(now, held) else None


def _stage(now: Running, stage: Stage, here: str | None) -> dict[str, Any]:
    """What is still open in a stage. A trial that nobody made has no questions yet, and is not done for that."""
    still = [screen.words.lower() for screen in screens(now, stage.name) if not screen.done]
    note = f"Still open: {', '.join(still)}." if still else "Done."
    if stage.name == TRIAL and not now.folded.rows.get(TRIAL):
        still, note = [stage.words], "No trial lift yet."
    elif not still and now.empty_stage is not None and now.empty_stage.name == stage.name:
        still, note = [stage.words], "None is entered yet."
    elif not still and not _begun(now, stage):
        still, note = [stage.words], "Nobody has answered here yet."
    elif not still and (unseen := _unseen(now, stage)):
        note = f"Done, {unseen} not seen."
    state = "now" if stage.name == here else "" if still else "done"
    return {"state": state, "words": stage.words, "href": stage_href(now, stage.name), "note": note}


def _begun(now: Running, stage: Stage) -> bool:
    """Whether anything in it was answered, or known; where nothing is asked there is nothing to begin."""
    asked = now.places(stage.name)
    return not asked or any(place.path in now.folded.values or _is_known(now, place) for place in asked)


def _is_known(now: Running, place: Place) -> bool:
    return place.prompt.kind is PromptKind.ENTRY and now.is_given(place)


def _unseen(now: Running, stage: Stage) -> int:
    """How many things of a stage somebody says he cannot see: answered, and yet nobody has looked."""
    said = (now.value(place.path) or {} for place in now.places(stage.name))
    return len([value for value in said if (value.get("type"), value.get("text")) == ("tick", CANNOT_SEE)])


def _hold(now: Running, state: HoldState) -> dict[str, Any]:
    signed = f"Signed by {', '.join(each.name for each in state.standing)}."
    still = "Sent back: the words stand there." if state.sent_back else state.expired or "Not signed yet."
    return {"state": "done" if state.open else "hold", "words": f"Hold: {state.hold.words.lower()}",
            "href": f"/tasks/{now.id}/holds/{state.hold.name}",
            "note": signed if state.open else still}
