"""Steel on steel: what hauliers do not take."""

from checklist_app.mechanics.lashing.friction import Pair
from checklist_app.operations.check import State, check

METAL = (Pair.BARE_METAL_ON_METAL, Pair.STEEL_CRATE_ON_STEEL, Pair.STEEL_CRATE_ON_ALUMINIUM)
SLIDES = "most hauliers refuse it: steel slides on steel, and oil leaves no friction at all; put wood or a mat between"


@check("steel on steel", source="FRICTION_RANGES", rule_set="common practice of hauliers, no source: a caution")
def steel_on_steel(load_pair: Pair, metal_on_deck: bool) -> State:
    """A caution, never a failure: what friction is left decides by itself. A pair that nobody knows counts as steel."""
    if load_pair in METAL or metal_on_deck:
        return State(True, "metal lies on metal", SLIDES)

    return State(True, "no steel on steel")
