"""Rated loads of US grade 80 and 100 chain slings as printed, in pounds: columns at 60°, 45° and 30° from level.

An angle between two columns takes the next flatter one: a table is a step.
"""

from collections.abc import Mapping

from checklist_app.mechanics.errors import OutOfRangeError

SOURCE = "US_GRADE_80"
KG_IN_LB = 0.45359237
COLUMN_DEG = (60.0, 45.0, 30.0)
# by size in inches (metric nominal): 1 leg; 2 legs at 60°, 45°, 30°; 3 or 4 legs at 60°, 45°, 30° [lb]
GRADE_80 = {
    "7/32": (2100, 3600, 3000, 2100, 5450, 4450, 3150), "9/32": (3500, 6100, 4900, 3500, 9100, 7400, 5200),
    "5/16": (4500, 7800, 6400, 4500, 11700, 9500, 6800), "3/8": (7100, 12300, 10000, 7100, 18400, 15100, 10600),
    "1/2": (12000, 20800, 17000, 12000, 31200, 25500, 18000),
    "5/8": (18100, 31300, 25600, 18100, 47000, 38400, 27100),
    "3/4": (28300, 49000, 40000, 28300, 73500, 60000, 42400),
    "7/8": (34200, 59200, 48400, 34200, 88900, 72500, 51300),
    "1": (47700, 82600, 67400, 47700, 123900, 101200, 71500),
}
GRADE_100 = {
    "9/32": (4300, 7400, 6100, 4300, 11200, 9100, 6400), "5/16": (5700, 9900, 8100, 5700, 14800, 12100, 8500),
    "3/8": (8800, 15200, 12400, 8800, 22900, 18700, 13200), "1/2": (15000, 26000, 21200, 15000, 39000, 31800, 22500),
    "5/8": (22600, 39100, 32000, 22600, 58700, 47900, 33900),
}
FIRST_COLUMN = {2: 1, 3: 4, 4: 4}


def grade_80_lb(size_in: str, legs: int, flatter_leg_deg: float) -> float:
    """What a US grade 80 chain sling carries straight, by the table.

        rated load from the cell for size, legs and the next flatter column

    Source:
        US_GRADE_80; US_FLATTEST for the end at 30°.

    Args:
        size_in: trade size of the chain, as marked, such as "3/8" [in].
        legs: legs that count, 1 to 4.
        flatter_leg_deg: angle of the flattest leg from the horizontal [°], 30 to 90.

    Returns:
        Rated load [lb].

    Raises:
        OutOfRangeError: For a size, a number of legs or an angle that the table does not have.

    Example:
        >>> grade_80_lb("3/8", 2, 60.0), grade_80_lb("3/8", 2, 59.0)
        (12300.0, 10000.0)
    """
    return _cell(GRADE_80, size_in, legs, flatter_leg_deg)


def grade_100_lb(size_in: str, legs: int, flatter_leg_deg: float) -> float:
    """What a US grade 100 chain sling carries straight, by the table.

        rated load from the cell for size, legs and the next flatter column

    Source:
        US_GRADE_100; US_FLATTEST for the end at 30°.

    Args:
        size_in: trade size of the chain, as marked, such as "3/8" [in].
        legs: legs that count, 1 to 4.
        flatter_leg_deg: angle of the flattest leg from the horizontal [°], 30 to 90.

    Returns:
        Rated load [lb].

    Raises:
        OutOfRangeError: For a size, a number of legs or an angle that the table does not have.

    Example:
        >>> grade_100_lb("3/8", 2, 60.0)
        15200.0
    """
    return _cell(GRADE_100, size_in, legs, flatter_leg_deg)


def tonnes_of_lb(mass_lb: float) -> float:
    """Pounds as tonnes.

        m [t] = 0.000 453 592 37 m [lb]

    Source:
        BIPM_SI_BROCHURE; the international pound of 1959, exact.

    Args:
        mass_lb: mass [lb].

    Returns:
        Mass [t].

    Example:
        >>> round(tonnes_of_lb(12000.0), 3)
        5.443
    """
    return mass_lb * KG_IN_LB / 1000.0


def _cell(table: Mapping[str, tuple[int, ...]], size_in: str, legs: int, from_horizontal_deg: float) -> float:
    if size_in not in table:
        raise OutOfRangeError("size of the chain", size_in, ", ".join(table) + " in", SOURCE)
    if not COLUMN_DEG[-1] <= from_horizontal_deg <= 90.0:
        raise OutOfRangeError("angle from the horizontal", from_horizontal_deg, "30 to 90°", "US_FLATTEST")
    if legs == 1:
        return float(table[size_in][0])
    if legs not in FIRST_COLUMN:
        raise OutOfRangeError("number of legs", legs, "1 to 4", SOURCE)

    column = next(i for i, angle_deg in enumerate(COLUMN_DEG) if from_horizontal_deg >= angle_deg)
    return float(table[size_in][FIRST_COLUMN[legs] + column])
