"""What acids, alkalis and solvents do to slings.

A weak solution grows strong as it dries. What touched any of these is taken out of use, rinsed, dried and looked at by
a competent person, whatever is said here.
"""

from enum import Enum

from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.slings.temperature import Fibre


class Chemical(Enum):
    """What the sling comes into contact with. Oil and grease belong to slip, not here."""

    NONE = "none"
    ACID = "acid or its fumes"
    ALKALI = "alkali"
    SOLVENT = "solvent"


ATTACKED = {
    (Fibre.POLYESTER, Chemical.ACID): False, (Fibre.POLYESTER, Chemical.ALKALI): True,
    (Fibre.POLYAMIDE, Chemical.ACID): True, (Fibre.POLYAMIDE, Chemical.ALKALI): False,
    (Fibre.POLYPROPYLENE, Chemical.ACID): False, (Fibre.POLYPROPYLENE, Chemical.ALKALI): False,
    (Fibre.POLYPROPYLENE, Chemical.SOLVENT): True,
}


def fibre_is_attacked(fibre: Fibre, chemical: Chemical) -> bool:
    """Whether a chemical is known to attack a fibre.

        polyester: alkali; polyamide: acid; polypropylene: solvents

    Source:
        DGUV_209_013 for polyester and polyamide; TEXTILE_CHEMISTRY for polypropylene.

    Args:
        fibre: as the label says.
        chemical: what it touches.

    Returns:
        True if it does; False for nothing, or where makers say that the fibre resists.

    Raises:
        OutOfRangeError: Where no source says either; the maker is asked.

    Example:
        >>> fibre_is_attacked(Fibre.POLYESTER, Chemical.ALKALI), fibre_is_attacked(Fibre.POLYAMIDE, Chemical.ALKALI)
        (True, False)
    """
    if chemical is Chemical.NONE:
        return False
    if (fibre, chemical) not in ATTACKED:
        raise OutOfRangeError(
            f"{chemical.value} on a sling of {fibre.value}", "not covered", "what its maker confirms", "DGUV_209_013"
        )

    return ATTACKED[fibre, chemical]


def steel_is_attacked(chemical: Chemical) -> bool:
    """Whether a chemical is known to attack grade 8 chain and fittings, wire rope and grade 6 shackles.

        acid and alkali make the steel brittle

    Source:
        CHAIN_CHEMISTRY for grade 8 chain in both; acid TEXTILE_CHEMISTRY for fittings and links, ROPE_HEAT for wire
        rope, SHACKLE_INSTRUCTIONS for shackles.

    Args:
        chemical: what it touches.

    Returns:
        True for acid and alkali, False for nothing.

    Raises:
        OutOfRangeError: Where no source says either; the maker is asked.

    Example:
        >>> steel_is_attacked(Chemical.ACID)
        True
    """
    if chemical is Chemical.SOLVENT:
        raise OutOfRangeError(
            f"{chemical.value} on lifting steel", "not covered", "what its maker confirms", "TEXTILE_CHEMISTRY"
        )

    return chemical in (Chemical.ACID, Chemical.ALKALI)
