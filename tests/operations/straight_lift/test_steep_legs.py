"""A leg steeper than 15° to a common hook: a caution that is seen, and that decides nothing (EN 818-6)."""

import pytest

from checklist_app.operations.catalogue import OPERATIONS
from checklist_app.operations.check import State, Verdict
from checklist_app.operations.evaluate import Evaluation, assess
from checklist_app.operations.report import report
from checklist_app.operations.task import Task
from tests.operations.straight_lift.lifts import TABLE, lift
from tests.operations.straight_lift.rigged import four, one, two_hooks

ROOM = {"highest_hook_m": 9.0, "room_height_m": 9.0}
LONG = {"leg_length_m": 2.5}
STEEP = lift(both=LONG, **ROOM)


def said(task: Task) -> tuple[Evaluation, list[str]]:
    ev = assess(TABLE, task)
    return ev, [each for each in report(OPERATIONS["straight_lift"], ev)["cautions"] if "steeper than 15°" in each]


def test_a_steep_ordinary_lift_is_within_limit_and_a_strength_governs_it() -> None:
    """Half the eyes' distance over the leg: 0.5 / 2.5, that is 11.5° from vertical."""
    ev, cautions = said(STEEP)
    assert ev.verdict is Verdict.WITHIN
    assert ev.governs is not None and ev.governs.name == "pair_strength"
    for row in ("left", "right"):
        steep = ev.check(f"leg_upright[{row}]")
        assert steep.verdict is Verdict.WITHIN and isinstance(steep.outcome, State)
        assert steep.outcome.words.startswith("hangs 11.5° from vertical: steeper than 15°")
    assert len(cautions) == 1 and cautions[0].startswith("leg not too steep, left, right: steeper than 15°")


def test_of_two_unlike_legs_only_the_steep_one_carries_the_caution() -> None:
    _, cautions = said(lift({"leg_length_m": 1.0}, {"leg_length_m": 1.3}, cg_x_m=0.15, **ROOM))
    assert [each.partition(":")[0] for each in cautions] == ["leg not too steep, left"]


@pytest.mark.parametrize("task", [lift(), one(), two_hooks()], ids=["30°", "one leg", "two hooks"])
def test_nothing_is_said_of_a_leg_at_30_degrees_or_of_a_straight_pull(task: Task) -> None:
    assert said(task)[1] == []


@pytest.mark.parametrize("with_spread", [True, False])
def test_four_steep_legs_say_it_once(with_spread: bool) -> None:
    ev = assess(TABLE, four(every={"leg_length_m": 4.0}), with_spread)
    cautions = [each for each in report(OPERATIONS["straight_lift"], ev)["cautions"] if "steeper" in each]
    assert len(cautions) == 1 and cautions[0].count("_") == 0
    assert all(ev.check(f"leg_upright[{row}]").verdict is Verdict.WITHIN for row in ("left_front", "right_rear"))
