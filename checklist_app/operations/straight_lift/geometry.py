"""Where eyes, centre of gravity and hook are, in the load's own axes: x lengthwise, y crosswise, z up as it stands."""

from checklist_app.mechanics import stability, suspension, vectors
from checklist_app.mechanics.exact import sqrt
from checklist_app.mechanics.vectors import Vec
from checklist_app.operations.gear import Hook, PickPoint, Shackle, Sling
from checklist_app.operations.graph import Known, Range, across, dont_know, each, when
from checklist_app.operations.straight_lift.entries import EyesGiven


@when("eye_at", eyes_given=EyesGiven.DISTANCE)
@across("leg")
def eye_at_by_distance(eyes_apart_m: float, right_eye_higher_m: float, leg: tuple[str, ...]) -> tuple[Vec, ...]:
    """The left eye is where measuring starts."""
    return Vec(0.0, 0.0, 0.0), Vec(eyes_apart_m, 0.0, right_eye_higher_m)


@when("eye_at", eyes_given=EyesGiven.COORDINATES)
@across("leg")
def eye_at_by_coordinates(
    eye_x_m: tuple[float, ...], eye_y_m: tuple[float, ...], eye_z_m: tuple[float, ...]
) -> tuple[Vec, ...]:
    """Each eye as it was measured."""
    return tuple(Vec(*point) for point in zip(eye_x_m, eye_y_m, eye_z_m, strict=True))


@when("eye_at", eyes_given=EyesGiven.PICK_POINTS)
@across("leg")
def eye_at_pick_points(carrier: tuple[PickPoint, ...]) -> tuple[Vec, ...]:
    """Each eye where the load's register says its pick point is."""
    return tuple(Vec(point.x_m, point.y_m, point.z_m) for point in carrier)


@dont_know("cg_x_m")
def cg_x_unknown(eye_at: tuple[Vec, ...]) -> Range:
    """Anywhere between the eyes; what a leg then carries is published and does not hang on it."""
    left, right = eye_at

    return Range(min(left.x, right.x), (left.x + right.x) / 2.0, max(left.x, right.x))


@dont_know("cg_z_m")
def cg_z_unknown(bottom_z_m: float, top_z_m: float) -> Range:
    """Anywhere from the underside to the highest part."""
    return Range(bottom_z_m, (bottom_z_m + top_z_m) / 2.0, top_z_m)


def cg(cg_x_m: float, cg_y_m: float, cg_z_m: float) -> Vec:
    """Centre of gravity."""
    return Vec(cg_x_m, cg_y_m, cg_z_m)


@when("leg_m", leg_length_m=Known.YES)
@each("leg")
def leg_measured(leg_length_m: float) -> float:
    """Leg from bearing to bearing, as measured."""
    return leg_length_m


@when("leg_m", leg_length_m=Known.NO)
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


def eyes_span_m(eye_at: tuple[Vec, ...]) -> float:
    """Straight distance from eye to eye."""
    left, right = eye_at

    return vectors.length(vectors.between(left, right))


def pick_line(eye_at: tuple[Vec, ...]) -> Vec:
    """Direction of the line through the eyes."""
    left, right = eye_at

    return suspension.pick_line(left, right)


def up(pick_line: Vec) -> Vec:
    """Upwards, at right angles to the line through the eyes."""
    return suspension.up_from_pick_line(pick_line)


def cg_below_m(cg: Vec, eye_at: tuple[Vec, ...], up: Vec) -> float:
    """Centre of gravity below the line through the eyes."""
    return stability.cg_below_pick_line_m(cg, eye_at[0], up)


def cg_beside_m(cg: Vec, eye_at: tuple[Vec, ...], pick_line: Vec, up: Vec) -> float:
    """Centre of gravity beside the upright plane through the eyes."""
    return suspension.cg_beside_pick_line_m(cg, eye_at[0], pick_line, up)


def cg_off_m(cg_below_m: float, cg_beside_m: float) -> float:
    """Centre of gravity from the line through the eyes."""
    return sqrt(cg_below_m * cg_below_m + cg_beside_m * cg_beside_m)


def hook_along_m(eyes_span_m: float, leg_m: tuple[float, ...]) -> float:
    """Hook from the left eye, along the line through the eyes."""
    left, right = leg_m

    return suspension.hook_along_pick_line_m(eyes_span_m, left, right)


def hook_off_m(leg_m: tuple[float, ...], hook_along_m: float) -> float:
    """Hook from the line through the eyes."""
    return suspension.hook_off_pick_line_m(leg_m[0], hook_along_m)


def towards_hook(cg_below_m: float, cg_beside_m: float, cg_off_m: float, pick_line: Vec, up: Vec) -> Vec:
    """Direction from the line through the eyes to the hook."""
    return suspension.towards_hook(cg_below_m, cg_beside_m, cg_off_m, pick_line, up)


def hook_at(
    eye_at: tuple[Vec, ...], pick_line: Vec, towards_hook: Vec, hook_along_m: float, hook_off_m: float,
    hook: tuple[str, ...],
) -> Vec:
    """Where the legs meet; a second hook would make it another lift."""
    foot = vectors.moved(eye_at[0], pick_line, hook_along_m)

    return vectors.moved(foot, towards_hook, hook_off_m)
