"""The choices a straight lift hangs on: how the load is slung, and how its eyes and legs are given."""

from enum import Enum


class Rig(Enum):
    """How the load hangs; the number of legs and of hooks follows."""

    ONE_LEG = "one sling, straight down"
    TWO_LEGS = "two legs on one hook"
    THREE_LEGS = "three legs on one hook"
    FOUR_LEGS = "four legs on one hook"
    TWO_HOOKS = "two hooks, a leg on each"
    RUNNING = "one sling running free over the hook"


class EyesGiven(Enum):
    """How it is said where the eyes are."""

    PICK_POINTS = "pick points of the load"
    DISTANCE = "distance"
    COORDINATES = "coordinates"
    RECTANGLE = "rectangle"


class LegsGiven(Enum):
    """How it is said how long the legs are."""

    LENGTHS = "lengths"
    HOOK_HEIGHT = "height of the hook"
    ANGLES = "measured angles"


class ShareRule(Enum):
    """How four legs share a stiff load."""

    ANY_LENGTH = "stiff load, legs of any length error: the worst leg by statics"
    DIAGONALS = "two diagonal legs carry all"
    THREE = "three legs carry, as the table credits"


class Protected(Enum):
    """What lies between the sling and the edges and faces it touches."""

    YES = "protected at every edge and every rough face"
    SMOOTH = "not protected, and no face is rough"
    ROUGH = "not protected, and a face is rough"


class ShacklePull(Enum):
    """How the pull lies to the shackles of a leg; square to the pin in the plane of the body is in line."""

    IN_LINE = "in line with its body"
    ASLANT = "aside, up to 45° from in line"
    ASIDE = "aside, over 45° from in line"
    ACROSS = "across, out of the plane of its body"


class OnPin(Enum):
    """What sits on the pins of the shackles of a leg."""

    ONE = "one part, and nothing runs over it"
    NOOSE_EYE = "the eye of a choked sling"
    RUNS = "a part that runs over it"
    SEVERAL = "several legs or parts"


class Gathered(Enum):
    """Where the legs lie in the shackle that gathers them."""

    IN_BOW = "the legs in its bow, its pin on the hook"
    ON_PIN = "the legs on its pin"


LEGS = {
    Rig.ONE_LEG: (1, 1), Rig.TWO_LEGS: (2, 2), Rig.THREE_LEGS: (3, 3), Rig.FOUR_LEGS: (4, 4), Rig.TWO_HOOKS: (2, 2),
    Rig.RUNNING: (2, 2),
}
BY_NUMBER = {2: (EyesGiven.DISTANCE,), 4: (EyesGiven.RECTANGLE,)}
EYES_FIT = {
    rig: (EyesGiven.PICK_POINTS, *BY_NUMBER.get(legs, ()), EyesGiven.COORDINATES) for rig, (legs, _) in LEGS.items()
}
HOOKS = {rig: (2, 2) if rig is Rig.TWO_HOOKS else (0, 1) for rig in Rig}
