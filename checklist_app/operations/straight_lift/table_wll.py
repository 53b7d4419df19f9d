"""What several legs carry together by a table: their number, the band of their angle, the weakest of them."""

from checklist_app.mechanics.slings import legs, rules
from checklist_app.mechanics.slings.kinds import Hitch, LegRule, RuleSet
from checklist_app.operations.gear import Sling
from checklist_app.operations.graph import NotApplicable
from checklist_app.operations.straight_lift.choices import ShareRule

COUNTED = {
    ShareRule.ANY_LENGTH: LegRule.TWO_DIAGONAL_LEGS, ShareRule.DIAGONALS: LegRule.TWO_DIAGONAL_LEGS,
    ShareRule.THREE: LegRule.THREE_LEGS,
}
STEEP_UP_TO_DEG = 45.0


def flattest_leg_deg(leg_angle_deg: tuple[float, ...]) -> float:
    """The leg that lies flattest."""
    flattest = leg_angle_deg[0]
    for angle in leg_angle_deg:
        flattest = angle if angle > flattest else flattest

    return flattest


def legs_factor(
    rule_set: RuleSet, share_rule: ShareRule, flattest_leg_deg: float, hitch: tuple[Hitch, ...], legs_alike: bool
) -> float:
    """Factor of so many legs on the WLL of the weakest in its hitch; of four only those that the rule counts."""
    if any(each.is_basket for each in hitch):
        raise NotApplicable("the table has no legs that are laid double or in a basket")
    counted = legs.counted_legs(len(hitch), COUNTED[share_rule])

    return rules.bridle_factor(rule_set, counted, flattest_leg_deg)


def table_wll_t(
    legs_factor: float, sling_carries_t: tuple[float, ...], sling: tuple[Sling, ...], flattest_leg_deg: float
) -> float:
    """What the legs carry together; where one sling makes all legs, its tag's own figure if that is less.

    What hitch, bend, edge and heat leave of a leg they leave of the figure on the tag too.
    """
    weakest_t = legs.weakest_leg_wll_t(sling_carries_t)
    by_factor = legs_factor * weakest_t
    tagged = _on_the_tag(sling, flattest_leg_deg)
    if tagged is None:
        return by_factor
    left_t = tagged * (weakest_t / sling[0].wll_t)

    return by_factor if by_factor <= left_t else left_t


def _on_the_tag(sling: tuple[Sling, ...], flattest_leg_deg: float) -> float | None:
    """None where several slings make the legs. A sling of several legs has figures of its own, which are waited for."""
    if len({each.id for each in sling}) > 1 or sling[0].legs < len(sling) or len(sling) == 1:
        return None

    return sling[0].wll_to_45_t if flattest_leg_deg <= STEEP_UP_TO_DEG else sling[0].wll_to_60_t
