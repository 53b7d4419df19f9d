"""Shackles that gather both legs, and the hook that does without one."""

from checklist_app.mechanics.errors import OutOfRangeError

BOW_INCLUDED_UP_TO_DEG = 120.0  # EN 13889 makers' charts: two slings in the bow
HOOK_INCLUDED_UP_TO_DEG = 90.0  # from memory, hook makers' charts: stricter only


def bow_wll_t(wll_t: float, included_angle_deg: float) -> float:
    """WLL of a shackle with two legs in its bow.

        WLL as marked, up to 120° between the legs

    Source:
        EN_13889, as makers' charts restate it.

    Args:
        wll_t: as marked on the body [t].
        included_angle_deg: between the two legs [°].

    Returns:
        WLL [t].

    Raises:
        OutOfRangeError: Beyond 120° between the legs.

    Example:
        >>> bow_wll_t(4.75, 120.0)
        4.75
    """
    if not 0.0 <= included_angle_deg <= BOW_INCLUDED_UP_TO_DEG:
        raise OutOfRangeError("angle between the legs in the bow", included_angle_deg, "0 to 120°", "EN_13889")

    return wll_t


def hook_wll_t(wll_t: float, included_angle_deg: float) -> float:
    """WLL of a hook with two sling legs straight in its bowl.

        WLL as marked, up to 90° between the legs

    Source:
        HOOK_TWO_LEGS (from memory: it only ever refuses).

    Args:
        wll_t: as marked on the hook [t].
        included_angle_deg: between the two legs [°].

    Returns:
        WLL [t].

    Raises:
        OutOfRangeError: Beyond 90° between the legs; a bow shackle or ring takes more.

    Example:
        >>> hook_wll_t(2.0, 60.0)
        2.0
    """
    if not 0.0 <= included_angle_deg <= HOOK_INCLUDED_UP_TO_DEG:
        raise OutOfRangeError(
            "angle between two legs straight in a hook", included_angle_deg,
            "0 to 90° (from memory); more in a bow shackle", "HOOK_TWO_LEGS",
        )

    return wll_t
