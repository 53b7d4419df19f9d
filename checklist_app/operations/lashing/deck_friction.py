"""Friction on the deck, under pallet or skid: as published, or less where less was measured."""

from checklist_app.mechanics.lashing import friction
from checklist_app.mechanics.lashing.friction import Pair, Surface
from checklist_app.mechanics.lashing.rule_sets import RuleSet
from checklist_app.operations.graph import Known, dont_know, when


@dont_know("deck_pair")
def deck_pair_unknown() -> Pair:
    """In every state no pair is published with less."""
    return Pair.BARE_METAL_ON_METAL


@dont_know("deck_surface")
def deck_surface_unknown() -> Surface:
    """Oil leaves every pair least."""
    return Surface.OILY


@when("deck_friction_there", deck_friction=Known.YES)
def deck_friction_measured(
    deck_friction: float, rule_set: RuleSet, deck_pair: Pair, deck_surface: Surface
) -> float:
    """As measured on these very faces, and no more than is published for them."""
    return friction.measured_friction(rule_set, deck_pair, deck_surface, deck_friction)


@when("deck_friction_there", deck_friction=Known.NO)
def deck_friction_published(rule_set: RuleSet, deck_pair: Pair, deck_surface: Surface) -> float:
    """As published for the pair and what is on it."""
    return friction.friction(rule_set, deck_pair, deck_surface)
