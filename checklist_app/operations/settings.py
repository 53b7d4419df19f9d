"""What the workshop itself decided: named, with its unit, and printed as the house's own wherever it is used."""

from dataclasses import dataclass

HOUSE_VALUE = "house value"


@dataclass(frozen=True)
class Setting:
    """One value of the house."""

    name: str
    words: str
    value: float
    unit: str = ""
    source: str = HOUSE_VALUE


CLOSE_FROM = Setting("close_from", "a strength check is close to limit above this utilisation", 0.75)
TILT_LIMIT = Setting("tilt_limit_deg", "greatest tilt as it hangs", 3.0, "°")
TILT_CLOSE_FROM = Setting("tilt_close_from_deg", "a tilt is close to limit from here", 2.0, "°")
TILT_AGREES_WITHIN = Setting("tilt_agrees_within_deg", "measured and planned tilt may differ by this", 3.0, "°")
TILT_AGREES_CLOSE = Setting("tilt_agrees_close_deg", "their difference is close to limit this near to it", 1.0, "°")
HEADROOM_LEFT = Setting("headroom_left_m", "least height left over the hook", 0.20, "m")
HEADROOM_CLOSE_BELOW = Setting("headroom_close_below_m", "headroom is close to limit below this", 0.30, "m")
DYNAMIC_FACTOR = Setting("dynamic_factor", "dynamic factor in normal hoisting; the WLL contains it", 1.0)
TAPE = Setting("spread_tape_m", "spread of a length measured with a tape", 0.010, "m")
TAG_LENGTH = Setting("spread_tag_length", "spread of a length read from a tag, as a share of it", 0.02)
CG_DRAWING = Setting("spread_cg_drawing_m", "spread of a centre of gravity from a drawing", 0.020, "m")
CG_TRIAL = Setting("spread_cg_trial_m", "spread of a centre of gravity from a trial lift", 0.030, "m")
CG_BY_EYE = Setting("spread_cg_by_eye_m", "spread of a centre of gravity judged by eye", 0.100, "m")
MASS_WEIGHED = Setting("contingency_weighed", "contingency of a mass that was weighed", 1.03)
MASS_PLATE = Setting("contingency_plate", "contingency of a mass from a plate or a drawing of this build", 1.05)
MASS_ADDED = Setting("contingency_added", "contingency of a maker's dry mass with listed parts and fluids added", 1.10)
MASS_SISTER = Setting("contingency_sister", "contingency of a mass taken from an identical sister", 1.15)
MASS_CALCULATED = Setting("contingency_calculated", "contingency of a mass added up from its parts", 1.15)
MASS_ESTIMATE = Setting("contingency_estimate", "contingency of a mass that is an estimate", 1.25)
LOAD_CELL_READING = Setting("spread_load_cell", "spread of a reading on a load cell, as a share of it", 0.02)
INCLINOMETER = Setting("spread_inclinometer_deg", "spread of a tilt read on an inclinometer", 0.2, "°")
SPIRIT_LEVEL = Setting("spread_spirit_level_deg", "spread of a tilt by spirit level or plumb line", 0.5, "°")
ANGLE_INCLINOMETER = Setting("spread_angle_inclinometer_deg", "spread of an angle read on a sling", 1.0, "°")
ANGLE_BY_EYE = Setting("spread_angle_by_eye_deg", "spread of an angle judged by eye", 5.0, "°")
FRICTION_MEASURED = Setting("spread_friction", "spread of a measured friction, as a share of it", 0.20)
HOOK_LOAD_OVER_PLAN = Setting("hook_load_over_plan", "highest load at the trial, as a share of the plan", 1.03)
LEG_AGREES_WITHIN = Setting("leg_agrees_within", "a measured leg may differ from its gear by this share", 0.10)
HEIGHTS_AGREE_WITHIN = Setting("heights_agree_within", "heights of the hook by leg angles may differ by", 0.10)
ANGLE_AGREES_WITHIN = Setting("angle_agrees_within_deg", "a leg as read and as computed may differ by this", 5.0, "°")
ANGLE_AGREES_CLOSE = Setting("angle_agrees_close_deg", "their difference is close to limit this near to it", 2.0, "°")
LEG_SLACK = Setting("leg_slack_m", "a leg may hang this slack by the lengths as entered", 0.03, "m")
LEG_SLACK_CLOSE = Setting("leg_slack_close_m", "a slack leg is close to limit this near to it", 0.02, "m")
PUSH_TO_WITHSTAND = Setting("push_to_withstand", "push at either end that slackens no leg, share of the load", 0.05)
PUSH_CLOSE = Setting("push_close", "a push is close to limit below so many times what must be withstood", 2.0)
TURNED_LIMIT = Setting("turned_limit_deg", "a load on a running sling may be turned by push or swing", 10.0, "°")
TURNED_CLOSE_FROM = Setting("turned_close_from_deg", "such a turn is close to limit from here", 5.0, "°")
HOOK_OUT_OF_PLUMB = Setting("hook_out_of_plumb_deg", "a hoist may be pulled this far out of plumb", 3.0, "°")
HOOK_OUT_OF_PLUMB_CLOSE = Setting("hook_out_of_plumb_close_deg", "out of plumb is close this near to it", 2.0, "°")
SLIP_CLOSE = Setting("slip_close", "friction is close to limit when this little is left", 0.05)
LEG_ANGLE_CLOSE = Setting("leg_angle_close_deg", "a leg is close to limit this near to its flattest", 5.0, "°")
STABILITY_CLOSE_BELOW = Setting(
    "stability_close_below_m", "a centre of gravity is close to limit when this little below the eyes", 0.05, "m"
)
WIND_LIMIT = Setting("wind_limit_m_s", "strongest gust in which a load is lifted outdoors", 9.0, "m/s")
WIND_CLOSE_FROM = Setting("wind_close_from_m_s", "a gust is close to limit from here", 7.0, "m/s")
WIND_MEASURED = Setting("spread_wind_measured", "spread of a wind measured on the spot, as a share of it", 0.10)
WIND_FORECAST = Setting("spread_wind_forecast", "spread of a forecast gust, as a share of it", 0.25)
GUST_AT_ONCE = Setting("gust_at_once", "a gust that comes at once counts for so many times its steady push", 2.0)
SPEED_KNOWN = Setting("spread_speed", "spread of a travelling speed by plate or clock, as a share of it", 0.10)
SPEED_BY_EYE = Setting("spread_speed_by_eye", "spread of a speed judged by eye, as a share of it", 0.50)
SWING_LIMIT = Setting("swing_limit_deg", "farthest that a load may swing out of plumb", 10.0, "°")
SWING_CLOSE_FROM = Setting("swing_close_from_deg", "a swing is close to limit from here", 7.0, "°")
SIDE_ROOM_LEFT = Setting("side_room_left_m", "least room left beside a load that swings", 0.10, "m")
SIDE_ROOM_CLOSE_BELOW = Setting("side_room_close_below_m", "room at the side is close to limit below this", 0.20, "m")
ZONE_MARGIN = Setting("zone_margin_m", "what the house adds to the reach of a load, all round", 1.0, "m")
LASHING_AGREES_WITHIN = Setting("lashing_agrees_within_deg", "a lashing as read and by its ends may differ", 5.0, "°")
LASHING_AGREES_CLOSE = Setting("lashing_agrees_close_deg", "their difference is close to limit this near", 2.0, "°")
HEADING_TELLS_UP_TO = Setting("heading_tells_up_to_deg", "a steeper lashing has no heading worth reading", 80.0, "°")
ONE_RING_WITHIN = Setting("one_ring_within_m", "two lashings this near to each other are on one ring", 0.05, "m")
END_BEYOND = Setting("end_beyond_m", "an end of a lashing may lie this far outside load, pallet or deck", 0.20, "m")
MEASURES_DIFFER = Setting("measures_differ_m", "two lengths of one load may contradict each other by", 0.02, "m")
FORK_TILT = Setting("fork_tilt_deg", "mast, tyres and ground may tilt a load on forks by this", 10.0, "°")
FORK_BRAKING = Setting("fork_braking", "a truck brakes and turns with a load by this share of g", 0.10)
FORK_TILT_CLOSE = Setting("fork_tilt_close_deg", "a load on forks is close to going over this near to it", 5.0, "°")
SIGNS_ALONE = Setting("signs_alone_h", "a phone signs for so long after it last reached the server", 24.0, "h")

SETTINGS = {each.name: each for each in tuple(globals().values()) if isinstance(each, Setting)}
