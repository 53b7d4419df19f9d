"""A lashed load by every rule set on one screen. Nothing is answered by looking."""
from dataclasses import dataclass

from checklist_app.checklists.answer import Answer, Request, page
from checklist_app.checklists.changing import lashes
from checklist_app.checklists.frame import frame, whole
from checklist_app.checklists.plain import missing
from checklist_app.checklists.running import running
from checklist_app.checklists.steps import stage_href, stage_number
from checklist_app.checklists.words import mark, sentence
from checklist_app.checklists.world import World
from checklist_app.mechanics.lashing.rule_sets import RuleSet
from checklist_app.operations.lashing.side_by_side import Beside, Way, side_by_side
from checklist_app.operations.words import figure

STAGE = "numbers"
NO_RULES_HERE = "In this task nothing is lashed."
SHORT = {"forwards": "Front", "rearwards": "Rear", "to the left": "Left", "to the right": "Right"}
NAMES = {
    RuleSet.EN: "EN 12195-1", RuleSet.CTU: "CTU Code", RuleSet.CSS: "Annex 13", RuleSet.US: "49 CFR 393",
    RuleSet.NTC: "NTC guide", RuleSet.UK: "UK, 1.0 g",
}


@dataclass(frozen=True)
class Line:
    """One rule set as it is read: the least of each way, both figures of each way, what was read of it."""

    short: str
    name: str
    binds: bool
    verdict: str
    mark: str
    least: tuple[str, ...]
    ways: tuple[tuple[str, str, str], ...]
    edition: str
    why: str


@page("/tasks/<task>/rules")
def rules(request: Request, world: World, task: str) -> Answer:
    """How many times what each rule set asks for is withstood, as entered."""
    now = running(world, task)
    if not lashes(now):
        return missing(request, NO_RULES_HERE)
    lines = tuple(_line(each) for each in side_by_side(now.table, now.task))
    shown = frame(request, f"Rules side by side, {now.title}", "Rules side by side",
                  f"{stage_number(now, STAGE)}, {now.title}", stage_href(now, STAGE), "Back to the numbers")

    return whole(request, "checklist/rules.html", shown, task=now.id, lines=lines, ways=tuple(SHORT.values()),
                 back=stage_href(now, STAGE))


def _line(each: Beside) -> Line:
    return Line(
        NAMES[each.rule_set], each.rule_set.value, each.binds, each.verdict.words, mark(each.verdict.words),
        tuple(_least(way) for way in each.ways),
        tuple((SHORT[way.direction.value], _times(way.slides), _times(way.tips)) for way in each.ways),
        sentence(each.edition_read), sentence(each.why) if each.why else "",
    )


def _least(way: Way) -> str:
    told = [each for each in (way.slides, way.tips) if each is not None]
    return _times(min(told)) if told else "–"


def _times(value: float | None) -> str:
    return "–" if value is None else "over 9" if value > 9.0 else figure(value, "")
