"""What share of the load each leg takes: by statics as it hangs, or all of it where nobody knows."""

from checklist_app.mechanics import leg_tension
from checklist_app.mechanics.exact import let, sqrt
from checklist_app.mechanics.hanging import taut
from checklist_app.mechanics.vectors import Vec
from checklist_app.operations.graph import Known, NotApplicable, across, divides, each, when
from checklist_app.operations.straight_lift.choices import Rig
from checklist_app.operations.straight_lift.rigs import IN_SPACE

TIGHT_M = 1e-7
ON_ONE = (Rig.TWO_LEGS, Rig.RUNNING)
Rows = tuple[float, ...]


@when("leg_share", cg_x_m=Known.NO)
@across("leg")
def leg_share_unknown(leg: tuple[str, ...]) -> tuple[float, ...]:
    """Nobody knows where along the picks the centre of gravity is: each leg in turn carries all."""
    return tuple(leg_tension.one_leg_carries_all() for _ in leg)


@when("leg_share", cg_x_m=Known.YES)
@across("leg")
def leg_share_by_statics(share_as_it_hangs: tuple[float, ...]) -> tuple[float, ...]:
    """Pull in a leg as a share of the load."""
    return share_as_it_hangs


@when("share_as_it_hangs", rig=Rig.ONE_LEG)
@across("leg")
def one_leg_has_all(leg: tuple[str, ...]) -> tuple[float, ...]:
    """One leg carries everything."""
    return tuple(leg_tension.one_leg_carries_all() for _ in leg)


@when("share_as_it_hangs", rig=Rig.TWO_LEGS)
@across("leg")
def share_of_two(
    leg_m: tuple[float, ...], eye_drop_m: tuple[float, ...], eye_reach_m: tuple[float, ...]
) -> tuple[float, ...]:
    """Pull in each of two legs as a share of the load."""
    (left_m, right_m), (left_drop_m, right_drop_m), (left_reach_m, right_reach_m) = leg_m, eye_drop_m, eye_reach_m

    return (
        leg_tension.share_of_leg(left_m, left_drop_m, left_reach_m, right_drop_m, right_reach_m),
        leg_tension.share_of_leg(right_m, right_drop_m, right_reach_m, left_drop_m, left_reach_m),
    )


@when("taut_m", rig=(*IN_SPACE, Rig.TWO_HOOKS))
@across("leg")
def distance_to_hook(eye_reach_m: tuple[float, ...], eye_drop_m: tuple[float, ...]) -> tuple[float, ...]:
    """From each eye to its hook: the length of a tight leg, less than that of a slack one."""
    return tuple(
        sqrt(reach * reach + drop * drop) for reach, drop in zip(eye_reach_m, eye_drop_m, strict=True)
    )


@when("taut_m", rig=ON_ONE)
@across("leg")
def two_legs_are_tight(leg_m: tuple[float, ...]) -> tuple[float, ...]:
    """Two legs on one hook are tight, or the load does not hang so."""
    return leg_m


@divides
@each("leg")
def leg_is_tight(leg_m: float, taut_m: float) -> bool:
    """Whether it helps to hold the hook: which of four legs do goes by millimetres."""
    return leg_m - taut_m <= TIGHT_M


@when("share_as_it_hangs", rig=Rig.THREE_LEGS)
@across("leg")
def share_of_three(
    seen_from_hook: tuple[Vec, ...], eye_drop_m: tuple[float, ...], taut_m: tuple[float, ...]
) -> tuple[float, ...]:
    """Pull in each of three legs as a share of the load: in the measure of the triangle of the other two."""
    areas = _areas(seen_from_hook)
    lever = let("lever", areas[0] * eye_drop_m[0] + areas[1] * eye_drop_m[1] + areas[2] * eye_drop_m[2])

    return tuple(taut.share_of_three(area, long_m, lever) for area, long_m in zip(areas, taut_m, strict=True))


def _areas(eyes: tuple[Vec, ...]) -> Rows:
    """Twice the triangle of the hook and the other two, for each of three."""
    a, b, c = eyes

    return (
        let("area_1", taut.area_m2(b.x, b.y, c.x, c.y)), let("area_2", taut.area_m2(c.x, c.y, a.x, a.y)),
        let("area_3", taut.area_m2(a.x, a.y, b.x, b.y)),
    )


@when("share_as_it_hangs", rig=Rig.FOUR_LEGS)
@across("leg")
def share_of_four(share_by_rule: tuple[float, ...]) -> tuple[float, ...]:
    """Pull in each of four legs as a share of the load, by the rule that was chosen."""
    return share_by_rule


@when("share_as_it_hangs", rig=Rig.TWO_HOOKS)
@across("leg")
def share_of_two_hooks(
    seen_from_hook: tuple[Vec, ...], picks_run_m: float, picks_rise_m: float, cg_from_left_hook_m: float,
    taut_m: tuple[float, ...],
) -> tuple[float, ...]:
    """Pull in each leg as a share of the load, by the moments about the other eye."""
    (left, right), (left_m, right_m) = seen_from_hook, taut_m
    to_left = let("cg_right_of_left_eye", cg_from_left_hook_m - left.x)
    to_right = let("cg_right_of_right_eye", to_left - picks_run_m)
    left_lever = let("lever_left", picks_run_m * left.z - picks_rise_m * left.x)
    right_lever = let("lever_right", picks_rise_m * right.x - picks_run_m * right.z)

    return (
        taut.share_by_moments(left_m, to_right, left_lever), taut.share_by_moments(right_m, to_left, right_lever)
    )


@when("four_legs", rig=Rig.FOUR_LEGS)
@across("leg")
def on_four_legs(leg: tuple[str, ...]) -> tuple[str, ...]:
    """Four legs share in more than one way."""
    return leg


@when("four_legs", rig=tuple(rig for rig in Rig if rig is not Rig.FOUR_LEGS))
@across("leg")
def on_fewer_legs() -> tuple[str, ...]:
    """Fewer legs share in one way only."""
    raise NotApplicable("fewer than four legs")
