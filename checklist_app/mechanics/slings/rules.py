"""Either rule set by one call, angles from vertical: what a leg, a basket and a whole bridle carry.

A leg's real pull is held against `hitch_factor` × its WLL, with no factor for its angle; the load on the bridle against
`bridle_wll_t`, where its legs lie alike. Both are checks of the same lift, and the stricter governs.
"""

from collections.abc import Sequence

from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.slings import en_modes, us_modes
from checklist_app.mechanics.slings.kinds import Hitch, LegRule, RuleSet
from checklist_app.mechanics.slings.legs import counted_legs, weakest_leg_wll_t


def hitch_factor(rule_set: RuleSet, hitch: Hitch) -> float:
    """What one part of a sling carries by its own pull, as a share of its straight WLL.

        EN choked 0.8, US choked 0.75, otherwise 1; the angle of choke comes on top: `choke.choke_angle_factor`

    Source:
        EN_1492_1, DGUV_209_021, US_HITCH_TABLES.

    Args:
        rule_set: whose factor.
        hitch: how the sling is put on; of a basket, each of its two parts.

    Returns:
        Share of the straight WLL [-].

    Example:
        >>> hitch_factor(RuleSet.EN, Hitch.CHOKED), hitch_factor(RuleSet.US, Hitch.CHOKED)
        (0.8, 0.75)
    """
    return en_modes.single_leg_factor(hitch) if rule_set is RuleSet.EN else us_modes.single_leg_factor(hitch)


def basket_factor(rule_set: RuleSet, flatter_part_deg: float) -> float:
    """What one sling in a basket carries, both parts to one hook, as a multiple of its straight WLL.

        EN 2 cos β to 6°, 1.4 to 45°, 1.0 to 60°; US 2 cos β

    Source:
        EN_1492_1, US_HITCH_TABLES.

    Args:
        rule_set: whose factor.
        flatter_part_deg: angle of the flatter part from vertical [°], 0 to 60.

    Returns:
        Factor on the straight WLL [-].

    Raises:
        OutOfRangeError: Beyond 60°, or no number.

    Example:
        >>> basket_factor(RuleSet.EN, 30.0), round(basket_factor(RuleSet.US, 30.0), 3)
        (1.4, 1.732)
    """
    if rule_set is RuleSet.EN:
        return en_modes.basket_factor(flatter_part_deg)

    return us_modes.basket_factor(us_modes.from_horizontal_deg(flatter_part_deg))


def bridle_factor(rule_set: RuleSet, legs: int, flatter_leg_deg: float) -> float:
    """Tabulated factor for so many straight legs of a symmetric load.

        EN 1.4 and 1.0 for two, 2.1 and 1.5 for three or four; US 2 cos β and 3 cos β

    Source:
        EN_1492_1, EN_818_4, EN_13414_1, US_GRADE_80.

    Args:
        rule_set: whose factor.
        legs: legs that count, 1 to 4.
        flatter_leg_deg: angle of the flattest leg from vertical [°], 0 to 60.

    Returns:
        Factor on the weakest leg [-].

    Raises:
        OutOfRangeError: Beyond 60°, or for another number of legs.

    Example:
        >>> bridle_factor(RuleSet.EN, 4, 50.0), round(bridle_factor(RuleSet.US, 4, 50.0), 3)
        (1.5, 1.928)
    """
    if rule_set is RuleSet.EN:
        return en_modes.multi_leg_factor(legs, Hitch.STRAIGHT, flatter_leg_deg)

    return us_modes.multi_leg_factor(legs, Hitch.STRAIGHT, us_modes.from_horizontal_deg(flatter_leg_deg))


def bridle_wll_t(
    rule_set: RuleSet, leg_rule: LegRule, wll_t: Sequence[float], hitches: Sequence[Hitch], flatter_leg_deg: float
) -> float:
    """What legs to one hook carry together by the table: so many times the weakest, each rated for its hitch.

        WLL = factor(legs that count) · min(hitch factor · WLL)

    Source:
        MACHINERY_DIRECTIVE, Annex I 4.1.2.5, weakest leg; EN_818_4 and QUEENSLAND_DOGGERS for the legs that count.

    Args:
        rule_set: whose factors.
        leg_rule: how many of three or four legs count; the record names it.
        wll_t: each leg straight, after what bends, edges, heat and the angle of choke leave of it [t].
        hitches: how each leg is put on.
        flatter_leg_deg: angle of the flattest leg from vertical [°], 0 to 60.

    Returns:
        WLL of the legs together, as load [t].

    Raises:
        OutOfRangeError: With a basket among the legs, beyond 60°, for another number of legs, or a WLL of none above 0.

    Example:
        >>> bridle_wll_t(RuleSet.EN, LegRule.TWO_DIAGONAL_LEGS, (2.0, 2.0, 3.0, 2.0), (Hitch.STRAIGHT,) * 4, 40.0)
        2.8
    """
    if len(wll_t) != len(hitches):
        raise OutOfRangeError("number of hitches", len(hitches), f"one for each of {len(wll_t)} legs", "EN_1492_1")
    for hitch in hitches:
        if hitch.is_basket:
            raise OutOfRangeError("hitch", hitch.value, "straight or choked legs: no table has baskets", "EN_1492_1")

    factor = bridle_factor(rule_set, counted_legs(len(wll_t), leg_rule), flatter_leg_deg)
    rated_t = [hitch_factor(rule_set, hitch) * each for hitch, each in zip(hitches, wll_t, strict=True)]
    return factor * weakest_leg_wll_t(rated_t)
