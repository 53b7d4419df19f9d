"""From the breaking force of a leg to its working load limit: efficiency and working coefficient."""

from checklist_app.mechanics.errors import OutOfRangeError, required_positive
from checklist_app.mechanics.gravity import STANDARD_GRAVITY_M_S2
from checklist_app.mechanics.slings.kinds import RuleSet, SlingKind

SOURCE = "EN_13414_1"
EN_COEFFICIENT = {  # Directive 2006/42/EC, Annex I 4.1.2.5
    SlingKind.WIRE_ROPE: 5.0, SlingKind.CHAIN: 4.0, SlingKind.FLAT_WEBBING: 7.0, SlingKind.ROUNDSLING: 7.0,
}
US_COEFFICIENT = 5.0  # DOE-STD-1090: slings 5 to 1


def working_coefficient(kind: SlingKind, rule_set: RuleSet) -> float:
    """How many times the breaking force stands over the working load limit.

        EN: wire rope 5, chain 4, textile 7; US: 5

    Source:
        MACHINERY_DIRECTIVE, Annex I 4.1.2.5; DOE_1090 for slings in the US.

    Args:
        kind: what the sling is made as.
        rule_set: whose factor.

    Returns:
        Z [-].

    Example:
        >>> working_coefficient(SlingKind.ROUNDSLING, RuleSet.EN), working_coefficient(SlingKind.CHAIN, RuleSet.US)
        (7.0, 5.0)
    """
    return EN_COEFFICIENT[kind] if rule_set is RuleSet.EN else US_COEFFICIENT


def wll_from_breaking_force_t(breaking_force_kn: float, efficiency: float, coefficient: float) -> float:
    """What a leg carries by the breaking force in its certificate.

        WLL = F η / (Z g)

    Source:
        EN_13414_1, 5.2.4; MACHINERY_DIRECTIVE, Annex I 4.1.2.5.

    Args:
        breaking_force_kn: F, minimum breaking force as certified [kN], above 0.
        efficiency: η of the termination, or of the bend if that is worse [-], above 0 up to 1.
        coefficient: Z [-], 1 or more.

    Returns:
        WLL [t].

    Raises:
        OutOfRangeError: If an argument leaves its range.

    Example:
        >>> round(wll_from_breaking_force_t(63.012, 0.9, 5.0), 3)
        1.157
    """
    required_positive("minimum breaking force", breaking_force_kn, SOURCE)
    required_positive("efficiency", efficiency, SOURCE)
    if efficiency > 1.0:
        raise OutOfRangeError("efficiency", efficiency, "1 at most", SOURCE)
    if not coefficient >= 1.0:
        raise OutOfRangeError("working coefficient", coefficient, "1 or more", "MACHINERY_DIRECTIVE")

    return breaking_force_kn * efficiency / (coefficient * STANDARD_GRAVITY_M_S2)
