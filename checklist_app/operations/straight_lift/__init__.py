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
    leaning,
    leg_lengths,
    lift_class,
    margins,
    moved_pull,
    picture,
    planar,
    rigs,
    running,
    running_margins,
    shackles_lie,
    sharing,
    single_eye,
    statics,
    stiff,
    swinging,
    table_wll,
    together,
    two_hooks,
    zones,
)
from checklist_app.operations.straight_lift.example import EXAMPLE
from checklist_app.operations.table import Table

NAME, WORDS = "straight_lift", "Straight lift"
MODULES = (
    entries, rigs, geometry, leg_lengths, running, planar, two_hooks, in_space, joints, statics, sharing, four_legs,
    angles, hitches, shackles_lie, fitting_heat, table_wll, clearance, conditions, checks, single_eye, hooks, margins,
    in_the_wind, swinging, together, leaning, moved_pull, running_margins, stiff, zones, gear_states, lift_class,
    picture,
)
TABLE = Table(*MODULES)

__all__ = ["EXAMPLE", "MODULES", "NAME", "TABLE", "WORDS"]
