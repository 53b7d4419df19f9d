"""How hot and how cold a sling may get: the fibre, the grade of the chain, the core and the ferrule of the rope.

What counts is the temperature of the part that touches the sling, not of the room: an engine just stopped is hotter.
"""

from collections.abc import Sequence
from enum import Enum

from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.slings.kinds import RuleSet


class Fibre(Enum):
    """What a textile sling is woven from, as its label says: blue polyester, green polyamide, brown polypropylene."""

    POLYESTER = "polyester"
    POLYAMIDE = "polyamide"
    POLYPROPYLENE = "polypropylene"
    HMPE = "high-modulus polyethylene"
    ARAMID = "aramid"


class ChainGrade(Enum):
    """Grade of a chain, as it is stamped."""

    GRADE_4 = "grade 4"
    GRADE_8 = "grade 8"
    GRADE_10 = "grade 10"


class RopeMake(Enum):
    """Core of a wire rope and how its ends are made."""

    FIBRE_CORE = "fibre core"
    STEEL_CORE_ALUMINIUM_FERRULE = "steel core, aluminium ferrule"
    STEEL_CORE_STEEL_FERRULE = "steel core, steel ferrule"
    STEEL_CORE_HAND_SPLICE = "steel core, hand splice"


EN_FIBRE = {  # coldest, hottest [°C]
    Fibre.POLYESTER: (-40.0, 100.0), Fibre.POLYAMIDE: (-40.0, 100.0), Fibre.POLYPROPYLENE: (-40.0, 80.0),
    Fibre.HMPE: (-40.0, 60.0),  # read −50 to 70, kept to 60 from memory
}
US_HOTTEST_C = 82.0
# up to this temperature [°C], share of the WLL; the coldest allowed comes first
CHAIN = {
    ChainGrade.GRADE_8: (-40.0, ((200.0, 1.0), (300.0, 0.9), (400.0, 0.75))),
    ChainGrade.GRADE_10: (-40.0, ((200.0, 1.0),)),
    ChainGrade.GRADE_4: (0.0, ((300.0, 1.0), (400.0, 0.75), (475.0, 0.5))),  # the table says nothing about frost
}
US_CHAIN = {  # 204, 260 °C are 400, 500 °F; where heat would take strength for good, the table ends here
    ChainGrade.GRADE_8: (-40.0, ((203.0, 1.0), (204.0, 0.90), (260.0, 0.85))),
    ChainGrade.GRADE_10: (-40.0, ((203.0, 1.0), (204.0, 0.85))),
}
STEEL_CORE = ((150.0, 1.0), (200.0, 0.9), (300.0, 0.75), (400.0, 0.65))
ROPE = {
    RopeMake.FIBRE_CORE: (-40.0, ((93.0, 1.0),)),  # EN 100 °C, US 93 °C
    RopeMake.STEEL_CORE_ALUMINIUM_FERRULE: (-40.0, ((150.0, 1.0),)),
    RopeMake.STEEL_CORE_STEEL_FERRULE: (-40.0, STEEL_CORE),
    RopeMake.STEEL_CORE_HAND_SPLICE: (-40.0, STEEL_CORE),
}


def fibre_temperature_factor(fibre: Fibre, temperature_c: float, rule_set: RuleSet) -> float:
    """A textile sling keeps its WLL within the range of its fibre, and has none outside.

        polyester, polyamide −40 to 100 °C (US to 82 °C); polypropylene −40 to 80 °C; HMPE −40 to 60 °C

    Source:
        EN_1492_1 and EN_1492_2, scope; US_TEXTILE_HEAT; HMPE_RANGE, held to HMPE_60_C. No source was found for aramid.

    Args:
        fibre: as the label says.
        temperature_c: hottest or coldest face that the sling touches [°C].
        rule_set: whose limits.

    Returns:
        Share of the WLL [-].

    Raises:
        OutOfRangeError: Outside the range, for aramid, or if the temperature is no number.

    Example:
        >>> fibre_temperature_factor(Fibre.POLYESTER, 95.0, RuleSet.EN)
        1.0
    """
    if fibre not in EN_FIBRE:
        raise OutOfRangeError("fibre", fibre.value, "a fibre with a published range; ask its maker", "EN_1492_1")
    coldest_c, hottest_c = EN_FIBRE[fibre]
    if rule_set is RuleSet.US and hottest_c > US_HOTTEST_C:
        hottest_c = US_HOTTEST_C

    name = f"temperature of the {fibre.value} sling"
    return _stepped(name, temperature_c, coldest_c, ((hottest_c, 1.0),), "EN_1492_1")


def chain_temperature_factor(grade: ChainGrade, temperature_c: float) -> float:
    """What heat leaves of the WLL of a chain sling.

        grade 8: −40 to 200 °C 1.0, to 300 °C 0.9, to 400 °C 0.75; grade 10: −40 to 200 °C;
        grade 4: to 300 °C 1.0, to 400 °C 0.75, to 475 °C 0.5

    Source:
        EN_818_4 with EN_818_6 for grade 8; GRADE_10_HEAT; DGUV_209_021 for grade 4, whose table has no frost: from
        0 °C.

    Args:
        grade: as stamped.
        temperature_c: hottest or coldest face that the chain touches [°C].

    Returns:
        Share of the WLL [-].

    Raises:
        OutOfRangeError: Outside the range, or if the temperature is no number.

    Example:
        >>> chain_temperature_factor(ChainGrade.GRADE_8, 250.0)
        0.9
    """
    coldest_c, steps = CHAIN[grade]

    return _stepped("temperature of the chain", temperature_c, coldest_c, steps, "EN_818_4")


def us_chain_temperature_factor(grade: ChainGrade, temperature_c: float) -> float:
    """What heat leaves of the rated load of a chain sling, by US rules.

        grade 80: below 204 °C 1.0, at 204 °C 0.90, to 260 °C 0.85; grade 100: below 204 °C 1.0, at 204 °C 0.85

    Source:
        ASME_B30_9_HEAT; a temperature between two rows takes the hotter one, and no row is used that takes strength for
        good.

    Args:
        grade: as stamped; 80 is grade 8, 100 is grade 10.
        temperature_c: hottest or coldest face that the chain touches [°C].

    Returns:
        Share of the rated load [-].

    Raises:
        OutOfRangeError: Outside the range, for grade 4, or if the temperature is no number.

    Example:
        >>> us_chain_temperature_factor(ChainGrade.GRADE_8, 250.0)
        0.85
    """
    if grade not in US_CHAIN:
        raise OutOfRangeError("grade of the chain", grade.value, "grade 8 or grade 10", "ASME_B30_9_HEAT")
    coldest_c, steps = US_CHAIN[grade]

    return _stepped("temperature of the chain", temperature_c, coldest_c, steps, "ASME_B30_9_HEAT")


def rope_temperature_factor(make: RopeMake, temperature_c: float) -> float:
    """What heat leaves of the WLL of a wire rope sling.

        fibre core −40 to 93 °C; aluminium ferrule to 150 °C; steel core with steel ferrule or hand splice to 150 °C
        1.0, to 200 °C 0.9, to 300 °C 0.75, to 400 °C 0.65

    Source:
        ROPE_HEAT; OSHA_1926_251 for the fibre core, 93 °C against 100 °C.

    Args:
        make: core and ends.
        temperature_c: hottest or coldest face that the rope touches [°C].

    Returns:
        Share of the WLL [-].

    Raises:
        OutOfRangeError: Outside the range, or if the temperature is no number.

    Example:
        >>> rope_temperature_factor(RopeMake.STEEL_CORE_STEEL_FERRULE, 160.0)
        0.9
    """
    coldest_c, steps = ROPE[make]

    return _stepped("temperature of the wire rope", temperature_c, coldest_c, steps, "ROPE_HEAT")


def _stepped(
    name: str, temperature_c: float, coldest_c: float, steps: Sequence[tuple[float, float]], source: str
) -> float:
    hottest_c = steps[-1][0]
    if not coldest_c <= temperature_c <= hottest_c:
        raise OutOfRangeError(name, temperature_c, f"{coldest_c:.0f} to {hottest_c:.0f} °C", source)

    return next(share for up_to_c, share in steps if temperature_c <= up_to_c)
