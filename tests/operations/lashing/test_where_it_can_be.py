"""A slip of the pen makes a lashing longer and steeper than any: what cannot be where it is said to be is refused."""

from typing import Any

import pytest

from checklist_app.mechanics.lashing.crossing import Body
from checklist_app.mechanics.lashing.css_forces import Level
from checklist_app.mechanics.lashing.direct import Kind
from checklist_app.mechanics.lashing.lashed_body import Stands
from checklist_app.mechanics.lashing.rule_sets import RuleSet
from checklist_app.operations.check import Strength, Verdict
from checklist_app.operations.evaluate import Evaluation, assess
from checklist_app.operations.graph import CannotAssess
from checklist_app.operations.lashing.choices import Blocks, FarEnd, Lies, OnDeck, Passes, Route, Tensioned
from tests.operations.lashing.lashed_tasks import (
    PALLET,
    VEHICLE,
    Row,
    at,
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

PASSED = (Verdict.WITHIN, Verdict.CLOSE)
ON_DECK = four(Body.DECK)


def nominal(task: Any, table: Any = VEHICLE) -> Evaluation:
    return assess(table, task, with_spread=False)


def scaled(by: float, *names: str, rows: tuple[Row, ...] = ON_DECK) -> tuple[Row, ...]:
    return tuple({**row, **{name: row[name] * by for name in names}} for row in rows)


def test_the_base_of_these_cases_passes() -> None:
    assert nominal(on_vehicle()).verdict in PASSED
    assert nominal(on_pallet(), PALLET).verdict in PASSED


@pytest.mark.parametrize("lashings, said", [
    pytest.param(four(Body.DECK, at_z_m=3.0), "it leaves the load 3.00 m up", id="above the load"),
    pytest.param(scaled(4.0, "at_x_m"), "it leaves the load 2.00 m forwards", id="ahead of the load"),
    pytest.param(scaled(3.2, "anchor_y_m"), "its anchor lies 3.04 m to the left", id="an anchor beside the deck"),
    pytest.param(scaled(6.0, "anchor_x_m"), "its anchor lies 6.60 m forwards", id="an anchor ahead of the headboard"),
    pytest.param(four(Body.DECK, anchor_z_m=-1.0), "its anchor lies -1.00 m up", id="an anchor far below the deck"),
    pytest.param(four(Body.DECK, passes=Passes.UNDER_WHOLE_PALLET), "one of the two", id="under it, to the deck"),
])
def test_an_end_where_nothing_is_to_hook_it_to_is_refused(lashings: tuple[Row, ...], said: str) -> None:
    found = nominal(on_vehicle(lashings))
    assert found.verdict not in PASSED
    assert said in str(found["legs[1]"])


def test_an_anchor_far_beside_the_pallet_is_refused() -> None:
    wide = scaled(3.0, "anchor_x_m", "anchor_y_m", rows=four())
    assert "the pallet or skid is between" in str(nominal(on_pallet(wide), PALLET)["legs[1]"])


def test_the_other_end_is_looked_at_too() -> None:
    far = {"far_end": FarEnd.GIVEN, **at("far_at", 0.0, -0.35, 1.2), **at("far_anchor", 0.0, -3.0, -0.15)}
    found = nominal(on_vehicle((tie_down(to=Body.DECK, **far),)))["legs[1]"]
    assert isinstance(found, CannotAssess) and "its anchor lies -3.00 m to the left" in str(found)


@pytest.mark.parametrize("changes, said", [
    pytest.param({"block_z_m": 4.0}, "it touches 3.85 m up", id="above the load"),
    pytest.param({"block_x_m": 2.0}, "it touches 2.00 m forwards", id="away from the load"),
])
def test_a_block_that_touches_nothing_is_refused(changes: Row, said: str) -> None:
    ev = nominal(on_vehicle(blocks=(block(Blocks.FORWARD, on=Body.DECK, **changes),)))
    assert said in str(ev["blocked[1]"])
    assert ev.verdict not in PASSED


@pytest.mark.parametrize("changes, said", [
    pytest.param({"cg_z_m": 1.3}, "its centre of gravity is 1.30 m up", id="above its top"),
    pytest.param({"base_width_m": 0.9, "width_m": 0.5}, "is 0.90 m wide and the load 0.50 m", id="a base too wide"),
    pytest.param({"base_length_m": 1.3}, "is 1.30 m long and the load 1.20 m", id="a base longer than it is over all"),
])
def test_measures_that_contradict_each_other_are_refused(changes: Row, said: str) -> None:
    ev = nominal(on_vehicle(**changes))
    assert said in str(ev["load_room"])
    assert ev.check("tipping[forwards]").verdict is Verdict.CANNOT


@pytest.mark.parametrize("changes", [{"cg_x_m": 0.51}, {"cg_x_m": -0.51}, {"cg_y_m": 0.36}, {"cg_y_m": -0.36}])
def test_what_goes_over_before_it_is_lashed_is_not_held_by_its_lashings(changes: Row) -> None:
    """Four diagonals of 2000 daN would hold it upright on paper."""
    for table, task in ((VEHICLE, on_vehicle(**changes)), (PALLET, on_pallet(**changes))):
        ev = nominal(task, table)
        assert ev.check("tipping[forwards]").verdict is Verdict.CANNOT
        assert "before it is lashed" in str(ev["load_lashed"])


def test_an_anchor_takes_all_that_was_read_however_little_of_it_counts() -> None:
    """LC 2500 daN, drawn to 2000: 1250 count as holding, and a ring for 1500 gets 2000."""
    drawn = tie_down(tensioned=Tensioned.MEASURED, tension_dan=2000.0, anchor_dan=1500.0)
    ev = nominal(on_pallet((drawn,)), PALLET)
    assert ev["pull_tension_dan[1]"] == 1250.0
    assert ev.check("lashing_strength[1]").outcome == Strength(2000.0, 1500.0)
    assert ev.check("lashing_strength[1]").verdict is Verdict.OVER


def test_a_load_that_its_tie_downs_pull_over_is_refused_in_words() -> None:
    """At half of LC, 2500 daN a strand aslant forwards, it does not stand; a diagonal beside them takes nothing."""
    aslant = {**at("at", 0.3, 0.3, 1.2), **at("anchor", 2.5, 0.3, 0.0), "anchor_dan": 5000.0}
    item = strap(lc_dan=5000.0, stf_dan=600.0)
    rows = (tie_down(to=Body.DECK, lashing_item=item, **aslant), ON_DECK[0])
    ev = nominal(on_vehicle(rows, cg_x_m=0.45, vehicle=lorry(anchor_dan=5000.0)))
    (run,) = (each for each in ev["held_load[to the left]"].runs if "half of LC" in each.held.title)
    assert run.held.have == 0.0 and run.held.pulls_dan == ()
    assert "nothing withstands any push that way" in str(ev.check("tipping[to the left]").outcome)
    assert ev.verdict not in PASSED


def test_no_label_rates_a_lashing_above_its_lc() -> None:
    """The webbing alone breaks at three times LC; MSL of half of that would be 3750 daN, a WLL of 40 t is a slip."""
    ship = {
        "route": Route.SEA, "rule_set": RuleSet.CSS, "ship_level": Level.DECK_LOW, "ship_place": 0.5,
        "ship_length_m": 120.0, "ship_speed_kn": 15.0, "ship_b_over_gm": 14.0, "ship_open": OnDeck.CLOSED,
    }
    webbing = nominal(on_vehicle(four(Body.DECK, lashing_item=strap(breaking_kn=75.0)), **ship))
    assert webbing["label_dan[1]"] == 2500.0
    slip = nominal(on_vehicle(four(Body.DECK, lashing_item=strap(wll_kg=40000.0)), rule_set=RuleSet.US))
    assert slip["label_dan[1]"] == 2500.0


SMALL = {
    "base_length_m": 0.7, "base_width_m": 0.6, "length_m": 0.8, "width_m": 0.7, "cg_z_m": 0.5, "height_m": 1.0,
    "pallet": european(),
}


@pytest.mark.parametrize("lies, along_m, across_m", [
    pytest.param(Lies.LENGTHWAYS, 0.6, 0.4, id="by hand, 1.2 m forwards"),
    pytest.param(Lies.CROSSWISE, 0.4, 0.6, id="by hand, 0.8 m forwards"),
    pytest.param(Lies.EITHER, 0.4, 0.4, id="by hand, nobody said: 0.8 m both ways"),
])
def test_a_pallet_that_may_lie_either_way_tips_over_its_nearer_edge(
    lies: Lies, along_m: float, across_m: float
) -> None:
    """Feet of 0.7 × 0.6 m stand on a European pallet both ways; unlashed the deck's edge is what counts."""
    ev = nominal(on_vehicle((), pallet_lies=lies, **SMALL))
    high_m = ev["deck_cg_z_m"]
    for way, half_m in (("forwards", along_m), ("to the left", across_m)):
        (_, capacity) = ev.check(f"deck_tipping[{way}]").outcome
        assert capacity == pytest.approx(ev["deck_weight_dan"] * half_m / high_m, rel=1e-9)


def test_a_pallet_on_which_the_feet_stand_one_way_lies_that_way() -> None:
    ev = nominal(on_vehicle(pallet_lies=Lies.EITHER, base_length_m=1.1, length_m=1.2))
    assert (ev["deck_half_length_m"], ev["deck_half_width_m"]) == (0.7, 0.5)


def test_a_pallet_that_may_lie_either_way_needs_room_for_both() -> None:
    sides = [
        nominal(on_vehicle(pallet_lies=lies, **SMALL))["outline_across_m"]
        for lies in (Lies.LENGTHWAYS, Lies.EITHER)
    ]
    assert sides == [0.8, 1.2]


CHAIN = {"put_on": Kind.SLOPE, **at("at", 0.0, 0.35, 0.3), **at("anchor", 0.0, -0.15, 0.0)}


def test_nobody_hooks_a_lashing_to_the_deck_under_a_pallet() -> None:
    under = four(Body.DECK, **at("anchor", 0.3, 0.3, -0.15))
    assert "under a pallet" in str(nominal(on_vehicle(under))["legs[1]"])
    at_its_edge = tie_down(to=Body.DECK)
    assert not isinstance(nominal(on_vehicle((*ON_DECK, at_its_edge)))["legs[5]"], CannotAssess)


def test_no_anchor_is_under_a_load_that_stands_on_all_of_its_face() -> None:
    inside = four(**at("anchor", 0.3, 0.2, 0.0))
    assert "no anchor is under it" in str(nominal(on_pallet(inside, stands=Stands.AREA), PALLET)["legs[1]"])


@pytest.mark.parametrize("row", [
    tie_down(**at("anchor", 0.0, 0.2, 0.0)),
    {**diagonal(**at("anchor", 0.3, 0.1, 0.0)), "put_on": Kind.LOOP, "far_end": FarEnd.MIRRORED},
])
def test_what_goes_over_or_round_the_load_bends_again_before_it_is_inside_the_feet(row: Row) -> None:
    """Derived: from the edge above at 78° nearly all of it presses down, round the lower edge at 45° only 0.71."""
    assert "bends again" in str(nominal(on_pallet((row,)), PALLET)["legs[1]"])


def test_between_the_feet_a_chain_from_an_eye_holds_one_way_as_a_pencil_says_and_the_other_way_not_at_all() -> None:
    """By hand: from 0.35 m left and 0.3 m up to a ring 0.15 m right of the middle, Y/L 0.857, Z/L 0.514.

    To the left it holds: 0.75 μ G + F (Y/L + 0.75 μ Z/L); to the right it goes slack, and friction is all there is.
    """
    chain = {**diagonal(), **CHAIN, "lashing_item": strap(lc_dan=100.0, stf_dan=None), "held_dan": 4000.0}
    held = nominal(on_pallet((chain,), load_friction=0.3, cg_z_m=0.1), PALLET)
    left, right = (next(each for each in held[f"held_load[{way}]"].runs if each.asked.slides)
                   for way in ("to the left", "to the right"))
    assert not isinstance(held["legs[1]"], CannotAssess)
    by_hand = (0.225 * 981.0 + 100.0 * (0.857493 + 0.225 * 0.514496)) / 981.0
    assert left.held.formula == pytest.approx(by_hand, abs=1e-4)
    assert left.held.have <= by_hand + 1e-9
    assert right.held.have == pytest.approx(0.3)
