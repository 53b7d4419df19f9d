"""A load that swings on its line: how slowly, how far after starting or stopping, how hard it pulls."""

from checklist_app.mechanics import exact
from checklist_app.mechanics.errors import OutOfRangeError, required_not_negative, required_positive
from checklist_app.mechanics.gravity import STANDARD_GRAVITY_M_S2

SOURCE = "SIMPLE_PENDULUM"
WIDEST_DEG = 90.0
ROUNDS = 30
AS_GOOD_AS_EQUAL = 1e-15


def period_s(line_m: float, amplitude_deg: float) -> float:
    """Time of one swing there and back.

        T = 2 π √(L / g) / AGM(1, cos(A / 2))

    Source:
        SIMPLE_PENDULUM.

    Args:
        line_m: L, from where the line hangs to the centre of gravity [m], above 0.
        amplitude_deg: A, from plumb to the end of the swing [°], 0 to 90.

    Returns:
        T [s].

    Raises:
        OutOfRangeError: If an argument leaves its range.

    Example:
        >>> round(period_s(3.0, 0.0), 6), round(period_s(3.0, 20.0), 6)
        (3.475203, 3.501854)
    """
    required_positive("length of the hoist line", line_m, SOURCE)
    _swing("amplitude", amplitude_deg)
    mean, other = 1.0, exact.cos(0.5 * amplitude_deg / exact.RAD_IN_DEG)
    for _ in range(ROUNDS):
        if not abs(mean - other) > AS_GOOD_AS_EQUAL:
            break
        mean, other = 0.5 * (mean + other), exact.sqrt(mean * other)

    return 2.0 * exact.PI * exact.sqrt(line_m / STANDARD_GRAVITY_M_S2) / mean


def steady_swing_deg(acceleration_m_s2: float) -> float:
    """Angle at which a load trails behind a hoist that keeps speeding up or slowing down.

        φ = atan2(a, g)

    Source:
        SIMPLE_PENDULUM.

    Args:
        acceleration_m_s2: a [m/s²], 0 or more.

    Returns:
        φ [°].

    Raises:
        OutOfRangeError: If the acceleration is no number of 0 or more.

    Example:
        >>> round(steady_swing_deg(0.3), 6)
        1.752217
    """
    required_not_negative("acceleration", acceleration_m_s2, SOURCE)

    return exact.atan2_deg(acceleration_m_s2, STANDARD_GRAVITY_M_S2)


def swing_after_sudden_start_deg(acceleration_m_s2: float) -> float:
    """How far it swings when the acceleration comes at once, the load having hung still.

        φ = 2 atan2(a, g)

    Source:
        SIMPLE_PENDULUM; a sudden side force does the same, with F / m in place of a.

    Args:
        acceleration_m_s2: a [m/s²], 0 or more.

    Returns:
        φ [°].

    Raises:
        OutOfRangeError: If the acceleration is no number of 0 or more.

    Example:
        >>> round(swing_after_sudden_start_deg(0.3), 6)
        3.504433
    """
    return 2.0 * steady_swing_deg(acceleration_m_s2)


def swing_after_start_and_stop_deg(acceleration_m_s2: float) -> float:
    """How far it can swing when a stop comes at the worst moment of the swing from the start.

        φ = 4 atan2(a, g), small swings: what is there, and the stop's own twice the steady angle

    Source:
        SIMPLE_PENDULUM.

    Args:
        acceleration_m_s2: a, of start and stop [m/s²], 0 or more.

    Returns:
        φ [°].

    Raises:
        OutOfRangeError: If the acceleration is no number of 0 or more.

    Example:
        >>> round(swing_after_start_and_stop_deg(0.3), 6)
        7.008866
    """
    return 2.0 * swing_after_sudden_start_deg(acceleration_m_s2)


def rise_after_stop_m(speed_m_s: float) -> float:
    """How high it swings when a hoist that travels with it stops dead.

        z = v² / 2 g

    Source:
        SIMPLE_PENDULUM.

    Args:
        speed_m_s: v [m/s], 0 or more.

    Returns:
        z [m].

    Raises:
        OutOfRangeError: If the speed is no number of 0 or more.

    Example:
        >>> round(rise_after_stop_m(1.0), 5)
        0.05099
    """
    required_not_negative("travelling speed", speed_m_s, SOURCE)

    return speed_m_s * speed_m_s / (2.0 * STANDARD_GRAVITY_M_S2)


def swing_after_stop_deg(speed_m_s: float, line_m: float) -> float:
    """How far it swings when a hoist that travels with it stops dead.

        cos A = 1 − v² / (2 g L)

    Source:
        SIMPLE_PENDULUM.

    Args:
        speed_m_s: v [m/s], 0 or more.
        line_m: L, from where the line hangs to the centre of gravity [m], above 0.

    Returns:
        A [°].

    Raises:
        OutOfRangeError: If an argument leaves its range, or the load would swing beyond level.

    Example:
        >>> round(swing_after_stop_deg(1.0, 3.0), 3)
        10.578
    """
    required_positive("length of the hoist line", line_m, SOURCE)
    cosine = 1.0 - rise_after_stop_m(speed_m_s) / line_m
    if not cosine >= 0.0:
        raise OutOfRangeError("travelling speed", speed_m_s, "a speed that does not swing it beyond level", SOURCE)

    return exact.atan2_deg(exact.sqrt(1.0 - cosine * cosine), cosine)


def swing_out_m(line_m: float, swing_deg: float) -> float:
    """How far sideways the load comes.

        x = L sin A

    Source:
        SIMPLE_PENDULUM.

    Args:
        line_m: L [m], above 0.
        swing_deg: A [°], 0 to 90.

    Returns:
        x [m].

    Raises:
        OutOfRangeError: If an argument leaves its range.

    Example:
        >>> round(swing_out_m(3.0, 30.0), 6)
        1.5
    """
    required_positive("length of the hoist line", line_m, SOURCE)
    _swing("swing", swing_deg)

    return line_m * exact.sin(swing_deg / exact.RAD_IN_DEG)


def highest_pull_kn(load_kn: float, amplitude_deg: float) -> float:
    """Pull in the line as the swinging load passes plumb.

        T = W (3 − 2 cos A)

    Source:
        SIMPLE_PENDULUM.

    Args:
        load_kn: W [kN], above 0.
        amplitude_deg: A [°], 0 to 90.

    Returns:
        T [kN].

    Raises:
        OutOfRangeError: If an argument leaves its range.

    Example:
        >>> round(highest_pull_kn(20.0, 60.0), 9)
        40.0
    """
    required_positive("load on the hook", load_kn, SOURCE)
    _swing("amplitude", amplitude_deg)

    return load_kn * (3.0 - 2.0 * exact.cos(amplitude_deg / exact.RAD_IN_DEG))


def _swing(name: str, angle_deg: float) -> None:
    if not 0.0 <= angle_deg <= WIDEST_DEG:
        raise OutOfRangeError(name, angle_deg, f"0 to {WIDEST_DEG:.0f}°", SOURCE)
