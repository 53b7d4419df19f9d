"""Working load limits of wire rope slings as EN 13414-1 prints them; a fibre core carries less than a steel core."""

from collections.abc import Mapping

from checklist_app.mechanics.errors import OutOfRangeError

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
# EN 13414-1 fibre core, as a sling maker prints it, the same columns [t]
FIBRE_CORE = {
    8: (0.70, 0.95, 0.70, 1.5, 1.05, 1.1), 9: (0.85, 1.2, 0.85, 1.8, 1.3, 1.4), 10: (1.05, 1.5, 1.05, 2.25, 1.6, 1.7),
    11: (1.3, 1.8, 1.3, 2.7, 1.95, 2.12), 12: (1.55, 2.12, 1.55, 3.3, 2.3, 2.5), 13: (1.8, 2.5, 1.8, 3.85, 2.7, 2.9),
    14: (2.12, 3.0, 2.12, 4.35, 3.15, 3.3), 16: (2.7, 3.85, 2.7, 5.65, 4.2, 4.35), 18: (3.4, 4.8, 3.4, 7.2, 5.2, 5.65),
    20: (4.35, 6.0, 4.35, 9.0, 6.5, 6.9), 22: (5.2, 7.2, 5.2, 11.0, 7.8, 8.4), 24: (6.3, 8.8, 6.3, 13.5, 9.4, 10.0),
    26: (7.2, 10.0, 7.2, 15.0, 11.0, 11.8), 28: (8.4, 11.8, 8.4, 18.0, 12.5, 13.5),
    32: (11.0, 15.0, 11.0, 23.5, 16.5, 18.0),
}
COLUMN = {1: (0, 0), 2: (1, 2), 3: (3, 4), 4: (3, 4)}
ENDLESS = 5


def wire_rope_wll_t(rope_mm: int, legs: int, flatter_leg_deg: float) -> float:
    """What a wire rope sling with steel core and ferrule-secured eyes carries straight, by the table.

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
    return _row(TABLE_4, rope_mm)[_column(legs, flatter_leg_deg)]


def fibre_core_rope_wll_t(rope_mm: int, legs: int, flatter_leg_deg: float) -> float:
    """What a wire rope sling with fibre core and ferrule-secured eyes carries straight, by the table.

        WLL from the cell for rope diameter, legs and band of the angle from vertical

    Source:
        ROPE_FIBRE_CORE.

    Args:
        rope_mm: nominal diameter of the rope [mm].
        legs: legs that count, 1 to 4.
        flatter_leg_deg: angle from vertical of the flattest leg [°], 0 to 60.

    Returns:
        WLL of the sling [t].

    Raises:
        OutOfRangeError: For a diameter, a number of legs or an angle that the table does not have.

    Example:
        >>> fibre_core_rope_wll_t(10, 1, 0.0), fibre_core_rope_wll_t(16, 2, 45.0)
        (1.05, 3.85)
    """
    return _row(FIBRE_CORE, rope_mm)[_column(legs, flatter_leg_deg)]


def wire_rope_endless_choked_wll_t(rope_mm: int) -> float:
    """What an endless wire rope sling with steel core carries choked, by the table.

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
    return _row(TABLE_4, rope_mm)[ENDLESS]


def _row(table: Mapping[int, tuple[float, ...]], rope_mm: int) -> tuple[float, ...]:
    if rope_mm not in table:
        sizes = ", ".join(str(size) for size in table)
        raise OutOfRangeError("diameter of the rope", rope_mm, f"{sizes} mm", SOURCE)

    return table[rope_mm]


def _column(legs: int, from_vertical_deg: float) -> int:
    if legs not in COLUMN:
        raise OutOfRangeError("number of legs", legs, "1 to 4", SOURCE)
    if not 0.0 <= from_vertical_deg <= FLAT_UP_TO_DEG:
        raise OutOfRangeError("angle of the flatter leg from vertical", from_vertical_deg, "0 to 60°", SOURCE)

    return COLUMN[legs][0 if from_vertical_deg <= STEEP_UP_TO_DEG else 1]
