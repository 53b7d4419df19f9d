"""One load by each of the six rule sets with a pencil: what is withstood, and all six balances of the forces then.

1000 kg on feet 1.0 × 0.7 m, centre of gravity in the middle and 0.4 m up, bare metal on clean timber: friction 0.3 as
published (CSS Code, steel on timber). Four lashings from 0.6 m up at 0.45 and 0.30 m to anchors 0.20 m farther out
lengthways and 0.30 m sideways: 0.2² + 0.3² + 0.6² = 0.7², so the shares of a pull are 2/7, 3/7 and 6/7. Each strap:
LC 1000 daN, WLL 500 kg, breaking strength 20 kN; everything else is stronger.
"""

from typing import Any, NamedTuple

import pytest

from checklist_app.mechanics.lashing.css_forces import Level
from checklist_app.mechanics.lashing.rule_sets import RuleSet
from checklist_app.mechanics.vectors import Vec, cross
from checklist_app.operations.evaluate import Evaluation
from checklist_app.operations.lashing.choices import OnDeck, Route
from tests.operations.lashing.loads import FORWARD, LEFT, four, load, nominal, run, strap

ALONG, ACROSS, DOWN = 2.0 / 7.0, 3.0 / 7.0, 6.0 / 7.0
SHIP: dict[str, Any] = {
    "route": Route.SEA, "ship_level": Level.DECK_LOW, "ship_place": 0.7, "ship_length_m": 120.0, "ship_speed_kn": 15.0,
    "ship_b_over_gm": 13.0, "ship_open": OnDeck.CLOSED,
}


class Pencil(NamedTuple):
    """What was worked out by hand: g, the pull of a strap [daN], the friction beside it, what is asked, what holds."""

    g: float
    pull_dan: float
    friction: float
    remains: float
    way: str
    asked: float
    slides_at: float
    source: str


EN = "EN 12195-1:2010, 5.5.3.1 as restated by GDV 4.1.6: c G = 0.75 μ G + n LC (Y + 0.75 μ Z) / L"
CTU = "CTU Code 2014, Annex 7: 75 % of the friction beside direct lashings"
CSS = "CSS Code, Annex 13: CS = MSL / 1.35, MSL of webbing 50 %; k 0.889, ay 6.3 m/s², lengthways μ (m g - Fz)"
US = "49 CFR 393.102: WLL against 0.435 g forwards and 0.25 g sideways"
NTC = "NTC Load Restraint Guide 2018: 0.8 g forwards, 0.5 g sideways, friction not reduced"
UK = "UK profile: 1.0 g forwards, else as EN 12195-1"
BY_HAND = {
    (RuleSet.EN, FORWARD): Pencil(9.81, 1000.0, 0.225, 1.0, FORWARD, 0.8, 1.2007, EN),
    (RuleSet.EN, LEFT): Pencil(9.81, 1000.0, 0.225, 1.0, LEFT, 0.5, 1.4919, EN),
    (RuleSet.CTU, FORWARD): Pencil(9.81, 1000.0, 0.225, 1.0, FORWARD, 0.8, 1.2007, CTU),
    (RuleSet.CTU, LEFT): Pencil(9.81, 1000.0, 0.225, 1.0, LEFT, 0.5, 1.4919, CTU),
    (RuleSet.CSS, FORWARD): Pencil(9.81, 740.741, 0.3, 0.4381, FORWARD, 0.2628, 0.9512, CSS),
    (RuleSet.CSS, LEFT): Pencil(9.81, 740.741, 0.3, 1.0, LEFT, 0.5710, 1.3355, CSS),
    (RuleSet.US, FORWARD): Pencil(9.80665, 490.3325, 0.3, 1.0, FORWARD, 0.435, 0.8429, US),
    (RuleSet.US, LEFT): Pencil(9.80665, 490.3325, 0.3, 1.0, LEFT, 0.25, 0.9857, US),
    (RuleSet.NTC, FORWARD): Pencil(9.81, 1000.0, 0.3, 1.0, FORWARD, 0.8, 1.4067, NTC),
    (RuleSet.NTC, LEFT): Pencil(9.81, 1000.0, 0.3, 1.0, LEFT, 0.5, 1.6980, NTC),
    (RuleSet.UK, FORWARD): Pencil(9.81, 1000.0, 0.225, 1.0, FORWARD, 1.0, 1.2007, UK),
    (RuleSet.UK, LEFT): Pencil(9.81, 1000.0, 0.225, 1.0, LEFT, 0.5, 1.4919, UK),
}
CASES = [pytest.param(rule_set, told, id=f"by_hand, {told.source}, {way}") for (rule_set, way), told in BY_HAND.items()]
TIPS = [
    pytest.param(RuleSet.EN, 0.6, 5.0253, id=f"by_hand, {EN}: (0.35 G + 2 R (3/7 0.6 + 6/7 0.65)) / 0.4 G"),
    pytest.param(RuleSet.CTU, 0.6, 5.0253, id=f"by_hand, {CTU}: tipping as EN 12195-1"),
    pytest.param(RuleSet.CSS, 0.5710, 3.6419, id=f"by_hand, {CSS}; 0.9 of the moment, from memory, takes away"),
    pytest.param(RuleSet.US, 0.5, 2.9107, id="by_hand, 49 CFR 393.102: 0.5 g sideways, by WLL"),
    pytest.param(RuleSet.NTC, 0.5, 5.0253, id=f"by_hand, {NTC}"),
    pytest.param(RuleSet.UK, 0.6, 5.0253, id=f"by_hand, {UK}"),
]


def lashed(rule_set: RuleSet) -> Evaluation:
    item = strap(1000.0, None, wll_kg=500.0, breaking_kn=20.0)
    rows = four((0.45, 0.30, 0.6), (0.65, 0.60, 0.0), lashing_item=item)
    ship = SHIP if rule_set is RuleSet.CSS else {}
    return nominal(load(rows, rule_set=rule_set, base_length_m=1.0, base_width_m=0.7, cg_z_m=0.4, **ship))


def transport(rule_set: RuleSet) -> str:
    return "ship" if rule_set is RuleSet.CSS else "road"


@pytest.mark.parametrize("rule_set, told", CASES)
def test_the_push_at_which_it_slides(rule_set: RuleSet, told: Pencil) -> None:
    found = run(lashed(rule_set), told.way, "sliding", transport(rule_set)).held
    assert found.need == pytest.approx(told.asked, abs=5e-5)
    assert found.have == pytest.approx(told.slides_at, abs=1e-4)


@pytest.mark.parametrize("rule_set, told", CASES)
def test_all_six_balances_of_it(rule_set: RuleSet, told: Pencil) -> None:
    """Push, weight that remains, two pulls, and under the feet friction and pressure in one point: nothing is left."""
    weight = 1000.0 * told.g / 10.0
    cg, way = Vec(0.0, 0.0, 0.4), Vec(1.0, 0.0, 0.0) if told.way == FORWARD else Vec(0.0, 1.0, 0.0)
    push = run(lashed(rule_set), told.way, "sliding", transport(rule_set)).held.have * weight
    forces = [(cg, Vec(push * way.x, push * way.y, -told.remains * weight))]
    for side in (1.0, -1.0):
        x, y = (-1.0, side) if told.way == FORWARD else (side, -1.0)
        pull = Vec(told.pull_dan * ALONG * x, told.pull_dan * ACROSS * y, -told.pull_dan * DOWN)
        forces.append((Vec(0.45 * x, 0.30 * y, 0.6), pull))
    pressed = told.remains * weight + 2.0 * told.pull_dan * DOWN
    high = push * 0.4 - 2.0 * told.pull_dan * (0.6 * (ALONG if told.way == FORWARD else ACROSS))
    back = 2.0 * told.pull_dan * DOWN * (0.45 if told.way == FORWARD else 0.30)
    at_m = (high - back) / pressed
    gripped = told.friction * pressed
    forces.append((Vec(at_m * way.x, at_m * way.y, 0.0), Vec(-gripped * way.x, -gripped * way.y, pressed)))

    sums = [total for turn in (False, True) for total in _summed(forces, turn)]
    assert sums == pytest.approx([0.0] * 6, abs=0.1)
    assert abs(at_m) < (0.5 if told.way == FORWARD else 0.35), "it stays under the feet: it does not tip first"


def _summed(forces: list[tuple[Vec, Vec]], turn: bool) -> Vec:
    total = Vec(0.0, 0.0, 0.0)
    for at, force in forces:
        one = cross(at, force) if turn else force
        total = Vec(total.x + one.x, total.y + one.y, total.z + one.z)
    return total


@pytest.mark.parametrize("rule_set, asked, tips_at", TIPS)
def test_the_push_at_which_it_tips_to_the_left(rule_set: RuleSet, asked: float, tips_at: float) -> None:
    """About the left feet: the two on the right hold with 3/7 0.6 + 6/7 0.65 = 0.8143 m each, the others go slack."""
    found = run(lashed(rule_set), LEFT, "tipping", transport(rule_set)).held
    assert found.need == pytest.approx(asked, abs=5e-5)
    assert found.have == pytest.approx(tips_at, abs=1e-4)
