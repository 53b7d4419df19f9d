"""What wind and swing add to the pulls: strength is held against the load as it moves, not only as it hangs still.

The pull is no less than at any moment of the swing, start, stop and gust at once. Where nobody said how it moves, or it
does not, the pulls are those of the load at rest.
"""

from checklist_app.mechanics.gravity import STANDARD_GRAVITY_M_S2
from checklist_app.mechanics.sway import stopping
from checklist_app.operations.graph import Known, NotApplicable, across, each, when
from checklist_app.operations.straight_lift.choices import Rig
from checklist_app.operations.straight_lift.rigs import ON_ONE_HOOK
from checklist_app.operations.straight_lift.ways import MOVED, STAYING, TRAVELLING, Way

HARDEST_STOP_M = 0.02  # the shortest way to stop that may be entered, where nobody knows it


@when("hook_braking_m_s2", stopping_m=Known.YES)
def brakes_over_its_way(braking_m_s2: float) -> float:
    """How hard the hook brakes."""
    return braking_m_s2


@when("hook_braking_m_s2", stopping_m=Known.NO)
def brakes_at_once(travel_speed_m_s: float) -> float:
    """Nobody knows how far it runs on: the shortest way that there is."""
    return stopping.braking_m_s2(travel_speed_m_s, HARDEST_STOP_M)


@when("braked_m_s2", way=TRAVELLING)
def braked_as_it_travels(hook_braking_m_s2: float) -> float:
    """How hard the hook brakes with the load on it."""
    return hook_braking_m_s2


@when("braked_m_s2", way=STAYING)
def never_braked() -> float:
    """A hook that stays does not brake."""
    return 0.0


def sideways_share(braked_m_s2: float, side_wind_kn: float, gross_load_kn: float) -> float:
    """Braking as a share of g, and push of the wind as a share of the load, at once."""
    return braked_m_s2 / STANDARD_GRAVITY_M_S2 + side_wind_kn / gross_load_kn


def swinging_kn(gross_load_kn: float, swing_deg: float, sideways_share: float, moved_aside: bool) -> float:
    """Highest pull on the hook while the load swings."""
    return stopping.highest_pull_kn(gross_load_kn, swing_deg, sideways_share)


def swinging_share(swinging_kn: float, gross_load_kn: float) -> float:
    """The same as a share of the load at rest."""
    return swinging_kn / gross_load_kn


@when("moved_load_t", way=Known.NO)
def load_as_if_at_rest(gross_load_t: float) -> float:
    """Load on the hook at rest."""
    return gross_load_t


@when("moved_load_t", way=Known.YES)
def load_on_its_way(load_by_way_t: float) -> float:
    """Load on the hook as it is moved."""
    return load_by_way_t


@when("load_by_way_t", way=Way.STILL)
def load_that_hangs_still(gross_load_t: float) -> float:
    """Straight up and down, out of the wind: load on the hook at rest."""
    return gross_load_t


@when("load_by_way_t", way=MOVED)
def load_that_swings(gross_load_t: float, swinging_share: float) -> float:
    """Load on the hook with what its swing adds."""
    return gross_load_t * swinging_share


@when("leg_pull_t", way=Known.NO)
@each("leg")
def pull_as_if_at_rest(leg_load_t: float) -> float:
    """Pull in a leg at rest."""
    return leg_load_t


@when("leg_pull_t", way=Known.YES)
@each("leg")
def pull_on_its_way(pull_by_way_t: float) -> float:
    """Pull in a leg as the load is moved."""
    return pull_by_way_t


@when("pull_by_way_t", way=Way.STILL)
@each("leg")
def pull_that_hangs_still(leg_load_t: float) -> float:
    """Straight up and down, out of the wind: pull in a leg at rest."""
    return leg_load_t


@when("pull_by_way_t", way=MOVED)
@each("leg")
def pull_that_swings(leg_share: float, leaning_share: float, moved_load_t: float) -> float:
    """Pull in a leg with what swing and wind add."""
    return (leg_share + leaning_share) * moved_load_t


@when("hook_pull_t", rig=Rig.TWO_HOOKS)
@across("hook")
def pull_of_each_leg(leg_pull_t: tuple[float, ...], hook: tuple[str, ...]) -> tuple[float, ...]:
    """Each hook carries what its leg pulls."""
    return leg_pull_t


@when("hook_pull_t", rig=ON_ONE_HOOK)
@across("hook")
def no_pull_of_hooks() -> tuple[float, ...]:
    """One hook carries everything."""
    raise NotApplicable("one hook")
