"""Complete inputs as `assess` takes them: a generating set of 1.18 t on its skid, and with it on a lorry."""

from typing import Any

Input = dict[str, Any]


def _how(value: float, how: str = "tape") -> Input:
    return {"value": value, "how": how}


def _at(name: str, x: float, y: float, z: float) -> Input:
    return {f"{name}_x_m": x, f"{name}_y_m": y, f"{name}_z_m": z}


def _strap(number: int) -> Input:
    return {
        "kind": "web_lashing", "id": f"L-{number:02}", "lc_dan": 2500, "stf_dan": 350, "shf_dan": 50, "length_m": 6,
        "width_mm": 50, "marked": True, "origin": "bought",
    }


def _diagonal(number: int, label: str, forward: float, left: float) -> Input:
    """From a lug at the base frame's post to a ring of the skid, or of the deck."""
    return {
        "label": label, "lashing_item": _strap(number), "put_on": "diagonal lashing", "passes": ELSEWHERE,
        "edges": "it bends round no edge", "held_dan": 4000, "from_body": "the load",
        **_at("at", 0.55 * forward, 0.30 * left, 0.85),
    }


ELSEWHERE = "it goes to an eye, a ring or the deck"
CORNERS = (("left front", 1, 1), ("right front", 1, -1), ("left rear", -1, 1), ("right rear", -1, -1))
SKID: Input = {
    "kind": "pallet", "id": "P-3", "form": "skid", "length_m": 1.8, "width_m": 1.2, "height_m": 0.15, "mass_kg": 95,
    "rated_kg": 2500, "rated_for": "on feet, anywhere on the deck", "bearers": 3, "bearer_m": 1.8, "marked": True,
    "treated_mark": True, "origin": "bought",
}
LORRY: Input = {
    "kind": "vehicle", "id": "V-2", "form": "lorry", "gross_t": 11.99, "payload_kg": 5200, "deck_length_m": 6.2,
    "deck_width_m": 2.4, "headboard_dan": 2000, "anchor_dan": 2000, "front_axle_m": 0.4, "wheelbase_m": 4.2,
    "front_axle_kg": 2400, "rear_axle_kg": 5600, "floor_kg_m": 4000, "marked": True, "origin": "bought",
    "load_plan": [
        {"from_headboard_m": 1.0, "most_kg": 1600}, {"from_headboard_m": 2.8, "most_kg": 5200},
        {"from_headboard_m": 3.6, "most_kg": 5200}, {"from_headboard_m": 5.5, "most_kg": 2400},
    ],
}
LOAD: Input = {
    "day": "2026-11-25",
    "mass_kg": _how(1180, "weighed"),
    "cg_x_m": _how(0.03, "trial"), "cg_y_m": _how(0.0, "trial"), "cg_z_m": _how(0.62, "trial"),
    "length_m": _how(1.55), "width_m": _how(0.8), "height_m": _how(1.25),
    "stands": "on feet or bearers at its edges",
    "base_length_m": _how(1.3), "base_width_m": _how(0.75),
    "edge_gives_m": {"not_used": "steel feet on hard bearers"},
    "pallet": SKID, "bearing": "on feet, anywhere on the deck", "pallet_lies": "its longer side forwards",
    "load_pair": "bare metal foot on timber, pallet or plywood", "load_surface": "oil or grease",
    "route": "by road", "rule_set": "EN 12195-1:2010",
}
ON_PALLET: Input = {
    "operation": "pallet_lashing",
    "entries": LOAD | {
        "floor_kg_m": {"not_used": "solid ground"},
        "forks_apart_m": _how(1.0), "forks_reach_m": _how(1.15),
        "forks_enter": "from a side, the forks across its length",
    },
    "lashings": [
        _diagonal(number, label, forward, left) | _at("anchor", 0.85 * forward, 0.55 * left, 0.0)
        | {"to_body": "the pallet or skid", "anchor_dan": 2000}
        for number, (label, forward, left) in enumerate(CORNERS, 1)
    ],
    "blocks": [],
}
ON_VEHICLE: Input = {
    "operation": "vehicle_lashing",
    "entries": LOAD | {
        "vehicle": LORRY,
        "deck_pair": "sawn timber or wooden pallet on plywood or laminate", "deck_surface": "swept clean, wet",
        "behind_headboard_m": _how(3.2), "other_kg": {"not_used": "it travels alone"},
    },
    "lashings": [
        _diagonal(number, label, forward, left) | _at("anchor", 1.5 * forward, 1.1 * left, -0.15)
        | {"to_body": "the deck", "anchor_dan": 2000}
        for number, (label, forward, left) in enumerate(CORNERS, 11)
    ],
    "blocks": [],
}
