"""49 CFR 393 Subpart I: WLL of unmarked tie-downs, aggregate WLL, fewest tie-downs."""

from collections.abc import Sequence
from enum import Enum
from math import ceil

from checklist_app.mechanics.errors import OutOfRangeError, required_positive

SOURCE = "CFR_393"
GRADES = ("30", "43", "70", "80", "100")
CHAIN_LB = {  # by nominal size in inches
    "1/4": (1300, 2600, 3150, 3500, 4300), "5/16": (1900, 3900, 4700, 4500, 5700),
    "3/8": (2650, 5400, 6600, 7100, 8800), "7/16": (3700, 7200, 8750), "1/2": (4500, 9200, 11300, 12000, 15000),
    "5/8": (6900, 13000, 15800, 18100, 22600),
}
UNMARKED_GRADE = "30"
WEBBING_LB = {"1-3/4": 1750, "2": 2000, "3": 3000, "4": 4000}
WIRE_ROPE_LB = {"1/4": 1400, "5/16": 2100, "3/8": 3000, "7/16": 4100, "1/2": 5300, "5/8": 8300, "3/4": 10900}
WEIGHT_SHARE = 0.5
SHORT_FT, PER_FT, LIGHT_LB = 5.0, 10.0, 1100.0


class Route(Enum):
    """How a tie-down runs: it decides how much of its WLL counts."""

    TO_THE_LOAD = "from the vehicle to the load"
    BACK_TO_THE_SAME_SIDE = "from the vehicle round the load back to the same side"
    OVER_TO_THE_OTHER_SIDE = "from the vehicle over the load to the other side"


COUNTED = {Route.TO_THE_LOAD: 0.5, Route.BACK_TO_THE_SAME_SIDE: 0.5, Route.OVER_TO_THE_OTHER_SIDE: 1.0}


def chain_wll_lb(size_in: str, grade: str | None) -> float:
    """WLL of a chain whose link carries no WLL.

        as tabulated; without a mark of its grade as grade 30

    Source:
        CFR_393 108.

    Args:
        size_in: nominal size, as "3/8".
        grade: "30" to "100" as marked; None where it is unmarked.

    Returns:
        WLL [lb]; 5/16 of grade 80 really stands below grade 70.

    Raises:
        OutOfRangeError: For a size or grade that the table does not have.

    Example:
        >>> chain_wll_lb("3/8", None), chain_wll_lb("3/8", "70")
        (2650.0, 6600.0)
    """
    row = _row(CHAIN_LB, size_in, "size of the chain")
    named = grade or UNMARKED_GRADE
    if named not in GRADES[: len(row)]:
        raise OutOfRangeError("grade of the chain", named, ", ".join(GRADES[: len(row)]), SOURCE)

    return float(row[GRADES.index(named)])


def webbing_wll_lb(width_in: str) -> float:
    """WLL of unmarked synthetic webbing.

        as tabulated

    Source:
        CFR_393 108.

    Args:
        width_in: width, as "2".

    Returns:
        WLL [lb].

    Raises:
        OutOfRangeError: For a width that the table does not have.

    Example:
        >>> webbing_wll_lb("2")
        2000.0
    """
    if width_in not in WEBBING_LB:
        raise OutOfRangeError("width of the webbing", width_in, ", ".join(WEBBING_LB), SOURCE)
    return float(WEBBING_LB[width_in])


def wire_rope_wll_lb(diameter_in: str) -> float:
    """WLL of unmarked wire rope, 6 × 37 with fibre core.

        as tabulated

    Source:
        CFR_393 108.

    Args:
        diameter_in: diameter, as "3/8".

    Returns:
        WLL [lb].

    Raises:
        OutOfRangeError: For a diameter that the table does not have.

    Example:
        >>> wire_rope_wll_lb("1/2")
        5300.0
    """
    if diameter_in not in WIRE_ROPE_LB:
        raise OutOfRangeError("diameter of the wire rope", diameter_in, ", ".join(WIRE_ROPE_LB), SOURCE)
    return float(WIRE_ROPE_LB[diameter_in])


def aggregate_wll(lashings: Sequence[tuple[Route, float]]) -> float:
    """What all tie-downs count together, to be held against half the weight. It says nothing about tipping.

        Σ WLL over to the other side + Σ WLL / 2 of all others

    Source:
        CFR_393 106(d).

    Args:
        lashings: route and WLL of the weakest part of each [any unit of mass], above 0.

    Returns:
        Aggregate WLL [the unit of the WLL].

    Raises:
        OutOfRangeError: If a WLL is no number above 0.

    Example:
        >>> aggregate_wll([(Route.TO_THE_LOAD, 6600.0), (Route.OVER_TO_THE_OTHER_SIDE, 2000.0)])
        5300.0
    """
    total = 0.0
    for route, wll in lashings:
        required_positive("WLL of a tie-down", wll, SOURCE)
        total += COUNTED[route] * wll
    return total


def aggregate_wll_needed(weight: float) -> float:
    """Aggregate WLL that a load asks for.

        half of its weight

    Source:
        CFR_393 106(d).

    Args:
        weight: of the load [any unit of mass], above 0.

    Returns:
        Aggregate WLL [that unit].

    Raises:
        OutOfRangeError: If the weight is no number above 0.

    Example:
        >>> aggregate_wll_needed(10000.0)
        5000.0
    """
    required_positive("weight of the load", weight, SOURCE)
    return WEIGHT_SHARE * weight


def fewest_tie_downs(length_ft: float, weight_lb: float, blocked_forward: bool) -> int:
    """Fewest tie-downs by length and weight, whatever their WLL.

    Not blocked: 1 to 5 ft and 1100 lb; 2 to 10 ft; then one more for every further 10 ft or part. Blocked forwards by
    headboard or other load: one for every 10 ft or part.

    Source:
        CFR_393 110; exactly 10 ft counts as not longer, CFR_393_TEN_FEET.

    Args:
        length_ft: of the load [ft], above 0.
        weight_lb: of the load [lb], above 0.
        blocked_forward: whether it stands against something forwards.

    Returns:
        How many.

    Raises:
        OutOfRangeError: If a number is none above 0.

    Example:
        >>> fewest_tie_downs(4.0, 1500.0, blocked_forward=False)
        2
    """
    required_positive("length of the load", length_ft, SOURCE)
    required_positive("weight of the load", weight_lb, SOURCE)
    if blocked_forward:
        return ceil(length_ft / PER_FT)
    if length_ft <= SHORT_FT and weight_lb <= LIGHT_LB:
        return 1

    return 2 + max(0, ceil((length_ft - PER_FT) / PER_FT))


def tie_downs_by_wll(weight: float, route: Route, wll: float) -> float:
    """How many equal tie-downs the aggregate WLL asks for.

        n = W / 2 / counted WLL

    Source:
        CFR_393 106(d).

    Args:
        weight: W [any unit of mass], above 0.
        route: how they run.
        wll: of the weakest part of each [that unit], above 0.

    Returns:
        n, not rounded [-].

    Raises:
        OutOfRangeError: If a number is none above 0.

    Example:
        >>> round(tie_downs_by_wll(10000.0, Route.TO_THE_LOAD, 6600.0), 3)
        1.515
    """
    return aggregate_wll_needed(weight) / aggregate_wll([(route, wll)])


def _row(table: dict[str, tuple[int, ...]], size: str, name: str) -> tuple[int, ...]:
    if size not in table:
        raise OutOfRangeError(name, size, ", ".join(table), SOURCE)
    return table[size]
