"""CSS Code, Annex 13: what a ship's motion does to a load, by its place on board and the ship's own data."""

from dataclasses import dataclass
from enum import Enum

from checklist_app.mechanics import exact
from checklist_app.mechanics.errors import OutOfRangeError, required_not_negative, required_positive
from checklist_app.mechanics.lashing.demands import Demand, Slide, Tip
from checklist_app.mechanics.lashing.rule_sets import RULES, RuleSet
from checklist_app.mechanics.lashing.transport import Direction

SOURCE = "CSS_ANNEX_13_FORCES"


class Level(Enum):
    """Where on board."""

    DECK_HIGH = "on deck, high"
    DECK_LOW = "on deck, low"
    TWEEN = "'tween deck"
    LOWER_HOLD = "lower hold"


TENTHS = range(1, 10)
ACROSS_M_S2 = {  # by tenths of the length from aft, 0.1 to 0.9
    Level.DECK_HIGH: (7.1, 6.9, 6.8, 6.7, 6.7, 6.8, 6.9, 7.1, 7.4),
    Level.DECK_LOW: (6.5, 6.3, 6.1, 6.1, 6.1, 6.1, 6.3, 6.5, 6.7),
    Level.TWEEN: (5.9, 5.6, 5.5, 5.4, 5.4, 5.5, 5.6, 5.9, 6.2),
    Level.LOWER_HOLD: (5.5, 5.3, 5.1, 5.0, 5.0, 5.1, 5.3, 5.5, 5.9),
}
ALONG_M_S2 = {Level.DECK_HIGH: 3.8, Level.DECK_LOW: 2.9, Level.TWEEN: 2.0, Level.LOWER_HOLD: 1.5}
UPRIGHT_M_S2 = (7.6, 6.2, 5.0, 4.3, 4.3, 5.0, 6.2, 7.6, 9.2)
B_OVER_GM = {  # 7 to 13 and more
    Level.DECK_HIGH: (1.56, 1.40, 1.27, 1.19, 1.11, 1.05, 1.00),
    Level.DECK_LOW: (1.42, 1.30, 1.21, 1.14, 1.09, 1.04, 1.00),
    Level.TWEEN: (1.26, 1.19, 1.14, 1.09, 1.06, 1.03, 1.00),
    Level.LOWER_HOLD: (1.15, 1.12, 1.09, 1.06, 1.04, 1.02, 1.00),
}
STIFFEST, TENDER = 7, 13
SHORTEST_M, LONGEST_M = 50.0, 300.0
FASTEST_KN = 40.0
SPEED, REACH, OFFSET = 0.345, 58.62, 1034.5


@dataclass(frozen=True)
class ShipForces:
    """Inertia of the load on board, wind and sea included [kN]."""

    along_kn: float
    across_kn: float
    upright_kn: float


def length_speed_factor(length_m: float, speed_kn: float) -> float:
    """Correction of all three accelerations for the ship's length and speed.

        k = 0.345 v / √L + (58.62 L − 1034.5) / L²

    Source:
        CSS_ANNEX_13_MORE: from memory; it gives both factors that CSS_ANNEX_13_FORCES prints in its examples.

    Args:
        length_m: L, length of the ship [m], 50 to 300.
        speed_kn: v, service speed [kn], above 0 up to 40.

    Returns:
        k [-].

    Raises:
        OutOfRangeError: Outside the lengths and speeds.

    Example:
        >>> round(length_speed_factor(120.0, 15.0), 3)
        0.889
    """
    if not SHORTEST_M <= length_m <= LONGEST_M:
        raise OutOfRangeError("length of the ship", length_m, "50 to 300 m", SOURCE)
    if not 0.0 < speed_kn <= FASTEST_KN:
        raise OutOfRangeError("service speed of the ship", speed_kn, "above 0, 40 kn at most", SOURCE)

    return SPEED * speed_kn / exact.sqrt(length_m) + (REACH * length_m - OFFSET) / (length_m * length_m)


def b_over_gm_factor(level: Level, b_over_gm: float) -> float:
    """Correction of the transverse acceleration for a stiff ship; between two columns the stiffer one counts.

        1 where B / GM is 13 or more, up to 1.56 at 7

    Source:
        CSS_ANNEX_13_MORE: from memory; it only ever makes the force larger.

    Args:
        level: where on board.
        b_over_gm: breadth of the ship over its metacentric height [-], 7 or more.

    Returns:
        Factor on the transverse acceleration [-].

    Raises:
        OutOfRangeError: Below 7, which the table does not have.

    Example:
        >>> b_over_gm_factor(Level.DECK_HIGH, 12.5)
        1.05
    """
    if not STIFFEST <= b_over_gm < float("inf"):
        raise OutOfRangeError("breadth over metacentric height", b_over_gm, "7 or more", "CSS_ANNEX_13_MORE")

    return B_OVER_GM[level][int(min(b_over_gm, TENDER)) - STIFFEST]


def accelerations_m_s2(level: Level, place: float) -> tuple[float, ...]:
    """Basic accelerations along, across and upright; between two columns of the table the larger.

        as tabulated

    Source:
        CSS_ANNEX_13_FORCES.

    Args:
        level: where on board.
        place: distance from aft over the length of the ship [-], 0 to 1.

    Returns:
        ax, ay, az [m/s²].

    Raises:
        OutOfRangeError: If the place is no number from 0 to 1.

    Example:
        >>> accelerations_m_s2(Level.DECK_LOW, 0.7)
        (2.9, 6.3, 6.2)
    """
    if not 0.0 <= place <= 1.0:
        raise OutOfRangeError("place along the ship", place, "0 (aft) to 1 (forward)", SOURCE)

    near = [tenth - 1 for tenth in TENTHS if abs(tenth - 10.0 * place) < 1.0] or [0 if place < 0.5 else 8]
    return (
        ALONG_M_S2[level],
        max(ACROSS_M_S2[level][i] for i in near),
        max(UPRIGHT_M_S2[i] for i in near),
    )


def ship_forces(
    mass_t: float, basic_m_s2: tuple[float, ...], speed_factor: float, stiff_factor: float,
    end_area_m2: float, side_area_m2: float, end_spray_m2: float, side_spray_m2: float,
) -> ShipForces:
    """Inertia, wind and sea on a load on board.

        Fx = m ax k + 1 kN/m² (A + S),  Fy = m ay k stiff + 1 kN/m² (A + S),  Fz = m az k

    Source:
        CSS_ANNEX_13_FORCES; wind and sloshing sea press with 1 kN/m² each, the sea up to 2 m above an open deck.

    Args:
        mass_t: m, mass of the load [t], above 0.
        basic_m_s2: ax, ay, az of the table [m/s²].
        speed_factor: k [-], above 0.
        stiff_factor: factor of B / GM on ay [-], 1 or more.
        end_area_m2: area of the load seen from ahead, in the wind [m²]; 0 under deck.
        side_area_m2: area seen from the side [m²]; 0 under deck.
        end_spray_m2: of that, what the sea can reach [m²].
        side_spray_m2: of the side, what the sea can reach [m²].

    Returns:
        The three forces.

    Raises:
        OutOfRangeError: If a number is none, or the sea reaches more than there is.

    Example:
        >>> ship_forces(62.0, (2.9, 6.3, 6.2), 0.89, 1.0, 16.0, 24.0, 8.0, 12.0).along_kn
        184.022
    """
    required_positive("mass of the load", mass_t, SOURCE)
    required_positive("factor of length and speed", speed_factor, SOURCE)
    if not 1.0 <= stiff_factor < float("inf"):
        raise OutOfRangeError("factor of a stiff ship", stiff_factor, "1 or more", SOURCE)
    for area_m2, spray_m2 in ((end_area_m2, end_spray_m2), (side_area_m2, side_spray_m2)):
        required_not_negative("area of the load", area_m2, SOURCE)
        if not 0.0 <= spray_m2 <= area_m2:
            raise OutOfRangeError("area that the sea can reach", spray_m2, "0 up to the area itself", SOURCE)

    ax, ay, az = basic_m_s2
    return ShipForces(
        mass_t * ax * speed_factor + end_area_m2 + end_spray_m2,
        mass_t * ay * speed_factor * stiff_factor + side_area_m2 + side_spray_m2,
        mass_t * az * speed_factor,
    )


def ship_demand(forces: ShipForces, mass_t: float, direction: Direction) -> Demand:
    """What the ship asks of a load one way, as shares of its weight.

    Crosswise the whole weight remains; lengthways only what the upright acceleration leaves.

    Source:
        CSS_ANNEX_13_FORCES; lengthways μ (m g − Fz) is CSS_ANNEX_13_MORE, stricter than the whole weight.

    Args:
        forces: inertia, wind and sea.
        mass_t: mass of the load [t], above 0.
        direction: the vehicle's and the ship's axes are taken as parallel.

    Returns:
        The demand; tie-downs give nothing in Annex 13.

    Raises:
        OutOfRangeError: If the mass is none, or the load would be thrown up.

    Example:
        >>> ship_demand(ShipForces(184.0, 384.0, 342.0), 62.0, Direction.LEFT).slides[0].downward
        1.0
    """
    required_positive("mass of the load", mass_t, SOURCE)
    weight_kn = mass_t * RULES[RuleSet.CSS].g_m_s2
    if direction.is_sideways:
        push, downward = forces.across_kn / weight_kn, 1.0
    else:
        push, downward = forces.along_kn / weight_kn, 1.0 - forces.upright_kn / weight_kn
    if not downward > 0.0:
        raise OutOfRangeError("weight that remains on board", downward, "above 0", SOURCE)

    return Demand(direction, (Slide(push, downward),), (Tip(push, downward),), RULES[RuleSet.CSS].fs_other)
