"""Friction between the load, what it stands on and the deck: by pair and state from tables, never assumed.

An engine drips: oil between metal and wood leaves 0.02, between metal and metal nothing. Who does not know the pair or
the state gets the worst that is published. A load on a pallet has two faces, each with its own pair.
"""

from enum import Enum

from checklist_app.mechanics import exact
from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.lashing.rule_sets import RULES, RuleSet
from checklist_app.mechanics.slings import slip


class Pair(Enum):
    """What slides on what."""

    SAWN_WOOD_ON_PLYWOOD = "sawn timber or wooden pallet on plywood or laminate"
    SAWN_WOOD_ON_ALUMINIUM = "sawn timber or wooden pallet on grooved aluminium"
    SAWN_WOOD_ON_STEEL = "sawn timber or wooden pallet on steel sheet"
    SAWN_WOOD_ON_WOOD = "sawn timber or wooden pallet on timber"
    SAWN_WOOD_ON_FILM = "sawn timber on shrink film"
    PLANED_WOOD_ON_PLYWOOD = "planed timber on plywood or laminate"
    PLANED_WOOD_ON_ALUMINIUM = "planed timber on grooved aluminium"
    PLANED_WOOD_ON_STEEL = "planed timber on steel sheet"
    PLASTIC_PALLET_ON_PLYWOOD = "plastic pallet on plywood or laminate"
    PLASTIC_PALLET_ON_ALUMINIUM = "plastic pallet on grooved aluminium"
    PLASTIC_PALLET_ON_STEEL = "plastic pallet on steel sheet"
    STEEL_CRATE_ON_PLYWOOD = "steel crate on plywood or laminate"
    STEEL_CRATE_ON_ALUMINIUM = "steel crate on grooved aluminium"
    STEEL_CRATE_ON_STEEL = "steel crate on steel sheet"
    BARE_METAL_ON_WOOD = "bare metal foot on timber, pallet or plywood"
    BARE_METAL_ON_METAL = "bare metal foot on a metal deck"
    MAT = "anti-slip mat between, clean on both sides"


class Surface(Enum):
    """What is on the faces."""

    CLEAN_DRY = "swept clean, dry"
    CLEAN_WET = "swept clean, wet"
    DIRTY = "not swept clean"
    FROST = "frost, ice or snow"
    OILY = "oil or grease"


class Faces(Enum):
    """What meets."""

    WOOD_WOOD = "wood on wood"
    METAL_WOOD = "metal on wood"
    METAL_METAL = "metal on metal"
    OTHER = "other"


# dry and clean; the face on the other side decides what water and oil leave
TABLE = {
    Pair.SAWN_WOOD_ON_PLYWOOD: (0.45, Faces.WOOD_WOOD),
    Pair.SAWN_WOOD_ON_ALUMINIUM: (0.40, Faces.METAL_WOOD),
    Pair.SAWN_WOOD_ON_STEEL: (0.30, Faces.METAL_WOOD),
    Pair.SAWN_WOOD_ON_WOOD: (0.40, Faces.WOOD_WOOD),  # Annex 13, from memory, below the 0.45 of plywood
    Pair.SAWN_WOOD_ON_FILM: (0.30, Faces.OTHER),
    Pair.PLANED_WOOD_ON_PLYWOOD: (0.30, Faces.WOOD_WOOD),
    Pair.PLANED_WOOD_ON_ALUMINIUM: (0.25, Faces.METAL_WOOD),
    Pair.PLANED_WOOD_ON_STEEL: (0.20, Faces.METAL_WOOD),
    Pair.PLASTIC_PALLET_ON_PLYWOOD: (0.20, Faces.OTHER),
    Pair.PLASTIC_PALLET_ON_ALUMINIUM: (0.15, Faces.OTHER),
    Pair.PLASTIC_PALLET_ON_STEEL: (0.15, Faces.OTHER),
    Pair.STEEL_CRATE_ON_PLYWOOD: (0.45, Faces.METAL_WOOD),
    Pair.STEEL_CRATE_ON_ALUMINIUM: (0.30, Faces.METAL_METAL),
    Pair.STEEL_CRATE_ON_STEEL: (0.20, Faces.METAL_METAL),
    Pair.BARE_METAL_ON_WOOD: (0.30, Faces.METAL_WOOD),
    Pair.BARE_METAL_ON_METAL: (0.10, Faces.METAL_METAL),
    Pair.MAT: (0.60, Faces.OTHER),
}
WET = {Faces.WOOD_WOOD: 1.0, Faces.METAL_WOOD: 1.0, Faces.METAL_METAL: 0.0, Faces.OTHER: 1.0}
OILY = {Faces.WOOD_WOOD: 0.05, Faces.METAL_WOOD: 0.02, Faces.METAL_METAL: 0.0, Faces.OTHER: 0.0}
BARE_METAL_ON_WET_WOOD = 0.2
DIRTY_AT_MOST, DIRTY_BY_CTU, FROST_AT_MOST = 0.2, 0.3, 0.2
US_UNMARKED_MAT = 0.5
CSS_AT_MOST = {Faces.WOOD_WOOD: 0.4, Faces.METAL_WOOD: 0.3, Faces.METAL_METAL: 0.1}
CSS_MAT = 0.3


def friction(rule_set: RuleSet, pair: Pair, surface: Surface) -> float:
    """Friction of a pair of faces as they are.

        table, swept clean; wet metal on metal 0; dirty, frost, oil: what the table of states leaves at most

    Source:
        CTU_ANNEX_7, Appendix 2, the same as EN_12195_1 Annex B: the clean values, valid dry and wet; CSS_TIMBER (metal
        on timber 0.3); CSS_ANNEX_13 (bare metal 0.1 dry, any metal 0 wet: from memory, stricter); CTU_STATES (dirty
        0.2, by the CTU Code 0.3; frost 0.2: from memory, stricter); FRICTION_RANGES, lower ends (metal on wet wood 0.2,
        oily wood 0.05, oily metal on wood 0.02; oil on any other pair 0); CFR_393 (unmarked mat 0.5).

    Args:
        rule_set: whose table; Annex 13 of the CSS Code has its own short one.
        pair: what slides on what.
        surface: what is on the faces.

    Returns:
        μ [-].

    Raises:
        OutOfRangeError: For a mat that is not clean, or a pair that Annex 13 does not have.

    Example:
        >>> friction(RuleSet.EN, Pair.BARE_METAL_ON_WOOD, Surface.OILY)
        0.02
    """
    clean, faces = TABLE[pair]
    if pair is Pair.MAT:
        return _mat(rule_set, surface)
    if rule_set is RuleSet.CSS:
        if faces is Faces.OTHER:
            raise OutOfRangeError("pair of faces by Annex 13", pair.value, "wood and metal; any other as measured",
                                  "CSS_ANNEX_13")
        clean = min(clean, CSS_AT_MOST[faces])

    return min(clean, _left(rule_set, pair, faces, surface))


def worst_friction(rule_set: RuleSet, pair: Pair | None, surface: Surface | None) -> float:
    """The lowest published friction of all that is not known to be otherwise.

        least of the table over the pairs or states that are not known

    Source:
        CTU_ANNEX_7, FRICTION_RANGES, CSS_ANNEX_13.

    Args:
        rule_set: whose table.
        pair: what slides on what; None where nobody knows.
        surface: what is on the faces; None where nobody knows.

    Returns:
        μ [-].

    Raises:
        OutOfRangeError: For a mat in a state that nobody knows to be clean.

    Example:
        >>> worst_friction(RuleSet.EN, None, None), worst_friction(RuleSet.EN, Pair.BARE_METAL_ON_WOOD, None)
        (0.0, 0.02)
    """
    if pair is Pair.MAT:
        if surface is None:
            raise OutOfRangeError("faces of a mat", "not known", "clean on both sides", "CTU_ANNEX_7")
        return friction(rule_set, pair, surface)
    pairs = [pair] if pair else [each for each in Pair if each is not Pair.MAT and _has(rule_set, each)]
    return min(friction(rule_set, each, state) for each in pairs for state in ([surface] if surface else Surface))


def measured_friction(rule_set: RuleSet, pair: Pair, surface: Surface, measured: float) -> float:
    """Friction that was measured on these very faces: it counts where it is less than published, and never more.

        least of μ as measured and μ as published for the pair and its state

    Source:
        FRICTION_MEASURED; CTU_ANNEX_7, CSS_TIMBER, CFR_393 for what is published. For a pair that Annex 13 does not
        have the value of CTU_ANNEX_7.

    Args:
        rule_set: whose table.
        pair: what slides on what.
        surface: what is on the faces.
        measured: lowest of the readings [-], above 0 up to 1.

    Returns:
        μ [-].

    Raises:
        OutOfRangeError: If it is no number above 0 up to 1, or for a mat that is not clean.

    Example:
        >>> by = (RuleSet.EN, Pair.BARE_METAL_ON_WOOD, Surface.CLEAN_DRY)
        >>> measured_friction(*by, 0.25), measured_friction(*by, 0.5)
        (0.25, 0.3)
    """
    printed_by = rule_set if pair is Pair.MAT or _has(rule_set, pair) else RuleSet.CTU
    published = exact.let("friction as published for them", friction(printed_by, pair, surface))

    return exact.least(slip.measured_friction(measured), published)


def beside_direct_lashings(rule_set: RuleSet, coefficient: float) -> float:
    """Friction that counts together with direct lashings.

        0.75 μ by EN 12195-1, the CTU Code and the UK profile; μ where a rule set does not reduce it

    Source:
        EN_12195_1, CTU_ANNEX_7; kept for UK_1_G.

    Args:
        rule_set: whose rules.
        coefficient: μ [-], 0 to 1.

    Returns:
        The friction that counts [-].

    Raises:
        OutOfRangeError: If the friction is no number from 0 to 1.

    Example:
        >>> beside_direct_lashings(RuleSet.EN, 0.1)
        0.07500000000000001
    """
    if not 0.0 <= coefficient <= 1.0:
        raise OutOfRangeError("friction", coefficient, "0 to 1", RULES[rule_set].source)

    return RULES[rule_set].direct_friction_share * coefficient


def _has(rule_set: RuleSet, pair: Pair) -> bool:
    return rule_set is not RuleSet.CSS or TABLE[pair][1] is not Faces.OTHER


def _mat(rule_set: RuleSet, surface: Surface) -> float:
    if surface not in (Surface.CLEAN_DRY, Surface.CLEAN_WET):
        raise OutOfRangeError("faces of a mat", surface.value, "clean on both sides", "CTU_ANNEX_7")

    return {RuleSet.CSS: CSS_MAT, RuleSet.US: US_UNMARKED_MAT}.get(rule_set, TABLE[Pair.MAT][0])


def _left(rule_set: RuleSet, pair: Pair, faces: Faces, surface: Surface) -> float:
    """The most that a state leaves."""
    if surface is Surface.CLEAN_DRY:
        return 1.0
    if surface is Surface.OILY:
        return OILY[faces]
    wet = BARE_METAL_ON_WET_WOOD if pair is Pair.BARE_METAL_ON_WOOD else WET[faces]
    if surface is Surface.CLEAN_WET:
        return wet
    if surface is Surface.FROST:
        return min(wet, FROST_AT_MOST)
    return min(wet, DIRTY_BY_CTU if rule_set is RuleSet.CTU else DIRTY_AT_MOST)
