"""A single eye under one sling: a load that is free to turn is refused, and who was not asked is warned."""

from typing import Any

import pytest

from checklist_app.mechanics.fittings.eye_use import Turning
from checklist_app.operations.check import Check, State, Verdict
from checklist_app.operations.evaluate import assess
from checklist_app.operations.graph import DontKnow
from tests.operations.straight_lift.lifts import NONE, TABLE, lift
from tests.operations.straight_lift.rigged import one, two_hooks

NAME = "eye_stays_in[left]"


def found(**answers: Any) -> Check:
    return assess(TABLE, one(every=answers), with_spread=False).check(NAME)


@pytest.mark.parametrize("turning, verdict", [
    pytest.param(Turning.FREE, Verdict.OVER, id="published, safe use of eyebolts to BS 4278: never free to turn"),
    pytest.param(DontKnow(), Verdict.OVER, id="not known: as free to turn"),
    pytest.param(Turning.HELD, Verdict.WITHIN, id="held"), pytest.param(Turning.SWIVELS, Verdict.WITHIN, id="swivels"),
])
def test_a_single_eye_holds_no_load_that_is_free_to_turn(turning: Any, verdict: Verdict) -> None:
    assert found(turning=turning).verdict is verdict


def test_who_was_not_asked_is_warned_and_judged_as_before() -> None:
    check = found()
    assert check.verdict is Verdict.WITHIN
    assert isinstance(check.outcome, State) and "may screw it out" in check.outcome.caution


def test_a_lug_is_no_eye_in_a_thread() -> None:
    assert found(turning=Turning.FREE, eye=NONE).verdict is Verdict.NOT_APPLICABLE


def test_two_points_keep_a_load_from_turning_on_either() -> None:
    for task in (lift(), two_hooks()):
        assert assess(TABLE, task, with_spread=False).check(NAME).verdict is Verdict.NOT_APPLICABLE
