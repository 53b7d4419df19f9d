"""On a ship by Annex 13, through the whole operation: its worked example, MSL, and what it does not count."""

from typing import Any

import pytest

from checklist_app.mechanics.lashing.css_forces import Level
from checklist_app.mechanics.lashing.direct import Kind
from checklist_app.mechanics.lashing.rule_sets import RuleSet
from checklist_app.operations.check import Verdict
from checklist_app.operations.evaluate import Evaluation
from checklist_app.operations.lashing.choices import OnDeck, Route
from tests.operations.lashing.loads import FORWARD, LEFT, WAYS, lashing, load, nominal, strap, tie_down, vehicle

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
    assert ev.check(f"sliding[{LEFT}]").outcome[1] / 100.0 == pytest.approx(182.5, abs=0.1)
    assert ev.check(f"sliding[{FORWARD}]").outcome[1] / 100.0 == pytest.approx(79.9, abs=0.2)


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


def test_what_the_ship_is_must_be_said() -> None:
    ev = example(ship_b_over_gm=None)
    assert ev.check(f"sliding[{LEFT}]").verdict is Verdict.WAITING
    assert "metacentric height" in str(ev.check(f"sliding[{LEFT}]").stopped)
