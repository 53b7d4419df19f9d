"""A hoist that travels and stops: how hard it brakes, how fast and with what pull the load swings, how it leans."""

from checklist_app.mechanics import exact
from checklist_app.mechanics.errors import OutOfRangeError, required_not_negative, required_positive
from checklist_app.mechanics.gravity import STANDARD_GRAVITY_M_S2

SOURCE = "SIMPLE_PENDULUM"
WIDEST_DEG = 90.0
STEEPEST_LEAN_DEG = 60.0


def braking_m_s2(speed_m_s: float, stopping_m: float) -> float:
    """How hard a hoist brakes that stops within a distance.

        a = v² / 2 s

    Source:
        SIMPLE_PENDULUM; even braking.

    Args:
        speed_m_s: v, travelling speed [m/s], above 0.
        stopping_m: s, way from braking to standing still [m], above 0.

    Returns:
        a [m/s²].

    Raises:
        OutOfRangeError: If a number is none above 0.

    Example:
        >>> braking_m_s2(1.0, 2.0)
        0.25
    """
    required_positive("travelling speed", speed_m_s, SOURCE)
    required_positive("way to stop", stopping_m, SOURCE)

    return speed_m_s * speed_m_s / (2.0 * stopping_m)


def speed_at_plumb_m_s(line_m: float, amplitude_deg: float) -> float:
    """How fast a swinging load passes plumb.

        u = √(2 g L (1 − cos A))

    Source:
        SIMPLE_PENDULUM.

    Args:
        line_m: L, from where the line hangs to the centre of gravity [m], above 0.
        amplitude_deg: A, from plumb to the end of the swing [°], 0 to 90.

    Returns:
        u [m/s].

    Raises:
        OutOfRangeError: If an argument leaves its range.

    Example:
        >>> round(speed_at_plumb_m_s(3.0, 60.0), 5)
        5.42402
    """
    required_positive("length of the hoist line", line_m, SOURCE)
    if not 0.0 <= amplitude_deg <= WIDEST_DEG:
        raise OutOfRangeError("amplitude", amplitude_deg, f"0 to {WIDEST_DEG:.0f}°", SOURCE)
    rise_m = line_m * (1.0 - exact.cos(amplitude_deg / exact.RAD_IN_DEG))

    return exact.sqrt(2.0 * STANDARD_GRAVITY_M_S2 * rise_m)


def rise_of_swing_m(line_m: float, amplitude_deg: float) -> float:
    """How high a swinging load comes at the end of its swing.

        r = L (1 − cos A)

    Source:
        SIMPLE_PENDULUM.

    Args:
        line_m: L, from where the line hangs to the centre of gravity [m], above 0.
        amplitude_deg: A, from plumb to the end of the swing [°], 0 to 90.

    Returns:
        r [m].

    Raises:
        OutOfRangeError: If an argument leaves its range.

    Example:
        >>> round(rise_of_swing_m(3.0, 60.0), 9)
        1.5
    """
    required_positive("length of the hoist line", line_m, SOURCE)
    if not 0.0 <= amplitude_deg <= WIDEST_DEG:
        raise OutOfRangeError("amplitude", amplitude_deg, f"0 to {WIDEST_DEG:.0f}°", SOURCE)

    return line_m * (1.0 - exact.cos(amplitude_deg / exact.RAD_IN_DEG))


def leaning_push_kn(load_kn: float, out_of_plumb_deg: float) -> float:
    """Level push of a load that hangs out of plumb against what keeps it from swinging back.

        Q = W sin A / cos A

    Source:
        SIMPLE_PENDULUM; statics of a line out of plumb.

    Args:
        load_kn: W [kN], above 0.
        out_of_plumb_deg: A [°], 0 to 60.

    Returns:
        Q [kN].

    Raises:
        OutOfRangeError: If an argument leaves its range.

    Example:
        >>> round(leaning_push_kn(20.0, 45.0), 9)
        20.0
    """
    required_positive("load on the hook", load_kn, SOURCE)
    if not 0.0 <= out_of_plumb_deg <= STEEPEST_LEAN_DEG:
        raise OutOfRangeError("swing out of plumb", out_of_plumb_deg, f"0 to {STEEPEST_LEAN_DEG:.0f}°", SOURCE)
    angle_rad = out_of_plumb_deg / exact.RAD_IN_DEG

    return load_kn * exact.sin(angle_rad) / exact.cos(angle_rad)


def highest_pull_kn(load_kn: float, amplitude_deg: float, sideways_share: float) -> float:
    """Highest pull in the line of a load that swings while its hook brakes and the wind pushes.

        T = W (√(9 + s²) − 2 cos A)

    Source:
        SIMPLE_PENDULUM: T = W (cos θ + s sin θ + u² / g L) at any angle θ of the swing, u² / g L ≤ 2 (cos θ − cos A),
        and 3 cos θ + s sin θ ≤ √(9 + s²).

    Args:
        load_kn: W [kN], above 0.
        amplitude_deg: A, farthest that it comes out of plumb [°], 0 to 90.
        sideways_share: s, braking as a share of g and push of the wind as a share of the load, added up [-], 0 or more.

    Returns:
        T [kN], or somewhat more than it.

    Raises:
        OutOfRangeError: If an argument leaves its range.

    Example:
        >>> round(highest_pull_kn(20.0, 60.0, 0.0), 9), round(highest_pull_kn(20.0, 0.0, 4.0), 9)
        (40.0, 60.0)
    """
    required_positive("load on the hook", load_kn, SOURCE)
    required_not_negative("level acceleration as a share of g", sideways_share, SOURCE)
    if not 0.0 <= amplitude_deg <= WIDEST_DEG:
        raise OutOfRangeError("amplitude", amplitude_deg, f"0 to {WIDEST_DEG:.0f}°", SOURCE)

    most = exact.sqrt(9.0 + sideways_share * sideways_share)
    return load_kn * (most - 2.0 * exact.cos(amplitude_deg / exact.RAD_IN_DEG))
