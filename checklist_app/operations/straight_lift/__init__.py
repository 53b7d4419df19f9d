"""Straight lift: up on slings and set down. Everything the operation is made of, proved when imported."""

from checklist_app.operations.straight_lift import (
    angles,
    checks,
    clearance,
    conditions,
    entries,
    fitting_heat,
    four_legs,
    gear_states,
    geometry,
    hitches,
    hooks,
    in_space,
    in_the_wind,
    joints,
    leg_lengths,
    lift_class,
    margins,
    picture,
    planar,
    rigs,
    sharing,
    statics,
    swinging,
    table_wll,
    two_hooks,
    zones,
)
from checklist_app.operations.straight_lift.example import EXAMPLE
from checklist_app.operations.table import Table

NAME, WORDS = "straight_lift", "Straight lift"
MODULES = (
    entries, rigs, geometry, leg_lengths, planar, two_hooks, in_space, joints, statics, sharing, four_legs, angles,
    hitches, fitting_heat, table_wll, clearance, conditions, checks, hooks, margins, in_the_wind,
    swinging, zones, gear_states, lift_class, picture,
)
TABLE = Table(*MODULES)

__all__ = ["EXAMPLE", "MODULES", "NAME", "TABLE", "WORDS"]
