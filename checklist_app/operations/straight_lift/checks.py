"""The strength and limit checks of a straight lift. Their names stand in the procedure: a lost one is missed."""

from checklist_app.mechanics import angle_limits, angle_ratings, shackles, sling_modes
from checklist_app.mechanics import headroom as heights
from checklist_app.mechanics.slings.kinds import Hitch
from checklist_app.mechanics.weight import KG_IN_T
from checklist_app.operations.check import AtLimit, Limit, Strength, check
from checklist_app.operations.gear import Eye, Hoist, Hook, LoadCell, MasterLink, PickPoint, Shackle, Sling
from checklist_app.operations.graph import CannotAssess, NotApplicable, each
from checklist_app.operations.settings import (
    HEADROOM_CLOSE_BELOW,
    HEADROOM_LEFT,
    HOOK_LOAD_OVER_PLAN,
    LEG_ANGLE_CLOSE,
    STABILITY_CLOSE_BELOW,
    TILT_AGREES_CLOSE,
    TILT_AGREES_WITHIN,
    TILT_CLOSE_FROM,
    TILT_LIMIT,
)

PLATES = "rated load on plate and label"
HOUSE = "settings of the house"


@check("hoist", unit="t", source="PLATE", rule_set=PLATES)
def hoist_strength(gross_load_t: float, hoist: Hoist) -> Strength:
    """Everything on the hook against the hoist's plate, which contains its own hook unless it says otherwise."""
    if hoist.facts.get("hook_counts"):
        return Strength(gross_load_t + hoist.hook_mass_kg / KG_IN_T, hoist.wll_t)

    return Strength(gross_load_t, hoist.wll_t)


@check("load cell", unit="t", source="PLATE", rule_set=PLATES)
def load_cell_strength(gross_load_t: float, load_cell: LoadCell) -> Strength:
    """Everything on the hook against the load cell's plate."""
    return Strength(gross_load_t, load_cell.wll_t)


@check(
    "fitting that gathers both legs", unit="t", source="PLATE",
    rule_set="rated load; EN 13889, 120° between two legs in a bow; from memory, stricter only, 90° in a hook",
)
def hook_fitting_strength(
    gross_load_t: float, included_angle_deg: float, hook_fitting: Shackle | Hook | MasterLink | None
) -> Strength:
    """Both legs on one fitting; without one they share the bowl of the hoist's hook."""
    if isinstance(hook_fitting, Shackle):
        if hook_fitting.facts.get("form") == "dee":
            raise CannotAssess("two legs gather in a bow shackle; a dee is for one, in line")
        return Strength(gross_load_t, shackles.bow_wll_t(hook_fitting.wll_t, included_angle_deg))
    if isinstance(hook_fitting, MasterLink):
        return Strength(gross_load_t, hook_fitting.wll_t)
    if isinstance(hook_fitting, Hook):
        return Strength(gross_load_t, shackles.hook_wll_t(hook_fitting.wll_t, included_angle_deg))

    shackles.hook_wll_t(gross_load_t, included_angle_deg)
    raise NotApplicable("the slings go straight on the hoist's hook, which the hoist's plate covers")


@each("leg")
@check("sling, by its own pull", unit="t", source="EN_1492_1", rule_set="EN 1492, mode factor of one straight leg")
def sling_strength(leg_load_t: float, sling: Sling, hitch: Hitch) -> Strength:
    """Pull in the leg against the sling's label for the hitch."""
    return Strength(leg_load_t, sling_modes.hitch_factor(hitch) * sling.wll_t)


@check("pair of slings, by the table", unit="t", source="EN_1492_1", rule_set="EN 1492, mode factors of two legs")
def pair_strength(
    gross_load_t: float, legs_alike: bool, leg_angle_deg: tuple[float, ...], sling: tuple[Sling, ...],
    hitch: tuple[Hitch, ...],
) -> Strength:
    """The load against the tabulated factor for two legs, where the legs lie alike."""
    if not legs_alike:
        raise NotApplicable("the legs lie more than 15° apart: the table is for symmetric loads")
    (left_deg, right_deg), (left, right), (left_hitch, right_hitch) = leg_angle_deg, sling, hitch
    factor = sling_modes.two_leg_factor(left_deg if left_deg >= right_deg else right_deg)
    left_wll_t = sling_modes.hitch_factor(left_hitch) * left.wll_t
    right_wll_t = sling_modes.hitch_factor(right_hitch) * right.wll_t

    return Strength(gross_load_t, sling_modes.pair_wll_t(left_wll_t, right_wll_t, factor))


@each("leg")
@check("fitting at the top", unit="t", source="PLATE", rule_set=PLATES)
def top_fitting_strength(leg_load_t: float, top_fitting: Shackle | Hook) -> Strength:
    """Pull in the leg, in line, against the fitting's marking."""
    return Strength(leg_load_t, top_fitting.wll_t)


@each("leg")
@check("fitting at the bottom", unit="t", source="PLATE", rule_set=PLATES)
def bottom_fitting_strength(leg_load_t: float, bottom_fitting: Shackle | Hook) -> Strength:
    """Pull in the leg, in line, against the fitting's marking."""
    return Strength(leg_load_t, bottom_fitting.wll_t)


@each("leg")
@check("eye, at its angle", unit="t", source="PLATE", rule_set="the eye's own ratings, step by step")
def eye_strength(leg_load_t: float, eye_angle_deg: float, eye: Eye) -> Strength:
    """Pull along the leg against the eye's rating at that angle."""
    return Strength(leg_load_t, angle_ratings.wll_at_angle_t("eye", eye.ratings, eye_angle_deg, "PLATE"))


@each("leg")
@check("what carries the eye", unit="t", source="PICK_POINT_EVIDENCE", rule_set="the load's own pick points")
def carrier_strength(leg_load_t: float, eye_angle_deg: float, carrier: PickPoint) -> Strength:
    """Pull along the leg against the rating of what the eye stands on, with its evidence."""
    if not carrier.ratings:
        raise CannotAssess("what carries the eye has no rating")
    rated_t = angle_ratings.wll_at_angle_t("pick point", carrier.ratings, eye_angle_deg, "PICK_POINT_EVIDENCE")

    return Strength(leg_load_t, rated_t)


@each("leg")
@check("leg from vertical", unit="°", source="EN_818_4", rule_set="EN 818-4, EN 1492", close=LEG_ANGLE_CLOSE.value)
def leg_angle(leg_angle_deg: float) -> Limit:
    """Leg as it hangs; no rating goes further."""
    return Limit(leg_angle_deg, angle_limits.leg_from_vertical_limit_deg())


@check(
    "centre of gravity below the eyes", unit="m", source="STATICS_TWO_PICKS", rule_set="two picks",
    at_limit=AtLimit.REFUSED, close=STABILITY_CLOSE_BELOW.value,
)
def stability(cg_below_m: float) -> Limit:
    """With two picks, a centre of gravity on or above the line through them turns over."""
    return Limit(0.0, cg_below_m)


@check(
    "tilt lengthwise", unit="°", source="HOUSE_SETTING", rule_set=HOUSE,
    close=TILT_LIMIT.value - TILT_CLOSE_FROM.value, trial_tells=True,
)
def tilt_along(hung_tilt_along_deg: float, tilt_along_deg: tuple[float, ...]) -> Limit:
    """As it will hang; once a trial was made, as it hung at the last one."""
    return _tilt(hung_tilt_along_deg, tilt_along_deg)


@check(
    "tilt crosswise", unit="°", source="HOUSE_SETTING", rule_set=HOUSE,
    close=TILT_LIMIT.value - TILT_CLOSE_FROM.value, trial_tells=True,
)
def tilt_across(hung_tilt_across_deg: float, tilt_across_deg: tuple[float, ...]) -> Limit:
    """As it will hang; once a trial was made, as it hung at the last one."""
    return _tilt(hung_tilt_across_deg, tilt_across_deg)


def _tilt(planned_deg: float, measured_deg: tuple[float, ...]) -> Limit:
    if measured_deg:
        return Limit(measured_deg[-1], TILT_LIMIT.value, measured=True)

    return Limit(abs(planned_deg), TILT_LIMIT.value)


@check(
    "tilt at the trial against the plan", unit="°", source="HOUSE_SETTING", rule_set=HOUSE,
    close=TILT_AGREES_CLOSE.value,
)
def tilt_agrees(
    planned_tilt_along_deg: float, planned_tilt_across_deg: float, tilt_along_deg: tuple[float, ...],
    tilt_across_deg: tuple[float, ...],
) -> Limit:
    """The greater difference, lengthwise or crosswise: more, and the strengths rest on another geometry than hung.

    A measured tilt has no side: a load that hangs as much to the other side agrees here.
    """
    if not tilt_along_deg or not tilt_across_deg:
        raise NotApplicable("before the trial")
    off_along_deg = abs(planned_tilt_along_deg - tilt_along_deg[-1])
    off_across_deg = abs(planned_tilt_across_deg - tilt_across_deg[-1])

    return Limit(
        off_along_deg if off_along_deg >= off_across_deg else off_across_deg, TILT_AGREES_WITHIN.value, measured=True
    )


@check(
    "room over the hook", unit="m", source="HOUSE_SETTING", rule_set=HOUSE,
    close=HEADROOM_CLOSE_BELOW.value - HEADROOM_LEFT.value,
)
def headroom(highest_hook_m: float, hook_height_m: float) -> Limit:
    """What is left up to the hook's end stop at the highest moment."""
    return Limit(HEADROOM_LEFT.value, heights.left_above_m(highest_hook_m, hook_height_m))


@check(
    "room over the load", unit="m", source="HOUSE_SETTING", rule_set=HOUSE,
    close=HEADROOM_CLOSE_BELOW.value - HEADROOM_LEFT.value,
)
def room(room_height_m: float, top_height_m: float) -> Limit:
    """What is left between the highest part of the load and the room."""
    return Limit(HEADROOM_LEFT.value, heights.left_above_m(room_height_m, top_height_m))


@check("hook load at the trial", unit="kg", source="HOUSE_SETTING", rule_set=HOUSE)
def mass_agrees(mass_kg: float, rigging_mass_kg: float, hook_load_kg: tuple[float | None, ...]) -> Limit:
    """Hook load at the last trial against what was planned: more means another mass, or something still holds it."""
    if not hook_load_kg:
        raise NotApplicable("before the trial")
    if hook_load_kg[-1] is None:
        raise NotApplicable("no load cell at the trial")

    return Limit(hook_load_kg[-1], mass_kg * HOOK_LOAD_OVER_PLAN.value + rigging_mass_kg)
