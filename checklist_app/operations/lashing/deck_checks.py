"""Does load with pallet hold on the deck: sliding and tipping each way."""

from checklist_app.operations.check import AtLimit, Strength, check
from checklist_app.operations.graph import by_search, each
from checklist_app.operations.lashing.holding_checks import STATICS
from checklist_app.operations.lashing.run import Governs, holds, needed_dan


@each("direction")
def deck_slide_needed_dan(slide_on_deck: Governs, deck_weight_dan: float) -> float:
    """Push that must not make it slide, on the transport and in the run that governs."""
    return needed_dan(slide_on_deck, deck_weight_dan)


@by_search
@each("direction")
def deck_slide_withstood_dan(slide_on_deck: Governs, deck_weight_dan: float) -> float:
    """Push at which it would slide, turn, or swing its foot out."""
    return slide_on_deck.have * deck_weight_dan


@each("direction")
def deck_tip_needed_dan(tip_on_deck: Governs, deck_weight_dan: float) -> float:
    """Push that must not tip it, on the transport and in the run that governs."""
    return needed_dan(tip_on_deck, deck_weight_dan)


@by_search
@each("direction")
def deck_tip_withstood_dan(tip_on_deck: Governs, deck_weight_dan: float) -> float:
    """Push at which it would tip."""
    return tip_on_deck.have * deck_weight_dan


@each("direction")
@check("sliding on the deck", unit="daN", source="STATICS_LASHED_BODY", rule_set=STATICS, smooth=True)
def deck_sliding(
    deck_slide_needed_dan: float, deck_slide_withstood_dan: float, deck_slide_lost_dan: float,
    deck_slide_settled_dan: float | None,
) -> Strength:
    """Push that the rules ask for against the push at which pallet and load slide."""
    return holds(deck_slide_needed_dan, deck_slide_withstood_dan)


@each("direction")
@check(
    "tipping on the deck", unit="daN", source="STATICS_LASHED_BODY", rule_set=STATICS, at_limit=AtLimit.REFUSED,
    smooth=True,
)
def deck_tipping(
    deck_tip_needed_dan: float, deck_tip_withstood_dan: float, deck_tip_lost_dan: float,
    deck_tip_settled_dan: float | None,
) -> Strength:
    """Push that the rules ask for against the push at which pallet and load tip; just enough is refused."""
    return holds(deck_tip_needed_dan, deck_tip_withstood_dan)
