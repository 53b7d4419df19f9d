"""How far people keep away, and whether who holds a tag line can hold it and stands outside."""

from math import ceil

from checklist_app.mechanics.sway import by_hand
from checklist_app.mechanics.sway import tag_line as lines
from checklist_app.mechanics.sway import zone as reach
from checklist_app.operations.check import Limit, State, check
from checklist_app.operations.graph import NotApplicable, at_nominal, when
from checklist_app.operations.settings import ZONE_MARGIN
from checklist_app.operations.straight_lift.ways import STAYING, TRAVELLING, TagLine, Way

N_IN_KN = 1000.0
STEP_M = 0.1
SMALL = 1e-9


@when("way_said", way=tuple(Way))
def way_is_said() -> bool:
    """Whether it was said where the load goes at all."""
    return True


def half_diagonal_m(load_length_m: float, load_width_m: float, way_said: bool) -> float:
    """The load's furthest corner from its middle: it may turn on its hook."""
    return reach.half_diagonal_m(load_length_m, load_width_m)


def load_height_m(bottom_z_m: float, top_z_m: float) -> float:
    """The load itself, from underside to top."""
    return top_z_m - bottom_z_m


def thrown_m(sideways_m_s: float, lift_height_m: float) -> float:
    """How far to one side it lands if it is let go at its fastest."""
    return reach.thrown_m(sideways_m_s, lift_height_m)


def zone_radius_m(half_diagonal_m: float, load_height_m: float, swing_out_m: float, thrown_m: float) -> float:
    """About the plumb line: furthest corner, a fall over its edge, swing and throw, and the margin of the house."""
    return reach.zone_radius_m(half_diagonal_m, load_height_m, swing_out_m + thrown_m, ZONE_MARGIN.value)


@when("kept_clear_m", way=TRAVELLING)
def strip_on_its_way(half_diagonal_m: float, swing_out_m: float) -> float:
    """Width of the strip along which it travels: the load may turn, and swings to both sides."""
    return reach.corridor_width_m(2.0 * half_diagonal_m, swing_out_m, ZONE_MARGIN.value)


@when("kept_clear_m", way=STAYING)
def no_strip() -> float:
    """It goes nowhere."""
    raise NotApplicable("the hook stays where it is")


@at_nominal
def zone_words(zone_radius_m: float, kept_clear_m: float | None) -> str:
    """The zone as it is told, rounded up."""
    strip = f"; on its way a strip of {_up(kept_clear_m)} is kept clear" if kept_clear_m is not None else ""

    return f"nobody within {_up(zone_radius_m)} of the plumb line{strip}"


@check("zone", source="GEOMETRY_OF_ZONES", rule_set="reach of the load; the margin is a setting of the house")
def zone(zone_words: str) -> State:
    """How far people keep away while the load hangs."""
    return State(True, zone_words)


@when("tag_held", tag_line=TagLine.HELD)
def held_by_hand() -> bool:
    """Somebody holds a line to the load."""
    return True


@when("tag_held", tag_line=TagLine.NONE)
def nobody_holds() -> bool:
    """Nobody does."""
    raise NotApplicable("no tag line")


def tag_below_level_deg(tag_below_deg: float, tag_held: bool, moved_aside: bool) -> float:
    """Tag line below level; a line that may rise a little pulls as a level one."""
    return 0.0 if tag_below_deg < 0.0 else tag_below_deg


def tag_aside_m(tag_off_plumb_m: float, tag_held: bool, moved_aside: bool) -> float:
    """Load held out of plumb towards the hand."""
    return 0.0 if tag_off_plumb_m < 0.0 else tag_off_plumb_m


def tag_holds_kn(gross_load_kn: float, hang_line_m: float, tag_aside_m: float, tag_below_level_deg: float) -> float:
    """Pull that holds the load out of plumb."""
    return lines.tag_line_pull_kn(gross_load_kn, hang_line_m, tag_aside_m, tag_below_level_deg)


def tag_in_wind_kn(side_wind_kn: float, hang_line_m: float, tag_aside_m: float, tag_below_level_deg: float) -> float:
    """Pull that holds it against the wind."""
    return by_hand.pull_against_side_force_kn(side_wind_kn, hang_line_m, tag_aside_m, tag_below_level_deg)


@check(
    "tag line, by hand", unit="N", source="HSE_L23", rule_set="guideline figures for one person, whoever it is",
    close=by_hand.pulled_by_hand_limit_n() - by_hand.kept_up_by_hand_n(),
)
def tag_line_pull(tag_holds_kn: float, tag_in_wind_kn: float) -> Limit:
    """Pull in the line against what one person starts or stops a load with; close above what he can keep up."""
    return Limit(N_IN_KN * (tag_holds_kn + tag_in_wind_kn), by_hand.pulled_by_hand_limit_n())


@check(
    "tag line long enough", unit="m", source="GEOMETRY_OF_ZONES", rule_set="reach of the load; settings of the house"
)
def tag_line_reach(zone_radius_m: float, tag_length_m: float, tag_below_level_deg: float) -> Limit:
    """Who holds it stands outside the zone."""
    return Limit(zone_radius_m, by_hand.stands_off_m(tag_length_m, tag_below_level_deg))


def _up(length_m: float) -> str:
    """A length, rounded up to the next tenth of a metre."""
    return f"{STEP_M * ceil(length_m / STEP_M - SMALL):.1f} m"
