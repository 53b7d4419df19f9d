"""What a straight lift refuses, waits for or leaves out, each in words a rigger can act on."""

from typing import Any

import pytest

from checklist_app.mechanics.slings.kinds import Hitch
from checklist_app.operations.check import Verdict
from checklist_app.operations.evaluate import Evaluation, assess
from checklist_app.operations.gear import make
from checklist_app.operations.graph import DontKnow
from checklist_app.operations.straight_lift.entries import EyesGiven
from checklist_app.operations.task import Key, Measured, Task
from tests.operations.straight_lift.lifts import NONE, TABLE, eye, hook, leg, lift, pick_point, shackle, sling, told


def of(ev: Evaluation, name: str) -> tuple[Verdict, str]:
    check = ev.check(name)

    return check.verdict, str(check.stopped)


def with_more(task: Task, group: str, label: str, answers: dict[str, Any]) -> Task:
    return task.with_row(group, label, {name: told(value) for name, value in answers.items()})


@pytest.mark.parametrize("task, name, words", [
    pytest.param(
        lift(both={"hitch": Hitch.BASKET, "part_angle_deg": 61.0}), "sling_strength[left]", "allowed: 0 to 60°",
        id="parts of a basket too far apart",
    ),
    pytest.param(with_more(lift(), "leg", "third", leg()), "pair_strength", "three legs", id="three legs"),
    pytest.param(
        with_more(with_more(lift(), "hook", "1", {}), "hook", "2", {}), "sling_strength[left]", "two hooks",
        id="two hooks",
    ),
    pytest.param(
        lift({"carrier": pick_point(ratings=[])}), "carrier_strength[left]", "what carries the eye has no rating",
        id="unrated pick point",
    ),
    pytest.param(
        lift(both={"eye": eye((5.0, 1.8), (20.0, 1.0))}), "eye_strength[right]", "30.0° from its axis; allowed",
        id="eye pulled further than it is rated",
    ),
    pytest.param(
        lift(both={"carrier": pick_point((20.0, 1.0))}), "carrier_strength[left]", "pull on the pick point is 30.0°",
        id="pick point pulled further than it is rated",
    ),
    pytest.param(
        lift(eyes_apart_m=1.8, cg_x_m=0.9), "pair_strength", "64.16; allowed: 0 to 60°", id="legs beyond 60°"
    ),
    pytest.param(lift(eyes_apart_m=2.1, cg_x_m=1.0), "leg_angle[left]", "legs that reach each other", id="too short"),
    pytest.param(lift(cg_x_m=1.4), "sling_strength[left]", "a leg is slack", id="slack leg"),
    pytest.param(lift(cg_y_m=DontKnow()), "sling_strength[left]", "crosswise is not known", id="crosswise not known"),
    pytest.param(lift(cg_z_m=0.0), "tilt_across", "from the line through the eyes is 0", id="on the line"),
    pytest.param(lift(cg_z_m=-1.2), "headroom", "does not lie between the underside", id="outside its body"),
    pytest.param(
        lift(
            {"eye_x_m": 0.0, "eye_y_m": 0.0, "eye_z_m": 0.0}, {"eye_x_m": 0.0, "eye_y_m": 0.0, "eye_z_m": 0.5},
            eyes_given=EyesGiven.COORDINATES,
        ), "sling_strength[left]", "eyes side by side, none above the other", id="eyes one above the other",
    ),
    pytest.param(
        lift(eyes_apart_m=1.5, cg_x_m=0.75, hook_fitting=hook()), "hook_fitting_strength", "straight in a hook is 97",
        id="two legs in one hook, 97° between them",
    ),
])
def test_it_cannot_be_assessed_and_says_why(task: Task, name: str, words: str) -> None:
    verdict, why = of(assess(TABLE, task, with_spread=False), name)
    assert verdict is Verdict.CANNOT
    assert words in why


@pytest.mark.parametrize("left_out, name, words", [
    ("mass_kg", "hoist_strength", "mass of the load"),
    ("hoist", "hoist_strength", "hoist"),
    ("cg_x_m", "sling_strength[left]", "centre of gravity, lengthwise"),
    ("cg_y_m", "tilt_across", "centre of gravity, crosswise"),
    ("cg_z_m", "stability", "centre of gravity, height"),
    ("right_eye_higher_m", "leg_angle[left]", "right eye higher than the left"),
    ("load_cell", "load_cell_strength", "load cell"),
    ("hook_fitting", "hook_fitting_strength", "fitting that gathers both legs"),
    ("highest_hook_m", "headroom", "highest hook saddle over the floor"),
    ("room_height_m", "room", "height of the room"),
    ("eyes_given", "sling_strength[left]", "how the eyes are given"),
])
def test_what_is_missing_is_waited_for_by_name(left_out: str, name: str, words: str) -> None:
    verdict, why = of(assess(TABLE, lift(**{left_out: None}), with_spread=False), name)
    assert verdict is Verdict.WAITING
    assert words in why


@pytest.mark.parametrize("left_out, name, words", [
    ("sling", "sling_strength[left]", "sling, left"), ("hitch", "sling_strength[left]", "hitch, left"),
    ("eye", "eye_strength[left]", "eye, left"), ("carrier", "carrier_strength[left]", "what carries the eye, left"),
    ("top_fitting", "top_fitting_strength[left]", "fitting at the top, left"),
    ("bottom_fitting", "bottom_fitting_strength[left]", "fitting at the bottom, left"),
])
def test_a_slot_never_answered_waits(left_out: str, name: str, words: str) -> None:
    verdict, why = of(assess(TABLE, lift({left_out: None}), with_spread=False), name)
    assert verdict is Verdict.WAITING
    assert words in why


def test_an_empty_task_is_waiting_and_nothing_of_it_is_within_limit() -> None:
    ev = assess(TABLE, Task())
    assert ev.verdict is Verdict.WAITING and ev.governs is None
    assert Verdict.WITHIN not in {check.verdict for check in ev.checks}


def test_a_number_without_a_word_on_how_it_was_obtained_waits() -> None:
    task = lift().changed({Key("mass_kg"): Measured(1000.0)})
    verdict, why = of(assess(TABLE, task), "hoist_strength")
    assert verdict is Verdict.WAITING and "how mass of the load was obtained" in why
    assert assess(TABLE, task, with_spread=False).check("hoist_strength").verdict is Verdict.WITHIN


def test_a_pick_point_whose_rating_has_no_evidence_waits_for_it() -> None:
    bare = pick_point(evidence=None)
    verdict, why = of(assess(TABLE, lift({"carrier": bare}), with_spread=False), "carrier_strength[left]")
    assert verdict is Verdict.WAITING and "evidence for the rating" in why


def test_gear_without_its_own_mass_is_waited_for_when_the_rigging_is_added_up() -> None:
    light = make("round_sling", "R-9", {"wll_t": 2.0, "length_m": 1.0})
    verdict, why = of(assess(TABLE, lift({"sling": light}, rigging_kg=None), with_spread=False), "hoist_strength")
    assert verdict is Verdict.WAITING and "own mass of R-9" in why


def test_two_slings_straight_on_the_hoists_hook_need_no_fitting_up_to_90_degrees() -> None:
    steep = assess(TABLE, lift(hook_fitting=NONE), with_spread=False)
    flat = assess(TABLE, lift(hook_fitting=NONE, eyes_apart_m=1.5, cg_x_m=0.75), with_spread=False)
    assert of(steep, "hook_fitting_strength")[0] is Verdict.NOT_APPLICABLE
    assert of(flat, "hook_fitting_strength")[0] is Verdict.CANNOT


@pytest.mark.parametrize("leg_m, verdict", [
    (1.20, Verdict.WITHIN), (1.31, Verdict.WITHIN), (1.33, Verdict.CANNOT), (1.07, Verdict.CANNOT),
    (3.0, Verdict.CANNOT),
])
def test_a_measured_leg_that_is_not_its_sling_and_fittings_is_asked_back(leg_m: float, verdict: Verdict) -> None:
    """1.10 m of sling and 0.10 m of shackle; a leg read 1.80 m too long would hide how flat the slings lie."""
    own = {"sling": sling(length_m=1.1), "bottom_fitting": shackle(2.0, 0.1, "S-2"), "leg_length_m": leg_m}
    check = assess(TABLE, lift(both=own), with_spread=False).check("sling_strength[left]")
    assert check.verdict is verdict
    assert verdict is Verdict.WITHIN or "not what its sling and fittings make" in str(check.stopped)


def test_a_measured_leg_stands_by_itself_where_the_length_of_the_sling_is_not_known() -> None:
    bare = make("round_sling", "R-9", {"wll_t": 2.0, "mass_kg": 1.0})
    ev = assess(TABLE, lift(both={"sling": bare, "leg_length_m": 1.4}), with_spread=False)
    assert ev.check("sling_strength[left]").verdict is Verdict.WITHIN


def test_legs_further_than_15_degrees_apart_are_judged_leg_by_leg_only() -> None:
    ev = assess(TABLE, lift({"leg_length_m": 0.75}, {"leg_length_m": 1.2}, cg_x_m=0.3), with_spread=False)
    verdict, why = of(ev, "pair_strength")
    assert verdict is Verdict.NOT_APPLICABLE and "within 15°" in why
    assert ev.check("sling_strength[left]").verdict is Verdict.WITHIN


def test_the_weaker_sling_rates_the_pair() -> None:
    ev = assess(TABLE, lift({"sling": sling(1.0)}, {"sling": sling(3.0)}), with_spread=False)
    assert ev.check("pair_strength").outcome[1] == pytest.approx(1.4)
