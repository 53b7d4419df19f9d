"""Lashing to a pallet or skid: everything the operation is made of, proved when imported."""

from checklist_app.operations.lashing import (
    bodies,
    ends,
    friction_there,
    holding_checks,
    pallet_entries,
    pallet_there,
    route,
    runs,
    ship,
)
from checklist_app.operations.lashing.example import ON_PALLET as EXAMPLE
from checklist_app.operations.table import Table

NAME, WORDS = "pallet_lashing", "Lashing to a pallet or skid"
MODULES = (pallet_entries, route, ship, friction_there, ends, pallet_there, bodies, runs, holding_checks)
TABLE = Table(*MODULES)

__all__ = ["EXAMPLE", "MODULES", "NAME", "TABLE", "WORDS"]
