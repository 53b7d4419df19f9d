"""What wind and swing add to the pulls: strength is held against the load as it moves, not only as it hangs still.

The pull is no less than at any moment of the swing, start, stop and gust at once. Where nobody said how it moves, or it
does not, the pulls are those of the load at rest.
"""

from checklist_app.mechanics.gravity import STANDARD_GRAVITY_M_S2
from checklist_app.mechanics.sway import stopping
from checklist_app.operations.graph import Known, NotApplicable, across, each, when
from checklist_app.operations.straight_lift.choices import Rig
from checklist_app.operations.straight_lift.rigs import ON_ONE_HOOK
from checklist_app.operations.straight_lift.ways import STAYING, TRAVELLING

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


def swung_load_t(gross_load_t: float, swinging_share: float) -> float:
    """Load on the hook with what its swing adds."""
    return gross_load_t * swinging_share


def moved_load_t(gross_load_t: float, swung_load_t: float | None) -> float:
    """Load on the hook as it is moved; at rest where nothing moves it, or nobody asked."""
    return gross_load_t if swung_load_t is None else swung_load_t


@each("leg")
def swung_pull_t(leg_share: float, leaning_share: float, swung_load_t: float) -> float:
    """Pull in a leg with what swing and wind add."""
    return (leg_share + leaning_share) * swung_load_t


@each("leg")
def leg_pull_t(leg_load_t: float, swung_pull_t: float | None) -> float:
    """Pull in a leg as the load is moved; at rest where nothing moves it, or nobody asked."""
    return leg_load_t if swung_pull_t is None else swung_pull_t


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
