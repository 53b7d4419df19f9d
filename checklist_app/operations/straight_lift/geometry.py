"""Where eyes, centre of gravity and hook are, in the load's own axes: x lengthwise, y crosswise, z up as it stands."""

from checklist_app.mechanics import attitude, stability, suspension
from checklist_app.mechanics.exact import sqrt
from checklist_app.mechanics.vectors import Vec
from checklist_app.operations.gear import Eye, Hook, PickPoint, Shackle, Sling
from checklist_app.operations.graph import CannotAssess, Known, Range, across, at_nominal, dont_know, each, when
from checklist_app.operations.settings import LEG_AGREES_WITHIN
from checklist_app.operations.straight_lift.choices import EyesGiven, Rig

RIGHT_FIRST = ("right", "left")
CORNERS = {"left_front": (0.0, 0.0), "right_front": (1.0, 0.0), "left_rear": (0.0, 1.0), "right_rear": (1.0, 1.0)}
ALONG_THE_LOAD = 0.25  # crosswise at most this share of lengthwise: then the picks lie along the load


@when("eye_at", eyes_given=EyesGiven.DISTANCE)
@across("leg")
def eye_at_by_distance(eyes_apart_m: float, right_eye_higher_m: float, leg: tuple[str, ...]) -> tuple[Vec, ...]:
    """The left eye is where measuring starts; rows that say left and right are believed in either order."""
    if len(leg) != 2:
        raise CannotAssess("one distance places two eyes: give more of them by rectangle, coordinates or pick points")
    left, right = Vec(0.0, 0.0, 0.0), Vec(eyes_apart_m, 0.0, right_eye_higher_m)

    return (right, left) if leg == RIGHT_FIRST else (left, right)


@when("eye_at", eyes_given=EyesGiven.RECTANGLE)
@across("leg")
def eye_at_by_rectangle(eyes_apart_m: float, eyes_across_m: float, leg: tuple[str, ...]) -> tuple[Vec, ...]:
    """Four level eyes; the left front one is where measuring starts. Rows with other names count in that order."""
    if len(leg) != 4:
        raise CannotAssess("a rectangle has four eyes: give another number of them by coordinates or pick points")
    corners = [CORNERS[label] for label in leg] if {*leg} == {*CORNERS} else [*CORNERS.values()]

    return tuple(Vec(eyes_apart_m * along, eyes_across_m * aside, 0.0) for along, aside in corners)


@when("eye_at", eyes_given=EyesGiven.COORDINATES)
@across("leg")
def eye_at_by_coordinates(
    eye_x_m: tuple[float, ...], eye_y_m: tuple[float, ...], eye_z_m: tuple[float, ...]
) -> tuple[Vec, ...]:
    """Each eye as it was measured."""
    return tuple(Vec(*point) for point in zip(eye_x_m, eye_y_m, eye_z_m, strict=True))


@when("eye_at", eyes_given=EyesGiven.PICK_POINTS)
@across("leg")
def eye_at_pick_points(carrier: tuple[PickPoint, ...], eye: tuple[Eye | None, ...]) -> tuple[Vec, ...]:
    """Each eye where the load's register says its pick point is; one that stands higher than the other counts so."""
    lowest_m = min(_stand_m(each) for each in eye)

    return tuple(
        Vec(point.x_m, point.y_m, point.z_m + (_stand_m(each) - lowest_m))
        for point, each in zip(carrier, eye, strict=True)
    )


def _stand_m(eye: Eye | None) -> float:
    return 0.0 if eye is None else eye.reach_m


@dont_know("cg_x_m")
def cg_x_unknown(eye_at: tuple[Vec, ...]) -> Range:
    """Anywhere between the eyes; what a leg then carries is published and does not hang on it.

    Only along the line through the eyes does the unknown end at the eyes: beyond them a leg would be slack. Across that
    line nothing bounds it.
    """
    if len(eye_at) != 2:
        raise CannotAssess("the centre of gravity lengthwise is not known, and the load does not hang on two eyes")
    left, right = eye_at
    if not abs(right.y - left.y) <= ALONG_THE_LOAD * abs(right.x - left.x):
        raise CannotAssess(
            "the centre of gravity lengthwise is not known, and the eyes do not stand one behind the other along the"
            " load"
        )

    return Range(min(left.x, right.x), (left.x + right.x) / 2.0, max(left.x, right.x))


@dont_know("cg_z_m")
def cg_z_unknown(bottom_z_m: float, top_z_m: float) -> Range:
    """Anywhere from the underside to the highest part."""
    return Range(bottom_z_m, (bottom_z_m + top_z_m) / 2.0, top_z_m)


@at_nominal
@each("leg")
def leg_agrees(
    leg_length_m: float | None, sling: Sling, top_fitting: Shackle | Hook | None, bottom_fitting: Shackle | Hook | None
) -> bool:
    """Whether a measured leg is what its sling and fittings make; true where their lengths are not known."""
    if leg_length_m is None:
        return True
    parts = [sling.facts.get("length_m")]
    parts += [fitting.facts.get("reach_m") for fitting in (top_fitting, bottom_fitting) if fitting is not None]
    by_gear_m = 0.0
    for part in parts:
        if part is None:
            return True
        by_gear_m = by_gear_m + part

    return abs(leg_length_m - by_gear_m) <= LEG_AGREES_WITHIN.value * by_gear_m


@when("leg_m", leg_length_m=Known.YES)
@each("leg")
def leg_measured(leg_length_m: float, leg_agrees: bool) -> float:
    """Leg from bearing to bearing, as measured."""
    if not leg_agrees:
        raise CannotAssess("the leg as measured is not what its sling and fittings make: measure again, or look again")

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


@when("two_picks", rig=Rig.TWO_LEGS)
def on_two_picks() -> bool:
    """The load hangs on two picks."""
    return True


@when("two_picks", rig=tuple(rig for rig in Rig if rig is not Rig.TWO_LEGS))
def on_other_picks() -> bool:
    """Other rigs hang otherwise."""
    raise CannotAssess("only two legs on one hook can be assessed")


def run_x_m(eye_at: tuple[Vec, ...], two_picks: bool) -> float:
    """From the left eye to the right, lengthwise."""
    left, right = eye_at

    return right.x - left.x


def run_y_m(eye_at: tuple[Vec, ...], two_picks: bool) -> float:
    """From the left eye to the right, crosswise."""
    left, right = eye_at

    return right.y - left.y


def rise_m(eye_at: tuple[Vec, ...], two_picks: bool) -> float:
    """Right eye over the left."""
    left, right = eye_at

    return right.z - left.z


def level_m(run_x_m: float, run_y_m: float) -> float:
    """Level distance between the eyes."""
    return suspension.level_between_eyes_m(run_x_m, run_y_m)


def span_m(level_m: float, rise_m: float) -> float:
    """Straight distance between the eyes."""
    return sqrt(level_m * level_m + rise_m * rise_m)


def cg_level_m(
    cg_x_m: float, cg_y_m: float, eye_at: tuple[Vec, ...], run_x_m: float, run_y_m: float, level_m: float
) -> float:
    """Centre of gravity from the left eye, level, towards the right eye."""
    left, _ = eye_at

    return ((cg_x_m - left.x) * run_x_m + (cg_y_m - left.y) * run_y_m) / level_m


def cg_up_m(cg_z_m: float, eye_at: tuple[Vec, ...], two_picks: bool) -> float:
    """Centre of gravity over the left eye."""
    left, _ = eye_at

    return cg_z_m - left.z


def cg_along_m(cg_level_m: float, cg_up_m: float, level_m: float, rise_m: float, span_m: float) -> float:
    """Centre of gravity along the line through the eyes."""
    return suspension.cg_along_pick_line_m(cg_level_m, cg_up_m, level_m, rise_m, span_m)


def cg_below_m(cg_level_m: float, cg_up_m: float, level_m: float, rise_m: float, span_m: float) -> float:
    """Centre of gravity below the line through the eyes."""
    return stability.cg_below_pick_line_m(cg_level_m, cg_up_m, level_m, rise_m, span_m)


def cg_beside_m(
    cg_x_m: float, cg_y_m: float, eye_at: tuple[Vec, ...], run_x_m: float, run_y_m: float, level_m: float
) -> float:
    """Centre of gravity beside the upright plane through the eyes."""
    left, _ = eye_at

    return suspension.cg_beside_pick_line_m(cg_x_m - left.x, cg_y_m - left.y, run_x_m, run_y_m, level_m)


def cg_off_m(cg_below_m: float, cg_beside_m: float) -> float:
    """Centre of gravity from the line through the eyes."""
    return sqrt(cg_below_m * cg_below_m + cg_beside_m * cg_beside_m)


def hook_along_m(span_m: float, leg_m: tuple[float, ...], hook: tuple[str, ...]) -> float:
    """Hook along the line through the eyes; a second hook would make it another lift."""
    left, right = leg_m

    return suspension.hook_along_pick_line_m(span_m, left, right)


def hook_off_m(leg_m: tuple[float, ...], hook_along_m: float) -> float:
    """Hook from the line through the eyes."""
    left, _ = leg_m

    return suspension.hook_off_pick_line_m(left, hook_along_m)


@across("leg")
def hook_from_eye_m(hook_along_m: float, span_m: float, leg: tuple[str, ...]) -> tuple[float, ...]:
    """From each eye to the hook, along the line through the eyes."""
    return hook_along_m, hook_along_m - span_m


def legs_upright(cg_below_m: float, cg_off_m: float) -> float:
    """How upright the plane of the legs stands in the load."""
    return attitude.legs_upright(cg_below_m, cg_off_m)


def legs_aside(cg_beside_m: float, cg_off_m: float) -> float:
    """How far the plane of the legs leans over in the load."""
    return attitude.legs_aside(cg_beside_m, cg_off_m)
