"""Where eyes and centre of gravity are, in the load's own axes: x lengthwise, y crosswise, z up as it stands."""

from checklist_app.mechanics.vectors import Vec
from checklist_app.operations.gear import Eye, PickPoint
from checklist_app.operations.graph import CannotAssess, Range, across, dont_know, when
from checklist_app.operations.straight_lift.choices import EyesGiven

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

    Only along the line through two eyes does the unknown end at the eyes: beyond them a leg would be slack. Across that
    line nothing bounds it.
    """
    if len(eye_at) < 2:
        raise CannotAssess("the centre of gravity lengthwise is not known, and one eye does not bound it")
    if len(eye_at) > 2:
        lowest, highest = min(eye.x for eye in eye_at), max(eye.x for eye in eye_at)
        return Range(lowest, (lowest + highest) / 2.0, highest)
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
