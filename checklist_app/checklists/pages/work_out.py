"""Work out mass and centre of gravity from parts or scales: all of it travels in the address until it is taken over."""
from collections.abc import Mapping
from dataclasses import dataclass
from math import ceil

from checklist_app.checklists import values
from checklist_app.checklists.answer import Answer, Request, page
from checklist_app.checklists.finding import typed_m
from checklist_app.checklists.fold import seen
from checklist_app.checklists.frame import frame, go_to, whole
from checklist_app.checklists.made import Made
from checklist_app.checklists.plain import missing
from checklist_app.checklists.running import Running, running
from checklist_app.checklists.steps import stage_href, stage_number
from checklist_app.checklists.worked_out import (
    EVIDENCE,
    MASS_OFF,
    MOST_PARTS,
    PLACE_OFF,
    RAISED,
    SCALE_OFF,
    TWO,
    Faults,
    Worked,
    by_parts,
    by_scales,
    by_two_scales,
    part_fields,
    scale_fields,
    whole_kg,
)
from checklist_app.checklists.world import World
from checklist_app.mechanics.finding.densities import Material
from checklist_app.operations import settings
from checklist_app.operations.fields import Field
from checklist_app.operations.words import figure

STAGE, STEP = "numbers", "mass"
WAYS = {"parts": "Added up from its parts and fillings", "two": "Two scales in a line", "more": "Three or four scales"}
FEW_PARTS = 3
MM_IN_M = 1000.0
NOT_HERE = "In this task mass and centre of gravity are not worked out here."


@page("/tasks/<task>/work-out")
def work_out(request: Request, world: World, task: str) -> Answer:
    """By address nothing is kept; sent as a form it becomes the answers of the task, the readings with them."""
    now = running(world, task)
    if not works_out(now):
        return missing(request, NOT_HERE)
    typed = {name: request.one(name) for name in request.form} if request.method == "POST" else {
        name: text.strip() for name, text in request.query.items()}
    by = typed.get("by", "") if typed.get("by", "") in WAYS else ""
    worked, faults = _worked(by, typed)
    if request.method == "POST" and worked is not None:
        return _take(request, now, worked)
    shown = frame(request, f"Work it out, {now.title}", "Work it out", f"{stage_number(now, STAGE)}, {now.title}",
                  _back(now), "Back to the numbers")
    status = 422 if request.method == "POST" else 200
    return whole(request, "checklist/work_out.html", shown, status, task=now.id, by=by, ways=WAYS,
                 materials=[each.value for each in Material],
                 groups=_groups(by, typed, faults), typed=typed, told=_told(worked) if worked is not None else (),
                 evidence=worked.evidence if worked is not None else "", more=_more(by, typed), count=_count(typed),
                 back=_back(now))


def works_out(now: Running) -> bool:
    """Whether this task asks where its mass is from: then the readings have a place."""
    return now.procedure.prompt(EVIDENCE) is not None


def _back(now: Running) -> str:
    return f"{stage_href(now, STAGE)}?step={STEP}"


def _worked(by: str, typed: Mapping[str, str]) -> tuple[Worked | None, Mapping[str, str]]:
    if not by or typed.get("go") is None:
        return None, {}
    try:
        if by == "parts":
            return by_parts(typed, _count(typed)), {}
        return (by_two_scales(typed) if by == "two" else by_scales(typed)), {}
    except Faults as found:
        return None, found.by_field


def _take(request: Request, now: Running, worked: Worked) -> Answer:
    """Mass, each coordinate that was found, and the readings in words."""
    made, about = Made(request), ("task", now.id)
    made.say(about, ("mass_kg",), values.number(whole_kg(worked.mass_kg), "kg", worked.mass_how,
                                                whole_kg(_mass_off(worked))), seen(now.folded, ("mass_kg",)))
    for each in worked.cg:
        value = values.number(typed_m(each.at_m), "m", worked.cg_how, typed_m(ceil(each.off_m * MM_IN_M) / MM_IN_M))
        made.say(about, (each.name,), value, seen(now.folded, (each.name,)))
    made.say(about, (EVIDENCE,), values.text(made.words(worked.evidence)), seen(now.folded, (EVIDENCE,)))

    return go_to(_back(now), keep=tuple(made.keep), parts=made.parts)


def _mass_off(worked: Worked) -> float:
    """What the readings may be off, and not less than the house's contingency of a mass that was weighed."""
    return max(worked.highest_kg - worked.mass_kg, (settings.MASS_WEIGHED.value - 1.0) * worked.mass_kg)


def _told(worked: Worked) -> tuple[str, ...]:
    mass = f"Mass {whole_kg(worked.mass_kg)} kg, at most {whole_kg(worked.mass_kg + _mass_off(worked))} kg"
    return (f"{mass}.", *(f"Centre of gravity {figure(each.at_m, 'm')} m {each.words}"
                          f" ± {ceil(each.off_m * MM_IN_M)} mm." for each in worked.cg))


@dataclass(frozen=True)
class Group:
    """Questions that belong together: a scale, a part (`what` is its number), or what is asked of one end raised."""

    words: str
    boxes: tuple[Mapping[str, str], ...]
    folded: bool = False
    what: int = 0
    name: str = ""
    of: str = ""
    of_fault: str = ""

    @property
    def open(self) -> bool:
        """Whether something stands in it, or is wrong with it."""
        return any(each["text"] or each["fault"] for each in self.boxes)


def _groups(by: str, typed: Mapping[str, str], faults: Mapping[str, str]) -> list[Group]:
    """The questions of one way, each with what was typed and what is wrong with it."""
    def boxes(fields: tuple[Field, ...]) -> tuple[Mapping[str, str], ...]:
        return tuple({"name": each.name, "words": each.words, "text": typed.get(each.name, ""),
                      "fault": faults.get(each.name, "")} for each in fields)

    if by == "two":
        return [Group("", boxes(TWO)), Group("One end raised: it tells the height", boxes(RAISED), folded=True)]
    if by == "more":
        return [*(Group(f"Scale {n}{', if there is one' if n > FEW_PARTS else ''}", boxes(fields))
                  for n, fields in enumerate(scale_fields(), 1)), Group("", boxes((SCALE_OFF, PLACE_OFF)))]
    if by == "parts":
        return [*(Group(f"Part {n}", boxes(fields), what=n, name=typed.get(f"what{n}", ""), of=typed.get(f"of{n}", ""),
                        of_fault=faults.get(f"of{n}", "")) for n, fields in enumerate(part_fields(_count(typed)), 1)),
                Group("", boxes((MASS_OFF, PLACE_OFF)))]
    return []


def _count(typed: Mapping[str, str]) -> int:
    text = typed.get("rows") or typed.get("go", "")
    return min(MOST_PARTS, max(FEW_PARTS, int(text) if text.isdecimal() and len(text) < FEW_PARTS else FEW_PARTS))


def _more(by: str, typed: Mapping[str, str]) -> int:
    """With how many parts the page comes again, where one more may be named."""
    return min(MOST_PARTS, _count(typed) + 1) if by == "parts" else 0
