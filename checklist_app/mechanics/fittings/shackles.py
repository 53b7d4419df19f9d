"""Shackles: what fits their size, what a pull aside takes away, and what may not be done with the pin.

The marking rates a shackle; the tables only tell whether the marking can belong to the size.
Two legs in the bow: `mechanics.shackles.bow_wll_t`.
"""

from enum import Enum

from checklist_app.mechanics.errors import OutOfRangeError, required_positive

IN_LINE_UP_TO_DEG, ASLANT_UP_TO_DEG, ASIDE_UP_TO_DEG = 5.0, 45.0, 90.0  # WAC 296-155-33905
ASLANT_FACTOR, ASIDE_FACTOR = 0.7, 0.5
# body [mm]: WLL [t], pin [mm], jaw [mm]
EN_13889_SIZES = {
    6: (0.5, 8, 12), 8: (0.75, 10, 13), 9: (1.0, 11, 16), 11: (1.5, 13, 18), 13: (2.0, 16, 22), 16: (3.25, 19, 27),
    19: (4.75, 22, 31), 22: (6.5, 25, 36), 25: (8.5, 28, 43), 28: (9.5, 32, 47), 32: (12.0, 35, 51),
    35: (13.5, 38, 57), 38: (17.0, 42, 60), 45: (25.0, 50, 74),
}
# SWL [t]: body, pin of mild steel; body, pin of higher tensile steel [mm]
LLOYDS_DEE = {
    1.0: (13, 15, 11, 12), 1.6: (17, 19, 13, 15), 2.0: (19, 21, 15, 17), 2.5: (21, 24, 17, 19),
    3.2: (24, 27, 19, 21), 4.0: (26, 30, 21, 23), 5.0: (29, 33, 23, 26), 6.3: (33, 37, 26, 29),
}
HEAT = ((200.0, 1.0), (300.0, 0.9), (400.0, 0.75))
COLDEST_C = -20.0


class Form(Enum):
    """Shape of the body."""

    BOW = "bow"
    DEE = "dee"


class Pin(Enum):
    """Kind of pin."""

    SCREW = "screw pin"
    BOLT = "bolt with nut and cotter pin"
    ROUND = "round pin"


class PinUse(Enum):
    """How the pin is used."""

    HOME = "one part on the pin, screwed home to its shoulder or nutted and cottered"
    CHOKING_EYE = "the eye of a choked sling on the pin"
    LINE_RUNS = "a line that runs over the pin"
    CHOKING_PART = "the running part of a choked sling on the pin"
    SEVERAL_LEGS = "several legs on the pin"
    NOT_HOME = "pin not screwed home to its shoulder"
    OTHER_BOLT = "a bolt instead of its own pin"


def en_13889_wll_t(body_mm: int) -> float:
    """WLL that the marking of a bow or dee shackle of this size carries at most.

        WLL from the table, by the diameter of the body

    Source:
        SHACKLE_SIZES.

    Args:
        body_mm: nominal diameter of the body [mm].

    Returns:
        WLL [t].

    Raises:
        OutOfRangeError: For a size that the table does not have.

    Example:
        >>> en_13889_wll_t(19), en_13889_wll_t(25)
        (4.75, 8.5)
    """
    if body_mm not in EN_13889_SIZES:
        sizes = ", ".join(str(size) for size in EN_13889_SIZES)
        raise OutOfRangeError("diameter of the shackle's body", body_mm, f"{sizes} mm", "SHACKLE_SIZES")

    return EN_13889_SIZES[body_mm][0]


def lloyds_dee_swl_t(body_mm: int, pin_mm: int, higher_tensile: bool) -> float:
    """SWL of a dee shackle of a ship's gear, by the smallest size that body and pin both reach.

        SWL of the largest row with body and pin no thicker than these

    Source:
        LLOYDS_CLAME, Table 8.5.1.

    Args:
        body_mm: diameter of the body [mm].
        pin_mm: diameter of the pin [mm].
        higher_tensile: whether it is certified as higher tensile steel.

    Returns:
        SWL [t].

    Raises:
        OutOfRangeError: Thinner than the smallest row.

    Example:
        >>> lloyds_dee_swl_t(19, 21, higher_tensile=False), lloyds_dee_swl_t(19, 21, higher_tensile=True)
        (2.0, 3.2)
    """
    first = 2 if higher_tensile else 0
    reached = [swl_t for swl_t, row in LLOYDS_DEE.items() if body_mm >= row[first] and pin_mm >= row[first + 1]]
    if not reached:
        least = LLOYDS_DEE[1.0]
        words = f"a body of {least[first]} mm with a pin of {least[first + 1]} mm, or more"
        raise OutOfRangeError("size of the dee shackle", f"{body_mm} and {pin_mm} mm", words, "LLOYDS_CLAME")

    return max(reached)


def side_load_factor(from_in_line_deg: float, form: Form, pin: Pin) -> float:
    """What a pull aside leaves of a shackle's WLL: steps, never a line between them.

        to 5° 1.0, to 45° 0.7, to 90° 0.5

    Source:
        WAC_296_155_33905 for the steps, SHACKLE_SIDE_LOAD for the shares; screw and bolt pins only. A dee is for one
        leg in line.

    Args:
        from_in_line_deg: angle of the pull from the line square to the pin, in the plane of the body [°].
        form: bow or dee.
        pin: kind of pin.

    Returns:
        Share of the WLL [-].

    Raises:
        OutOfRangeError: Beyond 90°; aside on a dee or on a round pin.

    Example:
        >>> side_load_factor(30.0, Form.BOW, Pin.SCREW), side_load_factor(50.0, Form.BOW, Pin.BOLT)
        (0.7, 0.5)
    """
    if not 0.0 <= from_in_line_deg <= ASIDE_UP_TO_DEG:
        raise OutOfRangeError("pull on the shackle from in line", from_in_line_deg, "0 to 90°", "WAC_296_155_33905")
    if from_in_line_deg <= IN_LINE_UP_TO_DEG:
        return 1.0
    if form is Form.DEE or pin is Pin.ROUND:
        what = "dee shackle" if form is Form.DEE else "round pin"
        words = "in line, up to 5°; aside take a bow with a screw or bolt pin"
        raise OutOfRangeError(f"pull aside on a {what}", from_in_line_deg, words, "SHACKLE_SIDE_LOAD")

    return ASLANT_FACTOR if from_in_line_deg <= ASLANT_UP_TO_DEG else ASIDE_FACTOR


def pin_use_factor(use: PinUse) -> float:
    """A shackle keeps its WLL with its own pin, home, and nothing on it that can turn or spread it.

        1, or refused

    Source:
        WAC_296_155_33905 for the pin home and the choking eye on it; EM_385_1_1 for several legs; SHACKLE_INSTRUCTIONS
        for a pin that something turns out.

    Args:
        use: how the pin is used.

    Returns:
        Share of the WLL [-].

    Raises:
        OutOfRangeError: For every other use.

    Example:
        >>> pin_use_factor(PinUse.CHOKING_EYE)
        1.0
    """
    if use not in (PinUse.HOME, PinUse.CHOKING_EYE):
        words = "its own pin, home; a choked sling with its eye on the pin; legs gathered in the bow"
        raise OutOfRangeError("pin of the shackle", use.value, words, "WAC_296_155_33905")

    return 1.0


def shackle_temperature_factor(temperature_c: float) -> float:
    """What heat leaves of a shackle's WLL.

        −20 to 200 °C 1.0, to 300 °C 0.9, to 400 °C 0.75

    Source:
        SHACKLE_SIZES for heat, SHACKLE_INSTRUCTIONS for −20 °C.

    Args:
        temperature_c: of the shackle [°C].

    Returns:
        Share of the WLL [-].

    Raises:
        OutOfRangeError: Outside, or if the temperature is no number.

    Example:
        >>> shackle_temperature_factor(250.0)
        0.9
    """
    if not COLDEST_C <= temperature_c <= HEAT[-1][0]:
        raise OutOfRangeError("temperature of the shackle", temperature_c, "−20 to 400 °C", "SHACKLE_INSTRUCTIONS")

    return next(share for up_to_c, share in HEAT if temperature_c <= up_to_c)


def marking_fits_size(wll_t: float, body_mm: int) -> bool:
    """Whether a marked WLL can belong to a grade 6 shackle of this size; a higher one was misread or is another grade.

        WLL marked ≤ WLL of the table

    Source:
        SHACKLE_SIZES.

    Args:
        wll_t: as marked on the body [t], above 0.
        body_mm: nominal diameter of the body [mm].

    Returns:
        True if it can.

    Raises:
        OutOfRangeError: For a size that the table does not have, or a WLL that is no number above 0.

    Example:
        >>> marking_fits_size(4.75, 19), marking_fits_size(6.5, 19)
        (True, False)
    """
    required_positive("WLL marked on the shackle", wll_t, "SHACKLE_SIZES")

    return wll_t <= en_13889_wll_t(body_mm)
