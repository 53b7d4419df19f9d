"""Friction under the load: as published, or less where less was measured; who does not know gets the worst."""

from checklist_app.mechanics.lashing import friction
from checklist_app.mechanics.lashing.friction import Pair, Surface
from checklist_app.mechanics.lashing.rule_sets import RuleSet
from checklist_app.operations.graph import Known, dont_know, when


@dont_know("load_pair")
def load_pair_unknown() -> Pair:
    """In every state no pair is published with less."""
    return Pair.BARE_METAL_ON_METAL


@dont_know("load_surface")
def load_surface_unknown() -> Surface:
    """Oil leaves every pair least."""
    return Surface.OILY


@when("load_friction_there", load_friction=Known.YES)
def load_friction_measured(
    load_friction: float, rule_set: RuleSet, load_pair: Pair, load_surface: Surface
) -> float:
    """As measured on these very faces, and no more than is published for them."""
    return friction.measured_friction(rule_set, load_pair, load_surface, load_friction)


@when("load_friction_there", load_friction=Known.NO)
def load_friction_published(rule_set: RuleSet, load_pair: Pair, load_surface: Surface) -> float:
    """As published for the pair and what is on it."""
    return friction.friction(rule_set, load_pair, load_surface)
