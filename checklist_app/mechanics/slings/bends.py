"""What a bend over a small body takes from a wire rope, and how it stands to the loss in the termination.

The two losses lie at different places of the rope: the worse counts, never their product.
"""

from enum import Enum

from checklist_app.mechanics import exact
from checklist_app.mechanics.errors import OutOfRangeError, required_positive

SOURCE = "ND_0027"
LEAST_RATIO = 1.0  # 0027/ND: no contact diameter below the rope's own on the body of a sling


class Termination(Enum):
    """How the end of the rope is made."""

    HAND_SPLICE = "hand splice"
    FERRULE = "steel ferrule"
    RESIN_SOCKET = "resin socket"
    SWAGED = "swaged end"


TERMINATION_FACTOR = {  # 0027/ND, termination factors
    Termination.HAND_SPLICE: 1.25, Termination.FERRULE: 1.12, Termination.RESIN_SOCKET: 1.0, Termination.SWAGED: 1.0,
}
# what the WLL on a label already contains: EN 13414-1 rates a ferrule with 0.9, the rest as above
IN_THE_LABEL = {
    Termination.HAND_SPLICE: 0.8, Termination.FERRULE: 0.9, Termination.RESIN_SOCKET: 1.0, Termination.SWAGED: 1.0,
}
FULL_BASKET_RATIO = {Termination.HAND_SPLICE: 15.0, Termination.FERRULE: 25.0}  # US tables: hand-tucked, mechanical


def bend_efficiency(contact_mm: float, rope_mm: float) -> float:
    """Share of its strength that a wire rope keeps over a bend.

        η = 1 − 0.5 / √(D/d)

    Source:
        ND_0027, bending factors (after IMCA M 179).

    Args:
        contact_mm: D, diameter of what it bends over [mm], at least d.
        rope_mm: d, diameter of the rope [mm], above 0.

    Returns:
        η [-].

    Raises:
        OutOfRangeError: Below D/d = 1, or if a diameter is no number above 0.

    Example:
        >>> bend_efficiency(400.0, 16.0)
        0.9
    """
    return 1.0 - 0.5 / exact.sqrt(_ratio(contact_mm, rope_mm))


def termination_efficiency(termination: Termination) -> float:
    """Share of its strength that a wire rope keeps in its termination.

        η = 1 / factor: hand splice 1.25, steel ferrule 1.12, resin socket and swaged end 1.00

    Source:
        ND_0027, termination factors.

    Args:
        termination: how the end is made.

    Returns:
        η [-].

    Example:
        >>> termination_efficiency(Termination.HAND_SPLICE)
        0.8
    """
    return 1.0 / TERMINATION_FACTOR[termination]


def worse_efficiency(termination: Termination, contact_mm: float, rope_mm: float) -> float:
    """Share of the breaking force that counts where a rope has a termination and a bend.

        η = min(η_bend, η_termination)

    Source:
        ND_0027: bend and termination are not multiplied, the worse is taken.

    Args:
        termination: how the end is made.
        contact_mm: D, diameter of what it bends over [mm], at least d.
        rope_mm: d, diameter of the rope [mm], above 0.

    Returns:
        η, on the breaking force [-].

    Raises:
        OutOfRangeError: Below D/d = 1, or if a diameter is no number above 0.

    Example:
        >>> worse_efficiency(Termination.HAND_SPLICE, 400.0, 16.0), worse_efficiency(Termination.SWAGED, 16.0, 16.0)
        (0.8, 0.5)
    """
    bent, ended = bend_efficiency(contact_mm, rope_mm), termination_efficiency(termination)

    return bent if bent < ended else ended


def labelled_bend_factor(termination: Termination, contact_mm: float, rope_mm: float) -> float:
    """What a bend leaves of a WLL on a label that already contains the loss in the termination.

        η_bend / η in the label, 1 at most; in the label: hand splice 0.8, ferrule 0.9, socket and swaged end 1.0

    Source:
        ND_0027 for the losses and that the worse counts; EN_13414_1 rates the rope with its ferrule, 0.9.

    Args:
        termination: how the end is made.
        contact_mm: D, diameter of what it bends over [mm], at least d.
        rope_mm: d, diameter of the rope [mm], above 0.

    Returns:
        Share of the WLL on the label [-].

    Raises:
        OutOfRangeError: Below D/d = 1, or if a diameter is no number above 0.

    Example:
        >>> labelled_bend_factor(Termination.FERRULE, 400.0, 16.0)
        1.0
        >>> round(labelled_bend_factor(Termination.FERRULE, 16.0, 16.0), 3)
        0.556
    """
    left = bend_efficiency(contact_mm, rope_mm) / IN_THE_LABEL[termination]

    return left if left < 1.0 else 1.0


def us_basket_bend_factor(termination: Termination, contact_mm: float, rope_mm: float) -> float:
    """What a bend leaves of a US basket rating of a wire rope sling.

        1 from D/d = 25 (mechanical splice) or 15 (hand-tucked), below 1 − 0.5 / √(D/d)

    Source:
        US_BASKET_RATIO for the ratios, ND_0027 for the loss below them.

    Args:
        termination: hand splice or ferrule; the tables have no other.
        contact_mm: D, diameter of what it bends over [mm], at least d.
        rope_mm: d, diameter of the rope [mm], above 0.

    Returns:
        Share of the basket rating [-].

    Raises:
        OutOfRangeError: Below D/d = 1, for another termination, or if a diameter is no number above 0.

    Example:
        >>> us_basket_bend_factor(Termination.FERRULE, 250.0, 10.0)
        1.0
        >>> us_basket_bend_factor(Termination.FERRULE, 40.0, 10.0)
        0.75
    """
    if termination not in FULL_BASKET_RATIO:
        raise OutOfRangeError("termination", termination.value, "hand splice or steel ferrule", "US_BASKET_RATIO")
    if _ratio(contact_mm, rope_mm) >= FULL_BASKET_RATIO[termination]:
        return 1.0

    return bend_efficiency(contact_mm, rope_mm)


def _ratio(contact_mm: float, rope_mm: float) -> float:
    required_positive("diameter of the rope", rope_mm, SOURCE)
    required_positive("diameter it bends over", contact_mm, SOURCE)
    if contact_mm < LEAST_RATIO * rope_mm:
        raise OutOfRangeError("diameter it bends over", contact_mm, f"{rope_mm:.4g} mm or more, the rope's own", SOURCE)

    return contact_mm / rope_mm
