"""What the vehicle carries: in all, at that place by its load plan or on its axles, and on a metre of its floor."""

from checklist_app.mechanics.lashing import pallet as pallets
from checklist_app.mechanics.lashing import vehicle as vehicles
from checklist_app.operations.check import Strength, check
from checklist_app.operations.gear import Vehicle
from checklist_app.operations.graph import CannotAssess, Known, Missing, NotApplicable, Waits, when

AXLES = ("front_axle_m", "wheelbase_m", "front_axle_kg", "rear_axle_kg")
PAPERS = "papers of the vehicle"


@when("loaded_kg", other_kg=Known.NO)
def travels_alone(goods_kg: float) -> float:
    """Mass on the vehicle: load and pallet."""
    return goods_kg


@when("loaded_kg", other_kg=Known.YES)
def travels_with_more(goods_kg: float, other_kg: float) -> float:
    """Mass on the vehicle: load, pallet, and what else travels."""
    return goods_kg + other_kg


def goods_place_m(behind_headboard_m: float, cg_x_m: float, mass_kg: float, goods_kg: float) -> float:
    """Centre of gravity of load and pallet behind the headboard; the pallet's lies in its middle."""
    return behind_headboard_m - cg_x_m * mass_kg / goods_kg


@when("loaded_place_m", other_kg=Known.NO)
def place_alone(goods_place_m: float) -> float:
    """Centre of gravity of all that is loaded, behind the headboard."""
    return goods_place_m


@when("loaded_place_m", other_kg=Known.YES)
def place_with_more(
    goods_kg: float, goods_place_m: float, other_kg: float, other_behind_headboard_m: float | None
) -> float:
    """Common centre of gravity of all that is loaded, behind the headboard."""
    if other_behind_headboard_m is None:
        raise Waits(Missing("centre of gravity of the other load, behind the headboard", "other_behind_headboard_m"))

    return vehicles.common_place_m(((goods_kg, goods_place_m), (other_kg, other_behind_headboard_m)))


@check("payload", unit="kg", source="PLATE", rule_set=PAPERS)
def payload(loaded_kg: float, vehicle: Vehicle) -> Strength:
    """All that is loaded against what the vehicle may carry."""
    return Strength(loaded_kg, vehicle.payload_kg)


@check("load plan", unit="kg", source="VEHICLE_LOAD_PLAN", rule_set="the vehicle's own load plan")
def load_plan(loaded_kg: float, loaded_place_m: float, vehicle: Vehicle) -> Strength:
    """All that is loaded against the most that the plan allows with its centre of gravity there."""
    if _no_axles(vehicle):
        raise NotApplicable("a container has no axles: its floor decides")
    if "load_plan" not in vehicle.facts and _axles_known(vehicle):
        raise NotApplicable(f"{vehicle.id} has no load plan: its axles are looked at")
    plan = [(row["from_headboard_m"], row["most_kg"]) for row in vehicle.load_plan]

    return Strength(loaded_kg, vehicles.load_plan_kg(plan, loaded_place_m))


@check("front axle", unit="kg", source="STATICS_AXLES", rule_set=PAPERS)
def front_axle(loaded_kg: float, loaded_place_m: float, vehicle: Vehicle) -> Strength:
    """What all that is loaded adds to the front axle, against what it may get from it."""
    front_kg, _rear_kg = _axle_loads_kg(loaded_kg, loaded_place_m, vehicle)

    return Strength(_added_kg("front axle", front_kg, vehicle), vehicle.front_axle_kg)


@check("rear axles", unit="kg", source="STATICS_AXLES", rule_set=PAPERS)
def rear_axle(loaded_kg: float, loaded_place_m: float, vehicle: Vehicle) -> Strength:
    """What all that is loaded adds to the rear axles, against what they may get from it."""
    _front_kg, rear_kg = _axle_loads_kg(loaded_kg, loaded_place_m, vehicle)

    return Strength(_added_kg("rear axles", rear_kg, vehicle), vehicle.rear_axle_kg)


def bears_along_m(base_length_m: float, pallet_bears_along_m: float | None) -> float:
    """Length of the deck that bears: under the pallet, else from the front feet to the rear ones."""
    return base_length_m if pallet_bears_along_m is None else pallet_bears_along_m


def bears_across_m(base_width_m: float, pallet_bears_across_m: float | None) -> float:
    """Width of the deck that bears."""
    return base_width_m if pallet_bears_across_m is None else pallet_bears_across_m


def deck_line_load_kg_m(goods_kg: float, bears_along_m: float, cg_x_m: float, bears_across_m: float) -> float:
    """Load on a metre of the deck where it is greatest."""
    even_kg_m = pallets.floor_line_load_kg_m(goods_kg, 1, bears_along_m)

    return even_kg_m * pallets.uneven_bearing(abs(cg_x_m), bears_along_m, 0.0, bears_across_m)


@check("floor of the deck", unit="kg/m", source="STATICS_LASHING", rule_set=PAPERS)
def deck_floor(deck_line_load_kg_m: float, vehicle: Vehicle) -> Strength:
    """A metre of the deck under the load against what it takes; bearers lengthways spread a load, feet do not."""
    return Strength(deck_line_load_kg_m, vehicle.floor_kg_m)


def _axle_loads_kg(loaded_kg: float, loaded_place_m: float, vehicle: Vehicle) -> tuple[float, float]:
    if _no_axles(vehicle):
        raise NotApplicable("a container has no axles")
    if "load_plan" in vehicle.facts and not _axles_known(vehicle):
        raise NotApplicable(f"the load plan of {vehicle.id} is looked at")

    return vehicles.axle_loads_kg(loaded_kg, loaded_place_m - vehicle.front_axle_m, vehicle.wheelbase_m)


def _added_kg(axle: str, added_kg: float, vehicle: Vehicle) -> float:
    """What is added; what takes weight off an axle is for the load plan to allow."""
    if added_kg < 0.0 and "load_plan" in vehicle.facts:
        raise NotApplicable(f"it takes weight off the {axle}: the load plan says how much it may")
    if added_kg < 0.0:
        raise CannotAssess(f"it takes {-added_kg:.0f} kg off the {axle}: only a load plan says how much it may")

    return added_kg


def _no_axles(vehicle: Vehicle) -> bool:
    return bool(vehicle.form == "container")


def _axles_known(vehicle: Vehicle) -> bool:
    return all(name in vehicle.facts for name in AXLES)
