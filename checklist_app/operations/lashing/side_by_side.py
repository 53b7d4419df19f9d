"""One lashed load by every rule set at once: how many times what each asks for is withstood, each way."""

from collections.abc import Iterable
from typing import NamedTuple

from checklist_app.mechanics.lashing.rule_sets import RULES, RuleSet
from checklist_app.mechanics.lashing.transport import Direction
from checklist_app.operations.check import Check, Strength, Verdict, overall
from checklist_app.operations.evaluate import Evaluation, assess
from checklist_app.operations.graph import Stopped
from checklist_app.operations.table import Table
from checklist_app.operations.task import Key, Task

BINDS = "rule_set"
SLIDES, TIPS = ("sliding", "deck_sliding"), ("tipping", "deck_tipping")
BY_RULE = (
    *SLIDES, *TIPS, "lashing_strength", "wandering", "load_wandering", "lashing_number", "aggregate_wll", "held_down",
)


class Way(NamedTuple):
    """One direction: how many times the push that a rule set asks for is withstood before it slides, before it tips.

    None where that was not worked out.
    """

    direction: Direction
    slides: float | None
    tips: float | None


class Beside(NamedTuple):
    """One rule set: what was read of it, its ways, the verdict of all that hangs on it, or why there is none."""

    rule_set: RuleSet
    edition_read: str
    binds: bool
    verdict: Verdict
    ways: tuple[Way, ...]
    why: str


def side_by_side(table: Table, task: Task) -> tuple[Beside, ...]:
    """Every rule set, on the same answers, as entered: the spread is searched for the one that binds alone.

    Args:
        table: of an operation that lashes.
        task: its answers.

    Returns:
        One line a rule set, in the order they are offered.
    """
    return tuple(_one(table, task, each) for each in RuleSet)


def _one(table: Table, task: Task, rule_set: RuleSet) -> Beside:
    found = assess(table, task.changed({Key(BINDS): rule_set}), with_spread=False)
    counted = [check for check in found.checks if check.quantity in BY_RULE]
    verdict = overall(counted)
    ways = tuple(Way(each, _least(found, SLIDES, each), _least(found, TIPS, each)) for each in Direction)

    return Beside(rule_set, RULES[rule_set].edition_read, task.answers.get(Key(BINDS)) is rule_set, verdict, ways,
                  _why(counted, verdict))


def _least(found: Evaluation, names: tuple[str, ...], direction: Direction) -> float | None:
    outcomes = (check.outcome for check in found.checks if check.quantity in names and check.row == direction.value)
    able = [one.capacity / one.demand for one in outcomes if isinstance(one, Strength) and one.demand > 0.0]

    return min(able, default=None)


def _why(checks: Iterable[Check], verdict: Verdict) -> str:
    """The first reason of those that left it without a verdict on numbers."""
    if verdict not in (Verdict.WAITING, Verdict.CANNOT):
        return ""
    stopped = (check.outcome for check in checks if check.verdict is verdict)

    return next((str(one.reasons[0]) for one in stopped if isinstance(one, Stopped) and one.reasons), "")
