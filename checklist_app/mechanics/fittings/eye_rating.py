"""Any eye by its marking: one question, answered from the table that belongs to the marking."""

from checklist_app.mechanics.errors import OutOfRangeError, required_positive
from checklist_app.mechanics.fittings import bs_eyes, din_eyes, us_eyes
from checklist_app.mechanics.fittings.eye_marking import IN_LINE_UP_TO_DEG, EyeMarking, PullPlane, Seating
from checklist_app.mechanics.slings.us_chain_wll import KG_IN_LB, tonnes_of_lb

KG_IN_T = 1000.0
DIN = (EyeMarking.DIN_580, EyeMarking.DIN_580_2003)
COLLAR = (EyeMarking.BS_4278_COLLAR, EyeMarking.AS_2317_COLLAR)
AS_MARKED = (EyeMarking.BS_4278_DYNAMO, EyeMarking.US_PLAIN, EyeMarking.ISO_3266, EyeMarking.BS_4278_LINK)


def eye_wll_t(
    marking: EyeMarking, thread: str, marked_wll_t: float, from_axis_deg: float, plane: PullPlane, seating: Seating,
    moved_between_loads: bool,
) -> float:
    """What an eye carries along the leg: by the table of its marking, never more than is stamped on it.

        min(WLL stamped, WLL of the step)

    Source:
        DIN_580, DIN_580_2003, BS_4278, BS_4278_TYPES, ASME_B18_15, US_METRIC_EYEBOLTS, ASME_B30_26_SHOULDER; ISO_3266
        and the BS eyebolt with link in line as marked: their tables of angles were not seen.

    Args:
        marking: standard stamped on it, or on its certificate.
        thread: such as "M20" or "1/2".
        marked_wll_t: WLL stamped on it [t], above 0.
        from_axis_deg: angle of the pull from the axis of the thread [°], 0 to 90.
        plane: how the pull lies to the ring.
        seating: how its collar sits.
        moved_between_loads: whether it is screwed now into this load, now into that one.

    Returns:
        WLL [t].

    Raises:
        OutOfRangeError: Without a standard, for a thread or a pull that its table does not have, or with a gap.

    Example:
        >>> eye_wll_t(EyeMarking.DIN_580, "M20", 1.2, 40.0, PullPlane.IN_PLANE, Seating.FLAT, False)
        0.86
    """
    required_positive("WLL stamped on the eye", marked_wll_t, "PLATE")
    table_t = _by_marking(marking, thread, marked_wll_t, from_axis_deg, plane, seating, moved_between_loads)

    return table_t if table_t < marked_wll_t else marked_wll_t


def _by_marking(
    marking: EyeMarking, thread: str, marked_wll_t: float, from_axis_deg: float, plane: PullPlane, seating: Seating,
    moved_between_loads: bool,
) -> float:
    if marking in DIN:
        metric = _metric(thread)
        return din_eyes.din_eye_wll_t(marking, metric, from_axis_deg, plane, seating, moved_between_loads)
    if marking in COLLAR:
        return bs_eyes.collar_eye_wll_t(marking, _metric(thread), from_axis_deg, plane, seating)
    if marking is EyeMarking.US_B18_15_SHOULDER:
        return tonnes_of_lb(us_eyes.b18_15_lb(thread, from_axis_deg, plane, seating))
    if marking is EyeMarking.US_METRIC_SHOULDER:
        return tonnes_of_lb(us_eyes.metric_lb(_metric(thread), from_axis_deg, plane, seating))
    if marking in AS_MARKED:
        return _in_line(marking, marked_wll_t, from_axis_deg)

    raise OutOfRangeError("marking of the eye", marking.value, "the standard stamped on it or certified", "PLATE")


def _in_line(marking: EyeMarking, marked_wll_t: float, from_axis_deg: float) -> float:
    if marking is EyeMarking.BS_4278_DYNAMO:
        return bs_eyes.dynamo_eye_wll_t(marked_wll_t, from_axis_deg)
    if marking is EyeMarking.US_PLAIN:
        return tonnes_of_lb(us_eyes.plain_eye_lb(marked_wll_t * KG_IN_T / KG_IN_LB, from_axis_deg))
    if not 0.0 <= from_axis_deg <= IN_LINE_UP_TO_DEG:
        name = f"pull on an eye marked {marking.value}, from its axis"
        raise OutOfRangeError(name, from_axis_deg, "in line, 0 to 5°; aslant by its maker's sheet", "PLATE")

    return marked_wll_t


def _metric(thread: str) -> int:
    if not (thread[:1] == "M" and thread[1:].isascii() and thread[1:].isdigit()):
        raise OutOfRangeError("thread of the eye", thread, "a metric thread such as M20", "DIN_580")

    return int(thread[1:])
