"""The kinds of things the registers hold: their fields with sensible ranges, as plain data."""

from collections.abc import Iterable
from itertools import pairwise

from checklist_app.mechanics.fittings.cold import HIGHEST_STATED_C, LOWEST_STATED_C
from checklist_app.mechanics.fittings.eye_marking import EyeMarking
from checklist_app.mechanics.fittings.shackles import Form, Pin
from checklist_app.operations.fields import Field
from checklist_app.operations.kind import (
    CHOICE,
    DATE,
    FLAG,
    KEPT,
    MADE,
    NUMBER,
    ROWS,
    WHOLE,
    WLL,
    Facts,
    Kind,
)
from checklist_app.operations.lashing_kinds import LASHING_KINDS
from checklist_app.operations.obtained import CG_HOW, MASS_HOW

ABOUT_ONE_LEG = 0.9  # EN 818-4, EN 13414-1: two legs over 45° carry what one leg carries straight, in rounded figures
ROLES_SIGNING = ("planner", "supervisor", "rigger", "operator", "signaller", "despatch", "examiner", "haulier")


def ratings_go_down(facts: Facts) -> dict[str, str]:
    """A rating that grows with the angle of the pull was read in the wrong row."""
    return {name: words for name in ("ratings", "ratings_across") if (words := _goes_down(facts.get(name, ())))}


def _goes_down(steps: Iterable[Facts]) -> str:
    rows = sorted((row["up_to_deg"], row["wll_t"]) for row in steps)
    for (angle, wll), (next_angle, next_wll) in pairwise(rows):
        if angle == next_angle:
            return f"There are two ratings up to {angle:g}°. One stands on the plate."
        if next_wll > wll:
            return f"Up to {next_angle:g}° it is rated higher than up to {angle:g}°. Read the plate again."
    return ""


def flatter_is_not_more(facts: Facts) -> dict[str, str]:
    """Legs that lie flatter carry no more together."""
    steep, flat = facts.get("wll_to_45_t"), facts.get("wll_to_60_t")
    if steep is not None and flat is not None and flat > steep:
        return {"wll_to_60_t": "Beyond 45° the tag gives more than up to 45°. Read the tag again."}

    return {}


def one_leg_is_not_all(facts: Facts) -> dict[str, str]:
    """All legs carry more than one leg up to 45°, and about as much as one up to 60°: else the figure is not of one."""
    wll, steep, flat = facts.get("wll_t"), facts.get("wll_to_45_t"), facts.get("wll_to_60_t")
    if wll is None or ((steep is None or steep > wll) and (flat is None or flat >= ABOUT_ONE_LEG * wll)):
        return {}

    return {"wll_t": "The tag gives all legs together less than that. Enter the WLL of one leg, used straight."}


def each_item_once(facts: Facts) -> dict[str, str]:
    """An item lies in a set once."""
    names = [str(row["item"]).casefold() for row in facts.get("items", ())]
    again = next((number for number, name in enumerate(names) if name in names[:number]), None)
    return {} if again is None else {f"items/{again}/item": "It is in this set already. Take one of the two away."}


def top_over_bottom(facts: Facts) -> dict[str, str]:
    """The highest part lies over the underside."""
    top, bottom = facts.get("top_z_m"), facts.get("bottom_z_m")
    if top is not None and bottom is not None and not top > bottom:
        return {"top_z_m": "The highest part does not lie over the underside. Both count from the same height."}

    return {}


REACH = Field(
    "reach_m", "reach, bearing to bearing", NUMBER, "m", 0.005, 1.5, True, usual=(0.02, 0.4),
    hint="What it adds to the length of the leg.",
)
RATING_COLUMNS = (
    Field("up_to_deg", "pull up to, from its axis", NUMBER, "°", 0.0, 180.0, True, usual=(0.0, 90.0)),
    Field("wll_t", "WLL", NUMBER, "t", 0.01, 100.0, True, usual=(0.1, 10.0)),
)
RATINGS = Field(
    "ratings", "ratings by the angle of the pull", ROWS, required=True, columns=RATING_COLUMNS,
    hint="Each step that the plate or the maker's sheet gives.",
)
FIBRES = ("polyester", "polyamide", "polypropylene", "high-modulus polyethylene", "aramid")
LENGTH = Field("length_m", "length on the tag", NUMBER, "m", 0.2, 30.0, True, usual=(0.5, 6.0))
LEGS = (
    Field("legs", "legs", WHOLE, low=1.0, high=4.0, hint="Left open: one. WLL above is of one leg."),
    Field("wll_to_45_t", "WLL of all legs, up to 45° from vertical", NUMBER, "t", 0.05, 200.0, usual=(0.5, 20.0)),
    Field("wll_to_60_t", "WLL of all legs, over 45° up to 60°", NUMBER, "t", 0.05, 200.0, usual=(0.5, 20.0)),
)
SLING = (
    LENGTH,
    Field("fibre", "fibre", CHOICE, choices=FIBRES),
    Field("thickness_mm", "thickness, pressed flat", NUMBER, "mm", 1.0, 100.0, usual=(2.0, 30.0)),
    *LEGS,
)
CHAIN = (
    LENGTH,
    Field("grade", "grade", CHOICE, choices=("grade 4", "grade 8", "grade 10", "another grade")),
    Field("size_mm", "nominal size", NUMBER, "mm", 3.0, 60.0, usual=(6.0, 32.0)),
    *LEGS,
)
TERMINATIONS = ("aluminium ferrule", "steel ferrule", "hand splice", "resin socket", "swaged end")
ROPE = (
    LENGTH,
    Field("diameter_mm", "diameter of the rope", NUMBER, "mm", 3.0, 100.0, usual=(8.0, 40.0)),
    Field("core", "core", CHOICE, choices=("steel", "fibre")),
    Field("termination", "eyes", CHOICE, choices=TERMINATIONS),
    *LEGS,
)
COLDEST = Field(
    "coldest_c", "lowest temperature, by its maker's instructions", NUMBER, "°C", LOWEST_STATED_C, HIGHEST_STATED_C,
    usual=(-40.0, -20.0), hint="Left open: −20 °C.",
)
EYE = (
    *MADE,
    Field("marking", "standard stamped on it", CHOICE, choices=tuple(each.value for each in EyeMarking),
          hint="Its own table is looked at beside the ratings below."),
    Field("thread", "thread", hint="As M20 or 1/2."),
    Field("stamped_t", "WLL stamped on it", NUMBER, "t", 0.05, 100.0, usual=(0.1, 10.0)),
    RATINGS,
    Field("ratings_across", "ratings where the pull is across the ring", ROWS, columns=RATING_COLUMNS,
          hint="Where the sheet allows every direction, the same again. Left open: no pull across the ring."),
    COLDEST, REACH, *KEPT,
)
SHACKLE = (
    *MADE, WLL, REACH,
    Field("form", "form", CHOICE, choices=tuple(each.value for each in Form)),
    Field("pin", "pin", CHOICE, choices=tuple(each.value for each in Pin)),
    Field("size_mm", "diameter of the body", NUMBER, "mm", 3.0, 200.0, usual=(8.0, 60.0)),
    Field("pin_mm", "diameter of the pin", NUMBER, "mm", 3.0, 200.0, usual=(8.0, 60.0)),
    COLDEST, *KEPT,
)
LOAD = (
    Field("name", "name", required=True),
    Field("bottom_z_m", "underside", NUMBER, "m", -20.0, 20.0, True, usual=(-2.0, 0.5)),
    Field("top_z_m", "highest part", NUMBER, "m", -20.0, 20.0, True, usual=(0.2, 4.0)),
    Field("build_states", "build states, each with its finding", ROWS, required=True, columns=(
        Field("state", "build state", required=True),
        Field("words", "what is on it"),
        Field("mass_kg", "mass", NUMBER, "kg", 1.0, 100_000.0, True, usual=(200.0, 5000.0)),
        Field("mass_how", "how the mass is known", CHOICE, required=True, choices=tuple(h.name for h in MASS_HOW)),
        Field("mass_on", "day of the finding", DATE),
        Field("mass_evidence", "evidence for the mass"),
        Field("cg_x_m", "centre of gravity, lengthwise", NUMBER, "m", -20.0, 20.0, usual=(-2.0, 2.0)),
        Field("cg_y_m", "centre of gravity, crosswise", NUMBER, "m", -10.0, 10.0, usual=(-1.0, 1.0)),
        Field("cg_z_m", "centre of gravity, height", NUMBER, "m", -20.0, 20.0, usual=(0.0, 3.0)),
        Field("cg_how", "how the centre of gravity is known", CHOICE, choices=tuple(h.name for h in CG_HOW)),
        Field("cg_off_m", "centre of gravity, how far off it may be", NUMBER, "m", 0.001, 2.0, usual=(0.01, 0.2)),
        Field("cg_evidence", "evidence for the centre of gravity"),
    )),
    Field("pick_points", "pick points", ROWS, columns=(
        Field("point", "pick point", required=True),
        Field("x_m", "lengthwise", NUMBER, "m", -20.0, 20.0, True, usual=(-3.0, 3.0)),
        Field("y_m", "crosswise", NUMBER, "m", -10.0, 10.0, True, usual=(-2.0, 2.0)),
        Field("z_m", "height", NUMBER, "m", -20.0, 20.0, True, usual=(0.0, 4.0)),
        Field("evidence", "evidence for its rating"),
        Field("states", "in which build states"),
    )),
    Field("pick_ratings", "ratings of the pick points", ROWS, columns=(
        Field("point", "pick point", required=True), *RATING_COLUMNS,
    )),
)
PERSON = (
    Field("name", "name", required=True),
    Field("capacities", "as what this person signs", ROWS, columns=(
        Field("capacity", "capacity", CHOICE, required=True, choices=ROLES_SIGNING),
        Field("until", "held until", DATE, required=True),
    )),
)
PLACE = (
    Field("name", "name", required=True),
    Field("room_height_m", "height of the room", NUMBER, "m", 0.5, 60.0, usual=(2.2, 10.0)),
    Field("highest_hook_m", "highest hook over the floor", NUMBER, "m", 0.2, 60.0, usual=(2.0, 8.0)),
)
HOIST = (
    *MADE, WLL,
    Field("highest_hook_m", "highest hook over the floor", NUMBER, "m", 0.2, 60.0, usual=(2.0, 8.0)),
    Field("place", "place"),
    Field("hook_counts", "the plate counts its own hook as load", FLAG),
    Field("hook_mass_kg", "mass of its own hook", NUMBER, "kg", 0.1, 5000.0, usual=(1.0, 100.0)),
    *KEPT,
)
LOAD_CELL = (*MADE, WLL, REACH, Field("calibrated_until", "calibrated until", DATE), *KEPT)
OWN_BEAM = (*MADE, WLL, Field("length_m", "length", NUMBER, "m", 0.1, 20.0, True, usual=(0.5, 4.0)), *KEPT)
OF_LEGS = (flatter_is_not_more, one_leg_is_not_all)
GEAR_SET = "gear_set"
SET_SLOTS = {
    "fitting on the hook": "hook_fitting", "load cell": "load_cell", "fitting at the top": "top_fitting",
    "sling": "sling", "fitting at the bottom": "bottom_fitting", "eye": "eye",
}
SET = (
    Field("name", "what it is called", hint="Such as: two legs of 2 t, 1.5 m."),
    Field("items", "its items", ROWS, required=True, hint="From the hook down, leg by leg.", columns=(
        Field("item", "number on its tag", required=True),
        Field("slot", "where it hangs", CHOICE, required=True, choices=tuple(SET_SLOTS)),
    )),
)

KINDS = {
    kind.name: kind
    for kind in (
        Kind("flat_sling", "flat sling", "flat slings", "gear", (*MADE, WLL, *SLING, *KEPT), rules=OF_LEGS),
        Kind("round_sling", "round sling", "round slings", "gear", (*MADE, WLL, *SLING, *KEPT), rules=OF_LEGS),
        Kind("chain_sling", "chain sling", "chain slings", "gear", (*MADE, WLL, *CHAIN, *KEPT), rules=OF_LEGS),
        Kind("wire_rope_sling", "wire rope sling", "wire rope slings", "gear", (*MADE, WLL, *ROPE, *KEPT),
             rules=OF_LEGS),
        Kind("shackle", "shackle", "shackles", "gear", SHACKLE),
        Kind("hook", "hook", "hooks", "gear", (*MADE, WLL, REACH, COLDEST, *KEPT)),
        Kind("master_link", "master link", "master links", "gear", (*MADE, WLL, REACH, COLDEST, *KEPT)),
        Kind("eye", "lifting eye", "lifting eyes", "gear", EYE, rules=(ratings_go_down,)),
        Kind(GEAR_SET, "gear set", "gear sets", "gear", SET, rules=(each_item_once,)),
        Kind("load_cell", "load cell", "load cells", "gear", LOAD_CELL),
        Kind("own_beam", "own-built beam", "own-built beams", "gear", OWN_BEAM),
        Kind("hoist", "hoist", "hoists", "machine", HOIST),
        Kind("load", "load", "loads", "load", LOAD, rules=(top_over_bottom,)),
        *LASHING_KINDS,
        Kind("person", "person", "people", "person", PERSON),
        Kind("place", "place", "places", "place", PLACE),
    )
}
REGISTERS = ("gear", "machine", "load", "person", "place")
TAGGED_REGISTERS = ("gear", "machine")
