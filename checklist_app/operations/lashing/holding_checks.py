"""Does it hold: sliding and tipping each way on what the load stands on, and each lashing by its own pull."""

from checklist_app.operations.check import AtLimit, Strength, check
from checklist_app.operations.graph import at_nominal, by_search, each
from checklist_app.operations.lashing.run import Governs, holds, needed_dan

STATICS = "by the rules chosen, everything together in space"


@each("direction")
def slide_needed_dan(slide_of_load: Governs, weight_dan: float) -> float:
    """Push that must not make it slide, on the transport and in the run that governs."""
    return needed_dan(slide_of_load, weight_dan)


@by_search
@each("direction")
def slide_withstood_dan(slide_of_load: Governs, weight_dan: float) -> float:
    """Push at which it would slide, turn, or swing its foot out."""
    return slide_of_load.have * weight_dan


@each("direction")
def tip_needed_dan(tip_of_load: Governs, weight_dan: float) -> float:
    """Push that must not tip it, on the transport and in the run that governs."""
    return needed_dan(tip_of_load, weight_dan)


@by_search
@each("direction")
def tip_withstood_dan(tip_of_load: Governs, weight_dan: float) -> float:
    """Push at which it would tip."""
    return tip_of_load.have * weight_dan


@each("direction")
@check("sliding", unit="daN", source="STATICS_LASHED_BODY", rule_set=STATICS, smooth=True)
def sliding(
    slide_needed_dan: float, slide_withstood_dan: float, slide_lost_dan: float, slide_settled_dan: float | None
) -> Strength:
    """Push that the rules ask for against the push at which it slides."""
    return holds(slide_needed_dan, slide_withstood_dan)


@each("direction")
@check("tipping", unit="daN", source="STATICS_LASHED_BODY", rule_set=STATICS, at_limit=AtLimit.REFUSED, smooth=True)
def tipping(
    tip_needed_dan: float, tip_withstood_dan: float, tip_lost_dan: float, tip_settled_dan: float | None
) -> Strength:
    """Push that the rules ask for against the push at which it tips; just enough is refused."""
    return holds(tip_needed_dan, tip_withstood_dan)


@at_nominal
@each("lashing")
def lashing_pull_dan(lashing_pulled_dan: float) -> float:
    """As entered: of its rating it never uses more than sliding and tipping, at their worst, use of what holds."""
    return lashing_pulled_dan


@each("lashing")
@check("lashing, by its own pull", unit="daN", source="STATICS_LASHED_BODY", rule_set="the weakest part of all")
def lashing_strength(lashing_pull_dan: float, rated_dan: float) -> Strength:
    """Its pull when the load is pushed as the rules ask, against lashing, eye, anchor and boards."""
    return Strength(lashing_pull_dan, rated_dan)
