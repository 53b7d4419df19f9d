"""Where a plausible calculation of lashings is unsafe, and what the trade knows."""

import pytest

from checklist_app.mechanics.lashing import (
    changes,
    crossing,
    direct,
    holding,
    pallet,
    prepared,
    slide_3d,
    tie_down,
    tip_3d,
)
from checklist_app.mechanics.lashing.angles import lie
from checklist_app.mechanics.lashing.crossing import Body, Face
from checklist_app.mechanics.lashing.demands import Demand, Slide, TiltRule, Tip, demand
from checklist_app.mechanics.lashing.lashed_body import Block, LashedBody, Pull, Stands, Strand, Stretch, lashed_body
from checklist_app.mechanics.lashing.prepared import Tension
from checklist_app.mechanics.lashing.rule_sets import RuleSet
from checklist_app.mechanics.lashing.transport import Direction, Transport
from checklist_app.mechanics.vectors import Vec
from tests.mechanics.lashing.arranged import FORWARD, LEFT, REAR, corners, mixed, oily


@pytest.mark.parametrize("push, friction, fs, number", [
    pytest.param(0.8, 0.1, 1.25, 15, id="derived, EN 12195-1: oily, 1 t, 60°, STF 350, forwards"),
    pytest.param(0.5, 0.1, 1.10, 8, id="derived, EN 12195-1: oily, 1 t, 60°, STF 350, sideways"),
    pytest.param(1.0, 0.1, 1.25, 19, id="derived, EN 12195-1: oily, 1 t, 60°, STF 350, UK 1.0 g"),
    pytest.param(0.8, 0.45, 1.25, 2, id="derived, EN 12195-1: clean, 1 t, 60°, STF 350, forwards"),
    pytest.param(0.5, 0.45, 1.10, 1, id="derived, EN 12195-1: clean, 1 t, 60°, STF 350, sideways"),
])
def test_oil_multiplies_the_straps(push: float, friction: float, fs: float, number: int) -> None:
    assert tie_down.count(
        tie_down.tie_downs_against_sliding(981.0, push, 1.0, friction, 60.0, 350.0, fs)) == number


def test_what_friction_holds_still_wants_a_lashing() -> None:
    assert tie_down.tie_downs_against_sliding(981.0, 0.5, 1.0, 0.6, 90.0, 350.0, 1.1) == 0.0
    assert tie_down.count(0.0, 0.0) == 1


def test_where_blocks_hold_it_all_no_friction_is_needed() -> None:
    assert tie_down.tie_downs_against_sliding(981.0, 0.8, 1.0, 0.0, 0.0, 350.0, 1.25, blocked_dan=784.9) == 0.0


def test_the_feet_count_and_not_the_pallet() -> None:
    """On 1.2 × 0.8 m of pallet it would stand sideways; on feet 0.5 m apart it tips."""
    def tips(y: float) -> float:
        body = lashed_body(981.0, Vec(0.0, 0.0, 0.6), corners(0.4, y), Stands.FEET)
        found = tip_3d.tips_at(prepared.prepared(body), LEFT, 1.0, Tension.STF, 1.0)
        assert found is not None
        return found.push
    assert tips(0.4) > 0.6 > tips(0.25)


def test_a_load_on_a_pallet_slides_on_two_faces() -> None:
    """A closed strap round load and pallet holds the load to the pallet and nothing to the deck."""
    assert crossing.crosses(Face.LOAD_ON_PALLET, Body.LOAD, Body.PALLET)
    assert not crossing.crosses(Face.PALLET_ON_DECK, Body.LOAD, Body.PALLET)
    assert crossing.crosses(Face.LOAD_ON_PALLET, Body.LOAD, Body.DECK)
    assert crossing.crosses(Face.PALLET_ON_DECK, Body.LOAD, Body.DECK)
    assert not crossing.crosses(Face.LOAD_ON_PALLET, Body.PALLET, Body.DECK)
    assert crossing.crosses(Face.PALLET_ON_DECK, Body.PALLET, Body.DECK)
    assert crossing.mass_above_kg(Face.PALLET_ON_DECK, 1000.0, 25.0) == 1025.0
    assert crossing.mass_above_kg(Face.LOAD_ON_PALLET, 1000.0, 25.0) == 1000.0


def test_a_load_nobody_can_hold_up_does_not_stand() -> None:
    """Its centre of gravity beyond its feet."""
    body = lashed_body(981.0, Vec(0.6, 0.0, 0.6), corners(0.4, 0.4), Stands.FEET)
    ready = prepared.prepared(body)
    assert slide_3d.slides_at(ready, FORWARD, 1.0, 0.3, 1.0, False) is None
    assert tip_3d.tips_at(ready, FORWARD, 1.0, Tension.STF, 1.0) is None
    runs = holding.held(RuleSet.EN, holding.Ways(ready), road(Direction.FORWARD), 0.3)
    assert [(run.have, run.holds) for run in runs] == [(0.0, False)] * 2


def road(direction: Direction, tied: bool = True) -> Demand:
    return demand(RuleSet.EN, Transport.ROAD, direction, tied, TiltRule.PAIRS)


def sliding(body: LashedBody, direction: Direction) -> holding.Held:
    return holding.held(RuleSet.EN, holding.Ways(prepared.prepared(body)), road(direction), 0.3)[0]


@pytest.mark.parametrize("direction, direct_counts", [
    (Direction.FORWARD, True), (Direction.REAR, False), (Direction.LEFT, False),
])
def test_a_weak_direct_lashing_is_left_out_rather_than_let_do_harm(direction: Direction, direct_counts: bool) -> None:
    """Blocks and tie-downs at full friction, or everything at the reduced one: the better."""
    with_it, without = sliding(mixed(Stands.FEET), direction), sliding(mixed(Stands.FEET, False), direction)
    assert with_it.with_direct is direct_counts
    assert with_it.have >= without.have - 1e-5


def test_a_full_face_turns_sooner_than_feet() -> None:
    """Rearwards the tie-downs hold 1.026 on feet and 0.973 on a full face, which is refused."""
    on = {stands: sliding(mixed(stands, False), Direction.REAR) for stands in Stands}
    assert on[Stands.FEET].holds and not on[Stands.AREA].holds
    assert on[Stands.FEET].times == pytest.approx(1.026, abs=0.003)
    assert on[Stands.AREA].times == pytest.approx(0.973, abs=0.003)


def test_after_settling_tie_downs_hold_less() -> None:
    run = sliding(mixed(Stands.FEET, False), Direction.LEFT)
    assert run.settled < run.have
    by_hand = 0.3 * (1471.5 + 4.0 * 350.0 * 0.5 * 0.8221 / 1.1) / 1471.5
    assert run.settled == pytest.approx(by_hand, abs=0.002)


@pytest.mark.parametrize("direction", Direction)
def test_what_settling_leaves_is_told_only_where_it_is_asked_for(direction: Direction) -> None:
    ways = holding.Ways(prepared.prepared(mixed(Stands.FEET)))
    quick = holding.held(RuleSet.EN, ways, road(direction), 0.3, settled=False)
    full = holding.held(RuleSet.EN, ways, road(direction), 0.3)
    assert [(run.title, run.have, run.pulls_dan) for run in quick] == [
        (run.title, run.have, run.pulls_dan) for run in full]
    assert all(run.settled is None for run in quick)


@pytest.mark.parametrize("gives, by_hand", [(False, 0.3 * 981.0 + 400.0), (True, 0.75 * 0.3 * 981.0 + 400.0)])
def test_derived_a_block_that_gives_counts_beside_reduced_friction(gives: bool, by_hand: float) -> None:
    """CTU Code Annex 7: 0.75 μ beside what must give before it holds; full friction behind rigid, tight blocks."""
    body = lashed_body(981.0, Vec(0.0, 0.0, 0.1), corners(0.5, 0.4), Stands.FEET, (), (),
                       [Block(Vec(0.5, 0.0, 0.1), REAR, 400.0, gives)])
    assert sliding(body, Direction.FORWARD).have * 981.0 == pytest.approx(by_hand)


def test_each_run_goes_by_a_title_of_its_own() -> None:
    runs = holding.held(RuleSet.EN, holding.Ways(prepared.prepared(mixed(Stands.FEET))), road(Direction.LEFT), 0.3)
    assert [run.title for run in runs] == [
        "sliding to the left", "tipping to the left", "tipping to the left, half of LC"]
    assert all(run.settled <= run.have <= run.formula for run in runs)


def test_annex_13_gives_tie_downs_nothing() -> None:
    asked = Demand(Direction.LEFT, (Slide(0.5, 1.0),), (Tip(0.5, 1.0),), 1.0)
    run = holding.held(RuleSet.CSS, holding.Ways(prepared.prepared(mixed(Stands.FEET, False))), asked, 0.3)[0]
    assert run.have == pytest.approx(0.3, abs=1e-9)


def test_annex_13_counts_nine_tenths_of_a_lashing_against_tipping() -> None:
    """From memory, stricter."""
    asked = Demand(Direction.LEFT, (Slide(0.5, 1.0),), (Tip(0.5, 1.0),), 1.0)
    ready = holding.Ways(prepared.prepared(oily(1.1)))
    ship, road_ = (holding.held(rule_set, ready, asked, 0.1)[1].have for rule_set in (RuleSet.CSS, RuleSet.EN))
    bare = 0.35 / 0.8
    assert ship - bare == pytest.approx(0.9 * (road_ - bare))


def test_the_us_rule_uses_breaking_strength_only_where_it_is_known() -> None:
    rated, breaking = prepared.prepared(oily(1.1)), prepared.prepared(stronger(3.0))
    asked = demand(RuleSet.US, Transport.ROAD, Direction.FORWARD, False, TiltRule.PAIRS)
    known = holding.held(RuleSet.US, holding.Ways(rated, breaking), asked, 0.1)
    unknown = holding.held(RuleSet.US, holding.Ways(rated), asked, 0.1)
    assert known[0] == unknown[0]
    assert known[1].have > unknown[1].have == unknown[0].have


def stronger(times: float) -> LashedBody:
    body = oily(1.1)
    return lashed_body(
        body.weight_dan, body.cg, [(at.x, at.y) for at in body.base], body.stands,
        [Pull(pull.at, pull.anchor, times * pull.most_dan, pull.stretch) for pull in body.pulls],
    )


def test_equality_is_refused_against_tipping_and_allowed_against_sliding() -> None:
    body = lashed_body(981.0, Vec(0.0, 0.0, 1.0), corners(0.8, 0.8), Stands.FEET)
    slide, tip = holding.held(RuleSet.EN, holding.Ways(prepared.prepared(body)), road(Direction.FORWARD, False), 0.8)
    assert (slide.need, slide.have, slide.holds) == (0.8, 0.8, True)
    assert (tip.need, tip.have, tip.holds) == (0.8, 0.8, False)


def test_the_weight_that_remains_is_not_scaled() -> None:
    """Twice the coefficient, half the margin; the push that is withstood does not change."""
    found = slide_3d.slides_at(prepared.prepared(oily(1.1)), FORWARD, 0.2, 0.075, 1.0, True)
    again = slide_3d.slides_at(prepared.prepared(oily(1.1)), FORWARD, 0.4, 0.075, 1.0, True)
    assert found is not None and again is not None
    assert again.push > found.push


def test_a_lashing_that_goes_slack_counts_nothing_at_high_friction() -> None:
    """Steep straps ahead of a load that slides forwards shorten; the cone of friction alone would let them press."""
    pulls = [Pull(Vec(sx * 0.45, sy * 0.3, 1.1), Vec(sx * 0.6, sy * 0.3, 0.0), 1000.0, Stretch.WEB)
             for sx in (1.0, -1.0) for sy in (1.0, -1.0)]
    body = lashed_body(981.0, Vec(0.0, 0.0, 0.5), corners(0.5, 0.35), Stands.FEET, pulls)
    found = slide_3d.slides_at(prepared.prepared(body), FORWARD, 1.0, 0.45, 1.0, True)
    of_it = lie(pulls[2].at, pulls[2].anchor)
    by_formula = 0.45 + 2000.0 / 981.0 * (-of_it.along + 0.45 * of_it.down)
    assert found is not None
    assert found.push == pytest.approx(by_formula, abs=1e-9)


def test_common_practice_over_the_top_beats_round_the_foot() -> None:
    """Common practice, no source: steep over the top holds a top-heavy engine, shallow round its foot does not, and
    threading the strap through the eye is better still."""
    def tips(pulls: list[Pull], strands: list[Strand]) -> float:
        body = lashed_body(981.0, Vec(0.0, 0.0, 0.8), corners(0.5, 0.3), Stands.FEET, pulls, strands)
        found = tip_3d.tips_at(prepared.prepared(body), LEFT, 1.0, Tension.STF, 1.0 / 1.1)
        assert found is not None
        return found.push
    bare = tips([], [])
    steep = tips([], [Strand(Vec(0.0, s * 0.2, 1.4), Vec(0.0, s * 0.5, 0.0), 350.0, 1250.0) for s in (1.0, -1.0)])
    foot = tips([], [Strand(Vec(0.0, s * 0.3, 0.1), Vec(0.0, s * 1.1, 0.0), 350.0, 1250.0) for s in (1.0, -1.0)])
    eye = tips([Pull(Vec(0.0, 0.0, 1.4), Vec(0.0, s * 0.9, 0.0), 700.0, Stretch.WEB) for s in (1.0, -1.0)], [])
    assert bare < foot < steep < eye
    assert foot - bare < 0.25 * (steep - bare)


def test_common_practice_the_strap_goes_under_the_whole_pallet() -> None:
    """Common practice, no source: not through it; through it the boards limit, and nobody knows them."""
    assert pallet.strap_on_pallet_dan(pallet.Route.UNDER_WHOLE_PALLET, 1000.0, None) == 1000.0
    assert pallet.strap_on_pallet_dan(pallet.Route.THROUGH_PALLET, 1000.0, 300.0) == 300.0


def test_both_ways_of_counting_are_tried() -> None:
    """What is found is the better of both runs at one friction each; settled it is less."""
    ready = prepared.prepared(mixed(Stands.FEET))
    for way, fs in ((FORWARD, 1.25), (REAR, 1.1), (LEFT, 1.1)):
        both = slide_3d.slides(ready, way, 1.0, 0.3, 0.75, 1.0 / fs)
        alone = slide_3d.slides_at(ready, way, 1.0, 0.3, 1.0 / fs, False)
        together = slide_3d.slides_at(ready, way, 1.0, 0.225, 1.0 / fs, True)
        assert both.found is not None and both.settled is not None and alone is not None and together is not None
        assert both.found.push == pytest.approx(max(alone.push, together.push), abs=1e-9)
        assert both.settled.push < both.found.push


def test_what_would_make_it_hold() -> None:
    """By hand: an oily load without lashings; four diagonals at last, or the first chock that is strong enough."""
    bare = oily(1.1, lashed=False)
    legs = direct.direct_legs(direct.Kind.DIAGONAL, [(Vec(-0.45, 0.3, 1.1), Vec(-1.2, 1.1, 0.0))], 1000.0, Stretch.WEB)
    ends = changes.mirrored(legs[0].at, True), changes.mirrored(legs[0].anchor, True)
    pair = [legs[0], Pull(*ends, 1000.0, Stretch.WEB)]

    def forwards(body: LashedBody) -> bool:
        runs = holding.held(RuleSet.EN, holding.Ways(prepared.prepared(body)), road(Direction.FORWARD, False), 0.1)
        return all(run.holds for run in runs)
    assert changes.smallest_number(lambda n: forwards(changes.with_more(bare, pair * n)), 4) == 1
    assert changes.smallest_number(lambda n: forwards(changes.with_more(bare, pair[:1] * n)), 0) is None
    chocks = [Block(Vec(0.5, 0.0, height), Vec(-1.0, 0.0, 0.0), 800.0) for height in (0.05, 0.3)]
    enough = changes.first_that_holds(chocks, lambda chock: forwards(changes.with_more(bare, blocks=[chock])))
    assert enough == chocks[1]


@pytest.mark.parametrize("way", [FORWARD, REAR])
def test_one_lashing_missing_turns_the_load(way: Vec) -> None:
    body = oily(1.1)
    three = lashed_body(body.weight_dan, body.cg, corners(0.5, 0.35), Stands.FEET, body.pulls[:3])
    whole = slide_3d.slides_at(prepared.prepared(body), way, 1.0, 0.075, 1.0, True)
    less = slide_3d.slides_at(prepared.prepared(three), way, 1.0, 0.075, 1.0, True)
    assert whole is not None and less is not None
    assert less.push <= whole.push + 1e-5
    if way is FORWARD:
        assert less.push < less.straight
