"""Two faces that slide: load on pallet, pallet on deck; and which lashing holds which of them."""

from enum import Enum

from checklist_app.mechanics.errors import OutOfRangeError

SOURCE = "STATICS_LASHED_BODY"


class Body(Enum):
    """What a lashing is fastened to."""

    LOAD = "the load"
    PALLET = "the pallet or skid"
    DECK = "the deck"


class Face(Enum):
    """What slides on what; each with its own friction and the mass above it."""

    LOAD_ON_PALLET = "load on pallet"
    PALLET_ON_DECK = "pallet, with the load, on the deck"
    LOAD_ON_DECK = "load on the deck"


ABOVE = {
    Face.LOAD_ON_PALLET: {Body.LOAD},
    Face.PALLET_ON_DECK: {Body.LOAD, Body.PALLET},
    Face.LOAD_ON_DECK: {Body.LOAD},
}


def crosses(face: Face, one_end: Body, other_end: Body) -> bool:
    """Whether a lashing holds what is above a face to what is below it.

    A closed strap round load and pallet runs from the load to the pallet: it holds nothing on the deck.

    Source:
        STATICS_LASHED_BODY.

    Args:
        face: which of them.
        one_end: what the one end is fastened to, or lies over.
        other_end: what the other end is fastened to.

    Returns:
        True if one end is above the face and the other below.

    Raises:
        OutOfRangeError: If both ends are fastened to the same.

    Example:
        >>> crosses(Face.LOAD_ON_PALLET, Body.LOAD, Body.PALLET), crosses(Face.PALLET_ON_DECK, Body.LOAD, Body.PALLET)
        (True, False)
    """
    if one_end is other_end:
        raise OutOfRangeError("ends of the lashing", f"both on {one_end.value}", "two of load, pallet, deck", SOURCE)

    return (one_end in ABOVE[face]) is not (other_end in ABOVE[face])


def mass_above_kg(face: Face, load_kg: float, pallet_kg: float) -> float:
    """Mass that a face must hold.

        load;  load and pallet on the deck

    Source:
        STATICS_LASHED_BODY.

    Args:
        face: which of them.
        load_kg: mass of the load [kg], above 0.
        pallet_kg: mass of pallet and packing [kg], 0 or more.

    Returns:
        Mass [kg].

    Raises:
        OutOfRangeError: If a mass is none.

    Example:
        >>> mass_above_kg(Face.PALLET_ON_DECK, 1000.0, 25.0)
        1025.0
    """
    if not 0.0 < load_kg < float("inf"):
        raise OutOfRangeError("mass of the load", load_kg, "a number above 0", SOURCE)
    if not 0.0 <= pallet_kg < float("inf"):
        raise OutOfRangeError("mass of the pallet", pallet_kg, "a number of 0 or more", SOURCE)

    return load_kg + pallet_kg if face is Face.PALLET_ON_DECK else load_kg
