"""A complete input as `assess` takes it: a generating set of 1.18 t goes off its bed, by its two brackets."""

from typing import Any


def _leg(side: str, number: int) -> dict[str, Any]:
    return {
        "label": side,
        "sling": {
            "kind": "round_sling", "id": f"R-{number}", "wll_t": 2.0, "length_m": 1.5, "mass_kg": 1.3,
            "standard": "EN 1492-2", "fibre": "polyester",
        },
        "hitch": "straight",
        "top_fitting": {"not_used": "sling eye goes into the gathering shackle"},
        "bottom_fitting": {"kind": "shackle", "id": f"S-{number}", "wll_t": 2.0, "reach_m": 0.06, "mass_kg": 0.7},
        "eye": {
            "id": f"E-{number}", "standard": "DIN 580, M24", "reach_m": 0.05, "mass_kg": 0.9,
            "ratings": [{"up_to_deg": 5, "wll_t": 1.8}, {"up_to_deg": 45, "wll_t": 1.29}],
        },
        "carrier": {
            "id": f"generating set, {side} bracket", "evidence": "plate on the bracket",
            "ratings": [{"up_to_deg": 30, "wll_t": 1.5}, {"up_to_deg": 45, "wll_t": 1.2}],
        },
    }


EXAMPLE: dict[str, Any] = {
    "operation": "straight_lift",
    "entries": {
        "day": "2026-11-25",
        "mass_kg": {"value": 1180, "how": "weighed"},
        "eyes_given": "distance",
        "eyes_apart_m": {"value": 1.15, "how": "tape"},
        "right_eye_higher_m": {"value": 0, "how": "tape"},
        "cg_x_m": {"value": 0.58, "how": "trial"},
        "cg_y_m": {"value": 0, "how": "drawing"},
        "cg_z_m": {"value": -0.58, "how": "trial"},
        "bottom_z_m": {"value": -1.2, "how": "tape"},
        "top_z_m": {"value": 0.2, "how": "tape"},
        "lift_height_m": {"value": 0.5, "how": "tape"},
        "highest_hook_m": {"value": 3.6, "how": "drawing"},
        "room_height_m": {"value": 4.2, "how": "tape"},
        "hoist": {"id": "H-1", "wll_t": 3.2},
        "load_cell": {"not_used": "none here"},
        "hook_fitting": {"kind": "shackle", "id": "S-50", "wll_t": 4.75, "reach_m": 0.1, "mass_kg": 2.3},
    },
    "legs": [_leg("left", 21), _leg("right", 22)],
}
