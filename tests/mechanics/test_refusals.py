"""Outside what a clause covers it refuses, in words a rigger can act on."""

import math
from collections.abc import Callable

import pytest

from checklist_app.mechanics import (
    angle_limits,
    angle_ratings,
    attitude,
    headroom,
    leg_tension,
    lift_class,
    shackles,
    stability,
    suspension,
    weight,
)
from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.slings import rules
from checklist_app.mechanics.slings.kinds import RuleSet

STEPS = ((0.0, 1.2), (45.0, 0.86))


@pytest.mark.parametrize("call, words", [
    (lambda: rules.bridle_factor(RuleSet.EN, 2, 62.0), "62; allowed: 0 to 60°"),
    (lambda: rules.bridle_factor(RuleSet.EN, 2, math.nan), "nan; allowed: 0 to 60°"),
    (lambda: rules.bridle_factor(RuleSet.EN, 2, -1.0), "-1; allowed: 0 to 60°"),
    (lambda: angle_ratings.wll_at_angle_t("eye", STEPS, 46.0, "PLATE"), "46.0° from its axis; allowed: pull up to 45°"),
    (lambda: angle_ratings.wll_at_angle_t("eye", (), 0.0, "PLATE"), "allowed: a rated eye"),
    (lambda: angle_ratings.wll_at_angle_t("eye", STEPS, math.nan, "PLATE"), "angle of the pull is nan"),
    (lambda: shackles.bow_wll_t(2.0, 121.0), "121; allowed: 0 to 120°"),
    (lambda: shackles.bow_wll_t(2.0, math.nan), "nan; allowed: 0 to 120°"),
    (lambda: shackles.hook_wll_t(2.0, 91.0), r"91; allowed: 0 to 90° \(from memory\); more in a bow shackle"),
    (lambda: weight.gross_mass_kg(0.0, 0.0), "mass of the load is 0"),
    (lambda: weight.gross_mass_kg(math.nan, 0.0), "mass of the load is nan"),
    (lambda: weight.gross_mass_kg(1000.0, -1.0), "mass of the rigging is -1"),
    (lambda: weight.gross_load_t(1000.0, 0.9), "dynamic factor above 1 is -0.1"),
    (lambda: weight.gross_load_t(math.inf, 1.0), "mass on the hook is inf"),
    (lambda: weight.weight_kn(-1.0), "mass is -1"),
    (lambda: suspension.level_between_eyes_m(0.0, 0.0), "is 0; allowed: eyes side by side, none above the other"),
    (lambda: suspension.level_between_eyes_m(math.nan, 0.0), "level distance between the eyes is nan"),
    (lambda: suspension.cg_along_pick_line_m(0.5, 0.0, 1.0, 0.0, 0.0), "distance between the eyes is 0"),
    (lambda: suspension.cg_beside_pick_line_m(0.5, 0.0, 1.0, 0.0, 0.0), "level distance between the eyes is 0"),
    (lambda: attitude.level_share_m(0.1, 1.0, 1.0, (1.0, 0.0, 0.0)), "distance between the eyes is 0"),
    (lambda: attitude.upward_share_m(0.1, 1.0, 1.0, (1.0, 0.0, math.nan)), "distance between the eyes is nan"),
    (lambda: stability.cg_below_pick_line_m(0.5, 0.0, 1.0, 0.0, 0.0), "distance between the eyes is 0"),
    (lambda: leg_tension.eye_drop_m(0.5, 0.9, 0.0, 1.3, 0.0), "gravity below the hook is 0"),
    (lambda: leg_tension.eye_reach_m(0.5, 0.9, 0.0, 1.3, math.nan), "gravity below the hook is nan"),
    (lambda: suspension.hook_along_pick_line_m(1.0, 0.0, 1.0), "length of the left leg is 0"),
    (lambda: suspension.hook_along_pick_line_m(1.0, 1.0, math.nan), "length of the right leg is nan"),
    (lambda: suspension.hook_off_pick_line_m(0.5, 0.5), "open; allowed: legs that reach each other"),
    (lambda: attitude.legs_upright(0.0, 0.0), "gravity from the line through the eyes is 0"),
    (lambda: attitude.legs_aside(0.0, 0.0), "gravity from the line through the eyes is 0"),
    (lambda: leg_tension.share_of_leg(1.0, 1.0, -0.1, 1.0, 0.5), "a leg is slack"),
    (lambda: leg_tension.share_of_leg(1.0, 1.0, math.nan, 1.0, 0.5), "a leg is slack"),
    (lambda: leg_tension.share_of_leg(1.0, 0.0, 0.5, 0.0, 0.5), "height of the hook over the eyes is 0"),
    (lambda: leg_tension.angle_from_vertical_deg(math.nan, 1.0), "length of a leg is nan"),
    (lambda: angle_limits.legs_alike(math.nan, 10.0), "left leg from vertical is nan"),
    (lambda: angle_limits.legs_alike(10.0, math.nan), "right leg from vertical is nan"),
    (lambda: headroom.hook_height_m(-0.1, 1.0, 0.0), "underside over the floor is -0.1"),
    (lambda: headroom.hook_height_m(0.1, 1.0, math.nan), "reach of the fittings is nan"),
    (lambda: headroom.left_above_m(math.nan, 1.0), "height there is is nan"),
    (lambda: lift_class.class_by_utilisation(math.nan), "utilisation is nan"),
    (lambda: lift_class.class_by_knowledge(0.9, cg_is_known=True), "highest mass / stated mass is 0.9"),
])
def test_it_refuses_in_words(call: Callable[[], object], words: str) -> None:
    with pytest.raises(OutOfRangeError, match=words):
        call()


def test_the_facts_of_a_refusal_are_attributes() -> None:
    with pytest.raises(OutOfRangeError, match="62") as caught:
        rules.bridle_factor(RuleSet.EN, 2, 62.0)

    refusal = caught.value
    assert (refusal.value, refusal.allowed, refusal.source) == (62.0, "0 to 60°", "EN_1492_1")


def test_published_62_degrees_from_vertical_is_refused() -> None:
    """DGUV and EN 818-4: no leg beyond 60° from vertical."""
    with pytest.raises(OutOfRangeError, match="0 to 60°"):
        rules.bridle_factor(RuleSet.EN, 2, 62.0)
    assert angle_limits.leg_from_vertical_limit_deg() == 60.0


@pytest.mark.parametrize("left_deg, right_deg, alike", [
    pytest.param(20.0, 38.0, False, id="EN 818-6: 18° apart is not symmetric"),
    pytest.param(40.0, 40.0, True, id="EN 818-6: equal angles"),
    pytest.param(30.0, 45.0, True, id="by_hand: 15° apart still is"),
])
def test_legs_within_15_degrees_count_as_symmetric(left_deg: float, right_deg: float, alike: bool) -> None:
    assert angle_limits.legs_alike(left_deg, right_deg) is alike


def test_a_refusal_just_beyond_the_bound_does_not_print_the_bound_itself() -> None:
    with pytest.raises(OutOfRangeError, match=r"is 120\.02; allowed: 0 to 120°"):
        shackles.bow_wll_t(2.0, 120.02)
