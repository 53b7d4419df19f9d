"""What else is looked at before a lashed load is signed: pallet, forks, floor, angles, edges, deck, and their words."""

from typing import Any

import pytest

from checklist_app.mechanics.lashing.crossing import Body
from checklist_app.mechanics.lashing.friction import Pair, Surface
from checklist_app.mechanics.lashing.pallet import Bearing
from checklist_app.mechanics.lashing.rule_sets import RuleSet
from checklist_app.operations.check import Limit, State, Strength, Verdict
from checklist_app.operations.evaluate import Evaluation, assess
from checklist_app.operations.gear import GearState
from checklist_app.operations.graph import NotApplicable
from checklist_app.operations.lashing.choices import BlockedBy, Blocks, ForksEnter, Lies, Passes
from checklist_app.operations.task import Task
from checklist_app.operations.words import demand_said
from tests.operations.lashing.lashed_tasks import (
    NONE,
    PALLET,
    VEHICLE,
    block,
    diagonal,
    four,
    lorry,
    on_pallet,
    on_vehicle,
    round_both,
    skid,
    strap,
    tie_down,
)

IN_USE = GearState("in service", (), "2027-05-01", True)
DECK_LOW = {"anchor_z_m": 0.0}


def packed(task: Task) -> Evaluation:
    return assess(PALLET, task, with_spread=False)


def loaded(task: Task) -> Evaluation:
    return assess(VEHICLE, task, with_spread=False)


def test_a_load_that_holds_is_within_in_every_check_of_both_operations() -> None:
    for ev in (packed(on_pallet()), loaded(on_vehicle())):
        assert ev.verdict is Verdict.WITHIN
        assert {check.verdict for check in ev.checks} <= {Verdict.WITHIN, Verdict.NOT_APPLICABLE}


def test_forces_and_floors_are_said_in_whole_numbers_as_labels_print_them() -> None:
    ev = loaded(on_vehicle(cg_x_m=0.071))
    assert demand_said(ev.check("deck_floor")) == "978 of 5000\u00a0kg/m"
    assert demand_said(ev.check("anchor_rating[1]")) == "2000 of 2000\u00a0daN"


# At least one lashing, whatever friction does.


def test_trap_friction_alone_holds_it_and_a_lashing_is_wanted_all_the_same() -> None:
    """EN 12195-1: where the friction factor is at least the acceleration no tie-down is needed by the formula."""
    mat = {"load_pair": Pair.MAT, "load_surface": Surface.CLEAN_DRY, "cg_z_m": 0.2}
    ev = packed(on_pallet((), **mat))
    assert ev.check("sliding[to the left]").verdict is Verdict.CLOSE
    assert ev.check("wandering").outcome == State(
        False, "nothing holds it down: friction holds it on paper, and it wanders and jumps on the road"
    )
    assert packed(on_pallet((tie_down(),), **mat)).check("wandering").verdict is Verdict.WITHIN


@pytest.mark.parametrize("rule_set, name", [
    (RuleSet.US, "aggregate_wll"), (RuleSet.US, "held_down"), (RuleSet.NTC, "held_down"),
])
def test_what_no_lashing_holds_is_refused_in_words(rule_set: RuleSet, name: str) -> None:
    ev = packed(on_pallet((), rule_set=rule_set))
    assert str(ev.check(name).stopped) == "no lashing holds it to what it stands on"
    assert ev.verdict is Verdict.OVER


def test_bolts_hold_it_down_and_chocks_do_not() -> None:
    bolted = packed(on_pallet((), (block(Blocks.FORWARD, BlockedBy.BOLTS),)))
    chocked = packed(on_pallet((), (block(Blocks.FORWARD, BlockedBy.CHOCK),)))
    assert bolted.check("wandering").outcome == State(True, "bolted to what it stands on")
    assert chocked.check("wandering").verdict is Verdict.OVER


def test_trap_a_strap_round_load_and_pallet_holds_nothing_on_the_deck() -> None:
    ev = loaded(on_vehicle((round_both(-0.3), round_both(0.3))))
    assert ev.check("load_wandering").outcome == State(True, "2 of 2 lashings go over the load")
    assert ev.check("wandering").verdict is Verdict.OVER


def test_a_lashing_on_the_pallet_alone_holds_nothing_of_what_stands_on_it() -> None:
    ev = loaded(on_vehicle(four(Body.DECK, from_body=Body.PALLET, at_z_m=-0.05)))
    assert ev.check("wandering").verdict is Verdict.WITHIN
    assert ev.check("load_wandering").verdict is Verdict.OVER


def test_without_a_pallet_there_is_one_face() -> None:
    ev = loaded(on_vehicle(four(Body.DECK, **DECK_LOW), pallet=NONE, deck_pair=None))
    assert isinstance(ev.check("load_wandering").outcome, NotApplicable)
    assert ev.check("wandering").verdict is Verdict.WITHIN
    assert ev.verdict is Verdict.WITHIN


@pytest.mark.parametrize("by, on, fewest", [
    pytest.param(BlockedBy.HEADBOARD, Body.DECK, 1.0, id="a headboard blocks it"),
    pytest.param(BlockedBy.GIVES, Body.DECK, 2.0, id="what gives before it holds does not"),
    pytest.param(BlockedBy.CHOCK, Body.PALLET, 2.0, id="a chock on the pallet blocks nothing on the deck"),
])
def test_what_counts_as_blocked_forwards(by: BlockedBy, on: Body, fewest: float) -> None:
    """49 CFR 393.110: fewer lashings where the load stands against something forwards."""
    ev = loaded(on_vehicle(blocks=(block(Blocks.FORWARD, by, on, block_dan=500.0),), rule_set=RuleSet.US))
    assert ev.check("lashing_number").outcome == Limit(fewest, 4.0)


# Pallet, floor, forks.


def test_a_mark_for_an_even_load_says_nothing_of_feet() -> None:
    ev = packed(on_pallet(pallet=skid(rated_for=Bearing.EVEN.value)))
    assert str(ev.check("pallet_strength").stopped) == (
        "how the load stands on the pallet is on feet, anywhere on the deck; allowed: spread evenly, as it is rated; "
        "or a spreader under the feet"
    )


@pytest.mark.parametrize("base, inside_m", [
    pytest.param({"base_length_m": 1.0, "base_width_m": 0.7}, 0.15, id="inside, by the sides"),
    pytest.param({"base_length_m": 1.4, "base_width_m": 0.7}, 0.0, id="just on the edge"),
    pytest.param({"base_length_m": 1.5, "base_width_m": 0.7}, -0.05, id="a foot beyond the end"),
    pytest.param({"base_length_m": 0.7, "base_width_m": 1.3, "pallet_lies": Lies.EITHER}, 0.05,
                 id="the skid lies crosswise, as the load does"),
    pytest.param({"base_length_m": 0.7, "base_width_m": 1.3, "pallet_lies": Lies.CROSSWISE}, 0.05, id="said so"),
    pytest.param({"base_length_m": 1.2, "base_width_m": 0.7, "pallet_lies": Lies.CROSSWISE}, -0.1, id="turned"),
])
def test_a_foot_beyond_the_edge_is_refused(base: dict[str, Any], inside_m: float) -> None:
    found = packed(on_pallet(**base)).check("overhang")
    assert found.outcome == pytest.approx((0.0, inside_m, False), abs=1e-12)
    assert found.verdict is (Verdict.OVER if inside_m < -1e-9 else Verdict.WITHIN)


def test_common_practice_without_source_the_lashing_passes_under_the_whole_pallet() -> None:
    """P14: not through it."""
    def told(passes: Passes, **facts: Any) -> Any:
        return packed(on_pallet((round_both(passes=passes),), pallet=skid(**facts))).check("strap_through_pallet[1]")
    assert told(Passes.UNDER_WHOLE_PALLET).outcome.holds
    through = told(Passes.THROUGH_PALLET)
    assert through.verdict is Verdict.OVER
    assert through.outcome.reason == (
        "through the pallet, under some of its boards, and nobody knows what the boards of P-1 hold"
    )
    known = told(Passes.THROUGH_PALLET, boards_dan=900.0)
    assert known.verdict is Verdict.WITHIN
    assert known.caution == "through the pallet: common practice lays a strap under the whole of it"


def test_by_hand_the_floor_under_the_bearers() -> None:
    """1050 kg on two bearers of 1.4 m are 375 kg/m; 0.05 m off crosswise on 1 m, 0.07 m lengthways on 1.4 m: + 60 %."""
    assert packed(on_pallet()).check("floor_load").outcome == Strength(375.0, 2000.0)
    off = packed(on_pallet(cg_x_m=0.07, cg_y_m=-0.05)).check("floor_load").outcome
    assert off == pytest.approx(Strength(600.0, 2000.0), rel=1e-12)
    assert isinstance(packed(on_pallet(floor_kg_m=NONE)).check("floor_load").outcome, NotApplicable)


@pytest.mark.parametrize("changes, goes_over_deg", [
    pytest.param({}, 33.690, id="by hand, from a side: sides 0.5 m, tips 0.5 m, 0.75 m up"),
    pytest.param({"forks_apart_m": 0.5}, 18.435, id="by hand, forks close together: 0.25 m at 0.75 m"),
    pytest.param({"forks_apart_m": 0.5, "cg_x_m": 0.05}, 14.931, id="by hand, from a side: 0.2 m left of the fork"),
    pytest.param({"forks_apart_m": 0.5, "cg_y_m": 0.05}, 18.435, id="by hand, from a side: crosswise it is the tips"),
    pytest.param({"forks_enter": ForksEnter.END}, 21.801, id="by hand, at an end: 0.3 m to the tips"),
    pytest.param({"forks_enter": ForksEnter.END, "forks_reach_m": 1.6}, 33.690, id="by hand, tips beyond the skid"),
    pytest.param({"forks_apart_m": 1.8, "forks_reach_m": 2.0}, 33.690, id="by hand, forks wider than the skid is deep"),
    pytest.param({"forks_enter": ForksEnter.END, "forks_apart_m": 1.3, "forks_reach_m": 1.6, "cg_z_m": 0.85}, 26.565,
                 id="by hand, at an end, forks beyond the sides of the skid: 0.5 m at 1.0 m"),
    pytest.param({"forks_reach_m": 0.7}, 14.931, id="by hand, short forks: 0.2 m to the tips"),
])
def test_tilt_at_which_it_goes_over_on_the_forks(changes: dict[str, Any], goes_over_deg: float) -> None:
    """atan(level / height), the forks no lower than the underside of the skid: 0.6 + 0.15 m. Against 10° and
    atan 0.1 = 5.711° for braking."""
    found = packed(on_pallet(**changes)).check("fork_tilt")
    assert found.outcome == pytest.approx((15.711, goes_over_deg, False), abs=0.001)
    assert found.verdict is (Verdict.OVER if goes_over_deg < 15.7 else
                             Verdict.CLOSE if goes_over_deg < 20.7 else Verdict.WITHIN)


def test_a_centre_of_gravity_beyond_the_tips_is_refused() -> None:
    found = packed(on_pallet(forks_reach_m=0.45)).check("fork_tilt")
    assert str(found.stopped) == (
        "centre of gravity inside the forks is -0.05; allowed: above 0: between the forks, short of their tips"
    )


def test_without_a_truck_nobody_asks_for_forks() -> None:
    ev = packed(on_pallet(forks_apart_m=NONE, forks_reach_m=None, forks_enter=None))
    assert isinstance(ev.check("fork_tilt").outcome, NotApplicable)
    assert ev.verdict is Verdict.WITHIN


@pytest.mark.parametrize("task, name, words", [
    (on_pallet(forks_reach_m=None), "fork_tilt", "how far the forks reach under it"),
    (on_pallet(forks_enter=None), "fork_tilt", "from where the truck takes it"),
    (on_pallet(forks_apart_m=None), "fork_tilt", "forks, outer edge to outer edge"),
    (on_pallet(floor_kg_m=None), "floor_load", "what a metre of the floor takes along a bearer"),
    (on_pallet(pallet=skid(bearers=None)), "floor_load", "bearers under it of P-1"),
    (on_pallet(pallet=skid(rated_kg=None, rated_for=None)), "pallet_strength", "rating of P-1"),
    (on_pallet(pallet=skid(mass_kg=None)), "floor_load", "own mass of P-1"),
    (on_pallet((tie_down(lashing_item=strap("L-07", stf_dan=None)),)), "tie_down_label[1]", "STF on the label of L-07"),
    (on_pallet((diagonal(edges=None),)), "edge_guarded[1]", "where it bends, 1"),
    (on_pallet(load_pair=None), "steel_on_steel", "what meets under the load"),
])
def test_what_is_missing_on_the_pallet_is_waited_for_by_name(task: Task, name: str, words: str) -> None:
    found = packed(task).check(name)
    assert (found.verdict, str(found.stopped)) == (Verdict.WAITING, words)


@pytest.mark.parametrize("task, name, words", [
    (on_vehicle(vehicle=lorry(anchor_dan=None)), "anchor_rating[1]", "rating of its anchor points of V-1"),
    (on_vehicle(blocks=(block(Blocks.FORWARD, BlockedBy.HEADBOARD, Body.DECK),), vehicle=lorry(headboard_dan=None)),
     "headboard_rating[1]", "what its headboard holds of V-1"),
    (on_vehicle(vehicle=lorry(payload_kg=None)), "payload", "payload of V-1"),
    (on_vehicle(vehicle=lorry(floor_kg_m=None)), "deck_floor", "what a metre of the floor takes of V-1"),
    (on_vehicle(vehicle=lorry(load_plan=None, wheelbase_m=None)), "load_plan", "its load plan of V-1"),
    (on_vehicle(vehicle=lorry(load_plan=None, wheelbase_m=None)), "rear_axle", "wheelbase of V-1"),
    (on_vehicle(vehicle=lorry(load_plan=None, front_axle_kg=None)), "front_axle",
     "what the front axle may get from the load of V-1"),
    (on_vehicle(other_kg=None), "payload", "other load on the vehicle"),
    (on_vehicle(other_kg=500.0), "load_plan", "centre of gravity of the other load, behind the headboard"),
    (on_vehicle(behind_headboard_m=None), "on_deck", "middle of the load behind the headboard"),
    (on_vehicle(pallet=skid(mass_kg=None)), "payload", "own mass of P-1"),
    (on_vehicle(deck_pair=None), "steel_on_steel", "what meets on the deck under the pallet"),
])
def test_what_is_missing_on_the_vehicle_is_waited_for_by_name(task: Task, name: str, words: str) -> None:
    found = loaded(task).check(name)
    assert (found.verdict, str(found.stopped)) == (Verdict.WAITING, words)
