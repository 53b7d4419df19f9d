"""Heights as the load hangs: its body is known between underside and highest part, at the eyes and at the middle."""

from checklist_app.mechanics import headroom
from checklist_app.mechanics.vectors import Vec
from checklist_app.operations.gear import Eye, Hook, LoadCell, MasterLink, Shackle
from checklist_app.operations.graph import CannotAssess, across, at_nominal, when
from checklist_app.operations.straight_lift.choices import EyesGiven, LegsGiven, Rig
from checklist_app.operations.straight_lift.rigs import ON_ONE_HOOK


@at_nominal
def body_is_sound(bottom_z_m: float, top_z_m: float, cg_z_m: float) -> bool:
    """Whether heights were mixed up: the centre of gravity of a body lies between its underside and its top."""
    return bottom_z_m < top_z_m and bottom_z_m <= cg_z_m <= top_z_m


def hangs_upright(plumb_up_m: float, plumb_m: float, body_is_sound: bool) -> float:
    """What of a height in the load stays a height as it hangs: 1 when level."""
    if not body_is_sound:
        raise CannotAssess("the centre of gravity does not lie between the underside and the highest part of the load")

    return plumb_up_m / plumb_m


def underside_below_hook_m(
    eye_below_m: tuple[float, ...], eye_at: tuple[Vec, ...], plumb_m: float, cg_z_m: float, hangs_upright: float,
    bottom_z_m: float, top_z_m: float,
) -> float:
    """Lowest point of the load below the hook, as it hangs."""
    lowest = plumb_m
    for drop, z_m in _known_points(eye_below_m, eye_at, plumb_m, cg_z_m):
        for end_m in (bottom_z_m, top_z_m):
            depth = drop + (z_m - end_m) * hangs_upright
            lowest = depth if depth > lowest else lowest

    return lowest


def top_below_hook_m(
    eye_below_m: tuple[float, ...], eye_at: tuple[Vec, ...], plumb_m: float, cg_z_m: float, hangs_upright: float,
    bottom_z_m: float, top_z_m: float,
) -> float:
    """Highest point of the load below the hook, as it hangs."""
    highest = plumb_m
    for drop, z_m in _known_points(eye_below_m, eye_at, plumb_m, cg_z_m):
        for end_m in (bottom_z_m, top_z_m):
            depth = drop + (z_m - end_m) * hangs_upright
            highest = depth if depth < highest else highest

    return highest


@when("eye_below_m", rig=ON_ONE_HOOK)
@across("leg")
def below_the_hook(eye_drop_m: tuple[float, ...]) -> tuple[float, ...]:
    """Each eye below the hook."""
    return eye_drop_m


@when("eye_below_m", rig=Rig.TWO_HOOKS)
@across("leg")
def below_the_left_hook(eye_drop_m: tuple[float, ...], hooks_rise_m: float) -> tuple[float, ...]:
    """Each eye below the left hook."""
    left, right = eye_drop_m

    return left, right - hooks_rise_m


@when("fittings_m", rig=ON_ONE_HOOK)
def fittings_on_one_hook(load_cell: LoadCell | None, hook_fitting: Shackle | Hook | MasterLink | None) -> float:
    """From the hook's saddle down to where the legs meet."""
    total_m = 0.0
    for item in (load_cell, hook_fitting):
        if item is not None:
            total_m = total_m + item.reach_m

    return total_m


@when("fittings_m", rig=Rig.TWO_HOOKS)
def fittings_on_two_hooks(hook_load_cell: tuple[LoadCell | None, ...], hooks_rise_m: float) -> float:
    """From the higher hook's saddle down to where the left leg begins: the longer load cell, and the rise between."""
    longest_m = 0.0
    for item in hook_load_cell:
        if item is not None and item.reach_m > longest_m:
            longest_m = item.reach_m

    return longest_m + hooks_rise_m if hooks_rise_m > 0.0 else longest_m


@when("eyes_stand_up_m", eyes_given=(EyesGiven.DISTANCE, EyesGiven.COORDINATES, EyesGiven.RECTANGLE))
def eyes_as_measured() -> float:
    """The eyes themselves were measured."""
    return 0.0


@when("eyes_stand_up_m", eyes_given=EyesGiven.PICK_POINTS)
def eyes_on_pick_points(eye: tuple[Eye | None, ...]) -> float:
    """A pick point is what the eye stands on: the hook comes higher by the lower eye, stability takes no credit for it.

    What one eye stands higher than the other already counts in where the eyes are.
    """
    return min(0.0 if each is None else each.reach_m for each in eye)


@when("hook_may_be_higher_m", legs_given=(LegsGiven.LENGTHS, LegsGiven.HOOK_HEIGHT))
def hook_is_where_it_is() -> float:
    """Lengths and heights say where the hook is."""
    return 0.0


@when("hook_may_be_higher_m", legs_given=LegsGiven.ANGLES)
def hook_by_the_steepest_leg(hook_by_angle_z_m: tuple[float, ...]) -> float:
    """The pulls count with the flattest reading; by the steepest one the hook stands so much higher."""
    return max(hook_by_angle_z_m) - min(hook_by_angle_z_m)


def hook_height_m(
    lift_height_m: float, underside_below_hook_m: float, fittings_m: float, eyes_stand_up_m: float,
    hook_may_be_higher_m: float,
) -> float:
    """Hook's saddle over the floor, at the highest moment."""
    above_m = fittings_m + eyes_stand_up_m + hook_may_be_higher_m

    return headroom.hook_height_m(lift_height_m, underside_below_hook_m, above_m)


def top_height_m(lift_height_m: float, underside_below_hook_m: float, top_below_hook_m: float) -> float:
    """Highest part of the load over the floor, at the highest moment."""
    return lift_height_m + underside_below_hook_m - top_below_hook_m


def _known_points(
    eye_below_m: tuple[float, ...], eye_at: tuple[Vec, ...], plumb_m: float, cg_z_m: float
) -> tuple[tuple[float, float], ...]:
    """Where the body is known to be: depth below the hook, and height in the load's axes."""
    return *((drop, eye.z) for drop, eye in zip(eye_below_m, eye_at, strict=True)), (plumb_m, cg_z_m)
