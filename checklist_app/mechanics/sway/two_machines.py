"""Two hooks that travel with one load: how much of its rating each may carry, and how far it can swing between them."""

from checklist_app.mechanics.errors import required_not_negative, required_positive
from checklist_app.mechanics.sway import swing

SOURCE = "TWO_MACHINES"
READ_MARGIN = 1.2
FROM_MEMORY = 0.75


def share_of_rating() -> float:
    """Most that each of two machines that move one load may carry, as a share of its rating.

        the less of 1 / 1.2 and 0.75

    Source:
        QLD_MOBILE_CRANES, two machines, each rated for 20 % more than its share as worked out; BS_7121_TANDEM, derated
        by a quarter where not everything can be told, from memory, so stricter only.

    Returns:
        Share of the rating [-].

    Example:
        >>> share_of_rating()
        0.75
    """
    return min(1.0 / READ_MARGIN, FROM_MEMORY)


def shorter_line_m(hook_below_m: float, leg_drops_m: tuple[float, float]) -> float:
    """Line on which a load swings between two hooks without turning: down to its eyes, not to its centre of gravity.

        l = h + the less of both legs

    Source:
        TWO_MACHINES; two lines side by side carry the load along level, each point of it on an arc of their length.

    Args:
        hook_below_m: h, hook below its trolley [m], 0 or more.
        leg_drops_m: each eye below its hook [m], above 0.

    Returns:
        l [m].

    Raises:
        OutOfRangeError: If a length leaves its range.

    Example:
        >>> shorter_line_m(2.0, (1.5, 1.4))
        3.4
    """
    required_not_negative("hook below its trolley", hook_below_m, SOURCE)
    for drop_m in leg_drops_m:
        required_positive("eye below its hook", drop_m, SOURCE)

    return hook_below_m + min(leg_drops_m)


def swing_of_two_deg(speed_m_s: float, line_m: float) -> float:
    """How far the load swings when two hooks that travel with it stop dead, both at once or one before the other.

        A by cos A = 1 − v² / (2 g l);  Σ share × A = A

    Source:
        TWO_MACHINES: small swings add up, each hook moves the load as much as its share, and no order of stops gives
        more than both at once at the worst moment.

    Args:
        speed_m_s: v, travelling speed [m/s], 0 or more.
        line_m: l, the shorter line [m], above 0.

    Returns:
        A [°].

    Raises:
        OutOfRangeError: If an argument leaves its range, or the load would swing beyond level.

    Example:
        >>> round(swing_of_two_deg(1.0, 3.0), 3)
        10.578
    """
    return swing.swing_after_stop_deg(speed_m_s, line_m)
