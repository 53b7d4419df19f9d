"""Everything together in space, through the whole operation: worked examples of limit equilibrium by two methods."""

from collections.abc import Sequence
from typing import Any

import pytest

from checklist_app.mechanics.lashing.demands import TiltRule
from checklist_app.mechanics.lashing.lashed_body import Stands
from checklist_app.mechanics.lashing.transport import Waters
from checklist_app.operations.check import Verdict
from checklist_app.operations.evaluate import Evaluation
from checklist_app.operations.lashing.choices import Blocks, Route
from tests.operations.lashing.loads import (
    FORWARD,
    LEFT,
    REAR,
    Row,
    block,
    diagonal,
    four,
    load,
    nominal,
    run,
    strap,
    tie_down,
    times,
)

WHOLE = 0.003
SLIDES, TIPS = "sliding", "tipping"


def oily(attached_m: float, rows: slice = slice(None), **changes: Any) -> Evaluation:
    """1000 kg on 1.0 × 0.7 m, μ 0.1, four diagonals of 1000 daN from one height; by road and over the open ocean."""
    lashings = four((0.45, 0.30, attached_m), (1.2, 1.1, 0.0))[rows]
    base = {"base_length_m": 1.0, "base_width_m": 0.7, "cg_z_m": 0.8, "load_friction": 0.1, "route": Route.SEA}
    base["height_m"] = 2.0
    return nominal(load(lashings, waters=Waters.OPEN_OCEAN, **(base | changes)))


@pytest.mark.parametrize("way, transport, slides_at, tips_at", [
    pytest.param(FORWARD, "road", 1.460, 4.616, id="derived, two methods: oily load on four diagonals, road forwards"),
    pytest.param(LEFT, "road", 2.467, 5.091, id="derived, two methods: oily load on four diagonals, road sideways"),
    pytest.param(FORWARD, "sea", 2.739, 7.983, id="derived, two methods: oily load, sea C lengthways"),
    pytest.param(LEFT, "sea", 1.542, 3.818, id="derived, two methods: oily load on four diagonals, sea C crosswise"),
])
def test_direct_lashings_hold_an_oily_load(way: str, transport: str, slides_at: float, tips_at: float) -> None:
    ev = oily(1.1)
    assert times(ev, way, SLIDES, transport) == pytest.approx(slides_at, abs=WHOLE)
    assert times(ev, way, TIPS, transport) == pytest.approx(tips_at, abs=WHOLE)


@pytest.mark.parametrize("way, title, needed_dan", [
    pytest.param(FORWARD, SLIDES, 663.5, id="derived, EN 12195-1 balances: pull of each, sliding forwards"),
    pytest.param(FORWARD, TIPS, 57.0, id="derived, EN 12195-1 balances: pull of each, tipping forwards"),
    pytest.param(LEFT, SLIDES, 366.9, id="derived, EN 12195-1 balances: pull of each, sliding sideways"),
    pytest.param(LEFT, TIPS, 62.1, id="derived, EN 12195-1 balances: pull of each, tipping sideways"),
])
def test_lashings_of_the_force_needed_just_hold(way: str, title: str, needed_dan: float) -> None:
    lashings = four((0.45, 0.30, 1.1), (1.2, 1.1, 0.0), needed_dan)
    base = {"base_length_m": 1.0, "base_width_m": 0.7, "cg_z_m": 0.8, "load_friction": 0.1}
    assert times(nominal(load(lashings, **base)), way, title) == pytest.approx(1.0, abs=0.001)


def test_derived_each_lashing_is_shown_with_its_greatest_pull() -> None:
    """Of the four the rear two hold forwards with 663.5 daN; the front ones rearwards, at 0.5, with less."""
    base = {"base_length_m": 1.0, "base_width_m": 0.7, "cg_z_m": 0.8, "load_friction": 0.1}
    ev = nominal(load(four((0.45, 0.30, 1.1), (1.2, 1.1, 0.0)), **base))
    pulls = [ev[f"lashing_pull_dan[L{number}]"] for number in (1, 2, 3, 4)]
    assert pulls[2:] == pytest.approx([663.5] * 2, abs=0.5)
    assert max(pulls[:2]) < 500.0
    assert ev.check("lashing_strength[L3]").outcome == pytest.approx((663.5, 1000.0), abs=0.5)


@pytest.mark.parametrize("attached_m, rows, way, transport, title, expected", [
    pytest.param(1.8, slice(None), LEFT, "sea", SLIDES, 1.155,
                 id="derived, two methods: attached at 1.8 m, sea C crosswise"),
    pytest.param(1.8, slice(None), LEFT, "road", SLIDES, 1.849,
                 id="derived, two methods: attached at 1.8 m, road sideways"),
    pytest.param(1.4, slice(2, None), FORWARD, "sea", SLIDES, 0.846,
                 id="derived, two methods: two rear lashings alone at 1.4 m, sea C lengthways"),
    pytest.param(0.15, slice(None), LEFT, "road", SLIDES, 1.692,
                 id="derived, two methods: attached at 0.15 m, road sideways"),
    pytest.param(0.15, slice(None), LEFT, "road", TIPS, 1.564,
                 id="derived, two methods: attached at 0.15 m, tipping sideways"),
    pytest.param(1.1, slice(0), FORWARD, "road", SLIDES, 0.125, id="derived, two methods: unlashed, forwards"),
    pytest.param(1.1, slice(0), FORWARD, "road", TIPS, 0.781, id="derived, two methods: unlashed, tips forwards"),
    pytest.param(1.1, slice(0), LEFT, "road", SLIDES, 0.200, id="derived, two methods: unlashed, sideways"),
    pytest.param(1.1, slice(0), LEFT, "road", TIPS, 0.729, id="derived, two methods: unlashed, tips sideways"),
])
def test_where_the_foot_swings_out_or_lashings_are_missing(
    attached_m: float, rows: slice, way: str, transport: str, title: str, expected: float
) -> None:
    assert times(oily(attached_m, rows), way, title, transport) == pytest.approx(expected, abs=WHOLE)


@pytest.mark.parametrize("attached_m, rows, way, waters, promised, found", [
    pytest.param(1.8, slice(None), LEFT, "sea", 1.224, 1.155, id="derived, formula: at 1.8 m, sea C crosswise"),
    pytest.param(1.8, slice(None), LEFT, "road", 1.959, 1.849, id="derived, formula: attached at 1.8 m, road sideways"),
    pytest.param(1.4, slice(2, None), FORWARD, "sea", 2.488, 0.846, id="derived, formula: two rear lashings alone"),
])
def test_trap_the_formula_promises_more_there_and_the_difference_is_told(
    attached_m: float, rows: slice, way: str, waters: str, promised: float, found: float
) -> None:
    """Each plane by itself is not enough: the run in space governs, the formula stands beside it."""
    ev = oily(attached_m, rows, route=Route.SEA if waters == "sea" else Route.ROAD)
    told = run(ev, way, SLIDES, waters)
    assert told.held.formula / told.held.need == pytest.approx(promised, abs=WHOLE)
    assert told.held.times == pytest.approx(found, abs=WHOLE)
    if ev[f"slid_load[{way}]"].governs.transport == told.transport:
        by_hand = told.held.need * promised * 981.0
        assert ev[f"slide_by_formula_dan[{way}]"] == pytest.approx(by_hand, rel=0.002)
        lost = told.held.need * (promised - found) * 981.0
        assert ev[f"slide_lost_dan[{way}]"] == pytest.approx(lost, abs=WHOLE * 981.0)


def mixed(stands: Stands = Stands.FEET, direct: bool = True, **changes: Any) -> Evaluation:
    """1500 kg off its middle: two tie-downs, two direct lashings to the rear, one low block ahead; μ 0.3."""
    lashings: Sequence[Row] = [
        *(tie_down((x, 0.30, 1.3), (x, 1.2, 0.0)) for x in (0.3, -0.3)),
        *(diagonal((-0.5, 0.0, 1.2), (-1.8, side * 0.5, 0.0), 500.0) for side in (1.0, -1.0) if direct),
    ]
    base = {
        "mass_kg": 1500.0, "cg_y_m": 0.05, "cg_z_m": 0.8, "base_length_m": 1.2, "base_width_m": 0.7, "stands": stands,
    }
    return nominal(load(lashings, [block(Blocks.FORWARD, (0.6, 0.0, 0.15), 400.0)], **(base | changes)))


@pytest.mark.parametrize("way, stands, expected, with_direct", [
    pytest.param(FORWARD, Stands.FEET, 1.513, True, id="derived, two methods: mixed lashings on feet, forwards"),
    pytest.param(REAR, Stands.FEET, 1.026, False, id="derived, two methods: mixed lashings on feet, rearwards"),
    pytest.param(LEFT, Stands.FEET, 1.027, False, id="derived, two methods: mixed lashings on feet, to the left"),
    pytest.param(FORWARD, Stands.AREA, 1.367, True, id="derived, linear programming: on a full face, forwards"),
    pytest.param(REAR, Stands.AREA, 0.973, False, id="derived, linear programming: on a full face, rearwards"),
    pytest.param(LEFT, Stands.AREA, 1.027, False, id="derived, linear programming: on a full face, to the left"),
])
def test_the_better_of_both_ways_to_count_friction(
    way: str, stands: Stands, expected: float, with_direct: bool
) -> None:
    ev = mixed(stands)
    found = run(ev, way, SLIDES)
    assert found.held.times == pytest.approx(expected, abs=WHOLE)
    assert found.held.with_direct is with_direct
    told = ev.check(f"sliding[{way}]").verdict
    assert (told is Verdict.OVER) is (expected < 1.0)


@pytest.mark.parametrize("way, expected", [
    pytest.param(FORWARD, 0.947, id="derived, two methods: tie-downs and block alone on feet, forwards"),
    pytest.param(REAR, 1.026, id="derived, two methods: tie-downs and block alone on feet, rearwards"),
    pytest.param(LEFT, 1.027, id="derived, two methods: tie-downs and block alone on feet, to the left"),
])
def test_without_direct_lashings(way: str, expected: float) -> None:
    assert times(mixed(direct=False), way, SLIDES) == pytest.approx(expected, abs=WHOLE)


@pytest.mark.parametrize("way, tilt_rule, title, expected", [
    pytest.param(FORWARD, TiltRule.PAIRS, "tipping forwards", 1.588, id="derived, two methods: tipping forwards"),
    pytest.param(LEFT, TiltRule.PAIRS, "tipping to the left", 1.372, id="derived, two methods: left, 0.5 with STF"),
    pytest.param(LEFT, TiltRule.PAIRS, "tipping to the left, half of LC", 2.477,
                 id="derived, two methods: left, 0.6 with half of LC"),
    pytest.param(LEFT, TiltRule.HOUSE, "tipping to the left", 1.144, id="derived, two methods: left, 0.6 with STF"),
])
def test_tie_downs_and_a_block_against_tipping(way: str, tilt_rule: TiltRule, title: str, expected: float) -> None:
    ev = mixed(direct=False, tilt_rule=tilt_rule)
    (found,) = (each for each in ev[f"held_load[{way}]"].runs if each.held.title == title)
    assert found.held.times == pytest.approx(expected, abs=WHOLE)


def test_derived_after_settling_half_the_tension_is_told_beside() -> None:
    """Sideways: friction of the weight and of half the tension, at 0.8221 of it downwards, over 1.1."""
    ev = mixed(direct=False)
    by_hand = 0.3 * (1471.5 + 4.0 * 350.0 * 0.5 * 0.8221 / 1.1)
    assert ev[f"slide_settled_dan[{LEFT}]"] == pytest.approx(by_hand, abs=3.0)
    assert ev[f"slide_settled_dan[{LEFT}]"] < ev[f"slide_withstood_dan[{LEFT}]"]


def test_where_no_tie_down_holds_nothing_settles() -> None:
    assert oily(1.1)[f"slide_settled_dan[{LEFT}]"] is None


def test_a_second_kind_of_lashing_beside_a_stiffer_one_is_not_counted_twice() -> None:
    """Web and chain in one direction: the chain alone, or the webs alone; never the sum."""
    base = {"base_length_m": 1.0, "base_width_m": 0.7, "cg_z_m": 0.8, "load_friction": 0.1}
    ends = ((-0.45, 0.30, 1.1), (-1.2, 1.1, 0.0))
    right = ((-0.45, -0.30, 1.1), (-1.2, -1.1, 0.0))
    web = [diagonal(*ends), diagonal(*right)]
    chain = [diagonal(*each, lashing_item=strap(1000.0, None, kind="chain_lashing")) for each in (ends, right)]
    alone, both = (times(nominal(load(rows, **base)), FORWARD, SLIDES) for rows in (web, [*web, *chain]))
    twice = times(nominal(load([*web, *web], **base)), FORWARD, SLIDES)
    assert both == pytest.approx(alone, abs=WHOLE)
    assert twice > 1.9 * both - WHOLE
