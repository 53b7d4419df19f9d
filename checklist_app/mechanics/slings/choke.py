"""What the angle of choke takes from a choker rating: steps, the stricter table for textile slings.

The angle of choke is the angle at the nip between the leg and the noose, none of the other angles of a lift. A load
that hangs free makes about 135° by itself; pulled down, or turned in the noose, it makes less.
"""

from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.slings.kinds import SlingKind

STRAIGHT_DEG = 180.0
HANGS_FREE_DEG = 135.0
FULL_ABOVE_DEG = 120.0  # exactly 120° counts as the lower step: one label says "90-120", another "120 and over"
# wire rope, chain and webbing: at least this angle, share of the choker rating
STEPS = ((90.0, 0.87), (60.0, 0.74), (30.0, 0.62), (0.0, 0.49))
# roundslings: above this angle
ROUNDSLING_STEPS = ((105.0, 0.82), (90.0, 0.71), (60.0, 0.58))
ROUNDSLING_LEAST = 0.50


def choke_angle_factor(kind: SlingKind, angle_of_choke_deg: float) -> float:
    """What is left of the choker rating at an angle of choke.

        wire rope, chain: over 120° 1.0, 90° to 120° 0.87, 60° to 89° 0.74, 30° to 59° 0.62, below 0.49;
        textile: the lower of that and over 120° 1.0, 105° to 120° 0.82, 90° to 105° 0.71, 60° to 90° 0.58, below 0.50

    Source:
        US_CHOKE_ANGLE; ROUNDSLING_CHOKE_ANGLE. EN 1492 has no such table: it is applied under both rule sets. A maker
        of chain may ask for more than 120°; that stands on its tag or in its instruction.

    Args:
        kind: what the sling is made as.
        angle_of_choke_deg: at the nip [°], 0 to 180.

    Returns:
        Share of the choker rating [-].

    Raises:
        OutOfRangeError: If the angle is no number of 0 to 180.

    Example:
        >>> choke_angle_factor(SlingKind.WIRE_ROPE, 120.0), choke_angle_factor(SlingKind.ROUNDSLING, 100.0)
        (0.87, 0.71)
    """
    if not 0.0 <= angle_of_choke_deg <= STRAIGHT_DEG:
        raise OutOfRangeError("angle of choke", angle_of_choke_deg, "0 to 180°", "US_CHOKE_ANGLE")
    if angle_of_choke_deg > FULL_ABOVE_DEG:
        return 1.0

    general = next(share for at_least_deg, share in STEPS if angle_of_choke_deg >= at_least_deg)
    if not kind.is_textile:
        return general
    stricter = (share for above_deg, share in ROUNDSLING_STEPS if angle_of_choke_deg > above_deg)
    return min(general, next(stricter, ROUNDSLING_LEAST))


def choke_angle_up_to_deg() -> float:
    """A choke wider than this is not stable: a caution.

        angle of choke ≤ 135°

    Source:
        US_CHOKER_NOTE: a load that hangs free makes about 135°; more is not recommended.

    Returns:
        Angle of choke [°].

    Example:
        >>> choke_angle_up_to_deg()
        135.0
    """
    return HANGS_FREE_DEG
