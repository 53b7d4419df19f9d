"""Wind on a hanging load: how hard it pushes, and how far out of plumb it holds it."""

from enum import Enum

from checklist_app.mechanics import exact
from checklist_app.mechanics.errors import OutOfRangeError, required_not_negative, required_positive

SOURCE = "WIND_ON_LOADS"
DRAG_SOURCE = "LOADER_CRANE_DRAG"
SPEED_SQUARED_PER_PASCAL = 1.6
STRONGEST_M_S = 60.0
N_IN_KN = 1000.0


class Shape(Enum):
    """What the wind meets."""

    BOX = "box or plate"
    CYLINDER = "cylinder"
    NOT_KNOWN = "any other, or not known"


DRAG = {Shape.BOX: 2.0, Shape.CYLINDER: 1.0, Shape.NOT_KNOWN: 2.4}


def wind_pressure_n_m2(gust_m_s: float) -> float:
    """Pressure of a gust.

        q = v² / 1.6

    Source:
        WIND_ON_LOADS.

    Args:
        gust_m_s: v, gust at the height of the load [m/s], 0 to 60.

    Returns:
        q [N/m²].

    Raises:
        OutOfRangeError: If the speed leaves its range.

    Example:
        >>> round(wind_pressure_n_m2(11.3), 2)
        79.81
    """
    if not 0.0 <= gust_m_s <= STRONGEST_M_S:
        raise OutOfRangeError("wind speed", gust_m_s, f"0 to {STRONGEST_M_S:.0f} m/s", SOURCE)

    return gust_m_s * gust_m_s / SPEED_SQUARED_PER_PASCAL


def drag_coefficient(shape: Shape) -> float:
    """How bluntly a load meets the wind.

        c

    Source:
        LOADER_CRANE_DRAG.

    Args:
        shape: what the wind meets.

    Returns:
        c [-].

    Example:
        >>> drag_coefficient(Shape.BOX)
        2.0
    """
    return DRAG[shape]


def wind_force_kn(pressure_n_m2: float, drag: float, area_m2: float) -> float:
    """Side force of the wind on the load.

        F = c q A

    Source:
        WIND_ON_LOADS.

    Args:
        pressure_n_m2: q [N/m²], 0 or more.
        drag: c [-], above 0.
        area_m2: A, largest area of the load that the wind can meet [m²], above 0.

    Returns:
        F [kN].

    Raises:
        OutOfRangeError: If an argument leaves its range.

    Example:
        >>> round(wind_force_kn(79.80625, 1.2, 96.80), 3)
        9.27
    """
    required_not_negative("pressure of the wind", pressure_n_m2, SOURCE)
    required_positive("drag coefficient", drag, SOURCE)
    required_positive("area in the wind", area_m2, SOURCE)

    return drag * pressure_n_m2 * area_m2 / N_IN_KN


def wind_speed_for_force_m_s(force_kn: float, drag: float, area_m2: float) -> float:
    """Wind at which the load is pushed so hard.

        v = √(1.6 F / (c A))

    Source:
        WIND_ON_LOADS.

    Args:
        force_kn: F, the force not to be exceeded [kN], above 0.
        drag: c [-], above 0.
        area_m2: A [m²], above 0.

    Returns:
        v [m/s].

    Raises:
        OutOfRangeError: If an argument is no number above 0.

    Example:
        >>> round(wind_speed_for_force_m_s(9.27029, 1.2, 133.65), 2)
        9.62
    """
    required_positive("force of the wind", force_kn, SOURCE)
    required_positive("drag coefficient", drag, SOURCE)
    required_positive("area in the wind", area_m2, SOURCE)

    return exact.sqrt(SPEED_SQUARED_PER_PASCAL * force_kn * N_IN_KN / (drag * area_m2))


def held_off_plumb_deg(side_force_kn: float, load_kn: float) -> float:
    """Angle at which a steady side force holds the hoist line.

        φ = atan2(F, W)

    Source:
        SIMPLE_PENDULUM; a gust that comes suddenly swings it to twice that.

    Args:
        side_force_kn: F [kN], 0 or more.
        load_kn: W [kN], above 0.

    Returns:
        φ [°].

    Raises:
        OutOfRangeError: If an argument leaves its range.

    Example:
        >>> round(held_off_plumb_deg(1.0, 20.0), 3)
        2.862
    """
    required_not_negative("side force", side_force_kn, "SIMPLE_PENDULUM")
    required_positive("load on the hook", load_kn, "SIMPLE_PENDULUM")

    return exact.atan2_deg(side_force_kn, load_kn)


def pull_of_the_line_kn(side_force_kn: float, load_kn: float) -> float:
    """Pull in the hoist line with a steady side force on the load.

        T = √(W² + F²)

    Source:
        SIMPLE_PENDULUM.

    Args:
        side_force_kn: F [kN], 0 or more.
        load_kn: W [kN], above 0.

    Returns:
        T [kN].

    Raises:
        OutOfRangeError: If an argument leaves its range.

    Example:
        >>> pull_of_the_line_kn(3.0, 4.0)
        5.0
    """
    required_not_negative("side force", side_force_kn, "SIMPLE_PENDULUM")
    required_positive("load on the hook", load_kn, "SIMPLE_PENDULUM")

    return exact.sqrt(load_kn * load_kn + side_force_kn * side_force_kn)
