"""Shackles, hooks, links and eyes in heat or frost: as hot as the slings are said to get.

Shackles have a table, eyes a range. For hooks and links none was read: from memory they keep their WLL between frost
and the first step of grade 8, which can only refuse more than nothing did. Below −20 °C counts only what the register
has of an item's own maker.
"""

from checklist_app.mechanics.fittings import cold, din_eyes, shackles
from checklist_app.operations.gear import Eye, Hook, MasterLink, Shackle
from checklist_app.operations.graph import CannotAssess, Known, each, when

AS_RATED_C, HOTTEST_C = 20.0, 200.0


@when("fittings_c", sling_temperature_c=Known.NO)
def fittings_not_asked() -> float:
    """Nobody asked, or nobody knows, which the check of the slings says: the ratings as they stand."""
    return AS_RATED_C


@when("fittings_c", sling_temperature_c=Known.YES)
def fittings_as_hot_as_slings(sling_temperature_c: float) -> float:
    """The fittings get as hot, or as cold, as the slings they hold."""
    return sling_temperature_c


def hook_fitting_heat_share(hook_fitting: Shackle | Hook | MasterLink | None, fittings_c: float) -> float:
    """What heat leaves of what gathers the legs."""
    return 1.0 if hook_fitting is None else _share(hook_fitting, fittings_c)


@each("leg")
def top_fitting_heat_share(top_fitting: Shackle | Hook, fittings_c: float) -> float:
    """What heat leaves of the fitting at the top."""
    return _share(top_fitting, fittings_c)


@each("leg")
def bottom_fitting_heat_share(bottom_fitting: Shackle | Hook, fittings_c: float) -> float:
    """What heat leaves of the fitting at the bottom."""
    return _share(bottom_fitting, fittings_c)


@each("leg")
def eye_heat_share(eye: Eye, fittings_c: float) -> float:
    """What heat leaves of the eye: all within the range of DIN 580 and ISO 3266, which stands for the others too."""
    return din_eyes.eye_temperature_factor(fittings_c, cold.coldest_c(eye.facts.get("coldest_c")))


def _share(fitting: Shackle | Hook | MasterLink, fittings_c: float) -> float:
    coldest_c = cold.coldest_c(fitting.facts.get("coldest_c"))
    if isinstance(fitting, Shackle):
        return shackles.shackle_temperature_factor(fittings_c, coldest_c)
    if not coldest_c <= fittings_c <= HOTTEST_C:
        kind = "hooks" if isinstance(fitting, Hook) else "master links"
        allowed = f"{coldest_c:.4g} to 200 °C".replace("-", "−")
        raise CannotAssess(f"no table of heat or frost is at hand for {kind}: {allowed}, else ask the maker")

    return 1.0
