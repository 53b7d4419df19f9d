"""Two hooks: each hoist with its load cell is looked at for itself."""

from checklist_app.mechanics import shackles
from checklist_app.mechanics.weight import KG_IN_T
from checklist_app.operations.check import Limit, State, Strength, check
from checklist_app.operations.gear import Hoist, LoadCell
from checklist_app.operations.graph import Day, each
from checklist_app.operations.settings import HOOK_OUT_OF_PLUMB, HOOK_OUT_OF_PLUMB_CLOSE
from checklist_app.operations.straight_lift.gear_states import RULES
from checklist_app.operations.usable import calibrated, usable

PLATES = "rated load on plate and label"


@each("hook")
@check("hoist of this hook", unit="t", source="PLATE", rule_set=PLATES)
def hook_hoist_strength(hook_pull_t: float, hook_hoist: Hoist, hook_parts_deg: float) -> Strength:
    """What its leg pulls against the hoist's plate, which contains its own hook unless it says otherwise."""
    shackles.hook_wll_t(hook_hoist.wll_t, hook_parts_deg)
    if hook_hoist.facts.get("hook_counts"):
        return Strength(hook_pull_t + hook_hoist.hook_mass_kg / KG_IN_T, hook_hoist.wll_t)

    return Strength(hook_pull_t, hook_hoist.wll_t)


@each("hook")
@check("load cell of this hook", unit="t", source="PLATE", rule_set=PLATES)
def hook_load_cell_strength(hook_pull_t: float, hook_load_cell: LoadCell) -> Strength:
    """What its leg pulls against the load cell's plate."""
    return Strength(hook_pull_t, hook_load_cell.wll_t)


@each("hook")
@check(
    "hook pulled out of plumb", unit="°", source="HOUSE_SETTING", rule_set="a hoist lifts plumb; settings of the house",
    close=HOOK_OUT_OF_PLUMB_CLOSE.value,
)
def hook_plumb(hook_angle_deg: float) -> Limit:
    """How far the leg below this hook hangs out of plumb."""
    return Limit(hook_angle_deg, HOOK_OUT_OF_PLUMB.value)


@each("hook")
@check("hoist status", source="LOLER", rule_set=RULES)
def hook_hoist_usable(hook_hoist: Hoist, day: Day, two_hooks: bool) -> State:
    """In service, in date, marked, proved."""
    return usable(hook_hoist, day)


@each("hook")
@check("load cell status", source="LOLER", rule_set=RULES)
def hook_load_cell_usable(hook_load_cell: LoadCell, day: Day, two_hooks: bool) -> State:
    """In service, in date, marked, and calibrated on the day."""
    return calibrated(hook_load_cell, day)
