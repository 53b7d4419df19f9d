"""What nobody knows is left to the trial only where a trial could tell it better; what turns over decides first."""

import pytest

from checklist_app.operations.check import Verdict
from checklist_app.operations.evaluate import assess
from checklist_app.operations.graph import DontKnow
from checklist_app.operations.straight_lift.entries import EyesGiven
from tests.operations.straight_lift.lifts import TABLE, lift


def test_a_tilt_that_is_over_wherever_the_unknown_lies_is_over_limit_and_not_left_to_the_trial() -> None:
    """0.3 m beside the eyes and at most 1.1 m below them: 9° at the least, however high the centre of gravity is."""
    high = {"cg_z_m": DontKnow(), "top_z_m": -0.1, "bottom_z_m": -1.2}
    for with_spread in (True, False):
        tilt = assess(TABLE, lift(cg_y_m=0.3, **high), with_spread).check("tilt_across")
        assert not tilt.found_at_trial and tilt.verdict is Verdict.OVER
        tilt = assess(TABLE, lift(cg_y_m=0.05, **high), with_spread).check("tilt_across")
        assert tilt.found_at_trial and tilt.verdict is Verdict.CLOSE


def test_a_window_that_only_a_narrow_place_of_the_unknown_gives_is_still_left_to_the_trial() -> None:
    """Legs of 4 and 4.6 m on eyes 4 m apart: within 3° only over about 0.4 m of 4 m, not at the middle."""
    long = {"eyes_apart_m": 4.0, "cg_x_m": DontKnow(), "highest_hook_m": 9.0, "room_height_m": 9.0}
    tilt = assess(TABLE, lift({"leg_length_m": 4.0}, {"leg_length_m": 4.6}, **long)).check("tilt_along")
    assert tilt.nominal_verdict is Verdict.OVER
    assert tilt.found_at_trial and tilt.verdict is Verdict.CLOSE


@pytest.mark.parametrize("across_m, told", [(0.0, Verdict.CLOSE), (0.2, Verdict.CLOSE), (0.3, Verdict.CANNOT)])
def test_unknown_lengthwise_is_bounded_by_the_eyes_only_where_they_lie_along_the_load(
    across_m: float, told: Verdict
) -> None:
    places = {"eyes_given": EyesGiven.COORDINATES, "eyes_apart_m": None, "right_eye_higher_m": None}
    left, right = ({"eye_x_m": x, "eye_y_m": y, "eye_z_m": 0.0} for x, y in ((0.0, 0.0), (1.0, across_m)))
    ev = assess(TABLE, lift(left, right, cg_x_m=DontKnow(), cg_y_m=across_m / 2.0, **places), with_spread=False)
    assert ev.verdict is told


def test_with_the_eyes_across_the_load_an_unknown_centre_of_gravity_lengthwise_cannot_be_assessed() -> None:
    """Where it lies across the line through the eyes turns the load over that line: nothing bounds it."""
    places = {"eyes_given": EyesGiven.COORDINATES, "eyes_apart_m": None, "right_eye_higher_m": None}
    left, right = ({"eye_x_m": 0.0, "eye_y_m": y, "eye_z_m": 0.0} for y in (-0.4, 0.4))
    ev = assess(TABLE, lift(left, right, cg_x_m=DontKnow(), **places))
    assert ev.verdict is Verdict.CANNOT
    assert "along the load" in str(ev.check("eye_strength[left]").stopped)


def test_what_turns_over_governs_before_how_far_it_then_tilts() -> None:
    ev = assess(TABLE, lift(cg_z_m=0.1), with_spread=False)
    assert ev.check("tilt_along").verdict is Verdict.OVER
    assert ev.governs is not None and ev.governs.name == "stability"
