"""Tipping of loads that stand by themselves: printed cases, equality refused."""

import pytest

from checklist_app.mechanics.lashing import blocking, changes, tipping
from checklist_app.mechanics.lashing.demands import TiltRule, demand
from checklist_app.mechanics.lashing.rule_sets import RuleSet
from checklist_app.mechanics.lashing.transport import Direction, Transport

ROAD_FORWARD, ROAD_ASIDE, OLD_ASIDE, ROAD_REAR = 0.8, 0.6, 0.7, 0.5


@pytest.mark.parametrize("push, stands", [
    pytest.param(0.8, False, id="published, BGHM-Information 108 8.4: crate 0.58 × 0.88 m tips forwards"),
    pytest.param(0.5, True, id="published, BGHM-Information 108 8.4: the same crate stands sideways"),
    pytest.param(0.6, True, id="derived, BGHM-Information 108 8.4: and with the 0.6 of EN 12195-1 too"),
])
def test_printed_crate(push: float, stands: bool) -> None:
    """Printed 0.66 for 0.29 / 0.44."""
    assert pytest.approx(0.66, abs=0.005) == 0.29 / 0.44
    assert tipping.stands_unlashed(push, 1.0, 0.44, 0.29).holds is stands


@pytest.mark.parametrize("push, reach_m, stands", [
    pytest.param(0.8, 0.85, True, id="published, load-securing leaflet: 1 m high, 0.85 forwards stands"),
    pytest.param(0.8, 0.80, False, id="published, same leaflet: 0.80 forwards tips, equality counts as tipping"),
    pytest.param(0.7, 0.75, True, id="published, same leaflet: 0.75 sideways stands (the 0.7 of its time)"),
    pytest.param(0.7, 0.70, False, id="published, same leaflet: 0.70 sideways tips"),
    pytest.param(0.5, 0.55, True, id="published, same leaflet: 0.55 rearwards stands"),
    pytest.param(0.5, 0.50, False, id="published, same leaflet: 0.50 rearwards tips"),
])
def test_printed_verdicts(push: float, reach_m: float, stands: bool) -> None:
    assert tipping.stands_unlashed(push, 1.0, 1.0, reach_m).holds is stands


def test_b_over_d_of_0444_tips_every_way_on_the_road() -> None:
    for push in (ROAD_FORWARD, ROAD_ASIDE, ROAD_REAR):
        assert not tipping.stands_unlashed(push, 1.0, 0.90, 0.40).holds


@pytest.mark.parametrize("transport, expected", [
    pytest.param(Transport.SEA_A, 0.6, id="derived, GDV handbook 2.2.2: sea A lengthways"),
    pytest.param(Transport.SEA_B, 1.0, id="derived, GDV handbook 2.2.2: sea B lengthways"),
    pytest.param(Transport.SEA_C, 2.0, id="derived, GDV handbook 2.2.2: sea C lengthways"),
])
def test_base_over_height_at_sea(transport: Transport, expected: float) -> None:
    tip = demand(RuleSet.EN, transport, Direction.FORWARD, False, TiltRule.PAIRS).tips[0]
    assert tipping.base_over_height_needed(tip.push, tip.downward) == pytest.approx(expected, abs=1e-12)


@pytest.mark.parametrize("transport", [
    Transport.ROAD, Transport.RAIL, Transport.SEA_A, Transport.SEA_B, Transport.SEA_C])
@pytest.mark.parametrize("direction", list(Direction))
def test_trap_800_high_and_350_wide_tips_every_way(transport: Transport, direction: Direction) -> None:
    """b / d 0.4375: every road direction, both ways in every sea area; by rail too."""
    for tip in demand(RuleSet.EN, transport, direction, False, TiltRule.PAIRS).tips:
        assert not tipping.stands_unlashed(tip.push, tip.downward, 0.8, 0.35).holds


def test_derived_bag_at_the_height_of_the_centre_of_gravity() -> None:
    """CTU Code, Annex 7 Appendix 4: 0.9 t, 0.8 m wide, 1.6 m high, 0.8 g: 2.65 kN."""
    assert blocking.bag_tipping_kn(0.9, 9.81, 0.8, 1.0, 0.8, 1.6) == pytest.approx(2.65, abs=0.01)


def test_trap_a_low_block_adds_almost_nothing_against_tipping() -> None:
    """4000 daN at 5 cm on 1000 kg: 0.2 m of arm, where the block alone would stop any sliding."""
    assert blocking.blocking_needed_dan(981.0, 0.8, 1.0, 0.0, True) < 4000.0
    assert tipping.block_against_tipping_m(4000.0, 0.05, 981.0) == pytest.approx(0.2039, abs=1e-4)


def test_trap_the_smaller_half_counts_and_a_soft_edge_moves_in() -> None:
    assert tipping.nearest_edge_m((0.45, 0.35), 0.0) == 0.35
    assert tipping.nearest_edge_m((0.45, 0.35), 0.04) == pytest.approx(0.31)


def test_laid_flat_it_stands() -> None:
    """What would make it pass: below 0.4375 m the load of the trap above stands forwards."""
    below_m = changes.cg_must_be_below_m(0.8, 1.0, 0.35)
    assert below_m == pytest.approx(0.4375)
    assert not tipping.stands_unlashed(0.8, 1.0, below_m, 0.35).holds
    assert tipping.stands_unlashed(0.8, 1.0, below_m - 1e-6, 0.35).holds
