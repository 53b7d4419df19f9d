"""Working load limits of chain slings as the EN tables print them: the cell counts, not the product of factors.

The cells are rounded to preferred numbers and run from 3.6 % under to 2.0 % over leg factor × single leg (the endless
sling up to 4.2 % over); the sling's own tag comes first wherever it is lower.
"""

from collections.abc import Collection

from checklist_app.mechanics.errors import OutOfRangeError

STEEP_UP_TO_DEG, FLAT_UP_TO_DEG = 45.0, 60.0
# EN 818-4 grade 8, by nominal size [mm]: 1 leg; 2 legs to 45°, 45° to 60°; 3 or 4 legs to 45°, 45° to 60°; endless [t]
GRADE_8 = {
    6: (1.12, 1.60, 1.12, 2.36, 1.70, 1.80), 7: (1.50, 2.12, 1.50, 3.15, 2.24, 2.50),
    8: (2.00, 2.80, 2.00, 4.25, 3.00, 3.15), 10: (3.15, 4.25, 3.15, 6.70, 4.75, 5.00),
    13: (5.30, 7.50, 5.30, 11.20, 8.00, 8.50), 16: (8.00, 11.20, 8.00, 17.00, 11.80, 12.50),
    20: (12.50, 17.00, 12.50, 26.50, 19.00, 20.00), 22: (15.00, 21.20, 15.00, 31.50, 22.40, 23.60),
    26: (21.20, 30.00, 21.20, 45.00, 31.50, 33.50), 32: (31.50, 45.00, 31.50, 67.00, 47.50, 50.00),
}
# DGUV Information 209-021, grade 4: one leg straight, choked [t]
GRADE_4 = {8: (1.0, 0.8), 10: (1.6, 1.28), 13: (2.65, 2.12), 16: (4.0, 3.2), 20: (6.3, 5.04)}
COLUMN = {1: (0, 0), 2: (1, 2), 3: (3, 4), 4: (3, 4)}
ENDLESS = 5


def grade_8_wll_t(nominal_mm: int, legs: int, flatter_leg_deg: float) -> float:
    """What a grade 8 chain sling carries straight, by the table.

        WLL from the cell for size, legs and band of the angle from vertical

    Source:
        EN_818_4, WLL table.

    Args:
        nominal_mm: nominal size of the chain, as marked [mm].
        legs: legs that count, 1 to 4.
        flatter_leg_deg: angle from vertical of the flattest leg [°], 0 to 60.

    Returns:
        WLL of the sling [t].

    Raises:
        OutOfRangeError: For a size, a number of legs or an angle that the table does not have.

    Example:
        >>> grade_8_wll_t(10, 2, 30.0), grade_8_wll_t(10, 2, 50.0)
        (4.25, 3.15)
    """
    column = _column(legs, flatter_leg_deg)
    _in_table(nominal_mm, GRADE_8)

    return GRADE_8[nominal_mm][column]


def grade_8_endless_choked_wll_t(nominal_mm: int) -> float:
    """What an endless grade 8 chain sling carries choked, by the table.

        WLL from the cell for the size

    Source:
        EN_818_4, WLL table, endless sling, choke hitch.

    Args:
        nominal_mm: nominal size of the chain, as marked [mm].

    Returns:
        WLL [t].

    Raises:
        OutOfRangeError: For a size that the table does not have.

    Example:
        >>> grade_8_endless_choked_wll_t(13)
        8.5
    """
    _in_table(nominal_mm, GRADE_8)

    return GRADE_8[nominal_mm][ENDLESS]


def grade_4_wll_t(nominal_mm: int, choked: bool) -> float:
    """What a single grade 4 chain carries, by the table.

        WLL from the cell for the size, straight or choked

    Source:
        DGUV_209_021, grade 4 chain.

    Args:
        nominal_mm: nominal size of the chain, as marked [mm].
        choked: whether the chain bites on itself.

    Returns:
        WLL [t].

    Raises:
        OutOfRangeError: For a size that the table does not have.

    Example:
        >>> grade_4_wll_t(16, choked=False), grade_4_wll_t(16, choked=True)
        (4.0, 3.2)
    """
    _in_table(nominal_mm, GRADE_4)

    return GRADE_4[nominal_mm][1 if choked else 0]


def _in_table(nominal_mm: int, sizes: Collection[int]) -> None:
    if nominal_mm not in sizes:
        words = ", ".join(str(size) for size in sizes)
        raise OutOfRangeError("nominal size of the chain", nominal_mm, f"{words} mm", "EN_818_4")


def _column(legs: int, from_vertical_deg: float) -> int:
    if legs not in COLUMN:
        raise OutOfRangeError("number of legs", legs, "1 to 4", "EN_818_4")
    if not 0.0 <= from_vertical_deg <= FLAT_UP_TO_DEG:
        raise OutOfRangeError("angle of the flatter leg from vertical", from_vertical_deg, "0 to 60°", "EN_818_4")

    return COLUMN[legs][0 if from_vertical_deg <= STEEP_UP_TO_DEG else 1]
