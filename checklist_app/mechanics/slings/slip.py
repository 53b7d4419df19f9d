"""Whether a sling stays where it lies: friction, and the friction that leaning legs and a tilted load need.

A friction is taken by name or measured, never assumed. The tables give webbing on steel no more than steel on steel:
that webbing grips and chain slides is experience without a number, and no credit.
"""

from enum import Enum

from checklist_app.mechanics import exact
from checklist_app.mechanics.errors import OutOfRangeError

SOURCE = "STATICS_SLIP"


class Contact(Enum):
    """What slides on what."""

    STEEL_ON_STEEL = "steel chain, rope or part on steel"
    WEBBING_ON_STEEL = "webbing or roundsling on steel"
    STEEL_ON_TIMBER = "steel on sawn timber"


class Face(Enum):
    """What lies between."""

    DRY_AND_CLEAN = "dry and swept clean"
    OIL_OR_WATER = "oil, grease or water"


PUBLISHED = {
    Contact.STEEL_ON_STEEL: 0.1,  # from memory, below the 0.2 of the CTU Code for smooth metal on smooth metal
    Contact.WEBBING_ON_STEEL: 0.1,  # none published; the house takes it as steel on steel
    Contact.STEEL_ON_TIMBER: 0.3,  # CSS Code, timber beams under steel
}
SLIPPERY = 0.0
MOST_MEASURED = 1.0
STEEPEST_DEG = 90.0


def friction_coefficient(contact: Contact, face: Face) -> float:
    """Friction that may be reckoned with where none was measured.

        steel or webbing on dry clean steel 0.1, steel on dry clean timber 0.3, anything oily or wet 0

    Source:
        CSS_ANNEX_13 (steel dry 0.1, wet 0: from memory, stricter than the 0.2 of CTU_CODE), CSS_TIMBER. No value for
        webbing on steel was found: 0.1 is a HOUSE_SETTING, no more than steel on steel.

    Args:
        contact: what slides on what.
        face: what lies between.

    Returns:
        μ [-].

    Example:
        >>> friction_coefficient(Contact.WEBBING_ON_STEEL, Face.DRY_AND_CLEAN)
        0.1
    """
    return SLIPPERY if face is Face.OIL_OR_WATER else PUBLISHED[contact]


def measured_friction(coefficient: float) -> float:
    """A friction that was measured on these very faces, with its record.

        μ as measured

    Source:
        FRICTION_MEASURED.

    Args:
        coefficient: lowest of the readings [-], above 0 up to 1.

    Returns:
        μ [-].

    Raises:
        OutOfRangeError: If it is no number above 0 up to 1.

    Example:
        >>> measured_friction(0.25)
        0.25
    """
    if not 0.0 < coefficient <= MOST_MEASURED:
        raise OutOfRangeError("measured friction", coefficient, "above 0, 1 at most", "FRICTION_MEASURED")

    return coefficient


def friction_needed(lean_deg: float, slope_deg: float) -> float:
    """Friction that keeps a basket or noose from sliding along a smooth load, legs to one hook.

        μ = tan(b + |c|)

    Source:
        STATICS_SLIP: tan of the angle between the leg and the normal of the load's axis; of the two slings, whose
        angles are b − c and b + c, the worse. A level load with legs at 30° already needs 0.58: CCOHS_HITCHES calls
        60° from the load enough against slipping, and is not followed on a smooth one.

    Args:
        lean_deg: b, lean of the leg along the load, from vertical [°], 0 or more.
        slope_deg: c, slope of the load's axis [°], either way.

    Returns:
        μ needed [-].

    Raises:
        OutOfRangeError: If b + |c| is no number from 0 to below 90.

    Example:
        >>> round(friction_needed(30.0, 0.0), 2), round(friction_needed(10.0, -5.0), 3)
        (0.58, 0.268)
    """
    angle_deg = lean_deg + abs(slope_deg)
    if not (lean_deg >= 0.0 and angle_deg < STEEPEST_DEG):
        raise OutOfRangeError("lean of the leg plus slope of the load", angle_deg, "0 to below 90°", SOURCE)

    angle = angle_deg / exact.RAD_IN_DEG
    return exact.sin(angle) / exact.cos(angle)


def slides_from_deg(coefficient: float) -> float:
    """Slope at which something lying free begins to slide.

        angle = atan μ

    Source:
        STATICS_SLIP.

    Args:
        coefficient: μ [-], 0 or more.

    Returns:
        Slope [°].

    Raises:
        OutOfRangeError: If the friction is no number of 0 or more.

    Example:
        >>> round(slides_from_deg(0.1), 4)
        5.7106
    """
    if not 0.0 <= coefficient < float("inf"):
        raise OutOfRangeError("friction", coefficient, "a number of 0 or more", SOURCE)

    return exact.atan2_deg(coefficient, 1.0)
