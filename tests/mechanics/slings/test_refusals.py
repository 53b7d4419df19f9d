"""Outside what a clause of slings covers it refuses, in words a rigger can act on."""

import math
from collections.abc import Callable

import pytest

from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.slings import (
    bends,
    chain_wll,
    chemicals,
    choke,
    edges,
    en_modes,
    label,
    legs,
    rope_wll,
    slip,
    temperature,
    us_chain_wll,
    us_modes,
    wrap,
)
from checklist_app.mechanics.slings.bends import Termination
from checklist_app.mechanics.slings.chemicals import Chemical
from checklist_app.mechanics.slings.kinds import Hitch, LegRule, RuleSet, SlingKind
from checklist_app.mechanics.slings.temperature import ChainGrade, Fibre, RopeMake

STRAIGHT, FERRULE = Hitch.STRAIGHT, Termination.FERRULE
NAN = math.nan


@pytest.mark.parametrize("call, words", [
    (lambda: en_modes.basket_factor(60.1), "60.1; allowed: 0 to 60°"),
    (lambda: en_modes.basket_factor(NAN), "nan; allowed: 0 to 60°"),
    (lambda: en_modes.multi_leg_factor(2, Hitch.BASKET, 30.0), "hitch is basket; allowed: straight or choked"),
    (lambda: en_modes.multi_leg_factor(2, Hitch.DOUBLED, 30.0), "laid double over the fitting; allowed: straight"),
    (lambda: en_modes.multi_leg_factor(5, STRAIGHT, 30.0), "number of legs is 5; allowed: 1 to 4"),
    (lambda: en_modes.multi_leg_factor(0, STRAIGHT, 30.0), "number of legs is 0; allowed: 1 to 4"),
    (lambda: us_modes.from_horizontal_deg(91.0), "angle from vertical is 91"),
    (lambda: us_modes.from_horizontal_deg(NAN), "angle from vertical is nan"),
    (lambda: us_modes.sling_angle_factor(29.9), "angle from the horizontal is 29.9; allowed: 30 to 90°"),
    (lambda: us_modes.load_angle_factor(15.0), "angle from the horizontal is 15; allowed: 30 to 90°"),
    (lambda: us_modes.basket_factor(NAN), "angle from the horizontal is nan"),
    (lambda: us_modes.multi_leg_factor(2, Hitch.BASKET, 60.0), "hitch is basket"),
    (lambda: us_modes.multi_leg_factor(6, STRAIGHT, 60.0), "number of legs is 6"),
    (lambda: us_modes.multi_leg_factor(2, STRAIGHT, 20.0), "angle from the horizontal is 20"),
    (lambda: legs.counted_legs(5, LegRule.TWO_LEGS), "number of legs is 5"),
    (lambda: legs.weakest_leg_wll_t(()), "number of legs is 0"),
    (lambda: legs.weakest_leg_wll_t((2.0, NAN)), "WLL of a leg is nan"),
    (lambda: legs.weakest_leg_wll_t((2.0, 0.0)), "WLL of a leg is 0"),
    (lambda: legs.pull_if_two_carry(2.1, 61.0), "61; allowed: 0 to 60°"),
    (lambda: legs.pull_if_two_carry(0.0, 45.0), "factor of the legs is 0"),
    (lambda: legs.leg_angles_alike(()), "angle of a leg from vertical is nan"),
    (lambda: legs.leg_angles_alike((30.0, -1.0)), "angle of a leg from vertical is -1"),
    (lambda: legs.plan_angles_alike((30.0,)), "direction of the legs"),
    (lambda: legs.plan_angles_alike((30.0, NAN)), "direction of the legs"),
    (lambda: chain_wll.grade_8_wll_t(9, 1, 0.0), "nominal size of the chain is 9; allowed: 6, 7, 8, 10"),
    (lambda: chain_wll.grade_8_wll_t(10, 5, 0.0), "number of legs is 5"),
    (lambda: chain_wll.grade_8_wll_t(10, 2, 61.0), "61; allowed: 0 to 60°"),
    (lambda: chain_wll.grade_8_endless_choked_wll_t(5), "nominal size of the chain is 5"),
    (lambda: chain_wll.grade_4_wll_t(6, choked=True), "nominal size of the chain is 6; allowed: 8, 10, 13, 16, 20 mm"),
    (lambda: rope_wll.wire_rope_wll_t(15, 1, 0.0), "diameter of the rope is 15"),
    (lambda: rope_wll.wire_rope_wll_t(16, 2, NAN), "angle of the flatter leg from vertical is nan"),
    (lambda: rope_wll.wire_rope_wll_t(16, 0, 0.0), "number of legs is 0"),
    (lambda: rope_wll.wire_rope_endless_choked_wll_t(7), "diameter of the rope is 7"),
    (lambda: rope_wll.wll_from_breaking_force_t(NAN, 0.9, 5.0), "minimum breaking force is nan"),
    (lambda: rope_wll.wll_from_breaking_force_t(60.0, 1.1, 5.0), "efficiency is 1.1; allowed: 1 at most"),
    (lambda: rope_wll.wll_from_breaking_force_t(60.0, 0.9, 0.5), "working coefficient is 0.5"),
    (lambda: us_chain_wll.grade_80_lb("10 mm", 1, 90.0), "size of the chain is 10 mm"),
    (lambda: us_chain_wll.grade_80_lb("3/8", 2, 29.0), "angle from the horizontal is 29"),
    (lambda: us_chain_wll.grade_80_lb("3/8", 5, 60.0), "number of legs is 5"),
    (lambda: choke.choke_angle_factor(SlingKind.WIRE_ROPE, NAN), "angle of choke is nan"),
    (lambda: choke.choke_angle_factor(SlingKind.CHAIN, 181.0), "angle of choke is 181; allowed: 0 to 180°"),
    (lambda: bends.bend_efficiency(15.9, 16.0), "bends over is 15.9; allowed: 16 mm or more, the rope's own"),
    (lambda: bends.bend_efficiency(NAN, 16.0), "diameter it bends over is nan"),
    (lambda: bends.worse_efficiency(FERRULE, 100.0, 0.0), "diameter of the rope is 0"),
    (lambda: bends.labelled_bend_factor(FERRULE, 10.0, 16.0), "diameter it bends over is 10"),
    (lambda: bends.us_basket_bend_factor(Termination.SWAGED, 100.0, 16.0), "termination is swaged end"),
    (lambda: bends.us_basket_bend_factor(FERRULE, 15.0, 16.0), "diameter it bends over is 15"),
    (lambda: edges.soft_eye_factor(31.0, 16.0), "under the soft eye is 31; allowed: 32 mm or more, or a thimble"),
    (lambda: edges.chain_edge_factor(9.9, 10.0), "under the chain is 9.9; allowed: 10 mm or more; pad a sharper one"),
    (lambda: edges.chain_edge_factor(NAN, 10.0), "radius of the edge is nan"),
    (lambda: edges.chain_on_lug_factor(0.0, 30.0), "diameter of the lug is 0"),
    (lambda: edges.textile_edge_factor(5.9, 6.0, False, False), "5.9; allowed: 6 mm or more, or protection"),
    (lambda: edges.textile_edge_factor(50.0, 6.0, True, False), "face under the sling is rough"),
    (lambda: edges.textile_edge_factor(NAN, 6.0, False, True), "radius of the edge is nan"),
    (lambda: edges.webbing_eye_bears(0.0, None), "width of the webbing where it bears is 0"),
    (lambda: edges.webbing_eye_bears(60.0, NAN), "radius under the eye is nan"),
    (lambda: temperature.fibre_temperature_factor(Fibre.ARAMID, 20.0, RuleSet.EN), "fibre is aramid"),
    (lambda: temperature.fibre_temperature_factor(Fibre.POLYESTER, 90.0, RuleSet.US), "90; allowed: -40 to 82 °C"),
    (lambda: temperature.fibre_temperature_factor(Fibre.POLYESTER, NAN, RuleSet.EN), "polyester sling is nan"),
    (lambda: temperature.chain_temperature_factor(ChainGrade.GRADE_8, 401.0), "401; allowed: -40 to 400 °C"),
    (lambda: temperature.chain_temperature_factor(ChainGrade.GRADE_4, -1.0), "-1; allowed: 0 to 475 °C"),
    (lambda: temperature.rope_temperature_factor(RopeMake.FIBRE_CORE, 94.0), "94; allowed: -40 to 93 °C"),
    (lambda: temperature.rope_temperature_factor(RopeMake.STEEL_CORE_STEEL_FERRULE, -41.0), "-41"),
    (lambda: chemicals.fibre_is_attacked(Fibre.POLYESTER, Chemical.SOLVENT), "solvent on a sling of polyester"),
    (lambda: chemicals.steel_is_attacked(Chemical.ALKALI), "alkali on lifting steel"),
    (lambda: label.labelled_wll_t(None, readable=True), "label or tag of the sling is missing"),
    (lambda: label.labelled_wll_t(2.0, readable=False), "label or tag of the sling is unreadable"),
    (lambda: label.labelled_wll_t(NAN, readable=True), "WLL on the label is nan"),
    (lambda: label.labelled_fibre(SlingKind.ROUNDSLING, None), "fibre on the label is missing"),
    (lambda: label.labelled_fibre(SlingKind.CHAIN, None), "fibre is chain sling; allowed: webbing and roundslings"),
    (lambda: slip.measured_friction(0.0), "measured friction is 0; allowed: above 0, 1 at most"),
    (lambda: slip.measured_friction(NAN), "measured friction is nan"),
    (lambda: slip.friction_needed(80.0, 10.0), "lean of the leg plus slope of the load is 90"),
    (lambda: slip.friction_needed(-1.0, 10.0), "lean of the leg plus slope of the load is 9"),
    (lambda: slip.friction_needed(10.0, NAN), "slope of the load is nan"),
    (lambda: slip.slides_from_deg(-0.1), "friction is -0.1"),
    (lambda: wrap.capstan_ratio(NAN, 90.0), "friction is nan"),
    (lambda: wrap.capstan_ratio(0.2, -1.0), "angle of the wrap is -1"),
    (lambda: wrap.capstan_ratio(100.0, 3600.0), "friction times angle of the wrap"),
    (lambda: wrap.basket_roll_couple_knm(0.0, 1.0, 0.1), "weight in the basket is 0"),
    (lambda: wrap.basket_roll_couple_knm(1.0, NAN, 0.1), "distance between the parts of the basket is nan"),
    (lambda: wrap.noose_hold_even_kn(-1.0, 0.1, 270.0), "pull in the leg is -1"),
    (lambda: wrap.noose_hold_kn(math.inf, 0.1, 270.0), "pull in the leg is inf"),
])
def test_it_refuses_in_words(call: Callable[[], object], words: str) -> None:
    with pytest.raises(OutOfRangeError, match=words):
        call()


def test_a_label_that_can_be_read_passes_what_it_says() -> None:
    assert label.labelled_wll_t(2.0, readable=True) == 2.0
    assert label.labelled_fibre(SlingKind.FLAT_WEBBING, Fibre.POLYAMIDE) is Fibre.POLYAMIDE
