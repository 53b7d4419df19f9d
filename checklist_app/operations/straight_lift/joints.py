"""As it hangs, by rig: the plumb line, the tilt, each eye below and beside its hook."""

from checklist_app.mechanics import attitude, leg_tension
from checklist_app.mechanics.exact import sqrt
from checklist_app.mechanics.vectors import Vec
from checklist_app.operations.graph import NotApplicable, across, when
from checklist_app.operations.straight_lift.choices import Rig
from checklist_app.operations.straight_lift.rigs import IN_SPACE

IN_A_PLANE = (Rig.TWO_LEGS, Rig.TWO_HOOKS, Rig.RUNNING)
OTHERS = (*IN_SPACE, Rig.TWO_HOOKS)
ON_ONE = (Rig.TWO_LEGS, Rig.RUNNING)


@when("plumb_along_m", rig=ON_ONE)
def plumb_to_hook_along(hook_along_m: float, cg_along_m: float) -> float:
    """From the centre of gravity to the hook, along the line through the eyes."""
    return hook_along_m - cg_along_m


@when("plumb_along_m", rig=Rig.TWO_HOOKS)
def plumb_up_along(plumb_m: float, picks_rise_m: float, span_m: float) -> float:
    """From the centre of gravity straight up as far as the left hook, along the line through the eyes."""
    return plumb_m * picks_rise_m / span_m


@when("plumb_along_m", rig=IN_SPACE)
def no_plane_to_count_along() -> float:
    """No plane of two legs."""
    raise NotApplicable("not two picks")


@when("plumb_off_m", rig=ON_ONE)
def plumb_to_hook_off(hook_off_m: float, cg_off_m: float) -> float:
    """From the centre of gravity to the hook, off the line through the eyes."""
    return hook_off_m + cg_off_m


@when("plumb_off_m", rig=Rig.TWO_HOOKS)
def plumb_up_off(plumb_m: float, picks_run_m: float, span_m: float) -> float:
    """From the centre of gravity straight up as far as the left hook, off the line through the eyes."""
    return plumb_m * picks_run_m / span_m


@when("plumb_off_m", rig=IN_SPACE)
def no_plane_to_count_off() -> float:
    """No plane of two legs."""
    raise NotApplicable("not two picks")


@when("plumb_m", rig=ON_ONE)
def plumb_in_plane(plumb_along_m: float, plumb_off_m: float) -> float:
    """Centre of gravity below the hook."""
    return sqrt(plumb_along_m * plumb_along_m + plumb_off_m * plumb_off_m)


@when("plumb_m", rig=Rig.TWO_HOOKS)
def plumb_below_left_hook(cg_below_left_hook_m: float) -> float:
    """Centre of gravity below the left hook."""
    return cg_below_left_hook_m


@when("plumb_m", rig=IN_SPACE)
def plumb_in_space(plumb_line: Vec) -> float:
    """Centre of gravity below the hook."""
    return sqrt(plumb_line.x * plumb_line.x + plumb_line.y * plumb_line.y + plumb_line.z * plumb_line.z)


@when("plumb_up_m", rig=IN_A_PLANE)
def plumb_upright_in_plane(
    plumb_along_m: float, plumb_off_m: float, legs_upright: float, level_m: float, rise_m: float, span_m: float
) -> float:
    """Of the plumb line, the part that is upright in the load."""
    return attitude.upward_share_m(plumb_along_m, plumb_off_m, legs_upright, (level_m, rise_m, span_m))


@when("plumb_up_m", rig=IN_SPACE)
def plumb_upright_in_space(plumb_line: Vec) -> float:
    """Of the plumb line, the part that is upright in the load."""
    return plumb_line.z


def plumb_level_m(
    plumb_along_m: float, plumb_off_m: float, legs_upright: float, level_m: float, rise_m: float, span_m: float
) -> float:
    """Of the plumb line, the part that is level in the load, towards the right eye."""
    return attitude.level_share_m(plumb_along_m, plumb_off_m, legs_upright, (level_m, rise_m, span_m))


def plumb_aside_m(plumb_off_m: float, legs_aside: float) -> float:
    """Of the plumb line, the part square to the eyes."""
    return -plumb_off_m * legs_aside


@when("hung_tilt_along_deg", rig=IN_A_PLANE)
def tilt_along_in_plane(
    plumb_level_m: float, plumb_aside_m: float, plumb_up_m: float, run_x_m: float, run_y_m: float, level_m: float
) -> float:
    """Tilt lengthwise as it will hang; below 0 the right end hangs low."""
    return attitude.tilt_deg((plumb_level_m * run_x_m + plumb_aside_m * run_y_m) / level_m, plumb_up_m)


@when("hung_tilt_along_deg", rig=IN_SPACE)
def tilt_along_in_space(plumb_line: Vec) -> float:
    """Tilt lengthwise as it will hang; below 0 the right end hangs low."""
    return attitude.tilt_deg(plumb_line.x, plumb_line.z)


@when("hung_tilt_across_deg", rig=IN_A_PLANE)
def tilt_across_in_plane(
    plumb_level_m: float, plumb_aside_m: float, plumb_up_m: float, run_x_m: float, run_y_m: float, level_m: float
) -> float:
    """Tilt crosswise as it will hang."""
    return attitude.tilt_deg((plumb_level_m * run_y_m - plumb_aside_m * run_x_m) / level_m, plumb_up_m)


@when("hung_tilt_across_deg", rig=IN_SPACE)
def tilt_across_in_space(plumb_line: Vec) -> float:
    """Tilt crosswise as it will hang."""
    return attitude.tilt_deg(plumb_line.y, plumb_line.z)


@when("hook_way_m", rig=ON_ONE)
def hook_way_in_plane(
    hook_along_m: float, hook_off_m: float, legs_upright: float, level_m: float, rise_m: float, span_m: float
) -> float:
    """From the left eye to the hook, level in the load, towards the right eye."""
    return attitude.level_share_m(hook_along_m, hook_off_m, legs_upright, (level_m, rise_m, span_m))


@when("hook_way_m", rig=Rig.TWO_HOOKS)
def left_hook_way(
    hook_over_eye_along_m: tuple[float, ...], hook_over_eye_off_m: tuple[float, ...], legs_upright: float,
    level_m: float, rise_m: float, span_m: float,
) -> float:
    """From the left eye to the left hook, level in the load, towards the right eye."""
    along_m, off_m = hook_over_eye_along_m[0], hook_over_eye_off_m[0]

    return attitude.level_share_m(along_m, off_m, legs_upright, (level_m, rise_m, span_m))


@when("hook_way_m", rig=IN_SPACE)
def no_way_in_a_plane() -> float:
    """No plane of two legs."""
    raise NotApplicable("not two picks")


@when("hook_rise_m", rig=ON_ONE)
def hook_rise_in_plane(
    hook_along_m: float, hook_off_m: float, legs_upright: float, level_m: float, rise_m: float, span_m: float
) -> float:
    """From the left eye to the hook, upright in the load."""
    return attitude.upward_share_m(hook_along_m, hook_off_m, legs_upright, (level_m, rise_m, span_m))


@when("hook_rise_m", rig=Rig.TWO_HOOKS)
def left_hook_rise(pull_up_m: tuple[float, ...]) -> float:
    """From the left eye to the left hook, upright in the load."""
    return pull_up_m[0]


@when("hook_rise_m", rig=IN_SPACE)
def no_rise_in_a_plane() -> float:
    """No plane of two legs."""
    raise NotApplicable("not two picks")


@when("hook_aside_m", rig=ON_ONE)
def hook_aside_in_plane(hook_off_m: float, legs_aside: float) -> float:
    """From the left eye to the hook, square to the eyes."""
    return -hook_off_m * legs_aside


@when("hook_aside_m", rig=Rig.TWO_HOOKS)
def left_hook_aside(hook_over_eye_off_m: tuple[float, ...], legs_aside: float) -> float:
    """From the left eye to the left hook, square to the eyes."""
    return -hook_over_eye_off_m[0] * legs_aside


@when("hook_aside_m", rig=IN_SPACE)
def not_aside_of_a_plane() -> float:
    """No plane of two legs."""
    raise NotApplicable("not two picks")


@when("eye_drop_m", rig=ON_ONE)
@across("leg")
def eye_drop_in_plane(
    hook_from_eye_m: tuple[float, ...], hook_off_m: float, plumb_along_m: float, plumb_off_m: float, plumb_m: float
) -> tuple[float, ...]:
    """Each eye below the hook, as it hangs."""
    return tuple(
        leg_tension.eye_drop_m(along_m, hook_off_m, plumb_along_m, plumb_off_m, plumb_m) for along_m in hook_from_eye_m
    )


@when("eye_drop_m", rig=OTHERS)
@across("leg")
def eye_drop_seen(seen_from_hook: tuple[Vec, ...]) -> tuple[float, ...]:
    """Each eye below its hook, as it hangs."""
    return tuple(-eye.z for eye in seen_from_hook)


@when("eye_reach_m", rig=ON_ONE)
@across("leg")
def eye_reach_in_plane(
    hook_from_eye_m: tuple[float, ...], hook_off_m: float, plumb_along_m: float, plumb_off_m: float, plumb_m: float
) -> tuple[float, ...]:
    """Each eye from the plumb line, outwards; below 0 the plumb line does not pass between the eyes."""
    left, right = hook_from_eye_m

    return (
        leg_tension.eye_reach_m(left, hook_off_m, plumb_along_m, plumb_off_m, plumb_m),
        -leg_tension.eye_reach_m(right, hook_off_m, plumb_along_m, plumb_off_m, plumb_m),
    )


@when("eye_reach_m", rig=OTHERS)
@across("leg")
def eye_reach_seen(seen_from_hook: tuple[Vec, ...]) -> tuple[float, ...]:
    """Each eye from the plumb line through its hook."""
    return tuple(sqrt(eye.x * eye.x + eye.y * eye.y) for eye in seen_from_hook)
