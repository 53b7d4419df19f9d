"""On a ship by Annex 13 of the CSS Code: what its motion, the wind and the sea ask of the load.

Annex 13 has no accelerations for the way to the ship: road and railway are asked by EN 12195-1 beside it.
"""

from checklist_app.mechanics.lashing import css_forces
from checklist_app.mechanics.lashing.css_forces import Level, ShipForces
from checklist_app.mechanics.lashing.demands import TiltRule
from checklist_app.mechanics.lashing.rule_sets import RuleSet
from checklist_app.mechanics.lashing.transport import Direction, Transport
from checklist_app.mechanics.weight import KG_IN_T
from checklist_app.operations.graph import CannotAssess, each, when
from checklist_app.operations.lashing.asked import Asked, Push, asked_of, printed
from checklist_app.operations.lashing.choices import OnDeck, Route
from checklist_app.operations.lashing.route import ONLY_WITH_A_SHIP

SPRAY_UP_TO_M = 2.0
ON_DECK = (Level.DECK_HIGH, Level.DECK_LOW)
BESIDE = RuleSet.EN
TO_THE_SHIP = {Route.SEA: (Transport.ROAD,), Route.RAIL_SEA: (Transport.ROAD, Transport.RAIL)}


@when("ship_wind_end_m2", ship_open=OnDeck.OPEN)
def end_in_the_wind(width_m: float, height_m: float) -> float:
    """Area of the load seen from ahead."""
    return width_m * height_m


@when("ship_wind_end_m2", ship_open=OnDeck.CLOSED)
def end_under_deck() -> float:
    """No wind."""
    return 0.0


@when("ship_wind_side_m2", ship_open=OnDeck.OPEN)
def side_in_the_wind(length_m: float, height_m: float) -> float:
    """Area of the load seen from the side."""
    return length_m * height_m


@when("ship_wind_side_m2", ship_open=OnDeck.CLOSED)
def side_under_deck() -> float:
    """No wind."""
    return 0.0


def ship_spray_share(height_m: float, ship_level: Level) -> float:
    """Share of those areas that the sea reaches: up to 2 m above an open deck."""
    if ship_level not in ON_DECK:
        return 0.0

    return SPRAY_UP_TO_M / height_m if height_m > SPRAY_UP_TO_M else 1.0


def ship_speed_factor(ship_length_m: float, ship_speed_kn: float) -> float:
    """Correction for the ship's length and speed."""
    return css_forces.length_speed_factor(ship_length_m, ship_speed_kn)


def ship_stiff_factor(ship_level: Level, ship_b_over_gm: float) -> float:
    """Correction for a stiff ship."""
    return css_forces.b_over_gm_factor(ship_level, ship_b_over_gm)


def ship_forces(
    mass_kg: float, ship_level: Level, ship_place: float, ship_speed_factor: float, ship_stiff_factor: float,
    ship_wind_end_m2: float, ship_wind_side_m2: float, ship_spray_share: float,
) -> ShipForces:
    """Inertia, wind and sea on the load."""
    basic = css_forces.accelerations_m_s2(ship_level, ship_place)
    return css_forces.ship_forces(
        mass_kg / KG_IN_T, basic, ship_speed_factor, ship_stiff_factor, ship_wind_end_m2, ship_wind_side_m2,
        ship_spray_share * ship_wind_end_m2, ship_spray_share * ship_wind_side_m2,
    )


@when("asked", rule_set=RuleSet.CSS)
@each("direction")
def asked_by_the_ship(
    ship_forces: ShipForces, mass_kg: float, route: Route, van_gross_t: float | None, tilt_rule: TiltRule,
    direction: Direction,
) -> Asked:
    """Accelerations of this ship at this place, its length as the vehicle's; and those of the way to it, by EN 12195-1.

    Friction and ratings are those of Annex 13 on the whole way: they are never the greater ones.
    """
    if route not in TO_THE_SHIP:
        raise CannotAssess(ONLY_WITH_A_SHIP)
    ship = Push("ship", css_forces.ship_demand(ship_forces, mass_kg / KG_IN_T, direction), RuleSet.CSS)
    tied, untied = (
        [each._replace(transport=f"{each.transport}, {BESIDE.value}")
         for each in printed(BESIDE, TO_THE_SHIP[route], van_gross_t, tilt_rule, direction, held)]
        for held in (True, False)
    )
    return asked_of([ship, *tied], [ship, *untied])
