"""Beside what is found in space the formulas of the rules, line by line, and what settling leaves."""

from checklist_app.mechanics import exact
from checklist_app.mechanics.lashing.crossing import Face
from checklist_app.mechanics.lashing.transport import Direction
from checklist_app.operations.graph import at_nominal, by_search, each, when
from checklist_app.operations.lashing.by_formula import Arranged, Shares, slid_dan, tipped_dan
from checklist_app.operations.lashing.choices import ONE_END, TWO_ENDS
from checklist_app.operations.lashing.lashed import Blocked, Lashed
from checklist_app.operations.lashing.legs import End, Legs
from checklist_app.operations.lashing.run import Runs, settled_dan


@each("lashing")
def near_shares(near_end: End) -> Shares:
    """One end: length and shares of its pull, forwards, to the left and downwards."""
    return _shares(near_end)


@when("far_shares", put_on=TWO_ENDS)
@each("lashing")
def far_shares_of_two(far_end_there: End) -> Shares | None:
    """The other end."""
    return _shares(far_end_there)


@when("far_shares", put_on=ONE_END)
@each("lashing")
def no_far_shares() -> Shares | None:
    """It has one end."""
    return None


def _shares(end: End) -> Shares:
    at, anchor = end
    x, y, z = anchor.x - at.x, anchor.y - at.y, at.z - anchor.z
    long = exact.let("length of the lashing", exact.sqrt(x * x + y * y + z * z))

    return Shares(at, x / long, y / long, z / long)


@at_nominal
@each("direction")
def slide_by_formula_dan(
    slid_load: Runs, weight_dan: float, load_friction_there: float, load_face: Face,
    legs: tuple[Legs, ...], near_shares: tuple[Shares, ...], far_shares: tuple[Shares | None, ...],
    blocked: tuple[Blocked, ...],
) -> float:
    """Push at which it would slide by the formula of the rules."""
    what = Arranged(load_face, legs, near_shares, far_shares, blocked)
    return slid_dan(slid_load.governs, weight_dan, load_friction_there, what)


@at_nominal
@each("direction")
def tip_by_formula_dan(
    tipped_load: Runs, weight_dan: float, cg_x_m: float, cg_y_m: float, cg_z_m: float,
    half_length_m: float, half_width_m: float, load_face: Face, legs: tuple[Legs, ...], near_shares: tuple[Shares, ...],
    far_shares: tuple[Shares | None, ...], blocked: tuple[Blocked, ...], direction: Direction,
) -> float:
    """Push at which it would tip by the formula of the rules."""
    what = Arranged(load_face, legs, near_shares, far_shares, blocked)
    aside_m, half_m = (cg_y_m, half_width_m) if direction.is_sideways else (cg_x_m, half_length_m)
    backwards = direction in (Direction.REAR, Direction.RIGHT)

    return tipped_dan(
        tipped_load.governs, weight_dan, (-aside_m if backwards else aside_m, cg_z_m), half_m, what
    )


@at_nominal
@each("direction")
def slide_lost_dan(slide_by_formula_dan: float, slide_withstood_dan: float) -> float:
    """What turning, sharing and a foot that swings out take from the formula."""
    return slide_by_formula_dan - slide_withstood_dan


@at_nominal
@each("direction")
def tip_lost_dan(tip_by_formula_dan: float, tip_withstood_dan: float) -> float:
    """What sharing and a skew arrangement take from the formula."""
    return tip_by_formula_dan - tip_withstood_dan


@by_search
@at_nominal
@each("direction")
def slide_settled_dan(slid_load: Runs, held_load: Runs, load_lashed: Lashed, weight_dan: float) -> float | None:
    """With half the tension, once load and straps have settled; only where tie-downs hold."""
    return settled_dan(slid_load, held_load, load_lashed, weight_dan)


@by_search
@at_nominal
@each("direction")
def tip_settled_dan(tipped_load: Runs, held_load: Runs, load_lashed: Lashed, weight_dan: float) -> float | None:
    """With half the tension, once load and straps have settled; only where tie-downs hold."""
    return settled_dan(tipped_load, held_load, load_lashed, weight_dan)
