"""On the deck the formulas of the rules, line by line, beside what is found in space, and what settling leaves."""

from checklist_app.mechanics.lashing.crossing import Face
from checklist_app.mechanics.lashing.transport import Direction
from checklist_app.operations.graph import at_nominal, by_search, each
from checklist_app.operations.lashing.by_formula import Arranged, Shares, slid_dan, tipped_dan
from checklist_app.operations.lashing.lashed import Blocked, Lashed
from checklist_app.operations.lashing.legs import Legs
from checklist_app.operations.lashing.run import Runs, settled_dan


@at_nominal
@each("direction")
def deck_slide_by_formula_dan(
    slid_deck: Runs, deck_weight_dan: float, deck_friction_there: float, legs: tuple[Legs, ...],
    near_shares: tuple[Shares, ...], far_shares: tuple[Shares | None, ...], blocked: tuple[Blocked, ...],
) -> float:
    """Push at which it would slide by the formula of the rules."""
    what = Arranged(Face.PALLET_ON_DECK, legs, near_shares, far_shares, blocked)
    return slid_dan(slid_deck.governs, deck_weight_dan, deck_friction_there, what)


@at_nominal
@each("direction")
def deck_tip_by_formula_dan(
    tipped_deck: Runs, deck_weight_dan: float, deck_cg_x_m: float, deck_cg_y_m: float,
    deck_cg_z_m: float, deck_half_length_m: float, deck_half_width_m: float, legs: tuple[Legs, ...],
    near_shares: tuple[Shares, ...], far_shares: tuple[Shares | None, ...], blocked: tuple[Blocked, ...],
    direction: Direction, pallet_height_m: float,
) -> float:
    """Push at which it would tip by the formula of the rules."""
    what = Arranged(Face.PALLET_ON_DECK, legs, near_shares, far_shares, blocked)
    aside_m, half_m = (deck_cg_y_m, deck_half_width_m) if direction.is_sideways else (deck_cg_x_m, deck_half_length_m)
    backwards = direction in (Direction.REAR, Direction.RIGHT)

    return tipped_dan(
        tipped_deck.governs, deck_weight_dan, (-aside_m if backwards else aside_m, deck_cg_z_m), half_m, what,
        pallet_height_m,
    )


@at_nominal
@each("direction")
def deck_slide_lost_dan(deck_slide_by_formula_dan: float, deck_slide_withstood_dan: float) -> float:
    """What turning, sharing and a foot that swings out take from the formula."""
    return deck_slide_by_formula_dan - deck_slide_withstood_dan


@at_nominal
@each("direction")
def deck_tip_lost_dan(deck_tip_by_formula_dan: float, deck_tip_withstood_dan: float) -> float:
    """What sharing and a skew arrangement take from the formula."""
    return deck_tip_by_formula_dan - deck_tip_withstood_dan


@by_search
@at_nominal
@each("direction")
def deck_slide_settled_dan(
    slid_deck: Runs, held_deck: Runs, deck_lashed: Lashed, deck_weight_dan: float
) -> float | None:
    """With half the tension, once load and straps have settled; only where tie-downs hold."""
    return settled_dan(slid_deck, held_deck, deck_lashed, deck_weight_dan)


@by_search
@at_nominal
@each("direction")
def deck_tip_settled_dan(
    tipped_deck: Runs, held_deck: Runs, deck_lashed: Lashed, deck_weight_dan: float
) -> float | None:
    """With half the tension, once load and straps have settled; only where tie-downs hold."""
    return settled_dan(tipped_deck, held_deck, deck_lashed, deck_weight_dan)
