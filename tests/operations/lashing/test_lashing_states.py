"""The state of each lashing, what its angles say, what it is hooked to, and the class of the whole."""

from typing import Any

import pytest

from checklist_app.mechanics.lashing.crossing import Body
from checklist_app.mechanics.lashing.direct import Kind
from checklist_app.mechanics.lashing.friction import Pair
from checklist_app.mechanics.lashing.rule_sets import RuleSet
from checklist_app.mechanics.lift_class import LiftClass
from checklist_app.operations.check import Limit, State, Strength, Verdict
from checklist_app.operations.evaluate import Evaluation, assess
from checklist_app.operations.gear import GearState
from checklist_app.operations.graph import DontKnow, NotApplicable
from checklist_app.operations.lashing.choices import BlockedBy, Blocks, Edges, FarEnd, Tensioned
from checklist_app.operations.task import Measured, Task
from tests.operations.lashing.lashed_tasks import (
    NONE,
    PALLET,
    VEHICLE,
    at,
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
LATE = GearState("in service", (), "2026-11-24", True)
NEVER = GearState("in service", (), "", True)
TORN = GearState("in service", ("edge cut",), "2027-05-01", True)
NO_LABEL = GearState("in service", (), "2027-05-01", False)
STEEL = "most hauliers refuse it: steel slides on steel, and oil leaves no friction at all; put wood or a mat between"


def packed(task: Task) -> Evaluation:
    return assess(PALLET, task, with_spread=False)


def loaded(task: Task) -> Evaluation:
    return assess(VEHICLE, task, with_spread=False)


@pytest.mark.parametrize("state, holds, reason", [
    (IN_USE, True, "L-1: in service, marked, next examination due 1 May 2027"),
    (LATE, False, "L-1: its examination was due 24 November 2026"),
    (NEVER, False, "L-1: no examination is entered"),
    (TORN, False, "L-1: in quarantine: edge cut"),
    (NO_LABEL, False, "L-1: its marking cannot be read"),
])
def test_a_lashing_is_used_in_date_with_a_label_and_out_of_quarantine(
    state: GearState, holds: bool, reason: str
) -> None:
    ev = packed(on_pallet((diagonal(lashing_item=strap(state=state)),)))
    assert ev.check("lashing_usable[1]").outcome == State(holds, reason)


@pytest.mark.parametrize("state, holds, reason", [
    (NEVER, True, "in service, marked"),
    (LATE, True, "in service, marked"),
    (TORN, False, "in quarantine: edge cut"),
    (NO_LABEL, False, "its marking cannot be read"),
    (GearState("scrapped", (), "", True), False, "is scrapped"),
])
def test_pallet_and_vehicle_have_no_examination_of_ours(state: GearState, holds: bool, reason: str) -> None:
    ev = loaded(on_vehicle(pallet=skid(state=state), vehicle=lorry(state=state)))
    assert ev.check("pallet_usable").outcome == State(holds, f"P-1: {reason}")
    assert ev.check("vehicle_usable").outcome == State(holds, f"V-1: {reason}")


def test_what_was_typed_in_is_vouched_for_by_nobody() -> None:
    ev = loaded(on_vehicle())
    for name in ("pallet_usable", "vehicle_usable", "lashing_usable[1]"):
        assert str(ev.check(name).outcome) == "typed in, not from the register: cannot be signed"


@pytest.mark.parametrize("edges, told", [
    (Edges.GUARDED, Verdict.WITHIN), (Edges.NO_EDGE, Verdict.WITHIN), (Edges.BARE, Verdict.OVER),
])
def test_no_lashing_over_a_bare_edge(edges: Edges, told: Verdict) -> None:
    assert packed(on_pallet((diagonal(edges=edges),))).check("edge_guarded[1]").verdict is told


def test_without_stf_a_lashing_holds_directly_or_by_an_instrument() -> None:
    """EN 12195-2: without STF on the label it is no tie-down."""
    bare = strap("L-07", stf_dan=None)
    assert packed(on_pallet((tie_down(lashing_item=bare),))).check("tie_down_label[1]").verdict is Verdict.WAITING
    read = tie_down(lashing_item=bare, tensioned=Tensioned.MEASURED, tension_dan=300.0)
    assert packed(on_pallet((read,))).check("tie_down_label[1]").outcome == State(True, "read on an instrument")
    direct = packed(on_pallet((diagonal(lashing_item=bare),))).check("tie_down_label[1]")
    assert isinstance(direct.outcome, NotApplicable)


def test_by_american_labels_the_wll_stands_where_lc_does() -> None:
    """EN 12195-2 limits of STF against a WLL of 1000 kg, 980.665 daN as a force."""
    only_wll = strap(lc_dan=None, wll_kg=1000.0, stf_dan=350.0)
    task = on_pallet((tie_down(lashing_item=only_wll),), rule_set=RuleSet.US)
    assert packed(task).check("tie_down_label[1]").outcome == State(
        True, "STF 350 daN with 980.7 daN in straight pull"
    )


@pytest.mark.parametrize("read_deg, told", [
    (45.0, Verdict.WITHIN), (41.5, Verdict.CLOSE), (39.0, Verdict.OVER), (51.0, Verdict.OVER),
])
def test_the_slope_as_read_agrees_with_the_two_ends(read_deg: float, told: Verdict) -> None:
    """By hand: 0.8 m down over 0.8 m level is 45°."""
    row = diagonal(**at("anchor", 1.3, 0.35, 0.0), slope_read_deg=read_deg)
    found = packed(on_pallet((row,))).check("slope_agrees[1]")
    assert found.outcome == pytest.approx((abs(45.0 - read_deg), 5.0, False), abs=1e-9)
    assert found.verdict is told


@pytest.mark.parametrize("read_deg, told", [(30.0, Verdict.WITHIN), (36.0, Verdict.OVER), (60.0, Verdict.OVER)])
def test_the_heading_as_read_agrees_with_the_two_ends(read_deg: float, told: Verdict) -> None:
    """By hand: 0.4 m aside over 0.6928 m forwards is 30° from the length; taken from the width it reads 60°."""
    row = diagonal(**at("anchor", 0.5 + 0.692820323, 0.75, 0.0), heading_read_deg=read_deg)
    found = packed(on_pallet((row,))).check("heading_agrees[1]")
    assert found.outcome == pytest.approx((abs(30.0 - read_deg), 5.0, False), abs=1e-6)
    assert found.verdict is told


def test_a_lashing_that_stands_upright_has_no_heading() -> None:
    upright = packed(on_pallet((tie_down(heading_read_deg=40.0),))).check("heading_agrees[1]")
    assert isinstance(upright.outcome, NotApplicable)
    assert isinstance(packed(on_pallet()).check("slope_agrees[1]").outcome, NotApplicable)


def test_a_measured_far_end_counts_by_its_own_slope() -> None:
    """NTC 2018: 300 daN straight down on one side, on the other at 30°: 300 + 150 hold down."""
    flat = {"far_end": FarEnd.GIVEN, **at("far_at", 0.0, -0.35, 1.2),
            **at("far_anchor", 0.0, -0.35 - 1.2 * 3.0 ** 0.5, 0.0)}
    row = tie_down(lashing_item=strap(stf_dan=300.0), **flat)
    found = packed(on_pallet((row,), rule_set=RuleSet.NTC)).check("held_down").outcome
    assert found == pytest.approx(Strength(196.2, 450.0), rel=1e-9)


def test_direct_lashings_hold_down_by_their_rating() -> None:
    """NTC 2018, by hand: one at 45° rated 2000 daN, a loop of two such legs."""
    low = at("anchor", 1.3, 0.35, 0.0)
    slope = packed(on_pallet((diagonal(**low),), rule_set=RuleSet.NTC)).check("held_down").outcome
    assert slope.capacity == pytest.approx(2000.0 * 0.5 ** 0.5, rel=1e-9)
    loop = diagonal(**low, put_on=Kind.LOOP, far_end=FarEnd.MIRRORED)
    found = packed(on_pallet((loop,), rule_set=RuleSet.NTC)).check("held_down").outcome
    assert found.capacity == pytest.approx(2.0 * 2000.0 * 0.5 ** 0.5, rel=1e-9)


def test_only_what_holds_here_is_counted() -> None:
    """49 CFR 393: a strap round load and pallet is none of those that hold both on the deck."""
    ev = loaded(on_vehicle((*four(Body.DECK), tie_down(0.2), tie_down(-0.2)), rule_set=RuleSet.US))
    assert ev.check("lashing_number").outcome == Limit(2.0, 4.0)
    assert ev.check("aggregate_wll").outcome.capacity == pytest.approx(4.0 * 2000.0 / 2.0, rel=1e-12)


# On the deck.


@pytest.mark.parametrize("entered_dan, told", [(2000.0, Verdict.WITHIN), (2001.0, Verdict.OVER)])
def test_an_anchor_is_counted_with_no_more_than_the_vehicle_rates_it(entered_dan: float, told: Verdict) -> None:
    ev = loaded(on_vehicle(four(Body.DECK, anchor_dan=entered_dan)))
    assert ev.check("anchor_rating[1]").outcome == Limit(entered_dan, 2000.0)
    assert ev.check("anchor_rating[1]").verdict is told


def test_a_ring_of_the_skid_is_no_anchor_of_the_vehicle() -> None:
    assert isinstance(loaded(on_vehicle()).check("anchor_rating[1]").outcome, Limit)
    skidded = loaded(on_vehicle((*four(Body.DECK), diagonal(anchor_dan=9000.0))))
    assert isinstance(skidded.check("anchor_rating[5]").outcome, NotApplicable)


@pytest.mark.parametrize("entered_dan, told", [(2000.0, Verdict.WITHIN), (2500.0, Verdict.OVER)])
def test_a_headboard_is_counted_with_no_more_than_it_is_rated_for(entered_dan: float, told: Verdict) -> None:
    board = block(Blocks.FORWARD, BlockedBy.HEADBOARD, Body.DECK, block_dan=entered_dan)
    chock = block(Blocks.REAR, BlockedBy.CHOCK, Body.DECK, block_dan=9000.0)
    ev = loaded(on_vehicle(blocks=(board, chock)))
    assert ev.check("headboard_rating[1]").verdict is told
    assert isinstance(ev.check("headboard_rating[2]").outcome, NotApplicable)


@pytest.mark.parametrize("changes, left_m", [
    pytest.param({}, 0.7, id="by hand, 2.4 m of deck, 1.0 m of skid"),
    pytest.param({"behind_headboard_m": 0.8}, 0.1, id="by hand, the skid of 1.4 m 0.1 m behind the headboard"),
    pytest.param({"behind_headboard_m": 0.6}, -0.1, id="by hand, in the headboard"),
    pytest.param({"behind_headboard_m": 5.5}, -0.2, id="by hand, over the end of the deck"),
    pytest.param({"width_m": 2.5}, -0.05, id="by hand, wider than the deck"),
])
def test_load_and_pallet_lie_within_the_deck(changes: dict[str, Any], left_m: float) -> None:
    found = loaded(on_vehicle(**changes)).check("on_deck")
    assert found.outcome == pytest.approx((0.0, left_m, False), abs=1e-12)
    assert (found.verdict is Verdict.OVER) == (left_m < 0.0)


def test_by_hand_a_metre_of_the_deck() -> None:
    """1050 kg on 1.4 m: 750 kg/m; 0.07 m off lengthways 1 + 6 × 0.05 times that; without a pallet 1000 kg on 1 m."""
    assert loaded(on_vehicle()).check("deck_floor").outcome == Strength(750.0, 5000.0)
    off = loaded(on_vehicle(cg_x_m=0.07)).check("deck_floor").outcome
    assert off == pytest.approx(Strength(975.0, 5000.0), rel=1e-12)
    bare = on_vehicle(four(Body.DECK, anchor_z_m=0.0), pallet=NONE)
    assert loaded(bare).check("deck_floor").outcome == Strength(1000.0, 5000.0)


def test_a_vehicle_is_judged_by_its_load_plan_or_by_its_axles() -> None:
    axles = loaded(on_vehicle(vehicle=lorry(load_plan=None)))
    assert isinstance(axles.check("load_plan").outcome, NotApplicable)
    assert axles.check("rear_axle").verdict is Verdict.WITHIN
    plan = loaded(on_vehicle(vehicle=lorry(wheelbase_m=None)))
    assert plan.check("load_plan").verdict is Verdict.WITHIN
    assert isinstance(plan.check("rear_axle").outcome, NotApplicable)
    box = loaded(on_vehicle(vehicle=lorry(form="container", load_plan=None, wheelbase_m=None)))
    for name in ("load_plan", "front_axle", "rear_axle"):
        assert isinstance(box.check(name).outcome, NotApplicable)


@pytest.mark.parametrize("pair", [
    Pair.BARE_METAL_ON_METAL, Pair.STEEL_CRATE_ON_STEEL, Pair.STEEL_CRATE_ON_ALUMINIUM, DontKnow(),
])
def test_common_practice_without_source_steel_never_on_steel(pair: Any) -> None:
    """P4: hauliers take an engine only on wood; a caution here, the friction itself decides. Who does not know what
    meets there is told so too."""
    for found in (packed(on_pallet(load_pair=pair)), loaded(on_vehicle(deck_pair=pair))):
        steel = found.check("steel_on_steel")
        assert (steel.verdict, steel.caution) == (Verdict.WITHIN, STEEL)
    assert packed(on_pallet()).check("steel_on_steel").caution == ""


# Two on one ring.


@pytest.mark.parametrize("apart_m, together_dan", [
    pytest.param(0.0, 700.0, id="by hand, on one ring: 2 × 350"),
    pytest.param(0.04, 700.0, id="by hand, as near as one can measure"),
    pytest.param(0.2, None, id="on two rings"),
])
def test_what_pulls_on_one_ring_is_added_up(apart_m: float, together_dan: float | None) -> None:
    """Each tie-down pulls 350 daN at both of its ends."""
    ev = packed(on_pallet((tie_down(0.1, anchor_dan=600.0), tie_down(0.1 + apart_m, anchor_dan=600.0))))
    assert ev.check("lashing_strength[1]").verdict is Verdict.WITHIN
    found = ev.check("anchor_strength[2]").outcome
    if together_dan is None:
        assert str(found) == "no other lashing is on it"
    else:
        assert found == pytest.approx(Strength(together_dan, 600.0), rel=1e-12)


def test_the_ends_of_one_lashing_may_share_a_ring_too() -> None:
    """Both ends of a tie-down made fast to one ring pull 700 daN on it."""
    both = tie_down(far_end=FarEnd.GIVEN, **at("far_at", 0.0, -0.35, 1.2), **at("far_anchor", 0.0, 0.35, 0.0))
    assert packed(on_pallet((both,))).check("anchor_strength[1]").outcome == Strength(700.0, 2000.0)


def test_a_strap_round_the_pallet_has_no_ring_and_lies_on_no_eye() -> None:
    ev = packed(on_pallet((round_both(anchor_dan=None), round_both(anchor_dan=None))))
    assert isinstance(ev.check("anchor_strength[1]").outcome, NotApplicable)
    assert isinstance(ev.check("load_eye_strength[1]").outcome, NotApplicable)


# How it is planned, and who signs.


def test_what_leaves_the_yard_is_never_routine() -> None:
    assert packed(on_pallet())["lashing_class"] is LiftClass.ROUTINE
    assert loaded(on_vehicle())["lashing_class"] is LiftClass.NON_ROUTINE


@pytest.mark.parametrize("changes, told", [
    pytest.param({"pallet": skid(rated_kg=1250.0)}, LiftClass.NON_ROUTINE, id="a pallet used to 80 %"),
    pytest.param({"pallet": skid(rated_kg=1050.0)}, LiftClass.COMPLEX, id="a pallet used to 95 %"),
    pytest.param({"mass_kg": Measured(1000.0, "estimate")}, LiftClass.NON_ROUTINE, id="an estimated mass"),
    pytest.param({"mass_kg": Measured(1000.0, "sister")}, LiftClass.ROUTINE, id="the mass of a sister"),
    pytest.param({"mass_kg": Measured(1000.0, "estimate"), "pallet": skid(rated_kg=None, rated_for=None)},
                 LiftClass.NON_ROUTINE, id="an estimated mass, whatever else waits"),
    pytest.param({"cg_z_m": DontKnow()}, LiftClass.NON_ROUTINE, id="a height of the centre of gravity nobody knows"),
])
def test_the_class_follows_use_and_knowledge(changes: dict[str, Any], told: LiftClass) -> None:
    assert assess(PALLET, on_pallet(**changes))["lashing_class"] is told
