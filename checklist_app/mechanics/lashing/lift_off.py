"""Rule sets that want a load held down: a fifth of its weight, where it relies on friction or is not contained."""

from checklist_app.mechanics import exact
from checklist_app.mechanics.errors import OutOfRangeError, required_not_negative, required_positive
from checklist_app.mechanics.lashing.balance import Balance
from checklist_app.mechanics.lashing.rule_sets import RULES, RuleSet

SOURCE = "NTC_2018"
STEEPEST_DEG = 90.0


def held_down(rule_set: RuleSet, weight_dan: float, downward_dan: float) -> Balance:
    """Need and have of the force that holds a load down on its deck.

        need 0.2 G,  have Σ of the upright parts of all lashings: STF of tie-downs, ratings of direct ones

    Source:
        NTC_2018 (0.2 W upwards), CFR_393 102(b) (20 % where it is not contained).

    Args:
        rule_set: whose rules.
        weight_dan: G [daN], above 0.
        downward_dan: Σ of the upright parts [daN], 0 or more.

    Returns:
        Both sides [daN].

    Raises:
        OutOfRangeError: For a rule set that does not ask for it, or a number outside.

    Example:
        >>> held_down(RuleSet.NTC, 2943.0, 588.6).holds
        True
    """
    share = RULES[rule_set].lift_off_share
    if share is None:
        raise OutOfRangeError("rules on being held down", rule_set.value, "NTC 2018 or 49 CFR 393", SOURCE)
    required_positive("weight of the load", weight_dan, SOURCE)
    required_not_negative("upright parts of the lashings", downward_dan, SOURCE)

    return Balance(share * weight_dan, downward_dan)


def mass_per_tie_down_kg(tension_kg: float, angle_deg: float, friction: float, push: float) -> float:
    """Mass that one tie-down keeps from sliding, nothing else holding it.

        W = 2 FT μ sin α / (c − μ)

    Source:
        NTC_2018; its own tables were not read.

    Args:
        tension_kg: FT, average tension [kg], above 0.
        angle_deg: α, to the deck [°], above 0 up to 90.
        friction: μ [-], 0 to 1.
        push: c [-], above the friction.

    Returns:
        W [kg].

    Raises:
        OutOfRangeError: If a number is outside, or friction alone holds it.

    Example:
        >>> round(mass_per_tie_down_kg(300.0, 90.0, 0.4, 0.8), 6)
        600.0
    """
    required_positive("tension of a tie-down", tension_kg, SOURCE)
    if not 0.0 < angle_deg <= STEEPEST_DEG:
        raise OutOfRangeError("angle of the tie-down to the deck", angle_deg, "above 0, 90° at most", SOURCE)
    if not 0.0 <= friction <= 1.0:
        raise OutOfRangeError("friction", friction, "0 to 1", SOURCE)
    if not friction < push < float("inf"):
        raise OutOfRangeError("coefficient of acceleration", push, "above the friction: else friction holds it", SOURCE)

    return 2.0 * tension_kg * friction * exact.sin(angle_deg / exact.RAD_IN_DEG) / (push - friction)
