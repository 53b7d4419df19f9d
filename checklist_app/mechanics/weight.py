"""What the hoist has to carry: the load and everything hung between it and the hook."""

from checklist_app.mechanics.errors import required_not_negative, required_positive
from checklist_app.mechanics.gravity import STANDARD_GRAVITY_M_S2

KG_IN_T = 1000.0
N_IN_KN = 1000.0


def gross_mass_kg(load_mass_kg: float, rigging_mass_kg: float) -> float:
    """Mass that hangs on the hook.

        m = m_load + m_rigging

    Source:
        ND_0027, static hook load = design weight + rigging weight; USACE_16_3, lines of the load.

    Args:
        load_mass_kg: mass of the load [kg], above 0.
        rigging_mass_kg: slings, fittings, load cell [kg], 0 or more.

    Returns:
        Mass on the hook [kg].

    Raises:
        OutOfRangeError: If the load has no mass or the rigging a negative one.

    Example:
        >>> gross_mass_kg(4500.0, 350.0)
        4850.0
    """
    required_positive("mass of the load", load_mass_kg, "ND_0027")
    required_not_negative("mass of the rigging", rigging_mass_kg, "ND_0027")

    return load_mass_kg + rigging_mass_kg


def gross_load_t(mass_kg: float, dynamic_factor: float) -> float:
    """Load as the plates count it: in tonnes, with the dynamic factor.

        W = m φ / 1000

    Source:
        ND_0027, dynamic hook load = static hook load × DAF.

    Args:
        mass_kg: mass on the hook [kg], above 0.
        dynamic_factor: φ [-], 1 or more; 1.0 in normal hoisting on a rated WLL, which contains it.

    Returns:
        Load [t].

    Raises:
        OutOfRangeError: If an argument leaves its range.

    Example:
        >>> round(gross_load_t(4850.0, 1.10), 3)
        5.335
    """
    required_positive("mass on the hook", mass_kg, "ND_0027")
    required_not_negative("dynamic factor above 1", dynamic_factor - 1.0, "ND_0027")

    return mass_kg * dynamic_factor / KG_IN_T


def weight_kn(mass_t: float) -> float:
    """Force with which a mass hangs.

        W = m g

    Source:
        BIPM_SI_BROCHURE, conventional value of g, 9.80665 m/s².

    Args:
        mass_t: m [t], above 0.

    Returns:
        W [kN].

    Raises:
        OutOfRangeError: If the mass is no number above 0.

    Example:
        >>> weight_kn(1.0)
        9.80665
    """
    required_positive("mass", mass_t, "BIPM_SI_BROCHURE")

    return mass_t * STANDARD_GRAVITY_M_S2
