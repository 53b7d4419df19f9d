"""Wind on the hanging load: how hard a gust pushes it, how far it tilts and swings, and the house's own limit."""

from checklist_app.mechanics.hanging import margin
from checklist_app.mechanics.sway import rolling, wind
from checklist_app.mechanics.sway.wind import Shape
from checklist_app.operations.check import Limit, check
from checklist_app.operations.graph import Known, NotApplicable, when
from checklist_app.operations.settings import (
    GUST_AT_ONCE,
    PUSH_TO_WITHSTAND,
    TILT_CLOSE_FROM,
    TILT_LIMIT,
    WIND_CLOSE_FROM,
    WIND_LIMIT,
)
from checklist_app.operations.straight_lift.ways import INDOORS, OUTDOORS

HOUSE = "settings of the house"
AT_ONCE = "settings of the house: a gust that comes at once counts twice"


@when("windy", way=OUTDOORS)
def out_in_the_wind() -> bool:
    """Outdoors it is windy."""
    return True


@when("windy", way=INDOORS)
def out_of_the_wind() -> bool:
    """Indoors it is not."""
    raise NotApplicable("indoors")


def wind_pressure_pa(gust_m_s: float, windy: bool) -> float:
    """Pressure of the gust."""
    return wind.wind_pressure_n_m2(gust_m_s)


@when("wind_area_m2", side_area_m2=Known.YES)
def side_as_measured(side_area_m2: float) -> float:
    """The side that the wind meets, as entered."""
    return side_area_m2


@when("wind_area_m2", side_area_m2=Known.NO)
def side_by_outline(load_length_m: float, load_width_m: float, bottom_z_m: float, top_z_m: float) -> float:
    """The side that the wind meets: the longer side times the height."""
    longer_m = load_length_m if load_length_m >= load_width_m else load_width_m

    return longer_m * (top_z_m - bottom_z_m)


@when("wind_z_m", side_area_z_m=Known.YES)
def middle_as_measured(side_area_z_m: float) -> float:
    """Height at which the wind pushes, as entered."""
    return side_area_z_m


@when("wind_z_m", side_area_z_m=Known.NO)
def middle_by_outline(bottom_z_m: float, top_z_m: float) -> float:
    """Height at which the wind pushes: half way between underside and top."""
    return (bottom_z_m + top_z_m) / 2.0


def wind_drag(wind_shape: Shape) -> float:
    """How bluntly the load meets the wind."""
    return wind.drag_coefficient(wind_shape)


def wind_force_kn(wind_pressure_pa: float, wind_drag: float, wind_area_m2: float) -> float:
    """Steady push of the wind of the gust."""
    return wind.wind_force_kn(wind_pressure_pa, wind_drag, wind_area_m2)


def gust_push_kn(wind_force_kn: float) -> float:
    """What a gust that comes at once counts for: it moves the load twice as far as the steady push."""
    return GUST_AT_ONCE.value * wind_force_kn


def wind_over_cg_m(wind_z_m: float, cg_z_m: float) -> float:
    """Push of the wind over the centre of gravity, below 0 when under it."""
    return wind_z_m - cg_z_m


def wind_slack_push_kn(gross_load_kn: float, cg_inside_of_edge_m: float, wind_over_cg_m: float, windy: bool) -> float:
    """Push at that height that slackens a leg and lets the load go over."""
    off_m = abs(wind_over_cg_m)
    if off_m <= cg_inside_of_edge_m:
        raise NotApplicable("the wind pushes so near its centre of gravity that no push slackens a leg")

    return margin.push_that_slackens_kn(gross_load_kn, cg_inside_of_edge_m, off_m)


@check(
    "wind on a top-heavy load", source="STATICS_SLACKENING", rule_set="share of the load; " + AT_ONCE,
    close=PUSH_TO_WITHSTAND.value,
)
def wind_stability(gust_push_kn: float, wind_slack_push_kn: float, gross_load_kn: float) -> Limit:
    """The gust against the push that slackens a leg; close while the push that the house asks for no longer fits in."""
    return Limit(gust_push_kn / gross_load_kn, wind_slack_push_kn / gross_load_kn)


def picks_off_wind_m(wind_over_cg_m: float, cg_below_m: float) -> float:
    """Push of the wind above or below the line through two picks."""
    return abs(wind_over_cg_m - cg_below_m)


@check(
    "tilt about two picks in the gust", unit="°", source="STATICS_TWO_PICKS", rule_set=AT_ONCE,
    close=TILT_LIMIT.value - TILT_CLOSE_FROM.value,
)
def wind_tilt(
    wind_force_kn: float, picks_off_wind_m: float, gross_load_kn: float, cg_below_m: float, two_picks: bool
) -> Limit:
    """Nothing but the depth of its centre of gravity keeps a load on two picks from rolling about them."""
    rolled_deg = rolling.rolled_by_side_force_deg(wind_force_kn, picks_off_wind_m, gross_load_kn, cg_below_m)

    return Limit(GUST_AT_ONCE.value * rolled_deg, TILT_LIMIT.value)


@check(
    "gust outdoors", unit="m/s", source="HOUSE_SETTING", rule_set="limit of the house; the maker's own may be lower",
    close=WIND_LIMIT.value - WIND_CLOSE_FROM.value,
)
def wind_limit(gust_m_s: float, windy: bool) -> Limit:
    """The strongest gust against what the house lifts in."""
    return Limit(gust_m_s, WIND_LIMIT.value)


@when("wind_swing_deg", way=OUTDOORS)
def swung_by_the_gust(wind_force_kn: float, gross_load_kn: float) -> float:
    """How far a gust that comes at once swings the load out of plumb: twice as far as the steady push holds it."""
    return GUST_AT_ONCE.value * wind.held_off_plumb_deg(wind_force_kn, gross_load_kn)


@when("wind_swing_deg", way=INDOORS)
def swung_by_no_gust() -> float:
    """Indoors no gust swings it."""
    return 0.0


@when("side_wind_kn", way=OUTDOORS)
def wind_from_the_side(wind_force_kn: float) -> float:
    """What a tag line holds against: the steady push, for hands give way to a blow."""
    return wind_force_kn


@when("side_wind_kn", way=INDOORS)
def no_wind_from_the_side() -> float:
    """Indoors a tag line holds against no wind."""
    return 0.0
