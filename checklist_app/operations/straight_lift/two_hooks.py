"""Two hooks, a leg on each: how the load comes to hang between them, in the upright plane of the hooks.

In that plane x counts level from the left hook towards the right, z up, and y is nothing.
"""

from checklist_app.mechanics import attitude
from checklist_app.mechanics.exact import sqrt
from checklist_app.mechanics.hanging import four_bars, two_hooks
from checklist_app.mechanics.vectors import Vec
from checklist_app.operations.graph import CannotAssess, NotApplicable, across, by_search, each, kept, when
from checklist_app.operations.straight_lift.choices import Rig
from checklist_app.operations.straight_lift.rigs import IN_SPACE, ON_ONE_HOOK

Hung = two_hooks.TwoHookHang


def hooks_apart_m(hook_at_x_m: tuple[float, ...], run_x_m: float, two_hooks: bool, hooks_step_m: float) -> float:
    """Level from the left hook to the right, as the left eye lies to the right one; on the way one gets ahead."""
    left, right = hook_at_x_m
    apart_m = (right - left if run_x_m > 0.0 else left - right) + hooks_step_m
    if not apart_m >= 0.0:
        raise CannotAssess("the hooks stand the other way round than their eyes: the legs would cross")

    return apart_m


def hooks_rise_m(hook_over_m: tuple[float, ...], two_hooks: bool) -> float:
    """Right hook over the left."""
    left, right = hook_over_m

    return right - left


@kept
def swung(
    span_m: float, cg_along_m: float, cg_off_m: float, leg_m: tuple[float, ...], hooks_apart_m: float,
    hooks_rise_m: float, level_m: float, rise_m: float,
) -> Hung:
    """The balance nearest to how the load stands; both legs must carry."""
    left_m, right_m = leg_m
    chain = four_bars.bars(
        span_m, cg_along_m, cg_off_m, (left_m, right_m), (hooks_apart_m, hooks_rise_m), (level_m, rise_m)
    )
    hang = two_hooks.hung_from_two_hooks(chain)
    if not hang.upright:
        raise CannotAssess("the load does not stay in balance between the two hooks")
    if not min(hang.shares) > 0.0:
        raise CannotAssess("a leg hangs slack: the load hangs from the other hook alone")

    return hang


@by_search
def left_pick(swung: Hung) -> Vec:
    """The left eye, seen from the left hook."""
    return Vec(swung.left.x, 0.0, swung.left.z)


@by_search
def right_pick(swung: Hung) -> Vec:
    """The right eye, seen from the left hook."""
    return Vec(swung.right.x, 0.0, swung.right.z)


def picks_run_m(left_pick: Vec, right_pick: Vec) -> float:
    """Level from the left eye to the right, as it hangs."""
    return right_pick.x - left_pick.x


def picks_rise_m(left_pick: Vec, right_pick: Vec) -> float:
    """Right eye over the left, as it hangs."""
    return right_pick.z - left_pick.z


def cg_from_left_hook_m(
    left_pick: Vec, picks_run_m: float, picks_rise_m: float, cg_along_m: float, cg_off_m: float, span_m: float
) -> float:
    """Centre of gravity from the left hook, level."""
    return left_pick.x + (cg_along_m * picks_run_m + cg_off_m * picks_rise_m) / span_m


def cg_below_left_hook_m(
    left_pick: Vec, picks_run_m: float, picks_rise_m: float, cg_along_m: float, cg_off_m: float, span_m: float
) -> float:
    """Centre of gravity below the left hook."""
    return -left_pick.z - (cg_along_m * picks_rise_m - cg_off_m * picks_run_m) / span_m


@across("leg")
def hook_over_eye_along_m(
    seen_from_hook: tuple[Vec, ...], picks_run_m: float, picks_rise_m: float, span_m: float
) -> tuple[float, ...]:
    """From each eye to its hook, along the line through the eyes."""
    return tuple(-(eye.x * picks_run_m + eye.z * picks_rise_m) / span_m for eye in seen_from_hook)


@across("leg")
def hook_over_eye_off_m(
    seen_from_hook: tuple[Vec, ...], picks_run_m: float, picks_rise_m: float, span_m: float
) -> tuple[float, ...]:
    """From each eye to its hook, off the line through the eyes."""
    return tuple((eye.x * picks_rise_m - eye.z * picks_run_m) / span_m for eye in seen_from_hook)


@when("pull_up_m", rig=(Rig.TWO_LEGS, Rig.RUNNING))
@each("leg")
def pull_up_to_one_hook(
    hook_from_eye_m: float, hook_off_m: float, legs_upright: float, level_m: float, rise_m: float, span_m: float
) -> float:
    """Of a leg, the part along its eye's axis, which stands upright in the load."""
    return attitude.upward_share_m(hook_from_eye_m, hook_off_m, legs_upright, (level_m, rise_m, span_m))


@when("pull_up_m", rig=Rig.TWO_HOOKS)
@each("leg")
def pull_up_to_own_hook(
    hook_over_eye_along_m: float, hook_over_eye_off_m: float, legs_upright: float, level_m: float, rise_m: float,
    span_m: float,
) -> float:
    """Of a leg, the part along its eye's axis, which stands upright in the load."""
    return attitude.upward_share_m(hook_over_eye_along_m, hook_over_eye_off_m, legs_upright, (level_m, rise_m, span_m))


@when("pull_up_m", rig=IN_SPACE)
@each("leg")
def pull_up_in_space(from_hook: Vec) -> float:
    """Of a leg, the part along its eye's axis, which stands upright in the load."""
    return -from_hook.z


@when("hung_hook", rig=Rig.TWO_HOOKS)
@across("hook")
def hung_hook_of_two(
    hung_eye: tuple[Vec, ...], hooks_apart_m: float, hooks_rise_m: float, hook: tuple[str, ...]
) -> tuple[Vec, ...]:
    """Each hook from the first, in hanging axes: the load turns until its eyes lie under the line of the hooks."""
    left, right = hung_eye
    x, y = right.x - left.x, right.y - left.y
    level = sqrt(x * x + y * y)
    if not level > 0.0:
        raise CannotAssess("the eyes hang one under the other")

    return Vec(0.0, 0.0, 0.0), Vec(hooks_apart_m * x / level, hooks_apart_m * y / level, hooks_rise_m)


@when("hung_hook", rig=ON_ONE_HOOK)
@across("hook")
def hung_hook_of_one() -> tuple[Vec, ...]:
    """Everything is seen from the one hook."""
    raise NotApplicable("one hook")
