"""A check as a page shows it: its name, the one large figure, what it is held against, why there is none."""
from dataclasses import dataclass, replace

from checklist_app.checklists.places import with_row
from checklist_app.checklists.words import mark
from checklist_app.operations import words
from checklist_app.operations.check import Check, Limit, Strength, Verdict, highest_utilisation, utilisation
from checklist_app.operations.graph import Waits

AT_LEAST = frozenset({"stability", "headroom", "room", "side_room", "tag_line_reach", "running_depth"})


@dataclass(frozen=True)
class Figure:
    """The one thing that stands large: a share in per cent, a margin with its unit, or a word."""

    text: str
    unit: str = ""


def check_id(check: Check) -> str:
    """The check's place on a page and in its address: "sling_strength.left"."""
    return f"{check.quantity}.{check.row}" if check.row else check.quantity


def title(check: Check) -> str:
    """What is checked, with its row in front: "Left sling, by its own pull"."""
    return with_row(check.row or "", check.clause.title)


def large(check: Check) -> Figure:
    """Percentage of a strength, margin of a limit, both as entered; what is over shows by how much; word of a state."""
    share = utilisation(check.outcome)
    if share is not None:
        return Figure(words.percent(share, over=check.nominal_verdict is Verdict.OVER), "%")
    if isinstance(check.outcome, Limit):
        judged = check if check.verdict is Verdict.OVER else replace(check, worst=check.outcome)
        figure, _, unit = words.margin_said(judged).replace("°", "\u00a0°").partition("\u00a0")
        return Figure(figure, unit)

    if check.verdict is Verdict.OVER:
        return Figure("not in order")

    return Figure("caution" if check.caution else "in order")


def note(check: Check) -> str:
    """Demand of capacity and, where it differs, how far it may go at worst."""
    told = words.note(check)
    further = (told, _at_worst(check)) if told == words.MEASURED else (told or _at_worst(check),)
    return ", ".join(part for part in (_held_against(check), *further) if part)


def share(check: Check) -> float | None:
    """How far along the measure the bar runs: only a strength has one."""
    return highest_utilisation(check) if utilisation(check.outcome) is not None else None


def marked(check: Check) -> str:
    """The mark of the check's verdict."""
    return mark(check.verdict.words)


def missing(check: Check) -> tuple[str, ...]:
    """What a waiting check waits for."""
    stopped = check.stopped
    return tuple(stopped.reasons) if isinstance(stopped, Waits) else ()


def reason(check: Check) -> str:
    """Why a check has no result; nothing for one that has, or that only waits."""
    return "" if check.computed or check.verdict is Verdict.WAITING else words.reason(check)


def does_not_apply(check: Check) -> bool:
    """Whether somebody answered that there is nothing to check."""
    return check.verdict is Verdict.NOT_APPLICABLE


def _held_against(check: Check) -> str:
    """Demand of capacity; where a least value is asked, what there is and what is needed."""
    outcome, unit = check.outcome, check.clause.unit
    if check.quantity in AT_LEAST and isinstance(outcome, Limit):
        return f"{words.said(outcome.capacity, unit)} there, {words.said(outcome.demand, unit)} needed"
    return words.demand_said(check)


def _at_worst(check: Check) -> str:
    """Nominal and worst stand side by side; the verdict is the worst's."""
    if isinstance(check.outcome, Strength):
        return words.utilisation_said(check).partition(", ")[2]
    if not isinstance(check.outcome, Limit) or not isinstance(check.worst, Limit):
        return ""
    unit = check.clause.unit
    now, worst = (words.said(each.demand, unit) for each in (check.outcome, check.worst))
    if now != worst:
        return f"up to {worst}"
    now, worst = (words.said(each.capacity, unit) for each in (check.outcome, check.worst))
    return f"down to {worst}" if now != worst else ""
