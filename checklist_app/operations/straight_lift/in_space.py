"""One, three or four legs: the hook as a place of the load, and each eye seen from it as it hangs.

In hanging axes x and y are level, turned over from lengthwise and crosswise by the shortest way; z is up.
"""

from checklist_app.mechanics.exact import atan2_deg, let, sqrt
from checklist_app.mechanics.hanging import body, settling, taut
from checklist_app.mechanics.vectors import Vec, dot, length, less
from checklist_app.operations.graph import CannotAssess, NotApplicable, across, by_search, each, kept, when
from checklist_app.operations.straight_lift.choices import Rig
from checklist_app.operations.straight_lift.rigs import IN_SPACE, ON_TWO_PICKS, SEVERAL

FARTHEST_M = 1e-6
SAME_PLACE_M = 1e-3


@when("hook_at", rig=Rig.ONE_LEG)
def hook_over_one_eye(
    eye_at: tuple[Vec, ...], leg_m: tuple[float, ...], cg_x_m: float, cg_y_m: float, cg_z_m: float
) -> Vec:
    """The load swings until its centre of gravity hangs under the eye, and the hook is straight over both."""
    (eye,), (long_m,) = eye_at, leg_m
    x, y, z = eye.x - cg_x_m, eye.y - cg_y_m, eye.z - cg_z_m
    depth = let("cg_from_eye_m", sqrt(x * x + y * y + z * z))
    if not depth > FARTHEST_M:
        return Vec(eye.x, eye.y, eye.z + long_m)

    return Vec(eye.x + x * long_m / depth, eye.y + y * long_m / depth, eye.z + z * long_m / depth)


@by_search
@kept
@when("hook_at", rig=SEVERAL)
def hook_over_several(
    eye_at: tuple[Vec, ...], leg_m: tuple[float, ...], cg_x_m: float, cg_y_m: float, cg_z_m: float
) -> Vec:
    """Where three tight legs hold the hook and the load is as low as it gets; the lengths that follow prove it.

    A load whose centre of gravity lies over an eye may be steady there and yet never come there: while its slack is
    taken up it turns over, or comes to hang in another way.
    """
    what = body.rigging(eye_at, leg_m, Vec(cg_x_m, cg_y_m, cg_z_m))
    hook = taut.hook_of_tight_legs(what)
    top_heavy = what.cg.z > min(eye.z for eye in what.picks)
    if top_heavy and not length(less(settling.settled(what).hook, hook)) <= SAME_PLACE_M:
        raise CannotAssess("top-heavy: it can turn over, or come to hang otherwise, while the slack is taken up")

    return hook


@when("hook_at", rig=ON_TWO_PICKS)
def hook_of_the_plane(
    eye_at: tuple[Vec, ...], hook_way_m: float, hook_rise_m: float, hook_aside_m: float, run_x_m: float,
    run_y_m: float, level_m: float,
) -> Vec:
    """The hook that the plane of the legs gives, as a place of the load."""
    left, _ = eye_at

    return Vec(
        left.x + (hook_way_m * run_x_m + hook_aside_m * run_y_m) / level_m,
        left.y + (hook_way_m * run_y_m - hook_aside_m * run_x_m) / level_m,
        left.z + hook_rise_m,
    )


@when("plumb_line", rig=IN_SPACE)
def plumb_to_hook(hook_at: Vec, cg_x_m: float, cg_y_m: float, cg_z_m: float) -> Vec:
    """From the centre of gravity to the hook, in the load's axes."""
    return Vec(hook_at.x - cg_x_m, hook_at.y - cg_y_m, hook_at.z - cg_z_m)


@when("plumb_line", rig=ON_TWO_PICKS)
def plumb_of_the_plane(
    plumb_level_m: float, plumb_aside_m: float, plumb_up_m: float, run_x_m: float, run_y_m: float, level_m: float
) -> Vec:
    """From the centre of gravity straight up, in the load's axes."""
    return Vec(
        (plumb_level_m * run_x_m + plumb_aside_m * run_y_m) / level_m,
        (plumb_level_m * run_y_m - plumb_aside_m * run_x_m) / level_m, plumb_up_m,
    )


def upright(plumb_line: Vec, plumb_m: float) -> Vec:
    """Up the plumb line, in the load's axes."""
    return Vec(plumb_line.x / plumb_m, plumb_line.y / plumb_m, plumb_line.z / plumb_m)


def down(upright: Vec) -> Vec:
    """Towards the ground, in the load's axes."""
    return Vec(-upright.x, -upright.y, -upright.z)


def hung_along(upright: Vec) -> Vec:
    """Level and lengthwise as it hangs, in the load's axes."""
    return body.frame(upright)[0]


def hung_across(upright: Vec) -> Vec:
    """Level and crosswise as it hangs, in the load's axes."""
    return body.frame(upright)[1]


@each("leg")
def from_hook(eye_at: Vec, hook_at: Vec) -> Vec:
    """From the first hook to each eye, in the load's axes."""
    return Vec(eye_at.x - hook_at.x, eye_at.y - hook_at.y, eye_at.z - hook_at.z)


@each("leg")
def hung_eye(from_hook: Vec, hung_along: Vec, hung_across: Vec, upright: Vec) -> Vec:
    """Each eye from the first hook, in hanging axes."""
    x, y, z = from_hook

    return Vec(
        x * hung_along.x + y * hung_along.y + z * hung_along.z,
        x * hung_across.x + y * hung_across.y + z * hung_across.z, x * upright.x + y * upright.y + z * upright.z,
    )


def hung_cg(
    hook_at: Vec, cg_x_m: float, cg_y_m: float, cg_z_m: float, hung_along: Vec, hung_across: Vec, upright: Vec
) -> Vec:
    """The centre of gravity from the first hook, in hanging axes."""
    way = Vec(cg_x_m - hook_at.x, cg_y_m - hook_at.y, cg_z_m - hook_at.z)

    return Vec(dot(way, hung_along), dot(way, hung_across), dot(way, upright))


@when("seen_from_hook", rig=IN_SPACE)
@across("leg")
def seen_from_the_hook(hung_eye: tuple[Vec, ...]) -> tuple[Vec, ...]:
    """Each eye from its hook, in hanging axes."""
    return hung_eye


@when("seen_from_hook", rig=Rig.TWO_HOOKS)
@across("leg")
def seen_from_each_hook(
    left_pick: Vec, right_pick: Vec, hooks_apart_m: float, hooks_rise_m: float
) -> tuple[Vec, ...]:
    """Each eye from its own hook, in the upright plane of the hooks."""
    return left_pick, Vec(right_pick.x - hooks_apart_m, 0.0, right_pick.z - hooks_rise_m)


@when("seen_from_hook", rig=(Rig.TWO_LEGS, Rig.RUNNING))
@across("leg")
def seen_in_the_plane() -> tuple[Vec, ...]:
    """Two legs on one hook are counted along and off the line through the eyes."""
    raise NotApplicable("two legs on one hook")


@when("eye_angle_deg", rig=IN_SPACE)
@each("leg")
def eye_angle_in_space(from_hook: Vec) -> float:
    """Pull on the eye from its own axis, which stands upright in the load."""
    return atan2_deg(sqrt(from_hook.x * from_hook.x + from_hook.y * from_hook.y), -from_hook.z)


@when("eye_angle_deg", rig=ON_TWO_PICKS)
@each("leg")
def eye_angle_in_plane(leg_m: float, pull_up_m: float) -> float:
    """Pull on the eye from its own axis."""
    square = leg_m * leg_m - pull_up_m * pull_up_m

    return atan2_deg(sqrt(square) if square > 0.0 else 0.0, pull_up_m)
