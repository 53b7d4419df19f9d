"""How slings meet eyes: what turns an eyebolt out, bends it, or pulls a pair together."""

from enum import Enum

from checklist_app.mechanics.errors import OutOfRangeError

SOURCE = "BS_4278_TYPES"


class EyeUse(Enum):
    """How the sling is joined to the eye."""

    SHACKLE = "a shackle that moves freely in the eye"
    HOOK_FREE = "a hook that moves freely in the eye"
    HOOK_FORCED = "a hook or fitting forced into the eye"
    HOOK_TIP = "the tip of a hook in the eye"
    REEVED = "one sling reeved through two eyes"
    DIRECT = "a sling straight through the eye"


class Turning(Enum):
    """What keeps a load on a single sling from turning its eye out of the thread."""

    FREE = "nothing: the load is free to turn"
    HELD = "the load is held from turning, by guides or tag lines"
    SWIVELS = "the eye swivels on its bolt, as a hoist ring does"


def eye_use_factor(use: EyeUse, small_eye: bool) -> float:
    """An eye keeps its WLL with a fitting that moves freely in it.

        1, or refused

    Source:
        BS_4278_TYPES: fittings move freely, nothing is reeved through a pair; the small eye of a collar eyebolt takes
        a shackle, no hook. US_EYEBOLT_CHARTS: nothing is reeved.

    Args:
        use: how the sling is joined to the eye.
        small_eye: whether it is a collar eyebolt to BS 4278 or AS 2317.1.

    Returns:
        Share of the WLL [-].

    Raises:
        OutOfRangeError: For every other use.

    Example:
        >>> eye_use_factor(EyeUse.SHACKLE, small_eye=True)
        1.0
    """
    if use is EyeUse.SHACKLE or (use is EyeUse.HOOK_FREE and not small_eye):
        return 1.0

    words = "a shackle that moves freely in it" if small_eye else "a shackle or a hook that moves freely in it"
    raise OutOfRangeError("way the sling meets the eye", use.value, words, SOURCE)


def single_eye_stays(turning: Turning) -> bool:
    """Whether a single eye screwed into a load stays there while it hangs.

        not on a load that is free to turn

    Source:
        BS_4278_TYPES: no single eyebolt on a load that is free to turn; HOIST_RING_NOTES for a ring that turns while
        its bolt stays. That a lock in the thread would do was not read anywhere.

    Args:
        turning: what keeps the load from turning it out.

    Returns:
        True unless the load is free to turn.

    Example:
        >>> single_eye_stays(Turning.FREE), single_eye_stays(Turning.HELD)
        (False, True)
    """
    return turning is not Turning.FREE
