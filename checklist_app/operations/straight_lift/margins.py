"""How far the load is from going over, and what hangs otherwise than it should: slack legs, steep legs, angles read."""

from checklist_app.mechanics.hanging import margin
from checklist_app.mechanics.hanging.body import Hang
from checklist_app.mechanics.slings import legs
from checklist_app.mechanics.vectors import Vec
from checklist_app.operations.check import Limit, State, check
from checklist_app.operations.graph import NotApplicable, at_nominal, by_search, each
from checklist_app.operations.settings import (
    ANGLE_AGREES_CLOSE,
    ANGLE_AGREES_WITHIN,
    LEG_SLACK,
    LEG_SLACK_CLOSE,
    PUSH_CLOSE,
    PUSH_TO_WITHSTAND,
)
from checklist_app.operations.straight_lift.as_hang import as_hang
from checklist_app.operations.straight_lift.choices import ShareRule

STEEP_DEG = legs.nearly_vertical_below_deg()
STEEP = (
    "steeper than 15° on a common hook suits a stud, but holds the load less steadily against swinging and turning: "
    "lift and travel slowly"
)
HOUSE = "settings of the house"


def hang_seen(plumb_m: float, hung_eye: tuple[Vec, ...], taut_m: tuple[float, ...], legs_meet: bool) -> Hang:
    """The load as it hangs, as the clauses for pyramids of legs look at it."""
    return as_hang(hung_eye, taut_m, plumb_m)


@by_search
def cg_inside_m(hang_seen: Hang) -> float:
    """Centre of gravity inside of the nearest face that the legs make."""
    return margin.faces(hang_seen, range(len(hang_seen.eyes)))[0].inside_m


@by_search
def cg_inside_of_edge_m(hang_seen: Hang, several_legs: bool) -> float:
    """Centre of gravity inside of the nearest face over whose two eyes the load would go."""
    over = [face for face in margin.faces(hang_seen, range(len(hang_seen.eyes))) if face.goes_over]
    if not over:
        raise NotApplicable("its centre of gravity hangs below its eyes: a push slackens a leg, and it comes back")

    return over[0].inside_m


def slack_couple_knm(gross_load_kn: float, cg_inside_m: float) -> float:
    """Couple about the hook that slackens a leg."""
    return margin.couple_that_slackens_knm(gross_load_kn, cg_inside_m)


def push_off_cg_m(top_z_m: float, bottom_z_m: float, cg_z_m: float) -> float:
    """Where a push does most: at the highest part or, as where the load catches on something, at the underside."""
    over_m, below_m = top_z_m - cg_z_m, cg_z_m - bottom_z_m

    return over_m if over_m >= below_m else below_m


def slack_push_kn(gross_load_kn: float, cg_inside_of_edge_m: float, push_off_cg_m: float) -> float:
    """Push at the top or the underside that slackens a leg and lets the load go over."""
    if push_off_cg_m <= cg_inside_of_edge_m:
        raise NotApplicable("no push at the top or the underside slackens a leg")

    return margin.push_that_slackens_kn(gross_load_kn, cg_inside_of_edge_m, push_off_cg_m)


def rise_to_go_over_m(plumb_m: float, cg_inside_of_edge_m: float) -> float:
    """How far the centre of gravity must be lifted to go over: slack that is taken up unevenly lifts it."""
    return margin.rise_before_it_goes_over_m(plumb_m, cg_inside_of_edge_m)


@check(
    "push at the top or the underside of a top-heavy load", source="STATICS_SLACKENING",
    rule_set="share of the load; " + HOUSE,
    close=PUSH_CLOSE.value * PUSH_TO_WITHSTAND.value - PUSH_TO_WITHSTAND.value,
)
def push_stability(slack_push_kn: float, gross_load_kn: float) -> Limit:
    """What must be withstood, against the push that slackens a leg: take up slack slowly and evenly all the same."""
    return Limit(PUSH_TO_WITHSTAND.value, slack_push_kn / gross_load_kn)


@at_nominal
@each("leg")
def leg_slack_m(leg_m: float, taut_m: float) -> float:
    """What a leg is longer than from its eye to the hook, by the lengths as entered."""
    return leg_m - taut_m


@each("leg")
@check("leg that hangs slack", unit="m", source="HOUSE_SETTING", rule_set=HOUSE, close=LEG_SLACK_CLOSE.value)
def legs_carry(leg_slack_m: float, several_legs: bool) -> Limit:
    """A leg that is clearly too long carries nothing until something slips."""
    return Limit(leg_slack_m, LEG_SLACK.value)


@each("leg")
@check("leg not too steep", source="EN_818_6", rule_set="EN 818-6, a caution below 15°")
def leg_upright(planned_leg_angle_deg: float, legs_meet: bool) -> State:
    """Steeper than 15° from vertical is a caution, never a failure: a straight pull is what a stud wants."""
    hangs = f"hangs {planned_leg_angle_deg:.1f}° from vertical"

    return State(True, hangs, "" if planned_leg_angle_deg >= STEEP_DEG else STEEP)


@each("leg")
@check(
    "angle as read against the plan", unit="°", source="HOUSE_SETTING", rule_set=HOUSE, close=ANGLE_AGREES_CLOSE.value
)
def angle_agrees(planned_leg_angle_deg: float, leg_angle_read_deg: float) -> Limit:
    """More, and the pulls rest on another geometry than is there."""
    return Limit(abs(planned_leg_angle_deg - leg_angle_read_deg), ANGLE_AGREES_WITHIN.value)


@at_nominal
def two_alone_t(two_would_carry: float, gross_load_t: float) -> float:
    """Most that a leg would pull, as entered, if two diagonal legs alone came tight."""
    return two_would_carry * gross_load_t


@check("how four legs share", source="NAVEDTRA_RIGGING", rule_set="rule chosen for a stiff load on four legs")
def sharing(share_rule: ShareRule, two_alone_t: float) -> State:
    """The rule that was chosen, and what two diagonal legs would carry."""
    return State(True, f"{share_rule.value}; two diagonal legs alone: up to {two_alone_t:.3g} t in a leg")
