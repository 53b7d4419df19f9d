"""US eyebolts: pounds, the angle counts from the bolt's axis, the pull lies in the plane of the eye.

Makers' charts, ASME B18.15 and ASME B30.26 disagree about angles; the strictest step of those that apply counts.
"""

from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.fittings.eye_marking import IN_LINE_UP_TO_DEG, PullPlane, Seating

SOURCE = "US_EYEBOLT_CHARTS"
STEPS = ((5.0, 1.0), (15.0, 0.55), (90.0, 0.25))  # up to, share of the rating in line (ASME B30.26)
METRIC_UP_TO_DEG = 45.0
# ASME B18.15, size [in]: at 0, 30, 60, 90° from the axis [lb]; 1/4 in has no rating at 60 and 90°
B18_15 = {
    "1/4": (400, 75), "3/8": (1000, 400, 220, 180), "1/2": (1840, 850, 520, 440), "5/8": (2940, 1410, 890, 740),
    "3/4": (4340, 2230, 1310, 1140), "1": (7880, 3850, 2630, 2320), "1-1/4": (12600, 6200, 4125, 3690),
    "1-1/2": (18260, 9010, 6040, 5460),
}
B18_15_UP_TO_DEG = (IN_LINE_UP_TO_DEG, 30.0, 60.0, 90.0)
# US list of metric eyebolts, thread [mm]: straight, at 45° [lb]
METRIC = {
    6: (462, 116), 8: (1110, 278), 10: (1628, 407), 12: (2266, 567), 14: (3520, 880), 16: (3520, 880),
    18: (4708, 1177), 20: (6292, 1573), 22: (6292, 1573), 24: (8470, 2118), 27: (11440, 2860), 30: (14080, 3520),
    36: (19734, 4934), 42: (26312, 6578), 48: (36080, 9020),
}


def shoulder_factor(from_axis_deg: float) -> float:
    """What an angle leaves of a shoulder eyebolt's rating, where its maker's own figure is not known.

        to 5° 1.0, to 15° 0.55, to 90° 0.25

    Source:
        US_EYEBOLT_CHARTS (100 % to 5°, 80 at 15°, 65 at 30°, 30 at 45°, 25 at 90°); ASME_B30_26_STEPS takes more away.

    Args:
        from_axis_deg: angle of the pull from the bolt's axis [°], 0 to 90.

    Returns:
        Share of the rating in line [-].

    Raises:
        OutOfRangeError: If the angle is no number of 0 to 90.

    Example:
        >>> shoulder_factor(5.0), shoulder_factor(6.0), shoulder_factor(16.0)
        (1.0, 0.55, 0.25)
    """
    if not 0.0 <= from_axis_deg <= STEPS[-1][0]:
        raise OutOfRangeError("pull from the axis of the eyebolt", from_axis_deg, "0 to 90°", SOURCE)

    return next(share for up_to_deg, share in STEPS if from_axis_deg <= up_to_deg)


def b18_15_lb(size_in: str, from_axis_deg: float, plane: PullPlane, seating: Seating) -> float:
    """What a shoulder eyebolt to ASME B18.15 carries along the leg.

        lower of the table's next step and the rating in line × `shoulder_factor`

    Source:
        ASME_B18_15, as a fastener maker prints it; ASME_B30_26_STEPS; US_EYEBOLT_CHARTS for the plane.

    Args:
        size_in: nominal size, such as "1/2" [in].
        from_axis_deg: angle of the pull from the bolt's axis [°], 0 to 90.
        plane: how the pull lies to the ring.
        seating: how the shoulder sits.

    Returns:
        Rated load [lb].

    Raises:
        OutOfRangeError: For a size or an angle that the table does not have, across the eye, or with a gap.

    Example:
        >>> b18_15_lb("1/2", 0.0, PullPlane.IN_PLANE, Seating.FLAT)
        1840.0
    """
    if size_in not in B18_15:
        raise OutOfRangeError("size of the eyebolt", size_in, ", ".join(B18_15) + " in", "ASME_B18_15")

    row = B18_15[size_in]
    by_angle_lb = row[0] * shoulder_factor(from_axis_deg)
    _aslant(from_axis_deg, plane, seating)
    steps = zip(B18_15_UP_TO_DEG, row, strict=False)
    printed_lb = next((rated_lb for up_to_deg, rated_lb in steps if from_axis_deg <= up_to_deg), None)
    if printed_lb is None:
        words = f"0 to {B18_15_UP_TO_DEG[len(row) - 1]:.0f}°"
        raise OutOfRangeError(f"pull on a {size_in} in eyebolt from its axis", from_axis_deg, words, "ASME_B18_15")
    return by_angle_lb if by_angle_lb < printed_lb else float(printed_lb)


def metric_lb(thread_mm: int, from_axis_deg: float, plane: PullPlane, seating: Seating) -> float:
    """What a US metric machinery eyebolt with shoulder carries along the leg.

        lower of the list's figure at 45° beyond 5°, and the rating in line × `shoulder_factor`; never beyond 45°

    Source:
        US_METRIC_EYEBOLTS; ASME_B30_26_STEPS; US_EYEBOLT_CHARTS for the plane.

    Args:
        thread_mm: thread, M [mm].
        from_axis_deg: angle of the pull from the bolt's axis [°], 0 to 45.
        plane: how the pull lies to the ring.
        seating: how the shoulder sits.

    Returns:
        Rated load [lb].

    Raises:
        OutOfRangeError: For a thread that the list does not have, beyond 45°, across the eye, or with a gap.

    Example:
        >>> metric_lb(20, 0.0, PullPlane.IN_PLANE, Seating.FLAT), metric_lb(20, 45.0, PullPlane.IN_PLANE, Seating.FLAT)
        (6292.0, 1573.0)
    """
    if thread_mm not in METRIC:
        threads = ", ".join(f"M{thread}" for thread in METRIC)
        raise OutOfRangeError("thread of the eyebolt", f"M{thread_mm}", threads, "US_METRIC_EYEBOLTS")
    if not 0.0 <= from_axis_deg <= METRIC_UP_TO_DEG:
        raise OutOfRangeError("pull from the axis of the eyebolt", from_axis_deg, "0 to 45°", "US_METRIC_EYEBOLTS")
    _aslant(from_axis_deg, plane, seating)

    straight_lb, aslant_lb = METRIC[thread_mm]
    return float(straight_lb) if from_axis_deg <= IN_LINE_UP_TO_DEG else float(aslant_lb)


def plain_eye_lb(marked_lb: float, from_axis_deg: float) -> float:
    """What an eyebolt without a shoulder carries: in line only.

        rated load as marked, up to 5° from the axis

    Source:
        ASME_B30_26_SHOULDER; US_EYEBOLT_CHARTS for up to 5° as in line.

    Args:
        marked_lb: as marked on the eye [lb], above 0.
        from_axis_deg: angle of the pull from the bolt's axis [°], 0 to 5.

    Returns:
        Rated load [lb].

    Raises:
        OutOfRangeError: At an angle, or for a rating that is no number above 0.

    Example:
        >>> plain_eye_lb(1200.0, 0.0)
        1200.0
    """
    if not 0.0 < marked_lb < float("inf"):
        raise OutOfRangeError("rating marked on the eyebolt", marked_lb, "a number above 0", "ASME_B30_26_SHOULDER")
    if not 0.0 <= from_axis_deg <= IN_LINE_UP_TO_DEG:
        raise OutOfRangeError(
            "pull on an eyebolt without shoulder", from_axis_deg, "in line, 0 to 5°", "ASME_B30_26_SHOULDER"
        )

    return marked_lb


def _aslant(from_axis_deg: float, plane: PullPlane, seating: Seating) -> None:
    if seating is not Seating.FLAT:
        raise OutOfRangeError("seat of the eyebolt", seating.value, Seating.FLAT.value, SOURCE)
    if plane is PullPlane.ACROSS and from_axis_deg > IN_LINE_UP_TO_DEG:
        raise OutOfRangeError("pull across the eyebolt", from_axis_deg, "in its plane; turn it with shims", SOURCE)
