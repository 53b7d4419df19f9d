"""Whether each lashing may be used, and as what: its label, the edges it bends round, its state on the day."""

from checklist_app.mechanics.lashing import label, rule_sets
from checklist_app.mechanics.lashing.direct import Kind
from checklist_app.mechanics.lashing.rule_sets import RuleSet
from checklist_app.operations.check import State, check
from checklist_app.operations.gear import Lashing
from checklist_app.operations.graph import Day, NotApplicable, each, when
from checklist_app.operations.lashing.choices import Edges, Tensioned
from checklist_app.operations.usable import usable

DIRECT = tuple(kind for kind in Kind if kind is not Kind.TIE_DOWN)


@each("lashing")
@check("lashing round its edges", source="HOUSE_SETTING", rule_set="no lashing over a bare edge; settings of the house")
def edge_guarded(edges: Edges) -> State:
    """A strap is cut and a chain bent over a bare edge, and neither slides over it when it is drawn."""
    return State(edges is not Edges.BARE, edges.value)


@when("is_tie_down", put_on=Kind.TIE_DOWN)
@each("lashing")
def holds_by_tension() -> bool:
    """A tie-down holds by the tension that it is drawn with."""
    return True


@when("is_tie_down", put_on=DIRECT)
@each("lashing")
def holds_by_rating() -> bool:
    """A direct lashing holds by its rating, hand-tight."""
    raise NotApplicable("it holds by its rating, not by its tension")


@each("lashing")
@check("tension on the label", source="EN_12195_2", rule_set="EN 12195-2: STF on the label, a tenth to half of its LC")
def tie_down_label(lashing_item: Lashing, tensioned: Tensioned, is_tie_down: bool) -> State:
    """Without STF on its label, and no instrument, a lashing is no tie-down."""
    if tensioned is Tensioned.MEASURED:
        return State(True, tensioned.value)
    stf_dan, lc_dan = lashing_item.stf_dan, _lc_dan(lashing_item)
    fits = lc_dan / label.STF_FROM <= stf_dan <= lc_dan / label.STF_TO
    reason = f"STF {stf_dan:.4g} daN with {lc_dan:.4g} daN in straight pull"

    return State(fits, reason if fits else f"{reason}: read the label again, it is a tenth to half of it")


@each("lashing")
@check("lashing status", source="EN_12195_2", rule_set="examination, label, quarantine")
def lashing_usable(lashing_item: Lashing, day: Day) -> State:
    """In service, in date, marked."""
    return usable(lashing_item, day)


def _lc_dan(lashing: Lashing) -> float:
    """LC, or by American rules the WLL as a force."""
    if "lc_dan" in lashing.facts or "wll_kg" not in lashing.facts:
        return lashing.lc_dan

    return rule_sets.weight_dan(RuleSet.US, lashing.facts["wll_kg"])
