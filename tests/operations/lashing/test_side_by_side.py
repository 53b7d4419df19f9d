"""The same load by six rule sets: what they ask differs as their own figures do, and who cannot say, says why."""

import pytest

from checklist_app.mechanics.lashing.rule_sets import RULES, RuleSet
from checklist_app.mechanics.lashing.transport import Waters
from checklist_app.operations.check import Verdict
from checklist_app.operations.evaluate import assess
from checklist_app.operations.lashing.choices import Route
from checklist_app.operations.lashing.side_by_side import Beside, side_by_side
from checklist_app.operations.task import Key, Task
from tests.operations.lashing.lashed_tasks import PALLET, VEHICLE, on_pallet, on_vehicle


def by(task: Task) -> dict[RuleSet, Beside]:
    return {each.rule_set: each for each in side_by_side(PALLET, task)}


def test_one_g_forwards_leaves_four_fifths_of_what_the_standard_leaves() -> None:
    """EN 12195-1 asks 0.8, the UK profile 1.0 with the same safety factors; every other way they are the same."""
    found = by(on_pallet())
    standard, profile = found[RuleSet.EN].ways, found[RuleSet.UK].ways

    assert profile[0].slides == pytest.approx(0.8 * standard[0].slides)
    assert [way.slides for way in profile[1:]] == [way.slides for way in standard[1:]]


def test_each_line_is_what_the_operation_says_under_that_rule_set() -> None:
    task = on_pallet()
    for each in side_by_side(PALLET, task):
        whole = assess(PALLET, task.changed({Key("rule_set"): each.rule_set}), with_spread=False)
        for way in each.ways:
            check = whole.check(f"sliding[{way.direction.value}]")
            if way.slides is None:
                assert check.verdict in (Verdict.WAITING, Verdict.CANNOT)
            else:
                assert way.slides == check.outcome.capacity / check.outcome.demand


def test_only_one_binds_and_each_names_what_was_read_of_it() -> None:
    lines = side_by_side(PALLET, on_pallet())

    assert [line.rule_set for line in lines if line.binds] == [RuleSet.EN]
    assert [line.edition_read for line in lines] == [RULES[each].edition_read for each in RuleSet]


def test_rules_that_know_no_sea_say_so_and_annex_13_asks_for_the_ship() -> None:
    found = by(on_pallet(route=Route.SEA, waters=Waters.NORTH_SEA))

    for road_only in (RuleSet.US, RuleSet.UK, RuleSet.NTC):
        assert found[road_only].verdict is Verdict.CANNOT and found[road_only].why
        assert all(way.slides is None and way.tips is None for way in found[road_only].ways)
    assert found[RuleSet.CSS].verdict is Verdict.WAITING and "ship" in found[RuleSet.CSS].why
    assert found[RuleSet.EN].verdict is not Verdict.WAITING


def test_on_a_deck_the_face_that_slides_first_counts() -> None:
    task = on_vehicle()
    line = next(each for each in side_by_side(VEHICLE, task) if each.binds)
    whole = assess(VEHICLE, task, with_spread=False)
    faces = [whole.check(f"{name}[to the left]").outcome for name in ("sliding", "deck_sliding")]

    assert line.ways[2].slides == min(each.capacity / each.demand for each in faces)
