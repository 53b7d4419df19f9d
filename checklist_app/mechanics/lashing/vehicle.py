"""Where on the vehicle the load may stand, what its axles get, and what a van asks for."""

from collections.abc import Sequence
from itertools import pairwise

from checklist_app.mechanics.errors import OutOfRangeError, required_not_negative, required_positive
from checklist_app.mechanics.lashing.transport import Direction

SOURCE = "VEHICLE_LOAD_PLAN"
LIGHT_T, VAN_T = 2.0, 3.5
VAN = {  # forwards, sideways, rearwards
    "light": (0.9, 0.7, 0.5),
    "van": (0.8, 0.6, 0.5),  # sources differ, 0.5 or 0.6 sideways: the larger
    "lorry": (0.8, 0.5, 0.5),
}


def load_plan_kg(plan: Sequence[tuple[float, float]], cg_from_headboard_m: float) -> float:
    """Most mass that the vehicle's own load plan allows with its centre of gravity there.

        between two points of the plan on the straight line

    Source:
        VEHICLE_LOAD_PLAN.

    Args:
        plan: points of the curve: distance of the common centre of gravity from the headboard, and mass [m, kg].
        cg_from_headboard_m: of all that is loaded together [m].

    Returns:
        Mass [kg].

    Raises:
        OutOfRangeError: Beyond the ends of the plan, or for points out of order.

    Example:
        >>> load_plan_kg([(1.0, 8000.0), (3.0, 12000.0), (5.0, 6000.0)], 2.0)
        10000.0
    """
    places = [place for place, _ in plan]
    if len(plan) < 2 or any(not b > a for a, b in pairwise(places)):
        raise OutOfRangeError("points of the load plan", len(plan), "two or more, each farther back", SOURCE)
    for place_m, mass_kg in plan:
        required_not_negative("distance in the load plan", place_m, SOURCE)
        required_not_negative("mass in the load plan", mass_kg, SOURCE)
    if not places[0] <= cg_from_headboard_m <= places[-1]:
        raise OutOfRangeError("centre of gravity from the headboard", cg_from_headboard_m,
                              f"{places[0]:g} to {places[-1]:g} m by the load plan", SOURCE)

    for (near_m, near_kg), (far_m, far_kg) in pairwise(plan):
        if cg_from_headboard_m <= far_m:
            return near_kg + (far_kg - near_kg) * (cg_from_headboard_m - near_m) / (far_m - near_m)
    return plan[-1][1]


def common_place_m(loads: Sequence[tuple[float, float]]) -> float:
    """Common centre of gravity of all that is loaded.

        Σ m x / Σ m

    Source:
        CTU_ANNEX_7 Appendix 4.

    Args:
        loads: mass and place of each [kg, m].

    Returns:
        Place [m].

    Raises:
        OutOfRangeError: If there is no load, or a mass is no number above 0.

    Example:
        >>> common_place_m([(1000.0, 1.0), (3000.0, 3.0)])
        2.5
    """
    mass_kg, moment = 0.0, 0.0
    for each_kg, place_m in loads:
        required_positive("mass of a load", each_kg, "CTU_ANNEX_7")
        required_not_negative("place of a load", place_m, "CTU_ANNEX_7")
        mass_kg, moment = mass_kg + each_kg, moment + each_kg * place_m
    required_positive("mass on the vehicle", mass_kg, "CTU_ANNEX_7")

    return moment / mass_kg


def axle_loads_kg(mass_kg: float, behind_front_m: float, wheelbase_m: float) -> tuple[float, float]:
    """What a load adds to the front and to the rear axle; behind the rear axle it takes from the front.

        rear m x / L,  front m − rear

    Source:
        STATICS_AXLES.

    Args:
        mass_kg: m [kg], above 0.
        behind_front_m: x, behind the front axle [m].
        wheelbase_m: L, to the rear axle or the middle of its group [m], above 0.

    Returns:
        Front and rear [kg].

    Raises:
        OutOfRangeError: If a number is none, or the load lies more than a wheelbase outside.

    Example:
        >>> axle_loads_kg(1200.0, 5.0, 4.0)
        (-300.0, 1500.0)
    """
    required_positive("mass of the load", mass_kg, "STATICS_AXLES")
    required_positive("wheelbase", wheelbase_m, "STATICS_AXLES")
    if not -wheelbase_m <= behind_front_m <= 2.0 * wheelbase_m:
        raise OutOfRangeError("load behind the front axle", behind_front_m, "on the vehicle", "STATICS_AXLES")
    rear_kg = mass_kg * behind_front_m / wheelbase_m

    return mass_kg - rear_kg, rear_kg


def van_push(gross_mass_t: float, direction: Direction) -> float:
    """Coefficient of acceleration by the gross mass of the vehicle.

        to 2 t 0.9 / 0.7 / 0.5, to 3.5 t 0.8 / 0.6 / 0.5, above 0.8 / 0.5 / 0.5, forwards, sideways, rearwards

    Source:
        VDI_2700_16; to 3.5 t its restatements differ sideways, the larger counts.

    Args:
        gross_mass_t: permitted gross mass of the vehicle [t], above 0.
        direction: where inertia pushes the load.

    Returns:
        c [-].

    Raises:
        OutOfRangeError: If the mass is no number above 0.

    Example:
        >>> van_push(3.0, Direction.LEFT)
        0.6
    """
    required_positive("gross mass of the vehicle", gross_mass_t, "VDI_2700_16")
    row = VAN["light" if gross_mass_t <= LIGHT_T else "van" if gross_mass_t <= VAN_T else "lorry"]

    return row[1] if direction.is_sideways else row[0 if direction is Direction.FORWARD else 2]
