"""Every operation there is, by name."""

from checklist_app.operations import pallet_lashing, straight_lift, vehicle_lashing
from checklist_app.operations.operation import CAUTIONS, Operation

# The names stand here a second time on purpose: a check function that got lost is missed when this is imported.
STRAIGHT_LIFT_CHECKS = (
    "hoist_strength", "load_cell_strength", "hook_fitting_strength", "hook_hoist_strength", "hook_load_cell_strength",
    "hook_together",
    "sling_strength", "pair_strength", "top_fitting_strength", "bottom_fitting_strength", "eye_strength",
    "eye_marking", "eye_stays_in", "carrier_strength", "edge", "temperature", "chemicals_resisted", "slip",
    "leg_angle", "leg_upright", "angle_agrees", "legs_carry", "sharing", "hook_plumb", "stability", "push_stability",
    "stiff", "running_depth", "running_push", "running_sway", "running_wind", "running_holds",
    "tilt_along", "tilt_across", "tilt_agrees",
    "headroom", "room", "mass_agrees", "wind_limit", "wind_stability", "wind_tilt", "swing_limit", "swing_stability",
    "side_room", "zone", "tag_line_pull", "tag_line_reach", "hoist_usable", "load_cell_usable", "hook_fitting_usable",
    "hook_hoist_usable", "hook_load_cell_usable", "sling_usable", "top_fitting_usable", "bottom_fitting_usable",
    "eye_usable",
)
STRAIGHT_LIFT_CAUTIONS = (
    *CAUTIONS,
    "Each eye and pick point is taken to have its axis upright in the load: one screwed into a side is pulled at"
    " another angle, and these checks do not cover it.",
    "The load is known at its eyes and its centre of gravity: what reaches out beyond the eyes comes lower, and higher,"
    " when it tilts.",
)
LASHING_CHECKS = (
    "sliding", "tipping", "lashing_strength", "anchor_strength", "load_eye_strength", "wandering",
    "lashing_number", "aggregate_wll", "held_down",
    "pallet_strength", "overhang", "strap_through_pallet", "pallet_usable", "steel_on_steel", "edge_guarded",
    "tie_down_label", "lashing_usable", "slope_agrees", "heading_agrees",
)
PALLET_LASHING_CHECKS = (*LASHING_CHECKS, "floor_load", "fork_tilt")
VEHICLE_LASHING_CHECKS = (
    *LASHING_CHECKS, "deck_sliding", "deck_tipping", "load_wandering", "anchor_rating", "headboard_rating", "on_deck",
    "vehicle_usable", "payload", "load_plan", "front_axle", "rear_axle", "deck_floor",
)
LASHING_CAUTIONS = (
    *CAUTIONS,
    "The middle between the feet is taken to stand on the middle of the pallet, its longer side along theirs.",
    "A load on feet bears evenly on a pallet only over a spreader under them.",
    "The load is taken as stiff and whole: what is loose on it, and thin walls of a crate, hold nothing and are held by"
    " nothing.",
    "Tension falls as load and straps settle: draw all lashings again after 10 to 50 km, and after every halt.",
    "When it is unloaded the last two lashings stay on until hook or truck holds it.",
)
VEHICLE_LASHING_CAUTIONS = (
    *LASHING_CAUTIONS,
    "The load is taken to stand in the middle of the width of the deck.",
    "Whoever drives may refuse the load, and looks at it himself before he leaves.",
)
OPERATIONS = {
    operation.name: operation
    for operation in (
        Operation(
            straight_lift.NAME, straight_lift.WORDS, straight_lift.TABLE, straight_lift.EXAMPLE, STRAIGHT_LIFT_CHECKS,
            picture="picture", class_quantity="lift_class", cautions=STRAIGHT_LIFT_CAUTIONS,
        ),
        Operation(
            pallet_lashing.NAME, pallet_lashing.WORDS, pallet_lashing.TABLE, pallet_lashing.EXAMPLE,
            PALLET_LASHING_CHECKS, picture="picture", class_quantity="lashing_class",
            cautions=LASHING_CAUTIONS,
        ),
        Operation(
            vehicle_lashing.NAME, vehicle_lashing.WORDS, vehicle_lashing.TABLE, vehicle_lashing.EXAMPLE,
            VEHICLE_LASHING_CHECKS, picture="picture", class_quantity="lashing_class",
            cautions=VEHICLE_LASHING_CAUTIONS,
        ),
    )
}

__all__ = ["OPERATIONS", "Operation"]
