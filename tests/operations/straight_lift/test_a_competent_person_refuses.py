"""Lifts whose figures alone look well and that a competent person refuses all the same."""

from typing import Any

import pytest

from checklist_app.mechanics.fittings.eye_marking import PullPlane
from checklist_app.mechanics.hanging.margin import push_that_slackens_kn
from checklist_app.mechanics.slings.kinds import Hitch
from checklist_app.mechanics.slings.slip import Face
from checklist_app.mechanics.slings.wrap import Stop
from checklist_app.operations.check import Verdict
from checklist_app.operations.evaluate import assess
from checklist_app.operations.gear import make
from checklist_app.operations.graph import DontKnow, NotUsed
from checklist_app.operations.straight_lift.choices import LegsGiven, Protected, Rig, ShareRule
from checklist_app.operations.task import Measured, Task
from tests.operations.straight_lift.lifts import NONE, TABLE, eye, hook, lift, shackle, sling
from tests.operations.straight_lift.rigged import four, narrow, one, rigged, two_hooks

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


WIDE = {"hitch": Hitch.BASKET, "stop": Stop.COLLAR, "eye": NONE}
BARE: dict[str, Any] = {"hook_fitting": NONE}


@pytest.mark.parametrize(("task", "name"), [
    (one({**WIDE, "part_angle_deg": 46.0}, **BARE), "hook_fitting_strength"),
    (one({**WIDE, "part_angle_deg": 46.0, "top_fitting": hook()}, **BARE), "top_fitting_strength[left]"),
    (lift(both={**WIDE, "part_angle_deg": 16.0}, **BARE), "hook_fitting_strength"),
    (lift(both={**WIDE, "part_angle_deg": 31.0}), "hook_fitting_strength"),
    (two_hooks(every={**WIDE, "part_angle_deg": 46.0}), "hook_hoist_strength[left]"),
])
def test_the_parts_of_a_basket_count_in_the_angle_of_what_gathers_them(task: Task, name: str) -> None:
    """90° in a hook, 120° in a bow or a link; the legs of the pair lie 60° apart by themselves."""
    check = assess(TABLE, task).check(name)
    assert check.verdict is Verdict.CANNOT and "angle between" in str(check.stopped)


def test_parts_that_a_shackle_gathers_at_the_top_pull_in_line_below_it() -> None:
    task = lift(both={**WIDE, "part_angle_deg": 40.0, "top_fitting": shackle()}, **BARE)
    assert assess(TABLE, task).verdict is Verdict.WITHIN


@pytest.mark.parametrize("turned", [PullPlane.ACROSS, DontKnow()])
def test_an_eye_is_not_pulled_across_its_ring_without_a_rating_for_that(turned: Any) -> None:
    """US practice: aslant only in the plane of the eye. In line there is no plane to turn out of."""
    aslant = assess(TABLE, lift(both={"eye": eye((5.0, 4.0), (45.0, 2.0)), "eye_turned": turned}))
    assert aslant.check("eye_strength[left]").verdict is Verdict.CANNOT
    assert assess(TABLE, one({"eye_turned": turned})).check("eye_strength[left]").verdict is Verdict.WITHIN


def test_heat_takes_from_the_figure_on_the_tag_too() -> None:
    """EN 818-4, grade 8, 10 mm: 3.15 t a leg, 4.25 t two legs to 45°; 90 % from 200 to 300 °C."""
    chain = make("chain_sling", "C", {
        "wll_t": 3.15, "length_m": 1.0, "mass_kg": 5.0, "grade": "grade 8", "size_mm": 10.0, "legs": 2,
        "wll_to_45_t": 4.25, "wll_to_60_t": 3.15,
    })
    check = assess(TABLE, lift(both={"sling": chain}, mass_kg=3900.0, sling_temperature_c=250.0)).check("pair_strength")
    assert check.verdict is Verdict.OVER and check.outcome.capacity == pytest.approx(0.9 * 4.25)


def test_webbing_on_a_rough_face_is_refused_where_it_touches_no_edge() -> None:
    rough = {**BASKET, "stop": Stop.COLLAR, "edge_mm": NotUsed("it touches no edge"), "edge_protected": Protected.ROUGH}
    assert assess(TABLE, lift(both=rough)).check("sling_strength[left]").verdict is Verdict.CANNOT
    assert assess(TABLE, lift(both=rough | {"edge_protected": Protected.YES})).verdict is Verdict.WITHIN


def test_three_of_four_legs_are_not_credited_where_the_legs_lie_unlike() -> None:
    lying: dict[str, Any] = {"cg_x_m": 0.17, "every": {"sling": sling(9.0)}}
    long = {"left_front": {"leg_length_m": 1.1}, "left_rear": {"leg_length_m": 1.1}}
    by_three = assess(TABLE, four(long, share_rule=ShareRule.THREE, **lying)).check("sling_strength[left_front]")
    assert by_three.verdict is Verdict.CANNOT and "choose another rule" in str(by_three.stopped)
    by_statics = assess(TABLE, four(long, share_rule=ShareRule.ANY_LENGTH, **lying))
    assert by_statics.check("sling_strength[left_front]").verdict is Verdict.WITHIN


TWO_LEGS = {"length_m": 1.0, "mass_kg": 5.0, "grade": "grade 8", "size_mm": 8.0, "legs": 2}


def test_a_tag_of_all_legs_is_not_taken_for_one_leg() -> None:
    """EN 818-4, grade 8, 8 mm: 2 t one leg; two legs 2.8 t to 45° and 2 t to 60°."""
    for wll_t in (2.8, 2.4):
        read_wrong = make("chain_sling", "C", TWO_LEGS | {"wll_t": wll_t, "wll_to_45_t": 2.8, "wll_to_60_t": 2.0})
        assert "one leg" in read_wrong.faults["wll_t"]
        assert assess(TABLE, lift(both={"sling": read_wrong})).verdict is Verdict.WAITING
    read_right = make("chain_sling", "C", TWO_LEGS | {"wll_t": 2.0, "wll_to_45_t": 2.8, "wll_to_60_t": 2.0})
    assert assess(TABLE, lift(both={"sling": read_right})).check("pair_strength").outcome.capacity == 2.8


def test_a_sling_of_several_legs_waits_for_the_figures_on_its_tag() -> None:
    untold = make("chain_sling", "C", TWO_LEGS | {"wll_t": 2.0})
    check = assess(TABLE, lift(both={"sling": untold})).check("pair_strength")
    assert check.verdict is Verdict.WAITING and "WLL of all legs" in str(check.stopped)


def test_a_dee_shackle_does_not_gather_the_parts_of_a_basket() -> None:
    dee = make("shackle", "S", {"wll_t": 4.75, "reach_m": 0.1, "mass_kg": 2.0, "form": "dee"})
    for part_deg, verdict in ((5.0, Verdict.WITHIN), (10.0, Verdict.CANNOT)):
        part = {**WIDE, "part_angle_deg": part_deg}
        assert assess(TABLE, one(part, hook_fitting=dee)).check("hook_fitting_strength").verdict is verdict
        at_top = assess(TABLE, one({**part, "top_fitting": dee}))
        assert at_top.check("top_fitting_strength[left]").verdict is verdict


def test_the_small_eye_of_a_collar_eyebolt_takes_no_hook() -> None:
    """BS 4278: a shackle that moves freely in it."""
    collar = make("eye", "E", {
        "ratings": [{"up_to_deg": 90.0, "wll_t": 9.0}], "reach_m": 0.05, "mass_kg": 0.5, "thread": "M30",
        "marking": "BS 4278 collar eyebolt, metric thread", "stamped_t": 4.0,
    })
    for fitting, verdict in ((hook(), Verdict.CANNOT), (shackle(), Verdict.WITHIN)):
        task = one({"eye": collar, "bottom_fitting": fitting, "eye_turned": PullPlane.IN_PLANE})
        assert assess(TABLE, task).check("eye_marking[left]").verdict is verdict


def by_hook(cg_x_m: float, length_m: float | None = 1.001) -> Task:
    long = {} if length_m is None else {"length_m": length_m}
    every = {"sling": make("round_sling", "R", {"wll_t": 9.0, "mass_kg": 1.0} | long), "leg_length_m": None}
    given = {"legs_given": LegsGiven.HOOK_HEIGHT, "hook_over_eyes_m": 0.866, "cg_x_m": Measured(cg_x_m, "drawing")}

    return lift(both=every, **given)


def test_two_like_slings_do_not_hang_level_a_load_that_is_heavier_on_one_side() -> None:
    """Two of 1 m, the centre of gravity 0.1 m off: 4.5° by statics, whatever height of the hook was measured."""
    check = assess(TABLE, by_hook(0.6)).check("tilt_along")
    assert check.verdict is Verdict.CANNOT and "by their lengths" in str(check.stopped)
    assert assess(TABLE, by_hook(0.6, None)).check("tilt_along").verdict is Verdict.CLOSE


def test_by_the_height_of_the_hook_a_doubt_of_the_centre_of_gravity_tilts_as_by_lengths() -> None:
    lengths = {"sling": make("round_sling", "R", {"wll_t": 9.0, "mass_kg": 1.0, "length_m": 1.0}), "leg_length_m": None}
    by_length = assess(TABLE, lift(both=lengths, cg_x_m=Measured(0.5, "drawing"))).check("tilt_along").worst
    assert assess(TABLE, by_hook(0.5)).check("tilt_along").worst.demand == pytest.approx(by_length.demand, rel=0.02)


def test_a_top_heavy_load_that_catches_at_its_underside_goes_over_by_less_than_a_push_at_its_top() -> None:
    """Its centre of gravity 0.1 m below its highest part and 3.2 m over its underside."""
    ev = assess(TABLE, four(cg_z_m=1.2, bottom_z_m=-2.0, top_z_m=1.3))
    share = push_that_slackens_kn(1.0, float(ev["cg_inside_of_edge_m"]), 3.2)
    check = ev.check("push_stability")
    assert check.outcome.capacity == pytest.approx(share) and check.verdict is Verdict.OVER
