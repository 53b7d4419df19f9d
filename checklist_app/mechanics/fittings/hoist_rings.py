"""Swivel hoist rings: the full WLL at any angle to the side, if the seat is as the maker wants it."""

from checklist_app.mechanics.errors import OutOfRangeError, required_positive

SOURCE = "HOIST_RING_NOTES"
ASIDE_UP_TO_DEG = 90.0
STEEL_ENGAGEMENT, ALUMINIUM_ENGAGEMENT = 1.5, 2.0  # thread engaged, in diameters
STEEL_STRENGTH_MPA = 552.0  # 80 000 psi


def hoist_ring_wll_t(
    marked_wll_t: float, from_axis_deg: float, flat_on_face: bool, spacers: bool, torqued: bool
) -> float:
    """What a swivel hoist ring carries.

        WLL as marked, 0 to 90° from the bolt's axis

    Source:
        HOIST_RING_NOTES.

    Args:
        marked_wll_t: as marked on the ring [t], above 0.
        from_axis_deg: angle of the pull from the bolt's axis [°], 0 to 90.
        flat_on_face: the whole bushing bears on a flat face.
        spacers: there are spacers, washers or shims under it.
        torqued: the bolt was tightened to the torque on the ring and looked at again.

    Returns:
        WLL [t].

    Raises:
        OutOfRangeError: Beyond 90°, with a gap or spacers under it, or not tightened to its torque.

    Example:
        >>> hoist_ring_wll_t(1.0, 90.0, flat_on_face=True, spacers=False, torqued=True)
        1.0
    """
    required_positive("WLL marked on the hoist ring", marked_wll_t, SOURCE)
    if not 0.0 <= from_axis_deg <= ASIDE_UP_TO_DEG:
        raise OutOfRangeError("pull on the hoist ring from its axis", from_axis_deg, "0 to 90°", SOURCE)
    if not flat_on_face or spacers:
        seen = "spacers under it" if spacers else "a gap under it"
        raise OutOfRangeError("seat of the hoist ring", seen, "the whole bushing flat, nothing under it", SOURCE)
    if not torqued:
        raise OutOfRangeError("bolt of the hoist ring", "not tightened to its torque", "the torque on the ring", SOURCE)

    return marked_wll_t


def hoist_ring_thread_holds(engaged_mm: float, thread_mm: float, aluminium: bool, strength_mpa: float) -> bool:
    """Whether thread and base metal allow the full rating of a hoist ring.

        engaged ≥ 1.5 d in steel of 552 MPa or more, ≥ 2 d in aluminium

    Source:
        HOIST_RING_NOTES.

    Args:
        engaged_mm: length of thread engaged [mm], above 0.
        thread_mm: d, diameter of the thread [mm], above 0.
        aluminium: whether the base metal is aluminium.
        strength_mpa: tensile strength of the base metal [MPa], above 0.

    Returns:
        True if both are met; aluminium never reaches the strength, and its maker says what is left.

    Raises:
        OutOfRangeError: If a number is none above 0.

    Example:
        >>> hoist_ring_thread_holds(30.0, 20.0, aluminium=False, strength_mpa=600.0)
        True
    """
    required_positive("thread engaged", engaged_mm, SOURCE)
    required_positive("diameter of the thread", thread_mm, SOURCE)
    required_positive("tensile strength of the base metal", strength_mpa, SOURCE)

    needed = ALUMINIUM_ENGAGEMENT if aluminium else STEEL_ENGAGEMENT
    return engaged_mm >= needed * thread_mm and strength_mpa >= STEEL_STRENGTH_MPA
