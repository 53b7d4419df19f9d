"""On a ship by Annex 13, through the whole operation: its worked example, MSL, and what it does not count."""

from typing import Any

import pytest

from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.lashing import friction
from checklist_app.mechanics.lashing.css_forces import Level
from checklist_app.mechanics.lashing.direct import Kind
from checklist_app.mechanics.lashing.friction import Pair, Surface
from checklist_app.mechanics.lashing.rule_sets import RuleSet
from checklist_app.operations.check import Verdict
from checklist_app.operations.evaluate import Evaluation
from checklist_app.operations.lashing.choices import OnDeck, Route
from tests.operations.lashing.loads import (
    FORWARD,
    LEFT,
    REAR,
    RIGHT,
    WAYS,
    four,
    lashing,
    load,
    nominal,
    run,
    runs,
    strap,
    tie_down,
    times,
    vehicle,
)

SHIP_RUN = "ship"
SHIP = {
    "rule_set": RuleSet.CSS, "route": Route.SEA, "ship_level": Level.DECK_LOW, "ship_place": 0.7,
    "ship_length_m": 120.0, "ship_speed_kn": 15.0, "ship_b_over_gm": 13.0, "ship_open": OnDeck.OPEN,
}


def example(**changes: Any) -> Evaluation:
    """62 t, 6 × 4 × 4 m, low on deck at 0.7 of the length of a ship of 120 m at 15 kn, its middle 1.8 m up."""
    told: dict[str, Any] = {
        "mass_kg": 62_000.0, "length_m": 6.0, "width_m": 4.0, "height_m": 4.0, "cg_z_m": 1.8, "base_length_m": 6.0,
        "base_width_m": 4.0, "load_friction": 0.3, "vehicle": vehicle(),
    }
    return nominal(load([], **(told | SHIP | changes)))


def test_published_forces_of_the_first_example() -> None:
    """Printed 184, 384, 342 kN with k rounded to 0.89; 383.3 crosswise with k 0.889."""
    forces = example()["ship_forces"]
    assert (forces.along_kn, forces.upright_kn) == pytest.approx((184.0, 342.0), abs=0.6)
    assert forces.across_kn == pytest.approx(383.3, abs=0.1)


def test_published_moments_of_the_first_example() -> None:
    """Printed 691 < 1216 kNm: it stands crosswise unlashed."""
    need, have = example().check(f"tipping[{LEFT}]").outcome
    assert need * 1.8 / 100.0 == pytest.approx(691.0, abs=1.5)
    assert have * 1.8 / 100.0 == pytest.approx(1216.0, abs=0.5)


def test_derived_crosswise_the_whole_weight_counts_and_lengthways_what_remains() -> None:
    """μ m g = 182.5 kN crosswise; μ (m g − 342) = 79.9 kN lengthways."""
    ev = example()
    weight_kn = 62.0 * 9.81
    for way, kn, within in ((LEFT, 182.5, 0.1), (FORWARD, 79.9, 0.2)):
        assert run(ev, way, "sliding", SHIP_RUN).held.have * weight_kn == pytest.approx(kn, abs=within)


def test_below_deck_there_is_no_wind_and_no_sea() -> None:
    assert example(ship_open=OnDeck.CLOSED)["ship_forces"].along_kn == pytest.approx(184.0 - 24.0, abs=0.6)


@pytest.mark.parametrize("kind, share", [("web_lashing", 0.5), ("chain_lashing", 0.5), ("rope_lashing", 0.3)])
def test_rated_by_msl_over_1_35_in_space(kind: str, share: float) -> None:
    """Web and chain 50 % of the breaking strength; a rope may be of wire and used again, 30 %."""
    row = lashing(Kind.DIAGONAL, (0.5, 0.5, 0.8), (1.2, 1.1, 0.0),
                  lashing_item=strap(2500.0, None, kind=kind, breaking_kn=50.0))
    assert nominal(load([row], **SHIP))["rated_dan[L1]"] == pytest.approx(5000.0 * share / 1.35)


def test_where_nobody_entered_the_breaking_strength_the_rating_stands_in_for_it() -> None:
    row = lashing(Kind.DIAGONAL, (0.5, 0.5, 0.8), (1.2, 1.1, 0.0), lashing_item=strap(2500.0, None))
    assert nominal(load([row], **SHIP))["rated_dan[L1]"] == pytest.approx(1250.0 / 1.35)


def test_tie_downs_give_nothing() -> None:
    rows = [tie_down((x, 0.7, 1.0), (x, 1.0, 0.0)) for x in (0.4, -0.4)]
    for way in WAYS:
        bare, tied = (nominal(load(each, **SHIP)).check(f"sliding[{way}]").outcome for each in ([], rows))
        assert tied == bare


WITH_A_VAN = {"vehicle": vehicle(form="van", gross_t=3.0)}


@pytest.mark.parametrize("route, ways", [
    (Route.SEA, {"ship", "road"}), (Route.RAIL_SEA, {"ship", "road", "rail"}),
])
def test_the_way_to_the_ship_is_asked_by_en_12195_1_beside_it(route: Route, ways: set[str]) -> None:
    """GDV: 0.8 forwards, 0.5 rearwards and sideways, 0.6 for tipping sideways; by rail 1.0 lengthways for sliding."""
    ev = nominal(load([], **(SHIP | {"route": route})))
    needs = {FORWARD: 0.8, REAR: 0.5, LEFT: 0.5, RIGHT: 0.5}
    for way in WAYS:
        assert {each.transport.split(",")[0] for each in runs(ev, way)} == ways
        road = run(ev, way, "sliding", "road")
        assert (road.held.need, road.by) == (needs[way], RuleSet.EN)
        assert run(ev, way, "sliding", SHIP_RUN).by is RuleSet.CSS
        assert run(ev, way, "tipping", "road").held.need == {LEFT: 0.6, RIGHT: 0.6}.get(way, needs[way])
    if route is Route.RAIL_SEA:
        assert run(ev, FORWARD, "sliding", "rail").held.need == 1.0


def test_the_stricter_of_ship_and_road_governs_each_way() -> None:
    """Low in the hold of a large ship hardly anything is asked forwards, and a lorry brakes with 0.8 g all the same."""
    calm = SHIP | {"ship_level": Level.LOWER_HOLD, "ship_place": 0.5, "ship_length_m": 250.0,
                   "ship_open": OnDeck.CLOSED}
    ev = nominal(load(four((0.8, 0.8, 1.0), (1.3, 1.2, 0.0), 2500.0), **calm))
    for way in WAYS:
        least = min(runs(ev, way), key=lambda each: each.held.times)
        for title, check in (("sliding", "sliding"), ("tipping", "tipping")):
            need, have = ev.check(f"{check}[{way}]").outcome
            worst = min(run(ev, way, title, each).held.times for each in ("ship", "road"))
            assert have / need == pytest.approx(worst)
        assert least.held.times <= run(ev, way, "sliding", SHIP_RUN).held.times
    assert run(ev, FORWARD, "sliding", "road").held.times < run(ev, FORWARD, "sliding", SHIP_RUN).held.times


def test_what_the_ship_alone_would_pass_the_road_refuses() -> None:
    """Derived: in the hold its motion asks about 0.15 forwards, friction of 0.3 holds it; the road asks 0.8."""
    calm = SHIP | {"ship_level": Level.LOWER_HOLD, "ship_place": 0.5, "ship_length_m": 250.0,
                   "ship_open": OnDeck.CLOSED}
    ev = nominal(load([], **calm))
    assert run(ev, FORWARD, "sliding", SHIP_RUN).held.holds
    assert ev.check(f"sliding[{FORWARD}]").verdict is Verdict.OVER


def test_the_way_to_the_ship_is_never_easier_by_annex_13_than_by_en_12195_1() -> None:
    """Same lashings, same friction table of metal on wood: the road's runs with MSL over 1.35 withstand no more."""
    rows = [*four((0.8, 0.8, 1.0), (1.3, 1.2, 0.0), 2500.0), tie_down((0.0, 0.8, 1.4), (0.0, 1.0, 0.0))]
    for surface in Surface:
        told = {"load_friction": None, "load_surface": surface}
        css, en = (nominal(load(rows, **(SHIP | told | {"rule_set": by}))) for by in (RuleSet.CSS, RuleSet.EN))
        for way in WAYS:
            for title in ("sliding", "tipping"):
                assert times(css, way, title) <= times(en, way, title) * (1.0 + 1e-9)


def test_no_pair_has_more_friction_by_annex_13_than_by_en_12195_1() -> None:
    """So that one friction counts on the whole way. Pairs that Annex 13 does not have are refused."""
    for pair in Pair:
        for surface in Surface:
            try:
                by_css = friction.friction(RuleSet.CSS, pair, surface)
            except OutOfRangeError:
                continue
            assert by_css <= friction.friction(RuleSet.EN, pair, surface)


def test_a_light_van_to_the_ship_asks_what_vans_ask() -> None:
    """VDI 2700-16 as restated: 0.8 forwards, 0.6 sideways up to 3.5 t."""
    ev = nominal(load([], **(SHIP | WITH_A_VAN)))
    assert {each.transport.split(",")[0] for each in runs(ev, LEFT)} == {"ship", "road", "van of 3 t"}
    assert (run(ev, FORWARD, "sliding", "van").held.need, run(ev, LEFT, "sliding", "van").held.need) == (0.8, 0.6)


def test_what_the_ship_is_must_be_said() -> None:
    ev = example(ship_b_over_gm=None)
    assert ev.check(f"sliding[{LEFT}]").verdict is Verdict.WAITING
    assert "metacentric height" in str(ev.check(f"sliding[{LEFT}]").stopped)
