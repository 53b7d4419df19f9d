"""Everything together in space: worked examples of limit equilibrium, each by a second method, the formulas beside."""

import pytest

from checklist_app.mechanics.lashing import direct, holding, prepared, slide_3d, tie_down, tip_3d
from checklist_app.mechanics.lashing.angles import lie
from checklist_app.mechanics.lashing.demands import TiltRule, demand
from checklist_app.mechanics.lashing.lashed_body import LashedBody, Pull, Stands, Strand, Stretch, lashed_body
from checklist_app.mechanics.lashing.prepared import Tension
from checklist_app.mechanics.lashing.rule_sets import RuleSet
from checklist_app.mechanics.lashing.transport import Direction, Transport
from checklist_app.mechanics.vectors import Vec
from tests.mechanics.lashing.arranged import FORWARD, LEFT, REAR, corners, mixed, oily

WHOLE = 0.003
EN_FORWARD, EN_OTHER = 1.0 / 1.25, 1.0 / 1.1


def slides(
    body: LashedBody, way: Vec, push: float, downward: float, friction: float, share: float, pulls: bool
) -> float:
    found = slide_3d.slides_at(prepared.prepared(body), way, downward, friction, share, pulls)
    assert found is not None
    return found.push / push


def tips(body: LashedBody, way: Vec, push: float, downward: float, tension: Tension, share: float) -> float:
    found = tip_3d.tips_at(prepared.prepared(body), way, downward, tension, share)
    assert found is not None
    return found.push / push


@pytest.mark.parametrize("way, slide, tip, downward, slides_at, tips_at", [
    pytest.param(FORWARD, 0.8, 0.8, 1.0, 1.460, 4.616,
                 id="derived, limit equilibrium by two methods: oily load on four diagonals, road forwards"),
    pytest.param(LEFT, 0.5, 0.6, 1.0, 2.467, 5.091,
                 id="derived, limit equilibrium by two methods: oily load on four diagonals, road sideways"),
    pytest.param(FORWARD, 0.4, 0.4, 0.2, 2.739, 7.983,
                 id="derived, limit equilibrium by two methods: oily load on four diagonals, sea C lengthways"),
    pytest.param(LEFT, 0.8, 0.8, 1.0, 1.542, 3.818,
                 id="derived, limit equilibrium by two methods: oily load on four diagonals, sea C crosswise"),
])
def test_direct_lashings_hold_an_oily_load(
    way: Vec, slide: float, tip: float, downward: float, slides_at: float, tips_at: float
) -> None:
    """Linear programming (K 720) and the least mechanism of an exact cone give both figures."""
    assert slides(oily(1.1), way, slide, downward, 0.075, 1.0, True) == pytest.approx(slides_at, abs=WHOLE)
    assert tips(oily(1.1), way, tip, downward, Tension.STF, 1.0) == pytest.approx(tips_at, abs=WHOLE)


@pytest.mark.parametrize("attached_m, only_rear, way, push, downward, expected", [
    pytest.param(1.8, False, LEFT, 0.8, 1.0, 1.155,
                 id="derived, limit equilibrium by two methods: attached at 1.8 m, sea C crosswise"),
    pytest.param(1.8, False, LEFT, 0.5, 1.0, 1.849,
                 id="derived, limit equilibrium by two methods: attached at 1.8 m, road sideways"),
    pytest.param(1.4, True, FORWARD, 0.4, 0.2, 0.846,
                 id="derived, limit equilibrium by two methods: two rear lashings alone at 1.4 m, sea C lengthways"),
    pytest.param(0.15, False, LEFT, 0.5, 1.0, 1.692,
                 id="derived, limit equilibrium by two methods: attached at 0.15 m, road sideways"),
])
def test_where_the_foot_swings_out_or_a_lashing_is_missing(
    attached_m: float, only_rear: bool, way: Vec, push: float, downward: float, expected: float
) -> None:
    body = oily(attached_m, only_rear)
    assert slides(body, way, push, downward, 0.075, 1.0, True) == pytest.approx(expected, abs=WHOLE)


@pytest.mark.parametrize("attached_m, only_rear, way, push, downward, promised", [
    pytest.param(1.1, False, FORWARD, 0.4, 0.2, 2.769, id="derived, formula of the rules: sea C lengthways"),
    pytest.param(1.8, False, LEFT, 0.8, 1.0, 1.224,
                 id="derived, formula of the rules: attached at 1.8 m, sea C crosswise"),
    pytest.param(1.8, False, LEFT, 0.5, 1.0, 1.959,
                 id="derived, formula of the rules: attached at 1.8 m, road sideways"),
    pytest.param(1.4, True, FORWARD, 0.4, 0.2, 2.488, id="derived, formula of the rules: two rear lashings alone"),
])
def test_the_formula_of_the_rules_promises_more_there(
    attached_m: float, only_rear: bool, way: Vec, push: float, downward: float, promised: float
) -> None:
    """Trap: each plane by itself is not enough; the difference is shown."""
    found = slide_3d.slides_at(prepared.prepared(oily(attached_m, only_rear)), way, downward, 0.075, 1.0, True)
    assert found is not None
    assert found.straight / push == pytest.approx(promised, abs=WHOLE)
    assert found.push < found.straight


def test_derived_a_low_attachment_tips_sooner() -> None:
    """Limit equilibrium by two methods: attached at 0.15 m instead of 1.1 m, tipping sideways 1.564 not 5.091."""
    assert tips(oily(0.15), LEFT, 0.6, 1.0, Tension.STF, 1.0) == pytest.approx(1.564, abs=WHOLE)


@pytest.mark.parametrize("way, push, tip, slides_at, tips_at", [
    pytest.param(FORWARD, 0.8, 0.8, 0.125, 0.781,
                 id="derived, limit equilibrium by two methods: the same load unlashed, forwards"),
    pytest.param(LEFT, 0.5, 0.6, 0.200, 0.729,
                 id="derived, limit equilibrium by two methods: the same load unlashed, sideways"),
])
def test_unlashed(way: Vec, push: float, tip: float, slides_at: float, tips_at: float) -> None:
    assert slides(oily(1.1, lashed=False), way, push, 1.0, 0.1, 1.0, False) == pytest.approx(slides_at, abs=WHOLE)
    assert tips(oily(1.1, lashed=False), way, tip, 1.0, Tension.STF, 1.0) == pytest.approx(tips_at, abs=WHOLE)


@pytest.mark.parametrize("way, push, angle, needed_slide, needed_tip, tip", [
    pytest.param(FORWARD, 0.8, 46.84, 663.5, 57.0, 0.8, id="derived, EN 12195-1 balances: needed force, forwards"),
    pytest.param(LEFT, 0.5, 43.16, 366.9, 62.1, 0.6, id="derived, EN 12195-1 balances: needed force, sideways"),
])
def test_needed_force_of_each_diagonal(
    way: Vec, push: float, angle: float, needed_slide: float, needed_tip: float, tip: float
) -> None:
    of_it = lie(Vec(0.45, 0.30, 1.1), Vec(1.2, 1.1, 0.0))
    alpha = of_it.to_deck_deg
    beta = of_it.from_length_deg if way is FORWARD else 90.0 - of_it.from_length_deg
    assert beta == pytest.approx(angle, abs=0.01)
    each_dan = direct.direct_against_sliding_dan(981.0, push, 1.0, 0.1, 0.75, [(alpha, beta)] * 2)
    assert each_dan == pytest.approx(needed_slide, abs=0.5)
    half_m, inside_m = (0.5, 0.95) if way is FORWARD else (0.35, 0.65)
    one = direct.direct_against_tipping(981.0, tip, 1.0, 0.8, half_m, [(1.0, alpha, beta, 1.1, inside_m)] * 2)
    assert one.need / one.have == pytest.approx(needed_tip, abs=0.5)


@pytest.mark.parametrize("direction, needed_slide, needed_tip", [
    pytest.param(Direction.FORWARD, 663.5, 57.0, id="derived, EN 12195-1 balances: pull of each in space, forwards"),
    pytest.param(Direction.LEFT, 366.9, 62.1, id="derived, EN 12195-1 balances: pull of each in space, sideways"),
])
def test_pulls_at_what_is_asked(direction: Direction, needed_slide: float, needed_tip: float) -> None:
    """Two of the four pull, each as the formula says; the other two are slack."""
    asked = demand(RuleSet.EN, Transport.ROAD, direction, False, TiltRule.PAIRS)
    runs = holding.held(RuleSet.EN, holding.Ways(prepared.prepared(oily(1.1))), asked, 0.1)
    bare = prepared.prepared(oily(1.1, lashed=False))
    slid = slide_3d.slides_at(bare, direction.way, 1.0, 0.075, 1.0, False)
    tipped = tip_3d.tips_at(bare, direction.way, 1.0, Tension.STF, 1.0)
    assert slid is not None and tipped is not None
    for run, without, needed in zip(runs, (slid.push, tipped.push), (needed_slide, needed_tip), strict=True):
        pulls = sorted(holding.pulls_at_need_dan(run, without))
        assert pulls == pytest.approx([0.0, 0.0, needed, needed], abs=0.5)


@pytest.mark.parametrize("way, push, share, stands, alone, together", [
    pytest.param(FORWARD, 0.8, EN_FORWARD, Stands.FEET, 0.947, 1.513,
                 id="derived, limit equilibrium by two methods: mixed lashings on feet, forwards"),
    pytest.param(REAR, 0.5, EN_OTHER, Stands.FEET, 1.026, 0.770,
                 id="derived, limit equilibrium by two methods: mixed lashings on feet, rearwards"),
    pytest.param(LEFT, 0.5, EN_OTHER, Stands.FEET, 1.027, 0.855,
                 id="derived, limit equilibrium by two methods: mixed lashings on feet, to the left"),
    pytest.param(FORWARD, 0.8, EN_FORWARD, Stands.AREA, 0.878, 1.367,
                 id="derived, limit equilibrium by two methods: mixed lashings on a face, forwards"),
    pytest.param(REAR, 0.5, EN_OTHER, Stands.AREA, 0.973, 0.730,
                 id="derived, limit equilibrium by two methods: mixed lashings on a face, rearwards"),
    pytest.param(LEFT, 0.5, EN_OTHER, Stands.AREA, 1.027, 0.770,
                 id="derived, limit equilibrium by two methods: mixed lashings on a face, to the left"),
])
def test_block_tie_downs_and_direct_lashings_together(
    way: Vec, push: float, share: float, stands: Stands, alone: float, together: float
) -> None:
    """Blocks and tie-downs at full friction; everything at 0.75 of it."""
    assert slides(mixed(stands), way, push, 1.0, 0.3, share, False) == pytest.approx(alone, abs=WHOLE)
    assert slides(mixed(stands), way, push, 1.0, 0.225, share, True) == pytest.approx(together, abs=WHOLE)


@pytest.mark.parametrize("way, push, share, tension, expected", [
    pytest.param(FORWARD, 0.8, EN_FORWARD, Tension.STF, 1.588,
                 id="derived, limit equilibrium by two methods: tie-downs and a block, tipping forwards"),
    pytest.param(LEFT, 0.5, EN_OTHER, Tension.STF, 1.372,
                 id="derived, limit equilibrium by two methods: tie-downs and a block, left, 0.5 with STF"),
    pytest.param(LEFT, 0.6, EN_OTHER, Tension.HALF_LC, 2.477,
                 id="derived, limit equilibrium by two methods: tie-downs and a block, left, 0.6 with 0.5 LC"),
    pytest.param(LEFT, 0.6, EN_OTHER, Tension.STF, 1.144,
                 id="derived, limit equilibrium by two methods: tie-downs and a block, left, house 0.6 with STF"),
])
def test_tipping_under_tie_downs(way: Vec, push: float, share: float, tension: Tension, expected: float) -> None:
    assert tips(mixed(Stands.FEET, direct=False), way, push, 1.0, tension, share) == pytest.approx(expected, abs=WHOLE)


def test_derived_a_wide_top_on_a_narrow_base_counts_by_the_base() -> None:
    """Statics of strands that touch at ±0.6 over a base of ±0.4: w is 0.8, and 0.219 tie-downs hold, not 0.146."""
    body = lashed_body(
        392.4, Vec(0.0, 0.0, 0.9), corners(0.6, 0.4), Stands.FEET, (),
        [Strand(Vec(0.0, s * 0.6, 1.2), Vec(0.0, s * (0.6 + 1.2 * 0.17632698), 0.0), 350.0 * 0.219, 1.0)
         for s in (1.0, -1.0)],
    )
    assert tips(body, LEFT, 0.6, 1.0, Tension.STF, EN_OTHER) == pytest.approx(1.0, abs=0.001)
    right = tie_down.tie_downs_against_tipping(392.4, 0.6, 1.0, 0.9, 0.4, 0.8, 80.0, 350.0, 1.1)
    wrong = tie_down.tie_downs_against_tipping(392.4, 0.6, 1.0, 0.9, 0.4, 1.2, 80.0, 350.0, 1.1)
    assert (right, wrong) == pytest.approx((0.219, 0.146), abs=5e-4)


@pytest.mark.parametrize("way, push, friction, fs, angle_deg, alpha", [
    pytest.param(LEFT, 0.5, 0.3, 1.1, 90.0, 89.999,
                 id="derived, EN 12195-1 5.4.2: 650 kg, friction 0.3, straps upright, sideways"),
    pytest.param(FORWARD, 0.8, 0.45, 1.25, 60.0, 60.0,
                 id="derived, EN 12195-1 5.4.2: 650 kg, friction 0.45, straps at 60°, forwards"),
])
def test_space_gives_the_formula_of_tie_downs_back(
    way: Vec, push: float, friction: float, fs: float, angle_deg: float, alpha: float
) -> None:
    """As many tie-downs as the formula asks for leave exactly what is needed."""
    number = tie_down.tie_downs_against_sliding(637.65, push, 1.0, friction, angle_deg, 350.0, fs)
    run = 1.0 / 1.7320508 if angle_deg == 60.0 else 1e-9
    strands = [Strand(Vec(0.0, s * 0.4, 1.0), Vec(0.0, s * (0.4 + run), 0.0), 350.0 * number, 1.0) for s in (1.0, -1.0)]
    body = lashed_body(637.65, Vec(0.0, 0.0, 0.4), corners(0.5, 0.4), Stands.FEET, (), strands)
    assert slides(body, way, push, 1.0, friction, 1.0 / fs, False) == pytest.approx(1.0, abs=1e-6)


def test_space_gives_the_formula_of_diagonals_back() -> None:
    """1200 kg at 35° and 40°: 447.3 daN each, and with exactly that λ is 1."""
    each_dan = direct.direct_against_sliding_dan(1177.2, 0.8, 1.0, 0.3, 0.75, [(35.0, 40.0)] * 2)
    pulls = [
        Pull(Vec(-0.5, s * 0.3, 0.5), Vec(-0.5 - 0.6275 / 0.5736 * 0.5, s * (0.3 + 0.5265 / 0.5736 * 0.5), 0.0),
             each_dan, Stretch.WEB)
        for s in (1.0, -1.0)
    ]
    body = lashed_body(1177.2, Vec(0.0, 0.0, 0.5), corners(0.7, 0.5), Stands.FEET, pulls)
    assert slides(body, FORWARD, 0.8, 1.0, 0.225, 1.0, True) == pytest.approx(1.0, abs=2e-4)


@pytest.mark.parametrize("push, downward, height_m, reach_m, number", [(0.8, 1.0, 0.9, 0.6, 0.142)])
def test_space_gives_the_formula_of_tipping_back(
    push: float, downward: float, height_m: float, reach_m: float, number: float
) -> None:
    """400 kg, 0.9 m high, 1.2 m long: 0.142 tie-downs at 80° forwards."""
    needed = tie_down.tie_downs_against_tipping(392.4, push, downward, height_m, reach_m, 1.2, 80.0, 350.0, 1.25)
    assert needed == pytest.approx(number, abs=0.001)
    strands = [Strand(Vec(0.0, s * 0.4, 1.0), Vec(0.0, s * 0.5763, 0.0), 350.0 * needed, 1.0) for s in (1.0, -1.0)]
    body = lashed_body(392.4, Vec(0.0, 0.0, height_m), corners(reach_m, 0.4), Stands.FEET, (), strands)
    assert tips(body, FORWARD, push, downward, Tension.STF, EN_FORWARD) == pytest.approx(1.0, abs=1e-4)
