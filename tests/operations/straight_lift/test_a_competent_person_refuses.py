"""Lifts whose figures alone look well and that a competent person refuses all the same."""

from typing import Any

import pytest

from checklist_app.mechanics.slings.kinds import Hitch
from checklist_app.mechanics.slings.slip import Face
from checklist_app.mechanics.slings.wrap import Stop
from checklist_app.operations.check import Verdict
from checklist_app.operations.evaluate import assess
from checklist_app.operations.straight_lift.choices import Rig
from tests.operations.straight_lift.lifts import TABLE
from tests.operations.straight_lift.rigged import narrow, one, rigged

ROUND: dict[str, Any] = {"stop": Stop.NONE, "face": Face.DRY_AND_CLEAN}
CHOKE, BASKET = {"hitch": Hitch.CHOKED, "choke_angle_deg": 130.0}, {"hitch": Hitch.BASKET, "part_angle_deg": 0.0}


def test_a_top_heavy_load_that_turns_over_while_its_slack_is_taken_up_is_refused() -> None:
    ev = assess(TABLE, narrow(1.333))
    assert ev.verdict is Verdict.CANNOT and "turn over" in str(ev.check("tilt_along").stopped)
    assert assess(TABLE, narrow(0.5)).check("tilt_along").stopped is None


@pytest.mark.parametrize("hitch", [CHOKE, BASKET])
def test_no_friction_holds_a_load_in_one_sling_alone(hitch: dict[str, Any]) -> None:
    check = assess(TABLE, one(hitch | ROUND)).check("slip[left]")
    assert check.verdict is Verdict.CANNOT and "a collar or lug" in str(check.stopped)
    assert assess(TABLE, one(hitch | ROUND | {"stop": Stop.COLLAR})).verdict is Verdict.WITHIN


def test_a_load_that_slopes_crosswise_slides_as_one_that_slopes_lengthwise() -> None:
    needed = []
    for turned in (False, True):
        far = (0.0, 1.2) if turned else (1.2, 0.0)
        own = {"left": {"eye_x_m": 0.0, "eye_y_m": 0.0}, "right": {"eye_x_m": far[0], "eye_y_m": far[1]}}
        at = {"cg_x_m": far[0] * 0.6, "cg_y_m": far[1] * 0.6}
        task = rigged(Rig.TWO_LEGS, ("left", "right"), BASKET | ROUND | {"leg_length_m": 5.0}, own, cg_z_m=-0.4, **at)
        needed.append(assess(TABLE, task).check("slip[left]").outcome.demand)
    assert needed[0] == pytest.approx(needed[1])


def test_a_sling_laid_double_over_a_fitting_does_not_hang_on_friction() -> None:
    check = assess(TABLE, one({"hitch": Hitch.DOUBLED, "part_angle_deg": 0.0})).check("slip[left]")
    assert check.verdict is Verdict.NOT_APPLICABLE
