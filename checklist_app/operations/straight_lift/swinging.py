"""How far the load swings out of plumb when the hook stops and the wind blows, and what it then meets."""

from checklist_app.mechanics.sway import stopping, swing, two_machines
from checklist_app.operations.check import Limit, check
from checklist_app.operations.graph import Known, NotApplicable, when
from checklist_app.operations.settings import (
    PUSH_TO_WITHSTAND,
    SIDE_ROOM_CLOSE_BELOW,
    SIDE_ROOM_LEFT,
    SWING_CLOSE_FROM,
    SWING_LIMIT,
)
from checklist_app.operations.straight_lift.choices import Rig
from checklist_app.operations.straight_lift.rigs import ON_ONE_HOOK
from checklist_app.operations.straight_lift.ways import MOVED, STAYING, TRAVELLING, Way

HOUSE = "settings of the house"
START_AND_STOP = 2.0


@when("travels", way=TRAVELLING)
def hook_travels() -> bool:
    """The hook goes sideways with the load."""
    return True


@when("travels", way=STAYING)
def hook_stays() -> bool:
    """The hook stays where it is."""
    raise NotApplicable("the hook stays where it is")


@when("moved_aside", way=MOVED)
def something_moves_it() -> bool:
    """Wind or travel brings it out of plumb."""
    return True


@when("moved_aside", way=Way.STILL)
def nothing_moves_it() -> bool:
    """Straight up and down out of the wind it stays plumb."""
    raise NotApplicable("straight up and down, out of the wind")


def hang_line_m(hook_below_m: float, fittings_m: float, plumb_m: float, moved_aside: bool) -> float:
    """From where the hoist line hangs down to the centre of gravity."""
    return hook_below_m + fittings_m + plumb_m


@when("dead_stop_swing_deg", rig=ON_ONE_HOOK)
def swung_by_a_dead_stop(travel_speed_m_s: float, stop_line_m: float, travels: bool) -> float:
    """How far a load that hung still swings when its hook stops dead."""
    return swing.swing_after_stop_deg(travel_speed_m_s, stop_line_m)


@when("dead_stop_swing_deg", rig=Rig.TWO_HOOKS)
def swung_by_two_dead_stops(travel_speed_m_s: float, stop_line_m: float, travels: bool) -> float:
    """The same between two hooks, whichever stops first."""
    return two_machines.swing_of_two_deg(travel_speed_m_s, stop_line_m)


def braking_m_s2(travel_speed_m_s: float, stopping_m: float, travels: bool) -> float:
    """How hard the hook brakes."""
    return stopping.braking_m_s2(travel_speed_m_s, stopping_m)


def braked_swing_deg(braking_m_s2: float) -> float:
    """How far a load that hung still swings when its hook brakes so hard for as long as it likes."""
    return swing.swing_after_sudden_start_deg(braking_m_s2)


@when("stop_swing_deg", stopping_m=Known.YES)
def stop_over_a_way(dead_stop_swing_deg: float, braked_swing_deg: float) -> float:
    """Braking that long or stopping dead: the lesser, for neither swings it further."""
    return braked_swing_deg if braked_swing_deg <= dead_stop_swing_deg else dead_stop_swing_deg


@when("stop_swing_deg", stopping_m=Known.NO)
def stop_at_once(dead_stop_swing_deg: float) -> float:
    """Nobody knows how far it runs on: it stops dead."""
    return dead_stop_swing_deg


@when("travel_swing_deg", way=TRAVELLING)
def swung_by_travel(stop_swing_deg: float) -> float:
    """The start is as hard as the stop, and the stop comes at the worst moment of the swing from the start."""
    return START_AND_STOP * stop_swing_deg


@when("travel_swing_deg", way=STAYING)
def swung_by_no_travel() -> float:
    """A hook that stays swings nothing."""
    return 0.0


def swing_deg(travel_swing_deg: float, wind_swing_deg: float) -> float:
    """Farthest out of plumb: travel and gust at once."""
    return travel_swing_deg + wind_swing_deg


@when("swing_out_m", way=MOVED)
def swings_out(hang_line_m: float, swing_deg: float) -> float:
    """How far to one side the load comes."""
    return swing.swing_out_m(hang_line_m, swing_deg)


@when("swing_out_m", way=Way.STILL)
def stays_plumb() -> float:
    """Straight up and down, out of the wind it stays where it is."""
    return 0.0


@when("sideways_m_s", way=Way.STILL)
def no_speed() -> float:
    """It goes nowhere sideways."""
    return 0.0


@when("sideways_m_s", way=Way.WIND)
def speed_of_the_swing(hang_line_m: float, swing_deg: float) -> float:
    """Fastest as it passes plumb."""
    return stopping.speed_at_plumb_m_s(hang_line_m, swing_deg)


@when("sideways_m_s", way=TRAVELLING)
def speed_of_swing_and_hook(hang_line_m: float, swing_deg: float, travel_speed_m_s: float) -> float:
    """Fastest as it passes plumb while the hook still travels."""
    return stopping.speed_at_plumb_m_s(hang_line_m, swing_deg) + travel_speed_m_s


def lean_kn(gross_load_kn: float, swing_deg: float, travels: bool) -> float:
    """Push of the load at the end of its swing against what it catches on along its way."""
    return stopping.leaning_push_kn(gross_load_kn, swing_deg)


@check(
    "swing out of plumb", unit="°", source="HOUSE_SETTING", rule_set=HOUSE,
    close=SWING_LIMIT.value - SWING_CLOSE_FROM.value,
)
def swing_limit(swing_deg: float, moved_aside: bool) -> Limit:
    """Travel and gust at once; beyond it the pull in hoist and slings grows as well."""
    return Limit(swing_deg, SWING_LIMIT.value)


@check(
    "top-heavy load that swings and catches", source="STATICS_SLACKENING", rule_set="share of the load; " + HOUSE,
    close=PUSH_TO_WITHSTAND.value,
)
def swing_stability(lean_kn: float, slack_push_kn: float, gross_load_kn: float) -> Limit:
    """It leans with its top or underside on what it meets, against the push there that slackens a leg."""
    return Limit(lean_kn / gross_load_kn, slack_push_kn / gross_load_kn)


@check(
    "room at the side", unit="m", source="HOUSE_SETTING", rule_set=HOUSE,
    close=SIDE_ROOM_CLOSE_BELOW.value - SIDE_ROOM_LEFT.value,
)
def side_room(side_room_m: float, swing_out_m: float, moved_aside: bool) -> Limit:
    """What is left beside the load at the end of its swing."""
    return Limit(SIDE_ROOM_LEFT.value, side_room_m - swing_out_m)
