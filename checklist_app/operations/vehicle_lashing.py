"""Lashing on a vehicle: everything the operation is made of, proved when imported."""

from checklist_app.operations.lashing import (
    agree,
    bodies,
    deck_checks,
    deck_formulas,
    deck_friction,
    ends,
    formulas,
    friction_there,
    holding_checks,
    lashing_class,
    lashing_states,
    metal,
    number,
    on_pallet,
    placed,
    route,
    runs,
    shared_ends,
    ship,
    vehicle_checks,
    vehicle_entries,
    vehicle_loads,
    vehicle_picture,
    vehicle_there,
)
from checklist_app.operations.lashing.example import ON_VEHICLE as EXAMPLE
from checklist_app.operations.table import Table

NAME, WORDS = "vehicle_lashing", "Lashing on a vehicle"
MODULES = (
    vehicle_entries, route, ship, friction_there, deck_friction, ends, placed, vehicle_there, bodies, runs, formulas,
    deck_formulas, holding_checks, deck_checks, number, on_pallet, vehicle_checks, vehicle_loads, metal,
    lashing_states, agree, shared_ends, lashing_class, vehicle_picture,
)
TABLE = Table(*MODULES)

__all__ = ["EXAMPLE", "MODULES", "NAME", "TABLE", "WORDS"]
