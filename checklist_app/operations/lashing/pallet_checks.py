"""A load lashed to its pallet: which face that is, the floor under it, how it goes on forks, and what it stands on."""

from checklist_app.mechanics import exact
from checklist_app.mechanics.lashing import pallet as pallets
from checklist_app.mechanics.lashing.crossing import Face
from checklist_app.mechanics.lift_class import LiftClass
from checklist_app.operations.check import AtLimit, Limit, Strength, check
from checklist_app.operations.gear import Pallet
from checklist_app.operations.graph import Missing, Waits
from checklist_app.operations.lashing.choices import ForksEnter
from checklist_app.operations.settings import FORK_BRAKING, FORK_TILT, FORK_TILT_CLOSE

BRAKING_DEG = exact.atan2_deg(FORK_BRAKING.value, 1.0)
FORKS = (
    f"{FORK_TILT.value:g}° of mast, tyres and ground, and {FORK_BRAKING.value:g} g of braking or turning, which counts"
    f" as {BRAKING_DEG:.1f}° more; settings of the house"
)


def this_face(load_face: Face) -> Face:
    """What is lashed here is the load to its pallet."""
    return load_face


def goods_kg(mass_kg: float) -> float:
    """Mass that is lashed here."""
    return mass_kg


def goods_length_m(length_m: float) -> float:
    """Length of what is lashed here."""
    return length_m


def metal_on_deck() -> bool:
    """There is no deck under it yet."""
    return False


def least_class() -> LiftClass:
    """A load lashed to its pallet has not left the yard yet."""
    return LiftClass.ROUTINE


def line_load_kg_m(
    mass_kg: float, pallet: Pallet, cg_x_m: float, cg_y_m: float, pallet_bears_along_m: float,
    pallet_bears_across_m: float,
) -> float:
    """Load on the floor along the bearer that gets most."""
    even_kg_m = pallets.floor_line_load_kg_m(mass_kg + pallet.mass_kg, int(pallet.bearers), pallet.bearer_m)

    return even_kg_m * pallets.uneven_bearing(abs(cg_x_m), pallet_bears_along_m, abs(cg_y_m), pallet_bears_across_m)


@check("floor under the bearers", unit="kg/m", source="STATICS_LASHING", rule_set="what the floor is said to take")
def floor_load(line_load_kg_m: float, floor_kg_m: float) -> Strength:
    """The bearer that gets most against what a metre of the floor takes along it."""
    return Strength(line_load_kg_m, floor_kg_m)


def over_sides_m(
    forks_apart_m: float, forks_enter: ForksEnter | None, cg_x_m: float, cg_y_m: float, pallet_bears_along_m: float,
    pallet_bears_across_m: float,
) -> float:
    """Level from the centre of gravity to the outer edge of the nearer fork, or to the edge of the pallet."""
    along = _enters(forks_enter) is ForksEnter.END
    wide_m, off_m = (pallet_bears_across_m, abs(cg_y_m)) if along else (pallet_bears_along_m, abs(cg_x_m))

    return exact.least(forks_apart_m, wide_m) / 2.0 - off_m


def over_tips_m(
    forks_reach_m: float | None, forks_enter: ForksEnter | None, cg_x_m: float, cg_y_m: float, pallet_along_m: float,
    pallet_across_m: float, pallet_turned_too: bool, forks_apart_m: float,
) -> float:
    """Level from the centre of gravity to the tips, or to the far edge of the pallet; the heavy end is at the tips."""
    if forks_reach_m is None:
        raise Waits(Missing("how far the forks reach under it", "forks_reach_m"))
    along = _enters(forks_enter) is ForksEnter.END
    deep_m, other_m = (pallet_along_m, pallet_across_m) if along else (pallet_across_m, pallet_along_m)
    over_m = _beyond_middle_m(forks_reach_m, deep_m)
    if pallet_turned_too:
        over_m = exact.least(over_m, _beyond_middle_m(forks_reach_m, other_m))

    return over_m - abs(cg_x_m if along else cg_y_m)


def tilts_over_deg(over_sides_m: float, over_tips_m: float, cg_z_m: float, pallet: Pallet) -> float:
    """Tilt at which it goes over on the forks, which lie no lower than the underside of the pallet."""
    return pallets.tilt_on_forks_deg(cg_z_m + pallet.height_m, exact.least(over_sides_m, over_tips_m))


@check(
    "load on the forks", unit="°", source="HOUSE_SETTING", rule_set=FORKS, at_limit=AtLimit.REFUSED,
    close=FORK_TILT_CLOSE.value,
)
def fork_tilt(tilts_over_deg: float) -> Limit:
    """What mast, tyres and ground tilt it, and what braking adds to that, against the tilt at which it goes over."""
    return Limit(FORK_TILT.value + BRAKING_DEG, tilts_over_deg)


def _beyond_middle_m(forks_reach_m: float, deep_m: float) -> float:
    return exact.least(forks_reach_m, deep_m) - deep_m / 2.0


def _enters(forks_enter: ForksEnter | None) -> ForksEnter:
    if forks_enter is None:
        raise Waits(Missing("from where the truck takes it", "forks_enter"))

    return forks_enter
