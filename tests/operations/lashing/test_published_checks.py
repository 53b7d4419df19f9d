"""What rules print of numbers, ratings and states of lashings, held through the whole operation."""

from typing import Any

import pytest

from checklist_app.mechanics.gravity import STANDARD_GRAVITY_M_S2
from checklist_app.mechanics.lashing.crossing import Body
from checklist_app.mechanics.lashing.direct import Kind
from checklist_app.mechanics.lashing.pallet import Bearing
from checklist_app.mechanics.lashing.rule_sets import RuleSet
from checklist_app.operations.check import Limit, State, Strength, Verdict, utilisation
from checklist_app.operations.evaluate import assess
from checklist_app.operations.gear import Gear
from checklist_app.operations.graph import NotApplicable
from checklist_app.operations.lashing.choices import Blocks
from checklist_app.operations.task import Task
from tests.operations.lashing.lashed_tasks import (
    NONE,
    PALLET,
    VEHICLE,
    block,
    diagonal,
    european,
    four,
    lorry,
    on_pallet,
    on_vehicle,
    strap,
    tie_down,
)

FT, LB = 0.3048, 0.45359237
US = {"rule_set": RuleSet.US}
BARE = {"pallet": NONE, "lashings": four(Body.DECK, anchor_z_m=0.0)}
DAN_IN_LB = LB * STANDARD_GRAVITY_M_S2 / 10.0


def outcome(task: Task, name: str) -> Any:
    table = VEHICLE if "vehicle" in {key.name for key in task.answers} else PALLET
    return assess(table, task, with_spread=False).check(name).outcome


def verdict(task: Task, name: str) -> Verdict:
    table = VEHICLE if "vehicle" in {key.name for key in task.answers} else PALLET
    return assess(table, task, with_spread=False).check(name).verdict


@pytest.mark.parametrize("long_ft, weighs_lb, blocked, fewest", [
    pytest.param(5.0, 1100.0, False, 1, id="derived, 49 CFR 393.110: 5 ft, 1100 lb"),
    pytest.param(5.0, 1101.0, False, 2, id="derived, 49 CFR 393.110: 5 ft, 1101 lb"),
    pytest.param(7.0, 500.0, False, 2, id="derived, 49 CFR 393.110: 7 ft, 500 lb"),
    pytest.param(10.0, 3000.0, False, 2, id="from memory, 49 CFR 393.110: exactly 10 ft"),
    pytest.param(12.0, 3000.0, False, 3, id="derived, 49 CFR 393.110: 12 ft"),
    pytest.param(20.0, 3000.0, False, 3, id="derived, 49 CFR 393.110: 20 ft"),
    pytest.param(20.5, 3000.0, False, 4, id="derived, 49 CFR 393.110: 20.5 ft"),
    pytest.param(32.0, 3000.0, False, 5, id="derived, 49 CFR 393.110: 32 ft"),
    pytest.param(5.0, 3000.0, True, 1, id="derived, 49 CFR 393.110: 5 ft, blocked forwards"),
    pytest.param(12.0, 3000.0, True, 2, id="derived, 49 CFR 393.110: 12 ft, blocked forwards"),
    pytest.param(20.0, 3000.0, True, 2, id="derived, 49 CFR 393.110: 20 ft, blocked forwards"),
    pytest.param(20.5, 3000.0, True, 3, id="derived, 49 CFR 393.110: 20.5 ft, blocked forwards"),
    pytest.param(32.0, 3000.0, True, 4, id="derived, 49 CFR 393.110: 32 ft, blocked forwards"),
])
def test_fewest_lashings(long_ft: float, weighs_lb: float, blocked: bool, fewest: int) -> None:
    stops = (block(Blocks.FORWARD),) if blocked else ()
    task = on_pallet(blocks=stops, length_m=long_ft * FT, mass_kg=weighs_lb * LB, **US)
    assert outcome(task, "lashing_number") == Limit(float(fewest), 4.0)


def test_derived_a_short_crate_over_1100_lb_wants_two_whatever_one_carries() -> None:
    """49 CFR 393.106, 108, 110: 4 ft, 1500 lb, webbing of 2 in without a mark (2000 lb), over the top: 750 lb are asked
    of all WLLs together, which one strap has; the number asks for two, and decides."""
    straps = {"lashing_item": strap(wll_kg=2000.0 * LB)}
    one = on_pallet((tie_down(**straps),), length_m=4.0 * FT, mass_kg=1500.0 * LB, **US)
    found = outcome(one, "aggregate_wll")
    assert (found.demand / DAN_IN_LB, found.capacity / DAN_IN_LB) == pytest.approx((750.0, 2000.0), rel=1e-9)
    assert outcome(one, "lashing_number") == Limit(2.0, 1.0)
    assert verdict(one, "lashing_number") is Verdict.OVER
    two = on_pallet((tie_down(-0.3, **straps), tie_down(0.3, **straps)), length_m=4.0 * FT, mass_kg=1500.0 * LB, **US)
    assert verdict(two, "lashing_number") is Verdict.WITHIN


@pytest.mark.parametrize("rows, share", [
    pytest.param([diagonal()], 5000.0 / 3300.0, id="derived, 49 CFR 393.106(d): one direct, half of 6600 lb counts"),
    pytest.param([diagonal(), diagonal(-1.0)], 5000.0 / 6600.0, id="derived, 49 CFR 393.106(d): two direct hold it"),
    pytest.param([tie_down()], 5000.0 / 6600.0, id="derived, 49 CFR 393.106(d): one over the top, all of it counts"),
    pytest.param([tie_down(put_on=Kind.LOOP)], 5000.0 / 3300.0, id="derived, 49 CFR 393.106(d): back to the same side"),
])
def test_aggregate_of_chains_of_grade_70(rows: list[dict[str, Any]], share: float) -> None:
    """10 000 lb, chain of 3/8 in and grade 70: 6600 lb each."""
    chain = strap(lc_dan=None, wll_kg=6600.0 * LB)
    chained = tuple({**row, "lashing_item": chain, "anchor_dan": 20000.0} for row in rows)
    task = on_pallet(chained, mass_kg=10000.0 * LB, **US)
    assert utilisation(outcome(task, "aggregate_wll")) == pytest.approx(share, rel=1e-9)


def test_the_number_says_nothing_of_tipping() -> None:
    """49 CFR 393.106 and 110: straps enough by both, and a top-heavy load goes over sideways all the same."""
    task = on_pallet((tie_down(-0.3), tie_down(0.3)), mass_kg=3000.0, cg_z_m=1.1, **US)
    assert verdict(task, "lashing_number") is Verdict.WITHIN
    assert verdict(task, "aggregate_wll") is Verdict.WITHIN
    assert verdict(task, "tipping[to the left]") is Verdict.OVER


@pytest.mark.parametrize("mass_kg, told", [
    pytest.param(2999.0, Verdict.CLOSE, id="derived, NTC 2018: one strap of 300 kg over the top holds down 3000 kg"),
    pytest.param(3001.0, Verdict.OVER, id="derived, NTC 2018: and no more"),
])
def test_held_down(mass_kg: float, told: Verdict) -> None:
    """0.2 W upwards against both ends of a strap drawn with 300 kg: 2 × 300 / 0.2 = 3000 kg."""
    drawn = strap(stf_dan=300.0 * 0.981)
    task = on_pallet((tie_down(lashing_item=drawn),), mass_kg=mass_kg, rule_set=RuleSet.NTC)
    assert verdict(task, "held_down") is told
    found = outcome(task, "held_down")
    assert found == pytest.approx(Strength(0.2 * mass_kg * 0.981, 2.0 * 300.0 * 0.981), rel=1e-12)


@pytest.mark.parametrize("rule_set", [RuleSet.EN, RuleSet.CTU, RuleSet.UK])
@pytest.mark.parametrize("name", ["lashing_number", "aggregate_wll", "held_down"])
def test_what_a_rule_set_does_not_ask_nobody_waits_for(rule_set: RuleSet, name: str) -> None:
    task = on_pallet((), rule_set=rule_set, length_m=None)
    assert isinstance(outcome(task, name), NotApplicable)


@pytest.mark.parametrize("pallet, bearing, carries_kg", [
    pytest.param(european(), Bearing.FEET, 1000.0, id="published, UIC 435-2: any position on the deck, 1000 kg"),
    pytest.param(european(), Bearing.EVEN, 1500.0, id="published, UIC 435-2: evenly distributed, 1500 kg"),
    pytest.param(european(), Bearing.COMPACT, 2000.0, id="published, UIC 435-2: compact over the surface, 2000 kg"),
    pytest.param(european(rated_kg=1500.0, rated_for="spread evenly"), Bearing.FEET, 1000.0, id="by hand, mark above"),
    pytest.param(european(rated_kg=800.0, rated_for="spread evenly"), Bearing.EVEN, 800.0, id="by hand, mark below"),
])
def test_european_pallet(pallet: Gear, bearing: Bearing, carries_kg: float) -> None:
    """An engine of 1200 kg: on its feet over, on a spreader within."""
    task = on_pallet(pallet=pallet, bearing=bearing, mass_kg=1200.0)
    assert outcome(task, "pallet_strength") == Strength(1200.0, carries_kg)
    assert (verdict(task, "pallet_strength") is Verdict.OVER) == (carries_kg < 1200.0)


@pytest.mark.parametrize("stf_dan, holds", [
    pytest.param(249.0, False, id="published, EN 12195-2: LC 2500, below 250"),
    pytest.param(250.0, True, id="published, EN 12195-2: LC 2500, from 250"),
    pytest.param(1250.0, True, id="published, EN 12195-2: LC 2500, up to 1250"),
    pytest.param(200.0, False, id="published, EN 12195-2: LC 2500, STF 200"),
])
def test_stf_goes_with_lc(stf_dan: float, holds: bool) -> None:
    found = outcome(on_pallet((tie_down(lashing_item=strap(stf_dan=stf_dan)),)), "tie_down_label[1]")
    assert isinstance(found, State) and found.holds is holds


def test_an_stf_over_half_of_lc_was_misread_and_is_waited_for() -> None:
    """EN 12195-2: LC 2500 and STF 1300 do not go together; such a label is read again."""
    ev = assess(PALLET, on_pallet((tie_down(lashing_item=strap(stf_dan=1300.0)),)), with_spread=False)
    assert str(ev.check("tie_down_label[1]").stopped) == "STF on the label of L-1"


def test_published_load_plan_between_its_points() -> None:
    """Half way between 4000 kg at 1 m and 6000 kg at 3 m a load plan allows 5000 kg; beyond its ends nothing."""
    task = on_vehicle(behind_headboard_m=2.0)
    assert outcome(task, "load_plan") == Strength(1050.0, 5000.0)
    assert verdict(on_vehicle(behind_headboard_m=5.2), "load_plan") is Verdict.CANNOT


def test_derived_levers_between_the_axles() -> None:
    """1200 kg 1 m behind the front of a wheelbase of 4 m: a fourth of it on the rear axles; with 800 kg more at 5 m,
    which take a fourth of theirs off the front."""
    alone = on_vehicle(**BARE, mass_kg=1200.0, behind_headboard_m=1.0)
    assert outcome(alone, "front_axle") == Strength(900.0, 3000.0)
    assert outcome(alone, "rear_axle") == Strength(300.0, 6000.0)
    more = on_vehicle(
        **BARE, mass_kg=1200.0, behind_headboard_m=1.0, other_kg=800.0, other_behind_headboard_m=5.0
    )
    assert outcome(more, "front_axle") == pytest.approx(Strength(700.0, 3000.0), rel=1e-12)
    assert outcome(more, "rear_axle") == pytest.approx(Strength(1300.0, 6000.0), rel=1e-12)
    assert outcome(more, "payload") == Strength(2000.0, 6000.0)


def test_by_hand_an_axle_that_gets_lighter_is_for_the_load_plan() -> None:
    """1200 kg 1 m behind the rear axle: − 300 kg in front, 1500 kg behind."""
    far = BARE | {"mass_kg": 1200.0, "behind_headboard_m": 5.0}
    assert isinstance(outcome(on_vehicle(**far), "front_axle"), NotApplicable)
    assert outcome(on_vehicle(**far), "rear_axle") == Strength(1500.0, 6000.0)
    told = assess(VEHICLE, on_vehicle(**far, vehicle=lorry(load_plan=None)), with_spread=False).check("front_axle")
    assert told.verdict is Verdict.CANNOT
    assert str(told.stopped) == "it takes 300 kg off the front axle: only a load plan says how much it may"


@pytest.mark.parametrize("name, key", [
    ("lashing_number", "CFR_393"), ("aggregate_wll", "CFR_393"), ("held_down", "NTC_2018"), ("wandering", "EN_12195_1"),
    ("pallet_strength", "UIC_435_2"), ("tie_down_label", "EN_12195_2"), ("lashing_usable", "EN_12195_2"),
    ("load_plan", "VEHICLE_LOAD_PLAN"), ("front_axle", "STATICS_AXLES"), ("rear_axle", "STATICS_AXLES"),
    ("payload", "PLATE"), ("anchor_rating", "PLATE"), ("headboard_rating", "PLATE"), ("deck_floor", "STATICS_LASHING"),
    ("steel_on_steel", "FRICTION_RANGES"), ("edge_guarded", "HOUSE_SETTING"), ("slope_agrees", "HOUSE_SETTING"),
])
def test_the_source_beside_each_verdict_is_the_one_its_cases_are_from(name: str, key: str) -> None:
    (way,) = VEHICLE.ways[name]
    assert way.run.__dict__["clause"].source == key
