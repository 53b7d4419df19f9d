"""The kinds that hold a load on its way: lashings by their label, mats, pallets and skids, vehicles."""

from itertools import pairwise

from checklist_app.mechanics.lashing.pallet import Bearing
from checklist_app.operations.fields import Field
from checklist_app.operations.kind import CHOICE, FLAG, KEPT, MADE, NUMBER, ROWS, WHOLE, Facts, Kind

LABEL = (
    Field("lc_dan", "LC on the label", NUMBER, "daN", 50.0, 50_000.0, usual=(250.0, 10_000.0),
          hint="Lashing capacity in straight pull, not the one of the strap laid round."),
    Field("wll_kg", "WLL on the label", NUMBER, "kg", 50.0, 50_000.0, usual=(300.0, 8_000.0),
          hint="On labels by American rules, which print no LC."),
    Field("stf_dan", "STF on the label", NUMBER, "daN", 20.0, 5_000.0, usual=(100.0, 1_500.0),
          hint="Tension by the standard hand force. Where the label has none it is no tie-down."),
    Field("shf_dan", "SHF on the label", NUMBER, "daN", 10.0, 100.0, usual=(25.0, 50.0)),
    Field("breaking_kn", "breaking strength", NUMBER, "kN", 1.0, 2_000.0, usual=(10.0, 250.0),
          hint="Asked for by Annex 13 and by American rules. Left open: the rating stands in for it."),
    Field("length_m", "length", NUMBER, "m", 0.2, 50.0, usual=(1.0, 12.0)),
)
WEB = (
    *MADE, *LABEL,
    Field("width_mm", "width of the webbing", NUMBER, "mm", 15.0, 150.0, usual=(25.0, 75.0)), *KEPT,
)
CHAIN = (
    *MADE, *LABEL,
    Field("size_mm", "nominal size", NUMBER, "mm", 4.0, 32.0, usual=(6.0, 16.0)), *KEPT,
)
ROPE = (
    *MADE, *LABEL,
    Field("diameter_mm", "diameter of the rope", NUMBER, "mm", 4.0, 40.0, usual=(6.0, 16.0)), *KEPT,
)
MAT = (*MADE, Field("thickness_mm", "thickness", NUMBER, "mm", 1.0, 40.0, usual=(3.0, 12.0)), *KEPT)
PALLET = (
    Field("form", "what it is", CHOICE, required=True, choices=("European pallet", "pallet", "skid", "crate base")),
    Field("length_m", "length", NUMBER, "m", 0.3, 12.0, True, usual=(0.6, 3.0)),
    Field("width_m", "width", NUMBER, "m", 0.3, 3.0, True, usual=(0.6, 2.0)),
    Field("height_m", "height", NUMBER, "m", 0.03, 1.0, True, usual=(0.1, 0.3)),
    Field("rated_kg", "rating", NUMBER, "kg", 50.0, 50_000.0, usual=(500.0, 6_000.0),
          hint="As marked, or by its drawing. A European pallet has the one of its standard."),
    Field("rated_for", "the rating is for a load that stands", CHOICE, choices=tuple(b.value for b in Bearing)),
    Field("bearers", "bearers under it", WHOLE, low=1.0, high=12.0, usual=(2.0, 5.0)),
    Field("bearer_m", "length of a bearer that bears", NUMBER, "m", 0.05, 12.0, usual=(0.6, 3.0)),
    Field("boards_dan", "what its boards hold against a strap", NUMBER, "daN", 10.0, 20_000.0,
          usual=(100.0, 2_000.0), hint="Only by a drawing or a test. Left open: no strap goes through it."),
    Field("treated_mark", "has the mark for treated wood", FLAG),
    *KEPT,
)
VEHICLE = (
    Field("form", "what it is", CHOICE, required=True, choices=("lorry", "trailer", "van", "container")),
    Field("gross_t", "permitted gross mass", NUMBER, "t", 0.5, 60.0, usual=(1.5, 44.0)),
    Field("payload_kg", "payload", NUMBER, "kg", 100.0, 60_000.0, usual=(500.0, 28_000.0)),
    Field("deck_length_m", "length of the deck", NUMBER, "m", 0.5, 20.0, True, usual=(2.0, 14.0)),
    Field("deck_width_m", "width of the deck", NUMBER, "m", 0.5, 4.0, True, usual=(1.2, 2.6)),
    Field("headboard_dan", "what its headboard holds", NUMBER, "daN", 100.0, 50_000.0, usual=(400.0, 13_500.0)),
    Field("anchor_dan", "rating of its anchor points", NUMBER, "daN", 50.0, 20_000.0, usual=(400.0, 5_000.0)),
    Field("front_axle_m", "front axle behind the headboard", NUMBER, "m", -5.0, 15.0, usual=(-2.5, 2.0),
          hint="Below 0 when it stands in front of the headboard."),
    Field("wheelbase_m", "wheelbase", NUMBER, "m", 1.0, 15.0, usual=(2.5, 9.0)),
    Field("front_axle_kg", "what the front axle may get from the load", NUMBER, "kg", 50.0, 30_000.0,
          usual=(500.0, 8_000.0)),
    Field("rear_axle_kg", "what the rear axles may get from the load", NUMBER, "kg", 50.0, 60_000.0,
          usual=(1_000.0, 18_000.0)),
    Field("floor_kg_m", "what a metre of the floor takes", NUMBER, "kg/m", 50.0, 30_000.0, usual=(300.0, 6_000.0)),
    Field("load_plan", "its load plan", ROWS, hint="Points of the curve, from the headboard backwards.", columns=(
        Field("from_headboard_m", "centre of gravity behind the headboard", NUMBER, "m", 0.0, 20.0, True,
              usual=(0.5, 13.0)),
        Field("most_kg", "most mass there", NUMBER, "kg", 0.0, 60_000.0, True, usual=(500.0, 28_000.0)),
    )),
    *KEPT,
)


def rated_somehow(facts: Facts) -> dict[str, str]:
    """A label says what the lashing may be pulled with."""
    if facts.get("lc_dan") is None and facts.get("wll_kg") is None:
        return {"lc_dan": "The label gives an LC or a WLL. Without either it holds nothing that can be counted on."}

    return {}


def tension_below_half(facts: Facts) -> dict[str, str]:
    """EN 12195-2: the tensioner brings up to half of the LC."""
    lc_dan, stf_dan = facts.get("lc_dan"), facts.get("stf_dan")
    if lc_dan is not None and stf_dan is not None and stf_dan > lc_dan / 2.0:
        return {"stf_dan": "STF is half of LC at most. Read the label again: LC is in straight pull."}

    return {}


def plan_goes_back(facts: Facts) -> dict[str, str]:
    """Each point of a load plan lies farther back than the one before."""
    places = [row["from_headboard_m"] for row in facts.get("load_plan", ())]
    for number, (near_m, far_m) in enumerate(pairwise(places)):
        if not far_m > near_m:
            return {f"load_plan/{number + 1}/from_headboard_m": "Each point lies farther back than the one above it."}
    if len(places) == 1:
        return {"load_plan": "A load plan has two points or more."}

    return {}


def rated_for_what(facts: Facts) -> dict[str, str]:
    """A rating holds for one way of standing."""
    if facts.get("rated_kg") is not None and facts.get("rated_for") is None:
        return {"rated_for": "A rating for a load spread evenly says nothing about feet. Which is it for?"}

    return {}


OF_LABEL = (rated_somehow, tension_below_half)
LASHING_KINDS = (
    Kind("web_lashing", "lashing strap", "lashing straps", "gear", WEB, rules=OF_LABEL),
    Kind("chain_lashing", "lashing chain", "lashing chains", "gear", CHAIN, rules=OF_LABEL),
    Kind("rope_lashing", "lashing rope", "lashing ropes", "gear", ROPE, rules=OF_LABEL),
    Kind("mat", "anti-slip mat", "anti-slip mats", "gear", MAT),
    Kind("pallet", "pallet or skid", "pallets and skids", "gear", PALLET, rules=(rated_for_what,)),
    Kind("vehicle", "vehicle", "vehicles", "machine", VEHICLE, rules=(plan_goes_back,)),
)
