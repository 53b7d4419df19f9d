"""How stiffly a load hangs: the couple about the hook that turns it one degree, as it hangs, legs taken not to stretch.

Two ways at a right angle to each other: in the plane of its slings, and about the line through its eyes.
"""

from checklist_app.mechanics.exact import RAD_IN_DEG
from checklist_app.mechanics.hanging import stiffness, two_hooks
from checklist_app.operations.check import State, check
from checklist_app.operations.graph import NotApplicable, at_nominal, when
from checklist_app.operations.straight_lift.choices import Rig
from checklist_app.operations.straight_lift.rigs import IN_SPACE, SEVERAL
from checklist_app.operations.straight_lift.two_hooks import Hung
from checklist_app.operations.words import figure

N_IN_KN = 1000.0
ON_ONE = (Rig.TWO_LEGS, Rig.RUNNING)


@when("turns_about_m", rig=Rig.ONE_LEG)
def about_the_one_eye(plumb_m: float, leg_m: tuple[float, ...]) -> float:
    """Centre of gravity below the one eye, about which it turns."""
    return plumb_m - leg_m[0]


@when("turns_about_m", rig=(Rig.TWO_LEGS, *SEVERAL))
def about_the_hook(plumb_m: float) -> float:
    """Centre of gravity below the hook: tight legs and load turn as one."""
    return plumb_m


@when("turns_about_m", rig=Rig.RUNNING)
def about_the_rocking_point(firm_m: float) -> float:
    """Centre of gravity below the point about which it rocks."""
    return firm_m


@when("turns_about_m", rig=Rig.TWO_HOOKS)
def about_both_hooks(swung: Hung) -> float:
    """As deep as a pendulum hangs that comes back as stiffly."""
    slack_m = two_hooks.couple_that_slackens_one_knm(swung, 1.0)
    if swung.turn_curve_m is None or swung.turn_curve_m > slack_m * RAD_IN_DEG:
        raise NotApplicable("its legs hang side by side, and hold it as it is until one goes slack")

    return swung.turn_curve_m


@when("rolls_about_m", rig=IN_SPACE)
def turns_alike_any_way(turns_about_m: float) -> float:
    """The same either way."""
    return turns_about_m


@when("rolls_about_m", rig=ON_ONE)
def below_the_line(plumb_m: float, eye_drop_m: tuple[float, ...], eye_reach_m: tuple[float, ...]) -> float:
    """Centre of gravity straight below the line through its eyes, as it hangs."""
    (left_drop, right_drop), (left_reach, right_reach) = eye_drop_m, eye_reach_m

    if not left_reach + right_reach > 0.0:
        raise NotApplicable("its eyes hang one under the other")

    return plumb_m - (left_drop * right_reach + right_drop * left_reach) / (left_reach + right_reach)


@when("rolls_about_m", rig=Rig.TWO_HOOKS)
def below_the_line_of_two(swung: Hung, picks_run_m: float, picks_rise_m: float, cg_from_left_hook_m: float,
                          cg_below_left_hook_m: float) -> float:
    """Centre of gravity straight below the line through its eyes, as it hangs."""
    if not picks_run_m > 0.0:
        raise NotApplicable("its eyes hang one under the other")
    line_m = swung.left.z + picks_rise_m * (cg_from_left_hook_m - swung.left.x) / picks_run_m

    return cg_below_left_hook_m + line_m


def hooks_slack_knm(gross_load_kn: float, swung: Hung) -> float:
    """Couple that slackens one of the legs of two hooks."""
    return two_hooks.couple_that_slackens_one_knm(swung, gross_load_kn)


def turns_by_nm(gross_load_kn: float, turns_about_m: float) -> float:
    """Couple that turns it 1° in the plane of its slings."""
    return stiffness.couple_for_one_degree_nm(gross_load_kn, turns_about_m)


def rolls_by_nm(gross_load_kn: float, rolls_about_m: float) -> float:
    """Couple that turns it 1° about the line through its eyes."""
    return stiffness.couple_for_one_degree_nm(gross_load_kn, rolls_about_m)


@at_nominal
@when("stiff_words", rig=IN_SPACE)
def turning_any_way(turns_by_nm: float) -> str:
    """One figure, any way."""
    return f"{figure(turns_by_nm, 'N·m')} N·m turn it 1° any way"


@at_nominal
@when("stiff_words", rig=ON_ONE)
def turning_two_ways(turns_by_nm: float, rolls_by_nm: float) -> str:
    """A figure for each of the two ways."""
    return f"{figure(turns_by_nm, 'N·m')} N·m turn it 1° in the plane of its slings, {_rolls(rolls_by_nm)}"


@at_nominal
@when("stiff_words", rig=Rig.TWO_HOOKS)
def turning_between_hooks(turns_by_nm: float | None, rolls_by_nm: float, hooks_slack_knm: float) -> str:
    """Legs that hang nearly side by side hold it until one of them goes slack."""
    slack_nm = N_IN_KN * hooks_slack_knm
    if turns_by_nm is None:
        held = f"the two hooks hold it in their plane until a leg goes slack, at about {figure(slack_nm, 'N·m')} N·m"
        return f"{held}; {_rolls(rolls_by_nm)}"

    return f"{figure(turns_by_nm, 'N·m')} N·m turn it 1° in the plane of the hooks, {_rolls(rolls_by_nm)}"


def _rolls(rolls_by_nm: float) -> str:
    return f"{figure(rolls_by_nm, 'N·m')} N·m turn it 1° about the line through its eyes"


@check("how stiffly it hangs", source="STATICS_SLACKENING", rule_set="legs taken not to stretch; they do a little")
def stiff(stiff_words: str) -> State:
    """It tells, and decides nothing: the stability checks do."""
    return State(True, stiff_words)
