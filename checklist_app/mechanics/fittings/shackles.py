"""Shackles: what a pull aside, heat and several legs take away, and what may not be done with the pin."""

from enum import Enum

from checklist_app.mechanics.errors import OutOfRangeError

IN_LINE_UP_TO_DEG, ASLANT_UP_TO_DEG, ASIDE_UP_TO_DEG = 5.0, 45.0, 90.0  # WAC 296-155-33905
ASLANT_FACTOR, ASIDE_FACTOR = 0.7, 0.5
LEGS_IN_THE_BOW, BOW_INCLUDED_UP_TO_DEG = 2, 120.0  # EN 13889 makers' charts
HEAT = ((200.0, 1.0), (300.0, 0.9), (400.0, 0.75))


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


def gathered_legs_factor(form: Form, legs: int, widest_included_deg: float) -> float:
    """A bow shackle keeps its WLL with two legs in its bow up to 120° apart; a dee takes one leg.

        1, or refused

    Source:
        EN_13889, as makers' charts restate it: two slings in the bow, 120°; a dee is for one leg in line. More than two
        are gathered in a link: COLLECTOR_120.

    Args:
        form: bow or dee.
        legs: legs in the bow, 1 or 2.
        widest_included_deg: between them [°], 0 for one leg, up to 120.

    Returns:
        Share of the WLL [-].

    Raises:
        OutOfRangeError: For more legs, a wider angle, or two legs in a dee.

    Example:
        >>> gathered_legs_factor(Form.BOW, 2, 120.0)
        1.0
    """
    most = 1 if form is Form.DEE else LEGS_IN_THE_BOW
    if not 1 <= legs <= most:
        words = "1, in line" if form is Form.DEE else "1 or 2; more in a link"
        raise OutOfRangeError(f"legs in one {form.value} shackle", legs, words, "EN_13889")
    if not 0.0 <= widest_included_deg <= BOW_INCLUDED_UP_TO_DEG:
        raise OutOfRangeError("angle between the legs in the bow", widest_included_deg, "0 to 120°", "EN_13889")

    return 1.0


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


def shackle_temperature_factor(temperature_c: float, coldest_c: float) -> float:
    """What heat leaves of a shackle's WLL.

        its coldest to 200 °C 1.0, to 300 °C 0.9, to 400 °C 0.75

    Source:
        SHACKLE_SIZES for heat; `cold.coldest_c` for frost.

    Args:
        temperature_c: of the shackle [°C].
        coldest_c: lowest temperature at which it keeps its WLL [°C].

    Returns:
        Share of the WLL [-].

    Raises:
        OutOfRangeError: Outside, or if the temperature is no number.

    Example:
        >>> shackle_temperature_factor(250.0, -20.0)
        0.9
    """
    if not coldest_c <= temperature_c <= HEAT[-1][0]:
        allowed = f"{coldest_c:.4g} to 400 °C".replace("-", "−")
        raise OutOfRangeError("temperature of the shackle", temperature_c, allowed, "SHACKLE_INSTRUCTIONS")

    return next(share for up_to_c, share in HEAT if temperature_c <= up_to_c)
