"""The strength and limit checks of a straight lift. Their names stand in the procedure: a lost one is missed."""

from checklist_app.mechanics import angle_limits, angle_ratings, shackles
from checklist_app.mechanics import headroom as heights
from checklist_app.mechanics.fittings import eye_rating, eye_use
from checklist_app.mechanics.fittings import hooks as gathering
from checklist_app.mechanics.fittings.eye_marking import IN_LINE_UP_TO_DEG, EyeMarking, PullPlane, Seating
from checklist_app.mechanics.fittings.eye_use import EyeUse
from checklist_app.mechanics.slings import en_modes
from checklist_app.mechanics.weight import KG_IN_T
from checklist_app.operations.check import AtLimit, Limit, Strength, check
from checklist_app.operations.gear import Eye, Hoist, Hook, LoadCell, MasterLink, PickPoint, Shackle, Sling
from checklist_app.operations.graph import CannotAssess, NotApplicable, dont_know, each
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
from checklist_app.operations.straight_lift import eye_planes
from checklist_app.operations.straight_lift.trial_entries import LowEnd, LowSide
from checklist_app.operations.straight_lift.trial_tilt import off_plan_deg

PLATES = "rated load on plate and label"
LIES = "a shackle aside: WAC 296-155-33905 and makers' charts, 70 % up to 45°, 50 % beyond; its pin: EM 385-1-1"
HOUSE = "settings of the house"
TWO_IN_A_BOWL = 2
SIDE_BY_SIDE_DEG = 2.0 * en_modes.PARALLEL_UP_TO_DEG


@check("hoist", unit="t", source="PLATE", rule_set=PLATES)
def hoist_strength(moved_load_t: float, hoist: Hoist, one_hook: bool) -> Strength:
    """Everything on the hook against the hoist's plate, which contains its own hook unless it says otherwise."""
    if hoist.facts.get("hook_counts"):
        return Strength(moved_load_t + hoist.hook_mass_kg / KG_IN_T, hoist.wll_t)

    return Strength(moved_load_t, hoist.wll_t)


@check("load cell", unit="t", source="PLATE", rule_set=PLATES)
def load_cell_strength(moved_load_t: float, load_cell: LoadCell, one_hook: bool) -> Strength:
    """Everything on the hook against the load cell's plate."""
    return Strength(moved_load_t, load_cell.wll_t)


@check(
    "fitting that gathers both legs", unit="t", source="PLATE",
    rule_set="rated load; EN 13889, 120° between two legs in a bow; from memory, stricter only, 90° in a hook",
)
def hook_fitting_strength(
    moved_load_t: float, gathered_angle_deg: float, hook_fitting: Shackle | Hook | MasterLink | None,
    leg: tuple[str, ...], sling: tuple[Sling, ...], hook_fitting_heat_share: float,
    hook_shackle_share: float | None,
) -> Strength:
    """The legs on one fitting; without one they share the bowl of the hoist's hook, or the ring of their own sling."""
    if isinstance(hook_fitting, MasterLink):
        factor = gathering.master_link_factor(gathered_angle_deg)
        return Strength(moved_load_t, factor * hook_fitting.wll_t * hook_fitting_heat_share)
    if hook_fitting is None and 1 < len(leg) <= sling[0].legs and len({each.id for each in sling}) == 1:
        raise NotApplicable("the legs hang from the ring of their own sling")
    if len(leg) > TWO_IN_A_BOWL:
        raise CannotAssess("three or four legs gather in a master link; a hook or a shackle takes two")
    if isinstance(hook_fitting, Shackle):
        if hook_fitting.facts.get("form") == "dee" and (len(leg) > 1 or gathered_angle_deg > SIDE_BY_SIDE_DEG):
            raise CannotAssess("two legs gather in a bow shackle; a dee is for one, in line")
        bow_t = shackles.bow_wll_t(hook_fitting.wll_t, gathered_angle_deg)
        gathered = 1.0 if hook_shackle_share is None else hook_shackle_share
        return Strength(moved_load_t, bow_t * gathered * hook_fitting_heat_share)
    if isinstance(hook_fitting, Hook):
        bowl_t = shackles.hook_wll_t(hook_fitting.wll_t, gathered_angle_deg)
        return Strength(moved_load_t, bowl_t * hook_fitting_heat_share)

    shackles.hook_wll_t(moved_load_t, gathered_angle_deg)
    raise NotApplicable("the slings go straight on the hoist's hook, which the hoist's plate covers")


@each("leg")
@check("sling, by its own pull", unit="t", source="EN_1492_1", rule_set="mode factor of the hitch, by the rules chosen")
def sling_strength(leg_pull_t: float, sling_carries_t: float) -> Strength:
    """Pull in the leg against what the sling carries in its hitch; no factor for the angle on top."""
    return Strength(leg_pull_t, sling_carries_t)


@check("legs together, by the table", unit="t", source="EN_1492_1", rule_set="factors of legs, by the rules chosen")
def pair_strength(moved_load_t: float, legs_alike: bool, table_wll_t: float) -> Strength:
    """The load against the tabulated factor for so many legs, where the legs lie alike."""
    if not legs_alike:
        raise NotApplicable(
            "the legs do not lie alike within 15°, from vertical and seen from above: the table is for symmetric loads"
        )

    return Strength(moved_load_t, table_wll_t)


@each("leg")
@check("fitting at the top", unit="t", source="PLATE", rule_set=PLATES + "; " + LIES)
def top_fitting_strength(
    leg_pull_t: float, top_fitting: Shackle | Hook, part_off_deg: float, top_shackle_share: float,
    top_fitting_heat_share: float,
) -> Strength:
    """Pull in the leg against the fitting's marking; the two parts of a basket gather in it."""
    carries_t = _parts_gather_t(top_fitting, 2.0 * part_off_deg)

    return Strength(leg_pull_t, carries_t * top_shackle_share * top_fitting_heat_share)


@each("leg")
@check("fitting at the bottom", unit="t", source="PLATE", rule_set=PLATES + "; " + LIES)
def bottom_fitting_strength(
    leg_pull_t: float, bottom_fitting: Shackle | Hook, part_off_deg: float, bottom_shackle_share: float,
    bottom_fitting_heat_share: float,
) -> Strength:
    """Pull in the leg against the fitting's marking; a sling laid double through it leaves it in two parts."""
    carries_t = _parts_gather_t(bottom_fitting, 2.0 * part_off_deg)

    return Strength(leg_pull_t, carries_t * bottom_shackle_share * bottom_fitting_heat_share)


def _parts_gather_t(fitting: Shackle | Hook, apart_deg: float) -> float:
    """WLL of a fitting in which two parts gather so far apart; nothing apart is one part."""
    if isinstance(fitting, Hook):
        return shackles.hook_wll_t(fitting.wll_t, apart_deg)
    if fitting.facts.get("form") == "dee" and apart_deg > SIDE_BY_SIDE_DEG:
        raise CannotAssess("two parts gather in a bow shackle; a dee is for one, in line")

    return shackles.bow_wll_t(fitting.wll_t, apart_deg)


@each("leg")
@check("eye, at its angle", unit="t", source="PLATE", rule_set="the eye's own ratings, step by step")
def eye_strength(
    leg_pull_t: float, eye_angle_deg: float, eye: Eye, eye_turned: PullPlane | None, eye_heat_share: float
) -> Strength:
    """Pull along the leg against the eye's rating at that angle; off its axis across its ring only where so rated.

    Where nobody said how the ring lies, the lower of the two counts, if the eye is rated for both.
    """
    across = eye.facts.get("ratings_across")
    unrated = eye_turned is PullPlane.ACROSS and not across and "marking" not in eye.facts
    if unrated and not eye_angle_deg <= IN_LINE_UP_TO_DEG:
        raise CannotAssess("the pull is across the ring of the eye, and no rating across its ring is entered")
    counting = eye_planes.ratings_that_count(eye.ratings, across, eye_turned)

    return Strength(leg_pull_t, min(
        angle_ratings.wll_at_angle_t("eye", rows, eye_angle_deg, "PLATE") for rows in counting
    ) * eye_heat_share)


@each("leg")
def eye_is_marked(eye: Eye) -> bool:
    """Whether a standard is entered for the eye."""
    if "marking" not in eye.facts:
        raise NotApplicable("no standard is entered for the eye: its own ratings are looked at")

    return True


@each("leg")
@check("eye, by its marking", unit="t", source="DIN_580", rule_set="the table of the standard stamped on it")
def eye_marking(
    leg_pull_t: float, eye_angle_deg: float, eye: Eye, eye_turned: PullPlane | None, eye_is_marked: bool,
    bottom_fitting: Shackle | Hook | None, eye_heat_share: float, leg: str,
) -> Strength:
    """Pull along the leg against the table that belongs to the marking; the eye stays in this load, collar flat."""
    if isinstance(bottom_fitting, Hook):
        eye_use.eye_use_factor(EyeUse.HOOK_FREE, EyeMarking(eye.marking) in eye_rating.COLLAR)

    return Strength(leg_pull_t, eye_planes.lower_of_planes_t(lambda plane: eye_rating.eye_wll_t(
        EyeMarking(eye.marking), eye.thread, eye.stamped_t, eye_angle_deg, plane, Seating.FLAT, False
    ), eye_turned, leg) * eye_heat_share)


@each("leg")
@check("what carries the eye", unit="t", source="PICK_POINT_EVIDENCE", rule_set="the load's own pick points")
def carrier_strength(leg_pull_t: float, eye_angle_deg: float, carrier: PickPoint) -> Strength:
    """Pull along the leg against the rating of what the eye stands on, with its evidence."""
    if not carrier.ratings:
        raise CannotAssess("what carries the eye has no rating")
    rated_t = angle_ratings.wll_at_angle_t("pick point", carrier.ratings, eye_angle_deg, "PICK_POINT_EVIDENCE")

    return Strength(leg_pull_t, rated_t)


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


@dont_know("low_end")
@each("trial")
def low_end_unknown() -> LowEnd:
    """As of what is said to hang level: it may lie to either end, and the worse is taken."""
    return LowEnd.LEVEL


@dont_know("low_side")
@each("trial")
def low_side_unknown() -> LowSide:
    """As of what is said to hang level: it may lie to either side, and the worse is taken."""
    return LowSide.LEVEL


@check(
    "tilt at the trial against the plan", unit="°", source="HOUSE_SETTING", rule_set=HOUSE,
    close=TILT_AGREES_CLOSE.value,
)
def tilt_agrees(
    planned_tilt_along_deg: float, planned_tilt_across_deg: float, tilt_along_deg: tuple[float, ...],
    tilt_across_deg: tuple[float, ...], low_end: tuple[LowEnd | None, ...], low_side: tuple[LowSide | None, ...],
) -> Limit:
    """The greater difference, lengthwise or crosswise: more, and the strengths rest on another geometry than hung.

    Where it was said which hung low, as much to the other side does not agree.
    """
    if not tilt_along_deg or not tilt_across_deg:
        raise NotApplicable("before the trial")
    off_along_deg = off_plan_deg(planned_tilt_along_deg, tilt_along_deg[-1], low_end[-1])
    off_across_deg = off_plan_deg(planned_tilt_across_deg, tilt_across_deg[-1], low_side[-1])

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
