"""Lashing to a pallet or skid: everything the operation is made of, proved when imported."""

from checklist_app.operations.lashing import (
    agree,
    bodies,
    ends,
    formulas,
    friction_there,
    holding_checks,
    lashing_class,
    lashing_states,
    metal,
    number,
    on_pallet,
    pallet_checks,
    pallet_entries,
    pallet_picture,
    pallet_there,
    placed,
    route,
    runs,
    shared_ends,
    ship,
)
from checklist_app.operations.lashing.example import ON_PALLET as EXAMPLE
from checklist_app.operations.table import Table

NAME, WORDS = "pallet_lashing", "Lashing to a pallet or skid"
MODULES = (
    pallet_entries, route, ship, friction_there, ends, placed, pallet_there, bodies, runs, formulas, holding_checks,
    number, on_pallet, pallet_checks, metal, lashing_states, agree, shared_ends, lashing_class, pallet_picture,
)
TABLE = Table(*MODULES)

__all__ = ["EXAMPLE", "MODULES", "NAME", "TABLE", "WORDS"]
