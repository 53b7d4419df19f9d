"""Complete inputs of the straight lift beside its own example: four legs, two hooks, slings laid round, the way."""

from copy import deepcopy
from typing import Any

from checklist_app.operations.straight_lift import EXAMPLE

Input = dict[str, Any]


def _tape(value: float) -> Input:
    return {"value": value, "how": "tape"}


def _leg(label: str, at: tuple[float, float], **changes: Any) -> Input:
    leg: Input = deepcopy(EXAMPLE["legs"][0])
    for name in ("sling", "bottom_fitting", "eye"):
        leg[name]["id"] = f"{leg[name]['id']}-{label}"
    leg |= {"label": label, "eye_x_m": _tape(at[0]), "eye_y_m": _tape(at[1]), "eye_z_m": _tape(0.0)}
    return leg | changes


def _entries(**changes: Any) -> Input:
    return {name: given for name, given in (deepcopy(EXAMPLE["entries"]) | changes).items() if given is not None}


BY_POINTS: Input = {"eyes_given": "coordinates", "eyes_apart_m": None, "right_eye_higher_m": None}
LINK: Input = {"kind": "master_link", "id": "L-4", "wll_t": 4.25, "reach_m": 0.14, "mass_kg": 3.1}
FOUR_LEGS: Input = {
    "operation": "straight_lift",
    "entries": _entries(
        **BY_POINTS, rig="four legs on one hook", hook_fitting=LINK, cg_y_m={"value": 0.36, "how": "drawing"},
        sling_temperature_c=35, chemicals="none",
    ),
    "legs": [_leg(label, at) for label, at in (
        ("left_front", (0.0, 0.0)), ("right_front", (1.15, 0.0)), ("left_rear", (0.0, 0.7)),
        ("right_rear", (1.15, 0.7)),
    )],
}
TWO_HOOKS: Input = {
    "operation": "straight_lift",
    "entries": _entries(
        **BY_POINTS, rig="two hooks, a leg on each", hoist=None, load_cell=None, hook_fitting=None,
    ),
    "legs": [_leg("left", (0.0, 0.0)), _leg("right", (1.15, 0.0))],
    "hooks": [
        {"label": label, "hook_hoist": {"id": f"H-{label}", "wll_t": 2.0}, "hook_load_cell": {"not_used": "none here"},
         "hook_at_x_m": _tape(at), "hook_over_m": _tape(0.0)}
        for label, at in (("left", 0.0), ("right", 1.15))
    ],
}
CHAIN: Input = {
    "kind": "chain_sling", "id": "C-2", "wll_t": 2.0, "length_m": 1.5, "mass_kg": 3.0, "grade": "grade 8", "size_mm": 8,
}
ROPE: Input = {
    "kind": "wire_rope_sling", "id": "W-2", "wll_t": 2.0, "length_m": 1.5, "mass_kg": 3.0, "diameter_mm": 14,
    "core": "steel", "termination": "steel ferrule",
}
LAID_ROUND: Input = {
    "operation": "straight_lift",
    "entries": _entries(rule_set="US practice after ASME B30.9: sine of the angle from horizontal, choker ratings by"
                                 " angle of choke", sling_temperature_c=150),
    "legs": [
        deepcopy(EXAMPLE["legs"][0]) | {
            "sling": CHAIN, "hitch": "choked", "choke_angle_deg": {"value": 128, "how": "inclinometer"},
            "stop": "a collar below the noose", "edge_mm": 18, "edge_protected": "not protected, and no face is rough",
            "leg_angle_read_deg": {"value": 22, "how": "inclinometer"},
        },
        deepcopy(EXAMPLE["legs"][1]) | {
            "sling": ROPE, "hitch": "basket", "part_angle_deg": {"value": 3, "how": "by eye"}, "bend_mm": 300,
            "stop": "nothing but friction", "face": "dry and swept clean",
            "friction": {"value": 0.6, "how": "measured"},
        },
    ],
}
ON_THE_WAY: Input = FOUR_LEGS | {"entries": FOUR_LEGS["entries"] | {
    "way": "outdoors, the hook travels with it", "load_length_m": _tape(1.6), "load_width_m": _tape(0.9),
    "side_room_m": _tape(1.4), "hook_below_m": {"value": 1.8, "how": "drawing"},
    "travel_speed_m_s": {"value": 0.2, "how": "plate"}, "stopping_m": _tape(0.15),
    "gust_m_s": {"value": 4, "how": "forecast"}, "wind_shape": "any other, or not known", "side_area_m2": 1.9,
    "side_area_z_m": _tape(-0.4), "tag_line": "held by hand", "tag_length_m": _tape(6),
    "tag_below_deg": {"value": 18, "how": "by eye"}, "tag_off_plumb_m": _tape(0),
}}
FROSTY_BOW: Input = EXAMPLE["legs"][0]["bottom_fitting"] | {"form": "bow", "pin": "screw pin", "coldest_c": -40}
IN_LINE: Input = {"shackle_pull": "in line with its body", "shackle_pin": "one part, and nothing runs over it"}
IN_THE_GUST: Input = {"operation": "straight_lift", "entries": ON_THE_WAY["entries"] | {
    "rig": "two legs on one hook", "hook_fitting": EXAMPLE["entries"]["hook_fitting"], "sling_temperature_c": 5,
    "hook_shackle": "the legs in its bow, its pin on the hook", "cg_y_m": {"value": 0, "how": "drawing"},
}, "legs": [_leg("left", (0.0, 0.0), **IN_LINE), _leg("right", (1.15, 0.0), **IN_LINE | {
    "bottom_fitting": FROSTY_BOW, "shackle_pull": "aside, up to 45° from in line",
})]}
IN_FROST: Input = {"operation": "straight_lift", "entries": _entries(
    **BY_POINTS, rig="one sling, straight down", hook_fitting={"not_used": "none here"}, sling_temperature_c=-28,
    chemicals="none", cg_x_m={"value": 0.0, "how": "trial"}, mass_kg={"value": 640, "how": "weighed"},
    way="indoors, the hook travels with it", load_length_m=_tape(0.6), load_width_m=_tape(0.6), side_room_m=_tape(1.0),
    hook_below_m=_tape(2.2), travel_speed_m_s={"value": 0.25, "how": "plate"}, stopping_m="don't know",
    tag_line="no tag line",
), "legs": [_leg("left", (0.0, 0.0), **IN_LINE | {
    "bottom_fitting": FROSTY_BOW, "eye": EXAMPLE["legs"][0]["eye"] | {"coldest_c": -40},
    "turning": "the eye swivels on its bolt, as a hoist ring does",
})]}
TOGETHER: Input = TWO_HOOKS | {"entries": TWO_HOOKS["entries"] | {
    "way": "indoors, the hook travels with it", "load_length_m": _tape(1.6), "load_width_m": _tape(0.9),
    "side_room_m": _tape(1.4), "hook_below_m": {"value": 1.8, "how": "drawing"},
    "travel_speed_m_s": {"value": 0.2, "how": "plate"}, "stopping_m": _tape(0.15), "out_of_step_m": _tape(0.04),
    "tag_line": "no tag line",
}}
ONE_SLING: Input = {"kind": "round_sling", "id": "R-9", "wll_t": 2.0, "length_m": 2.9, "mass_kg": 2.0,
                    "thickness_mm": 18}
RUNNING: Input = {
    "operation": "straight_lift",
    "entries": _entries(rig="one sling running free over the hook", running_m=_tape(3.0), over_hook_mm=60),
    "legs": [deepcopy(leg) | {"sling": ONE_SLING, "hitch": "straight"} for leg in EXAMPLE["legs"]],
}
MORE = (FOUR_LEGS, TWO_HOOKS, LAID_ROUND, ON_THE_WAY, IN_THE_GUST, IN_FROST, TOGETHER, RUNNING)
