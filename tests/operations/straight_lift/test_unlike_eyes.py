"""Eyes that stand unlike on their pick points, and what gathers two legs."""

import pytest

from checklist_app.operations.check import Verdict
from checklist_app.operations.evaluate import Evaluation, assess
from checklist_app.operations.gear import Gear, make
from checklist_app.operations.graph import NotUsed
from checklist_app.operations.straight_lift.entries import EyesGiven
from tests.operations.straight_lift.lifts import TABLE, lift, pick_point

LUG = NotUsed("the pick point is a lug")


def standing(reach_m: float) -> Gear:
    return make("eye", "E", {"ratings": [{"up_to_deg": 60.0, "wll_t": 4.0}], "reach_m": reach_m, "mass_kg": 0.5})


def on_pick_points(left: object, right: object) -> Evaluation:
    """Pick points 0.6 m apart, legs of 0.6 m, the centre of gravity 0.3 m below the middle."""
    rows = [
        {"eye": eye, "leg_length_m": 0.6, "carrier": pick_point(x_m=x, y_m=0.0, z_m=0.2)}
        for eye, x in ((left, -0.3), (right, 0.3))
    ]
    where = {"eyes_given": EyesGiven.PICK_POINTS, "eyes_apart_m": None, "right_eye_higher_m": None}
    return assess(TABLE, lift(*rows, cg_x_m=0.0, cg_z_m=-0.1, **where), with_spread=False)


@pytest.mark.parametrize("left, right", [(standing(0.05), standing(0.10)), (LUG, standing(0.05))])
def test_an_eye_that_stands_higher_than_the_other_shifts_the_pull_to_the_lower_one(left: Gear, right: Gear) -> None:
    """0.05 m on eyes 0.6 m apart: 0.610 of the load instead of 0.577 in the lower leg, and 2.9° of tilt."""
    ev = on_pick_points(left, right)
    stepped = {"eyes_apart_m": 0.6, "right_eye_higher_m": 0.05, "cg_x_m": 0.3, "cg_z_m": -0.3}
    beside = assess(TABLE, lift(both={"leg_length_m": 0.6}, **stepped), with_spread=False)
    for name in ("leg_share[left]", "leg_share[right]", "hung_tilt_along_deg"):
        assert ev[name] == pytest.approx(beside[name], rel=1e-9)
    assert ev["leg_share[left]"] > 0.6 and abs(ev["hung_tilt_along_deg"]) > 2.7


def test_alike_eyes_raise_the_hook_by_what_they_stand_and_nothing_else() -> None:
    flush, raised = on_pick_points(LUG, LUG), on_pick_points(standing(0.05), standing(0.05))
    assert raised["hook_height_m"] == pytest.approx(flush["hook_height_m"] + 0.05)
    assert raised["cg_below_m"] == flush["cg_below_m"]


@pytest.mark.parametrize("form, told", [("bow", Verdict.WITHIN), ("dee", Verdict.CANNOT)])
def test_two_legs_gather_in_a_bow_and_not_in_a_dee(form: str, told: Verdict) -> None:
    gathering = make("shackle", "S", {"wll_t": 4.75, "reach_m": 0.1, "mass_kg": 2.0, "form": form})
    assert assess(TABLE, lift(hook_fitting=gathering)).check("hook_fitting_strength").verdict is told


def test_the_limit_of_a_hook_says_that_it_is_from_memory() -> None:
    wide = {"eyes_apart_m": 1.5, "cg_x_m": 0.75}
    refused = assess(TABLE, lift(hook_fitting=NotUsed("none here"), **wide)).check("hook_fitting_strength")
    assert refused.verdict is Verdict.CANNOT and "(from memory)" in str(refused.stopped)
    assert "from memory" in refused.clause.rule_set
