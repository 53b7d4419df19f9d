"""Friction that counts, through the whole operation: as published for what is there, else the worst of it."""

from typing import Any

import pytest

from checklist_app.mechanics.lashing.friction import Pair, Surface, worst_friction
from checklist_app.mechanics.lashing.rule_sets import RuleSet
from checklist_app.operations.check import Verdict
from checklist_app.operations.graph import CannotAssess, DontKnow
from tests.operations.lashing.loads import FORWARD, load, nominal, on_a_pallet, words

PUBLISHED = {"load_friction": None}


def friction_of(**changes: Any) -> float:
    found: float = nominal(load([], **(PUBLISHED | changes)))["load_friction_there"]
    return found


def test_an_oily_engine_never_gets_the_clean_friction() -> None:
    """The lower ends of the published ranges: metal on wood 0.02, metal on metal nothing, wood on wood 0.05."""
    assert friction_of(load_pair=Pair.BARE_METAL_ON_WOOD, load_surface=Surface.OILY) == 0.02
    assert friction_of(load_pair=Pair.STEEL_CRATE_ON_PLYWOOD, load_surface=Surface.OILY) == 0.02
    assert friction_of(load_pair=Pair.BARE_METAL_ON_METAL, load_surface=Surface.OILY) == 0.0
    assert friction_of(load_pair=Pair.SAWN_WOOD_ON_PLYWOOD, load_surface=Surface.OILY) == 0.05


def test_p4_steel_on_steel_common_practice_without_source() -> None:
    """Dry 0.1, wet or oily nothing."""
    pair = {"load_pair": Pair.BARE_METAL_ON_METAL}
    found = [friction_of(load_surface=state, **pair) for state in Surface]
    assert found == [0.1, 0.0, 0.0, 0.0, 0.0]
    assert friction_of(load_pair=Pair.STEEL_CRATE_ON_STEEL, load_surface=Surface.CLEAN_WET) == 0.0


KNOWN_PAIRS = tuple(pair for pair in Pair if pair is not Pair.MAT)
HALF_KNOWN = (*((pair, None) for pair in KNOWN_PAIRS), *((None, state) for state in (*Surface, None)))


@pytest.mark.parametrize("rule_set", RuleSet)
@pytest.mark.parametrize("pair, surface", HALF_KNOWN)
def test_who_does_not_know_pair_or_state_gets_the_worst_published(
    rule_set: RuleSet, pair: Pair | None, surface: Surface | None
) -> None:
    answers = {"load_pair": pair or DontKnow(), "load_surface": surface or DontKnow(), "rule_set": rule_set}
    found = nominal(load([], **(PUBLISHED | answers)))["load_friction_there"]
    if rule_set is RuleSet.CSS and pair is not None and ("film" in pair.value or "plastic" in pair.value):
        assert isinstance(found, CannotAssess)
    else:
        assert found == worst_friction(rule_set, pair, surface)


def test_measured_it_never_holds_more_than_is_published_for_what_is_there() -> None:
    """A reading of 0.45 on an oily foot is a reading of something else: metal on wood, oily, counts 0.02."""
    assert friction_of(load_friction=0.45, load_surface=Surface.OILY, load_pair=Pair.BARE_METAL_ON_WOOD) == 0.02
    assert friction_of(load_friction=0.45, load_pair=Pair.BARE_METAL_ON_WOOD) == 0.3
    assert friction_of(load_friction=0.18, load_pair=Pair.BARE_METAL_ON_WOOD) == 0.18
    assert friction_of(load_friction=0.45, load_pair=DontKnow(), load_surface=DontKnow()) == 0.0


def test_measured_it_waits_for_what_the_faces_are() -> None:
    ev = nominal(load([], load_friction=0.2, load_surface=None))
    assert ev.check(f"sliding[{FORWARD}]").verdict is Verdict.WAITING
    assert "what is on those faces" in words(ev, f"sliding[{FORWARD}]")


def test_on_the_deck_too_what_was_measured_is_held_against_what_is_published() -> None:
    oily, clean = (
        nominal(on_a_pallet([], deck_friction=0.6, deck_surface=state))["deck_friction_there"]
        for state in (Surface.OILY, Surface.CLEAN_DRY)
    )
    assert (oily, clean) == (0.05, 0.45)


def test_a_mat_that_nobody_knows_to_be_clean_holds_nothing_up() -> None:
    ev = nominal(load([], **(PUBLISHED | {"load_pair": Pair.MAT, "load_surface": DontKnow()})))
    assert ev.check(f"sliding[{FORWARD}]").verdict is Verdict.CANNOT
    assert "clean on both sides" in words(ev, f"sliding[{FORWARD}]")
