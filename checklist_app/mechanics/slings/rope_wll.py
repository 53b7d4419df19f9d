"""Working load limits of wire rope slings as EN 13414-1 prints them, and of a rope by its breaking force."""

from checklist_app.mechanics.errors import OutOfRangeError, required_positive
from checklist_app.mechanics.gravity import STANDARD_GRAVITY_M_S2
from checklist_app.mechanics.slings.kinds import RuleSet, SlingKind

SOURCE = "EN_13414_1"
STEEP_UP_TO_DEG, FLAT_UP_TO_DEG = 45.0, 60.0
# EN 13414-1:2003 Table 4, steel core, ferrule-secured eyes, by rope diameter [mm]: 1 leg; 2 legs to 45°, 45° to 60°;
# 3 or 4 legs to 45°, 45° to 60°; endless, choked [t]
TABLE_4 = {
    8: (0.750, 1.05, 0.750, 1.55, 1.10, 1.20), 9: (0.950, 1.30, 0.950, 2.00, 1.40, 1.50),
    10: (1.15, 1.60, 1.15, 2.40, 1.70, 1.85), 11: (1.40, 2.00, 1.40, 3.00, 2.12, 2.25),
    12: (1.70, 2.30, 1.70, 3.55, 2.50, 2.70), 13: (2.00, 2.80, 2.00, 4.15, 3.00, 3.15),
    14: (2.25, 3.15, 2.25, 4.80, 3.40, 3.70), 16: (3.00, 4.20, 3.00, 6.30, 4.50, 4.80),
    18: (3.70, 5.20, 3.70, 7.80, 5.65, 6.00), 20: (4.60, 6.50, 4.60, 9.80, 6.90, 7.35),
    22: (5.65, 7.80, 5.65, 11.8, 8.40, 9.00), 24: (6.70, 9.40, 6.70, 14.0, 10.0, 10.6),
    26: (7.80, 11.0, 7.80, 16.5, 11.5, 12.5), 28: (9.00, 12.5, 9.00, 19.0, 13.5, 14.5),
    32: (11.8, 16.5, 11.8, 25.0, 17.5, 19.0), 36: (15.0, 21.0, 15.0, 31.5, 22.5, 23.5),
    40: (18.5, 26.0, 18.5, 39.0, 28.0, 30.0),
}
COLUMN = {1: (0, 0), 2: (1, 2), 3: (3, 4), 4: (3, 4)}
ENDLESS = 5
EN_COEFFICIENT = {  # Directive 2006/42/EC, Annex I 4.1.2.5
    SlingKind.WIRE_ROPE: 5.0, SlingKind.CHAIN: 4.0, SlingKind.FLAT_WEBBING: 7.0, SlingKind.ROUNDSLING: 7.0,
}
US_COEFFICIENT = 5.0  # DOE-STD-1090: slings 5 to 1


def wire_rope_wll_t(rope_mm: int, legs: int, flatter_leg_deg: float) -> float:
    """What a wire rope sling with ferrule-secured eyes carries straight, by the table.

        WLL from the cell for rope diameter, legs and band of the angle from vertical

    Source:
        EN_13414_1, Table 4; single legs on soft eyes over bearing points of at least twice the rope diameter.

    Args:
        rope_mm: nominal diameter of the rope [mm].
        legs: legs that count, 1 to 4.
        flatter_leg_deg: angle from vertical of the flattest leg [°], 0 to 60.

    Returns:
        WLL of the sling [t].

    Raises:
        OutOfRangeError: For a diameter, a number of legs or an angle that the table does not have.

    Example:
        >>> wire_rope_wll_t(10, 1, 0.0), wire_rope_wll_t(16, 4, 50.0)
        (1.15, 4.5)
    """
    if legs not in COLUMN:
        raise OutOfRangeError("number of legs", legs, "1 to 4", SOURCE)
    if not 0.0 <= flatter_leg_deg <= FLAT_UP_TO_DEG:
        raise OutOfRangeError("angle of the flatter leg from vertical", flatter_leg_deg, "0 to 60°", SOURCE)

    return _row(rope_mm)[COLUMN[legs][0 if flatter_leg_deg <= STEEP_UP_TO_DEG else 1]]


def wire_rope_endless_choked_wll_t(rope_mm: int) -> float:
    """What an endless wire rope sling carries choked, by the table.

        WLL from the cell for the rope diameter

    Source:
        EN_13414_1, Table 4, endless sling.

    Args:
        rope_mm: nominal diameter of the rope [mm].

    Returns:
        WLL [t].

    Raises:
        OutOfRangeError: For a diameter that the table does not have.

    Example:
        >>> wire_rope_endless_choked_wll_t(20)
        7.35
    """
    return _row(rope_mm)[ENDLESS]


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


def _row(rope_mm: int) -> tuple[float, ...]:
    if rope_mm not in TABLE_4:
        sizes = ", ".join(str(size) for size in TABLE_4)
        raise OutOfRangeError("diameter of the rope", rope_mm, f"{sizes} mm", SOURCE)

    return TABLE_4[rope_mm]
