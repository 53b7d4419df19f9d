"""The pallet or skid under the load: what it carries, whether the feet stand on it, where straps pass it, its state."""

from checklist_app.mechanics import exact
from checklist_app.mechanics.lashing import pallet as pallets
from checklist_app.mechanics.lashing.pallet import Bearing
from checklist_app.operations.check import Limit, State, Strength, check
from checklist_app.operations.gear import Pallet
from checklist_app.operations.graph import Day, NotApplicable, each
from checklist_app.operations.lashing.choices import Lies, Passes
from checklist_app.operations.usable import fit

EUROPEAN = "European pallet"
WHOLE = "under the whole pallet, so that every board and bearer is drawn together"
BOARDS = "through the pallet: common practice lays a strap under the whole of it"


@check(
    "pallet, by how the load stands on it", unit="kg", source="UIC_435_2",
    rule_set="UIC 435-2 for a European pallet; any other by its own mark",
)
def pallet_strength(mass_kg: float, pallet: Pallet, bearing: Bearing) -> Strength:
    """The load against what the pallet carries of a load that stands so; a mark of its own never makes it more."""
    if pallet.form != EUROPEAN:
        return Strength(mass_kg, pallets.pallet_kg(pallet.rated_kg, Bearing(pallet.rated_for), bearing))
    carries_kg, marked_kg = pallets.eur_pallet_kg(bearing), pallet.facts.get("rated_kg")

    return Strength(mass_kg, carries_kg if marked_kg is None else exact.least(carries_kg, marked_kg))


def pallet_along_m(pallet: Pallet, base_length_m: float, base_width_m: float, pallet_lies: Lies) -> float:
    """What the pallet measures forwards; where nobody said, its longer side along that of what stands on it."""
    longer_first = pallet.length_m >= pallet.width_m
    forwards = base_length_m >= base_width_m if pallet_lies is Lies.EITHER else pallet_lies is Lies.LENGTHWAYS

    return pallet.length_m if forwards is longer_first else pallet.width_m


def pallet_across_m(pallet: Pallet, pallet_along_m: float) -> float:
    """What the pallet measures from left to right."""
    return pallet.length_m + pallet.width_m - pallet_along_m


def pallet_turned_too(
    pallet_lies: Lies, pallet_along_m: float, pallet_across_m: float, base_length_m: float, base_width_m: float
) -> bool:
    """Whether it may lie the other way round: nobody said, and the feet would stand on it."""
    return pallet_lies is Lies.EITHER and base_length_m <= pallet_across_m and base_width_m <= pallet_along_m


def pallet_bears_along_m(pallet_along_m: float, pallet_across_m: float, pallet_turned_too: bool) -> float:
    """What counts of the pallet forwards: its shorter side, where it may lie either way."""
    return exact.least(pallet_along_m, pallet_across_m) if pallet_turned_too else pallet_along_m


def pallet_bears_across_m(pallet_along_m: float, pallet_across_m: float, pallet_turned_too: bool) -> float:
    """What counts of the pallet from left to right."""
    return exact.least(pallet_along_m, pallet_across_m) if pallet_turned_too else pallet_across_m


@check("feet on the pallet", unit="m", source="STATICS_LASHING", rule_set="what stands beyond the edge is not carried")
def overhang(base_length_m: float, base_width_m: float, pallet_along_m: float, pallet_across_m: float) -> Limit:
    """How far the outer edge of the feet stays inside the edge of the pallet, its middle under the middle of them."""
    ends_m, sides_m = (pallet_along_m - base_length_m) / 2.0, (pallet_across_m - base_width_m) / 2.0

    return Limit(0.0, exact.least(ends_m, sides_m))


@each("lashing")
@check("strap and pallet", source="STATICS_LASHING", rule_set="under the whole pallet; through it only by its drawing")
def strap_through_pallet(passes: Passes, pallet: Pallet) -> State:
    """A strap that comes back to the pallet goes under all of it; through it only where its boards are known."""
    if passes is Passes.ELSEWHERE:
        raise NotApplicable(passes.value)
    if passes is Passes.UNDER_WHOLE_PALLET:
        return State(True, WHOLE)
    if "boards_dan" not in pallet.facts:
        return State(False, f"{passes.value}, and nobody knows what the boards of {pallet.id} hold")

    return State(True, f"the boards of {pallet.id} hold {pallet.boards_dan:.4g} daN", BOARDS)


@check("pallet status", source="LOLER", rule_set="custody, marking, quarantine")
def pallet_usable(pallet: Pallet, day: Day) -> State:
    """In service, marked, in no quarantine; nobody examines a pallet by dates."""
    return fit(pallet)
