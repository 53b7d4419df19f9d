"""Eyebolts to BS 4278 and AS 2317.1: collar eyebolts singly and in pairs, dynamo eyebolts in line only.

Metric threads alone: an old Whitworth or BSF eye has a table of its own and is not looked up here. A shackle goes into
the eye, no hook.
"""

from checklist_app.mechanics.errors import OutOfRangeError, required_positive
from checklist_app.mechanics.fittings.eye_marking import IN_LINE_UP_TO_DEG, EyeMarking, PullPlane, Seating

SOURCE = "BS_4278"
ASIDE_UP_TO_DEG = 90.0
AXIAL_T = {  # thread [mm]: WLL in line [t]
    10: 0.25, 12: 0.40, 16: 0.80, 20: 1.6, 22: 2.0, 24: 2.5, 30: 4.0, 33: 5.0, 36: 6.3, 39: 7.0, 42: 8.0, 48: 10.0,
    56: 15.0,
}
PAIR_STEPS = ((30.0, 1.25), (60.0, 0.8), (90.0, 0.5))  # angle between the legs up to, total on the pair / one axial
TRANSVERSE = 0.25  # AS 2317.1
COLLARED = (EyeMarking.BS_4278_COLLAR, EyeMarking.AS_2317_COLLAR)


def collar_axial_wll_t(thread_mm: int) -> float:
    """What a collar eyebolt carries in line.

        WLL from the table, by the metric thread

    Source:
        BS_4278.

    Args:
        thread_mm: thread, M [mm].

    Returns:
        WLL [t].

    Raises:
        OutOfRangeError: For a thread that the table does not have.

    Example:
        >>> collar_axial_wll_t(20)
        1.6
    """
    if thread_mm not in AXIAL_T:
        threads = ", ".join(f"M{thread}" for thread in AXIAL_T)
        raise OutOfRangeError("thread of the collar eyebolt", f"M{thread_mm}", threads, SOURCE)

    return AXIAL_T[thread_mm]


def collar_pair_wll_t(thread_mm: int, included_deg: float) -> float:
    """What a pair of collar eyebolts carries together, by the angle between the two legs.

        one axial × 1.25 up to 30°, 0.8 up to 60°, 0.5 up to 90°

    Source:
        BS_4278, pairs; BS_4278_45_DEG for the end at 90°.

    Args:
        thread_mm: thread of both, M [mm].
        included_deg: between the two legs [°], 0 to 90.

    Returns:
        WLL of the pair, as load [t].

    Raises:
        OutOfRangeError: Beyond 90°, or for a thread that the table does not have.

    Example:
        >>> round(collar_pair_wll_t(20, 60.0), 3), round(collar_pair_wll_t(20, 61.0), 3)
        (1.28, 0.8)
    """
    return collar_axial_wll_t(thread_mm) * _pair_step(included_deg)


def collar_eye_wll_t(
    marking: EyeMarking, thread_mm: int, from_axis_deg: float, plane: PullPlane, seating: Seating
) -> float:
    """What one collar eyebolt carries along the leg.

        axial up to 5°; × 0.625 up to 15°, 0.40 up to 30°, 0.25 up to 45°; AS 2317.1 0.25 up to 90°

    Source:
        BS_4278: half of what the pair carries, read as force along the leg, which is less than its share along the leg;
        AS transverse rating 0.25. HOUSE_SETTING for up to 5° as in line. Aslant only in the plane of the eye.

    Args:
        marking: standard as marked.
        thread_mm: thread, M [mm].
        from_axis_deg: angle of the pull from the axis of the thread [°], 0 to 90.
        plane: how the pull lies to the ring.
        seating: how the collar sits.

    Returns:
        WLL [t].

    Raises:
        OutOfRangeError: Not screwed home, for another thread or marking, or pulled where it carries nothing.

    Example:
        >>> round(collar_eye_wll_t(EyeMarking.BS_4278_COLLAR, 20, 30.0, PullPlane.IN_PLANE, Seating.FLAT), 3)
        0.64
    """
    if marking not in COLLARED:
        raise OutOfRangeError("marking of the eye", marking.value, "BS 4278 or AS 2317.1 collar eyebolt", SOURCE)
    if seating is not Seating.FLAT:
        raise OutOfRangeError("seat of the eyebolt", seating.value, Seating.FLAT.value, SOURCE)
    if not 0.0 <= from_axis_deg <= ASIDE_UP_TO_DEG:
        raise OutOfRangeError("pull from the axis of the eyebolt", from_axis_deg, "0 to 90°", SOURCE)

    axial_t = collar_axial_wll_t(thread_mm)
    if from_axis_deg <= IN_LINE_UP_TO_DEG:
        return axial_t
    if plane is PullPlane.ACROSS:
        raise OutOfRangeError("pull across the eyebolt", from_axis_deg, "in its plane; turn it with shims", SOURCE)
    if 2.0 * from_axis_deg > PAIR_STEPS[-1][0] and marking is EyeMarking.AS_2317_COLLAR:
        return axial_t * TRANSVERSE

    return axial_t * _pair_step(2.0 * from_axis_deg) / 2.0


def dynamo_eye_wll_t(marked_wll_t: float, from_axis_deg: float) -> float:
    """What a dynamo eyebolt carries: in line only.

        WLL as marked, up to 5° from the axis

    Source:
        BS_4278_TYPES: never at an angle; HOUSE_SETTING for up to 5° as in line. Its table was not seen: the marking
        counts.

    Args:
        marked_wll_t: as marked on the eye [t], above 0.
        from_axis_deg: angle of the pull from the axis of the thread [°], 0 to 5.

    Returns:
        WLL [t].

    Raises:
        OutOfRangeError: At an angle, or for a WLL that is no number above 0.

    Example:
        >>> dynamo_eye_wll_t(1.0, 2.0)
        1.0
    """
    required_positive("WLL marked on the dynamo eyebolt", marked_wll_t, "BS_4278_TYPES")
    if not 0.0 <= from_axis_deg <= IN_LINE_UP_TO_DEG:
        raise OutOfRangeError(
            "pull on a dynamo eyebolt from its axis", from_axis_deg, "in line, 0 to 5°", "BS_4278_TYPES"
        )

    return marked_wll_t


def _pair_step(included_deg: float) -> float:
    if not 0.0 <= included_deg <= PAIR_STEPS[-1][0]:
        raise OutOfRangeError(
            "angle between the legs of a pair of eyebolts", included_deg, "0 to 90°", "BS_4278_45_DEG"
        )

    return next(factor for up_to_deg, factor in PAIR_STEPS if included_deg <= up_to_deg)
