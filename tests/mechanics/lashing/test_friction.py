"""Friction of a load on its pallet or deck, by pair and state."""

import pytest

from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.lashing import friction
from checklist_app.mechanics.lashing.friction import Pair, Surface
from checklist_app.mechanics.lashing.rule_sets import RuleSet

LISTED = "published, CTU Code Annex 7 Appendix 2: "


@pytest.mark.parametrize("pair, printed", [
    pytest.param(Pair.SAWN_WOOD_ON_PLYWOOD, 0.45, id=LISTED + "wooden pallet on plywood 0.45"),
    pytest.param(Pair.SAWN_WOOD_ON_ALUMINIUM, 0.40, id=LISTED + "sawn timber on grooved aluminium 0.40"),
    pytest.param(Pair.SAWN_WOOD_ON_STEEL, 0.30, id=LISTED + "sawn timber on stainless sheet 0.30"),
    pytest.param(Pair.SAWN_WOOD_ON_FILM, 0.30, id=LISTED + "sawn timber on shrink film 0.30"),
    pytest.param(Pair.PLANED_WOOD_ON_PLYWOOD, 0.30, id=LISTED + "planed wood on plywood 0.30"),
    pytest.param(Pair.PLANED_WOOD_ON_ALUMINIUM, 0.25, id=LISTED + "planed wood on grooved aluminium 0.25"),
    pytest.param(Pair.PLANED_WOOD_ON_STEEL, 0.20, id=LISTED + "planed wood on stainless sheet 0.20"),
    pytest.param(Pair.PLASTIC_PALLET_ON_PLYWOOD, 0.20, id=LISTED + "plastic pallet on plywood 0.20"),
    pytest.param(Pair.PLASTIC_PALLET_ON_ALUMINIUM, 0.15, id=LISTED + "plastic pallet on aluminium 0.15"),
    pytest.param(Pair.PLASTIC_PALLET_ON_STEEL, 0.15, id=LISTED + "plastic pallet on stainless sheet 0.15"),
    pytest.param(Pair.STEEL_CRATE_ON_PLYWOOD, 0.45, id=LISTED + "steel crate on plywood 0.45"),
    pytest.param(Pair.STEEL_CRATE_ON_ALUMINIUM, 0.30, id=LISTED + "steel crate on aluminium 0.30"),
    pytest.param(Pair.STEEL_CRATE_ON_STEEL, 0.20, id=LISTED + "steel crate on stainless sheet 0.20"),
    pytest.param(Pair.MAT, 0.60, id=LISTED + "anti-slip mat 0.60"),
])
def test_clean_and_dry(pair: Pair, printed: float) -> None:
    assert friction.friction(RuleSet.EN, pair, Surface.CLEAN_DRY) == printed
    assert friction.friction(RuleSet.CTU, pair, Surface.CLEAN_DRY) == printed


@pytest.mark.parametrize("pair, surface, expected", [
    pytest.param(Pair.BARE_METAL_ON_WOOD, Surface.CLEAN_DRY, 0.3, id="published, CSS Code: steel on timber 0.3"),
    pytest.param(Pair.BARE_METAL_ON_WOOD, Surface.OILY, 0.02,
                 id="published, trailer manuals after VDI: metal on wood greasy, lower end 0.02"),
    pytest.param(Pair.SAWN_WOOD_ON_PLYWOOD, Surface.OILY, 0.05,
                 id="published, trailer manuals after VDI: wood on wood greasy, lower end 0.05"),
    pytest.param(Pair.BARE_METAL_ON_WOOD, Surface.CLEAN_WET, 0.2,
                 id="published, trailer manuals after VDI: metal on wood wet, lower end 0.2"),
    pytest.param(Pair.BARE_METAL_ON_METAL, Surface.CLEAN_DRY, 0.1, id="from memory, CSS Code Annex 13: steel dry 0.1"),
    pytest.param(Pair.BARE_METAL_ON_METAL, Surface.CLEAN_WET, 0.0, id="from memory, CSS Code Annex 13: steel wet 0"),
    pytest.param(Pair.SAWN_WOOD_ON_PLYWOOD, Surface.FROST, 0.2, id="from memory, CTU Code: frost 0.2 at most"),
    pytest.param(Pair.SAWN_WOOD_ON_PLYWOOD, Surface.DIRTY, 0.2, id="from memory, EN 12195-1: not swept 0.2 at most"),
])
def test_by_state(pair: Pair, surface: Surface, expected: float) -> None:
    assert friction.friction(RuleSet.EN, pair, surface) == expected


def test_common_practice_steel_never_on_steel() -> None:
    """Common practice, no source: hauliers take an engine on wood only; dry steel 0.1, oily or wet steel 0."""
    by_state = {surface: friction.friction(RuleSet.EN, Pair.BARE_METAL_ON_METAL, surface) for surface in Surface}
    assert by_state[Surface.CLEAN_DRY] == 0.1
    assert by_state[Surface.CLEAN_WET] == by_state[Surface.OILY] == 0.0
    for surface in Surface:
        assert by_state[surface] <= friction.friction(RuleSet.EN, Pair.BARE_METAL_ON_WOOD, surface)


@pytest.mark.parametrize("rule_set", RuleSet)
def test_a_measured_friction_never_counts_for_more_than_is_published(rule_set: RuleSet) -> None:
    """CTU Code Annex 7 Appendix 2 and what else the table of friction is from; measured below it counts as measured."""
    for pair in Pair:
        for surface in Surface:
            try:
                published = friction.friction(rule_set, pair, surface)
            except OutOfRangeError:
                continue
            assert friction.measured_friction(rule_set, pair, surface, 0.9) == published
            assert friction.measured_friction(rule_set, pair, surface, 0.01) == min(0.01, published)


def test_a_pair_that_annex_13_does_not_have_counts_as_the_ctu_code_prints_it_at_most() -> None:
    plastic = Pair.PLASTIC_PALLET_ON_PLYWOOD
    found = [friction.measured_friction(RuleSet.CSS, plastic, Surface.CLEAN_DRY, mu) for mu in (0.12, 0.5)]
    assert found == [0.12, 0.20]


def test_trap_a_bare_foot_is_no_steel_crate() -> None:
    assert friction.friction(RuleSet.EN, Pair.BARE_METAL_ON_WOOD, Surface.CLEAN_DRY) < friction.friction(
        RuleSet.EN, Pair.STEEL_CRATE_ON_PLYWOOD, Surface.CLEAN_DRY)


@pytest.mark.parametrize("rule_set", list(RuleSet))
def test_no_state_ever_grips_better_than_clean_and_dry(rule_set: RuleSet) -> None:
    for pair in Pair:
        if pair is Pair.MAT or (rule_set is RuleSet.CSS and friction.TABLE[pair][1] is friction.Faces.OTHER):
            continue
        clean = friction.friction(rule_set, pair, Surface.CLEAN_DRY)
        assert all(0.0 <= friction.friction(rule_set, pair, surface) <= clean for surface in Surface)


def test_what_nobody_knows_is_the_worst_published() -> None:
    """The whole table: oil between metal and metal; of a bare foot on wood: oil; of what is dirty: wet metal's 0."""
    assert friction.worst_friction(RuleSet.EN, None, None) == 0.0
    assert friction.worst_friction(RuleSet.EN, Pair.BARE_METAL_ON_WOOD, None) == 0.02
    assert friction.worst_friction(RuleSet.EN, None, Surface.CLEAN_DRY) == 0.1
    assert friction.worst_friction(RuleSet.CSS, None, Surface.CLEAN_DRY) == 0.1
    assert friction.worst_friction(RuleSet.EN, Pair.MAT, Surface.CLEAN_DRY) == 0.6


@pytest.mark.parametrize("rule_set, expected", [
    (RuleSet.EN, 0.6), (RuleSet.CTU, 0.6), (RuleSet.NTC, 0.6), (RuleSet.UK, 0.6), (RuleSet.US, 0.5), (RuleSet.CSS, 0.3),
])
def test_a_mat_by_rule_set(rule_set: RuleSet, expected: float) -> None:
    """49 CFR 393.108(g): an unmarked friction mat resists half of the weight on it; CSS Code: steel on rubber 0.3."""
    assert friction.friction(rule_set, Pair.MAT, Surface.CLEAN_DRY) == expected


def test_annex_13_has_its_own_short_list() -> None:
    """From memory, stricter: timber on timber 0.4 at most, steel on timber 0.3 at most."""
    assert friction.friction(RuleSet.CSS, Pair.SAWN_WOOD_ON_PLYWOOD, Surface.CLEAN_DRY) == 0.4
    assert friction.friction(RuleSet.CSS, Pair.STEEL_CRATE_ON_PLYWOOD, Surface.CLEAN_DRY) == 0.3
    assert friction.friction(RuleSet.CSS, Pair.STEEL_CRATE_ON_STEEL, Surface.CLEAN_DRY) == 0.1


@pytest.mark.parametrize("rule_set, share", [
    (RuleSet.EN, 0.75), (RuleSet.CTU, 0.75), (RuleSet.UK, 0.75), (RuleSet.CSS, 1.0), (RuleSet.US, 1.0),
    (RuleSet.NTC, 1.0),
])
def test_trap_three_quarters_belong_to_en_and_ctu(rule_set: RuleSet, share: float) -> None:
    """An entered friction of 0.1 is 0.075 beside direct lashings."""
    assert friction.beside_direct_lashings(rule_set, 0.1) == pytest.approx(0.1 * share, abs=1e-15)
