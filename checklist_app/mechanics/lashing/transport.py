"""Ways of transport, ways of the inertia, and which sea counts as which area by whose rules."""

from enum import Enum

from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.lashing.rule_sets import RuleSet
from checklist_app.mechanics.vectors import Vec


class Transport(Enum):
    """What the load will see; at sea by area."""

    ROAD = "road, vehicle over 3.5 t"
    RAIL = "rail, combined transport"
    SEA_A = "sea area A"
    SEA_B = "sea area B"
    SEA_C = "sea area C"

    @property
    def is_sea(self) -> bool:
        """Whether on a ship."""
        return self in (Transport.SEA_A, Transport.SEA_B, Transport.SEA_C)


class Direction(Enum):
    """Where inertia pushes the load: forwards when the vehicle brakes."""

    FORWARD = "forwards"
    REAR = "rearwards"
    LEFT = "to the left"
    RIGHT = "to the right"

    @property
    def way(self) -> Vec:
        """Unit vector in the vehicle's axes: x forwards, y to the left."""
        return WAYS[self]

    @property
    def is_sideways(self) -> bool:
        """Across the vehicle."""
        return self in (Direction.LEFT, Direction.RIGHT)


WAYS = {
    Direction.FORWARD: Vec(1.0, 0.0, 0.0), Direction.REAR: Vec(-1.0, 0.0, 0.0),
    Direction.LEFT: Vec(0.0, 1.0, 0.0), Direction.RIGHT: Vec(0.0, -1.0, 0.0),
}


class Waters(Enum):
    """Seas of a route."""

    BALTIC = "Baltic with Kattegat"
    NORTH_SEA = "North Sea and Skagerrak"
    ENGLISH_CHANNEL = "English Channel"
    MEDITERRANEAN = "Mediterranean"
    BLACK_SEA = "Black Sea"
    RED_SEA = "Red Sea"
    PERSIAN_GULF = "Persian Gulf"
    OPEN_OCEAN = "any other sea"


EN_AREAS = {
    Waters.BALTIC: Transport.SEA_A, Waters.NORTH_SEA: Transport.SEA_B, Waters.MEDITERRANEAN: Transport.SEA_B,
}
CTU_AREAS = {
    Waters.BALTIC: Transport.SEA_A, Waters.MEDITERRANEAN: Transport.SEA_A, Waters.BLACK_SEA: Transport.SEA_A,
    Waters.RED_SEA: Transport.SEA_A, Waters.PERSIAN_GULF: Transport.SEA_A, Waters.NORTH_SEA: Transport.SEA_B,
    Waters.ENGLISH_CHANNEL: Transport.SEA_B,
}


def sea_area(rule_set: RuleSet, waters: Waters) -> Transport:
    """Which area a sea is in.

    The two rule sets differ: the Mediterranean is area B in EN 12195-1 and area A in the CTU Code. What neither names
    is area C.

    Source:
        EN_12195_1 (A: Baltic to Skagen; B: North Sea and Mediterranean; C: the rest), MSC_1498.

    Args:
        rule_set: EN 12195-1 or the CTU Code.
        waters: the sea on the route that is worst.

    Returns:
        The area, as a way of transport.

    Raises:
        OutOfRangeError: For a rule set that has no areas.

    Example:
        >>> sea_area(RuleSet.EN, Waters.MEDITERRANEAN), sea_area(RuleSet.CTU, Waters.MEDITERRANEAN)
        (<Transport.SEA_B: 'sea area B'>, <Transport.SEA_A: 'sea area A'>)
    """
    if rule_set not in (RuleSet.EN, RuleSet.CTU):
        raise OutOfRangeError("rules for a sea area", rule_set.value, "EN 12195-1 or the CTU Code", "MSC_1498")

    return (EN_AREAS if rule_set is RuleSet.EN else CTU_AREAS).get(waters, Transport.SEA_C)
