"""CSS Code, Annex 13, advanced calculation: what lashings on a ship must hold, and what they are rated at."""

from collections.abc import Sequence
from enum import Enum

from checklist_app.mechanics import exact
from checklist_app.mechanics.errors import OutOfRangeError, required_not_negative, required_positive
from checklist_app.mechanics.lashing.rule_sets import MOMENT_SHARE, RULES, RuleSet

SOURCE = "CSS_ANNEX_13_FORCES"
ADVANCED, IN_SPACE = 1.5, 1.35
STEEPEST_DEG, FLAT_BELOW_DEG = 90.0, 45.0


class Make(Enum):
    """What a lashing or fitting is, for its MSL."""

    STEEL_FITTING = "shackle, ring, deck eye or turnbuckle of mild steel"
    FIBRE_ROPE = "fibre rope"
    WEB = "web lashing"
    WIRE_ONCE = "wire rope, used once"
    WIRE_AGAIN = "wire rope, used again"
    STEEL_BAND = "steel band, used once"
    CHAIN = "chain"


MSL_SHARE = {
    Make.STEEL_FITTING: 0.50, Make.FIBRE_ROPE: 0.33, Make.WEB: 0.50, Make.WIRE_ONCE: 0.80, Make.WIRE_AGAIN: 0.30,
    Make.STEEL_BAND: 0.70, Make.CHAIN: 0.50,
}


def msl_kn(make: Make, breaking_kn: float) -> float:
    """Maximum securing load of a lashing or fitting.

        MSL = share of its make × breaking load

    Source:
        CSS_ANNEX_13_FORCES, section 4.

    Args:
        make: what it is.
        breaking_kn: breaking load [kN], above 0.

    Returns:
        MSL [kN].

    Raises:
        OutOfRangeError: If the breaking load is no number above 0.

    Example:
        >>> msl_kn(Make.WIRE_ONCE, 125.0)
        100.0
    """
    required_positive("breaking load", breaking_kn, SOURCE)
    return MSL_SHARE[make] * breaking_kn


def calculated_strength_kn(msl_of_weakest_kn: float, in_space: bool) -> float:
    """What counts of a lashing in a calculation.

        CS = MSL / 1.5;  MSL / 1.35 where the lashings' level angles are reckoned with

    Source:
        CSS_ANNEX_13_FORCES.

    Args:
        msl_of_weakest_kn: MSL of the weakest part in the chain [kN], above 0.
        in_space: whether level angles are reckoned with, as in space.

    Returns:
        CS [kN].

    Raises:
        OutOfRangeError: If the MSL is no number above 0.

    Example:
        >>> calculated_strength_kn(90.0, in_space=False)
        60.0
    """
    required_positive("MSL of the weakest part", msl_of_weakest_kn, SOURCE)
    return msl_of_weakest_kn / (IN_SPACE if in_space else ADVANCED)


def securing_factor(friction: float, angle_deg: float) -> float:
    """How much of its strength a lashing gives against sliding.

        f = μ sin α + cos α

    Source:
        CSS_ANNEX_13_FORCES.

    Args:
        friction: μ [-], 0 to 1.
        angle_deg: α, of the lashing from level [°], 0 to 90.

    Returns:
        f [-].

    Raises:
        OutOfRangeError: If one of them is outside.

    Example:
        >>> round(securing_factor(0.3, 40.0), 3)
        0.959
    """
    if not 0.0 <= friction <= 1.0:
        raise OutOfRangeError("friction", friction, "0 to 1", SOURCE)
    if not 0.0 <= angle_deg <= STEEPEST_DEG:
        raise OutOfRangeError("angle of the lashing from level", angle_deg, "0 to 90°", SOURCE)

    angle = angle_deg / exact.RAD_IN_DEG
    return friction * exact.sin(angle) + exact.cos(angle)


def transverse_have_kn(mass_t: float, friction: float, lashings: Sequence[tuple[float, float]]) -> float:
    """What holds a load on board against sliding crosswise, to be held against Fy.

        μ m g + Σ CS f

    Source:
        CSS_ANNEX_13_FORCES.

    Args:
        mass_t: m [t], above 0.
        friction: μ [-], 0 to 1.
        lashings: CS and angle from level of each on one side [kN, °].

    Returns:
        What holds [kN].

    Raises:
        OutOfRangeError: If a number is outside.

    Example:
        >>> round(transverse_have_kn(62.0, 0.3, [(60.0, 40.0)]), 1)
        240.0
    """
    return _have_kn(mass_t, 0.0, friction, lashings)


def longitudinal_have_kn(
    mass_t: float, upright_kn: float, friction: float, lashings: Sequence[tuple[float, float]]
) -> float:
    """What holds a load on board against sliding lengthways, to be held against Fx.

        μ (m g − Fz) + Σ CS f

    Source:
        CSS_ANNEX_13_MORE: from memory, stricter than the whole weight.

    Args:
        mass_t: m [t], above 0.
        upright_kn: Fz [kN], 0 or more.
        friction: μ [-], 0 to 1.
        lashings: CS and angle from level of each on one end [kN, °].

    Returns:
        What holds [kN].

    Raises:
        OutOfRangeError: If a number is outside.

    Example:
        >>> round(longitudinal_have_kn(62.0, 342.0, 0.3, []), 1)
        79.9
    """
    required_not_negative("upright force", upright_kn, SOURCE)
    return _have_kn(mass_t, upright_kn, friction, lashings)


def tipping_have_knm(mass_t: float, half_base_m: float, lashings: Sequence[tuple[float, float]]) -> float:
    """What holds a load on board against tipping crosswise, to be held against Fy × height.

        b m g + 0.9 Σ CS c

    Source:
        CSS_ANNEX_13_FORCES; the 0.9 is CSS_ANNEX_13_MORE, from memory, and takes away.

    Args:
        mass_t: m [t], above 0.
        half_base_m: b, tipping edge to centre of gravity, level [m], above 0.
        lashings: CS and its arm c about the tipping edge [kN, m].

    Returns:
        What holds [kN m].

    Raises:
        OutOfRangeError: If a number is none.

    Example:
        >>> round(tipping_have_knm(62.0, 2.0, []), 0)
        1216.0
    """
    required_positive("mass of the load", mass_t, SOURCE)
    required_positive("tipping edge to centre of gravity", half_base_m, SOURCE)
    total = half_base_m * mass_t * RULES[RuleSet.CSS].g_m_s2
    for strength_kn, arm_m in lashings:
        required_positive("calculated strength", strength_kn, SOURCE)
        required_not_negative("arm of a lashing", arm_m, SOURCE)
        total += MOMENT_SHARE * strength_kn * arm_m
    return total


def counts_against_tipping(to_deck_deg: float, from_athwart_deg: float) -> bool:
    """Whether a lashing counts against tipping crosswise: one that is flat and runs along the ship does not.

    Source:
        CSS_ANNEX_13_MORE: from memory, takes away. Annex 13 counts the level angle from athwartships.

    Args:
        to_deck_deg: angle to the deck [°], 0 to 90.
        from_athwart_deg: level angle from athwartships [°], 0 to 90.

    Returns:
        False below 45° to the deck together with more than 45° from athwartships.

    Raises:
        OutOfRangeError: If an angle is outside.

    Example:
        >>> counts_against_tipping(30.0, 60.0), counts_against_tipping(60.0, 60.0)
        (False, True)
    """
    for name, angle_deg in (("angle to the deck", to_deck_deg), ("angle from athwartships", from_athwart_deg)):
        if not 0.0 <= angle_deg <= STEEPEST_DEG:
            raise OutOfRangeError(name, angle_deg, "0 to 90°", SOURCE)

    return to_deck_deg >= FLAT_BELOW_DEG or from_athwart_deg <= FLAT_BELOW_DEG


def rule_of_thumb_kn(mass_t: float) -> float:
    """MSL that the lashings of each side must sum up to, where nothing is calculated.

        Σ MSL = m g on each side

    Source:
        CSS_ANNEX_13_FORCES, section 5.

    Args:
        mass_t: m [t], above 0.

    Returns:
        Sum of MSL on each side [kN].

    Raises:
        OutOfRangeError: If the mass is no number above 0.

    Example:
        >>> round(rule_of_thumb_kn(1.5), 1)
        14.7
    """
    required_positive("mass of the load", mass_t, SOURCE)
    return mass_t * RULES[RuleSet.CSS].g_m_s2


def _have_kn(mass_t: float, upright_kn: float, friction: float, lashings: Sequence[tuple[float, float]]) -> float:
    required_positive("mass of the load", mass_t, SOURCE)
    if not 0.0 <= friction <= 1.0:
        raise OutOfRangeError("friction", friction, "0 to 1", SOURCE)
    pressing_kn = mass_t * RULES[RuleSet.CSS].g_m_s2 - upright_kn
    if not pressing_kn > 0.0:
        raise OutOfRangeError("weight that remains on board", pressing_kn, "above 0", SOURCE)
    total = friction * pressing_kn
    for strength_kn, angle_deg in lashings:
        required_positive("calculated strength", strength_kn, SOURCE)
        total += strength_kn * securing_factor(friction, angle_deg)
    return total
