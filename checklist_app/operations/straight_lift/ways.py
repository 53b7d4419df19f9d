"""What a load meets on its way besides its own weight, as choices: wind, a hook that travels, hands on a tag line."""

from enum import Enum


class Way(Enum):
    """Where it is lifted, and whether the hook travels with it."""

    STILL = "indoors, straight up and down"
    TRAVELS = "indoors, the hook travels with it"
    WIND = "outdoors, straight up and down"
    BOTH = "outdoors, the hook travels with it"


class TagLine(Enum):
    """Whether anybody holds a line to the load."""

    NONE = "no tag line"
    HELD = "held by hand"


OUTDOORS = (Way.WIND, Way.BOTH)
INDOORS = (Way.STILL, Way.TRAVELS)
TRAVELLING = (Way.TRAVELS, Way.BOTH)
STAYING = (Way.STILL, Way.WIND)
MOVED = (Way.TRAVELS, Way.WIND, Way.BOTH)
