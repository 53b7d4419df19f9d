"""Angles as read on a lashing against those that its two ends give: far apart, and the balances rest on another lie."""

from checklist_app.operations.check import Limit, check
from checklist_app.operations.graph import NotApplicable, at_nominal, each
from checklist_app.operations.settings import HEADING_TELLS_UP_TO, LASHING_AGREES_CLOSE, LASHING_AGREES_WITHIN

HOUSE = "settings of the house"


@at_nominal
@each("lashing")
def planned_slope_deg(to_deck_deg: float) -> float:
    """Angle to the deck by the two ends, as entered."""
    return to_deck_deg


@at_nominal
@each("lashing")
def planned_heading_deg(to_deck_deg: float, from_length_deg: float) -> float:
    """Angle to the length of the vehicle by the two ends, as entered, of a lashing that has a heading."""
    if abs(to_deck_deg) > HEADING_TELLS_UP_TO.value:
        raise NotApplicable("it lies too steep for its heading to tell anything")

    return from_length_deg


@each("lashing")
@check(
    "angle to the deck, as read", unit="°", source="HOUSE_SETTING", rule_set=HOUSE, close=LASHING_AGREES_CLOSE.value
)
def slope_agrees(planned_slope_deg: float, slope_read_deg: float) -> Limit:
    """As read on the lashing against its two ends."""
    return Limit(abs(planned_slope_deg - slope_read_deg), LASHING_AGREES_WITHIN.value)


@each("lashing")
@check(
    "angle to the length, as read", unit="°", source="HOUSE_SETTING", rule_set=HOUSE, close=LASHING_AGREES_CLOSE.value
)
def heading_agrees(planned_heading_deg: float, heading_read_deg: float) -> Limit:
    """As read from above against its two ends."""
    return Limit(abs(planned_heading_deg - heading_read_deg), LASHING_AGREES_WITHIN.value)
