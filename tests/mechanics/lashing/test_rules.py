"""What each rule set asks for: coefficients, areas, factors, and what it does not know."""

import pytest

from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.lashing import demands, rule_sets, transport
from checklist_app.mechanics.lashing.demands import TiltRule
from checklist_app.mechanics.lashing.prepared import Tension
from checklist_app.mechanics.lashing.rule_sets import RULES, RuleSet
from checklist_app.mechanics.lashing.transport import Direction, Transport, Waters
from checklist_app.mechanics.sources import SOURCES, Status

FORWARD, REAR, LEFT, RIGHT = Direction.FORWARD, Direction.REAR, Direction.LEFT, Direction.RIGHT
GDV = "published, GDV load securing handbook 2.2: "


def asked(
    rule_set: RuleSet, by: Transport, way: Direction, tied: bool = False, tilt: TiltRule = TiltRule.PAIRS
) -> demands.Demand:
    return demands.demand(rule_set, by, way, tied, tilt)


@pytest.mark.parametrize("by, way, push, downward", [
    pytest.param(Transport.ROAD, FORWARD, 0.8, 1.0, id=GDV + "road forwards"),
    pytest.param(Transport.ROAD, REAR, 0.5, 1.0, id=GDV + "road rearwards"),
    pytest.param(Transport.ROAD, LEFT, 0.5, 1.0, id=GDV + "road sideways"),
    pytest.param(Transport.RAIL, FORWARD, 1.0, 1.0, id=GDV + "rail lengthways"),
    pytest.param(Transport.RAIL, LEFT, 0.5, 0.7, id=GDV + "rail crosswise"),
    pytest.param(Transport.SEA_A, REAR, 0.3, 0.5, id=GDV + "sea A lengthways"),
    pytest.param(Transport.SEA_A, LEFT, 0.5, 1.0, id=GDV + "sea A crosswise"),
    pytest.param(Transport.SEA_B, FORWARD, 0.3, 0.3, id=GDV + "sea B lengthways"),
    pytest.param(Transport.SEA_B, RIGHT, 0.7, 1.0, id=GDV + "sea B crosswise"),
    pytest.param(Transport.SEA_C, FORWARD, 0.4, 0.2, id=GDV + "sea C lengthways"),
    pytest.param(Transport.SEA_C, LEFT, 0.8, 1.0, id=GDV + "sea C crosswise"),
])
def test_sliding_by_en_12195(by: Transport, way: Direction, push: float, downward: float) -> None:
    """Trap: downward is the weight that remains (0.2 in sea C), not the 0.8 taken away."""
    for rule_set in (RuleSet.EN, RuleSet.CTU):
        (slide,) = asked(rule_set, by, way).slides
        assert (slide.push, slide.downward) == (push, downward)


def test_published_pairs_against_tipping_sideways() -> None:
    """IRU slides on the revision of EN 12195-1: cy 0.5 or 0.6, FT = STF or 0.5 LC, fs 1.1."""
    pairs = asked(RuleSet.EN, Transport.ROAD, LEFT, tied=True)
    assert [(tip.push, tip.tension) for tip in pairs.tips] == [(0.5, Tension.STF), (0.6, Tension.HALF_LC)]
    assert pairs.fs == 1.1


def test_without_tie_downs_or_by_the_house_06_counts_sideways() -> None:
    for held in (
        asked(RuleSet.EN, Transport.ROAD, RIGHT), asked(RuleSet.EN, Transport.ROAD, RIGHT, True, TiltRule.HOUSE)
    ):
        assert [(tip.push, tip.tension) for tip in held.tips] == [(0.6, Tension.STF)]


def test_published_rail_tips_at_06_lengthways_and_05_crosswise() -> None:
    """GDV load securing handbook 2.2.3: 1.0 against sliding, 0.6 against tipping; crosswise the whole weight stays."""
    assert asked(RuleSet.EN, Transport.RAIL, FORWARD).tips[0].push == 0.6
    assert asked(RuleSet.EN, Transport.RAIL, LEFT).tips[0].downward == 1.0


def test_from_memory_what_the_ctu_code_asks_is_never_less_than_en_12195() -> None:
    """Chapter 5 prints 0.5 for rail and for tipping sideways: the larger values of EN 12195-1 are kept."""
    for by in Transport:
        for way in Direction:
            assert asked(RuleSet.CTU, by, way) == asked(RuleSet.EN, by, way)


def test_published_us_rule_has_two_sets() -> None:
    """49 CFR 393.102: 0.8, 0.5, 0.5 against breaking strength; 0.435, 0.5, 0.25 against WLL."""
    for way, rated, breaking in ((FORWARD, 0.435, 0.8), (REAR, 0.5, 0.5), (LEFT, 0.25, 0.5)):
        by_wll, by_breaking = asked(RuleSet.US, Transport.ROAD, way).slides
        assert (by_wll.push, by_wll.against_breaking) == (rated, False)
        assert (by_breaking.push, by_breaking.against_breaking) == (breaking, True)
        assert asked(RuleSet.US, Transport.ROAD, way).tips[0].push == breaking


def test_the_uk_profile_asks_for_1_g_forwards_and_keeps_what_is_stricter() -> None:
    """From memory; it prints no safety factor, no reduced friction and no 0.6 for tipping: all three are kept."""
    forward = asked(RuleSet.UK, Transport.ROAD, FORWARD)
    assert (forward.slides[0].push, forward.tips[0].push, forward.fs) == (1.0, 1.0, 1.25)
    assert asked(RuleSet.UK, Transport.ROAD, LEFT).tips[0].push == 0.6
    for way in Direction:
        en, uk = asked(RuleSet.EN, Transport.ROAD, way), asked(RuleSet.UK, Transport.ROAD, way)
        assert uk.slides[0].push >= en.slides[0].push and uk.tips[0].push >= en.tips[0].push and uk.fs >= en.fs


@pytest.mark.parametrize("gross_t, slide, tip", [(1.9, 0.7, 0.7), (3.0, 0.6, 0.6), (3.6, 0.5, 0.6)])
def test_a_van_is_never_asked_for_less_than_a_lorry(gross_t: float, slide: float, tip: float) -> None:
    """VDI 2700-16 sideways; the 0.6 of EN 12195-1 for tipping stays."""
    van = demands.van_demand(gross_t, LEFT)
    assert (van.slides[0].push, van.tips[0].push) == (slide, tip)
    for way in Direction:
        lorry, by_van = asked(RuleSet.EN, Transport.ROAD, way), demands.van_demand(gross_t, way)
        assert by_van.slides[0].push >= lorry.slides[0].push and by_van.tips[0].push >= lorry.tips[0].push
        assert by_van.fs == lorry.fs


def test_trap_safety_factors_belong_to_tie_downs_of_en_12195() -> None:
    """1.25 forwards on the road only; from memory 1.1 on rail and at sea."""
    assert asked(RuleSet.EN, Transport.ROAD, FORWARD).fs == 1.25
    assert {asked(RuleSet.EN, by, way).fs for by in Transport for way in Direction if (by, way) != (
        Transport.ROAD, FORWARD)} == {1.1}
    assert asked(RuleSet.NTC, Transport.ROAD, FORWARD).fs == asked(RuleSet.US, Transport.ROAD, FORWARD).fs == 1.0


@pytest.mark.parametrize("rule_set, waters, area", [
    pytest.param(RuleSet.EN, Waters.MEDITERRANEAN, Transport.SEA_B,
                 id="published, GDV handbook 2.2.2: Mediterranean is B"),
    pytest.param(RuleSet.CTU, Waters.MEDITERRANEAN, Transport.SEA_A,
                 id="published, MSC.1/Circ.1498: Mediterranean is A"),
    pytest.param(RuleSet.EN, Waters.BALTIC, Transport.SEA_A, id="published, GDV handbook 2.2.2: Baltic is A"),
    pytest.param(RuleSet.CTU, Waters.NORTH_SEA, Transport.SEA_B, id="published, MSC.1/Circ.1498: North Sea is B"),
    pytest.param(RuleSet.EN, Waters.BLACK_SEA, Transport.SEA_C, id="published, GDV handbook 2.2.2: the rest is C"),
    pytest.param(RuleSet.CTU, Waters.OPEN_OCEAN, Transport.SEA_C, id="published, MSC.1/Circ.1498: unrestricted is C"),
])
def test_areas(rule_set: RuleSet, waters: Waters, area: Transport) -> None:
    assert transport.sea_area(rule_set, waters) is area


@pytest.mark.parametrize("rule_set", list(RuleSet))
def test_every_rule_set_says_which_edition_was_read_and_has_its_own_g(rule_set: RuleSet) -> None:
    rules = RULES[rule_set]
    assert rules.edition_read and rules.source in SOURCES
    assert rule_sets.weight_dan(rule_set, 1000.0) == pytest.approx(980.665 if rule_set is RuleSet.US else 981.0)


@pytest.mark.parametrize("rule_set", [RuleSet.US, RuleSet.NTC, RuleSet.UK])
def test_road_rules_do_not_go_to_sea(rule_set: RuleSet) -> None:
    for by in Transport:
        if by is not Transport.ROAD:
            with pytest.raises(OutOfRangeError, match="allowed: road"):
                asked(rule_set, by, FORWARD)


def test_what_is_from_memory_is_said_to_be() -> None:
    assert SOURCES["UK_1_G"].status is Status.FROM_MEMORY
    assert "from memory" in RULES[RuleSet.UK].edition_read and "not read" in RULES[RuleSet.CSS].edition_read
