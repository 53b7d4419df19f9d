"""Angles of a lashing from its two ends, and whether what was measured agrees with them."""

from dataclasses import dataclass

from checklist_app.mechanics import exact
from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.vectors import Vec, length, less

SOURCE = "STATICS_LASHING"
STEEPEST_DEG = 90.0


@dataclass(frozen=True)
class Lie:
    """A lashing as it lies: length, shares of its pull, angle to the deck and from the vehicle's length.

    `along`, `across` and `down` are X/L, Y/L and Z/L, signed: forwards, to the left, downwards.
    """

    length_m: float
    along: float
    across: float
    down: float

    @property
    def to_deck_deg(self) -> float:
        """α, angle to the deck."""
        return exact.atan2_deg(self.down, exact.sqrt(self.along * self.along + self.across * self.across))

    @property
    def from_length_deg(self) -> float:
        """βx, level angle from the vehicle's length, 0 to 90°."""
        return exact.atan2_deg(abs(self.across), abs(self.along))


def lie(at: Vec, anchor: Vec) -> Lie:
    """How a lashing lies between where it is attached and its anchor.

    Source:
        STATICS_LASHING; X/L = cos α cos βx, Y/L = cos α cos βy, Z/L = sin α of EN_12195_1.

    Args:
        at: attachment on the load [m].
        anchor: on the deck [m].

    Returns:
        Length, shares and angles.

    Raises:
        OutOfRangeError: If it has no length, or the numbers are none.

    Example:
        >>> way = lie(Vec(0.45, 0.3, 1.1), Vec(1.2, 1.1, 0.0))
        >>> round(way.length_m, 4), round(way.along, 4), round(way.across, 4), round(way.down, 4)
        (1.5532, 0.4829, 0.5151, 0.7082)
    """
    reach = less(anchor, at)
    far = exact.let("length_of_lashing", length(reach))
    if not 0.0 < far < float("inf"):
        raise OutOfRangeError("length of the lashing", far, "two ends apart", SOURCE)

    along, across, down = (
        exact.let(f"share_{way}", part / far)
        for way, part in (("along", reach[0]), ("across", reach[1]), ("down", -reach[2]))
    )

    return Lie(far, along, across, down)


def shares_of_angles(to_deck_deg: float, from_length_deg: float) -> tuple[float, ...]:
    """Shares of a lashing's pull along, across and down, from angles that were measured.

        X/L = cos α cos βx,  Y/L = cos α sin βx,  Z/L = sin α

    Source:
        EN_12195_1.

    Args:
        to_deck_deg: α [°], 0 to 90.
        from_length_deg: βx, from the vehicle's length [°], 0 to 90.

    Returns:
        X/L, Y/L, Z/L [-].

    Raises:
        OutOfRangeError: If an angle is outside.

    Example:
        >>> [round(share, 4) for share in shares_of_angles(35.0, 40.0)]
        [0.6275, 0.5265, 0.5736]
    """
    for name, angle_deg in (("angle to the deck", to_deck_deg), ("angle from the vehicle's length", from_length_deg)):
        if not 0.0 <= angle_deg <= STEEPEST_DEG:
            raise OutOfRangeError(name, angle_deg, "0 to 90°", SOURCE)
    steep, wide = to_deck_deg / exact.RAD_IN_DEG, from_length_deg / exact.RAD_IN_DEG
    level = exact.cos(steep)

    return level * exact.cos(wide), level * exact.sin(wide), exact.sin(steep)


def angles_agree(computed_deg: float, measured_deg: float, within_deg: float) -> bool:
    """Whether an angle as measured agrees with the two ends of the lashing.

    Source:
        HOUSE_SETTING: by how much they may differ.

    Args:
        computed_deg: from the ends [°].
        measured_deg: with the instrument [°].
        within_deg: may differ by this [°], above 0.

    Returns:
        True if they do; what is no number does not.

    Raises:
        OutOfRangeError: If the tolerance is no number above 0.

    Example:
        >>> angles_agree(45.1, 47.0, within_deg=3.0)
        True
    """
    if not 0.0 < within_deg <= STEEPEST_DEG:
        raise OutOfRangeError("by how much angles may differ", within_deg, "above 0, 90° at most", "HOUSE_SETTING")

    return abs(computed_deg - measured_deg) <= within_deg
