"""How long each leg is, from where the legs meet to its eye: by its length, by the height of the hook, or by angles."""

from checklist_app.mechanics import exact
from checklist_app.mechanics.exact import sqrt
from checklist_app.mechanics.vectors import Vec
from checklist_app.operations.gear import Hook, Shackle, Sling
from checklist_app.operations.graph import CannotAssess, Known, NotApplicable, at_nominal, each, when
from checklist_app.operations.settings import HEIGHTS_AGREE_WITHIN, LEG_AGREES_WITHIN, TAG_LENGTH
from checklist_app.operations.straight_lift.choices import LegsGiven

PLUMB_UP_TO_DEG = 2.0
BY_HOOK = (LegsGiven.HOOK_HEIGHT, LegsGiven.ANGLES)


@at_nominal
@each("leg")
def leg_agrees(
    leg_length_m: float | None, sling: Sling, top_fitting: Shackle | Hook | None, bottom_fitting: Shackle | Hook | None
) -> bool:
    """Whether a measured leg is what its sling and fittings make; true where their lengths are not known."""
    return leg_length_m is None or _agrees(leg_length_m, sling, top_fitting, bottom_fitting)


def _agrees(leg_m: float, sling: Sling, *fittings: Shackle | Hook | None) -> bool:
    by_gear_m = _by_gear_m(sling, *fittings)

    return by_gear_m is None or abs(leg_m - by_gear_m) <= LEG_AGREES_WITHIN.value * by_gear_m


def _by_gear_m(sling: Sling, *fittings: Shackle | Hook | None) -> float | None:
    """What sling and fittings add up to; None where a length is not known."""
    parts = [sling.facts.get("length_m")]
    parts += [fitting.facts.get("reach_m") for fitting in fittings if fitting is not None]
    by_gear_m = 0.0
    for part in parts:
        if part is None:
            return None
        by_gear_m = by_gear_m + part

    return by_gear_m


@when("leg_by_length_m", leg_length_m=Known.YES)
@each("leg")
def leg_measured(leg_length_m: float, leg_agrees: bool) -> float:
    """Leg from bearing to bearing, as measured."""
    if not leg_agrees:
        raise CannotAssess("the leg as measured is not what its sling and fittings make: measure again, or look again")

    return leg_length_m


@when("leg_by_length_m", leg_length_m=Known.NO)
@each("leg")
def leg_by_gear(
    sling: Sling, sling_off_tag: float, top_fitting: Shackle | Hook | None, bottom_fitting: Shackle | Hook | None
) -> float:
    """Leg from bearing to bearing: the sling and the reach of its fittings."""
    length_m = sling.length_m * (1.0 + sling_off_tag)
    for fitting in (top_fitting, bottom_fitting):
        if fitting is not None:
            length_m = length_m + fitting.reach_m

    return length_m


@when("eye_from_plumb_m", legs_given=LegsGiven.LENGTHS)
@each("leg")
def no_plumb_line_needed() -> float:
    """The lengths say all."""
    raise NotApplicable("the legs are given by their lengths")


@at_nominal
@when("eye_from_plumb_m", legs_given=BY_HOOK)
@each("leg")
def eye_from_level_hook(eye_at: Vec, cg_x_m: float, cg_y_m: float) -> float:
    """Each eye from the plumb line through the centre of gravity as stated, load level: no doubt makes a leg longer."""
    across, beside = eye_at.x - cg_x_m, eye_at.y - cg_y_m

    return sqrt(across * across + beside * beside)


@when("hook_by_angle_z_m", legs_given=(LegsGiven.LENGTHS, LegsGiven.HOOK_HEIGHT))
@each("leg")
def no_angle_needed() -> float:
    """Another way of giving the legs."""
    raise NotApplicable("the legs are not given by their angles")


@when("hook_by_angle_z_m", legs_given=LegsGiven.ANGLES)
@each("leg")
def hook_by_leg_angle(eye_at: Vec, eye_from_plumb_m: float, leg_angle_read_deg: float) -> float:
    """Height of the hook by the angle of one leg."""
    if not leg_angle_read_deg > PLUMB_UP_TO_DEG:
        raise CannotAssess("the angle of a leg that hangs plumb says nothing of the height of the hook")
    angle = leg_angle_read_deg / exact.RAD_IN_DEG

    return eye_at.z + eye_from_plumb_m * exact.cos(angle) / exact.sin(angle)


@when("hook_level_z_m", legs_given=LegsGiven.LENGTHS)
def hook_follows() -> float:
    """The height of the hook follows from the lengths."""
    raise NotApplicable("the legs are given by their lengths")


@when("hook_level_z_m", legs_given=LegsGiven.HOOK_HEIGHT)
def hook_by_height(eye_at: tuple[Vec, ...], hook_over_eyes_m: float, hook_stands_over: bool) -> float:
    """Height of the hook in the load's axes, as measured from the first eye."""
    return eye_at[0].z + hook_over_eyes_m


@when("hook_level_z_m", legs_given=LegsGiven.ANGLES)
def hook_by_angles(hook_by_angle_z_m: tuple[float, ...], angles_meet: bool, hook_stands_over: bool) -> float:
    """The flattest reading counts: the lowest hook pulls hardest."""
    if not angles_meet:
        raise CannotAssess("the angles read on the legs do not meet in one hook over the centre of gravity: read again")
    lowest = hook_by_angle_z_m[0]
    for each_z_m in hook_by_angle_z_m:
        lowest = each_z_m if each_z_m < lowest else lowest

    return lowest


@at_nominal
def angles_meet(hook_by_angle_z_m: tuple[float, ...], eye_at: tuple[Vec, ...]) -> bool:
    """Whether the legs, by their angles, meet at about one height."""
    apart_m = max(hook_by_angle_z_m) - min(hook_by_angle_z_m)
    least_m = min(hook_z_m - eye.z for hook_z_m, eye in zip(hook_by_angle_z_m, eye_at, strict=True))

    return apart_m <= HEIGHTS_AGREE_WITHIN.value * least_m


@each("leg")
def leg_by_hook_m(eye_at: Vec, eye_from_plumb_m: float, hook_level_z_m: float) -> float:
    """Leg from bearing to bearing, from its eye to the hook over the centre of gravity."""
    over_m = hook_level_z_m - eye_at.z
    if not over_m > 0.0:
        raise CannotAssess("the hook does not stand over every eye")

    return sqrt(eye_from_plumb_m * eye_from_plumb_m + over_m * over_m)


@at_nominal
@each("leg")
def leg_by_hook_agrees(
    leg_by_hook_m: float, sling: Sling, top_fitting: Shackle | Hook | None, bottom_fitting: Shackle | Hook | None
) -> bool:
    """Whether the leg that follows is what its sling and fittings make; true where their lengths are not known."""
    return _agrees(leg_by_hook_m, sling, top_fitting, bottom_fitting)


@when("leg_own_m", legs_given=LegsGiven.LENGTHS)
@each("leg")
def leg_as_given(leg_by_length_m: float) -> float:
    """Leg by its length."""
    return leg_by_length_m


@at_nominal
def legs_hang_it_level(
    leg_by_hook_m: tuple[float, ...], sling: tuple[Sling, ...], top_fitting: tuple[Shackle | Hook | None, ...],
    bottom_fitting: tuple[Shackle | Hook | None, ...],
) -> bool:
    """Whether the slings stand to each other as the legs that hang it level do; true where a length is not known."""
    shares = []
    for leg_m, own, top, bottom in zip(leg_by_hook_m, sling, top_fitting, bottom_fitting, strict=True):
        by_gear_m = _by_gear_m(own, top, bottom)
        if by_gear_m is None:
            return True
        shares.append(leg_m / by_gear_m)

    return max(shares) - min(shares) <= 2.0 * TAG_LENGTH.value


@when("leg_own_m", legs_given=BY_HOOK)
@each("leg")
def leg_that_follows(
    leg_by_hook_m: float, leg_by_hook_agrees: bool, legs_hang_it_level: bool, sling_off_tag: float
) -> float:
    """Leg by where the hook stands; one is made a little longer or shorter than another all the same."""
    if not leg_by_hook_agrees:
        raise CannotAssess("the leg that follows is not what its sling and fittings make: measure again, or look again")
    if not legs_hang_it_level:
        raise CannotAssess("slings of these lengths do not hang it level: give the legs by their lengths")

    return leg_by_hook_m * (1.0 + sling_off_tag)
