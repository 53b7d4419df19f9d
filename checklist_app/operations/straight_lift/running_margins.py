"""How a load on a running sling holds out: its depth, its pulls, and how far a push or its swing turns it."""

from checklist_app.mechanics import leg_tension
from checklist_app.mechanics.hanging import margin, running_turn, stiffness
from checklist_app.mechanics.hanging.running_ellipse import Turned
from checklist_app.mechanics.sway import stopping
from checklist_app.operations.check import AtLimit, Limit, State, check
from checklist_app.operations.graph import NotApplicable, across, at_nominal, by_search, kept, when
from checklist_app.operations.settings import (
    PUSH_TO_WITHSTAND,
    STABILITY_CLOSE_BELOW,
    TILT_CLOSE_FROM,
    TILT_LIMIT,
    TURNED_CLOSE_FROM,
    TURNED_LIMIT,
)
from checklist_app.operations.straight_lift.choices import Rig
from checklist_app.operations.straight_lift.rigs import NONE_RUNS, OTHERS
from checklist_app.operations.words import figure

HOUSE = "settings of the house"
SOURCE = "STATICS_RUNNING_SLING"
HANDS = (
    "it turns easily, and jerks where the sling stuck: hands off, stand where it cannot turn to, and take two slings"
    " wherever they can be had"
)


@check(
    "centre of gravity as deep as a running sling needs it", unit="m", source=SOURCE, rule_set="friction not counted",
    at_limit=AtLimit.REFUSED, close=STABILITY_CLOSE_BELOW.value,
)
def running_depth(depth_to_stay_m: float, depth_there_m: float) -> Limit:
    """Below the eyes by half the span squared over the hook's height, or the sling runs to one end."""
    return Limit(depth_to_stay_m, depth_there_m)


@across("leg")
def running_share(
    leg_m: tuple[float, ...], eye_drop_m: tuple[float, ...], eye_reach_m: tuple[float, ...], sling_runs: bool
) -> tuple[float, ...]:
    """Pull in each part while the sling runs, as a share of the load: by statics the same in both."""
    (left_m, right_m), (left_drop_m, right_drop_m), (left_reach_m, right_reach_m) = leg_m, eye_drop_m, eye_reach_m

    return (
        leg_tension.share_of_leg(left_m, left_drop_m, left_reach_m, right_drop_m, right_reach_m),
        leg_tension.share_of_leg(right_m, right_drop_m, right_reach_m, left_drop_m, left_reach_m),
    )


@when("share_as_it_hangs", rig=Rig.RUNNING)
@across("leg")
def share_while_it_sticks(included_angle_deg: float, leg: tuple[str, ...]) -> tuple[float, ...]:
    """Most that either part pulls, as a share of the load: where the sling sticks on the hook one has more."""
    share = running_turn.share_where_it_sticks(included_angle_deg)

    return tuple(share for _ in leg)


def rocking_m(part_m: tuple[float, ...], leg_angle_deg: tuple[float, ...]) -> float:
    """How far below the hook the point lies about which the load rocks as the sling runs."""
    (left_m, right_m), (left_deg, right_deg) = part_m, leg_angle_deg

    return running_turn.rocking_radius_m(left_m, right_m, (left_deg + right_deg) / 2.0)


def firm_m(plumb_m: float, rocking_m: float) -> float:
    """Centre of gravity below the point about which the load rocks: all that brings it back."""
    return plumb_m - rocking_m


@at_nominal
def run_out(span_m: float, over_hook_m: float, cg_from_middle_m: float, depth_there_m: float, firm_m: float) -> Turned:
    """Where it would run on by itself."""
    return running_turn.runs_out(span_m, over_hook_m, cg_from_middle_m, depth_there_m)


@by_search
@at_nominal
def run_out_lever_m(run_out: Turned) -> float:
    """The couple for that, as a lever of the weight."""
    return run_out.lever_m


def run_out_knm(gross_load_kn: float, run_out_lever_m: float) -> float:
    """Couple about the hook at which the load runs on by itself to the end of its sling."""
    return margin.couple_that_slackens_knm(gross_load_kn, run_out_lever_m)


@at_nominal
@when("running_words", rig=Rig.RUNNING)
def what_the_sling_does(
    running_share: tuple[float, ...], leg_share: tuple[float, ...], gross_load_t: float, gross_load_kn: float,
    firm_m: float, plumb_m: float, run_out_knm: float, run_out: Turned, included_angle_deg: float,
) -> str:
    """What the sling does, in figures."""
    one_degree_nm = stiffness.couple_for_one_degree_nm(gross_load_kn, firm_m)
    of_two_nm = stiffness.couple_for_one_degree_nm(gross_load_kn, plumb_m)

    return (
        f"{included_angle_deg:.0f}° between its parts; each pulls {running_share[0] * gross_load_t:.2f} t, and one up"
        f" to {max(leg_share) * gross_load_t:.2f} t where it sticks on the hook; {figure(one_degree_nm, 'N·m')} N·m"
        f" turn it 1°, where two slings would take {figure(of_two_nm, 'N·m')} N·m; at {figure(run_out_knm, 'kN·m')}"
        f" kN·m, turned {run_out.turned_deg:.0f}°, it runs out"
    )


@at_nominal
@when("running_words", rig=OTHERS)
def no_words_of_running() -> str:
    """Every leg is held at the hook."""
    raise NotApplicable(NONE_RUNS)


@check("sling that runs over the hook", source=SOURCE, rule_set="friction up to 0.3 on the hook, from memory")
def running_holds(running_words: str) -> State:
    """Pulls, and how little resists turning."""
    return State(True, running_words, HANDS)


def push_lever_m(push_off_cg_m: float, lean_kn: float | None, gross_load_kn: float) -> float:
    """The push that the house asks for, or the lean at the end of a swing, as a lever of the weight."""
    share = PUSH_TO_WITHSTAND.value
    if lean_kn is not None and lean_kn / gross_load_kn > share:
        share = lean_kn / gross_load_kn

    return share * push_off_cg_m


def sway_rise_m(hang_line_m: float, swing_deg: float, moved_aside: bool) -> float:
    """How high the centre of gravity comes at the end of its swing."""
    return stopping.rise_of_swing_m(hang_line_m, swing_deg)


def gust_lever_m(gust_push_kn: float, wind_over_cg_m: float, gross_load_kn: float) -> float:
    """The gust over or under the centre of gravity, as a lever of the weight."""
    return gust_push_kn * abs(wind_over_cg_m) / gross_load_kn


@by_search
@kept
@when("push_turns_deg", rig=Rig.RUNNING)
def turned_by_the_push(
    span_m: float, over_hook_m: float, cg_from_middle_m: float, depth_there_m: float, push_lever_m: float, firm_m: float
) -> float:
    """How far that push at the top or the underside turns the load."""
    return running_turn.turned_by_lever_deg(span_m, over_hook_m, cg_from_middle_m, depth_there_m, push_lever_m)


@by_search
@kept
@when("sway_turns_deg", rig=Rig.RUNNING)
def turned_by_the_swing(
    span_m: float, over_hook_m: float, cg_from_middle_m: float, depth_there_m: float, sway_rise_m: float, firm_m: float
) -> float:
    """How far the load turns if all its swing goes into turning."""
    return running_turn.turned_by_rise_deg(span_m, over_hook_m, cg_from_middle_m, depth_there_m, sway_rise_m)


@by_search
@kept
@when("gust_turns_deg", rig=Rig.RUNNING)
def turned_by_the_gust(
    span_m: float, over_hook_m: float, cg_from_middle_m: float, depth_there_m: float, gust_lever_m: float, firm_m: float
) -> float:
    """How far the gust turns the load."""
    return running_turn.turned_by_lever_deg(span_m, over_hook_m, cg_from_middle_m, depth_there_m, gust_lever_m)


@when("push_turns_deg", rig=OTHERS)
def no_push_turns_it() -> float:
    """Every leg is held at the hook."""
    raise NotApplicable(NONE_RUNS)


@when("sway_turns_deg", rig=OTHERS)
def no_swing_turns_it() -> float:
    """Every leg is held at the hook."""
    raise NotApplicable(NONE_RUNS)


@when("gust_turns_deg", rig=OTHERS)
def no_gust_turns_it() -> float:
    """Every leg is held at the hook."""
    raise NotApplicable(NONE_RUNS)


@check(
    "push at the top or the underside on a running sling", unit="°", source=SOURCE, rule_set=HOUSE,
    close=TURNED_LIMIT.value - TURNED_CLOSE_FROM.value,
)
def running_push(push_turns_deg: float) -> Limit:
    """Two slings turn under a push as a pendulum does; on one that runs the load turns many times as far."""
    return Limit(push_turns_deg, TURNED_LIMIT.value)


@check(
    "swing that turns the load on a running sling", unit="°", source=SOURCE, rule_set="balance of energy; " + HOUSE,
    close=TURNED_LIMIT.value - TURNED_CLOSE_FROM.value,
)
def running_sway(sway_turns_deg: float) -> Limit:
    """A stop or a gust swings it, and all of that can go into turning."""
    return Limit(sway_turns_deg, TURNED_LIMIT.value)


@check(
    "gust that turns the load on a running sling", unit="°", source=SOURCE,
    rule_set="settings of the house: a gust that comes at once counts twice",
    close=TILT_LIMIT.value - TILT_CLOSE_FROM.value,
)
def running_wind(gust_turns_deg: float) -> Limit:
    """The gust over or under its centre of gravity, held against what a load may tilt."""
    return Limit(gust_turns_deg, TILT_LIMIT.value)
