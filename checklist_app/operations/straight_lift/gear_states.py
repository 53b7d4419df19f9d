"""State checks: is each piece in the path of the load one that may be used on the day?"""

from checklist_app.operations.check import State, check
from checklist_app.operations.gear import Eye, Hoist, Hook, LoadCell, MasterLink, Shackle, Sling
from checklist_app.operations.graph import Day, each
from checklist_app.operations.usable import calibrated, usable

RULES = "thorough examination, marking, quarantine"


@check("hoist status", source="LOLER", rule_set=RULES)
def hoist_usable(hoist: Hoist, day: Day, one_hook: bool) -> State:
    """In service, in date, marked, proved."""
    return usable(hoist, day)


@check("load cell status", source="LOLER", rule_set=RULES)
def load_cell_usable(load_cell: LoadCell, day: Day, one_hook: bool) -> State:
    """In service, in date, marked, and calibrated on the day."""
    return calibrated(load_cell, day)


@check("gathering fitting status", source="LOLER", rule_set=RULES)
def hook_fitting_usable(hook_fitting: Shackle | Hook | MasterLink, day: Day, one_hook: bool) -> State:
    """In service, in date, marked, proved."""
    return usable(hook_fitting, day)


@each("leg")
@check("sling status", source="LOLER", rule_set=RULES)
def sling_usable(sling: Sling, day: Day) -> State:
    """In service, in date, marked, proved."""
    return usable(sling, day)


@each("leg")
@check("top fitting status", source="LOLER", rule_set=RULES)
def top_fitting_usable(top_fitting: Shackle | Hook, day: Day) -> State:
    """In service, in date, marked, proved."""
    return usable(top_fitting, day)


@each("leg")
@check("bottom fitting status", source="LOLER", rule_set=RULES)
def bottom_fitting_usable(bottom_fitting: Shackle | Hook, day: Day) -> State:
    """In service, in date, marked, proved."""
    return usable(bottom_fitting, day)


@each("leg")
@check("eye status", source="LOLER", rule_set=RULES)
def eye_usable(eye: Eye, day: Day) -> State:
    """In service, in date, marked, proved."""
    return usable(eye, day)
