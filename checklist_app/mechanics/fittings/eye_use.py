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
    TURNS = "a single eyebolt on a load that is free to turn"
    DIRECT = "a sling straight through the eye"


def eye_use_factor(use: EyeUse, small_eye: bool) -> float:
    """An eye keeps its WLL with a fitting that moves freely in it.

        1, or refused

    Source:
        BS_4278_TYPES: fittings move freely, nothing is reeved through a pair, no single eyebolt on a load that is free
        to turn; the small eye of a collar eyebolt takes a shackle, no hook. US_EYEBOLT_CHARTS: nothing is reeved.

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
