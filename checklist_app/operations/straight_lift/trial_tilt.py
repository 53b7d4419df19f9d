"""How far a tilt read at a trial lies from the plan, with the end or side that hung low where somebody said it."""

from checklist_app.operations.straight_lift.trial_entries import LowEnd, LowSide


def off_plan_deg(planned_deg: float, read_deg: float, low: LowEnd | LowSide | None) -> float:
    """Read against planned, left and front above 0; where nobody said which hung low, as if it were the planned one.

    What is said to hang level may lie to either side: the worse is taken.

    Example:
        >>> off_plan_deg(4.0, 4.0, LowEnd.LEFT), off_plan_deg(4.0, 4.0, LowEnd.RIGHT), off_plan_deg(-4.0, 4.0, None)
        (0.0, 8.0, 0.0)
    """
    if low is None:
        return abs(abs(planned_deg) - read_deg)
    if low in (LowEnd.LEVEL, LowSide.LEVEL):
        return abs(planned_deg) + read_deg

    return abs(planned_deg - read_deg if low in (LowEnd.LEFT, LowSide.FRONT) else planned_deg + read_deg)
