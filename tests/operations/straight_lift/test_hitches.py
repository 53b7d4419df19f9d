"""What a sling carries in its hitch, over an edge, round a bend, in heat; eyes across their ring."""

from typing import Any

import pytest

from checklist_app.mechanics.fittings.eye_marking import PullPlane
from checklist_app.mechanics.slings.chemicals import Chemical
from checklist_app.mechanics.slings.kinds import Hitch, RuleSet
from checklist_app.mechanics.slings.wrap import Stop
from checklist_app.operations.assumed import assumptions
from checklist_app.operations.check import Verdict
from checklist_app.operations.evaluate import Evaluation, assess
from checklist_app.operations.gear import make
from checklist_app.operations.graph import DontKnow
from checklist_app.operations.inline import from_json
from checklist_app.operations.straight_lift.choices import Protected
from checklist_app.operations.task import Measured, Task
from tests.operations.more_examples import MORE
from tests.operations.straight_lift.lifts import TABLE, lift, sling
from tests.operations.straight_lift.rigged import four, link

HELD = {"stop": Stop.COLLAR}
CHAIN = {"wll_t": 2.0, "length_m": 1.0, "mass_kg": 3.0, "grade": "grade 8", "size_mm": 8.0}
ROPE = {
    "wll_t": 2.0, "length_m": 1.0, "mass_kg": 3.0, "diameter_mm": 10.0, "core": "steel", "termination": "steel ferrule",
}


def nominal(task: Task) -> Evaluation:
    return assess(TABLE, task, with_spread=False)


def carries_t(**changes: Any) -> float:
    rules = {name: changes.pop(name) for name in ("rule_set", "sling_temperature_c") if name in changes}
    return float(nominal(lift(both=HELD | changes, **rules))["sling_carries_t[left]"])


@pytest.mark.parametrize("changes, share", [
    pytest.param({}, 1.0, id="EN 1492: straight 1.0"),
    pytest.param({"hitch": Hitch.CHOKED, "choke_angle_deg": 135.0}, 0.8, id="EN 1492: choked 0.8"),
    pytest.param({"hitch": Hitch.CHOKED, "choke_angle_deg": 80.0}, 0.8 * 0.58, id="maker: roundsling to 90°, 58 %"),
    pytest.param({"hitch": Hitch.CHOKED, "choke_angle_deg": DontKnow()}, 0.8 * 0.49, id="lowest step, US table 49 %"),
    pytest.param({"hitch": Hitch.BASKET, "part_angle_deg": 0.0}, 2.0, id="EN 1492: basket parallel 2.0"),
    pytest.param({"hitch": Hitch.BASKET, "part_angle_deg": 20.0}, 1.4, id="EN 1492: basket to 45° 1.4"),
    pytest.param({"hitch": Hitch.BASKET, "part_angle_deg": 50.0}, 1.0, id="EN 1492: basket over 45° 1.0"),
    pytest.param({"hitch": Hitch.BASKET, "part_angle_deg": 45.0, "rule_set": RuleSet.US}, 2.0 * 0.5 ** 0.5,
                 id="US: basket at 45° 141 %"),
    pytest.param({"hitch": Hitch.CHOKED, "choke_angle_deg": 135.0, "rule_set": RuleSet.US}, 0.75, id="US: choked 0.75"),
])
def test_a_hitch_takes_its_share(changes: dict[str, Any], share: float) -> None:
    assert carries_t(**changes) == pytest.approx(2.0 * share, rel=1e-9)


@pytest.mark.parametrize("temperature_c, share", [
    pytest.param(200.0, 1.0, id="EN 818-4: to 200 °C"), pytest.param(250.0, 0.9, id="EN 818-4: to 300 °C 90 %"),
    pytest.param(350.0, 0.75, id="EN 818-4: to 400 °C 75 %"),
])
def test_heat_takes_from_a_chain(temperature_c: float, share: float) -> None:
    hot = carries_t(sling=make("chain_sling", "C", CHAIN), sling_temperature_c=temperature_c)
    assert hot == pytest.approx(2.0 * share)


@pytest.mark.parametrize("edge_mm, protected, share", [
    pytest.param(17.0, Protected.SMOOTH, 1.0, id="maker: R > 2d"),
    pytest.param(12.0, Protected.SMOOTH, 0.7, id="maker: R > d"),
    pytest.param(8.0, Protected.SMOOTH, 0.5, id="R = d"), pytest.param(1.0, Protected.YES, 1.0, id="padded"),
])
def test_an_edge_takes_from_a_chain(edge_mm: float, protected: Protected, share: float) -> None:
    chain = make("chain_sling", "C", CHAIN)
    assert carries_t(sling=chain, edge_mm=edge_mm, edge_protected=protected) == pytest.approx(2.0 * share)


def test_webbing_over_a_sharp_edge_is_refused_without_protection() -> None:
    webbing = make("flat_sling", "F", {"wll_t": 2.0, "length_m": 1.0, "mass_kg": 1.0, "thickness_mm": 7.0})
    bare = {"sling": webbing, "edge_mm": 3.0}
    refused = nominal(lift(both=bare | {"edge_protected": Protected.SMOOTH}))
    assert refused.check("sling_strength[left]").verdict is Verdict.CANNOT
    assert nominal(lift(both=bare | {"edge_protected": Protected.YES})).verdict is Verdict.WITHIN
    assert nominal(lift(both=bare)).check("edge[left]").verdict is Verdict.NOT_APPLICABLE


def test_a_rope_that_bends_must_say_round_what_and_the_worse_of_bend_and_edge_counts() -> None:
    rope = {"sling": make("wire_rope_sling", "W", ROPE), "hitch": Hitch.BASKET, "part_angle_deg": 0.0, **HELD}
    assert nominal(lift(both=rope)).check("sling_strength[left]").verdict is Verdict.CANNOT
    bent = nominal(lift(both=rope | {"bend_mm": 40.0}))
    both = nominal(lift(both=rope | {"bend_mm": 40.0, "edge_mm": 20.0, "edge_protected": Protected.SMOOTH}))
    assert bent["sling_carries_t[left]"] == both["sling_carries_t[left]"] < 4.0


@pytest.mark.parametrize("kind, facts, chemical, verdict", [
    ("flat_sling", {"fibre": "polyester"}, Chemical.ALKALI, Verdict.OVER),
    ("flat_sling", {"fibre": "polyester"}, Chemical.ACID, Verdict.WITHIN),
    ("flat_sling", {"fibre": "polyamide"}, Chemical.ACID, Verdict.OVER),
    ("flat_sling", {}, Chemical.ACID, Verdict.WAITING),
    ("chain_sling", {"grade": "grade 8", "size_mm": 8.0}, Chemical.ACID, Verdict.OVER),
    ("chain_sling", {"grade": "grade 8", "size_mm": 8.0}, Chemical.NONE, Verdict.WITHIN),
])
def test_no_sling_works_where_something_attacks_it(
    kind: str, facts: dict[str, Any], chemical: Chemical, verdict: Verdict
) -> None:
    made = make(kind, "S", {"wll_t": 2.0, "length_m": 1.0, "mass_kg": 1.0, **facts})
    assert nominal(lift(both={"sling": made}, chemicals=chemical)).check("chemicals_resisted[left]").verdict is verdict


def test_what_the_first_procedure_did_not_ask_is_said_in_the_record() -> None:
    lines = assumptions(assess(TABLE, lift()))
    assert "how the load is slung: two legs on one hook (house value)" in lines
    assert "temperature of the slings: not asked" in lines


def test_an_eye_across_its_ring_carries_what_its_sheet_says_for_that() -> None:
    eye = make("eye", "E", {
        "ratings": [{"up_to_deg": 60.0, "wll_t": 2.0}], "ratings_across": [{"up_to_deg": 60.0, "wll_t": 0.5}],
        "reach_m": 0.05, "mass_kg": 0.5,
    })
    for turned, wll_t in ((PullPlane.IN_PLANE, 2.0), (PullPlane.ACROSS, 0.5), (DontKnow(), 0.5), (None, 0.5)):
        ev = nominal(lift(both={"eye": eye, "eye_turned": turned}))
        assert ev.check("eye_strength[left]").outcome.capacity == wll_t


def test_one_sling_of_four_legs_is_weighed_once_and_its_tag_counts_where_it_says_less() -> None:
    four_leg = make("chain_sling", "C-4", {
        **CHAIN, "length_m": 1.5, "legs": 4, "mass_kg": 20.0, "wll_to_45_t": 2.5, "wll_to_60_t": 2.0,
    })
    ev = nominal(four(every={"sling": four_leg}, rigging_kg=None))
    assert ev["rigging_mass_kg"] == pytest.approx(link().mass_kg + 20.0 + 4 * 0.5)
    assert ev.check("pair_strength").outcome.capacity == 2.5


def test_the_spread_of_an_angle_goes_past_neither_end() -> None:
    flat = {"hitch": Hitch.BASKET, "part_angle_deg": Measured(2.0, "by eye"), **HELD}
    wide = {"hitch": Hitch.CHOKED, "choke_angle_deg": Measured(178.0, "by eye"), **HELD}
    for changes in (flat, wide):
        for rule_set in RuleSet:
            check = assess(TABLE, lift(both=changes, rule_set=rule_set)).check("sling_strength[left]")
            assert check.verdict is Verdict.WITHIN


@pytest.mark.parametrize("number", range(len(MORE)))
def test_every_further_example_comes_out(number: int) -> None:
    assert assess(TABLE, from_json(TABLE, MORE[number])).verdict in (Verdict.WITHIN, Verdict.CLOSE)


def test_a_choked_or_basket_sling_waits_for_its_angle() -> None:
    for hitch, words in ((Hitch.CHOKED, "angle of choke"), (Hitch.BASKET, "line of the leg")):
        stopped = nominal(lift(both={"hitch": hitch, "sling": sling()})).check("sling_strength[left]").stopped
        assert words in str(stopped)
