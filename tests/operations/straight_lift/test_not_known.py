"""Bend, edge, protection and heat that nobody knows: the worst that is published, or in words that nothing is."""

from typing import Any

import pytest

from checklist_app.mechanics.slings.kinds import Hitch
from checklist_app.mechanics.slings.wrap import Stop
from checklist_app.operations.catalogue import OPERATIONS
from checklist_app.operations.check import Strength, Verdict
from checklist_app.operations.evaluate import Evaluation, assess
from checklist_app.operations.gear import make
from checklist_app.operations.graph import DontKnow
from checklist_app.operations.report import report
from checklist_app.operations.straight_lift.choices import Protected
from tests.operations.straight_lift.lifts import TABLE, lift

GEAR = {"wll_t": 4.0, "length_m": 1.0, "mass_kg": 1.0}
CHAIN = make("chain_sling", "C", GEAR | {"grade": "grade 8", "size_mm": 10.0})
WEBBING = make("flat_sling", "F", GEAR | {"fibre": "polyester", "thickness_mm": 7.0})
ROPE = make("wire_rope_sling", "W", GEAR | {"diameter_mm": 16.0, "core": "steel", "termination": "steel ferrule"})
BASKET = {"hitch": Hitch.BASKET, "part_angle_deg": 0.0, "stop": Stop.COLLAR}


def nominal(**said: Any) -> Evaluation:
    return assess(TABLE, lift(both=said), with_spread=False)


def share(ev: Evaluation) -> float:
    outcome = ev.check("sling_strength[left]").outcome
    assert isinstance(outcome, Strength), outcome
    return outcome.capacity / 4.0


def test_a_bend_that_nobody_knows_refuses_a_wire_rope_and_nothing_else() -> None:
    """GL Noble Denton 0027/ND 7.2: no bend narrower than the rope itself on the body of a sling."""
    rope = nominal(sling=ROPE, bend_mm=DontKnow(), **BASKET).check("sling_strength[left]")
    assert rope.verdict is Verdict.CANNOT and "narrower than itself it may not bend" in str(rope.stopped)
    for other in (CHAIN, WEBBING):
        assert share(nominal(sling=other, bend_mm=DontKnow(), **BASKET)) == share(nominal(sling=other, **BASKET))


@pytest.mark.parametrize("protected", list(Protected))
def test_an_edge_that_nobody_knows_is_the_sharpest_there_is(protected: Protected) -> None:
    for kind in (CHAIN, WEBBING, ROPE):
        unknown, sharp = (nominal(sling=kind, edge_mm=radius, edge_protected=protected).check("sling_strength[left]")
                          for radius in (DontKnow(), 0.0))
        assert unknown.verdict is sharp.verdict
        assert str(unknown.outcome) == str(sharp.outcome)


def test_protected_the_radius_does_not_matter_and_unprotected_webbing_is_refused() -> None:
    """DGUV Information 209-061: textile slings over edges and on rough faces only with protection."""
    assert share(nominal(sling=WEBBING, edge_mm=DontKnow(), edge_protected=Protected.YES)) == 1.0
    bare = nominal(sling=WEBBING, edge_mm=DontKnow(), edge_protected=Protected.SMOOTH)
    assert bare.check("sling_strength[left]").verdict is Verdict.CANNOT


def test_protection_that_nobody_knows_is_none() -> None:
    for kind in (CHAIN, WEBBING, ROPE):
        unknown, bare = (nominal(sling=kind, edge_mm=20.0, edge_protected=said).check("sling_strength[left]")
                         for said in (DontKnow(), Protected.ROUGH))
        assert (unknown.verdict, str(unknown.outcome)) == (bare.verdict, str(bare.outcome))


def test_an_edge_with_nothing_said_of_its_protection_is_not_assessed() -> None:
    found = nominal(sling=CHAIN, edge_mm=20.0).check("sling_strength[left]")
    assert found.verdict is Verdict.CANNOT and "whether it is protected there was not asked" in str(found.stopped)


def test_a_temperature_that_nobody_knows_is_not_assessed_at_its_own_check() -> None:
    ev = assess(TABLE, lift(both={"sling": CHAIN}, sling_temperature_c=DontKnow()), with_spread=False)
    assert ev.check("temperature[left]").verdict is Verdict.CANNOT and ev.verdict is Verdict.CANNOT
    assert "temperature of the slings is not known" in report(OPERATIONS["straight_lift"], ev)["refused"][
        "temperature[left]"]
