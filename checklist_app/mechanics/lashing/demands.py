"""What each rule set asks a load to withstand: coefficients of acceleration by transport and direction.

`downward` is the share of the weight that remains (0.2), never the part taken away (0.8).
"""

from dataclasses import dataclass
from enum import Enum

from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.lashing.prepared import Tension
from checklist_app.mechanics.lashing.rule_sets import FS_FORWARD, FS_OTHER, RULES, RuleSet
from checklist_app.mechanics.lashing.transport import Direction, Transport
from checklist_app.mechanics.lashing.vehicle import van_push

SOURCE = "EN_12195_1"


class TiltRule(Enum):
    """How tie-downs are held against tipping sideways on the road."""

    PAIRS = "0.5 with the tension of the label, and 0.6 with half of LC; the worse"
    HOUSE = "0.6 with the tension of the label"


@dataclass(frozen=True)
class Slide:
    """Inertia that must not make it slide; against the breaking strength where a rule set says so, else the rating."""

    push: float
    downward: float
    against_breaking: bool = False


@dataclass(frozen=True)
class Tip:
    """Inertia that must not tip it, and what its tie-downs are taken to pull with then."""

    push: float
    downward: float
    tension: Tension = Tension.STF


@dataclass(frozen=True)
class Demand:
    """All that is asked one way; `fs` divides the tension of tie-downs."""

    direction: Direction
    slides: tuple[Slide, ...]
    tips: tuple[Tip, ...]
    fs: float


EN_SEA = {  # cx with its cz, cy with its cz
    Transport.SEA_A: ((0.3, 0.5), (0.5, 1.0)),
    Transport.SEA_B: ((0.3, 0.3), (0.7, 1.0)),
    Transport.SEA_C: ((0.4, 0.2), (0.8, 1.0)),
}
FORWARD = {RuleSet.UK: 1.0}
ROAD_FORWARD, ROAD_OTHER, ROAD_TILT = 0.8, 0.5, 0.6
US_RATED = {Direction.FORWARD: 0.435, Direction.REAR: 0.5, Direction.LEFT: 0.25, Direction.RIGHT: 0.25}


def demand(
    rule_set: RuleSet, transport: Transport, direction: Direction, tied_down: bool, tilt_rule: TiltRule
) -> Demand:
    """What the load must withstand one way.

    Source:
        EN_12195_1 (road, rail, sea), EN_12195_1_TILT_PAIRS, EN_12195_1_FS_OTHER; CTU_CHAPTER_5: from memory, so the
        larger values of EN 12195-1 for rail and for tipping sideways; CFR_393 (0.8, 0.5, 0.5 against breaking and for
        tipping, 0.435, 0.5, 0.25 against WLL); NTC_2018; UK_1_G with 0.6 for tipping sideways kept from EN 12195-1.

    Args:
        rule_set: whose rules.
        transport: what the load will see.
        direction: where inertia pushes it.
        tied_down: whether tie-downs hold it against tipping.
        tilt_rule: how tie-downs are held against tipping sideways.

    Returns:
        Coefficients for sliding and for tipping, with the safety factor of tie-downs.

    Raises:
        OutOfRangeError: For a transport that the rule set does not know; Annex 13 asks for the ship's data.

    Example:
        >>> demand(RuleSet.EN, Transport.SEA_C, Direction.FORWARD, True, TiltRule.PAIRS).slides
        (Slide(push=0.4, downward=0.2, against_breaking=False),)
    """
    if rule_set is RuleSet.CSS:
        raise OutOfRangeError("accelerations of Annex 13", "those of a table by areas", "those of the ship: css_forces",
                              "CSS_ANNEX_13_FORCES")
    rules = RULES[rule_set]
    if transport is not Transport.ROAD and not rules.at_sea:
        raise OutOfRangeError(f"transport by {rule_set.value}", transport.value, "road", rules.source)
    if transport.is_sea:
        return _at_sea(transport, direction, rules.fs_other)
    if transport is Transport.RAIL:
        return _by_rail(direction, rules.fs_other)

    return _by_road(rule_set, direction, tied_down, tilt_rule)


def van_demand(gross_mass_t: float, direction: Direction) -> Demand:
    """What a load in a van must withstand: by the gross mass of the vehicle, never below 0.6 for tipping sideways.

    Source:
        VDI_2700_16; safety factors, reduced friction and 0.6 for tipping kept from EN_12195_1, which starts at 3.5 t.

    Args:
        gross_mass_t: permitted gross mass of the vehicle [t], above 0.
        direction: where inertia pushes the load.

    Returns:
        Coefficients for sliding and for tipping, with the safety factor of tie-downs.

    Raises:
        OutOfRangeError: If the mass is no number above 0.

    Example:
        >>> van_demand(3.0, Direction.LEFT).slides[0].push
        0.6
    """
    push = van_push(gross_mass_t, direction)
    tip = max(push, ROAD_TILT) if direction.is_sideways else push
    fs = FS_FORWARD if direction is Direction.FORWARD else FS_OTHER

    return Demand(direction, (Slide(push, 1.0),), (Tip(tip, 1.0),), fs)


def _at_sea(transport: Transport, direction: Direction, fs: float) -> Demand:
    push, downward = EN_SEA[transport][direction.is_sideways]
    return Demand(direction, (Slide(push, downward),), (Tip(push, downward),), fs)


def _by_rail(direction: Direction, fs: float) -> Demand:
    if direction.is_sideways:
        return Demand(direction, (Slide(0.5, 0.7),), (Tip(0.5, 1.0),), fs)
    return Demand(direction, (Slide(1.0, 1.0),), (Tip(0.6, 1.0),), fs)


def _by_road(rule_set: RuleSet, direction: Direction, tied_down: bool, tilt_rule: TiltRule) -> Demand:
    rules = RULES[rule_set]
    forward = direction is Direction.FORWARD
    push = FORWARD.get(rule_set, ROAD_FORWARD) if forward else ROAD_OTHER
    fs = rules.fs_forward if forward else rules.fs_other
    slides: tuple[Slide, ...] = (Slide(push, 1.0),)
    tips: tuple[Tip, ...] = (Tip(push, 1.0),)
    if rule_set is RuleSet.US:
        slides = (Slide(US_RATED[direction], 1.0), Slide(push, 1.0, against_breaking=True))
    elif rule_set is not RuleSet.NTC and direction.is_sideways:
        tips = (Tip(ROAD_TILT, 1.0),)
        if tied_down and tilt_rule is TiltRule.PAIRS:
            tips = (Tip(ROAD_OTHER, 1.0), Tip(ROAD_TILT, 1.0, Tension.HALF_LC))
    return Demand(direction, slides, tips, fs)
