"""Which facts of gear are asked when it is added on the spot: what one reads from its label or plate, in that order."""
SLUNG = ("form", "pin", "wll_t", "length_m", "legs", "wll_to_45_t", "wll_to_60_t", "grade", "size_mm", "pin_mm",
         "diameter_mm", "core", "termination", "fibre", "reach_m", "highest_hook_m", "calibrated_until", "mass_kg",
         "standard", "coldest_c", "marked", "origin")
FOLDED = frozenset({"wll_to_45_t", "wll_to_60_t", "pin", "pin_mm", "core", "termination", "mass_kg", "standard",
                    "coldest_c"})
FOLDED_OF_TEXTILE = frozenset({"legs", "fibre"})
TEXTILE = frozenset({"flat_sling", "round_sling"})
"""What a label also says and a lift can mostly be assessed without: two taps further, so that the rest takes 20 s."""
BOTH = ("marked", "origin")
OF_LASHING = ("lc_dan", "stf_dan", *BOTH)
ALSO_OF_LASHING = ("length_m", "wll_kg", "shf_dan", "breaking_kn", "width_mm", "size_mm", "diameter_mm", "standard")
OF_KIND = {
    **dict.fromkeys(("web_lashing", "chain_lashing", "rope_lashing"), (OF_LASHING, ALSO_OF_LASHING)),
    "mat": (("thickness_mm", *BOTH), ("standard",)),
    "pallet": (("form", "length_m", "width_m", "height_m", "rated_kg", "rated_for", "mass_kg", *BOTH),
               ("bearers", "bearer_m", "treated_mark")),
    "vehicle": (("form", "gross_t", "payload_kg", "deck_length_m", "deck_width_m", "anchor_dan", *BOTH),
                ("headboard_dan", "floor_kg_m", "front_axle_m", "wheelbase_m", "front_axle_kg", "rear_axle_kg")),
}
"""What is asked at once, and what stands folded below it."""


def label_of(kind: str) -> tuple[str, ...]:
    """Every fact that is asked of a kind."""
    asked, also = OF_KIND.get(kind, (SLUNG, ()))
    return (*asked, *also)


def folded_of(kind: str) -> frozenset[str]:
    """Those of them that stand folded."""
    if kind in OF_KIND:
        return frozenset(OF_KIND[kind][1])
    return FOLDED | (FOLDED_OF_TEXTILE if kind in TEXTILE else frozenset())
