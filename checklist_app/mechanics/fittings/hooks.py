"""Hooks and the links that gather legs."""

from enum import Enum

from checklist_app.mechanics.errors import OutOfRangeError, required_positive

LEGS_IN_A_HOOK = 2
LEG_FROM_AXIS_UP_TO_DEG = 45.0
GATHERED_UP_TO_DEG = 120.0


class HookLoading(Enum):
    """Where the load sits."""

    BOWL = "in the bowl"
    TIP = "on the tip"
    SIDE = "aside, out of the hook's plane"
    BACK = "on the back"
    LATCH = "on the latch"


def hook_loading_factor(loading: HookLoading) -> float:
    """A hook keeps its WLL with the load in its bowl, and has none otherwise.

        1, or refused

    Source:
        WAC_296_304_07005 and the makers' charts behind ASME_B30_10. Figures sometimes printed for the tip are no
        permission.

    Args:
        loading: where the load sits.

    Returns:
        Share of the WLL [-].

    Raises:
        OutOfRangeError: For every place but the bowl.

    Example:
        >>> hook_loading_factor(HookLoading.BOWL)
        1.0
    """
    if loading is not HookLoading.BOWL:
        raise OutOfRangeError("load on the hook", loading.value, "in the bowl", "WAC_296_304_07005")

    return 1.0


def legs_in_hook_factor(legs: int, flattest_from_axis_deg: float) -> float:
    """A hook keeps its WLL with one or two sling legs in its bowl, each within 45° of its axis.

        1, or refused

    Source:
        ASME_B30_10: more than two legs, or any beyond 45° from the axis (90° between two), are gathered in a link, ring
        or bow shackle.

    Args:
        legs: legs that lie in the bowl, 1 or more.
        flattest_from_axis_deg: of the leg that lies flattest, from the hook's axis [°], 0 to 45.

    Returns:
        Share of the WLL [-].

    Raises:
        OutOfRangeError: For more than two legs, or beyond 45°.

    Example:
        >>> legs_in_hook_factor(2, 45.0)
        1.0
    """
    if not 1 <= legs <= LEGS_IN_A_HOOK:
        raise OutOfRangeError("legs straight in one hook", legs, "1 or 2; more in a link or bow shackle", "ASME_B30_10")
    if not 0.0 <= flattest_from_axis_deg <= LEG_FROM_AXIS_UP_TO_DEG:
        raise OutOfRangeError(
            "leg straight in a hook, from its axis", flattest_from_axis_deg, "0 to 45°; more in a link or bow shackle",
            "ASME_B30_10",
        )

    return 1.0


def master_link_factor(widest_included_deg: float) -> float:
    """A master link or ring keeps its WLL with the legs it gathers up to 120° apart.

        1, or refused

    Source:
        COLLECTOR_120; EN_818_4 ends at the same angle, 60° from vertical on each side.

    Args:
        widest_included_deg: between the two legs furthest apart [°], 0 to 120.

    Returns:
        Share of the WLL [-].

    Raises:
        OutOfRangeError: Beyond 120°.

    Example:
        >>> master_link_factor(120.0)
        1.0
    """
    if not 0.0 <= widest_included_deg <= GATHERED_UP_TO_DEG:
        raise OutOfRangeError(
            "angle between the legs in the link", widest_included_deg, "0 to 120°", "COLLECTOR_120"
        )

    return 1.0


def link_hangs_free(link_inner_mm: float, hook_section_mm: float) -> bool:
    """Whether a link is wide enough to sit in the bowl of a hook.

        inner width > thickness of the hook there

    Source:
        EN_818_6: a master link hangs free in the hook.

    Args:
        link_inner_mm: inner width of the link [mm], above 0.
        hook_section_mm: thickness of the hook where the link bears [mm], above 0.

    Returns:
        True if it does.

    Raises:
        OutOfRangeError: If a length is no number above 0.

    Example:
        >>> link_hangs_free(60.0, 52.0), link_hangs_free(60.0, 63.0)
        (True, False)
    """
    required_positive("inner width of the link", link_inner_mm, "EN_818_6")
    required_positive("thickness of the hook", hook_section_mm, "EN_818_6")

    return link_inner_mm > hook_section_mm
