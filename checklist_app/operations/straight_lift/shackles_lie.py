"""How a shackle is pulled and what sits on its pin: each takes its share of the WLL, or is refused.

Nobody was asked by older procedures: then the pull counts as in line, one part on the pin, the legs in the bow.
"""

from checklist_app.mechanics.fittings import shackles
from checklist_app.mechanics.fittings.shackles import Form, Pin, PinUse
from checklist_app.operations.gear import Hook, MasterLink, Shackle
from checklist_app.operations.graph import CannotAssess, NotApplicable, each
from checklist_app.operations.straight_lift.choices import Gathered, OnPin, ShacklePull

STEP_DEG = {
    ShacklePull.IN_LINE: shackles.IN_LINE_UP_TO_DEG, ShacklePull.ASLANT: shackles.ASLANT_UP_TO_DEG,
    ShacklePull.ASIDE: shackles.ASIDE_UP_TO_DEG,
}
USES = {
    OnPin.ONE: PinUse.HOME, OnPin.NOOSE_EYE: PinUse.CHOKING_EYE, OnPin.RUNS: PinUse.CHOKING_PART,
    OnPin.SEVERAL: PinUse.SEVERAL_LEGS,
}


@each("leg")
def top_shackle_share(
    top_fitting: Shackle | Hook, shackle_pull: ShacklePull | None, shackle_pin: OnPin | None
) -> float:
    """What the way it lies leaves of a shackle at the top; a hook is looked at for itself."""
    return _share(top_fitting, shackle_pull, shackle_pin)


@each("leg")
def bottom_shackle_share(
    bottom_fitting: Shackle | Hook, shackle_pull: ShacklePull | None, shackle_pin: OnPin | None
) -> float:
    """What the way it lies leaves of a shackle at the bottom; a hook is looked at for itself."""
    return _share(bottom_fitting, shackle_pull, shackle_pin)


def hook_shackle_share(
    hook_fitting: Shackle | Hook | MasterLink | None, hook_shackle: Gathered | None, leg: tuple[str, ...]
) -> float:
    """What is left of a shackle that gathers legs: all with the legs in its bow, nothing with them on its pin."""
    if not isinstance(hook_fitting, Shackle):
        raise NotApplicable("no shackle gathers the legs")
    if hook_shackle is None:
        return 1.0
    several = hook_shackle is Gathered.ON_PIN and len(leg) > 1

    return shackles.pin_use_factor(PinUse.SEVERAL_LEGS if several else PinUse.HOME)


def _share(fitting: Shackle | Hook, pull: ShacklePull | None, on_pin: OnPin | None) -> float:
    if not isinstance(fitting, Shackle):
        return 1.0
    pinned = shackles.pin_use_factor(USES[on_pin]) if on_pin is not None else 1.0
    if pull is None or pull is ShacklePull.IN_LINE:
        return pinned
    if pull is ShacklePull.ACROSS:
        raise CannotAssess("a shackle is pulled out of the plane of its body: no table allows it, turn it into line")

    return pinned * shackles.side_load_factor(STEP_DEG[pull], Form(fitting.form), Pin(fitting.pin))
