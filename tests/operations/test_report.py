"""The report as plain data: what waits, what is refused, what it rests on; and as text for the record."""

import json

import pytest

from checklist_app.operations.assumed import assumptions
from checklist_app.operations.catalogue import OPERATIONS
from checklist_app.operations.evaluate import assess
from checklist_app.operations.graph import DontKnow
from checklist_app.operations.report import as_text, report, rounded
from checklist_app.operations.settings import HOUSE_VALUE, SETTINGS
from checklist_app.operations.task import Measured, Task
from tests.operations.some_lifts import some_lifts
from tests.operations.straight_lift.lifts import TABLE, lift, pick_point

LIFT = OPERATIONS["straight_lift"]


@pytest.mark.parametrize("task", [Task(), lift(), lift(cg_x_m=DontKnow()), *some_lifts(4, seed=9)], ids=range(7))
def test_every_check_stands_in_just_one_place(task: Task) -> None:
    ev = assess(TABLE, task)
    told = report(LIFT, ev)
    places = [[check["name"] for check in told["checks"]], told["waiting"], told["refused"], told["not_applicable"]]
    names = [name for place in places for name in place]
    assert sorted(names) == sorted(check.name for check in ev.checks) and len(names) == len(set(names))
    assert set(told["waiting"]) == set(told["waiting_words"])


def test_figures_are_rounded_to_twelve_digits() -> None:
    assert rounded(0.1 + 0.2) == 0.3
    told = report(LIFT, assess(TABLE, lift(mass_kg=1000.0 / 3.0)))
    assert told["quantities"]["mass_kg"] == 333.333333333


def test_as_text_holds_no_float_and_loses_nothing() -> None:
    told = report(LIFT, assess(TABLE, some_lifts(2, seed=4)[1]))
    text = as_text(told)

    def floats(one: object) -> int:
        if isinstance(one, dict):
            return len([1 for value in one.values() if floats(value)])
        if isinstance(one, list):
            return len([1 for value in one if floats(value)])
        return int(isinstance(one, float))

    assert floats(told) and not floats(text)
    assert [float(check["demand"]) for check in text["checks"] if check["demand"]] == [
        check["demand"] for check in told["checks"] if check["demand"] is not None
    ]
    json.dumps(told, allow_nan=False)


def test_a_point_is_told_by_its_axes_and_gear_is_no_quantity() -> None:
    quantities = report(LIFT, assess(TABLE, lift()))["quantities"]
    assert quantities["eye_at[right]"] == {"x": 1.0, "y": 0.0, "z": 0.0}
    assert "hoist" not in quantities and "sling_strength[left]" not in quantities and "picture" not in quantities
    assert quantities["day"] == "2026-11-25" and quantities["hitch[left]"] == "straight"


def test_assumptions_name_how_numbers_were_obtained_and_what_nobody_knows() -> None:
    told = assumptions(assess(TABLE, lift(mass_kg=Measured(1000.0, "weighed"), cg_z_m=DontKnow())))
    assert f"mass of the load: 1000\u00a0kg, weighed, up to 1030 kg ({HOUSE_VALUE})" in told
    assert any("not known; the worst case is taken" in words for words in told)
    assert any("was typed in, not taken from the register" in words for words in told)
    carried = [words for words in told if words.startswith("what carries the eye")]
    evidence = pick_point().facts["evidence"]
    assert len(carried) == 2 and all(f"its rating by {evidence}" in each for each in carried)


def test_the_class_is_told_and_uses_the_worst() -> None:
    assert report(LIFT, assess(TABLE, lift()))["class"] == "routine"
    assert report(LIFT, assess(TABLE, lift(mass_kg=Measured(3900.0, "weighed"))))["class"] != "routine"


def test_the_class_is_only_a_least_one_while_something_waits_and_none_while_all_does() -> None:
    whole, part, empty = (report(LIFT, assess(TABLE, task)) for task in (lift(), lift(hoist=None), Task()))
    assert (whole["class"], whole["class_is_at_least"]) == ("routine", False)
    assert (part["class"], part["class_is_at_least"]) == ("routine", True)
    assert (empty["class"], empty["class_is_at_least"]) == (None, True)


def test_the_report_carries_the_caution() -> None:
    cautions = " ".join(report(LIFT, assess(TABLE, lift()))["cautions"])
    assert "do not replace" in cautions and "competent person" in cautions


def test_every_setting_has_words_and_is_the_house_s_own() -> None:
    assert len(SETTINGS) > 10
    for name, setting in SETTINGS.items():
        assert setting.name == name and setting.words and setting.source == HOUSE_VALUE
