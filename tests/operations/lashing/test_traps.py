"""Where a plausible lashing calculation is unsafe, and what the trade knows, through the whole operation."""

from typing import Any

import pytest

from checklist_app.mechanics.lashing.crossing import Body
from checklist_app.mechanics.lashing.direct import Kind
from checklist_app.mechanics.lashing.friction import Pair, Surface
from checklist_app.mechanics.lashing.lashed_body import Stands
from checklist_app.mechanics.lashing.rule_sets import RuleSet
from checklist_app.mechanics.lashing.transport import Waters
from checklist_app.operations.check import Strength, Verdict
from checklist_app.operations.evaluate import assess
from checklist_app.operations.graph import CannotAssess, DontKnow
from checklist_app.operations.lashing.choices import BlockedBy, Blocks, Passes, Route
from tests.operations.lashing.loads import (
    FORWARD,
    LEFT,
    NONE,
    ON_PALLET,
    ON_VEHICLE,
    REAR,
    WAYS,
    block,
    diagonal,
    four,
    lashing,
    load,
    nominal,
    on_a_pallet,
    pallet,
    run,
    strap,
    tie_down,
    times,
    vehicle,
    words,
)

SLIDES, TIPS = "sliding", "tipping"


def test_the_feet_count_and_never_the_pallet_under_them() -> None:
    """On 0.8 m of pallet it would stand sideways; on feet 0.5 m apart it tips."""
    wide, narrow = (nominal(on_a_pallet([], cg_z_m=0.6, base_width_m=width)) for width in (0.8, 0.5))
    assert times(wide, LEFT, TIPS) == pytest.approx(0.4 / 0.6 / 0.6)
    assert times(narrow, LEFT, TIPS) == pytest.approx(0.25 / 0.6 / 0.6)
    assert wide.check(f"tipping[{LEFT}]").verdict is not Verdict.OVER
    assert narrow.check(f"tipping[{LEFT}]").verdict is Verdict.OVER


def test_a_soft_edge_moves_the_tipping_edge_inwards() -> None:
    soft = nominal(load([], cg_z_m=1.0, edge_gives_m=0.1))
    assert times(soft, LEFT, TIPS) == pytest.approx(0.7 / 0.6)


def closed_strap(**changes: Any) -> dict[str, Any]:
    """Round load and pallet, drawn as its label says."""
    row = tie_down((0.0, 0.25, 0.9), (0.0, 0.38, 0.0), to_body=Body.PALLET, passes=Passes.UNDER_WHOLE_PALLET)
    return row | {"anchor_dan": None} | changes


def test_a_closed_strap_round_load_and_pallet_holds_nothing_on_the_deck() -> None:
    """P14, common practice, no source: under the whole pallet it holds the load to the pallet."""
    without, with_two = (nominal(on_a_pallet([closed_strap()] * number)) for number in (0, 2))
    for way in WAYS:
        assert times(with_two, way, SLIDES) > times(without, way, SLIDES)
        assert times(with_two, way, SLIDES, quantity="held_deck") == times(without, way, SLIDES, quantity="held_deck")
        assert times(with_two, way, TIPS, quantity="held_deck") == times(without, way, TIPS, quantity="held_deck")
    assert with_two["crosses_load_face[L1]"] is True and with_two["crosses_deck_face[L1]"] is False


def test_p14_a_strap_through_the_pallet_counts_only_with_known_boards() -> None:
    """Common practice, no source: the lashing passes under the whole pallet, not through it."""
    through = closed_strap(passes=Passes.THROUGH_PALLET)
    refused = nominal(on_a_pallet([through]))
    assert isinstance(refused.check(f"sliding[{FORWARD}]").outcome, CannotAssess)
    assert "under the whole pallet" in words(refused, f"sliding[{FORWARD}]")
    known = nominal(on_a_pallet([through], pallet=pallet(boards_dan=600.0)))
    assert known["rated_dan[L1]"] == 600.0
    assert nominal(on_a_pallet([closed_strap()]))["rated_dan[L1]"] == 2500.0


def test_both_faces_have_their_own_friction_and_mass() -> None:
    ev = nominal(on_a_pallet([], load_friction=0.2, deck_friction=0.4))
    slide, deck = (ev.check(f"{name}[{LEFT}]").outcome for name in ("sliding", "deck_sliding"))
    assert slide == pytest.approx((490.5, 196.2))
    assert deck == pytest.approx((0.5 * 9.81 * 102.5, 0.4 * 9.81 * 102.5))


def test_a_lashing_from_pallet_to_deck_holds_the_second_face_alone() -> None:
    rows = [diagonal((x * 0.6, y * 0.4, -0.1), (x * 1.4, y * 1.1, -0.144), from_body=Body.PALLET)
            for x in (1.0, -1.0) for y in (1.0, -1.0)]
    without, ev = nominal(on_a_pallet([])), nominal(on_a_pallet(rows))
    assert times(ev, FORWARD, SLIDES) == times(without, FORWARD, SLIDES)
    assert times(ev, FORWARD, SLIDES, quantity="held_deck") > 1.0


def test_on_the_deck_itself_there_is_no_second_face() -> None:
    ev = nominal(load(four((0.5, 0.5, 0.8), (1.2, 1.1, 0.0))))
    assert ev.check(f"deck_sliding[{FORWARD}]").verdict is Verdict.NOT_APPLICABLE
    assert ev.check(f"sliding[{FORWARD}]").verdict is not Verdict.NOT_APPLICABLE


@pytest.mark.parametrize("task, table, said", [
    pytest.param(load([diagonal((0.5, 0.3, 0.8), (0.9, 0.5, 0.0), to_body=Body.PALLET)]), ON_VEHICLE,
                 "there is no pallet or skid here", id="to a pallet that is not there"),
    pytest.param(on_a_pallet([diagonal((0.5, 0.3, 0.8), (0.9, 0.5, 0.0))]), ON_PALLET, "there is no deck here",
                 id="to a deck, lashed to its pallet"),
    pytest.param(on_a_pallet([diagonal((0.5, 0.3, 0.8), (0.9, 0.5, 0.0), from_body=Body.DECK, to_body=Body.LOAD)]),
                 ON_VEHICLE, "from the load downwards", id="entered upside down"),
    pytest.param(on_a_pallet([diagonal((0.5, 0.3, 0.8), (0.9, 0.5, 0.0), to_body=Body.LOAD)]), ON_VEHICLE,
                 "from the load downwards", id="both ends on the load"),
    pytest.param(load([], pallet=NONE), ON_PALLET, "no pallet or skid that it could be lashed to",
                 id="no pallet to lash it to"),
    pytest.param(load([], [block(Blocks.LEFT, (0.0, 0.8, 0.1), 500.0, block_on=Body.LOAD)]), ON_VEHICLE,
                 "a block here is fast to the deck", id="a block fast to the load itself"),
])
def test_what_cannot_be_is_refused_in_words(task: Any, table: Any, said: str) -> None:
    ev = nominal(task, table)
    assert ev.check(f"sliding[{FORWARD}]").verdict is Verdict.CANNOT
    assert said in words(ev, f"sliding[{FORWARD}]")


def test_lc_is_never_taken_as_tension() -> None:
    """STF of the label, or as read and half of LC at most; without STF it waits for it by name."""
    upright = ((0.0, 0.8, 1.0), (0.0, 0.8, 0.0))
    assert nominal(load([tie_down(*upright)]))["pull_tension_dan[L1]"] == 350.0
    assert nominal(load([tie_down(*upright, 1800.0)]))["pull_tension_dan[L1]"] == 1250.0
    bare = nominal(load([tie_down(*upright, lashing_item=strap(2500.0, None, id="L-07"))]))
    assert bare.check(f"sliding[{FORWARD}]").verdict is Verdict.WAITING
    assert "STF on the label of L-07" in words(bare, f"sliding[{FORWARD}]")


def test_the_safety_factor_is_for_tie_downs_alone() -> None:
    """One strap upright gives 2 μ STF / 1.25 forwards; a block and friction give all they have."""
    upright = tie_down((0.0, 0.8, 1.0), (0.0, 0.8, 0.0))
    low = {"cg_z_m": 0.1}
    have = nominal(load([upright], **low)).check(f"sliding[{FORWARD}]").outcome[1]
    assert have == pytest.approx(0.3 * (981.0 + 700.0 / 1.25))
    assert nominal(load([], **low)).check(f"sliding[{FORWARD}]").outcome[1] == pytest.approx(0.3 * 981.0)


@pytest.mark.parametrize("rule_set, share", [
    (RuleSet.EN, 0.75), (RuleSet.CTU, 0.75), (RuleSet.UK, 0.75), (RuleSet.US, 1.0), (RuleSet.NTC, 1.0),
])
def test_friction_is_reduced_beside_direct_lashings_where_the_rules_say_so(rule_set: RuleSet, share: float) -> None:
    level = [lashing(Kind.SLOPE, (-0.5, 0.0, 0.1), (-1.5, 0.0, 0.1), lashing_item=strap(1000.0, None, wll_kg=1000.0))]
    ev = nominal(load(level, rule_set=rule_set, cg_z_m=0.1))
    weight, rated = ev["weight_dan"], ev["rated_dan[L1]"]
    (by_rating,) = (each for each in ev[f"held_load[{FORWARD}]"].runs if each.held.title == "sliding forwards")
    assert by_rating.held.have * weight == pytest.approx(share * 0.3 * weight + rated, rel=1e-6)


def test_the_weight_that_remains_is_not_scaled() -> None:
    """Sea C lengthways: 0.2 of the weight remains, whatever the push: μ 0.5 withstands 0.1, not 0.5."""
    ev = nominal(load([], route=Route.SEA, waters=Waters.OPEN_OCEAN, load_friction=0.5, cg_z_m=0.1))
    assert run(ev, FORWARD, SLIDES, "sea").held.have == pytest.approx(0.1)


@pytest.mark.parametrize("changes, weakest_dan", [
    ({}, 2500.0), ({"anchor_dan": 800.0}, 800.0), ({"held_dan": 600.0}, 600.0),
    ({"anchor_dan": 800.0, "held_dan": 900.0}, 800.0),
])
def test_the_weakest_of_strap_eye_and_anchor_counts(changes: dict[str, float], weakest_dan: float) -> None:
    ev = nominal(load([diagonal((0.5, 0.3, 0.8), (1.2, 0.8, 0.0), 2500.0, **changes)]))
    assert ev["rated_dan[L1]"] == weakest_dan


def test_a_lashing_that_pulls_with_the_motion_counts_nothing() -> None:
    ahead = [diagonal((0.5, y, 0.8), (1.5, 2.0 * y, 0.0)) for y in (0.4, -0.4)]
    with_them, bare = (nominal(load(rows, cg_z_m=0.1)) for rows in (ahead, []))
    assert times(with_them, FORWARD, SLIDES) == times(bare, FORWARD, SLIDES)


def test_a_low_block_adds_almost_nothing_against_tipping() -> None:
    """400 daN at 0.15 m on 1500 kg: 0.041 m more of b."""
    told = {"mass_kg": 1500.0, "cg_z_m": 1.0}
    bare, blocked = (
        nominal(load([], rows, **told)) for rows in ([], [block(Blocks.LEFT, (0.0, 0.8, 0.15), 400.0)])
    )
    gained = run(blocked, LEFT, TIPS).held.have - run(bare, LEFT, TIPS).held.have
    assert gained == pytest.approx(400.0 * 0.15 / 1471.5, rel=1e-6)


def test_what_gives_before_it_holds_counts_beside_reduced_friction() -> None:
    """CTU Code Annex 7: full friction only behind rigid, tight blocks."""
    low = {"cg_z_m": 0.1}
    rigid, gives = (
        nominal(load([], [block(Blocks.FORWARD, (0.8, 0.0, 0.1), 400.0, blocked_by=by)], **low))
        for by in (BlockedBy.CHOCK, BlockedBy.GIVES)
    )
    assert run(rigid, FORWARD, SLIDES).held.have * 981.0 == pytest.approx(0.3 * 981.0 + 400.0)
    assert run(gives, FORWARD, SLIDES).held.have * 981.0 == pytest.approx(0.75 * 0.3 * 981.0 + 400.0)


def test_a_block_on_the_deck_holds_what_it_touches() -> None:
    """Below the top of the pallet it holds the pallet; above it the load too."""
    low, high = (
        nominal(on_a_pallet([], [block(Blocks.FORWARD, (0.6, 0.0, z), 900.0)])) for z in (0.1, 0.3)
    )
    assert times(low, FORWARD, SLIDES) == pytest.approx(0.3 / 0.8)
    assert times(high, FORWARD, SLIDES) > 1.0
    for ev in (low, high):
        assert times(ev, FORWARD, SLIDES, quantity="held_deck") > 1.0


def test_a_block_on_the_pallet_holds_nothing_on_the_deck() -> None:
    rows = [block(Blocks.FORWARD, (0.4, 0.0, 0.1), 900.0, block_on=Body.PALLET)]
    ev, bare = nominal(on_a_pallet([], rows)), nominal(on_a_pallet([]))
    assert times(ev, FORWARD, SLIDES) > 1.0
    assert times(ev, FORWARD, SLIDES, quantity="held_deck") == times(bare, FORWARD, SLIDES, quantity="held_deck")


def test_p9_steep_over_the_top_beats_shallow_round_the_foot_common_practice_without_source() -> None:
    """A top-heavy load: tie-downs at 70° over its top, diagonals at its foot; through its eyes is better still."""
    tall = {"cg_z_m": 0.9, "height_m": 1.5, "base_length_m": 0.9, "base_width_m": 0.7, "load_friction": 0.3}
    over = [tie_down((x, 0.3, 1.4), (x, 0.8, 0.0)) for x in (0.3, -0.3)]
    foot = four((0.4, 0.3, 0.1), (1.1, 1.1, 0.0), 350.0)
    through = four((0.4, 0.3, 1.4), (1.1, 0.9, 0.0), 2500.0)
    steep, shallow, best = (nominal(load(rows, **tall)) for rows in (over, foot, through))
    for way in WAYS:
        assert times(shallow, way, TIPS) < times(best, way, TIPS)
        assert times(steep, way, TIPS) < times(best, way, TIPS)
    assert times(shallow, LEFT, TIPS) < times(steep, LEFT, TIPS)


@pytest.mark.parametrize("rule_set, route, said", [
    (RuleSet.US, Route.SEA, "does not know the sea"), (RuleSet.NTC, Route.RAIL, "does not know the railway"),
    (RuleSet.UK, Route.RAIL_SEA, "does not know railway and sea"), (RuleSet.CSS, Route.ROAD, "for a ship"),
])
def test_a_route_that_the_rules_do_not_know_is_refused(rule_set: RuleSet, route: Route, said: str) -> None:
    ev = nominal(load([], rule_set=rule_set, route=route, load_friction=None))
    assert ev.check(f"sliding[{FORWARD}]").verdict is not Verdict.WITHIN
    found = ev["transports"]
    assert isinstance(found, CannotAssess) and said in str(found)


def test_the_road_to_the_railway_and_the_ship_is_always_in() -> None:
    ev = nominal(load([], route=Route.RAIL_SEA, waters=Waters.MEDITERRANEAN))
    assert [each.transport for each in ev[f"slid_load[{REAR}]"].runs] == [
        "road, vehicle over 3.5 t", "rail, combined transport", "sea area B"]
    by_ctu = nominal(load([], route=Route.SEA, waters=Waters.MEDITERRANEAN, rule_set=RuleSet.CTU))
    assert [each.transport for each in by_ctu[f"slid_load[{REAR}]"].runs] == ["road, vehicle over 3.5 t", "sea area A"]


def test_a_van_is_a_van_whatever_the_route_is_called() -> None:
    """Up to 3.5 t by its plate the van's own pushes are asked too; one that does not say its mass waits."""
    light = nominal(load([], vehicle=vehicle(gross_t=3.0)))
    assert max(each.held.need for each in light[f"slid_load[{LEFT}]"].runs) == 0.6
    nameless = nominal(load([], vehicle=vehicle(form="van", gross_t=None)))
    assert nameless.check(f"sliding[{LEFT}]").verdict is Verdict.WAITING
    assert "permitted gross mass of V-1" in words(nameless, f"sliding[{LEFT}]")


def test_on_its_pallet_the_lightest_van_counts() -> None:
    """Nobody knows which van will take it: up to 2 t asks most."""
    ev = nominal(on_a_pallet([], route=Route.VAN), ON_PALLET)
    assert max(each.held.need for each in ev[f"slid_load[{FORWARD}]"].runs) == 0.9


def test_where_nothing_is_known_of_the_height_it_is_tried_up_to_the_top() -> None:
    """Wide it stands whatever that is; narrow it would not."""
    for width, verdict in ((2.4, Verdict.WITHIN), (1.0, Verdict.OVER)):
        task = load(
            [], cg_z_m=DontKnow(), height_m=1.0, load_friction=0.9, base_width_m=width, base_length_m=2.4,
            stands=Stands.FEET,
        )
        check = assess(ON_VEHICLE, task).check(f"tipping[{LEFT}]")
        assert check.unknown == ("cg_z_m",)
        assert isinstance(check.worst, Strength)
        assert check.worst.capacity == pytest.approx(981.0 * width / 2.0, rel=1e-6)
        assert check.verdict is verdict


def test_where_nothing_is_known_of_its_side_it_may_lie_over_the_edge() -> None:
    check = assess(ON_VEHICLE, load([], cg_y_m=DontKnow(), load_friction=0.9)).check(f"tipping[{LEFT}]")
    assert check.verdict in (Verdict.OVER, Verdict.CANNOT)


def test_an_unlashed_load_without_friction_is_no_number_that_passes() -> None:
    ev = nominal(load([], load_friction=None, load_surface=Surface.OILY, load_pair=Pair.BARE_METAL_ON_METAL))
    for way in WAYS:
        assert ev.check(f"sliding[{way}]").verdict is Verdict.CANNOT
        assert "nothing withstands" in words(ev, f"sliding[{way}]")
