"""Lifting eye bolts and nuts to DIN 580 and DIN 582: kilograms per eye as force along the leg, by step.

A pair at 45° carries 2 × the 45° figure × cos 45°, not twice the figure.
"""

from collections.abc import Sequence

from checklist_app.mechanics.angle_ratings import wll_at_angle_t
from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.fittings.eye_marking import IN_LINE_UP_TO_DEG, EyeMarking, PullPlane, Seating

KG_IN_T = 1000.0
ASLANT_UP_TO_DEG, ASIDE_UP_TO_DEG = 45.0, 90.0
HOTTEST_C = 200.0
# thread [mm]: axial, to 45°, to 90° [kg]
TABLE = {
    8: (140, 100, 70), 10: (230, 170, 115), 12: (340, 240, 170), 16: (700, 500, 350), 20: (1200, 860, 600),
    24: (1800, 1290, 900), 30: (3200, 2300, 1600), 36: (4600, 3300, 2300), 42: (6300, 4500, 3150),
    48: (8600, 6100, 4300), 56: (11500, 8200, 5750), 64: (16000, 11000, 8000),
}
EDITIONS = {EyeMarking.DIN_580: 3, EyeMarking.DIN_580_2003: 2}  # how many of the three steps it has


def din_eye_wll_t(
    marking: EyeMarking, thread_mm: int, from_axis_deg: float, plane: PullPlane, seating: Seating,
    moved_between_loads: bool,
) -> float:
    """What one eye bolt or nut carries along the leg.

        axial; any direction up to 45°; up to 90° since 2010, in the plane of the eye

    Source:
        DIN_580; DIN_580_2003 for eyes of that edition, which carry nothing beyond 45°. An eye that is moved from load
        to load is rated by the next smaller thread. HOUSE_SETTING for up to 5° as in line.

    Args:
        marking: edition as marked or certified.
        thread_mm: thread, M [mm].
        from_axis_deg: angle of the pull from the axis of the thread [°], 0 to 90.
        plane: how the pull lies to the ring; up to 45° it may lie either way.
        seating: how the collar sits.
        moved_between_loads: whether it is screwed now into this load, now into that one.

    Returns:
        WLL [t].

    Raises:
        OutOfRangeError: Not screwed home, for another thread or marking, or pulled where it carries nothing.

    Example:
        >>> din_eye_wll_t(EyeMarking.DIN_580, 20, 30.0, PullPlane.ACROSS, Seating.FLAT, moved_between_loads=False)
        0.86
    """
    if marking not in EDITIONS:
        raise OutOfRangeError("marking of the eye", marking.value, "DIN 580 or DIN 582", "DIN_580")
    if seating is not Seating.FLAT:
        raise OutOfRangeError("seat of the eye", seating.value, Seating.FLAT.value, "DIN_580")
    if plane is PullPlane.ACROSS and from_axis_deg > ASLANT_UP_TO_DEG:
        raise OutOfRangeError("pull across the eye", from_axis_deg, "0 to 45°; beyond in its plane", "DIN_580")

    row = _row(thread_mm, moved_between_loads)
    steps = zip((IN_LINE_UP_TO_DEG, ASLANT_UP_TO_DEG, ASIDE_UP_TO_DEG), row, strict=True)
    ratings = [(up_to_deg, mass_kg / KG_IN_T) for up_to_deg, mass_kg in steps][: EDITIONS[marking]]
    return wll_at_angle_t(f"eye M{thread_mm}", ratings, from_axis_deg, "DIN_580")


def eye_temperature_factor(temperature_c: float, coldest_c: float) -> float:
    """An eye bolt or nut keeps its WLL within its range, and has none outside.

        its coldest, by the standards −20 °C, to 200 °C

    Source:
        DIN_580; ISO_3266; `cold.coldest_c` for frost.

    Args:
        temperature_c: of what it is screwed into [°C].
        coldest_c: lowest temperature at which it keeps its WLL [°C].

    Returns:
        Share of the WLL [-].

    Raises:
        OutOfRangeError: Outside, or if the temperature is no number.

    Example:
        >>> eye_temperature_factor(80.0, -20.0)
        1.0
    """
    if not coldest_c <= temperature_c <= HOTTEST_C:
        allowed = f"{coldest_c:.4g} to 200 °C".replace("-", "−")
        raise OutOfRangeError("temperature of the eye", temperature_c, allowed, "DIN_580")

    return 1.0


def _row(thread_mm: int, moved_between_loads: bool) -> Sequence[int]:
    threads = sorted(TABLE)
    if thread_mm not in TABLE:
        raise OutOfRangeError("thread of the eye", f"M{thread_mm}", _words(threads), "DIN_580")
    if not moved_between_loads:
        return TABLE[thread_mm]

    place = threads.index(thread_mm)
    if place == 0:
        raise OutOfRangeError("thread of an eye that is moved", f"M{thread_mm}", _words(threads[1:]), "DIN_580")
    return TABLE[threads[place - 1]]


def _words(threads: Sequence[int]) -> str:
    return ", ".join(f"M{thread}" for thread in threads)
