"""Lifts whose figures alone look well and that a competent person refuses all the same."""

from checklist_app.operations.check import Verdict
from checklist_app.operations.evaluate import assess
from tests.operations.straight_lift.lifts import TABLE
from tests.operations.straight_lift.rigged import narrow


def test_a_top_heavy_load_that_turns_over_while_its_slack_is_taken_up_is_refused() -> None:
    ev = assess(TABLE, narrow(1.333))
    assert ev.verdict is Verdict.CANNOT and "turn over" in str(ev.check("tilt_along").stopped)
    assert assess(TABLE, narrow(0.5)).check("tilt_along").stopped is None
