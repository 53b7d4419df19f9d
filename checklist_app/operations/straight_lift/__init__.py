"""Straight lift: one hook, two legs, up and set down. Everything the operation is made of, proved when imported."""

from checklist_app.operations.straight_lift import (
    checks,
    clearance,
    entries,
    gear_states,
    geometry,
    lift_class,
    picture,
    statics,
)
from checklist_app.operations.straight_lift.example import EXAMPLE
from checklist_app.operations.table import Table

NAME, WORDS = "straight_lift", "Straight lift"
TABLE = Table(entries, geometry, statics, clearance, checks, gear_states, lift_class, picture)

__all__ = ["EXAMPLE", "NAME", "TABLE", "WORDS"]
