"""One sling that runs over the hook: how long it is, and where it comes to rest. Then its two parts are two legs.

Along and off the line through the eyes as elsewhere; friction on the hook is not counted on, it can only deceive.
"""

from checklist_app.mechanics.exact import sqrt
from checklist_app.mechanics.hanging import running_sling
from checklist_app.mechanics.slings import bends, edges
from checklist_app.mechanics.slings.kinds import Hitch, RuleSet, SlingKind
from checklist_app.operations.gear import Hook, Shackle, Sling
from checklist_app.operations.graph import (
    CannotAssess,
    Known,
    NotApplicable,
    across,
    at_nominal,
    by_search,
    each,
    kept,
    when,
)
from checklist_app.operations.settings import LEG_AGREES_WITHIN
from checklist_app.operations.straight_lift.choices import Rig
from checklist_app.operations.straight_lift.hitches import TERMINATIONS
from checklist_app.operations.straight_lift.rigs import NONE_RUNS, OTHERS
from checklist_app.operations.words import figure

Ran = running_sling.RunningHang


@at_nominal
def is_one_sling(
    sling: tuple[Sling, ...], hitch: tuple[Hitch, ...], top_fitting: tuple[Shackle | Hook | None, ...],
    sling_runs: bool,
) -> bool:
    """Whether it is one sling from eye to eye, with nothing that holds it on the hook."""
    if len({item.id for item in sling}) > 1 or sling[0].legs > 1:
        raise CannotAssess("one sling with two ends runs over the hook: pick the same sling for both parts")
    if any(way is not Hitch.STRAIGHT for way in hitch):
        raise CannotAssess("a sling that runs over the hook goes straight from each of its ends to an eye")
    if any(item is not None for item in top_fitting):
        raise CannotAssess("a sling that runs over the hook has no fitting at the top: nothing may hold it there")

    return True


def _by_gear_m(sling: Sling, fittings: tuple[Shackle | Hook | None, ...]) -> float:
    length_m = sling.length_m
    for item in fittings:
        if item is not None:
            length_m = length_m + item.reach_m

    return length_m


@at_nominal
def running_agrees(
    running_m: float, sling: tuple[Sling, ...], bottom_fitting: tuple[Shackle | Hook | None, ...], is_one_sling: bool
) -> bool:
    """Whether the sling as measured is what it is by its tag, with its fittings; true where a length is not known."""
    if any(item.facts.get(name) is None for item, name in (
            (sling[0], "length_m"), *((each, "reach_m") for each in bottom_fitting if each is not None))):
        return True
    by_gear_m = _by_gear_m(sling[0], bottom_fitting)

    return abs(running_m - by_gear_m) <= LEG_AGREES_WITHIN.value * by_gear_m


@when("over_hook_m", running_m=Known.YES)
def over_hook_as_measured(running_m: float, running_agrees: bool) -> float:
    """Sling from eye to eye over the hook, as measured."""
    if not running_agrees:
        raise CannotAssess("the sling as measured is not what it is by its tag: measure again, or look again")

    return running_m


@when("over_hook_m", running_m=Known.NO)
def over_hook_by_gear(
    sling: tuple[Sling, ...], sling_off_tag: tuple[float, ...], bottom_fitting: tuple[Shackle | Hook | None, ...],
    is_one_sling: bool,
) -> float:
    """Sling from eye to eye over the hook: what its tag says, and the reach of the fittings at its ends."""
    length_m = sling[0].length_m * (1.0 + sling_off_tag[0])
    for item in bottom_fitting:
        if item is not None:
            length_m = length_m + item.reach_m

    return length_m


def half_span_m(span_m: float, sling_runs: bool) -> float:
    """Half the distance between the eyes."""
    return span_m / 2.0


def half_sling_m(over_hook_m: float) -> float:
    """Half the sling: each part of a load that hangs level."""
    return over_hook_m / 2.0


def level_hook_m(half_sling_m: float, half_span_m: float) -> float:
    """Hook over the line through the eyes where both parts are equal."""
    if not half_sling_m > half_span_m:
        raise CannotAssess("the sling does not reach from eye to eye over the hook")

    return sqrt(half_sling_m * half_sling_m - half_span_m * half_span_m)


@when("depth_to_stay_m", rig=Rig.RUNNING)
def depth_of_a_running_sling(half_span_m: float, level_hook_m: float) -> float:
    """How deep below the eyes the centre of gravity must hang, wherever it lies along them: level is the worst."""
    return running_sling.depth_needed_m(half_span_m, level_hook_m)


@when("depth_to_stay_m", rig=OTHERS)
def no_depth_to_stay() -> float:
    """Every leg is held at the hook."""
    raise NotApplicable(NONE_RUNS)


@when("depth_there_m", rig=Rig.RUNNING)
def depth_below_the_eyes(cg_below_m: float, cg_off_m: float) -> float:
    """How deep below the line through the eyes it hangs; above them it counts as it stands."""
    return cg_off_m if cg_below_m > 0.0 else cg_below_m


@when("depth_there_m", rig=OTHERS)
def no_depth_there() -> float:
    """Every leg is held at the hook."""
    raise NotApplicable(NONE_RUNS)


def cg_from_middle_m(cg_along_m: float, half_span_m: float) -> float:
    """Centre of gravity from the middle of the eyes, along the line through them."""
    return cg_along_m - half_span_m


@kept
def ran(
    span_m: float, over_hook_m: float, cg_from_middle_m: float, depth_there_m: float, depth_to_stay_m: float
) -> Ran:
    """Where the sling comes to rest; without that depth it runs to one end, and nothing holds the load."""
    if not depth_there_m > depth_to_stay_m:
        lies = f"{figure(abs(depth_there_m), 'm')} m {'below' if depth_there_m > 0.0 else 'above'} the eyes"
        raise CannotAssess(
            f"the sling runs over the hook to one end: the centre of gravity lies {lies}, and the load stays only with"
            f" more than {figure(depth_to_stay_m, 'm', up=True)} m below them: take two slings"
        )

    return running_sling.hung_on_running_sling(span_m, over_hook_m, cg_from_middle_m, depth_there_m)


@by_search
@across("leg")
def part_m(ran: Ran) -> tuple[float, ...]:
    """Each part of the sling, from its eye to the hook."""
    return ran.parts_m


@when("leg_m", rig=Rig.RUNNING)
@each("leg")
def part_of_running(part_m: float) -> float:
    """Part of the sling, where it came to rest."""
    return part_m


@when("leg_m", rig=OTHERS)
@each("leg")
def leg_of_its_own(leg_own_m: float) -> float:
    """Leg by what was given."""
    return leg_own_m


@when("over_hook_share", rig=OTHERS)
@each("leg")
def held_on_the_hook() -> float:
    """No sling runs over the hook."""
    return 1.0


@when("over_hook_share", rig=Rig.RUNNING)
@each("leg")
def bent_over_the_hook(over_hook_mm: float, sling: Sling, sling_kind: SlingKind, rule_set: RuleSet) -> float:
    """What the bend over the hook leaves of the WLL: as round an edge of that radius, as in a basket for wire rope."""
    if sling_kind.is_textile:
        return edges.textile_edge_factor(over_hook_mm / 2.0, sling.thickness_mm, False, False)
    if sling_kind is SlingKind.CHAIN:
        return edges.chain_edge_factor(over_hook_mm / 2.0, sling.size_mm)
    termination = TERMINATIONS[sling.termination]
    if rule_set is RuleSet.US:
        return bends.us_basket_bend_factor(termination, over_hook_mm, sling.diameter_mm)

    return bends.labelled_bend_factor(termination, over_hook_mm, sling.diameter_mm)
