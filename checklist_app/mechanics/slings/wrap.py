"""What friction can hold where a sling goes round something: an upper limit, never a hold to rely on."""

from enum import Enum

from checklist_app.mechanics import exact
from checklist_app.mechanics.errors import OutOfRangeError, required_not_negative, required_positive

SOURCE = "STATICS_WRAP"
HALF = 0.5


class Stop(Enum):
    """What keeps a noose from sliding down an upright load."""

    NONE = "nothing but friction"
    COLLAR = "a collar below the noose"
    SHOULDER = "a shoulder below the noose"
    LUG = "a lug below the noose"


def capstan_ratio(coefficient: float, wrap_deg: float) -> float:
    """Most that the pulls at the two ends of a wrap can differ before it slides.

        T1 / T2 = e^(μ β)

    Source:
        STATICS_WRAP (Euler, Eytelwein).

    Args:
        coefficient: μ [-], 0 or more.
        wrap_deg: β, angle of the wrap [°], 0 or more.

    Returns:
        T1 / T2 [-].

    Raises:
        OutOfRangeError: If an argument is no number of 0 or more.

    Example:
        >>> round(capstan_ratio(0.25, 900.0), 3)
        50.754
    """
    return exact.exp(_grip(coefficient, wrap_deg))


def basket_roll_couple_knm(weight_kn: float, across_m: float, coefficient: float) -> float:
    """Couple at which a round body begins to roll in a single basket with upright parts.

        M = (W D / 2) tanh(μ π / 2)

    Source:
        STATICS_WRAP. At μ = 0.15 no more than 0.116 W D: two baskets, or chokes.

    Args:
        weight_kn: W, weight in the basket [kN], above 0.
        across_m: D, distance between the two upright parts [m], above 0.
        coefficient: μ [-], 0 or more.

    Returns:
        M [kNm].

    Raises:
        OutOfRangeError: If an argument leaves its range.

    Example:
        >>> round(basket_roll_couple_knm(10.0, 1.0, 0.15), 3)
        1.157
    """
    required_positive("weight in the basket", weight_kn, SOURCE)
    required_positive("distance between the parts of the basket", across_m, SOURCE)

    ratio = capstan_ratio(coefficient, 180.0)
    return HALF * weight_kn * across_m * ((ratio - 1.0) / (ratio + 1.0))


def noose_hold_even_kn(tension_kn: float, coefficient: float, wrap_deg: float) -> float:
    """Most that friction could hold along the body if the noose kept its full pull all the way round.

        F = μ T β

    Source:
        STATICS_WRAP: a necessary value, not a sufficient one.

    Args:
        tension_kn: T, pull in the leg [kN], 0 or more.
        coefficient: μ [-], 0 or more.
        wrap_deg: β, how far the noose goes round [°], 0 or more.

    Returns:
        F [kN].

    Raises:
        OutOfRangeError: If an argument is no number of 0 or more.

    Example:
        >>> round(noose_hold_even_kn(10.0, 0.15, 270.0), 3)
        7.069
    """
    required_not_negative("pull in the leg", tension_kn, SOURCE)

    return tension_kn * _grip(coefficient, wrap_deg)


def noose_hold_kn(tension_kn: float, coefficient: float, wrap_deg: float) -> float:
    """What friction can hold along the body as the pull decays round the noose: less than the pull, at any friction.

        F = T (1 − e^(−μ β)) < T

    Source:
        STATICS_WRAP. Therefore a noose on a smooth upright body is never secured by friction: `choke_holds_upright`.

    Args:
        tension_kn: T, pull in the leg [kN], 0 or more.
        coefficient: μ [-], 0 or more.
        wrap_deg: β, how far the noose goes round [°], 0 or more.

    Returns:
        F [kN].

    Raises:
        OutOfRangeError: If an argument is no number of 0 or more.

    Example:
        >>> round(noose_hold_kn(10.0, 0.15, 270.0), 3)
        5.068
    """
    required_not_negative("pull in the leg", tension_kn, SOURCE)

    return tension_kn * (1.0 - exact.exp(-_grip(coefficient, wrap_deg)))


def choke_holds_upright(stop: Stop) -> bool:
    """Whether a choked sling may carry a body along its axis.

        only onto a collar, a shoulder or a lug

    Source:
        STATICS_WRAP: no friction can be shown to hold a smooth body in a noose.

    Args:
        stop: what the noose bears on from below.

    Returns:
        True with something to bear on.

    Example:
        >>> choke_holds_upright(Stop.NONE), choke_holds_upright(Stop.COLLAR)
        (False, True)
    """
    return stop is not Stop.NONE


def _grip(coefficient: float, wrap_deg: float) -> float:
    required_not_negative("friction", coefficient, SOURCE)
    required_not_negative("angle of the wrap", wrap_deg, SOURCE)
    grip = coefficient * (wrap_deg / exact.RAD_IN_DEG)
    if grip > exact.EXP_RANGE:
        raise OutOfRangeError("friction times angle of the wrap", grip, f"{exact.EXP_RANGE:.0f} at most", SOURCE)

    return grip
