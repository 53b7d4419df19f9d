"""What the load will see on its way, and what the rules ask it to withstand; weight by the g that they print."""

from dataclasses import dataclass

from checklist_app.mechanics.lashing import rule_sets, transport
from checklist_app.mechanics.lashing.demands import TiltRule
from checklist_app.mechanics.lashing.rule_sets import RULES, RuleSet
from checklist_app.mechanics.lashing.transport import Direction, Transport, Waters
from checklist_app.operations.graph import CannotAssess, each, when
from checklist_app.operations.lashing.asked import Asked, asked_of, printed
from checklist_app.operations.lashing.choices import PRINTED_AREAS, Route

ONLY_WITH_A_SHIP = "Annex 13 is for a ship: choose a route by sea, or other rules"


@dataclass(frozen=True)
class Transports:
    """Every way of transport on the route."""

    ways: tuple[Transport, ...]


def weight_dan(rule_set: RuleSet, mass_kg: float) -> float:
    """Weight of the load by the g of the rule set."""
    return rule_sets.weight_dan(rule_set, mass_kg)


@when("transports", route=(Route.ROAD, Route.VAN))
def by_road(rule_set: RuleSet) -> Transports:
    """By road alone."""
    _known(rule_set)
    return Transports((Transport.ROAD,))


@when("transports", route=Route.RAIL)
def by_rail(rule_set: RuleSet) -> Transports:
    """By road to the railway, and from it."""
    _known(rule_set, "the railway")
    return Transports((Transport.ROAD, Transport.RAIL))


@when("transports", route=Route.SEA)
def by_sea(rule_set: RuleSet, waters: Waters) -> Transports:
    """By road to the ship, and from it."""
    _known(rule_set, "the sea")
    return Transports((Transport.ROAD, transport.sea_area(rule_set, waters)))


@when("transports", route=Route.RAIL_SEA)
def by_rail_and_sea(rule_set: RuleSet, waters: Waters) -> Transports:
    """By road, by rail and on a ship."""
    _known(rule_set, "railway and sea")
    return Transports((Transport.ROAD, Transport.RAIL, transport.sea_area(rule_set, waters)))


def _known(rule_set: RuleSet, beyond_road: str = "") -> None:
    """Refuse what a rule set does not know."""
    if rule_set is RuleSet.CSS:
        raise CannotAssess(ONLY_WITH_A_SHIP)
    if beyond_road and not RULES[rule_set].at_sea:
        raise CannotAssess(f"{rule_set.value} is for the road and does not know {beyond_road}: choose other rules")


@when("asked", rule_set=PRINTED_AREAS)
@each("direction")
def asked_by_tables(
    rule_set: RuleSet, transports: Transports, van_gross_t: float | None, tilt_rule: TiltRule, direction: Direction
) -> Asked:
    """Accelerations as printed, for every transport on the route; a van asks what its own rules say beside it."""
    tied, untied = (
        printed(rule_set, transports.ways, van_gross_t, tilt_rule, direction, held) for held in (True, False)
    )
    return asked_of(tied, untied)
