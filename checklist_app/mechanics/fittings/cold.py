"""How cold a fitting may get: no colder than makers' instructions agree on, unless its own say otherwise."""

from checklist_app.mechanics.errors import OutOfRangeError

SOURCE = "SHACKLE_INSTRUCTIONS"
UNSTATED_C = -20.0
LOWEST_STATED_C, HIGHEST_STATED_C = -60.0, 20.0


def coldest_c(stated_c: float | None) -> float:
    """The lowest temperature at which a shackle, hook, link or eye keeps its WLL.

        as its own maker states it, else −20 °C

    Source:
        SHACKLE_INSTRUCTIONS and ISO_3266 for −20 °C, below which the maker is asked; ASME_B30_26_COLD asks him below
        −40 °C; SHACKLE_POLAR for the lowest figure that a maker states.

    Args:
        stated_c: as the maker's instructions for this item state it [°C], −60 to 20; None where nobody entered it.

    Returns:
        Temperature [°C].

    Raises:
        OutOfRangeError: For a figure that no maker was seen to state.

    Example:
        >>> coldest_c(None), coldest_c(-40.0)
        (-20.0, -40.0)
    """
    if stated_c is None:
        return UNSTATED_C
    if not LOWEST_STATED_C <= stated_c <= HIGHEST_STATED_C:
        raise OutOfRangeError("lowest temperature of the fitting", stated_c, "−60 to 20 °C", SOURCE)

    return stated_c
