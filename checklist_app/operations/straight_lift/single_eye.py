"""A single eye under a single sling: a load that turns may screw it out."""

from checklist_app.mechanics.fittings import eye_use
from checklist_app.mechanics.fittings.eye_use import Turning
from checklist_app.operations.check import State, check
from checklist_app.operations.gear import Eye
from checklist_app.operations.graph import NotApplicable, dont_know, each, when
from checklist_app.operations.straight_lift.choices import Rig

CURE = "hold it, take a swivel ring or two points"
OUT = f"a load that turns may screw it out: {CURE}"


@dont_know("turning")
@each("leg")
def turning_unknown() -> Turning:
    """As of a load that is free to turn."""
    return Turning.FREE


@when("one_leg", rig=Rig.ONE_LEG)
def on_one_leg() -> bool:
    """One sling, one eye."""
    return True


@when("one_leg", rig=tuple(rig for rig in Rig if rig is not Rig.ONE_LEG))
def on_more_than_one() -> bool:
    """Two points keep a load from turning on either."""
    raise NotApplicable("more than one leg")


@each("leg")
@check("single eye in its thread", source="BS_4278_TYPES", rule_set="no single eyebolt on a load free to turn")
def eye_stays_in(eye: Eye, turning: Turning | None, one_leg: bool) -> State:
    """An eye alone holds no load that is free to turn; where nobody was asked, it is a caution."""
    if turning is None:
        return State(True, "nobody was asked whether the load can turn", OUT)
    stays = eye_use.single_eye_stays(turning)

    return State(stays, turning.value if stays else f"the load is free to turn: {CURE}")
