"""The choices that lashing hangs on: the route, what is driven, how a lashing is put on and where its ends are."""

from enum import Enum

from checklist_app.mechanics.lashing.direct import Kind
from checklist_app.mechanics.lashing.rule_sets import RuleSet


class Route(Enum):
    """What the load will see until somebody lifts it off."""

    ROAD = "by road"
    VAN = "by road, in a van of 3.5 t at most"
    RAIL = "by road and rail"
    SEA = "by road and sea"
    RAIL_SEA = "by road, rail and sea"


class FarEnd(Enum):
    """Where the second end of a lashing is, which has two."""

    MIRRORED = "the same, on the other side"
    GIVEN = "measured too"


class Tensioned(Enum):
    """How it is known how hard a lashing is drawn."""

    HAND = "by hand, as the label says"
    MEASURED = "read on an instrument"


class Edges(Enum):
    """What lies between a lashing and the edges it bends round."""

    GUARDED = "edge guards at every edge"
    NO_EDGE = "it bends round no edge"
    BARE = "a bare edge"


class Passes(Enum):
    """How a strap that comes back to the pallet passes it."""

    ELSEWHERE = "it goes to an eye, a ring or the deck"
    UNDER_WHOLE_PALLET = "under the whole pallet"
    THROUGH_PALLET = "through the pallet, under some of its boards"


class BlockedBy(Enum):
    """What keeps the load from moving one way."""

    HEADBOARD = "headboard"
    BOLTS = "bolts"
    CHOCK = "chock or timber, nailed or screwed"
    GIVES = "something that gives before it holds"


class Blocks(Enum):
    """Which way a block keeps the load from moving."""

    FORWARD = "forwards"
    REAR = "rearwards"
    LEFT = "to the left"
    RIGHT = "to the right"


class Lies(Enum):
    """Which way the pallet lies under the load."""

    LENGTHWAYS = "its longer side forwards"
    CROSSWISE = "its shorter side forwards"
    EITHER = "not said: the worse of both ways counts"


class ForksEnter(Enum):
    """From where a truck takes it: which way the forks lie under it."""

    END = "at an end, the forks along its length"
    SIDE = "from a side, the forks across its length"


class OnDeck(Enum):
    """Where on a ship the load stands: on deck wind and spray count too."""

    OPEN = "on an open deck"
    CLOSED = "below deck, or in a closed unit"


TWO_ENDS = (Kind.TIE_DOWN, Kind.LOOP, Kind.SPRING)
ONE_END = (Kind.SLOPE, Kind.DIAGONAL)
AT_SEA = (Route.SEA, Route.RAIL_SEA)
PRINTED_AREAS = tuple(each for each in RuleSet if each is not RuleSet.CSS)
